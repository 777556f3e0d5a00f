//! The solver behind every boiling point.

use super::activity::{
    ActivityIsotherm, C, REFERENCE, SUCROSE_MOLAR_MASS, WATER_MOLAR_MASS, heat_term, ln_water_activity_at,
    strength_term,
};
use crate::{math, solve, water};

/// K from °Bx and Pa, `None` outside 0 to 90 °Bx and 20 to 180 kPa; 0.1 to 0.2 µs.
///
/// Two Newton steps of third order from a start that misses by 0.028 K at most: the first leaves 6e-8 K, the second
/// feeds the result back into the equation and leaves rounding.
pub(crate) fn boiling_at(brix: f64, pascal: f64) -> Option<f64> {
    if !((0.0..=HARD_STOP).contains(&brix) && (20e3..=180e3).contains(&pascal)) {
        return None;
    }
    let water = water::saturation_temperature_at(pascal);
    if brix == 0.0 {
        return Some(water);
    }
    let solution = Solution::of(brix, pascal);
    let start = solution.start(water);
    let (excess, rise) = solution.excess(start);
    // Half the curvature over the slope, fitted: it hardly varies.
    let bend = -0.00308 + 0.000_358 * (start - 365.0) / 40.0;
    let step = excess / rise;
    let near = start - step * (1.0 + bend * step);
    let (excess, rise) = solution.excess(near);
    let step = excess / rise;
    if step.abs() < 1e-6 {
        return Some((near - step).max(water));
    }
    let found = solve::root(|kelvin| solution.excess(kelvin).0, water - 1e-6, water + 40.0, 1e-9)?;
    found.settled.then_some(found.at.max(water))
}

/// Pa from °Bx and K, no range check.
pub(super) fn pressure_from_boiling_at(brix: f64, kelvin: f64) -> f64 {
    math::exp(ln_water_activity_at(brix, kelvin)) * water::saturation_pressure_at(kelvin)
}

/// °Bx on [0, 90] from K and Pa; 0 for water's own boiling point and below, `None` where the root lies above 90.
pub(super) fn brix_from_boiling_at(kelvin: f64, pascal: f64) -> Option<f64> {
    let isotherm = ActivityIsotherm::at(kelvin);
    let target = math::ln(pascal / water::saturation_pressure_at(kelvin));
    if target >= 0.0 {
        return Some(0.0);
    }
    let found = solve::root(|brix| isotherm.ln(brix) - target, 0.0, HARD_STOP, 1e-13)?;
    found.settled.then_some(found.at)
}

/// One strength at one pressure, ready for any temperature.
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
    fn of(brix: f64, pascal: f64) -> Self {
        let w = brix / 100.0;
        let (sucrose, solvent) = (w / SUCROSE_MOLAR_MASS, (1.0 - w) / WATER_MOLAR_MASS);
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
    fn start(&self, water: f64) -> f64 {
        let z = (water - 365.0) / 40.0;
        let steep = 190.2 + 36.164 * z + self.x * (-200.88 - 48.629 * z);
        water + self.x * (25.331 + 5.3696 * z + self.x * steep)
    }

    /// `ln(p_sat a_w / p)` and its slope with temperature; all logarithms but that of T₀/T are one.
    fn excess(&self, kelvin: f64) -> (f64, f64) {
        let line = water::Line::at(kelvin);
        let beta = line.beta();
        let fourth = beta * beta * (beta * beta);
        let y = REFERENCE / kelvin;
        let u = y - 1.0;
        let excess = math::ln(fourth * self.free) + self.squared * (self.a + u * self.b + (u - math::ln(y)) * C);
        let rise = 4.0 * line.rise(beta) / beta + self.squared * (C - (self.b + C) * y) / kelvin;
        (excess, rise)
    }
}

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
                let start = solution.start(water::saturation_temperature_at(pascal));
                assert!(
                    (start - found).abs() < 0.0281,
                    "{strength} {kilopascal}: {start} {found}"
                );
                let (excess, slope) = solution.excess(found);
                assert!((excess / slope).abs() < 1e-12, "{strength} {kilopascal}");
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
