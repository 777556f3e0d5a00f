//! Heat, stages and hold-up of the pan against the worked tables, and against a plain evaluation of the balances.

use sugaring::{
    Error,
    air::StationPressure,
    evaporator::{
        self, Boil, FeedCondition, Pan, PanKind, StageKind, boil_heat, evaporation_rate, finish_boil, heat_from_area,
        heat_from_held_level, heat_from_level_drop,
    },
    fuel::{Efficiency, Fuel, Moisture},
    lot::Lot,
    units::*,
    water,
};
use sugaring_tests::{Row, judge, limits};

const BALANCE: &str = include_str!("../published/evaporator_balance.csv");
const DEMO: &str = include_str!("../derived/evaporator_demo.csv");
const HEAT: &str = include_str!("../derived/evaporator_heat.csv");
const ORCHARD: &str = include_str!("../derived/day_far_orchard.csv");

fn station(row: &Row) -> Result<StationPressure, Error> {
    StationPressure::measured(kpa(row.optional_number("pressure_kpa").unwrap_or(96.5)))
}

fn lot(row: &Row) -> Result<Lot, Error> {
    let mass = kg(row.optional_number("mass_kg").unwrap_or(1.0));
    let celsius = row.optional_number("temp_in_c").unwrap_or(20.0);
    Lot::of_mass(mass, brix(row.number("brix_in_pct"))?, deg_c(celsius))
}

/// Share by which the same fire boils more feed when it comes in at another temperature.
fn preheat_gain(row: &Row) -> Result<f64, Error> {
    let heat = |celsius| -> Result<f64, Error> {
        let kilogram = Lot::of_mass(kg(1.0), brix(row.number("brix_in_pct"))?, deg_c(celsius))?;
        let boil = boil_heat(&kilogram, brix(row.number("brix_out_pct"))?, station(row)?)?;
        Ok(boil.total.get::<kj>())
    };
    Ok((heat(row.number("temp_in_c"))? / heat(row.number("temp_pre_c"))? - 1.0) * 100.0)
}

fn hold_up(row: &Row) -> Result<evaporator::HoldUp, Error> {
    // The table gives hot volumes, a pan area and depth: any pan of that volume will do.
    let litres = row.optional_number("volume_l").unwrap_or(100.0);
    let pan = Pan::new(metre(1.0), metre(litres / 100.0))?.with_running_depth(metre(0.1))?;
    let pan = match row.optional_number("sections") {
        None | Some(0.0) => pan,
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a small count")]
        Some(sections) => pan.with_sections(sections as u32)?,
    };
    pan.hold_up(
        brix(row.number("brix_in_pct"))?,
        brix(row.number("brix_out_pct"))?,
        station(row)?,
    )
}

#[test]
fn the_balance_of_the_pan() {
    judge("evaporator_balance.csv", BALANCE, |row| {
        let out = || brix(row.number("brix_out_pct"));
        Ok(Some(match row.text("quantity") {
            "water_evaporated" => boil_heat(&lot(row)?, out()?, station(row)?)?.water.get::<kg>(),
            "mean_brix_plug" => hold_up(row)?.mean_brix.get(),
            "heat_batch" => boil_heat(&lot(row)?, out()?, station(row)?)?.total.get::<mj>(),
            "heat_per_gallon_syrup" => {
                let gallon = Lot::of_volume(gal(1.0), out()?, deg_c(20.0))?;
                let sap = gallon.sap_needed(brix(row.number("brix_in_pct"))?, deg_c(row.number("temp_in_c")))?;
                boil_heat(&sap, out()?, station(row)?)?.total.get::<btu>()
            }
            "preheat_gain" => preheat_gain(row)?,
            "water_test_heat" => {
                let rate = kg_per_h(row.number("mass_kg"));
                let heat = match row.optional_number("temp_in_c") {
                    Some(celsius) => heat_from_held_level(rate, deg_c(celsius), station(row)?)?,
                    None => heat_from_level_drop(rate, station(row)?)?,
                };
                heat.value.get::<kw>()
            }
            "latent_heat" => water::latent_heat(deg_c(row.number("temp_in_c")))?.get::<kj_per_kg>(),
            "holdup_sugar" => hold_up(row)?.sugar.get::<kg>(),
            other => panic!("no quantity {other}"),
        }))
    });
}

/// The two lots of the demo, blended.
fn tank() -> Result<Lot, Error> {
    let upper = Lot::of_volume(litre(170.0), brix(1.8)?, deg_c(3.0))?;
    let lower = Lot::of_volume(litre(95.0), brix(2.3)?, deg_c(5.0))?;
    sugaring::lot::blend(&[upper, lower])
}

/// The tank, or the concentrate it gives at the tank's temperature.
fn feed(brix_pct: f64) -> Result<Lot, Error> {
    let tank = tank()?;
    if brix_pct < 2.0 {
        return Ok(tank);
    }
    Ok(tank.concentrate_to(brix(brix_pct)?)?.concentrate)
}

#[test]
fn the_demo_over_one_fire() {
    judge("evaporator_demo.csv", DEMO, |row| {
        let station = station(row)?;
        let pan = |depth| Pan::new(metre(0.61), metre(1.22))?.with_running_depth(mm(depth));
        let from = || feed(row.number("sap_brix_pct"));
        let boil = || boil_heat(&from()?, brix(66.9)?, station);
        let wood = || Fuel::wood("hardwood", Moisture::wet_basis(percent(25.0))?);
        let of_gross = Efficiency::of_gross(percent(45.0))?;
        let hours = |gallons: f64| -> Result<f64, Error> {
            // W/R, R the rate of the rule itself, cold fed.
            let rate = gallons * (0.7442 / 0.09290304) * 3.785_411_784e-3 * 998.2;
            Ok(boil()?.water.get::<kg>() / rate)
        };
        let syrup = || -> Result<Lot, Error> {
            Lot::of_mass(kg(tank()?.sugar().get::<kg>() / 0.669), brix(66.9)?, deg_c(20.0))
        };
        // All the sugar in the pan at a depth: the boil-down of a batch ends there.
        let standing = |depth| -> Result<Boil, Error> {
            let pan = pan(60.0)?.with_least_depth(mm(depth))?;
            pan.batch(&tank()?, brix(66.9)?, station)
        };
        Ok(Some(match row.text("quantity") {
            "sap_mass" => tank()?.mass().get::<kg>(),
            "sugar_mass" => tank()?.sugar().get::<kg>(),
            "sap_brix" => tank()?.brix().get(),
            "water_boiling_point" => water::saturation_temperature(station.pressure())?.get::<deg_c>(),
            "syrup_boiling_point" => sugaring::finish::finishing_point(brix(66.9)?, station, None)?
                .temperature
                .get::<deg_c>(),
            "pan_area" => pan(50.0)?.area().get::<square_metre>(),
            "syrup_mass" => syrup()?.mass().get::<kg>(),
            "syrup_volume_20c" => syrup()?.volume().get::<litre>(),
            "feed_mass" => from()?.mass().get::<kg>(),
            "feed_volume_20c" => from()?.volume_at(deg_c(20.0))?.get::<litre>(),
            "water_evaporated" => boil()?.water.get::<kg>(),
            "heat" => boil()?.total.get::<mj>(),
            "time_rate_1.0_gal_h_ft2" => hours(1.0)?,
            "time_rate_1.5_gal_h_ft2" => hours(1.5)?,
            "wood_25pct_wet_45pct_of_gross" => wood()?
                .needed(boil()?.total, of_gross)?
                .mass
                .expect("a mass")
                .get::<kg>(),
            "wood_25pct_wet_45pct_of_net" => {
                let of_net = Efficiency::of_net(percent(45.0))?;
                wood()?.needed(boil()?.total, of_net)?.mass.expect("a mass").get::<kg>()
            }
            "cords_sg0.56_85ft3" => wood()?
                .needed(boil()?.total, of_gross)?
                .volume
                .expect("a volume")
                .get::<cord>(),
            "holdup_sugar_38.1mm_plug" => pan(38.1)?
                .hold_up(brix(row.number("sap_brix_pct"))?, brix(66.9)?, station)?
                .sugar
                .get::<kg>(),
            "brix_when_depth_is_25.4mm" => standing(25.4)?.ends_at.get(),
            "mass_when_depth_is_25.4mm" => standing(25.4)?.draw.mass.get::<kg>(),
            "brix_when_depth_is_50.8mm" => standing(50.8)?.ends_at.get(),
            "mass_when_depth_is_50.8mm" => standing(50.8)?.draw.mass.get::<kg>(),
            other => panic!("no quantity {other}"),
        }))
    });
}

/// The pan, fire, finish and bottles of the worked day, from the stations alone; the plan is judged beside the plan.
#[test]
fn the_worked_day_station_by_station() {
    judge("day_far_orchard.csv", ORCHARD, |row| {
        let station = StationPressure::measured(kpa(96.5))?;
        let from = feed(if row.text("variant") == "no membrane" { 1.0 } else { 4.0 })?;
        let pan = Pan::new(metre(1.22), metre(0.61))?;
        let boil = pan.batch(&from, brix(66.9)?, station)?;
        let stage = |kind| {
            let found = boil.stages.iter().find(|stage| stage.kind == kind);
            found.expect("the stage").duration.get::<hours>()
        };
        let draw = Lot::of_mass(boil.draw.mass, boil.draw.brix, boil.draw.temperature)?;
        let finish = finish_boil(&draw, brix(66.9)?, kw(3.0), station)?;
        let wood = Fuel::wood("hardwood", Moisture::wet_basis(percent(25.0))?)?
            .needed(boil.heat, Efficiency::of_gross(percent(45.0))?)?;
        let propane = Fuel::named("propane")?.needed(finish.heat, Efficiency::of_gross(percent(40.0))?)?;
        Ok(Some(match row.text("quantity") {
            "pan_heat" => pan.heat(station)?.value.get::<kw>(),
            "pan_hold_up" => boil.running_volume.get::<litre>(),
            "first_fill_cold" => boil.first_fill.get::<litre>(),
            "heat_up_hours" => stage(StageKind::HeatUp),
            "top_up_hours" => stage(StageKind::TopUp),
            "brix_when_tank_is_empty" => boil.stages[1].brix.get(),
            "boil_down_hours" => stage(StageKind::BoilDown),
            "draw_off_brix" => boil.draw.brix.get(),
            "draw_off_mass" => boil.draw.mass.get::<kg>(),
            "draw_off_temperature" => boil.draw.temperature.get::<deg_c>(),
            "depth_if_finished_in_pan" => boil.depth_if_finished.get::<mm>(),
            "pan_hours" => boil.duration.get::<hours>(),
            "finishing_water" => finish.water.get::<kg>(),
            "finishing_hours" => finish.duration.get::<hours>(),
            "water_boiled" => (boil.water + finish.water).get::<kg>(),
            "heat_total" => (boil.heat + finish.heat).get::<mj>(),
            "wood" => wood.mass.expect("a mass").get::<kg>(),
            "wood_cords" => wood.volume.expect("a volume").get::<cord>(),
            "propane" => propane.volume.expect("a volume").get::<gal>(),
            "syrup_mass" => finish.syrup.mass().get::<kg>(),
            "syrup_volume_20c" => finish.syrup.volume_at(deg_c(20.0))?.get::<litre>(),
            "continuous_hold_up_sugar" => pan.hold_up(from.brix(), brix(66.9)?, station)?.sugar.get::<kg>(),
            _ => return Ok(None),
        }))
    });
}

/// Rows that a change in the last digit of any figure of the pan breaks.
#[test]
fn the_equations_evaluated_apart() {
    judge("evaporator_heat.csv", HEAT, |row| {
        let rate = || kg_per_h(row.number("mass_kg"));
        let boil = || boil_heat(&lot(row)?, brix(row.number("brix_out_pct"))?, station(row)?);
        let pan = || Pan::new(metre(0.61), metre(1.22));
        Ok(Some(match row.text("quantity") {
            "area_heat" => {
                let kind = match row.text("kind_of_pan") {
                    "flat" => PanKind::Flat,
                    "flat_blower" => PanKind::FlatBlower,
                    _ => PanKind::Flue,
                };
                let area = square_metre(row.number("area_m2"));
                heat_from_area(area, kind, station(row)?)?.value.get::<kw>()
            }
            "level_drop_heat" => heat_from_level_drop(rate(), station(row)?)?.value.get::<kw>(),
            "held_level_heat" => {
                let feed = deg_c(row.number("temp_in_c"));
                heat_from_held_level(rate(), feed, station(row)?)?.value.get::<kw>()
            }
            "boil_heat" => boil()?.total.get::<mj>(),
            "sensible_heat" => boil()?.sensible.get::<mj>(),
            "hold_up_sugar" => hold_up(row)?.sugar.get::<kg>(),
            "hold_up_mass" => hold_up(row)?.mass.get::<kg>(),
            "default_volume" => (pan()?.area() * pan()?.running_depth()).get::<litre>(),
            "default_least_volume" => (pan()?.area() * pan()?.least_depth()).get::<litre>(),
            other => panic!("no quantity {other}"),
        }))
    });
}

/// A rate read back as heat: the feed makes 15 % of it.
#[test]
fn a_rate_always_names_its_feed() -> Result<(), Error> {
    let station = StationPressure::measured(kpa(96.5))?;
    let fed = FeedCondition::Fed {
        feed: brix(0.0)?,
        feed_temperature: deg_c(4.0),
        draw: None,
    };
    let heat = heat_from_held_level(kg_per_h(30.0), deg_c(4.0), station)?.value;
    assert!((evaporation_rate(heat, &fed, station)?.get::<kg_per_h>() - 30.0).abs() < 1e-9);
    let unfed = evaporation_rate(heat, &FeedCondition::None, station)?.get::<kg_per_h>();
    assert!((unfed / 30.0 - 1.175).abs() < 0.001, "{unfed}");
    // A continuous pan boils all of its feed, so less of it is water.
    let drawn = FeedCondition::Fed {
        feed: brix(2.0)?,
        feed_temperature: deg_c(4.0),
        draw: Some(brix(66.9)?),
    };
    let sap = Lot::of_mass(kg(100.0), brix(2.0)?, deg_c(4.0))?;
    let boil = boil_heat(&sap, brix(66.9)?, station)?;
    let water = evaporation_rate(watt(boil.total.get::<joule>() / 3600.0), &drawn, station)?;
    assert!((water.get::<kg_per_h>() - boil.water.get::<kg>()).abs() < 1e-9);
    Ok(())
}

#[test]
fn limits_hold_as_written() {
    let station = || StationPressure::measured(kpa(96.5));
    let named = |b: f64, name: &str| brix(b).map_err(|e| e.named(name));
    let lot = |strength| Lot::of_mass(kg(100.0), brix(strength)?, deg_c(4.0));
    let pan = || Pan::new(metre(1.22), metre(0.61));
    limits(&evaporator::HEAT_FROM_LEVEL_DROP, 0, |m| {
        heat_from_level_drop(kg_per_s(m), station()?)
    });
    limits(&evaporator::HEAT_FROM_HELD_LEVEL, 0, |m| {
        heat_from_held_level(kg_per_s(m), deg_c(4.0), station()?)
    });
    limits(&evaporator::HEAT_FROM_HELD_LEVEL, 1, |t| {
        heat_from_held_level(kg_per_h(30.0), kelvin(t), station()?)
    });
    limits(&evaporator::HEAT_FROM_AREA, 0, |a| {
        heat_from_area(square_metre(a), PanKind::Flat, station()?)
    });
    limits(&evaporator::EVAPORATION_RATE, 0, |q| {
        evaporation_rate(watt(q), &FeedCondition::None, station()?)
    });
    limits(&evaporator::BOIL_HEAT, 1, |b| {
        boil_heat(&lot(0.5)?, named(b, "to_brix")?, station()?)
    });
    limits(&evaporator::FINISH_BOIL, 0, |q| {
        finish_boil(&lot(26.6)?, brix(66.9)?, watt(q), station()?)
    });
    limits(&evaporator::HOLD_UP, 0, |b| {
        pan()?.hold_up(named(b, "feed")?, brix(72.0)?, station()?)
    });
    limits(&evaporator::HOLD_UP, 1, |b| {
        pan()?.hold_up(brix(0.5)?, named(b, "draw")?, station()?)
    });
    limits(&evaporator::PAN, 0, |x| Pan::new(metre(x), metre(1.0)));
    limits(&evaporator::PAN, 1, |x| Pan::new(metre(1.0), metre(x)));
    limits(&evaporator::PAN, 2, |x| pan()?.with_running_depth(metre(x)));
    limits(&evaporator::PAN, 3, |x| pan()?.with_least_depth(metre(x)));
    limits(&evaporator::PAN, 5, |q| pan()?.with_heat(watt(q)));
    limits(&evaporator::BATCH, 1, |b| {
        let shallow = pan()?.with_running_depth(mm(5.0))?.with_least_depth(mm(5.0))?;
        shallow.batch(&lot(0.5)?, named(b, "to_brix")?, station()?)
    });
}
