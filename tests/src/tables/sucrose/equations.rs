//! The printed equations.

use sugaring::{
    Error, Relation,
    air::StationPressure,
    sucrose,
    units::{
        deg_c, delta_c, fraction, gram_per_litre, joule_per_kg, joule_per_kg_k, kelvin, kg_per_m3, pa, pascal_s,
        w_per_m_k,
    },
};

use super::{scales, strength, temperature};
use crate::{
    Row,
    tables::{Figure, figure::of},
};

pub(super) fn equation(row: &Row) -> Result<Figure, Error> {
    let figure = match of_activity(row)? {
        Some(figure) => Some(figure),
        None => of_body(row)?.or(scales::equation(row)?),
    };
    let (relation, figure) = figure.unwrap_or_else(|| panic!("{}: not judged", row.place()));
    Ok(of(relation, figure))
}

type Found = Option<(&'static Relation, f64)>;

/// Water activity and what follows from it.
fn of_activity(row: &Row) -> Result<Found, Error> {
    let solution = || strength(row);
    let warm = || temperature(row);
    let pressure = || pa(row.number("pressure_pa"));
    let station = || StationPressure::measured(pressure());
    let found: (&'static Relation, f64) = match row.text("relation") {
        "water_activity" => (&sucrose::WATER_ACTIVITY, sucrose::water_activity(solution()?, warm())?),
        "osmotic_coefficient" => (
            &sucrose::OSMOTIC_COEFFICIENT,
            sucrose::osmotic_coefficient(solution()?, warm())?,
        ),
        "osmotic_pressure" => (
            &sucrose::OSMOTIC_PRESSURE,
            sucrose::osmotic_pressure(solution()?, warm())?.get::<pa>(),
        ),
        "brix_from_osmotic_pressure" => (
            &sucrose::BRIX_FROM_OSMOTIC_PRESSURE,
            sucrose::brix_from_osmotic_pressure(pressure(), warm())?.get(),
        ),
        "boiling_temperature" => (
            &sucrose::BOILING_TEMPERATURE,
            sucrose::boiling_temperature(solution()?, station()?)?.get::<kelvin>(),
        ),
        "boiling_point_elevation" => (
            &sucrose::BOILING_POINT_ELEVATION,
            sucrose::boiling_point_elevation(solution()?, station()?)?.get::<delta_c>(),
        ),
        "brix_from_boiling" => (
            &sucrose::BRIX_FROM_BOILING,
            sucrose::brix_from_boiling(warm(), station()?)?.get(),
        ),
        "pressure_from_boiling" => (
            &sucrose::PRESSURE_FROM_BOILING,
            sucrose::pressure_from_boiling(solution()?, warm())?.get::<pa>(),
        ),
        "heat_of_evaporation" => (
            &sucrose::HEAT_OF_EVAPORATION,
            sucrose::heat_of_evaporation(solution()?, station()?)?.get::<joule_per_kg>(),
        ),
        "freezing_temperature" => (
            &sucrose::FREEZING_TEMPERATURE,
            sucrose::freezing_temperature(solution()?)?.get::<kelvin>(),
        ),
        "brix_from_freezing" => (&sucrose::BRIX_FROM_FREEZING, sucrose::brix_from_freezing(warm())?.get()),
        "excess_enthalpy_of_water" => (
            &sucrose::EXCESS_ENTHALPY_OF_WATER,
            sucrose::excess_enthalpy_of_water(solution()?, warm())?.get::<joule_per_kg>(),
        ),
        _ => return Ok(None),
    };
    Ok(Some(found))
}

/// Density, refraction, heat, viscosity, solubility.
fn of_body(row: &Row) -> Result<Found, Error> {
    let solution = || strength(row);
    let warm = || temperature(row);
    let found: (&'static Relation, f64) = match row.text("relation") {
        "density" => (
            &sucrose::DENSITY,
            sucrose::density(solution()?, warm())?.get::<kg_per_m3>(),
        ),
        "brix_from_density" => {
            let density = kg_per_m3(row.number("density_kg_m3"));
            (
                &sucrose::BRIX_FROM_DENSITY,
                sucrose::brix_from_density(density, warm())?.get(),
            )
        }
        "sugar_per_volume" => (
            &sucrose::SUGAR_PER_VOLUME,
            sucrose::sugar_per_volume(solution()?, warm())?.get::<gram_per_litre>(),
        ),
        "specific_heat" => (
            &sucrose::SPECIFIC_HEAT,
            sucrose::specific_heat(solution()?, warm())?.get::<joule_per_kg_k>(),
        ),
        "specific_heat_bubnik" => (
            &sucrose::SPECIFIC_HEAT_BUBNIK,
            sucrose::specific_heat_bubnik(solution()?, warm())?.get::<joule_per_kg_k>(),
        ),
        "enthalpy" => (
            &sucrose::ENTHALPY,
            sucrose::enthalpy(solution()?, warm())?.get::<joule_per_kg>(),
        ),
        "viscosity" => (
            &sucrose::VISCOSITY,
            sucrose::viscosity(solution()?, warm())?.get::<pascal_s>(),
        ),
        "solubility" => (&sucrose::SOLUBILITY, sucrose::solubility(warm())?.get()),
        "saturation_temperature" => (
            &sucrose::SATURATION_TEMPERATURE,
            sucrose::saturation_temperature(solution()?)?.get::<kelvin>(),
        ),
        "supersaturation" => (
            &sucrose::SUPERSATURATION,
            sucrose::supersaturation(solution()?, warm())?,
        ),
        "refractive_index" => (
            &sucrose::REFRACTIVE_INDEX,
            sucrose::refractive_index(solution()?, warm())?,
        ),
        "brix_from_refractive_index" => (
            &sucrose::BRIX_FROM_REFRACTIVE_INDEX,
            sucrose::brix_from_refractive_index(row.number("index"), warm())?.get(),
        ),
        "thermal_conductivity" => (
            &sucrose::THERMAL_CONDUCTIVITY,
            sucrose::thermal_conductivity(solution()?, warm())?.get::<w_per_m_k>(),
        ),
        "viscosity_genotelle" => (
            &sucrose::VISCOSITY_GENOTELLE,
            sucrose::viscosity_genotelle(solution()?, warm())?.get::<pascal_s>(),
        ),
        "weight_in_air" => (
            &sucrose::WEIGHT_IN_AIR,
            sucrose::weight_in_air(solution()?, warm())?.get::<kg_per_m3>(),
        ),
        "contraction" => {
            let (hot, cold) = (deg_c(row.number("hot_c")), deg_c(row.number("cold_c")));
            let lost = sucrose::contraction(solution()?, hot, cold)?;
            (&sucrose::CONTRACTION, lost.get::<fraction>())
        }
        "heat_to_warm" => {
            let (hot, cold) = (deg_c(row.number("hot_c")), deg_c(row.number("cold_c")));
            let heat = sucrose::heat_to_warm(solution()?, cold, hot)?;
            (&sucrose::HEAT_TO_WARM, heat.get::<joule_per_kg>())
        }
        _ => return Ok(None),
    };
    Ok(Some(found))
}
