use crate::{
    relation::Source,
    units::{Quantity, table},
};

/// One fuel of the trade: what it is counted in and the heat of that much.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct FuelRow {
    /// Name in data, as [`Fuel::named`](super::Fuel::named) takes it.
    pub key: &'static str,
    /// Name in texts.
    pub name: &'static str,
    /// The amount whose heat is given.
    pub per: Quantity,
    /// Gross heat of that amount.
    pub gross: Quantity,
    /// Net heat per gross heat.
    pub net_per_gross: f64,
    /// Where the gross heat comes from.
    pub source: Source,
    /// Where the share of net heat comes from.
    pub net_source: Source,
}

/// Fuels by name; wood is made by [`Fuel::wood`](super::Fuel::wood). Gallons of liquid fuel are at 60 °F.
pub static FUELS: &[FuelRow] = &[
    FuelRow {
        key: "propane",
        name: "propane",
        per: Quantity::new(1.0, &table::gal),
        gross: Quantity::new(91_452.0, &table::btu),
        net_per_gross: 0.92,
        source: ENERGY_INFORMATION,
        net_source: NET_FROM_MEMORY,
    },
    FuelRow {
        key: "heating_oil",
        name: "heating oil no. 2",
        per: Quantity::new(1.0, &table::gal),
        gross: Quantity::new(138_500.0, &table::btu),
        net_per_gross: 0.94,
        source: ENERGY_INFORMATION,
        net_source: NET_FROM_MEMORY,
    },
    FuelRow {
        key: "natural_gas",
        name: "natural gas",
        per: Quantity::new(CUBIC_FOOT, &table::cubic_metre),
        gross: Quantity::new(1037.0, &table::btu),
        net_per_gross: 0.90,
        source: ENERGY_INFORMATION,
        net_source: NET_FROM_MEMORY,
    },
    FuelRow {
        key: "electricity",
        name: "electricity",
        per: Quantity::new(1.0, &table::kwh),
        gross: Quantity::new(1.0, &table::kwh),
        net_per_gross: 1.0,
        source: BY_DEFINITION,
        net_source: BY_DEFINITION,
    },
    FuelRow {
        key: "wood_pellets",
        name: "wood pellets",
        per: Quantity::new(1.0, &table::short_ton),
        gross: Quantity::new(16.0, &table::million_btu),
        net_per_gross: 0.9235,
        source: Source::Published {
            text: "Bartok, University of Connecticut Extension 2013, Approximate heating value of common fuels",
            at: "pellets of 10 % moisture",
        },
        net_source: Source::Derived {
            text: "net heat of moist wood at 10 % of water, from this gross heat",
        },
    },
];

const ENERGY_INFORMATION: Source = Source::Published {
    text: "U.S. Energy Information Administration, units and calculators",
    at: "heat content of common units, as reprinted",
};
const NET_FROM_MEMORY: Source = Source::FromMemory {
    text: "net per gross heat of oil 0.94, propane 0.92, natural gas 0.90",
};
const BY_DEFINITION: Source = Source::Derived {
    text: "an energy is its own heat",
};
/// (0.3048 m)³, exactly.
const CUBIC_FOOT: f64 = 0.028_316_846_592;
