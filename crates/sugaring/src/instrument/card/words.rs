//! What a card says beside its numbers, the same on every form of it.

use alloc::{format, string::String, vec::Vec};

use super::{Card, Mark, marks::unit};
use crate::{
    digits,
    instrument::{Compensation, HYDROMETER, Instrument, REFRACTOMETER, Reading, Refractometer},
    safety,
    sucrose::BRIX_FROM_REFRACTIVE_INDEX,
    units::{Dimension, System, Unit, Value, table},
};

/// A row's number as it is printed, where there is none a dash.
pub(super) fn shown(reading: Option<Reading>, decimals: usize) -> String {
    reading.map_or_else(|| String::from("–"), |reading| digits::fixed(reading.get(), decimals))
}

/// How finely a scale can be read.
pub(super) fn decimals(unit: &Unit) -> usize {
    match unit.dimension {
        Dimension::Brix | Dimension::Baume2020 | Dimension::Baume6060F => 1,
        Dimension::Density => 0,
        _ => 3,
    }
}

/// How finely a chart of such a scale is printed: in °Baumé by quarters.
pub(super) fn chart_decimals(unit: &Unit) -> usize {
    if unit.dimension == Dimension::Brix { 1 } else { 2 }
}

/// What a chart calls its marks: it names the modulus of its °Baumé, not their temperatures.
pub(super) fn chart_unit(unit: &Unit) -> &'static str {
    if unit.dimension == Dimension::Brix {
        "°Bx"
    } else {
        "°Bé"
    }
}

/// The columns of temperature.
pub(super) fn temperature_units(system: System) -> Vec<&'static Unit> {
    match system {
        System::AsGiven => alloc::vec![&table::deg_f, &table::deg_c],
        System::Us => alloc::vec![&table::deg_f],
        System::Metric => alloc::vec![&table::deg_c],
    }
}

/// A column of temperatures: whole degrees where all are whole, else tenths.
pub(super) fn temperatures(marks: &[Mark], unit: &Unit) -> Vec<String> {
    let numbers: Vec<f64> = marks.iter().map(|mark| unit.from_si(mark.temperature.si())).collect();
    let whole = |number: &f64| digits::fixed(*number, 1).ends_with(".0");
    let decimals = usize::from(!numbers.iter().all(whole));
    numbers.iter().map(|number| digits::fixed(*number, decimals)).collect()
}

impl Card {
    pub(super) fn heading(&self) -> String {
        format!("Marks for syrup of {}", self.wanted())
    }

    /// The syrup, to as many digits as anybody reads.
    pub(super) fn wanted(&self) -> String {
        table::deg_brix.with_symbol(&digits::significant(self.target.get(), 4))
    }

    /// The instrument in a line: "Hydrometer in °Bx, true at 60 °F (15.6 °C)".
    pub(super) fn instrument_line(&self) -> String {
        let symbol = unit(&self.instrument).symbol;
        match &self.instrument {
            Instrument::Hydrometer(hydrometer) => {
                let at = |unit: &Unit| {
                    let degrees = unit.from_si(hydrometer.float.calibrated_at);
                    unit.show(digits::rounded_to(degrees, 3))
                };
                format!(
                    "Hydrometer in {symbol}, true at {} ({})",
                    at(&table::deg_f),
                    at(&table::deg_c)
                )
            }
            Instrument::Refractometer(_) => format!("Refractometer in {symbol}"),
        }
    }

    /// What to do with the marks, a sentence or two each; a number and its unit are not parted.
    pub(super) fn directions(&self) -> Vec<String> {
        let read = match self.instrument {
            Instrument::Hydrometer(_) => {
                "Read at the level surface, not where syrup climbs the stem; take the temperature in the same cup, at the \
                 same moment."
            }
            Instrument::Refractometer(_) => {
                "Let the drop cool on the closed prism. The temperature is that of the prism."
            }
        };
        let differs = "Smaller number: too thin, boil on. Larger: too thick, thin it.";
        let mut said = alloc::vec![String::from(read), String::from(differs)];
        said.extend(self.how_sure());
        said.iter().map(|text| together(text)).collect()
    }

    /// The caution, for a line of its own.
    pub(super) fn caution() -> String {
        safety::caution("scald").map_or_else(String::new, |caution| caution.short(None))
    }

    /// What the numbers rest on.
    pub(super) fn rests_on(&self) -> Vec<String> {
        let (from, accuracy) = match self.instrument {
            Instrument::Hydrometer(_) => (format!("{}", HYDROMETER.source), HYDROMETER.accuracy),
            Instrument::Refractometer(Refractometer {
                compensation: Compensation::None,
                ..
            }) => (
                format!(
                    "refractive index of sucrose solutions, {}",
                    BRIX_FROM_REFRACTIVE_INDEX.source
                ),
                BRIX_FROM_REFRACTIVE_INDEX.accuracy,
            ),
            Instrument::Refractometer(_) => (
                String::from("the instrument's own correction for temperature"),
                REFRACTOMETER.accuracy,
            ),
        };
        let mut said = alloc::vec![format!(
            "Calculated for this instrument alone, from: {from}. Accuracy: {accuracy}."
        )];
        said.extend(self.about_the_chart());
        said.iter().map(|text| together(text)).collect()
    }

    /// Everything in sentences, for data.
    pub(super) fn notes(&self) -> Vec<String> {
        let mut said = self.directions();
        said.push(Self::caution());
        said.extend(self.rests_on());
        said.iter().map(|text| text.replace(TOGETHER, " ")).collect()
    }

    fn how_sure(&self) -> Option<String> {
        let known = self.marks.iter().filter_map(|mark| mark.uncertainty);
        let largest = known.fold(None, |most: Option<f64>, u| Some(most.map_or(u, |most| most.max(u))))?;
        Some(format!(
            "At its mark: {}, give or take {} (19 times in 20).",
            self.wanted(),
            digits::fixed(COVERAGE * largest, 1)
        ))
    }

    fn about_the_chart(&self) -> Option<String> {
        let chart = self.chart.as_ref()?;
        let apart = self.apart().map_or_else(String::new, |apart| {
            let unit = if self.unit().dimension == Dimension::Brix {
                "°Bx"
            } else {
                "°Bé"
            };
            format!(" The two differ by up to {} {unit} here.", digits::fixed(apart, 1))
        });
        Some(format!(
            "Beside them {}'s chart, law where it is adopted: {}. It is a printed table, with straight lines between \
             its rows, and no calculation.{apart}",
            chart.name, chart.advice
        ))
    }

    /// How far marks and chart lie apart at most, where both mean the same syrup.
    fn apart(&self) -> Option<f64> {
        if self.chart.as_ref()?.target != self.target {
            return None;
        }
        let apart = self
            .marks
            .iter()
            .filter_map(|mark| mark.chart.map(|asked| mark.reading.get() - asked.get()));
        apart
            .map(f64::abs)
            .fold(None, |most: Option<f64>, d| Some(most.map_or(d, |most| most.max(d))))
    }
}

/// 19 times in 20, in standard deviations.
const COVERAGE: f64 = 1.96;

/// A space at which no line ends.
pub(super) const TOGETHER: char = '\u{a0}';

/// A number and its unit stay on one line.
fn together(text: &str) -> String {
    let mut joined = String::with_capacity(text.len());
    for (index, word) in text.split(' ').enumerate() {
        if index > 0 {
            joined.push(if word.starts_with('°') { TOGETHER } else { ' ' });
        }
        joined += word;
    }
    joined
}

/// Lines of at most `width`, where a letter is as wide as `wide` says; what is longer than a line stays whole.
pub(super) fn wrapped(text: &str, width: f64, wide: fn(char) -> f64) -> Vec<String> {
    let mut lines = Vec::new();
    let mut line = String::new();
    let mut used = 0.0;
    for word in text.split(' ') {
        let needs: f64 = word.chars().map(wide).sum();
        if !line.is_empty() && used + wide(' ') + needs > width {
            lines.push(core::mem::take(&mut line));
            used = 0.0;
        }
        if !line.is_empty() {
            line.push(' ');
            used += wide(' ');
        }
        line += word;
        used += needs;
    }
    lines.push(line);
    lines.iter().map(|line| line.replace(TOGETHER, " ")).collect()
}

/// As much of a name as `width` takes.
pub(super) fn clipped(name: &str, width: f64, wide: fn(char) -> f64) -> String {
    if name.chars().map(wide).sum::<f64>() <= width {
        return String::from(name);
    }
    let mut used = wide('…');
    let fits = |letter: &char| {
        used += wide(*letter);
        used <= width
    };
    let mut kept: String = name.chars().take_while(fits).collect();
    kept.truncate(kept.trim_end().len());
    kept.push('…');
    kept
}

/// A name on one line, without what no printer prints and no XML may hold.
pub(super) fn clean(name: &str) -> String {
    let printed = name.chars().take(LONGEST_NAME);
    let printed = printed.map(|letter| if letter.is_whitespace() { ' ' } else { letter });
    let printed: String = printed.filter(|letter| !is_unprintable(*letter)).collect();
    String::from(printed.trim())
}

/// Letters: a card is no book.
const LONGEST_NAME: usize = 200;

/// Control characters, marks that turn the direction of writing, and what Unicode keeps for no letter.
fn is_unprintable(letter: char) -> bool {
    letter.is_control()
        || matches!(letter, '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}')
        || u32::from(letter) & 0xfffe == 0xfffe
        || matches!(letter, '\u{fdd0}'..='\u{fdef}')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_are_cleaned_and_cut() {
        assert_eq!(clean(" Far\tOrchard\u{0}\u{202e}\u{ffff} "), "Far Orchard");
        assert_eq!(clipped("Far Orchard", 11.0, |_| 1.0), "Far Orchard");
        assert_eq!(clipped("Far Orchard", 5.0, |_| 1.0), "Far…");
    }

    #[test]
    fn numbers_stay_with_their_units() {
        assert_eq!(
            wrapped(&together("from 5 to 60 °C;"), 12.0, |_| 1.0),
            ["from 5 to", "60 °C;"]
        );
        assert_eq!(wrapped("", 12.0, |_| 1.0), [""]);
    }
}
