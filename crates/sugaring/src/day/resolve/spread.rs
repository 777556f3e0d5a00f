//! One standard deviation where the user gave none.
use crate::day::slots::Shape;

/// Each element ±20 % of its rating: makers' sheets.
pub(crate) const RATING: Shape = Shape::Rectangular(0.2);
/// A bucket and a watch.
pub(crate) const OWN_PERMEANCE: Shape = Shape::Normal(0.03);
pub(crate) const GAUGE: f64 = 15_000.0;
/// The film factor's default is the quick end of what is plausible.
pub(crate) const FILM: Shape = Shape::LogUniform(0.25, 1.0);
pub(crate) const AREA_RULE: Shape = Shape::LogNormal(0.15);
pub(crate) const DIP_STICK: Shape = Shape::LogNormal(0.10);
pub(crate) const WATER_TEST: Shape = Shape::LogNormal(0.05);
pub(crate) const MOISTURE: f64 = 0.05;
pub(crate) const EFFICIENCY: Shape = Shape::LogNormal(0.2);
pub(crate) const CORD: Shape = Shape::Normal(0.08);
pub(crate) const BURNER: f64 = 0.10;
pub(crate) const TARGET: Shape = Shape::Normal(0.2);
pub(crate) const BOILING_RELATION: Shape = Shape::Normal(0.06);
