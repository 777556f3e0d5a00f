//! Hydrometers and refractometers against their tables, and within their limits.

use sugaring::{
    Error,
    air::StationPressure,
    instrument::{self, Barometer, Check, Hydrometer, Refractometer, Thermometer, reading},
    units::*,
};
use sugaring_tests::{judge, limits, tables};

#[test]
fn tables_stand() {
    tables::INSTRUMENT.judge();
}

/// The tables that judge the refractive index judge the instrument that rests on it, with the same known misses.
#[test]
fn a_refractometer_without_a_correction_needs_the_tables() {
    let plain = Refractometer::uncompensated();
    for (name, table) in [
        (
            "refractometer_oiv_correction.csv",
            include_str!("../published/refractometer_oiv_correction.csv"),
        ),
        (
            "refractometer_1936_correction.csv",
            include_str!("../published/refractometer_1936_correction.csv"),
        ),
        (
            "sucrose_refractometer_temperature.csv",
            include_str!("../published/sucrose_refractometer_temperature.csv"),
        ),
    ] {
        judge(name, table, |row| {
            let (shown, prism) = (row.number("reading_brix_pct"), deg_c(row.number("temp_c")));
            match plain.truth(reading(shown), prism) {
                Ok(truth) => Ok(Some(truth.value.get() - shown)),
                // A reading of 0 on a cold prism.
                Err(error) if error.to_string().contains("below pure water") => Ok(None),
                Err(error) => Err(error),
            }
        });
    }
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
    limits(&instrument::THERMOMETER, 0, |t| Thermometer::plain().truth(kelvin(t)));
    limits(&instrument::THERMOMETER, 1, |t| Thermometer::plain().reading(kelvin(t)));
    limits(&instrument::BAROMETER, 0, |p| Barometer::station().truth(pa(p)));
}

/// The mark of the hot test, as a hydrometer's paper has it: 59 °Bx, 32.1 °Bé at 211 °F.
#[test]
fn the_mark_of_the_hot_test() {
    let mark = |float: Hydrometer| float.reading(brix(66.9).unwrap(), deg_f(211.0)).unwrap().get();
    let at = deg_f(60.0);
    assert!((mark(Hydrometer::brix(at).unwrap()) - 59.0).abs() < 0.05);
    assert!((mark(Hydrometer::on_scale::<baume_60_60_f>(at).unwrap()) - 32.1).abs() < 0.05);
    let trade = mark(Hydrometer::on_scale::<baume_20_20>(at).unwrap());
    assert!((trade - 31.99).abs() < 0.005, "{trade}");
}

/// Glasses of one float with different papers tell the same truth.
#[test]
fn every_paper_tells_the_same() -> Result<(), Error> {
    let at = deg_f(60.0);
    let papers = [
        Hydrometer::on_scale::<baume_20_20>(at)?,
        Hydrometer::on_scale::<baume_60_60_f>(at)?,
        Hydrometer::on_scale::<relative_density_20_20>(at)?,
        Hydrometer::on_scale::<relative_density_60_60_f>(at)?,
        Hydrometer::on_scale::<relative_density_20_4>(at)?,
        Hydrometer::on_scale::<apparent_relative_density_20_20>(at)?,
        Hydrometer::density(at)?,
    ];
    let bare = Hydrometer::brix(at)?;
    for (strength, warm) in [(0.0, 100.0), (2.0, 4.0), (30.0, 60.0), (66.9, 99.0), (85.0, 0.0)] {
        for paper in papers {
            let mark = paper.reading(brix(strength)?, deg_c(warm))?;
            let truth = paper.truth(mark, deg_c(warm))?;
            assert!(
                (truth.value.get() - strength).abs() < 1e-9,
                "{paper:?} {strength} {warm}"
            );
        }
        // What a relative density of 60 °F means at 60 °F is a density of the liquid over that of water.
        let sixty = Hydrometer::density(at)?.reading(brix(strength)?, deg_c(warm))?.get();
        let relative = Hydrometer::on_scale::<relative_density_60_60_f>(at)?
            .reading(brix(strength)?, deg_c(warm))?
            .get();
        let water = Hydrometer::density(at)?.reading(brix(0.0)?, at)?.get();
        assert!((relative * water - sixty).abs() < 1e-8, "{relative} {water} {sixty}");
        assert!(bare.reading(brix(strength)?, deg_c(warm))?.get() < 90.0);
    }
    Ok(())
}

/// Nothing is read beyond a paper or two checks, and no mark is given there.
#[test]
fn marks_beyond_the_paper_and_the_checks_are_refused() {
    let text = |tried: Result<instrument::Reading, Error>| tried.unwrap_err().to_string();
    let syrup = Hydrometer::brix(deg_f(60.0)).unwrap();
    let paper = syrup.with_span(50.0, 70.0).unwrap();
    assert_eq!(
        text(paper.reading(brix(2.0).unwrap(), deg_f(60.0))),
        "brix = 2 °Bx is outside 50 to 70 °Bx; its paper ends there: sap and syrup have hydrometers of their own",
    );
    let check = |shown, strength| Check {
        reading: reading(shown),
        brix: brix(strength).unwrap(),
        temperature: deg_f(60.0),
    };
    let tested = syrup.two_point(check(50.4, 50.0), check(67.2, 66.9)).unwrap();
    assert_eq!(
        text(tested.reading(brix(70.0).unwrap(), deg_f(60.0))),
        "brix = 70 °Bx is outside 50 to 66.9 °Bx; it was checked between these two only",
    );
    let prism = |shown, strength| Check {
        temperature: deg_c(20.0),
        ..check(shown, strength)
    };
    let plain = Refractometer::uncompensated()
        .two_point(prism(0.2, 0.0), prism(30.4, 30.0))
        .unwrap();
    assert_eq!(
        text(plain.reading(brix(66.9).unwrap(), deg_c(20.0))),
        "brix = 66.9 °Bx is outside 0 to 30 °Bx; it was checked between these two only",
    );
}

/// What a check said, the instrument says again.
#[test]
fn a_calibrated_instrument_gives_its_check_back() -> Result<(), Error> {
    let air = StationPressure::from_boiling_water(deg_c(98.6))?;
    let (water, hot) = (brix(0.0)?, deg_c(60.0));
    let float = Hydrometer::on_scale::<baume_20_20>(deg_f(60.0))?.zeroed(reading(-1.9), water, hot)?;
    assert!((float.reading(water, hot)?.get() + 1.9).abs() < 1e-9);
    let plain = Refractometer::uncompensated();
    let zeroed = plain.zeroed_in_water(reading(-0.3), deg_c(30.0))?;
    assert!((zeroed.reading(water, deg_c(30.0))?.get() + 0.3).abs() < 1e-9);
    let set = plain.set_to_zero_at(deg_c(9.0))?;
    assert!(set.reading(water, deg_c(9.0))?.get().abs() < 1e-9);
    let dial = Thermometer::zeroed_in_boiling_water(deg_c(100.1), air)?;
    assert!((dial.reading(deg_c(98.6))?.get::<deg_c>() - 100.1).abs() < 1e-6);
    let glass = Barometer::set_to_sea_level(metre(410.0))?.zeroed(in_hg(30.1), air)?;
    assert!((glass.reading(air)?.get::<in_hg>() - 30.1).abs() < 1e-9);
    Ok(())
}

/// A truth is as much less sure as its mark is steeper: between two checks, and where the scale is not the liquid's.
#[test]
fn uncertainties_follow_the_marks() -> Result<(), Error> {
    let check = |shown, strength| {
        Ok::<_, Error>(Check {
            reading: reading(shown),
            brix: brix(strength)?,
            temperature: deg_c(20.0),
        })
    };
    let hand = Refractometer::compensated(deg_c(10.0), deg_c(30.0))?;
    let tested = hand.two_point(check(0.0, 0.0)?, check(50.0, 60.0)?)?;
    let near = |found: f64, expected: f64| assert!((found - expected).abs() < 1e-9 * expected, "{found} {expected}");
    near(tested.truth(reading(20.0), deg_c(20.0))?.uncertainty, 0.12 * 1.2);
    let float = Hydrometer::brix(deg_c(20.0))?.two_point(check(0.0, 0.0)?, check(50.0, 60.0)?)?;
    near(float.truth(reading(20.0), deg_c(20.0))?.uncertainty, 0.3 * 1.2);
    // In hot syrup a °Bx of the scale is 0.95 of the liquid.
    let hot = Hydrometer::brix(deg_f(60.0))?.truth(reading(59.0), deg_f(211.0))?;
    assert!((hot.uncertainty - 0.3 * 0.9548).abs() < 1e-4, "{}", hot.uncertainty);
    let air = StationPressure::measured(kpa(101.325))?.with_uncertainty(pa(0.0));
    let probe = Thermometer::two_point(deg_c(5.0), deg_c(94.974), air)?;
    let truth = probe.truth(deg_c(50.0))?;
    assert!((truth.uncertainty.get::<delta_c>() - 0.25 * 99.974 / 89.974).abs() < 1e-5);
    // Sensitivities by moving the reading.
    let plain = Refractometer::uncompensated().with_uncertainty(0.2)?;
    let at = |shown| plain.truth(reading(shown), deg_c(40.0));
    let slope = (at(66.01)?.value.get() - at(65.99)?.value.get()) / 0.02;
    let expected = ((0.2 * slope).powi(2) + 0.05_f64.powi(2) / 3.0).sqrt();
    assert!((at(66.0)?.uncertainty - expected).abs() < 1e-5);
    Ok(())
}
