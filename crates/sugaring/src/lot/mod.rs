//! Lots of sap, concentrate and syrup: mass, °Brix, temperature.
//!
//! A lot is what flows through the day. Masses and sugar add; volumes do not, so a volume is always read out of a
//! mass, at a temperature.

pub use blend::{blend, blend_to};
pub use change::{Concentrated, Diluted, Pair};
pub use share::SapRatio;
pub use state::{LOT, Lot};

mod blend;
mod change;
mod share;
mod state;
