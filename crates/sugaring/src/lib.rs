//! Typed, unit-safe calculations for making maple syrup.
//!
//! A *lot* of sap (mass, °Brix, temperature) flows through membrane, evaporator, finish and bottles; each
//! station is a small typed model on one consistent set of sucrose-solution properties, and
//! the day's plan is that flow read out as steps, amounts, hours, fuel, set points and marks.
// Tests always have std; what they cover is built without it as well.
#![cfg_attr(not(any(feature = "std", test)), no_std)]
#![cfg_attr(docsrs, feature(doc_cfg))]
#![forbid(unsafe_code)]

extern crate alloc;
/// The quantity library behind every typed argument: no line of your own is needed for it.
#[macro_use]
pub extern crate uom;

pub use error::{Error, ErrorKind};
pub use relation::{Range, Relation, Source};
pub use units::Brix;

#[doc(hidden)]
pub use sucrose::scales as scale;

pub mod air;
pub mod catalogue;
pub mod day;
mod digits;
mod error;
pub mod evaporator;
pub mod finish;
pub mod form;
pub mod fuel;
pub mod instrument;
mod jurisdiction;
mod lanes;
pub mod lot;
mod math;
pub mod membrane;
mod nearest;
mod relation;
pub mod safety;
mod solve;
pub mod sucrose;
pub mod uncertainty;
pub mod units;
pub mod water;
