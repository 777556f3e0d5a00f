//! The rig.

use crate::units::{Brix, GaugePressure, Given, Permeance, Power, Pressure, Ratio, Temperature, Time, Volume};
use alloc::vec::Vec;

/// The membrane rig and how it is run.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Membrane {
    /// One element, from its label.
    pub element: Element,
    /// Housings side by side, 1 to 64; default 1.
    pub parallel: Option<u32>,
    /// Elements one after another, 1 to 8; default 1.
    pub series: Option<u32>,
    /// Pressure on the gauge.
    pub pressure: Given<GaugePressure>,
    /// What the rig's weakest part allows; without it nothing is checked.
    pub pressure_limit: Option<Given<GaugePressure>>,
    /// The pump.
    pub pump: Option<Pump>,
    /// How permeance falls in the cold; default the makers' formula.
    pub temperature_model: Option<TemperatureModel>,
    /// How sugar gathers at the membrane; default a film anchored at the rating.
    pub polarisation: Option<Polarisation>,
    /// Factor on the film, 0.1 to 4; default 1.
    pub film_factor: Option<Given<Ratio>>,
    /// Share of the sugar that the membrane keeps, 0.5 to 1; default 1.
    pub retention: Option<Given<Ratio>>,
    /// Pressure lost along one element, to 2 bar; default none.
    pub element_drop: Option<Given<Pressure>>,
    /// Pressure lost in the prefilter, to 2 bar; default none.
    pub prefilter_drop: Option<Given<Pressure>>,
    /// Pressure on the permeate, to 2 bar; default none.
    pub back_pressure: Option<Given<Pressure>>,
    /// Volume that stays in the housings, to 100 L; default none.
    pub hold_up: Option<Given<Volume>>,
    /// Share of the sap volume kept as permeate for the rinse; default 15 %.
    pub rinse: Option<Given<Ratio>>,
    /// Whether the hours count the warming of the tank; default not.
    pub warming: Option<Warming>,
    /// How it is run.
    pub run: Run,
}

/// A membrane element as its label describes it.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Element {
    /// Permeate flow of the rating test.
    pub flow: Given<crate::units::Flow>,
    /// Pressure of the rating test.
    pub pressure: Given<GaugePressure>,
    /// Temperature of the rating test.
    pub temperature: Given<Temperature>,
    /// Salt in the water of the rating test.
    pub salt: Given<crate::units::Concentration>,
    /// Recovery of the rating test.
    pub recovery: Given<Ratio>,
    /// Rejection of the rating test.
    pub rejection: Given<Ratio>,
    /// Permeance from your own test; the rating then only anchors the film.
    pub permeance: Option<Given<Permeance>>,
}

/// The pump: a flow or a table of points, an efficiency or a power.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Pump {
    /// Its flow at the pressure of the run; default 250 L/h into each housing side by side.
    pub flow: Option<Given<crate::units::Flow>>,
    /// Its flow at several pressures, in place of one flow.
    #[cfg_attr(feature = "schema", schemars(default))]
    pub points: Vec<PumpPoint>,
    /// Efficiency of pump and motor; default 35 %.
    pub efficiency: Option<Given<Ratio>>,
    /// Electrical power, in place of an efficiency.
    pub power: Option<Given<Power>>,
}

/// A point of a pump's curve.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct PumpPoint {
    /// At this pressure.
    pub pressure: Given<GaugePressure>,
    /// It delivers this flow.
    pub flow: Given<crate::units::Flow>,
    /// And draws this electrical power.
    pub power: Option<Given<Power>>,
}

/// How permeance depends on temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum TemperatureModel {
    /// The formula that makers publish.
    Makers,
    /// The same with one constant, in kelvin.
    Single(f64),
    /// By the viscosity of water.
    Viscosity,
    /// 3 % a kelvin.
    PerDegree,
}

/// How sugar gathers at the membrane.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum Polarisation {
    /// A film anchored at the rating, times `film_factor`.
    RatingAnchored,
    /// A fixed ratio of the °Brix at the wall.
    Modulus(f64),
    /// A fixed film coefficient times area of one element, in m³/s.
    Coefficient(f64),
    /// None.
    None,
}

/// Whether the tank's warming is counted in the hours.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum Warming {
    /// The hours at the tank's first temperature; the warming is reported beside them.
    Isothermal,
    /// The hours with the warming.
    Coupled,
}

/// How the rig is run.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum Run {
    /// The concentrate goes back to the tank until an aim is met.
    RecirculateUntil(Until),
    /// Once through, at this share of permeate.
    SinglePass {
        /// Permeate volume per feed volume.
        recovery: Given<Ratio>,
    },
}

/// When recirculation ends.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum Until {
    /// At this °Brix of the tank.
    Brix(Given<Brix>),
    /// At this volume left in the tank.
    Volume(Given<Volume>),
    /// At this share of permeate per sap, by volume.
    Recovery(Given<Ratio>),
    /// After this time.
    Duration(Given<Time>),
}
