//! Hydrometers against printed corrections, charts and measured expansions.

use sugaring::{
    Error,
    air::StationPressure,
    instrument::{HYDROMETER, Hydrometer, THERMOMETER, Thermometer, reading},
    units::{Temperature, baume_20_20, brix, deg_c, deg_f, delta_c, foot, in_hg, kpa, per_kelvin},
};

use super::{
    Figure, Table,
    figure::{of, part_of},
    table::table,
};
use crate::Row;

pub(super) static TABLES: [Table; 7] = [
    table!("published" "hydrometer_nbs_correction_20c" corrections_of_circular_440),
    table!("published" "hydrometer_sap_38f" a_sap_hydrometer),
    table!("published" "hydrometer_syrup_chart_60f" the_state_chart_of_hot_syrup),
    table!("published" "sucrose_hot_hydrometer" a_trade_chart_of_hot_syrup),
    table!("published" "sucrose_hot_density_gerlach" measured_expansions_of_1864),
    table!("published" "thermometer_points" fixed_points_of_a_thermometer),
    table!("derived" "hydrometer_floating" the_floating_condition_evaluated_apart),
];

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

const CORRECTION: &str = "correction added to a reading";

/// Where cold water itself reads above 0 a reading of 0 has no truth: the library refuses it, so those rows are judged
/// by the unit test of the floating condition.
fn corrections_of_circular_440(row: &Row) -> Result<Figure, Error> {
    let hydrometer = Hydrometer::brix(deg_c(20.0))?;
    if row.number("reading_brix_pct") + row.number("value") < 0.0 {
        let error = correction(&hydrometer, row).expect_err("thinner than water");
        assert!(error.to_string().contains("below pure water"), "{error}");
        return Ok(Figure::NotOffered(
            "no solution reads so: it would be thinner than water, and is refused",
        ));
    }
    Ok(part_of(&HYDROMETER, CORRECTION, correction(&hydrometer, row)?))
}

fn a_sap_hydrometer(row: &Row) -> Result<Figure, Error> {
    let correction = correction(&Hydrometer::brix(deg_f(38.0))?, row)?;
    Ok(part_of(&HYDROMETER, CORRECTION, correction))
}

/// The chart is law where adopted; its middle is not physics, and those rows are known misses. Both scales sit on one
/// paper, that of 60 °F.
fn the_state_chart_of_hot_syrup(row: &Row) -> Result<Figure, Error> {
    let syrup = brix(row.number("true_brix_pct"))?;
    if row.text("unit") == "brix_pct_reading" {
        let shown = Hydrometer::brix(deg_f(60.0))?.reading(syrup, temperature(row))?;
        return Ok(of(&HYDROMETER, shown.get()));
    }
    let paper = Hydrometer::on_scale::<baume_20_20>(deg_f(60.0))?;
    let mark = paper.reading(syrup, temperature(row))?.get();
    Ok(part_of(&HYDROMETER, "mark in °Baumé beside the mark in °Brix", mark))
}

fn a_trade_chart_of_hot_syrup(row: &Row) -> Result<Figure, Error> {
    let syrup = brix(row.number("brix_pct"))?;
    let shown = Hydrometer::brix(deg_f(60.0))?.reading(syrup, temperature(row))?;
    Ok(of(&HYDROMETER, shown.get()))
}

fn measured_expansions_of_1864(row: &Row) -> Result<Figure, Error> {
    let hydrometer = Hydrometer::brix(deg_c(17.5))?.with_glass_expansion(per_kelvin(25.857e-6))?;
    let shown = hydrometer.reading(brix(row.number("brix_pct"))?, temperature(row))?;
    Ok(of(&HYDROMETER, shown.get()))
}

/// Rows that a change in the last digit of the glass's expansion breaks.
fn the_floating_condition_evaluated_apart(row: &Row) -> Result<Figure, Error> {
    let hydrometer = Hydrometer::brix(deg_c(row.number("cal_temp_c")))?;
    let shown = hydrometer.reading(brix(row.number("brix_pct"))?, temperature(row))?;
    Ok(of(&HYDROMETER, shown.get()))
}

/// What a thermometer says that was checked where the table tells.
fn fixed_points_of_a_thermometer(row: &Row) -> Result<Figure, Error> {
    let (slow, sea) = (deg_c(0.4), StationPressure::measured(kpa(101.325))?);
    let truth = |thermometer: Thermometer, shown| thermometer.truth(shown).map(|truth| truth.value);
    // One that showed 99.0 °C in water, boiling under this pressure.
    let boils = |air| truth(Thermometer::zeroed_in_boiling_water(deg_c(99.0), air)?, deg_c(99.0));
    let figure = |part, value| Ok(part_of(&THERMOMETER, part, value));
    match row.text("item") {
        "ice point" => {
            let checked = Thermometer::two_point(slow, deg_c(99.0), sea)?;
            figure("truth where it showed ice", truth(checked, slow)?.get::<deg_c>())
        }
        "boiling water at 101.325 kPa" => figure("truth where it showed boiling water", boils(sea)?.get::<deg_c>()),
        "boiling-point change per inHg near 1 atm" => {
            let at = |inches| boils(StationPressure::measured(in_hg(inches))?);
            let change = at(30.42)?.get::<deg_f>() - at(29.42)?.get::<deg_f>();
            figure("change of boiling water with the pressure", change)
        }
        "boiling-point fall per 550 ft" => {
            let at = |feet| boils(StationPressure::from_altitude(foot(feet))?);
            let fall = at(0.0)?.get::<deg_f>() - at(550.0)?.get::<deg_f>();
            figure("fall of boiling water with the altitude", fall)
        }
        "mercury emergent stem coefficient" => {
            let (outside, column, shown) = (100.0, 30.0, 102.0);
            let stem = Thermometer::plain().with_emergent_stem(delta_c(outside), deg_c(column))?;
            let bulb = truth(stem, deg_c(shown))?.get::<deg_c>();
            figure("emergent stem", (bulb - shown) / (outside * (bulb - column)))
        }
        _ => Ok(Figure::NotOffered(
            "a class of dials, of which the user says what is known",
        )),
    }
}
