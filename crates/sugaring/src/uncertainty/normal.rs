//! The normal distribution: its quantile and its probability.

use crate::{
    error::Error,
    math,
    relation::{Range, Relation, Source},
    units::{Ratio, Value, table},
};

/// How many standard deviations above the mean a normal value lies with `probability` below it.
///
/// x = q·A(0.180625 − q²)/B(0.180625 − q²) for |q| = |p − 0.5| ≤ 0.425, and beyond it quotients of polynomials
/// in r = √(−ln p′), p′ the smaller of p and 1 − p: C/D for r ≤ 5, E/F above.
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | p | probability | 1 | 1e-300 to 0.999999999999999 |
/// | x | standard deviations above the mean | 1 | −37.1 to 7.95 |
///
/// # Errors
/// Out of range, at 0 and 1 too, where the answer would be infinite; or not finite.
/// # Source
/// Wichura, M. J. (1988), Algorithm AS 241, Applied Statistics 37, 477–484, routine PPND16.
/// # Examples
/// ```
/// use sugaring::{uncertainty::normal_quantile, units::percent};
/// assert!((normal_quantile(percent(97.5))? - 1.959_963_984_540_054).abs() < 1e-14);
/// assert_eq!(
///     normal_quantile(percent(100.0)).unwrap_err().to_string(),
///     "probability = 1 is outside 1e-300 to 0.999999999999999"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn normal_quantile(probability: Ratio) -> Result<f64, Error> {
    NORMAL_QUANTILE.check(0, probability.si()).map(normal_quantile_at)
}

/// What [`normal_quantile`] covers.
pub static NORMAL_QUANTILE: Relation = Relation {
    name: "uncertainty::normal_quantile",
    inputs: &[Range::new(
        "probability",
        &table::fraction,
        1e-300,
        0.999_999_999_999_999,
    )],
    output: &table::fraction,
    source: Source::Published {
        text: "Wichura 1988, Algorithm AS 241, Applied Statistics 37, 477-484",
        at: "routine PPND16",
    },
    accuracy: "1 part in 1e15",
};

/// The kernel of [`normal_quantile`]; `p` lies between 0 and 1, both excluded.
pub(super) fn normal_quantile_at(p: f64) -> f64 {
    let q = p - 0.5;
    if q.abs() <= 0.425 {
        let r = 0.180_625 - q * q;
        return polynomial(&A, r) * q / polynomial(&B, r);
    }
    let tail = if q < 0.0 { p } else { 1.0 - p };
    let r = math::sqrt(-math::ln(tail));
    let x = if r <= 5.0 {
        polynomial(&C, r - 1.6) / polynomial(&D, r - 1.6)
    } else {
        polynomial(&E, r - 5.0) / polynomial(&F, r - 5.0)
    };
    if q < 0.0 { -x } else { x }
}

/// Probability that a normal value lies below `x` standard deviations above the mean.
///
/// Φ(x) = erfc(−x/√2)/2
pub(crate) fn normal_probability(x: f64) -> f64 {
    0.5 * math::erfc(-x * core::f64::consts::FRAC_1_SQRT_2)
}

/// Horner's rule, the highest power first.
fn polynomial(coefficients: &[f64; 8], x: f64) -> f64 {
    coefficients.iter().fold(0.0, |sum, coefficient| sum * x + coefficient)
}

// The coefficients of AS 241, highest power first, to the digits that an f64 holds.
const A: [f64; 8] = [
    2_509.080_928_730_122_7,
    33_430.575_583_588_13,
    67_265.770_927_008_7,
    45_921.953_931_549_87,
    13_731.693_765_509_46,
    1_971.590_950_306_551_3,
    133.141_667_891_784_38,
    3.387_132_872_796_366_5,
];
const B: [f64; 8] = [
    5_226.495_278_852_854,
    28_729.085_735_721_943,
    39_307.895_800_092_71,
    21_213.794_301_586_597,
    5_394.196_021_424_751,
    687.187_007_492_057_9,
    42.313_330_701_600_91,
    1.0,
];
const C: [f64; 8] = [
    7.745_450_142_783_414e-4,
    2.272_384_498_926_918_4e-2,
    0.241_780_725_177_450_6,
    1.270_458_252_452_368_4,
    3.647_848_324_763_204_5,
    5.769_497_221_460_691,
    4.630_337_846_156_546,
    1.423_437_110_749_683_5,
];
const D: [f64; 8] = [
    1.050_750_071_644_416_9e-9,
    5.475_938_084_995_345e-4,
    1.519_866_656_361_645_7e-2,
    0.148_103_976_427_480_08,
    0.689_767_334_985_1,
    1.676_384_830_183_803_8,
    2.053_191_626_637_759,
    1.0,
];
const E: [f64; 8] = [
    2.010_334_399_292_288e-7,
    2.711_555_568_743_487_6e-5,
    1.242_660_947_388_078_4e-3,
    2.653_218_952_657_612_4e-2,
    0.296_560_571_828_504_87,
    1.784_826_539_917_291_3,
    5.463_784_911_164_114,
    6.657_904_643_501_103,
];
const F: [f64; 8] = [
    2.044_263_103_389_939_7e-15,
    1.421_511_758_316_446e-7,
    1.846_318_317_510_054_8e-5,
    7.868_691_311_456_133e-4,
    1.487_536_129_085_061_5e-2,
    0.136_929_880_922_735_8,
    0.599_832_206_555_888,
    1.0,
];

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// The printed check of the coefficients: the sum of their digits, exponents left out.
    #[test]
    fn coefficients_add_up_to_the_printed_sums() {
        let digits = |x: &f64| {
            let text = alloc::format!("{x:e}");
            text.split('e').next().and_then(|m| m.parse::<f64>().ok()).unwrap()
        };
        let sum = |num: &[f64; 8], den: &[f64; 8]| num.iter().chain(&den[..7]).map(digits).sum::<f64>();
        assert!((sum(&A, &B) - 55.883_192_880_614_9).abs() < 2e-14);
        assert!((sum(&C, &D) - 49.332_065_033_016_1).abs() < 2e-14);
        assert!((sum(&E, &F) - 47.525_833_175_492_9).abs() < 2e-14);
    }

    /// Φ by erfc at 40 digits (derived).
    #[test]
    fn a_probability_is_that_of_the_error_function() {
        for (x, p) in [
            (-10.0, 7.619_853_024_160_525e-24),
            (-5.0, 2.866_515_718_791_939e-7),
            (-1.0, 0.158_655_253_931_457_05),
            (0.0, 0.5),
            (0.5, 0.691_462_461_274_013_1),
            (1.96, 0.975_002_104_851_779_5),
            (5.0, 0.999_999_713_348_428_1),
        ] {
            let found = normal_probability(x);
            assert!((found / p - 1.0).abs() < 1e-14, "{x}: {found}");
        }
        assert_eq!(normal_probability(f64::INFINITY).to_bits(), 1.0_f64.to_bits());
        assert!(normal_probability(f64::NAN).is_nan());
    }

    proptest! {
        #[test]
        fn probability_undoes_quantile(p in 1e-9..0.999_999_f64) {
            let back = normal_probability(normal_quantile_at(p));
            prop_assert!((back / p - 1.0).abs() < 1e-13, "{} {}", p, back);
        }

        #[test]
        fn a_quantile_rises(p in 1e-12..0.999_f64, step in 1e-9..1e-3_f64) {
            prop_assert!(normal_quantile_at(p + step) > normal_quantile_at(p));
        }

        #[test]
        fn any_number_is_taken(p in any::<f64>()) {
            let _ = normal_quantile(Ratio::new::<uom::si::ratio::ratio>(p));
            let _ = (normal_quantile_at(p), normal_probability(p));
        }
    }
}
