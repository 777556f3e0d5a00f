use super::{
    correction::{Correction, Point},
    graduation::Graduation,
};
use crate::{
    air::StationPressure,
    digits,
    error::Error,
    math,
    relation::{Range, Relation, Source},
    uncertainty::Line,
    units::{Measured, PerKelvin, Si, Temperature, TemperatureDifference, Value, measured, table},
    water::{saturation_temperature, saturation_temperature_at},
};

/// A thermometer in the pan, in the sap, or in the pail.
///
/// The whole sensitive length stands in the liquid, 50 to 75 mm of a dial's stem; what stands out of a glass one is
/// [`with_emergent_stem`](Self::with_emergent_stem).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Thermometer {
    /// What is added to a reading, K over °C, before anything else.
    pub(crate) line: Option<Line>,
    pub(crate) correction: Correction,
    pub(crate) stem: Option<Stem>,
    /// In K.
    pub(crate) graduation: Graduation,
}

/// The part of a liquid-in-glass thermometer that is not in the liquid.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Stem {
    /// Degrees of the scale outside, K.
    pub(crate) outside: f64,
    /// Mean temperature of that column, K.
    pub(crate) temperature: f64,
    /// Apparent expansion of its liquid in glass, 1/K.
    pub(crate) expansion: f64,
}

/// Making it.
impl Thermometer {
    /// One that nobody tested: a standard uncertainty of 0.5 K.
    ///
    /// # Source
    /// Common practice, no source, for a digital probe; a dial of ±1 % of its span is worse, ±1.4 K of 0 to 250 °F.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::Thermometer, units::*};
    /// let probe = Thermometer::plain().with_offset(delta_c(0.3))?;
    /// assert_eq!(format!("{:.1}", probe.truth(deg_c(99.0))?.value.get::<deg_c>()), "98.7");
    /// assert_eq!(
    ///     probe.truth(deg_c(217.0)).unwrap_err().to_string(),
    ///     "reading = 217 °C is outside -30 to 150 °C; 217 °F is 102.8 °C: write deg_f(217)",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    #[must_use]
    pub fn plain() -> Self {
        Self {
            line: None,
            correction: Correction::Offset(0.0),
            stem: None,
            graduation: Graduation::known_to(UNTESTED),
        }
    }

    /// One that showed `reading` in plain boiling water, where the air has the pressure `station`: its offset of today.
    ///
    /// o = r − T(P), T the boiling temperature of water
    ///
    /// A finish that is read on it as so much above *its* boiling water needs no barometer: the offset and the pressure
    /// cancel. The standard uncertainty is 0.25 K, and what the pressure's own makes of it.
    ///
    /// # Errors
    /// Out of range, where it is more than 15 K off or the pressure's uncertainty negative or above 15 kPa, or not finite.
    /// # Source
    /// [`saturation_temperature`]; 0.2 to 0.3 K, common practice, no source.
    /// # Examples
    /// ```
    /// use sugaring::{air::StationPressure, instrument::Thermometer, units::*};
    /// let air = StationPressure::measured(kpa(96.5))?;
    /// let dial = Thermometer::zeroed_in_boiling_water(deg_f(211.0), air)?;
    /// assert_eq!(format!("{:.1}", dial.truth(deg_f(218.5))?.value.get::<deg_f>()), "217.0");
    /// assert_eq!(
    ///     Thermometer::zeroed_in_boiling_water(deg_c(211.0), air).unwrap_err().to_string(),
    ///     "reading = 211 °C is outside 83.61 to 113.61 °C; 211 °F is 99.44 °C: write deg_f(211)",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn zeroed_in_boiling_water(reading: Temperature, station: StationPressure) -> Result<Self, Error> {
        let (boiling, spread) = boiling(station)?;
        let shown = near("reading", reading, boiling)?;
        Ok(Self {
            line: None,
            correction: Correction::Offset(shown - boiling),
            stem: None,
            graduation: Graduation::known_to(math::sqrt(ZEROED * ZEROED + spread * spread)),
        })
    }

    /// One that showed `ice` in melting ice and `boiling` in plain boiling water, where the air has the pressure
    /// `station`.
    ///
    /// t = (r − r₀) T(P) / (r₁ − r₀), all in °C
    ///
    /// # Errors
    /// Out of range, where it is more than 15 K off at either point or the pressure's uncertainty negative or above
    /// 15 kPa, or not finite.
    /// # Source
    /// Ice of pure water in water melts at 0.00 °C; [`saturation_temperature`].
    /// # Examples
    /// ```
    /// use sugaring::{air::StationPressure, instrument::Thermometer, units::*};
    /// let air = StationPressure::measured(kpa(96.5))?;
    /// let probe = Thermometer::two_point(deg_c(0.4), deg_c(99.4), air)?;
    /// assert_eq!(format!("{:.2}", probe.truth(deg_c(50.0))?.value.get::<deg_c>()), "49.41");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn two_point(ice: Temperature, boiling: Temperature, station: StationPressure) -> Result<Self, Error> {
        let (boils_at, spread) = self::boiling(station)?;
        let low = Point {
            shown: near("ice", ice, ICE)?,
            expected: ICE,
        };
        let high = Point {
            shown: near("boiling", boiling, boils_at)?,
            expected: boils_at,
        };
        Ok(Self {
            line: None,
            correction: Correction::TwoPoint([low, high]),
            stem: None,
            graduation: Graduation::known_to(math::sqrt(ZEROED * ZEROED + spread * spread)),
        })
    }

    /// One that was compared at three points or more: `line` is the correction to be added, in kelvin, over its reading
    /// in °C, by [`line_fit`](crate::uncertainty::line_fit).
    ///
    /// t = r + a + b (r − x₀)
    ///
    /// The standard uncertainty is that of the line at the reading, which grows away from the points, and the scatter of a
    /// single reading about it; [`with_uncertainty`](Self::with_uncertainty) replaces the scatter.
    ///
    /// # Errors
    /// Out of range, where the line corrects by more than 15 K at one of its ends or falls or rises by more than 0.5 a
    /// kelvin; not finite; inconsistent, where its covariance is none.
    /// # Source
    /// JCGM 100:2008, H.3.
    /// # Examples
    /// The thermometer of that example, used at 30 °C, where its correction is −0.1494 ± 0.0041 °C:
    /// ```
    /// use sugaring::{instrument::Thermometer, uncertainty::line_fit, units::*};
    /// let reading = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511];
    /// let correction = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160];
    /// let compared = Thermometer::line(&line_fit(&reading, &correction, 20.0)?)?;
    /// let truth = compared.with_uncertainty(delta_c(0.0))?.truth(deg_c(30.0))?;
    /// let (value, uncertainty) = (truth.value.get::<deg_c>(), truth.uncertainty.get::<delta_c>());
    /// assert_eq!(format!("{value:.4} ± {uncertainty:.4}"), "29.8506 ± 0.0041");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// Truths instead of corrections:
    /// ```
    /// # use sugaring::{instrument::Thermometer, uncertainty::line_fit};
    /// let error = Thermometer::line(&line_fit(&[0.0, 50.0, 100.0], &[0.2, 50.1, 100.1], 0.0)?).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "line.slope = 0.999 is outside -0.5 to 0.5; it gives the correction to add, not the truth",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn line(line: &Line) -> Result<Self, Error> {
        let within = |error: Error| error.within("line");
        let says = |error: Error| error.with_hint("it gives the correction to add, not the truth");
        STEEPNESS.check(line.slope).map_err(says).map_err(within)?;
        for at in [line.reference, line.low, line.high] {
            if !at.is_finite() {
                return Err(within(Error::not_finite("reference", at)));
            }
        }
        for at in [line.low, line.high] {
            CORRECTION.check(line.at(at).value).map_err(says).map_err(within)?;
        }
        let [[a, joint], [other, b]] = line.covariance;
        let (most, scatter) = (math::sqrt(a * b), line.residual_deviation);
        // A correlation of 1 may come out a rounding beyond.
        if !(a >= 0.0 && b >= 0.0 && joint.abs() <= most * (1.0 + 1e-9) && (joint - other).abs() <= 1e-9 * most) {
            let shown = digits::significant(joint, 6);
            let error = Error::inconsistent("covariance", &shown, "variances of the line");
            return Err(within(error.with_hint("take the line as it was fitted")));
        }
        let plain = Self::plain().with_uncertainty(TemperatureDifference::of_si(scatter));
        Ok(Self {
            line: Some(*line),
            ..plain.map_err(|error| within(error.named("residual_deviation")))?
        })
    }

    /// Known to show this much too high. Takes the place of what was known of it before.
    ///
    /// # Errors
    /// Out of range (−15 to 15 K) or not finite.
    pub fn with_offset(mut self, offset: TemperatureDifference) -> Result<Self, Error> {
        self.correction = Correction::Offset(OFFSET.check(offset.si())?);
        self.line = None;
        Ok(self)
    }

    /// A mercury thermometer of which the scale stands out of the liquid for `outside` degrees, at `temperature` in the
    /// mean: its column is too short.
    ///
    /// t = r + k n (t − t′)
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | r | reading, corrected | °C | |
    /// | k | apparent expansion of mercury in glass | 1/K | 1.6e-4 |
    /// | n | degrees of the scale outside | K | 0 to 150 |
    /// | t′ | mean temperature of the column outside | °C | −30 to 60 |
    ///
    /// # Errors
    /// Out of range or not finite.
    /// # Source
    /// NBS Monograph 150 (from memory).
    /// # Examples
    /// ```
    /// use sugaring::{instrument::Thermometer, units::*};
    /// let glass = Thermometer::plain().with_emergent_stem(delta_c(90.0), deg_c(30.0))?;
    /// assert_eq!(format!("{:.2}", glass.truth(deg_c(102.0))?.value.get::<deg_c>()), "103.05");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn with_emergent_stem(
        mut self,
        outside: TemperatureDifference,
        temperature: Temperature,
    ) -> Result<Self, Error> {
        self.stem = Some(Stem {
            outside: OUTSIDE.check(outside.si())?,
            temperature: COLUMN.check(temperature.si())?,
            expansion: MERCURY,
        });
        Ok(self)
    }

    /// With another liquid in an emergent stem: its apparent expansion in glass; spirit is nearer 1e-3 per kelvin (from
    /// memory). Without a stem it does nothing.
    ///
    /// # Errors
    /// Out of range (0 to 2e-3 per kelvin) or not finite.
    pub fn with_stem_expansion(mut self, expansion: PerKelvin) -> Result<Self, Error> {
        let expansion = STEM_EXPANSION.check(expansion.si())?;
        self.stem = self.stem.map(|stem| Stem { expansion, ..stem });
        Ok(self)
    }

    /// Read to steps of this size: adds step/√12 to the uncertainty.
    ///
    /// # Errors
    /// Out of range (0 to 15 K) or not finite.
    pub fn with_resolution(mut self, step: TemperatureDifference) -> Result<Self, Error> {
        self.graduation.resolution = RESOLUTION.check(step.si())?;
        Ok(self)
    }

    /// With this standard uncertainty; 0.1 K for a digital probe that was zeroed (common practice).
    ///
    /// # Errors
    /// Out of range (0 to 15 K) or not finite.
    pub fn with_uncertainty(mut self, uncertainty: TemperatureDifference) -> Result<Self, Error> {
        self.graduation.uncertainty = UNCERTAINTY.check(uncertainty.si())?;
        Ok(self)
    }
}

/// Reading it.
impl Thermometer {
    /// What the temperature is when it shows `reading`.
    ///
    /// t = r − o, or by what it was checked with
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | r | reading | °C | −30 to 150 |
    /// | o | offset | K | −15 to 15 |
    ///
    /// # Errors
    /// Out of range or not finite.
    /// # Source
    /// The checks of the instrument.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::Thermometer, units::*};
    /// let truth = Thermometer::plain().truth(deg_f(217.0))?;
    /// assert_eq!(format!("{:.1} ± {:.1}", truth.value.get::<deg_c>(), truth.uncertainty.get::<delta_c>()), "102.8 ± 0.5");
    /// assert!(Thermometer::plain().truth(deg_c(217.0)).is_err());
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn truth(&self, reading: Temperature) -> Result<Measured<Temperature>, Error> {
        let shown = THERMOMETER.check(0, reading.si())?;
        let (right, squares) = self.by_line(shown);
        let column = self.correction.corrected(right);
        let slope = self.correction.slope();
        let (kelvin, slope) = match self.stem {
            None => (column, slope),
            // Degrees outside times expansion stays at 0.3 or below.
            Some(stem) => {
                let short = stem.expansion * stem.outside;
                (
                    (column - short * stem.temperature) / (1.0 - short),
                    slope / (1.0 - short),
                )
            }
        };
        let uncertainty = slope * math::sqrt(squares);
        Ok(measured(
            Temperature::of_si(kelvin),
            TemperatureDifference::of_si(uncertainty),
        ))
    }

    /// What this one will show at `temperature`: the mark to look for.
    ///
    /// # Errors
    /// Out of range or not finite.
    /// # Source
    /// As [`Thermometer::truth`], of which it is the inverse.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::Thermometer, units::*};
    /// let dial = Thermometer::plain().with_offset(delta_f(-1.5))?;
    /// assert_eq!(format!("{:.1}", dial.reading(deg_f(217.0))?.get::<deg_f>()), "215.5");
    /// assert!(dial.reading(deg_c(217.0)).is_err());
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn reading(&self, temperature: Temperature) -> Result<Temperature, Error> {
        let kelvin = THERMOMETER.check(1, temperature.si())?;
        let column = match self.stem {
            None => kelvin,
            Some(stem) => kelvin - stem.expansion * stem.outside * (kelvin - stem.temperature),
        };
        let right = self.correction.shown(column);
        Ok(Temperature::of_si(match &self.line {
            None => right,
            Some(line) => {
                let celsius = right - ICE;
                ICE + (celsius - line.intercept + line.slope * line.reference) / (1.0 + line.slope)
            }
        }))
    }

    /// A reading, K, with the line's correction, and the square of its standard uncertainty.
    fn by_line(&self, shown: f64) -> (f64, f64) {
        let own = self.graduation.squares();
        let Some(line) = &self.line else {
            return (shown, own);
        };
        let correction = line.at(shown - ICE);
        let steepness = 1.0 + line.slope;
        (
            shown + correction.value,
            steepness * steepness * own + correction.uncertainty * correction.uncertainty,
        )
    }
}

/// Where water boils, and what the pressure's uncertainty makes of it, K.
fn boiling(station: StationPressure) -> Result<(f64, f64), Error> {
    let at = saturation_temperature(station.pressure())?.si();
    let pascal = station.pressure().si();
    let spread = STATION.check(station.uncertainty().si())?;
    let rise = (saturation_temperature_at(pascal + 100.0) - saturation_temperature_at(pascal - 100.0)) / 200.0;
    Ok((at, (rise * spread).abs()))
}

/// A reading in K, of what is at `truth`.
fn near(argument: &'static str, reading: Temperature, truth: f64) -> Result<f64, Error> {
    let celsius = table::deg_c.from_si(truth);
    let rounded = |x: f64| math::floor(x * 100.0) / 100.0;
    Range::new(
        argument,
        &table::deg_c,
        rounded(celsius - FURTHEST),
        rounded(celsius + FURTHEST),
    )
    .check(reading.si())
}

/// What [`Thermometer::truth`] and [`Thermometer::reading`] cover.
pub static THERMOMETER: Relation = Relation {
    name: "instrument::Thermometer",
    inputs: &[
        Range::new("reading", &table::deg_c, -30.0, 150.0),
        Range::new("temperature", &table::deg_c, -30.0, 150.0),
    ],
    output: &table::deg_c,
    source: Source::Derived {
        text: "checks of the instrument in ice and in boiling water",
    },
    accuracy: "the instrument's own",
};

const OFFSET: Range = Range::new("offset", &table::delta_c, -FURTHEST, FURTHEST);
const CORRECTION: Range = Range::new("correction", &table::delta_c, -FURTHEST, FURTHEST);
const STEEPNESS: Range = Range::new("slope", &table::fraction, -0.5, 0.5);
const RESOLUTION: Range = Range::new("resolution", &table::delta_c, 0.0, FURTHEST);
const UNCERTAINTY: Range = Range::new("uncertainty", &table::delta_c, 0.0, FURTHEST);
/// A station pressure takes any uncertainty that it is given.
const STATION: Range = Range::new("station.uncertainty", &table::kpa, 0.0, 15.0);
const OUTSIDE: Range = Range::new("outside", &table::delta_c, 0.0, 150.0);
const COLUMN: Range = Range::new("temperature", &table::deg_c, -30.0, 60.0);
const STEM_EXPANSION: Range = Range::new("stem_expansion", &table::per_kelvin, 0.0, 2e-3);

/// What is further off is another unit, or broken, K.
const FURTHEST: f64 = 15.0;
/// Melting ice, K: ITS-90 (from memory).
const ICE: f64 = 273.15;
/// Standard uncertainty of one that nobody tested, and of a dial after boiling water, K; common practice.
const UNTESTED: f64 = 0.5;
const ZEROED: f64 = 0.25;
/// Apparent expansion of mercury in glass, 1/K: NBS Monograph 150 (from memory).
const MERCURY: f64 = 1.6e-4;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        uncertainty::line_fit,
        units::{deg_c, delta_c, kpa, per_kelvin},
    };
    use proptest::prelude::*;

    fn air() -> StationPressure {
        StationPressure::measured(kpa(96.5)).unwrap()
    }

    #[test]
    fn a_zeroed_one_shows_its_boiling_water() {
        let dial = Thermometer::zeroed_in_boiling_water(deg_c(99.4), air()).unwrap();
        assert!((dial.truth(deg_c(99.4)).unwrap().value.si() - 371.763).abs() < 1e-3);
        let error = Thermometer::two_point(deg_c(0.4), deg_c(60.0), air()).unwrap_err();
        assert_eq!(error.to_string(), "boiling = 60 °C is outside 83.61 to 113.61 °C");
        let unsure = air().with_uncertainty(kpa(-1.0));
        let error = Thermometer::zeroed_in_boiling_water(deg_c(99.4), unsure).unwrap_err();
        assert_eq!(error.to_string(), "station.uncertainty = -1 kPa is outside 0 to 15 kPa");
    }

    proptest! {
        #[test]
        fn reading_and_truth_are_inverse(t in -25.0..140.0_f64, ice in -3.0..3.0_f64, boil in 95.0..102.0_f64, out in 0.0..150.0_f64) {
            let checked = Thermometer::two_point(deg_c(ice), deg_c(boil), air()).unwrap();
            let zeroed = Thermometer::zeroed_in_boiling_water(deg_c(boil), air()).unwrap();
            let stem = zeroed.with_emergent_stem(delta_c(out), deg_c(25.0)).unwrap();
            let spirit = stem.with_stem_expansion(per_kelvin(1e-3)).unwrap();
            let compared = line_fit(&[0.0, 50.0, 100.0], &[ice, 0.3, 98.6 - boil], 20.0).unwrap();
            let line = Thermometer::line(&compared).unwrap();
            let glass = line.with_emergent_stem(delta_c(out), deg_c(25.0)).unwrap();
            for thermometer in [Thermometer::plain(), checked, zeroed, stem, spirit, line, glass] {
                let shown = thermometer.reading(deg_c(t)).unwrap();
                if let Ok(truth) = thermometer.truth(shown) {
                    prop_assert!((truth.value.si() - 273.15 - t).abs() < 1e-9);
                }
            }
        }

        #[test]
        fn any_number_is_taken(a in any::<f64>(), b in any::<f64>()) {
            let plain = Thermometer::plain();
            let _ = (plain.truth(deg_c(a)), plain.reading(deg_c(a)), plain.with_offset(delta_c(a)));
            let _ = (plain.with_resolution(delta_c(a)), plain.with_uncertainty(delta_c(a)));
            let _ = (Thermometer::two_point(deg_c(a), deg_c(b), air()), Thermometer::zeroed_in_boiling_water(deg_c(a), air()));
            let line = Line { slope: a, intercept: b, ..line_fit(&[0.0, 50.0, 100.0], &[0.1, 0.3, 0.2], 20.0).unwrap() };
            let _ = Thermometer::line(&line).map(|line| (line.truth(deg_c(a)), line.reading(deg_c(b))));
            let _ = Thermometer::line(&Line { covariance: [[a, b], [b, a]], reference: b, ..line });
            let _ = plain.with_emergent_stem(delta_c(a), deg_c(b)).map(|stem| stem.with_stem_expansion(per_kelvin(a)));
        }
    }
}
