//! The heat that takes water out of a boiling solution.

use super::{
    activity::{BRIX, C, GAS, REFERENCE, TEMPERATURE, WATER_MOLAR_MASS, heat_term, mole_fraction},
    boiling_point::{boiling_at, boiling_temperatures},
};
use crate::{
    air::StationPressure,
    error::Error,
    lanes::widest,
    relation::{Range, Relation, Source},
    units::{Brix, EnergyPerMass, Si, Temperature, Value, table},
    water,
};

/// Heat that takes 1 kg of water as vapour out of a solution that boils already under the `station` pressure.
///
/// ```text
/// q = h″(T_sat) + c_v (T_b − T_sat) − h′(T_b) − L₁ / M_w,  L₁ = R x² (T₀ B(w) − C (T_b − T₀))
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | w | `brix` / 100 | | 0 to 0.85 |
/// | p | `station` pressure | kPa | 50 to 110 |
/// | `T_b`, `T_sat` | boiling points of the solution and of water | K | |
/// | h′, h″ | enthalpies of boiling water and of its steam | kJ/kg | |
/// | `c_v` | specific heat of the steam, 2.03 | kJ/(kg K) | |
/// | L₁ | partial enthalpy of the water, the heat of dilution; w, x, B, C and T₀ as in [`water_activity`](super::water_activity) | J/mol | |
/// | q | heat of evaporation | kJ/kg | 2230 to 2330 |
///
/// The steam's superheat, the smaller latent heat and the heat of dilution cancel to 0.2 % up to syrup: the latent heat
/// of water at its own boiling point serves for a whole boil.
///
/// # Errors
/// [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// IAPWS SR1-86(1992) for water; the heat of dilution from [`water_activity`](super::water_activity), known to 20 %.
/// # Examples
/// ```
/// use sugaring::{air::StationPressure, sucrose, units::*};
/// let station = StationPressure::measured(atm(1.0))?;
/// let heat = sucrose::heat_of_evaporation(brix(66.9)?, station)?;
/// assert_eq!(format!("{:.1}", heat.get::<kj_per_kg>()), "2260.3");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{air::StationPressure, sucrose, units::*};
/// let station = StationPressure::measured(atm(1.0))?;
/// let error = sucrose::heat_of_evaporation(brix(95.0)?, station).unwrap_err();
/// assert_eq!(error.to_string(), "brix = 95 °Bx is outside 0 to 85 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn heat_of_evaporation(brix: Brix, station: StationPressure) -> Result<EnergyPerMass, Error> {
    let brix = HEAT_OF_EVAPORATION.check(0, brix.si())?;
    let pascal = HEAT_OF_EVAPORATION.check(1, station.si())?;
    let heat = heat_of_evaporation_at(brix, pascal).ok_or_else(|| Error::no_convergence("temperature"))?;
    Ok(EnergyPerMass::of_si(heat))
}

/// Excess enthalpy of the water in a sucrose solution over pure water's, per mass of water: the heat of dilution, which
/// is negative.
///
/// ```text
/// L₁ / M_w,  L₁ = R x² (T₀ B(w) − C (T − T₀))
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | w | `brix` / 100 | | 0 to 0.85 |
/// | T | `temperature` | °C | −15 to 132 |
/// | x, B, C, T₀ | as in [`water_activity`](super::water_activity) | | |
/// | `M_w` | molar mass of water | kg/mol | |
///
/// What [`heat_of_evaporation`] takes on top to draw water out: 12.8 kJ/kg at 66.9 °Bx.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// Slope of [`water_activity`](super::water_activity) with temperature, by Gibbs and Helmholtz; fitted to the heats of
/// Gucker, Pickard and Planck 1939 (from memory) to 2 mol/kg, known to 20 %.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let excess = sucrose::excess_enthalpy_of_water(brix(66.9)?, deg_c(104.0))?;
/// assert_eq!(format!("{:.1}", excess.get::<kj_per_kg>()), "-12.8");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::excess_enthalpy_of_water(brix(66.9)?, deg_c(219.0)).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "temperature = 219 °C is outside -15 to 132 °C; 219 °F is 103.9 °C: write deg_f(219)"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn excess_enthalpy_of_water(brix: Brix, temperature: Temperature) -> Result<EnergyPerMass, Error> {
    let brix = EXCESS_ENTHALPY_OF_WATER.check(0, brix.si())?;
    let kelvin = EXCESS_ENTHALPY_OF_WATER.check(1, temperature.si())?;
    Ok(EnergyPerMass::of_si(excess_enthalpy_of_water_at(brix, kelvin)))
}

/// What [`heat_of_evaporation`] covers.
pub static HEAT_OF_EVAPORATION: Relation = Relation {
    name: "sucrose::heat_of_evaporation",
    inputs: &[BRIX, Range::new("station", &table::kpa, 50.0, 110.0)],
    output: &table::kj_per_kg,
    source: Source::Derived {
        text: "enthalpies of IAPWS SR1-86(1992) and the heat of dilution of the water activity",
    },
    accuracy: "0.3 kJ/kg of the water, 20 % of the heat of dilution (12.8 kJ/kg at 66.9 °Bx)",
};

/// What [`excess_enthalpy_of_water`] covers.
pub static EXCESS_ENTHALPY_OF_WATER: Relation = Relation {
    name: "sucrose::excess_enthalpy_of_water",
    inputs: &[BRIX, TEMPERATURE],
    output: &table::kj_per_kg,
    source: Source::Derived {
        text: "slope of the water activity with temperature, fitted to the heats of dilution of Gucker, Pickard and \
            Planck 1939 (from memory)",
    },
    accuracy: "20 % to 2 mol/kg (40 °Bx); no data above",
};

/// J/kg from °Bx and Pa; `None` where [`boiling_at`] has none.
fn heat_of_evaporation_at(brix: f64, pascal: f64) -> Option<f64> {
    let boiling = boiling_at(brix, pascal)?;
    Some(heat_at_boiling(brix, pascal, boiling))
}

widest! {
    /// J/kg from °Bx and Pa within the limits; NaN where the boiling temperature did not settle.
    pub(crate) fn heats_of_evaporation(brix: &[f64], pascal: &[f64], out: &mut [f64]) {
        boiling_temperatures(brix, pascal, out);
        for ((out, brix), pascal) in out.iter_mut().zip(brix).zip(pascal) {
            *out = heat_at_boiling(*brix, *pascal, *out);
        }
    }
}

fn heat_at_boiling(brix: f64, pascal: f64, boiling: f64) -> f64 {
    let saturation = water::saturation_temperature_at(pascal);
    let steam = water::saturated_vapour_enthalpy_at(saturation) + STEAM_SPECIFIC_HEAT * (boiling - saturation);
    let dilution = excess_enthalpy_of_water_at(brix, boiling);
    steam - water::saturated_liquid_enthalpy_at(boiling) - dilution
}

/// J/kg of water, from °Bx and K.
pub(crate) fn excess_enthalpy_of_water_at(brix: f64, kelvin: f64) -> f64 {
    partial_enthalpy_at(brix, kelvin) / WATER_MOLAR_MASS
}

/// Partial molar enthalpy of the water over pure water's, J/mol, from °Bx and K.
fn partial_enthalpy_at(brix: f64, kelvin: f64) -> f64 {
    let w = brix / 100.0;
    let x = mole_fraction(w);
    GAS * x * x * (REFERENCE * heat_term(w) - C * (kelvin - REFERENCE))
}

/// J/(kg K), 1.9 to 2.1 from 70 to 110 kPa.
const STEAM_SPECIFIC_HEAT: f64 = 2030.0;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    #[test]
    fn values_of_the_note() {
        let station = StationPressure::measured(atm(1.0)).unwrap();
        for (strength, heat, dilution) in [(2.0, 2256.6, 0.0), (66.0, 2260.0, 12.1), (66.9, 2260.3, 12.8)] {
            let found = heat_of_evaporation(brix(strength).unwrap(), station).unwrap();
            assert!((found.get::<kj_per_kg>() - heat).abs() < 0.051, "{strength} {found:?}");
            let boiling = boiling_at(strength, 101_325.0).unwrap();
            let of_dilution = -partial_enthalpy_at(strength, boiling) / WATER_MOLAR_MASS / 1e3;
            assert!((of_dilution - dilution).abs() < 0.051, "{strength} {of_dilution}");
        }
    }

    #[test]
    fn heat_of_dilution_is_the_activitys_slope_with_temperature() {
        // L₁ = −R T² ∂ ln a_w/∂T (Gibbs and Helmholtz), against differences of the model itself.
        for strength in [10.0, 40.0, 66.9] {
            for kelvin in [280.0, 298.15, 375.0] {
                let ln = |kelvin| super::super::activity::ln_water_activity_at(strength, kelvin);
                let slope = (ln(kelvin + 0.01) - ln(kelvin - 0.01)) / 0.02;
                let found = partial_enthalpy_at(strength, kelvin);
                assert!((-GAS * kelvin * kelvin * slope / found - 1.0).abs() < 1e-6);
            }
        }
    }

    #[test]
    fn water_takes_its_latent_heat() {
        let pascal = 96_500.0;
        let latent = water::latent_heat_at(water::saturation_temperature_at(pascal));
        assert!((heat_of_evaporation_at(0.0, pascal).unwrap() / latent - 1.0).abs() < 1e-12);
    }

    proptest! {
        #[test]
        fn stays_near_the_latent_heat_of_water(b in 0.0..=70.0_f64, pascal in 50e3..=110e3_f64) {
            let latent = water::latent_heat_at(water::saturation_temperature_at(pascal));
            prop_assert!((heat_of_evaporation_at(b, pascal).unwrap() / latent - 1.0).abs() < 0.004);
        }

        #[test]
        fn never_panics(b in any::<f64>(), p in any::<f64>()) {
            let _ = (heat_of_evaporation_at(b, p), excess_enthalpy_of_water_at(b, p));
        }
    }
}
