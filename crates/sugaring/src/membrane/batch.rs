//! The tank on its way: where it ends, how long it takes.

use alloc::vec::Vec;

use super::{
    Fidelity, LimitedBy, Permeate, Recirculation, Rig, TrajectoryPoint, Until,
    local::Local,
    train::{Through, Way},
    unreachable::too_warm,
    warm::{Warm, Warming},
};
use crate::{
    error::Error,
    lot::Lot,
    math, solve,
    units::{Brix, Energy, Flow, Mass, Ratio, Si, Temperature, Time, Value, Volume},
};

/// A tank and the rig it circulates through.
pub(super) struct Batch<'a> {
    pub(super) rig: &'a Rig,
    pub(super) local: Local,
    pub(super) sap: Lot,
    /// `None` where nothing passes.
    pub(super) way: Option<Way>,
    fidelity: Fidelity,
    first: Through,
    least_crossflow: f64,
    recovery: f64,
}

/// Where a run ends.
pub(super) struct End {
    /// On the [`Way`].
    at: f64,
    pub(super) brix: f64,
    mass: f64,
    /// Where the duration was the aim.
    seconds: Option<f64>,
    limited_by: LimitedBy,
}

impl<'a> Batch<'a> {
    pub(super) fn new(rig: &'a Rig, local: Local, sap: &Lot, fidelity: Fidelity) -> Result<Self, Error> {
        let first = rig.through(&local, sap.brix, rig.feed(), fidelity.tolerance);
        let first = first.ok_or_else(|| Error::no_convergence("flow"))?;
        Ok(Self {
            rig,
            local,
            sap: *sap,
            way: Way::from(sap.mass, sap.brix, local.limit, local.retention),
            fidelity,
            first,
            least_crossflow: first.crossflow.0,
            recovery: first.recovery,
        })
    }

    /// Where the aim lies; `None` where the tank is already there.
    pub(super) fn end(&mut self, until: Until) -> Result<Option<End>, Error> {
        if let Until::Duration(duration) = until {
            return match (self.way, duration.si()) {
                (_, 0.0) => Ok(None),
                (Some(way), seconds) => self.end_of_time(&way, seconds).map(Some),
                (None, _) => Err(self.out_of_reach(until)),
            };
        }
        let growth = self.growth(until)?;
        if growth <= 1.0 {
            return Ok(None);
        }
        let Some(way) = self.way else {
            return Err(self.out_of_reach(until));
        };
        if growth.is_infinite() || self.sap.brix * growth >= self.reach() {
            return Err(self.out_of_reach(until));
        }
        Ok(Some(End {
            at: way.to(growth),
            brix: match until {
                Until::Brix(brix) => brix.get(),
                _ => self.sap.brix * growth,
            },
            mass: way.mass_at(growth),
            seconds: None,
            limited_by: LimitedBy::Aim,
        }))
    }

    /// By what factor the tank's °Brix has to grow; infinite where no °Brix will do.
    fn growth(&self, until: Until) -> Result<f64, Error> {
        let (retention, density) = (self.local.retention, self.local.density.density(self.sap.brix));
        let by_share = |share: f64| {
            if share > 0.0 {
                math::pow(share, -retention)
            } else {
                f64::INFINITY
            }
        };
        match until {
            Until::Brix(brix) if self.sap.brix > 0.0 => Ok(brix.get() / self.sap.brix),
            Until::Brix(brix) => Ok(if brix.get() > 0.0 { f64::INFINITY } else { 1.0 }),
            Until::Recovery(recovery) => Ok(by_share(1.0 - recovery.si() * self.local.water / density)),
            Until::Volume(volume) => {
                let wanted = volume.si() / (self.sap.mass / density);
                if wanted >= 1.0 {
                    return Ok(1.0);
                }
                // Sap gets denser on the way: the share of the mass lies above that of the volume.
                let least = math::pow(self.sap.brix / self.local.limit, 1.0 / retention).max(wanted);
                let over = |share: f64| {
                    let brix = self.sap.brix * by_share(share);
                    share * density / self.local.density.density(brix) - wanted
                };
                if least >= 1.0 || over(least) > 0.0 {
                    return Ok(f64::INFINITY);
                }
                let share = solve::root(over, least, 1.0, 1e-14).filter(|found| found.settled);
                share
                    .map(|found| by_share(found.at))
                    .ok_or_else(|| Error::no_convergence("volume"))
            }
            Until::Duration(_) => Ok(1.0),
        }
    }

    /// °Brix that the tank may be asked for: nearer its limit it takes for ever.
    fn reach(&self) -> f64 {
        self.local.limit * (1.0 - 1e-6)
    }

    /// Where a run of `seconds` leads: Newton on t(w), which is nearly a straight line.
    fn end_of_time(&mut self, way: &Way, seconds: f64) -> Result<End, Error> {
        let growth = if self.sap.brix > 0.0 {
            self.reach() / self.sap.brix
        } else {
            FURTHEST
        };
        let furthest = way.to(growth.min(FURTHEST));
        let unsettled = || Error::no_convergence("duration");
        let start = self.start();
        let (mut at, mut state, mut rule) = (0.0, start, self.fidelity.nodes);
        for _ in 0..STEPS {
            let pace = if self.coupled() {
                self.warming(way).pace(at, state).seconds
            } else {
                self.pace(way, at)
            };
            let to = (at + (seconds - state.seconds) / pace).clamp(0.0, furthest);
            let reached = if self.coupled() {
                self.warming(way).reached(start, to)
            } else {
                let passed = rule.integrate(|place| self.pace(way, place), at, to);
                Some(Warm {
                    seconds: state.seconds + passed,
                    ..start
                })
            };
            state = reached.filter(|warm| warm.seconds.is_finite()).ok_or_else(unsettled)?;
            let step = (to - at).abs();
            (at, rule) = (to, solve::GAUSS_8);
            // The error squares with each step.
            if step <= self.fidelity.tolerance * (1.0 + at) {
                let point = way.at(at);
                return Ok(End {
                    at,
                    brix: point.brix,
                    mass: point.mass,
                    seconds: Some(seconds),
                    limited_by: if at < furthest {
                        LimitedBy::Aim
                    } else {
                        LimitedBy::OsmoticLimit
                    },
                });
            }
        }
        Err(unsettled())
    }

    /// What came of the run.
    pub(super) fn run(&mut self, end: &End) -> Result<Recirculation, Error> {
        let way = self.way.ok_or_else(|| Error::no_convergence("duration"))?;
        let (cold, mut trajectory) = self.isothermal(&way, end.at);
        if !cold.is_finite() {
            return Err(Error::no_convergence("duration"));
        }
        let follow = self.fidelity.detail || self.coupled();
        let warm = if follow {
            self.warming(&way).reached(self.start(), end.at)
        } else {
            None
        };
        let mut state = Warm {
            seconds: cold,
            ..self.start()
        };
        if self.coupled() {
            state = warm.ok_or_else(|| too_warm(end))?;
            trajectory = self.warm_trajectory(&way, end.at);
        }
        let seconds = end.seconds.unwrap_or(state.seconds);
        let last = Local::bounded(self.rig, state.kelvin, self.local.limit);
        let last = self
            .rig
            .through(&last, end.brix, self.rig.feed(), self.fidelity.tolerance);
        let last = last.ok_or_else(|| Error::no_convergence("flow"))?;
        Ok(Recirculation {
            duration: Time::of_si(seconds),
            permeate: self.permeate(end, state.kelvin),
            concentrate: Lot::trusted(end.mass, end.brix, state.kelvin),
            flow_first: Flow::of_si(self.first.permeate),
            flow_last: Flow::of_si(last.permeate),
            warming: warm.map(Into::into),
            energy: Energy::of_si(self.rig.power() * seconds),
            sugar_lost: Mass::of_si(self.leaked(end)),
            osmotic_limit: Brix::trusted(self.local.limit),
            element_recovery: Ratio::of_si(self.recovery),
            crossflow_least: Ratio::of_si(self.least_crossflow.min(last.crossflow.0)),
            crossflow_most: Ratio::of_si(self.first.crossflow.1),
            trajectory,
            limited_by: end.limited_by,
            rests_on: if self.fidelity.detail {
                self.rig.assumed()
            } else {
                Vec::new()
            },
        })
    }

    /// The tank that was already there.
    pub(super) fn nothing(&self) -> Recirculation {
        let here = End {
            at: 0.0,
            brix: self.sap.brix,
            mass: self.sap.mass,
            seconds: Some(0.0),
            limited_by: LimitedBy::AlreadyThere,
        };
        let flow = Flow::of_si(self.first.permeate);
        Recirculation {
            duration: Time::of_si(0.0),
            permeate: self.permeate(&here, self.sap.kelvin),
            concentrate: self.sap,
            flow_first: flow,
            flow_last: flow,
            warming: None,
            energy: Energy::of_si(0.0),
            sugar_lost: Mass::of_si(0.0),
            osmotic_limit: Brix::trusted(self.local.limit),
            element_recovery: Ratio::of_si(self.recovery),
            crossflow_least: Ratio::of_si(self.least_crossflow),
            crossflow_most: Ratio::of_si(self.first.crossflow.1),
            trajectory: Vec::new(),
            limited_by: here.limited_by,
            rests_on: self.rig.assumed(),
        }
    }

    fn start(&self) -> Warm {
        Warm {
            seconds: 0.0,
            kelvin: self.sap.kelvin,
        }
    }

    fn coupled(&self) -> bool {
        self.rig.warming == Some(super::Warming::Coupled)
    }

    fn warming<'b>(&'b self, way: &'b Way) -> Warming<'b> {
        Warming {
            rig: self.rig,
            way,
            limit: self.local.limit,
            tolerance: self.fidelity.tolerance,
        }
    }

    /// Seconds to a place at the tank's own temperature, and the way there where it is wanted.
    pub(super) fn isothermal(&mut self, way: &Way, end: f64) -> (f64, Vec<TrajectoryPoint>) {
        let nodes = self.fidelity.nodes;
        if !self.fidelity.detail {
            return (nodes.integrate(|at| self.pace(way, at), 0.0, end), Vec::new());
        }
        let pace = nodes.series(|at| self.pace(way, at), 0.0, end);
        let seen = |share: f64| {
            let at = share * end;
            trajectory_point(way, at, pace.integral(at), self.local.water * pace.value(at))
        };
        (pace.integral(end), SHARES.map(seen).to_vec())
    }

    fn warm_trajectory(&self, way: &Way, end: f64) -> Vec<TrajectoryPoint> {
        if !self.fidelity.detail {
            return Vec::new();
        }
        let warming = self.warming(way);
        let seen = |share: f64| {
            let at = share * end;
            let warm = warming.reached(self.start(), at)?;
            let water = crate::water::density_at(warm.kelvin);
            Some(trajectory_point(
                way,
                at,
                warm.seconds,
                water * warming.pace(at, warm).seconds,
            ))
        };
        SHARES.iter().filter_map(|share| seen(*share)).collect()
    }

    fn leaked(&self, end: &End) -> f64 {
        if self.local.retention < 1.0 {
            (self.sap.mass * self.sap.brix - end.mass * end.brix).max(0.0) / 100.0
        } else {
            0.0
        }
    }

    fn permeate(&self, end: &End, kelvin: f64) -> Permeate {
        permeate(self.sap.mass - end.mass, self.leaked(end), &self.local, kelvin)
    }

    /// Seconds for a step on the way; NaN where a solver does not settle.
    fn pace(&mut self, way: &Way, at: f64) -> f64 {
        let point = way.at(at);
        let through = self
            .rig
            .through(&self.local, point.brix, self.rig.feed(), self.fidelity.tolerance);
        through.map_or(f64::NAN, |through| {
            self.least_crossflow = self.least_crossflow.min(through.crossflow.0);
            self.recovery = self.recovery.max(through.recovery);
            point.worth / (self.local.water * through.permeate)
        })
    }
}

fn trajectory_point(way: &Way, at: f64, seconds: f64, mass_pace: f64) -> TrajectoryPoint {
    let point = way.at(at);
    TrajectoryPoint {
        time: Time::of_si(seconds),
        brix: Brix::trusted(point.brix),
        mass: Mass::of_si(point.mass),
        flow: Flow::of_si(point.worth / mass_pace),
    }
}

/// `mass` that has passed, with `sugar` in it.
pub(super) fn permeate(mass: f64, sugar: f64, local: &Local, kelvin: f64) -> Permeate {
    let brix = if mass > 0.0 { 100.0 * sugar / mass } else { 0.0 };
    Permeate {
        mass: Mass::of_si(mass),
        volume: Volume::of_si(mass / local.water),
        brix: Brix::trusted(brix),
        sugar: Mass::of_si(sugar),
        temperature: Temperature::of_si(kelvin),
    }
}

const STEPS: usize = 50;

/// Pure water has no osmotic limit: it ends where a millionth is left.
const FURTHEST: f64 = 1e6;

/// Twelfths.
const SHARES: [f64; 13] = [
    0.0,
    1.0 / 12.0,
    2.0 / 12.0,
    3.0 / 12.0,
    4.0 / 12.0,
    5.0 / 12.0,
    6.0 / 12.0,
    7.0 / 12.0,
    8.0 / 12.0,
    9.0 / 12.0,
    10.0 / 12.0,
    11.0 / 12.0,
    1.0,
];
