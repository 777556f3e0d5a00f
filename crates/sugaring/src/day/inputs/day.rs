//! Everything a day is planned from.

use crate::{
    day::inputs::{Air, Container, Evaporator, Finishing, Instrument, Membrane, Sap, Target},
    units::{Given, Price, Temperature},
};
use alloc::{
    string::{String, ToString},
    vec::Vec,
};

/// Everything a day is planned from.
///
/// ```
/// use sugaring::{air::StationPressure, day::{DayInputs, Sap, Target}, evaporator::Pan, units::*};
/// let air = StationPressure::from_altitude(metre(410.0))?;
/// let sap = Sap::of_volume(litre(265.0), brix(1.98)?, deg_c(4.0));
/// let pan = Pan::new(metre(0.61), metre(1.22))?;
/// let inputs = DayInputs::new(air, vec![sap], pan, Target::brix(brix(66.9)?)).with_samples(0);
/// assert_eq!(inputs.sap.len(), 1);
/// # Ok::<(), sugaring::Error>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct DayInputs {
    /// Version of this shape; 1.
    #[cfg_attr(feature = "schema", schemars(default))]
    pub schema_version: u32,
    /// Printed on top; to 80 characters.
    pub title: Option<String>,
    /// `YYYY-MM-DDThh:mm`; printed and counted from, never compared with a clock.
    pub start: Option<String>,
    /// Seed of the draws behind the ranges; default 1.
    pub seed: Option<u64>,
    /// Number of draws behind the ranges, 0 to 1 000 000; 0 leaves the ranges out; default 1000.
    pub samples: Option<u32>,
    /// Today's air.
    pub air: Air,
    /// The lots of sap, one at least.
    pub sap: Vec<Sap>,
    /// The membrane rig; without it raw sap is boiled.
    pub membrane: Option<Membrane>,
    /// The big pan and its fire.
    pub evaporator: Evaporator,
    /// The small pan; without it the plan ends at the draw.
    pub finishing: Option<Finishing>,
    /// When the syrup is done.
    pub target: Target,
    /// Instruments at hand, by name; default a Brix hydrometer for 60 °F.
    #[cfg_attr(feature = "schema", schemars(default, with = "crate::day::data::ByName<Instrument>"))]
    pub instruments: Vec<(String, Instrument)>,
    /// Containers at hand; without them there is no packing step.
    #[cfg_attr(feature = "schema", schemars(default))]
    pub containers: Vec<Container>,
    /// Temperature at which the containers are filled; default 85 °C.
    pub fill_temperature: Option<Given<Temperature>>,
    /// Price of electricity.
    pub electricity: Option<Price>,
    /// Price of an hour of work.
    pub labour: Option<Price>,
}

impl DayInputs {
    /// The least a day needs: air, sap, pan and target.
    pub fn new(air: impl Into<Air>, sap: Vec<Sap>, pan: impl Into<Evaporator>, target: Target) -> Self {
        Self {
            schema_version: crate::day::SCHEMA_VERSION,
            title: None,
            start: None,
            seed: None,
            samples: None,
            air: air.into(),
            sap,
            membrane: None,
            evaporator: pan.into(),
            finishing: None,
            target,
            instruments: Vec::new(),
            containers: Vec::new(),
            fill_temperature: None,
            electricity: None,
            labour: None,
        }
    }

    /// With an instrument at hand, under its name.
    #[must_use]
    pub fn with_instrument(mut self, name: &str, instrument: impl Into<Instrument>) -> Self {
        self.instruments.push((name.to_string(), instrument.into()));
        self
    }

    /// With the containers at hand.
    #[must_use]
    pub fn with_containers(mut self, containers: Vec<Container>) -> Self {
        self.containers = containers;
        self
    }
}
