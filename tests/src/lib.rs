//! The judge: reads a table as its source prints it and holds a relation against every row.
//!
//! Format and rule of acceptance: `tests/published/README.md`. The tables of the property rooms stand in [`tables`],
//! each with the relation that every row judges: tests run them, the book draws them and says how far they lie.

pub use judge::{Standing, judge};
pub use limits::limits;
pub use row::{Row, rows};

mod judge;
mod limits;
#[cfg(doctest)]
mod pages;
mod row;
pub mod schema;
pub mod sweep;
pub mod tables;
pub mod vectors;
