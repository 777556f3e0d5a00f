//! The surface as data: functions, relations, units, error kinds and schemas, readable at run time.
//!
//! Forms, stubs, types, tables of the documentation and the vectors that other languages are judged by are made
//! from these lists; nothing of it is typed again.

pub use ask::{ask, ask_lanes, asks};
pub use function::{Argument, Function, Kind};
pub use lists::{error_kinds, functions, instruments, jurisdictions, numbers, relations, schema, schemas, units};

#[doc(hidden)]
pub use table::rows;

mod ask;
mod function;
mod lists;
mod table;
