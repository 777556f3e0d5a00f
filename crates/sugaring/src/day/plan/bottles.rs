//! What is filled, and what is over.

use crate::{
    day::plan::Figure,
    units::{deg_c, gram, kg, litre, ml},
};
use alloc::string::String;

/// Containers of one kind.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Filled {
    /// Their name.
    pub name: String,
    /// How many.
    pub count: u32,
    /// Hot, in each.
    pub fill_volume: Figure<ml>,
    /// In each.
    pub fill_mass: Figure<gram>,
    /// Between the hot fill and the brim.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub headspace: Option<Figure<ml>>,
    /// Where syrup and container settle.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub settled: Option<Figure<deg_c>>,
    /// Least temperature of the container that keeps the syrup hot enough.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub glass_needed: Option<Figure<deg_c>>,
    /// Or least temperature of filling, where the syrup bears it.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub fill_needed: Option<Figure<deg_c>>,
}

/// Syrup left over.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Rest {
    /// At 20 °C.
    pub volume: Figure<litre>,
    /// Its mass.
    pub mass: Figure<kg>,
    /// `less_than_one_container`, `stock_used_up` or `no_containers`.
    pub because: &'static str,
}
