//! The stages against the balances plainly evaluated, and what every boil must keep.

use super::*;
use proptest::prelude::*;

const DEMO: PanShape = PanShape {
    area: 0.7442,
    running_depth: 0.05,
    least_depth: 0.025,
};
const FIRE: f64 = 22_337.0;

fn lot(mass: f64, brix: f64, celsius: f64) -> Lot {
    Lot::trusted(mass, brix, celsius + 273.15)
}

fn demo(shape: &PanShape, feed: &Lot, left: Option<&Lot>, target: f64, fineness: Fineness) -> Batch {
    batch_at(shape, FIRE, feed, left, target, 96_500.0, fineness).unwrap()
}

/// The balances as they are written, in many small steps of °Brix and straight from the relations.
fn plainly(feed: &Lot, target: f64) -> [f64; 3] {
    const STEPS: i32 = 4000;
    let boils = |brix: f64| sucrose::boiling_at(brix, 96_500.0).unwrap();
    let density = |brix: f64| sucrose::density_at(brix, boils(brix));
    let latent = crate::water::latent_heat_at(boils(0.0));
    let warm = |to: f64| sucrose::enthalpy_at(feed.brix, boils(to)) - sucrose::enthalpy_at(feed.brix, feed.kelvin);
    let (running, least) = (DEMO.area * DEMO.running_depth, DEMO.area * DEMO.least_depth);
    let filled = |volume: f64| {
        let over = |brix: f64| volume * density(brix) * brix / 100.0 - feed.sugar_si();
        solve::root(over, feed.brix, target, 0.0).unwrap().at
    };
    let (second, third) = (filled(running), filled(least));
    let first = running * density(feed.brix);
    // Simpson's rule with the differentials of the relations themselves.
    let integral = |low: f64, high: f64, part: &dyn Fn(f64, f64) -> f64| {
        let width = (high - low) / f64::from(STEPS);
        let cell = |i: i32| {
            let from = low + width * f64::from(i);
            let at = |x: f64| part(from + x * width, 1e-3);
            (at(0.0) + 4.0 * at(0.5) + at(1.0)) * width / 6.0
        };
        (0..STEPS).map(cell).sum::<f64>()
    };
    let slope = |f: &dyn Fn(f64) -> f64, x: f64, h: f64| {
        (8.0 * (f(x + h) - f(x - h)) - (f(x + 2.0 * h) - f(x - 2.0 * h))) / (12.0 * h)
    };
    let top_up = integral(feed.brix, second, &|brix, h| {
        let fed = slope(&|b| running * density(b) * b / feed.brix, brix, h);
        let mass = slope(&|b| running * density(b), brix, h);
        let climb = slope(&boils, brix, h) * sucrose::specific_heat_at(brix, boils(brix));
        latent * (fed - mass) + warm(brix) * fed + running * density(brix) * climb
    });
    let boil_down = integral(second, third, &|brix, h| {
        let mass = 100.0 * feed.sugar_si() / brix;
        let climb = slope(&boils, brix, h) * sucrose::specific_heat_at(brix, boils(brix));
        latent * mass / brix + mass * climb
    });
    [first * warm(feed.brix), top_up, boil_down]
}

#[test]
fn stages_are_the_balances_plainly_evaluated() {
    for feed in [
        lot(132.166, 4.0, 3.716),
        lot(267.074, 1.979_47, 3.716),
        lot(60.0, 9.0, 20.0),
    ] {
        let plain = plainly(&feed, 66.9);
        for (fineness, close) in [(Fineness::Full, 1e-9), (Fineness::Draw, 1e-5)] {
            let boil = demo(&DEMO, &feed, None, 66.9, fineness);
            let heats: Vec<f64> = boil.stages().map(|stage| stage.heat).collect();
            assert_eq!(heats.len(), 3);
            for (ours, plain) in heats.iter().zip(plain) {
                assert!((ours / plain - 1.0).abs() < close, "{fineness:?} {ours} {plain}");
            }
        }
    }
}

#[test]
fn what_stood_in_the_pan_joins_the_first_fill() {
    let (feed, left) = (lot(132.166, 4.0, 3.716), lot(20.0, 12.0, 5.0));
    let boil = demo(&DEMO, &feed, Some(&left), 66.9, Fineness::Full);
    let first = boil.stages().next().unwrap();
    assert!((first.mass - first.fed - 20.0).abs() < 1e-9);
    assert!((first.depth - 0.05).abs() < 1e-12);
    assert!((boil.mass * boil.ends_at / 100.0 - (132.166 * 0.04 + 2.4)).abs() < 1e-12);
}

#[test]
fn the_texts_of_the_limits() {
    let text = |feed: &Lot, left: Option<&Lot>| {
        batch_at(&DEMO, FIRE, feed, left, 66.9, 96_500.0, Fineness::Full)
            .unwrap_err()
            .to_string()
    };
    let stands = Lot::of_volume(
        crate::units::litre(40.0),
        crate::units::brix(12.0).unwrap(),
        crate::units::deg_c(5.0),
    );
    assert_eq!(
        text(&lot(100.0, 2.0, 4.0), Some(&stands.unwrap())),
        "left_in_pan.volume = 40 L does not fit running_depth = 50 mm; hot it is 41.74 L and the pan holds \
         37.21 L: draw some off first"
    );
    assert_eq!(
        text(&lot(0.5, 2.0, 4.0), Some(&lot(43.0, 68.0, 50.0))),
        "left_in_pan.brix = 68 °Bx does not fit to_brix = 66.9 °Bx; the pan is full at 67.24 °Bx: draw it off first"
    );
    assert_eq!(
        text(&lot(5.0, 2.0, 4.0), Some(&lot(5.0, 8.0, 4.0))),
        "least_depth = 25 mm cannot be kept; 4.961 L of sap, with what is in it, stand 13.74 mm deep in this pan \
         when hot: use a smaller pan, or collect 13 L"
    );
}

#[test]
fn a_small_pan_draws_off_while_it_is_fed() {
    let shape = PanShape { area: 0.1, ..DEMO };
    let feed = lot(300.0, 8.0, 4.0);
    let boil = demo(&shape, &feed, None, 66.9, Fineness::Full);
    let kinds: Vec<StageKind> = boil.stages().map(|stage| stage.kind).collect();
    assert_eq!(kinds, [StageKind::HeatUp, StageKind::TopUp, StageKind::DrawOff]);
    assert!(boil.finishes);
    let drawn: f64 = boil.stages().map(|stage| stage.drawn).sum();
    let last = boil.stages().last().unwrap();
    assert!((drawn + last.mass - boil.mass).abs() < 1e-9);
    assert!((boil.water + boil.mass - 300.0).abs() < 1e-9);
}

#[test]
fn a_level_that_must_not_fall_ends_with_the_tank() {
    let shape = PanShape {
        least_depth: 0.05,
        ..DEMO
    };
    let boil = demo(&shape, &lot(132.166, 4.0, 3.716), None, 66.9, Fineness::Full);
    assert!(boil.stages().all(|stage| stage.kind != StageKind::BoilDown));
    assert!((boil.ends_at - 14.0158).abs() < 1e-3);
}

#[test]
fn hot_remains_save_fire() {
    // As much as the pan takes, boiling; a spoon of hot feed: no heat is needed, some is left over.
    let left = lot(37.0, 30.0, 99.0);
    let boil = demo(&DEMO, &lot(0.5, 29.0, 98.0), Some(&left), 66.9, Fineness::Full);
    for stage in boil.stages() {
        let parts = stage.evaporation + stage.feed_warming + stage.pan_warming;
        assert!(stage.heat >= 0.0 && (stage.heat - parts).abs() < 1e-9 * boil.heat);
    }
}

prop_compose! {
    fn any_boil()(
        area in 0.05..4.0_f64, running in 0.02..0.2_f64, least_share in 0.05..1.0_f64, fill in 1.15..40.0_f64,
        brix in 0.5..30.0_f64, celsius in 0.0..90.0_f64, target in 50.0..70.0_f64, pascal in 6e4..10.5e4_f64,
        heat in 1e3..1e6_f64, stands in 0.0..0.9_f64, strength in 0.5..40.0_f64, with_left in any::<bool>(),
    ) -> (PanShape, f64, Lot, Option<Lot>, f64, f64) {
        let shape = PanShape { area, running_depth: running, least_depth: running * least_share };
        let feed = lot(area * running * least_share * 1000.0 * fill, brix, celsius);
        let left = with_left.then(|| lot(area * running * stands * 960.0, strength, celsius));
        (shape, heat, feed, left, target, pascal)
    }
}

proptest! {
    #[test]
    fn nothing_is_lost((shape, heat, feed, left, target, pascal) in any_boil()) {
        let boil = batch_at(&shape, heat, &feed, left.as_ref(), target, pascal, Fineness::Full).unwrap();
        let nothing = lot(0.0, 1.0, 20.0);
        let left = left.unwrap_or(nothing);
        let (mass, sugar) = (feed.mass + left.mass, feed.sugar_si() + left.sugar_si());
        prop_assert!(((boil.water + boil.mass) / mass - 1.0).abs() < 1e-12);
        prop_assert!((boil.mass * boil.ends_at / 100.0 / sugar - 1.0).abs() < 1e-12);
        let fed: f64 = boil.stages().map(|stage| stage.fed).sum();
        prop_assert!((fed / feed.mass - 1.0).abs() < 1e-12);
        let (mut before, mut mass) = (left.mass, 0.0);
        for stage in boil.stages() {
            prop_assert!(stage.duration >= 0.0 && stage.water >= 0.0 && stage.drawn >= 0.0);
            prop_assert!(stage.depth <= shape.running_depth * (1.0 + 1e-9));
            let after = before + stage.fed - stage.water - stage.drawn;
            prop_assert!((stage.mass / after - 1.0).abs() < 1e-11);
            prop_assert!((stage.duration * heat - stage.heat).abs() <= 1e-9 * boil.heat);
            let parts = stage.evaporation + stage.feed_warming + stage.pan_warming;
            prop_assert!((stage.heat - parts).abs() <= 1e-9 * boil.heat);
            prop_assert!((stage.evaporation - boil.latent_heat * stage.water).abs() <= 1e-9 * boil.heat);
            (before, mass) = (after, stage.mass);
        }
        let last = boil.stages().last().unwrap();
        prop_assert!(last.depth >= shape.least_depth * (1.0 - 1e-9));
        prop_assert!(mass <= boil.mass * (1.0 + 1e-9));
        prop_assert!((boil.heat - boil.duration * heat).abs() <= 1e-9 * boil.heat);
    }

    #[test]
    fn draws_are_close((shape, heat, feed, left, target, pascal) in any_boil()) {
        let at = |fineness| batch_at(&shape, heat, &feed, left.as_ref(), target, pascal, fineness).unwrap();
        let (full, draw) = (at(Fineness::Full), at(Fineness::Draw));
        prop_assert!((draw.duration / full.duration - 1.0).abs() < 2e-5);
        prop_assert!((draw.ends_at / full.ends_at - 1.0).abs() < 2e-5);
    }

    #[test]
    fn more_heat_is_never_later((shape, heat, feed, left, target, pascal) in any_boil(), more in 1.0..2.0_f64) {
        let hours = |heat| batch_at(&shape, heat, &feed, left.as_ref(), target, pascal, Fineness::Draw).unwrap().duration;
        prop_assert!(hours(heat * more) <= hours(heat) * (1.0 + 1e-12));
    }

    #[test]
    fn warmer_feed_is_never_later((shape, heat, feed, left, target, pascal) in any_boil(), more in 0.0..5.0_f64) {
        let hours = |kelvin| {
            let feed = Lot { kelvin, ..feed };
            // Less of a hot fill is weighed out for the same level; what is boiled stays the same.
            batch_at(&shape, heat, &feed, left.as_ref(), target, pascal, Fineness::Full).unwrap().duration
        };
        prop_assert!(hours(feed.kelvin + more) <= hours(feed.kelvin) * (1.0 + 1e-12));
    }

    #[test]
    fn pan_fire_and_lot_scale_together((shape, heat, feed, left, target, pascal) in any_boil(), k in 0.1..10.0_f64) {
        let hours = |k: f64| {
            let shape = PanShape { area: shape.area * k, ..shape };
            let scaled = |lot: Lot| Lot { mass: lot.mass * k, ..lot };
            let left = left.map(scaled);
            batch_at(&shape, heat * k, &scaled(feed), left.as_ref(), target, pascal, Fineness::Full).unwrap().duration
        };
        prop_assert!((hours(k) / hours(1.0) - 1.0).abs() < 1e-9);
    }

    #[test]
    fn what_must_be_collected_is_enough(
        share in 0.05..0.999_f64, brix in 0.5..30.0_f64, celsius in 0.0..40.0_f64, area in 0.05..4.0_f64,
    ) {
        let shape = PanShape { area, ..DEMO };
        let at = |litres: f64| {
            let mass = litres / 1000.0 * sucrose::density_at(brix, celsius + 273.15);
            batch_at(&shape, FIRE, &lot(mass, brix, celsius), None, 66.9, 96_500.0, Fineness::Full)
        };
        let error = at(share * area * 25.0 * 0.9).unwrap_err().to_string();
        let (_, enough) = error.rsplit_once("collect ").unwrap();
        let litres: f64 = enough.strip_suffix(" L").unwrap().parse().unwrap();
        prop_assert!(at(litres).is_ok(), "{error}");
    }
}
