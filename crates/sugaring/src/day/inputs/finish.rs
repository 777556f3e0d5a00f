//! The finish: target, small pan, containers.

use crate::{
    day::inputs::Fuel,
    units::{Brix, Given, Mass, Power, Price, Ratio, Temperature, TemperatureDifference, Volume},
};
use alloc::string::String;

/// When the syrup is done.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Target {
    /// °Brix of the syrup, 50 to 70.
    pub brix: Given<Brix>,
    /// How far above it to aim, 0 to 3 °Bx; default 0.
    pub guard: Option<Given<Brix>>,
    /// How much hotter than pure sucrose this syrup boils, 0 to 1 K; default 0.
    pub non_sucrose_rise: Option<Given<TemperatureDifference>>,
    /// Share of the syrup left in pans and filters, 0 to 0.2; default 0.
    pub sugar_lost: Option<Given<Ratio>>,
}

impl Target {
    /// Syrup of this °Brix.
    pub fn brix(brix: impl Into<Given<Brix>>) -> Self {
        Self {
            brix: brix.into(),
            guard: None,
            non_sucrose_rise: None,
            sugar_lost: None,
        }
    }
}

/// The small pan that finishes.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Finishing {
    /// Heat into the syrup, 0.1 to 100 kW; default 3 kW.
    pub heat: Option<Given<Power>>,
    /// What it holds; unchecked where it is left out.
    pub capacity: Option<Given<Volume>>,
    /// Its fuel; default propane.
    pub fuel: Option<Fuel>,
}

/// A container at hand.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Container {
    /// Its name.
    pub name: Option<String>,
    /// Contents on the label, at 20 °C.
    pub volume: Given<Volume>,
    /// How many there are.
    pub stock: u32,
    /// What it holds to the brim.
    pub brimful: Option<Given<Volume>>,
    /// Its material, such as `glass`.
    pub material: Option<String>,
    /// Its own mass.
    pub mass: Option<Given<Mass>>,
    /// Its temperature before filling; default 20 °C.
    pub temperature: Option<Given<Temperature>>,
    /// Price of one.
    pub price: Option<Price>,
}

impl Container {
    /// Containers of a label volume, so many in stock.
    pub fn new(volume: impl Into<Given<Volume>>, stock: u32) -> Self {
        Self {
            name: None,
            volume: volume.into(),
            stock,
            brimful: None,
            material: None,
            mass: None,
            temperature: None,
            price: None,
        }
    }
}
