//! The plan as data: what [`plan`](super::plan) answers, and what the JSON holds.

use alloc::{string::String, vec::Vec};

use super::{figure::Figure, inputs::DayInputs};
use crate::{
    safety::StepKind,
    units::{
        Quantity, bar_gauge, cord, deg_c, delta_c, gal, gram, hours, kg, kg_per_h, kpa, kw, kwh, litre, litre_per_h,
        litre_per_h_bar, mj, ml, mm,
    },
};

/// A planned day: steps in order, amounts, hours, fuel, marks, ranges, remarks and what it rests on.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct DayPlan {
    /// Version of this shape.
    pub schema_version: u32,
    /// Version of the results: the same inputs give the same bits under the same version.
    pub numbers: &'static str,
    /// As given.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub title: Option<String>,
    /// As given; every time counts from it.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub start: Option<String>,
    /// Share of the draws that the ranges hold.
    pub coverage: f64,
    /// Seed of the draws.
    pub seed: u64,
    /// Number of draws.
    pub samples: u32,
    /// Draws whose day could not be planned; they are left out of the ranges.
    pub unreachable_draws: u32,
    /// The inputs as read, units as given.
    pub inputs: DayInputs,
    /// Today's air.
    pub air: AirToday,
    /// Sums of the day.
    pub totals: Totals,
    /// The steps, in order of their start.
    pub steps: Vec<Step>,
    /// What each instrument shows when the syrup is done.
    pub marks: Vec<Mark>,
    /// Containers filled, largest first.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Vec::is_empty"))]
    #[cfg_attr(feature = "schema", schemars(default))]
    pub containers: Vec<Filled>,
    /// Syrup that fills no container.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub rest: Option<Rest>,
    /// What stays in the pans.
    pub remains: Remains,
    /// The same day without the rig.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub without_membrane: Option<WithoutMembrane>,
    /// Hours of the other ways to arrange the day.
    pub other_hours: OtherHours,
    /// Limits met, cautions and notices.
    pub remarks: Vec<Remark>,
    /// What was assumed, and what rests on the user's own measurement.
    pub rests_on: Vec<RestsOn>,
    /// What came in less what went out: rounding alone.
    pub balance: Balance,
}

/// Today's air.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct AirToday {
    /// Station pressure.
    pub pressure: Figure<kpa>,
    /// How it was come by.
    pub origin: &'static str,
    /// What plain water boils at.
    pub water_boils_at: Figure<deg_c>,
}

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

/// Containers of one kind.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Filled {
    /// Their name.
    pub name: String,
    /// How many.
    pub count: u32,
    /// Hot, in each.
    pub fill_volume: Figure<ml>,
    /// In each.
    pub fill_mass: Figure<gram>,
    /// Between the hot fill and the brim.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub headspace: Option<Figure<ml>>,
    /// Where syrup and container settle.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub settled: Option<Figure<deg_c>>,
    /// Least temperature of the container that keeps the syrup hot enough.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub glass_needed: Option<Figure<deg_c>>,
    /// Or least temperature of filling, where the syrup bears it.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub fill_needed: Option<Figure<deg_c>>,
}

/// Syrup left over.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Rest {
    /// At 20 °C.
    pub volume: Figure<litre>,
    /// Its mass.
    pub mass: Figure<kg>,
    /// `less_than_one_container`, `stock_used_up` or `no_containers`.
    pub because: &'static str,
}

/// What stays in the pans.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Remains {
    /// Sugar.
    pub sugar: Figure<kg>,
    /// Mass.
    pub mass: Figure<kg>,
}

/// The same day without the rig.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct WithoutMembrane {
    /// From the start to the syrup.
    pub hours: Figure<hours>,
    /// Hours of the fire.
    pub hours_fired: Figure<hours>,
    /// Of the big pan's fuel.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub fuel_mass: Option<Figure<kg>>,
    /// Of the big pan's fuel.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub fuel_volume: Option<FuelVolume>,
    /// All that has a price.
    pub cost: f64,
}

/// Hours of the other arrangements that this day can offer.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct OtherHours {
    /// One step after another.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub in_sequence: Option<Figure<hours>>,
    /// The pan fed as concentrate comes.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub overlapped: Option<Figure<hours>>,
    /// Rig and pan on one tank at once.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub together: Option<Figure<hours>>,
}

/// A limit met, a caution or a notice.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Remark {
    /// How grave.
    pub level: Level,
    /// Which.
    pub key: &'static str,
    /// At which step.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub step: Option<StepKind>,
    /// In words.
    pub text: String,
}

/// What a number rests on.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct RestsOn {
    /// Path of the input.
    pub input: String,
    /// How it is known.
    pub how: How,
    /// In words.
    pub text: String,
}

/// What came in less what went out.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Balance {
    /// Mass.
    pub mass: Figure<kg>,
    /// Sugar.
    pub sugar: Figure<kg>,
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

/// How grave a remark is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Level {
    /// It ends a step, or cannot be met.
    Limit,
    /// Food, fire, people.
    Caution,
    /// Worth knowing.
    Notice,
}

/// How a number is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum How {
    /// A default stands in for what was not given.
    Assumed,
    /// The user's own measurement.
    Calibrated,
    /// Given.
    Given,
}
