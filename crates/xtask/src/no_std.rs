//! The core without an operating system: linked for a target that has none.

use crate::{report::Report, wasm_target};

/// Links `tests/no_std` with the smallest and the largest feature set that needs no std.
pub(crate) fn link(report: &mut Report) {
    for features in ["", "json", "schema"] {
        let name = if features.is_empty() {
            String::from("no_std link: no features")
        } else {
            format!("no_std link: {features}")
        };
        match wasm_target::builder() {
            Ok((mut build, _)) => {
                report.check(
                    &name,
                    build.args(["--package", "sugaring-no-std", "--features", features]),
                );
            }
            Err(help) => report.fail(&name, &help),
        }
    }
}
