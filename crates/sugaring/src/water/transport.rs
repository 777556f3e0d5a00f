//! Liquid water at 0.1 MPa: how it flows and how it conducts heat.

use super::liquid::TEMPERATURE;
use crate::{
    error::Error,
    math,
    relation::{Relation, Source},
    units::{Conductivity, Si, Temperature, Value, Viscosity, table},
};

/// Viscosity of liquid water.
///
/// ```text
/// η = 280.68 T̃^−1.9 + 511.45 T̃^−7.7 + 61.131 T̃^−19.6 + 0.45903 T̃^−40,  T̃ = T / 300 K
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | T | `temperature` | K | 253.15 to 383.15, that is −20 to 110 °C |
/// | η | dynamic viscosity at 0.1 MPa | µPa s | 4360 to 255 |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// IAPWS SR6-08(2011), equation 7, table 3.
/// # Examples
/// ```
/// use sugaring::{units::*, water};
/// let permeate = water::viscosity(deg_c(5.0))?;
/// assert_eq!(format!("{:.4}", permeate.get::<mpa_s>()), "1.5182");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{units::*, water};
/// let error = water::viscosity(deg_c(-30.0)).unwrap_err();
/// assert_eq!(error.to_string(), "temperature = -30 °C is outside -20 to 110 °C");
/// ```
pub fn viscosity(temperature: Temperature) -> Result<Viscosity, Error> {
    let kelvin = VISCOSITY.check(0, temperature.si())?;
    Ok(Viscosity::of_si(viscosity_at(kelvin)))
}

/// Thermal conductivity of liquid water.
///
/// ```text
/// λ = 1.6630 T̃^−1.15 − 1.7781 T̃^−3.4 + 1.1567 T̃^−6 − 0.432115 T̃^−7.6,  T̃ = T / 300 K
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | T | `temperature` | K | 253.15 to 383.15, that is −20 to 110 °C |
/// | λ | thermal conductivity at 0.1 MPa | W/(m K) | 0.52 to 0.68 |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// IAPWS SR6-08(2011), equation 8, table 3.
/// # Examples
/// ```
/// use sugaring::{units::*, water};
/// let warm = water::thermal_conductivity(deg_c(25.0))?;
/// assert_eq!(format!("{:.4}", warm.get::<w_per_m_k>()), "0.6065");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{units::*, water};
/// let error = water::thermal_conductivity(deg_c(120.0)).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "temperature = 120 °C is outside -20 to 110 °C; 120 °F is 48.89 °C: write deg_f(120)"
/// );
/// ```
pub fn thermal_conductivity(temperature: Temperature) -> Result<Conductivity, Error> {
    let kelvin = THERMAL_CONDUCTIVITY.check(0, temperature.si())?;
    Ok(Conductivity::of_si(thermal_conductivity_at(kelvin)))
}

/// What [`viscosity`] covers.
pub static VISCOSITY: Relation = Relation {
    name: "water::viscosity",
    inputs: &[TEMPERATURE],
    output: &table::mpa_s,
    source: Source::Published {
        text: "IAPWS SR6-08(2011)",
        at: "equation 7, table 3",
    },
    accuracy: "1 %, 0.17 % from 20 to 25 °C (release, from memory)",
};

/// What [`thermal_conductivity`] covers.
pub static THERMAL_CONDUCTIVITY: Relation = Relation {
    name: "water::thermal_conductivity",
    inputs: &[TEMPERATURE],
    output: &table::w_per_m_k,
    source: Source::Published {
        text: "IAPWS SR6-08(2011)",
        at: "equation 8, table 3",
    },
    accuracy: "1.5 % (release, from memory)",
};

/// Pa s from K, no range check.
pub(crate) fn viscosity_at(kelvin: f64) -> f64 {
    1e-6 * powers(kelvin / 300.0, &VISCOSITY_TERMS)
}

/// W/(m K) from K, no range check.
pub(crate) fn thermal_conductivity_at(kelvin: f64) -> f64 {
    powers(kelvin / 300.0, &CONDUCTIVITY_TERMS)
}

/// Σ factor · base^exponent
fn powers(base: f64, terms: &[(f64, f64)]) -> f64 {
    terms
        .iter()
        .map(|(factor, exponent)| factor * math::pow(base, *exponent))
        .sum()
}

/// Factor in µPa s, exponent.
const VISCOSITY_TERMS: [(f64, f64); 4] = [(280.68, -1.9), (511.45, -7.7), (61.131, -19.6), (0.459_03, -40.0)];

/// Factor in W/(m K), exponent.
const CONDUCTIVITY_TERMS: [(f64, f64); 4] = [(1.6630, -1.15), (-1.7781, -3.4), (1.1567, -6.0), (-0.432_115, -7.6)];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    #[test]
    fn viscosities_of_the_note() {
        for (celsius, value) in [(0.0, 1.7918), (5.0, 1.5182), (20.0, 1.0016), (25.0, 0.8900)] {
            assert!((viscosity(deg_c(celsius)).unwrap().get::<mpa_s>() - value).abs() < 5e-5);
        }
    }

    proptest! {
        #[test]
        fn never_panics(x in any::<f64>()) {
            let _ = (viscosity(kelvin(x)), thermal_conductivity(kelvin(x)), viscosity_at(x));
        }

        #[test]
        fn warm_water_is_thinner(x in 253.15..382.0_f64, step in 1e-3..1.0_f64) {
            prop_assert!(viscosity_at(x + step) < viscosity_at(x));
        }
    }
}
