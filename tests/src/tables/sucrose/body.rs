//! Density, heat, viscosity, solubility, refraction.

use sugaring::{
    Error, sucrose,
    units::{brix, deg_c, fraction, kg_per_m3, kj_per_kg_k, lb_per_gal, mpa_s, percent},
};

use super::{strength, temperature};
use crate::{
    Row,
    tables::{
        Figure,
        figure::{of, part_of},
    },
};

pub(super) fn density(row: &Row) -> Result<Figure, Error> {
    let density = sucrose::density(strength(row)?, temperature(row))?;
    Ok(of(&sucrose::DENSITY, density.get::<kg_per_m3>()))
}

/// Over water of the same equation and temperature.
pub(super) fn relative_density(row: &Row) -> Result<Figure, Error> {
    let warm = temperature(row);
    let water = sucrose::density(brix(0.0)?, warm)?;
    let relative = (sucrose::density(strength(row)?, warm)? / water).get::<fraction>();
    Ok(part_of(
        &sucrose::DENSITY,
        "relative to water of its temperature",
        relative,
    ))
}

/// Of a US gallon, and of the sugar in it.
pub(super) fn weight(row: &Row) -> Result<Figure, Error> {
    let solution = strength(row)?;
    let gallon = sucrose::weight_in_air(solution, deg_c(20.0))?.get::<lb_per_gal>();
    Ok(match row.text("unit") {
        "lb_per_us_gal_in_air" => of(&sucrose::WEIGHT_IN_AIR, gallon),
        "lb_sucrose_per_us_gal" => part_of(
            &sucrose::WEIGHT_IN_AIR,
            "sugar's share of it",
            gallon * solution.get() / 100.0,
        ),
        other => panic!("{}: {other} is not judged", row.place()),
    })
}

pub(super) fn contraction(row: &Row) -> Result<Figure, Error> {
    let (hot, cold) = (deg_c(row.number("hot_c")), deg_c(row.number("cold_c")));
    let lost = sucrose::contraction(strength(row)?, hot, cold)?;
    Ok(of(&sucrose::CONTRACTION, lost.get::<percent>()))
}

/// Lyle's and Janovskii's formulas are held against Bubnik's, as the table says.
pub(super) fn specific_heat(row: &Row) -> Result<Figure, Error> {
    let (solution, warm) = (strength(row)?, temperature(row));
    assert!((row.number("purity_pct") - 100.0).abs() < 1e-9, "{}", row.place());
    Ok(match row.text("relation") {
        "water_anchored" => {
            let heat = sucrose::specific_heat(solution, warm)?;
            of(&sucrose::SPECIFIC_HEAT, heat.get::<kj_per_kg_k>())
        }
        "bubnik" | "lyle" | "janovskii" => {
            let heat = sucrose::specific_heat_bubnik(solution, warm)?;
            of(&sucrose::SPECIFIC_HEAT_BUBNIK, heat.get::<kj_per_kg_k>())
        }
        other => panic!("{}: {other} is not judged", row.place()),
    })
}

pub(super) fn viscosity(row: &Row) -> Result<Figure, Error> {
    let viscosity = sucrose::viscosity(strength(row)?, temperature(row))?;
    Ok(of(&sucrose::VISCOSITY, viscosity.get::<mpa_s>()))
}

pub(super) fn solubility(row: &Row) -> Result<Figure, Error> {
    let saturated = sucrose::solubility(temperature(row))?;
    Ok(of(&sucrose::SOLUBILITY, saturated.get()))
}

/// What a reading of the index by the scale of 20 °C is off.
pub(super) fn refractometer_correction(row: &Row) -> Result<Figure, Error> {
    let shown = row.number("reading_brix_pct");
    let warm = temperature(row);
    let index = sucrose::refractive_index(brix(shown)?, deg_c(20.0))?;
    let water = sucrose::refractive_index(brix(0.0)?, warm)?;
    if index < water {
        let error = sucrose::brix_from_refractive_index(index, warm).expect_err("thinner than water");
        assert!(error.to_string().contains("below pure water"), "{error}");
        let slope = sucrose::refractive_index(brix(1e-3)?, warm)? - water;
        return Ok(part_of(
            &sucrose::REFRACTIVE_INDEX,
            "correction of a reading below pure water, which the inverse refuses, by its slope at 0 °Bx",
            1e-3 * (index - water) / slope - shown,
        ));
    }
    let truth = sucrose::brix_from_refractive_index(index, warm)?;
    Ok(part_of(
        &sucrose::BRIX_FROM_REFRACTIVE_INDEX,
        "correction added to a reading by the scale of 20 °C",
        truth.get() - shown,
    ))
}

pub(super) fn refractive_index(row: &Row) -> Result<Figure, Error> {
    let index = sucrose::refractive_index(strength(row)?, temperature(row))?;
    Ok(of(&sucrose::REFRACTIVE_INDEX, index))
}
