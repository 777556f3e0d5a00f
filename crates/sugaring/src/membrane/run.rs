//! What comes of a recirculation.

use alloc::vec::Vec;

use crate::{
    lot::Lot,
    units::{Brix, Energy, Flow, Mass, Ratio, Temperature, Time, Volume},
};

/// What ended a run.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum LimitedBy {
    /// The aim was reached.
    Aim,
    /// The tank was there from the start: nothing ran.
    AlreadyThere,
    /// Hours without end: the tank stands at its osmotic limit.
    OsmoticLimit,
}

/// What has passed the membrane.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Permeate {
    /// Mass.
    pub mass: Mass,
    /// Volume at the sap's temperature, with the density of water.
    pub volume: Volume,
    /// °Brix of all of it.
    pub brix: Brix,
    /// Sugar that went with it.
    pub sugar: Mass,
    /// Temperature.
    pub temperature: Temperature,
}

/// A tank that warms.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Warmed {
    /// Temperature of the tank at the end.
    pub temperature: Temperature,
    /// How long it takes when it warms: warm membranes let more through.
    pub duration: Time,
}

/// The tank on the way.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct TrajectoryPoint {
    /// Since the start.
    pub time: Time,
    /// °Brix of the tank.
    pub brix: Brix,
    /// What the tank holds.
    pub mass: Mass,
    /// Permeate flow of the rig.
    pub flow: Flow,
}

/// A tank concentrated by recirculation.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Recirculation {
    /// How long it takes.
    pub duration: Time,
    /// What has passed.
    pub permeate: Permeate,
    /// What is left in the tank.
    pub concentrate: Lot,
    /// Permeate flow of the rig at the start.
    pub flow_first: Flow,
    /// Permeate flow of the rig at the end.
    pub flow_last: Flow,
    /// The tank warmed by the pump; `None` where nothing ran, where it would pass 45 °C, or where the aim is out of
    /// reach of a warm tank.
    pub warming: Option<Warmed>,
    /// Energy the pump draws.
    pub energy: Energy,
    /// Sugar lost with the permeate.
    pub sugar_lost: Mass,
    /// No tank gets sweeter at this pressure.
    pub osmotic_limit: Brix,
    /// Largest permeate per feed of one element, in one pass.
    pub element_recovery: Ratio,
    /// Least crossflow along an element, per the rated.
    pub crossflow_least: Ratio,
    /// Largest crossflow, that at the inlet, per the rated.
    pub crossflow_most: Ratio,
    /// The tank on the way, from start to end.
    pub trajectory: Vec<TrajectoryPoint>,
    /// What ended it.
    pub limited_by: LimitedBy,
    /// Inputs of the rig that were left to their defaults.
    pub rests_on: Vec<&'static str>,
}
