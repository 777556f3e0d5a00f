use super::{
    normal::normal_quantile_at,
    student::{MOST_FREEDOM, student_quantile_at},
};
use crate::{
    error::Error,
    math,
    relation::{Range, Relation, Source},
    units::{Ratio, Value, table},
};

/// How many standard uncertainties to either side hold the truth with `coverage`.
///
/// k = t((1 + p)/2; ν), ν cut to a whole number; of the normal distribution where ν is above 10⁶.
///
/// | symbol | meaning | range |
/// |---|---|---|
/// | p | coverage | 0.0001 to 0.9999 |
/// | ν | degrees of freedom of the uncertainty | 1 to 1e300 |
/// | k | coverage factor | |
///
/// # Errors
/// Out of range; not finite.
/// # Source
/// JCGM 100:2008, G.3.2, G.4.1 note 1.
/// # Examples
/// ```
/// use sugaring::{uncertainty::coverage_factor, units::percent};
/// assert_eq!(format!("{:.2}", coverage_factor(percent(99.0), 16.7)?), "2.92");
/// assert_eq!(format!("{:.2}", coverage_factor(percent(95.0), 1e300)?), "1.96");
/// assert_eq!(
///     coverage_factor(percent(95.0), 0.0).unwrap_err().to_string(),
///     "degrees_of_freedom = 0 is outside 1 to 1e300"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn coverage_factor(coverage: Ratio, degrees_of_freedom: f64) -> Result<f64, Error> {
    let p = 0.5 + 0.5 * COVERAGE_FACTOR.check(0, coverage.si())?;
    // A hair below a whole number is that number.
    let whole = math::floor(COVERAGE_FACTOR.check(1, degrees_of_freedom)? * (1.0 + 1e-12)).max(1.0);
    if whole > MOST_FREEDOM {
        Ok(normal_quantile_at(p))
    } else {
        student_quantile_at(p, whole).ok_or_else(|| Error::no_convergence("coverage"))
    }
}

/// What [`coverage_factor`] covers.
pub static COVERAGE_FACTOR: Relation = Relation {
    name: "uncertainty::coverage_factor",
    inputs: &[COVERAGE, Range::new("degrees_of_freedom", &table::fraction, 1.0, 1e300)],
    output: &table::fraction,
    source: Source::Published {
        text: "JCGM 100:2008",
        at: "G.3.2, G.4.1 note 1",
    },
    accuracy: "1 part in 1e12",
};

/// Shares of cases that an interval may be asked to hold.
pub(super) const COVERAGE: Range = Range::new("coverage", &table::fraction, 1e-4, 0.9999);
