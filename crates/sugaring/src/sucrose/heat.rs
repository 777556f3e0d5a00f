//! Heat that warms a solution.

use crate::{
    error::Error,
    relation::{Range, Relation, Source},
    units::{Brix, EnergyPerMass, Si, SpecificHeat, Temperature, Value, table},
    water,
};

/// Specific heat of a sucrose solution, anchored on water's own.
///
/// ```text
/// c = c_water(t) − 0.0297 B + 4.6e-5 B P + 7.5e-5 B t  in kJ/(kg K)
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | B | `brix` | °Bx | 0 to 80 |
/// | t | `temperature` | °C | 0 to 110 |
/// | P | purity, 100 for sucrose | % | |
/// | c | specific heat | kJ/(kg K) | 2.2 to 4.23 |
///
/// No measured table was found above 20 °Bx; the accuracy is the spread of published formulas.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// Derived: the terms of Bubnik, Kadlec, Urban and Bruhns (1995) on the water of IAPWS SR6-08, so that 0 °Bx is exact.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let sap = sucrose::specific_heat(brix(2.0)?, deg_c(4.0))?;
/// assert_eq!(format!("{:.3}", sap.get::<kj_per_kg_k>()), "4.158");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::specific_heat(brix(2.0)?, deg_c(-4.0)).unwrap_err();
/// assert_eq!(error.to_string(), "temperature = -4 °C is outside 0 to 110 °C");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn specific_heat(brix: Brix, temperature: Temperature) -> Result<SpecificHeat, Error> {
    let brix = SPECIFIC_HEAT.check(0, brix.si())?;
    let kelvin = SPECIFIC_HEAT.check(1, temperature.si())?;
    Ok(SpecificHeat::of_si(specific_heat_at(brix, kelvin)))
}

/// Specific heat of a sucrose solution as Bubnik prints it, with 4.1868 kJ/(kg K) for water.
///
/// ```text
/// c = 4.1868 − 0.0297 B + 4.6e-5 B P + 7.5e-5 B t  in kJ/(kg K)
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | B | `brix` | °Bx | 0 to 80 |
/// | t | `temperature` | °C | 0 to 110 |
/// | P | purity, 100 for sucrose | % | |
///
/// It differs from [`specific_heat`] by what true water differs from 4.1868: −0.008 to +0.033 kJ/(kg K).
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// Bubnik, Kadlec, Urban and Bruhns, *Sugar Technologists Manual* (1995).
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let printed = sucrose::specific_heat_bubnik(brix(20.0)?, deg_c(20.0))?;
/// assert_eq!(format!("{:.4}", printed.get::<kj_per_kg_k>()), "3.7148");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::specific_heat_bubnik(brix(85.0)?, deg_c(20.0)).unwrap_err();
/// assert_eq!(error.to_string(), "brix = 85 °Bx is outside 0 to 80 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn specific_heat_bubnik(brix: Brix, temperature: Temperature) -> Result<SpecificHeat, Error> {
    let brix = SPECIFIC_HEAT_BUBNIK.check(0, brix.si())?;
    let kelvin = SPECIFIC_HEAT_BUBNIK.check(1, temperature.si())?;
    Ok(SpecificHeat::of_si(specific_heat_bubnik_at(brix, kelvin)))
}

/// Heat that warms a sucrose solution from 0 °C to `temperature`, its strength unchanged.
///
/// ```text
/// h = h_water(t) + (−0.0297 B + 4.6e-5 B P) t + 3.75e-5 B t²  in kJ/kg
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | B | `brix` | °Bx | 0 to 80 |
/// | t | `temperature` | °C | 0 to 110 |
/// | P | purity, 100 for sucrose | % | |
/// | h | enthalpy from 0 °C | kJ/kg | 0 to 461.3 |
///
/// Enthalpies of different strengths share no datum: a balance takes each stream at its own strength and adds the
/// latent heat of the water that leaves.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// The integral of [`specific_heat`].
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let sap = sucrose::enthalpy(brix(2.0)?, deg_c(100.0))?;
/// assert_eq!(format!("{:.1}", sap.get::<kj_per_kg>()), "414.8");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::enthalpy(brix(2.0)?, deg_c(f64::NAN)).unwrap_err();
/// assert_eq!(error.to_string(), "temperature = NaN is not a finite number");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn enthalpy(brix: Brix, temperature: Temperature) -> Result<EnergyPerMass, Error> {
    let brix = ENTHALPY.check(0, brix.si())?;
    let kelvin = ENTHALPY.check(1, temperature.si())?;
    Ok(EnergyPerMass::of_si(enthalpy_at(brix, kelvin)))
}

/// Heat that takes a sucrose solution from one temperature to another, its strength unchanged; negative on cooling.
///
/// ```text
/// h(B, to) − h(B, from)
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | B | `brix` | °Bx | 0 to 80 |
/// | from, to | `from_temperature`, `to_temperature` | °C | 0 to 110 |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// [`enthalpy`].
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let heat = sucrose::heat_to_warm(brix(2.0)?, deg_c(4.0), deg_c(100.0))?;
/// assert_eq!(format!("{:.1}", heat.get::<kj_per_kg>()), "398.2");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::heat_to_warm(brix(2.0)?, deg_c(40.0), deg_c(212.0)).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "to_temperature = 212 °C is outside 0 to 110 °C; 212 °F is 100 °C: write deg_f(212)"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn heat_to_warm(
    brix: Brix,
    from_temperature: Temperature,
    to_temperature: Temperature,
) -> Result<EnergyPerMass, Error> {
    let brix = HEAT_TO_WARM.check(0, brix.si())?;
    let from = HEAT_TO_WARM.check(1, from_temperature.si())?;
    let to = HEAT_TO_WARM.check(2, to_temperature.si())?;
    Ok(EnergyPerMass::of_si(heat_to_warm_at(brix, from, to)))
}

/// What [`specific_heat`] covers.
pub static SPECIFIC_HEAT: Relation = Relation {
    name: "sucrose::specific_heat",
    inputs: &[BRIX, TEMPERATURE],
    output: &table::kj_per_kg_k,
    source: ANCHORED,
    accuracy: ACCURACY,
};

/// What [`specific_heat_bubnik`] covers.
pub static SPECIFIC_HEAT_BUBNIK: Relation = Relation {
    name: "sucrose::specific_heat_bubnik",
    inputs: &[BRIX, TEMPERATURE],
    output: &table::kj_per_kg_k,
    source: Source::Published {
        text: "Bubnik, Kadlec, Urban, Bruhns, Sugar Technologists Manual (1995)",
        at: "specific heat of sucrose solutions",
    },
    accuracy: ACCURACY,
};

/// What [`enthalpy`] covers.
pub static ENTHALPY: Relation = Relation {
    name: "sucrose::enthalpy",
    inputs: &[BRIX, TEMPERATURE],
    output: &table::kj_per_kg,
    source: ANCHORED,
    accuracy: ACCURACY,
};

/// What [`heat_to_warm`] covers.
pub static HEAT_TO_WARM: Relation = Relation {
    name: "sucrose::heat_to_warm",
    inputs: &[
        BRIX,
        Range::new("from_temperature", &table::deg_c, 0.0, 110.0),
        Range::new("to_temperature", &table::deg_c, 0.0, 110.0),
    ],
    output: &table::kj_per_kg,
    source: ANCHORED,
    accuracy: ACCURACY,
};

const ANCHORED: Source = Source::Derived {
    text: "Bubnik, Kadlec, Urban, Bruhns (1995), with the water of IAPWS SR6-08(2011) in place of 4.1868",
};
const ACCURACY: &str = "1 % to 20 °Bx, 3 % at 40 °Bx, 6 % at 67 °Bx below 50 °C, 12 % at 67 °Bx and 100 °C";
const BRIX: Range = Range::new("brix", &table::deg_brix, 0.0, 80.0);
const TEMPERATURE: Range = Range::new("temperature", &table::deg_c, 0.0, 110.0);

/// J/(kg K) from °Bx and K, no range check.
#[inline(always)]
pub(crate) fn specific_heat_at(brix: f64, kelvin: f64) -> f64 {
    water::specific_heat_at(kelvin) + excess(brix, kelvin)
}

/// J/kg from 0 °C, from °Bx and K, no range check.
#[inline(always)]
pub(crate) fn enthalpy_at(brix: f64, kelvin: f64) -> f64 {
    let celsius = kelvin - 273.15;
    water::enthalpy_at(kelvin) + brix * celsius * (AT_ICE_WATER + 0.5 * PER_KELVIN * celsius)
}

/// The same of the printed equation.
#[inline(always)]
pub(crate) fn specific_heat_bubnik_at(brix: f64, kelvin: f64) -> f64 {
    WATER_AS_PRINTED + excess(brix, kelvin)
}

/// J/kg from °Bx, K and K, no range check.
#[inline(always)]
pub(crate) fn heat_to_warm_at(brix: f64, from: f64, to: f64) -> f64 {
    enthalpy_at(brix, to) - enthalpy_at(brix, from)
}

/// Over water, J/(kg K).
#[inline(always)]
fn excess(brix: f64, kelvin: f64) -> f64 {
    brix * (AT_ICE_WATER + PER_KELVIN * (kelvin - 273.15))
}

/// Of pure sucrose, J/(kg K) per °Bx at 0 °C.
const AT_ICE_WATER: f64 = -29.7 + 0.046 * PURITY;
/// J/(kg K) per °Bx and kelvin.
const PER_KELVIN: f64 = 0.075;
const PURITY: f64 = 100.0;
const WATER_AS_PRINTED: f64 = 4186.8;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    #[test]
    fn water_is_water() {
        for celsius in [0.0, 40.0, 110.0] {
            let (none, t) = (brix(0.0).unwrap(), deg_c(celsius));
            assert_eq!(specific_heat(none, t), water::specific_heat(t));
            assert_eq!(enthalpy(none, t), water::enthalpy(t));
        }
    }

    #[test]
    fn printed_form_differs_as_the_note_says() {
        let difference = |celsius| {
            let (syrup, t) = (brix(66.9).unwrap(), deg_c(celsius));
            specific_heat(syrup, t).unwrap().get::<kj_per_kg_k>()
                - specific_heat_bubnik(syrup, t).unwrap().get::<kj_per_kg_k>()
        };
        for (celsius, value) in [(36.0, -0.008), (0.0, 0.033), (100.0, 0.029)] {
            assert!(
                (difference(celsius) - value).abs() < 5.1e-4,
                "{celsius} {}",
                difference(celsius)
            );
        }
    }

    proptest! {
        #[test]
        fn never_panics(b in any::<f64>(), t in any::<f64>()) {
            let _ = (specific_heat_at(b, t), enthalpy_at(b, t));
            if let Ok(strength) = brix(b) {
                let t = kelvin(t);
                let _ = (specific_heat(strength, t), specific_heat_bubnik(strength, t), enthalpy(strength, t));
                let _ = heat_to_warm(strength, t, deg_c(100.0));
            }
        }

        #[test]
        fn enthalpy_rises_as_the_specific_heat_says(b in 0.0..80.0_f64, celsius in 0.01..109.9_f64) {
            let kelvin = celsius + 273.15;
            let rise = (enthalpy_at(b, kelvin + 5e-3) - enthalpy_at(b, kelvin - 5e-3)) / 1e-2;
            prop_assert!((rise / specific_heat_at(b, kelvin) - 1.0).abs() < 1e-7);
        }

        #[test]
        fn there_and_back_is_nothing(b in 0.0..80.0_f64, one in 0.0..110.0_f64, other in 0.0..110.0_f64) {
            let (strength, one, other) = (brix(b).unwrap(), deg_c(one), deg_c(other));
            let there = heat_to_warm(strength, one, other).unwrap();
            prop_assert_eq!(there, -heat_to_warm(strength, other, one).unwrap());
        }
    }
}
