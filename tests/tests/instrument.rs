//! Hydrometers against printed corrections, charts and measured expansions.

use sugaring::{
    Error,
    instrument::{self, Hydrometer, Refractometer, reading},
    sucrose,
    units::*,
};
use sugaring_tests::{Row, judge, limits};

const CHART: &str = include_str!("../published/hydrometer_syrup_chart_60f.csv");
const FLOATING: &str = include_str!("../derived/hydrometer_floating.csv");
const GERLACH: &str = include_str!("../published/sucrose_hot_density_gerlach.csv");
const HOT: &str = include_str!("../published/sucrose_hot_hydrometer.csv");
const NBS: &str = include_str!("../published/hydrometer_nbs_correction_20c.csv");
const SAP: &str = include_str!("../published/hydrometer_sap_38f.csv");

/// Where the row has degrees Fahrenheit they are what the source prints.
fn temperature(row: &Row) -> Temperature {
    match row.optional_number("temp_f") {
        Some(fahrenheit) => deg_f(fahrenheit),
        None => deg_c(row.number("temp_c")),
    }
}

fn correction(hydrometer: &Hydrometer, row: &Row) -> Result<f64, Error> {
    let shown = row.number("reading_brix_pct");
    Ok(hydrometer.truth(reading(shown), temperature(row))?.value.get() - shown)
}

/// Where cold water itself reads above 0 a reading of 0 has no truth: the library refuses it, so those rows are judged
/// by the unit test of the floating condition.
#[test]
fn corrections_of_circular_440() {
    judge("hydrometer_nbs_correction_20c.csv", NBS, |row| {
        let hydrometer = Hydrometer::brix(deg_c(20.0))?;
        if row.number("reading_brix_pct") + row.number("value") < 0.0 {
            let error = correction(&hydrometer, row).expect_err("thinner than water");
            assert!(error.to_string().contains("below pure water"), "{error}");
            return Ok(None);
        }
        correction(&hydrometer, row).map(Some)
    });
}

#[test]
fn a_sap_hydrometer() {
    judge("hydrometer_sap_38f.csv", SAP, |row| {
        correction(&Hydrometer::brix(deg_f(38.0))?, row).map(Some)
    });
}

/// The chart is law where adopted; its middle is not physics, and those rows are known misses.
#[test]
fn the_state_chart_of_hot_syrup() {
    judge("hydrometer_syrup_chart_60f.csv", CHART, |row| {
        let syrup = brix(row.number("true_brix_pct"))?;
        let shown = Hydrometer::brix(deg_f(60.0))?.reading(syrup, temperature(row))?.get();
        if row.text("unit") == "brix_pct_reading" {
            return Ok(Some(shown));
        }
        // Both scales sit on one paper: the mark in degrees Baumé, by relative density 20/20 and modulus 145.
        let at_20 =
            |strength| -> Result<f64, Error> { Ok(sucrose::density(brix(strength)?, deg_c(20.0))?.get::<kg_per_m3>()) };
        Ok(Some(145.0 - 145.0 * at_20(0.0)? / at_20(shown)?))
    });
}

#[test]
fn a_trade_chart_of_hot_syrup() {
    judge("sucrose_hot_hydrometer.csv", HOT, |row| {
        let syrup = brix(row.number("brix_pct"))?;
        let shown = Hydrometer::brix(deg_f(60.0))?.reading(syrup, temperature(row))?;
        Ok(Some(shown.get()))
    });
}

#[test]
fn measured_expansions_of_1864() {
    judge("sucrose_hot_density_gerlach.csv", GERLACH, |row| {
        let hydrometer = Hydrometer::brix(deg_c(17.5))?.with_glass_expansion(per_kelvin(25.857e-6))?;
        let shown = hydrometer.reading(brix(row.number("brix_pct"))?, temperature(row))?;
        Ok(Some(shown.get()))
    });
}

/// Rows that a change in the last digit of the glass's expansion breaks.
#[test]
fn the_floating_condition_evaluated_apart() {
    judge("hydrometer_floating.csv", FLOATING, |row| {
        let hydrometer = Hydrometer::brix(deg_c(row.number("cal_temp_c")))?;
        let shown = hydrometer.reading(brix(row.number("brix_pct"))?, temperature(row))?;
        Ok(Some(shown.get()))
    });
}

/// A reading is held to narrower limits than its relation's: those of water and of 85 °Bx at its temperature.
#[test]
fn limits_hold_as_written() {
    let float = || Hydrometer::brix(deg_f(60.0));
    let hand = || Refractometer::compensated(deg_c(10.0), deg_c(30.0));
    limits(&instrument::HYDROMETER, 1, |t| float()?.truth(reading(20.0), kelvin(t)));
    limits(&instrument::HYDROMETER, 1, |t| float()?.reading(brix(66.9)?, kelvin(t)));
    limits(&instrument::HYDROMETER, 2, |b| float()?.reading(brix(b)?, deg_c(20.0)));
    limits(&instrument::REFRACTOMETER, 1, |b| {
        hand()?.reading(brix(b)?, deg_c(20.0))
    });
}
