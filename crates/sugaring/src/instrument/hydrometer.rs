use alloc::{format, string::String};

use super::{
    Check, Reading,
    correction::{CHECKS, Correction, Point, reach},
    float::{BRACKET, Float},
    graduation::Graduation,
    marking::Marking,
    reading,
};
use crate::{
    digits,
    error::Error,
    math,
    relation::{Range, Relation, Source},
    sucrose,
    units::{Brix, Measured, PerKelvin, Scale, Temperature, Value, baume_20_20, measured, table},
};

/// A glass hydrometer, with marks in °Brix, on a density scale of the trade, or in kg/m³.
///
/// Read at the level surface, not at the top of the meniscus. Syrup that dries on the stem above the line sinks it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hydrometer {
    pub(crate) marking: Marking,
    pub(crate) float: Float,
    pub(crate) correction: Correction,
    pub(crate) graduation: Graduation,
    /// The least and the greatest mark on its paper, where they are known.
    pub(crate) span: Option<(f64, f64)>,
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
        Self::marked(Marking::Brix, calibrated_at)
    }

    /// One with marks of the density scale `S`, true at `calibrated_at`.
    ///
    /// A mark means the °Brix that stands beside it on its scale, and then floats as one of °Brix does: on the trade's
    /// double papers 36 °Bé of 20/20 and 66.85 °Bx are one line, whatever the glass is calibrated at. Untested, with an
    /// uncertainty of 0.3 °Bx in its own marks.
    ///
    /// # Errors
    /// Out of range (0 to 40 °C) or not finite.
    /// # Source
    /// As [`Hydrometer::brix`], with [`sucrose::brix_from_scale`].
    /// # Examples
    /// ```
    /// use sugaring::{instrument::Hydrometer, units::*};
    /// let syrup = Hydrometer::on_scale::<baume_20_20>(deg_f(60.0))?;
    /// assert_eq!(format!("{:.1}", syrup.reading(brix(66.9)?, deg_f(211.0))?), "32.0");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn on_scale<S: Scale>(calibrated_at: Temperature) -> Result<Self, Error> {
        Self::marked(Marking::of_scale::<S>(), calibrated_at)
    }

    /// One with marks in kg/m³, true at `calibrated_at`.
    ///
    /// # Errors
    /// Out of range (0 to 40 °C) or not finite.
    /// # Source
    /// As [`Hydrometer::brix`].
    /// # Examples
    /// ```
    /// use sugaring::{instrument::Hydrometer, units::*};
    /// let laboratory = Hydrometer::density(deg_c(20.0))?;
    /// assert_eq!(format!("{:.1}", laboratory.reading(brix(66.9)?, deg_c(20.0))?), "1328.2");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn density(calibrated_at: Temperature) -> Result<Self, Error> {
        Self::marked(Marking::Density, calibrated_at)
    }

    /// One with marks of the scale of that word.
    pub(crate) fn on_scale_named(scale: &str, calibrated_at: Temperature) -> Result<Self, Error> {
        match Marking::named(scale) {
            Some(marking @ Marking::On(..)) => Self::marked(marking, calibrated_at),
            _ => Err(Error::unknown_name("scale", scale, Marking::scales())),
        }
    }

    pub(super) fn marked(marking: Marking, calibrated_at: Temperature) -> Result<Self, Error> {
        let calibrated_at = CALIBRATED_AT.check(calibrated_at.si())?;
        Ok(Self {
            marking,
            float: Float {
                calibrated_at,
                expansion: GLASS,
            },
            correction: Correction::Offset(0.0),
            graduation: Graduation::known_to(UNTESTED / marking.brix_per_mark(SYRUP, calibrated_at)),
            span: None,
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

    /// With a paper that reaches from the mark `low` to the mark `high`: readings beyond are refused, those on it are
    /// believed, also where one without would look like another scale's.
    ///
    /// # Errors
    /// Not finite; inconsistent, where `low` is not below `high`.
    ///
    /// ```
    /// use sugaring::{instrument::{Hydrometer, reading}, units::*};
    /// let syrup = Hydrometer::brix(deg_f(60.0))?.with_span(50.0, 70.0)?;
    /// assert_eq!(
    ///     syrup.truth(reading(2.0), deg_f(40.0)).unwrap_err().to_string(),
    ///     "reading = 2 °Bx is outside 50 to 70 °Bx; its paper ends there: sap and syrup have hydrometers of their own",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn with_span(mut self, low: f64, high: f64) -> Result<Self, Error> {
        for (name, mark) in [("low", low), ("high", high)] {
            if !mark.is_finite() {
                return Err(Error::not_finite(name, mark));
            }
        }
        if low >= high {
            let unit = self.marking.unit();
            return Err(Error::inconsistent(
                "low",
                &unit.show(low),
                &format!("high = {}", unit.show(high)),
            ));
        }
        self.span = Some((low, high));
        Ok(self)
    }

    /// Known to show this much too high all along its scale, in its own marks: a slipped paper.
    ///
    /// # Errors
    /// Out of range (10 °Bx or °Bé, 0.1 of relative density, 100 kg/m³, either way) or not finite.
    pub fn with_offset(mut self, offset: f64) -> Result<Self, Error> {
        self.correction = Correction::Offset(self.marking.width("offset", true).check(offset)?);
        Ok(self)
    }

    /// Read to steps of this size, in its own marks: adds step/√12 to the uncertainty.
    ///
    /// # Errors
    /// Out of range (0 to 10 °Bx or °Bé, 0.1 of relative density, 100 kg/m³) or not finite.
    pub fn with_resolution(mut self, step: f64) -> Result<Self, Error> {
        self.graduation.resolution = self.marking.width("resolution", false).check(step)?;
        Ok(self)
    }

    /// With the standard uncertainty of its scale, in its own marks: 0.15 °Bx when tested, 0.1 for a sap hydrometer
    /// (common practice).
    ///
    /// # Errors
    /// Out of range (0 to 10 °Bx or °Bé, 0.1 of relative density, 100 kg/m³) or not finite.
    pub fn with_uncertainty(mut self, uncertainty: f64) -> Result<Self, Error> {
        self.graduation.uncertainty = self.marking.width("uncertainty", false).check(uncertainty)?;
        Ok(self)
    }

    /// This one, corrected by one comparison: it showed `reading` in a liquid of `brix`.
    ///
    /// o = r − s, s what a right one shows there: the paper of a glass slips as a whole.
    ///
    /// # Errors
    /// As [`Hydrometer::reading`]; out of range, where it is further off than [`Hydrometer::with_offset`] takes.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::{Hydrometer, reading}, units::*};
    /// let tested = Hydrometer::brix(deg_f(60.0))?.zeroed(reading(67.2), brix(66.9)?, deg_f(60.0))?;
    /// assert_eq!(format!("{:.1}", tested.reading(brix(66.9)?, deg_f(211.0))?), "59.3");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{instrument::{Hydrometer, reading}, units::*};
    /// let error = Hydrometer::brix(deg_f(60.0))?.zeroed(reading(36.0), brix(66.9)?, deg_f(60.0)).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "offset = -30.9 °Bx is outside -10 to 10 °Bx; 36 looks like degrees Baumé: read the Brix scale beside it",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn zeroed(&self, reading: Reading, brix: Brix, temperature: Temperature) -> Result<Self, Error> {
        let point = self.point(reading, brix, temperature)?;
        self.with_offset(point.shown - point.expected)
            .map_err(|error| match self.other_scale(point) {
                Some(slip) => error.with_hint(slip),
                None => error,
            })
    }

    /// This one, corrected by a straight line through two checks, and read between them only.
    ///
    /// s = s₁ + (r − r₁) (s₂ − s₁) / (r₂ − r₁), s what a right one shows in each
    ///
    /// # Errors
    /// As [`Hydrometer::reading`]; inconsistent, where `low` is not below `high`, or the line is steeper than 2 or
    /// flatter than ½.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::{Check, Hydrometer, reading}, units::*};
    /// let check = |shown, strength| Ok::<_, sugaring::Error>(Check {
    ///     reading: reading(shown),
    ///     brix: brix(strength)?,
    ///     temperature: deg_f(60.0),
    /// });
    /// let tested = Hydrometer::brix(deg_f(60.0))?.two_point(check(0.4, 0.0)?, check(67.2, 66.9)?)?;
    /// assert_eq!(format!("{:.2}", tested.truth(reading(67.2), deg_f(60.0))?.value), "66.90 °Bx");
    /// assert_eq!(
    ///     tested.truth(reading(68.0), deg_f(60.0)).unwrap_err().to_string(),
    ///     "reading = 68 °Bx is outside 0.4 to 67.2 °Bx; it was checked between these two only",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn two_point(&self, low: Check, high: Check) -> Result<Self, Error> {
        let of = |name: &str, check: Check| {
            let point = self.point(check.reading, check.brix, check.temperature);
            point.map_err(|error| error.within(name))
        };
        let correction = Correction::through(of("low", low)?, of("high", high)?, self.marking.unit(), CHECKS)?;
        Ok(Self { correction, ..*self })
    }

    /// What it showed, and what a right one of its kind would have.
    fn point(&self, shown: Reading, brix: Brix, temperature: Temperature) -> Result<Point, Error> {
        let right = Self {
            correction: Correction::Offset(0.0),
            span: None,
            ..*self
        };
        let expected = right.reading(brix, temperature)?;
        if !shown.get().is_finite() {
            return Err(Error::not_finite("reading", shown.get()));
        }
        Ok(Point {
            shown: shown.get(),
            expected: expected.get(),
        })
    }

    /// The slip that explains a check far from what was expected: the other scale of a double paper.
    #[cold]
    fn other_scale(&self, point: Point) -> Option<String> {
        let number = digits::significant(point.shown, 6);
        let beside = self.marking.brix(point.expected, self.float.calibrated_at)?;
        let baume = <baume_20_20 as Scale>::MARKS.mark(beside);
        match self.marking {
            Marking::Brix if (point.shown - baume).abs() < 1.0 => Some(format!(
                "{number} looks like degrees Baumé: read the Brix scale beside it"
            )),
            Marking::On(..) if (point.shown - beside).abs() < 1.0 => Some(format!(
                "{number} looks like °Brix: read the scale that the instrument was said to have"
            )),
            _ => None,
        }
    }

    /// What the liquid is that shows `reading` at `temperature`.
    ///
    /// ρ(r, t₀) = ρ(w, t) \[1 + β (t − t₀)\], solved for w
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | r | reading, corrected | °Bx | −15 to 100 |
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
        let shown = reading.get();
        if matches!(self.marking, Marking::Brix) {
            HYDROMETER.check(0, shown)?;
        } else if !shown.is_finite() {
            return Err(Error::not_finite("reading", shown));
        }
        let kelvin = HYDROMETER.check(1, temperature.si())?;
        self.on_paper(shown)?;
        if let Some(slip) = self.usual_slip(reading, temperature) {
            let unit = &table::deg_c;
            let at = format!("temperature = {}", unit.show(unit.from_si(kelvin)));
            return Err(Error::inconsistent("reading", &self.marking.unit().show(shown), &at).with_hint(slip));
        }
        match self.strength(shown, kelvin) {
            // A reading of water, fed back, may come out a rounding below nothing.
            Some((beside, brix)) if (-1e-9..=DENSEST + 1e-9).contains(&brix) => {
                let brix = brix.clamp(0.0, DENSEST);
                Ok(measured(Brix::trusted(brix), self.uncertainty_at(beside, brix, kelvin)))
            }
            _ => Err(self.off_scale(shown, kelvin)),
        }
    }

    /// Where it floats: the mark that a liquid of `brix` shows at `temperature`.
    ///
    /// ρ(r, t₀) = ρ(w, t) \[1 + β (t − t₀)\], solved for r; symbols as for [`Hydrometer::truth`]
    ///
    /// # Errors
    /// Out of range or not finite, also where the mark would lie beyond its paper or its two checks.
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
        let Some(mark) = self.shows(brix, kelvin) else {
            return Err(Error::no_convergence("reading"));
        };
        match self.on_paper(mark) {
            Ok(()) => Ok(reading(mark)),
            Err(beyond) => Err(self.off_paper(brix, kelvin, &beyond)),
        }
    }

    /// The usual slip that would explain a surprising reading: degrees Baumé read off as Brix, or the other way round.
    ///
    /// [`Hydrometer::truth`] refuses such a reading, unless the paper is known to reach so far
    /// ([`Hydrometer::with_span`]).
    ///
    /// ```
    /// use sugaring::{instrument::{Hydrometer, reading}, units::*};
    /// let syrup = Hydrometer::brix(deg_f(60.0))?;
    /// assert_eq!(
    ///     syrup.usual_slip(reading(32.25), deg_f(202.0)).unwrap(),
    ///     "32.25 in hot syrup looks like degrees Baumé: read the Brix scale beside it",
    /// );
    /// assert!(syrup.with_span(0.0, 50.0)?.usual_slip(reading(32.25), deg_f(202.0)).is_none());
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    #[must_use]
    pub fn usual_slip(&self, reading: Reading, temperature: Temperature) -> Option<String> {
        let shown = reading.get();
        // Finished syrup, hot, floats at 32 to 37 °Bé, that is 58 to 69 °Bx.
        if self.span.is_some() || temperature.si() < HOT {
            return None;
        }
        let number = digits::significant(shown, 6);
        match self.marking {
            Marking::Brix if (32.0..=37.0).contains(&shown) => Some(format!(
                "{number} in hot syrup looks like degrees Baumé: read the Brix scale beside it"
            )),
            _ => None,
        }
    }

    /// °Brix beside the mark `shown`, and of the liquid that shows it; `None` where no solution does.
    fn strength(&self, shown: f64, kelvin: f64) -> Option<(f64, f64)> {
        let mark = self.correction.corrected(shown);
        let beside = self.marking.brix(mark, self.float.calibrated_at)?;
        Some((beside, self.float.brix(beside, kelvin)?))
    }

    /// What it shows, offset and all.
    fn shows(&self, brix: f64, kelvin: f64) -> Option<f64> {
        let beside = self.float.mark(brix, kelvin)?;
        Some(
            self.correction
                .shown(self.marking.mark(beside, self.float.calibrated_at)),
        )
    }

    /// Refuses a reading that its paper or its checks do not reach.
    fn on_paper(&self, shown: f64) -> Result<(), Error> {
        let unit = self.marking.unit();
        // A mark that was computed may come back a rounding beyond.
        let is_off = |low: f64, high: f64| {
            let slack = 1e-9 * (high - low);
            !(low - slack..=high + slack).contains(&shown)
        };
        if let Some((low, high)) = self.span.filter(|(low, high)| is_off(*low, *high)) {
            let error = Error::out_of_limits("reading", shown, unit, low, high);
            return Err(error.with_hint("its paper ends there: sap and syrup have hydrometers of their own"));
        }
        self.correction.covers("reading", shown, unit)
    }

    /// Why a liquid of `brix` shows no mark that its paper and its checks reach.
    #[cold]
    fn off_paper(&self, brix: f64, kelvin: f64, beyond: &Error) -> Error {
        let (mut low, mut high) = (0.0_f64, DENSEST);
        for (first, last) in [self.span, self.correction.ends()].into_iter().flatten() {
            let ends = [first, last].map(|end| self.strength(end, kelvin).map(|(_, brix)| brix));
            let [Some(weakest), Some(strongest)] = ends else {
                continue;
            };
            (low, high) = (low.max(weakest), high.min(strongest));
        }
        let (low, high) = reach(low, high, DENSEST);
        let error = Error::out_of_limits("brix", brix, &table::deg_brix, low, high);
        error.with_hint(beyond.hint().unwrap_or_default())
    }

    #[cold]
    fn off_scale(&self, shown: f64, kelvin: f64) -> Error {
        let unit = self.marking.unit();
        let mark = |brix| self.shows(brix, kelvin).unwrap_or(f64::NAN);
        let (low, high) = (mark(0.0), mark(DENSEST));
        let error = Error::out_of_limits("reading", shown, unit, low, high);
        if shown < low {
            return error.with_hint("it reads below pure water at this temperature");
        }
        match self.marking {
            // °Brix of syrup on a scale that ends at 45 °Bé or 1.45.
            Marking::On(..) if (50.0..=70.0).contains(&shown) => {
                let right = Self {
                    marking: Marking::Brix,
                    correction: Correction::Offset(0.0),
                    ..*self
                };
                let meant = right
                    .float
                    .brix(shown, kelvin)
                    .and_then(|brix| self.shows(brix, kelvin));
                error.with_hint(format!(
                    "{} is {}: read the scale that the instrument was said to have",
                    table::deg_brix.show(shown),
                    unit.with_symbol(&digits::significant(meant.unwrap_or(f64::NAN), 4))
                ))
            }
            _ => error,
        }
    }

    /// Of a truth `brix`, where the mark stands beside `beside`.
    fn uncertainty_at(&self, beside: f64, brix: f64, kelvin: f64) -> f64 {
        let slope = self.correction.slope() * self.marking.brix_per_mark(beside, self.float.calibrated_at);
        let mut squares = self.graduation.squares() * (slope * slope);
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

/// Cubical expansion of glass, 1/K: ISO 1768:1975, clause 3.
const GLASS: f64 = 25e-6;
/// Standard uncertainty of a hydrometer nobody tested, °Bx: from an extension service's test of growers' instruments.
const UNTESTED: f64 = 0.3;
/// The strongest solution whose density is known, °Bx.
const DENSEST: f64 = 85.0;
/// Up to here the density's source covers it, K; beyond, it is off by up to so much, kg/m³ (judgement).
const DENSITY_COVERED: f64 = 373.15;
const DENSITY_EXTRAPOLATED: f64 = 2.5;
/// Syrup warmer than this is called hot, K: 70 °C, above every table of corrections for hydrometers in concentrate.
const HOT: f64 = 343.15;
/// Finished syrup, °Bx, where an uncertainty in °Bx becomes one in marks.
const SYRUP: f64 = 66.9;

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
            let hydrometer = hydrometer.with_glass_expansion(per_kelvin(glass)).unwrap().with_span(-15.0, 100.0).unwrap();
            let mark = hydrometer.reading(brix(w).unwrap(), deg_c(t)).unwrap();
            prop_assert!((hydrometer.truth(mark, deg_c(t)).unwrap().value.get() - w).abs() < 1e-9);
            let again = hydrometer.reading(hydrometer.truth(mark, deg_c(t)).unwrap().value, deg_c(t)).unwrap();
            prop_assert!((again.get() - mark.get()).abs() < 1e-9);
        }

        /// On every scale, offset or checked at two points, hot water included.
        #[test]
        fn every_scale_reads_back(w in 0.0..85.0_f64, t in 0.0..106.0_f64, t0 in 0.0..40.0_f64, part in 0.0..1.0_f64) {
            for name in Marking::names() {
                let right = Hydrometer::marked(Marking::named(name).unwrap(), deg_c(t0)).unwrap();
                let slipped = right.with_offset(0.03).unwrap();
                let of = |strength: f64| {
                    let mark = right.reading(brix(strength).unwrap(), deg_c(t)).unwrap().get();
                    Check { reading: reading(1.01 * mark + 0.02), brix: brix(strength).unwrap(), temperature: deg_c(t) }
                };
                let checked = right.two_point(of(0.0), of(85.0)).unwrap();
                for hydrometer in [right, slipped, checked] {
                    let span = hydrometer.with_span(-15.0, 1600.0).unwrap();
                    let mark = span.reading(brix(w).unwrap(), deg_c(t)).unwrap();
                    let truth = span.truth(mark, deg_c(t)).unwrap();
                    prop_assert!((truth.value.get() - w).abs() < 1e-9, "{} {}", name, truth.value);
                    prop_assert!(truth.uncertainty > 0.2 && truth.uncertainty < 0.8, "{} {}", name, truth.uncertainty);
                    let again = span.reading(truth.value, deg_c(t)).unwrap().get();
                    prop_assert!((again - mark.get()).abs() < 1e-9 * mark.get().abs().max(1.0));
                    let zeroed = right.zeroed(reading(mark.get() + 0.01 * part), truth.value, deg_c(t)).unwrap();
                    let back = zeroed.reading(truth.value, deg_c(t)).unwrap().get();
                    prop_assert!((back - mark.get() - 0.01 * part).abs() < 1e-9 * mark.get().abs().max(1.0));
                }
            }
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
