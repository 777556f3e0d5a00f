use alloc::{string::String, vec::Vec};

use crate::{
    error::Error,
    relation::Range,
    units::{quoted, table},
};

/// One input of a model: its value, its standard uncertainty, and what else is known of its spread.
///
/// | symbol | meaning | range |
/// |---|---|---|
/// | x | value | finite |
/// | u | standard uncertainty, whatever the distribution | 0 to 1e300 |
/// | ν | degrees of freedom of u | 1 and more; infinite unless said |
/// | r | correlation with another input | −1 to 1 |
///
/// Limits ± a become u by [`from_limits`](super::from_limits), a resolution by
/// [`from_resolution`](super::from_resolution).
///
/// ```
/// use sugaring::uncertainty::{Distribution, Spread, from_limits};
/// let reading = Spread::new("reading", 66.8, 0.1)?.with_cause("hydrometer");
/// let cup = Spread::new("temperature", 82.0, from_limits(1.0)?)?.with_distribution(Distribution::Rectangular);
/// assert_eq!((reading.cause(), cup.degrees_of_freedom()), (Some("hydrometer"), f64::INFINITY));
/// # Ok::<(), sugaring::Error>(())
/// ```
/// A negative uncertainty is refused:
/// ```
/// use sugaring::uncertainty::Spread;
/// assert_eq!(
///     Spread::new("temperature", 82.0, -0.5).unwrap_err().to_string(),
///     "temperature.uncertainty = -0.5 is outside 0 to 1e300; a standard uncertainty is a size: write 0.5"
/// );
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Spread {
    name: String,
    value: f64,
    uncertainty: f64,
    distribution: Distribution,
    cause: Option<String>,
    degrees_of_freedom: f64,
    correlations: Vec<(String, f64)>,
}

/// How values spread about the one given. Its standard deviation is the standard uncertainty u in each.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Distribution {
    /// Normal; with finite degrees of freedom Student's t, scaled by u and shifted (JCGM 101:2008, 6.4.9).
    #[default]
    Normal,
    /// Anywhere alike within ± u√3 (JCGM 101:2008, 6.4.2).
    Rectangular,
    /// Rising to the middle of ± u√6 (JCGM 101:2008, 6.4.5).
    Triangular,
    /// Crowded at the ends of ± u√2, as a temperature that a thermostat cycles (JCGM 101:2008, 6.4.6).
    Arcsine,
}

impl Distribution {
    /// Every distribution.
    pub const ALL: [Self; 4] = [Self::Normal, Self::Rectangular, Self::Triangular, Self::Arcsine];

    /// Its name in data and other languages.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Normal => "normal",
            Self::Rectangular => "rectangular",
            Self::Triangular => "triangular",
            Self::Arcsine => "arcsine",
        }
    }

    /// The distribution of that name.
    ///
    /// # Errors
    /// An unknown name.
    ///
    /// ```
    /// use sugaring::uncertainty::Distribution;
    /// assert_eq!(Distribution::named("arcsine"), Ok(Distribution::Arcsine));
    /// assert_eq!(
    ///     Distribution::named("rectangle").unwrap_err().to_string(),
    ///     "distribution has the unknown name \"rectangle\"; nearest: rectangular"
    /// );
    /// ```
    pub fn named(name: &str) -> Result<Self, Error> {
        let found = Self::ALL.into_iter().find(|known| known.name() == name);
        found.ok_or_else(|| Error::unknown_name("distribution", name, Self::ALL.map(Self::name)))
    }
}

impl Spread {
    /// `value` with the standard uncertainty `uncertainty`, normal.
    ///
    /// # Errors
    /// Not finite; out of range where the uncertainty is negative.
    pub fn new(name: impl Into<String>, value: f64, uncertainty: f64) -> Result<Self, Error> {
        let name = name.into();
        if !value.is_finite() {
            return Err(Error::not_finite("value", value).within(&name));
        }
        let uncertainty = size(uncertainty).map_err(|error| error.within(&name))?;
        Ok(Self {
            name,
            value,
            uncertainty,
            distribution: Distribution::Normal,
            cause: None,
            degrees_of_freedom: f64::INFINITY,
            correlations: Vec::new(),
        })
    }

    /// A value that is known.
    ///
    /// # Errors
    /// Not finite.
    pub fn exact(name: impl Into<String>, value: f64) -> Result<Self, Error> {
        Self::new(name, value, 0.0)
    }

    /// The same under another name.
    #[must_use]
    pub fn with_name(mut self, name: impl Into<String>) -> Self {
        self.name = name.into();
        self
    }

    /// How it spreads.
    #[must_use]
    pub fn with_distribution(mut self, distribution: Distribution) -> Self {
        self.distribution = distribution;
        self
    }

    /// What makes it uncertain: inputs of one cause move together, all up or all down, each by its own uncertainty.
    ///
    /// One thermometer read twice is one cause, and its offset leaves a difference of the two alone.
    #[must_use]
    pub fn with_cause(mut self, cause: impl Into<String>) -> Self {
        self.cause = Some(cause.into());
        self
    }

    /// How well its uncertainty is known: of a mean of n readings n − 1. Infinite unless said.
    ///
    /// # Errors
    /// Out of range below 1; not a number.
    /// # Source
    /// JCGM 100:2008, G.3 and G.4.
    pub fn with_degrees_of_freedom(mut self, degrees_of_freedom: f64) -> Result<Self, Error> {
        self.degrees_of_freedom = freedom_of(degrees_of_freedom).map_err(|error| error.within(&self.name))?;
        Ok(self)
    }

    /// Correlation with the input called `other`; saying it at one of the two is enough.
    ///
    /// # Errors
    /// Out of range below −1 or above 1; not finite.
    /// # Source
    /// JCGM 100:2008, 5.2.2.
    ///
    /// ```
    /// use sugaring::uncertainty::Spread;
    /// let error = Spread::new("slope", 0.002, 0.001)?.with_correlation("intercept", -1.2).unwrap_err();
    /// assert_eq!(error.to_string(), "slope.correlation = -1.2 is outside -1 to 1; 1 moves wholly with the other, -1 wholly against it");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn with_correlation(mut self, other: impl Into<String>, coefficient: f64) -> Result<Self, Error> {
        let coefficient = CORRELATION.check(coefficient).map_err(|error| {
            // Not the hint of a share: 1.2 is no 1.2 %.
            let hint = "1 moves wholly with the other, -1 wholly against it";
            error.within(&self.name).with_hint(hint)
        })?;
        self.correlations.push((other.into(), coefficient));
        Ok(self)
    }

    /// What it is called in the list of contributions.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// The value.
    #[must_use]
    pub fn value(&self) -> f64 {
        self.value
    }

    /// Its standard uncertainty.
    #[must_use]
    pub fn uncertainty(&self) -> f64 {
        self.uncertainty
    }

    /// How it spreads.
    #[must_use]
    pub fn distribution(&self) -> Distribution {
        self.distribution
    }

    /// What makes it uncertain, where it shares that.
    #[must_use]
    pub fn cause(&self) -> Option<&str> {
        self.cause.as_deref()
    }

    /// Degrees of freedom of its uncertainty.
    #[must_use]
    pub fn degrees_of_freedom(&self) -> f64 {
        self.degrees_of_freedom
    }

    /// Names of other inputs and its correlation with them, as they were said here.
    #[must_use]
    pub fn correlations(&self) -> &[(String, f64)] {
        &self.correlations
    }

    /// What an error calls it: its name in quotes.
    pub(super) fn quoted(&self) -> String {
        quoted(&self.name)
    }
}

/// Degrees of freedom, of which there may be infinitely many.
pub(super) fn freedom_of(degrees_of_freedom: f64) -> Result<f64, Error> {
    if degrees_of_freedom > 0.0 && degrees_of_freedom.is_infinite() {
        Ok(degrees_of_freedom)
    } else {
        FREEDOM.check(degrees_of_freedom)
    }
}

/// A standard uncertainty, which is no less than 0.
pub(super) fn size(uncertainty: f64) -> Result<f64, Error> {
    SIZE.check(uncertainty).map_err(|error| {
        if uncertainty < 0.0 && uncertainty.is_finite() {
            error.with_hint(alloc::format!(
                "a standard uncertainty is a size: write {}",
                crate::digits::significant(-uncertainty, 6)
            ))
        } else {
            error
        }
    })
}

const SIZE: Range = Range::new("uncertainty", &table::fraction, 0.0, 1e300);
const FREEDOM: Range = Range::new("degrees_of_freedom", &table::fraction, 1.0, 1e300);
const CORRELATION: Range = Range::new("correlation", &table::fraction, -1.0, 1.0);

#[cfg(test)]
mod tests {
    use super::*;
    use alloc::string::ToString;
    use proptest::prelude::*;

    #[test]
    fn names_read_back() {
        for distribution in Distribution::ALL {
            assert_eq!(Distribution::named(distribution.name()), Ok(distribution));
        }
    }

    #[test]
    fn what_is_no_spread_is_refused() {
        let text = |error: Error| ToString::to_string(&error);
        let spread = || Spread::new("t", 20.0, 0.1).unwrap();
        for (error, expected) in [
            (
                Spread::new("t", f64::NAN, 0.1).unwrap_err(),
                "t.value = NaN is not a finite number",
            ),
            (
                Spread::new("t", 1.0, f64::INFINITY).unwrap_err(),
                "t.uncertainty = infinity is not a finite number",
            ),
            (
                spread().with_degrees_of_freedom(0.5).unwrap_err(),
                "t.degrees_of_freedom = 0.5 is outside 1 to 1e300",
            ),
            (
                spread().with_degrees_of_freedom(f64::NAN).unwrap_err(),
                "t.degrees_of_freedom = NaN is not a finite number",
            ),
            (
                spread().with_correlation("w", 1.01).unwrap_err(),
                "t.correlation = 1.01 is outside -1 to 1; 1 moves wholly with the other, -1 wholly against it",
            ),
            (
                spread().with_correlation("w", f64::NEG_INFINITY).unwrap_err(),
                "t.correlation = -infinity is not a finite number; 1 moves wholly with the other, -1 wholly against it",
            ),
        ] {
            assert_eq!(text(error), expected);
        }
        assert!(spread().with_degrees_of_freedom(f64::INFINITY).is_ok());
    }

    proptest! {
        #[test]
        fn any_number_is_taken(x in any::<f64>(), y in any::<f64>()) {
            if let Ok(spread) = Spread::new("x", x, y) {
                let _ = spread.clone().with_degrees_of_freedom(x);
                let _ = spread.with_correlation("y", y);
            }
        }
    }
}
