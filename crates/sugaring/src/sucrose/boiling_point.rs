//! The solver behind every boiling point: one at a time and, with the same bits, in lanes.
//!
//! Two steps of Newton's from a start that misses by 0.028 K at most: the first, of third order, leaves 6e-8 K; the
//! second feeds the result back into the equation and leaves rounding. What does not settle, which no strength to
//! 85 °Bx does, is bracketed.

use super::{
    activity::{
        ActivityIsotherm, C, REFERENCE, SUCROSE_MOLAR_MASS, WATER_MOLAR_MASS, heat_term, ln_water_activity_at,
        strength_term, water_activities,
    },
    strength::{brix_of_fall, brixes_of_falls},
};
use crate::{
    lanes::{LANES, Lanes, block_of, spill, widest},
    math, solve, water,
};

/// K from °Bx and Pa, `None` outside 0 to 90 °Bx and 20 to 180 kPa; 0.1 µs to 85 °Bx.
pub(crate) fn boiling_at(brix: f64, pascal: f64) -> Option<f64> {
    if !((0.0..=HARD_STOP).contains(&brix) && (20e3..=180e3).contains(&pascal)) {
        return None;
    }
    let water = water::saturation_temperature_at(pascal);
    let solution = Solution::of(brix, pascal);
    if brix <= STRONGEST {
        let (near, gain) = solution.nearer(solution.start(water));
        let found = solution.settled(near, gain, water);
        if found.is_finite() {
            return Some(found);
        }
    }
    let found = solve::root(
        |kelvin| solution.excess(kelvin, &water::Line::at(kelvin), math::ln),
        water - 1e-6,
        water + 40.0,
        1e-11,
    )?;
    found.settled.then_some(found.at.max(water))
}

widest! {
    /// K from °Bx and Pa within the limits of the boiling temperature; NaN where it did not settle.
    pub(crate) fn boiling_temperatures(brix: &[f64], pascal: &[f64], out: &mut [f64]) {
        for (index, out) in out.chunks_mut(LANES).enumerate() {
            let (found, _) = block(brix, pascal, index);
            spill(&found, out);
        }
    }
}

widest! {
    /// K above water's own boiling point, as [`boiling_temperatures`].
    pub(crate) fn boiling_point_elevations(brix: &[f64], pascal: &[f64], out: &mut [f64]) {
        for (index, out) in out.chunks_mut(LANES).enumerate() {
            let (mut found, water) = block(brix, pascal, index);
            found.iter_mut().zip(water).for_each(|(kelvin, water)| *kelvin -= water);
            spill(&found, out);
        }
    }
}

/// The steps of [`boiling_at`], each for every lane before the next; with the boiling points of water.
#[inline(always)]
#[expect(clippy::indexing_slicing, reason = "arrays of as many lanes as the loops count")]
fn block(brix: &[f64], pascal: &[f64], index: usize) -> (Lanes, Lanes) {
    let (brix, pascal) = (block_of(brix, index, 50.0), block_of(pascal, index, 1e5));
    let [mut water, mut kelvin, mut gain] = [[0.0; LANES]; 3];
    let [mut squared, mut a, mut b, mut free] = [[0.0; LANES]; 4];
    for i in 0..LANES {
        let solution = Solution::of(brix[i], pascal[i]);
        water[i] = water::saturation_temperature_at(pascal[i]);
        kelvin[i] = solution.start(water[i]);
        (squared[i], a[i], b[i], free[i]) = (solution.squared, solution.a, solution.b, solution.free);
    }
    // The mole fraction is for the start alone.
    let solution = |i: usize| Solution {
        x: 0.0,
        squared: squared[i],
        a: a[i],
        b: b[i],
        free: free[i],
    };
    for i in 0..LANES {
        (kelvin[i], gain[i]) = solution(i).nearer(kelvin[i]);
    }
    for i in 0..LANES {
        kelvin[i] = solution(i).settled(kelvin[i], gain[i], water[i]);
    }
    (kelvin, water)
}

/// Pa from °Bx and K, no range check.
pub(super) fn pressure_from_boiling_at(brix: f64, kelvin: f64) -> f64 {
    math::exp(ln_water_activity_at(brix, kelvin)) * water::saturation_pressure_at(kelvin)
}

widest! {
    /// Pa from °Bx and K within the limits.
    pub(crate) fn pressures_from_boiling(brix: &[f64], kelvin: &[f64], out: &mut [f64]) {
        water_activities(brix, kelvin, out);
        for (out, kelvin) in out.iter_mut().zip(kelvin) {
            *out *= water::saturation_pressure_at(*kelvin);
        }
    }
}

/// °Bx on [0, 90] from K and Pa; 0 for water's own boiling point and below, `None` where the root lies above 90.
pub(super) fn brix_from_boiling_at(kelvin: f64, pascal: f64) -> Option<f64> {
    let isotherm = ActivityIsotherm::at(kelvin);
    let near = brix_of_fall(&isotherm, fall(kelvin, pascal), kelvin, STRONGEST);
    if near.is_finite() {
        return Some(near);
    }
    let target = math::ln(pascal / water::saturation_pressure_at(kelvin));
    if target >= 0.0 {
        return Some(0.0);
    }
    let found = solve::root(|brix| isotherm.ln(brix) - target, 0.0, HARD_STOP, 1e-13)?;
    found.settled.then_some(found.at)
}

widest! {
    /// °Bx from K and Pa within the limits of the inverse; NaN where the public function has to decide.
    pub(crate) fn brixes_from_boiling(kelvin: &[f64], pascal: &[f64], out: &mut [f64]) {
        for (index, out) in out.chunks_mut(LANES).enumerate() {
            let (kelvin, pascal) = (block_of(kelvin, index, 375.0), block_of(pascal, index, 1e5));
            let mut falls = [0.0; LANES];
            for ((to, kelvin), pascal) in falls.iter_mut().zip(&kelvin).zip(&pascal) {
                *to = fall(*kelvin, *pascal);
            }
            spill(&brixes_of_falls(&falls, &kelvin, STRONGEST), out);
        }
    }
}

/// −ln of the activity at which water of `kelvin` boils under `pascal`, by the fourth roots of the pressures; from 1 to
/// 0.25.
#[inline(always)]
fn fall(kelvin: f64, pascal: f64) -> f64 {
    let root = math::sqrt(math::sqrt(pascal / 1e6));
    -4.0 * ln_near(root / water::Line::at(kelvin).beta())
}

/// One strength at one pressure, ready for any temperature.
#[derive(Clone, Copy)]
struct Solution {
    /// mole fraction of sucrose, and its square
    x: f64,
    squared: f64,
    a: f64,
    b: f64,
    /// 1e6 (1 − x) / p
    free: f64,
}

impl Solution {
    #[inline(always)]
    fn of(brix: f64, pascal: f64) -> Self {
        let w = brix / 100.0;
        let sucrose = w * (1.0 / SUCROSE_MOLAR_MASS);
        let solvent = (1.0 - w) * (1.0 / WATER_MOLAR_MASS);
        let inverse = 1.0 / ((sucrose + solvent) * pascal);
        let x = sucrose * pascal * inverse;
        Self {
            x,
            squared: x * x,
            a: strength_term(w),
            b: heat_term(w),
            free: 1e6 * solvent * inverse,
        }
    }

    /// A start within 0.028 K to 85 °Bx, fitted to the solution itself.
    #[inline(always)]
    fn start(&self, water: f64) -> f64 {
        let z = (water - 365.0) / 40.0;
        let steep = 190.2 + 36.164 * z + self.x * (-200.88 - 48.629 * z);
        water + self.x * (25.331 + 5.3696 * z + self.x * steep)
    }

    /// `ln(p_sat a_w / p)`; all logarithms but that of T₀/T are one. `ln` of numbers between 0.71 and 1.41 near the
    /// solution.
    #[inline(always)]
    fn excess(&self, kelvin: f64, line: &water::Line, ln: impl Fn(f64) -> f64) -> f64 {
        let beta = line.beta();
        let fourth = beta * beta * (beta * beta);
        let y = REFERENCE / kelvin;
        let u = y - 1.0;
        ln(fourth * self.free) + self.squared * (self.a + u * self.b + (u - ln(y)) * C)
    }

    /// A step of third order from the start: the temperature it leads to, and one over the slope of the excess there.
    #[inline(always)]
    fn nearer(&self, start: f64) -> (f64, f64) {
        let line = water::Line::at(start);
        let beta = line.beta();
        let y = REFERENCE / start;
        // The slope of ln p_sat is 4 β'/β, that of the rest follows; one division gives the inverse of their sum.
        let shared = line.root * beta;
        let rest = self.squared * (C - (self.b + C) * y) * (y * (1.0 / REFERENCE));
        let gain = shared / (4.0 * line.rise_by_root(beta) + shared * rest);
        // Half the curvature over the slope, fitted: it hardly varies.
        let bend = -0.00308 + 0.000_358 / 40.0 * (start - 365.0);
        let step = self.excess(start, &line, ln_near) * gain;
        (start - step * (1.0 + bend * step), gain * (1.0 + 2.0 * bend * step))
    }

    /// The temperature `near` fed back into the equation and corrected; NaN where it was far.
    #[inline(always)]
    fn settled(&self, near: f64, gain: f64, water: f64) -> f64 {
        let step = self.excess(near, &water::Line::at(near), ln_near) * gain;
        // Without sucrose the equation gives water's own boiling point but for rounding.
        let found = if self.squared == 0.0 {
            water
        } else {
            (near - step).max(water)
        };
        if step.abs() < 1e-6 { found } else { f64::NAN }
    }
}

#[inline(always)]
fn ln_near(y: f64) -> f64 {
    math::ln_1p_near(y - 1.0)
}

/// To here the logarithms lie where [`ln_near`] holds.
const STRONGEST: f64 = 85.0;
/// Where searches end: the activity is sound to here, the results are offered to 85.
const HARD_STOP: f64 = 90.0;

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn no_strength_needs_the_long_way() {
        for step in 1..=850 {
            let strength = f64::from(step) / 10.0;
            for kilopascal in 20..=180 {
                let pascal = 1e3 * f64::from(kilopascal);
                let found = boiling_at(strength, pascal).unwrap();
                let solution = Solution::of(strength, pascal);
                let water = water::saturation_temperature_at(pascal);
                let start = solution.start(water);
                assert!(
                    (start - found).abs() < 0.0281,
                    "{strength} {kilopascal}: {start} {found}"
                );
                let (near, gain) = solution.nearer(start);
                assert!((near - found).abs() < 6e-8, "{strength} {kilopascal}: {near} {found}");
                assert!(solution.settled(near, gain, water).is_finite());
                let excess = solution.excess(found, &water::Line::at(found), math::ln);
                assert!((excess * gain).abs() < 1e-12, "{strength} {kilopascal}");
            }
        }
    }

    /// A bracketed root of the same equation, with logarithms of the library.
    #[test]
    fn the_steps_lead_to_the_bracketed_root() {
        for step in 1..=85 {
            for kilopascal in (20..=180).step_by(8) {
                let (strength, pascal) = (f64::from(step), 1e3 * f64::from(kilopascal));
                let solution = Solution::of(strength, pascal);
                let water = water::saturation_temperature_at(pascal);
                let excess = |kelvin| solution.excess(kelvin, &water::Line::at(kelvin), math::ln);
                let root = solve::root(excess, water - 1e-6, water + 40.0, 0.0).unwrap().at;
                let found = boiling_at(strength, pascal).unwrap();
                assert!(
                    (found - root).abs() < 1e-12 * root,
                    "{strength} {kilopascal}: {found} {root}"
                );
            }
        }
    }

    #[test]
    fn the_long_way_ends_too() {
        for (strength, pascal) in [(89.9, 180e3), (90.0, 20e3), (87.0, 101_325.0)] {
            let found = boiling_at(strength, pascal).unwrap();
            assert!((brix_from_boiling_at(found, pascal).unwrap() - strength).abs() < 1e-8);
        }
        assert_eq!(boiling_at(90.1, 1e5), None);
        assert_eq!(boiling_at(66.0, 1e4), None);
        assert_eq!(boiling_at(f64::NAN, 1e5), None);
    }

    proptest! {
        #[test]
        fn never_panics(b in any::<f64>(), p in any::<f64>()) {
            let _ = boiling_at(b, p);
        }

        #[test]
        fn stronger_boils_hotter(strength in 0.0..84.0_f64, step in 1e-5..1.0_f64, pascal in 20e3..179e3_f64) {
            prop_assert!(boiling_at(strength + step, pascal) >= boiling_at(strength, pascal));
            prop_assert!(boiling_at(strength, pascal * (1.0 + 1e-3 * step)) > boiling_at(strength, pascal));
        }
    }
}
