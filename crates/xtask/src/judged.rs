//! Adds up the lines in which the judge of `sugaring-tests` says how the rows of a table stand.

use std::{collections::BTreeMap, fs, path::Path};

use crate::command::top;

/// Rows by table.
#[derive(Debug, Default)]
pub(crate) struct Judged(BTreeMap<String, Table>);

#[derive(Debug, Default)]
struct Table {
    /// Rows that stand, by kind.
    kinds: BTreeMap<String, usize>,
    between: usize,
    known: usize,
    missed: usize,
    rejected: usize,
    rows: usize,
}

impl Judged {
    /// Takes in `line` where it is a judge's.
    pub(crate) fn read(&mut self, line: &str) {
        let Some((name, figures)) = line.strip_prefix("judged ").and_then(|rest| rest.split_once(": ")) else {
            return;
        };
        let name = name.rsplit('/').next().unwrap_or(name);
        let table = self.0.entry(name.to_owned()).or_default();
        let (mut rejected, mut rows) = (0, 0);
        for (label, count) in figures.split(", ").filter_map(figure) {
            match label {
                "between tolerance and model accuracy" => {
                    table.between += count;
                    continue;
                }
                "known misses" => table.known += count,
                "misses" => table.missed += count,
                "rejected" => rejected = count,
                "skipped" => {}
                kind => *table.kinds.entry(kind.to_owned()).or_default() += count,
            }
            rows += count;
        }
        // A table may be judged in more than one call; each sees all its rows.
        table.rejected = table.rejected.max(rejected);
        table.rows = table.rows.max(rows);
    }

    /// What stands, what misses, and what nobody judged.
    pub(crate) fn print(&self) {
        let stored = stored_tables();
        let tables = || self.0.iter().filter(|(name, _)| stored.contains(name));
        if tables().next().is_none() {
            return;
        }
        let mut kinds = BTreeMap::<&str, usize>::new();
        for (kind, count) in tables().flat_map(|(_, table)| &table.kinds) {
            *kinds.entry(kind).or_default() += count;
        }
        let sum = |part: fn(&Table) -> usize| tables().map(|(_, table)| part(table)).sum::<usize>();
        println!("\nRows of {} tables that stand, by kind:", tables().count());
        for (kind, count) in kinds {
            println!("  {kind:<16} {count:>5}");
        }
        println!("  known misses     {:>5}  as listed, with their size", sum(|t| t.known));
        println!("Rows that miss     {:>5}", sum(|t| t.missed));
        println!(
            "Rows beyond their printed tolerance but within the stated accuracy: {}",
            sum(|t| t.between)
        );
        println!("Rows rejected as documentation: {}", sum(|t| t.rejected));
        let left = stored.iter().filter_map(|name| match self.0.get(name) {
            None => Some(format!("{name} (all)")),
            Some(table) => match table.left() {
                0 => None,
                left => Some(format!("{name} ({left})")),
            },
        });
        let left = left.collect::<Vec<_>>();
        if !left.is_empty() {
            println!("Rows without a judge: {}", left.join(", "));
        }
    }
}

impl Table {
    fn left(&self) -> usize {
        let judged = self.kinds.values().sum::<usize>() + self.known + self.missed + self.rejected;
        self.rows.saturating_sub(judged)
    }
}

/// `published 12 (largest 0.30 of tolerance)` as its label and count.
fn figure(text: &str) -> Option<(&str, usize)> {
    let text = text.split(" (").next()?;
    let (label, count) = text.rsplit_once(' ')?;
    Some((label, count.parse().ok()?))
}

fn stored_tables() -> Vec<String> {
    let names = |folder: &str| {
        let entries = fs::read_dir(top().join("tests").join(folder))
            .into_iter()
            .flatten()
            .flatten();
        entries.filter_map(|entry| entry.file_name().into_string().ok())
    };
    let mut all = names("published")
        .chain(names("derived"))
        .filter(|name| Path::new(name).extension().is_some_and(|ending| ending == "csv"))
        .collect::<Vec<_>>();
    all.sort();
    all
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn two_calls_on_one_table_add_up() {
        let mut judged = Judged::default();
        let tail = "between tolerance and model accuracy 1, known misses 1, rejected 2";
        judged.read(&format!(
            "judged a.csv: published 3 (largest 0.30 of tolerance), {tail}, skipped 4, misses 0"
        ));
        judged.read(&format!(
            "judged a.csv: derived 2 (largest 0.10 of tolerance), {tail}, skipped 4, misses 1"
        ));
        judged.read("something else");
        let table = &judged.0["a.csv"];
        assert_eq!((table.rows, table.known, table.missed, table.rejected), (10, 2, 1, 2));
        assert_eq!(table.left(), 0);
    }
}
