use super::{Dimension, Pressure, Si, Value, Word};
use crate::error::Error;

/// Pressure above the room's, as a gauge shows it; a type of its own, because taking one for an absolute pressure is an error of 100 kPa.
///
/// ```
/// use sugaring::units::{bar_gauge, psi_gauge};
/// assert!((bar_gauge(7.6).get::<psi_gauge>() - 110.23).abs() < 0.01);
/// ```
/// A gauge pressure is no absolute pressure:
/// ```compile_fail,E0308
/// use sugaring::units::*;
/// let station: Pressure = bar_gauge(0.97);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct GaugePressure(f64);

impl GaugePressure {
    /// The number in the unit of `W`.
    #[must_use]
    pub fn get<W: Word<Quantity = Self>>(self) -> f64 {
        W::unit().from_si(self.0)
    }

    /// The same as a difference of pressures: what drives a membrane.
    #[must_use]
    pub fn difference(self) -> Pressure {
        Pressure::of_si(self.0)
    }
}

impl Value for GaugePressure {
    const DIMENSION: Dimension = Dimension::GaugePressure;

    fn from_si(si: f64) -> Result<Self, Error> {
        Ok(Self(si))
    }

    fn si(self) -> f64 {
        self.0
    }
}

impl Si for GaugePressure {
    fn of_si(si: f64) -> Self {
        Self(si)
    }
}
