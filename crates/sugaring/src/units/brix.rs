use core::fmt;

use super::{Dimension, Value, table};
use crate::{digits, error::Error, relation::Range};

/// Dissolved solids in mass per cent, true, as an instrument corrected for temperature shows them.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Brix(f64);

const BRIX: Range = Range::new("brix", &table::deg_brix, 0.0, 100.0);

/// `value` °Brix.
///
/// # Errors
/// Out of range below 0 or above 100, or not finite.
///
/// ```
/// use sugaring::units::brix;
/// assert_eq!(brix(66.9)?.get(), 66.9);
/// assert_eq!(brix(-1.0).unwrap_err().to_string(), "brix = -1 °Bx is outside 0 to 100 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn brix(value: f64) -> Result<Brix, Error> {
    BRIX.check(value).map(Brix)
}

impl Brix {
    /// The number, mass per cent.
    #[must_use]
    pub const fn get(self) -> f64 {
        self.0
    }

    /// A number that is known to lie from 0 to 100.
    pub(crate) const fn trusted(value: f64) -> Self {
        Self(value)
    }
}

impl Value for Brix {
    const DIMENSION: Dimension = Dimension::Brix;

    fn from_si(si: f64) -> Result<Self, Error> {
        brix(si)
    }

    fn si(self) -> f64 {
        self.0
    }
}

impl fmt::Display for Brix {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match f.precision() {
            Some(decimals) => write!(f, "{:.decimals$} °Bx", self.0),
            None => write!(f, "{} °Bx", digits::shortest(self.0)),
        }
    }
}
