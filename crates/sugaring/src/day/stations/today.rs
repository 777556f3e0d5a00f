//! One set of numbers through the stations.

use crate::{
    air::StationPressure,
    day::{
        resolve::{Amount, LeftModel, LotModel, Model},
        slots::Values,
        stations::{
            CostOutcome, Outcome, RigOutcome, State, SyrupOutcome, clock::clock, rig::Concentrated, together::Together,
        },
    },
    error::Error,
    finish,
    lot::{Lot, blend},
    membrane, sucrose,
    units::{Brix, Si, TemperatureDifference, Value, brix, kelvin, pa},
};
use alloc::{format, vec::Vec};

/// How finely a day is computed: the nominal one fully, one draw of many coarsely.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Fidelity {
    Full,
    Draw,
}

/// The day, and the same day without the rig where there is one.
pub(crate) fn day(model: &Model, values: &Values, fidelity: Fidelity) -> Result<(Outcome, Option<Outcome>), Error> {
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
        None => Ok((today.after_the_rig(&start, None)?, None)),
        Some(Concentrated { lot, outcome, rig }) => {
            let mut with = today.after_the_rig(&start, Some((lot, outcome)))?;
            if fidelity == Fidelity::Full {
                with.clock.together = together(&start, &rig, &with);
            }
            // A day that works only with the rig has no day without it to compare.
            let without = today.after_the_rig(&start, None).ok();
            Ok((with, without))
        }
    }
}

/// Hours with rig and pan on one tank at once; not for a single pass, nor for a pan that is not empty at the start.
pub(crate) fn together(start: &Start, rig: &membrane::Rig, day: &Outcome) -> Option<f64> {
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

pub(crate) struct Today<'a> {
    pub(crate) model: &'a Model,
    pub(crate) values: &'a Values,
    pub(crate) fidelity: Fidelity,
}

/// The tank before anything is done, and the air.
pub(crate) struct Start {
    pub(crate) station: StationPressure,
    pub(crate) tank: Lot,
    pub(crate) left: Option<Lot>,
}

impl Today<'_> {
    pub(crate) fn of(&self, slot: crate::day::slots::Slot) -> f64 {
        self.values.of(slot)
    }

    pub(crate) fn start(&self) -> Result<Start, Error> {
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

    pub(crate) fn lot(&self, lot: &LotModel) -> Result<Lot, Error> {
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

    pub(crate) fn left(&self, left: &LeftModel) -> Result<Lot, Error> {
        Lot::of_volume(
            crate::units::Volume::of_si(self.of(left.volume)),
            brix(self.of(left.brix))?,
            kelvin(self.of(left.kelvin)),
        )
    }

    pub(crate) fn after_the_rig(&self, start: &Start, rig: Option<(Lot, RigOutcome)>) -> Result<Outcome, Error> {
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
}

pub(crate) fn state(lot: &Lot) -> State {
    State {
        mass: lot.mass().si(),
        brix: lot.brix().get(),
        kelvin: lot.temperature().si(),
        volume: lot.volume().si(),
    }
}
