//! The published JSON Schemas, made from the types.

use std::path::{Path, PathBuf};

/// Name and text of each schema, as it stands in `crates/sugaring/schema/NAME.json`.
pub fn schemas() -> Vec<(&'static str, String)> {
    sugaring::day::schemas()
}

/// The folder in which the schemas are published.
pub fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../crates/sugaring/schema")
}
