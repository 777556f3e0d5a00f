//! The normal distribution: its quantile and its probability.
#![expect(clippy::excessive_precision, reason = "coefficients stand as they are printed")]

use crate::{
    error::Error,
    math,
    relation::{Range, Relation, Source},
    units::{Ratio, Si, Value, table},
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

/// Probability that a normal value lies below `deviations` standard deviations above the mean.
///
/// Φ(x) = erfc(−x/√2)/2
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | x | standard deviations above the mean | 1 | −1e300 to 1e300 |
/// | Φ | probability | 1 | 0 to 1 |
///
/// # Errors
/// Out of range; not finite.
/// # Source
/// NIST Digital Library of Mathematical Functions, 7.17.
/// # Examples
/// ```
/// use sugaring::uncertainty::normal_probability;
/// assert_eq!(format!("{:.4}", normal_probability(1.96)?.value), "0.9750");
/// assert_eq!(
///     normal_probability(f64::NAN).unwrap_err().to_string(),
///     "deviations = NaN is not a finite number"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn normal_probability(deviations: f64) -> Result<Ratio, Error> {
    let x = NORMAL_PROBABILITY.check(0, deviations)?;
    Ok(Ratio::of_si(normal_probability_at(x)))
}

/// What [`normal_probability`] covers.
pub static NORMAL_PROBABILITY: Relation = Relation {
    name: "uncertainty::normal_probability",
    inputs: &[Range::new("deviations", &table::fraction, -1e300, 1e300)],
    output: &table::fraction,
    source: Source::Published {
        text: "NIST Digital Library of Mathematical Functions",
        at: "7.17",
    },
    accuracy: "1 part in 1e14",
};

/// The kernel of [`normal_probability`].
pub(crate) fn normal_probability_at(x: f64) -> f64 {
    0.5 * math::erfc(-x * core::f64::consts::FRAC_1_SQRT_2)
}

/// Horner's rule, the highest power first.
fn polynomial(coefficients: &[f64; 8], x: f64) -> f64 {
    coefficients.iter().fold(0.0, |sum, coefficient| sum * x + coefficient)
}

// The coefficients of AS 241 with every printed digit, highest power first.
const A: [f64; 8] = [
    2.509_080_928_730_122_672_7e3,
    3.343_057_558_358_812_810_5e4,
    6.726_577_092_700_870_085_3e4,
    4.592_195_393_154_987_145_7e4,
    1.373_169_376_550_946_112_5e4,
    1.971_590_950_306_551_442_7e3,
    1.331_416_678_917_843_774_5e2,
    3.387_132_872_796_366_608_0,
];
const B: [f64; 8] = [
    5.226_495_278_852_854_561_0e3,
    2.872_908_573_572_194_267_4e4,
    3.930_789_580_009_271_061_0e4,
    2.121_379_430_158_659_586_7e4,
    5.394_196_021_424_751_107_7e3,
    6.871_870_074_920_579_083_0e2,
    4.231_333_070_160_091_125_2e1,
    1.0,
];
const C: [f64; 8] = [
    7.745_450_142_783_414_076_40e-4,
    2.272_384_498_926_918_458_33e-2,
    2.417_807_251_774_506_117_70e-1,
    1.270_458_252_452_368_382_58,
    3.647_848_324_763_204_605_04,
    5.769_497_221_460_691_405_50,
    4.630_337_846_156_545_295_90,
    1.423_437_110_749_683_577_34,
];
const D: [f64; 8] = [
    1.050_750_071_644_416_843_24e-9,
    5.475_938_084_995_344_946_00e-4,
    1.519_866_656_361_645_719_66e-2,
    1.481_039_764_274_800_745_90e-1,
    6.897_673_349_851_000_045_50e-1,
    1.676_384_830_183_803_849_40,
    2.053_191_626_637_758_821_87,
    1.0,
];
const E: [f64; 8] = [
    2.010_334_399_292_288_132_65e-7,
    2.711_555_568_743_487_578_15e-5,
    1.242_660_947_388_078_438_60e-3,
    2.653_218_952_657_612_309_30e-2,
    2.965_605_718_285_048_912_30e-1,
    1.784_826_539_917_291_335_80,
    5.463_784_911_164_114_369_90,
    6.657_904_643_501_103_777_20,
];
const F: [f64; 8] = [
    2.044_263_103_389_939_785_64e-15,
    1.421_511_758_316_445_888_70e-7,
    1.846_318_317_510_054_681_80e-5,
    7.868_691_311_456_132_591_00e-4,
    1.487_536_129_085_061_485_25e-2,
    1.369_298_809_227_358_053_10e-1,
    5.998_322_065_558_879_376_90e-1,
    1.0,
];

#[cfg(test)]
mod tests {
    use super::*;
    use alloc::string::String;
    use proptest::prelude::*;

    /// The printed check of the coefficients: the sum of their digits, exponents left out, to the last one.
    #[test]
    fn coefficients_add_up_to_the_printed_sums() {
        let source = include_str!("normal.rs");
        let sum = |names: [&str; 2]| -> u128 {
            let rows = names.iter().flat_map(|name| {
                let start = alloc::format!("const {name}: [f64; 8] = [");
                let table = source.split(&start).nth(1).and_then(|rest| rest.split("];").next());
                table
                    .unwrap()
                    .lines()
                    .map(str::trim)
                    .filter(|row| !row.is_empty() && *row != "1.0,")
            });
            let digits = rows.map(|row| {
                let digits: String = row.split([',', 'e']).next().unwrap().replace(['.', '_'], "");
                alloc::format!("{digits:0<21}").parse::<u128>().unwrap()
            });
            digits.sum()
        };
        assert_eq!(sum(["A", "B"]), 5_588_319_288_061_490_144_390);
        assert_eq!(sum(["C", "D"]), 4_933_206_503_301_610_289_036);
        assert_eq!(sum(["E", "F"]), 4_752_583_317_549_289_671_629);
    }

    /// As the `statistics` of Python 3.11 computes them by the same algorithm, to the bit: draws stay what they are.
    #[test]
    fn quantiles_keep_their_bits() {
        for (p, x) in [
            (1e-300, -37.047_096_299_361_2),
            (1e-30, -11.464_024_688_443_617),
            (1e-12, -7.034_483_825_301_132),
            (1e-4, -3.719_016_485_455_68),
            (0.01, -2.326_347_874_040_840_8),
            (0.1, -1.281_551_565_544_600_8),
            (0.3, -0.524_400_512_708_040_7),
            (0.55, 0.125_661_346_855_074_13),
            (0.75, 0.674_489_750_196_081_7),
            (0.9, 1.281_551_565_544_600_8),
            (0.999, 3.090_232_306_167_813),
            (0.999_999_999, 5.997_807_019_601_638),
        ] {
            assert_eq!(normal_quantile_at(p).to_bits(), f64::to_bits(x), "{p}");
        }
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
            let found = normal_probability_at(x);
            assert!((found / p - 1.0).abs() < 1e-14, "{x}: {found}");
        }
        assert_eq!(normal_probability_at(f64::INFINITY).to_bits(), 1.0_f64.to_bits());
        assert!(normal_probability_at(f64::NAN).is_nan());
    }

    proptest! {
        #[test]
        fn probability_undoes_quantile(p in 1e-9..0.999_999_f64) {
            let back = normal_probability_at(normal_quantile_at(p));
            prop_assert!((back / p - 1.0).abs() < 1e-13, "{} {}", p, back);
        }

        #[test]
        fn a_quantile_rises(p in 1e-12..0.999_f64, step in 1e-9..1e-3_f64) {
            prop_assert!(normal_quantile_at(p + step) > normal_quantile_at(p));
        }

        #[test]
        fn any_number_is_taken(p in any::<f64>()) {
            let _ = normal_quantile(Ratio::new::<uom::si::ratio::ratio>(p));
            let _ = (normal_quantile_at(p), normal_probability_at(p));
        }
    }
}
