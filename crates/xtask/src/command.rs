//! Cargo calls at the top of the workspace.

use std::{
    env,
    path::{Path, PathBuf},
    process::Command,
};

/// `cargo` with `arguments`, in the top folder.
pub(crate) fn cargo(arguments: &str) -> Command {
    let mut command = Command::new(env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    command.args(arguments.split_whitespace()).current_dir(top());
    command
}

/// The top folder of the workspace.
pub(crate) fn top() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.ancestors().nth(2).unwrap_or(here).to_path_buf()
}
