use std::path::PathBuf;

use super::{
    chromium,
    node::{self, tool},
};
use crate::{
    chain::Chain,
    command::{program, size, target},
    report::Report,
    wasm_target,
};

/// Everything.
pub(crate) fn all(report: &mut Report) {
    let mut chain = built(report);
    tests(&mut chain);
    chain.check("examples and slips under tsc --strict", || {
        Ok(tool("tsc", "--project tsconfig.json"))
    });
    chain.work("a browser", chromium::make_sure);
    chain.figure("module", size(&package().join("sugaring.wasm")));
}

/// The package and its tests in Node.
pub(crate) fn inner_loop(report: &mut Report) {
    tests(&mut built(report));
}

fn built(report: &mut Report) -> Chain<'_> {
    let mut chain = Chain::new(report, "javascript");
    chain.need_work("Node", node::find);
    chain.need_work("tools", node::install);
    chain.need("module", || {
        let (mut build, _) = wasm_target::builder()?;
        build.args(["--profile", "wasm", "--package", "sugaring-wasm"]);
        Ok(build)
    });
    chain
}

fn tests(chain: &mut Chain<'_>) {
    chain.tests("tests in Node", || {
        Ok(program("node", "--test --test-reporter=tap tests/node"))
    });
}

fn package() -> PathBuf {
    target().join("npm/sugaring")
}
