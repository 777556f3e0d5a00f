//! The plan.

use crate::{
    day::{
        inputs::DayInputs,
        plan::{Figure, Filled, FuelVolume, Mark, Remark, Rest, RestsOn, Step, Totals},
    },
    units::{deg_c, hours, kg, kpa},
};
use alloc::{string::String, vec::Vec};

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
