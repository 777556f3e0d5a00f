//! The surface as data: functions, relations, units, error kinds and schemas, readable at run time.
//!
//! Forms, stubs, types, tables of the documentation and the vectors that other languages are judged by are made
//! from these lists; nothing of it is typed again.

pub use ask::{ask, ask_lanes, ask_monte_carlo, ask_monte_carlo_of, ask_propagate, asks};
pub use function::{Argument, Function, Kind};
pub use lists::{
    error_kinds, function, functions, instruments, jurisdictions, numbers, relations, schema, schemas, units,
};
pub use model::Model;

#[doc(hidden)]
pub use table::rows;

mod ask;
mod function;
mod lists;
mod model;
mod table;
