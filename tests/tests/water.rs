//! Water against its tables, and within its limits.

use sugaring::{units::*, water};
use sugaring_tests::{limits, tables};

#[test]
fn tables_stand() {
    tables::WATER.judge();
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
