//! Sucrose solutions against their tables, and within their limits.

use sugaring::{air::StationPressure, sucrose, units::*};
use sugaring_tests::{limits, rows, tables};

#[test]
fn tables_stand() {
    tables::SUCROSE.judge();
}

// Limits. Inverses that end at a strength find their limits themselves; their corners are tested beside the code.

#[test]
fn limits_hold_as_written() {
    let (syrup, warm) = (|| brix(50.0), || deg_c(20.0));
    let station = || StationPressure::measured(kpa(96.5));
    macro_rules! of_strength_and_temperature {
        ($($relation:ident $function:ident;)+) => { $(
            limits(&sucrose::$relation, 0, |b| sucrose::$function(Brix::from_si(b)?, warm()));
            limits(&sucrose::$relation, 1, |t| sucrose::$function(syrup()?, kelvin(t)));
        )+ };
    }
    of_strength_and_temperature! {
        DENSITY density;
        SUGAR_PER_VOLUME sugar_per_volume;
        WATER_ACTIVITY water_activity;
        OSMOTIC_COEFFICIENT osmotic_coefficient;
        OSMOTIC_PRESSURE osmotic_pressure;
        SPECIFIC_HEAT specific_heat;
        SPECIFIC_HEAT_BUBNIK specific_heat_bubnik;
        ENTHALPY enthalpy;
        VISCOSITY viscosity;
        SUPERSATURATION supersaturation;
    }
    limits(&sucrose::CONTRACTION, 1, |t| {
        sucrose::contraction(syrup()?, kelvin(t), warm())
    });
    limits(&sucrose::CONTRACTION, 2, |t| {
        sucrose::contraction(syrup()?, warm(), kelvin(t))
    });
    limits(&sucrose::HEAT_TO_WARM, 1, |t| {
        sucrose::heat_to_warm(syrup()?, kelvin(t), warm())
    });
    limits(&sucrose::HEAT_TO_WARM, 2, |t| {
        sucrose::heat_to_warm(syrup()?, warm(), kelvin(t))
    });
    limits(&sucrose::PRESSURE_FROM_BOILING, 0, |b| {
        sucrose::pressure_from_boiling(Brix::from_si(b)?, deg_c(90.0))
    });
    limits(&sucrose::PRESSURE_FROM_BOILING, 1, |t| {
        sucrose::pressure_from_boiling(syrup()?, kelvin(t))
    });
    limits(&sucrose::BOILING_TEMPERATURE, 0, |b| {
        sucrose::boiling_temperature(Brix::from_si(b)?, station()?)
    });
    limits(&sucrose::BOILING_POINT_ELEVATION, 0, |b| {
        sucrose::boiling_point_elevation(Brix::from_si(b)?, station()?)
    });
    limits(&sucrose::HEAT_OF_EVAPORATION, 0, |b| {
        sucrose::heat_of_evaporation(Brix::from_si(b)?, station()?)
    });
    limits(&sucrose::FREEZING_TEMPERATURE, 0, |b| {
        sucrose::freezing_temperature(Brix::from_si(b)?)
    });
    limits(&sucrose::SOLUBILITY, 0, |t| sucrose::solubility(kelvin(t)));
}

/// The rows of its range stand in the table of our own form, with that form's accuracy: here they judge what this one
/// states.
#[test]
fn the_published_viscosity_holds_what_it_states() {
    let table = include_str!("../published/sucrose_viscosity.csv");
    let (mut judged, mut largest) = (0, 0.0_f64);
    for row in rows("sucrose_viscosity.csv", table) {
        let (solution, warm) = (brix(row.number("brix_pct")).unwrap(), deg_c(row.number("temp_c")));
        let Ok(found) = sucrose::viscosity_genotelle(solution, warm) else {
            continue;
        };
        let value = row.number("value");
        let deviation = found.get::<mpa_s>() - value;
        assert!(
            deviation.abs() <= 0.025 * value + row.number("tolerance"),
            "{}",
            row.place()
        );
        judged += 1;
        largest = largest.max((deviation / value).abs());
    }
    println!("Génotelle: {judged} rows, largest deviation {:.2} %", 100.0 * largest);
    assert!(judged >= 15);
}
