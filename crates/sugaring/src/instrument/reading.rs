use core::fmt;

use crate::digits;

/// What an instrument shows on its own scale; never a truth, so a type of its own.
///
/// ```compile_fail,E0308
/// use sugaring::{instrument::reading, units::*};
/// let syrup: Brix = reading(59.0);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Reading(f64);

/// An instrument shows `value`; the instrument checks it when it is turned into a truth.
///
/// ```
/// assert_eq!(sugaring::instrument::reading(59.0).get(), 59.0);
/// ```
#[must_use]
pub const fn reading(value: f64) -> Reading {
    Reading(value)
}

impl Reading {
    /// The number on the instrument's own scale.
    #[must_use]
    pub const fn get(self) -> f64 {
        self.0
    }
}

impl fmt::Display for Reading {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match f.precision() {
            Some(decimals) => write!(f, "{:.decimals$}", self.0),
            None => f.write_str(&digits::shortest(self.0)),
        }
    }
}
