//! Blocks of a page between `<!-- name ... -->` and `<!-- end -->` are written here; the rest of it by people.

use std::{fs, path::Path};

use sugaring_pictures::Picture;

use super::{card, functions, lists};
use crate::{File, file::top};

const END: &str = "<!-- end -->";

/// The pages that have blocks.
pub(super) fn filled() -> Vec<File> {
    let pictures = sugaring_pictures::pictures();
    let mut pages = Vec::new();
    find("book/src", &mut pages);
    let with_blocks = pages.into_iter().filter_map(|path| {
        let text = fs::read_to_string(top().join(&path)).ok()?;
        text.contains(END).then(|| {
            let text = fill(&path, &text, &pictures);
            File::new(path, text)
        })
    });
    with_blocks.collect()
}

fn find(folder: &str, pages: &mut Vec<String>) {
    let entries = fs::read_dir(top().join(folder)).into_iter().flatten().flatten();
    let mut names: Vec<_> = entries
        .map(|entry| entry.file_name().to_string_lossy().into_owned())
        .collect();
    names.sort();
    for name in names {
        let path = format!("{folder}/{name}");
        if top().join(&path).is_dir() {
            find(&path, pages);
        } else if Path::new(&name).extension().is_some_and(|ending| ending == "md") {
            pages.push(path);
        }
    }
}

/// `text` with each block as it should be.
fn fill(path: &str, text: &str, pictures: &[Picture]) -> String {
    let mut filled = String::new();
    let mut rest = text;
    while let Some((before, after)) = rest.split_once(END) {
        let start = before.rfind("<!-- ").unwrap_or_default();
        let (kept, old) = before.split_at(start);
        let mark = old.split_once('\n').map_or(old, |(mark, _)| mark);
        let words = mark.trim_start_matches("<!-- ").trim_end_matches(" -->");
        filled += &format!("{kept}{mark}\n{}{END}", content(path, words, pictures));
        rest = after;
    }
    filled + rest
}

fn content(path: &str, words: &str, pictures: &[Picture]) -> String {
    match words.split_once(' ').unwrap_or((words, "")) {
        ("picture", name) => {
            let found = pictures.iter().find(|picture| picture.name == name);
            found.map_or_else(|| unknown(path, words), |picture| figure(path, picture))
        }
        ("relations", names) => functions::of(names).unwrap_or_else(|| unknown(path, words)),
        ("card", which) => card::of(which).unwrap_or_else(|| unknown(path, words)),
        ("jurisdictions", "") => card::jurisdictions(),
        ("instruments", "") => card::instruments(),
        ("units", "") => lists::units(),
        ("errors", "") => lists::errors(),
        ("schemas", "") => lists::schemas(),
        _ => unknown(path, words),
    }
}

/// A block that nobody knows stays visible in the page; a test looks for it.
fn unknown(path: &str, words: &str) -> String {
    format!("\n{path}: nobody writes \"{words}\"\n\n")
}

/// The picture stands in the page itself, so that it takes the colours of its theme; its words are for all.
fn figure(path: &str, picture: &Picture) -> String {
    let up = "../".repeat(path.matches('/').count() - 2);
    format!(
        "<figure>\n{{{{#include {up}pictures/{}.svg}}}}\n<figcaption>{}</figcaption>\n</figure>\n",
        picture.name, picture.words
    )
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    #[test]
    fn somebody_writes_every_block() {
        for file in super::filled() {
            assert!(!file.text.contains(": nobody writes "), "{}", file.path);
        }
    }

    #[test]
    fn every_picture_is_in_the_book() {
        let pages: String = super::filled().into_iter().map(|file| file.text).collect();
        let left_out: BTreeSet<_> = sugaring_pictures::pictures()
            .into_iter()
            .map(|picture| picture.name)
            .filter(|name| !pages.contains(&format!("pictures/{name}.svg")))
            .collect();
        assert!(left_out.is_empty(), "{left_out:?}");
    }

    #[test]
    fn a_block_is_filled_and_the_rest_is_kept() {
        let page = "above\n<!-- schemas -->\nold\n<!-- end -->\nbelow\n";
        let filled = super::fill("book/src/page.md", page, &[]);
        assert!(filled.starts_with("above\n<!-- schemas -->\n") && filled.ends_with("<!-- end -->\nbelow\n"));
        assert!(!filled.contains("old"));
        assert_eq!(super::fill("book/src/page.md", &filled, &[]), filled);
    }
}
