//! How a row is judged: the rule of `tests/published/README.md`.

use std::{collections::BTreeMap, fmt::Write as _};

use crate::row::{Row, last_digit, rows};

/// Holds `relation` against every row of `table`, the text of the file `name`, and panics once with all misses.
///
/// `relation` gives the figure for a row in the row's `unit`, or `None` where this call does not judge
/// that row (another quantity); such rows count as skipped, never as passed. A typed error is a miss.
///
/// ```
/// use sugaring_tests::judge;
/// let table = "temp_c,value,unit,tolerance,kind\n20,68,degF,0.5,published\n";
/// judge("doc.csv", table, |row| Ok(Some(row.number("temp_c") * 1.8 + 32.0)));
/// ```
pub fn judge(name: &str, table: &str, mut relation: impl FnMut(&Row) -> Result<Option<f64>, sugaring::Error>) {
    let Verdict { summary, misses } = judged(name, table, &mut relation);
    println!("{summary}");
    assert!(
        misses.is_empty(),
        "{name}: {} rows miss\n{}",
        misses.len(),
        misses.join("\n")
    );
}

/// What [`judge`] prints and panics with.
pub(crate) fn judged(
    name: &str,
    table: &str,
    relation: &mut dyn FnMut(&Row) -> Result<Option<f64>, sugaring::Error>,
) -> Verdict {
    verdict(name, &rows(name, table), relation)
}

pub(crate) struct Verdict {
    pub(crate) summary: String,
    pub(crate) misses: Vec<String>,
}

#[derive(Default)]
struct Tally {
    /// Rows that stand and the largest share of what was allowed, by kind.
    kinds: BTreeMap<String, (usize, f64)>,
    between: usize,
    known: usize,
    rejected: usize,
    skipped: usize,
    misses: Vec<String>,
}

fn verdict(
    name: &str,
    rows: &[Row],
    relation: &mut dyn FnMut(&Row) -> Result<Option<f64>, sugaring::Error>,
) -> Verdict {
    let mut tally = Tally::default();
    for row in rows {
        if row.is_rejected() {
            tally.rejected += 1;
            continue;
        }
        match relation(row) {
            Ok(None) => tally.skipped += 1,
            Ok(Some(figure)) => tally.weigh(row, figure),
            Err(error) => tally
                .misses
                .push(format!("  {} {}: {error}", row.place(), row.inputs())),
        }
    }
    if tally.kinds.is_empty() && tally.known == 0 && tally.misses.is_empty() {
        tally.misses.push(String::from("  no row was judged"));
    }
    Verdict {
        summary: tally.summary(name),
        misses: tally.misses,
    }
}

/// How a row stands by the rule.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// Within the tolerance of its source.
    Stands,
    /// Beyond that, within the accuracy that the relation states.
    Between,
    /// Off by just what is listed.
    KnownMiss,
    /// Listed as a miss, and off by something else.
    KnownMissMoved,
    /// Off by more than is allowed.
    Misses,
}

/// How far a figure lies from its row, and what is allowed.
#[derive(Clone, Copy, Debug)]
pub struct Weighed {
    /// Figure minus value, in the row's unit.
    pub deviation: f64,
    /// What is allowed, in the row's unit.
    pub allowed: f64,
    /// The verdict.
    pub standing: Standing,
}

/// The rule.
pub(crate) fn weigh(row: &Row, figure: f64) -> Weighed {
    let value = row.number("value");
    let tolerance = row.tolerance();
    let allowed = row
        .optional_number("model_accuracy")
        .map_or(tolerance, |accuracy| accuracy.max(tolerance));
    let deviation = match row.optional_text("unit") {
        Some("brix_pct_at_least") if figure >= value => 0.0,
        _ => figure - value,
    };
    let standing = if let Some(known) = row.optional_text("known_miss") {
        if (deviation - row.number("known_miss")).abs() <= 0.6 * last_digit(known) {
            Standing::KnownMiss
        } else {
            Standing::KnownMissMoved
        }
    } else if deviation.abs() <= tolerance {
        Standing::Stands
    } else if deviation.abs() <= allowed {
        Standing::Between
    } else {
        Standing::Misses
    };
    Weighed {
        deviation,
        allowed,
        standing,
    }
}

impl Tally {
    fn weigh(&mut self, row: &Row, figure: f64) {
        let weighed = weigh(row, figure);
        let (deviation, allowed) = (weighed.deviation, weighed.allowed);
        match weighed.standing {
            Standing::Stands | Standing::Between => {
                let share = if allowed > 0.0 { deviation.abs() / allowed } else { 0.0 };
                let (stand, largest) = self.kinds.entry(row.kind().to_owned()).or_default();
                *stand += 1;
                *largest = largest.max(share);
                self.between += usize::from(weighed.standing == Standing::Between);
            }
            Standing::KnownMiss => self.known += 1,
            Standing::KnownMissMoved => {
                let now = if deviation.abs() <= allowed {
                    "no longer misses"
                } else {
                    "misses"
                };
                let listed = row.text("known_miss");
                self.miss(row, figure, &format!("{now}: off by {deviation:+e}, listed {listed}"));
            }
            Standing::Misses => self.miss(row, figure, &format!("off by {deviation:+e}, allowed {allowed}")),
        }
    }

    fn miss(&mut self, row: &Row, figure: f64, finding: &str) {
        self.misses.push(format!(
            "  {} {}: {figure} for {} {}: {finding}",
            row.place(),
            row.inputs(),
            row.text("value"),
            row.optional_text("unit").unwrap_or_default()
        ));
    }

    /// One line that `cargo xtask test` adds up.
    fn summary(&self, name: &str) -> String {
        let mut line = format!("judged {name}: ");
        for (kind, (stand, largest)) in &self.kinds {
            let _ = write!(line, "{kind} {stand} (largest {largest:.2} of tolerance), ");
        }
        let _ = write!(
            line,
            "between tolerance and model accuracy {}, known misses {}, rejected {}, skipped {}, misses {}",
            self.between,
            self.known,
            self.rejected,
            self.skipped,
            self.misses.len()
        );
        line
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const TABLE: &str = "# Source\n# a comment, with \"odd\" text\nx,value,unit,tolerance,model_accuracy,known_miss,kind,use\n\
        1,10.0,m,0.05,,,published,check\n\
        2,20.0,m,0.05,0.2,,derived,check\n\
        3,30.0,m,0.05,,+0.30,published,check\n\
        4,40.0,m,0.05,,,published,reject\n";

    fn misses(figures: [f64; 4]) -> (String, Vec<String>) {
        let mut relation = |row: &Row| {
            let x = row.number("x");
            Ok((1..=4).zip(figures).find(|(i, _)| f64::from(*i) == x).map(|(_, f)| f))
        };
        let verdict = verdict("t.csv", &rows("t.csv", TABLE), &mut relation);
        (verdict.summary, verdict.misses)
    }

    #[test]
    fn rows_within_their_rule_stand() {
        let (summary, misses) = misses([10.04, 20.1, 30.305, 0.0]);
        assert!(misses.is_empty(), "{misses:?}");
        assert_eq!(
            summary,
            "judged t.csv: derived 1 (largest 0.50 of tolerance), published 1 (largest 0.80 of tolerance), \
             between tolerance and model accuracy 1, known misses 1, rejected 1, skipped 0, misses 0"
        );
    }

    #[test]
    fn every_miss_is_listed() {
        let (_, misses) = misses([10.06, 20.3, f64::NAN, 0.0]);
        assert_eq!(misses.len(), 3);
        assert!(misses[0].contains("t.csv:4 x=1"), "{}", misses[0]);
    }

    #[test]
    fn a_known_miss_that_heals_is_a_miss() {
        let (_, misses) = misses([10.0, 20.0, 30.0, 0.0]);
        assert!(misses[0].contains("no longer misses"), "{misses:?}");
    }

    #[test]
    fn a_table_of_which_nothing_is_judged_fails() {
        let verdict = verdict("t.csv", &rows("t.csv", TABLE), &mut |_| Ok(None));
        assert_eq!(verdict.misses.len(), 1);
    }

    #[test]
    fn the_last_digit_weighs_as_printed() {
        for (text, weight) in [("3.14", 0.01), ("-40", 1.0), ("+0.0030", 1e-4), ("1.2e-8", 1e-9)] {
            let found = last_digit(text);
            assert!((found / weight - 1.0).abs() < 1e-12, "{text}: {found}");
        }
    }
}
