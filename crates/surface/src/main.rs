//! Writes the generated files: `cargo xtask surface`.

use std::io;

fn main() -> io::Result<()> {
    let differences = sugaring_surface::differences();
    if !differences.is_empty() {
        return Err(io::Error::other(differences.join("\n")));
    }
    sugaring_surface::files()
        .iter()
        .try_for_each(sugaring_surface::File::write)
}
