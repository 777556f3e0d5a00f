//! Liquid water at 0.1 MPa: how dense it is and what it takes to warm it.

use crate::{
    error::Error,
    relation::{Range, Relation, Source},
    units::{Density, EnergyPerMass, Si, SpecificHeat, Temperature, Value, table},
};

/// Density of liquid water.
///
/// ```text
/// 1/ρ = (R · 10 K / 0.1 MPa) (a₅ + Σ₆…₁₀ aᵢ α^nᵢ + Σ₅…₁₀ bᵢ β^mᵢ)
/// α = 10 K / (593 K − T),  β = 10 K / (T − 232 K)
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | T | `temperature` | K | 253.15 to 383.15, that is −20 to 110 °C |
/// | ρ | density at 0.1 MPa | kg/m³ | 951 to 1000 |
///
/// Below 0 °C the water is supercooled, above 99.6 °C superheated. The density of the sucrose solutions carries a
/// water term of its own and ends 0.002 to 0.006 kg/m³ from this one at 0 °Bx.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// IAPWS SR6-08(2011), equation 2, tables 1 and 2.
/// # Examples
/// ```
/// use sugaring::{units::*, water};
/// let cold = water::density(deg_c(4.0))?;
/// assert_eq!(format!("{:.3}", cold.get::<kg_per_m3>()), "999.974");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// A temperature in °F, read as °C:
/// ```
/// # use sugaring::{units::*, water};
/// let error = water::density(deg_c(180.0)).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "temperature = 180 °C is outside -20 to 110 °C; 180 °F is 82.22 °C: write deg_f(180)"
/// );
/// ```
pub fn density(temperature: Temperature) -> Result<Density, Error> {
    let kelvin = DENSITY.check(0, temperature.si())?;
    Ok(Density::of_si(density_at(kelvin)))
}

/// Specific heat of liquid water.
///
/// ```text
/// c_p = −R (c₃ + τ (Σ₁…₃ nᵢ (nᵢ + 1) aᵢ α^(nᵢ + 2) + Σ₁…₄ mᵢ (mᵢ + 1) bᵢ β^(mᵢ + 2)))
/// τ = T / 10 K,  α and β as in the density
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | T | `temperature` | K | 253.15 to 383.15, that is −20 to 110 °C |
/// | `c_p` | specific heat at 0.1 MPa | J/(kg K) | 4178 to 4401 |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// IAPWS SR6-08(2011), from equation 1, tables 1 and 2.
/// # Examples
/// ```
/// use sugaring::{units::*, water};
/// let warm = water::specific_heat(deg_c(25.0))?;
/// assert_eq!(format!("{:.4}", warm.get::<kj_per_kg_k>()), "4.1814");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{units::*, water};
/// let error = water::specific_heat(deg_c(-25.0)).unwrap_err();
/// assert_eq!(error.to_string(), "temperature = -25 °C is outside -20 to 110 °C");
/// ```
pub fn specific_heat(temperature: Temperature) -> Result<SpecificHeat, Error> {
    let kelvin = SPECIFIC_HEAT.check(0, temperature.si())?;
    Ok(SpecificHeat::of_si(specific_heat_at(kelvin)))
}

/// Heat that warms liquid water from 0 °C to `temperature`; negative below.
///
/// ```text
/// h = f(T) − f(273.15 K),  τ = T / 10 K,  α and β as in the density
/// f(T) = R · 10 K (−c₃ τ + Σ₁…₃ aᵢ (α^nᵢ − nᵢ τ α^(nᵢ + 1)) + Σ₁…₄ bᵢ (β^mᵢ + mᵢ τ β^(mᵢ + 1)))
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | T | `temperature` | K | 253.15 to 383.15, that is −20 to 110 °C |
/// | h | enthalpy from 0 °C at 0.1 MPa | kJ/kg | −85.7 to 461.3 |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// IAPWS SR6-08(2011), equation 1 as g − T ∂g/∂T, tables 1 and 2.
/// # Examples
/// ```
/// use sugaring::{units::*, water};
/// let heat = water::enthalpy(deg_c(100.0))?;
/// assert_eq!(format!("{:.3}", heat.get::<kj_per_kg>()), "419.105");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{units::*, water};
/// let error = water::enthalpy(deg_c(f64::INFINITY)).unwrap_err();
/// assert_eq!(error.to_string(), "temperature = infinity is not a finite number");
/// ```
pub fn enthalpy(temperature: Temperature) -> Result<EnergyPerMass, Error> {
    let kelvin = ENTHALPY.check(0, temperature.si())?;
    Ok(EnergyPerMass::of_si(enthalpy_at(kelvin)))
}

/// What [`density`] covers.
pub static DENSITY: Relation = Relation {
    name: "water::density",
    inputs: &[TEMPERATURE],
    output: &table::kg_per_m3,
    source: Source::Published {
        text: "IAPWS SR6-08(2011)",
        at: "equation 2, tables 1 and 2",
    },
    accuracy: "1 ppm from 0 to 40 °C, 0.003 % near 100 °C (release, from memory)",
};

/// What [`specific_heat`] covers.
pub static SPECIFIC_HEAT: Relation = Relation {
    name: "water::specific_heat",
    inputs: &[TEMPERATURE],
    output: &table::kj_per_kg_k,
    source: Source::Published {
        text: "IAPWS SR6-08(2011)",
        at: "equation 1, tables 1 and 2",
    },
    accuracy: "0.1 % (release, from memory)",
};

/// What [`enthalpy`] covers.
pub static ENTHALPY: Relation = Relation {
    name: "water::enthalpy",
    inputs: &[TEMPERATURE],
    output: &table::kj_per_kg,
    source: Source::Published {
        text: "IAPWS SR6-08(2011)",
        at: "equation 1, tables 1 and 2",
    },
    accuracy: "0.1 %, as the specific heat it integrates",
};

pub(super) const TEMPERATURE: Range = Range::new("temperature", &table::deg_c, -20.0, 110.0);

/// kg/m³ from K, no range check.
#[inline(always)]
pub(crate) fn density_at(kelvin: f64) -> f64 {
    let (a, b) = (10.0 / (593.0 - kelvin), 10.0 / (kelvin - 232.0));
    let a2 = a * a;
    let cold = b * (B5 + b * (B6 + b * (B7 + b * (B8 + b * (B9 + b * B10)))));
    let hot = a2 * a2 * (A6 + a * (A7 + a2 * (A8 + a * (A9 + a * A10))));
    PRESSURE / (GAS * 10.0) / (A5 + hot + cold)
}

/// J/(kg K) from K, no range check.
#[inline(always)]
pub(crate) fn specific_heat_at(kelvin: f64) -> f64 {
    let (a, b) = (10.0 / (593.0 - kelvin), 10.0 / (kelvin - 232.0));
    let (a2, b2) = (a * a, b * b);
    let hot = a2 * a2 * a2 * (20.0 * A1 + a * (30.0 * A2 + a2 * 56.0 * A3));
    let cold = b2 * b2 * (6.0 * B1 + b * (12.0 * B2 + b * (20.0 * B3 + b * 30.0 * B4)));
    -GAS * (C3 + kelvin / 10.0 * (hot + cold))
}

/// J/kg from 0 °C, from K, no range check.
#[inline(always)]
pub(crate) fn enthalpy_at(kelvin: f64) -> f64 {
    GAS * 10.0 * (enthalpy_term(kelvin) - ENTHALPY_TERM_OF_ICE_WATER)
}

/// h/(R·10 K) without c₁, which cancels.
#[inline(always)]
const fn enthalpy_term(kelvin: f64) -> f64 {
    let (a, b) = (10.0 / (593.0 - kelvin), 10.0 / (kelvin - 232.0));
    let tau = kelvin / 10.0;
    let (a2, ta, tb) = (a * a, tau * a, tau * b);
    let hot = a2 * a2 * (A1 * (1.0 - 4.0 * ta) + a * (A2 * (1.0 - 5.0 * ta) + a2 * A3 * (1.0 - 7.0 * ta)));
    let cold = b
        * b
        * (B1 * (1.0 + 2.0 * tb)
            + b * (B2 * (1.0 + 3.0 * tb) + b * (B3 * (1.0 + 4.0 * tb) + b * B4 * (1.0 + 5.0 * tb))));
    hot + cold - C3 * tau
}

const ENTHALPY_TERM_OF_ICE_WATER: f64 = enthalpy_term(273.15);

const GAS: f64 = 461.518_05;
const PRESSURE: f64 = 1e5;

// Tables 1 and 2 of the release; c₁ and c₂ cancel in everything offered here.
const A1: f64 = -1.661_470_539e5;
const A2: f64 = 2.708_781_640e6;
const A3: f64 = -1.557_191_544e8;
const A5: f64 = 1.937_631_57e-2;
const A6: f64 = 6.744_584_46e3;
const A7: f64 = -2.225_216_04e5;
const A8: f64 = 1.002_312_47e8;
const A9: f64 = -1.635_521_18e9;
const A10: f64 = 8.322_996_58e9;
const B1: f64 = -8.237_426_256e-1;
const B2: f64 = 1.908_956_353;
const B3: f64 = -2.017_597_384;
const B4: f64 = 8.546_361_348e-1;
const B5: f64 = 5.785_452_92e-3;
const B6: f64 = -1.531_956_65e-2;
const B7: f64 = 3.113_378_59e-2;
const B8: f64 = -4.235_462_41e-2;
const B9: f64 = 3.387_135_07e-2;
const B10: f64 = -1.199_467_61e-2;
const C3: f64 = -8.983_025_854;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    #[test]
    fn enthalpy_starts_at_ice_water() {
        assert_eq!(enthalpy(deg_c(0.0)), Ok(kj_per_kg(0.0)));
        assert!((enthalpy(deg_c(25.0)).unwrap().get::<kj_per_kg>() - 104.8596).abs() < 5e-5);
        assert!((enthalpy(deg_c(100.0)).unwrap().get::<kj_per_kg>() - 419.105).abs() < 5e-4);
    }

    #[test]
    fn densities_of_the_note() {
        for (celsius, value) in [
            (0.0, 999.842),
            (4.0, 999.974),
            (20.0, 998.207),
            (25.0, 997.047),
            (99.6, 958.636),
        ] {
            assert!((density(deg_c(celsius)).unwrap().get::<kg_per_m3>() - value).abs() < 5e-4);
        }
    }

    proptest! {
        #[test]
        fn never_panics(x in any::<f64>()) {
            let t = kelvin(x);
            let _ = (density(t), specific_heat(t), enthalpy(t));
            let _ = (density_at(x), specific_heat_at(x), enthalpy_at(x));
        }

        #[test]
        fn enthalpy_rises_as_the_specific_heat_says(x in 254.0..382.0_f64) {
            let rise = (enthalpy_at(x + 5e-3) - enthalpy_at(x - 5e-3)) / 1e-2;
            prop_assert!((rise / specific_heat_at(x) - 1.0).abs() < 1e-7);
        }

        #[test]
        fn warm_water_is_lighter(x in 278.0..383.0_f64, step in 1e-2..1.0_f64) {
            prop_assert!(density_at(x + step) < density_at(x));
        }
    }
}
