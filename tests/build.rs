//! Lists the pages whose Rust runs as doc tests: the read-me, the guide, and every page of the book.

use std::{
    env, fs,
    io::Result,
    path::{Path, PathBuf},
};

fn main() -> Result<()> {
    let top = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let mut pages = vec![top.join("README.md"), top.join("DEVELOPERS.md")];
    find(&top.join("book/src"), &mut pages)?;
    let text: Vec<_> = pages
        .iter()
        .map(|page| {
            let name = name(page.strip_prefix(&top).unwrap_or(page));
            let page = page.display();
            format!("#[doc = include_str!(r\"{page}\")]\n#[derive(Clone, Copy, Debug)]\npub struct {name};\n")
        })
        .collect();
    let folder = env::var_os("OUT_DIR").unwrap_or_default();
    fs::write(Path::new(&folder).join("pages.rs"), text.concat())
}

fn find(folder: &Path, pages: &mut Vec<PathBuf>) -> Result<()> {
    println!("cargo::rerun-if-changed={}", folder.display());
    let mut entries = fs::read_dir(folder)?
        .map(|entry| Ok(entry?.path()))
        .collect::<Result<Vec<_>>>()?;
    entries.sort();
    for path in entries {
        if path.is_dir() {
            find(&path, pages)?;
        } else if path.extension().is_some_and(|ending| ending == "md") {
            pages.push(path);
        }
    }
    Ok(())
}

/// `book/src/properties/density.md` is `BookSrcPropertiesDensity`.
fn name(page: &Path) -> String {
    let shown = page.with_extension("").display().to_string().to_lowercase();
    let capital = |word: &str| {
        let mut letters = word.chars();
        letters
            .next()
            .map(|first| first.to_uppercase().chain(letters).collect::<String>())
            .unwrap_or_default()
    };
    shown.split(|c: char| !c.is_alphanumeric()).map(capital).collect()
}
