use alloc::{format, string::String};

use super::{Dimension, table};
use crate::digits;

/// A unit as data: how a value in it becomes SI and back, and how it is written.
///
/// A unit is `(x − zero)·times/over + offset` with `times` or `over` equal to 1, so that 0.01 and 1e-3
/// are divisions and 35 % is 0.35 to the bit.
#[derive(Clone, Copy, Debug)]
pub struct Unit {
    /// What it measures.
    pub dimension: Dimension,
    /// The word that makes and reads it, `gal_per_h`.
    pub word: &'static str,
    /// The symbol in texts and JSON, `gal/h`; empty for plain numbers.
    pub symbol: &'static str,
    /// Other spellings that are understood.
    pub aliases: &'static [&'static str],
    /// What defines the factor.
    pub definition: &'static str,
    pub(super) zero: f64,
    pub(super) times: f64,
    pub(super) over: f64,
    pub(super) offset: f64,
}

impl PartialEq for Unit {
    fn eq(&self, other: &Self) -> bool {
        self.word == other.word
    }
}

impl Eq for Unit {}

impl Unit {
    /// `value` in this unit, in SI.
    #[must_use]
    pub const fn to_si(&self, value: f64) -> f64 {
        (value - self.zero) * self.times / self.over + self.offset
    }

    /// A column of values in this unit, each in SI with the bits of [`Unit::to_si`].
    #[inline]
    pub fn column_to_si(&self, column: &mut [f64]) {
        // Dividing by 1 changes nothing, and costs as much as all the rest.
        if self.over.to_bits() == 1.0_f64.to_bits() {
            for value in column {
                *value = (*value - self.zero) * self.times + self.offset;
            }
        } else {
            for value in column {
                *value = self.to_si(*value);
            }
        }
    }

    /// `si`, in this unit.
    #[must_use]
    pub const fn from_si(&self, si: f64) -> f64 {
        (si - self.offset) * self.over / self.times + self.zero
    }

    /// The four numbers of the definition above: zero, times, over, offset.
    #[must_use]
    pub const fn numbers(&self) -> [f64; 4] {
        [self.zero, self.times, self.over, self.offset]
    }

    /// What a difference of two values in this unit is measured in: a size of the same steps.
    ///
    /// ```
    /// use sugaring::units::table;
    /// assert_eq!(table::deg_f.difference(), &table::delta_f);
    /// assert_eq!(table::litre.difference(), &table::litre);
    /// ```
    #[must_use]
    pub fn difference(&'static self) -> &'static Self {
        match self.word {
            "deg_c" | "kelvin" => &table::delta_c,
            "deg_f" => &table::delta_f,
            "pa_gauge" => &table::pa,
            "kpa_gauge" => &table::kpa,
            "bar_gauge" => &table::bar,
            "psi_gauge" => &table::psi,
            _ if self.dimension.is_density_scale() => &table::fraction,
            _ => self,
        }
    }

    /// A difference of `steps` of this unit, in SI.
    pub(crate) const fn difference_to_si(&self, steps: f64) -> f64 {
        steps * self.times / self.over
    }

    /// The factor to SI of one step of this unit.
    #[must_use]
    pub const fn factor(&self) -> f64 {
        self.times / self.over
    }

    /// `value` with the symbol, in at most six significant digits, as errors show it.
    pub(crate) fn show(&self, value: f64) -> String {
        self.with_symbol(&digits::significant(value, 6))
    }

    /// A number's text with the symbol.
    pub(crate) fn with_symbol(&self, number: &str) -> String {
        if self.symbol.is_empty() {
            String::from(number)
        } else {
            format!("{number} {}", self.symbol)
        }
    }
}
