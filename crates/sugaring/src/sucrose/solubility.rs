//! Sucrose at saturation: when syrup can throw crystals.

use crate::{
    error::Error,
    lanes::widest,
    math,
    relation::{Range, Relation, Source},
    solve,
    units::{Brix, Si, Temperature, Value, table},
};

/// °Brix of a solution saturated with sucrose.
///
/// ```text
/// B_s = 64.447 + 0.08222 t + 1.6169e-3 t² − 1.558e-6 t³ − 4.63e-8 t⁴
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | t | `temperature` | °C | −13 to 100 |
/// | `B_s` | strength at saturation | °Bx | 63.65 to 82.65 |
///
/// Pure sucrose crystals, not the mineral sand of the pan. Invert sugar of real syrup lowers the sucrose in it: an
/// indicator, not a prediction.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// Vavrinecz 1962 (the name from memory), as printed by Bubnik and Kadlec 1995; range of ICUMSA SPS-2. Within 0.15 °Bx
/// to 80 °C, 0.3 above; the older scale of Herzfeld, with 67.1 at 20 °C, lies 0.2 to 0.5 higher.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let cellar = sucrose::solubility(deg_c(10.0))?;
/// assert_eq!(format!("{cellar:.2}"), "65.43 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::solubility(deg_c(104.0)).unwrap_err();
/// assert_eq!(error.to_string(), "temperature = 104 °C is outside -13 to 100 °C; 104 °F is 40 °C: write deg_f(104)");
/// ```
pub fn solubility(temperature: Temperature) -> Result<Brix, Error> {
    let kelvin = SOLUBILITY.check(0, temperature.si())?;
    Ok(Brix::trusted(solubility_at(kelvin)))
}

/// Temperature at which a sucrose solution is saturated: the inverse of [`solubility`].
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | B | `brix` | °Bx | 63.653 to 82.65 |
/// | t | saturation temperature | °C | −13 to 100 |
///
/// # Errors
/// [`OutOfRange`](crate::ErrorKind::OutOfRange): a thinner solution is not saturated at any temperature above −13 °C.
/// # Source
/// As [`solubility`], solved for the temperature.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let saturated = sucrose::saturation_temperature(brix(66.9)?)?;
/// assert_eq!(format!("{:.1}", saturated.get::<deg_c>()), "21.3");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::saturation_temperature(brix(60.0)?).unwrap_err();
/// assert_eq!(error.to_string(), "brix = 60 °Bx is outside 63.653 to 82.65 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn saturation_temperature(brix: Brix) -> Result<Temperature, Error> {
    let brix = SATURATION_TEMPERATURE.check(0, brix.si())?;
    let (low, high) = (solubility_at(COLDEST), solubility_at(HOTTEST));
    // The lower limit is printed to the third decimal; within rounding of the computed ones lies the corner.
    if brix < low - ROUNDING {
        return Err(Error::out_of_limits("brix", brix, &table::deg_brix, low, high));
    }
    let near = saturation_temperature_near(brix);
    if near.is_finite() {
        return Ok(Temperature::of_si(near));
    }
    if brix <= low || brix >= high {
        return Ok(Temperature::of_si(if brix <= low { COLDEST } else { HOTTEST }));
    }
    let found = solve::root(|kelvin| solubility_at(kelvin) - brix, COLDEST, HOTTEST, 1e-11);
    match found {
        Some(found) if found.settled => Ok(Temperature::of_si(found.at)),
        _ => Err(Error::no_convergence("temperature")),
    }
}

/// Sucrose per water, over what saturation would hold at this temperature: above 1 crystals can grow.
///
/// ```text
/// S = (B / (100 − B)) / (B_s / (100 − B_s))
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | B | `brix` | °Bx | 0 to 85 |
/// | t | `temperature` | °C | −13 to 100 |
/// | `B_s` | [`solubility`] | °Bx | |
/// | S | supersaturation | | 0 to 3.3 |
///
/// Legal syrup is slightly supersaturated in a cool room and keeps; above about 68 °Bx it can crystallise. Above 1.1
/// the plan says so (common practice, no source).
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// As [`solubility`].
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let cellar = sucrose::supersaturation(brix(68.9)?, deg_c(4.0))?;
/// assert_eq!(format!("{cellar:.2}"), "1.20");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::supersaturation(brix(68.9)?, deg_c(-20.0)).unwrap_err();
/// assert_eq!(error.to_string(), "temperature = -20 °C is outside -13 to 100 °C");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn supersaturation(brix: Brix, temperature: Temperature) -> Result<f64, Error> {
    let brix = SUPERSATURATION.check(0, brix.si())?;
    let kelvin = SUPERSATURATION.check(1, temperature.si())?;
    Ok(supersaturation_at(brix, kelvin))
}

/// What [`solubility`] covers.
pub static SOLUBILITY: Relation = Relation {
    name: "sucrose::solubility",
    inputs: &[TEMPERATURE],
    output: &table::deg_brix,
    source: SOURCE,
    accuracy: ACCURACY,
};

/// What [`saturation_temperature`] covers.
pub static SATURATION_TEMPERATURE: Relation = Relation {
    name: "sucrose::saturation_temperature",
    inputs: &[Range::new("brix", &table::deg_brix, 63.653, 82.65)],
    output: &table::deg_c,
    source: SOURCE,
    accuracy: ACCURACY,
};

/// What [`supersaturation`] covers.
pub static SUPERSATURATION: Relation = Relation {
    name: "sucrose::supersaturation",
    inputs: &[Range::new("brix", &table::deg_brix, 0.0, 85.0), TEMPERATURE],
    output: &table::fraction,
    source: SOURCE,
    accuracy: ACCURACY,
};

const SOURCE: Source = Source::Published {
    text: "Vavrinecz 1962 (name from memory), as printed by Bubnik and Kadlec 1995",
    at: "solubility of sucrose in water",
};
const ACCURACY: &str = "0.15 °Bx to 80 °C, 0.3 °Bx above, of the strength at saturation";
const TEMPERATURE: Range = Range::new("temperature", &table::deg_c, -13.0, 100.0);

const COLDEST: f64 = -13.0 + 273.15;
const HOTTEST: f64 = 100.0 + 273.15;
const ROUNDING: f64 = 1e-9;

widest! {
    /// K from °Bx within the limits of the inverse; NaN where the public function has to decide.
    pub(crate) fn saturation_temperatures(brix: &[f64], out: &mut [f64]) {
        let low = solubility_at(COLDEST) - ROUNDING;
        for (out, brix) in out.iter_mut().zip(brix) {
            let found = saturation_temperature_near(*brix);
            *out = if *brix < low { f64::NAN } else { found };
        }
    }
}

/// K from °Bx by three of Newton's steps, from a start that misses by 0.121 K at most: they leave 5.5e-4 K, 1.2e-8 K and
/// rounding. NaN where the last one was long.
#[inline(always)]
fn saturation_temperature_near(brix: f64) -> f64 {
    // A root, because the curve is nearly level at the cold end.
    let start = math::polynomial(&START, math::sqrt(brix - 62.8));
    let (near, _) = nearer(brix, start);
    let (near, _) = nearer(brix, near);
    let (near, step) = nearer(brix, near);
    let found = (near + 273.15).clamp(COLDEST, HOTTEST);
    if step.abs() < 1e-6 { found } else { f64::NAN }
}

/// One of Newton's steps from °C: where it leads, and how far.
#[inline(always)]
fn nearer(brix: f64, celsius: f64) -> (f64, f64) {
    let [_, v1, v2, v3, v4] = VAVRINECZ;
    let rise = v1 + celsius * (2.0 * v2 + celsius * (3.0 * v3 + celsius * (4.0 * v4)));
    let step = (math::polynomial(&VAVRINECZ, celsius) - brix) / rise;
    (celsius - step, step)
}

/// °Bx from K, no range check; the quartic bends over above 100 °C.
#[inline(always)]
pub(crate) fn solubility_at(kelvin: f64) -> f64 {
    math::polynomial(&VAVRINECZ, kelvin - 273.15)
}

/// From °Bx and K, no range check.
#[inline(always)]
pub(crate) fn supersaturation_at(brix: f64, kelvin: f64) -> f64 {
    let saturated = solubility_at(kelvin);
    brix * (100.0 - saturated) / ((100.0 - brix) * saturated)
}

/// Fitted to the inverse itself.
const START: [f64; 6] = [-77.8688, 114.741, -68.202, 25.9838, -4.864_39, 0.364_17];

const VAVRINECZ: [f64; 5] = [64.447, 0.08222, 1.6169e-3, -1.558e-6, -4.63e-8];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    #[test]
    fn values_of_the_note() {
        for (celsius, value) in [
            (0.0, 64.45),
            (10.0, 65.43),
            (20.0, 66.72),
            (25.0, 67.47),
            (40.0, 70.10),
            (60.0, 74.26),
            (80.0, 78.68),
            (100.0, 82.65),
        ] {
            assert!((solubility(deg_c(celsius)).unwrap().get() - value).abs() < 5.1e-3);
        }
        for (strength, celsius) in [(66.0, 14.7), (66.9, 21.3), (68.0, 28.3), (68.9, 33.5)] {
            let found = saturation_temperature(brix(strength).unwrap()).unwrap();
            assert!((found.get::<deg_c>() - celsius).abs() < 0.051);
        }
        for (strength, celsius, value) in [
            (66.9, 20.0, 1.008),
            (66.9, 4.0, 1.098),
            (68.9, 20.0, 1.105),
            (68.9, 4.0, 1.203),
        ] {
            assert!((supersaturation(brix(strength).unwrap(), deg_c(celsius)).unwrap() - value).abs() < 5.1e-4);
        }
    }

    /// A bracketed root of the same quartic; nothing in range needs it.
    #[test]
    fn the_steps_lead_to_the_bracketed_root() {
        for step in 0..=11_300 {
            let kelvin = COLDEST + f64::from(step) / 100.0;
            let strength = solubility_at(kelvin);
            let found = saturation_temperature_near(strength);
            assert!((found - kelvin).abs() < 2e-12 * kelvin, "{kelvin} {found}");
            let start = math::polynomial(&START, math::sqrt(strength - 62.8)) + 273.15;
            assert!((start - kelvin).abs() < 0.1215, "{kelvin} {start}");
            if step % 20 == 10 {
                let root = solve::root(|kelvin| solubility_at(kelvin) - strength, COLDEST, HOTTEST, 0.0).unwrap();
                assert!((root.at - found).abs() < 2e-12 * kelvin, "{kelvin} {found} {root:?}");
            }
        }
    }

    #[test]
    fn corners_meet() {
        for celsius in [-13.0, 100.0] {
            let back = saturation_temperature(solubility(deg_c(celsius)).unwrap()).unwrap();
            assert!((back.get::<deg_c>() - celsius).abs() < 1e-9);
        }
        assert!(saturation_temperature(brix(82.65).unwrap()).is_ok());
        let error = saturation_temperature(brix(63.6532).unwrap()).unwrap_err();
        assert_eq!(error.to_string(), "brix = 63.6532 °Bx is outside 63.66 to 82.65 °Bx");
    }

    proptest! {
        #[test]
        fn never_panics(b in any::<f64>(), t in any::<f64>()) {
            let _ = (solubility(kelvin(t)), solubility_at(t), supersaturation_at(b, t));
            if let Ok(strength) = brix(b) {
                let _ = (saturation_temperature(strength), supersaturation(strength, kelvin(t)));
            }
        }

        #[test]
        fn inverse_meets_forward(celsius in -13.0..100.0_f64, step in 1e-3..1.0_f64) {
            let there = solubility(deg_c(celsius)).unwrap();
            prop_assert!((saturation_temperature(there).unwrap().get::<deg_c>() - celsius).abs() < 1e-9);
            prop_assert!(solubility_at(celsius + step + 273.15) > there.get());
            prop_assert!((supersaturation(there, deg_c(celsius)).unwrap() - 1.0).abs() < 1e-12);
        }
    }
}
