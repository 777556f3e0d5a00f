//! What passes where the sap beside the membrane is known.

use super::{Polarisation, Rig, factor::BASE};
use crate::{
    error::Error,
    math, solve,
    sucrose::{DensityIsotherm, OsmosisIsotherm, ViscosityIsotherm},
    water,
};

/// A rig's element at one temperature.
#[derive(Clone, Copy, Debug)]
pub(super) struct Local {
    pub(super) density: DensityIsotherm,
    osmosis: OsmosisIsotherm,
    viscosity: ViscosityIsotherm,
    /// Density of water, kg/m³.
    pub(super) water: f64,
    /// m³/(s Pa), as rated.
    pub(super) permeance: f64,
    /// Pressure across the membrane at the inlet, Pa.
    pub(super) pressure: f64,
    /// Pa for each element.
    pub(super) drop: f64,
    pub(super) retention: f64,
    /// °Brix at which nothing passes at the inlet; never less than that, so that it bounds the °Brix at the membrane.
    pub(super) limit: f64,
    film: Film,
}

#[derive(Clone, Copy, Debug)]
enum Film {
    Absent,
    Modulus(f64),
    /// Coefficient times area, m³/s.
    Fixed(f64),
    /// ln of the part of coefficient times area that temperature alone decides.
    Anchored(f64),
}

impl Local {
    pub(super) fn new(rig: &Rig, kelvin: f64) -> Result<Self, Error> {
        let mut local = Self::bounded(rig, kelvin, 0.0);
        local.limit = local
            .osmotic_limit()
            .ok_or_else(|| Error::no_convergence("osmotic_limit"))?;
        Ok(local)
    }

    /// The element at a temperature not below that of which `limit` is the osmotic limit.
    pub(super) fn bounded(rig: &Rig, kelvin: f64, limit: f64) -> Self {
        let film = match rig.polarisation() {
            Polarisation::None => Film::Absent,
            Polarisation::Modulus(modulus) => Film::Modulus(modulus),
            Polarisation::Coefficient(flow) => Film::Fixed(flow.value),
            Polarisation::RatingAnchored { factor } => Film::Anchored(anchor(rig, kelvin, factor)),
        };
        Self {
            density: DensityIsotherm::at(kelvin),
            osmosis: OsmosisIsotherm::at(kelvin),
            viscosity: ViscosityIsotherm::at(kelvin),
            water: water::density_at(kelvin),
            permeance: rig.permeance_at(kelvin),
            pressure: rig.pressure - rig.back_pressure.unwrap_or(0.0),
            drop: rig.element_drop.unwrap_or(0.0),
            retention: rig.retention(),
            limit,
            film,
        }
    }

    /// Root of π(x·β) − π((1 − R)·x) = ΔP on 0 to 60 °Bx, or the end of that range.
    fn osmotic_limit(&self) -> Option<f64> {
        if self.pressure <= 0.0 {
            return Some(0.0);
        }
        let at_membrane = match self.film {
            Film::Modulus(modulus) => 1.0 - self.retention + self.retention * modulus,
            _ => 1.0,
        };
        let left = |brix: f64| {
            let permeate = self.osmosis.pressure((1.0 - self.retention) * brix);
            self.osmosis.pressure(at_membrane * brix) - permeate - self.pressure
        };
        let end = STRONGEST / at_membrane;
        if left(end) <= 0.0 {
            return Some(end);
        }
        let found = solve::root(left, 0.0, end, 1e-13)?;
        found.settled.then_some(found.at)
    }

    /// Local flow through the membrane, m³/s as if it were the whole element's, 0 where the sap holds the pressure back.
    ///
    /// `mass_flow` passes along the membrane (kg/s), `share` is of the rated permeance, `guess` a value of J/k to start
    /// from, replaced by the one found. `None` where the equation does not settle.
    pub(super) fn flow(&self, brix: f64, mass_flow: f64, pressure: f64, share: f64, guess: &mut f64) -> Option<f64> {
        if brix >= self.limit {
            return Some(0.0);
        }
        let permeance = self.permeance * share;
        let leak = (1.0 - self.retention) * brix;
        let drive = if leak > 0.0 {
            pressure + self.osmosis.pressure(leak)
        } else {
            pressure
        };
        let film = match self.film {
            Film::Absent => return Some(self.without_film(permeance, drive, brix)),
            Film::Modulus(modulus) => return Some(self.without_film(permeance, drive, leak + (brix - leak) * modulus)),
            Film::Fixed(film) => film,
            Film::Anchored(base) => self.anchored(base, brix, mass_flow),
        };
        let balance = Balance {
            osmosis: &self.osmosis,
            leak,
            kept: brix - leak,
            stiffness: film / permeance,
            drive,
        };
        // At the membrane the sap cannot be sweeter than what holds all of the pressure back.
        let sweetest = math::ln((self.limit - leak) / balance.kept);
        *guess = balance.exponent(sweetest.min(drive / balance.stiffness), *guess)?;
        Some(film * *guess)
    }

    fn without_film(&self, permeance: f64, drive: f64, wall: f64) -> f64 {
        (permeance * (drive - self.osmosis.pressure(wall))).max(0.0)
    }

    /// Film coefficient times area at a crossflow, m³/s.
    ///
    /// kS = f·(kS)ᵣ·(D/Dᵣ)^(1−b)·(νᵣ/ν)^(a−b)·(q/qᵣ)^a with D = D₀·(1 − 0.0148·c)·…, ν = η/ρ and q = Ṁ/ρ, in logarithms.
    fn anchored(&self, base: f64, brix: f64, mass_flow: f64) -> f64 {
        let density = self.density.density(brix);
        let sugar = (brix * density / 1000.0).min(DILUTE_TO);
        let diffusivity = math::ln(1.0 - DIFFUSIVITY_SLOPE * sugar);
        let thickness = self.viscosity.ln_ratio(brix);
        let flow = A * math::ln(mass_flow) - B * math::ln(density);
        math::exp(base + (1.0 - B) * diffusivity - (A - B) * thickness + flow)
    }
}

/// What is the same in [`Local::anchored`] all along an element.
fn anchor(rig: &Rig, kelvin: f64, factor: f64) -> f64 {
    let viscosity = water::viscosity_at(kelvin);
    // Stokes–Einstein: D goes with T/η of water.
    let diffusivity = DIFFUSIVITY * (kelvin / BASE) * (water::viscosity_at(BASE) / viscosity);
    math::ln(factor * rig.element.film)
        + (1.0 - B) * math::ln(diffusivity / DIFFUSIVITY_OF_SALT)
        + (A - B) * math::ln(KINEMATIC_VISCOSITY_OF_TEST / viscosity)
        - A * math::ln(rig.element.crossflow)
}

/// `K·z + π(x_p + (x − x_p)·e^z) = ΔP + π(x_p)`: rises with z = J/k and has one root.
struct Balance<'a> {
    osmosis: &'a OsmosisIsotherm,
    /// °Brix of the permeate.
    leak: f64,
    /// °Brix beside the membrane less that.
    kept: f64,
    /// kS/A, Pa.
    stiffness: f64,
    /// ΔP + π(`x_p`), Pa.
    drive: f64,
}

impl Balance<'_> {
    /// Root on `[0, high]`, 0 where there is none above; Newton steps, halved where they leave the bracket.
    fn exponent(&self, high: f64, guess: f64) -> Option<f64> {
        if high.is_nan() {
            return None;
        }
        // Nothing holds pure water back, nor does it make a film.
        if high <= 0.0 || self.kept <= 0.0 {
            return Some(high.max(0.0));
        }
        let rounding = 1e-15 * self.drive / self.stiffness;
        let (mut low, mut high) = (0.0, high);
        let mut exponent = if guess > low && guess < high { guess } else { high };
        for _ in 0..STEPS {
            let (miss, slope) = self.miss(exponent);
            let step = miss / slope;
            // The error squares with each step: after one this small nothing is left of it. Where next to nothing passes,
            // rounding is all there is to see.
            if step.abs() <= 1e-6 * exponent + rounding {
                return Some((exponent - step).clamp(low, high));
            }
            if miss > 0.0 {
                high = exponent;
            } else {
                low = exponent;
            }
            let next = exponent - step;
            exponent = if next > low && next < high {
                next
            } else if low == 0.0 && self.miss(0.0).0 >= 0.0 {
                return Some(0.0);
            } else {
                0.5 * (low + high)
            };
        }
        None
    }

    /// Pa by which the two sides differ, and its slope.
    fn miss(&self, exponent: f64) -> (f64, f64) {
        let excess = self.kept * math::exp(exponent);
        let (pressure, slope) = self.osmosis.pressure_and_slope(self.leak + excess);
        (
            self.stiffness * exponent + pressure - self.drive,
            self.stiffness + slope * excess,
        )
    }
}

const STEPS: usize = 100;

/// Where the osmotic pressure is known to, °Brix.
const STRONGEST: f64 = 60.0;

// Koutsou and others 2009, Sh = 0.2 Re^0.57 Sc^0.40 for spacer-filled channels: exponents seen in a review.
const A: f64 = 0.57;
const B: f64 = 0.40;
// NaCl and water at 25 °C, m²/s: the rating test. From memory.
const DIFFUSIVITY_OF_SALT: f64 = 1.61e-9;
const KINEMATIC_VISCOSITY_OF_TEST: f64 = 8.93e-7;
// Gosting and Morris 1949, sucrose at 25 °C, m²/s and per g/100 mL, to 6 g/100 mL: from memory. Beyond 25 g/100 mL the
// factor is held.
const DIFFUSIVITY: f64 = 5.226e-10;
const DIFFUSIVITY_SLOPE: f64 = 0.0148;
const DILUTE_TO: f64 = 25.0;

#[cfg(test)]
mod tests {
    use super::super::sample::{any_rig, any_sap};
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn a_flow_balances_and_stays_in_its_bracket(
            rig in any_rig(), sap in any_sap(), share in 0.5..1.5_f64, crossflow in -3.0..3.0_f64, guess in -1.0..9.0_f64,
        ) {
            let local = Local::new(&rig, sap.kelvin).unwrap();
            let pressure = local.pressure;
            let mass_flow = math::exp(crossflow) * 1e-2;
            let mut guess = guess;
            let flow = local.flow(sap.brix, mass_flow, pressure, share, &mut guess).unwrap();
            let leak = (1.0 - local.retention) * sap.brix;
            let drive = pressure + local.osmosis.pressure(leak) - local.osmosis.pressure(sap.brix);
            prop_assert!(flow >= 0.0 && flow <= (local.permeance * share * drive).max(0.0) * (1.0 + 1e-12));
            prop_assert!((flow > 0.0) == (sap.brix < local.limit) || matches!(local.film, Film::Modulus(_)));
            let film = match local.film {
                Film::Fixed(film) => film,
                Film::Anchored(base) => local.anchored(base, sap.brix, mass_flow),
                _ => return Ok(()),
            };
            if flow > 0.0 {
                let wall = leak + (sap.brix - leak) * math::exp(flow / film);
                prop_assert!(wall <= local.limit * (1.0 + 1e-9));
                let driven = pressure + local.osmosis.pressure(leak) - local.osmosis.pressure(wall);
                prop_assert!((local.permeance * share * driven - flow).abs() < 1e-9 * local.permeance * pressure);
            }
            // Wherever the search begins, it ends there.
            let again = local.flow(sap.brix, mass_flow, pressure, share, &mut 0.0).unwrap();
            prop_assert!((again - flow).abs() <= 1e-11 * flow);
        }

        #[test]
        fn the_limit_holds_the_pressure_back(rig in any_rig(), celsius in 0.0..45.0_f64) {
            let local = Local::new(&rig, 273.15 + celsius).unwrap();
            let wall = match local.film {
                Film::Modulus(modulus) => 1.0 - local.retention + local.retention * modulus,
                _ => 1.0,
            };
            if local.limit * wall < STRONGEST - 1e-9 && local.pressure > 0.0 {
                let [sap, permeate] = [wall, 1.0 - local.retention].map(|x| local.osmosis.pressure(x * local.limit));
                prop_assert!((sap - permeate - local.pressure).abs() < 1e-6);
            }
        }
    }
}
