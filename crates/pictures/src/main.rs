//! Writes the pictures into the book's folder, as `cargo xtask book` asks.

use std::{fs, io, path::Path};

fn main() -> io::Result<()> {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    let folder = here.join("../../book/src/pictures");
    if folder.exists() {
        fs::remove_dir_all(&folder)?;
    }
    fs::create_dir_all(&folder)?;
    for picture in sugaring_pictures::pictures() {
        fs::write(folder.join(format!("{}.svg", picture.name)), picture.svg)?;
    }
    Ok(())
}
