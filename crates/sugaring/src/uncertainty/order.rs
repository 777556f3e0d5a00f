use crate::math;

/// The value below which the share `p` of `sorted` lies: linear between order statistics, the first standing for
/// 0 and the last for 1. NaN where there is none.
///
/// Hyndman and Fan (1996), The American Statistician 50, 361–365, definition 7.
pub(crate) fn quantile(sorted: &[f64], p: f64) -> f64 {
    let Some(last) = sorted.len().checked_sub(1) else {
        return f64::NAN;
    };
    #[expect(clippy::cast_precision_loss, reason = "samples are counted in millions at most")]
    let place = p.clamp(0.0, 1.0) * last as f64;
    let below = math::floor(place);
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a whole number from 0 to the last index"
    )]
    let index = below as usize;
    match (sorted.get(index), sorted.get(index + 1)) {
        (Some(low), Some(high)) => low + (high - low) * (place - below),
        (Some(only), None) => *only,
        _ => f64::NAN,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    #[expect(clippy::float_cmp, reason = "these are exact")]
    fn quantiles_lie_between_order_statistics() {
        let sorted = [1.0, 2.0, 4.0, 8.0, 16.0];
        for (p, value) in [
            (0.0, 1.0),
            (0.25, 2.0),
            (0.375, 3.0),
            (0.5, 4.0),
            (1.0, 16.0),
            (-1.0, 1.0),
            (2.0, 16.0),
        ] {
            assert_eq!(quantile(&sorted, p), value, "{p}");
        }
        assert_eq!(quantile(&[3.0], 0.975), 3.0);
        assert!(quantile(&[], 0.5).is_nan());
        assert!((quantile(&sorted, 0.975) - 15.2).abs() < 1e-12);
        let _ = quantile(&sorted, f64::NAN);
    }
}
