use std::{
    path::{Path, PathBuf},
    process::Command,
};

use super::{
    sdist,
    venv::{self, tool},
};
use crate::{
    chain::{Chain, Prepared},
    command::{emptied, entries, marks, size, target, without_folders},
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
    chain.figure("slips refused", marks("tests/python/typing/slips.py", "type: ignore["));
    chain.figure("wheel", wheel(&wheels()).and_then(|path| size(&path)));
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
    chain.need("wheel with a fault", || {
        emptied(&with_fault())?;
        let mut build = build(&with_fault());
        build.args(["--features", "fault"]);
        Ok(build)
    });
    chain.need("wheel with a fault, apart", || {
        let mut install = install(&wheel(&with_fault())?);
        install.arg("--target").arg(with_fault().join("installed"));
        Ok(install)
    });
    chain.need("wheel", || {
        emptied(&wheels())?;
        Ok(build(&wheels()))
    });
    chain.need("wheel installed", || Ok(install(&wheel(&wheels())?)));
    chain
}

fn build(folder: &Path) -> Command {
    let mut build = tool("maturin", "build --release --locked --manifest-path");
    build.arg(MANIFEST).arg("--out").arg(folder);
    build.env("CARGO_TARGET_DIR", target());
    without_folders(&mut build);
    build
}

fn install(wheel: &Path) -> Command {
    let mut install = tool("python", "-m pip install --quiet --disable-pip-version-check");
    install
        .args(["--force-reinstall", "--no-deps", "--no-index"])
        .arg(wheel);
    install
}

/// `SUGARING_WITH_FAULT` is a folder for `PYTHONPATH`: there the core panics on demand.
fn tests(chain: &mut Chain<'_>) {
    chain.tests("tests", || {
        let mut test = tool("python", "-m pytest tests/python -q -ra -p no:cacheprovider");
        test.env("SUGARING_WITH_FAULT", with_fault().join("installed"));
        Ok(test)
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

fn with_fault() -> PathBuf {
    target().join("wheels_with_fault")
}

fn wheel(folder: &Path) -> Prepared<PathBuf> {
    let mut all = entries(folder).into_iter();
    let found = all.find(|path| path.extension().is_some_and(|ending| ending == "whl"));
    found.ok_or_else(|| String::from("maturin made no wheel"))
}
