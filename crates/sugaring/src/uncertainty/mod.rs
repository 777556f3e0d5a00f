//! Seeded draws, quantiles, and standard uncertainties from what an instrument's sheet says.
//!
//! Random numbers come from one generator and become normal through [`normal_quantile`], so that the same seed
//! gives the same bits everywhere.

pub use limits::{FROM_LIMITS, FROM_RESOLUTION, from_limits, from_resolution};
pub use normal::{NORMAL_QUANTILE, normal_quantile};

pub(crate) use draws::Draws;
pub(crate) use normal::normal_probability;
pub(crate) use order::quantile;

mod draws;
mod limits;
mod normal;
mod order;
