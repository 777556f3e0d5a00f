//! What burns.

use crate::units::{Given, Price, Ratio};
use alloc::string::{String, ToString};

/// A fuel, how well it is used, what it costs.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Fuel {
    /// Wood; or `named`.
    pub wood: Option<Wood>,
    /// A fuel by name, such as `propane`; or `wood`.
    pub named: Option<String>,
    /// Share of the fuel's heat that reaches the liquid.
    pub efficiency: Option<Efficiency>,
    /// Price per any quantity of it.
    pub price: Option<Price>,
}

impl Fuel {
    /// Wood of a species, with its moisture.
    pub fn wood(species: &str, moisture: impl Into<Moisture>) -> Self {
        Self {
            wood: Some(Wood {
                species: Some(species.to_string()),
                moisture: Some(moisture.into()),
            }),
            ..Self::default()
        }
    }

    /// A fuel by name.
    #[must_use]
    pub fn named(name: &str) -> Self {
        Self {
            named: Some(name.to_string()),
            ..Self::default()
        }
    }
}

/// Wood.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Wood {
    /// Its species; default `hardwood`.
    pub species: Option<String>,
    /// Its moisture; default 25 % wet basis.
    pub moisture: Option<Moisture>,
}

/// Water in wood.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum Moisture {
    /// Water per total mass.
    WetBasis(Given<Ratio>),
    /// Water per dry mass, as pin meters show it.
    DryBasis(Given<Ratio>),
}

/// Heat into the liquid per heat of the fuel.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum Efficiency {
    /// Of the gross heat.
    OfGross(Given<Ratio>),
    /// Of the net heat.
    OfNet(Given<Ratio>),
}
