use super::{
    Check, Reading,
    correction::{CHECKS, Correction, Point, reach},
    graduation::Graduation,
    reading,
};
use crate::{
    error::Error,
    math,
    relation::{Range, Relation, Source},
    sucrose::{brix_from_refractive_index_at, refractive_index_at},
    units::{Brix, Measured, Temperature, Value, measured, table},
};

/// A refractometer with a scale in °Brix, true at 20 °C.
///
/// The temperature that counts is the prism's: a drop takes it in seconds, and a hot drop on a cold prism dries while
/// it does. Let the sample cool, closed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Refractometer {
    pub(crate) compensation: Compensation,
    pub(crate) zero: Zero,
    pub(crate) graduation: Graduation,
}

/// What a refractometer does about its temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Compensation {
    /// It corrects itself between these temperatures of its prism, K.
    Automatic { low: f64, high: f64 },
    /// Nothing.
    None,
}

/// How it was zeroed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Zero {
    /// By what it shows wrong, °Bx.
    Known(Correction),
    /// By its screw, turned to 0 in pure water at this temperature of the prism, K.
    SetAt(f64),
}

impl Refractometer {
    /// A refractometer that corrects itself while its prism is between `low` and `high`.
    ///
    /// A hand instrument of ±0.2 °Bx, with a standard uncertainty of 0.12 °Bx.
    ///
    /// # Errors
    /// Out of range (0 to 60 °C) or not finite; inconsistent where `low` is above `high`.
    /// # Source
    /// Makers' sheets, mostly 10 to 30 °C; ±0.2 °Bx as limits, common practice.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::{Refractometer, reading}, units::*};
    /// let hand = Refractometer::compensated(deg_c(10.0), deg_c(30.0))?;
    /// assert_eq!(hand.truth(reading(66.4), deg_c(18.0))?.value, brix(66.4)?);
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{instrument::Refractometer, units::*};
    /// assert_eq!(
    ///     Refractometer::compensated(deg_c(30.0), deg_c(10.0)).unwrap_err().to_string(),
    ///     "low = 30 °C does not fit high = 10 °C",
    /// );
    /// ```
    pub fn compensated(low: Temperature, high: Temperature) -> Result<Self, Error> {
        let (low, high) = (LOW.check(low.si())?, HIGH.check(high.si())?);
        if low > high {
            let celsius = |si| table::deg_c.show(table::deg_c.from_si(si));
            return Err(Error::inconsistent(
                "low",
                &celsius(low),
                &alloc::format!("high = {}", celsius(high)),
            ));
        }
        Ok(Self {
            compensation: Compensation::Automatic { low, high },
            zero: Zero::Known(Correction::Offset(0.0)),
            graduation: Graduation::known_to(HAND),
        })
    }

    /// A refractometer without a correction of its own: what it shows is right with its prism at 20 °C.
    ///
    /// A hand instrument of ±0.2 °Bx, with a standard uncertainty of 0.12 °Bx.
    ///
    /// # Source
    /// Scale by [`sucrose::refractive_index`](crate::sucrose::refractive_index); ±0.2 °Bx as limits, common practice.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::{Refractometer, reading}, units::*};
    /// let plain = Refractometer::uncompensated();
    /// assert_eq!(format!("{:.1}", plain.truth(reading(67.5), deg_c(12.0))?.value), "66.9 °Bx");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    #[must_use]
    pub fn uncompensated() -> Self {
        Self {
            compensation: Compensation::None,
            zero: Zero::Known(Correction::Offset(0.0)),
            graduation: Graduation::known_to(HAND),
        }
    }

    /// Known to show this much too high, °Bx: what it shows in pure water at 20 °C, or at any temperature that it
    /// corrects for.
    ///
    /// # Errors
    /// Out of range (−10 to 10) or not finite.
    pub fn with_zero(mut self, zero: f64) -> Result<Self, Error> {
        self.zero = Zero::Known(Correction::Offset(ZERO.check(zero)?));
        Ok(self)
    }

    /// This one, which showed `reading` in pure water with its prism at `prism`.
    ///
    /// z = r − e, e what a right one shows there: 0 with a correction of its own, else n(e, 20 °C) = n(0, t)
    ///
    /// # Errors
    /// As [`Refractometer::truth`]; out of range, where it is more than 10 °Bx off.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::{Refractometer, reading}, units::*};
    /// let plain = Refractometer::uncompensated().zeroed_in_water(reading(0.5), deg_c(10.0))?;
    /// // 0.5 is what a right one shows in water of 10 °C.
    /// assert!(plain.reading(brix(66.9)?, deg_c(20.0))?.get() - 66.9 < 0.01);
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn zeroed_in_water(&self, reading: Reading, prism: Temperature) -> Result<Self, Error> {
        let point = self.point(reading, Brix::trusted(0.0), prism)?;
        self.with_zero(point.shown - point.expected)
    }

    /// This one, whose screw was turned until it showed 0 in pure water with its prism at `prism`.
    ///
    /// n(r, 20 °C) = n(w, t) − \[n(0, t₀) − n(0, 20 °C)\], t₀ the prism's temperature then: the screw moves the whole scale
    ///
    /// # Errors
    /// Out of range or not finite; inconsistent for one that corrects itself, because its zero does not hang on the
    /// temperature: a correction beside its own would count twice.
    /// # Source
    /// [`sucrose::refractive_index`](crate::sucrose::refractive_index); that the screw moves the index by a constant is an
    /// assumption.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::{Refractometer, reading}, units::*};
    /// let at_work = Refractometer::uncompensated().set_to_zero_at(deg_c(10.0))?;
    /// // 0.46 °Bx where one that was zeroed at 20 °C needs 0.75.
    /// assert_eq!(format!("{:.1}", at_work.truth(reading(67.4), deg_c(10.0))?.value), "66.9 °Bx");
    /// let hand = Refractometer::compensated(deg_c(10.0), deg_c(30.0))?;
    /// assert_eq!(
    ///     hand.set_to_zero_at(deg_c(12.0)).unwrap_err().to_string(),
    ///     "prism = 12 °C does not fit compensated = 10 °C to 30 °C; it corrects itself, and twice is wrong: \
    ///      zero it in water",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn set_to_zero_at(mut self, prism: Temperature) -> Result<Self, Error> {
        let kelvin = PRISM.check(prism.si())?;
        if let Compensation::Automatic { low, high } = self.compensation {
            let celsius = |si| table::deg_c.show(table::deg_c.from_si(si));
            let own = alloc::format!("compensated = {} to {}", celsius(low), celsius(high));
            let error = Error::inconsistent("prism", &celsius(kelvin), &own);
            return Err(error.with_hint("it corrects itself, and twice is wrong: zero it in water"));
        }
        self.zero = Zero::SetAt(kelvin);
        Ok(self)
    }

    /// This one, corrected by a straight line through two checks, and read between them only; it replaces the zero.
    ///
    /// # Errors
    /// As [`Refractometer::reading`]; inconsistent, where `low` is not below `high`, or the line is steeper than 2 or
    /// flatter than ½.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::{Check, Refractometer, reading}, units::*};
    /// let check = |shown, strength| Ok::<_, sugaring::Error>(Check {
    ///     reading: reading(shown),
    ///     brix: brix(strength)?,
    ///     temperature: deg_c(20.0),
    /// });
    /// let hand = Refractometer::compensated(deg_c(10.0), deg_c(30.0))?;
    /// let tested = hand.two_point(check(0.2, 0.0)?, check(30.4, 30.0)?)?;
    /// assert_eq!(format!("{:.2}", tested.truth(reading(15.3), deg_c(25.0))?.value), "15.00 °Bx");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn two_point(&self, low: Check, high: Check) -> Result<Self, Error> {
        let of = |name: &str, check: Check| {
            let point = self.point(check.reading, check.brix, check.temperature);
            point.map_err(|error| error.within(name))
        };
        let correction = Correction::through(of("low", low)?, of("high", high)?, &table::deg_brix, CHECKS)?;
        Ok(Self {
            zero: Zero::Known(correction),
            ..*self
        })
    }

    /// What it showed, and what a right one of its kind would have.
    fn point(&self, shown: Reading, brix: Brix, prism: Temperature) -> Result<Point, Error> {
        let right = Self {
            zero: Zero::Known(Correction::Offset(0.0)),
            ..*self
        };
        Ok(Point {
            shown: REFRACTOMETER.check(0, shown.get())?,
            expected: right.reading(brix, prism)?.get(),
        })
    }

    /// Read to steps of this size, °Bx: adds step/√12 to the uncertainty.
    ///
    /// # Errors
    /// Out of range (0 to 10) or not finite.
    pub fn with_resolution(mut self, step: f64) -> Result<Self, Error> {
        self.graduation.resolution = RESOLUTION.check(step)?;
        Ok(self)
    }

    /// With the standard uncertainty of its scale, °Bx: 0.1 for a digital one (common practice).
    ///
    /// # Errors
    /// Out of range (0 to 10) or not finite.
    pub fn with_uncertainty(mut self, uncertainty: f64) -> Result<Self, Error> {
        self.graduation.uncertainty = UNCERTAINTY.check(uncertainty)?;
        Ok(self)
    }

    /// What the liquid is that shows `reading` while the prism is at `prism`.
    ///
    /// w = r − z, and without a correction of its own n(r − z, 20 °C) = n(w, t), solved for w
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | r | reading | °Bx | −15 to 100 |
    /// | z | what it shows in water | °Bx | −10 to 10 |
    /// | t | temperature of the prism | °C | what it corrects for; without that 5 to 60 |
    /// | n | refractive index | | |
    /// | w | true °Brix | °Bx | 0 to 85 |
    ///
    /// The temperature is the prism's: a drop takes it in seconds, and a hot drop on a cold prism dries while it does.
    ///
    /// # Errors
    /// Out of range, or not finite; outside the temperatures at which it corrects itself its reading means nothing.
    /// # Source
    /// The instrument's own correction, or [`sucrose::refractive_index`](crate::sucrose::refractive_index), whose 0.05 °Bx
    /// the uncertainty then includes.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::{Refractometer, reading}, units::*};
    /// let hand = Refractometer::compensated(deg_c(10.0), deg_c(30.0))?.with_zero(0.2)?;
    /// let sap = hand.truth(reading(2.2), deg_c(12.0))?;
    /// assert_eq!(format!("{:.1} ± {:.2}", sap.value, sap.uncertainty), "2.0 °Bx ± 0.12");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{instrument::{Refractometer, reading}, units::*};
    /// let hand = Refractometer::compensated(deg_c(10.0), deg_c(30.0))?;
    /// assert_eq!(
    ///     hand.truth(reading(2.0), deg_c(3.7)).unwrap_err().to_string(),
    ///     "prism = 3.7 °C is outside 10 to 30 °C; let the instrument come to room temperature",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn truth(&self, reading: Reading, prism: Temperature) -> Result<Measured<Brix>, Error> {
        let shown = REFRACTOMETER.check(0, reading.get())?;
        let kelvin = self.works_at(prism)?;
        self.checked(shown)?;
        match self.means(shown, kelvin) {
            // A reading of water, fed back, may come out a rounding below nothing.
            Some(brix) if (-1e-9..=SWEETEST + 1e-9).contains(&brix) => {
                let brix = brix.clamp(0.0, SWEETEST);
                Ok(measured(Brix::trusted(brix), self.uncertainty_at(shown, brix, kelvin)))
            }
            _ => Err(self.off_scale(shown, kelvin)),
        }
    }

    /// What it shows in a liquid of `brix` while the prism is at `prism`.
    ///
    /// r = w + z, and without a correction of its own n(r − z, 20 °C) = n(w, t), solved for r; symbols as for
    /// [`Refractometer::truth`]
    ///
    /// # Errors
    /// As [`Refractometer::truth`], of which it is the inverse; also where the mark would lie beyond its two checks.
    /// # Source
    /// The instrument's own correction.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::Refractometer, units::*};
    /// let hand = Refractometer::compensated(deg_c(10.0), deg_c(30.0))?;
    /// assert_eq!(hand.reading(brix(66.9)?, deg_c(20.0))?.get(), 66.9);
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{instrument::Refractometer, units::*};
    /// let hand = Refractometer::compensated(deg_c(10.0), deg_c(30.0))?;
    /// assert!(hand.reading(brix(66.9)?, deg_c(85.0)).is_err());
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn reading(&self, brix: Brix, prism: Temperature) -> Result<Reading, Error> {
        let brix = REFRACTOMETER.check(1, brix.get())?;
        let kelvin = self.works_at(prism)?;
        let Some(shown) = self.shows(brix, kelvin) else {
            return Err(Error::no_convergence("reading"));
        };
        match self.checked(shown) {
            Ok(()) => Ok(reading(shown)),
            Err(beyond) => Err(self.beyond_checks(brix, kelvin, &beyond)),
        }
    }

    /// What the liquid is where it shows `shown`.
    fn means(&self, shown: f64, kelvin: f64) -> Option<f64> {
        match (self.compensation, self.zero) {
            (Compensation::Automatic { .. }, Zero::Known(correction)) => Some(correction.corrected(shown)),
            (_, Zero::Known(correction)) => {
                brix_from_refractive_index_at(refractive_index_at(correction.corrected(shown), C20), kelvin)
            }
            (_, Zero::SetAt(zeroed_at)) => {
                brix_from_refractive_index_at(refractive_index_at(shown, C20) + turned(zeroed_at), kelvin)
            }
        }
    }

    /// What it shows in a liquid of `brix`.
    fn shows(&self, brix: f64, kelvin: f64) -> Option<f64> {
        match (self.compensation, self.zero) {
            (Compensation::Automatic { .. }, Zero::Known(correction)) => Some(correction.shown(brix)),
            (_, Zero::Known(correction)) => {
                let right = brix_from_refractive_index_at(refractive_index_at(brix, kelvin), C20)?;
                Some(correction.shown(right))
            }
            (_, Zero::SetAt(zeroed_at)) => {
                brix_from_refractive_index_at(refractive_index_at(brix, kelvin) - turned(zeroed_at), C20)
            }
        }
    }

    /// Refuses a reading that its two checks do not reach.
    fn checked(&self, shown: f64) -> Result<(), Error> {
        match self.zero {
            Zero::Known(correction) => correction.covers("reading", shown, &table::deg_brix),
            Zero::SetAt(_) => Ok(()),
        }
    }

    /// Of a truth `brix`: how surely the scale is read, and how steeply the truth follows it there.
    fn uncertainty_at(&self, shown: f64, brix: f64, kelvin: f64) -> f64 {
        let (right, steps) = match self.zero {
            Zero::Known(correction) => (correction.corrected(shown), correction.slope()),
            Zero::SetAt(_) => (shown, 1.0),
        };
        if matches!(self.compensation, Compensation::Automatic { .. }) {
            return steps * math::sqrt(self.graduation.squares());
        }
        let rise = |brix, kelvin| refractive_index_at(brix + 0.5, kelvin) - refractive_index_at(brix - 0.5, kelvin);
        let slope = steps * rise(right, C20) / rise(brix, kelvin);
        math::sqrt(slope * slope * self.graduation.squares() + CORRECTED * CORRECTED / 3.0)
    }

    /// Why a liquid of `brix` shows nothing that its two checks reach.
    #[cold]
    fn beyond_checks(&self, brix: f64, kelvin: f64, beyond: &Error) -> Error {
        let ends = match self.zero {
            Zero::Known(correction) => correction.ends(),
            Zero::SetAt(_) => None,
        };
        let (first, last) = ends.unwrap_or((0.0, SWEETEST));
        let (low, high) = reach(
            self.means(first, kelvin).unwrap_or(0.0),
            self.means(last, kelvin).unwrap_or(SWEETEST),
            SWEETEST,
        );
        let error = Error::out_of_limits("brix", brix, &table::deg_brix, low, high);
        error.with_hint(beyond.hint().unwrap_or_default())
    }

    #[cold]
    fn off_scale(&self, shown: f64, kelvin: f64) -> Error {
        // What rounding leaves of 0 and 85 is not shown.
        let mark = |brix| math::floor(self.shows(brix, kelvin).unwrap_or(f64::NAN) * 1e6 + 0.5) / 1e6;
        let (low, high) = (mark(0.0), mark(SWEETEST));
        let error = Error::out_of_limits("reading", shown, &table::deg_brix, low, high);
        if shown < low {
            error.with_hint("it reads below pure water: clean and zero it")
        } else {
            error
        }
    }

    /// The prism's temperature, where the instrument works at it.
    fn works_at(&self, prism: Temperature) -> Result<f64, Error> {
        let celsius = |si| table::deg_c.from_si(si);
        let kelvin = prism.si();
        let Compensation::Automatic { low, high } = self.compensation else {
            return PRISM.check(kelvin);
        };
        if kelvin >= low && kelvin <= high {
            return Ok(kelvin);
        }
        let shown = celsius(kelvin);
        // The limits were typed, not computed: they are shown as they are.
        let limits = Range::new("prism", &table::deg_c, celsius(low), celsius(high));
        limits.check(kelvin).map_err(|error| {
            if shown.is_finite() && limits.slip(shown).is_none() {
                error.with_hint("let the instrument come to room temperature")
            } else {
                error
            }
        })
    }
}

/// By how much its screw shifts the index of one that was set to 0 at `kelvin`.
fn turned(kelvin: f64) -> f64 {
    refractive_index_at(0.0, kelvin) - refractive_index_at(0.0, C20)
}

/// What [`Refractometer::truth`] and [`Refractometer::reading`] cover.
pub static REFRACTOMETER: Relation = Relation {
    name: "instrument::Refractometer",
    inputs: &[
        Range::new("reading", &table::deg_brix, -15.0, 100.0),
        Range::new("brix", &table::deg_brix, 0.0, SWEETEST),
        Range::new("prism", &table::deg_c, 0.0, 60.0),
    ],
    output: &table::deg_brix,
    source: Source::CommonPractice,
    accuracy: "the maker's: 0.2 °Bx as limits",
};

const LOW: Range = Range::new("low", &table::deg_c, 0.0, 60.0);
const HIGH: Range = Range::new("high", &table::deg_c, 0.0, 60.0);
const ZERO: Range = Range::new("zero", &table::deg_brix, -10.0, 10.0);
const RESOLUTION: Range = Range::new("resolution", &table::deg_brix, 0.0, 10.0);
const UNCERTAINTY: Range = Range::new("uncertainty", &table::deg_brix, 0.0, 10.0);

/// Standard uncertainty of a hand refractometer, °Bx: ±0.2 as limits; common practice.
const HAND: f64 = 0.12;
/// The strongest solution that has a scale, °Bx.
const SWEETEST: f64 = 85.0;
/// Where scales are true, K.
const C20: f64 = 293.15;
/// What is known of the prism's temperature reaches so far.
const PRISM: Range = Range::new("prism", &table::deg_c, 5.0, 60.0);
/// Accuracy of the correction for temperature, as limits, °Bx: that of the refractive index.
const CORRECTED: f64 = 0.05;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{brix, deg_c};
    use proptest::prelude::*;

    #[test]
    fn a_fahrenheit_slip_is_seen_before_the_cold() {
        let hand = Refractometer::compensated(deg_c(10.0), deg_c(30.0)).unwrap();
        let text = |celsius| hand.truth(reading(2.0), deg_c(celsius)).unwrap_err().to_string();
        assert_eq!(
            text(68.0),
            "prism = 68 °C is outside 10 to 30 °C; 68 °F is 20 °C: write deg_f(68)"
        );
        assert_eq!(
            text(95.0),
            "prism = 95 °C is outside 10 to 30 °C; let the instrument come to room temperature"
        );
        assert_eq!(text(f64::NAN), "prism = NaN is not a finite number");
    }

    #[test]
    fn uncertainties_add_in_squares() {
        let hand = Refractometer::compensated(deg_c(10.0), deg_c(30.0)).unwrap();
        let at = |hand: Refractometer| hand.truth(reading(2.0), deg_c(20.0)).unwrap().uncertainty;
        assert!((at(hand) - 0.12).abs() < 1e-15);
        let digital = hand.with_uncertainty(0.1).unwrap().with_resolution(0.2).unwrap();
        assert!((at(digital) - 0.115_470_053_8).abs() < 1e-9);
    }

    proptest! {
        #[test]
        fn reading_and_truth_are_inverse(w in 0.0..85.0_f64, t in 10.0..30.0_f64, zero in -1.0..1.0_f64) {
            let hand = Refractometer::compensated(deg_c(10.0), deg_c(30.0)).unwrap().with_zero(zero).unwrap();
            let shown = hand.reading(brix(w).unwrap(), deg_c(t)).unwrap();
            if let Ok(truth) = hand.truth(shown, deg_c(t)) {
                prop_assert!((truth.value.get() - w).abs() < 1e-12);
            }
        }

        #[test]
        fn every_kind_reads_back(w in 0.0..85.0_f64, t in 10.0..30.0_f64, zeroed in 5.0..60.0_f64, z in -1.0..1.0_f64) {
            let at = |strength, shift| Check {
                reading: reading(1.02 * strength + shift),
                brix: brix(strength).unwrap(),
                temperature: deg_c(20.0),
            };
            let own = Refractometer::compensated(deg_c(10.0), deg_c(30.0)).unwrap();
            let plain = Refractometer::uncompensated();
            let all = [
                plain,
                plain.with_zero(z).unwrap(),
                plain.set_to_zero_at(deg_c(zeroed)).unwrap(),
                plain.two_point(at(-0.0, z), at(85.0, z)).unwrap(),
                own.two_point(at(0.0, z), at(85.0, z)).unwrap(),
            ];
            for instrument in all {
                // At the ends of two points what is shown at another temperature lies beyond.
                let Ok(shown) = instrument.reading(brix(w).unwrap(), deg_c(t)) else {
                    prop_assert!(!(2.0..=80.0).contains(&w), "{:?} {}", instrument, w);
                    continue;
                };
                if let Ok(truth) = instrument.truth(shown, deg_c(t)) {
                    prop_assert!((truth.value.get() - w).abs() < 1e-9, "{:?} {}", instrument, truth.value);
                } else {
                    prop_assert!(!(1.0..84.0).contains(&w), "{:?} {}", instrument, w);
                }
            }
        }

        #[test]
        fn water_zeroes(shown in -1.0..1.0_f64, t in 10.0..30.0_f64) {
            for instrument in [Refractometer::compensated(deg_c(10.0), deg_c(30.0)).unwrap(), Refractometer::uncompensated()] {
                let zeroed = instrument.zeroed_in_water(reading(shown), deg_c(t)).unwrap();
                let back = zeroed.reading(brix(0.0).unwrap(), deg_c(t)).unwrap().get();
                prop_assert!((back - shown).abs() < 1e-9);
            }
        }

        #[test]
        fn any_number_is_taken(a in any::<f64>(), b in any::<f64>()) {
            let _ = Refractometer::compensated(deg_c(a), deg_c(b));
            let hand = Refractometer::compensated(deg_c(10.0), deg_c(30.0)).unwrap();
            let _ = (hand.with_zero(a), hand.with_resolution(a), hand.with_uncertainty(a));
            let _ = (hand.truth(reading(a), deg_c(b)), hand.reading(Brix::trusted(a), deg_c(b)));
        }
    }
}
