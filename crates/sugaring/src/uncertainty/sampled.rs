use alloc::vec::Vec;

use super::{coverage::COVERAGE, order::quantile};
use crate::{
    error::Error,
    math,
    units::{Ratio, Si, Value},
};

/// What many draws of a result show.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Sampled {
    /// Mean of the draws.
    pub value: f64,
    /// Their standard deviation.
    pub uncertainty: f64,
    /// Low end of the interval that leaves 2.5 % of the draws at either side.
    pub low: f64,
    /// High end of that interval.
    pub high: f64,
    /// Low end of the shortest interval that holds 95 % of the draws.
    pub shortest_low: f64,
    /// High end of that interval.
    pub shortest_high: f64,
    /// As many draws lie below it as above.
    pub median: f64,
    /// How many there were.
    pub samples: u32,
    values: Vec<f64>,
}

impl Sampled {
    /// Of draws in any order, made here or elsewhere.
    ///
    /// # Errors
    /// Missing, where there are none; not finite.
    ///
    /// ```
    /// use sugaring::uncertainty::Sampled;
    /// assert_eq!(Sampled::of(vec![3.0, 1.0, 2.0])?.median, 2.0);
    /// assert_eq!(Sampled::of(vec![]).unwrap_err().to_string(), "values is missing");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn of(mut values: Vec<f64>) -> Result<Self, Error> {
        if values.is_empty() {
            return Err(Error::missing("values"));
        }
        sort(&mut values);
        let (value, _) = middle(&values);
        let uncertainty = spread_of(&values, value);
        if !(value.is_finite() && uncertainty.is_finite()) {
            return Err(Error::not_finite("model", value + uncertainty));
        }
        let (low, high) = symmetric(&values, 0.95);
        let (shortest_low, shortest_high) = shortest(&values, 0.95);
        Ok(Self {
            value,
            uncertainty,
            low,
            high,
            shortest_low,
            shortest_high,
            median: quantile(&values, 0.5),
            samples: u32::try_from(values.len()).unwrap_or(u32::MAX),
            values,
        })
    }

    /// The draws, rising.
    #[must_use]
    pub fn values(&self) -> &[f64] {
        &self.values
    }

    /// The interval that holds the truth with `coverage` and leaves as much below as above.
    ///
    /// # Errors
    /// Coverage out of range.
    /// # Source
    /// JCGM 101:2008, 7.7.2.
    pub fn interval(&self, coverage: Ratio) -> Result<(f64, f64), Error> {
        let p = COVERAGE.check(coverage.si())?;
        Ok(symmetric(&self.values, p))
    }

    /// The shortest interval that holds the truth with `coverage`.
    ///
    /// # Errors
    /// Coverage out of range.
    /// # Source
    /// JCGM 101:2008, 7.7.4.
    pub fn shortest(&self, coverage: Ratio) -> Result<(f64, f64), Error> {
        let p = COVERAGE.check(coverage.si())?;
        Ok(shortest(&self.values, p))
    }

    /// Share of the draws that are no less than `limit`.
    ///
    /// # Errors
    /// Not finite.
    ///
    /// ```
    /// use sugaring::uncertainty::{Samples, Spread, monte_carlo};
    /// let found = monte_carlo(|x| x[0], &[Spread::new("brix", 66.9, 0.2)?], 1, Samples::Count(10_000))?;
    /// assert_eq!(format!("{:.2}", found.probability_at_least(66.7)?.value), "0.84");
    /// assert_eq!(
    ///     found.probability_at_least(f64::NAN).unwrap_err().to_string(),
    ///     "limit = NaN is not a finite number"
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn probability_at_least(&self, limit: f64) -> Result<Ratio, Error> {
        if !limit.is_finite() {
            return Err(Error::not_finite("limit", limit));
        }
        let below = self.values.partition_point(|value| *value < limit);
        #[expect(clippy::cast_precision_loss, reason = "at most 10⁷")]
        let share = (self.values.len() - below) as f64 / self.values.len() as f64;
        Ok(Ratio::of_si(share))
    }
}

/// Rising, in the order of [`f64::total_cmp`]; whole numbers compare quicker.
fn sort(values: &mut [f64]) {
    const SIGN: u64 = 1 << 63;
    // A negative number rises as its bits fall.
    let key = |bits: u64| if bits & SIGN == 0 { bits | SIGN } else { !bits };
    let bits = |key: u64| if key & SIGN == 0 { !key } else { key ^ SIGN };
    let mut keys: Vec<u64> = values.iter().map(|x| key(x.to_bits())).collect();
    keys.sort_unstable();
    for (x, key) in values.iter_mut().zip(keys) {
        *x = f64::from_bits(bits(key));
    }
}

/// Mean, and how many.
pub(super) fn middle(values: &[f64]) -> (f64, f64) {
    #[expect(clippy::cast_precision_loss, reason = "at most 10⁷")]
    let count = values.len() as f64;
    // About one of them, so that a small spread about a large value keeps its digits.
    let about = values.get(values.len() / 2).copied().unwrap_or_default();
    (about + values.iter().map(|x| x - about).sum::<f64>() / count, count)
}

/// Standard deviation about `mean`, of n − 1.
pub(super) fn spread_of(values: &[f64], mean: f64) -> f64 {
    let largest = values.iter().fold(0.0, |largest: f64, x| largest.max((x - mean).abs()));
    if largest == 0.0 {
        return 0.0;
    }
    // A power of two near the largest, so that no square is too large or too small and no bit is lost.
    let scale = f64::from_bits((largest.to_bits() & 0x7ff0_0000_0000_0000).clamp(1 << 52, 0x7fd0_0000_0000_0000));
    let part = 1.0 / scale;
    let squares: f64 = values
        .iter()
        .map(|x| {
            let d = (x - mean) * part;
            d * d
        })
        .sum();
    #[expect(clippy::cast_precision_loss, reason = "at most 10⁷")]
    let freedom = values.len().saturating_sub(1).max(1) as f64;
    scale * math::sqrt(squares / freedom)
}

/// Draws inside an interval, and outside of it: q of JCGM 101:2008, 7.7.2, and M − q.
fn inside(count: usize, p: f64) -> (usize, usize) {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        clippy::cast_precision_loss,
        reason = "between 0 and 10⁷"
    )]
    let inside = math::floor(p * count as f64 + 0.5) as usize;
    let inside = inside.min(count.saturating_sub(1));
    (inside, count - inside)
}

fn symmetric(values: &[f64], p: f64) -> (f64, f64) {
    let (inside, outside) = inside(values.len(), p);
    // r counts from 1: the whole part of (M − q + 1)/2.
    let r = outside.div_ceil(2);
    ends(values, r.saturating_sub(1), inside)
}

fn shortest(values: &[f64], p: f64) -> (f64, f64) {
    let (inside, _) = inside(values.len(), p);
    let widths = values
        .iter()
        .zip(values.iter().skip(inside))
        .map(|(low, high)| high - low);
    let least = widths.enumerate().min_by(|a, b| a.1.total_cmp(&b.1));
    ends(values, least.map_or(0, |(start, _)| start), inside)
}

fn ends(values: &[f64], start: usize, inside: usize) -> (f64, f64) {
    let at = |i: usize| values.get(i).copied().unwrap_or(f64::NAN);
    (at(start), at(start + inside))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn whole_numbers_sort_as_their_numbers(values in prop::collection::vec(any::<f64>(), 0..50)) {
            let (mut ours, mut plain) = (values.clone(), values);
            sort(&mut ours);
            plain.sort_by(f64::total_cmp);
            let bits = |values: Vec<f64>| values.into_iter().map(f64::to_bits).collect::<Vec<u64>>();
            prop_assert_eq!(bits(ours), bits(plain));
        }
    }
}
