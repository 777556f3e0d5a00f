//! The strength behind a water activity: what the inverses of boiling, freezing and osmotic pressure share, one at a
//! time and, with the same bits, in lanes.
//!
//! Steps of Newton's in the molality, in which the logarithm of the activity is nearly straight; what does not settle
//! is bracketed by those who ask.

use super::activity::{ActivityIsotherm, REFERENCE, SUCROSE_MOLAR_MASS, WATER_MOLAR_MASS};
use crate::lanes::{LANES, Lanes};

/// °Bx of the strength whose −ln `a_w` is `fall`, from 0 to 85; within −12 to 132 °C, to 60 °Bx below 60 °C, it
/// settles. NaN where it does not, or ends beyond `rounding` outside 0 to `strongest`.
pub(super) fn brix_of_fall(isotherm: &ActivityIsotherm, fall: f64, kelvin: f64, strongest: f64) -> f64 {
    let (mut w, mut step) = (start(fall, kelvin), 0.0);
    for _ in 0..STEPS {
        (w, step) = nearer(isotherm, fall, w);
    }
    settled(w, step, strongest)
}

/// The same in lanes, each step for every lane before the next. The isotherms are those of `kelvin`.
#[inline(always)]
#[expect(clippy::indexing_slicing, reason = "arrays of as many lanes as the loops count")]
pub(super) fn brixes_of_falls(fall: &Lanes, kelvin: &Lanes, strongest: f64) -> Lanes {
    let mut terms = [[0.0; LANES]; 4];
    let [mut w, mut step] = [[0.0; LANES]; 2];
    for i in 0..LANES {
        let isotherm = ActivityIsotherm::near(kelvin[i]);
        for (terms, term) in terms.iter_mut().zip(isotherm.terms()) {
            terms[i] = term;
        }
        w[i] = start(fall[i], kelvin[i]);
    }
    for _ in 0..STEPS {
        for i in 0..LANES {
            let isotherm = ActivityIsotherm::of_terms(terms.each_ref().map(|terms| terms[i]));
            (w[i], step[i]) = nearer(&isotherm, fall[i], w[i]);
        }
    }
    for i in 0..LANES {
        w[i] = settled(w[i], step[i], strongest);
    }
    w
}

/// Mass fraction within 0.0037: a series in the molality of an ideal solution with that fall.
#[inline(always)]
fn start(fall: f64, kelvin: f64) -> f64 {
    let y = fall * (0.1 / WATER_MOLAR_MASS);
    let t = (kelvin - REFERENCE) / 100.0;
    let [c0, c1, c2, c3] = START;
    let [d0, d1, d2] = START_WARM;
    let sugar = y * SUCROSE_MOLAR_MASS * (c0 + t * d0 + y * (c1 + t * d1 + y * (c2 + t * d2 + y * c3)));
    sugar / (1.0 + sugar)
}

/// One of Newton's steps from mass fraction `w`: where it leads, and how far.
///
/// It is taken in w/(1 − w), which is the molality but for a factor; one division brings it back to w.
#[inline(always)]
fn nearer(isotherm: &ActivityIsotherm, fall: f64, w: f64) -> (f64, f64) {
    let (ln, slope) = isotherm.ln_and_slope_near(w);
    let excess = ln + fall;
    let step = excess * (1.0 - w) / (slope - excess);
    (w - step, step)
}

#[inline(always)]
fn settled(w: f64, step: f64, strongest: f64) -> f64 {
    let brix = 100.0 * w;
    if (step.abs() < 1e-7) & (-ROUNDING..=strongest + ROUNDING).contains(&brix) {
        brix.clamp(0.0, strongest)
    } else {
        f64::NAN
    }
}

/// They leave 9e-6, 6e-11 and rounding.
const STEPS: usize = 3;
/// °Bx.
const ROUNDING: f64 = 1e-9;

// Fitted to the inverse itself.
const START: [f64; 4] = [9.668, -5.697, 2.877, -0.4858];
const START_WARM: [f64; 3] = [0.485, 0.3041, -0.1208];

#[cfg(test)]
mod tests {
    use super::*;

    /// Wherever the three inverses look.
    #[test]
    fn the_steps_lead_back() {
        for (strongest, celsius) in [(850, 60..=132), (600, -12..=60)] {
            for step in 0..=strongest {
                for celsius in celsius.clone() {
                    let (strength, kelvin) = (f64::from(step) / 10.0, f64::from(celsius) + 273.15);
                    let isotherm = ActivityIsotherm::at(kelvin);
                    let fall = -isotherm.ln(strength);
                    assert!(
                        (100.0 * start(fall, kelvin) - strength).abs() < 0.375,
                        "{strength} {celsius}"
                    );
                    let found = brix_of_fall(&isotherm, fall, kelvin, 85.0);
                    assert!((found - strength).abs() < 2e-11, "{strength} {celsius} {found}");
                }
            }
        }
    }
}
