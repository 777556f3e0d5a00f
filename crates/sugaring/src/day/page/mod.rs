//! The page that a person carries into the sugarhouse.

pub use crate::units::System;

pub(crate) use face::Face;

mod face;
mod layout;
mod sheet;
mod steps;
mod words;
