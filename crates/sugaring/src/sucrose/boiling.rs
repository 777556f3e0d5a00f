//! Boiling: where the vapour pressure of the solution meets that of the air.

use alloc::format;

use super::{
    activity::SOURCE,
    boiling_point::{boiling_at, brix_from_boiling_at, pressure_from_boiling_at},
};
use crate::{
    air::StationPressure,
    digits,
    error::Error,
    relation::{Range, Relation},
    units::{Brix, Pressure, Si, Temperature, TemperatureDifference, Value, table},
    water,
};

/// Temperature at which a sucrose solution boils under the `station` pressure.
///
/// ```text
/// p_sat(T) a_w(w, T) = p
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | w | `brix` / 100 | | 0 to 0.85 |
/// | p | `station` pressure | kPa | 50 to 110 |
/// | T | boiling temperature | °C | 81.3 to 117 |
///
/// Pure sucrose; maple of the same strength boils 0.1 to 0.25 K hotter, late in the season up to 0.4 K, so that a
/// pan stopped by this number stays 0.5 to 1.1 °Bx thin: the hydrometer decides.
///
/// # Errors
/// [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// [`water_activity`](super::water_activity) on the boiling line of IAPWS R7-97(2012). The rise over water's boiling
/// point is known within 0.10 K to 70 °Bx, 0.15 K to 80, 0.35 K to 85, where sources contradict one another by 1 K.
/// # Examples
/// ```
/// use sugaring::{air::StationPressure, sucrose, units::*};
/// let station = StationPressure::measured(kpa(96.5))?;
/// let done = sucrose::boiling_temperature(brix(66.9)?, station)?;
/// assert_eq!(format!("{:.2}", done.get::<deg_c>()), "102.77");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{air::StationPressure, sucrose, units::*};
/// let station = StationPressure::measured(kpa(96.5))?;
/// let error = sucrose::boiling_temperature(brix(92.0)?, station).unwrap_err();
/// assert_eq!(error.to_string(), "brix = 92 °Bx is outside 0 to 85 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn boiling_temperature(brix: Brix, station: StationPressure) -> Result<Temperature, Error> {
    let brix = BOILING_TEMPERATURE.check(0, brix.si())?;
    let pascal = BOILING_TEMPERATURE.check(1, station.si())?;
    let kelvin = boiling_at(brix, pascal).ok_or_else(|| Error::no_convergence("temperature"))?;
    Ok(Temperature::of_si(kelvin))
}

/// How far a sucrose solution boils above pure water at the same `station` pressure.
///
/// ```text
/// ΔT = T(w, p) − T_sat(p)
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | w | `brix` / 100 | | 0 to 0.85 |
/// | p | `station` pressure | kPa | 50 to 110 |
/// | ΔT | rise over water's boiling point, never over 100 °C | K | 0 to 14.1 |
///
/// At 101.325 kPa it is 3.98 K (7.16 °F) at 66.0 °Bx and 4.18 K (7.53 °F) at 66.9 °Bx; it falls by 0.03 K per 5 kPa.
/// Known within 0.12 K (twice the standard uncertainty) for pure sucrose of 65 to 68 °Bx, which is 0.5 °Bx.
///
/// # Errors
/// [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// As [`boiling_temperature`].
/// # Examples
/// ```
/// use sugaring::{air::StationPressure, sucrose, units::*};
/// let station = StationPressure::measured(atm(1.0))?;
/// let rise = sucrose::boiling_point_elevation(brix(66.0)?, station)?;
/// assert_eq!(format!("{:.2} K, {:.2} °F", rise.get::<delta_c>(), rise.get::<delta_f>()), "3.98 K, 7.16 °F");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{air::StationPressure, sucrose, units::*};
/// let station = StationPressure::measured(atm(1.0))?;
/// let error = sucrose::boiling_point_elevation(brix(85.5)?, station).unwrap_err();
/// assert_eq!(error.to_string(), "brix = 85.5 °Bx is outside 0 to 85 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn boiling_point_elevation(brix: Brix, station: StationPressure) -> Result<TemperatureDifference, Error> {
    let brix = BOILING_POINT_ELEVATION.check(0, brix.si())?;
    let pascal = BOILING_POINT_ELEVATION.check(1, station.si())?;
    let kelvin = boiling_at(brix, pascal).ok_or_else(|| Error::no_convergence("temperature"))?;
    Ok(TemperatureDifference::of_si(
        kelvin - water::saturation_temperature_at(pascal),
    ))
}

/// °Brix of the sucrose solution that boils at `temperature` under the `station` pressure: the inverse of
/// [`boiling_temperature`].
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | T | `temperature` of the boiling solution | °C | from water's boiling point to that of 85 °Bx, in all 60 to 132 |
/// | p | `station` pressure | kPa | 50 to 110 |
/// | B | °Brix | °Bx | 0 to 85 |
///
/// Below 10 °Bx the slope is a few hundredths of a kelvin per °Bx: the number is sharp, no thermometer is.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite); [`Inconsistent`](crate::ErrorKind::Inconsistent) where the solution
/// would boil colder than water; [`OutOfRange`](crate::ErrorKind::OutOfRange) above the boiling point of 85 °Bx.
/// # Source
/// As [`boiling_temperature`], solved for °Brix.
/// # Examples
/// ```
/// use sugaring::{air::StationPressure, sucrose, units::*};
/// let station = StationPressure::measured(kpa(96.5))?;
/// let syrup = sucrose::brix_from_boiling(deg_f(217.0), station)?;
/// assert_eq!(format!("{syrup:.1}"), "66.9 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// A temperature in °F, read as °C:
/// ```
/// # use sugaring::{air::StationPressure, sucrose, units::*};
/// # let station = StationPressure::measured(kpa(96.5))?;
/// let error = sucrose::brix_from_boiling(deg_c(217.0), station).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "temperature = 217 °C is outside 60 to 132 °C; 217 °F is 102.8 °C: write deg_f(217)"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
/// Colder than boiling water:
/// ```
/// # use sugaring::{air::StationPressure, sucrose, units::*};
/// # let station = StationPressure::measured(kpa(96.5))?;
/// let error = sucrose::brix_from_boiling(deg_c(97.0), station).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "temperature = 97 °C does not fit station = 96.5 kPa; water boils at 98.61 °C there: check the thermometer \
///      in boiling water and the kind of pressure"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn brix_from_boiling(temperature: Temperature, station: StationPressure) -> Result<Brix, Error> {
    let kelvin = BRIX_FROM_BOILING.check(0, temperature.si())?;
    let pascal = BRIX_FROM_BOILING.check(1, station.si())?;
    let water = water::saturation_temperature_at(pascal);
    if kelvin < water - ROUNDING {
        return Err(colder_than_water(kelvin, pascal, water));
    }
    match brix_from_boiling_at(kelvin, pascal) {
        Some(found) if found <= STRONGEST + ROUNDING => Ok(Brix::trusted(found.min(STRONGEST))),
        _ => {
            let limit = boiling_at(STRONGEST, pascal).ok_or_else(|| Error::no_convergence("temperature"))?;
            let celsius = |kelvin| table::deg_c.from_si(kelvin);
            let (given, low, high) = (celsius(kelvin), celsius(water), celsius(limit));
            let error = Error::out_of_limits("temperature", given, &table::deg_c, low, high);
            Err(error.with_hint("above 85 °Bx the sources contradict one another by 1 K"))
        }
    }
}

#[cold]
fn colder_than_water(kelvin: f64, pascal: f64, water: f64) -> Error {
    let celsius = |kelvin| table::deg_c.from_si(kelvin);
    let (given, boils) = (celsius(kelvin), celsius(water));
    // As many digits as show which is the colder.
    let digits = (4..17).find(|&digits| digits::rounded_to(boils, digits) > digits::rounded_to(given, digits.max(6)));
    let digits = digits.unwrap_or(17);
    let shown = table::deg_c.with_symbol(&digits::significant(given, digits.max(6)));
    let station = table::kpa.show(table::kpa.from_si(pascal));
    let error = Error::inconsistent("temperature", &shown, &format!("station = {station}"))
        .with_value(given, &table::deg_c)
        .with_hint(format!(
            "water boils at {} °C there: check the thermometer in boiling water and the kind of pressure",
            digits::significant(boils, digits)
        ));
    match boiling_at(STRONGEST, pascal) {
        Some(strongest) => error.with_range(boils, celsius(strongest)),
        None => error,
    }
}

/// Absolute pressure under which a sucrose solution boils at `temperature`.
///
/// ```text
/// p = a_w(w, T) p_sat(T)
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | w | `brix` / 100 | | 0 to 0.85 |
/// | T | `temperature` | °C | 60 to 132 |
/// | p | absolute pressure | kPa | 9.5 to 287 |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// As [`boiling_temperature`], in closed form.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let pressure = sucrose::pressure_from_boiling(brix(66.9)?, deg_c(102.77))?;
/// assert_eq!(format!("{:.1}", pressure.get::<kpa>()), "96.5");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::pressure_from_boiling(brix(66.9)?, deg_c(217.0)).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "temperature = 217 °C is outside 60 to 132 °C; 217 °F is 102.8 °C: write deg_f(217)"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn pressure_from_boiling(brix: Brix, temperature: Temperature) -> Result<Pressure, Error> {
    let brix = PRESSURE_FROM_BOILING.check(0, brix.si())?;
    let kelvin = PRESSURE_FROM_BOILING.check(1, temperature.si())?;
    Ok(Pressure::of_si(pressure_from_boiling_at(brix, kelvin)))
}

/// What [`boiling_temperature`] covers.
pub static BOILING_TEMPERATURE: Relation = Relation {
    name: "sucrose::boiling_temperature",
    inputs: &[BRIX, STATION],
    output: &table::deg_c,
    source: SOURCE,
    accuracy: ACCURACY,
};

/// What [`boiling_point_elevation`] covers.
pub static BOILING_POINT_ELEVATION: Relation = Relation {
    name: "sucrose::boiling_point_elevation",
    inputs: &[BRIX, STATION],
    output: &table::delta_c,
    source: SOURCE,
    accuracy: ACCURACY,
};

/// What [`brix_from_boiling`] covers.
pub static BRIX_FROM_BOILING: Relation = Relation {
    name: "sucrose::brix_from_boiling",
    inputs: &[TEMPERATURE, STATION],
    output: &table::deg_brix,
    source: SOURCE,
    accuracy: ACCURACY,
};

/// What [`pressure_from_boiling`] covers.
pub static PRESSURE_FROM_BOILING: Relation = Relation {
    name: "sucrose::pressure_from_boiling",
    inputs: &[BRIX, TEMPERATURE],
    output: &table::kpa,
    source: SOURCE,
    accuracy: ACCURACY,
};

const ACCURACY: &str = "the rise within 0.10 K to 70 °Bx, 0.15 K to 80 °Bx, 0.35 K to 85 °Bx (one source 1.0 K lower)";
const BRIX: Range = Range::new("brix", &table::deg_brix, 0.0, STRONGEST);
const STATION: Range = Range::new("station", &table::kpa, 50.0, 110.0);
const TEMPERATURE: Range = Range::new("temperature", &table::deg_c, 60.0, 132.0);
const STRONGEST: f64 = 85.0;
const ROUNDING: f64 = 1e-9;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{sucrose::activity::SUCROSE_MOLAR_MASS, units::*};
    use proptest::prelude::*;

    fn rise(strength: f64, kilopascal: f64) -> f64 {
        let station = StationPressure::measured(kpa(kilopascal)).unwrap();
        boiling_point_elevation(brix(strength).unwrap(), station)
            .unwrap()
            .get::<delta_c>()
    }

    #[test]
    fn the_most_important_numbers() {
        for (strength, rises) in [
            (65.0, [3.649, 3.679, 3.708, 3.735, 3.761, 3.768]),
            (66.0, [3.855, 3.886, 3.916, 3.945, 3.973, 3.980]),
            (66.5, [3.963, 3.995, 4.026, 4.056, 4.084, 4.091]),
            (66.9, [4.052, 4.085, 4.117, 4.147, 4.176, 4.183]),
            (67.0, [4.075, 4.108, 4.140, 4.170, 4.199, 4.207]),
            (68.0, [4.311, 4.346, 4.379, 4.411, 4.442, 4.450]),
        ] {
            for (kilopascal, value) in [80.0, 85.0, 90.0, 95.0, 100.0, 101.325].into_iter().zip(rises) {
                let found = rise(strength, kilopascal);
                assert!((found - value).abs() < 5.1e-4, "{strength} {kilopascal} {found}");
            }
        }
        for (strength, value) in [
            (2.0, 0.030),
            (5.0, 0.078),
            (10.0, 0.165),
            (20.0, 0.378),
            (30.0, 0.668),
            (40.0, 1.093),
            (50.0, 1.761),
            (55.0, 2.247),
            (60.0, 2.892),
            (70.0, 4.992),
            (75.0, 6.768),
            (80.0, 9.484),
        ] {
            assert!((rise(strength, 101.325) - value).abs() < 5.1e-4, "{strength}");
        }
        assert!((rise(85.0, 101.325) - 13.96).abs() < 5.1e-3);
        let slope = (rise(66.5, 101.325) - rise(65.5, 101.325)) * 1.0;
        assert!((slope - 0.219).abs() < 5.1e-4);
    }

    #[test]
    fn dilute_rise_is_that_of_the_ideal_vapour() {
        // Not the ebullioscopic constant, 0.5129: 1.6 % of non-ideal steam are not in the equation.
        let molality = 1e-4;
        let w = molality * SUCROSE_MOLAR_MASS / (1.0 + molality * SUCROSE_MOLAR_MASS);
        assert!((rise(100.0 * w, 101.325) / molality - 0.50475).abs() < 2e-5);
    }

    #[test]
    fn corners_meet() {
        for kilopascal in [50.0, 110.0] {
            let station = StationPressure::measured(kpa(kilopascal)).unwrap();
            for strength in [0.0, 85.0] {
                let there = boiling_temperature(brix(strength).unwrap(), station).unwrap();
                let back = brix_from_boiling(there, station).unwrap();
                assert!((back.get() - strength).abs() < 1e-9);
            }
        }
    }

    #[test]
    fn beyond_the_range_says_where_it_ends() {
        let station = StationPressure::measured(atm(1.0)).unwrap();
        for celsius in [115.0, 125.0] {
            let error = brix_from_boiling(deg_c(celsius), station).unwrap_err();
            assert_eq!(
                error.to_string(),
                format!(
                    "temperature = {celsius} °C is outside 99.98 to 113.9 °C; \
                     above 85 °Bx the sources contradict one another by 1 K"
                )
            );
        }
    }

    proptest! {
        #[test]
        fn never_panics(b in any::<f64>(), p in any::<f64>(), t in any::<f64>()) {
            let _ = (boiling_at(b, p), brix_from_boiling_at(t, p), pressure_from_boiling_at(b, t));
            if let Ok(strength) = brix(b) {
                let _ = pressure_from_boiling(strength, kelvin(t));
            }
            let station = StationPressure::measured(kpa(96.5)).unwrap();
            let _ = brix_from_boiling(kelvin(t), station);
        }

        #[test]
        fn inverse_meets_forward(strength in 0.5..85.0_f64, kilopascal in 50.0..110.0_f64) {
            let station = StationPressure::measured(kpa(kilopascal)).unwrap();
            let there = boiling_temperature(brix(strength).unwrap(), station).unwrap();
            let back = brix_from_boiling(there, station).unwrap();
            prop_assert!((back.get() - strength).abs() < 1e-8, "{} {}", back, strength);
            let pressure = pressure_from_boiling(brix(strength).unwrap(), there).unwrap();
            prop_assert!((pressure.get::<kpa>() / kilopascal - 1.0).abs() < 1e-12);
        }

        #[test]
        fn weak_solutions_come_back(strength in 0.0..0.5_f64, kilopascal in 50.0..110.0_f64) {
            let station = StationPressure::measured(kpa(kilopascal)).unwrap();
            let there = boiling_temperature(brix(strength).unwrap(), station).unwrap();
            prop_assert!((brix_from_boiling(there, station).unwrap().get() - strength).abs() < 1e-9);
        }
    }
}
