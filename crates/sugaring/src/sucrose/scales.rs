//! The density scales one by one, for the table that other languages are made from: a function a scale and direction
//! behind [`on_scale`](super::on_scale) and [`brix_from_scale`](super::brix_from_scale).

use super::{
    density::{BRIX, SOURCE},
    scale::{brix_from_scale, on_scale},
};
use crate::{
    error::Error,
    relation::{Range, Relation},
    units::{
        ApparentRelativeDensity2020, Baume2020, Baume6060F, Brix, Dimension, RelativeDensity204, RelativeDensity2020,
        RelativeDensity6060F, table,
    },
};

/// Degrees Baumé of a sucrose solution, solution and water at 20 °C.
pub fn baume_20_20(brix: Brix) -> Result<Baume2020, Error> {
    on_scale(brix)
}

/// °Brix of a sucrose solution from degrees Baumé, solution and water at 20 °C.
pub fn brix_from_baume_20_20(value: Baume2020) -> Result<Brix, Error> {
    brix_from_scale(value)
}

/// Degrees Baumé of a sucrose solution, solution and water at 60 °F.
pub fn baume_60_60_f(brix: Brix) -> Result<Baume6060F, Error> {
    on_scale(brix)
}

/// °Brix of a sucrose solution from degrees Baumé, solution and water at 60 °F.
pub fn brix_from_baume_60_60_f(value: Baume6060F) -> Result<Brix, Error> {
    brix_from_scale(value)
}

/// Relative density of a sucrose solution, solution and water at 20 °C.
pub fn relative_density_20_20(brix: Brix) -> Result<RelativeDensity2020, Error> {
    on_scale(brix)
}

/// °Brix of a sucrose solution from its relative density, solution and water at 20 °C.
pub fn brix_from_relative_density_20_20(value: RelativeDensity2020) -> Result<Brix, Error> {
    brix_from_scale(value)
}

/// Relative density of a sucrose solution, solution and water at 60 °F.
pub fn relative_density_60_60_f(brix: Brix) -> Result<RelativeDensity6060F, Error> {
    on_scale(brix)
}

/// °Brix of a sucrose solution from its relative density, solution and water at 60 °F.
pub fn brix_from_relative_density_60_60_f(value: RelativeDensity6060F) -> Result<Brix, Error> {
    brix_from_scale(value)
}

/// Relative density of a sucrose solution at 20 °C to water at 4 °C.
pub fn relative_density_20_4(brix: Brix) -> Result<RelativeDensity204, Error> {
    on_scale(brix)
}

/// °Brix of a sucrose solution from its relative density at 20 °C to water at 4 °C.
pub fn brix_from_relative_density_20_4(value: RelativeDensity204) -> Result<Brix, Error> {
    brix_from_scale(value)
}

/// Relative density of a sucrose solution and water at 20 °C, both weighed in air.
pub fn apparent_relative_density_20_20(brix: Brix) -> Result<ApparentRelativeDensity2020, Error> {
    on_scale(brix)
}

/// °Brix of a sucrose solution from its relative density at 20 °C, weighed in air.
pub fn brix_from_apparent_relative_density_20_20(value: ApparentRelativeDensity2020) -> Result<Brix, Error> {
    brix_from_scale(value)
}

/// What [`on_scale`] covers on this scale.
pub static BAUME_20_20: Relation = Relation {
    name: "scale::baume_20_20",
    inputs: &[BRIX],
    output: &table::baume_20_20,
    source: SOURCE,
    accuracy: BAUME_ACCURACY,
};

/// What [`brix_from_scale`] covers on this scale.
pub static BRIX_FROM_BAUME_20_20: Relation = Relation {
    name: "scale::brix_from_baume_20_20",
    inputs: &[Range::new("value", &table::baume_20_20, 0.0, 44.9)],
    output: &table::deg_brix,
    source: SOURCE,
    accuracy: BRIX_ACCURACY,
};

/// What [`on_scale`] covers on this scale.
pub static BAUME_60_60_F: Relation = Relation {
    name: "scale::baume_60_60_f",
    inputs: &[BRIX],
    output: &table::baume_60_60_f,
    source: SOURCE,
    accuracy: BAUME_ACCURACY,
};

/// What [`brix_from_scale`] covers on this scale.
pub static BRIX_FROM_BAUME_60_60_F: Relation = Relation {
    name: "scale::brix_from_baume_60_60_f",
    inputs: &[Range::new("value", &table::baume_60_60_f, 0.0, 44.99)],
    output: &table::deg_brix,
    source: SOURCE,
    accuracy: BRIX_ACCURACY,
};

/// What [`on_scale`] covers on this scale.
pub static RELATIVE_DENSITY_20_20: Relation = Relation {
    name: "scale::relative_density_20_20",
    inputs: &[BRIX],
    output: &table::relative_density_20_20,
    source: SOURCE,
    accuracy: RELATIVE_ACCURACY,
};

/// What [`brix_from_scale`] covers on this scale.
pub static BRIX_FROM_RELATIVE_DENSITY_20_20: Relation = Relation {
    name: "scale::brix_from_relative_density_20_20",
    inputs: &[Range::new("value", &table::relative_density_20_20, 1.0, 1.4486)],
    output: &table::deg_brix,
    source: SOURCE,
    accuracy: BRIX_ACCURACY,
};

/// What [`on_scale`] covers on this scale.
pub static RELATIVE_DENSITY_60_60_F: Relation = Relation {
    name: "scale::relative_density_60_60_f",
    inputs: &[BRIX],
    output: &table::relative_density_60_60_f,
    source: SOURCE,
    accuracy: RELATIVE_ACCURACY,
};

/// What [`brix_from_scale`] covers on this scale.
pub static BRIX_FROM_RELATIVE_DENSITY_60_60_F: Relation = Relation {
    name: "scale::brix_from_relative_density_60_60_f",
    inputs: &[Range::new("value", &table::relative_density_60_60_f, 1.0, 1.4498)],
    output: &table::deg_brix,
    source: SOURCE,
    accuracy: BRIX_ACCURACY,
};

/// What [`on_scale`] covers on this scale.
pub static RELATIVE_DENSITY_20_4: Relation = Relation {
    name: "scale::relative_density_20_4",
    inputs: &[BRIX],
    output: &table::relative_density_20_4,
    source: SOURCE,
    accuracy: RELATIVE_ACCURACY,
};

/// What [`brix_from_scale`] covers on this scale.
pub static BRIX_FROM_RELATIVE_DENSITY_20_4: Relation = Relation {
    name: "scale::brix_from_relative_density_20_4",
    inputs: &[Range::new("value", &table::relative_density_20_4, 0.998, 1.446)],
    output: &table::deg_brix,
    source: SOURCE,
    accuracy: BRIX_ACCURACY,
};

/// What [`on_scale`] covers on this scale.
pub static APPARENT_RELATIVE_DENSITY_20_20: Relation = Relation {
    name: "scale::apparent_relative_density_20_20",
    inputs: &[BRIX],
    output: &table::apparent_relative_density_20_20,
    source: SOURCE,
    accuracy: RELATIVE_ACCURACY,
};

/// What [`brix_from_scale`] covers on this scale.
pub static BRIX_FROM_APPARENT_RELATIVE_DENSITY_20_20: Relation = Relation {
    name: "scale::brix_from_apparent_relative_density_20_20",
    inputs: &[Range::new(
        "value",
        &table::apparent_relative_density_20_20,
        1.0,
        1.4491,
    )],
    output: &table::deg_brix,
    source: SOURCE,
    accuracy: BRIX_ACCURACY,
};

/// What a scale's two directions cover.
pub(super) fn relations(scale: Dimension) -> (&'static Relation, &'static Relation) {
    match scale {
        Dimension::Baume6060F => (&BAUME_60_60_F, &BRIX_FROM_BAUME_60_60_F),
        Dimension::RelativeDensity2020 => (&RELATIVE_DENSITY_20_20, &BRIX_FROM_RELATIVE_DENSITY_20_20),
        Dimension::RelativeDensity6060F => (&RELATIVE_DENSITY_60_60_F, &BRIX_FROM_RELATIVE_DENSITY_60_60_F),
        Dimension::RelativeDensity204 => (&RELATIVE_DENSITY_20_4, &BRIX_FROM_RELATIVE_DENSITY_20_4),
        Dimension::ApparentRelativeDensity2020 => (
            &APPARENT_RELATIVE_DENSITY_20_20,
            &BRIX_FROM_APPARENT_RELATIVE_DENSITY_20_20,
        ),
        _ => (&BAUME_20_20, &BRIX_FROM_BAUME_20_20),
    }
}

const BAUME_ACCURACY: &str = "that of the density: 0.014 °Bé to 35 °Bx, 0.05 to 78 °Bx, 0.07 to 85 °Bx";
const RELATIVE_ACCURACY: &str = "that of the density: 0.0001 to 35 °Bx, 0.0004 to 78 °Bx, 0.0009 to 85 °Bx";
const BRIX_ACCURACY: &str = "that of the density: 0.025 °Bx to 35 °Bx, 0.08 to 78 °Bx, 0.14 to 85 °Bx";
