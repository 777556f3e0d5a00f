//! Air pressure against its tables, and within its limits.

use sugaring::{air, air::StationPressure, units::*};
use sugaring_tests::{limits, tables};

#[test]
fn tables_stand() {
    tables::AIR.judge();
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
