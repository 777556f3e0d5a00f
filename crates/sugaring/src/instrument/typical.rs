use alloc::format;
use core::fmt;

use crate::{
    digits,
    error::Error,
    form::Tree,
    relation::Source,
    units::{Unit, table},
};

/// A kind of instrument, with the resolution and the standard uncertainty to take where nobody knows better.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct InstrumentRow {
    /// Its name in data, such as `syrup_hydrometer_tested`.
    pub key: &'static str,
    /// What it is called.
    pub name: &'static str,
    /// The steps in which it is read, where there is a usual one.
    pub resolution: Option<Typical>,
    /// One standard deviation of what it says.
    pub uncertainty: Typical,
    /// What a share is a share of.
    pub of: Of,
    /// Where the figures come from.
    pub source: Source,
}

/// A usual size, from `low` to `high`; both the same where there is one figure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Typical {
    /// The smaller.
    pub low: f64,
    /// The larger.
    pub high: f64,
    /// Their unit.
    pub unit: &'static Unit,
}

/// What an uncertainty is counted in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Of {
    /// In the unit of what is read.
    Reading,
    /// As a share of the amount.
    Amount,
    /// As a share of the whole scale.
    Span,
}

impl Of {
    /// Its name in data.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Reading => "reading",
            Self::Amount => "amount",
            Self::Span => "span",
        }
    }
}

impl InstrumentRow {
    /// Every kind.
    #[must_use]
    pub fn all() -> &'static [Self] {
        ROWS
    }

    /// The kind of a key.
    ///
    /// # Errors
    /// Unknown name, with the nearest.
    ///
    /// ```
    /// use sugaring::instrument::InstrumentRow;
    /// let dial = InstrumentRow::named("dial_thermometer_zeroed")?;
    /// assert_eq!(dial.uncertainty.to_string(), "0.2 to 0.3 Δ°C");
    /// assert_eq!(dial.source.to_string(), "common practice, no source");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::instrument::InstrumentRow;
    /// assert_eq!(
    ///     InstrumentRow::named("sap_hydrometr").unwrap_err().to_string(),
    ///     "instrument has the unknown name \"sap_hydrometr\"; nearest: sap_hydrometer",
    /// );
    /// ```
    pub fn named(key: &str) -> Result<&'static Self, Error> {
        let found = ROWS.iter().find(|row| row.key == key);
        found.ok_or_else(|| Error::unknown_name("instrument", key, ROWS.iter().map(|row| row.key)))
    }
}

impl InstrumentRow {
    /// The same as data.
    #[must_use]
    pub fn to_tree(&self) -> Tree {
        let size = |size: Typical| {
            Tree::map([
                ("low", Tree::from(size.low)),
                ("high", Tree::from(size.high)),
                ("unit", Tree::from(size.unit.symbol)),
            ])
        };
        let mut map = alloc::vec![("key", Tree::from(self.key)), ("name", Tree::from(self.name))];
        if let Some(step) = self.resolution {
            map.push(("resolution", size(step)));
        }
        map.extend([
            ("uncertainty", size(self.uncertainty)),
            ("of", Tree::from(self.of.name())),
            ("source", Tree::from(format!("{}", self.source))),
        ]);
        Tree::map(map)
    }
}

impl fmt::Display for Typical {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (low, high) = (digits::shortest(self.low), digits::shortest(self.high));
        let text = if low == high { low } else { format!("{low} to {high}") };
        f.write_str(&self.unit.with_symbol(&text))
    }
}

const fn about(size: f64, unit: &'static Unit) -> Typical {
    between(size, size, unit)
}

const fn between(low: f64, high: f64, unit: &'static Unit) -> Typical {
    Typical { low, high, unit }
}

const fn row(
    key: &'static str,
    name: &'static str,
    resolution: Option<Typical>,
    uncertainty: Typical,
    of: Of,
) -> InstrumentRow {
    InstrumentRow {
        key,
        name,
        resolution,
        uncertainty,
        of,
        source: Source::CommonPractice,
    }
}

static ROWS: &[InstrumentRow] = &[
    row(
        "syrup_hydrometer_tested",
        "syrup hydrometer, tested",
        Some(between(0.1, 0.5, &table::deg_brix)),
        about(0.15, &table::deg_brix),
        Of::Reading,
    ),
    InstrumentRow {
        source: Source::Derived {
            text: "an extension service's test of 75 to 90 growers' hydrometers at 60 °Bx: about half within 0.2 °Bx",
        },
        ..row(
            "syrup_hydrometer_untested",
            "syrup hydrometer, untested",
            None,
            about(0.3, &table::deg_brix),
            Of::Reading,
        )
    },
    row(
        "sap_hydrometer",
        "sap hydrometer, 0 to 10 °Bx",
        Some(between(0.1, 0.2, &table::deg_brix)),
        about(0.1, &table::deg_brix),
        Of::Reading,
    ),
    row(
        "hand_refractometer",
        "hand refractometer, 0 to 32 °Bx, corrects itself, within 0.2",
        Some(about(0.2, &table::deg_brix)),
        about(0.12, &table::deg_brix),
        Of::Reading,
    ),
    row(
        "digital_refractometer",
        "digital refractometer, within 0.2",
        Some(about(0.1, &table::deg_brix)),
        about(0.1, &table::deg_brix),
        Of::Reading,
    ),
    row(
        "dial_thermometer_zeroed",
        "dial thermometer, zeroed in boiling water",
        Some(between(0.5, 1.0, &table::delta_f)),
        between(0.2, 0.3, &table::delta_c),
        Of::Reading,
    ),
    row(
        "digital_probe_zeroed",
        "digital probe, zeroed in boiling water",
        Some(about(0.1, &table::delta_f)),
        about(0.1, &table::delta_c),
        Of::Reading,
    ),
    row(
        "digital_probe",
        "digital probe, as it comes",
        Some(about(0.1, &table::delta_f)),
        about(0.5, &table::delta_c),
        Of::Reading,
    ),
    row(
        "aneroid_barometer",
        "aneroid barometer, set",
        Some(about(0.02, &table::in_hg)),
        about(0.1, &table::kpa),
        Of::Reading,
    ),
    row(
        "dip_stick",
        "dip stick in a tank",
        Some(about(5.0, &table::mm)),
        between(1.0, 2.0, &table::percent),
        Of::Amount,
    ),
    row(
        "pail_and_watch",
        "flow by pail and stopwatch",
        None,
        about(3.0, &table::percent),
        Of::Amount,
    ),
    row(
        "pressure_gauge",
        "pressure gauge, class 1.6 %",
        None,
        about(0.9, &table::percent),
        Of::Span,
    ),
];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Dimension;

    #[test]
    fn rows_are_whole() {
        for row in ROWS {
            assert_eq!(InstrumentRow::named(row.key), Ok(row));
            assert!(matches!(row.to_tree(), Tree::Map(map) if map.len() == 5 + usize::from(row.resolution.is_some())));
            let sizes = [Some(row.uncertainty), row.resolution];
            for size in sizes.into_iter().flatten() {
                assert!(size.low > 0.0 && size.low <= size.high, "{}", row.key);
            }
            let share = row.uncertainty.unit.dimension == Dimension::Ratio;
            assert_eq!(share, row.of != Of::Reading, "{}", row.key);
        }
    }
}
