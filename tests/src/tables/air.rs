//! The standard atmosphere and reduced pressures against printed tables and the printed equations in 40 digits.

use sugaring::{
    Error, air,
    air::StationPressure,
    units::{Value, kelvin, kpa, metre, pa},
};

use super::{Figure, Table, figure::of, table::table};
use crate::Row;

pub(super) static TABLES: [Table; 2] = [
    table!("published" "atmosphere_pressure" standard_atmosphere_and_altimeter),
    table!("derived" "air_equations" equation),
];

/// Radius of the standard, to turn the geopotential altitudes of its tables into geometric ones.
const EARTH: f64 = 6_356_766.0;

fn standard_atmosphere_and_altimeter(row: &Row) -> Result<Figure, Error> {
    let altitude = row.number("altitude_m");
    Ok(match row.text("quantity") {
        "pressure_geometric" => of(
            &air::PRESSURE_AT_ALTITUDE,
            air::pressure_at_altitude(metre(altitude))?.get::<kpa>(),
        ),
        "pressure_geopotential" => {
            let geometric = EARTH * altitude / (EARTH - altitude);
            if geometric > 11_000.0 {
                return Ok(Figure::NotOffered(
                    "11 000 m of geopotential are 11 019 m of height, 19 m beyond what is offered",
                ));
            }
            of(
                &air::PRESSURE_AT_ALTITUDE,
                air::pressure_at_altitude(metre(geometric))?.get::<kpa>(),
            )
        }
        "station_from_altimeter" => {
            let setting = kpa(row.number("reported_kpa"));
            let station = StationPressure::from_altimeter_setting(setting, metre(altitude))?;
            of(&air::FROM_ALTIMETER_SETTING, station.pressure().get::<kpa>())
        }
        other => panic!("{}: {other} is not judged", row.place()),
    })
}

fn equation(row: &Row) -> Result<Figure, Error> {
    let altitude = || metre(row.number("altitude_m"));
    let pressure = || pa(row.number("pressure_pa"));
    let warm = || kelvin(row.number("temp_k"));
    let station = || StationPressure::measured(pressure());
    Ok(match row.text("relation") {
        "pressure_at_altitude" => of(
            &air::PRESSURE_AT_ALTITUDE,
            air::pressure_at_altitude(altitude())?.get::<pa>(),
        ),
        "altitude_at_pressure" => of(
            &air::ALTITUDE_AT_PRESSURE,
            air::altitude_at_pressure(pressure())?.get::<metre>(),
        ),
        "altimeter_setting" => of(
            &air::ALTIMETER_SETTING,
            air::altimeter_setting(station()?, altitude())?.get::<pa>(),
        ),
        "sea_level_pressure" => of(
            &air::SEA_LEVEL_PRESSURE,
            air::sea_level_pressure(station()?, altitude(), warm())?.get::<pa>(),
        ),
        "from_altimeter_setting" => of(
            &air::FROM_ALTIMETER_SETTING,
            StationPressure::from_altimeter_setting(pressure(), altitude())?.si(),
        ),
        "from_sea_level" => of(
            &air::FROM_SEA_LEVEL,
            StationPressure::from_sea_level(pressure(), altitude(), warm())?.si(),
        ),
        "from_altitude" => of(&air::FROM_ALTITUDE, StationPressure::from_altitude(altitude())?.si()),
        "from_boiling_water" => of(
            &air::FROM_BOILING_WATER,
            StationPressure::from_boiling_water(warm())?.si(),
        ),
        other => panic!("{}: {other} is not judged", row.place()),
    })
}
