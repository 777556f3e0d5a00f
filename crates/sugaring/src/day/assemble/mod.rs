//! The plan from its numbers: steps with streams, settings, signs to stop at, marks and totals.

pub(crate) use parts::Parts;

mod parts;
mod steps;
mod streams;
mod totals;
