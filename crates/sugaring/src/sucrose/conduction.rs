//! How a solution conducts heat.

use crate::{
    error::Error,
    math,
    relation::{Range, Relation, Source},
    units::{Brix, Conductivity, Si, Temperature, Value, table},
};

/// Thermal conductivity of a sucrose solution.
///
/// ```text
/// λ = 0.563 + 1.976e-3 t − 7.847e-6 t² + w (5.466e-6 t² − 1.176e-3 t − 0.3024)
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | w | `brix` / 100 | | 0 to 0.7 |
/// | t | `temperature` | °C | 0 to 80 |
/// | λ | thermal conductivity | W/(m K) | 0.35 to 0.67 |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// Llano 2005, in the form of Riedel. Its water lies within 1.3 % of
/// [`water::thermal_conductivity`](crate::water::thermal_conductivity), worst at 0 °C; use that one for water alone.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let syrup = sucrose::thermal_conductivity(brix(66.9)?, deg_c(60.0))?;
/// assert_eq!(format!("{:.3}", syrup.get::<w_per_m_k>()), "0.417");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::thermal_conductivity(brix(75.0)?, deg_c(60.0)).unwrap_err();
/// assert_eq!(error.to_string(), "brix = 75 °Bx is outside 0 to 70 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn thermal_conductivity(brix: Brix, temperature: Temperature) -> Result<Conductivity, Error> {
    let brix = THERMAL_CONDUCTIVITY.check(0, brix.si())?;
    let kelvin = THERMAL_CONDUCTIVITY.check(1, temperature.si())?;
    Ok(Conductivity::of_si(thermal_conductivity_at(brix, kelvin)))
}

/// What [`thermal_conductivity`] covers.
pub static THERMAL_CONDUCTIVITY: Relation = Relation {
    name: "sucrose::thermal_conductivity",
    inputs: &[
        Range::new("brix", &table::deg_brix, 0.0, 70.0),
        Range::new("temperature", &table::deg_c, 0.0, 80.0),
    ],
    output: &table::w_per_m_k,
    source: Source::Published {
        text: "Llano 2005, as a public module cites it",
        at: "liquor properties",
    },
    accuracy: "1.5 %",
};

/// W/(m K) from °Bx and K, no range check.
pub(crate) fn thermal_conductivity_at(brix: f64, kelvin: f64) -> f64 {
    let celsius = kelvin - 273.15;
    math::polynomial(&WATER, celsius) + brix / 100.0 * math::polynomial(&SUCROSE, celsius)
}

const WATER: [f64; 3] = [0.563, 1.976e-3, -7.847e-6];
const SUCROSE: [f64; 3] = [-0.3024, -1.176e-3, 5.466e-6];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    /// Riedel's form, from memory: (0.5660 + 0.00179 t − 5.92e-6 t²)(1 − 0.0054 B). The note: within 0.6 % at the water
    /// end; the declared 1.5 % everywhere else.
    #[test]
    fn stays_near_riedel() {
        for celsius in [0.0, 20.0, 40.0, 60.0, 80.0] {
            for strength in [0.0, 20.0, 40.0, 60.0] {
                let riedel = (0.5660 + 0.001_79 * celsius - 5.92e-6 * celsius * celsius) * (1.0 - 0.0054 * strength);
                let found = thermal_conductivity_at(strength, celsius + 273.15);
                assert!(
                    (found / riedel - 1.0).abs() < 0.015,
                    "{celsius} {strength} {found} {riedel}"
                );
            }
        }
    }

    proptest! {
        #[test]
        fn never_panics(b in any::<f64>(), t in any::<f64>()) {
            let _ = thermal_conductivity_at(b, t);
            if let Ok(strength) = brix(b) {
                let _ = thermal_conductivity(strength, kelvin(t));
            }
        }

        #[test]
        fn sugar_insulates_and_heat_helps(b in 0.0..69.0_f64, celsius in 0.0..79.0_f64, step in 1e-4..1.0_f64) {
            let kelvin = celsius + 273.15;
            let here = thermal_conductivity_at(b, kelvin);
            prop_assert!(thermal_conductivity_at(b + step, kelvin) < here);
            prop_assert!(thermal_conductivity_at(b, kelvin + step) > here);
        }
    }
}
