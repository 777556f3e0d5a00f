//! The published JSON Schemas, made from the types.

use std::path::{Path, PathBuf};

/// Name and text of each schema, as it stands in `crates/sugaring/schema/NAME.json`.
///
/// TODO(day): return what the core makes from its input and plan types once `day` has them.
pub fn schemas() -> Vec<(&'static str, String)> {
    Vec::new()
}

/// The folder in which the schemas are published.
pub fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../crates/sugaring/schema")
}
