//! A table as its source prints it, row by row.

use std::collections::BTreeMap;

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

    /// Its temperature in °C, where it has one; degrees Fahrenheit decide where they are printed.
    pub fn celsius(&self) -> Option<f64> {
        let fahrenheit = self.optional_number("temp_f").map(|f| (f - 32.0) / 1.8);
        let kelvin = || self.optional_number("temp_k").map(|k| k - 273.15);
        fahrenheit.or_else(|| self.optional_number("temp_c")).or_else(kelvin)
    }

    /// Its strength in °Brix, where it has one, also out of mol of sucrose per kg of water.
    pub fn brix(&self) -> Option<f64> {
        let sugar = self
            .optional_number("molality_mol_kg")
            .map(|molality| 0.342_296_5 * molality);
        let strength = self.optional_number("brix_pct");
        strength.or_else(|| sugar.map(|sugar| 100.0 * sugar / (1.0 + sugar)))
    }

    /// Its pressure in kPa, where it has one.
    pub fn kilopascal(&self) -> Option<f64> {
        let pascal = || self.optional_number("pressure_pa").map(|p| 1e-3 * p);
        self.optional_number("pressure_kpa").or_else(pascal)
    }

    /// What the row is: published, derived, from memory, common practice.
    pub fn kind(&self) -> &str {
        self.optional_text("kind").unwrap_or("no kind")
    }

    /// Whether the row contradicts a better source and is kept as documentation only.
    pub fn is_rejected(&self) -> bool {
        self.optional_text("use") == Some("reject")
    }

    pub(crate) fn tolerance(&self) -> f64 {
        self.optional_number("tolerance")
            .unwrap_or_else(|| 0.5 * last_digit(self.text("value")))
    }

    pub(crate) fn inputs(&self) -> String {
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

fn number(text: &str) -> Option<f64> {
    text.parse().ok()
}

/// The weight of the last digit a number is printed with: 0.01 of 3.14, 1e-9 of 1.2e-8.
pub(crate) fn last_digit(text: &str) -> f64 {
    let (digits, exponent) = match text.split_once(['e', 'E']) {
        Some((digits, exponent)) => (digits, exponent.parse().expect("an exponent")),
        None => (text, 0),
    };
    let decimals = digits.split_once('.').map_or(0, |(_, fraction)| fraction.len());
    10_f64.powi(exponent - i32::try_from(decimals).expect("a short number"))
}
