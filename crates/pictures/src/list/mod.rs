//! The pictures, one a property.

pub(crate) use all::plots;

mod air;
mod all;
mod rows;
mod sucrose;
mod water;
