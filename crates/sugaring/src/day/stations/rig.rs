//! The rig.

use crate::{
    day::{
        inputs::{Polarisation, TemperatureModel, Warming},
        resolve::{RigModel, RunModel},
        stations::{
            Fidelity, RigOutcome,
            today::{Start, Today, state},
        },
    },
    error::Error,
    lot::Lot,
    membrane,
    units::{Si, Value, brix, fraction, kelvin, table, watt},
};
use alloc::{format, vec::Vec};

/// What the rig made of the tank.
pub(crate) struct Concentrated {
    pub(crate) lot: Lot,
    pub(crate) outcome: RigOutcome,
    pub(crate) rig: membrane::Rig,
}

impl Today<'_> {
    /// What the rig makes of the tank; nothing where the tank is already there.
    pub(crate) fn concentrate(&self, model: &RigModel, start: &Start) -> Result<Option<Concentrated>, Error> {
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
        Ok(Some(self.recirculated(model, rig, &run, start)))
    }

    pub(crate) fn rig(&self, model: &RigModel, tank: &Lot) -> Result<membrane::Rig, Error> {
        let rating = membrane::ElementRating {
            flow: crate::units::Flow::of_si(self.of(model.flow)),
            pressure: crate::day::resolve::gauge(self.of(model.rated_pressure)),
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
        let rig = membrane::Rig::new(&element, crate::day::resolve::gauge(self.of(model.pressure)))?
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

    #[cold]
    pub(crate) fn nothing_passes(&self, model: &RigModel) -> Error {
        let bar = table::bar_gauge.show(table::bar_gauge.from_si(self.of(model.pressure)));
        Error::unreachable("membrane.run.recirculate_until", "any aim")
            .with_hint(format!("nothing passes the membrane at {bar}: use more pressure"))
    }

    pub(crate) fn pump(&self, model: &RigModel) -> Result<membrane::Pump, Error> {
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
        run: &membrane::Recirculation,
        start: &Start,
    ) -> Concentrated {
        let outcome = RigOutcome {
            duration: run.duration.si(),
            first_flow: run.flow_first.si(),
            last_flow: run.flow_last.si(),
            feed: rig.pump_flow(),
            single_pass: false,
            warms_to: run.warming.map(|w| w.temperature.si()),
            duration_coupled: run.warming.map(|w| w.duration.si()),
            energy: run.energy.si(),
            osmotic_limit: run.osmotic_limit.get(),
            least_crossflow: run.crossflow_least.si(),
            feed_crossflow: run.crossflow_most.si(),
            element_recovery: run.element_recovery.si(),
            ..streams(&rig, &start.tank, &run.permeate, &run.concentrate)
        };
        Concentrated {
            lot: run.concentrate,
            outcome: self.keep(model, outcome, &start.tank),
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
        let temperature = start.tank.temperature();
        let flow = pass.permeate.volume.si() / pass.duration.si();
        let outcome = RigOutcome {
            duration: pass.duration.si(),
            first_flow: flow,
            last_flow: flow,
            feed: pass.feed_flow.si(),
            single_pass: true,
            warms_to: Some(temperature.si()),
            duration_coupled: None,
            energy: pass.energy.si(),
            osmotic_limit: rig.osmotic_limit(temperature)?.get(),
            least_crossflow: pass.crossflow_least.si(),
            feed_crossflow: pass.crossflow_most.si(),
            element_recovery: pass.element_recovery.si(),
            ..streams(&rig, &start.tank, &pass.permeate, &pass.concentrate)
        };
        Ok(Concentrated {
            lot: pass.concentrate,
            outcome: self.keep(model, outcome, &start.tank),
            rig,
        })
    }

    /// Permeate to keep: the rinse, what pushes out the hold-up, and one least-depth pan full beside the fire.
    fn keep(&self, model: &RigModel, mut outcome: RigOutcome, tank: &Lot) -> RigOutcome {
        let pan = &self.model.pan;
        let fill = self.of(pan.length) * self.of(pan.width) * self.of(pan.least_depth);
        let rinse = self.of(model.hold_up) + self.of(model.rinse) * tank.volume().si();
        outcome.rinse = rinse.min(outcome.permeate_volume);
        outcome.kept = (rinse + fill).min(outcome.permeate_volume);
        outcome
    }
}

/// What either kind of run has: its streams, and the membrane behind them.
fn streams(rig: &membrane::Rig, tank: &Lot, permeate: &membrane::Permeate, concentrate: &Lot) -> RigOutcome {
    RigOutcome {
        permeate_mass: permeate.mass.si(),
        permeate_volume: permeate.volume.si(),
        permeate_brix: permeate.brix.get(),
        concentrate: state(concentrate),
        permeance: rig.element.permeance().si(),
        temperature_factor: rig.temperature_factor_at(tank.temperature().si()),
        ..RigOutcome::default()
    }
}
