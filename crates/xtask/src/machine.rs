//! What a fresh Debian lacks, installed where we may.

use std::process::Command;

use crate::command::{done, program, said};

/// Installs Debian's `package` as root; else says the command.
pub(crate) fn install(package: &str, what_for: &str) -> Result<(), String> {
    let by_hand = format!("{what_for}: as root, apt-get install --no-install-recommends {package}");
    if said(&mut program("id", "-u")).as_deref() != Some("0") || said(&mut program("apt-get", "--version")).is_none() {
        return Err(by_hand);
    }
    println!("installing {package}");
    // The lists of a fresh machine are empty or old.
    if done(&mut apt(package)).is_ok() {
        return Ok(());
    }
    done(program("apt-get", "-q update").env("DEBIAN_FRONTEND", "noninteractive"))
        .and_then(|()| done(&mut apt(package)))
        .map_err(|error| format!("{error}\n{by_hand}"))
}

fn apt(package: &str) -> Command {
    let mut command = program("apt-get", "install -q -y --no-install-recommends");
    command.arg(package).env("DEBIAN_FRONTEND", "noninteractive");
    command
}
