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
    /// What it reads too high, in its own marks; default 0.
    pub offset: Option<f64>,
    /// Or two checks of it, the lower first; it is read between them only.
    pub two_point: Option<[CheckPoint; 2]>,
    /// The least and the greatest mark on its paper.
    pub span: Option<Span>,
    /// Step to which it is read, in its own marks; adds step/√12 to the uncertainty.
    pub resolution: Option<f64>,
    /// Standard uncertainty of its scale, in its own marks.
    pub uncertainty: Option<f64>,
}

/// What an instrument showed, and what a right one would have.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct CheckPoint {
    /// What it showed.
    pub shown: f64,
    /// What a right one would have shown.
    pub expected: f64,
}

/// Where the paper of a hydrometer begins and ends.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Span {
    /// The least mark.
    pub low: f64,
    /// The greatest mark.
    pub high: f64,
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
    /// Density in kg/m³ at the temperature of calibration.
    Density,
    /// Degrees Baumé of modulus 145, solution and water at 20 °C: that of the trade's double papers.
    #[cfg_attr(feature = "schema", schemars(rename = "baume_20_20"))]
    Baume2020,
    /// Degrees Baumé of modulus 145, solution and water at 60 °F.
    #[cfg_attr(feature = "schema", schemars(rename = "baume_60_60_f"))]
    Baume6060F,
    /// Relative density, solution and water at 20 °C.
    #[cfg_attr(feature = "schema", schemars(rename = "relative_density_20_20"))]
    RelativeDensity2020,
    /// Relative density, solution and water at 60 °F.
    #[cfg_attr(feature = "schema", schemars(rename = "relative_density_60_60_f"))]
    RelativeDensity6060F,
    /// Relative density, solution at 20 °C and water at 4 °C.
    #[cfg_attr(feature = "schema", schemars(rename = "relative_density_20_4"))]
    RelativeDensity204,
    /// Relative density of solution and water at 20 °C, both weighed in air.
    #[cfg_attr(feature = "schema", schemars(rename = "apparent_relative_density_20_20"))]
    ApparentRelativeDensity2020,
}

impl HydrometerScale {
    /// Every scale, by its name in data.
    pub(crate) const NAMES: [(&'static str, Self); 8] = [
        ("brix", Self::Brix),
        ("density", Self::Density),
        ("baume_20_20", Self::Baume2020),
        ("baume_60_60_f", Self::Baume6060F),
        ("relative_density_20_20", Self::RelativeDensity2020),
        ("relative_density_60_60_f", Self::RelativeDensity6060F),
        ("relative_density_20_4", Self::RelativeDensity204),
        ("apparent_relative_density_20_20", Self::ApparentRelativeDensity2020),
    ];

    /// Its name in data.
    pub(crate) fn name(self) -> &'static str {
        let found = Self::NAMES.iter().find(|(_, scale)| *scale == self);
        found.map_or("brix", |(name, _)| name)
    }

    /// How the page calls it, and to how many decimals it is read.
    pub(crate) fn on_page(self) -> (&'static str, usize) {
        match self {
            Self::Brix => ("Brix scale", 1),
            Self::Density => ("kg/m³ scale", 0),
            Self::Baume2020 => ("Baumé scale 20/20 °C", 1),
            Self::Baume6060F => ("Baumé scale 60/60 °F", 1),
            Self::RelativeDensity2020 => ("relative density 20/20 °C", 4),
            Self::RelativeDensity6060F => ("relative density 60/60 °F", 4),
            Self::RelativeDensity204 => ("relative density 20/4 °C", 4),
            Self::ApparentRelativeDensity2020 => ("apparent relative density 20/20 °C", 4),
        }
    }

    pub(crate) fn named(name: &str) -> Self {
        let found = Self::NAMES.iter().find(|(known, _)| *known == name);
        found.map_or(Self::Brix, |(_, scale)| *scale)
    }
}

/// A refractometer: `compensated`, or `uncompensated`.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Refractometer {
    /// Between which temperatures of its prism it corrects itself.
    pub compensated: Option<Compensated>,
    /// True where it does not: what it shows is right with its prism at 20 °C.
    pub uncompensated: Option<bool>,
    /// What it shows in water; default 0.
    pub zero: Option<f64>,
    /// Or the temperature of its prism at which its screw was turned to 0 in water.
    pub set_to_zero_at: Option<Given<Temperature>>,
    /// Or two checks of it, the lower first; it is read between them only.
    pub two_point: Option<[CheckPoint; 2]>,
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
