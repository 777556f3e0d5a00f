//! Writes the JSON Schemas; run by `cargo xtask schema`.

use std::{fs, io};

use sugaring_tests::schema::{folder, schemas};

fn main() -> io::Result<()> {
    fs::create_dir_all(folder())?;
    for (name, text) in schemas() {
        fs::write(folder().join(format!("{name}.json")), text)?;
        println!("crates/sugaring/schema/{name}.json");
    }
    Ok(())
}
