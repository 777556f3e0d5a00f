//! What the Python package is made of beside its own code: docstrings, stubs, unit words, types of inputs and plans.

use crate::File;

mod docs;
mod functions;
mod inputs;
mod records;
mod schema;
mod units;
mod words;

const PACKAGE: &str = "bindings/python/python/sugaring";

/// What stands on top of each file.
const WRITTEN: &str = "# Written by `cargo xtask surface`: change what it is made from.\n";

pub(crate) fn files() -> Vec<File> {
    [
        docs::files(),
        functions::files(),
        units::files(),
        inputs::files(),
        records::files(),
        schema::copies(),
    ]
    .concat()
}
