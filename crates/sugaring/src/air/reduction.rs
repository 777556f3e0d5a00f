//! Pressures that were reduced to sea level, and the way back.

use super::{
    standard::{EXPONENT, GRAVITY, LAPSE, SEA_LEVEL, check_altitude, drop},
    station::{ALTITUDE, REPORTED, SETTING, STATION, StationPressure},
};
use crate::{
    error::Error,
    math,
    relation::{Range, Relation, Source},
    units::{Length, Pressure, Si, Temperature, Value, table},
};

/// Altimeter setting that an airport or a home weather station at `altitude` reports under this station pressure: to
/// compare with a report.
///
/// The inverse of [`from_altimeter_setting`](StationPressure::from_altimeter_setting).
///
/// ```text
/// q = (p^(1/k) + (101 325 Pa)^(1/k) L H / T_b)^k
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | p | `station` pressure | kPa | 50 to 110 |
/// | z | `altitude` above sea level; H, k, L and `T_b` as in [`pressure_at_altitude`](super::pressure_at_altitude) | m | −500 to 5000 |
/// | q | altimeter setting | kPa | |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// Smithsonian Meteorological Tables form of the altimeter setting, with the constants of the U.S. Standard
/// Atmosphere 1976.
/// # Examples
/// ```
/// use sugaring::{air::{self, StationPressure}, units::*};
/// let station = StationPressure::measured(kpa(96.5))?;
/// let setting = air::altimeter_setting(station, metre(410.0))?;
/// assert_eq!(format!("{:.2}", setting.get::<in_hg>()), "29.92");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{air::{self, StationPressure}, units::*};
/// let station = StationPressure::measured(kpa(96.5))?;
/// let error = air::altimeter_setting(station, metre(6000.0)).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "altitude = 6000 m is outside -500 to 5000 m; 6000 ft is 1829 m: write foot(6000)"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn altimeter_setting(station: StationPressure, altitude: Length) -> Result<Pressure, Error> {
    let pascal = ALTIMETER_SETTING.check(0, station.si())?;
    let metre = check_altitude(&ALTIMETER_SETTING, 1, altitude)?;
    Ok(Pressure::of_si(setting_at(pascal, metre)))
}

/// Mean sea level pressure that a weather map shows where this is the station pressure.
///
/// The inverse of [`from_sea_level`](StationPressure::from_sea_level).
///
/// ```text
/// p₀ = p exp(g₀ z / (R_d (T_a + L z / 2)))
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | p | `station` pressure | kPa | 50 to 110 |
/// | z | `altitude` above sea level | m | −500 to 5000 |
/// | `T_a` | `air_temperature` at the station, mean of the last 12 hours | K | 223.15 to 323.15, that is −50 to 50 °C |
/// | p₀ | sea level pressure | kPa | |
///
/// Dry air, `R_d` = 287.0528 J/(kg K): humidity changes it by less than 0.05 kPa at 410 m.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// The hydrostatic equation for a column of constant lapse rate, with the constants of the U.S. Standard Atmosphere
/// 1976.
/// # Examples
/// ```
/// use sugaring::{air::{self, StationPressure}, units::*};
/// let station = StationPressure::measured(kpa(96.5))?;
/// let map = air::sea_level_pressure(station, metre(410.0), deg_c(2.0))?;
/// assert_eq!(format!("{:.1}", map.get::<hpa>()), "1015.1");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{air::{self, StationPressure}, units::*};
/// let station = StationPressure::measured(kpa(96.5))?;
/// let error = air::sea_level_pressure(station, metre(410.0), deg_c(60.0)).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "air_temperature = 60 °C is outside -50 to 50 °C; 60 °F is 15.56 °C: write deg_f(60)"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn sea_level_pressure(
    station: StationPressure,
    altitude: Length,
    air_temperature: Temperature,
) -> Result<Pressure, Error> {
    let pascal = SEA_LEVEL_PRESSURE.check(0, station.si())?;
    let metre = check_altitude(&SEA_LEVEL_PRESSURE, 1, altitude)?;
    let kelvin = SEA_LEVEL_PRESSURE.check(2, air_temperature.si())?;
    Ok(Pressure::of_si(pascal * column(metre, kelvin)))
}

/// What [`altimeter_setting`] covers.
pub static ALTIMETER_SETTING: Relation = Relation {
    name: "air::altimeter_setting",
    inputs: &[STATION, ALTITUDE],
    output: &table::kpa,
    source: SETTING_SOURCE,
    accuracy: "0.1 kPa, and 0.012 kPa for each metre of error in the altitude",
};

/// What [`sea_level_pressure`] covers.
pub static SEA_LEVEL_PRESSURE: Relation = Relation {
    name: "air::sea_level_pressure",
    inputs: &[STATION, ALTITUDE, AIR_TEMPERATURE],
    output: &table::kpa,
    source: COLUMN_SOURCE,
    accuracy: "0.2 kPa",
};

/// What [`StationPressure::from_altimeter_setting`] covers.
pub static FROM_ALTIMETER_SETTING: Relation = Relation {
    name: "air::StationPressure::from_altimeter_setting",
    inputs: &[SETTING, ALTITUDE],
    output: &table::kpa,
    source: SETTING_SOURCE,
    accuracy: "0.1 kPa, and 0.012 kPa for each metre of error in the altitude",
};

/// What [`StationPressure::from_sea_level`] covers.
pub static FROM_SEA_LEVEL: Relation = Relation {
    name: "air::StationPressure::from_sea_level",
    inputs: &[REPORTED, ALTITUDE, AIR_TEMPERATURE],
    output: &table::kpa,
    source: COLUMN_SOURCE,
    accuracy: "0.2 kPa",
};

const SETTING_SOURCE: Source = Source::Published {
    text: "Smithsonian Meteorological Tables, constants of the U.S. Standard Atmosphere 1976",
    at: "altimeter setting",
};

const COLUMN_SOURCE: Source = Source::Derived {
    text: "hydrostatic equation of dry air with the lapse rate of the U.S. Standard Atmosphere 1976",
};

const AIR_TEMPERATURE: Range = Range::new("air_temperature", &table::deg_c, -50.0, 50.0);

/// Altimeter setting from the station pressure, Pa and m.
pub(super) fn setting_at(pascal: f64, metre: f64) -> f64 {
    math::pow(math::pow(pascal, 1.0 / EXPONENT) + shift(metre), EXPONENT)
}

/// Station pressure from the altimeter setting, Pa and m.
pub(super) fn station_at(setting: f64, metre: f64) -> f64 {
    math::pow(math::pow(setting, 1.0 / EXPONENT) - shift(metre), EXPONENT)
}

fn shift(metre: f64) -> f64 {
    math::pow(SEA_LEVEL, 1.0 / EXPONENT) * drop(metre)
}

/// Sea level pressure over station pressure, of a column of air that is `kelvin` warm at its top.
pub(super) fn column(metre: f64, kelvin: f64) -> f64 {
    math::exp(GRAVITY * metre / (DRY_AIR * (kelvin + 0.5 * LAPSE * metre)))
}

/// Gas constant of dry air, J/(kg K).
const DRY_AIR: f64 = 287.0528;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn reductions_go_back(kilopascal in 87.0..103.0_f64, altitude in -400.0..3000.0_f64, celsius in -30.0..30.0_f64) {
            let station = StationPressure::from_altimeter_setting(kpa(kilopascal), metre(altitude)).unwrap();
            let setting = altimeter_setting(station, metre(altitude)).unwrap();
            prop_assert!((setting.get::<kpa>() / kilopascal - 1.0).abs() < 1e-12);
            let station = StationPressure::from_sea_level(kpa(kilopascal), metre(altitude), deg_c(celsius)).unwrap();
            let map = sea_level_pressure(station, metre(altitude), deg_c(celsius)).unwrap();
            prop_assert!((map.get::<kpa>() / kilopascal - 1.0).abs() < 1e-12);
        }

        #[test]
        fn never_panics(p in any::<f64>(), z in any::<f64>(), t in any::<f64>()) {
            let _ = StationPressure::from_altimeter_setting(pa(p), metre(z));
            let _ = StationPressure::from_sea_level(pa(p), metre(z), kelvin(t));
            if let Ok(station) = StationPressure::measured(pa(p)) {
                let _ = (altimeter_setting(station, metre(z)), sea_level_pressure(station, metre(z), kelvin(t)));
            }
        }
    }
}
