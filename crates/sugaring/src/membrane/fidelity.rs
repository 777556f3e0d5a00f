//! How finely a rig is integrated.

use crate::solve;

/// Quadrature over the batch and tolerance along the elements.
///
/// The tolerance is that of the embedded error estimate, for one step relative to what has passed; the fifth-order
/// result is one or two orders better.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Fidelity {
    /// Nodes over the batch.
    pub(crate) nodes: solve::Rule,
    /// Relative error of a step along an element.
    pub(crate) tolerance: f64,
    /// Whether warming is followed where it changes nothing else, and the trajectory kept.
    pub(crate) detail: bool,
}

impl Fidelity {
    /// For the nominal plan: agrees with a much finer integration to 1e-8 at the recoveries of a tank's passes.
    pub(crate) const FULL: Self = Self {
        nodes: solve::GAUSS_24,
        tolerance: 1e-7,
        detail: true,
    };
    /// For one draw of many: to 1e-6 there.
    pub(crate) const DRAW: Self = Self {
        nodes: solve::GAUSS_8,
        tolerance: 1e-5,
        detail: false,
    };
}
