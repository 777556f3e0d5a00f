//! The day resolved: every number in its slot, every default named, every range checked, in the order of the keys.

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};

use super::{
    air::{self, TodaysAir},
    inputs::{
        Container, DayInputs, Efficiency, Evaporator, Finishing, Fuel, Heat, LeftInPan, Membrane, Moisture, PanKind,
        Polarisation, Pump, Run, Target, TemperatureModel, Until, Warming,
    },
    limits as range,
    plan::{How, Remark, RestsOn},
    sap::{self, LotModel},
    slots::{Shape, Slot, Slots},
};
use crate::{
    digits::significant,
    error::{Error, ErrorKind},
    finish, fuel,
    instrument::Instrument,
    membrane,
    relation::Range,
    units::{Dimension, GaugePressure, Given, Price, Value, table},
};

/// The day as stations see it.
#[derive(Clone, Debug)]
pub(super) struct Model {
    pub(super) slots: Slots,
    pub(super) seed: u64,
    pub(super) samples: u32,
    pub(super) air: TodaysAir,
    pub(super) lots: Vec<LotModel>,
    pub(super) rig: Option<RigModel>,
    pub(super) pan: PanModel,
    pub(super) fuel: FuelModel,
    pub(super) finishing: Option<FinishingModel>,
    pub(super) target: TargetModel,
    pub(super) instruments: Vec<(String, Instrument)>,
    pub(super) containers: Vec<ContainerModel>,
    pub(super) fill_temperature: Slot,
    pub(super) electricity: Option<Price>,
    pub(super) labour: Option<Price>,
    pub(super) remarks: Vec<Remark>,
    pub(super) rests_on: Vec<RestsOn>,
}

#[derive(Clone, Debug)]
pub(super) struct RigModel {
    pub(super) flow: Slot,
    pub(super) rated_pressure: Slot,
    pub(super) rated_temperature: Slot,
    pub(super) salt: Slot,
    pub(super) recovery: Slot,
    pub(super) rejection: Slot,
    pub(super) permeance: Option<Slot>,
    /// One factor on the permeance for each element, train by train.
    pub(super) shares: Vec<Slot>,
    pub(super) parallel: u32,
    pub(super) series: u32,
    pub(super) pressure: Slot,
    pub(super) pump: PumpModel,
    pub(super) temperature_model: TemperatureModel,
    /// Standard normal: its size depends on the tank's temperature.
    pub(super) factor_error: Slot,
    pub(super) polarisation: Polarisation,
    pub(super) film_factor: Slot,
    pub(super) retention: Slot,
    pub(super) element_drop: Slot,
    pub(super) prefilter_drop: Slot,
    pub(super) back_pressure: Slot,
    pub(super) hold_up: Slot,
    pub(super) rinse: Slot,
    pub(super) warming: Warming,
    pub(super) run: RunModel,
    pub(super) how: How,
}

#[derive(Clone, Debug)]
pub(super) struct PumpModel {
    pub(super) flow: Slot,
    /// In place of the flow.
    pub(super) points: Vec<membrane::PumpPoint>,
    pub(super) efficiency: Slot,
    /// In place of the efficiency.
    pub(super) power: Option<Slot>,
}

#[derive(Clone, Copy, Debug)]
pub(super) enum RunModel {
    Brix(Slot),
    Volume(Slot),
    Recovery(Slot),
    Duration(Slot),
    SinglePass(Slot),
}

#[derive(Clone, Debug)]
pub(super) struct PanModel {
    pub(super) length: Slot,
    pub(super) width: Slot,
    pub(super) running_depth: Slot,
    pub(super) least_depth: Slot,
    pub(super) heat: HeatModel,
    /// Factor on the heat.
    pub(super) heat_error: Slot,
    pub(super) left: Option<LeftModel>,
    pub(super) how: How,
}

#[derive(Clone, Copy, Debug)]
pub(super) enum HeatModel {
    HeldLevel { added: Slot, feed: Slot },
    LevelDrop(Slot),
    Power(Slot),
    AreaRule(PanKind),
}

#[derive(Clone, Copy, Debug)]
pub(super) struct LeftModel {
    pub(super) volume: Slot,
    pub(super) brix: Slot,
    pub(super) kelvin: Slot,
}

#[derive(Clone, Debug)]
pub(super) struct FuelModel {
    pub(super) name: String,
    pub(super) kind: FuelKind,
    pub(super) efficiency: Slot,
    pub(super) of_net: bool,
    pub(super) price: Option<Price>,
}

#[derive(Clone, Debug)]
pub(super) enum FuelKind {
    /// Wood: its moisture (wet basis), and a factor on the solid wood in a cord.
    Wood {
        moisture: Slot,
        cord: Slot,
    },
    Named,
}

#[derive(Clone, Debug)]
pub(super) struct FinishingModel {
    pub(super) heat: Slot,
    pub(super) capacity: Option<Slot>,
    pub(super) fuel: FuelModel,
    pub(super) how: How,
}

#[derive(Clone, Copy, Debug)]
pub(super) struct TargetModel {
    /// °Brix aimed at, guard included.
    pub(super) brix: f64,
    /// What the hydrometer allows: a difference of °Brix.
    pub(super) error: Slot,
    pub(super) rise: Slot,
    /// How far the boiling relation is off: a difference of temperatures.
    pub(super) relation_error: Slot,
    pub(super) lost: Slot,
}

#[derive(Clone, Debug)]
pub(super) struct ContainerModel {
    pub(super) name: String,
    pub(super) volume: Slot,
    pub(super) stock: u32,
    pub(super) brimful: Option<Slot>,
    pub(super) material: Option<finish::Material>,
    pub(super) mass: Option<Slot>,
    pub(super) kelvin: Slot,
    pub(super) price: Option<Price>,
}

/// Defaults with their provenance; the numbers in SI.
mod default {
    pub(super) const SAMPLES: u32 = 1000;
    pub(super) const SEED: u64 = 1;
    /// Inside the film's range; no source.
    pub(super) const PUMP_FLOW: f64 = 250.0 / 3.6e6;
    /// Common practice, no source: 0.25 to 0.45 for small diaphragm sets.
    pub(super) const PUMP_EFFICIENCY: f64 = 0.35;
    /// Common practice, no source: 10 to 20 %.
    pub(super) const RINSE: f64 = 0.15;
    /// Common practice, no source: 2 in and 1 in.
    pub(super) const RUNNING_DEPTH: f64 = 0.05;
    pub(super) const LEAST_DEPTH: f64 = 0.025;
    /// Wood stacked a year, with room for doubt; common practice, no source.
    pub(super) const MOISTURE: f64 = 0.25;
    /// Open wood arches, 25 to 60 % of gross: extension figures and common practice.
    pub(super) const WOOD_EFFICIENCY: f64 = 0.45;
    /// Hobby burner under an open pan, 30 to 45 % of gross: common practice, no source.
    pub(super) const BURNER_EFFICIENCY: f64 = 0.40;
    /// A small controllable burner: common practice, no source.
    pub(super) const FINISHING_HEAT: f64 = 3000.0;
    pub(super) const FILL_TEMPERATURE: f64 = 358.15;
    pub(super) const CONTAINER_TEMPERATURE: f64 = 293.15;
}

/// One standard deviation where the user gave none.
mod spread {
    use super::Shape;

    /// Each element ±20 % of its rating: makers' sheets.
    pub(super) const RATING: Shape = Shape::Rectangular(0.2);
    /// A bucket and a watch.
    pub(super) const OWN_PERMEANCE: Shape = Shape::Normal(0.03);
    pub(super) const GAUGE: f64 = 15_000.0;
    /// The film factor's default is the quick end of what is plausible.
    pub(super) const FILM: Shape = Shape::LogUniform(0.25, 1.0);
    pub(super) const AREA_RULE: Shape = Shape::LogNormal(0.15);
    pub(super) const DIP_STICK: Shape = Shape::LogNormal(0.10);
    pub(super) const WATER_TEST: Shape = Shape::LogNormal(0.05);
    pub(super) const MOISTURE: f64 = 0.05;
    pub(super) const EFFICIENCY: Shape = Shape::LogNormal(0.2);
    pub(super) const CORD: Shape = Shape::Normal(0.08);
    pub(super) const BURNER: f64 = 0.10;
    pub(super) const TARGET: Shape = Shape::Normal(0.2);
    pub(super) const BOILING_RELATION: Shape = Shape::Normal(0.06);
}

impl Model {
    pub(super) fn of(inputs: &DayInputs) -> Result<Self, Error> {
        Resolver::default().resolve(inputs)
    }
}

/// Collects slots, defaults and remarks on the way through the inputs.
#[derive(Debug, Default)]
pub(super) struct Resolver {
    pub(super) slots: Slots,
    pub(super) remarks: Vec<Remark>,
    rests_on: Vec<RestsOn>,
}

impl Resolver {
    fn resolve(mut self, inputs: &DayInputs) -> Result<Model, Error> {
        heading(inputs)?;
        let air = air::resolve(&mut self, &inputs.air).map_err(|e| e.within("air"))?;
        let instruments = sap::instruments(inputs)?;
        let lots = sap::resolve(&mut self, inputs, &instruments)?;
        let rig = match &inputs.membrane {
            Some(membrane) => Some(self.membrane(membrane).map_err(|e| e.within("membrane"))?),
            None => None,
        };
        let pan = self
            .evaporator(&inputs.evaporator)
            .map_err(|e| e.within("evaporator"))?;
        let fuel = self.fire(inputs.evaporator.fuel.as_ref())?;
        let finishing = match &inputs.finishing {
            Some(finishing) => Some(self.finishing(finishing).map_err(|e| e.within("finishing"))?),
            None => None,
        };
        let target = self.target(&inputs.target).map_err(|e| e.within("target"))?;
        let mut containers = Vec::new();
        for (i, container) in inputs.containers.iter().enumerate() {
            let path = || format!("containers[{i}]");
            containers.push(self.container(container, i).map_err(|e| e.within(&path()))?);
        }
        let fill_temperature = self.optional(
            inputs.fill_temperature.as_ref(),
            &range::FILL_TEMPERATURE,
            default::FILL_TEMPERATURE,
            None,
        )?;
        for (price, path) in [(inputs.electricity, "electricity"), (inputs.labour, "labour")] {
            checked_price(price).map_err(|e| e.within(path))?;
        }
        if inputs
            .electricity
            .is_some_and(|p| p.per.dimension() != Dimension::Energy)
        {
            return Err(price_of_what("electricity", "0.2 per 1 kWh"));
        }
        if inputs.labour.is_some_and(|p| p.per.dimension() != Dimension::Time) {
            return Err(price_of_what("labour", "20 per 1 h"));
        }
        if inputs.target.sugar_lost.is_none() {
            self.assume("target.sugar_lost", "no sugar lost");
        }
        self.assume("day", "no time for lighting, carrying and packing");
        Ok(Model {
            slots: self.slots,
            seed: inputs.seed.unwrap_or(default::SEED),
            samples: inputs.samples.unwrap_or(default::SAMPLES),
            air,
            lots,
            rig,
            pan,
            fuel,
            finishing,
            target,
            instruments,
            containers,
            fill_temperature,
            electricity: inputs.electricity,
            labour: inputs.labour,
            remarks: self.remarks,
            rests_on: self.rests_on,
        })
    }

    fn membrane(&mut self, membrane: &Membrane) -> Result<RigModel, Error> {
        let element = &membrane.element;
        let mut rated =
            |given: &dyn AnyGiven, range: &Range| given.take(self, range, None).map_err(|e| e.within("element"));
        let flow = rated(&element.flow, &range::RATED_FLOW)?;
        let rated_pressure = rated(&element.pressure, &range::RATED_PRESSURE)?;
        let rated_temperature = rated(&element.temperature, &range::RATED_TEMPERATURE)?;
        let salt = rated(&element.salt, &range::SALT)?;
        let recovery = rated(&element.recovery, &range::RATED_RECOVERY)?;
        let rejection = rated(&element.rejection, &range::REJECTION)?;
        let permeance = match &element.permeance {
            Some(own) => Some(rated(own, &range::PERMEANCE)?),
            None => None,
        };
        let parallel = count(membrane.parallel, "parallel", 64)?;
        let series = count(membrane.series, "series", 8)?;
        // What the user measured scatters by the user's own uncertainty; a rating by the makers'.
        let share = match &element.permeance {
            Some(own) => own.uncertainty.is_none().then_some(spread::OWN_PERMEANCE),
            None => element.flow.uncertainty.is_none().then_some(spread::RATING),
        };
        let shares = (0..parallel * series)
            .map(|_| self.slots.spread(1.0, share, 0.05, 4.0))
            .collect();
        if permeance.is_some() {
            self.calibrated("membrane.element.permeance", "permeance from your own test");
        } else {
            self.assume("membrane.element", "element made to its rating");
        }
        if let Some(limit) = &membrane.pressure_limit {
            exact(limit, "pressure_limit")?;
            range::PRESSURE_LIMIT.check(limit.si())?;
        }
        let pressure = self.rig_pressure(membrane)?;
        if membrane.pressure_limit.is_none() {
            self.assume("membrane.pressure_limit", "no pressure limit given, not checked");
        }
        let elements = f64::from(parallel * series);
        let none = Pump::default();
        let pump = membrane.pump.as_ref().unwrap_or(&none);
        let pump_model = self.pump(pump, elements).map_err(|e| e.within("pump"))?;
        let temperature_model = self.temperature_model(membrane.temperature_model)?;
        let factor_error = self.slots.spread(0.0, Some(Shape::Normal(1.0)), -4.0, 4.0);
        let polarisation = membrane.polarisation.unwrap_or(Polarisation::RatingAnchored);
        polarisation_in_range(polarisation)?;
        let film =
            (polarisation == Polarisation::RatingAnchored && membrane.film_factor.is_none()).then_some(spread::FILM);
        let film_factor = self.optional(membrane.film_factor.as_ref(), &range::FILM_FACTOR, 1.0, film)?;
        if film.is_some() {
            self.assume("membrane.film_factor", "film factor 1 (0.25 to 1)");
        }
        let retention = self.optional(membrane.retention.as_ref(), &range::RETENTION, 1.0, None)?;
        if membrane.retention.is_none() {
            self.assume("membrane.retention", "all sugar kept by the membrane");
        }
        let element_drop = self.optional(membrane.element_drop.as_ref(), &range::ELEMENT_DROP, 0.0, None)?;
        let prefilter_drop = self.optional(membrane.prefilter_drop.as_ref(), &range::PREFILTER_DROP, 0.0, None)?;
        let back_pressure = self.optional(membrane.back_pressure.as_ref(), &range::BACK_PRESSURE, 0.0, None)?;
        let hold_up = self.optional(membrane.hold_up.as_ref(), &range::RIG_HOLD_UP, 0.0, None)?;
        self.assume_none(membrane);
        if pump.efficiency.is_none() && pump.power.is_none() {
            self.assume("membrane.pump.efficiency", "pump efficiency 35 %");
        }
        let rinse = self.optional(membrane.rinse.as_ref(), &range::RINSE, default::RINSE, None)?;
        let run = self.run(&membrane.run)?;
        let how = if permeance.is_some() {
            How::Calibrated
        } else {
            How::Assumed
        };
        Ok(RigModel {
            flow,
            rated_pressure,
            rated_temperature,
            salt,
            recovery,
            rejection,
            permeance,
            shares,
            parallel,
            series,
            pressure,
            pump: pump_model,
            temperature_model,
            factor_error,
            polarisation,
            film_factor,
            retention,
            element_drop,
            prefilter_drop,
            back_pressure,
            hold_up,
            rinse,
            warming: membrane.warming.unwrap_or(Warming::Isothermal),
            run,
            how,
        })
    }

    /// The gauge, within what the rig's weakest part allows.
    fn rig_pressure(&mut self, membrane: &Membrane) -> Result<Slot, Error> {
        let pressure = self.take(
            &membrane.pressure,
            &range::RIG_PRESSURE,
            Some(Shape::Normal(spread::GAUGE)),
        )?;
        if let Some(limit) = &membrane.pressure_limit {
            let (given, allowed) = (membrane.pressure.si(), limit.si());
            if given > allowed * (1.0 + 1e-15) {
                let bar = |si| table::bar_gauge.from_si(si);
                return Err(
                    Error::out_of_limits("pressure", bar(given), &table::bar_gauge, 0.0, bar(allowed))
                        .with_hint("the rig's weakest part allows no more"),
                );
            }
        }
        Ok(pressure)
    }

    fn pump(&mut self, pump: &Pump, elements: f64) -> Result<PumpModel, Error> {
        let flow = self.optional(
            pump.flow.as_ref(),
            &range::PUMP_FLOW,
            default::PUMP_FLOW * elements,
            None,
        )?;
        for (i, point) in pump.points.iter().enumerate() {
            let drawn = exact(&point.pressure, "pressure")
                .and_then(|()| exact(&point.flow, "flow"))
                .and_then(|()| point.power.as_ref().map_or(Ok(()), |p| exact(p, "power")));
            drawn.map_err(|e| e.within(&format!("points[{i}]")))?;
        }
        let points: Vec<_> = pump
            .points
            .iter()
            .map(|point| membrane::PumpPoint {
                pressure: point.pressure.value,
                flow: point.flow.value,
                power: point.power.map(|p| p.value),
            })
            .collect();
        if points.is_empty() && pump.flow.is_none() {
            self.assume("membrane.pump.flow", "pump 250 L/h for each element");
        } else if !points.is_empty() {
            membrane::Pump::of_points(&points).map_err(|e| e.within("points"))?;
        }
        let efficiency = self.optional(
            pump.efficiency.as_ref(),
            &range::PUMP_EFFICIENCY,
            default::PUMP_EFFICIENCY,
            None,
        )?;
        let power = self.maybe(pump.power.as_ref(), &range::PUMP_POWER)?;
        Ok(PumpModel {
            flow,
            points,
            efficiency,
            power,
        })
    }

    fn temperature_model(&mut self, model: Option<TemperatureModel>) -> Result<TemperatureModel, Error> {
        let Some(model) = model else {
            self.assume("membrane.temperature_model", "makers' temperature factor");
            return Ok(TemperatureModel::Makers);
        };
        if let TemperatureModel::Single(k) = model {
            static SINGLE: Range = Range::new("temperature_model.single", &table::kelvin, 500.0, 6000.0);
            SINGLE.check(k)?;
        }
        Ok(model)
    }

    fn assume_none(&mut self, membrane: &Membrane) {
        let mut nothing = Vec::new();
        if membrane.element_drop.is_none() {
            nothing.push("no pressure drop");
        }
        if membrane.back_pressure.is_none() {
            nothing.push("no back pressure");
        }
        if membrane.hold_up.is_none() {
            nothing.push("no hold-up in the rig");
        }
        if !nothing.is_empty() {
            self.assume("membrane.element_drop", &nothing.join(", "));
        }
    }

    fn run(&mut self, run: &Run) -> Result<RunModel, Error> {
        let aim = |e: Error| e.within("run.recirculate_until");
        Ok(match run {
            Run::RecirculateUntil(Until::Brix(x)) => RunModel::Brix(self.take(x, &range::AIM_BRIX, None).map_err(aim)?),
            Run::RecirculateUntil(Until::Volume(x)) => {
                RunModel::Volume(self.take(x, &range::AIM_VOLUME, None).map_err(aim)?)
            }
            Run::RecirculateUntil(Until::Recovery(x)) => {
                RunModel::Recovery(self.take(x, &range::AIM_RECOVERY, None).map_err(aim)?)
            }
            Run::RecirculateUntil(Until::Duration(x)) => {
                RunModel::Duration(self.take(x, &range::AIM_DURATION, None).map_err(aim)?)
            }
            Run::SinglePass { recovery } => RunModel::SinglePass(
                self.take(recovery, &range::PASS_RECOVERY, None)
                    .map_err(|e| e.within("run.single_pass"))?,
            ),
        })
    }

    fn evaporator(&mut self, evaporator: &Evaporator) -> Result<PanModel, Error> {
        let pan = &evaporator.pan;
        let inner = |e: Error| e.within("pan");
        if pan.sections.is_some_and(|n| n > 1) {
            return Err(Error::not_yet("pan", "sections"));
        }
        let length = self.take(&pan.length, &range::PAN_LENGTH, None).map_err(inner)?;
        let width = self.take(&pan.width, &range::PAN_WIDTH, None).map_err(inner)?;
        let running_depth = self
            .optional(
                pan.running_depth.as_ref(),
                &range::RUNNING_DEPTH,
                default::RUNNING_DEPTH,
                None,
            )
            .map_err(inner)?;
        let least_depth = self
            .optional(
                pan.least_depth.as_ref(),
                &range::LEAST_DEPTH,
                default::LEAST_DEPTH,
                None,
            )
            .map_err(inner)?;
        let depths = (
            pan.running_depth.map_or(default::RUNNING_DEPTH, |d| d.si()),
            pan.least_depth.map_or(default::LEAST_DEPTH, |d| d.si()),
        );
        if depths.1 > depths.0 {
            let mm = |si| table::mm.show(table::mm.from_si(si));
            return Err(Error::inconsistent(
                "pan.least_depth",
                &mm(depths.1),
                &format!("running_depth = {}", mm(depths.0)),
            )
            .with_hint("the pan runs deeper than its least depth"));
        }
        let (heat, error, how) = self.heat(evaporator.heat.as_ref()).map_err(|e| e.within("heat"))?;
        match (pan.running_depth, pan.least_depth) {
            (None, None) => self.assume("evaporator.pan.running_depth", "depths 50 and 25 mm"),
            (None, _) => self.assume("evaporator.pan.running_depth", "running depth 50 mm"),
            (_, None) => self.assume("evaporator.pan.least_depth", "least depth 25 mm"),
            _ => {}
        }
        let left = match &evaporator.left_in_pan {
            Some(left) => Some(self.left_in_pan(left).map_err(|e| e.within("left_in_pan"))?),
            None => None,
        };
        Ok(PanModel {
            length,
            width,
            running_depth,
            least_depth,
            heat,
            heat_error: self.slots.spread(1.0, error, 0.1, 10.0),
            left,
            how,
        })
    }

    fn heat(&mut self, heat: Option<&Heat>) -> Result<(HeatModel, Option<Shape>, How), Error> {
        Ok(match heat {
            Some(Heat::HeldLevel {
                added,
                feed_temperature,
            }) => {
                let wrap = |e: Error| e.within("held_level");
                let slot = self.take(added, &range::WATER_ADDED, None).map_err(wrap)?;
                let feed = self
                    .take(feed_temperature, &range::WATER_TEMPERATURE, None)
                    .map_err(wrap)?;
                self.calibrated("evaporator.heat", "heat from your water test");
                let error = added.uncertainty.is_none().then_some(spread::WATER_TEST);
                (HeatModel::HeldLevel { added: slot, feed }, error, How::Calibrated)
            }
            Some(Heat::LevelDrop(evaporated)) => {
                let slot = self.take(evaporated, &range::LEVEL_DROP, None)?;
                self.calibrated("evaporator.heat", "heat from your water test");
                let error = evaporated.uncertainty.is_none().then_some(spread::DIP_STICK);
                (HeatModel::LevelDrop(slot), error, How::Calibrated)
            }
            Some(Heat::Power(power)) => {
                let slot = self.take(power, &range::PAN_POWER, None)?;
                let error = power.uncertainty.is_none().then_some(spread::WATER_TEST);
                (HeatModel::Power(slot), error, How::Given)
            }
            Some(Heat::AreaRule(kind)) => {
                self.area_rule(*kind);
                (HeatModel::AreaRule(*kind), Some(spread::AREA_RULE), How::Assumed)
            }
            None => {
                self.area_rule(PanKind::Flat);
                (
                    HeatModel::AreaRule(PanKind::Flat),
                    Some(spread::AREA_RULE),
                    How::Assumed,
                )
            }
        })
    }

    fn area_rule(&mut self, kind: PanKind) {
        let rate = match kind {
            PanKind::Flat => "1 gal/(h ft²) from the pan",
            PanKind::FlatBlower => "1.5 gal/(h ft²) from the pan",
            PanKind::Flue => "2 gal/(h ft²) from the pan",
        };
        self.assume("evaporator.heat", rate);
    }

    fn left_in_pan(&mut self, left: &LeftInPan) -> Result<LeftModel, Error> {
        Ok(LeftModel {
            volume: self.take(&left.volume, &range::LEFT_VOLUME, None)?,
            brix: self.take(&left.brix, &range::LEFT_BRIX, None)?,
            kelvin: self.take(&left.temperature, &range::LEFT_TEMPERATURE, None)?,
        })
    }

    fn fire(&mut self, given: Option<&Fuel>) -> Result<FuelModel, Error> {
        let wood = Fuel {
            wood: Some(super::inputs::Wood::default()),
            ..Fuel::default()
        };
        self.fuel(given.unwrap_or(&wood), "evaporator.fuel")
            .map_err(|e| e.within("evaporator.fuel"))
    }

    fn fuel(&mut self, given: &Fuel, path: &str) -> Result<FuelModel, Error> {
        checked_price(given.price).map_err(|e| e.within("price"))?;
        if let (Some(named), Some(_)) = (&given.named, &given.wood) {
            return Err(Error::inconsistent(
                "named",
                &format!("\"{named}\""),
                "wood; give one of them",
            ));
        }
        let mut texts = Vec::new();
        let (name, kind) = if let Some(named) = &given.named {
            let made = fuel::Fuel::named(named).map_err(|e| e.named("named"))?;
            priced(made, given.price)?;
            (named.clone(), FuelKind::Named)
        } else {
            let wood = given.wood.clone().unwrap_or_default();
            let species = wood.species.unwrap_or_else(|| String::from("hardwood"));
            let moisture = self.moisture(wood.moisture.as_ref()).map_err(|e| e.within("wood"))?;
            let wet = fuel::Moisture::wet_basis(crate::units::fraction(default::MOISTURE))?;
            let made = fuel::Fuel::wood(&species, wet).map_err(|e| e.named("wood.species"))?;
            priced(made, given.price)?;
            if wood.moisture.is_none() {
                texts.push(String::from("wood 25 % wet"));
            }
            let cord = self.slots.spread(1.0, Some(spread::CORD), 0.5, 1.5);
            (species, FuelKind::Wood { moisture, cord })
        };
        let fallback = if matches!(kind, FuelKind::Wood { .. }) {
            default::WOOD_EFFICIENCY
        } else {
            default::BURNER_EFFICIENCY
        };
        let (efficiency, of_net) = match &given.efficiency {
            Some(Efficiency::OfGross(x)) => (self.efficiency(x, false)?, false),
            Some(Efficiency::OfNet(x)) => (self.efficiency(x, true)?, true),
            None => {
                let percent = significant(fallback * 100.0, 3);
                texts.push(if matches!(kind, FuelKind::Wood { .. }) {
                    format!("{percent} % of gross heat")
                } else {
                    format!("{name} {percent} % of gross heat")
                });
                (self.slots.spread(fallback, Some(spread::EFFICIENCY), 0.05, 1.0), false)
            }
        };
        if !texts.is_empty() {
            self.assume(&format!("{path}.efficiency"), &texts.join(", "));
        }
        if matches!(kind, FuelKind::Wood { .. }) {
            self.assume(path, "cord of 85 ft³ solid");
        }
        Ok(FuelModel {
            name,
            kind,
            efficiency,
            of_net,
            price: given.price,
        })
    }

    fn moisture(&mut self, moisture: Option<&Moisture>) -> Result<Slot, Error> {
        let (wet, own) = match moisture {
            Some(Moisture::WetBasis(x)) => {
                fuel::Moisture::wet_basis(x.value)?;
                (x.si(), uncertainty(x, &range::MOISTURE)?)
            }
            Some(Moisture::DryBasis(x)) => {
                fuel::Moisture::dry_basis(x.value)?;
                let dry = x.si();
                let slope = (1.0 + dry) * (1.0 + dry);
                (dry / (1.0 + dry), uncertainty(x, &range::MOISTURE)?.map(|u| u / slope))
            }
            None => (default::MOISTURE, None),
        };
        let shape = Shape::Normal(own.unwrap_or(spread::MOISTURE));
        Ok(self.slots.spread(wet, Some(shape), 0.10, 0.45))
    }

    fn efficiency(&mut self, given: &Given<crate::units::Ratio>, of_net: bool) -> Result<Slot, Error> {
        if of_net {
            fuel::Efficiency::of_net(given.value)?;
        } else {
            fuel::Efficiency::of_gross(given.value)?;
        }
        let own = uncertainty(given, &range::EFFICIENCY)?.map(Shape::Normal);
        Ok(self
            .slots
            .spread(given.si(), own.or(Some(spread::EFFICIENCY)), 0.05, 1.0))
    }

    fn finishing(&mut self, finishing: &Finishing) -> Result<FinishingModel, Error> {
        let heat = self.optional(
            finishing.heat.as_ref(),
            &range::FINISHING_HEAT,
            default::FINISHING_HEAT,
            Some(Shape::LogNormal(spread::BURNER)),
        )?;
        if finishing.heat.is_none() {
            self.assume("finishing.heat", "finishing burner 3 kW");
        }
        let capacity = self.maybe(finishing.capacity.as_ref(), &range::CAPACITY)?;
        let propane = Fuel::named("propane");
        let fuel = self
            .fuel(finishing.fuel.as_ref().unwrap_or(&propane), "finishing.fuel")
            .map_err(|e| e.within("fuel"))?;
        let how = if finishing.heat.is_some() {
            How::Given
        } else {
            How::Assumed
        };
        Ok(FinishingModel {
            heat,
            capacity,
            fuel,
            how,
        })
    }

    fn target(&mut self, target: &Target) -> Result<TargetModel, Error> {
        range::TARGET_BRIX.check(target.brix.si())?;
        let own = uncertainty(&target.brix, &range::TARGET_BRIX)?.map(Shape::Normal);
        let guard = match &target.guard {
            Some(guard) => {
                exact(guard, "guard")?;
                range::GUARD.check(guard.si())?
            }
            None => 0.0,
        };
        let rise = self.optional(target.non_sucrose_rise.as_ref(), &range::NON_SUCROSE_RISE, 0.0, None)?;
        let lost = self.optional(target.sugar_lost.as_ref(), &range::SUGAR_LOST, 0.0, None)?;
        Ok(TargetModel {
            brix: target.brix.si() + guard,
            error: self.slots.spread(0.0, own.or(Some(spread::TARGET)), -5.0, 5.0),
            rise,
            relation_error: self.slots.spread(0.0, Some(spread::BOILING_RELATION), -1.0, 1.0),
            lost,
        })
    }

    fn container(&mut self, container: &Container, index: usize) -> Result<ContainerModel, Error> {
        let volume = self.take(&container.volume, &range::LABEL, None)?;
        let brimful = self.maybe(container.brimful.as_ref(), &range::BRIMFUL)?;
        let mass = self.maybe(container.mass.as_ref(), &range::CONTAINER_MASS)?;
        let kelvin = self.optional(
            container.temperature.as_ref(),
            &range::CONTAINER_TEMPERATURE,
            default::CONTAINER_TEMPERATURE,
            None,
        )?;
        checked_price(container.price).map_err(|e| e.within("price"))?;
        if container.price.is_some_and(|p| p.per.dimension() != Dimension::Count) {
            return Err(price_of_what("price", "1.6 per 1 each"));
        }
        let assumed = "glass at 20 °C";
        if container.temperature.is_none() && !self.rests_on.iter().any(|r| r.text == assumed) {
            self.assume(&format!("containers[{index}].temperature"), assumed);
        }
        let material = match &container.material {
            Some(name) => Some(finish::Material::named(name)?),
            None => None,
        };
        let label = table::ml.from_si(container.volume.si());
        Ok(ContainerModel {
            name: match &container.name {
                Some(name) => name.clone(),
                None => format!("{} mL container", significant(label, 4)),
            },
            volume,
            stock: container.stock,
            brimful,
            material,
            mass,
            kelvin,
            price: container.price,
        })
    }

    fn maybe<T: Value>(&mut self, given: Option<&Given<T>>, range: &Range) -> Result<Option<Slot>, Error> {
        given.map(|given| self.take(given, range, None)).transpose()
    }

    pub(super) fn take<T: Value>(
        &mut self,
        given: &Given<T>,
        range: &Range,
        usual: Option<Shape>,
    ) -> Result<Slot, Error> {
        let si = range.check(given.si())?;
        let own = uncertainty(given, range)?.map(Shape::Normal);
        let (low, high) = range.limits_si();
        Ok(self.slots.spread(si, own.or(usual), low, high))
    }

    fn optional<T: Value>(
        &mut self,
        given: Option<&Given<T>>,
        range: &Range,
        fallback: f64,
        usual: Option<Shape>,
    ) -> Result<Slot, Error> {
        match given {
            Some(given) => self.take(given, range, usual),
            None => {
                let (low, high) = range.limits_si();
                Ok(self.slots.spread(fallback, usual, low, high))
            }
        }
    }

    pub(super) fn assume(&mut self, input: &str, text: &str) {
        self.rest(input, How::Assumed, text);
    }

    pub(super) fn calibrated(&mut self, input: &str, text: &str) {
        self.rest(input, How::Calibrated, text);
    }

    fn rest(&mut self, input: &str, how: How, text: &str) {
        self.rests_on.push(RestsOn {
            input: input.to_string(),
            how,
            text: text.to_string(),
        });
    }
}

/// A given value of any quantity, for a row of checks.
trait AnyGiven {
    fn take(&self, resolver: &mut Resolver, range: &Range, usual: Option<Shape>) -> Result<Slot, Error>;
}

impl<T: Value> AnyGiven for Given<T> {
    fn take(&self, resolver: &mut Resolver, range: &Range, usual: Option<Shape>) -> Result<Slot, Error> {
        resolver.take(self, range, usual)
    }
}

/// The user's own standard uncertainty, if it is a number that can be one: no wider than the range itself.
pub(super) fn uncertainty<T: Value>(given: &Given<T>, range: &Range) -> Result<Option<f64>, Error> {
    let Some(own) = given.uncertainty else {
        return Ok(None);
    };
    let (low, high) = range.limits_si();
    if own >= 0.0 && own <= high - low {
        return Ok(Some(own));
    }
    let step = range.unit.factor();
    let error = if own.is_finite() {
        let finding = format!(
            " = {} is outside 0 to {}",
            significant(own / step, 6),
            significant((high - low) / step, 6)
        );
        Error::new(ErrorKind::OutOfRange, "uncertainty", finding)
    } else {
        Error::not_finite("uncertainty", own)
    };
    Err(error.within(range.argument))
}

/// A value that the ranges do not draw may not pretend to scatter.
pub(super) fn exact<T: Value>(given: &Given<T>, argument: &'static str) -> Result<(), Error> {
    match given.uncertainty {
        Some(u) => Err(Error::new(
            ErrorKind::Inconsistent,
            "uncertainty",
            format!(" = {} is not drawn", significant(u, 6)),
        )
        .with_hint("leave it out here")
        .within(argument)),
        None => Ok(()),
    }
}

fn heading(inputs: &DayInputs) -> Result<(), Error> {
    if inputs.schema_version != super::SCHEMA_VERSION {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "schema_version",
            format!(" = {} is outside 1 to 1", inputs.schema_version),
        )
        .with_hint("this version reads version 1"));
    }
    if let Some(title) = &inputs.title {
        if title.chars().count() > 80 || title.chars().any(char::is_control) {
            return Err(Error::new(ErrorKind::Unreadable, "title", " cannot be printed")
                .with_hint("at most 80 characters on one line"));
        }
    }
    if let Some(start) = &inputs.start {
        if super::read::start_minutes(start).is_none() {
            return Err(
                Error::new(ErrorKind::Unreadable, "start", format!(" = \"{start}\" cannot be read"))
                    .with_hint("write it as 2027-03-14T07:00"),
            );
        }
    }
    if inputs.samples.is_some_and(|n| n > range::MOST_SAMPLES) {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "samples",
            format!(" = {} is outside 0 to 1000000", inputs.samples.unwrap_or(0)),
        ));
    }
    Ok(())
}

fn count(given: Option<u32>, argument: &'static str, most: u32) -> Result<u32, Error> {
    match given {
        None => Ok(1),
        Some(n) if (1..=most).contains(&n) => Ok(n),
        Some(n) => Err(Error::new(
            ErrorKind::OutOfRange,
            argument,
            format!(" = {n} is outside 1 to {most}"),
        )),
    }
}

fn polarisation_in_range(polarisation: Polarisation) -> Result<(), Error> {
    static MODULUS: Range = Range::new("polarisation.modulus", &table::fraction, 1.0, 5.0);
    static COEFFICIENT: Range = Range::new("polarisation.coefficient", &table::cubic_metre_per_s, 1e-9, 1.0);
    match polarisation {
        Polarisation::Modulus(x) => MODULUS.check(x).map(drop),
        Polarisation::Coefficient(k) => COEFFICIENT.check(k).map(drop),
        Polarisation::RatingAnchored | Polarisation::None => Ok(()),
    }
}

fn checked_price(price: Option<Price>) -> Result<(), Error> {
    let Some(price) = price else {
        return Ok(());
    };
    if !price.amount.is_finite() {
        return Err(Error::not_finite("amount", price.amount));
    }
    if price.amount < 0.0 {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "amount",
            format!(" = {} is negative", significant(price.amount, 6)),
        ));
    }
    let per = price.per.si();
    if !per.is_finite() {
        return Err(Error::not_finite("per", per));
    }
    if per <= 0.0 {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "per",
            format!(" = {} is not above 0", price.per),
        ));
    }
    Ok(())
}

/// A fuel with its price, which must be per what the fuel is counted in.
pub(super) fn priced(fuel: fuel::Fuel, price: Option<Price>) -> Result<fuel::Fuel, Error> {
    match price {
        Some(price) => fuel.with_price(price),
        None => Ok(fuel),
    }
}

fn price_of_what(argument: &'static str, example: &str) -> Error {
    Error::new(ErrorKind::WrongDimension, argument, " is per something else")
        .with_hint(format!("write it as {example}"))
}

/// The gauge pressure of a slot.
pub(super) fn gauge(si: f64) -> GaugePressure {
    crate::units::pa_gauge(si)
}
