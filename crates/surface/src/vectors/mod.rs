//! The vectors by which every language is judged; what the files hold: `tests/conformance/README.md`.

use crate::File;

mod calls;
mod days;
mod functions;
mod json;

pub(crate) fn files() -> Vec<File> {
    let (days, lines) = days::files_and_lines();
    let calls = calls::lines().into_iter().chain(lines);
    let text: String = calls.map(|line| line + "\n").collect();
    let mut files = vec![functions::file(), File::new("tests/conformance/calls.jsonl", text)];
    files.extend(days);
    files
}
