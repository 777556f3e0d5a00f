//! Water activity and what follows from it.

use sugaring::{
    Error,
    air::StationPressure,
    sucrose,
    units::{Brix, Temperature, atm, brix, deg_c, delta_c, gram_per_litre, kpa},
    water,
};

use super::{strength, temperature};
use crate::{
    Row,
    tables::{
        Figure,
        figure::{depression_of, of, part_of},
    },
};

/// kg/mol.
const SUCROSE: f64 = 0.342_296_5;
/// J/(mol K).
const GAS: f64 = 8.314_462_618_153_24;

/// °Brix of a molality in mol per kg of water.
fn of_molality(molality: f64) -> Result<Brix, Error> {
    brix(100.0 * molality * SUCROSE / (1.0 + molality * SUCROSE))
}

// Water activity.

pub(super) fn water_activity(row: &Row) -> Result<Figure, Error> {
    let activity = sucrose::water_activity(strength(row)?, temperature(row))?;
    Ok(of(&sucrose::WATER_ACTIVITY, activity))
}

pub(super) fn osmotic_coefficient(row: &Row) -> Result<Figure, Error> {
    let solution = of_molality(row.number("molality_mol_kg"))?;
    let coefficient = sucrose::osmotic_coefficient(solution, temperature(row))?;
    Ok(of(&sucrose::OSMOTIC_COEFFICIENT, coefficient))
}

pub(super) fn heat_of_dilution(row: &Row) -> Result<Figure, Error> {
    let solution = of_molality(row.number("molality_mol_kg"))?;
    let middle = row.number("temp_c");
    let ln = |celsius| Ok::<_, Error>(sucrose::water_activity(solution, deg_c(celsius))?.ln());
    let slope = ln(middle + 0.5)? - ln(middle - 0.5)?;
    // Gibbs and Helmholtz.
    let heat = -GAS * (middle + 273.15).powi(2) * slope;
    Ok(part_of(
        &sucrose::WATER_ACTIVITY,
        "heat of dilution, by its slope over temperature",
        heat,
    ))
}

// Boiling.

/// Offered from 50 to 110 kPa; outside, the same equation through its closed form, solved here.
pub(super) fn elevation(row: &Row) -> Result<Figure, Error> {
    let (solution, pressure) = (strength(row)?, kpa(row.number("pressure_kpa")));
    if let Ok(station) = StationPressure::measured(pressure) {
        let rise = sucrose::boiling_point_elevation(solution, station)?;
        return Ok(of(&sucrose::BOILING_POINT_ELEVATION, rise.get::<delta_c>()));
    }
    let water = water::saturation_temperature(pressure)?.get::<deg_c>();
    let (mut low, mut high) = (water, 132.0);
    while high - low > 1e-9 {
        let middle = 0.5 * (low + high);
        if sucrose::pressure_from_boiling(solution, deg_c(middle))? < pressure {
            low = middle;
        } else {
            high = middle;
        }
    }
    Ok(part_of(
        &sucrose::PRESSURE_FROM_BOILING,
        "rise at pressures of no sugarhouse, solved by it",
        low - water,
    ))
}

// Osmotic pressure.

pub(super) fn osmotic_pressure(row: &Row) -> Result<Figure, Error> {
    let warm = temperature(row);
    let solution = match row.text("quantity") {
        "osmotic_pressure_m" => of_molality(row.number("molality_mol_kg"))?,
        "osmotic_pressure_gl" => of_concentration(row.number("conc_g_l"), warm)?,
        "osmotic_pressure" => strength(row)?,
        other => panic!("{}: {other} is not judged", row.place()),
    };
    let pressure = sucrose::osmotic_pressure(solution, warm)?;
    let pressure = match row.text("unit") {
        "atm" => pressure.get::<atm>(),
        "kPa" => pressure.get::<kpa>(),
        other => panic!("{}: {other} is not judged", row.place()),
    };
    Ok(of(&sucrose::OSMOTIC_PRESSURE, pressure))
}

fn of_concentration(gram_per_l: f64, warm: Temperature) -> Result<Brix, Error> {
    let (mut low, mut high) = (0.0, 85.0);
    while high - low > 1e-10 {
        let middle = 0.5 * (low + high);
        if sucrose::sugar_per_volume(brix(middle)?, warm)?.get::<gram_per_litre>() < gram_per_l {
            low = middle;
        } else {
            high = middle;
        }
    }
    brix(low)
}

// Freezing.

pub(super) fn depression(row: &Row) -> Result<Figure, Error> {
    let freezing = sucrose::freezing_temperature(strength(row)?)?;
    Ok(depression_of(&sucrose::FREEZING_TEMPERATURE, -freezing.get::<deg_c>()))
}

/// The water activity that ice keeps is that of the liquid under it.
pub(super) fn ice_line(row: &Row) -> Result<Figure, Error> {
    if row.number("temp_c") < -11.66 {
        return Ok(Figure::NotOffered("colder than −11.67 °C no strength is offered"));
    }
    let liquid = sucrose::brix_from_freezing(temperature(row))?;
    let activity = sucrose::water_activity(liquid, temperature(row))?;
    Ok(part_of(
        &sucrose::BRIX_FROM_FREEZING,
        "logarithm of the water activity that ice keeps",
        activity.ln(),
    ))
}
