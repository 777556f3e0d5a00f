//! Writes the generated files: `cargo xtask surface`.

fn main() -> std::io::Result<()> {
    sugaring_surface::files()
        .iter()
        .try_for_each(sugaring_surface::File::write)
}
