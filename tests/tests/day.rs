//! The day: the worked day of Far Orchard, its ranges, its JSON, its sums.

use sugaring::{
    day::{self, DayInputs, DayPlan, FuelVolume},
    units::*,
};
use sugaring_tests::judge;

const FAR_ORCHARD: &str = include_str!("../../examples/far_orchard.json");

fn inputs(samples: u32) -> DayInputs {
    let mut inputs = DayInputs::from_json(FAR_ORCHARD).unwrap();
    inputs.samples = Some(samples);
    inputs
}

fn plan(samples: u32) -> DayPlan {
    day::plan(&inputs(samples)).unwrap()
}

fn without_membrane(samples: u32) -> DayPlan {
    let mut inputs = inputs(samples);
    inputs.membrane = None;
    day::plan(&inputs).unwrap()
}

fn step<'a>(plan: &'a DayPlan, kind: &str) -> Option<&'a day::Step> {
    plan.steps.iter().find(|s| s.kind.name() == kind)
}

/// A quantity of the worked day in the unit of its table.
fn worked(plan: &DayPlan, quantity: &str) -> Option<f64> {
    let rig = step(plan, "concentrate");
    let boil = step(plan, "boil").unwrap();
    let finish = step(plan, "finish").unwrap();
    let tank = rig.unwrap_or(boil).streams_in.first().unwrap();
    let stage = |kind: &str| boil.stages.iter().find(|s| s.kind == kind).unwrap();
    let draw = boil.streams_out.iter().find(|s| s.name == "draw").unwrap();
    let concentrate = || {
        rig.unwrap()
            .streams_out
            .iter()
            .find(|s| s.name == "concentrate")
            .unwrap()
    };
    let thermometer = finish.stop_when.iter().find(|s| s.what == "thermometer").unwrap();
    let mark = |unit: &str, value: f64| {
        plan.marks
            .iter()
            .find(|m| m.instrument == "syrup hydrometer" && m.temperature.to_string() == format!("{value} {unit}"))
            .unwrap()
            .reading
    };
    let bottle = |i: usize| plan.containers.get(i).unwrap();
    let totals = &plan.totals;
    let volume = |i: usize| match totals.fuel[i].volume.unwrap() {
        FuelVolume::Cords(v) => v.value(),
        FuelVolume::Gallons(v) => v.value(),
    };
    let settings = |s: Option<&'static str>| s.map_or(&boil.settings, |k| &step(plan, k).unwrap().settings);
    let set = &boil.settings;
    Some(match quantity {
        "tank_mass" => tank.mass.value(),
        "tank_sugar" => tank.sugar.unwrap().value(),
        "tank_brix" => tank.brix.unwrap(),
        "tank_temperature" => tank.temperature.unwrap().value(),
        "osmotic_limit" => settings(Some("concentrate")).osmotic_limit.unwrap(),
        "element_permeance_25c" => settings(Some("concentrate")).permeance.unwrap().value(),
        "temperature_factor" => settings(Some("concentrate")).temperature_factor.unwrap(),
        "permeate_flow_start" => settings(Some("concentrate")).permeate_first.unwrap().value(),
        "permeate_flow_end" => settings(Some("concentrate")).permeate_last.unwrap().value(),
        "tank_temperature_end_coupled" => settings(Some("concentrate")).warms_to.unwrap().value(),
        "membrane_hours_coupled" => settings(Some("concentrate")).duration_coupled.unwrap().value(),
        "membrane_hours" => rig?.duration.value(),
        "permeate_volume" => rig?.streams_out.iter().find(|s| s.name == "permeate")?.volume?.value(),
        "permeate_kept" => settings(Some("concentrate")).permeate_kept.unwrap().value(),
        "concentrate_mass" => concentrate().mass.value(),
        "concentrate_volume" => concentrate().volume.unwrap().value(),
        "pump_energy" => totals.electricity.as_ref().unwrap().energy.value(),
        "water_boiling_point" => plan.air.water_boils_at.value(),
        "finishing_temperature" => thermometer.temperature.unwrap().value(),
        "finishing_rise" => thermometer.elevation.unwrap().value(),
        "hydrometer_mark_60f_scale_at_211f" => mark("°F", 211.0),
        "hydrometer_mark_60f_scale_at_20c" => mark("°C", 20.0),
        "pan_heat" => set.heat.unwrap().value(),
        "pan_hold_up" => set.running_volume.unwrap().value(),
        "first_fill_cold" => set.first_fill.unwrap().value(),
        "heat_up_hours" => stage("heat_up").duration.value(),
        "top_up_hours" => stage("top_up").duration.value(),
        "brix_when_tank_is_empty" => stage("top_up").brix,
        "boil_down_hours" => stage("boil_down").duration.value(),
        "draw_off_brix" => draw.brix.unwrap(),
        "draw_off_mass" => draw.mass.value(),
        "draw_off_temperature" => draw.temperature.unwrap().value(),
        "depth_if_finished_in_pan" => set.depth_if_finished.unwrap().value(),
        "pan_hours" => boil.duration.value(),
        "finishing_water" => totals.water_removed.finishing.unwrap().value(),
        "finishing_hours" => finish.duration.value(),
        "water_boiled" => totals.water_removed.evaporator.value() + totals.water_removed.finishing.unwrap().value(),
        "heat_total" => totals.heat.value(),
        "hours_in_sequence" => totals.hours.value(),
        "hours_overlapped" => plan.other_hours.overlapped.unwrap_or(totals.hours).value(),
        "wood" => totals.fuel[0].mass.unwrap().value(),
        "wood_cords" => volume(0),
        "propane" => volume(1),
        "syrup_mass" => totals.syrup.as_ref().unwrap().mass.value(),
        "syrup_volume_20c" => totals.syrup.as_ref().unwrap().volume.value(),
        "bottles_500ml" => f64::from(bottle(0).count),
        "bottles_250ml" => f64::from(bottle(1).count),
        "rest_volume" => plan.rest.as_ref().unwrap().volume.value(),
        "hot_fill_500ml" => bottle(0).fill_volume.value(),
        "settled_500ml_cold_glass" => bottle(0).settled.unwrap().value(),
        "glass_needed_500ml" => bottle(0).glass_needed.unwrap().value(),
        "settled_250ml_cold_glass" => bottle(1).settled.unwrap().value(),
        "cost_total" => totals.cost.value,
        "continuous_hold_up_sugar" => set.continuous_hold_up.unwrap().value(),
        other => panic!("the worked day has no {other}"),
    })
}

#[test]
fn the_worked_day_stands() {
    let (with, without) = (plan(0), without_membrane(0));
    judge(
        "day_far_orchard.csv",
        include_str!("../derived/day_far_orchard.csv"),
        |row| {
            let plan = if row.text("variant") == "no membrane" {
                &without
            } else {
                &with
            };
            Ok(worked(plan, row.text("quantity")))
        },
    );
    let beside = with.without_membrane.unwrap();
    assert_eq!(beside.hours.value().to_bits(), without.totals.hours.value().to_bits());
    assert_eq!(beside.cost.to_bits(), without.totals.cost.value.to_bits());
}

/// Mean, standard deviation and limits of `science`'s 3000 draws, made by another program: limits within 0.2 sd.
#[test]
fn ranges_agree_with_the_worked_day() {
    let (with, without) = (plan(4000), without_membrane(4000));
    assert_eq!((with.unreachable_draws, without.unreachable_draws), (0, 0));
    let syrup = |p: &DayPlan| p.totals.syrup.as_ref().unwrap().volume;
    let finish = |p: &DayPlan| {
        step(p, "finish")
            .unwrap()
            .stop_when
            .iter()
            .find_map(|s| s.temperature)
            .unwrap()
    };
    let rig = step(&with, "concentrate").unwrap().duration;
    let near = |name: &str, got: f64, wanted: f64, sd: f64, share: f64| {
        let off = (got - wanted) / sd;
        println!("{name}: {got:.3} against {wanted}: {off:+.3} sd");
        assert!(off.abs() <= share, "{name}: {got} against {wanted}, {off:+.3} sd");
    };
    macro_rules! limits {
        ($name:literal, $figure:expr, $low:expr, $high:expr, $sd:expr) => {
            let figure = $figure;
            near(concat!($name, " low"), figure.low().unwrap(), $low, $sd, 0.2);
            near(concat!($name, " high"), figure.high().unwrap(), $high, $sd, 0.2);
        };
    }
    limits!("no membrane, syrup L", syrup(&without), 5.35, 6.56, 0.31);
    limits!("no membrane, hours", without.totals.hours, 8.60, 13.66, 1.30);
    limits!(
        "no membrane, wood kg",
        without.totals.fuel[0].mass.unwrap(),
        65.71,
        147.88,
        21.37
    );
    limits!("no membrane, finishing °C", finish(&without), 102.64, 102.90, 0.07);
    limits!("to 4, syrup L", syrup(&with), 5.33, 6.56, 0.32);
    limits!("to 4, membrane h", rig, 2.48, 4.22, 0.45);
    limits!("to 4, hours", with.totals.hours, 8.22, 11.28, 0.79);
    limits!("to 4, wood kg", with.totals.fuel[0].mass.unwrap(), 29.52, 69.39, 10.22);
    limits!("to 4, finishing °C", finish(&with), 102.64, 102.91, 0.07);
    near("to 4, membrane h median", rig.median().unwrap(), 3.25, 0.45, 0.08);
    near(
        "to 4, hours median",
        with.totals.hours.median().unwrap(),
        9.61,
        0.79,
        0.08,
    );
}

#[test]
fn a_seed_gives_the_same_bits() {
    let (one, two) = (plan(50), plan(50));
    assert_eq!(one.to_json().unwrap(), two.to_json().unwrap());
    let mut other = inputs(50);
    other.seed = Some(2);
    let other = day::plan(&other).unwrap();
    assert_ne!(one.totals.hours.low(), other.totals.hours.low());
    assert_eq!(one.totals.hours.value(), other.totals.hours.value());
}

#[test]
fn inputs_come_back_with_the_same_bits() {
    let read = inputs(0);
    let again = DayInputs::from_json(&read.to_json().unwrap()).unwrap();
    assert_eq!(read, again);
    let echoed = serde_json::to_string(&plan(0).inputs).unwrap();
    assert_eq!(DayInputs::from_json(&echoed).unwrap(), read);
    let through_serde: DayInputs = serde_json::from_str(FAR_ORCHARD).unwrap();
    assert_eq!(through_serde, DayInputs::from_json(FAR_ORCHARD).unwrap());
}

#[test]
fn typed_inputs_plan_the_same_day() {
    let json = r#"{"air": {"altitude": "410 m"}, "sap": [{"volume": "265 L", "brix": 1.98, "temperature": "4 °C"}],
        "evaporator": {"pan": {"length": "0.61 m", "width": "1.22 m"}}, "target": {"brix": 66.9}, "samples": 20}"#;
    let read = day::plan(&DayInputs::from_json(json).unwrap()).unwrap();
    let typed = DayInputs::new(
        sugaring::air::StationPressure::from_altitude(metre(410.0)).unwrap(),
        vec![day::Sap::of_volume(litre(265.0), brix(1.98).unwrap(), deg_c(4.0))],
        sugaring::evaporator::Pan::new(metre(0.61), metre(1.22)).unwrap(),
        day::Target::brix(brix(66.9).unwrap()),
    )
    .with_samples(20);
    let typed = day::plan(&typed).unwrap();
    assert_eq!(read.totals, typed.totals);
    assert_eq!(read.steps, typed.steps);
    assert_eq!(read.page(System::Metric), typed.page(System::Metric));
    // What a typed day is echoed as plans the same day again.
    let again = day::plan(&DayInputs::from_json(&typed.inputs.to_json().unwrap()).unwrap()).unwrap();
    assert_eq!(again.totals, typed.totals);
}

#[test]
fn the_least_day_ends_at_the_draw() {
    let json = r#"{"air": {"altitude": "410 m"}, "sap": [{"volume": "265 L", "brix": 1.98, "temperature": "4 °C"}],
        "evaporator": {"pan": {"length": "0.61 m", "width": "1.22 m"}}, "target": {"brix": 66.9}}"#;
    let plan = day::plan(&DayInputs::from_json(json).unwrap()).unwrap();
    assert!(plan.totals.syrup.is_none() && plan.containers.is_empty() && plan.without_membrane.is_none());
    let page = plan.to_string().split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(
        page.contains("265 L of sap at 1.98 °Bx -> 19.9 kg at 26.6 °Bx, enough for 5.95 L of syrup"),
        "{page}"
    );
    assert!(
        page.contains("(5.3 to 6.6)") && page.contains("at 25 mm deep"),
        "{page}"
    );
}

#[test]
fn a_page_is_seventy_columns_wide() {
    for plan in [plan(100), without_membrane(0)] {
        for system in [System::Us, System::Metric, System::AsGiven] {
            for line in plan.page(system).lines() {
                assert!(line.chars().count() <= 70, "{line}");
                assert_eq!(line, line.trim_end());
            }
        }
    }
}

#[test]
fn work_can_be_stopped() {
    let mut calls = 0;
    let error = day::plan_watched(&inputs(1000), &mut |share| {
        calls += 1;
        share < 0.2
    })
    .unwrap_err();
    assert_eq!(error.kind(), sugaring::ErrorKind::Cancelled);
    assert_eq!(error.to_string(), "the work was stopped");
    assert!((20..=30).contains(&calls), "{calls}");
}

/// Hours of the other arrangement in the worked day: 7.485, derived by a second program; half a per cent, as its steps.
#[test]
fn rig_and_pan_together_take_the_derived_hours() {
    let together = plan(0).other_hours.together.unwrap().value();
    assert!((together / 7.485 - 1.0).abs() < 0.005, "{together} h");
}

#[test]
fn a_single_pass_is_boiled_as_it_comes() {
    let mut pass = inputs(0);
    let recovery = Given::from(percent(50.0));
    pass.membrane.as_mut().unwrap().run = day::Run::SinglePass { recovery };
    let plan = day::plan(&pass).unwrap();
    let (rig, boil) = (step(&plan, "concentrate").unwrap(), step(&plan, "boil").unwrap());
    // Lit after the first fill is there, and over no earlier than the concentrate and no later than one after another.
    let filled = boil.stages[0].mass.value() / rig.streams_out[0].mass.value() * rig.duration.value();
    assert!(boil.start.value() >= filled * (1.0 - 1e-9));
    let fed = boil.start.value() + boil.stages[0].duration.value() + boil.stages[1].duration.value();
    assert!(
        fed >= rig.duration.value() * (1.0 - 1e-9),
        "{fed} h against {:?}",
        rig.duration
    );
    assert!(plan.totals.hours.value() < plan.other_hours.in_sequence.unwrap().value());
    assert!(plan.rests_on.iter().any(|r| r.text.contains("bypass")));
}

#[test]
fn typed_stations_plan_the_same_day() {
    use sugaring::{finish, instrument, membrane};
    let read = inputs(0);
    let element = membrane::Element::from_rating(&membrane::ElementRating {
        flow: cubic_metre_per_day(0.9),
        pressure: bar_gauge(4.1),
        temperature: deg_c(25.0),
        salt: mg_per_litre(500.0),
        recovery: percent(15.0),
        rejection: percent(97.0),
    })
    .unwrap();
    let rig = membrane::Rig::new(&element, bar_gauge(7.6))
        .unwrap()
        .with_parallel(2)
        .unwrap();
    let rig = rig
        .with_pump(membrane::Pump::of_flow(litre_per_h(500.0)).unwrap())
        .unwrap();
    let rig = rig.with_pressure_limit(bar_gauge(7.6)).unwrap();
    let run = day::Run::recirculate(membrane::Until::Brix(brix(4.0).unwrap()));
    let glass = |name: &str, label, brimful, mass, stock, each_costs| finish::Container {
        brimful: Some(ml(brimful)),
        material: Some(finish::Material::Glass),
        mass: Some(gram(mass)),
        price: Some(price(each_costs, each(1.0))),
        ..finish::Container::new(name, ml(label), stock)
    };
    let mut typed = read.clone();
    typed.membrane = Some(day::Membrane::new(&rig, run));
    typed.containers = vec![
        glass("500 mL glass", 500.0, 530.0, 320.0, 12, 1.6).into(),
        glass("250 mL glass", 250.0, 268.0, 200.0, 6, 1.1).into(),
    ];
    typed.instruments = Vec::new();
    let typed = typed
        .with_instrument("syrup hydrometer", instrument::Hydrometer::brix(deg_f(60.0)).unwrap())
        .with_instrument(
            "refractometer",
            instrument::Refractometer::compensated(deg_c(10.0), deg_c(30.0)).unwrap(),
        );
    let (typed, read) = (day::plan(&typed).unwrap(), day::plan(&read).unwrap());
    assert_eq!(typed.totals, read.totals);
    assert_eq!((typed.steps, typed.marks), (read.steps, read.marks));
    let again = DayInputs::from_json(&typed.inputs.to_json().unwrap()).unwrap();
    assert_eq!(day::plan(&again).unwrap().totals, typed.totals);
}
