//! What a correlation covers, as data: enforced by the check, printed by the docs, readable at run time.

use alloc::{format, string::String};
use core::fmt;

use crate::{
    digits,
    error::Error,
    units::{Dimension, Unit, table},
};

/// One input's inclusive limits, in the unit people read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Range {
    /// Name of the argument.
    pub argument: &'static str,
    /// Unit of the limits.
    pub unit: &'static Unit,
    /// Lower limit, itself allowed.
    pub low: f64,
    /// Upper limit, itself allowed.
    pub high: f64,
    low_si: f64,
    high_si: f64,
}

/// Where a relation, a figure or a limit comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Source {
    /// A published source, with the table or equation in it.
    Published {
        /// Author, title, year.
        text: &'static str,
        /// Table or equation number.
        at: &'static str,
    },
    /// Derived here from other relations.
    Derived {
        /// From what, and how.
        text: &'static str,
    },
    /// What the trade does; no source.
    CommonPractice,
    /// A published value that was remembered, not seen.
    FromMemory {
        /// What is remembered.
        text: &'static str,
    },
}

impl Source {
    /// What kind of source it is, in data.
    #[must_use]
    pub const fn kind(&self) -> &'static str {
        match self {
            Self::Published { .. } => "published",
            Self::Derived { .. } => "derived",
            Self::CommonPractice => "common_practice",
            Self::FromMemory { .. } => "from_memory",
        }
    }
}

/// As it stands beside a figure: "IAPWS R7-97(2012), equation 30".
impl fmt::Display for Source {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Published { text, at } => write!(f, "{text}, {at}"),
            Self::Derived { text } => f.write_str(text),
            Self::CommonPractice => f.write_str("common practice, no source"),
            Self::FromMemory { text } => write!(f, "{text} (from memory)"),
        }
    }
}

/// A correlation as data: its name, inputs with range, output, source and stated accuracy.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Relation {
    /// Path of the function, such as `water::saturation_pressure`.
    pub name: &'static str,
    /// Limits of each input, in the order of the arguments.
    pub inputs: &'static [Range],
    /// Unit of the result.
    pub output: &'static Unit,
    /// Where it comes from.
    pub source: Source,
    /// How well it holds.
    pub accuracy: &'static str,
}

impl Relation {
    /// The value of input `index` in SI, if its range admits it.
    ///
    /// A value within four units in the last place of a limit counts as the limit, beside a limit of 0 what is too small
    /// for a normal number.
    pub(crate) fn check(&self, index: usize, si: f64) -> Result<f64, Error> {
        match self.inputs.get(index) {
            Some(range) => range.check(si).map_err(|e| e.with_reference(self.source)),
            None => Ok(si),
        }
    }
}

impl Range {
    /// Limits `low` to `high` in `unit`.
    pub const fn new(argument: &'static str, unit: &'static Unit, low: f64, high: f64) -> Self {
        let (low_si, high_si) = (unit.to_si(low), unit.to_si(high));
        Self {
            argument,
            unit,
            low,
            high,
            low_si,
            high_si,
        }
    }

    /// The limits in SI.
    #[must_use]
    pub const fn limits_si(&self) -> (f64, f64) {
        (self.low_si, self.high_si)
    }

    pub(crate) fn check(&self, si: f64) -> Result<f64, Error> {
        if si >= self.low_si && si <= self.high_si {
            return Ok(si);
        }
        self.at_a_limit(si)
    }

    #[cold]
    fn at_a_limit(&self, si: f64) -> Result<f64, Error> {
        if (si - self.low_si).abs() <= slack(self.low_si) {
            Ok(self.low_si)
        } else if (si - self.high_si).abs() <= slack(self.high_si) {
            Ok(self.high_si)
        } else {
            Err(Error::out_of_range(self, si))
        }
    }

    /// The usual slip that explains `value`, as a hint.
    pub(crate) fn slip(&self, value: f64) -> Option<String> {
        let fits = |x: f64| x >= self.low && x <= self.high;
        match self.unit.dimension {
            Dimension::Temperature if is_well_above(value, self.high) => self
                .meant(value, &table::deg_f)
                .or_else(|| self.meant(value, &table::kelvin)),
            Dimension::Density if value < self.low => self.meant(value, &table::lb_per_gal),
            Dimension::Ratio
                if self.high < 100.0 && is_well_above(value, self.high.max(1.0)) && fits(value / 100.0) =>
            {
                let shown = digits::significant(value, 6);
                let share = digits::significant(value / 100.0, 6);
                Some(format!(
                    "{shown} % is written percent({shown}), \"{shown} %\" or {share}"
                ))
            }
            Dimension::Brix if value > 0.0 && value < self.low && fits(value * 100.0) => {
                let percent = digits::significant(value * 100.0, 6);
                Some(format!("{percent} % is written {percent}"))
            }
            _ => None,
        }
    }

    /// What `value` would be if it were meant in `unit`, where that fits.
    fn meant(&self, value: f64, unit: &'static Unit) -> Option<String> {
        let meant = self.unit.from_si(unit.to_si(value));
        let shown = digits::significant(value, 6);
        (meant >= self.low && meant <= self.high).then(|| {
            format!(
                "{} is {}: write {}({shown})",
                unit.with_symbol(&shown),
                self.unit.with_symbol(&digits::significant(meant, 4)),
                unit.word
            )
        })
    }
}

/// Whether `value` is so far above `high` that another unit may explain it and rounding does not.
pub(crate) fn is_well_above(value: f64, high: f64) -> bool {
    value > high + 1e-6 * high.abs()
}

/// What rounding may have put a value beside `limit`.
fn slack(limit: f64) -> f64 {
    if limit == 0.0 {
        f64::MIN_POSITIVE
    } else {
        4.0 * ulp(limit)
    }
}

/// The distance from `x` to the next larger number in size.
fn ulp(x: f64) -> f64 {
    let size = x.abs();
    f64::from_bits(size.to_bits() + 1) - size
}

#[cfg(test)]
mod tests {
    use super::*;

    const LIQUID: Range = Range::new("temperature", &table::deg_c, 0.0, 100.0);
    const SHARE: Range = Range::new("recovery", &table::fraction, 0.01, 0.8);

    #[test]
    fn limits_are_inclusive_in_every_unit_word() {
        for celsius in [0.0, 100.0] {
            assert!(LIQUID.check(table::deg_c.to_si(celsius)).is_ok());
            assert!(LIQUID.check(table::deg_f.to_si(celsius * 1.8 + 32.0)).is_ok());
        }
        let high = table::deg_c.to_si(100.0);
        let steps = |n: u64| f64::from_bits(high.to_bits() + n);
        assert_eq!(LIQUID.check(steps(4)), Ok(high));
        assert!(LIQUID.check(steps(8)).is_err());
        assert!(LIQUID.check(high * (1.0 + 1e-9)).is_err());
        let depth = Range::new("depth", &table::metre, 0.0, 1.0);
        assert_eq!(depth.check(-1e-310), Ok(0.0));
        assert!(depth.check(-1e-300).is_err());
    }

    #[test]
    fn a_hair_beyond_is_seen_and_no_slip() {
        let error = LIQUID.check(table::deg_c.to_si(100.0) * (1.0 + 1e-9)).unwrap_err();
        assert_eq!(error.to_string(), "temperature = 100.0000004 °C is outside 0 to 100 °C");
    }

    #[test]
    fn slips_are_recognised() {
        let text = |r: &Range, si| r.check(si).unwrap_err().to_string();
        let syrup = Range::new("temperature", &table::deg_c, 60.0, 132.0);
        assert_eq!(
            text(&syrup, table::deg_c.to_si(217.0)),
            "temperature = 217 °C is outside 60 to 132 °C; 217 °F is 102.8 °C: write deg_f(217)"
        );
        assert_eq!(
            text(&LIQUID, table::deg_c.to_si(293.15)),
            "temperature = 293.15 °C is outside 0 to 100 °C; 293.15 K is 20 °C: write kelvin(293.15)"
        );
        let syrup = Range::new("density", &table::kg_per_m3, 950.0, 1460.0);
        assert_eq!(
            text(&syrup, 11.07),
            "density = 11.07 kg/m³ is outside 950 to 1460 kg/m³; 11.07 lb/gal is 1326 kg/m³: write lb_per_gal(11.07)"
        );
        assert_eq!(
            text(&SHARE, 15.0),
            "recovery = 15 is outside 0.01 to 0.8; 15 % is written percent(15), \"15 %\" or 0.15"
        );
        assert_eq!(text(&SHARE, f64::NAN), "recovery = NaN is not a finite number");
    }
}
