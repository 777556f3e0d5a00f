//! Functions that take or give more than numbers, by name and of data: the door of other languages.

pub use lanes::ask_lanes;
pub use table::{ask, asks};

mod given;
mod instrument;
mod lanes;
mod table;
