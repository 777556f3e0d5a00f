//! The library of the target without an operating system, from rustup or from source.

use std::{
    fs,
    path::{Path, PathBuf},
    process::{Command, Stdio},
};

use crate::command::{cargo, target, top};

pub(crate) const TARGET: &str = "wasm32-unknown-unknown";
const HELP: &str = "The library of the target wasm32-unknown-unknown is not installed and rustup cannot fetch it.
Where rustup has a network: rustup target add wasm32-unknown-unknown
On Debian without it, as root: apt-get install --no-install-recommends rustc-web cargo-web rust-web-src
and run this again: that compiler builds the library from source.";

/// A `cargo build` that has the target's library, and the folder it builds into.
pub(crate) fn builder() -> Result<(Command, PathBuf), String> {
    let mut build = if installed() || added() {
        (cargo("build"), target())
    } else {
        from_source().ok_or(HELP)?
    };
    build.0.args(["--locked", "--target", TARGET]);
    Ok(build)
}

fn installed() -> bool {
    let printed = Command::new("rustc")
        .args(["--print", "target-libdir", "--target", TARGET])
        .current_dir(top())
        .output();
    printed.is_ok_and(|output| {
        let folder = PathBuf::from(String::from_utf8_lossy(&output.stdout).trim());
        fs::read_dir(folder).is_ok_and(|mut entries| entries.next().is_some())
    })
}

fn added() -> bool {
    let status = Command::new("rustup")
        .args(["target", "add", TARGET])
        .current_dir(top())
        .status();
    status.is_ok_and(|s| s.success()) && installed()
}

/// Debian's compiler for the web, which brings the library's source.
fn from_source() -> Option<(Command, PathBuf)> {
    let (rustc, cargo) = (Path::new("/usr/bin/rustc"), Path::new("/usr/bin/cargo"));
    if !rustc.exists() || !cargo.exists() {
        return None;
    }
    let printed = Command::new(rustc)
        .args(["--print", "sysroot"])
        .stderr(Stdio::null())
        .output()
        .ok()?;
    let sysroot = PathBuf::from(String::from_utf8_lossy(&printed.stdout).trim());
    let root = sysroot.join("lib/rustlib");
    if !root.join("src/rust/library").exists() {
        return None;
    }
    println!("building the library of {TARGET} from source with {}", rustc.display());
    // Another compiler: a folder of its own, or each would build all of the other's anew.
    let folder = target().join("from-source");
    let mut build = Command::new(cargo);
    build
        .args(["build", "-Z", "build-std=std,panic_abort", "--target-dir"])
        .arg(&folder)
        .env("RUSTC_BOOTSTRAP", "1")
        .env("RUSTC", rustc)
        .env(
            "CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER",
            root.join("x86_64-unknown-linux-gnu/bin/rust-lld"),
        )
        .env_remove("RUSTUP_TOOLCHAIN")
        .current_dir(top());
    Some((build, folder))
}
