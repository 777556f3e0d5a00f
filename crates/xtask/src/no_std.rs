//! The core without an operating system: linked for a target that has none.

use std::{
    fs,
    path::{Path, PathBuf},
    process::{Command, Stdio},
};

use crate::{
    command::{cargo, top},
    report::Report,
};

const TARGET: &str = "wasm32-unknown-unknown";
const HELP: &str = "The library of the target wasm32-unknown-unknown is not installed and rustup cannot fetch it.
Where rustup has a network: rustup target add wasm32-unknown-unknown
On Debian without it, as root: apt-get install --no-install-recommends rustc-web cargo-web rust-web-src
and run this again: that compiler builds the library from source.";

/// Links `tests/no_std` with the smallest and the largest feature set that needs no std.
pub(crate) fn link(report: &mut Report) {
    for features in ["", "json", "schema"] {
        let name = if features.is_empty() {
            String::from("no_std link: no features")
        } else {
            format!("no_std link: {features}")
        };
        match builder() {
            Some(mut build) => report.check(
                &name,
                build
                    .args([
                        "--locked",
                        "--package",
                        "sugaring-no-std",
                        "--target",
                        TARGET,
                        "--features",
                    ])
                    .arg(features),
            ),
            None => report.fail(&name, HELP),
        }
    }
}

/// A `cargo build` that has the target's library.
fn builder() -> Option<Command> {
    if installed() || added() {
        return Some(cargo("build"));
    }
    from_source()
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
fn from_source() -> Option<Command> {
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
    let mut build = Command::new(cargo);
    build
        .args([
            "build",
            "-Z",
            "build-std=std,panic_abort",
            "--target-dir",
            "target/from-source",
        ])
        .env("RUSTC_BOOTSTRAP", "1")
        .env("RUSTC", rustc)
        .env(
            "CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER",
            root.join("x86_64-unknown-linux-gnu/bin/rust-lld"),
        )
        .env_remove("RUSTUP_TOOLCHAIN")
        .current_dir(top());
    Some(build)
}
