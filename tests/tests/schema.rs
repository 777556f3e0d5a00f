//! The published JSON Schemas are those of the types.

use std::fs;

use sugaring_tests::schema::{folder, schemas};

#[test]
fn published_schemas_have_not_drifted() {
    let made = schemas();
    for (name, text) in &made {
        let stored = fs::read_to_string(folder().join(format!("{name}.json"))).unwrap_or_default();
        assert!(
            stored == *text,
            "{name}.json differs from the types: run `cargo xtask schema`, and say so in the change log"
        );
    }
    let stored = fs::read_dir(folder()).into_iter().flatten().flatten();
    for file in stored.map(|entry| entry.file_name().into_string().unwrap()) {
        let known = made.iter().any(|(name, _)| file == format!("{name}.json"));
        assert!(known, "{file} belongs to no type");
    }
}
