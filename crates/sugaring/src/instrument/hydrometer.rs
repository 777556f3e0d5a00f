use alloc::{format, string::String};

use super::{
    Reading,
    float::{BRACKET, Float},
    graduation::Graduation,
    reading,
};
use crate::{
    digits,
    error::Error,
    math,
    relation::{Range, Relation, Source},
    sucrose,
    units::{Brix, Measured, PerKelvin, Temperature, Value, measured, table},
};

/// A glass hydrometer with a scale in °Brix.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hydrometer {
    pub(crate) float: Float,
    pub(crate) offset: f64,
    pub(crate) graduation: Graduation,
}

impl Hydrometer {
    /// A Brix hydrometer that is true at `calibrated_at`: 60 °F or 20 °C, as its paper says.
    ///
    /// Untested, with glass of 25·10⁻⁶/K and a standard uncertainty of 0.3 °Bx.
    ///
    /// # Errors
    /// Out of range (0 to 40 °C) or not finite.
    /// # Source
    /// Glass: ISO 1768:1975, clause 3, the conventional value for glass hydrometers. Uncertainty: an extension service's
    /// test of 75 to 90 growers' hydrometers at 60 °Bx, about half of them within 0.2.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::Hydrometer, units::*};
    /// let syrup = Hydrometer::brix(deg_f(60.0))?;
    /// assert_eq!(format!("{:.2}", syrup.reading(brix(66.9)?, deg_c(20.0))?), "66.56");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{instrument::Hydrometer, units::*};
    /// assert_eq!(
    ///     Hydrometer::brix(deg_c(60.0)).unwrap_err().to_string(),
    ///     "calibrated_at = 60 °C is outside 0 to 40 °C; 60 °F is 15.56 °C: write deg_f(60)",
    /// );
    /// ```
    pub fn brix(calibrated_at: Temperature) -> Result<Self, Error> {
        Ok(Self {
            float: Float {
                calibrated_at: CALIBRATED_AT.check(calibrated_at.si())?,
                expansion: GLASS,
            },
            offset: 0.0,
            graduation: Graduation::known_to(UNTESTED),
        })
    }

    /// With another cubical expansion of the glass; borosilicate is nearer 10·10⁻⁶/K (from memory).
    ///
    /// # Errors
    /// Out of range (0 to 1e-4 per kelvin) or not finite.
    pub fn with_glass_expansion(mut self, expansion: PerKelvin) -> Result<Self, Error> {
        self.float.expansion = EXPANSION.check(expansion.si())?;
        Ok(self)
    }

    /// Known to show this much too high all along its scale, °Bx: a slipped paper.
    ///
    /// # Errors
    /// Out of range (−10 to 10) or not finite.
    pub fn with_offset(mut self, offset: f64) -> Result<Self, Error> {
        self.offset = OFFSET.check(offset)?;
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

    /// With the standard uncertainty of its scale, °Bx: 0.15 when tested, 0.1 for a sap hydrometer (common practice).
    ///
    /// # Errors
    /// Out of range (0 to 10) or not finite.
    pub fn with_uncertainty(mut self, uncertainty: f64) -> Result<Self, Error> {
        self.graduation = self.graduation.with_uncertainty(uncertainty)?;
        Ok(self)
    }

    /// What the liquid is that shows `reading` at `temperature`.
    ///
    /// ρ(r, t₀) = ρ(w, t) \[1 + β (t − t₀)\], solved for w
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | r | reading, less the offset | °Bx | −15 to 100 |
    /// | t | temperature of liquid and glass | °C | 0 to 106 |
    /// | t₀ | temperature of calibration | °C | 0 to 40 |
    /// | β | cubical expansion of the glass | 1/K | 0 to 1e-4 |
    /// | w | true °Brix | °Bx | 0 to 85 |
    ///
    /// Above 100 °C the density is extrapolated, which the uncertainty then includes (2.5 kg/m³).
    ///
    /// # Errors
    /// Out of range, where the liquid would be thinner than water or thicker than 85 °Bx; or not finite.
    /// # Source
    /// Archimedes, with the density of [`sucrose::density`]. Agrees with the corrections of NBS Circular 440 within
    /// 0.055 °Bx from 5 to 60 °C, 0.105 at 0 °C. Air on the stem, surface tension and pressure are left out, each
    /// below 0.02 °Bx.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::{Hydrometer, reading}, units::*};
    /// let sap = Hydrometer::brix(deg_c(20.0))?.with_uncertainty(0.1)?;
    /// let truth = sap.truth(reading(2.4), deg_c(4.0))?;
    /// assert_eq!(format!("{:.2}", truth.value), "2.00 °Bx");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{instrument::{Hydrometer, reading}, units::*};
    /// let syrup = Hydrometer::brix(deg_f(60.0))?;
    /// assert_eq!(
    ///     syrup.truth(reading(59.0), deg_c(211.0)).unwrap_err().to_string(),
    ///     "temperature = 211 °C is outside 0 to 106 °C; 211 °F is 99.44 °C: write deg_f(211)",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn truth(&self, reading: Reading, temperature: Temperature) -> Result<Measured<Brix>, Error> {
        let shown = HYDROMETER.check(0, reading.get())?;
        let kelvin = HYDROMETER.check(1, temperature.si())?;
        let brix = self.float.brix(shown - self.offset, kelvin).unwrap_or(f64::NAN);
        // A reading of water, fed back, may come out a rounding below nothing.
        if !(-1e-9..=DENSEST).contains(&brix) {
            return Err(self.off_scale(shown, kelvin));
        }
        let brix = Brix::trusted(brix.max(0.0));
        Ok(measured(brix, self.uncertainty_at(brix.get(), kelvin)))
    }

    /// Where it floats: the mark that a liquid of `brix` shows at `temperature`.
    ///
    /// ρ(r, t₀) = ρ(w, t) \[1 + β (t − t₀)\], solved for r; symbols as for [`Hydrometer::truth`]
    ///
    /// # Errors
    /// Out of range or not finite.
    /// # Source
    /// As [`Hydrometer::truth`], of which it is the inverse.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::Hydrometer, units::*};
    /// let syrup = Hydrometer::brix(deg_f(60.0))?;
    /// assert_eq!(format!("{:.1}", syrup.reading(brix(66.9)?, deg_f(211.0))?), "59.0");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{instrument::Hydrometer, units::*};
    /// let syrup = Hydrometer::brix(deg_f(60.0))?;
    /// assert_eq!(
    ///     syrup.reading(brix(90.0)?, deg_c(20.0)).unwrap_err().to_string(),
    ///     "brix = 90 °Bx is outside 0 to 85 °Bx",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn reading(&self, brix: Brix, temperature: Temperature) -> Result<Reading, Error> {
        let brix = HYDROMETER.check(2, brix.get())?;
        let kelvin = HYDROMETER.check(1, temperature.si())?;
        match self.float.mark(brix, kelvin) {
            Some(mark) => Ok(reading(mark + self.offset)),
            None => Err(Error::no_convergence("reading")),
        }
    }

    /// The usual slip that would explain a surprising reading: degrees Baumé read off as Brix.
    ///
    /// ```
    /// use sugaring::{instrument::{Hydrometer, reading}, units::*};
    /// let syrup = Hydrometer::brix(deg_f(60.0))?;
    /// assert_eq!(
    ///     syrup.usual_slip(reading(32.25), deg_f(202.0)).unwrap(),
    ///     "32.25 in hot syrup looks like degrees Baumé: read the Brix scale beside it",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    #[must_use]
    pub fn usual_slip(&self, reading: Reading, temperature: Temperature) -> Option<String> {
        let shown = reading.get();
        // Finished syrup, hot, floats at 32 to 37 °Bé, that is 58 to 62 °Bx.
        if !(32.0..=37.0).contains(&shown) || temperature.si() < HOT {
            return None;
        }
        Some(format!(
            "{} in hot syrup looks like degrees Baumé: read the Brix scale beside it",
            digits::significant(shown, 6)
        ))
    }

    #[cold]
    fn off_scale(&self, shown: f64, kelvin: f64) -> Error {
        let mark = |brix| self.float.mark(brix, kelvin).map_or(f64::NAN, |r| r + self.offset);
        let (low, high) = (mark(0.0), mark(DENSEST));
        let error = Error::out_of_limits("reading", shown, &table::deg_brix, low, high);
        if shown < low {
            error.with_hint("it reads below pure water at this temperature")
        } else {
            error
        }
    }

    fn uncertainty_at(&self, brix: f64, kelvin: f64) -> f64 {
        let mut squares = self.graduation.squares();
        if kelvin > DENSITY_COVERED {
            let slope = sucrose::density_at(brix + 0.5, kelvin) - sucrose::density_at(brix - 0.5, kelvin);
            let limits = DENSITY_EXTRAPOLATED / slope;
            squares += limits * limits / 3.0;
        }
        math::sqrt(squares)
    }
}

/// What [`Hydrometer::truth`] and [`Hydrometer::reading`] cover.
pub static HYDROMETER: Relation = Relation {
    name: "instrument::Hydrometer",
    inputs: &[
        Range::new("reading", &table::deg_brix, BRACKET.0, BRACKET.1),
        Range::new("temperature", &table::deg_c, 0.0, 106.0),
        Range::new("brix", &table::deg_brix, 0.0, DENSEST),
    ],
    output: &table::deg_brix,
    source: Source::Derived {
        text: "floating condition with the density of sucrose solutions and the expansion of glass",
    },
    accuracy: "0.05 °Bx from 5 to 60 °C, 0.1 at 0 and 99 °C; extrapolated above 100 °C",
};

const CALIBRATED_AT: Range = Range::new("calibrated_at", &table::deg_c, 0.0, 40.0);
const EXPANSION: Range = Range::new("glass_expansion", &table::per_kelvin, 0.0, 1e-4);
const OFFSET: Range = Range::new("offset", &table::deg_brix, -10.0, 10.0);

/// Cubical expansion of glass, 1/K: ISO 1768:1975, clause 3.
const GLASS: f64 = 25e-6;
/// Standard uncertainty of a hydrometer nobody tested, °Bx: from an extension service's test of growers' instruments.
const UNTESTED: f64 = 0.3;
/// The strongest solution whose density is known, °Bx.
const DENSEST: f64 = 85.0;
/// Up to here the density's source covers it, K; beyond, it is off by up to so much, kg/m³ (judgement).
const DENSITY_COVERED: f64 = 373.15;
const DENSITY_EXTRAPOLATED: f64 = 2.5;
/// Syrup warmer than this is called hot, K.
const HOT: f64 = 333.15;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{brix, deg_c, deg_f, per_kelvin};
    use proptest::prelude::*;

    fn usual() -> Hydrometer {
        Hydrometer::brix(deg_f(60.0)).unwrap()
    }

    #[test]
    fn water_reads_below_nothing_when_warm() {
        let shows = |celsius| usual().reading(brix(0.0).unwrap(), deg_c(celsius)).unwrap().get();
        assert!((shows(40.0) - -1.6).abs() < 0.05);
        assert!((shows(100.0) - -10.3).abs() < 0.05);
        let error = usual().truth(reading(-12.0), deg_c(100.0)).unwrap_err();
        assert_eq!(
            error.to_string(),
            "reading = -12 °Bx is outside -10.33 to 78 °Bx; it reads below pure water at this temperature"
        );
    }

    /// NBS Circular 440, readings of 0 on a 20 °C scale: no liquid is so thin, but the condition of floating holds.
    #[test]
    fn corrections_of_a_reading_of_nothing() {
        let float = Hydrometer::brix(deg_c(20.0)).unwrap().float;
        for (celsius, correction) in [
            (10.0, -0.32),
            (11.0, -0.31),
            (13.0, -0.26),
            (14.0, -0.24),
            (16.0, -0.17),
            (17.0, -0.13),
            (19.0, -0.05),
        ] {
            let found = float.brix(0.0, celsius + 273.15).unwrap();
            assert!((found - correction).abs() < 0.055, "{celsius} {found}");
        }
    }

    #[test]
    fn uncertainties_add_in_squares() {
        let at = |hydrometer: Hydrometer, celsius| hydrometer.truth(reading(60.0), deg_c(celsius)).unwrap().uncertainty;
        assert!((at(usual(), 90.0) - 0.3).abs() < 1e-15);
        let tested = usual().with_uncertainty(0.15).unwrap().with_resolution(0.5).unwrap();
        assert!((at(tested, 20.0) - 0.2082).abs() < 1e-4);
        // 2.5 kg/m³ of the density as limits, 6.2 kg/m³ per °Bx there.
        assert!((at(usual(), 103.0) - 0.3796).abs() < 5e-4, "{}", at(usual(), 103.0));
    }

    proptest! {
        #[test]
        fn reading_and_truth_are_inverse(
            w in 0.0..85.0_f64, t in 0.0..106.0_f64, t0 in 0.0..40.0_f64, offset in -1.0..1.0_f64, glass in 0.0..1e-4_f64,
        ) {
            let hydrometer = Hydrometer::brix(deg_c(t0)).unwrap().with_offset(offset).unwrap();
            let hydrometer = hydrometer.with_glass_expansion(per_kelvin(glass)).unwrap();
            let mark = hydrometer.reading(brix(w).unwrap(), deg_c(t)).unwrap();
            prop_assert!((hydrometer.truth(mark, deg_c(t)).unwrap().value.get() - w).abs() < 1e-9);
            let again = hydrometer.reading(hydrometer.truth(mark, deg_c(t)).unwrap().value, deg_c(t)).unwrap();
            prop_assert!((again.get() - mark.get()).abs() < 1e-9);
        }

        #[test]
        fn sweeter_floats_higher(w in 0.0..84.0_f64, step in 1e-3..1.0_f64, t in 0.0..106.0_f64) {
            let at = |w| usual().reading(brix(w).unwrap(), deg_c(t)).unwrap();
            prop_assert!(at(w + step) > at(w));
        }

        #[test]
        fn any_number_is_taken(a in any::<f64>(), b in any::<f64>()) {
            let _ = (Hydrometer::brix(deg_c(a)), usual().with_offset(a), usual().with_resolution(a));
            let _ = (usual().with_uncertainty(a), usual().with_glass_expansion(per_kelvin(a)));
            let _ = (usual().truth(reading(a), deg_c(b)), usual().usual_slip(reading(a), deg_c(b)));
            let _ = usual().reading(Brix::trusted(a), deg_c(b));
        }
    }
}
