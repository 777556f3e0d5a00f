//! The printed card: the table and its words, no curves, no colour, nothing that lies outside the file.

use alloc::{format, string::String, vec::Vec};

use super::{
    Card,
    words::{chart_decimals, chart_unit, clipped, decimals, shown, temperature_units, temperatures, wrapped},
};
use crate::{digits, units::System};

impl Card {
    /// The card as an SVG to print and to laminate: 105 mm wide and as high as its rows need, with the usual ones about
    /// 148 mm (A6).
    ///
    /// In black and white, whole by itself: no script, no style sheet, no font but the reader's own. Few rows are drawn
    /// larger.
    ///
    /// ```
    /// use sugaring::{instrument::{Hydrometer, card}, units::*};
    /// let hydrometer = Hydrometer::brix(deg_f(60.0))?.into();
    /// let svg = card(brix(66.9)?, &hydrometer, &[])?.with_name("Far & Wide").to_svg(System::Us);
    /// assert!(svg.contains("width=\"105mm\"") && svg.contains("Far &amp; Wide"));
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    #[must_use]
    pub fn to_svg(&self, system: System) -> String {
        let foot = Foot::of(self);
        let head = if self.name.is_some() { HEAD + NAME } else { HEAD };
        let rows = f64::from(u32::try_from(self.marks.len().max(1)).unwrap_or(u32::MAX));
        let pitch = ((A6 - head - foot.height()) / rows).clamp(LEAST_PITCH, MOST_PITCH);
        let height = head + rows * pitch + foot.height();
        let mut drawing = Drawing::new(self, height);
        self.draw_head(&mut drawing);
        self.draw_table(&mut drawing, system, head, pitch);
        foot.draw(&mut drawing, height);
        drawing.finished()
    }

    fn draw_head(&self, drawing: &mut Drawing) {
        let mut y = MARGIN + 3.0;
        if let Some(name) = &self.name {
            let name = clipped(name, INNER / NAME_SIZE, bold_em);
            drawing.text(Text::new(MARGIN, y, NAME_SIZE, &name).bold());
            y += NAME;
        }
        drawing.text(Text::new(MARGIN, y + 2.5, 4.4, "Marks for syrup of"));
        drawing.text(Text::new(RIGHT, y + 2.5, 9.0, &self.wanted()).bold().ending());
        drawing.text(Text::new(MARGIN, y + 8.0, 3.0, &self.instrument_line()));
    }

    fn draw_table(&self, drawing: &mut Drawing, system: System, top: f64, pitch: f64) {
        let columns = self.columns(system);
        for column in &columns {
            drawing.text(Text::new(column.x, top - 6.0, 3.1, &column.heads[0]).ending());
            let width: f64 = column.heads[1].chars().map(bold_em).sum();
            let size = (LONGEST_UNIT / width).min(3.4);
            drawing.text(Text::new(column.x, top - 2.0, size, &column.heads[1]).bold().ending());
        }
        drawing.rule(top);
        let size = (pitch * 0.84).min(8.0);
        let mut y = top;
        for row in 0..self.marks.len() {
            if row % 2 == 1 {
                drawing.band(y, pitch);
            }
            for column in &columns {
                let Some(cell) = column.cells.get(row) else { continue };
                let scale = if column.is_mark { 1.0 } else { 0.86 };
                let text = Text::new(column.x, y + 0.5 * pitch + 0.36 * size, size * scale, cell).ending();
                drawing.text(if column.is_mark { text.bold() } else { text });
            }
            y += pitch;
        }
        drawing.rule(y);
    }

    fn columns(&self, system: System) -> Vec<Column> {
        let unit = self.unit();
        let decimals = decimals(unit);
        let degrees = temperature_units(system);
        let ends: &[f64] = match (degrees.len(), self.chart.is_some()) {
            (1, false) => &[43.0, 75.0],
            (1, true) => &[29.0, 59.0, 92.0],
            (_, false) => &[25.0, 50.0, 82.0],
            (_, true) => &[19.0, 39.0, 68.0, 97.0],
        };
        let mut columns: Vec<Column> = Vec::new();
        for unit in degrees {
            columns.push(Column::new(["", unit.symbol], temperatures(&self.marks, unit)));
        }
        let marks = self.marks.iter().map(|mark| shown(Some(mark.readable), decimals));
        columns.push(Column {
            is_mark: true,
            ..Column::new(["look for", unit.symbol], marks.collect())
        });
        if let Some(chart) = &self.chart {
            let asked = self.marks.iter().map(|mark| shown(mark.chart, chart_decimals(unit)));
            columns.push(Column::new(
                [&format!("{}'s chart", chart.name), chart_unit(unit)],
                asked.collect(),
            ));
        }
        for (column, end) in columns.iter_mut().zip(ends) {
            column.x = *end;
        }
        columns
    }

    /// The table in words, for those who hear it.
    fn described(&self) -> String {
        let of = |mark: &super::Mark| {
            let degrees = |unit| temperatures(core::slice::from_ref(mark), unit).concat();
            format!(
                "{} at {} °F ({} °C)",
                shown(Some(mark.readable), decimals(self.unit())),
                degrees(&crate::units::table::deg_f),
                degrees(&crate::units::table::deg_c)
            )
        };
        let rows: Vec<String> = self.marks.iter().map(of).collect();
        format!("Marks in {}: {}.", self.unit().symbol, rows.join(", "))
    }
}

struct Column {
    heads: [String; 2],
    cells: Vec<String>,
    is_mark: bool,
    /// Where its numbers end, mm.
    x: f64,
}

impl Column {
    fn new(heads: [&str; 2], cells: Vec<String>) -> Self {
        Self {
            heads: heads.map(String::from),
            cells,
            is_mark: false,
            x: 0.0,
        }
    }
}

/// What stands below the table.
struct Foot {
    directions: Vec<String>,
    rests_on: Vec<String>,
}

impl Foot {
    fn of(card: &Card) -> Self {
        let lines = |texts: Vec<String>, size: f64| -> Vec<String> {
            texts.iter().flat_map(|text| wrapped(text, INNER / size, em)).collect()
        };
        Self {
            directions: lines(card.directions(), DIRECTIONS.size),
            rests_on: lines(card.rests_on(), RESTS_ON.size),
        }
    }

    fn height(&self) -> f64 {
        3.0 + DIRECTIONS.height(&self.directions) + CAUTION + RESTS_ON.height(&self.rests_on) + MARGIN - 1.0
    }

    fn draw(&self, drawing: &mut Drawing, height: f64) {
        let mut y = height - self.height() + 3.0;
        y = DIRECTIONS.draw(&self.directions, drawing, y);
        drawing.boxed(y + 0.8, CAUTION - 2.6);
        drawing.text(Text::new(0.5 * WIDTH, y + 5.0, 3.8, &Card::caution()).bold().amid());
        RESTS_ON.draw(&self.rests_on, drawing, y + CAUTION);
    }
}

/// Lines of one size.
struct Print {
    size: f64,
    pitch: f64,
}

impl Print {
    fn height(&self, lines: &[String]) -> f64 {
        f64::from(u32::try_from(lines.len()).unwrap_or(u32::MAX)) * self.pitch
    }

    /// Below `y`; where the next begins.
    fn draw(&self, lines: &[String], drawing: &mut Drawing, mut y: f64) -> f64 {
        for line in lines {
            drawing.text(Text::new(MARGIN, y + self.size * 0.8, self.size, line));
            y += self.pitch;
        }
        y
    }
}

// All in mm.
const A6: f64 = 148.0;
const WIDTH: f64 = 105.0;
const MARGIN: f64 = 6.0;
const RIGHT: f64 = WIDTH - MARGIN;
const INNER: f64 = RIGHT - MARGIN;
const HEAD: f64 = 28.0;
const NAME: f64 = 5.5;
const NAME_SIZE: f64 = 3.8;
/// Digits of 4 mm are read at arm's length.
const LEAST_PITCH: f64 = 4.8;
const MOST_PITCH: f64 = 9.0;
/// "SG 20/20 in air" stays off the column beside it.
const LONGEST_UNIT: f64 = 26.0;
const CAUTION: f64 = 8.4;
const DIRECTIONS: Print = Print { size: 2.8, pitch: 3.5 };
const RESTS_ON: Print = Print { size: 2.1, pitch: 2.6 };

/// A drawing under construction.
struct Drawing(String);

#[derive(Clone, Copy)]
struct Text<'a> {
    x: f64,
    y: f64,
    size: f64,
    says: &'a str,
    bold: bool,
    anchor: &'static str,
}

impl<'a> Text<'a> {
    const fn new(x: f64, y: f64, size: f64, says: &'a str) -> Self {
        Self {
            x,
            y,
            size,
            says,
            bold: false,
            anchor: "",
        }
    }

    const fn bold(mut self) -> Self {
        self.bold = true;
        self
    }

    const fn ending(mut self) -> Self {
        self.anchor = " text-anchor=\"end\"";
        self
    }

    const fn amid(mut self) -> Self {
        self.anchor = " text-anchor=\"middle\"";
        self
    }
}

impl Drawing {
    fn new(card: &Card, height: f64) -> Self {
        let title = match &card.name {
            Some(name) => format!("{name}: {}", card.heading()),
            None => card.heading(),
        };
        let high = mm(height);
        let mut drawing = Self(format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"105mm\" height=\"{high}mm\" \
             viewBox=\"0 0 105 {high}\" font-family=\"sans-serif\" fill=\"black\">\n\
             <title>{}</title>\n<desc>{}. {}</desc>\n",
            escaped(&title),
            escaped(&card.instrument_line()),
            escaped(&card.described())
        ));
        drawing.0 += &format!(
            "<rect x=\"1.5\" y=\"1.5\" width=\"102\" height=\"{}\" rx=\"3\" fill=\"white\" stroke=\"black\" \
             stroke-width=\"0.5\"/>\n",
            mm(height - 3.0)
        );
        drawing
    }

    fn text(&mut self, text: Text<'_>) {
        if text.says.is_empty() {
            return;
        }
        let weight = if text.bold { " font-weight=\"bold\"" } else { "" };
        self.0 += &format!(
            "<text x=\"{}\" y=\"{}\" font-size=\"{}\"{}{weight}>{}</text>\n",
            mm(text.x),
            mm(text.y),
            mm(text.size),
            text.anchor,
            escaped(text.says)
        );
    }

    fn rule(&mut self, y: f64) {
        self.0 += &format!(
            "<path d=\"M{} {y}H{}\" stroke=\"black\" stroke-width=\"0.5\"/>\n",
            mm(MARGIN),
            mm(RIGHT),
            y = mm(y)
        );
    }

    /// Every other row lies on grey, so that the eye keeps its line.
    fn band(&mut self, y: f64, pitch: f64) {
        self.0 += &format!(
            "<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" fill=\"#e6e6e6\"/>\n",
            mm(MARGIN),
            mm(y),
            mm(INNER),
            mm(pitch)
        );
    }

    fn boxed(&mut self, y: f64, high: f64) {
        self.0 += &format!(
            "<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" rx=\"1\" fill=\"none\" stroke=\"black\" \
             stroke-width=\"0.7\"/>\n",
            mm(MARGIN),
            mm(y),
            mm(INNER),
            mm(high)
        );
    }

    fn finished(mut self) -> String {
        self.0 += "</svg>\n";
        self.0
    }
}

fn mm(length: f64) -> String {
    digits::shortest(digits::fixed(length, 2).parse().unwrap_or(0.0))
}

/// Width of a letter in ems, on the wide side of the usual fonts without serifs.
fn em(letter: char) -> f64 {
    match letter {
        ' ' | '\u{a0}' | 'i' | 'j' | 'l' | '.' | ',' | ';' | ':' | '\'' | '|' | '!' | 'I' => 0.3,
        'f' | 'r' | 't' | '(' | ')' | '-' | '/' | '°' => 0.4,
        'm' | 'w' | 'M' | 'W' | '%' | '…' => 0.95,
        '0'..='9' => 0.64,
        'a'..='z' => 0.6,
        _ if letter < '\u{2000}' => 0.7,
        '\u{2010}'..='\u{2015}' => 0.6,
        _ => 1.1,
    }
}

fn bold_em(letter: char) -> f64 {
    1.15 * em(letter)
}

/// A text as XML holds it.
fn escaped(text: &str) -> String {
    let mut safe = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '&' => safe += "&amp;",
            '<' => safe += "&lt;",
            '>' => safe += "&gt;",
            '"' => safe += "&quot;",
            '\'' => safe += "&#39;",
            _ => safe.push(letter),
        }
    }
    safe
}
