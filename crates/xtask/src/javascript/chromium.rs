//! The browser in which the module is tried.

use std::{env, path::PathBuf};

use crate::{
    chain::Prepared,
    command::{program, said},
    machine,
};

/// Debian's, or what `CHROMIUM` names.
pub(crate) fn path() -> Option<PathBuf> {
    let named = env::var_os("CHROMIUM").map(PathBuf::from);
    let usual = [
        "/usr/bin/chromium",
        "/usr/bin/chromium-browser",
        "/usr/bin/google-chrome",
    ];
    let all = named.into_iter().chain(usual.map(PathBuf::from));
    all.into_iter().find(|path| path.exists())
}

pub(crate) fn make_sure() -> Prepared<()> {
    if path().is_none() {
        machine::install("chromium", "The page in a browser cannot be run without Chromium")?;
    }
    let path = path().ok_or("Chromium was installed but is not in /usr/bin: name it in CHROMIUM")?;
    let version = said(program(&path, "--version").env("HOME", env::temp_dir()));
    println!("{}: {}", path.display(), version.ok_or("Chromium does not start")?);
    Ok(())
}
