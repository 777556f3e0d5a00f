//! What density means for volumes: sugar in a litre, weight on a scale, and what a hot fill loses.

use super::density::{ACCURACY, BRIX, SOURCE, TEMPERATURE, density_at};
use crate::{
    error::Error,
    relation::{Range, Relation, Source},
    units::{Brix, Concentration, Density, Ratio, Si, Temperature, Value, table},
};

/// Dissolved sugar per volume of solution.
///
/// ```text
/// c = B / 100 · ρ(B, t)
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | B | `brix` | °Bx | 0 to 85 |
/// | t | `temperature` of the volume | °C | 0 to 100 |
/// | c | sugar per volume | kg/m³ | 0 to 1236 |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// [`density`](super::density).
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let syrup = sucrose::sugar_per_volume(brix(66.9)?, deg_c(20.0))?;
/// assert_eq!(format!("{:.1}", syrup.get::<gram_per_litre>()), "888.6");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::sugar_per_volume(brix(90.0)?, deg_c(20.0)).unwrap_err();
/// assert_eq!(error.to_string(), "brix = 90 °Bx is outside 0 to 85 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn sugar_per_volume(brix: Brix, temperature: Temperature) -> Result<Concentration, Error> {
    let brix = SUGAR_PER_VOLUME.check(0, brix.si())?;
    let kelvin = SUGAR_PER_VOLUME.check(1, temperature.si())?;
    Ok(Concentration::of_si(sugar_per_volume_at(brix, kelvin)))
}

/// What a scale shows of a volume of the solution, weighed in air.
///
/// ```text
/// W = (ρ(B, t) − ρ_a) / (1 − ρ_a / 8400)
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | B | `brix` | °Bx | 0 to 85 |
/// | t | `temperature` of the volume | °C | 0 to 100 |
/// | `ρ_a` | density of air, 1.2 | kg/m³ | |
/// | W | weight in air per volume | kg/m³ | 957 to 1455 |
///
/// Air buoys syrup more than the brass of the weights: 0.08 % less than the true mass of syrup, 0.1 % of sap.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// [`density`](super::density); air and brass as NBS Circular 440 weighs.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let gallon = sucrose::weight_in_air(brix(66.9)?, deg_c(20.0))?;
/// assert_eq!(format!("{:.3}", gallon.get::<lb_per_gal>()), "11.076");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::weight_in_air(brix(66.9)?, deg_c(185.0)).unwrap_err();
/// assert_eq!(error.to_string(), "temperature = 185 °C is outside 0 to 100 °C; 185 °F is 85 °C: write deg_f(185)");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn weight_in_air(brix: Brix, temperature: Temperature) -> Result<Density, Error> {
    let brix = WEIGHT_IN_AIR.check(0, brix.si())?;
    let kelvin = WEIGHT_IN_AIR.check(1, temperature.si())?;
    Ok(Density::of_si(weight_in_air_at(brix, kelvin)))
}

/// Share of the hot volume that is gone when the solution has cooled.
///
/// ```text
/// 1 − ρ(B, hot) / ρ(B, cold)
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | B | `brix` | °Bx | 0 to 85 |
/// | hot | temperature of the fill | °C | 0 to 100 |
/// | cold | temperature of the shelf | °C | 0 to 100 |
///
/// The vessel is taken as rigid. With hot and cold exchanged the result is negative.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// [`density`](super::density); its 1.5 kg/m³ above 55 °C are 0.12 % of the volume.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let lost = sucrose::contraction(brix(66.9)?, deg_c(85.0), deg_c(20.0))?;
/// assert_eq!(format!("{:.2}", lost.get::<percent>()), "2.90");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::contraction(brix(66.9)?, deg_c(185.0), deg_c(20.0)).unwrap_err();
/// assert_eq!(error.to_string(), "hot = 185 °C is outside 0 to 100 °C; 185 °F is 85 °C: write deg_f(185)");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn contraction(brix: Brix, hot: Temperature, cold: Temperature) -> Result<Ratio, Error> {
    let brix = CONTRACTION.check(0, brix.si())?;
    let hot = CONTRACTION.check(1, hot.si())?;
    let cold = CONTRACTION.check(2, cold.si())?;
    Ok(Ratio::of_si(contraction_at(brix, hot, cold)))
}

/// What [`sugar_per_volume`] covers.
pub static SUGAR_PER_VOLUME: Relation = Relation {
    name: "sucrose::sugar_per_volume",
    inputs: &[BRIX, TEMPERATURE],
    output: &table::gram_per_litre,
    source: SOURCE,
    accuracy: ACCURACY,
};

/// What [`weight_in_air`] covers.
pub static WEIGHT_IN_AIR: Relation = Relation {
    name: "sucrose::weight_in_air",
    inputs: &[BRIX, TEMPERATURE],
    output: &table::kg_per_m3,
    source: Source::Derived {
        text: "density of ICUMSA SPS-4, weighed in air of 1.2 kg/m³ with brass of 8400 kg/m³ as NBS Circular 440 does",
    },
    accuracy: ACCURACY,
};

/// What [`contraction`] covers.
pub static CONTRACTION: Relation = Relation {
    name: "sucrose::contraction",
    inputs: &[
        BRIX,
        Range::new("hot", &table::deg_c, 0.0, 100.0),
        Range::new("cold", &table::deg_c, 0.0, 100.0),
    ],
    output: &table::percent,
    source: SOURCE,
    accuracy: "0.12 % of the volume above 55 °C",
};

/// kg/m³ from °Bx and K, no range check.
#[inline(always)]
pub(crate) fn sugar_per_volume_at(brix: f64, kelvin: f64) -> f64 {
    brix / 100.0 * density_at(brix, kelvin)
}

/// From °Bx, K and K, no range check.
#[inline(always)]
pub(crate) fn contraction_at(brix: f64, hot: f64, cold: f64) -> f64 {
    1.0 - density_at(brix, hot) / density_at(brix, cold)
}

/// kg/m³ from °Bx and K, no range check.
#[inline(always)]
pub(crate) fn weight_in_air_at(brix: f64, kelvin: f64) -> f64 {
    (density_at(brix, kelvin) - AIR) / (1.0 - AIR / BRASS)
}

/// kg/m³, of the air that scales are reckoned in.
pub(super) const AIR: f64 = 1.2;
/// kg/m³, of the weights.
const BRASS: f64 = 8400.0;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    #[test]
    fn values_of_the_note() {
        let grams = sugar_per_volume(brix(2.0).unwrap(), deg_c(20.0)).unwrap();
        assert!((grams.get::<gram_per_litre>() - 20.12).abs() < 5e-3);
        for (strength, pound) in [(66.0, 11.030), (66.9, 11.076)] {
            let gallon = weight_in_air(brix(strength).unwrap(), deg_c(20.0)).unwrap();
            assert!((gallon.get::<lb_per_gal>() - pound).abs() < 5e-4);
        }
        for (hot, cold, share) in [
            (82.0, 20.0, 2.75),
            (82.0, 4.0, 3.32),
            (88.0, 20.0, 3.04),
            (99.0, 20.0, 3.59),
        ] {
            let lost = contraction(brix(66.9).unwrap(), deg_c(hot), deg_c(cold)).unwrap();
            assert!((lost.get::<percent>() - share).abs() < 5e-3);
        }
    }

    proptest! {
        #[test]
        fn never_panics(b in 0.0..=100.0_f64, t in any::<f64>(), cold in any::<f64>()) {
            let strength = brix(b).unwrap();
            let _ = (sugar_per_volume(strength, kelvin(t)), weight_in_air(strength, kelvin(t)));
            let _ = contraction(strength, kelvin(t), kelvin(cold));
        }

        #[test]
        fn cooling_syrup_shrinks(b in 10.0..85.0_f64, cold in 0.0..99.0_f64, step in 0.01..1.0_f64) {
            let lost = contraction(brix(b).unwrap(), deg_c(cold + step), deg_c(cold)).unwrap();
            prop_assert!(lost.get::<fraction>() > 0.0);
        }
    }
}
