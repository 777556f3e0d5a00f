//! Sucrose solutions, from sap to syrup: density, heat, viscosity, solubility, and one water activity behind boiling
//! point, osmotic pressure and freezing point, so that they cannot disagree.
//!
//! Strength is °Brix, true mass per cent. Maple is not pure sucrose: what its other solids do is said where it counts.

pub use density::{BRIX_FROM_DENSITY, DENSITY, brix_from_density, density};
pub use volume::{CONTRACTION, SUGAR_PER_VOLUME, contraction, sugar_per_volume};

pub(crate) use density::{DensityIsotherm, brix_from_density_at, density_at};

mod density;
mod volume;
