use std::{path::PathBuf, process::Command};

use super::{
    sdist,
    venv::{self, tool},
};
use crate::{
    chain::{Chain, Prepared},
    command::{emptied, entries, size, target},
    report::Report,
};

const MANIFEST: &str = "bindings/python/Cargo.toml";

/// Everything.
pub(crate) fn all(report: &mut Report) {
    let mut chain = built(report);
    tests(&mut chain);
    chain.check("examples under mypy --strict", || Ok(mypy("right")));
    chain.check("slips refused by mypy", || Ok(mypy("slips")));
    chain.check("stubs against the module", || Ok(stubs()));
    chain.work("source distribution", || sdist::make(MANIFEST));
    chain.check("source distribution builds --locked, offline", sdist::check);
    chain.figure("wheel", wheel().and_then(|path| size(&path)));
    chain.figure("source distribution", sdist::archive().and_then(|path| size(&path)));
}

/// The wheel and its tests.
pub(crate) fn inner_loop(report: &mut Report) {
    tests(&mut built(report));
}

fn built(report: &mut Report) -> Chain<'_> {
    let mut chain = Chain::new(report, "python");
    chain.need_work("environment", venv::make);
    chain.need_work("requirements", venv::fill);
    chain.need_work("folder of wheels", || emptied(&wheels()));
    chain.need("wheel", || {
        let mut build = tool("maturin", "build --release --locked --manifest-path");
        build.arg(MANIFEST).arg("--out").arg(wheels());
        build.env("CARGO_TARGET_DIR", target());
        Ok(build)
    });
    chain.need("wheel installed", || {
        let mut install = tool("python", "-m pip install --quiet --disable-pip-version-check");
        install
            .args(["--force-reinstall", "--no-deps", "--no-index"])
            .arg(wheel()?);
        Ok(install)
    });
    chain
}

fn tests(chain: &mut Chain<'_>) {
    chain.tests("tests", || {
        Ok(tool("python", "-m pytest tests/python -q -ra -p no:cacheprovider"))
    });
}

fn mypy(which: &str) -> Command {
    let mut check = tool(
        "python",
        "-m mypy --strict --config-file tests/python/mypy.ini --cache-dir",
    );
    check.arg(target().join("mypy"));
    check.arg(format!("tests/python/typing/{which}.py"));
    check
}

fn stubs() -> Command {
    tool(
        "python",
        "-m mypy.stubtest sugaring --allowlist tests/python/stubtest.txt",
    )
}

fn wheels() -> PathBuf {
    target().join("wheels")
}

fn wheel() -> Prepared<PathBuf> {
    let mut all = entries(&wheels()).into_iter();
    let found = all.find(|path| path.extension().is_some_and(|ending| ending == "whl"));
    found.ok_or_else(|| String::from("maturin made no wheel"))
}
