//! The standard atmosphere and reduced pressures against printed tables and the printed equations in 40 digits.

use sugaring::{Error, air, air::StationPressure, units::*};
use sugaring_tests::{Row, judge, limits};

const ATMOSPHERE: &str = include_str!("../published/atmosphere_pressure.csv");
const DERIVED: &str = include_str!("../derived/air_equations.csv");

/// Radius of the standard, to turn the geopotential altitudes of its tables into geometric ones.
const EARTH: f64 = 6_356_766.0;

#[test]
fn standard_atmosphere_and_altimeter() {
    judge("atmosphere_pressure.csv", ATMOSPHERE, |row| {
        let altitude = row.number("altitude_m");
        Ok(Some(match row.text("quantity") {
            "pressure_geometric" => air::pressure_at_altitude(metre(altitude))?.get::<kpa>(),
            "pressure_geopotential" => {
                let geometric = EARTH * altitude / (EARTH - altitude);
                // 11 000 m of geopotential are 11 019 m, 19 m beyond what is offered.
                if geometric > 11_000.0 {
                    return Ok(None);
                }
                air::pressure_at_altitude(metre(geometric))?.get::<kpa>()
            }
            "station_from_altimeter" => {
                let setting = kpa(row.number("reported_kpa"));
                StationPressure::from_altimeter_setting(setting, metre(altitude))?
                    .pressure()
                    .get::<kpa>()
            }
            other => panic!("{}: {other} is not judged", row.place()),
        }))
    });
}

#[test]
fn printed_equations_in_many_digits() {
    judge("air_equations.csv", DERIVED, equation);
}

fn equation(row: &Row) -> Result<Option<f64>, Error> {
    let altitude = || metre(row.number("altitude_m"));
    let pressure = || pa(row.number("pressure_pa"));
    let temperature = || kelvin(row.number("temp_k"));
    Ok(Some(match row.text("relation") {
        "pressure_at_altitude" => air::pressure_at_altitude(altitude())?.get::<pa>(),
        "altitude_at_pressure" => air::altitude_at_pressure(pressure())?.get::<metre>(),
        "altimeter_setting" => air::altimeter_setting(StationPressure::measured(pressure())?, altitude())?.get::<pa>(),
        "sea_level_pressure" => {
            air::sea_level_pressure(StationPressure::measured(pressure())?, altitude(), temperature())?.get::<pa>()
        }
        "from_altimeter_setting" => StationPressure::from_altimeter_setting(pressure(), altitude())?.si(),
        "from_sea_level" => StationPressure::from_sea_level(pressure(), altitude(), temperature())?.si(),
        "from_altitude" => StationPressure::from_altitude(altitude())?.si(),
        "from_boiling_water" => StationPressure::from_boiling_water(temperature())?.si(),
        other => panic!("{}: {other} is not judged", row.place()),
    }))
}

#[test]
fn limits_hold_as_written() {
    let station = || StationPressure::measured(kpa(96.5));
    limits(&air::STATION_PRESSURE, 0, |p| StationPressure::measured(pa(p)));
    limits(&air::PRESSURE_AT_ALTITUDE, 0, |z| air::pressure_at_altitude(metre(z)));
    limits(&air::ALTITUDE_AT_PRESSURE, 0, |p| air::altitude_at_pressure(pa(p)));
    limits(&air::ALTIMETER_SETTING, 1, |z| {
        air::altimeter_setting(station()?, metre(z))
    });
    limits(&air::SEA_LEVEL_PRESSURE, 1, |z| {
        air::sea_level_pressure(station()?, metre(z), deg_c(2.0))
    });
    limits(&air::SEA_LEVEL_PRESSURE, 2, |t| {
        air::sea_level_pressure(station()?, metre(410.0), kelvin(t))
    });
}
