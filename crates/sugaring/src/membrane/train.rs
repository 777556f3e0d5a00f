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
    /// Where it stands at the limit, or is out of water, to rounding.
    end: f64,
}

/// A point of a [`Way`].
#[derive(Clone, Copy, Debug)]
pub(super) struct Point {
    pub(super) brix: f64,
    /// Mass or mass flow.
    pub(super) mass: f64,
    /// M·(x° − x)/(R·x°): what must pass for a step in w.
    pub(super) worth: f64,
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
            end: (-math::ln((odds * NOTHING_LEFT).max(NO_WATER_LEFT))).max(0.0),
        })
    }

    /// Beyond the end it stands still, so that a march may leap over the end.
    pub(super) fn at(&self, way: f64) -> Point {
        // (1 − x/x°)/(1 − x₀/x°) is to x/x₀ as 1 to e^w.
        let shrink = math::exp(-way.clamp(0.0, self.end));
        let whole = shrink + self.odds;
        let mass = self.mass_at((1.0 + self.odds) / whole);
        let gap = shrink / whole;
        Point {
            brix: self.limit * (self.odds / whole),
            mass,
            worth: mass * gap / self.retention,
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
        let shrunk = math::exp_m1(-way.clamp(0.0, self.end)) / (1.0 + self.odds);
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
const NOTHING_LEFT: f64 = 1e-7;
/// Share of pure water, which has no limit, that is none.
const NO_WATER_LEFT: f64 = 1e-17;
/// The °Brix grows by half, or half of what is missing to the limit passes: as much as a first step may do.
const HALF_WAY: f64 = 0.5;

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
            let pressure = local.pressure - local.drop * length;
            let flow = local.flow(point.brix, point.mass, pressure, share, self.guess);
            flow.map_or(f64::NAN, |flow| local.water * flow / point.worth)
        };
        let first = |slope: f64| HALF_WAY / slope;
        let relative = |error: f64, travelled: f64| error.abs() / (travelled.abs() + f64::MIN_POSITIVE);
        solve::march(slope, inlet, inlet + 1.0, start, first, relative, self.tolerance)
    }
}

#[cfg(test)]
mod tests {
    use super::super::{
        Fidelity,
        sample::{any_rig, any_sap, rig, sap},
    };
    use super::*;
    use crate::{
        membrane::Until,
        units::{Value, brix},
    };
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn the_way_keeps_what_it_should(
            mass in 1e-3..1e3_f64, brix in 0.0..9.0_f64, more in 1e-3..30.0_f64, retention in 0.5..1.0_f64, at in 0.0..12.0_f64,
        ) {
            for retention in [retention, 1.0] {
                let way = Way::from(mass, brix, brix + more, retention).unwrap();
                let point = way.at(at);
                prop_assert!(point.brix >= brix * (1.0 - 1e-14) && point.brix <= brix + more);
                prop_assert!((way.passed(at) + point.mass - mass).abs() < 1e-14 * mass);
                if brix > 1e-3 && at < way.end {
                    let growth = point.brix / brix;
                    prop_assert!((way.mass_at(growth) / point.mass - 1.0).abs() < 1e-12);
                    let gap = (brix + more - point.brix) / (brix + more);
                    prop_assert!((way.to(growth) - at).abs() < 1e-13 / gap);
                }
            }
        }

        /// Only where the pressure drop ends the flow inside an element does the kink cost more than 1e-8 or so.
        #[test]
        fn full_agrees_with_a_much_finer_integration(rig in any_rig(), sap in any_sap(), less in -1.0..5.0_f64) {
            let local = Local::new(&rig, sap.kelvin).unwrap();
            let feed = rig.feed() * math::exp(-less);
            let through = |tolerance| rig.through(&local, sap.brix, feed, tolerance).unwrap();
            let (fine, full, draw) = (through(1e-9), through(Fidelity::FULL.tolerance), through(Fidelity::DRAW.tolerance));
            let fed = feed * rig.trains();
            prop_assert!(fine.permeate >= 0.0 && fine.permeate <= fed * 1.01);
            prop_assert!(full.kept <= 1.0 + 1e-12 && full.kept > 0.0);
            let smooth = local.drop < 1.0;
            let apart = |one: Through| (one.permeate - fine.permeate).abs() / fine.permeate.max(1e-30);
            prop_assert!(apart(full) <= if smooth { 5e-6 } else { 1e-4 }, "{full:?} {fine:?}");
            prop_assert!(apart(draw) <= if smooth { 2e-4 } else { 2e-2 }, "{draw:?} {fine:?}");
            if smooth && fine.permeate < 0.6 * fed {
                prop_assert!(apart(full) <= 2e-7, "{full:?} {fine:?}");
            }
        }

        #[test]
        fn trains_may_stand_in_any_order(shares in prop::collection::vec(0.8..1.2_f64, 2)) {
            let flow = |shares: &[f64]| {
                let rig = rig().with_element_shares(shares);
                let local = Local::new(&rig, sap().kelvin).unwrap();
                rig.through(&local, 2.0, rig.feed(), 1e-10).unwrap().permeate
            };
            let [a, b] = [shares[0], shares[1]];
            prop_assert!((flow(&[a, b]) / flow(&[b, a]) - 1.0).abs() < 1e-9);
            prop_assert!((flow(&[a, b]) - 0.5 * (flow(&[a, a]) + flow(&[b, b]))).abs() < 1e-9 * flow(&[a, b]));
            prop_assert_eq!(flow(&[1.0, 1.0]).to_bits(), flow(&[]).to_bits());
            // One share for two trains: the other is as rated.
            prop_assert!((flow(&[a]) / flow(&[a, 1.0]) - 1.0).abs() < 1e-12);
        }
    }

    /// The demo run as finely as the plan takes it, and as its draws do.
    #[test]
    fn the_demo_run_is_fine_enough() {
        let hours = |fidelity| {
            let run = rig().recirculate_with(&sap(), Until::Brix(brix(4.0).unwrap()), fidelity);
            run.unwrap().duration.si()
        };
        let fine = hours(Fidelity {
            tolerance: 1e-12,
            ..Fidelity::FULL
        });
        assert!((hours(Fidelity::FULL) / fine - 1.0).abs() < 1e-8);
        assert!((hours(Fidelity::DRAW) / fine - 1.0).abs() < 1e-5);
    }
}
