//! Defaults with their provenance; the numbers in SI.

pub(crate) const SAMPLES: u32 = 1000;
pub(crate) const SEED: u64 = 1;
/// Common practice, no source: 10 to 20 %.
pub(crate) const RINSE: f64 = 0.15;
/// Wood stacked a year, with room for doubt; common practice, no source.
pub(crate) const MOISTURE: f64 = 0.25;
/// Open wood arches, 25 to 60 % of gross: extension figures and common practice.
pub(crate) const WOOD_EFFICIENCY: f64 = 0.45;
/// Hobby burner under an open pan, 30 to 45 % of gross: common practice, no source.
pub(crate) const BURNER_EFFICIENCY: f64 = 0.40;
/// A small controllable burner: common practice, no source.
pub(crate) const FINISHING_HEAT: f64 = 3000.0;
pub(crate) const FILL_TEMPERATURE: f64 = 358.15;
pub(crate) const CONTAINER_TEMPERATURE: f64 = 293.15;
