use sugaring::Error;

use super::figure::{Figure, Subject, unit};
use crate::{
    judge::{Standing, Verdict, judged, weigh},
    row::{Row, rows},
};

/// A room of the library and the tables that judge it.
#[derive(Clone, Copy, Debug)]
pub struct Room {
    /// Its module.
    pub name: &'static str,
    /// Its tables.
    pub tables: &'static [Table],
}

/// A table, and our figure for each of its rows.
#[derive(Clone, Copy, Debug)]
pub struct Table {
    /// Name of its file.
    pub name: &'static str,
    /// `published` or `derived`.
    pub folder: &'static str,
    /// Its text.
    pub text: &'static str,
    /// The figure, in the row's unit; a typed error is a miss.
    pub figure: fn(&Row) -> Result<Figure, Error>,
}

/// A row of which we have a figure.
#[derive(Clone, Debug)]
pub struct Judged {
    /// The row as it is printed, with its inputs.
    pub row: Row,
    /// Name of the table's file.
    pub table: &'static str,
    /// What it judges.
    pub subject: Subject,
    /// What is printed, in the relation's unit ([`Subject::output`]), or in the row's for a part of it.
    pub value: f64,
    /// Our figure, in the same unit.
    pub figure: f64,
    /// Figure minus value, in the same unit; to the last digit, which a difference of the two would not keep.
    pub deviation: f64,
    /// What is allowed, in the same unit.
    pub allowed: f64,
    /// The verdict.
    pub standing: Standing,
}

impl Room {
    /// Judges every row of every table and panics once with all misses.
    pub fn judge(&self) {
        let mut misses = Vec::new();
        for verdict in self.tables.iter().map(Table::verdict) {
            println!("{}", verdict.summary);
            misses.extend(verdict.misses);
        }
        assert!(misses.is_empty(), "{} rows miss\n{}", misses.len(), misses.join("\n"));
    }

    /// The rows that miss, as they are told.
    pub fn misses(&self) -> Vec<String> {
        self.tables.iter().flat_map(|table| table.verdict().misses).collect()
    }
}

impl Table {
    fn verdict(&self) -> Verdict {
        judged(self.name, self.text, &mut |row| (self.figure)(row).map(Figure::value))
    }

    /// Every row that is no documentation, with our figure; an error has none.
    pub fn judged(&self) -> Vec<Judged> {
        let figures = self.figures().into_iter();
        figures
            .filter_map(|(row, figure)| match figure {
                Ok(Figure::Of(subject, figure)) => Some(self.weighed(row, subject, figure)),
                _ => None,
            })
            .collect()
    }

    /// Rows that are not judged, and why.
    pub fn not_offered(&self) -> Vec<(Row, &'static str)> {
        let figures = self.figures().into_iter();
        figures
            .filter_map(|(row, figure)| match figure {
                Ok(Figure::NotOffered(why)) => Some((row, why)),
                _ => None,
            })
            .collect()
    }

    /// The rows that contradict a better source.
    pub fn rejected(&self) -> usize {
        self.rows().iter().filter(|row| row.is_rejected()).count()
    }

    /// The lines of provenance on its top.
    pub fn head(&self) -> impl Iterator<Item = &'static str> {
        let head = self.text.lines().take_while(|line| line.starts_with('#'));
        head.map(|line| line.trim_start_matches(['#', ' ']))
    }

    fn rows(&self) -> Vec<Row> {
        rows(self.name, self.text)
    }

    fn figures(&self) -> Vec<(Row, Result<Figure, Error>)> {
        let rows = self.rows().into_iter().filter(|row| !row.is_rejected());
        rows.map(|row| {
            let figure = (self.figure)(&row);
            (row, figure)
        })
        .collect()
    }

    fn weighed(&self, row: Row, subject: Subject, figure: f64) -> Judged {
        let weighed = weigh(&row, figure);
        let value = row.number("value");
        // A row's unit in the relation's: of a figure, and of a difference.
        let (point, step): (Box<dyn Fn(f64) -> f64>, f64) = match subject.output {
            None => (Box::new(|x| x), 1.0),
            Some(_) if subject.is_depression => (Box::new(|x| -x), -1.0),
            Some(output) => {
                let word = row.text("unit");
                let (unit, times) = unit(word).unwrap_or_else(|| panic!("{}: unit {word}?", row.place()));
                (
                    Box::new(move |x| output.from_si(unit.to_si(x * times))),
                    times * unit.factor() / output.factor(),
                )
            }
        };
        Judged {
            table: self.name,
            value: point(value),
            figure: point(figure),
            deviation: weighed.deviation * step,
            allowed: weighed.allowed * step,
            standing: weighed.standing,
            subject,
            row,
        }
    }
}

macro_rules! table {
    ($folder:literal $name:literal $figure:expr) => {
        $crate::tables::Table {
            name: concat!($name, ".csv"),
            folder: $folder,
            text: include_str!(concat!(env!("CARGO_MANIFEST_DIR"), "/", $folder, "/", $name, ".csv")),
            figure: $figure,
        }
    };
}
pub(super) use table;
