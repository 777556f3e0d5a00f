use alloc::format;

use super::{
    super::{correction::Correction, graduation::Graduation},
    float::Float,
    marking::Marking,
};
use crate::{
    error::Error,
    relation::Range,
    units::{PerKelvin, Scale, Temperature, Value, table},
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
    /// As [`Hydrometer::brix`], with [`sucrose::brix_from_scale`](crate::sucrose::brix_from_scale).
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

    pub(crate) fn marked(marking: Marking, calibrated_at: Temperature) -> Result<Self, Error> {
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
}

const CALIBRATED_AT: Range = Range::new("calibrated_at", &table::deg_c, 0.0, 40.0);
const EXPANSION: Range = Range::new("glass_expansion", &table::per_kelvin, 0.0, 1e-4);

/// Cubical expansion of glass, 1/K: ISO 1768:1975, clause 3.
const GLASS: f64 = 25e-6;
/// Standard uncertainty of a hydrometer nobody tested, °Bx: from an extension service's test of growers' instruments.
const UNTESTED: f64 = 0.3;
/// Finished syrup, °Bx, where an uncertainty in °Bx becomes one in marks.
const SYRUP: f64 = 66.9;
