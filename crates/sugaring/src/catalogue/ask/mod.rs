//! Functions that take or give more than numbers, by name and of data: the door of other languages.

pub use lanes::ask_lanes;
pub use table::{ask, asks};
pub use uncertainty::{ask_monte_carlo, ask_monte_carlo_of, ask_propagate};

mod card;
mod given;
mod instrument;
mod lanes;
mod spread;
mod table;
mod uncertainty;
