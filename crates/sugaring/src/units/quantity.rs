use alloc::string::String;
use core::fmt;

use super::{Dimension, Unit, Value};
use crate::{digits, error::Error};

/// A number with its unit, both as given: what texts and JSON carry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Quantity {
    value: f64,
    unit: &'static Unit,
}

impl Quantity {
    /// `value` in `unit`.
    #[must_use]
    pub const fn new(value: f64, unit: &'static Unit) -> Self {
        Self { value, unit }
    }

    /// A typed value, written in `unit`, which must be of its dimension.
    pub(crate) fn of<T: Value>(value: T, unit: &'static Unit) -> Self {
        Self::new(unit.from_si(value.si()), unit)
    }

    /// The number in [`Quantity::unit`].
    #[must_use]
    pub const fn value(&self) -> f64 {
        self.value
    }

    /// The unit.
    #[must_use]
    pub const fn unit(&self) -> &'static Unit {
        self.unit
    }

    /// What it measures.
    #[must_use]
    pub const fn dimension(&self) -> Dimension {
        self.unit.dimension
    }

    /// The number in SI.
    #[must_use]
    pub const fn si(&self) -> f64 {
        self.unit.to_si(self.value)
    }

    /// The typed quantity.
    ///
    /// # Errors
    /// Wrong dimension, or outside the range of the type.
    pub fn typed<T: Value>(&self) -> Result<T, Error> {
        if self.dimension() == T::DIMENSION {
            T::from_si(self.si())
        } else {
            Err(Error::wrong_dimension(self, T::DIMENSION))
        }
    }
}

impl fmt::Display for Quantity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let number: String = digits::shortest(self.value);
        f.write_str(&self.unit.with_symbol(&number))
    }
}
