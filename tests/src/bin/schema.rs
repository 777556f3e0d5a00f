//! Writes the JSON Schemas; run by `cargo xtask schema`.

use std::{fs, io};

use sugaring_tests::schema::{folder, schemas};

fn main() -> io::Result<()> {
    fs::create_dir_all(folder())?;
    for (name, text) in schemas() {
        let path = folder().join(format!("{name}.json"));
        fs::write(&path, text)?;
        println!("{}", path.display());
    }
    Ok(())
}
