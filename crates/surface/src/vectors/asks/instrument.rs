//! Instruments: made, calibrated, read both ways, and refused.

use sugaring::form::Tree;

use super::{Case, of};

pub(super) fn cases() -> Vec<Case> {
    let mut cases = made();
    cases.extend(calibrated());
    cases.extend(read());
    cases.extend(refused());
    cases
}

fn given<const N: usize>(entries: [(&str, Tree); N]) -> Tree {
    Tree::map(entries)
}

fn number(value: f64) -> Tree {
    Tree::Number(value)
}

/// `{"hydrometer": …}` of a scale.
fn float(scale: &str) -> Tree {
    let inner = given([("scale", Tree::from(scale)), ("calibrated_at", of(60.0, "deg_f"))]);
    given([("hydrometer", inner)])
}

/// A glass that reads in steps, slipped and with its span.
fn tested() -> Tree {
    let span = given([("low", number(50.0)), ("high", number(70.0))]);
    let inner = given([
        ("scale", Tree::from("brix")),
        ("calibrated_at", of(60.0, "deg_f")),
        ("glass_expansion", of(10e-6, "per_kelvin")),
        ("offset", number(-0.2)),
        ("span", span),
        ("resolution", number(0.5)),
        ("uncertainty", number(0.15)),
    ]);
    given([("hydrometer", inner)])
}

fn two_points(low: [f64; 2], high: [f64; 2]) -> Tree {
    let point = |[shown, expected]: [f64; 2]| given([("shown", number(shown)), ("expected", number(expected))]);
    [point(low), point(high)].into_iter().collect()
}

fn prism(more: &[(&str, Tree)]) -> Tree {
    let inner = more.iter().map(|(key, value)| (*key, value.clone()));
    given([("refractometer", Tree::map(inner))])
}

fn compensated() -> Tree {
    let range = given([("low", of(10.0, "deg_c")), ("high", of(30.0, "deg_c"))]);
    prism(&[("compensated", range), ("zero", number(0.2))])
}

fn uncompensated() -> Tree {
    prism(&[("uncompensated", Tree::Bool(true))])
}

fn dial() -> Tree {
    let inner = given([("offset", of(-1.5, "delta_f")), ("resolution", of(1.0, "delta_f"))]);
    given([("thermometer", inner)])
}

fn hung() -> Tree {
    let inner = given([("set_to_sea_level", of(410.0, "metre")), ("offset", of(0.1, "kpa"))]);
    given([("barometer", inner)])
}

fn station(kilopascal: f64) -> Tree {
    given([
        ("pressure", of(1000.0 * kilopascal, "pa")),
        ("uncertainty", of(100.0, "pa")),
        ("origin", Tree::from("measured")),
    ])
}

fn made() -> Vec<Case> {
    let sixty = || of(60.0, "deg_f");
    vec![
        ("Hydrometer.brix", given([("calibrated_at", sixty())])),
        (
            "Hydrometer.brix",
            given([("calibrated_at", of(20.0, "deg_c")), ("uncertainty", number(0.1))]),
        ),
        (
            "Hydrometer.on_scale",
            given([("scale", Tree::from("baume_20_20")), ("calibrated_at", sixty())]),
        ),
        (
            "Hydrometer.on_scale",
            given([
                ("scale", Tree::from("relative_density_60_60_f")),
                ("calibrated_at", sixty()),
                ("offset", number(0.001)),
            ]),
        ),
        (
            "Hydrometer.density",
            given([("calibrated_at", of(20.0, "deg_c")), ("resolution", number(1.0))]),
        ),
        (
            "Refractometer.compensated",
            given([
                ("low", of(10.0, "deg_c")),
                ("high", of(86.0, "deg_f")),
                ("zero", number(0.1)),
            ]),
        ),
        ("Refractometer.uncompensated", given([("resolution", number(0.2))])),
        ("Thermometer.plain", given([("offset", of(0.3, "delta_c"))])),
        (
            "Thermometer.zeroed_in_boiling_water",
            given([("reading", of(211.0, "deg_f")), ("station", station(96.5))]),
        ),
        (
            "Thermometer.two_point",
            given([
                ("ice", of(0.4, "deg_c")),
                ("boiling", of(99.4, "deg_c")),
                ("station", station(96.5)),
            ]),
        ),
        (
            "Thermometer.line",
            given([("line", line(0.002_183)), ("uncertainty", of(0.003, "delta_c"))]),
        ),
        ("Barometer.station", given([("resolution", of(0.02, "in_hg"))])),
        ("Barometer.set_to_sea_level", given([("altitude", of(1345.0, "foot"))])),
    ]
}

fn check(reading: f64, brix: f64) -> Tree {
    given([
        ("reading", number(reading)),
        ("brix", number(brix)),
        ("temperature", of(20.0, "deg_c")),
    ])
}

fn calibrated() -> Vec<Case> {
    vec![
        (
            "Hydrometer.zeroed",
            given([
                ("instrument", float("brix")),
                ("reading", number(67.2)),
                ("brix", number(66.9)),
                ("temperature", of(60.0, "deg_f")),
            ]),
        ),
        (
            "Hydrometer.two_point",
            given([
                ("instrument", float("baume_20_20")),
                ("low", check(0.2, 0.0)),
                ("high", check(36.2, 66.9)),
            ]),
        ),
        (
            "Refractometer.zeroed_in_water",
            given([
                ("instrument", uncompensated()),
                ("reading", number(0.5)),
                ("prism", of(12.0, "deg_c")),
            ]),
        ),
        (
            "Refractometer.set_to_zero_at",
            given([("instrument", uncompensated()), ("prism", of(50.0, "deg_f"))]),
        ),
        (
            "Refractometer.two_point",
            given([
                ("instrument", compensated()),
                ("low", check(0.2, 0.0)),
                ("high", check(30.4, 30.0)),
            ]),
        ),
        (
            "Barometer.zeroed",
            given([
                ("instrument", hung()),
                ("reading", of(30.02, "in_hg")),
                ("station", station(96.5)),
            ]),
        ),
    ]
}

fn read() -> Vec<Case> {
    let mut cases = Vec::new();
    let floats = [
        "brix",
        "baume_20_20",
        "baume_60_60_f",
        "relative_density_20_20",
        "relative_density_60_60_f",
    ];
    let rest = ["relative_density_20_4", "apparent_relative_density_20_20", "density"];
    for scale in floats.into_iter().chain(rest) {
        for (brix, celsius) in [(66.9, 99.4), (66.9, 20.0), (2.0, 4.0), (0.0, 100.0), (85.0, 0.0)] {
            let at = of(celsius, "deg_c");
            cases.push((
                "Hydrometer.reading",
                given([
                    ("instrument", float(scale)),
                    ("brix", number(brix)),
                    ("temperature", at),
                ]),
            ));
        }
    }
    let truth = |instrument: Tree, reading: f64, argument: &'static str, at: Tree| {
        given([("instrument", instrument), ("reading", number(reading)), (argument, at)])
    };
    for (instrument, reading, at) in [
        (float("brix"), 59.0, of(211.0, "deg_f")),
        (float("brix"), 2.36, of(4.0, "deg_c")),
        (tested(), 59.5, of(103.0, "deg_c")),
        (float("baume_20_20"), 32.0, of(211.0, "deg_f")),
        (float("relative_density_20_20"), 1.33, of(20.0, "deg_c")),
        (float("density"), 1290.0, of(85.0, "deg_c")),
    ] {
        cases.push(("Hydrometer.truth", truth(instrument, reading, "temperature", at)));
    }
    let turned = prism(&[
        ("uncompensated", Tree::Bool(true)),
        ("set_to_zero_at", of(10.0, "deg_c")),
    ]);
    let checked = prism(&[
        ("uncompensated", Tree::Bool(true)),
        ("two_point", two_points([0.1, 0.0], [70.3, 70.0])),
    ]);
    for (instrument, reading, at) in [
        (compensated(), 2.2, of(12.0, "deg_c")),
        (uncompensated(), 67.5, of(12.0, "deg_c")),
        (turned, 67.4, of(10.0, "deg_c")),
        (checked, 30.0, of(25.0, "deg_c")),
    ] {
        cases.push((
            "Refractometer.truth",
            truth(instrument.clone(), reading, "prism", at.clone()),
        ));
        cases.push((
            "Refractometer.reading",
            given([("instrument", instrument), ("brix", number(reading)), ("prism", at)]),
        ));
    }
    cases.push((
        "Thermometer.truth",
        given([("instrument", dial()), ("reading", of(215.5, "deg_f"))]),
    ));
    cases.push((
        "Thermometer.reading",
        given([("instrument", dial()), ("temperature", of(217.0, "deg_f"))]),
    ));
    cases.push((
        "Barometer.truth",
        given([("instrument", hung()), ("reading", of(30.02, "in_hg"))]),
    ));
    cases.push((
        "Barometer.reading",
        given([("instrument", hung()), ("station", station(96.5))]),
    ));
    cases
}

fn refused() -> Vec<Case> {
    let hydrometer = |instrument: Tree, reading: Tree, at: Tree| {
        (
            "Hydrometer.truth",
            given([("instrument", instrument), ("reading", reading), ("temperature", at)]),
        )
    };
    let refractometer = |instrument: Tree, reading: f64, at: Tree| {
        (
            "Refractometer.truth",
            given([("instrument", instrument), ("reading", number(reading)), ("prism", at)]),
        )
    };
    vec![
        // °F for °C, Baumé for °Brix in hot syrup and the other way round, another instrument's scale.
        hydrometer(float("brix"), number(59.0), of(211.0, "deg_c")),
        hydrometer(float("brix"), number(32.25), of(202.0, "deg_f")),
        hydrometer(float("baume_20_20"), number(59.0), of(211.0, "deg_f")),
        hydrometer(tested(), number(2.0), of(40.0, "deg_f")),
        hydrometer(float("brix"), number(-12.0), of(100.0, "deg_c")),
        hydrometer(float("brix"), number(f64::NAN), of(20.0, "deg_c")),
        hydrometer(float("brix"), of(59.0, "kpa"), of(20.0, "deg_c")),
        hydrometer(float("brix"), number(59.0), number(20.0)),
        hydrometer(float("brix"), number(59.0), of(20.0, "delta_c")),
        refractometer(compensated(), 2.0, of(3.7, "deg_c")),
        refractometer(compensated(), 2.0, of(68.0, "deg_c")),
        refractometer(compensated(), -3.0, of(20.0, "deg_c")),
        refractometer(uncompensated(), 90.0, of(20.0, "deg_c")),
        (
            "Refractometer.set_to_zero_at",
            given([("instrument", compensated()), ("prism", of(12.0, "deg_c"))]),
        ),
        ("Hydrometer.brix", given([("calibrated_at", of(60.0, "deg_c"))])),
        (
            "Hydrometer.brix",
            given([("calibrated_at", of(60.0, "deg_f")), ("uncertainty", number(-0.1))]),
        ),
        (
            "Hydrometer.brix",
            given([
                ("calibrated_at", of(60.0, "deg_f")),
                ("uncertainty", number(f64::INFINITY)),
            ]),
        ),
        (
            "Hydrometer.on_scale",
            given([("scale", Tree::from("gal")), ("calibrated_at", of(60.0, "deg_f"))]),
        ),
        (
            "Refractometer.compensated",
            given([("low", of(30.0, "deg_c")), ("high", of(10.0, "deg_c"))]),
        ),
        (
            "Hydrometer.two_point",
            given([
                ("instrument", float("brix")),
                ("low", check(67.0, 66.9)),
                ("high", check(0.2, 0.0)),
            ]),
        ),
        (
            "Thermometer.zeroed_in_boiling_water",
            given([("reading", of(211.0, "deg_c")), ("station", station(96.5))]),
        ),
        (
            "Thermometer.truth",
            given([("instrument", dial()), ("reading", of(217.0, "deg_c"))]),
        ),
        ("Thermometer.plain", given([("uncertainty", of(-1.0, "delta_c"))])),
        ("Thermometer.line", given([("line", line(0.998))])),
        (
            "Barometer.truth",
            given([("instrument", hung()), ("reading", of(30.02, "kpa"))]),
        ),
    ]
}

/// The fitted line of JCGM 100, H.3, but for its slope.
fn line(slope: f64) -> Tree {
    let row = |numbers: [f64; 2]| numbers.map(Tree::from).into_iter().collect::<Tree>();
    let covariance = [[8.3e-6, -1.8e-6], [-1.8e-6, 4.5e-7]];
    given([
        ("intercept", Tree::from(-0.1712)),
        ("slope", Tree::from(slope)),
        ("covariance", covariance.map(row).into_iter().collect()),
        ("residual_deviation", Tree::from(0.0035)),
        ("degrees_of_freedom", Tree::from(9.0)),
        ("reference", Tree::from(20.0)),
        ("low", Tree::from(21.521)),
        ("high", Tree::from(26.511)),
    ])
}
