//! Water against IAPWS's own check values, an independent library, and the printed equations in 40 digits.

use sugaring::{
    Error,
    units::{
        deg_c, joule_per_kg, joule_per_kg_k, kelvin, kg_per_m3, kj_per_kg, kj_per_kg_k, kpa, mpa_s, pa, pascal_s,
        w_per_m_k,
    },
    water,
};

use super::{Figure, Table, figure::of, table::table};
use crate::Row;

pub(super) static TABLES: [Table; 3] = [
    table!("published" "water_saturation" boiling_line_and_steam),
    table!("published" "water_liquid" liquid),
    table!("derived" "water_equations" equation),
];

fn boiling_line_and_steam(row: &Row) -> Result<Figure, Error> {
    let warm = || deg_c(row.number("temp_c"));
    Ok(match row.text("quantity") {
        "p_sat" => of(
            &water::SATURATION_PRESSURE,
            water::saturation_pressure(warm())?.get::<kpa>(),
        ),
        "t_sat" => {
            let pressure = kpa(row.number("pressure_kpa"));
            of(
                &water::SATURATION_TEMPERATURE,
                water::saturation_temperature(pressure)?.get::<deg_c>(),
            )
        }
        "latent_heat" => of(&water::LATENT_HEAT, water::latent_heat(warm())?.get::<kj_per_kg>()),
        "rho_sat_liquid" => {
            let density = water::saturated_liquid_density(warm())?;
            of(&water::SATURATED_LIQUID_DENSITY, density.get::<kg_per_m3>())
        }
        "rho_sat_vapour" => {
            let density = water::saturated_vapour_density(warm())?;
            of(&water::SATURATED_VAPOUR_DENSITY, density.get::<kg_per_m3>())
        }
        other => panic!("{}: {other} is not judged", row.place()),
    })
}

fn liquid(row: &Row) -> Result<Figure, Error> {
    let warm = deg_c(row.number("temp_c"));
    Ok(match row.text("quantity") {
        "density" => of(&water::DENSITY, water::density(warm)?.get::<kg_per_m3>()),
        "cp" => of(&water::SPECIFIC_HEAT, water::specific_heat(warm)?.get::<kj_per_kg_k>()),
        "viscosity" => of(&water::VISCOSITY, 1e3 * water::viscosity(warm)?.get::<mpa_s>()),
        "conductivity" => {
            let conductivity = water::thermal_conductivity(warm)?;
            of(&water::THERMAL_CONDUCTIVITY, conductivity.get::<w_per_m_k>())
        }
        other => panic!("{}: {other} is not judged", row.place()),
    })
}

fn equation(row: &Row) -> Result<Figure, Error> {
    let warm = || kelvin(row.number("temp_k"));
    Ok(match row.text("relation") {
        "saturation_pressure" => of(
            &water::SATURATION_PRESSURE,
            water::saturation_pressure(warm())?.get::<pa>(),
        ),
        "saturation_temperature" => {
            let pressure = pa(row.number("pressure_pa"));
            of(
                &water::SATURATION_TEMPERATURE,
                water::saturation_temperature(pressure)?.get::<kelvin>(),
            )
        }
        "latent_heat" => of(&water::LATENT_HEAT, water::latent_heat(warm())?.get::<joule_per_kg>()),
        "saturated_liquid_density" => {
            let density = water::saturated_liquid_density(warm())?;
            of(&water::SATURATED_LIQUID_DENSITY, density.get::<kg_per_m3>())
        }
        "saturated_vapour_density" => {
            let density = water::saturated_vapour_density(warm())?;
            of(&water::SATURATED_VAPOUR_DENSITY, density.get::<kg_per_m3>())
        }
        "density" => of(&water::DENSITY, water::density(warm())?.get::<kg_per_m3>()),
        "specific_heat" => of(
            &water::SPECIFIC_HEAT,
            water::specific_heat(warm())?.get::<joule_per_kg_k>(),
        ),
        "enthalpy" => of(&water::ENTHALPY, water::enthalpy(warm())?.get::<joule_per_kg>()),
        "viscosity" => of(&water::VISCOSITY, water::viscosity(warm())?.get::<pascal_s>()),
        "thermal_conductivity" => {
            let conductivity = water::thermal_conductivity(warm())?;
            of(&water::THERMAL_CONDUCTIVITY, conductivity.get::<w_per_m_k>())
        }
        other => panic!("{}: {other} is not judged", row.place()),
    })
}
