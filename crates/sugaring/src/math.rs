//! The only door to transcendental functions: libm, so that every target computes the same bits.
//!
//! No fused multiply-add, no platform mathematics. A square root is exact by IEEE 754 whoever computes it.

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

pub(crate) fn pow(x: f64, y: f64) -> f64 {
    libm::pow(x, y)
}

/// 1 − erf(x), without loss in the upper tail.
pub(crate) fn erfc(x: f64) -> f64 {
    libm::erfc(x)
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
pub(crate) fn sqrt(x: f64) -> f64 {
    x.sqrt()
}

#[cfg(not(feature = "std"))]
pub(crate) fn sqrt(x: f64) -> f64 {
    libm::sqrt(x)
}

/// Σ coefficient · xⁱ, by Horner from the last.
pub(crate) fn polynomial<const N: usize>(coefficients: &[f64; N], x: f64) -> f64 {
    coefficients.iter().rev().fold(0.0, |sum, c| sum * x + c)
}
