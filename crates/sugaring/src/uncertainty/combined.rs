use alloc::format;

use super::spread::size;
use crate::{
    digits,
    error::Error,
    math,
    units::{Measured, Uncertain},
};

/// What several readings of one truth say together, and whether they agree.
///
/// x = Σ(xᵢ/uᵢ²)/Σ(1/uᵢ²), u = (Σ 1/uᵢ²)^(−1/2), z = max |xᵢ − xⱼ|/√(uᵢ² + uⱼ²)
///
/// | symbol | meaning |
/// |---|---|
/// | xᵢ, uᵢ | a reading and its standard uncertainty, whose errors have nothing to do with the others' |
/// | x, u | what they say together |
/// | z | the largest difference of two in its own standard uncertainty; up to 2 they agree |
///
/// A reading of uncertainty 0 decides.
///
/// # Errors
/// Missing without a reading; not finite; an uncertainty out of range below 0; inconsistent where two readings of
/// uncertainty 0 differ.
/// # Source
/// The mean: common practice, from the joint probability of independent normal readings. Two standard uncertainties
/// as the bound of agreement: common practice, no source.
/// # Examples
/// A hydrometer and a refractometer in one syrup:
/// ```
/// use sugaring::{uncertainty::combine, units::*};
/// let found = combine(&[measured(brix(66.9)?, 0.15), measured(brix(67.1)?, 0.2)])?;
/// assert_eq!(format!("{:.2} ± {:.2}", found.value, found.uncertainty), "66.97 °Bx ± 0.12");
/// assert!(found.agree);
/// let error = combine(&[measured(brix(66.9)?, 0.15), measured(brix(67.1)?, -0.2)]).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "readings[1].uncertainty = -0.2 is outside 0 to 1e300; a standard uncertainty is a size: write 0.2"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn combine<T: Uncertain>(readings: &[Measured<T>]) -> Result<Combined<T>, Error> {
    let Some(first) = readings.first() else {
        return Err(Error::missing("readings").with_hint("one reading at least"));
    };
    // The surest, and where it stands.
    let (mut surest, mut least, mut place) = (first.value.si(), f64::INFINITY, 0);
    for (i, reading) in readings.iter().enumerate() {
        let (value, uncertainty) = numbers(reading);
        let path = || format!("readings[{i}]");
        if !value.is_finite() {
            return Err(Error::not_finite("value", value).within(&path()));
        }
        let uncertainty = size(uncertainty).map_err(|error| error.within(&path()))?;
        if uncertainty == 0.0 && least == 0.0 && (value - surest).abs() > 0.0 {
            let shown = |x: f64| digits::significant(x, 6);
            return Err(
                Error::inconsistent(path(), &shown(value), &format!("readings[{place}] = {}", shown(surest)))
                    .with_hint("readings without uncertainty cannot differ: give each its uncertainty"),
            );
        }
        if uncertainty < least {
            (surest, least, place) = (value, uncertainty, i);
        }
    }
    let (mut weights, mut sum) = (0.0, 0.0);
    let (mut low, mut high) = (surest, surest);
    for (value, uncertainty) in readings.iter().map(numbers) {
        let part = if uncertainty > least { least / uncertainty } else { 1.0 };
        let weight = if least > 0.0 || uncertainty == 0.0 {
            part * part
        } else {
            0.0
        };
        weights += weight;
        sum += weight * (value - surest);
        (low, high) = (low.min(value), high.max(value));
    }
    let value = (surest + sum / weights).clamp(low, high);
    let z = largest_difference(readings);
    Ok(Combined {
        value: T::from_si(value)?,
        uncertainty: T::difference_of_si(least / math::sqrt(weights)),
        z,
        agree: z <= 2.0,
    })
}

/// What several readings of one truth say together.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Combined<T: Uncertain> {
    /// The mean, each reading weighted by 1/u².
    pub value: T,
    /// Its standard uncertainty, if the readings agree.
    pub uncertainty: T::Difference,
    /// The largest difference of two readings, in its own standard uncertainty.
    pub z: f64,
    /// Whether z is at most 2.
    pub agree: bool,
}

fn numbers<T: Uncertain>(reading: &Measured<T>) -> (f64, f64) {
    (reading.value.si(), T::difference_si(reading.uncertainty))
}

fn largest_difference<T: Uncertain>(readings: &[Measured<T>]) -> f64 {
    let mut largest: f64 = 0.0;
    for (i, a) in readings.iter().map(numbers).enumerate() {
        for b in readings.iter().skip(i + 1).map(numbers) {
            let difference = (a.0 - b.0).abs();
            let (more, less) = (a.1.max(b.1), a.1.min(b.1));
            if difference > 0.0 && more > 0.0 {
                let part = less / more;
                largest = largest.max(difference / more / math::sqrt(1.0 + part * part));
            }
        }
    }
    largest
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{deg_c, delta_c, measured};
    use alloc::{string::ToString, vec::Vec};
    use proptest::prelude::*;

    #[test]
    fn a_reading_without_uncertainty_decides() {
        let found = combine(&[measured(66.9, 0.2), measured(67.0, 0.0), measured(67.0, 0.0)]).unwrap();
        assert_eq!(
            (found.value.to_bits(), found.uncertainty.to_bits()),
            (67.0_f64.to_bits(), 0)
        );
        assert!((found.z - 0.5).abs() < 1e-12);
        let error = combine(&[measured(66.9, 0.0), measured(67.0, 0.0)]).unwrap_err();
        assert_eq!(
            error.to_string(),
            "readings[1] = 67 does not fit readings[0] = 66.9; readings without uncertainty cannot differ: give each \
             its uncertainty"
        );
        assert_eq!(
            combine::<f64>(&[]).unwrap_err().to_string(),
            "readings is missing; one reading at least"
        );
    }

    #[test]
    fn temperatures_combine_to_a_temperature() {
        let found = combine(&[measured(deg_c(20.0), delta_c(0.3)), measured(deg_c(21.0), delta_c(0.4))]).unwrap();
        assert!((found.value.get::<deg_c>() - 20.36).abs() < 1e-9);
        assert!((found.uncertainty.get::<delta_c>() - 0.24).abs() < 1e-12);
        assert!((found.z - 2.0).abs() < 1e-9);
    }

    proptest! {
        #[test]
        fn together_they_are_no_less_sure(values in prop::collection::vec((-10.0..10.0_f64, 1e-6..10.0_f64), 1..8)) {
            let readings: Vec<_> = values.iter().map(|&(x, u)| measured(x, u)).collect();
            let best = values.iter().fold(f64::INFINITY, |best, v| best.min(v.1));
            prop_assert!(combine(&readings).unwrap().uncertainty <= best);
        }

        #[test]
        fn any_number_is_taken(values in prop::collection::vec((any::<f64>(), any::<f64>()), 0..5)) {
            let readings: Vec<_> = values.iter().map(|&(x, u)| measured(x, u)).collect();
            let _ = combine(&readings);
        }
    }
}
