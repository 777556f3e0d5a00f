//! The boiling line, in both directions: one equation solved for either of its unknowns.

use crate::{
    error::Error,
    math,
    relation::{Range, Relation, Source},
    units::{Pressure, Si, Temperature, Value, table},
};

/// Absolute pressure at which water of `temperature` boils.
///
/// ```text
/// p = (2C / (−B + √(B² − 4AC)))⁴,  ϑ = T + n₉ / (T − n₁₀)
/// A = ϑ² + n₁ϑ + n₂,  B = n₃ϑ² + n₄ϑ + n₅,  C = n₆ϑ² + n₇ϑ + n₈
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | T | `temperature` | K | 273.15 to 647.096, that is 0 to 373.946 °C |
/// | p | absolute pressure | MPa | 0.000611 to 22.064 |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange) below the freezing
/// point or above the critical point.
/// # Source
/// IAPWS R7-97(2012), equation 30, coefficients of table 34.
/// # Examples
/// ```
/// use sugaring::{units::*, water};
/// let p = water::saturation_pressure(deg_c(100.0))?;
/// assert_eq!(format!("{:.3}", p.get::<kpa>()), "101.418");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// Ice has no boiling point here:
/// ```
/// # use sugaring::{units::*, water};
/// let error = water::saturation_pressure(deg_c(-5.0)).unwrap_err();
/// assert_eq!(error.to_string(), "temperature = -5 °C is outside 0 to 373.946 °C");
/// ```
pub fn saturation_pressure(temperature: Temperature) -> Result<Pressure, Error> {
    let kelvin = SATURATION_PRESSURE.check(0, temperature.si())?;
    Ok(Pressure::of_si(saturation_pressure_at(kelvin)))
}

/// Temperature at which water boils under the absolute `pressure`: the inverse of [`saturation_pressure`].
///
/// ```text
/// T = ½ (n₁₀ + D − √((n₁₀ + D)² − 4 (n₉ + n₁₀ D))),  D = 2G / (−F − √(F² − 4EG)),  β = p^¼
/// E = β² + n₃β + n₆,  F = n₁β² + n₄β + n₇,  G = n₂β² + n₅β + n₈
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | p | `pressure`, absolute | MPa | 0.0006112126 to 22.064001 |
/// | T | temperature | K | 273.15 to 647.096 |
///
/// At 101.325 kPa this is 99.974 °C, not 100 °C.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange) below the pressure of
/// the freezing point or above that of the critical point.
/// # Source
/// IAPWS R7-97(2012), equation 31, coefficients of table 34.
/// # Examples
/// ```
/// use sugaring::{units::*, water};
/// let boiling = water::saturation_temperature(kpa(96.5))?;
/// assert_eq!(format!("{:.3}", boiling.get::<deg_c>()), "98.613");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// A vacuum below the vapour pressure of ice water:
/// ```
/// # use sugaring::{units::*, water};
/// let error = water::saturation_temperature(kpa(0.5)).unwrap_err();
/// assert_eq!(error.to_string(), "pressure = 0.5 kPa is outside 0.6112126 to 22064.001 kPa");
/// ```
pub fn saturation_temperature(pressure: Pressure) -> Result<Temperature, Error> {
    let pascal = SATURATION_TEMPERATURE.check(0, pressure.si())?;
    Ok(Temperature::of_si(saturation_temperature_within(pascal)))
}

/// What [`saturation_pressure`] covers.
pub static SATURATION_PRESSURE: Relation = Relation {
    name: "water::saturation_pressure",
    inputs: &[Range::new("temperature", &table::deg_c, 0.0, 373.946)],
    output: &table::kpa,
    source: SOURCE_OF_PRESSURE,
    accuracy: "0.02 % of IAPWS-95; 0.0076 % from 0 to 130 °C",
};

/// What [`saturation_temperature`] covers.
pub static SATURATION_TEMPERATURE: Relation = Relation {
    name: "water::saturation_temperature",
    inputs: &[Range::new("pressure", &table::kpa, 0.611_212_6, 22_064.001)],
    output: &table::deg_c,
    source: Source::Published {
        text: "IAPWS R7-97(2012)",
        at: "equation 31, table 34",
    },
    accuracy: "0.00023 K from 60 to 110 kPa",
};

const SOURCE_OF_PRESSURE: Source = Source::Published {
    text: "IAPWS R7-97(2012)",
    at: "equation 30, table 34",
};

const FREEZING: f64 = 273.15;
/// As 373.946 °C comes out in binary, so that both directions share the point.
const CRITICAL: f64 = 373.946 + 273.15;

/// Pa from K, no range check.
#[inline(always)]
pub(crate) fn saturation_pressure_at(kelvin: f64) -> f64 {
    let beta = Line::at(kelvin).beta();
    let squared = beta * beta;
    squared * squared * 1e6
}

/// Pa per K, no range check.
#[cfg(test)]
fn saturation_pressure_slope_at(kelvin: f64) -> f64 {
    let line = Line::at(kelvin);
    let beta = line.beta();
    let squared = beta * beta;
    squared * squared * 1e6 * 4.0 * line.rise_by_root(beta) / (line.root * beta)
}

/// K from Pa within the limits, which are rounded outwards by less than a microkelvin.
#[inline(always)]
pub(crate) fn saturation_temperature_within(pascal: f64) -> f64 {
    saturation_temperature_at(pascal).clamp(FREEZING, CRITICAL)
}

/// K from Pa, no range check.
#[inline(always)]
pub(crate) fn saturation_temperature_at(pascal: f64) -> f64 {
    let squared = math::sqrt(pascal / 1e6);
    let beta = math::sqrt(squared);
    let e = squared + N3 * beta + N6;
    let f = N1 * squared + N4 * beta + N7;
    let g = N2 * squared + N5 * beta + N8;
    let d = 2.0 * g / (-f - math::sqrt(f * f - 4.0 * e * g));
    let sum = N10 + d;
    0.5 * (sum - math::sqrt(sum * sum - 4.0 * (N9 + N10 * d)))
}

/// The equation of the line at one temperature, a quadratic in β = (p / MPa)^¼.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Line {
    theta: f64,
    /// dϑ/dT
    theta_rise: f64,
    b: f64,
    c: f64,
    /// √(B² − 4AC)
    pub(crate) root: f64,
}

impl Line {
    /// The line at `kelvin`.
    #[inline(always)]
    pub(crate) fn at(kelvin: f64) -> Self {
        let inverse = 1.0 / (kelvin - N10);
        let theta = kelvin + N9 * inverse;
        let a = (theta + N1) * theta + N2;
        let b = (N3 * theta + N4) * theta + N5;
        let c = (N6 * theta + N7) * theta + N8;
        Self {
            theta,
            theta_rise: 1.0 - N9 * inverse * inverse,
            b,
            c,
            root: math::sqrt(b * b - 4.0 * a * c),
        }
    }

    /// (p / MPa)^¼
    #[inline(always)]
    pub(crate) fn beta(&self) -> f64 {
        2.0 * self.c / (self.root - self.b)
    }

    /// dβ/dT times `root`, from the equation differentiated as it stands: β is the smaller root of Aβ² + Bβ + C = 0.
    #[inline(always)]
    pub(crate) fn rise_by_root(&self, beta: f64) -> f64 {
        let theta = self.theta;
        let by_theta = ((2.0 * theta + N1) * beta + 2.0 * N3 * theta + N4) * beta + 2.0 * N6 * theta + N7;
        by_theta * self.theta_rise
    }
}

// n₁ to n₁₀ of table 34.
const N1: f64 = 0.116_705_214_527_67e4;
const N2: f64 = -0.724_213_167_032_06e6;
const N3: f64 = -0.170_738_469_400_92e2;
const N4: f64 = 0.120_208_247_024_70e5;
const N5: f64 = -0.323_255_503_223_33e7;
const N6: f64 = 0.149_151_086_135_30e2;
const N7: f64 = -0.482_326_573_615_91e4;
const N8: f64 = 0.405_113_405_420_57e6;
const N9: f64 = -0.238_555_575_678_49;
const N10: f64 = 0.650_175_348_447_98e3;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    #[test]
    fn sea_level_water_boils_below_100() {
        for (kilopascal, celsius) in [
            (70.0, 89.932),
            (80.0, 93.485),
            (90.0, 96.687),
            (96.5, 98.613),
            (101.325, 99.974),
            (104.0, 100.706),
        ] {
            let boiling = saturation_temperature(kpa(kilopascal)).unwrap();
            assert!((boiling.get::<deg_c>() - celsius).abs() < 5e-4);
        }
        let rise = 1.0 / saturation_pressure_slope_at(99.974 + 273.15);
        assert!((rise * 1000.0 - 0.2765).abs() < 5e-5, "K per kPa");
    }

    /// Table 34 typed again: the last digits of these two are too small to move any result.
    #[test]
    fn unseen_digits_are_those_printed() {
        assert_eq!(N9.to_bits(), (-0.238_555_575_678_49_f64).to_bits());
        assert_eq!(N10.to_bits(), 650.175_348_447_98_f64.to_bits());
    }

    #[test]
    fn corners_meet() {
        for celsius in [0.0, 373.946] {
            let there = saturation_pressure(deg_c(celsius)).unwrap();
            let back = saturation_temperature(there).unwrap();
            assert!((back.get::<deg_c>() - celsius).abs() < 1e-9);
        }
        for pascal in [611.2126, 22_064_001.0] {
            let there = saturation_temperature(pa(pascal)).unwrap();
            assert!((saturation_pressure(there).unwrap().get::<pa>() / pascal - 1.0).abs() < 2e-7);
        }
    }

    proptest! {
        #[test]
        fn never_panics(x in any::<f64>()) {
            let _ = (saturation_pressure(kelvin(x)), saturation_temperature(pa(x)), saturation_pressure_slope_at(x));
        }

        #[test]
        fn inverse_meets_forward(x in 0.0..373.9_f64) {
            let back = saturation_temperature(saturation_pressure(deg_c(x)).unwrap()).unwrap();
            prop_assert!((back.get::<deg_c>() - x).abs() < 1e-9);
        }

        #[test]
        fn rises_as_its_slope_says(x in 274.0..646.0_f64) {
            let rise = saturation_pressure_at(x + 0.5e-3) - saturation_pressure_at(x - 0.5e-3);
            prop_assert!(rise > 0.0);
            prop_assert!((rise / 1e-3 / saturation_pressure_slope_at(x) - 1.0).abs() < 1e-5);
        }
    }
}
