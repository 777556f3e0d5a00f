//! A pan held at its level from a tank: what it takes in, and how its strength climbs.

use super::boiling_line::{BoilingLine, Fineness};
use crate::sucrose;

/// A pan of constant hot volume under constant heat.
#[derive(Clone, Copy, Debug)]
pub(crate) struct FedPan {
    line: BoilingLine,
    volume: f64,
    heat: f64,
}

impl FedPan {
    /// `volume` m³ at `heat` W, for strengths from `low` to `high` °Bx.
    pub(crate) fn new(volume: f64, heat: f64, pascal: f64, low: f64, high: f64, fineness: Fineness) -> Option<Self> {
        Some(Self {
            line: BoilingLine::new(pascal, low, high, fineness)?,
            volume,
            heat,
        })
    }

    /// What the pan holds at `brix`, kg.
    pub(crate) fn mass(&self, brix: f64) -> f64 {
        self.volume * self.line.density(brix)
    }

    /// J to bring a fill of `brix` from `kelvin` to the boil.
    pub(crate) fn warm_up(&self, brix: f64, kelvin: f64) -> f64 {
        self.mass(brix) * (sucrose::enthalpy_at(brix, self.line.kelvin(brix)) - sucrose::enthalpy_at(brix, kelvin))
    }

    /// Feed that the pan takes, kg/s: `q = F (L (1 − m'(s) x) + h(x, T_b) − h(x, T) + m c_p T_b'(s) x)`, x as a fraction.
    pub(crate) fn intake(&self, brix: f64, feed_brix: f64, feed_kelvin: f64) -> f64 {
        let share = feed_brix / 100.0;
        let (mass_slope, sugar_slope) = self.slopes(brix);
        let boils = self.line.kelvin(brix);
        let feed = sucrose::enthalpy_at(feed_brix, boils) - sucrose::enthalpy_at(feed_brix, feed_kelvin);
        let pan = self.mass(brix) * sucrose::specific_heat_at(brix, boils) * self.line.slope(brix) / sugar_slope;
        self.heat / (self.line.latent_heat * (1.0 - mass_slope / sugar_slope * share) + feed + pan * share)
    }

    /// How fast the strength climbs with `sugar` kg/s coming in, °Bx/s.
    pub(crate) fn climb(&self, brix: f64, sugar: f64) -> f64 {
        sugar / self.slopes(brix).1
    }

    /// Mass and sugar of the pan, each per °Brix.
    fn slopes(&self, brix: f64) -> (f64, f64) {
        const STEP: f64 = 1e-3;
        let density = self.line.density(brix);
        let slope = (self.line.density(brix + STEP) - self.line.density(brix - STEP)) / (2.0 * STEP);
        (self.volume * slope, self.volume * (density + brix * slope) / 100.0)
    }
}
