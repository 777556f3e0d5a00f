//! A virtual environment beside what is built, with what the tests need.

use std::{fs, path::PathBuf, process::Command};

use crate::{
    chain::Prepared,
    command::{done, program, read, said, target, top, write},
    machine,
};

const REQUIREMENTS: &str = "tests/python/requirements.txt";
/// Newest first, behind the one that the user means by `python3`.
const NAMES: [&str; 5] = ["python3", "python3.14", "python3.13", "python3.12", "python3.11"];

/// A program of the environment.
pub(crate) fn tool(name: &str, arguments: &str) -> Command {
    let mut command = program(folder().join("bin").join(name), arguments);
    command
        .env("VIRTUAL_ENV", folder())
        .env("PYTHONDONTWRITEBYTECODE", "1")
        .env_remove("PYTHONPATH")
        .env_remove("PYTHONHOME");
    command
}

pub(crate) fn folder() -> PathBuf {
    target().join("venv")
}

/// Makes the environment where there is none that runs.
pub(crate) fn make() -> Prepared<()> {
    if said(&mut tool("python", "-m pip --version")).is_some() {
        println!("{} is there", folder().display());
        return Ok(());
    }
    let python = interpreter()?;
    if said(program(python, "-c").arg("import ensurepip, venv")).is_none() {
        machine::install("python3-venv", "Python cannot make virtual environments")?;
    }
    if folder().exists() {
        fs::remove_dir_all(folder()).map_err(|error| format!("{}: {error}", folder().display()))?;
    }
    done(program(python, "-m venv").arg(folder()))
}

/// Installs what the tests need, where the list has changed since.
pub(crate) fn fill() -> Prepared<()> {
    let wanted = read(&top().join(REQUIREMENTS))?;
    let stamp = folder().join("requirements.installed");
    if fs::read_to_string(&stamp).is_ok_and(|had| had == wanted) {
        println!("{REQUIREMENTS} is installed");
        return Ok(());
    }
    done(tool("python", "-m pip install --quiet --disable-pip-version-check -r").arg(REQUIREMENTS))?;
    write(&stamp, wanted)
}

fn interpreter() -> Prepared<&'static str> {
    let new_enough = |name: &&str| {
        let asked = "import sys; sys.exit(sys.version_info < (3, 11))";
        said(program(name, "-c").arg(asked)).is_some()
    };
    let found = NAMES.iter().copied().find(new_enough);
    found.ok_or_else(|| String::from("Python 3.11 or later is not installed: as root, apt-get install python3"))
}
