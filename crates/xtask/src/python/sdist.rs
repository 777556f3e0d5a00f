//! The source distribution: made, its lock file cut to what it holds, packed again, and built from.
//!
//! A source distribution of a workspace keeps the workspace's lock file, which names members that are not in it, so
//! that `--locked` would refuse it.

use std::{path::PathBuf, process::Command};

use super::venv::tool;
use crate::{
    chain::Prepared,
    command::{cargo, done, emptied, entries, program, target},
};

/// Makes it; the folder of its files stays for [`check`].
pub(crate) fn make(manifest: &str) -> Prepared<()> {
    emptied(&folder())?;
    done(
        tool("maturin", "sdist --manifest-path")
            .arg(manifest)
            .arg("--out")
            .arg(folder()),
    )?;
    let archive = archive()?;
    done(
        program("tar", "--extract --gzip --file")
            .arg(&archive)
            .arg("--directory")
            .arg(folder()),
    )?;
    let files = files()?;
    done(
        cargo("metadata --quiet --offline --format-version 1")
            .current_dir(&files)
            .stdout(std::process::Stdio::null()),
    )?;
    let name = files.file_name().unwrap_or_default();
    done(
        program(
            "tar",
            "--create --gzip --sort=name --owner=0 --group=0 --numeric-owner --file",
        )
        .arg(&archive)
        .arg("--directory")
        .arg(folder())
        .arg(name),
    )
}

/// Checks what came out of it as its receiver would, with nothing fetched.
pub(crate) fn check() -> Prepared<Command> {
    let mut check = cargo("check --quiet --locked --offline --manifest-path bindings/python/Cargo.toml");
    check.current_dir(files()?).env("CARGO_TARGET_DIR", target());
    Ok(check)
}

/// The packed file.
pub(crate) fn archive() -> Prepared<PathBuf> {
    let mut all = entries(&folder()).into_iter();
    let found = all.find(|path| path.extension().is_some_and(|ending| ending == "gz"));
    found.ok_or_else(|| String::from("maturin made no source distribution"))
}

fn files() -> Prepared<PathBuf> {
    let found = entries(&folder()).into_iter().find(|path| path.is_dir());
    found.ok_or_else(|| String::from("the source distribution is empty"))
}

fn folder() -> PathBuf {
    target().join("sdist")
}
