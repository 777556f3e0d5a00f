//! What a reading or a mark looks like that cannot be.

use alloc::{format, string::String};

use super::{
    super::{
        Reading,
        correction::{Correction, Point, reach},
    },
    Hydrometer,
    marking::Marking,
    truth::DENSEST,
};
use crate::{
    digits,
    error::Error,
    units::{Scale, Temperature, Value, baume_20_20, table},
};

impl Hydrometer {
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
        match self.marking {
            Marking::Brix if (32.0..=37.0).contains(&shown) => Some(format!(
                "{} in hot syrup looks like degrees Baumé: read the Brix scale beside it",
                digits::significant(shown, 6)
            )),
            _ => None,
        }
    }

    /// The slip that explains a check far from what was expected: the other scale of a double paper.
    #[cold]
    pub(super) fn other_scale(&self, point: Point) -> Option<String> {
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

    /// Refuses a reading that its paper or its checks do not reach.
    pub(super) fn on_paper(&self, shown: f64) -> Result<(), Error> {
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
    pub(super) fn off_paper(&self, brix: f64, kelvin: f64, beyond: &Error) -> Error {
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
    pub(super) fn off_scale(&self, shown: f64, kelvin: f64) -> Error {
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
}

/// Syrup warmer than this is called hot, K: 70 °C, above every table of corrections for hydrometers in concentrate.
const HOT: f64 = 343.15;
