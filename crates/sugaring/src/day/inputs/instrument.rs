//! Instruments at hand.
use crate::units::{Given, PerKelvin, Temperature};

/// An instrument at hand.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum Instrument {
    /// A glass hydrometer.
    Hydrometer(Hydrometer),
    /// A refractometer.
    Refractometer(Refractometer),
}

/// A hydrometer.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Hydrometer {
    /// Its scale.
    pub scale: HydrometerScale,
    /// Temperature of its calibration.
    pub calibrated_at: Given<Temperature>,
    /// Cubical expansion of its glass; default 25e-6 per kelvin.
    pub glass_expansion: Option<Given<PerKelvin>>,
    /// What it reads too high, °Bx; default 0.
    pub offset: Option<f64>,
    /// Step to which it is read, °Bx; adds step/√12 to the uncertainty.
    pub resolution: Option<f64>,
    /// Standard uncertainty of its scale, °Bx.
    pub uncertainty: Option<f64>,
}

/// Scales of a hydrometer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum HydrometerScale {
    /// °Brix.
    Brix,
}

/// A refractometer that corrects itself for temperature.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Refractometer {
    /// Between which temperatures of its prism it does.
    pub compensated: Compensated,
    /// What it shows in water; default 0.
    pub zero: Option<f64>,
    /// Step to which it is read, °Bx; adds step/√12 to the uncertainty.
    pub resolution: Option<f64>,
    /// Standard uncertainty of its scale, °Bx.
    pub uncertainty: Option<f64>,
}

/// The range of a refractometer's own correction.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Compensated {
    /// From this temperature of the prism.
    pub low: Given<Temperature>,
    /// To this temperature of the prism.
    pub high: Given<Temperature>,
}
