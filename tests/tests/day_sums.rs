//! The sums of a day: whatever goes in, a plan or a typed error comes out, and what goes in comes out again.
//!
//! `SUGARING_CASES` sets the number of arbitrary days (default 2000).

use proptest::prelude::*;
use sugaring::{
    day::{self, DayInputs, DayPlan},
    form::Tree,
    sucrose,
    units::*,
    water,
};

fn cases(usual: u32) -> ProptestConfig {
    let cases = std::env::var("SUGARING_CASES").ok().and_then(|n| n.parse().ok());
    ProptestConfig {
        cases: cases.unwrap_or(usual),
        failure_persistence: None,
        ..ProptestConfig::default()
    }
}

/// Mostly a number that makes sense there, sometimes any number at all.
fn number(low: f64, high: f64) -> impl Strategy<Value = f64> {
    prop_oneof![
        40 => low..=high,
        1 => Just(low),
        1 => Just(high),
        1 => any::<f64>(),
        1 => prop_oneof![
            Just(f64::NAN), Just(f64::INFINITY), Just(f64::NEG_INFINITY), Just(0.0), Just(-0.0),
            Just(f64::MIN_POSITIVE), Just(5e-324), Just(f64::MAX), Just(-1.0), Just(1e9)
        ],
    ]
}

fn quantity(low: f64, high: f64, unit: &'static str) -> BoxedStrategy<Tree> {
    (
        number(low, high),
        proptest::option::weighted(0.1, number(0.0, 0.1 * high.abs())),
    )
        .prop_map(move |(value, uncertainty)| {
            let mut map = vec![("value", Tree::Number(value))];
            if !unit.is_empty() {
                map.push(("unit", Tree::Text(unit.to_owned())));
            }
            if let Some(u) = uncertainty {
                map.push(("uncertainty", Tree::Number(u)));
            }
            Tree::map(map)
        })
        .boxed()
}

fn maybe(tree: impl Strategy<Value = Tree> + 'static) -> BoxedStrategy<Option<Tree>> {
    proptest::option::of(tree).boxed()
}

fn always(tree: impl Strategy<Value = Tree> + 'static) -> BoxedStrategy<Option<Tree>> {
    tree.prop_map(Some).boxed()
}

/// A map of the keys that are there.
fn map(entries: Vec<(&'static str, BoxedStrategy<Option<Tree>>)>) -> BoxedStrategy<Tree> {
    let (keys, values): (Vec<_>, Vec<_>) = entries.into_iter().unzip();
    values
        .prop_map(move |values| {
            let there = keys.iter().zip(values).filter_map(|(key, value)| Some((*key, value?)));
            Tree::map(there)
        })
        .boxed()
}

fn one(key: &'static str, tree: BoxedStrategy<Tree>) -> BoxedStrategy<Tree> {
    tree.prop_map(move |tree| Tree::map([(key, tree)])).boxed()
}

fn air() -> BoxedStrategy<Tree> {
    prop_oneof![
        one("altitude", quantity(0.0, 1500.0, "m")),
        one("station_pressure", quantity(85.0, 104.0, "kPa")),
        one("water_boils_at", quantity(205.0, 212.0, "°F")),
        map(vec![
            ("altimeter_setting", always(quantity(29.0, 31.0, "inHg"))),
            ("altitude", always(quantity(0.0, 800.0, "m"))),
        ]),
        map(vec![
            ("sea_level_pressure", always(quantity(990.0, 1030.0, "hPa"))),
            ("altitude", always(quantity(0.0, 800.0, "m"))),
            ("air_temperature", maybe(quantity(-10.0, 15.0, "°C"))),
        ]),
    ]
    .boxed()
}

fn sap() -> BoxedStrategy<Tree> {
    let lot = map(vec![
        ("volume", always(quantity(20.0, 2000.0, "L"))),
        ("brix", always(quantity(0.8, 6.0, ""))),
        ("temperature", always(quantity(0.0, 15.0, "°C"))),
    ]);
    proptest::collection::vec(lot, 1..4).prop_map(Tree::List).boxed()
}

fn membrane() -> BoxedStrategy<Tree> {
    let element = map(vec![
        ("flow", always(quantity(0.2, 10.0, "m³/d"))),
        ("pressure", always(quantity(50.0, 225.0, "psi gauge"))),
        ("temperature", always(quantity(25.0, 25.0, "°C"))),
        ("salt", always(quantity(250.0, 2000.0, "mg/L"))),
        ("recovery", always(quantity(0.08, 0.5, ""))),
        ("rejection", always(quantity(0.9, 0.995, ""))),
        ("permeance", maybe(quantity(3.0, 60.0, "L/h/bar"))),
    ]);
    let until = prop_oneof![
        one("brix", quantity(2.0, 15.0, "")),
        one("volume", quantity(10.0, 500.0, "L")),
        one("recovery", quantity(0.1, 0.85, "")),
        one("duration", quantity(0.2, 8.0, "h")),
    ];
    let run = prop_oneof![
        3 => one("recirculate_until", until.boxed()),
        1 => one("single_pass", one("recovery", quantity(0.1, 0.8, ""))),
    ];
    map(vec![
        ("element", always(element)),
        ("parallel", maybe((1u8..5).prop_map(|n| Tree::Number(f64::from(n))))),
        ("series", maybe((1u8..3).prop_map(|n| Tree::Number(f64::from(n))))),
        ("pressure", always(quantity(4.0, 30.0, "bar gauge"))),
        ("pump", maybe(one("flow", quantity(200.0, 3000.0, "L/h")))),
        ("film_factor", maybe(quantity(0.25, 2.0, ""))),
        ("retention", maybe(quantity(0.9, 1.0, ""))),
        ("element_drop", maybe(quantity(0.0, 0.3, "bar"))),
        (
            "warming",
            maybe(prop_oneof![Just("isothermal"), Just("coupled")].prop_map(Tree::from)),
        ),
        ("run", always(run)),
    ])
}

fn evaporator() -> BoxedStrategy<Tree> {
    let heat = prop_oneof![
        one("power", quantity(3.0, 300.0, "kW")),
        one("level_drop", quantity(5.0, 400.0, "kg/h")),
        one(
            "held_level",
            map(vec![
                ("added", always(quantity(5.0, 400.0, "kg/h"))),
                ("feed_temperature", always(quantity(2.0, 20.0, "°C"))),
            ])
        ),
    ];
    map(vec![
        (
            "pan",
            always(map(vec![
                ("length", always(quantity(0.3, 3.0, "m"))),
                ("width", always(quantity(12.0, 60.0, "in"))),
                ("running_depth", maybe(quantity(40.0, 80.0, "mm"))),
                ("least_depth", maybe(quantity(10.0, 40.0, "mm"))),
            ])),
        ),
        ("heat", maybe(heat)),
        (
            "left_in_pan",
            maybe(map(vec![
                ("volume", always(quantity(1.0, 30.0, "L"))),
                ("brix", always(quantity(2.0, 20.0, ""))),
                ("temperature", always(quantity(2.0, 40.0, "°C"))),
            ])),
        ),
    ])
}

fn containers() -> BoxedStrategy<Tree> {
    let container = map(vec![
        ("volume", always(quantity(100.0, 4000.0, "mL"))),
        ("stock", always((0u8..100).prop_map(|n| Tree::Number(f64::from(n))))),
        ("mass", maybe(quantity(50.0, 1500.0, "g"))),
        ("material", maybe(Just(Tree::from("glass")))),
        ("brimful", maybe(quantity(4200.0, 5000.0, "mL"))),
    ]);
    proptest::collection::vec(container, 0..3).prop_map(Tree::List).boxed()
}

fn day_tree() -> BoxedStrategy<Tree> {
    map(vec![
        ("samples", always(Just(Tree::Number(0.0)))),
        ("air", always(air())),
        ("sap", always(sap())),
        ("membrane", maybe(membrane())),
        ("evaporator", always(evaporator())),
        (
            "finishing",
            maybe(map(vec![
                ("heat", maybe(quantity(1.0, 20.0, "kW"))),
                ("capacity", maybe(quantity(5.0, 60.0, "L"))),
            ])),
        ),
        (
            "target",
            always(map(vec![
                ("brix", always(quantity(60.0, 69.0, ""))),
                ("sugar_lost", maybe(quantity(0.0, 0.1, ""))),
                ("guard", maybe(quantity(0.0, 1.0, ""))),
            ])),
        ),
        ("containers", maybe(containers())),
    ])
}

/// Every figure is a finite number, no time is negative, and mass, sugar and heat close.
fn holds(plan: &DayPlan) -> Result<(), TestCaseError> {
    let json = plan.to_json().map_err(|e| TestCaseError::fail(e.to_string()))?;
    let hole = json.find("null").map(|at| &json[at.saturating_sub(120)..at + 4]);
    prop_assert!(hole.is_none(), "{hole:?}");
    let first = &plan.steps[0];
    let boil = plan.steps.iter().find(|s| s.kind.name() == "boil").unwrap();
    let left = boil.streams_in.iter().find(|s| s.name == "left_in_pan");
    let sum = |f: fn(&day::Stream) -> f64| f(&first.streams_in[0]) + left.map_or(0.0, f);
    let (mass_in, sugar_in) = (sum(|s| s.mass.value()), sum(|s| s.sugar.unwrap().value()));
    prop_assert!(
        plan.balance.mass.value().abs() <= 1e-12 * mass_in,
        "mass {:?} of {mass_in}",
        plan.balance.mass
    );
    prop_assert!(
        plan.balance.sugar.value().abs() <= 1e-12 * sugar_in,
        "sugar {:?}",
        plan.balance.sugar
    );
    // And step by step, from the printed streams alone.
    for step in plan.steps.iter().filter(|s| !s.streams_out.is_empty()) {
        let mass = |streams: &[day::Stream]| streams.iter().map(|s| s.mass.value()).sum::<f64>();
        let sugar = |streams: &[day::Stream]| streams.iter().filter_map(|s| s.sugar).map(|s| s.value()).sum::<f64>();
        let lost = lost_share(plan, step);
        let (m, s) = (mass(&step.streams_in), sugar(&step.streams_in));
        let (m_out, s_out) = (mass(&step.streams_out) + lost.0, sugar(&step.streams_out) + lost.1);
        prop_assert!((m - m_out).abs() <= 1e-12 * m, "{:?}: {m} in, {m_out} out", step.kind);
        prop_assert!(
            (s - s_out).abs() <= 1e-12 * s.max(1e-300),
            "{:?}: sugar {s} in, {s_out} out",
            step.kind
        );
    }
    for step in &plan.steps {
        prop_assert!(step.start.value() >= 0.0 && step.duration.value() >= 0.0);
        prop_assert!(step.stages.iter().all(|s| s.duration.value() >= 0.0));
    }
    prop_assert!(plan.totals.hours.value() >= plan.totals.hours_fired.value());
    heat_closes(plan, boil)
}

/// What is left in pans and filters, by the step that ends with syrup.
fn lost_share(plan: &DayPlan, step: &day::Step) -> (f64, f64) {
    let share = plan.inputs.target.sugar_lost.map_or(0.0, |s| s.value.get::<fraction>());
    match step.streams_out.iter().find(|s| s.name == "syrup") {
        // The big pan's own syrup stream is before the loss, the finishing pan's after it.
        Some(syrup) if step.kind.name() == "finish" => {
            let lost = syrup.mass.value() * share / (1.0 - share);
            (lost, syrup.sugar.unwrap().value() * share / (1.0 - share))
        }
        _ => (0.0, 0.0),
    }
}

/// Heat of the big pan by an integral of our own, over each stage from its printed ends.
fn heat_closes(plan: &DayPlan, boil: &day::Step) -> Result<(), TestCaseError> {
    let station = sugaring::air::StationPressure::measured(plan.air.pressure.quantity()).unwrap();
    let latent = water::latent_heat(water::saturation_temperature(station.pressure()).unwrap()).unwrap();
    let latent = latent.get::<joule_per_kg>();
    let power = boil.settings.heat.unwrap().quantity().get::<watt>();
    let boils = |b: f64| sucrose::boiling_temperature(brix(b).unwrap(), station).unwrap();
    let enthalpy = |b: f64, t: Temperature| sucrose::enthalpy(brix(b).unwrap(), t).unwrap().get::<joule_per_kg>();
    let total = plan.totals.heat.quantity().get::<joule>();
    let close = |name: &str, heat: f64, stage: &day::StageState| {
        let given = power * stage.duration.quantity().get::<seconds>();
        prop_assert!(
            (heat - given).abs() <= 1e-9 * total,
            "{name}: {heat} J against {given} J of {total} J"
        );
        Ok(())
    };
    let feed = &boil.streams_in[0];
    let (feed_brix, feed_temperature) = (feed.brix.unwrap(), feed.temperature.unwrap().quantity());
    // Sap may be colder than 0 °C, down to its own freezing point; the public enthalpy, our judge, begins at 0 °C.
    let judged = feed_temperature >= deg_c(0.0);
    let left = boil.streams_in.iter().find(|s| s.name == "left_in_pan");
    for (from, to) in boil.stages.iter().zip(&boil.stages[1..]) {
        let sugar = from.mass.value() * from.brix / 100.0;
        let steam = latent * to.water.value();
        match to.kind {
            // q t = L W + integral of m c_p dT_b
            "boil_down" => {
                let (high, low) = (from.mass.value().ln(), to.mass.value().ln());
                let sensible = extrapolated(|cells| {
                    let at = |i: u32| (high + (low - high) * f64::from(i) / f64::from(cells)).exp();
                    (0..cells)
                        .map(|i| {
                            let (m1, m2) = (at(i), at(i + 1));
                            let between = (m1 * m2).sqrt();
                            let b = 100.0 * sugar / between;
                            let boils = (boils(100.0 * sugar / m1), boils(100.0 * sugar / m2));
                            between * (enthalpy(b, boils.1) - enthalpy(b, boils.0))
                        })
                        .sum()
                });
                close("boil down", steam + sensible, to)?;
            }
            // and the feed's warming; the public density ends at 100 °C
            "top_up" if judged && to.temperature.value() < 99.9 && to.brix > from.brix => {
                let volume = boil.settings.running_volume.unwrap().quantity().get::<cubic_metre>();
                let density = |b: f64| sucrose::density(brix(b).unwrap(), boils(b)).unwrap().get::<kg_per_m3>();
                let cold = enthalpy(feed_brix, feed_temperature);
                let warming = extrapolated(|cells| {
                    let at = |i: u32| from.brix + (to.brix - from.brix) * f64::from(i) / f64::from(cells);
                    (0..cells)
                        .map(|i| {
                            let (b1, b2) = (at(i), at(i + 1));
                            let b = 0.5 * (b1 + b2);
                            let fed = volume * (density(b2) * b2 - density(b1) * b1) / feed_brix;
                            fed * (enthalpy(feed_brix, boils(b)) - cold)
                                + volume * density(b) * (enthalpy(b, boils(b2)) - enthalpy(b, boils(b1)))
                        })
                        .sum()
                });
                close("top up", steam + warming, to)?;
            }
            _ => {}
        }
    }
    // The first fill: every part from its own temperature; contents that come in boiling need none.
    let first = &boil.stages[0];
    if judged && left.is_none() && feed_temperature < first.temperature.quantity() {
        let warming = enthalpy(first.brix, first.temperature.quantity()) - enthalpy(feed_brix, feed_temperature);
        close("heat up", first.mass.value() * warming, first)?;
    }
    let stages: f64 = boil.stages.iter().map(|s| s.duration.value()).sum();
    prop_assert!((stages - boil.duration.value()).abs() <= 1e-12 * stages.max(1e-9));
    let finish = plan.steps.iter().find(|s| s.kind.name() == "finish");
    let all = power * boil.duration.quantity().get::<seconds>()
        + finish.map_or(0.0, |f| {
            f.settings.heat.unwrap().quantity().get::<watt>() * f.duration.quantity().get::<seconds>()
        });
    prop_assert!((all - total).abs() <= 1e-9 * total, "heat: {all} J against {total} J");
    Ok(())
}

/// A sum over cells, extrapolated twice to none.
fn extrapolated(sum: impl Fn(u32) -> f64) -> f64 {
    let (coarse, fine, finest) = (sum(16), sum(32), sum(64));
    let (first, second) = (fine + (fine - coarse) / 3.0, finest + (finest - fine) / 3.0);
    second + (second - first) / 15.0
}

proptest! {
    #![proptest_config(cases(2000))]

    #[test]
    fn any_day_ends_in_a_plan_or_a_typed_error(tree in day_tree()) {
        match DayInputs::from_tree(&tree).and_then(|inputs| day::plan(&inputs)) {
            Ok(plan) => {
                holds(&plan)?;
                let _ = (plan.to_string(), plan.page(System::Us));
            }
            Err(error) => {
                prop_assert!(!error.to_string().is_empty() && !error.argument().is_empty());
                prop_assert!(!error.to_string().contains("NaN is outside"));
            }
        }
    }
}

fn sane(litres: f64, strength: f64, celsius: f64, kilowatt: f64) -> DayInputs {
    let air = sugaring::air::StationPressure::measured(kpa(97.0)).unwrap();
    let sap = day::Sap::of_volume(litre(litres), brix(strength).unwrap(), deg_c(celsius));
    let pan = sugaring::evaporator::Pan::new(metre(0.61), metre(1.22)).unwrap();
    let mut inputs = DayInputs::new(air, vec![sap], pan, day::Target::brix(brix(66.9).unwrap())).with_samples(0);
    inputs.evaporator = inputs.evaporator.with_heat(day::Heat::Power(kw(kilowatt).into()));
    inputs.finishing = Some(day::Finishing::default());
    inputs
}

proptest! {
    #![proptest_config(cases(200))]

    #[test]
    fn more_heat_is_never_later(
        litres in 40.0..800.0_f64, strength in 1.0..4.0_f64, celsius in 1.0..12.0_f64,
        kilowatt in 5.0..60.0_f64, more in 1.001..3.0_f64,
    ) {
        let plan = day::plan(&sane(litres, strength, celsius, kilowatt)).unwrap();
        let hotter = day::plan(&sane(litres, strength, celsius, kilowatt * more)).unwrap();
        prop_assert!(hotter.totals.hours.value() <= plan.totals.hours.value());
        prop_assert!(hotter.totals.hours_fired.value() < plan.totals.hours_fired.value());
        let syrup = |p: &DayPlan| p.totals.syrup.as_ref().unwrap().mass.value();
        prop_assert!((syrup(&hotter) - syrup(&plan)).abs() < 1e-12 * syrup(&plan));
        holds(&plan)?;
    }

    #[test]
    fn pressure_moves_marks_and_not_balances(litres in 40.0..800.0_f64, kilopascal in 85.0..103.0_f64) {
        let at = |pressure| {
            let mut inputs = sane(litres, 2.0, 4.0, 20.0);
            inputs.air = sugaring::air::StationPressure::measured(kpa(pressure)).unwrap().into();
            day::plan(&inputs).unwrap()
        };
        let (here, there) = (at(97.0), at(kilopascal));
        let syrup = |p: &DayPlan| p.totals.syrup.as_ref().unwrap().mass.value();
        prop_assert!((syrup(&here) - syrup(&there)).abs() < 1e-12 * syrup(&here));
        prop_assert!((here.air.water_boils_at.value() > there.air.water_boils_at.value()) == (kilopascal < 97.0));
    }
}
