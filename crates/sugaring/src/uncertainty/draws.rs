use rand_pcg::{
    Pcg64Mcg,
    rand_core::{Rng, SeedableRng},
};

use super::normal::normal_quantile_at;
use crate::math;

/// Random numbers that a seed decides, to the bit, on every machine.
#[derive(Clone, Debug)]
pub(crate) struct Draws(Pcg64Mcg);

impl Draws {
    pub(crate) fn new(seed: u64) -> Self {
        Self(Pcg64Mcg::seed_from_u64(seed))
    }

    /// Anywhere between 0 and 1, both excluded: the top 53 bits, and half a step where they are 0.
    pub(crate) fn uniform(&mut self) -> f64 {
        const STEP: f64 = 1.0 / 9_007_199_254_740_992.0; // 2^-53
        #[expect(clippy::cast_precision_loss, reason = "53 bits are exact")]
        let bits = (self.0.next_u64() >> 11) as f64;
        if bits > 0.0 { bits * STEP } else { 0.5 * STEP }
    }

    /// Normal, of mean 0 and standard deviation 1.
    pub(crate) fn normal(&mut self) -> f64 {
        normal_quantile_at(self.uniform())
    }

    /// Anywhere from `low` to `high` alike.
    pub(crate) fn rectangular(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.uniform()
    }

    /// From `low` to `high`, both above 0, every factor alike.
    pub(crate) fn log_uniform(&mut self, low: f64, high: f64) -> f64 {
        math::exp(self.rectangular(math::ln(low), math::ln(high)))
    }

    /// A factor of median 1 whose logarithm is normal with standard deviation `sd`.
    pub(crate) fn log_normal(&mut self, sd: f64) -> f64 {
        math::exp(sd * self.normal())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// The stream, as a program in another language computes it from the definition of the generator.
    #[test]
    #[expect(clippy::float_cmp, reason = "the stream is pinned to the bit")]
    fn the_stream_of_a_seed_stays() {
        for (seed, uniform) in [
            (
                1,
                [
                    0.856_717_132_700_336_2,
                    0.137_554_485_397_385_02,
                    0.470_461_526_347_958_9,
                    0.726_249_720_961_861_7,
                ],
            ),
            (
                2,
                [
                    0.681_367_584_734_449_9,
                    0.205_595_083_797_985_86,
                    0.255_486_014_419_733_5,
                    0.308_912_922_607_966_3,
                ],
            ),
        ] {
            let mut draws = Draws::new(seed);
            assert_eq!([(); 4].map(|()| draws.uniform()), uniform);
        }
        let mut draws = Draws::new(1);
        let normal = [
            1.065_685_720_893_505_8,
            -1.091_372_584_390_576_2,
            -0.074_109_755_684_715_71,
            0.601_509_692_479_337_4,
        ];
        for expected in normal {
            assert!((draws.normal() / expected - 1.0).abs() < 1e-14, "{expected}");
        }
    }

    #[test]
    fn many_draws_have_the_moments_of_their_distribution() {
        let count = 200_000;
        let mean = |draw: &mut dyn FnMut() -> f64| {
            let (mut sum, mut squares) = (0.0, 0.0);
            for _ in 0..count {
                let x = draw();
                sum += x;
                squares += x * x;
            }
            let mean = sum / f64::from(count);
            (mean, squares / f64::from(count) - mean * mean)
        };
        let mut draws = Draws::new(7);
        // Four standard errors of each mean and variance.
        let (m, v) = mean(&mut || draws.normal());
        assert!(m.abs() < 0.009 && (v - 1.0).abs() < 0.013, "{m} {v}");
        let (m, v) = mean(&mut || draws.rectangular(-1.0, 3.0));
        assert!((m - 1.0).abs() < 0.011 && (v - 4.0 / 3.0).abs() < 0.011, "{m} {v}");
        let (m, _) = mean(&mut || math::ln(draws.log_uniform(0.25, 1.0)));
        assert!((m - 0.5 * math::ln(0.25)).abs() < 0.004, "{m}");
        let (m, v) = mean(&mut || math::ln(draws.log_normal(0.15)));
        assert!(m.abs() < 0.0014 && (v - 0.0225).abs() < 0.0003, "{m} {v}");
    }

    proptest! {
        #[test]
        fn draws_stay_within_their_limits(seed in any::<u64>()) {
            let mut draws = Draws::new(seed);
            for _ in 0..50 {
                let u = draws.uniform();
                prop_assert!(u > 0.0 && u < 1.0);
                prop_assert!(draws.normal().is_finite());
                let x = draws.rectangular(-2.0, 2.0);
                prop_assert!((-2.0..=2.0).contains(&x));
                let x = draws.log_uniform(0.25, 1.0);
                prop_assert!((0.25 - 1e-15..=1.0 + 1e-15).contains(&x));
                prop_assert!(draws.log_normal(0.2) > 0.0);
            }
        }
    }
}
