use std::{collections::BTreeMap, fmt::Write as _};

use super::{Tried, find::Coefficient, trial::Outcome};
use crate::command::{read, top, write};

const HEAD: &str = "# What the last `cargo xtask mutate` found of each coefficient; the book's page is written from it.
# place: as it stands -> changed to: rows that miss, or vectors that differ with their largest relative change
";

/// What is known of coefficients, by how they are written.
pub(crate) struct Records(BTreeMap<String, Outcome>);

impl Records {
    pub(crate) fn read() -> Result<Self, String> {
        let text = read(&top().join("tests/mutation.txt"))?;
        let lines = text.lines().filter(|line| !line.starts_with('#'));
        let records = lines.map(|line| {
            let parts = line.rsplit_once(": ");
            let known = parts.and_then(|(coefficient, outcome)| Some((coefficient.to_owned(), outcome.parse().ok()?)));
            known.ok_or_else(|| format!("tests/mutation.txt: {line}"))
        });
        Ok(Self(records.collect::<Result<_, _>>()?))
    }

    pub(crate) fn know(&self, coefficient: &Coefficient) -> bool {
        self.0.contains_key(&coefficient.to_string())
    }

    pub(crate) fn keep(&mut self, coefficient: &Coefficient, outcome: &Outcome) {
        self.0.insert(coefficient.to_string(), outcome.clone());
    }

    /// Of coefficients that stand no more nothing is kept.
    pub(crate) fn write(&self, all: &[Coefficient]) -> Result<(), String> {
        let mut text = String::from(HEAD);
        for coefficient in all {
            let line = coefficient.to_string();
            if let Some(outcome) = self.0.get(&line) {
                let _ = writeln!(text, "{line}: {outcome}");
            }
        }
        write(&top().join("tests/mutation.txt"), text)
    }

    pub(crate) fn of(&self, all: Vec<Coefficient>) -> Vec<Tried> {
        let tried = all.into_iter().map(|coefficient| Tried {
            outcome: self.0.get(&coefficient.to_string()).cloned(),
            coefficient,
        });
        tried.collect()
    }
}
