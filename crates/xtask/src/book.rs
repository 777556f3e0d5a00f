//! The book: its pictures, which are drawn where the core is linked, then the pages, where mdbook is installed.

use std::env;

use crate::command::{cargo, done, program, said};

pub(crate) fn build() -> bool {
    let drawn = done(&mut cargo("run --quiet --locked --package sugaring-pictures"));
    drawn
        .and_then(|()| pages())
        .map_err(|error| eprintln!("{error}"))
        .is_ok()
}

/// `MDBOOK` names another mdbook than that on the path.
fn pages() -> Result<(), String> {
    let mdbook = env::var_os("MDBOOK").unwrap_or_else(|| "mdbook".into());
    if said(&mut program(&mdbook, "--version")).is_none() {
        eprintln!("pictures are in book/src/pictures; for the pages: cargo install mdbook");
        return Ok(());
    }
    done(&mut program(&mdbook, "build book"))
}
