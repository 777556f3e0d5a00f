//! The printed equations.

use sugaring::{
    Error,
    air::StationPressure,
    sucrose,
    units::{delta_c, gram_per_litre, joule_per_kg, joule_per_kg_k, kelvin, kg_per_m3, pa, pascal_s},
};

use super::{strength, temperature};
use crate::{
    Row,
    tables::{Figure, figure::of},
};

pub(super) fn equation(row: &Row) -> Result<Figure, Error> {
    let solution = || strength(row);
    let warm = || temperature(row);
    let pressure = || pa(row.number("pressure_pa"));
    let station = || StationPressure::measured(pressure());
    let (relation, figure) = match row.text("relation") {
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
        other => panic!("{}: {other} is not judged", row.place()),
    };
    Ok(of(relation, figure))
}
