use alloc::{format, string::String, vec::Vec};
use core::fmt;

use super::{
    Card,
    words::{chart_decimals, chart_unit, clipped, decimals, shown, temperature_units, temperatures, wrapped},
};
use crate::units::System;

/// The page with °F and °C side by side.
impl fmt::Display for Card {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.page(System::AsGiven))
    }
}

impl Card {
    /// The card as plain text of at most 70 columns: °F, °C, or both.
    ///
    /// ```
    /// use sugaring::{instrument::{Hydrometer, card}, units::*};
    /// let hydrometer = Hydrometer::brix(deg_f(60.0))?.into();
    /// let card = card(brix(66.9)?, &hydrometer, &[deg_f(200.0), deg_f(180.0)])?.with_name("Far Orchard");
    /// let page = card.page(System::Us);
    /// assert!(page.starts_with("FAR ORCHARD\nMarks for syrup of 66.9 °Bx\n"));
    /// assert!(page.contains("\n    200       59.7\n    180       60.8\n"));
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    #[must_use]
    pub fn page(&self, system: System) -> String {
        let mut page = String::new();
        let mut line = |text: &str| {
            page += text.trim_end();
            page.push('\n');
        };
        if let Some(name) = &self.name {
            line(&clipped(&name.to_uppercase(), WIDTH, |_| 1.0));
        }
        line(&self.heading());
        line(&self.instrument_line());
        line("");
        for row in self.table(system) {
            line(&row);
        }
        line("");
        for text in self.directions() {
            for row in wrapped(&text, WIDTH, |_| 1.0) {
                line(&row);
            }
        }
        line(&Self::caution());
        line("");
        for text in self.rests_on() {
            for row in wrapped(&text, WIDTH, |_| 1.0) {
                line(&row);
            }
        }
        page
    }

    fn table(&self, system: System) -> Vec<String> {
        let unit = self.unit();
        let decimals = decimals(unit);
        let mut columns: Vec<Column> = Vec::new();
        for degrees in temperature_units(system) {
            columns.push(Column {
                heads: ["", degrees.symbol],
                width: if columns.is_empty() { 7 } else { 10 },
                cells: temperatures(&self.marks, degrees),
            });
        }
        columns.push(Column {
            heads: ["look for", unit.symbol],
            width: 11.max(unit.symbol.chars().count() + 2),
            cells: self
                .marks
                .iter()
                .map(|mark| shown(Some(mark.readable), decimals))
                .collect(),
        });
        let whose = self
            .chart
            .as_ref()
            .map_or_else(String::new, |chart| format!("{}'s chart", chart.name));
        if self.chart.is_some() {
            columns.push(Column {
                heads: [&whose, chart_unit(unit)],
                width: 19,
                cells: self
                    .marks
                    .iter()
                    .map(|mark| shown(mark.chart, chart_decimals(unit)))
                    .collect(),
            });
        }
        let mut rows: Vec<String> = alloc::vec![String::new(); self.marks.len() + 2];
        for column in &columns {
            let cells = column.heads.into_iter().chain(column.cells.iter().map(String::as_str));
            for (row, cell) in rows.iter_mut().zip(cells) {
                *row += &format!("{cell:>width$}", width = column.width);
            }
        }
        rows
    }
}

struct Column<'a> {
    heads: [&'a str; 2],
    width: usize,
    cells: Vec<String>,
}

const WIDTH: f64 = 70.0;
