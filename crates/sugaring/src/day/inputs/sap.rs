//! Lots of sap.

use crate::units::{Brix, Given, Mass, Temperature, Volume};
use alloc::string::{String, ToString};

/// A lot of sap.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Sap {
    /// Its name; numbered where it has none.
    pub name: Option<String>,
    /// Its volume at its own temperature; or `mass`.
    pub volume: Option<Given<Volume>>,
    /// Its mass; or `volume`.
    pub mass: Option<Given<Mass>>,
    /// Its true °Brix; or `reading`.
    pub brix: Option<Given<Brix>>,
    /// What an instrument showed; or `brix`.
    pub reading: Option<SapReading>,
    /// Its temperature.
    pub temperature: Option<Given<Temperature>>,
}

/// What an instrument of the day showed in the sap.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct SapReading {
    /// The number on the instrument's own scale.
    pub value: f64,
    /// The instrument's name among `instruments`.
    pub instrument: String,
    /// Temperature of the sap in a hydrometer's jar, of the prism of a refractometer; default the sap's.
    pub temperature: Option<Given<Temperature>>,
}

impl Sap {
    /// A volume of sap, true °Brix, its temperature.
    pub fn of_volume(
        volume: impl Into<Given<Volume>>,
        brix: impl Into<Given<Brix>>,
        temperature: impl Into<Given<Temperature>>,
    ) -> Self {
        Self {
            volume: Some(volume.into()),
            brix: Some(brix.into()),
            temperature: Some(temperature.into()),
            ..Self::default()
        }
    }

    /// A mass of sap, true °Brix, its temperature.
    pub fn of_mass(
        mass: impl Into<Given<Mass>>,
        brix: impl Into<Given<Brix>>,
        temperature: impl Into<Given<Temperature>>,
    ) -> Self {
        Self {
            mass: Some(mass.into()),
            brix: Some(brix.into()),
            temperature: Some(temperature.into()),
            ..Self::default()
        }
    }

    /// A volume of sap, as the named instrument read it at the sap's temperature.
    pub fn as_read(
        volume: impl Into<Given<Volume>>,
        reading: crate::instrument::Reading,
        instrument: &str,
        temperature: impl Into<Given<Temperature>>,
    ) -> Self {
        Self {
            volume: Some(volume.into()),
            reading: Some(SapReading {
                value: reading.get(),
                instrument: instrument.to_string(),
                temperature: None,
            }),
            temperature: Some(temperature.into()),
            ..Self::default()
        }
    }

    /// Under a name of its own.
    #[must_use]
    pub fn with_name(mut self, name: &str) -> Self {
        self.name = Some(name.to_string());
        self
    }
}
