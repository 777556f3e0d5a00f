//! The card as data.

use alloc::{format, string::String};

use super::{Card, Mark, words::decimals};
use crate::{
    digits,
    form::Tree,
    instrument::{Instrument, Reading},
    units::{Quantity, Temperature, Unit, Value, table},
};

impl Card {
    /// The marks as CSV (RFC 4180), with a heading whose units [`units::heading`](crate::units::heading) reads.
    ///
    /// `mark` is rounded to what can be read, `reading` is the number itself; `uncertainty` is that of the syrup. A field
    /// is empty where there is nothing to say.
    ///
    /// ```
    /// use sugaring::{instrument::{Hydrometer, card}, units::*};
    /// let hydrometer = Hydrometer::brix(deg_f(60.0))?.into();
    /// let csv = card(brix(66.9)?, &hydrometer, &[deg_f(211.0)])?.to_csv();
    /// let mut lines = csv.lines();
    /// assert_eq!(
    ///     lines.next(),
    ///     Some("temperature [°F],temperature [°C],mark [°Bx],reading [°Bx],uncertainty [°Bx]"),
    /// );
    /// assert!(lines.next().unwrap().starts_with("211,99.4444444444,59.0,59.00"));
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    #[must_use]
    pub fn to_csv(&self) -> String {
        let unit = self.unit();
        let symbol = unit.symbol;
        let mut csv = format!("temperature [°F],temperature [°C],mark [{symbol}],reading [{symbol}],uncertainty [°Bx]");
        if let Some(chart) = &self.chart {
            csv += &format!(",chart of {} [{symbol}]", chart.jurisdiction);
        }
        csv += END;
        for mark in &self.marks {
            csv += &format!(
                "{},{},{},{},{}",
                digits::shortest(degrees(mark.temperature, &table::deg_f)),
                digits::shortest(degrees(mark.temperature, &table::deg_c)),
                digits::fixed(mark.readable.get(), decimals(unit)),
                digits::shortest(mark.reading.get()),
                mark.uncertainty.map_or_else(String::new, digits::shortest),
            );
            if self.chart.is_some() {
                csv.push(',');
                csv += &asked(mark).map_or_else(String::new, digits::shortest);
            }
            csv += END;
        }
        csv
    }

    /// The card as a tree, every quantity with its unit.
    #[must_use]
    pub fn to_tree(&self) -> Tree {
        let mut card = alloc::vec![];
        let mut put = |key: &str, value: Tree| card.push((String::from(key), value));
        if let Some(name) = &self.name {
            put("name", Tree::from(name.as_str()));
        }
        put("target", brix(self.target.get()));
        put(
            "instrument",
            match self.instrument {
                Instrument::Hydrometer(hydrometer) => hydrometer.to_tree(),
                Instrument::Refractometer(refractometer) => refractometer.to_tree(),
            },
        );
        put(
            "marks",
            self.marks.iter().map(|mark| mark.to_tree(self.unit())).collect(),
        );
        if let Some(chart) = &self.chart {
            put(
                "chart",
                Tree::map([
                    ("jurisdiction", Tree::from(chart.jurisdiction)),
                    ("law", Tree::from(chart.law)),
                    ("seen", Tree::from(chart.seen)),
                    ("target", brix(chart.target.get())),
                    ("source", Tree::from(format!("{}", chart.source))),
                    ("advice", Tree::from(chart.advice)),
                ]),
            );
        }
        put("notes", self.notes().into_iter().map(Tree::from).collect());
        Tree::Map(card)
    }

    /// The card as JSON on one line.
    ///
    /// # Errors
    /// None: a card holds finite numbers only.
    #[cfg(feature = "json")]
    pub fn to_json(&self) -> Result<String, crate::error::Error> {
        self.to_tree().to_json()
    }
}

impl Mark {
    fn to_tree(self, unit: &'static Unit) -> Tree {
        let on_scale = |reading: Reading| Tree::from(Quantity::new(reading.get(), unit));
        let mut map = alloc::vec![
            (
                "temperature",
                Tree::from(Quantity::new(degrees(self.temperature, &table::deg_c), &table::deg_c)),
            ),
            ("mark", on_scale(self.readable)),
            ("reading", on_scale(self.reading)),
        ];
        if let Some(uncertainty) = self.uncertainty {
            map.push(("uncertainty", brix(uncertainty)));
        }
        if let Some(asked) = asked(&self) {
            map.push(("chart", Tree::from(Quantity::new(asked, unit))));
        }
        Tree::map(map)
    }
}

fn brix(value: f64) -> Tree {
    Tree::from(Quantity::new(value, &table::deg_brix))
}

/// What the chart asks for, without what the straight line between rows leaves in the last digits.
fn asked(mark: &Mark) -> Option<f64> {
    mark.chart.map(|asked| digits::rounded_to(asked.get(), 9))
}

/// 211 °F is 211, not 211.00000000000003.
fn degrees(temperature: Temperature, unit: &Unit) -> f64 {
    digits::rounded_to(unit.from_si(temperature.si()), 12)
}

const END: &str = "\r\n";
