//! The card of marks: what an instrument must show in finished syrup at each temperature, to print and to hang up.

pub use marks::{Card, Mark, card, usual_temperatures};

mod data;
mod marks;
mod page;
mod svg;
mod words;
