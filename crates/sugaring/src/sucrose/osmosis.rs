//! Osmotic pressure: what a membrane has to push against.

use super::{
    activity::{ActivityIsotherm, GAS, SOURCE, WATER_MOLAR_MASS},
    strength::{brix_of_fall, brixes_of_falls},
};
use crate::{
    error::Error,
    lanes::{LANES, block_of, spill, widest},
    math,
    relation::{Range, Relation},
    units::{Brix, Pressure, Si, Temperature, Value, table},
    water,
};

/// Osmotic pressure of a sucrose solution.
///
/// ```text
/// π = π₀ (1 + ½ κ π₀),  π₀ = −R T ln a_w(w, T) ρ_w(T) / M_w
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | w | `brix` / 100 | | 0 to 0.6 |
/// | T | `temperature` | K | 273.15 to 323.15, that is 0 to 50 °C |
/// | `ρ_w` | [density of water](crate::water::density) | kg/m³ | |
/// | κ | compressibility of water, 4.6e-10 | 1/Pa | |
/// | π | osmotic pressure | bar | 0 to 161 |
///
/// Of pure sucrose. The salts of sap add 0.1 to 0.3 bar (from memory), 10 to 20 % at 2 °Bx; and a membrane meets the
/// strength at its wall, not that of the bulk.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// [`water_activity`](super::water_activity). Within 1 % to 30 °Bx, 2 % to 45, 3.5 % to 60.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let sap = sucrose::osmotic_pressure(brix(2.0)?, deg_c(4.0))?;
/// assert_eq!(format!("{:.2}", sap.get::<bar>()), "1.38");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::osmotic_pressure(brix(2.0)?, deg_c(60.0)).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "temperature = 60 °C is outside 0 to 50 °C; 60 °F is 15.56 °C: write deg_f(60)"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn osmotic_pressure(brix: Brix, temperature: Temperature) -> Result<Pressure, Error> {
    let brix = OSMOTIC_PRESSURE.check(0, brix.si())?;
    let kelvin = OSMOTIC_PRESSURE.check(1, temperature.si())?;
    Ok(Pressure::of_si(osmotic_pressure_at(brix, kelvin)))
}

/// °Brix of the sucrose solution that has this osmotic `pressure`: the ceiling of a membrane. The inverse of
/// [`osmotic_pressure`].
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | π | `pressure`, the difference across the membrane | bar | 0 to π(60 °Bx, T), in all to 161 |
/// | T | `temperature` | K | 273.15 to 323.15, that is 0 to 50 °C |
/// | B | °Brix | °Bx | 0 to 60 |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange) with the pressures that
/// this temperature allows.
/// # Source
/// [`water_activity`](super::water_activity), solved for °Brix; found to 1e-11 °Bx.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let ceiling = sucrose::brix_from_osmotic_pressure(bar(7.6), deg_c(5.0))?;
/// assert_eq!(format!("{ceiling:.2}"), "9.83 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::brix_from_osmotic_pressure(bar(150.0), deg_c(5.0)).unwrap_err();
/// assert_eq!(error.to_string(), "pressure = 150 bar is outside 0 to 144.9 bar");
/// ```
pub fn brix_from_osmotic_pressure(pressure: Pressure, temperature: Temperature) -> Result<Brix, Error> {
    let pascal = BRIX_FROM_OSMOTIC_PRESSURE.check(0, pressure.si())?;
    let kelvin = BRIX_FROM_OSMOTIC_PRESSURE.check(1, temperature.si())?;
    let isotherm = OsmosisIsotherm::at(kelvin);
    match isotherm.brix(pascal) {
        Some(found) if found <= STRONGEST + 1e-9 => Ok(Brix::trusted(found.clamp(0.0, STRONGEST))),
        _ => {
            let limit = table::bar.from_si(isotherm.pressure(STRONGEST));
            let given = table::bar.from_si(pascal);
            Err(Error::out_of_limits("pressure", given, &table::bar, 0.0, limit))
        }
    }
}

/// What [`osmotic_pressure`] covers.
pub static OSMOTIC_PRESSURE: Relation = Relation {
    name: "sucrose::osmotic_pressure",
    inputs: &[Range::new("brix", &table::deg_brix, 0.0, STRONGEST), TEMPERATURE],
    output: &table::bar,
    source: SOURCE,
    accuracy: ACCURACY,
};

/// What [`brix_from_osmotic_pressure`] covers.
pub static BRIX_FROM_OSMOTIC_PRESSURE: Relation = Relation {
    name: "sucrose::brix_from_osmotic_pressure",
    inputs: &[Range::new("pressure", &table::bar, 0.0, 162.0), TEMPERATURE],
    output: &table::deg_brix,
    source: SOURCE,
    accuracy: ACCURACY,
};

const ACCURACY: &str = "1 % to 30 °Bx, 2 % to 45 °Bx, 3.5 % to 60 °Bx, of the pressure";
const TEMPERATURE: Range = Range::new("temperature", &table::deg_c, 0.0, 50.0);
const STRONGEST: f64 = 60.0;

/// Pa from °Bx and K, no range check; sound to 85 °Bx.
#[inline(always)]
pub(crate) fn osmotic_pressure_at(brix: f64, kelvin: f64) -> f64 {
    squeezed(-scale(kelvin) * ActivityIsotherm::near(kelvin).ln_near(brix))
}

widest! {
    /// °Bx from Pa and K within the limits of the inverse; NaN where the public function has to decide.
    pub(crate) fn brixes_from_osmotic_pressure(pascal: &[f64], kelvin: &[f64], out: &mut [f64]) {
        for (index, out) in out.chunks_mut(LANES).enumerate() {
            let (pascal, kelvin) = (block_of(pascal, index, 1e6), block_of(kelvin, index, 280.0));
            let mut falls = [0.0; LANES];
            for ((to, pascal), kelvin) in falls.iter_mut().zip(&pascal).zip(&kelvin) {
                *to = free(*pascal) / scale(*kelvin);
            }
            spill(&brixes_of_falls(&falls, &kelvin, STRONGEST), out);
        }
    }
}

/// `R T ρ_w / M_w`, Pa.
#[inline(always)]
fn scale(kelvin: f64) -> f64 {
    GAS * kelvin * water::density_at(kelvin) / WATER_MOLAR_MASS
}

/// The pressure π of π₀.
#[inline(always)]
fn squeezed(ideal: f64) -> f64 {
    ideal * (1.0 + 0.5 * COMPRESSIBILITY * ideal)
}

/// The pressure π₀ of π, by the quadratic formula without its cancellation.
#[inline(always)]
fn free(pascal: f64) -> f64 {
    2.0 * pascal / (1.0 + math::sqrt(1.0 + 2.0 * COMPRESSIBILITY * pascal))
}

/// The osmotic pressures of one temperature: for many strengths at once.
#[derive(Clone, Copy, Debug)]
pub(crate) struct OsmosisIsotherm {
    kelvin: f64,
    activity: ActivityIsotherm,
    /// `R T ρ_w / M_w`, Pa
    scale: f64,
}

impl OsmosisIsotherm {
    /// The pressures at `kelvin`.
    pub(crate) fn at(kelvin: f64) -> Self {
        Self {
            kelvin,
            activity: ActivityIsotherm::at(kelvin),
            scale: scale(kelvin),
        }
    }

    /// Pa of a strength in °Bx.
    pub(crate) fn pressure(&self, brix: f64) -> f64 {
        squeezed(self.incompressible(brix))
    }

    /// Pa and Pa per °Bx at once, for Newton's method.
    pub(crate) fn pressure_and_slope(&self, brix: f64) -> (f64, f64) {
        let (ln, slope) = self.activity.ln_and_slope(brix);
        let ideal = -self.scale * ln;
        (squeezed(ideal), -self.scale * slope * (1.0 + COMPRESSIBILITY * ideal))
    }

    /// °Bx on [0, 65] of a pressure in Pa, or `None` where none has it; the end lies above the range, so that the
    /// range's own limit is found.
    ///
    /// Where the steps in lanes do not settle: the pressure is convex in the strength, and Newton's steps from above come
    /// down to the root and never pass it.
    pub(crate) fn brix(&self, pascal: f64) -> Option<f64> {
        const END: f64 = 65.0;
        if !(0.0..=self.pressure(END)).contains(&pascal) {
            return None;
        }
        let near = brix_of_fall(&self.activity, free(pascal) / self.scale, self.kelvin, END);
        if near.is_finite() {
            return Some(near);
        }
        let (_, first_slope) = self.pressure_and_slope(0.0);
        let mut brix = (pascal / first_slope).min(END);
        for _ in 0..STEPS {
            let (pressure, slope) = self.pressure_and_slope(brix);
            let step = (pressure - pascal) / slope;
            brix -= step;
            if step.abs() <= 1e-12 {
                return Some(brix.max(0.0));
            }
        }
        None
    }

    fn incompressible(&self, brix: f64) -> f64 {
        -self.scale * self.activity.ln(brix)
    }
}

/// Eight are enough anywhere.
const STEPS: usize = 50;

/// Of water, 1/Pa: 0.3 % of 13 MPa.
const COMPRESSIBILITY: f64 = 4.6e-10;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    #[test]
    fn values_of_the_note() {
        for (strength, celsius, value) in [
            (2.0, 4.0, 1.38),
            (2.0, 25.0, 1.48),
            (8.0, 4.0, 6.00),
            (8.0, 10.0, 6.13),
            (12.0, 4.0, 9.55),
            (15.0, 4.0, 12.50),
            (20.0, 4.0, 18.08),
            (20.0, 25.0, 19.19),
        ] {
            let found = osmotic_pressure(brix(strength).unwrap(), deg_c(celsius)).unwrap();
            assert!(
                (found.get::<bar>() - value).abs() < 5.1e-3,
                "{strength} {celsius} {found:?}"
            );
        }
        for (pressure, value) in [(4.1, 5.63), (7.6, 9.83), (10.0, 12.44), (13.8, 16.20), (34.5, 31.0)] {
            let found = brix_from_osmotic_pressure(bar(pressure), deg_c(5.0)).unwrap();
            assert!((found.get() - value).abs() < 5.1e-2 * if pressure > 20.0 { 1.0 } else { 0.1 });
        }
    }

    #[test]
    fn corners_meet() {
        for celsius in [0.0, 50.0] {
            for strength in [0.0, 60.0] {
                let there = osmotic_pressure(brix(strength).unwrap(), deg_c(celsius)).unwrap();
                let back = brix_from_osmotic_pressure(there, deg_c(celsius)).unwrap();
                assert!((back.get() - strength).abs() < 1e-9);
            }
        }
    }

    proptest! {
        #[test]
        fn never_panics(b in any::<f64>(), t in any::<f64>()) {
            let isotherm = OsmosisIsotherm::at(t);
            let _ = (isotherm.pressure(b), isotherm.pressure_and_slope(b), isotherm.brix(b));
            let _ = brix_from_osmotic_pressure(pa(b), kelvin(t));
            if let Ok(strength) = brix(b) {
                let _ = osmotic_pressure(strength, kelvin(t));
            }
        }

        #[test]
        fn inverse_meets_forward(strength in 0.0..60.0_f64, celsius in 0.0..50.0_f64) {
            let there = osmotic_pressure(brix(strength).unwrap(), deg_c(celsius)).unwrap();
            let back = brix_from_osmotic_pressure(there, deg_c(celsius)).unwrap();
            prop_assert!((back.get() - strength).abs() < 1e-10);
        }

        #[test]
        fn slope_rises_with_strength(strength in 0.0..64.9_f64, step in 1e-3..0.1_f64, celsius in 0.0..50.0_f64) {
            let isotherm = OsmosisIsotherm::at(celsius + 273.15);
            let slope = |strength| isotherm.pressure_and_slope(strength).1;
            prop_assert!(slope(strength + step) > slope(strength));
        }

        #[test]
        fn slope_is_the_derivative(strength in 0.01..60.0_f64, celsius in 0.0..50.0_f64) {
            let isotherm = OsmosisIsotherm::at(celsius + 273.15);
            let by_difference = (isotherm.pressure(strength + 5e-4) - isotherm.pressure(strength - 5e-4)) / 1e-3;
            prop_assert!(by_difference > 0.0);
            let (pressure, slope) = isotherm.pressure_and_slope(strength);
            prop_assert_eq!(pressure.to_bits(), isotherm.pressure(strength).to_bits());
            prop_assert!((slope / by_difference - 1.0).abs() < 1e-7);
        }

        #[test]
        fn dilute_solutions_follow_van_t_hoff(celsius in 0.0..50.0_f64) {
            let kelvin = celsius + 273.15;
            let molality = 5e-7;
            let w = molality * 0.342_296_5 / (1.0 + molality * 0.342_296_5);
            let ideal = GAS * kelvin * water::density_at(kelvin) * molality;
            prop_assert!((osmotic_pressure_at(100.0 * w, kelvin) / ideal - 1.0).abs() < 1e-7);
        }
    }
}
