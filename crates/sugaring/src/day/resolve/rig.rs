//! The rig, in the order of its keys.

use crate::{
    day::{
        inputs::{Membrane, Polarisation, Pump, Run, TemperatureModel, Until, Warming},
        plan::How,
        resolve::{
            PumpModel, Resolver, RigModel, RunModel,
            checks::{count, exact, polarisation_in_range},
            default, limits as range, spread,
        },
        slots::{Shape, Slot},
    },
    error::Error,
    membrane,
    relation::Range,
    units::{Given, Value, table},
};
use alloc::{format, vec::Vec};

impl Resolver {
    pub(crate) fn membrane(&mut self, membrane: &Membrane) -> Result<RigModel, Error> {
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
        let none = Pump::default();
        let pump = membrane.pump.as_ref().unwrap_or(&none);
        let pump_model = self.pump(pump, parallel).map_err(|e| e.within("pump"))?;
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
    pub(crate) fn rig_pressure(&mut self, membrane: &Membrane) -> Result<Slot, Error> {
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

    pub(crate) fn pump(&mut self, pump: &Pump, trains: u32) -> Result<PumpModel, Error> {
        let flow = self.optional(
            pump.flow.as_ref(),
            &range::PUMP_FLOW,
            membrane::FEED * f64::from(trains),
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
            self.assume("membrane.pump.flow", "pump 250 L/h into each housing side by side");
        } else if !points.is_empty() {
            membrane::Pump::of_points(&points).map_err(|e| e.within("points"))?;
        }
        let efficiency = self.optional(
            pump.efficiency.as_ref(),
            &range::PUMP_EFFICIENCY,
            membrane::EFFICIENCY,
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

    pub(crate) fn temperature_model(&mut self, model: Option<TemperatureModel>) -> Result<TemperatureModel, Error> {
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

    pub(crate) fn assume_none(&mut self, membrane: &Membrane) {
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

    pub(crate) fn run(&mut self, run: &Run) -> Result<RunModel, Error> {
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
            Run::SinglePass { recovery } => {
                self.assume("membrane.pump", "what the pump delivers too much goes round a bypass");
                RunModel::SinglePass(
                    self.take(recovery, &range::PASS_RECOVERY, None)
                        .map_err(|e| e.within("run.single_pass"))?,
                )
            }
        })
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
