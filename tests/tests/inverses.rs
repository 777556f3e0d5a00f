//! Inverses of water, air and sucrose: what went in comes out, at the corners, beside the limits and between.

use proptest::prelude::*;
use sugaring::{
    Error, ErrorKind, Range, Relation, air,
    air::StationPressure,
    sucrose,
    sucrose::scales,
    units::{Scale, *},
    water,
};
use sugaring_tests::sweep::{at, is_monotone, station};

/// A function and its inverse, in the units people read; `others` are the arguments that both have.
struct Pair {
    name: &'static str,
    range: &'static Range,
    others: Vec<&'static Range>,
    forward: fn(f64, &[f64]) -> Result<f64, Error>,
    back: fn(f64, &[f64]) -> Result<f64, Error>,
    rises: bool,
    /// The forward has results that the inverse does not take: reports that nobody ever read.
    is_wider: bool,
    /// The inverse has results beyond the forward's range.
    is_open: bool,
}

fn pair(
    name: &'static str,
    relation: &'static Relation,
    forward: fn(f64, &[f64]) -> Result<f64, Error>,
    back: fn(f64, &[f64]) -> Result<f64, Error>,
    rises: bool,
) -> Pair {
    let [range, others @ ..] = relation.inputs else {
        panic!("{name} has no arguments");
    };
    Pair {
        name,
        range,
        others: others.iter().collect(),
        forward,
        back,
        rises,
        is_wider: false,
        is_open: false,
    }
}

fn pairs() -> Vec<Pair> {
    let scales = [
        on_scale::<baume_20_20>(&scales::BAUME_20_20),
        on_scale::<baume_60_60_f>(&scales::BAUME_60_60_F),
        on_scale::<relative_density_20_20>(&scales::RELATIVE_DENSITY_20_20),
        on_scale::<relative_density_60_60_f>(&scales::RELATIVE_DENSITY_60_60_F),
        on_scale::<relative_density_20_4>(&scales::RELATIVE_DENSITY_20_4),
        on_scale::<apparent_relative_density_20_20>(&scales::APPARENT_RELATIVE_DENSITY_20_20),
    ];
    of_water_and_air()
        .into_iter()
        .chain(of_sucrose())
        .chain(scales)
        .collect()
}

fn on_scale<S: Scale>(relation: &'static Relation) -> Pair {
    let forward = |b, _: &[f64]| Ok(sucrose::on_scale::<S>(brix(b)?)?.get::<S>());
    let back = |mark, _: &[f64]| Ok(sucrose::brix_from_scale(S::of_si(mark))?.get());
    pair(relation.name, relation, forward, back, true)
}

fn of_water_and_air() -> Vec<Pair> {
    let setting = pair(
        "altimeter_setting",
        &air::ALTIMETER_SETTING,
        |p, o| Ok(air::altimeter_setting(station(p)?, metre(o[0]))?.get::<kpa>()),
        |q, o| {
            Ok(StationPressure::from_altimeter_setting(kpa(q), metre(o[0]))?
                .pressure()
                .get::<kpa>())
        },
        true,
    );
    let sea_level = pair(
        "sea_level_pressure",
        &air::SEA_LEVEL_PRESSURE,
        |p, o| Ok(air::sea_level_pressure(station(p)?, metre(o[0]), deg_c(o[1]))?.get::<kpa>()),
        |p, o| {
            Ok(StationPressure::from_sea_level(kpa(p), metre(o[0]), deg_c(o[1]))?
                .pressure()
                .get::<kpa>())
        },
        true,
    );
    vec![
        pair(
            "saturation_pressure",
            &water::SATURATION_PRESSURE,
            |t, _| Ok(water::saturation_pressure(deg_c(t))?.get::<kpa>()),
            |p, _| Ok(water::saturation_temperature(kpa(p))?.get::<deg_c>()),
            true,
        ),
        pair(
            "pressure_at_altitude",
            &air::PRESSURE_AT_ALTITUDE,
            |z, _| Ok(air::pressure_at_altitude(metre(z))?.get::<kpa>()),
            |p, _| Ok(air::altitude_at_pressure(kpa(p))?.get::<metre>()),
            false,
        ),
        pair(
            "boiling water",
            &air::STATION_PRESSURE,
            |p, _| Ok(water::saturation_temperature(kpa(p))?.get::<deg_c>()),
            |t, _| Ok(StationPressure::from_boiling_water(deg_c(t))?.pressure().get::<kpa>()),
            true,
        ),
        Pair {
            is_wider: true,
            ..setting
        },
        Pair {
            is_wider: true,
            ..sea_level
        },
    ]
}

fn of_sucrose() -> Vec<Pair> {
    vec![
        pair(
            "density",
            &sucrose::DENSITY,
            |b, o| Ok(sucrose::density(brix(b)?, deg_c(o[0]))?.get::<kg_per_m3>()),
            |d, o| Ok(sucrose::brix_from_density(kg_per_m3(d), deg_c(o[0]))?.get()),
            true,
        ),
        pair(
            "refractive_index",
            &sucrose::REFRACTIVE_INDEX,
            |b, o| sucrose::refractive_index(brix(b)?, deg_c(o[0])),
            |n, o| Ok(sucrose::brix_from_refractive_index(n, deg_c(o[0]))?.get()),
            true,
        ),
        pair(
            "osmotic_pressure",
            &sucrose::OSMOTIC_PRESSURE,
            |b, o| Ok(sucrose::osmotic_pressure(brix(b)?, deg_c(o[0]))?.get::<bar>()),
            |p, o| Ok(sucrose::brix_from_osmotic_pressure(bar(p), deg_c(o[0]))?.get()),
            true,
        ),
        pair(
            "boiling_temperature",
            &sucrose::BOILING_TEMPERATURE,
            |b, o| Ok(sucrose::boiling_temperature(brix(b)?, station(o[0])?)?.get::<deg_c>()),
            |t, o| Ok(sucrose::brix_from_boiling(deg_c(t), station(o[0])?)?.get()),
            true,
        ),
        Pair {
            range: &sucrose::BOILING_TEMPERATURE.inputs[1],
            others: vec![&sucrose::BOILING_TEMPERATURE.inputs[0]],
            is_open: true,
            ..pair(
                "boiling_temperature by pressure",
                &sucrose::BOILING_TEMPERATURE,
                |p, o| Ok(sucrose::boiling_temperature(brix(o[0])?, station(p)?)?.get::<deg_c>()),
                |t, o| Ok(sucrose::pressure_from_boiling(brix(o[0])?, deg_c(t))?.get::<kpa>()),
                true,
            )
        },
        pair(
            "freezing_temperature",
            &sucrose::FREEZING_TEMPERATURE,
            |b, _| Ok(sucrose::freezing_temperature(brix(b)?)?.get::<deg_c>()),
            |t, _| Ok(sucrose::brix_from_freezing(deg_c(t))?.get()),
            false,
        ),
        pair(
            "solubility",
            &sucrose::SOLUBILITY,
            |t, _| Ok(sucrose::solubility(deg_c(t))?.get()),
            |b, _| Ok(sucrose::saturation_temperature(brix(b)?)?.get::<deg_c>()),
            true,
        ),
    ]
}

impl Pair {
    /// What comes back of `x`, which must be within 1e-9, of its size where that is above 1.
    fn round(&self, x: f64, others: &[f64]) -> Option<f64> {
        let there = (self.forward)(x, others).unwrap_or_else(|error| panic!("{} {x} {others:?}: {error}", self.name));
        match (self.back)(there, others) {
            Ok(back) => {
                let off = (back - x).abs() / x.abs().max(1.0);
                assert!(off <= 1e-9, "{} {x} {others:?}: {there} gives {back}", self.name);
                Some(off)
            }
            Err(error) => {
                let is_refused = self.is_wider && error.kind() == ErrorKind::OutOfRange;
                assert!(is_refused, "{} {x} {others:?}: {error}", self.name);
                None
            }
        }
    }

    /// Corners, and what lies between, of the other arguments.
    fn all_others(&self) -> Vec<Vec<f64>> {
        self.others.iter().fold(vec![Vec::new()], |all, range| {
            let longer = |others: &Vec<f64>, share| [others.as_slice(), &[at(range, share)]].concat();
            let shares = [0.0, 0.35, 0.775, 1.0];
            all.iter()
                .flat_map(|others| shares.map(|share| longer(others, share)))
                .collect()
        })
    }
}

/// The number `steps` units in the last place above `x`.
fn steps(x: f64, steps: i32) -> f64 {
    (0..steps.abs()).fold(x, |x, _| if steps > 0 { x.next_up() } else { x.next_down() })
}

/// More than 1e5 points in all, the corners among them.
#[test]
fn what_went_in_comes_out() {
    const POINTS: u32 = 200_000;
    let pairs = pairs();
    let sum: u32 = pairs
        .iter()
        .map(|pair| u32::try_from(pair.all_others().len()).unwrap())
        .sum();
    let (mut judged, mut most) = (0, 0.0_f64);
    for pair in &pairs {
        let mut of_pair = 0.0_f64;
        for others in pair.all_others() {
            let each = POINTS / sum;
            for n in 0..=each {
                if let Some(off) = pair.round(at(pair.range, f64::from(n) / f64::from(each)), &others) {
                    of_pair = of_pair.max(off);
                    judged += 1;
                }
            }
        }
        println!("inverses: {} comes back within {of_pair:.1e}", pair.name);
        most = most.max(of_pair);
    }
    println!(
        "inverses: {judged} points of {} pairs come back within {most:.1e}",
        pairs.len()
    );
    assert!(judged > 100_000, "{judged}");
}

/// A hair inside and outside of each limit, the other arguments at their corners.
#[test]
fn limits_come_back() {
    for pair in pairs() {
        for others in pair.all_others() {
            for limit in [pair.range.low, pair.range.high] {
                let si = pair.range.unit.to_si(limit);
                for n in [-8, -2, -1, 0, 1, 2, 8] {
                    let x = pair.range.unit.from_si(steps(si, n));
                    match (pair.forward)(x, &others) {
                        Ok(_) => {
                            pair.round(x, &others);
                        }
                        // Eight steps outside are outside.
                        Err(error) => {
                            assert_eq!(error.kind(), ErrorKind::OutOfRange, "{error}");
                            let is_outside = x < pair.range.low || x > pair.range.high;
                            assert!(is_outside && n.abs() == 8, "{} {x} {others:?}: {error}", pair.name);
                        }
                    }
                }
            }
        }
    }
}

/// The inverse a hair beside the values of the limits: the limit, or out of its range, and nothing else.
#[test]
fn values_of_the_limits_come_back() {
    for pair in pairs() {
        for others in pair.all_others() {
            for limit in [pair.range.low, pair.range.high] {
                let value = (pair.forward)(limit, &others).unwrap();
                for n in [-8, -2, -1, 0, 1, 2, 8] {
                    match (pair.back)(steps(value, n), &others) {
                        Ok(x) => {
                            let off = (x - limit).abs() / limit.abs().max(1.0);
                            assert!(off <= 1e-9, "{} {limit} {others:?} {n}: {x}", pair.name);
                            let again = (pair.forward)(x, &others);
                            assert!(pair.is_open || again.is_ok(), "{} {x}: {again:?}", pair.name);
                        }
                        Err(error) => {
                            let is_refused = error.kind() == ErrorKind::OutOfRange && (n.abs() == 8 || pair.is_wider);
                            assert!(is_refused, "{} {limit} {others:?} {n}: {error}", pair.name);
                        }
                    }
                }
            }
        }
    }
}

#[test]
fn forwards_with_an_inverse_are_monotone() {
    for pair in pairs() {
        for others in pair.all_others() {
            let values = (0..=2000).map(|n| (pair.forward)(at(pair.range, f64::from(n) / 2000.0), &others).unwrap());
            is_monotone(pair.name, pair.rises, values);
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_value_comes_back(
        which in 0..pairs().len(),
        share in 0.0..=1.0_f64,
        others in prop::array::uniform2(0.0..=1.0_f64),
    ) {
        let pair = &pairs()[which];
        let others: Vec<f64> = pair.others.iter().zip(others).map(|(range, share)| at(range, share)).collect();
        pair.round(at(pair.range, share), &others);
    }

    /// The other way round: a value of the inverse's range.
    #[test]
    fn any_result_comes_back(
        which in 0..pairs().len(),
        share in 0.0..=1.0_f64,
        others in prop::array::uniform2(0.0..=1.0_f64),
    ) {
        let pair = &pairs()[which];
        let others: Vec<f64> = pair.others.iter().zip(others).map(|(range, share)| at(range, share)).collect();
        let ends = [pair.range.low, pair.range.high].map(|x| (pair.forward)(x, &others).unwrap());
        let value = ends[0] + share * (ends[1] - ends[0]);
        if let Ok(x) = (pair.back)(value, &others) {
            let again = (pair.forward)(x, &others).unwrap();
            prop_assert!((again - value).abs() <= 1e-9 * value.abs().max(1.0), "{} {value}: {x} gives {again}", pair.name);
        } else {
            prop_assert!(pair.is_wider, "{} {value}", pair.name);
        }
    }
}
