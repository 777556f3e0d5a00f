use super::Reading;
use crate::units::{Brix, Temperature};

/// A reading of something known, to calibrate by: water, or syrup that a better instrument has read.
///
/// ```
/// use sugaring::{instrument::{Check, reading}, units::*};
/// let water = Check { reading: reading(0.4), brix: brix(0.0)?, temperature: deg_f(60.0) };
/// # let _ = water;
/// # Ok::<(), sugaring::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Check {
    /// What the instrument showed.
    pub reading: Reading,
    /// What it was.
    pub brix: Brix,
    /// Of the liquid and the glass, or of the prism.
    pub temperature: Temperature,
}
