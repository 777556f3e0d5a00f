//! The big pan and its fire.
use crate::{
    day::inputs::Fuel,
    units::{Brix, Given, Length, MassFlow, Power, Temperature, Volume},
};

/// The big pan, its fire and what stood in it.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Evaporator {
    /// The pan.
    pub pan: Pan,
    /// Heat into the liquid; default the rule by area for a flat pan.
    pub heat: Option<Heat>,
    /// What stood in the pan from before.
    pub left_in_pan: Option<LeftInPan>,
    /// The fire's fuel; default hardwood.
    pub fuel: Option<Fuel>,
    /// How it is run; this version knows the batch with topping up.
    pub run: Option<PanRun>,
}

/// How a pan is run.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum PanRun {
    /// Filled, topped up, boiled down, emptied.
    Batch,
}

/// The big pan.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Pan {
    /// Inner length, 50 mm to 20 m.
    pub length: Given<Length>,
    /// Inner width, 50 mm to 20 m.
    pub width: Given<Length>,
    /// Depth of the boiling liquid while topping up, 5 to 500 mm; default 50 mm.
    pub running_depth: Option<Given<Length>>,
    /// Least depth over the fire, 5 to 500 mm; default 25 mm.
    pub least_depth: Option<Given<Length>>,
    /// Of a typed pan; refused, because this version runs a pan as a batch.
    #[cfg_attr(feature = "schema", schemars(skip))]
    pub(crate) sections: Option<u32>,
}

/// Heat into the liquid, however it is known.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum Heat {
    /// Cold water added to hold the level of boiling water.
    HeldLevel {
        /// Water added per time.
        added: Given<MassFlow>,
        /// Its temperature.
        feed_temperature: Given<Temperature>,
    },
    /// Water boiled off without any feed.
    LevelDrop(Given<MassFlow>),
    /// The heat itself.
    Power(Given<Power>),
    /// The rule by area, assumed.
    AreaRule(PanKind),
}

/// Kinds of pan of the rule by area.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum PanKind {
    /// A flat pan.
    Flat,
    /// A flat pan with a blower.
    FlatBlower,
    /// A flue pan.
    Flue,
}

/// What stood in the pan from before.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct LeftInPan {
    /// Its volume.
    pub volume: Given<Volume>,
    /// Its °Brix.
    pub brix: Given<Brix>,
    /// Its temperature.
    pub temperature: Given<Temperature>,
}
