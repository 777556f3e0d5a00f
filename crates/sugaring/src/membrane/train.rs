//! Along the elements: °Brix rises, crossflow and pressure fall.

use super::{Rig, local::Local};
use crate::{math, solve};

/// What becomes of a feed in the rig.
#[derive(Clone, Copy, Debug)]
pub(super) struct Through {
    /// m³/s, all trains.
    pub(super) permeate: f64,
    /// Share of the sugar that stays in the concentrate.
    pub(super) kept: f64,
    /// Largest permeate per feed of one element.
    pub(super) recovery: f64,
    /// Least and largest crossflow, per the rated.
    pub(super) crossflow: (f64, f64),
}

/// °Brix and mass flow on the way to the osmotic limit, by a variable in which both ends are far away.
///
/// With x° = limit: w = ln(x/(x° − x)) − ln(x₀/(x° − x₀)) and M = M₀·(x/x₀)^(−1/R). Near the limit what passes goes
/// with x° − x, so that time and length are nearly straight lines in w; pure water has w = ln(M₀/M).
#[derive(Clone, Copy, Debug)]
pub(super) struct Way {
    mass: f64,
    brix: f64,
    limit: f64,
    odds: f64,
    retention: f64,
}

/// A point of a [`Way`].
#[derive(Clone, Copy, Debug)]
pub(super) struct Point {
    pub(super) brix: f64,
    /// Mass or mass flow.
    pub(super) mass: f64,
    /// M·(x° − x)/(R·x°): what must pass for a step in w.
    pub(super) worth: f64,
    /// At the limit, or out of water, to rounding.
    ended: bool,
}

impl Way {
    /// From `mass` of `brix`; `None` where it is at or beyond its limit.
    pub(super) fn from(mass: f64, brix: f64, limit: f64, retention: f64) -> Option<Self> {
        let odds = brix / (limit - brix);
        (limit > brix).then_some(Self {
            mass,
            brix,
            limit,
            odds,
            retention,
        })
    }

    pub(super) fn at(&self, way: f64) -> Point {
        // (1 − x/x°)/(1 − x₀/x°) is to x/x₀ as 1 to e^w.
        let shrink = math::exp(-way);
        let whole = shrink + self.odds;
        let mass = self.mass_at((1.0 + self.odds) / whole);
        let gap = shrink / whole;
        Point {
            brix: self.limit * (self.odds / whole),
            mass,
            worth: mass * gap / self.retention,
            ended: gap < NOTHING_LEFT || way > FURTHEST,
        }
    }

    /// What is left of the mass when the °Brix has grown by a factor.
    pub(super) fn mass_at(&self, growth: f64) -> f64 {
        if self.retention < 1.0 {
            self.mass * math::pow(growth, -1.0 / self.retention)
        } else {
            self.mass / growth
        }
    }

    /// What has passed by then, without loss where it is little: (1 − (x/x₀)^(−1/R))·M₀.
    fn passed(&self, way: f64) -> f64 {
        let shrunk = math::exp_m1(-way) / (1.0 + self.odds);
        if self.retention < 1.0 {
            -self.mass * math::exp_m1(math::ln_1p(shrunk) / self.retention)
        } else {
            -self.mass * shrunk
        }
    }

    /// The variable where the °Brix has grown by a factor.
    pub(super) fn to(&self, growth: f64) -> f64 {
        math::ln(growth * (self.limit - self.brix) / (self.limit - self.brix * growth))
    }
}

/// Share of the limit's °Brix, missing to it, below which rounding decides what passes.
const NOTHING_LEFT: f64 = 1e-9;
/// Pure water has no limit: e⁻⁴⁰ of it is none.
const FURTHEST: f64 = 40.0;

impl Rig {
    /// `feed` (m³/s into each train) of `brix` through the rig. `None` where a solver does not settle.
    pub(super) fn through(&self, local: &Local, brix: f64, feed: f64, tolerance: f64) -> Option<Through> {
        let series = self.series();
        let mass = feed * local.density.density(brix);
        let mut sum = Sum {
            passed: 0.0,
            sugar: 0.0,
            recovery: 0.0,
            slowest: f64::INFINITY,
        };
        // Trains that are alike are computed once.
        let trains = if self.shares.len() <= series {
            1
        } else {
            self.parallel()
        };
        let (mut guess, mut count) = (0.0, 0.0);
        for train in 0..trains {
            let shares = self.shares.get(train * series..).unwrap_or_default();
            let mut train = Train {
                local,
                shares,
                tolerance,
                guess: &mut guess,
            };
            train.add(series, mass, brix, &mut sum)?;
            count += 1.0;
        }
        let entering = count * mass;
        Some(Through {
            permeate: self.trains() * sum.passed / (count * local.water),
            kept: if local.retention < 1.0 && brix > 0.0 {
                sum.sugar / (entering * brix)
            } else {
                1.0
            },
            recovery: sum.recovery,
            crossflow: (sum.slowest / self.element.crossflow, feed / self.element.crossflow),
        })
    }
}

/// What leaves the trains so far.
struct Sum {
    /// kg/s of permeate
    passed: f64,
    /// kg/s of concentrate times its °Brix
    sugar: f64,
    recovery: f64,
    /// m³/s
    slowest: f64,
}

/// Elements one behind the other.
struct Train<'a> {
    local: &'a Local,
    shares: &'a [f64],
    tolerance: f64,
    guess: &'a mut f64,
}

impl Train<'_> {
    fn add(&mut self, elements: usize, mass: f64, brix: f64, sum: &mut Sum) -> Option<()> {
        let local = self.local;
        let (mut mass, mut brix) = (mass, brix);
        if let Some(way) = Way::from(mass, brix, local.limit, local.retention) {
            let (mut place, mut inlet, mut passed) = (0.0, 0.0, 0.0);
            for element in 0..elements {
                let share = self.shares.get(element).copied().unwrap_or(1.0);
                place = self.element(&way, inlet, share, place)?;
                inlet += 1.0;
                let (point, so_far) = (way.at(place), way.passed(place));
                let fed = mass / local.density.density(brix);
                sum.recovery = sum.recovery.max((so_far - passed) / (local.water * fed));
                (mass, brix, passed) = (point.mass, point.brix, so_far);
            }
            sum.passed += passed;
        }
        sum.sugar += mass * brix;
        sum.slowest = sum.slowest.min(mass / local.density.density(brix));
        Some(())
    }

    /// Where an element that begins at `inlet` leads from `start`: `dw/ds = ρ_w·Q/worth`.
    fn element(&mut self, way: &Way, inlet: f64, share: f64, start: f64) -> Option<f64> {
        let local = self.local;
        let slope = |length: f64, place: f64| {
            let point = way.at(place);
            if point.ended {
                return 0.0;
            }
            let pressure = local.pressure - local.drop * length;
            let flow = local.flow(point.brix, point.mass, pressure, share, self.guess);
            flow.map_or(f64::NAN, |flow| local.water * flow / point.worth)
        };
        let relative = |error: f64, travelled: f64| error.abs() / (travelled.abs() + f64::MIN_POSITIVE);
        solve::march(slope, inlet, inlet + 1.0, start, relative, self.tolerance)
    }
}
