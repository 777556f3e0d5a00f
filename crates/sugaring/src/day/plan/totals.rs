//! Sums of the day.

use crate::{
    day::plan::Figure,
    safety::StepKind,
    units::{cord, gal, hours, kg, kwh, litre, mj},
};
use alloc::{string::String, vec::Vec};

/// Sums of the day.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Totals {
    /// Syrup made.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub syrup: Option<SyrupMade>,
    /// Where no finishing pan was given: what is drawn, to be finished.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub to_finish: Option<ToFinish>,
    /// Water taken out, by station.
    pub water_removed: WaterRemoved,
    /// Heat into the liquid.
    pub heat: Figure<mj>,
    /// From the start to the syrup.
    pub hours: Figure<hours>,
    /// Hours of the fire.
    pub hours_fired: Figure<hours>,
    /// Fuel, by step.
    pub fuel: Vec<FuelLine>,
    /// Electricity of the pump.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub electricity: Option<Electricity>,
    /// Containers used.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub containers: Option<ContainerCost>,
    /// All that has a price.
    pub cost: Cost,
}

/// Syrup.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct SyrupMade {
    /// At 20 °C.
    pub volume: Figure<litre>,
    /// Its mass.
    pub mass: Figure<kg>,
}

/// A draw that is not syrup yet.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct ToFinish {
    /// Its mass.
    pub mass: Figure<kg>,
    /// Its °Brix.
    pub brix: f64,
    /// Its volume, hot.
    pub volume: Figure<litre>,
    /// The syrup it is enough for, at 20 °C.
    pub syrup: Figure<litre>,
}

/// Water taken out.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct WaterRemoved {
    /// Permeate.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub membrane: Option<Figure<kg>>,
    /// Boiled off in the big pan.
    pub evaporator: Figure<kg>,
    /// Boiled off in the small pan.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub finishing: Option<Figure<kg>>,
}

/// A step's fuel.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct FuelLine {
    /// The step.
    pub step: StepKind,
    /// The fuel.
    pub name: String,
    /// Its mass, as burned.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub mass: Option<Figure<kg>>,
    /// Its volume, as it is sold.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub volume: Option<FuelVolume>,
    /// Its energy, where it is sold so.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub energy: Option<Figure<kwh>>,
    /// What it costs.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub cost: Option<f64>,
}

/// A fuel's volume in the unit it is sold by.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(untagged))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum FuelVolume {
    /// Stacked wood.
    Cords(Figure<cord>),
    /// A liquid fuel.
    Gallons(Figure<gal>),
}

/// Electricity.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Electricity {
    /// The energy.
    #[cfg_attr(feature = "serde", serde(flatten))]
    pub energy: Figure<kwh>,
    /// What it costs.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub cost: Option<f64>,
}

/// Containers used.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct ContainerCost {
    /// What they cost.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub cost: Option<f64>,
}

/// Money, in the user's own currency.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Cost {
    /// The sum of all lines that have a price.
    pub value: f64,
    /// Lower end of the range.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub low: Option<f64>,
    /// Upper end of the range.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub high: Option<f64>,
    /// Per litre of syrup made today.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub per_litre: Option<f64>,
    /// Per litre of syrup packed.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub per_litre_packed: Option<f64>,
    /// Lines without a price.
    pub left_out: Vec<&'static str>,
}
