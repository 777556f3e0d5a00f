//! Changes the last digit of each coefficient in turn and asks the judges who sees it.
//!
//! Not part of the test run: it builds a copy of the core and runs the judges once a coefficient, some minutes. What is
//! found stands in `tests/mutation.txt`, and the book says it.

use std::{env, fs, path::Path};

use crate::command::{top, write};
use find::Coefficient;
use page::page;
use record::Records;
use trial::{Outcome, Workspace};

mod explained;
mod find;
mod page;
mod record;
mod rewrite;
mod trial;

/// Rooms whose coefficients are tried.
const ROOMS: [&str; 3] = ["water", "air", "sucrose"];

/// A coefficient, and what its changed last digit did, if it was tried.
pub(crate) struct Tried {
    coefficient: Coefficient,
    outcome: Option<Outcome>,
}

/// Tries the coefficients that are chosen by their place and by whether something is recorded of them, and writes
/// records and page.
pub(crate) fn run(chosen: impl Fn(&str, bool) -> bool) -> bool {
    match tried(chosen) {
        Ok(all) => {
            println!("{}", page::counts(&all));
            true
        }
        Err(error) => {
            eprintln!("{error}");
            false
        }
    }
}

fn tried(chosen: impl Fn(&str, bool) -> bool) -> Result<Vec<Tried>, String> {
    let all = coefficients()?;
    let mut records = Records::read()?;
    let of_all = all.iter().enumerate();
    let chosen: Vec<_> = of_all
        .filter(|(_, coefficient)| chosen(&coefficient.place(), records.know(coefficient)))
        .collect();
    if !chosen.is_empty() {
        let workspace = Workspace::copied(&env::temp_dir().join("sugaring-mutants"), &all)?;
        let untouched = workspace.judged(None)?;
        if untouched != Outcome::Unseen {
            return Err(format!("without a change the judges say {untouched:?}"));
        }
        for (number, coefficient) in &chosen {
            let outcome = workspace.judged(Some(*number))?;
            println!("{coefficient}: {outcome}");
            records.keep(coefficient, &outcome);
        }
        records.write(&all)?;
    }
    let all = records.of(all);
    write(&top().join("book/src/mutation.md"), page(&all))?;
    Ok(all)
}

fn coefficients() -> Result<Vec<Coefficient>, String> {
    let mut all = Vec::new();
    for room in ROOMS {
        all.extend(find::coefficients(&top().join("crates/sugaring/src"), room)?);
    }
    Ok(all)
}

/// The text of a file of the core.
fn source(folder: &Path, file: &str) -> Result<String, String> {
    fs::read_to_string(folder.join(file)).map_err(|error| format!("{file}: {error}"))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Else run `cargo xtask mutate` for what has changed, or `cargo xtask mutate --page`.
    #[test]
    fn the_page_says_what_is_recorded() {
        let all = Records::read().and_then(|records| Ok(records.of(coefficients()?)));
        let page = all.map(|all| page(&all));
        assert_eq!(page, crate::command::read(&top().join("book/src/mutation.md")));
    }
}
