//! One set of numbers through the stations: tank, rig, pan, finish, bottles, clock and money.

use alloc::{format, vec::Vec};

use super::{
    inputs::{PanKind, Polarisation, TemperatureModel, Warming},
    model::{ContainerModel, FinishingModel, FuelKind, FuelModel, HeatModel, LeftModel, Model, RigModel, RunModel},
    outcome::{
        Clock, CostOutcome, FinishOutcome, FuelOutcome, Outcome, PackingOutcome, PanOutcome, RigOutcome, StageOutcome,
        State, SyrupOutcome,
    },
    sap::{Amount, LotModel},
    slots::Values,
    together::Together,
};
use crate::{
    air::StationPressure,
    error::Error,
    evaporator::{
        self, Fineness, PanShape, area_heat_at, batch_at, boil_at, held_level_heat_at, hold_up_at, level_drop_heat_at,
        water_rate_at,
    },
    finish, fuel,
    lot::{Lot, blend},
    membrane, sucrose,
    units::{Brix, Price, Si, TemperatureDifference, Value, brix, fraction, kelvin, pa, table, watt},
};

/// How finely a day is computed: the nominal one fully, one draw of many coarsely.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Fidelity {
    Full,
    Draw,
}

/// The day, and the same day without the rig where there is one.
pub(super) fn day(model: &Model, values: &Values, fidelity: Fidelity) -> Result<(Outcome, Option<Outcome>), Error> {
    let today = Today {
        model,
        values,
        fidelity,
    };
    let start = today.start()?;
    let rig = match &model.rig {
        Some(rig) => today.concentrate(rig, &start)?,
        None => None,
    };
    match rig {
        None => Ok((today.from_the_pan(&start, None)?, None)),
        Some(Concentrated { lot, outcome, rig }) => {
            let mut with = today.from_the_pan(&start, Some((lot, outcome)))?;
            if fidelity == Fidelity::Full {
                with.clock.together = together(&start, &rig, &with);
            }
            // A day that works only with the rig has no day without it to compare.
            let without = today.from_the_pan(&start, None).ok();
            Ok((with, without))
        }
    }
}

struct Today<'a> {
    model: &'a Model,
    values: &'a Values,
    fidelity: Fidelity,
}

/// The tank before anything is done, and the air.
struct Start {
    station: StationPressure,
    tank: Lot,
    left: Option<Lot>,
}

impl Today<'_> {
    fn of(&self, slot: super::slots::Slot) -> f64 {
        self.values.of(slot)
    }

    fn start(&self) -> Result<Start, Error> {
        let station = StationPressure::measured(pa(self.of(self.model.air.pressure))).map_err(|e| e.within("air"))?;
        let mut lots = Vec::new();
        for (i, lot) in self.model.lots.iter().enumerate() {
            lots.push(self.lot(lot).map_err(|e| e.within(&format!("sap[{i}]")))?);
        }
        let tank = match lots.as_slice() {
            [only] => *only,
            several => blend(several).map_err(|e| e.within("sap"))?,
        };
        let left = match &self.model.pan.left {
            Some(left) => Some(self.left(left).map_err(|e| e.within("evaporator.left_in_pan"))?),
            None => None,
        };
        Ok(Start { station, tank, left })
    }

    fn lot(&self, lot: &LotModel) -> Result<Lot, Error> {
        // A drawn error never takes the last sugar out of a lot.
        let strength = brix((self.of(lot.brix) + lot.shared.map_or(0.0, |s| self.of(s))).max(0.05))?;
        let temperature = kelvin(self.of(lot.kelvin));
        match lot.amount {
            Amount::Volume(volume) => {
                Lot::of_volume(crate::units::Volume::of_si(self.of(volume)), strength, temperature)
            }
            Amount::Mass(mass) => Lot::of_mass(crate::units::kg(self.of(mass)), strength, temperature),
        }
    }

    fn left(&self, left: &LeftModel) -> Result<Lot, Error> {
        Lot::of_volume(
            crate::units::Volume::of_si(self.of(left.volume)),
            brix(self.of(left.brix))?,
            kelvin(self.of(left.kelvin)),
        )
    }
}

/// Hours with rig and pan on one tank at once; not for a single pass, nor for a pan that is not empty at the start.
fn together(start: &Start, rig: &membrane::Rig, day: &Outcome) -> Option<f64> {
    let run = day.rig.as_ref().filter(|r| !r.single_pass && start.left.is_none())?;
    let day = Together {
        rig,
        aim: run.concentrate.brix,
        tank: &start.tank,
        pascal: day.pressure,
        pan: &day.pan,
        finish: day.finish.as_ref(),
        run,
    };
    day.seconds()
}

/// What the rig made of the tank.
struct Concentrated {
    lot: Lot,
    outcome: RigOutcome,
    rig: membrane::Rig,
}

/// The rig.
impl Today<'_> {
    /// What the rig makes of the tank; nothing where the tank is already there.
    fn concentrate(&self, model: &RigModel, start: &Start) -> Result<Option<Concentrated>, Error> {
        let tank = &start.tank;
        if let RunModel::Brix(aim) = model.run {
            if self.of(aim) <= tank.brix().get() {
                return Ok(None);
            }
        }
        let rig = self.rig(model, tank).map_err(|e| e.within("membrane"))?;
        let fidelity = match self.fidelity {
            Fidelity::Full => membrane::Fidelity::FULL,
            Fidelity::Draw => membrane::Fidelity::DRAW,
        };
        let until = match model.run {
            RunModel::SinglePass(recovery) => {
                let pass = rig
                    .pass_once_with(tank, fraction(self.of(recovery)), fidelity)
                    .map_err(|e| e.within("membrane.run.single_pass"))?;
                return Ok(Some(self.passed(model, rig, &pass, start)?));
            }
            RunModel::Brix(aim) => membrane::Until::Brix(brix(self.of(aim))?),
            RunModel::Volume(aim) => membrane::Until::Volume(crate::units::Volume::of_si(self.of(aim))),
            RunModel::Recovery(aim) => membrane::Until::Recovery(fraction(self.of(aim))),
            RunModel::Duration(aim) => membrane::Until::Duration(crate::units::seconds(self.of(aim))),
        };
        let run = rig
            .recirculate_with(tank, until, fidelity)
            .map_err(|e| e.within("membrane.run.recirculate_until"))?;
        if run.limited_by == membrane::LimitedBy::AlreadyThere {
            return Ok(None);
        }
        if run.permeate.mass.si() <= 0.0 {
            return Err(self.nothing_passes(model));
        }
        Ok(Some(self.recirculated(model, rig, run, start)))
    }

    #[cold]
    fn nothing_passes(&self, model: &RigModel) -> Error {
        let bar = table::bar_gauge.show(table::bar_gauge.from_si(self.of(model.pressure)));
        Error::unreachable("membrane.run.recirculate_until", "any aim")
            .with_hint(format!("nothing passes the membrane at {bar}: use more pressure"))
    }

    fn rig(&self, model: &RigModel, tank: &Lot) -> Result<membrane::Rig, Error> {
        let rating = membrane::ElementRating {
            flow: crate::units::Flow::of_si(self.of(model.flow)),
            pressure: super::model::gauge(self.of(model.rated_pressure)),
            temperature: kelvin(self.of(model.rated_temperature)),
            salt: crate::units::Concentration::of_si(self.of(model.salt)),
            recovery: fraction(self.of(model.recovery)),
            rejection: fraction(self.of(model.rejection)),
        };
        let element = match model.permeance {
            Some(own) => membrane::Element::from_permeance(crate::units::Permeance::of_si(self.of(own)), &rating),
            None => membrane::Element::from_rating(&rating),
        }
        .map_err(|e| e.within("element"))?;
        let pressure = |slot| crate::units::Pressure::of_si(self.of(slot));
        // The factor at sap temperature is known to 10 % at 3 °C and exactly at 25 °C.
        let cold = ((298.15 - tank.temperature().si()) / 22.0).max(0.0);
        let shares: Vec<f64> = model.shares.iter().map(|s| self.of(*s)).collect();
        let factor = match model.temperature_model {
            TemperatureModel::Makers => membrane::FactorModel::Makers,
            TemperatureModel::Single(k) => membrane::FactorModel::Single(k),
            TemperatureModel::Viscosity => membrane::FactorModel::Viscosity,
            TemperatureModel::PerDegree => membrane::FactorModel::PerDegree,
        };
        let polarisation = match model.polarisation {
            Polarisation::RatingAnchored => membrane::Polarisation::RatingAnchored {
                factor: self.of(model.film_factor),
            },
            Polarisation::Modulus(x) => membrane::Polarisation::Modulus(x),
            Polarisation::Coefficient(k) => membrane::Polarisation::Coefficient(crate::units::Flow::of_si(k)),
            Polarisation::None => membrane::Polarisation::None,
        };
        let rig = membrane::Rig::new(&element, super::model::gauge(self.of(model.pressure)))?
            .with_parallel(model.parallel)?
            .with_series(model.series)?
            .with_pump(self.pump(model).map_err(|e| e.within("pump"))?)?
            .with_temperature_model(factor)?
            .with_polarisation(polarisation)?
            .with_retention(fraction(self.of(model.retention)))?
            .with_element_drop(pressure(model.element_drop))?
            .with_prefilter_drop(pressure(model.prefilter_drop))?
            .with_back_pressure(pressure(model.back_pressure))?
            .with_hold_up(crate::units::Volume::of_si(self.of(model.hold_up)))?
            .with_element_shares(&shares)
            .with_temperature_factor_scale((1.0 + 0.1 * cold * self.of(model.factor_error)).max(0.05));
        Ok(match model.warming {
            Warming::Isothermal => rig,
            Warming::Coupled => rig.with_warming(membrane::Warming::Coupled),
        })
    }

    fn pump(&self, model: &RigModel) -> Result<membrane::Pump, Error> {
        let pump = if model.pump.points.is_empty() {
            membrane::Pump::of_flow(crate::units::Flow::of_si(self.of(model.pump.flow)))?
        } else {
            membrane::Pump::of_points(&model.pump.points)?
        };
        match model.pump.power {
            Some(power) => pump.with_power(watt(self.of(power))),
            None => pump.with_efficiency(fraction(self.of(model.pump.efficiency))),
        }
    }

    fn recirculated(
        &self,
        model: &RigModel,
        rig: membrane::Rig,
        run: membrane::Recirculation,
        start: &Start,
    ) -> Concentrated {
        let tank = &start.tank;
        let warming = run.warming;
        let outcome = RigOutcome {
            duration: run.duration.si(),
            permeate_mass: run.permeate.mass.si(),
            permeate_volume: run.permeate.volume.si(),
            permeate_brix: run.permeate.brix.get(),
            concentrate: state(&run.concentrate),
            first_flow: run.flow_first.si(),
            last_flow: run.flow_last.si(),
            feed: rig.pump_flow(),
            single_pass: false,
            warms_to: warming.map(|w| w.temperature.si()),
            duration_coupled: warming.map(|w| w.duration.si()),
            energy: run.energy.si(),
            permeance: rig.element.permeance().si(),
            temperature_factor: rig.temperature_factor_at(tank.temperature().si()),
            osmotic_limit: run.osmotic_limit.get(),
            least_crossflow: run.crossflow_least.si(),
            feed_crossflow: run.crossflow_most.si(),
            element_recovery: run.element_recovery.si(),
            kept: 0.0,
            rinse: 0.0,
        };
        Concentrated {
            lot: run.concentrate,
            outcome: self.kept(model, outcome, tank),
            rig,
        }
    }

    fn passed(
        &self,
        model: &RigModel,
        rig: membrane::Rig,
        pass: &membrane::Pass,
        start: &Start,
    ) -> Result<Concentrated, Error> {
        let tank = &start.tank;
        let flow = pass.permeate.volume.si() / pass.duration.si();
        let outcome = RigOutcome {
            duration: pass.duration.si(),
            permeate_mass: pass.permeate.mass.si(),
            permeate_volume: pass.permeate.volume.si(),
            permeate_brix: pass.permeate.brix.get(),
            concentrate: state(&pass.concentrate),
            first_flow: flow,
            last_flow: flow,
            feed: pass.feed_flow.si(),
            single_pass: true,
            warms_to: Some(tank.temperature().si()),
            duration_coupled: None,
            energy: pass.energy.si(),
            permeance: rig.element.permeance().si(),
            temperature_factor: rig.temperature_factor_at(tank.temperature().si()),
            osmotic_limit: rig.osmotic_limit(tank.temperature())?.get(),
            least_crossflow: pass.crossflow_least.si(),
            feed_crossflow: pass.crossflow_most.si(),
            element_recovery: pass.element_recovery.si(),
            kept: 0.0,
            rinse: 0.0,
        };
        Ok(Concentrated {
            lot: pass.concentrate,
            outcome: self.kept(model, outcome, tank),
            rig,
        })
    }

    /// Permeate to keep: the rinse, what pushes out the hold-up, and one least-depth pan full beside the fire.
    fn kept(&self, model: &RigModel, outcome: RigOutcome, tank: &Lot) -> RigOutcome {
        let pan = &self.model.pan;
        let fill = self.of(pan.length) * self.of(pan.width) * self.of(pan.least_depth);
        let rinse = (self.of(model.hold_up) + self.of(model.rinse) * tank.volume().si()).min(outcome.permeate_volume);
        RigOutcome {
            kept: (rinse + fill).min(outcome.permeate_volume),
            rinse,
            ..outcome
        }
    }
}

/// Pan, finish, bottles, clock and money.
impl Today<'_> {
    fn from_the_pan(&self, start: &Start, rig: Option<(Lot, RigOutcome)>) -> Result<Outcome, Error> {
        let (fed, rig) = match rig {
            Some((concentrate, outcome)) => (concentrate, Some(outcome)),
            None => (start.tank, None),
        };
        let target = &self.model.target;
        let aim = (target.brix + self.of(target.error)).clamp(50.0, 80.0);
        let (pan, draw) = self.boil(start, &fed, aim)?;
        let finish = match &self.model.finishing {
            Some(finishing) if !pan.finishes => Some(self.finish(finishing, start, &draw, aim)?),
            _ => None,
        };
        let sugar = pan.draw.sugar();
        let all = if finish.is_some() || !pan.finishes {
            100.0 * sugar / aim
        } else {
            pan.draw.mass
        };
        let lost = all * self.of(target.lost);
        let syrup = SyrupOutcome {
            brix: if pan.finishes { pan.draw.brix } else { aim },
            mass: all - lost,
            volume: (all - lost) / sucrose::density_at(aim, 293.15),
            lost,
        };
        let point = finish::finishing_point(
            Brix::from_si(target.brix)?,
            start.station,
            Some(TemperatureDifference::of_si(self.of(target.rise))),
        )
        .map_err(|e| e.within("target"))?;
        let finished = finish.is_some() || pan.finishes;
        let fire = self
            .fuel(&self.model.fuel, pan.energy)
            .map_err(|e| e.within("evaporator.fuel"))?;
        let burner = match (&self.model.finishing, &finish) {
            (Some(finishing), Some(finish)) => Some(
                self.fuel(&finishing.fuel, finish.energy)
                    .map_err(|e| e.within("finishing.fuel"))?,
            ),
            _ => None,
        };
        let packing = if finished { self.pack(&syrup)? } else { None };
        let clock = clock(rig.as_ref(), &pan, finish.as_ref());
        let mut outcome = Outcome {
            pressure: start.station.pressure().si(),
            water_boils_at: point.water_boils_at.si(),
            tank: state(&start.tank),
            left: start.left.as_ref().map(state),
            rig,
            pan,
            finish,
            finishing_temperature: point.temperature.si() + self.of(target.relation_error),
            rise: point.elevation.si(),
            syrup,
            clock,
            fire,
            burner,
            packing,
            cost: CostOutcome::default(),
        };
        outcome.cost = self.cost(&outcome);
        Ok(outcome)
    }

    /// The big pan; its draw also as a lot.
    fn boil(&self, start: &Start, fed: &Lot, aim: f64) -> Result<(PanOutcome, Lot), Error> {
        let model = &self.model.pan;
        let pascal = start.station.pressure().si();
        let (length, width) = (self.of(model.length), self.of(model.width));
        let shape = PanShape {
            area: length * width,
            running_depth: self.of(model.running_depth),
            least_depth: self.of(model.least_depth),
        };
        let heat = self.heat(model.heat, shape.area, pascal) * self.of(model.heat_error);
        let fineness = self.fineness();
        let left = start.left.as_ref();
        let batch = batch_at(&shape, heat, fed, left, aim, pascal, fineness).map_err(|e| {
            let outer = if e.argument().starts_with("left_in_pan") {
                "evaporator"
            } else {
                "evaporator.pan"
            };
            e.within(outer)
        })?;
        let hold_up = match self.fidelity {
            Fidelity::Full => {
                let strength = fed.brix().get();
                hold_up_at(batch.running_volume, strength, aim, None, pascal, fineness).map_or(0.0, |h| h.sugar)
            }
            Fidelity::Draw => 0.0,
        };
        let stages: Vec<StageOutcome> = batch
            .stages()
            .map(|stage| StageOutcome {
                kind: stage.kind.name(),
                duration: stage.duration,
                water: stage.water,
                fed: stage.fed,
                brix: stage.brix,
                mass: stage.mass,
                depth: stage.depth,
                kelvin: stage.kelvin,
            })
            .collect();
        let outcome = PanOutcome {
            fed: state(fed),
            heat,
            water_rate: water_rate_at(heat, pascal),
            running_volume: batch.running_volume,
            least_depth: shape.least_depth,
            first_fill: batch.first_fill,
            stages,
            duration: batch.duration,
            energy: batch.heat,
            water: batch.water,
            draw: State {
                mass: batch.mass,
                brix: batch.ends_at,
                kelvin: batch.kelvin,
                volume: batch.volume,
            },
            finishes: batch.finishes,
            depth_if_finished: batch.depth_if_finished,
            continuous_hold_up: hold_up,
        };
        Ok((outcome, Lot::trusted(batch.mass, batch.ends_at, batch.kelvin)))
    }

    /// Heat into the liquid, W.
    fn heat(&self, model: HeatModel, area: f64, pascal: f64) -> f64 {
        match model {
            HeatModel::HeldLevel { added, feed } => held_level_heat_at(self.of(added), self.of(feed), pascal),
            HeatModel::LevelDrop(evaporated) => level_drop_heat_at(self.of(evaporated), pascal),
            HeatModel::Power(power) => self.of(power),
            HeatModel::AreaRule(kind) => {
                let kind = match kind {
                    PanKind::Flat => evaporator::PanKind::Flat,
                    PanKind::FlatBlower => evaporator::PanKind::FlatBlower,
                    PanKind::Flue => evaporator::PanKind::Flue,
                };
                area_heat_at(area, kind, pascal)
            }
        }
    }

    /// The small pan, filled with the hot draw.
    fn finish(&self, model: &FinishingModel, start: &Start, draw: &Lot, aim: f64) -> Result<FinishOutcome, Error> {
        let heat = self.of(model.heat);
        let boil = boil_at(draw, aim, start.station.pressure().si(), self.fineness())
            .ok_or_else(|| Error::no_convergence("finishing"))?;
        let energy = boil.total();
        Ok(FinishOutcome {
            heat,
            water: boil.water,
            energy,
            duration: energy / heat,
        })
    }

    fn fineness(&self) -> Fineness {
        match self.fidelity {
            Fidelity::Full => Fineness::Full,
            Fidelity::Draw => Fineness::Draw,
        }
    }

    /// The fuel for a heat into the liquid.
    fn fuel(&self, model: &FuelModel, heat: f64) -> Result<FuelOutcome, Error> {
        let made = match model.kind {
            FuelKind::Named => fuel::Fuel::named(&model.name)?,
            FuelKind::Wood { moisture, cord } => {
                let moisture = fuel::Moisture::wet_basis(fraction(self.of(moisture)))?;
                let wood = fuel::Fuel::wood(&model.name, moisture)?;
                wood.with_solid_share(fraction((SOLID_SHARE * self.of(cord)).clamp(0.4, 0.9)))?
            }
        };
        let share = fraction(self.of(model.efficiency));
        let efficiency = if model.of_net {
            fuel::Efficiency::of_net(share)
        } else {
            fuel::Efficiency::of_gross(share)
        }?;
        let burned = super::model::priced(made, model.price)?.needed(crate::units::joule(heat), efficiency)?;
        Ok(FuelOutcome {
            mass: burned.mass.map(|m| m.si()),
            volume: burned.volume.map(|v| v.si()),
            energy: burned.energy.si(),
            cost: burned.cost,
        })
    }

    fn pack(&self, syrup: &SyrupOutcome) -> Result<Option<PackingOutcome>, Error> {
        if self.model.containers.is_empty() {
            return Ok(None);
        }
        let fill = self.of(self.model.fill_temperature);
        let lot = Lot::of_mass(crate::units::kg(syrup.mass), Brix::from_si(syrup.brix)?, kelvin(fill))
            .map_err(|e| e.within("syrup"))?;
        let containers: Vec<finish::Container> = self.model.containers.iter().map(|c| self.container(c)).collect();
        let packing = finish::pack(&lot, &containers, kelvin(fill))?;
        let packed = packing
            .rows
            .iter()
            .filter_map(|row| Some(f64::from(row.count) * containers.get(row.container)?.volume.si()))
            .sum();
        Ok(Some(PackingOutcome {
            fill_temperature: fill,
            packing,
            packed,
        }))
    }

    fn container(&self, model: &ContainerModel) -> finish::Container {
        finish::Container {
            name: model.name.clone(),
            volume: Si::of_si(self.of(model.volume)),
            brimful: model.brimful.map(|slot| Si::of_si(self.of(slot))),
            material: model.material,
            mass: model.mass.map(|slot| Si::of_si(self.of(slot))),
            temperature: kelvin(self.of(model.kelvin)),
            stock: model.stock,
            price: model.price,
        }
    }

    /// Every line that has a price; the others are named.
    fn cost(&self, outcome: &Outcome) -> CostOutcome {
        let mut cost = CostOutcome::default();
        let mut line = |amount: Option<f64>, name| match amount {
            Some(amount) => cost.sum += amount,
            None => cost.left_out.push(name),
        };
        line(outcome.fire.cost, "fuel");
        if let Some(burner) = &outcome.burner {
            line(burner.cost, "finishing_fuel");
        }
        let electricity = outcome
            .rig
            .as_ref()
            .map(|rig| self.model.electricity.map(|price| amount(price, rig.energy)));
        if let Some(electricity) = electricity {
            line(electricity, "electricity");
        }
        let containers = outcome.packing.as_ref().map(|packing| self.containers(packing));
        if let Some(containers) = containers {
            line(containers, "containers");
        }
        if let Some(price) = self.model.labour {
            line(Some(amount(price, outcome.clock.end)), "labour");
        }
        cost.electricity = electricity.flatten();
        cost.containers = containers.flatten();
        cost
    }

    /// What the containers used cost; unknown as soon as one kind has no price.
    fn containers(&self, packing: &PackingOutcome) -> Option<f64> {
        let mut sum = 0.0;
        for row in packing.packing.rows.iter().filter(|row| row.count > 0) {
            let price = self.model.containers.get(row.container)?.price?;
            sum += amount(price, f64::from(row.count));
        }
        Some(sum)
    }
}

/// 85 ft³ of wood in a cord of 128: the default of the fuel room.
const SOLID_SHARE: f64 = 85.0 / 128.0;

fn amount(price: Price, quantity: f64) -> f64 {
    quantity / price.per.si() * price.amount
}

/// When the fire is lit, when the finish begins, when it is over; seconds after the start.
///
/// A recirculated tank is concentrate only at the end. A single pass feeds the pan as it comes: the fire is lit as
/// soon as the first fill is there and the supply will never run dry.
fn clock(rig: Option<&RigOutcome>, pan: &PanOutcome, finish: Option<&FinishOutcome>) -> Clock {
    let after = pan.duration + finish.map_or(0.0, |f| f.duration);
    let (in_sequence, overlapped) = match rig {
        None => (0.0, 0.0),
        Some(rig) if rig.single_pass => (rig.duration, lit(rig, pan)),
        Some(rig) => (rig.duration, rig.duration),
    };
    let boil = overlapped;
    Clock {
        boil,
        finish: boil + pan.duration,
        end: boil + after,
        in_sequence: in_sequence + after,
        overlapped: overlapped + after,
        together: None,
    }
}

fn lit(rig: &RigOutcome, pan: &PanOutcome) -> f64 {
    let concentrate = rig.concentrate.mass;
    let supply = concentrate / rig.duration;
    let stage = |kind| pan.stages.iter().find(|s| s.kind == kind);
    let (Some(heat_up), Some(top_up)) = (stage("heat_up"), stage("top_up")) else {
        return rig.duration;
    };
    let fill = heat_up.fed;
    let intake = (concentrate - fill) / top_up.duration;
    let filled = fill / supply;
    if intake <= supply {
        filled
    } else {
        filled.max(rig.duration - heat_up.duration - (concentrate - fill) / intake)
    }
}

fn state(lot: &Lot) -> State {
    State {
        mass: lot.mass().si(),
        brix: lot.brix().get(),
        kelvin: lot.temperature().si(),
        volume: lot.volume().si(),
    }
}
