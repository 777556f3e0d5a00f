//! Steps.

use crate::{
    day::plan::{Figure, How},
    safety::StepKind,
    units::{Quantity, bar_gauge, deg_c, delta_c, hours, kg, kg_per_h, kw, litre, litre_per_h, litre_per_h_bar, mm},
};
use alloc::{string::String, vec::Vec};

/// One step.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Step {
    /// Which.
    pub kind: StepKind,
    /// After the start of the day.
    pub start: Figure<hours>,
    /// How long it takes.
    pub duration: Figure<hours>,
    /// What goes in.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Vec::is_empty"))]
    #[cfg_attr(feature = "schema", schemars(default))]
    pub streams_in: Vec<Stream>,
    /// What comes out.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Vec::is_empty"))]
    #[cfg_attr(feature = "schema", schemars(default))]
    pub streams_out: Vec<Stream>,
    /// What to set, and what follows from it.
    pub settings: Settings,
    /// Stages of a boil.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Vec::is_empty"))]
    #[cfg_attr(feature = "schema", schemars(default))]
    pub stages: Vec<StageState>,
    /// What to watch.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Vec::is_empty"))]
    #[cfg_attr(feature = "schema", schemars(default))]
    pub watch: Vec<Watch>,
    /// When it ends; any of these.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Vec::is_empty"))]
    #[cfg_attr(feature = "schema", schemars(default))]
    pub stop_when: Vec<Stop>,
    /// Keys of the cautions.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Vec::is_empty"))]
    #[cfg_attr(feature = "schema", schemars(default))]
    pub cautions: Vec<&'static str>,
    /// What its numbers rest on.
    pub rests_on: How,
}

/// A stream.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Stream {
    /// Its name.
    pub name: &'static str,
    /// Its mass.
    pub mass: Figure<kg>,
    /// Its volume at its temperature.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub volume: Option<Figure<litre>>,
    /// Its °Brix.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub brix: Option<f64>,
    /// Its sugar.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub sugar: Option<Figure<kg>>,
    /// Its temperature.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub temperature: Option<Figure<deg_c>>,
}

/// What to set at a step, and what follows from it.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Settings {
    /// On the gauge.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub pressure: Option<Figure<bar_gauge>>,
    /// Into the rig.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub feed: Option<Figure<litre_per_h>>,
    /// Of a single pass.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub permeate: Option<Figure<litre_per_h>>,
    /// Of a single pass.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub concentrate: Option<Figure<litre_per_h>>,
    /// At the start of a recirculation.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub permeate_first: Option<Figure<litre_per_h>>,
    /// At its end.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub permeate_last: Option<Figure<litre_per_h>>,
    /// For the rinse, and a pan full beside the fire.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub permeate_kept: Option<Figure<litre>>,
    /// Of one element, at 25 °C.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub permeance: Option<Figure<litre_per_h_bar>>,
    /// Share of it at the sap's temperature.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub temperature_factor: Option<f64>,
    /// °Brix that this pressure cannot pass.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub osmotic_limit: Option<f64>,
    /// The tank at the end.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub warms_to: Option<Figure<deg_c>>,
    /// With the warming counted.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub duration_coupled: Option<Figure<hours>>,
    /// Into the liquid.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub heat: Option<Figure<kw>>,
    /// Water boiled off while the level is held with cold water.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub water_rate: Option<Figure<kg_per_h>>,
    /// Hot, at the running depth.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub running_volume: Option<Figure<litre>>,
    /// Cold, to start with.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub first_fill: Option<Figure<litre>>,
    /// Where all the syrup would stand in this pan.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub depth_if_finished: Option<Figure<mm>>,
    /// Sugar this pan would hold if it ran continuously.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub continuous_hold_up: Option<Figure<kg>>,
    /// To hold.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub volume: Option<Figure<litre>>,
    /// Of the syrup.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub fill_temperature: Option<Figure<deg_c>>,
}

/// A stage of a boil, and the pan at its end.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct StageState {
    /// `heat_up`, `top_up` or `boil_down`.
    pub kind: &'static str,
    /// How long it takes.
    pub duration: Figure<hours>,
    /// Water boiled off.
    pub water: Figure<kg>,
    /// °Brix at the end.
    pub brix: f64,
    /// In the pan at the end.
    pub mass: Figure<kg>,
    /// Of the boiling liquid at the end.
    pub depth: Figure<mm>,
    /// Of the boiling liquid at the end.
    pub temperature: Figure<deg_c>,
}

/// A number to watch.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Watch {
    /// What it is.
    pub what: &'static str,
    /// At the start.
    pub first: f64,
    /// At the end; left out where nothing passes any more.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub last: Option<f64>,
}

/// A sign that a step is done.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Stop {
    /// Where to see it.
    pub what: String,
    /// At this volume.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub volume: Option<Figure<litre>>,
    /// At this reading.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub reading: Option<f64>,
    /// At this depth.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub depth: Option<Figure<mm>>,
    /// At this temperature.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub temperature: Option<Figure<deg_c>>,
    /// So far above boiling water.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub elevation: Option<Figure<delta_c>>,
}

/// What an instrument shows in finished syrup.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Mark {
    /// Its name.
    pub instrument: String,
    /// At this temperature.
    pub temperature: Quantity,
    /// It shows this.
    pub reading: f64,
}
