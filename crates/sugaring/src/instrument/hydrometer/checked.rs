//! Calibrated by one check or by two.

use super::{
    super::{
        Check, Reading,
        correction::{CHECKS, Correction, Point},
    },
    Hydrometer,
};
use crate::{
    error::Error,
    units::{Brix, Temperature},
};

impl Hydrometer {
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
}
