use crate::{
    error::Error,
    math,
    relation::{Range, Relation, Source},
    units::table,
};

/// Standard uncertainty of an indication that is read to the nearest `step`.
///
/// u = d / √12, since every value within half a step shows the same.
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | d | the step | that of the instrument | 0 to 1e300 |
/// | u | standard uncertainty | the same | |
///
/// # Errors
/// Out of range below 0, or not finite.
/// # Source
/// JCGM 100:2008, F.2.2.1.
/// # Examples
/// ```
/// use sugaring::uncertainty::from_resolution;
/// assert!((from_resolution(0.2)? - 0.057_735).abs() < 1e-6);
/// assert_eq!(from_resolution(-0.2).unwrap_err().to_string(), "step = -0.2 is outside 0 to 1e300");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn from_resolution(step: f64) -> Result<f64, Error> {
    let step = FROM_RESOLUTION.check(0, step)?;
    Ok(step / math::sqrt(12.0))
}

/// What [`from_resolution`] covers.
pub static FROM_RESOLUTION: Relation = Relation {
    name: "uncertainty::from_resolution",
    inputs: &[Range::new("step", &table::fraction, 0.0, 1e300)],
    output: &table::fraction,
    source: Source::Published {
        text: "JCGM 100:2008",
        at: "F.2.2.1",
    },
    accuracy: "exact for readings that fall anywhere within the step",
};

/// Standard uncertainty of a value that lies within ± `half_width`, anywhere alike.
///
/// u = a / √3
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | a | half the width of the limits | that of the value | 0 to 1e300 |
/// | u | standard uncertainty | the same | |
///
/// # Errors
/// Out of range below 0, or not finite.
/// # Source
/// JCGM 100:2008, 4.3.7, equation 7.
/// # Examples
/// ```
/// use sugaring::uncertainty::from_limits;
/// assert!((from_limits(0.2)? - 0.115_470).abs() < 1e-6);
/// assert_eq!(
///     from_limits(f64::NAN).unwrap_err().to_string(),
///     "half_width = NaN is not a finite number"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn from_limits(half_width: f64) -> Result<f64, Error> {
    let half_width = FROM_LIMITS.check(0, half_width)?;
    Ok(half_width / math::sqrt(3.0))
}

/// What [`from_limits`] covers.
pub static FROM_LIMITS: Relation = Relation {
    name: "uncertainty::from_limits",
    inputs: &[Range::new("half_width", &table::fraction, 0.0, 1e300)],
    output: &table::fraction,
    source: Source::Published {
        text: "JCGM 100:2008",
        at: "4.3.7, equation 7",
    },
    accuracy: "exact for a rectangular distribution",
};
