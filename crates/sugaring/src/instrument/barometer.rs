use alloc::{format, string::String};

use super::{correction::Correction, graduation::Graduation};
use crate::{
    air::{StationPressure, altimeter_setting, pressure_at_altitude},
    digits,
    error::Error,
    math,
    relation::{Range, Relation, Source},
    units::{Length, Pressure, Si, Value, table},
};

/// A barometer, as it shows the pressure where it hangs or as it is set to sea level.
///
/// Which of the two it is matters more than anything else about it: 410 m above the sea they are 4.8 kPa apart, 1.4 K of
/// boiling syrup, 5 °Bx.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Barometer {
    /// Where it hangs, m, if it is set to sea level.
    pub(crate) set_at: Option<f64>,
    /// In Pa.
    pub(crate) correction: Correction,
    pub(crate) graduation: Graduation,
}

/// Making it.
impl Barometer {
    /// One that shows the pressure where it hangs, with a standard uncertainty of 0.1 kPa.
    ///
    /// # Source
    /// Common practice, no source, for an aneroid that was set.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::Barometer, units::*};
    /// let station = Barometer::station().truth(hpa(965.0))?;
    /// assert_eq!(station.pressure(), kpa(96.5));
    /// assert_eq!(
    ///     Barometer::station().truth(kpa(965.0)).unwrap_err().to_string(),
    ///     "reading = 965 kPa is outside 50 to 110 kPa; 965 hPa is 96.5 kPa: write hpa(965)",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    #[must_use]
    pub fn station() -> Self {
        Self {
            set_at: None,
            correction: Correction::Offset(0.0),
            graduation: Graduation::known_to(SET),
        }
    }

    /// One that was set by a weather report, as most at home are, and hangs at `altitude`; 0.1 kPa.
    ///
    /// # Errors
    /// Out of range (−500 to 5000 m) or not finite.
    /// # Source
    /// [`StationPressure::from_altimeter_setting`]; 0.1 kPa, common practice, no source.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::Barometer, units::*};
    /// let parlour = Barometer::set_to_sea_level(metre(410.0))?;
    /// let station = parlour.truth(in_hg(30.02))?;
    /// assert_eq!(format!("{:.2}", station.pressure().get::<kpa>()), "96.82");
    /// assert_eq!(format!("{:.2}", parlour.reading(station)?.get::<in_hg>()), "30.02");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn set_to_sea_level(altitude: Length) -> Result<Self, Error> {
        Ok(Self {
            set_at: Some(ALTITUDE.check(altitude.si())?),
            ..Self::station()
        })
    }

    /// Known to show this much too high.
    ///
    /// # Errors
    /// Out of range (−15 to 15 kPa) or not finite.
    pub fn with_offset(mut self, offset: Pressure) -> Result<Self, Error> {
        self.correction = Correction::Offset(OFFSET.check(offset.si())?);
        Ok(self)
    }

    /// Read to steps of this size: adds step/√12 to the uncertainty.
    ///
    /// # Errors
    /// Out of range (0 to 15 kPa) or not finite.
    pub fn with_resolution(mut self, step: Pressure) -> Result<Self, Error> {
        self.graduation.resolution = RESOLUTION.check(step.si())?;
        Ok(self)
    }

    /// With this standard uncertainty.
    ///
    /// # Errors
    /// Out of range (0 to 15 kPa) or not finite.
    pub fn with_uncertainty(mut self, uncertainty: Pressure) -> Result<Self, Error> {
        self.graduation.uncertainty = UNCERTAINTY.check(uncertainty.si())?;
        Ok(self)
    }

    /// This one, which showed `reading` where the pressure was `station`: by boiling water, say.
    ///
    /// # Errors
    /// Out of range, where it is more than 15 kPa off, or not finite; a barometer that is further off may be set to sea
    /// level.
    /// # Examples
    /// ```
    /// use sugaring::{air::StationPressure, instrument::Barometer, units::*};
    /// let boiling = StationPressure::from_boiling_water(deg_c(98.6))?;
    /// let set = Barometer::station().zeroed(kpa(97.1), boiling)?;
    /// assert_eq!(format!("{:.2}", set.truth(kpa(97.1))?.pressure().get::<kpa>()), "96.45");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn zeroed(&self, reading: Pressure, station: StationPressure) -> Result<Self, Error> {
        let right = Self {
            correction: Correction::Offset(0.0),
            ..*self
        };
        // A slip is met as such before it is called an offset.
        right.truth(reading)?;
        let shown = reading.si();
        self.with_offset(Pressure::of_si(shown - right.reading(station)?.si()))
    }
}

/// Reading it.
impl Barometer {
    /// The station pressure when it shows `reading`, with its uncertainty.
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | r | reading | kPa | 50 to 110, and a station pressure of 50 to 110 |
    ///
    /// Of one that is set to sea level the uncertainty is smaller by as much as the air is thinner where it hangs.
    ///
    /// # Errors
    /// Out of range or not finite.
    /// # Source
    /// [`StationPressure::measured`], [`StationPressure::from_altimeter_setting`].
    /// # Examples
    /// ```
    /// use sugaring::{instrument::Barometer, units::*};
    /// let aneroid = Barometer::station().with_offset(hpa(4.0))?.with_resolution(hpa(1.0))?;
    /// let station = aneroid.truth(hpa(969.0))?;
    /// assert_eq!(station.pressure(), kpa(96.5));
    /// assert_eq!(format!("{:.0}", station.uncertainty().get::<pa>()), "104");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// What hangs at 3000 m and shows so little was never set to sea level:
    /// ```
    /// # use sugaring::{instrument::Barometer, units::*};
    /// let error = Barometer::set_to_sea_level(metre(3000.0))?.truth(kpa(70.0)).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "reading = 70 kPa is outside 85 to 110 kPa",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn truth(&self, reading: Pressure) -> Result<StationPressure, Error> {
        // The kind of pressure checks the reading as it is, and knows the usual slips.
        self.meant(reading)?;
        let right = Pressure::of_si(self.correction.corrected(reading.si()));
        let station = self.meant(right)?;
        let slope = self.set_at.map_or(1.0, |altitude| thinner(right, altitude));
        let uncertainty = Pressure::of_si(slope * math::sqrt(self.graduation.squares()));
        Ok(station.with_uncertainty(uncertainty))
    }

    /// What a right one means by `reading`.
    fn meant(&self, reading: Pressure) -> Result<StationPressure, Error> {
        let made = match self.set_at {
            None => StationPressure::measured(reading),
            Some(altitude) => StationPressure::from_altimeter_setting(reading, Length::of_si(altitude)),
        };
        made.map_err(|error| error.named("reading"))
    }

    /// The usual slip that would explain a surprising reading at `altitude`: one kind of barometer taken for the other.
    ///
    /// Above 250 m a station pressure of more than 100 kPa is almost surely reduced to sea level; and where the weather
    /// reports would be below 98 kPa, what reads as the standard atmosphere has there is almost surely not.
    ///
    /// ```
    /// use sugaring::{instrument::Barometer, units::*};
    /// assert_eq!(
    ///     Barometer::station().usual_slip(in_hg(29.92), metre(410.0)).unwrap(),
    ///     "101.32 kPa at 410 m looks like a pressure set to sea level, which means 96.49 kPa there",
    /// );
    /// let parlour = Barometer::set_to_sea_level(metre(410.0))?;
    /// assert_eq!(
    ///     parlour.usual_slip(hpa(965.0), metre(410.0)).unwrap(),
    ///     "96.5 kPa at 410 m looks like the pressure there, not one set to sea level",
    /// );
    /// assert!(parlour.usual_slip(hpa(1013.0), metre(410.0)).is_none());
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    #[must_use]
    pub fn usual_slip(&self, reading: Pressure, altitude: Length) -> Option<String> {
        let pascal = self.correction.corrected(reading.si());
        let standard = pressure_at_altitude(altitude).ok()?.si();
        if !(altitude.si() > HIGH && pascal.is_finite()) {
            return None;
        }
        let show = |si| digits::significant(table::kpa.from_si(si), 5);
        let shown = format!("{} kPa at {}", show(pascal), table::metre.show(altitude.si()));
        match self.set_at {
            None if pascal > REPORTED => {
                let meant = StationPressure::from_altimeter_setting(Pressure::of_si(pascal), altitude).ok()?;
                let meant = digits::significant(table::kpa.from_si(meant.pressure().si()), 4);
                Some(format!(
                    "{shown} looks like a pressure set to sea level, which means {meant} kPa there"
                ))
            }
            Some(_) if pascal < LOWEST_REPORTED && (pascal - standard).abs() < WEATHER => Some(format!(
                "{shown} looks like the pressure there, not one set to sea level"
            )),
            _ => None,
        }
    }

    /// What it shows where the pressure is `station`.
    ///
    /// # Errors
    /// Out of range.
    /// # Source
    /// As [`Barometer::truth`], of which it is the inverse.
    /// # Examples
    /// ```
    /// use sugaring::{air::StationPressure, instrument::Barometer, units::*};
    /// let station = StationPressure::from_boiling_water(deg_c(98.6))?;
    /// let parlour = Barometer::set_to_sea_level(metre(410.0))?;
    /// assert_eq!(format!("{:.2}", parlour.reading(station)?.get::<kpa>()), "101.28");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn reading(&self, station: StationPressure) -> Result<Pressure, Error> {
        let right = match self.set_at {
            None => station.pressure(),
            Some(altitude) => altimeter_setting(station, Length::of_si(altitude))?,
        };
        Ok(Pressure::of_si(self.correction.shown(right.si())))
    }
}

/// By how much a station pressure rises with what is set to sea level at `altitude`, m.
fn thinner(setting: Pressure, altitude: f64) -> f64 {
    const STEP: f64 = 100.0;
    let station = |away| {
        let setting = Pressure::of_si(setting.si() + away);
        StationPressure::from_altimeter_setting(setting, Length::of_si(altitude)).map(|made| made.pressure().si())
    };
    match (station(-STEP), station(STEP)) {
        (Ok(low), Ok(high)) => (high - low) / (2.0 * STEP),
        // At the end of a range.
        _ => 1.0,
    }
}

/// What [`Barometer::truth`] covers.
pub static BAROMETER: Relation = Relation {
    name: "instrument::Barometer",
    inputs: &[Range::new("reading", &table::kpa, 50.0, 110.0)],
    output: &table::kpa,
    source: Source::Derived {
        text: "the kinds of station pressure, and the check of the instrument",
    },
    accuracy: "the instrument's own",
};

const ALTITUDE: Range = Range::new("altitude", &table::metre, -500.0, 5000.0);
const OFFSET: Range = Range::new("offset", &table::kpa, -15.0, 15.0);
const RESOLUTION: Range = Range::new("resolution", &table::kpa, 0.0, 15.0);
const UNCERTAINTY: Range = Range::new("uncertainty", &table::kpa, 0.0, 15.0);

/// Above it, m, a station pressure does not reach what weather reports say, Pa; judgement.
const HIGH: f64 = 250.0;
const REPORTED: f64 = 100_000.0;
/// Weather reports are seldom lower, Pa; judgement.
const LOWEST_REPORTED: f64 = 98_000.0;
/// How far the weather takes the pressure from the standard atmosphere's, Pa; common practice.
const WEATHER: f64 = 2000.0;
/// Standard uncertainty of one that was set, Pa; common practice.
const SET: f64 = 100.0;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{kpa, metre};
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn reading_and_truth_are_inverse(p in 80.0..105.0_f64, z in -300.0..1000.0_f64, offset in -3.0..3.0_f64) {
            let station = StationPressure::measured(kpa(p)).unwrap();
            for barometer in [Barometer::station(), Barometer::set_to_sea_level(metre(z)).unwrap()] {
                let barometer = barometer.with_offset(kpa(offset)).unwrap();
                let shown = barometer.reading(station).unwrap();
                if let Ok(truth) = barometer.truth(shown) {
                    prop_assert!((truth.pressure().si() - 1000.0 * p).abs() < 1e-6);
                    let right = Barometer { correction: Correction::Offset(0.0), ..barometer };
                    // What lies below 85 kPa is no altimeter setting.
                    let Ok(zeroed) = right.zeroed(shown, station) else { continue };
                    prop_assert!((zeroed.reading(station).unwrap().si() - shown.si()).abs() < 1e-6);
                }
            }
        }

        #[test]
        fn any_number_is_taken(a in any::<f64>(), b in any::<f64>()) {
            let _ = (Barometer::station().truth(kpa(a)), Barometer::set_to_sea_level(metre(a)).map(|m| m.truth(kpa(b))));
            let _ = (Barometer::station().with_offset(kpa(a)), Barometer::station().with_resolution(kpa(a)));
            let _ = Barometer::station().with_uncertainty(kpa(a));
        }
    }
}
