//! The only door to transcendental functions: libm, so that every target computes the same bits.
//!
//! No fused multiply-add, no platform mathematics. A square root is exact by IEEE 754 whoever computes it.
//!
//! [`ln_1p_near`] is the arithmetic of `log1p` of fdlibm, under this notice:
//!
//! ```text
//! Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
//!
//! Developed at SunPro, a Sun Microsystems, Inc. business.
//! Permission to use, copy, modify, and distribute this
//! software is freely granted, provided that this notice
//! is preserved.
//! ```

pub(crate) fn exp(x: f64) -> f64 {
    libm::exp(x)
}

/// eˣ − 1, without loss for small x.
pub(crate) fn exp_m1(x: f64) -> f64 {
    libm::expm1(x)
}

pub(crate) fn ln(x: f64) -> f64 {
    libm::log(x)
}

/// ln(1 + x), without loss for small x.
pub(crate) fn ln_1p(x: f64) -> f64 {
    libm::log1p(x)
}

/// ln(1 + x) for −0.2928 < x < 0.4142, with the bits of [`ln_1p`]; of x = y − 1 it has those of [`ln`] of y.
///
/// No branch and no table, so that a loop takes several lanes at once. Silently wrong outside its interval.
#[inline(always)]
pub(crate) fn ln_1p_near(x: f64) -> f64 {
    let half = 0.5 * x * x;
    let s = x / (2.0 + x);
    let z = s * s;
    let w = z * z;
    let even = w * (LG2 + w * (LG4 + w * LG6));
    let odd = z * (LG1 + w * (LG3 + w * (LG5 + w * LG7)));
    s * (half + (odd + even)) - half + x
}

// Of log1p in fdlibm; the bits stand beside them in its source.
const LG1: f64 = f64::from_bits(0x3fe5_5555_5555_5593);
const LG2: f64 = f64::from_bits(0x3fd9_9999_9997_fa04);
const LG3: f64 = f64::from_bits(0x3fd2_4924_9422_9359);
const LG4: f64 = f64::from_bits(0x3fcc_71c5_1d8e_78af);
const LG5: f64 = f64::from_bits(0x3fc7_4664_96cb_03de);
const LG6: f64 = f64::from_bits(0x3fc3_9a09_d078_c69f);
const LG7: f64 = f64::from_bits(0x3fc2_f112_df3e_5244);

pub(crate) fn pow(x: f64, y: f64) -> f64 {
    libm::pow(x, y)
}

/// 1 − erf(x), without loss in the upper tail.
pub(crate) fn erfc(x: f64) -> f64 {
    libm::erfc(x)
}

pub(crate) fn cos(x: f64) -> f64 {
    libm::cos(x)
}

pub(crate) fn floor(x: f64) -> f64 {
    libm::floor(x)
}

pub(crate) fn ceil(x: f64) -> f64 {
    libm::ceil(x)
}

/// Nearest whole number, halves away from zero.
pub(crate) fn round(x: f64) -> f64 {
    libm::round(x)
}

#[cfg(feature = "std")]
#[expect(clippy::disallowed_methods, reason = "this is the one place that may call it")]
#[inline(always)]
pub(crate) fn sqrt(x: f64) -> f64 {
    x.sqrt()
}

#[cfg(not(feature = "std"))]
pub(crate) fn sqrt(x: f64) -> f64 {
    libm::sqrt(x)
}

/// Σ coefficient · xⁱ, by Horner from the last.
#[inline(always)]
pub(crate) fn polynomial<const N: usize>(coefficients: &[f64; N], x: f64) -> f64 {
    let mut falling = coefficients.iter().rev();
    let last = falling.next().copied().unwrap_or_default();
    falling.fold(last, |sum, c| sum * x + c)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const LOWEST: f64 = -0.2928;
    const HIGHEST: f64 = 0.4142;

    fn judge(x: f64) {
        assert_eq!(ln_1p_near(x).to_bits(), ln_1p(x).to_bits(), "{x:e}");
        let y = 1.0 + x;
        assert_eq!(ln_1p_near(y - 1.0).to_bits(), ln(y).to_bits(), "{y:e}");
    }

    #[test]
    fn lanes_have_the_bits_of_the_library() {
        for x in [
            LOWEST,
            HIGHEST,
            0.0,
            f64::MIN_POSITIVE,
            5e-324,
            -5e-324,
            -1e-300,
            1e-16,
            -1e-16,
        ] {
            judge(x);
        }
        assert_eq!(ln_1p_near(-0.0).to_bits(), ln_1p(-0.0).to_bits());
        // Additive recurrence: even over the interval, and once more by orders of magnitude.
        let mut share = 0.5;
        for _ in 0..200_000 {
            share += 0.618_033_988_749_894_9;
            share -= floor(share);
            judge(LOWEST + share * (HIGHEST - LOWEST));
            let small = exp(-40.0 * share);
            judge(HIGHEST * small);
            judge(LOWEST * small);
        }
    }

    proptest! {
        #[test]
        fn any_lane_has_the_bits_of_the_library(x in LOWEST..HIGHEST) {
            judge(x);
        }
    }
}
