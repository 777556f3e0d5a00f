use super::{Reading, graduation::Graduation, reading};
use crate::{
    error::Error,
    math,
    relation::{Range, Relation, Source},
    units::{Brix, Measured, Temperature, Value, measured, table},
};

/// A refractometer with a scale in °Brix that corrects itself for temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Refractometer {
    pub(crate) low: f64,
    pub(crate) high: f64,
    pub(crate) zero: f64,
    pub(crate) graduation: Graduation,
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
            low,
            high,
            zero: 0.0,
            graduation: Graduation::known_to(HAND),
        })
    }

    /// Known to show this in pure water, °Bx.
    ///
    /// # Errors
    /// Out of range (−10 to 10) or not finite.
    pub fn with_zero(mut self, zero: f64) -> Result<Self, Error> {
        self.zero = ZERO.check(zero)?;
        Ok(self)
    }

    /// Read to steps of this size, °Bx: adds step/√12 to the uncertainty.
    ///
    /// # Errors
    /// Out of range (0 to 10) or not finite.
    pub fn with_resolution(mut self, step: f64) -> Result<Self, Error> {
        self.graduation = self.graduation.with_resolution(step)?;
        Ok(self)
    }

    /// With the standard uncertainty of its scale, °Bx: 0.1 for a digital one (common practice).
    ///
    /// # Errors
    /// Out of range (0 to 10) or not finite.
    pub fn with_uncertainty(mut self, uncertainty: f64) -> Result<Self, Error> {
        self.graduation = self.graduation.with_uncertainty(uncertainty)?;
        Ok(self)
    }

    /// What the liquid is that shows `reading` while the prism is at `prism`.
    ///
    /// w = r − z
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | r | reading | °Bx | −15 to 100 |
    /// | z | what it shows in water | °Bx | −10 to 10 |
    /// | w | true °Brix | °Bx | 0 to 85 |
    ///
    /// The temperature is the prism's: a drop takes it in seconds, and a hot drop on a cold prism dries while it does.
    ///
    /// # Errors
    /// Out of range, or not finite; outside the temperatures at which it corrects itself its reading means nothing.
    /// # Source
    /// The instrument's own correction.
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
        self.corrects_itself(prism)?;
        let brix = shown - self.zero;
        if !(0.0..=SWEETEST).contains(&brix) {
            let error = Error::out_of_limits("reading", shown, &table::deg_brix, self.zero, SWEETEST + self.zero);
            return Err(if brix < 0.0 {
                error.with_hint("it reads below pure water: clean and zero it")
            } else {
                error
            });
        }
        Ok(measured(Brix::trusted(brix), math::sqrt(self.graduation.squares())))
    }

    /// What it shows in a liquid of `brix` while the prism is at `prism`.
    ///
    /// r = w + z; symbols as for [`Refractometer::truth`]
    ///
    /// # Errors
    /// As [`Refractometer::truth`], of which it is the inverse.
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
        self.corrects_itself(prism)?;
        Ok(reading(brix + self.zero))
    }

    fn corrects_itself(&self, prism: Temperature) -> Result<(), Error> {
        let celsius = |si| table::deg_c.from_si(si);
        let kelvin = prism.si();
        if kelvin >= self.low && kelvin <= self.high {
            return Ok(());
        }
        let shown = celsius(kelvin);
        // The limits were typed, not computed: they are shown as they are.
        let limits = Range::new("prism", &table::deg_c, celsius(self.low), celsius(self.high));
        limits.check(kelvin).map(drop).map_err(|error| {
            if shown.is_finite() && limits.slip(shown).is_none() {
                error.with_hint("let the instrument come to room temperature")
            } else {
                error
            }
        })
    }
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

/// Standard uncertainty of a hand refractometer, °Bx: ±0.2 as limits; common practice.
const HAND: f64 = 0.12;
/// The strongest solution that has a scale, °Bx.
const SWEETEST: f64 = 85.0;

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
        fn any_number_is_taken(a in any::<f64>(), b in any::<f64>()) {
            let _ = Refractometer::compensated(deg_c(a), deg_c(b));
            let hand = Refractometer::compensated(deg_c(10.0), deg_c(30.0)).unwrap();
            let _ = (hand.with_zero(a), hand.with_resolution(a), hand.with_uncertainty(a));
            let _ = (hand.truth(reading(a), deg_c(b)), hand.reading(Brix::trusted(a), deg_c(b)));
        }
    }
}
