//! The judge: reads a table as its source prints it and holds a relation against every row.
//!
//! Format and rule of acceptance: `tests/published/README.md`.

use std::{collections::BTreeMap, fmt::Write as _};

pub use limits::limits;

mod limits;

#[cfg(doctest)]
mod pages;
pub mod schema;

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
    let verdict = verdict(name, &rows(name, table), &mut relation);
    println!("{}", verdict.summary);
    assert!(
        verdict.misses.is_empty(),
        "{name}: {} rows miss\n{}",
        verdict.misses.len(),
        verdict.misses.join("\n")
    );
}

/// One row of a table; columns are read by their header.
#[derive(Clone, Debug)]
pub struct Row {
    table: String,
    line: u64,
    fields: BTreeMap<String, String>,
}

impl Row {
    /// The number in `column`; a table without it is an error of the test.
    pub fn number(&self, column: &str) -> f64 {
        self.optional_number(column)
            .unwrap_or_else(|| panic!("{}: column {column} is empty", self.place()))
    }

    /// The number in `column`, or `None` where the field is empty or the table has no such column.
    pub fn optional_number(&self, column: &str) -> Option<f64> {
        let text = self.optional_text(column)?;
        Some(number(text).unwrap_or_else(|| panic!("{}: column {column} is no number: {text}", self.place())))
    }

    /// The text in `column`, which the table must have; empty where the field is.
    pub fn text(&self, column: &str) -> &str {
        match self.fields.get(column) {
            Some(text) => text,
            None => panic!("{}: no column {column}", self.place()),
        }
    }

    /// The text in `column`, or `None` where the field is empty or the table has no such column.
    pub fn optional_text(&self, column: &str) -> Option<&str> {
        self.fields
            .get(column)
            .map(String::as_str)
            .filter(|text| !text.is_empty())
    }

    /// Where the row stands, as `file:line`.
    pub fn place(&self) -> String {
        format!("{}:{}", self.table, self.line)
    }

    fn tolerance(&self) -> f64 {
        self.optional_number("tolerance")
            .unwrap_or_else(|| 0.5 * last_digit(self.text("value")))
    }

    fn inputs(&self) -> String {
        const JUDGED: [&str; 9] = [
            "value",
            "unit",
            "tolerance",
            "model_accuracy",
            "known_miss",
            "kind",
            "use",
            "source",
            "definition",
        ];
        let given = |(column, text): (&String, &String)| {
            (!text.is_empty() && !JUDGED.contains(&column.as_str())).then(|| format!("{column}={text}"))
        };
        self.fields.iter().filter_map(given).collect::<Vec<_>>().join(" ")
    }
}

/// The rows of `table`; the lines of provenance on top are passed over.
pub fn rows(name: &str, table: &str) -> Vec<Row> {
    let head = table.lines().take_while(|line| line.starts_with('#')).count();
    let body = table.split_inclusive('\n').skip(head).collect::<String>();
    let mut reader = csv::ReaderBuilder::new().from_reader(body.as_bytes());
    let columns = reader.headers().expect("a header").clone();
    reader
        .records()
        .map(|record| {
            let record = record.unwrap_or_else(|e| panic!("{name}: {e}"));
            let line = record.position().expect("a position").line() + head as u64;
            let fields = columns.iter().zip(&record).map(|(c, f)| (c.to_owned(), f.to_owned()));
            Row {
                table: name.to_owned(),
                line,
                fields: fields.collect(),
            }
        })
        .collect()
}

struct Verdict {
    summary: String,
    misses: Vec<String>,
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
        if row.optional_text("use") == Some("reject") {
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

impl Tally {
    fn weigh(&mut self, row: &Row, figure: f64) {
        let value = row.number("value");
        let tolerance = row.tolerance();
        let allowed = row
            .optional_number("model_accuracy")
            .map_or(tolerance, |accuracy| accuracy.max(tolerance));
        let deviation = match row.optional_text("unit") {
            Some("brix_pct_at_least") if figure >= value => 0.0,
            _ => figure - value,
        };
        if let Some(known) = row.optional_text("known_miss") {
            let size = row.number("known_miss");
            if (deviation - size).abs() <= 0.6 * last_digit(known) {
                self.known += 1;
            } else {
                let now = if deviation.abs() <= allowed {
                    "no longer misses"
                } else {
                    "misses"
                };
                self.miss(row, figure, &format!("{now}: off by {deviation:+e}, listed {known}"));
            }
        } else if deviation.abs() <= allowed {
            let share = if allowed > 0.0 { deviation.abs() / allowed } else { 0.0 };
            let kind = row.optional_text("kind").unwrap_or("no kind");
            let (stand, largest) = self.kinds.entry(kind.to_owned()).or_default();
            *stand += 1;
            *largest = largest.max(share);
            self.between += usize::from(deviation.abs() > tolerance);
        } else {
            self.miss(row, figure, &format!("off by {deviation:+e}, allowed {allowed}"));
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

fn number(text: &str) -> Option<f64> {
    text.parse().ok()
}

/// The weight of the last digit a number is printed with: 0.01 of 3.14, 1e-9 of 1.2e-8.
fn last_digit(text: &str) -> f64 {
    let (digits, exponent) = match text.split_once(['e', 'E']) {
        Some((digits, exponent)) => (digits, exponent.parse().expect("an exponent")),
        None => (text, 0),
    };
    let decimals = digits.split_once('.').map_or(0, |(_, fraction)| fraction.len());
    10_f64.powi(exponent - i32::try_from(decimals).expect("a short number"))
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
