//! Inputs back to data: as read, units as given, so that reading them again gives the same bits.

use crate::{
    day::inputs::{
        Air, CheckPoint, Container, DayInputs, Efficiency, Element, Evaporator, Finishing, Fuel, Heat, Instrument,
        LeftInPan, Membrane, Moisture, Pan, PanKind, PanRun, Polarisation, Pump, Run, Sap, Span, Target,
        TemperatureModel, Until, Warming, Wood,
    },
    digits::{Toward, rounded},
    form::Tree,
    units::{Dimension, Given, Price, Unit, Value, table},
};
use alloc::{
    string::{String, ToString},
    vec,
    vec::Vec,
};

impl DayInputs {
    pub(crate) fn tree(&self) -> Tree {
        let mut map = Map::default();
        map.number("schema_version", self.schema_version);
        map.text("title", self.title.as_ref());
        map.text("start", self.start.as_ref());
        if let Some(seed) = self.seed {
            map.put("seed", whole(seed));
        }
        if let Some(samples) = self.samples {
            map.number("samples", samples);
        }
        map.put("air", air(&self.air));
        map.list("sap", self.sap.iter().map(sap).collect());
        map.maybe("membrane", self.membrane.as_ref().map(membrane));
        map.put("evaporator", evaporator(&self.evaporator));
        map.maybe("finishing", self.finishing.as_ref().map(finishing));
        map.put("target", target(&self.target));
        if !self.instruments.is_empty() {
            let mut named = Map::default();
            for (name, kind) in &self.instruments {
                named.put(name, instrument(kind));
            }
            map.put("instruments", named.tree());
        }
        if !self.containers.is_empty() {
            map.list("containers", self.containers.iter().map(container).collect());
        }
        map.given("fill_temperature", self.fill_temperature.as_ref());
        map.price("electricity", self.electricity);
        map.price("labour", self.labour);
        map.tree()
    }
}

fn air(air: &Air) -> Tree {
    let mut map = Map::default();
    if let Some(station) = &air.typed {
        let pressure = Given {
            value: station.pressure(),
            uncertainty: Some(station.uncertainty().si()),
            unit: None,
        };
        map.given("station_pressure", Some(&pressure));
    }
    map.given("water_boils_at", air.water_boils_at.as_ref());
    map.given("station_pressure", air.station_pressure.as_ref());
    map.given("altimeter_setting", air.altimeter_setting.as_ref());
    map.given("sea_level_pressure", air.sea_level_pressure.as_ref());
    map.given("altitude", air.altitude.as_ref());
    map.given("air_temperature", air.air_temperature.as_ref());
    map.tree()
}

fn sap(sap: &Sap) -> Tree {
    let mut map = Map::default();
    map.text("name", sap.name.as_ref());
    map.given("volume", sap.volume.as_ref());
    map.given("mass", sap.mass.as_ref());
    map.given("brix", sap.brix.as_ref());
    if let Some(reading) = &sap.reading {
        let mut inner = Map::default();
        inner.put("value", Tree::Number(reading.value));
        inner.text("instrument", Some(&reading.instrument));
        inner.given("temperature", reading.temperature.as_ref());
        map.put("reading", inner.tree());
    }
    map.given("temperature", sap.temperature.as_ref());
    map.tree()
}

fn membrane(membrane: &Membrane) -> Tree {
    let mut map = Map::default();
    map.put("element", element(&membrane.element));
    if let Some(parallel) = membrane.parallel {
        map.number("parallel", parallel);
    }
    if let Some(series) = membrane.series {
        map.number("series", series);
    }
    map.given("pressure", Some(&membrane.pressure));
    map.given("pressure_limit", membrane.pressure_limit.as_ref());
    map.maybe("pump", membrane.pump.as_ref().map(pump));
    map.maybe(
        "temperature_model",
        membrane.temperature_model.map(|model| match model {
            TemperatureModel::Makers => word("makers"),
            TemperatureModel::Single(k) => one("single", Tree::Number(k)),
            TemperatureModel::Viscosity => word("viscosity"),
            TemperatureModel::PerDegree => word("per_degree"),
        }),
    );
    map.maybe(
        "polarisation",
        membrane.polarisation.map(|model| match model {
            Polarisation::RatingAnchored => word("rating_anchored"),
            Polarisation::Modulus(x) => one("modulus", Tree::Number(x)),
            Polarisation::Coefficient(k) => one("coefficient", Tree::Number(k)),
            Polarisation::None => word("none"),
        }),
    );
    map.given("film_factor", membrane.film_factor.as_ref());
    map.given("retention", membrane.retention.as_ref());
    map.given("element_drop", membrane.element_drop.as_ref());
    map.given("prefilter_drop", membrane.prefilter_drop.as_ref());
    map.given("back_pressure", membrane.back_pressure.as_ref());
    map.given("hold_up", membrane.hold_up.as_ref());
    map.given("rinse", membrane.rinse.as_ref());
    map.maybe(
        "warming",
        membrane.warming.map(|warming| match warming {
            Warming::Isothermal => word("isothermal"),
            Warming::Coupled => word("coupled"),
        }),
    );
    let run = match &membrane.run {
        Run::RecirculateUntil(until) => one(
            "recirculate_until",
            match until {
                Until::Brix(x) => one("brix", written(x)),
                Until::Volume(x) => one("volume", written(x)),
                Until::Recovery(x) => one("recovery", written(x)),
                Until::Duration(x) => one("duration", written(x)),
            },
        ),
        Run::SinglePass { recovery } => one("single_pass", one("recovery", written(recovery))),
    };
    map.put("run", run);
    map.tree()
}

fn element(element: &Element) -> Tree {
    let mut map = Map::default();
    map.given("flow", Some(&element.flow));
    map.given("pressure", Some(&element.pressure));
    map.given("temperature", Some(&element.temperature));
    map.given("salt", Some(&element.salt));
    map.given("recovery", Some(&element.recovery));
    map.given("rejection", Some(&element.rejection));
    map.given("permeance", element.permeance.as_ref());
    map.tree()
}

fn pump(pump: &Pump) -> Tree {
    let mut map = Map::default();
    map.given("flow", pump.flow.as_ref());
    if !pump.points.is_empty() {
        let points = pump.points.iter().map(|point| {
            let mut map = Map::default();
            map.given("pressure", Some(&point.pressure));
            map.given("flow", Some(&point.flow));
            map.given("power", point.power.as_ref());
            map.tree()
        });
        map.list("points", points.collect());
    }
    map.given("efficiency", pump.efficiency.as_ref());
    map.given("power", pump.power.as_ref());
    map.tree()
}

fn evaporator(evaporator: &Evaporator) -> Tree {
    let mut map = Map::default();
    map.put("pan", pan(&evaporator.pan));
    map.maybe(
        "heat",
        evaporator.heat.as_ref().map(|heat| match heat {
            Heat::HeldLevel {
                added,
                feed_temperature,
            } => {
                let mut inner = Map::default();
                inner.given("added", Some(added));
                inner.given("feed_temperature", Some(feed_temperature));
                one("held_level", inner.tree())
            }
            Heat::LevelDrop(evaporated) => one("level_drop", written(evaporated)),
            Heat::Power(power) => one("power", written(power)),
            Heat::AreaRule(kind) => one(
                "area_rule",
                word(match kind {
                    PanKind::Flat => "flat",
                    PanKind::FlatBlower => "flat_blower",
                    PanKind::Flue => "flue",
                }),
            ),
        }),
    );
    map.maybe("left_in_pan", evaporator.left_in_pan.as_ref().map(left_in_pan));
    map.maybe("fuel", evaporator.fuel.as_ref().map(fuel));
    map.maybe("run", evaporator.run.map(|PanRun::Batch| word("batch")));
    map.tree()
}

fn pan(pan: &Pan) -> Tree {
    let mut map = Map::default();
    map.given("length", Some(&pan.length));
    map.given("width", Some(&pan.width));
    map.given("running_depth", pan.running_depth.as_ref());
    map.given("least_depth", pan.least_depth.as_ref());
    map.tree()
}

fn left_in_pan(left: &LeftInPan) -> Tree {
    let mut map = Map::default();
    map.given("volume", Some(&left.volume));
    map.given("brix", Some(&left.brix));
    map.given("temperature", Some(&left.temperature));
    map.tree()
}

fn fuel(fuel: &Fuel) -> Tree {
    let mut map = Map::default();
    map.maybe("wood", fuel.wood.as_ref().map(wood));
    map.text("named", fuel.named.as_ref());
    map.maybe(
        "efficiency",
        fuel.efficiency.as_ref().map(|efficiency| match efficiency {
            Efficiency::OfGross(x) => one("of_gross", written(x)),
            Efficiency::OfNet(x) => one("of_net", written(x)),
        }),
    );
    map.price("price", fuel.price);
    map.tree()
}

fn wood(wood: &Wood) -> Tree {
    let mut map = Map::default();
    map.text("species", wood.species.as_ref());
    map.maybe(
        "moisture",
        wood.moisture.as_ref().map(|moisture| match moisture {
            Moisture::WetBasis(x) => one("wet_basis", written(x)),
            Moisture::DryBasis(x) => one("dry_basis", written(x)),
        }),
    );
    map.tree()
}

fn finishing(finishing: &Finishing) -> Tree {
    let mut map = Map::default();
    map.given("heat", finishing.heat.as_ref());
    map.given("capacity", finishing.capacity.as_ref());
    map.maybe("fuel", finishing.fuel.as_ref().map(fuel));
    map.tree()
}

fn target(target: &Target) -> Tree {
    let mut map = Map::default();
    map.given("brix", Some(&target.brix));
    map.given("guard", target.guard.as_ref());
    map.given("non_sucrose_rise", target.non_sucrose_rise.as_ref());
    map.given("sugar_lost", target.sugar_lost.as_ref());
    map.tree()
}

/// As an instrument is read from data.
pub(crate) fn instrument(instrument: &Instrument) -> Tree {
    let mut map = Map::default();
    match instrument {
        Instrument::Hydrometer(hydrometer) => {
            map.put("scale", word(hydrometer.scale.name()));
            map.given("calibrated_at", Some(&hydrometer.calibrated_at));
            map.given("glass_expansion", hydrometer.glass_expansion.as_ref());
            map.maybe("offset", hydrometer.offset.map(Tree::Number));
            map.maybe("two_point", hydrometer.two_point.map(two_point));
            let span = |span: Span| Tree::map([("low", Tree::Number(span.low)), ("high", Tree::Number(span.high))]);
            map.maybe("span", hydrometer.span.map(span));
            map.maybe("resolution", hydrometer.resolution.map(Tree::Number));
            map.maybe("uncertainty", hydrometer.uncertainty.map(Tree::Number));
            one("hydrometer", map.tree())
        }
        Instrument::Refractometer(refractometer) => {
            let compensated = refractometer.compensated.as_ref().map(|compensated| {
                let mut range = Map::default();
                range.given("low", Some(&compensated.low));
                range.given("high", Some(&compensated.high));
                range.tree()
            });
            map.maybe("compensated", compensated);
            map.maybe("uncompensated", refractometer.uncompensated.map(Tree::Bool));
            map.maybe("zero", refractometer.zero.map(Tree::Number));
            map.given("set_to_zero_at", refractometer.set_to_zero_at.as_ref());
            map.maybe("two_point", refractometer.two_point.map(two_point));
            map.maybe("resolution", refractometer.resolution.map(Tree::Number));
            map.maybe("uncertainty", refractometer.uncertainty.map(Tree::Number));
            one("refractometer", map.tree())
        }
    }
}

fn two_point(points: [CheckPoint; 2]) -> Tree {
    let point = |point: CheckPoint| {
        Tree::map([
            ("shown", Tree::Number(point.shown)),
            ("expected", Tree::Number(point.expected)),
        ])
    };
    points.map(point).into_iter().collect()
}

fn container(container: &Container) -> Tree {
    let mut map = Map::default();
    map.text("name", container.name.as_ref());
    map.given("volume", Some(&container.volume));
    map.number("stock", container.stock);
    map.given("brimful", container.brimful.as_ref());
    map.text("material", container.material.as_ref());
    map.given("mass", container.mass.as_ref());
    map.given("temperature", container.temperature.as_ref());
    map.price("price", container.price);
    map.tree()
}

/// A map under construction.
#[derive(Default)]
struct Map(Vec<(String, Tree)>);

impl Map {
    fn put(&mut self, key: &str, tree: Tree) {
        self.0.push((key.to_string(), tree));
    }

    fn maybe(&mut self, key: &str, tree: Option<Tree>) {
        if let Some(tree) = tree {
            self.put(key, tree);
        }
    }

    fn given<T: Value>(&mut self, key: &str, given: Option<&Given<T>>) {
        self.maybe(key, given.map(written));
    }

    fn text(&mut self, key: &str, text: Option<&String>) {
        self.maybe(key, text.map(|text| Tree::Text(text.clone())));
    }

    fn number(&mut self, key: &str, number: u32) {
        self.put(key, Tree::Number(f64::from(number)));
    }

    fn list(&mut self, key: &str, list: Vec<Tree>) {
        self.put(key, Tree::List(list));
    }

    fn price(&mut self, key: &str, price: Option<Price>) {
        if let Some(price) = price {
            let mut map = Self::default();
            map.put("amount", Tree::Number(price.amount));
            map.put("per", Tree::Text(price.per.to_string()));
            self.put(key, map.tree());
        }
    }

    fn tree(self) -> Tree {
        Tree::Map(self.0)
    }
}

fn word(text: &str) -> Tree {
    Tree::Text(text.to_string())
}

fn one(key: &str, tree: Tree) -> Tree {
    Tree::Map(vec![(key.to_string(), tree)])
}

/// A seed: a number where a double holds it, a text where it does not.
fn whole(number: u64) -> Tree {
    #[expect(
        clippy::cast_precision_loss,
        reason = "only whole numbers that a double holds are cast"
    )]
    if number <= 1 << 53 {
        Tree::Number(number as f64)
    } else {
        Tree::Text(number.to_string())
    }
}

/// A value in the unit it was given in, or in the one people would write.
fn written<T: Value>(given: &Given<T>) -> Tree {
    let si = given.value.si();
    let (value, unit) = as_typed(si, given.unit.unwrap_or_else(|| usual_unit(T::DIMENSION)));
    if given.uncertainty.is_none() && (unit.symbol.is_empty() || unit.dimension == Dimension::Brix) {
        return Tree::Number(value);
    }
    let mut map = Map::default();
    map.put("value", Tree::Number(value));
    if !(unit.symbol.is_empty() || unit.dimension == Dimension::Brix) {
        map.put("unit", word(unit.symbol));
    }
    if let Some(uncertainty) = given.uncertainty {
        map.put("uncertainty", Tree::Number(uncertainty / unit.factor()));
    }
    map.tree()
}

/// The shortest number that reads back to exactly `si`; in SI where the unit has none.
fn as_typed(si: f64, unit: &'static Unit) -> (f64, &'static Unit) {
    let near = unit.from_si(si);
    for digits in [6, 9, 12, 15, 17] {
        let candidate = rounded(near, digits, Toward::Nearest);
        if unit.to_si(candidate).to_bits() == si.to_bits() {
            return (candidate, unit);
        }
    }
    for step in [-2_i64, -1, 1, 2] {
        let candidate = f64::from_bits(near.to_bits().wrapping_add_signed(step));
        if unit.to_si(candidate).to_bits() == si.to_bits() {
            return (candidate, unit);
        }
    }
    (si, Unit::base(unit.dimension))
}

fn usual_unit(dimension: Dimension) -> &'static Unit {
    match dimension {
        Dimension::Volume => &table::litre,
        Dimension::Temperature => &table::deg_c,
        Dimension::Pressure => &table::kpa,
        Dimension::GaugePressure => &table::bar_gauge,
        Dimension::Time => &table::hours,
        Dimension::Flow => &table::litre_per_h,
        Dimension::MassFlow => &table::kg_per_h,
        Dimension::Power => &table::kw,
        Dimension::Concentration => &table::mg_per_litre,
        Dimension::Permeance => &table::litre_per_h_bar,
        other => Unit::base(other),
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for DayInputs {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.tree().serialize(serializer)
    }
}
