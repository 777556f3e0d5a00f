//! The pressure in the sugarhouse and how it was come by.

use alloc::{format, string::String};

use super::{
    origin::Origin,
    reduction::{FROM_ALTIMETER_SETTING, FROM_SEA_LEVEL, column, setting_at, station_at},
    standard::{LOWEST, check_altitude, pressure_at},
};
use crate::{
    digits,
    error::Error,
    relation::{Range, Relation, Source},
    units::{Dimension, GaugePressure, Length, Pressure, Si, Temperature, Value, table},
    water,
};

/// Absolute pressure of the air where the pan stands, 50 to 110 kPa, made by naming the kind of reading.
///
/// Three different numbers are called a barometer's. The station pressure is the one that boils water; the airport's
/// altimeter setting and the weather map's sea level pressure are reduced to sea level, and taken for it at 410 m they
/// put the finish 1.4 K too high, which is 5 °Bx.
///
/// Best is to boil plain water beside the pan and to use [`from_boiling_water`](Self::from_boiling_water): it
/// measures the pressure where it counts and takes out the thermometer's own error.
///
/// ```
/// use sugaring::{air::StationPressure, units::*};
/// let barometer = StationPressure::measured(kpa(96.5))?;
/// let airport = StationPressure::from_altimeter_setting(in_hg(29.92), metre(410.0))?;
/// assert!((barometer.pressure() - airport.pressure()).get::<kpa>().abs() < 0.01);
/// # Ok::<(), sugaring::Error>(())
/// ```
/// A gauge's zero is no barometer, and neither is a bare number:
/// ```compile_fail,E0308
/// use sugaring::{air::StationPressure, units::*};
/// StationPressure::measured(bar_gauge(0.97));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StationPressure {
    pascal: f64,
    uncertainty: f64,
    origin: Origin,
}

/// By kind of reading.
impl StationPressure {
    /// From a barometer in the sugarhouse that is not adjusted to sea level; standard uncertainty 0.1 kPa.
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange) outside 50 to
    /// 110 kPa; the hint names the unit that fits.
    /// # Examples
    /// ```
    /// use sugaring::{air::StationPressure, units::*};
    /// let station = StationPressure::measured(hpa(965.0))?;
    /// assert_eq!(station.pressure(), kpa(96.5));
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{air::StationPressure, units::*};
    /// let error = StationPressure::measured(kpa(965.0)).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "pressure = 965 kPa is outside 50 to 110 kPa; 965 hPa is 96.5 kPa: write hpa(965)"
    /// );
    /// ```
    pub fn measured(pressure: Pressure) -> Result<Self, Error> {
        check_pressure(&STATION_PRESSURE, pressure).map(|pascal| Self::new(pascal, Origin::Measured))
    }

    /// From the altimeter setting that an airport reports (`A2992`, `Q1013`), to which most home weather stations
    /// are set; standard uncertainty 0.1 kPa.
    ///
    /// ```text
    /// p = (q^(1/k) − (101 325 Pa)^(1/k) L H / T_b)^k
    /// ```
    /// H, k, L and `T_b` as in [`pressure_at_altitude`](super::pressure_at_altitude).
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | q | `setting` | kPa | 85 to 110 |
    /// | z | `altitude` above sea level | m | −500 to 5000 |
    /// | p | station pressure | kPa | 50 to 110 |
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange), also where the
    /// station pressure would lie outside 50 to 110 kPa.
    /// # Source
    /// Smithsonian Meteorological Tables form of the altimeter setting, with the constants of the U.S. Standard
    /// Atmosphere 1976.
    /// # Examples
    /// ```
    /// use sugaring::{air::StationPressure, units::*};
    /// let station = StationPressure::from_altimeter_setting(in_hg(30.02), metre(410.0))?;
    /// assert_eq!(format!("{:.2}", station.pressure().get::<kpa>()), "96.82");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{air::StationPressure, units::*};
    /// let error = StationPressure::from_altimeter_setting(kpa(30.02), metre(410.0)).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "setting = 30.02 kPa is outside 85 to 110 kPa; 30.02 inHg is 101.7 kPa: write in_hg(30.02)"
    /// );
    /// ```
    pub fn from_altimeter_setting(setting: Pressure, altitude: Length) -> Result<Self, Error> {
        let reported = check_pressure(&FROM_ALTIMETER_SETTING, setting)?;
        let metre = check_altitude(&FROM_ALTIMETER_SETTING, 1, altitude)?;
        let at = |station| setting_at(station, metre);
        Self::reduced(
            "setting",
            reported,
            station_at(reported, metre),
            at,
            Origin::AltimeterSetting,
        )
    }

    /// From the mean sea level `pressure` of a weather map or forecast; standard uncertainty 0.2 kPa.
    ///
    /// ```text
    /// p = p₀ exp(−g₀ z / (R_d (T_a + L z / 2)))
    /// ```
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | p₀ | `pressure` at sea level | kPa | 85 to 110 |
    /// | z | `altitude` above sea level | m | −500 to 5000 |
    /// | `T_a` | `air_temperature` at the station, mean of the last 12 hours | K | 223.15 to 323.15, that is −50 to 50 °C |
    /// | p | station pressure | kPa | 50 to 110 |
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange), also where the
    /// station pressure would lie outside 50 to 110 kPa.
    /// # Source
    /// The hydrostatic equation of dry air with the lapse rate of the U.S. Standard Atmosphere 1976.
    /// # Examples
    /// ```
    /// use sugaring::{air::StationPressure, units::*};
    /// let station = StationPressure::from_sea_level(hpa(1015.1), metre(410.0), deg_c(2.0))?;
    /// assert_eq!(format!("{:.1}", station.pressure().get::<kpa>()), "96.5");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{air::StationPressure, units::*};
    /// let error = StationPressure::from_sea_level(hpa(880.0), metre(5000.0), deg_c(2.0)).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "pressure = 88 kPa is outside 89.86 to 110 kPa; it would mean 48.97 kPa there"
    /// );
    /// ```
    pub fn from_sea_level(pressure: Pressure, altitude: Length, air_temperature: Temperature) -> Result<Self, Error> {
        let reported = check_pressure(&FROM_SEA_LEVEL, pressure)?;
        let metre = check_altitude(&FROM_SEA_LEVEL, 1, altitude)?;
        let factor = column(metre, FROM_SEA_LEVEL.check(2, air_temperature.si())?);
        let at = |station| station * factor;
        Self::reduced("pressure", reported, reported / factor, at, Origin::SeaLevel)
    }

    /// From the altitude alone, by the standard atmosphere; the weather stays unknown, so the standard uncertainty is
    /// 0.8 kPa: never enough to finish syrup by thermometer.
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange) outside −500 to
    /// 5000 m.
    /// # Source
    /// U.S. Standard Atmosphere 1976; the uncertainty is common practice without a source.
    /// # Examples
    /// ```
    /// use sugaring::{air::StationPressure, units::*};
    /// let station = StationPressure::from_altitude(metre(410.0))?;
    /// assert_eq!(format!("{:.3}", station.pressure().get::<kpa>()), "96.496");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{air::StationPressure, units::*};
    /// let error = StationPressure::from_altitude(metre(-600.0)).unwrap_err();
    /// assert_eq!(error.to_string(), "altitude = -600 m is outside -500 to 5000 m");
    /// ```
    pub fn from_altitude(altitude: Length) -> Result<Self, Error> {
        let metre = check_altitude(&FROM_ALTITUDE, 0, altitude)?;
        Ok(Self::new(pressure_at(metre), Origin::Altitude))
    }

    /// From the `temperature` at which plain water boils there and now, by the thermometer that will be used: its own
    /// error then cancels. Standard uncertainty 0.35 kPa, which is 0.1 K of scatter.
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange) where water does
    /// not boil so at 50 to 110 kPa.
    /// # Source
    /// IAPWS R7-97(2012), equation 30.
    /// # Examples
    /// ```
    /// use sugaring::{air::StationPressure, units::*};
    /// let station = StationPressure::from_boiling_water(deg_f(209.5))?;
    /// assert_eq!(format!("{:.1}", station.pressure().get::<kpa>()), "96.5");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{air::StationPressure, units::*};
    /// let error = StationPressure::from_boiling_water(deg_c(209.5)).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "temperature = 209.5 °C is outside 81.3167 to 102.2923 °C; 209.5 °F is 98.61 °C: write deg_f(209.5)"
    /// );
    /// ```
    pub fn from_boiling_water(temperature: Temperature) -> Result<Self, Error> {
        let kelvin = FROM_BOILING_WATER.check(0, temperature.si())?;
        // The limits of the temperature are rounded outwards, by less than 0.2 Pa.
        let (lowest, highest) = STATION.limits_si();
        let pascal = water::saturation_pressure_at(kelvin).clamp(lowest, highest);
        Ok(Self::new(pascal, Origin::BoilingWater))
    }
}

/// Reading it.
impl StationPressure {
    /// The absolute pressure.
    #[must_use]
    pub fn pressure(&self) -> Pressure {
        Pressure::of_si(self.pascal)
    }

    /// Its standard uncertainty: that of its [`origin`](Self::origin), or what [`with_uncertainty`](Self::with_uncertainty) said.
    #[must_use]
    pub fn uncertainty(&self) -> Pressure {
        Pressure::of_si(self.uncertainty)
    }

    /// How it was come by.
    #[must_use]
    pub fn origin(&self) -> Origin {
        self.origin
    }

    /// The same pressure, known to the standard uncertainty `uncertainty`.
    ///
    /// ```
    /// use sugaring::{air::StationPressure, units::*};
    /// let station = StationPressure::measured(kpa(96.5))?.with_uncertainty(pa(20.0));
    /// assert_eq!(station.uncertainty(), pa(20.0));
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    #[must_use]
    pub fn with_uncertainty(self, uncertainty: Pressure) -> Self {
        Self {
            uncertainty: uncertainty.si(),
            ..self
        }
    }

    /// The same pressure, come by in another way: for a station pressure that is read back from data.
    ///
    /// ```
    /// use sugaring::{air::{Origin, StationPressure}, units::*};
    /// let station = StationPressure::measured(kpa(96.5))?.with_origin(Origin::Altitude);
    /// assert_eq!((station.origin(), station.uncertainty()), (Origin::Altitude, pa(100.0)));
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    #[must_use]
    pub fn with_origin(self, origin: Origin) -> Self {
        Self { origin, ..self }
    }

    const fn new(pascal: f64, origin: Origin) -> Self {
        Self {
            pascal,
            uncertainty: origin.uncertainty(),
            origin,
        }
    }

    /// A `reported` pressure that means `station` here; `at` turns a station pressure into a reported one.
    fn reduced(
        argument: &'static str,
        reported: f64,
        station: f64,
        at: impl Fn(f64) -> f64,
        origin: Origin,
    ) -> Result<Self, Error> {
        if let Ok(pascal) = STATION.check(station) {
            return Ok(Self::new(pascal, origin));
        }
        let limit = |side: f64| table::kpa.from_si(at(table::kpa.to_si(side)));
        let (low, high) = (
            limit(STATION.low).max(REPORTED.low),
            limit(STATION.high).min(REPORTED.high),
        );
        let meant = digits::significant(table::kpa.from_si(station), 4);
        let error = Error::out_of_limits(argument, table::kpa.from_si(reported), &table::kpa, low, high);
        Err(error.with_hint(format!("it would mean {meant} kPa there")))
    }
}

impl Value for StationPressure {
    const DIMENSION: Dimension = Dimension::Pressure;

    fn from_si(si: f64) -> Result<Self, Error> {
        Self::measured(Pressure::of_si(si))
    }

    fn si(self) -> f64 {
        self.pascal
    }
}

impl GaugePressure {
    /// The absolute pressure, where the air has `station` pressure.
    ///
    /// ```
    /// use sugaring::{air::StationPressure, units::*};
    /// let station = StationPressure::measured(kpa(96.5))?;
    /// assert_eq!(bar_gauge(7.6).absolute(station), kpa(856.5));
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    #[must_use]
    pub fn absolute(self, station: StationPressure) -> Pressure {
        Pressure::of_si(self.si() + station.pascal)
    }
}

/// What [`StationPressure::measured`] admits.
pub static STATION_PRESSURE: Relation = Relation {
    name: "air::StationPressure::measured",
    inputs: &[Range::new("pressure", &table::kpa, 50.0, 110.0)],
    output: &table::kpa,
    source: Source::Derived {
        text: "from 5500 m up in a low to a deep high at sea level",
    },
    accuracy: "0.1 kPa where nobody says better",
};

/// What [`StationPressure::from_altitude`] covers.
pub static FROM_ALTITUDE: Relation = Relation {
    name: "air::StationPressure::from_altitude",
    inputs: &[ALTITUDE],
    output: &table::kpa,
    source: Source::Published {
        text: "U.S. Standard Atmosphere 1976",
        at: "geometric altitude to geopotential, lowest layer",
    },
    accuracy: "0.8 kPa (common practice, no source)",
};

/// What [`StationPressure::from_boiling_water`] covers.
pub static FROM_BOILING_WATER: Relation = Relation {
    name: "air::StationPressure::from_boiling_water",
    inputs: &[Range::new("temperature", &table::deg_c, 81.3167, 102.2923)],
    output: &table::kpa,
    source: Source::Published {
        text: "IAPWS R7-97(2012)",
        at: "equation 30, table 34",
    },
    accuracy: "3.5 kPa for each kelvin of scatter of the thermometer",
};

/// Station pressures worth offering.
pub(crate) const STATION: Range = Range::new("station", &table::kpa, 50.0, 110.0);
pub(super) const ALTITUDE: Range = Range::new("altitude", &table::metre, LOWEST, 5000.0);
/// Pressures at sea level: the lowest and highest ever seen are 87 and 108.5 kPa (from memory).
pub(super) const REPORTED: Range = Range::new("pressure", &table::kpa, 85.0, 110.0);
pub(super) const SETTING: Range = Range::new("setting", &table::kpa, 85.0, 110.0);

/// A pressure in Pa; a number that would fit in another unit says so.
fn check_pressure(relation: &Relation, pressure: Pressure) -> Result<f64, Error> {
    relation.check(0, pressure.si()).map_err(|error| {
        let given = error.value();
        match error.range().and_then(|(low, high)| slip(given, low, high)) {
            Some(hint) => error.with_hint(hint),
            None => error,
        }
    })
}

fn slip(given: f64, low: f64, high: f64) -> Option<String> {
    [
        &table::hpa,
        &table::pa,
        &table::in_hg,
        &table::mm_hg,
        &table::psi,
        &table::bar,
        &table::atm,
    ]
    .into_iter()
    .find_map(|unit| {
        let meant = table::kpa.from_si(unit.to_si(given));
        let shown = digits::significant(given, 6);
        (meant >= low && meant <= high).then(|| {
            format!(
                "{shown} {} is {} kPa: write {}({shown})",
                unit.symbol,
                digits::significant(meant, 4),
                unit.word
            )
        })
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    #[test]
    fn units_that_fit_are_named() {
        let text = |p| StationPressure::measured(p).unwrap_err().to_string();
        assert_eq!(
            text(kpa(28.5)),
            "pressure = 28.5 kPa is outside 50 to 110 kPa; 28.5 inHg is 96.51 kPa: write in_hg(28.5)"
        );
        assert_eq!(
            text(kpa(14.0)),
            "pressure = 14 kPa is outside 50 to 110 kPa; 14 psi is 96.53 kPa: write psi(14)"
        );
        assert_eq!(
            text(kpa(0.965)),
            "pressure = 0.965 kPa is outside 50 to 110 kPa; 0.965 bar is 96.5 kPa: write bar(0.965)"
        );
        assert_eq!(text(kpa(0.0)), "pressure = 0 kPa is outside 50 to 110 kPa");
        assert_eq!(text(pa(f64::NAN)), "pressure = NaN is not a finite number");
    }

    #[test]
    fn a_reported_number_is_not_the_stations() {
        // Taken as it stands at 410 m it would boil water 1.36 K too hot.
        let taken = water::saturation_temperature_at(101_325.0);
        let meant = StationPressure::from_altimeter_setting(kpa(101.325), metre(410.0)).unwrap();
        let difference = taken - water::saturation_temperature_at(meant.si());
        assert!((difference - 1.36).abs() < 0.005);
        assert_eq!(meant.origin().name(), "altimeter_setting");
    }

    #[test]
    fn corners_are_inside() {
        for side in [50.0, 110.0] {
            let station = StationPressure::measured(kpa(side)).unwrap();
            let boiling = water::saturation_temperature(station.pressure()).unwrap();
            let back = StationPressure::from_boiling_water(boiling);
            assert!(back.is_ok_and(|back| (back.si() / station.si() - 1.0).abs() < 1e-9));
        }
        for altitude in [-500.0, 5000.0] {
            assert!(StationPressure::from_altitude(metre(altitude)).is_ok());
            assert!(StationPressure::from_altitude(foot(altitude / 0.3048)).is_ok());
        }
    }

    proptest! {
        #[test]
        fn whatever_is_made_is_a_station_pressure(p in 40.0..130.0_f64, z in -600.0..6000.0_f64, t in -60.0..120.0_f64) {
            let made = [
                StationPressure::measured(kpa(p)),
                StationPressure::from_altimeter_setting(kpa(p), metre(z)),
                StationPressure::from_sea_level(kpa(p), metre(z), deg_c(t)),
                StationPressure::from_altitude(metre(z)),
                StationPressure::from_boiling_water(deg_c(t)),
            ];
            for station in made.into_iter().flatten() {
                prop_assert!(StationPressure::from_si(station.si()).is_ok());
            }
        }
    }
}
