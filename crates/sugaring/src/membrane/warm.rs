//! A tank that takes up the pump's work.

use core::ops::{Add, Mul};

use super::{Rig, Warmed, factor::TEMPERATURE, local::Local, train::Way};
use crate::{
    solve, sucrose,
    units::{Si, Temperature, Time, table},
};

/// Time and temperature on the way.
#[derive(Clone, Copy, Debug)]
pub(super) struct Warm {
    pub(super) seconds: f64,
    pub(super) kelvin: f64,
}

impl Add for Warm {
    type Output = Self;

    fn add(self, other: Self) -> Self {
        Self {
            seconds: self.seconds + other.seconds,
            kelvin: self.kelvin + other.kelvin,
        }
    }
}

impl Mul<f64> for Warm {
    type Output = Self;

    fn mul(self, factor: f64) -> Self {
        Self {
            seconds: self.seconds * factor,
            kelvin: self.kelvin * factor,
        }
    }
}

impl From<Warm> for Warmed {
    fn from(warm: Warm) -> Self {
        Self {
            temperature: Temperature::of_si(warm.kelvin),
            duration: Time::of_si(warm.seconds),
        }
    }
}

/// What a warming tank is made of.
#[derive(Clone, Copy, Debug)]
pub(super) struct Warming<'a> {
    pub(super) rig: &'a Rig,
    pub(super) way: &'a Way,
    /// Osmotic limit of the cold tank.
    pub(super) limit: f64,
    pub(super) tolerance: f64,
}

impl Warming<'_> {
    /// The tank at `to`; `None` where it passes 45 °C or nothing passes any more.
    pub(super) fn reached(&self, start: Warm, to: f64) -> Option<Warm> {
        let mut warm = start;
        for segment in SEGMENTS {
            let (from, to) = (segment.0 * to, segment.1 * to);
            // One step whatever its error, so that what is reached is a smooth function of where it ends.
            warm = solve::march(
                |at, warm| self.pace(at, warm),
                from,
                to,
                warm,
                |_| f64::INFINITY,
                |_, _| 0.0,
                1.0,
            )?;
        }
        (warm.seconds.is_finite() && warm.kelvin.is_finite()).then_some(warm)
    }

    /// Seconds and kelvins for a step on the way; NaN beyond 45 °C.
    pub(super) fn pace(&self, way: f64, warm: Warm) -> Warm {
        let nowhere = Warm {
            seconds: f64::NAN,
            kelvin: f64::NAN,
        };
        if warm.kelvin > table::deg_c.to_si(TEMPERATURE.high) {
            return nowhere;
        }
        let point = self.way.at(way);
        let local = Local::bounded(self.rig, warm.kelvin, self.limit);
        let through = self.rig.through(&local, point.brix, self.rig.feed(), self.tolerance);
        through.map_or(nowhere, |through| {
            let seconds = point.worth / (local.water * through.permeate);
            let capacity = point.mass * sucrose::specific_heat_at(point.brix, warm.kelvin);
            Warm {
                seconds,
                kelvin: self.rig.hydraulic_power() / capacity * seconds,
            }
        })
    }
}

/// Quarters of the way: 1e-6 of the time and of the rise.
const SEGMENTS: [(f64, f64); 4] = [(0.0, 0.25), (0.25, 0.5), (0.5, 0.75), (0.75, 1.0)];
