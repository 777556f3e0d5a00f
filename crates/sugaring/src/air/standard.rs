//! The standard atmosphere: what the pressure is where the weather is average.

use alloc::{format, string::String};

use crate::{
    digits,
    error::Error,
    math,
    relation::{Range, Relation, Source, is_well_above},
    units::{Length, Pressure, Si, Value, table},
};

/// Pressure of the standard atmosphere at a geometric `altitude`.
///
/// ```text
/// p = 101 325 Pa (1 − L H / T_b)^k,  H = r₀ z / (r₀ + z),  k = g₀ M / (R* L) = 5.255876
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | z | `altitude` above sea level | m | −500 to 11 000 |
/// | p | absolute pressure | kPa | 107.478 to 22.699 |
/// | L | lapse rate, 0.0065 | K/m | |
/// | `T_b` | temperature at sea level, 288.15 | K | |
///
/// The weather moves the real pressure by ±2 kPa, water's boiling point by ±0.55 K.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// U.S. Standard Atmosphere 1976, which is ISO 2533 up to 32 km; with its own R\* = 8.31432 J/(mol K).
/// # Examples
/// ```
/// use sugaring::{air, units::*};
/// let pressure = air::pressure_at_altitude(metre(410.0))?;
/// assert_eq!(format!("{:.3}", pressure.get::<kpa>()), "96.496");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{air, units::*};
/// let error = air::pressure_at_altitude(metre(12_000.0)).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "altitude = 12000 m is outside -500 to 11000 m; 12000 ft is 3658 m: write foot(12000)"
/// );
/// ```
pub fn pressure_at_altitude(altitude: Length) -> Result<Pressure, Error> {
    let metre = check_altitude(&PRESSURE_AT_ALTITUDE, 0, altitude)?;
    Ok(Pressure::of_si(pressure_at(metre)))
}

/// Geometric altitude at which the standard atmosphere has `pressure`: the inverse of [`pressure_at_altitude`].
///
/// ```text
/// z = r₀ H / (r₀ − H),  H = (T_b / L) (1 − (p / 101 325 Pa)^(1/k))
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | p | `pressure`, absolute | kPa | 22.6985 to 107.4781 |
/// | z | altitude above sea level | m | 11 000 to −500 |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// U.S. Standard Atmosphere 1976, solved for the altitude.
/// # Examples
/// ```
/// use sugaring::{air, units::*};
/// let altitude = air::altitude_at_pressure(kpa(96.496))?;
/// assert_eq!(format!("{:.0}", altitude.get::<metre>()), "410");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{air, units::*};
/// let error = air::altitude_at_pressure(kpa(0.0)).unwrap_err();
/// assert_eq!(error.to_string(), "pressure = 0 kPa is outside 22.6985 to 107.4781 kPa");
/// ```
pub fn altitude_at_pressure(pressure: Pressure) -> Result<Length, Error> {
    let pascal = ALTITUDE_AT_PRESSURE.check(0, pressure.si())?;
    let geopotential = BASE_TEMPERATURE / LAPSE * (1.0 - math::pow(pascal / SEA_LEVEL, 1.0 / EXPONENT));
    let metre = EARTH * geopotential / (EARTH - geopotential);
    // The limits are rounded outwards, by less than 10 cm.
    Ok(Length::of_si(metre.clamp(LOWEST, HIGHEST)))
}

/// What [`pressure_at_altitude`] covers.
pub static PRESSURE_AT_ALTITUDE: Relation = Relation {
    name: "air::pressure_at_altitude",
    inputs: &[Range::new("altitude", &table::metre, LOWEST, HIGHEST)],
    output: &table::kpa,
    source: SOURCE,
    accuracy: "2 kPa of the real pressure, the weather",
};

/// What [`altitude_at_pressure`] covers.
pub static ALTITUDE_AT_PRESSURE: Relation = Relation {
    name: "air::altitude_at_pressure",
    inputs: &[Range::new("pressure", &table::kpa, 22.6985, 107.4781)],
    output: &table::metre,
    source: SOURCE,
    accuracy: "170 m of the real altitude, the weather",
};

const SOURCE: Source = Source::Published {
    text: "U.S. Standard Atmosphere 1976",
    at: "geometric altitude to geopotential, lowest layer",
};

/// An altitude in m; one that would fit in feet says so.
pub(super) fn check_altitude(relation: &Relation, index: usize, altitude: Length) -> Result<f64, Error> {
    relation.check(index, altitude.si()).map_err(|error| {
        let given = error.value();
        let metre = table::foot.to_si(given);
        match error.range() {
            Some((low, high)) if is_well_above(given, high) && metre >= low && metre <= high => {
                error.with_hint(slip(given, metre))
            }
            _ => error,
        }
    })
}

fn slip(given: f64, metre: f64) -> String {
    let shown = digits::significant(given, 6);
    format!("{shown} ft is {} m: write foot({shown})", digits::significant(metre, 4))
}

/// Pa from geometric m, no range check.
pub(super) fn pressure_at(metre: f64) -> f64 {
    SEA_LEVEL * math::pow(1.0 - drop(metre), EXPONENT)
}

/// `L H / T_b` of a geometric altitude.
pub(super) fn drop(metre: f64) -> f64 {
    LAPSE * (EARTH * metre / (EARTH + metre)) / BASE_TEMPERATURE
}

pub(super) const LOWEST: f64 = -500.0;
const HIGHEST: f64 = 11_000.0;

pub(super) const SEA_LEVEL: f64 = 101_325.0;
pub(super) const LAPSE: f64 = 0.0065;
pub(super) const GRAVITY: f64 = 9.806_65;
pub(super) const EXPONENT: f64 = GRAVITY * 0.028_964_4 / (8.314_32 * LAPSE);
const BASE_TEMPERATURE: f64 = 288.15;
const EARTH: f64 = 6_356_766.0;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    #[test]
    fn exponent_is_the_standards() {
        assert!((EXPONENT - 5.255_876).abs() < 5e-7);
    }

    #[test]
    fn corners_meet() {
        for altitude in [-500.0, 11_000.0] {
            let back = altitude_at_pressure(pressure_at_altitude(metre(altitude)).unwrap()).unwrap();
            assert!((back.get::<metre>() - altitude).abs() < 1e-6);
        }
    }

    proptest! {
        #[test]
        fn never_panics(x in any::<f64>()) {
            let _ = (pressure_at_altitude(metre(x)), altitude_at_pressure(pa(x)));
        }

        #[test]
        fn inverse_meets_forward(x in -500.0..11_000.0_f64, step in 0.1..100.0_f64) {
            let there = pressure_at_altitude(metre(x)).unwrap();
            prop_assert!((altitude_at_pressure(there).unwrap().get::<metre>() - x).abs() < 1e-6);
            prop_assert!(pressure_at(x + step) < there.get::<pa>());
        }
    }
}
