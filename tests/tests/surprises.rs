//! Nine things about readings that surprise people; the book's page "What surprises people?" tells them.

use sugaring::{
    Error,
    air::{self, StationPressure},
    instrument::{Hydrometer, Refractometer, Thermometer, chart, reading},
    sucrose,
    uncertainty::{Distribution, Samples, Spread, monte_carlo, propagate},
    units::*,
};

fn near(found: f64, wanted: f64, half: f64) {
    assert!((found - wanted).abs() <= half, "{found}, not {wanted} ± {half}");
}

/// A hydrometer for 20 °C in sap of 4 °C, where the density of water has its turning point.
#[test]
fn cold_sap_reads_too_sweet() -> Result<(), Error> {
    let sap = Hydrometer::brix(deg_c(20.0))?;
    // Of a reading of 2 °Bx from freezing to 10 °C: a sixth of the sugar.
    let too_high = |celsius| Ok::<_, Error>(2.0 - sap.truth(reading(2.0), deg_c(celsius))?.value.get());
    let all: Vec<f64> = (0..=10).map(|t| too_high(f64::from(t))).collect::<Result<_, _>>()?;
    assert!(all.iter().all(|high| (0.34..0.392).contains(high)), "{all:?}");
    near(all.iter().sum::<f64>() / 11.0, 0.37, 0.01);
    Ok(())
}

/// A weather report's pressure, taken for that of the sugarhouse at 410 m.
#[test]
fn pressure_of_the_sea_ends_too_thick() -> Result<(), Error> {
    let here = StationPressure::measured(kpa(96.5))?;
    let report = air::altimeter_setting(here, metre(410.0))?;
    near(report.get::<kpa>() - 96.5, 4.83, 0.005);
    let trusted = StationPressure::measured(report)?;
    let finish = sucrose::boiling_temperature(brix(66.9)?, trusted)?;
    let right = sucrose::boiling_temperature(brix(66.9)?, here)?;
    near(finish.get::<deg_f>() - right.get::<deg_f>(), 2.5, 0.05);
    near(sucrose::brix_from_boiling(finish, here)?.get(), 71.9, 0.05);
    Ok(())
}

/// A table's correction on top of an instrument that has corrected itself.
#[test]
fn two_corrections_are_one_too_many() -> Result<(), Error> {
    let own = Refractometer::compensated(deg_c(10.0), deg_c(30.0))?;
    let shown = own.reading(brix(66.9)?, deg_c(12.0))?;
    near(shown.get(), 66.9, 1e-12);
    // What a table would make of it.
    let by_table = Refractometer::uncompensated().truth(shown, deg_c(12.0))?;
    near(by_table.value.get() - 66.9, -0.61, 0.05);
    let refused = own.set_to_zero_at(deg_c(12.0)).unwrap_err();
    assert!(
        refused
            .to_string()
            .ends_with("it corrects itself, and twice is wrong: zero it in water")
    );
    Ok(())
}

/// A law prints 36 °Bé beside 66.9 °Bx; which Baumé it means decides whether they are the same.
#[test]
fn baume_36_is_not_brix_66_9() -> Result<(), Error> {
    near(sucrose::brix_from_scale(baume_20_20(36.0))?.get(), 66.85, 0.005);
    near(sucrose::brix_from_scale(baume_60_60_f(36.0))?.get(), 66.66, 0.005);
    near(
        sucrose::on_scale::<baume_20_20>(brix(66.9)?)?.get::<baume_20_20>(),
        36.025,
        0.0005,
    );
    near(
        sucrose::on_scale::<baume_60_60_f>(brix(66.9)?)?.get::<baume_60_60_f>(),
        36.12,
        0.005,
    );
    Ok(())
}

/// A thermometer with marks of 1 °F, read alone.
#[test]
fn a_temperature_alone_is_coarse() -> Result<(), Error> {
    let here = StationPressure::measured(kpa(96.5))?.with_uncertainty(pa(0.0));
    let finish = sucrose::boiling_temperature(brix(66.9)?, here)?;
    let divisions = sugaring::uncertainty::from_resolution(1.0)?;
    let input = Spread::new("temperature", finish.get::<deg_f>(), divisions)?;
    let strength = |x: &[f64]| {
        x.iter()
            .map(|t| sucrose::brix_from_boiling(deg_f(*t), here).map(Brix::get))
            .sum::<Result<f64, Error>>()
    };
    near(propagate(strength, &[input])?.uncertainty, 0.69, 0.01);
    // A hydrometer that was tested is four times as sure.
    let tested = Hydrometer::brix(deg_f(60.0))?.with_uncertainty(0.15)?;
    assert!(tested.truth(reading(59.0), deg_f(211.0))?.uncertainty < 0.17);
    Ok(())
}

/// The chart that a state prescribes, and the equation.
#[test]
fn the_chart_of_the_law_is_not_the_equation() -> Result<(), Error> {
    let (law, glass) = (chart("vermont")?, Hydrometer::brix(deg_f(60.0))?);
    let mut largest: (f64, f64) = (0.0, 0.0);
    for row in law.rows() {
        let more = glass.reading(brix(66.9)?, row.temperature())?.get() - row.mark().brix.get();
        if more > largest.0 {
            largest = (more, row.temperature().get::<deg_f>());
        }
    }
    near(largest.0, 0.33, 0.005);
    assert!((110.0..=120.0).contains(&largest.1), "{largest:?}");
    // Syrup that just meets it there, when it is cold.
    let meets = glass.truth(law.mark(deg_f(120.0))?.brix, deg_f(120.0))?.value;
    near(meets.get(), 66.57, 0.01);
    Ok(())
}

/// An instrument that corrects itself from 10 to 30 °C, in a sugarhouse of 4 °C.
#[test]
fn a_correction_of_its_own_ends() -> Result<(), Error> {
    let own = Refractometer::compensated(deg_c(10.0), deg_c(30.0))?;
    let refused = own.truth(reading(2.4), deg_c(4.0)).unwrap_err();
    assert_eq!(
        refused.to_string(),
        "prism = 4 °C is outside 10 to 30 °C; let the instrument come to room temperature"
    );
    // One without a correction would read sap of 2 °Bx so much too sweet at 5 °C.
    near(
        Refractometer::uncompensated().reading(brix(2.0)?, deg_c(5.0))?.get() - 2.0,
        0.66,
        0.05,
    );
    Ok(())
}

/// The calibration of a mass, JCGM 101:2008, 9.3: to first order the density of the air seems not to matter.
#[test]
fn first_order_is_too_small_near_a_turning_point() -> Result<(), Error> {
    let rectangular = |name, low: f64, high: f64| {
        let half = sugaring::uncertainty::from_limits(0.5 * (high - low))?;
        Ok::<_, Error>(Spread::new(name, 0.5 * (low + high), half)?.with_distribution(Distribution::Rectangular))
    };
    let inputs = [
        Spread::new("reference", 100_000.0, 0.050)?,
        Spread::new("added", 1.234, 0.020)?,
        rectangular("air", 1.10, 1.30)?,
        rectangular("mass", 7000.0, 9000.0)?,
        rectangular("steel", 7950.0, 8050.0)?,
    ];
    let more = |x: &[f64]| match x {
        [reference, added, air, mass, steel] => {
            (reference + added) * (1.0 + (air - 1.2) * (1.0 / mass - 1.0 / steel)) - 100_000.0
        }
        _ => f64::NAN,
    };
    let first = propagate(more, &inputs)?;
    near(first.uncertainty, 0.0539, 5e-5);
    let drawn = monte_carlo(more, &inputs, 1, Samples::Count(200_000))?;
    near(drawn.uncertainty, 0.0754, 3e-4);
    near(1.0 - first.uncertainty / drawn.uncertainty, 0.285, 0.01);
    Ok(())
}

/// A thermometer that is 2 °F off, in boiling water and in boiling syrup.
#[test]
fn one_thermometer_cancels_its_own_offset() -> Result<(), Error> {
    let here = StationPressure::measured(kpa(96.5))?;
    let water = sucrose::boiling_temperature(brix(0.0)?, here)?;
    let syrup = sucrose::boiling_temperature(brix(66.9)?, here)?;
    let dial = Thermometer::plain().with_offset(delta_f(-2.0))?;
    let (shown_water, shown_syrup) = (dial.reading(water)?, dial.reading(syrup)?);
    // Its own boiling water gives the pressure, wrong as it is, and the syrup comes out right.
    let own = StationPressure::from_boiling_water(shown_water)?;
    near(sucrose::brix_from_boiling(shown_syrup, own)?.get(), 66.9, 0.2);
    // With a barometer the offset stays.
    near(sucrose::brix_from_boiling(shown_syrup, here)?.get(), 61.0, 1.0);

    let strength = |x: &[f64]| match x {
        [water, syrup] => {
            let air = StationPressure::from_boiling_water(deg_c(*water))?;
            sucrose::brix_from_boiling(deg_c(*syrup), air).map(Brix::get)
        }
        _ => Ok(f64::NAN),
    };
    let at = |cause: [&str; 2]| {
        let read = [("water", water, cause[0]), ("syrup", syrup, cause[1])];
        let read = read.map(|(name, t, cause)| Spread::new(name, t.get::<deg_c>(), 1.0).map(|s| s.with_cause(cause)));
        read.into_iter().collect::<Result<Vec<_>, _>>()
    };
    let shared = propagate(strength, &at(["dial", "dial"])?)?;
    let apart = propagate(strength, &at(["one", "other"])?)?;
    assert!(
        shared.uncertainty < 0.15 && apart.uncertainty > 5.0,
        "{} {}",
        shared.uncertainty,
        apart.uncertainty
    );
    Ok(())
}
