//! Node, npm, and the tools of `tests/node`.

use std::{fs, path::PathBuf, process::Command};

use crate::{
    chain::Prepared,
    command::{done, entries, program, read, said, top, write},
};

const OLDEST: u32 = 20;

/// The folder of the tests and of the tools they need.
pub(crate) fn folder() -> PathBuf {
    top().join("tests/node")
}

/// A tool of `tests/node`, run in that folder.
pub(crate) fn tool(name: &str, arguments: &str) -> Command {
    let mut command = program(folder().join("node_modules/.bin").join(name), arguments);
    command.current_dir(folder());
    command
}

pub(crate) fn npm(arguments: &str) -> Command {
    let mut command = program("npm", arguments);
    command
        .args(["--no-audit", "--no-fund", "--no-update-notifier", "--ignore-scripts"])
        .current_dir(folder());
    command
}

/// The test programs of a folder, named one by one: what Node does with a folder changes with its version.
pub(crate) fn tests(folder: &str) -> Prepared<Command> {
    let mut files = entries(&top().join(folder));
    files.retain(|path| path.to_string_lossy().ends_with(".test.js") || path.to_string_lossy().ends_with(".test.mjs"));
    if files.is_empty() {
        return Err(format!("{folder} has no file *.test.mjs"));
    }
    let mut test = program("node", "--test --test-reporter=tap");
    test.args(files);
    Ok(test)
}

/// Whether Node is there and new enough.
pub(crate) fn find() -> Prepared<()> {
    let help = format!("Node {OLDEST} or later and npm are not installed: as root, apt-get install nodejs npm");
    let version = said(&mut program("node", "--version")).ok_or_else(|| help.clone())?;
    let major = version.trim_start_matches('v').split('.').next();
    if major.and_then(|number| number.parse::<u32>().ok()) < Some(OLDEST) {
        return Err(format!("Node is {version}; {help}"));
    }
    let npm = said(&mut program("npm", "--version")).ok_or(help)?;
    println!("Node {version}, npm {npm}");
    Ok(())
}

/// Installs the tools, where the lock file has changed since.
pub(crate) fn install() -> Prepared<()> {
    let wanted = read(&folder().join("package-lock.json"))?;
    let stamp = folder().join("node_modules/.installed-lock.json");
    if fs::read_to_string(&stamp).is_ok_and(|had| had == wanted) {
        println!("tests/node/package-lock.json is installed");
        return Ok(());
    }
    done(&mut npm("ci"))?;
    write(&stamp, wanted)
}
