use super::{
    normal::{normal_probability_at, normal_quantile_at},
    spread::size,
};
use crate::{
    error::Error,
    relation::{Range, Relation, Source},
    units::{Measured, Ratio, Si, Uncertain, Value, table},
};

/// Probability that the truth behind a measured value is at least `minimum`.
///
/// P = Φ((x − m)/u)
///
/// | symbol | meaning | range |
/// |---|---|---|
/// | x, u | value and its standard uncertainty | finite; 0 to 1e300 |
/// | m | the limit | finite |
/// | Φ | [`normal_probability`](super::normal_probability) | |
///
/// Without uncertainty it is 0 or 1.
///
/// # Errors
/// Not finite; the uncertainty out of range below 0.
/// # Source
/// JCGM 106:2012, 7.3.2, equation 7.
/// # Examples
/// ```
/// use sugaring::{uncertainty::probability_at_least, units::*};
/// let legal = probability_at_least(measured(brix(66.9)?, 0.15), brix(66.7)?)?;
/// assert_eq!(format!("{:.2}", legal.value), "0.91");
/// let error = probability_at_least(measured(brix(66.9)?, f64::INFINITY), brix(66.7)?).unwrap_err();
/// assert_eq!(error.to_string(), "uncertainty = infinity is not a finite number");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn probability_at_least<T: Uncertain>(value: Measured<T>, minimum: T) -> Result<Ratio, Error> {
    let (x, limit) = (value.value.si(), minimum.si());
    for (argument, number) in [("value", x), ("minimum", limit)] {
        if !number.is_finite() {
            return Err(Error::not_finite(argument, number));
        }
    }
    let u = size(T::difference_si(value.uncertainty))?;
    let probability = if u > 0.0 {
        normal_probability_at((x - limit) / u)
    } else if x >= limit {
        1.0
    } else {
        0.0
    };
    Ok(Ratio::of_si(probability))
}

/// How far above a minimum to aim, so that the truth meets it with `confidence`.
///
/// g = Φ⁻¹(c)·u
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | u | standard uncertainty | that of the value | 0 to 1e300 |
/// | c | confidence | 1 | 0.5 to 0.999999999999999 |
/// | g | guard band | that of the value | |
///
/// # Errors
/// Out of range; not finite.
/// # Source
/// JCGM 106:2012, 8.3.2.
/// # Examples
/// ```
/// use sugaring::{uncertainty::guard_band, units::percent};
/// assert_eq!(format!("{:.2}", guard_band(0.15, percent(95.0))?), "0.25");
/// assert_eq!(
///     guard_band(0.15, percent(40.0)).unwrap_err().to_string(),
///     "confidence = 0.4 is outside 0.5 to 0.999999999999999"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn guard_band(uncertainty: f64, confidence: Ratio) -> Result<f64, Error> {
    let u = GUARD_BAND.check(0, uncertainty)?;
    let confidence = GUARD_BAND.check(1, confidence.si())?;
    let band = u * normal_quantile_at(confidence);
    if band.is_finite() {
        Ok(band)
    } else {
        Err(Error::not_finite("guard_band", band))
    }
}

/// What [`guard_band`] covers.
pub static GUARD_BAND: Relation = Relation {
    name: "uncertainty::guard_band",
    inputs: &[
        Range::new("uncertainty", &table::fraction, 0.0, 1e300),
        Range::new("confidence", &table::fraction, 0.5, 0.999_999_999_999_999),
    ],
    output: &table::fraction,
    source: Source::Published {
        text: "JCGM 106:2012",
        at: "8.3.2",
    },
    accuracy: "1 part in 1e15, for a normal distribution",
};

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::measured;
    use proptest::prelude::*;

    #[test]
    #[expect(clippy::float_cmp, reason = "these are exact")]
    fn without_uncertainty_it_is_met_or_not() {
        for (value, expected) in [(66.8, 0.0), (66.9, 1.0), (67.0, 1.0)] {
            assert_eq!(probability_at_least(measured(value, 0.0), 66.9).unwrap().si(), expected);
        }
    }

    proptest! {
        #[test]
        fn a_guard_band_gives_its_confidence(u in 1e-3..10.0_f64, c in 0.5..0.9999_f64) {
            let band = guard_band(u, Ratio::of_si(c)).unwrap();
            let met = probability_at_least(measured(66.9 + band, u), 66.9).unwrap().si();
            prop_assert!((met - c).abs() < 1e-9);
        }

        #[test]
        fn any_number_is_taken(x in any::<f64>(), y in any::<f64>(), z in any::<f64>()) {
            let _ = (probability_at_least(measured(x, y), z), guard_band(x, Ratio::of_si(y)));
        }
    }
}
