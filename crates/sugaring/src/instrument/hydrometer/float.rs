//! The condition of floating: ρ(r, t₀) = ρ(w, t)·[1 + β (t − t₀)].

use crate::sucrose::{brix_from_density_at, density_at};

/// A glass float with a scale in °Brix.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Float {
    /// Where its scale is true, K.
    pub(crate) calibrated_at: f64,
    /// Cubical expansion of its glass, 1/K.
    pub(crate) expansion: f64,
}

/// What a mark may say, the bracket of every inverse of density: water shows −10.3 at 100 °C on a 60 °F scale.
pub(super) const BRACKET: (f64, f64) = (-15.0, 100.0);

impl Float {
    /// The scale's mark at the surface of a liquid of `brix`; `None` where it floats off the scale.
    pub(super) fn mark(&self, brix: f64, kelvin: f64) -> Option<f64> {
        brix_from_density_at(density_at(brix, kelvin) * self.swelling(kelvin), self.calibrated_at)
    }

    /// °Brix of the liquid in which it floats at `mark`; `None` where no solution is so.
    pub(super) fn brix(&self, mark: f64, kelvin: f64) -> Option<f64> {
        brix_from_density_at(density_at(mark, self.calibrated_at) / self.swelling(kelvin), kelvin)
    }

    /// °Bx of the liquid for one of the mark, where `mark` stands in a liquid of `brix`.
    pub(super) fn slope(&self, mark: f64, brix: f64, kelvin: f64) -> f64 {
        density_rise(mark, self.calibrated_at) / (self.swelling(kelvin) * density_rise(brix, kelvin))
    }

    fn swelling(&self, kelvin: f64) -> f64 {
        1.0 + self.expansion * (kelvin - self.calibrated_at)
    }
}

/// kg/m³ for one °Bx.
pub(super) fn density_rise(brix: f64, kelvin: f64) -> f64 {
    density_at(brix + 0.5, kelvin) - density_at(brix - 0.5, kelvin)
}
