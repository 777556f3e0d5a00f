//! Programs and folders.

use std::{
    env,
    ffi::OsStr,
    fs,
    path::{Path, PathBuf},
    process::{Command, Stdio},
};

/// `cargo` with `arguments`, in the top folder.
pub(crate) fn cargo(arguments: &str) -> Command {
    let mut command = Command::new(env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    command.args(arguments.split_whitespace()).current_dir(top());
    command
}

/// `program` with `arguments`, in the top folder.
pub(crate) fn program(program: impl AsRef<OsStr>, arguments: &str) -> Command {
    let mut command = Command::new(program);
    command.args(arguments.split_whitespace()).current_dir(top());
    command
}

/// The top folder of the workspace.
pub(crate) fn top() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.ancestors().nth(2).unwrap_or(here).to_path_buf()
}

/// The folder of what is built.
pub(crate) fn target() -> PathBuf {
    let named = env::var_os("CARGO_TARGET_DIR").filter(|folder| !folder.is_empty());
    top().join(named.map_or_else(|| PathBuf::from("target"), PathBuf::from))
}

/// What `command` prints, if it ends well.
pub(crate) fn said(command: &mut Command) -> Option<String> {
    let output = command.stderr(Stdio::null()).output().ok()?;
    let text = String::from_utf8(output.stdout).ok()?;
    output.status.success().then(|| text.trim().to_owned())
}

/// Runs `command`, which streams what it says.
pub(crate) fn done(command: &mut Command) -> Result<(), String> {
    let name = command.get_program().to_string_lossy().into_owned();
    match command.status() {
        Ok(status) if status.success() => Ok(()),
        Ok(status) => Err(format!("{name} ended with {status}")),
        Err(error) => Err(format!("cannot start {name}: {error}")),
    }
}

pub(crate) fn read(path: &Path) -> Result<String, String> {
    fs::read_to_string(path).map_err(|error| format!("{}: {error}", path.display()))
}

pub(crate) fn write(path: &Path, text: impl AsRef<[u8]>) -> Result<(), String> {
    if let Some(folder) = path.parent() {
        fs::create_dir_all(folder).map_err(|error| format!("{}: {error}", folder.display()))?;
    }
    fs::write(path, text).map_err(|error| format!("{}: {error}", path.display()))
}

/// An empty folder at `path`, whatever was there.
pub(crate) fn emptied(path: &Path) -> Result<(), String> {
    if path.exists() {
        fs::remove_dir_all(path).map_err(|error| format!("{}: {error}", path.display()))?;
    }
    fs::create_dir_all(path).map_err(|error| format!("{}: {error}", path.display()))
}

/// Every entry of `folder`, by name.
pub(crate) fn entries(folder: &Path) -> Vec<PathBuf> {
    let found = fs::read_dir(folder).into_iter().flatten().flatten();
    let mut all = found.map(|entry| entry.path()).collect::<Vec<_>>();
    all.sort();
    all
}

/// The size of a file as people read it.
pub(crate) fn size(path: &Path) -> Result<String, String> {
    let data = fs::metadata(path).map_err(|error| format!("{}: {error}", path.display()))?;
    Ok(kilobytes(data.len()))
}

pub(crate) fn kilobytes(bytes: u64) -> String {
    format!("{}.{} kB", bytes / 1000, bytes % 1000 / 100)
}

/// How often `mark` stands in a file of the repository.
pub(crate) fn marks(path: &str, mark: &str) -> Result<String, String> {
    Ok(read(&top().join(path))?.matches(mark).count().to_string())
}

/// Panics name source files: those of a build to hand on name the crates alone, not where this machine keeps them.
pub(crate) fn without_folders(build: &mut Command) {
    let named = env::var_os("CARGO_HOME").map(PathBuf::from);
    if let Some(home) = named.or_else(|| env::home_dir().map(|home| home.join(".cargo"))) {
        let flag = format!("--remap-path-prefix={}=cargo", home.display());
        build.env("CARGO_ENCODED_RUSTFLAGS", flag);
    }
}
