//! Inputs from data.

pub(crate) use start::start_minutes;

mod fire;
mod first;
mod keys;
mod rig;
mod start;
mod whole;
