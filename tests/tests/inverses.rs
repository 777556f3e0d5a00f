//! Inverses of water, air and sucrose: what went in comes out, at the corners, beside the limits and between; each
//! forward that has an inverse is monotone; boiling, osmotic pressure and freezing are one water activity.

use gauss_quad::GaussLegendre;
use proptest::prelude::*;
use sugaring::{
    Error, ErrorKind, Range, Relation, air,
    air::StationPressure,
    sucrose,
    sucrose::scales,
    units::{Scale, *},
    water,
};

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

fn station(kilopascal: f64) -> Result<StationPressure, Error> {
    StationPressure::measured(kpa(kilopascal))
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

fn at(range: &Range, share: f64) -> f64 {
    // The upper limit itself, which the sum may miss.
    if share >= 1.0 {
        range.high
    } else {
        range.low + share * (range.high - range.low)
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

fn is_monotone(name: &str, rises: bool, values: impl Iterator<Item = f64>) {
    let mut last = None;
    for value in values {
        assert!(value.is_finite(), "{name}");
        if let Some(last) = last {
            assert!(
                if rises { value > last } else { value < last },
                "{name}: {last} then {value}"
            );
        }
        last = Some(value);
    }
}

type Sweep = (
    &'static str,
    &'static Relation,
    usize,
    bool,
    fn(f64, &[f64]) -> Result<f64, Error>,
);

/// Relations of water that have no inverse, and whether they rise with the argument of that place.
fn sweeps_of_water() -> Vec<Sweep> {
    vec![
        ("latent_heat", &water::LATENT_HEAT, 0, false, |t, _| {
            Ok(water::latent_heat(deg_c(t))?.get::<joule_per_kg>())
        }),
        (
            "saturated_liquid_density",
            &water::SATURATED_LIQUID_DENSITY,
            0,
            false,
            |t, _| {
                // From 5 °C on: it is densest at 4.
                let warm = 5.0 + t * (373.946 - 5.0) / 373.946;
                Ok(water::saturated_liquid_density(deg_c(warm))?.get::<kg_per_m3>())
            },
        ),
        (
            "saturated_vapour_density",
            &water::SATURATED_VAPOUR_DENSITY,
            0,
            true,
            |t, _| Ok(water::saturated_vapour_density(deg_c(t))?.get::<kg_per_m3>()),
        ),
        ("enthalpy of water", &water::ENTHALPY, 0, true, |t, _| {
            Ok(water::enthalpy(deg_c(t))?.get::<joule_per_kg>())
        }),
        ("viscosity of water", &water::VISCOSITY, 0, false, |t, _| {
            Ok(water::viscosity(deg_c(t))?.get::<pascal_s>())
        }),
        (
            "thermal_conductivity of water",
            &water::THERMAL_CONDUCTIVITY,
            0,
            true,
            |t, _| Ok(water::thermal_conductivity(deg_c(t))?.get::<w_per_m_k>()),
        ),
    ]
}

/// Those of sucrose.
fn sweeps_of_sucrose() -> Vec<Sweep> {
    vec![
        ("sugar_per_volume", &sucrose::SUGAR_PER_VOLUME, 0, true, |b, o| {
            Ok(sucrose::sugar_per_volume(brix(b)?, deg_c(o[0]))?.get::<gram_per_litre>())
        }),
        ("specific_heat", &sucrose::SPECIFIC_HEAT, 0, false, |b, o| {
            Ok(sucrose::specific_heat(brix(b)?, deg_c(o[0]))?.get::<joule_per_kg_k>())
        }),
        ("enthalpy", &sucrose::ENTHALPY, 1, true, |t, o| {
            Ok(sucrose::enthalpy(brix(o[0])?, deg_c(t))?.get::<joule_per_kg>())
        }),
        ("viscosity by strength", &sucrose::VISCOSITY, 0, true, |b, o| {
            Ok(sucrose::viscosity(brix(b)?, deg_c(o[0]))?.get::<pascal_s>())
        }),
        ("viscosity by temperature", &sucrose::VISCOSITY, 1, false, |t, o| {
            Ok(sucrose::viscosity(brix(o[0])?, deg_c(t))?.get::<pascal_s>())
        }),
        (
            "viscosity_genotelle by strength",
            &sucrose::VISCOSITY_GENOTELLE,
            0,
            true,
            |b, o| Ok(sucrose::viscosity_genotelle(brix(b)?, deg_c(o[0]))?.get::<pascal_s>()),
        ),
        (
            "viscosity_genotelle by temperature",
            &sucrose::VISCOSITY_GENOTELLE,
            1,
            false,
            |t, o| Ok(sucrose::viscosity_genotelle(brix(o[0])?, deg_c(t))?.get::<pascal_s>()),
        ),
        ("weight_in_air", &sucrose::WEIGHT_IN_AIR, 0, true, |b, o| {
            Ok(sucrose::weight_in_air(brix(b)?, deg_c(o[0]))?.get::<kg_per_m3>())
        }),
        (
            "refractive_index by temperature",
            &sucrose::REFRACTIVE_INDEX,
            1,
            false,
            |t, o| sucrose::refractive_index(brix(o[0])?, deg_c(t)),
        ),
        (
            "thermal_conductivity",
            &sucrose::THERMAL_CONDUCTIVITY,
            0,
            false,
            |b, o| Ok(sucrose::thermal_conductivity(brix(b)?, deg_c(o[0]))?.get::<w_per_m_k>()),
        ),
        ("supersaturation", &sucrose::SUPERSATURATION, 0, true, |b, o| {
            sucrose::supersaturation(brix(b)?, deg_c(o[0]))
        }),
        ("water_activity", &sucrose::WATER_ACTIVITY, 0, false, |b, o| {
            sucrose::water_activity(brix(b)?, deg_c(o[0]))
        }),
        (
            "boiling_point_elevation",
            &sucrose::BOILING_POINT_ELEVATION,
            0,
            true,
            |b, o| Ok(sucrose::boiling_point_elevation(brix(b)?, station(o[0])?)?.get::<delta_c>()),
        ),
        (
            "pressure_from_boiling",
            &sucrose::PRESSURE_FROM_BOILING,
            1,
            true,
            |t, o| Ok(sucrose::pressure_from_boiling(brix(o[0])?, deg_c(t))?.get::<kpa>()),
        ),
    ]
}

#[test]
fn other_relations_are_monotone() {
    for (name, relation, index, rises, call) in sweeps_of_water().into_iter().chain(sweeps_of_sucrose()) {
        let range = &relation.inputs[index];
        let others: Vec<&Range> = relation.inputs.iter().filter(|other| *other != range).collect();
        for share in [0.0, 0.35, 0.775, 1.0] {
            let others: Vec<f64> = others.iter().map(|range| at(range, share)).collect();
            let values = (0..=2000).map(|n| call(at(range, f64::from(n) / 2000.0), &others).unwrap());
            is_monotone(name, rises, values);
        }
    }
}

const GAS: f64 = 8.314_462_618_153_24;
const WATER_MOLAR_MASS: f64 = 0.018_015_268;
const SUCROSE_MOLAR_MASS: f64 = 0.342_296_5;

/// °Brix of so many mol sucrose in a kg of water.
fn of_molality(molality: f64) -> Brix {
    brix(100.0 * molality * SUCROSE_MOLAR_MASS / (1.0 + molality * SUCROSE_MOLAR_MASS)).unwrap()
}

#[test]
fn dilute_solutions_are_ideal() {
    let molality = 1e-6;
    let weak = of_molality(molality);
    for celsius in [0.0, 4.0, 25.0, 50.0] {
        let coefficient = sucrose::osmotic_coefficient(weak, deg_c(celsius)).unwrap();
        assert!((coefficient - 1.0).abs() < 1e-6, "{celsius} {coefficient}");
        let density = water::density(deg_c(celsius)).unwrap().get::<kg_per_m3>();
        let ideal = GAS * (celsius + 273.15) * density;
        let pressure = sucrose::osmotic_pressure(of_molality(1e-7), deg_c(celsius))
            .unwrap()
            .get::<pa>();
        assert!((pressure / 1e-7 / ideal - 1.0).abs() < 1e-7, "{celsius} {pressure}");
    }
    // R T_f² M_w / ΔH.
    let cryoscopic = GAS * 273.15 * 273.15 * WATER_MOLAR_MASS / 6006.67;
    assert!((cryoscopic - 1.8606).abs() < 5e-5);
    let depression = -sucrose::freezing_temperature(of_molality(1e-4)).unwrap().get::<deg_c>();
    assert!((depression / 1e-4 / cryoscopic - 1.0).abs() < 1e-4, "{depression}");
    // M_w / (d ln p / dT), from the slope of the line itself; the ebullioscopic constant of real steam is 1.6 % higher.
    let station = StationPressure::measured(atm(1.0)).unwrap();
    let boils = water::saturation_temperature(atm(1.0)).unwrap().get::<deg_c>();
    let pressure = |celsius| water::saturation_pressure(deg_c(celsius)).unwrap().get::<pa>();
    let slope = (pressure(boils + 0.01) / pressure(boils - 0.01)).ln() / 0.02;
    let rise = sucrose::boiling_point_elevation(of_molality(1e-4), station)
        .unwrap()
        .get::<delta_c>();
    assert!((WATER_MOLAR_MASS / slope - 0.504_75).abs() < 5e-6);
    assert!((rise / 1e-4 * slope / WATER_MOLAR_MASS - 1.0).abs() < 1e-4, "{rise}");
}

fn ln_activity(strength: f64, celsius: f64) -> f64 {
    sucrose::water_activity(brix(strength).unwrap(), deg_c(celsius))
        .unwrap()
        .ln()
}

/// ln of the activity that ice keeps: heat of fusion, and the difference of specific heats of water and ice.
fn ln_ice(celsius: f64) -> f64 {
    let (heat, slope, bend, melts) = (6006.67, 38.24, -0.20, 273.15);
    let kelvin = celsius + melts;
    let a = heat - slope * melts + 0.5 * bend * melts * melts;
    let b = slope - bend * melts;
    (a * (1.0 / melts - 1.0 / kelvin) + b * (kelvin / melts).ln() + 0.5 * bend * (kelvin - melts)) / GAS
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

    /// Where the solution boils, its vapour pressure by the one activity is that of the air.
    #[test]
    fn boiling_is_the_same_activity(strength in 0.0..=85.0_f64, kilopascal in 50.0..=110.0_f64) {
        let air = station(kilopascal).unwrap();
        let boils = sucrose::boiling_temperature(brix(strength).unwrap(), air).unwrap();
        let line = water::saturation_pressure(boils).unwrap().get::<kpa>().ln();
        let off = line + ln_activity(strength, boils.get::<deg_c>()) - kilopascal.ln();
        prop_assert!(off.abs() < 1e-12, "{off}");
    }

    #[test]
    fn osmotic_pressure_is_the_same_activity(strength in 0.0..=60.0_f64, celsius in 0.0..=50.0_f64) {
        let density = water::density(deg_c(celsius)).unwrap().get::<kg_per_m3>();
        let ideal = -GAS * (celsius + 273.15) * ln_activity(strength, celsius) * density / WATER_MOLAR_MASS;
        let pressure = sucrose::osmotic_pressure(brix(strength).unwrap(), deg_c(celsius)).unwrap().get::<pa>();
        // The logarithm of a number near 1 is known to 1e-16 only.
        let known = 1e-12 * pressure + 1e-15 * GAS * 323.15 * 1000.0 / WATER_MOLAR_MASS;
        prop_assert!((pressure - ideal * (1.0 + 0.5 * 4.6e-10 * ideal)).abs() < known, "{pressure}");
    }

    #[test]
    fn freezing_is_the_same_activity(strength in 0.0..=60.0_f64) {
        let freezes = sucrose::freezing_temperature(brix(strength).unwrap()).unwrap().get::<deg_c>();
        let off = ln_activity(strength, freezes) - ln_ice(freezes);
        prop_assert!(off.abs() < 1e-12, "{off}");
    }

    #[test]
    fn osmotic_coefficient_is_the_same_activity(strength in 1e-3..=85.0_f64, celsius in -15.0..=132.0_f64) {
        let molality = strength / 100.0 / ((1.0 - strength / 100.0) * SUCROSE_MOLAR_MASS);
        let found = sucrose::osmotic_coefficient(brix(strength).unwrap(), deg_c(celsius)).unwrap();
        let wanted = -ln_activity(strength, celsius) / (molality * WATER_MOLAR_MASS);
        prop_assert!((found - wanted).abs() < 1e-12 + 2e-16 / (molality * WATER_MOLAR_MASS), "{found} {wanted}");
    }

    /// Gibbs and Helmholtz: h^E = −R T² ∂ ln a_w / ∂T.
    #[test]
    fn excess_enthalpy_is_the_slope_of_the_activity(strength in 0.0..=85.0_f64, celsius in -14.9..=131.9_f64) {
        let excess = sucrose::excess_enthalpy_of_water(brix(strength).unwrap(), deg_c(celsius)).unwrap();
        let slope = (ln_activity(strength, celsius + 0.05) - ln_activity(strength, celsius - 0.05)) / 0.1;
        let wanted = -GAS * (celsius + 273.15).powi(2) * slope / WATER_MOLAR_MASS;
        prop_assert!((excess.get::<joule_per_kg>() - wanted).abs() < 0.1, "{excess:?} {wanted}");
    }

    /// q = L(t_sat) − Δh of the water up to T_b + c_p,v (T_b − t_sat) − L₁/M_w, the last by Gibbs and Helmholtz from the
    /// slope of the activity. The water's enthalpy at 0.1 MPa stands for that at saturation.
    #[test]
    fn heat_of_evaporation_is_what_its_parts_say(strength in 0.0..=85.0_f64, kilopascal in 50.0..=80.0_f64) {
        let air = station(kilopascal).unwrap();
        let boils = sucrose::boiling_temperature(brix(strength).unwrap(), air).unwrap().get::<deg_c>();
        prop_assume!(boils < 109.0);
        let water_boils = water::saturation_temperature(kpa(kilopascal)).unwrap().get::<deg_c>();
        let latent = water::latent_heat(deg_c(water_boils)).unwrap().get::<joule_per_kg>();
        let enthalpy = |celsius| water::enthalpy(deg_c(celsius)).unwrap().get::<joule_per_kg>();
        let slope = (ln_activity(strength, boils + 0.05) - ln_activity(strength, boils - 0.05)) / 0.1;
        let dilution = -GAS * (boils + 273.15).powi(2) * slope / WATER_MOLAR_MASS;
        let superheat = 2030.0 * (boils - water_boils);
        let parts = latent - (enthalpy(boils) - enthalpy(water_boils)) + superheat - dilution;
        let heat = sucrose::heat_of_evaporation(brix(strength).unwrap(), air).unwrap().get::<joule_per_kg>();
        prop_assert!((heat / parts - 1.0).abs() < 5e-5, "{strength} {kilopascal}: {heat} {parts}");
    }

    /// Quadrature of the specific heat; the printed enthalpy of water has its slope within 2e-5 J/(kg K).
    #[test]
    fn enthalpy_is_the_integral_of_the_specific_heat(
        strength in 0.0..=80.0_f64,
        from in 0.0..=110.0_f64,
        to in 0.0..=110.0_f64,
    ) {
        let rule = GaussLegendre::new(30.try_into().unwrap());
        let b = brix(strength).unwrap();
        let water_sum = rule.integrate(from, to, |t| water::specific_heat(deg_c(t)).unwrap().get::<joule_per_kg_k>());
        let enthalpy = |t| water::enthalpy(deg_c(t)).unwrap().get::<joule_per_kg>();
        prop_assert!((enthalpy(to) - enthalpy(from) - water_sum).abs() < 3e-5 * (to - from).abs() + 1e-6);
        let sum = rule.integrate(from, to, |t| sucrose::specific_heat(b, deg_c(t)).unwrap().get::<joule_per_kg_k>());
        let enthalpy = |t| sucrose::enthalpy(b, deg_c(t)).unwrap().get::<joule_per_kg>();
        prop_assert!((enthalpy(to) - enthalpy(from) - sum).abs() < 3e-5 * (to - from).abs() + 1e-6);
        let heat = sucrose::heat_to_warm(b, deg_c(from), deg_c(to)).unwrap().get::<joule_per_kg>();
        prop_assert!((heat - (enthalpy(to) - enthalpy(from))).abs() < 1e-9 * 460e3);
    }
}
