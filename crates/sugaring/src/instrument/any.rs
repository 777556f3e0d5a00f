use super::{Hydrometer, Reading, Refractometer};
use crate::{
    error::Error,
    units::{Brix, Measured, Temperature},
};

/// An instrument at hand, of either kind.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum Instrument {
    /// A glass float.
    Hydrometer(Hydrometer),
    /// A prism.
    Refractometer(Refractometer),
}

impl Instrument {
    /// What the liquid is that shows `reading`; `temperature` is the liquid's for a hydrometer, the prism's for a
    /// refractometer.
    ///
    /// # Errors
    /// As [`Hydrometer::truth`] and [`Refractometer::truth`].
    ///
    /// ```
    /// use sugaring::{instrument::{Hydrometer, Instrument, reading}, units::*};
    /// let at_hand: Instrument = Hydrometer::brix(deg_f(60.0))?.into();
    /// assert!(at_hand.truth(reading(59.0), deg_f(211.0))?.value >= brix(66.8)?);
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn truth(&self, reading: Reading, temperature: Temperature) -> Result<Measured<Brix>, Error> {
        match self {
            Self::Hydrometer(hydrometer) => hydrometer.truth(reading, temperature),
            Self::Refractometer(refractometer) => refractometer.truth(reading, temperature),
        }
    }

    /// What it shows in a liquid of `brix`.
    ///
    /// # Errors
    /// As [`Hydrometer::reading`] and [`Refractometer::reading`].
    pub fn reading(&self, brix: Brix, temperature: Temperature) -> Result<Reading, Error> {
        match self {
            Self::Hydrometer(hydrometer) => hydrometer.reading(brix, temperature),
            Self::Refractometer(refractometer) => refractometer.reading(brix, temperature),
        }
    }
}

impl From<Hydrometer> for Instrument {
    fn from(hydrometer: Hydrometer) -> Self {
        Self::Hydrometer(hydrometer)
    }
}

impl From<Refractometer> for Instrument {
    fn from(refractometer: Refractometer) -> Self {
        Self::Refractometer(refractometer)
    }
}
