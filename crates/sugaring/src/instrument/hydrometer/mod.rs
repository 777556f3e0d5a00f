//! A glass float, with any scale on its paper.

pub use glass::Hydrometer;
pub use truth::HYDROMETER;

pub(crate) use marking::Marking;

mod checked;
mod float;
mod glass;
mod marking;
mod slips;
mod truth;
