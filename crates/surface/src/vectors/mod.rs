//! The vectors by which every language is judged; what the files hold: `tests/conformance/README.md`.

use crate::File;

mod asks;
mod calls;
mod catalogue;
mod days;
mod edges;
mod functions;
mod json;

pub(crate) fn files() -> Vec<File> {
    let (days, lines) = days::files_and_lines();
    let calls = calls::lines().into_iter().chain(lines);
    let file = |name: &str, lines: &mut dyn Iterator<Item = String>| {
        let text: String = lines.map(|line| line + "\n").collect();
        File::new(format!("tests/conformance/{name}.jsonl"), text)
    };
    let mut files = vec![
        functions::file(),
        catalogue::file(),
        file("calls", &mut { calls }),
        file("asks", &mut asks::lines().into_iter()),
        file("edges", &mut edges::lines().into_iter()),
    ];
    files.extend(days);
    files
}
