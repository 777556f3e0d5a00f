//! Freezing: where the solution's water activity meets that of ice.

use super::{
    activity::{
        ActivityIsotherm, C, GAS, REFERENCE, SOURCE, SUCROSE_MOLAR_MASS, heat_term, ln_water_activity_at,
        mole_fraction, strength_term,
    },
    strength::{brix_of_fall, brixes_of_falls},
};
use crate::{
    error::Error,
    lanes::{LANES, block_of, spill, widest},
    math,
    relation::{Range, Relation},
    solve,
    units::{Brix, Si, Temperature, Value, table},
};

/// Temperature at which ice begins to form in a sucrose solution.
///
/// ```text
/// ln a_w(w, T) = ln a_ice(T) = (a (1/T_f − 1/T) + b ln(T / T_f) + ½ d (T − T_f)) / R
/// a = ΔH − c T_f + ½ d T_f²,  b = c − d T_f
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | w | `brix` / 100 | | 0 to 0.6 |
/// | T | freezing temperature | °C | 0 to −11.67 |
/// | `T_f` | freezing point of water, 273.15 | K | |
/// | ΔH, c, d | heat of fusion 6006.67, its slope 38.24, the slope of that −0.20 | J/mol, /K, /K² | |
///
/// # Errors
/// [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// [`water_activity`](super::water_activity); ice and supercooled water from IAPWS R10-06 and SR6-08. Within 0.02 K to
/// 15 °Bx, 0.05 K to 36, 0.10 K to 57.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let sap = sucrose::freezing_temperature(brix(2.0)?)?;
/// assert_eq!(format!("{:.3}", sap.get::<deg_c>()), "-0.112");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::freezing_temperature(brix(66.9)?).unwrap_err();
/// assert_eq!(error.to_string(), "brix = 66.9 °Bx is outside 0 to 60 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn freezing_temperature(brix: Brix) -> Result<Temperature, Error> {
    let brix = FREEZING_TEMPERATURE.check(0, brix.si())?;
    let kelvin = freezing_at(brix).ok_or_else(|| Error::no_convergence("temperature"))?;
    Ok(Temperature::of_si(kelvin))
}

/// °Brix of the liquid that is left under ice at `temperature`: the inverse of [`freezing_temperature`].
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | T | `temperature` of liquid and ice | °C | −11.666 to 0 |
/// | B | °Brix of the liquid | °Bx | 60 to 0 |
///
/// Of pure ice in equilibrium; ice in a pail holds back 10 to 30 % of the sugar (common practice, no source).
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// As [`freezing_temperature`], solved for °Brix.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let under_ice = sucrose::brix_from_freezing(deg_c(-1.0))?;
/// assert_eq!(format!("{under_ice:.1}"), "14.9 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::brix_from_freezing(deg_c(1.0)).unwrap_err();
/// assert_eq!(error.to_string(), "temperature = 1 °C is outside -11.666 to 0 °C");
/// ```
pub fn brix_from_freezing(temperature: Temperature) -> Result<Brix, Error> {
    let kelvin = BRIX_FROM_FREEZING.check(0, temperature.si())?;
    match brix_from_freezing_at(kelvin) {
        Some(found) if found <= STRONGEST + 1e-9 => Ok(Brix::trusted(found.clamp(0.0, STRONGEST))),
        Some(_) => {
            let limit = freezing_at(STRONGEST).ok_or_else(|| Error::no_convergence("temperature"))?;
            let celsius = |kelvin| table::deg_c.from_si(kelvin);
            Err(Error::out_of_limits(
                "temperature",
                celsius(kelvin),
                &table::deg_c,
                celsius(limit),
                0.0,
            ))
        }
        None => Err(Error::no_convergence("brix")),
    }
}

/// What [`freezing_temperature`] covers.
pub static FREEZING_TEMPERATURE: Relation = Relation {
    name: "sucrose::freezing_temperature",
    inputs: &[Range::new("brix", &table::deg_brix, 0.0, STRONGEST)],
    output: &table::deg_c,
    source: SOURCE,
    accuracy: ACCURACY,
};

/// What [`brix_from_freezing`] covers.
pub static BRIX_FROM_FREEZING: Relation = Relation {
    name: "sucrose::brix_from_freezing",
    inputs: &[Range::new("temperature", &table::deg_c, -11.666, 0.0)],
    output: &table::deg_brix,
    source: SOURCE,
    accuracy: ACCURACY,
};

const ACCURACY: &str = "0.02 K to 15 °Bx, 0.05 K to 36 °Bx, 0.10 K to 57 °Bx";
const STRONGEST: f64 = 60.0;

/// K from °Bx, or `None` where no temperature from 250 K on has such ice.
///
/// Two of Newton's steps from a start that misses by 0.0004 K to 60 °Bx: they leave 4e-11 K and rounding. What does not
/// settle is bracketed.
pub(crate) fn freezing_at(brix: f64) -> Option<f64> {
    if (0.0..=STRONGEST).contains(&brix) {
        let solution = Solution::of(brix);
        let (near, _) = solution.nearer(solution.start);
        let found = settled(solution.nearer(near));
        if found.is_finite() {
            return Some(found);
        }
    }
    let found = solve::root(
        |kelvin| ln_water_activity_at(brix, kelvin) - ln_ice_activity(kelvin, math::ln_1p),
        250.0,
        FREEZING,
        1e-11,
    )?;
    found.settled.then_some(found.at)
}

widest! {
    /// K from °Bx within the limits, each step of [`freezing_at`] for every lane before the next; NaN where it did not
    /// settle.
    #[expect(clippy::indexing_slicing, reason = "arrays of as many lanes as the loops count")]
    pub(crate) fn freezing_temperatures(brix: &[f64], out: &mut [f64]) {
        for (index, out) in out.chunks_mut(LANES).enumerate() {
            let brix = block_of(brix, index, 10.0);
            let mut kelvin = [0.0; LANES];
            for i in 0..LANES {
                let solution = Solution::of(brix[i]);
                (kelvin[i], _) = solution.nearer(solution.start);
            }
            for i in 0..LANES {
                kelvin[i] = settled(Solution::of(brix[i]).nearer(kelvin[i]));
            }
            spill(&kelvin, out);
        }
    }
}

/// °Bx on [0, 65] from K, or `None` where the liquid would be stronger or the ice is above its melting point.
fn brix_from_freezing_at(kelvin: f64) -> Option<f64> {
    let isotherm = ActivityIsotherm::at(kelvin);
    let near = brix_of_fall(&isotherm, -ln_ice_activity(kelvin, math::ln_1p_near), kelvin, STRONGEST);
    if near.is_finite() {
        return Some(near);
    }
    let target = ln_ice_activity(kelvin, math::ln_1p);
    let found = solve::root(|brix| isotherm.ln(brix) - target, 0.0, 65.0, 1e-13)?;
    found.settled.then_some(found.at)
}

widest! {
    /// °Bx from K within the limits of the inverse; NaN where the public function has to decide.
    pub(crate) fn brixes_from_freezing(kelvin: &[f64], out: &mut [f64]) {
        for (index, out) in out.chunks_mut(LANES).enumerate() {
            let kelvin = block_of(kelvin, index, 270.0);
            let falls = kelvin.map(|kelvin| -ln_ice_activity(kelvin, math::ln_1p_near));
            spill(&brixes_of_falls(&falls, &kelvin, STRONGEST), out);
        }
    }
}

/// One strength, ready for any temperature.
struct Solution {
    /// ln(1 − x), x the mole fraction of sucrose, and its square.
    free: f64,
    squared: f64,
    a: f64,
    b: f64,
    /// K
    start: f64,
}

impl Solution {
    #[inline(always)]
    fn of(brix: f64) -> Self {
        let w = brix / 100.0;
        let x = mole_fraction(w);
        let molality = w / ((1.0 - w) * SUCROSE_MOLAR_MASS);
        Self {
            free: math::ln_1p_near(-x),
            squared: x * x,
            a: strength_term(w),
            b: heat_term(w),
            start: FREEZING - molality * math::polynomial(&START, molality),
        }
    }

    /// One of Newton's steps from `kelvin`: where it leads, and how far.
    #[inline(always)]
    fn nearer(&self, kelvin: f64) -> (f64, f64) {
        let y = REFERENCE / kelvin;
        let u = y - 1.0;
        let activity = self.free + self.squared * (self.a + u * self.b + (u - math::ln_1p_near(u)) * C);
        let slope = (self.squared * (C - (self.b + C) * y) - ln_ice_slope_by_kelvin(kelvin)) / kelvin;
        let step = (activity - ln_ice_activity(kelvin, math::ln_1p_near)) / slope;
        (kelvin - step, step)
    }
}

#[inline(always)]
fn settled((kelvin, step): (f64, f64)) -> f64 {
    if step.abs() < 1e-7 {
        kelvin.min(FREEZING)
    } else {
        f64::NAN
    }
}

/// ln of the water activity that ice keeps, from K.
#[inline(always)]
fn ln_ice_activity(kelvin: f64, ln_1p: impl Fn(f64) -> f64) -> f64 {
    let below = kelvin - FREEZING;
    // 1/T_f − 1/T and ln(T/T_f) from the difference itself: near 0 °C they cancel.
    (ICE_A * below / (FREEZING * kelvin) + ICE_B * ln_1p(below / FREEZING) + 0.5 * FUSION_BEND * below) / GAS
}

/// Its slope with temperature, times that.
#[inline(always)]
fn ln_ice_slope_by_kelvin(kelvin: f64) -> f64 {
    (ICE_A / kelvin + ICE_B + 0.5 * FUSION_BEND * kelvin) * (1.0 / GAS)
}

const ICE_A: f64 = FUSION - FUSION_SLOPE * FREEZING + 0.5 * FUSION_BEND * FREEZING * FREEZING;
const ICE_B: f64 = FUSION_SLOPE - FUSION_BEND * FREEZING;

/// K below the freezing point of water by molality, fitted to the solution itself.
const START: [f64; 5] = [1.8644, 0.17248, 0.026_786, -0.008_212_8, 0.000_592_84];

const FREEZING: f64 = 273.15;
/// J/mol, IAPWS R10-06 ice and SR6-08 liquid at 0.1 MPa.
const FUSION: f64 = 6006.67;
/// J/(mol K), the same.
const FUSION_SLOPE: f64 = 38.24;
/// J/(mol K²), fitted to the same over 256 to 273 K.
const FUSION_BEND: f64 = -0.20;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    #[test]
    fn values_of_the_note() {
        for (strength, value) in [
            (1.0, -0.055),
            (2.0, -0.112),
            (3.0, -0.170),
            (4.0, -0.229),
            (5.0, -0.291),
            (8.0, -0.485),
            (12.0, -0.772),
            (15.0, -1.010),
            (20.0, -1.462),
            (25.0, -1.997),
        ] {
            let found = freezing_temperature(brix(strength).unwrap()).unwrap();
            assert!((found.get::<deg_c>() - value).abs() < 5.1e-4, "{strength} {found:?}");
        }
        for (celsius, value) in [(-0.5, 8.2), (-1.0, 14.9), (-2.0, 25.0)] {
            assert!((brix_from_freezing(deg_c(celsius)).unwrap().get() - value).abs() < 0.051);
        }
    }

    /// A bracketed root of the same equation; nothing in range needs it.
    #[test]
    fn the_steps_lead_to_the_bracketed_root() {
        for step in 0..=6000 {
            let strength = f64::from(step) / 100.0;
            let solution = Solution::of(strength);
            let (near, _) = solution.nearer(solution.start);
            let found = settled(solution.nearer(near));
            assert!((solution.start - found).abs() < 3.7e-4, "{strength} {}", solution.start);
            assert!((near - found).abs() < 4e-11, "{strength} {near} {found}");
            if step % 25 == 0 && step > 0 {
                let excess = |kelvin| ln_water_activity_at(strength, kelvin) - ln_ice_activity(kelvin, math::ln_1p);
                let root = solve::root(excess, 250.0, FREEZING, 0.0).unwrap();
                assert!((found - root.at).abs() < 1e-12 * root.at, "{strength} {found} {root:?}");
            }
        }
    }

    #[test]
    fn corners_meet() {
        assert_eq!(freezing_temperature(brix(0.0).unwrap()), Ok(deg_c(0.0)));
        assert_eq!(brix_from_freezing(deg_c(0.0)).map(Brix::get), Ok(0.0));
        assert_eq!(brix_from_freezing(deg_f(32.0)).map(Brix::get), Ok(0.0));
        let coldest = freezing_temperature(brix(60.0).unwrap()).unwrap();
        assert!((brix_from_freezing(coldest).unwrap().get() - 60.0).abs() < 1e-9);
        let error = brix_from_freezing(deg_c(-11.6658)).unwrap_err();
        assert_eq!(error.to_string(), "temperature = -11.6658 °C is outside -11.66 to 0 °C");
    }

    #[test]
    fn dilute_depression_is_the_cryoscopic_constant() {
        let molality = 1e-6;
        let w = molality * 0.342_296_5 / (1.0 + molality * 0.342_296_5);
        let depression = FREEZING - freezing_at(100.0 * w).unwrap();
        assert!(
            (depression / molality - 1.8606).abs() < 2e-4,
            "{}",
            depression / molality
        );
    }

    proptest! {
        #[test]
        fn never_panics(b in any::<f64>(), t in any::<f64>()) {
            let _ = (freezing_at(b), brix_from_freezing_at(t), brix_from_freezing(kelvin(t)));
        }

        #[test]
        fn inverse_meets_forward(strength in 0.0..60.0_f64) {
            let there = freezing_temperature(brix(strength).unwrap()).unwrap();
            prop_assert!((brix_from_freezing(there).unwrap().get() - strength).abs() < 1e-9);
        }

        #[test]
        fn stronger_freezes_colder(strength in 0.0..59.0_f64, step in 1e-6..1.0_f64) {
            prop_assert!(freezing_at(strength + step).unwrap() < freezing_at(strength).unwrap());
        }

        #[test]
        fn osmotic_pressure_comes_from_the_same_activity(strength in 1.0..40.0_f64) {
            let kelvin = freezing_at(strength).unwrap();
            let difference = ln_water_activity_at(strength, kelvin) - ln_ice_activity(kelvin, math::ln_1p);
            prop_assert!(difference.abs() < 1e-13);
        }
    }
}
