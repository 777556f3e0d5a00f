//! Water against IAPWS's own check values, an independent library, and the printed equations in 40 digits.

use sugaring::{Error, units::*, water};
use sugaring_tests::{Row, judge, limits};

const DERIVED: &str = include_str!("../derived/water_equations.csv");
const LIQUID: &str = include_str!("../published/water_liquid.csv");
const SATURATION: &str = include_str!("../published/water_saturation.csv");

#[test]
fn boiling_line_and_steam() {
    judge("water_saturation.csv", SATURATION, |row| {
        let temperature = || deg_c(row.number("temp_c"));
        Ok(Some(match row.text("quantity") {
            "p_sat" => water::saturation_pressure(temperature())?.get::<kpa>(),
            "t_sat" => water::saturation_temperature(kpa(row.number("pressure_kpa")))?.get::<deg_c>(),
            "latent_heat" => water::latent_heat(temperature())?.get::<kj_per_kg>(),
            "rho_sat_liquid" => water::saturated_liquid_density(temperature())?.get::<kg_per_m3>(),
            "rho_sat_vapour" => water::saturated_vapour_density(temperature())?.get::<kg_per_m3>(),
            other => panic!("{}: {other} is not judged", row.place()),
        }))
    });
}

#[test]
fn liquid() {
    judge("water_liquid.csv", LIQUID, |row| {
        let temperature = deg_c(row.number("temp_c"));
        Ok(Some(match row.text("quantity") {
            "density" => water::density(temperature)?.get::<kg_per_m3>(),
            "cp" => water::specific_heat(temperature)?.get::<kj_per_kg_k>(),
            "viscosity" => 1e3 * water::viscosity(temperature)?.get::<mpa_s>(),
            "conductivity" => water::thermal_conductivity(temperature)?.get::<w_per_m_k>(),
            other => panic!("{}: {other} is not judged", row.place()),
        }))
    });
}

#[test]
fn printed_equations_in_many_digits() {
    judge("water_equations.csv", DERIVED, equation);
}

fn equation(row: &Row) -> Result<Option<f64>, Error> {
    let temperature = || kelvin(row.number("temp_k"));
    Ok(Some(match row.text("relation") {
        "saturation_pressure" => water::saturation_pressure(temperature())?.get::<pa>(),
        "saturation_temperature" => water::saturation_temperature(pa(row.number("pressure_pa")))?.get::<kelvin>(),
        "latent_heat" => water::latent_heat(temperature())?.get::<joule_per_kg>(),
        "saturated_liquid_density" => water::saturated_liquid_density(temperature())?.get::<kg_per_m3>(),
        "saturated_vapour_density" => water::saturated_vapour_density(temperature())?.get::<kg_per_m3>(),
        "density" => water::density(temperature())?.get::<kg_per_m3>(),
        "specific_heat" => water::specific_heat(temperature())?.get::<joule_per_kg_k>(),
        "enthalpy" => water::enthalpy(temperature())?.get::<joule_per_kg>(),
        "viscosity" => water::viscosity(temperature())?.get::<pascal_s>(),
        "thermal_conductivity" => water::thermal_conductivity(temperature())?.get::<w_per_m_k>(),
        other => panic!("{}: {other} is not judged", row.place()),
    }))
}

#[test]
fn limits_hold_as_written() {
    limits(&water::SATURATION_PRESSURE, 0, |t| {
        water::saturation_pressure(kelvin(t))
    });
    limits(&water::SATURATION_TEMPERATURE, 0, |p| {
        water::saturation_temperature(pa(p))
    });
    limits(&water::LATENT_HEAT, 0, |t| water::latent_heat(kelvin(t)));
    limits(&water::SATURATED_LIQUID_DENSITY, 0, |t| {
        water::saturated_liquid_density(kelvin(t))
    });
    limits(&water::SATURATED_VAPOUR_DENSITY, 0, |t| {
        water::saturated_vapour_density(kelvin(t))
    });
    limits(&water::DENSITY, 0, |t| water::density(kelvin(t)));
    limits(&water::SPECIFIC_HEAT, 0, |t| water::specific_heat(kelvin(t)));
    limits(&water::ENTHALPY, 0, |t| water::enthalpy(kelvin(t)));
    limits(&water::VISCOSITY, 0, |t| water::viscosity(kelvin(t)));
    limits(&water::THERMAL_CONDUCTIVITY, 0, |t| {
        water::thermal_conductivity(kelvin(t))
    });
}
