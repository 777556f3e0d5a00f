//! Student's distribution: its quantile.

use super::normal::normal_quantile_at;
use crate::{
    error::Error,
    math,
    relation::{Range, Relation, Source},
    solve,
    units::{Ratio, Value, table},
};

/// How many standard uncertainties above the mean a value of Student's distribution lies with `probability` below it.
///
/// P = 1 − I(ν/(ν + t²); ν/2, ½)/2 for t ≥ 0, solved for t; I is the regularised incomplete beta function.
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | P | probability | 1 | 1e-300 to 0.999999999999999 |
/// | ν | degrees of freedom | 1 | 1 to 1e6 |
/// | t | standard uncertainties above the mean | 1 | |
///
/// # Errors
/// Out of range; not finite.
/// # Source
/// JCGM 100:2008, G.3 and table G.2. The function: NIST Digital Library of Mathematical Functions, 8.17.22 (the
/// continued fraction) and 5.11.13 (the quotient of gamma functions); above 10⁵ degrees of freedom Abramowitz and
/// Stegun (1964), 26.7.5 (from memory; `SciPy` says the same to 1e-12).
/// # Examples
/// ```
/// use sugaring::{uncertainty::t_quantile, units::percent};
/// assert_eq!(format!("{:.3}", t_quantile(percent(99.5), 16.0)?), "2.921");
/// assert_eq!(
///     t_quantile(percent(99.5), 0.0).unwrap_err().to_string(),
///     "degrees_of_freedom = 0 is outside 1 to 1000000"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn t_quantile(probability: Ratio, degrees_of_freedom: f64) -> Result<f64, Error> {
    let p = T_QUANTILE.check(0, probability.si())?;
    let freedom = T_QUANTILE.check(1, degrees_of_freedom)?;
    student_quantile_at(p, freedom).ok_or_else(|| Error::no_convergence("probability"))
}

/// What [`t_quantile`] covers.
pub static T_QUANTILE: Relation = Relation {
    name: "uncertainty::t_quantile",
    inputs: &[
        Range::new("probability", &table::fraction, 1e-300, 0.999_999_999_999_999),
        Range::new("degrees_of_freedom", &table::fraction, 1.0, MOST_FREEDOM),
    ],
    output: &table::fraction,
    source: Source::Published {
        text: "JCGM 100:2008",
        at: "G.3, table G.2",
    },
    accuracy: "1 part in 1e12",
};

/// Above it Student's distribution is taken for the normal one.
pub(super) const MOST_FREEDOM: f64 = 1e6;

/// The kernel of [`t_quantile`]: `p` lies between 0 and 1, both excluded, `freedom` from 1 to [`MOST_FREEDOM`].
pub(super) fn student_quantile_at(p: f64, freedom: f64) -> Option<f64> {
    if freedom > MANY {
        return Some(expanded(normal_quantile_at(p), freedom));
    }
    let tail = p.min(1.0 - p);
    // Beside the middle there is nothing to take a logarithm of.
    if tail >= 0.5 {
        return Some(0.0);
    }
    // Between the quantile of infinite freedom and one above that of 1, whose tail is below 1/(πt).
    let low = math::ln(-normal_quantile_at(tail)) - 1e-6;
    let high = 1e-6 - math::ln(core::f64::consts::PI * tail);
    let shape = 0.5 * freedom;
    let scale = gamma_quotient(shape) * core::f64::consts::FRAC_2_SQRT_PI * 0.5;
    // Each side of a quarter by what is small there, so that neither loses digits.
    let found = if tail < 0.25 {
        let wanted = math::ln(tail);
        solve::root(|s| ln_tail(s, freedom, scale) - wanted, low, high, 1e-16)
    } else {
        let wanted = math::ln(0.5 - tail);
        solve::root(|s| ln_middle(s, freedom, scale) - wanted, low, high, 1e-16)
    };
    let t = math::exp(found.filter(|found| found.settled)?.at);
    Some(if p < 0.5 { -t } else { t })
}

/// Above it the fraction loses digits, and the expansion about the normal quantile has them all.
const MANY: f64 = 1e5;

/// The quantile of `freedom` where that of the normal distribution is `x`.
fn expanded(x: f64, freedom: f64) -> f64 {
    let squared = x * x;
    let g1 = (squared + 1.0) / 4.0;
    let g2 = ((5.0 * squared + 16.0) * squared + 3.0) / 96.0;
    let g3 = (((3.0 * squared + 19.0) * squared + 17.0) * squared - 15.0) / 384.0;
    let g4 = ((((79.0 * squared + 776.0) * squared + 1482.0) * squared - 1920.0) * squared - 945.0) / 92_160.0;
    let part = 1.0 / freedom;
    x * (1.0 + part * (g1 + part * (g2 + part * (g3 + part * g4))))
}

/// ln P(T > t), s = ln t.
fn ln_tail(s: f64, freedom: f64, scale: f64) -> f64 {
    let split = Split::of(s, freedom);
    if split.is_near() {
        math::ln(0.5 - math::exp(split.ln_middle(scale)))
    } else {
        split.ln_tail(scale)
    }
}

/// ln P(0 < T < t), s = ln t.
fn ln_middle(s: f64, freedom: f64, scale: f64) -> f64 {
    let split = Split::of(s, freedom);
    if split.is_near() {
        split.ln_middle(scale)
    } else {
        math::ln(0.5 - math::exp(split.ln_tail(scale)))
    }
}

/// Where t divides the beta distribution: x = ν/(ν + t²), y = 1 − x.
struct Split {
    shape: f64,
    ln_x: f64,
    ln_y: f64,
}

impl Split {
    fn of(s: f64, freedom: f64) -> Self {
        // ln(t²/ν): its exponential may be too large for a number, or too small.
        let ln_r = 2.0 * s - math::ln(freedom);
        let (ln_x, ln_y) = if ln_r > 0.0 {
            let tail = math::ln_1p(math::exp(-ln_r));
            (-ln_r - tail, -tail)
        } else {
            let tail = math::ln_1p(math::exp(ln_r));
            (-tail, ln_r - tail)
        };
        Self {
            shape: 0.5 * freedom,
            ln_x,
            ln_y,
        }
    }

    /// Whether the fraction of the middle is the quicker one.
    fn is_near(&self) -> bool {
        math::exp(self.ln_y) < 1.5 / (self.shape + 2.5)
    }

    fn ln_tail(&self, scale: f64) -> f64 {
        let fraction = fraction(math::exp(self.ln_x), self.shape, 0.5);
        self.shape * self.ln_x + 0.5 * self.ln_y + math::ln(0.5 * scale / self.shape * fraction)
    }

    fn ln_middle(&self, scale: f64) -> f64 {
        let fraction = fraction(math::exp(self.ln_y), 0.5, self.shape);
        self.shape * self.ln_x + 0.5 * self.ln_y + math::ln(scale * fraction)
    }
}

/// The continued fraction of the incomplete beta function, by Lentz's way; NaN where it does not settle.
fn fraction(x: f64, a: f64, b: f64) -> f64 {
    const SMALL: f64 = 1e-300;
    let away = |value: f64| if value.abs() < SMALL { SMALL } else { value };
    let mut below = 1.0 / away(1.0 - (a + b) / (a + 1.0) * x);
    let (mut above, mut whole) = (1.0, below);
    let mut m = 1.0;
    while m < 10_000.0 {
        let even = m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m));
        let odd = -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0));
        let mut step = 1.0;
        for d in [even, odd] {
            below = 1.0 / away(1.0 + d * below);
            above = away(1.0 + d / above);
            step = above * below;
            whole *= step;
        }
        if (step - 1.0).abs() <= f64::EPSILON {
            return whole;
        }
        m += 1.0;
    }
    f64::NAN
}

/// Γ(a + ½)/Γ(a), a > 0: its series for large a, reached by Γ(a + 1) = aΓ(a).
fn gamma_quotient(a: f64) -> f64 {
    let (mut a, mut product) = (a, 1.0);
    while a < 40.0 {
        product *= a / (a + 0.5);
        a += 1.0;
    }
    product * math::sqrt(a) * math::polynomial(&GAMMA_QUOTIENT, 1.0 / a)
}

// Expanded here from the series of DLMF 5.11.13, in powers of 1/a; judged in the tests.
const GAMMA_QUOTIENT: [f64; 8] = [
    1.0,
    -1.0 / 8.0,
    1.0 / 128.0,
    5.0 / 1024.0,
    -21.0 / 32_768.0,
    -399.0 / 262_144.0,
    869.0 / 4_194_304.0,
    39_325.0 / 33_554_432.0,
];

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// By exact sums: ν = 1 is the tangent, ν = 2 algebraic.
    #[test]
    fn few_degrees_of_freedom_are_closed_forms() {
        for p in [1e-12, 1e-4, 0.01, 0.2, 0.3, 0.49, 0.51, 0.6, 0.75, 0.9, 0.999] {
            let one = student_quantile_at(p, 1.0).unwrap();
            let tail = libm::tan(core::f64::consts::PI * p.min(1.0 - p));
            let tangent = if p < 0.5 { -1.0 / tail } else { 1.0 / tail };
            assert!((one / tangent - 1.0).abs() < 1e-13, "{p}: {one} {tangent}");
            let two = student_quantile_at(p, 2.0).unwrap();
            let exact = (2.0 * p - 1.0) / math::sqrt(2.0 * p * (1.0 - p));
            assert!((two / exact - 1.0).abs() < 1e-13, "{p}: {two} {exact}");
        }
    }

    #[test]
    fn a_quotient_of_gamma_functions_is_exact() {
        // Γ(1) / Γ(½), Γ(3/2) / Γ(1), and 10 steps on.
        let root = math::sqrt(core::f64::consts::PI);
        assert!((gamma_quotient(0.5) * root - 1.0).abs() < 1e-14);
        let mut quotient = root / 2.0;
        for a in 1..200 {
            let a = f64::from(a);
            assert!((gamma_quotient(a) / quotient - 1.0).abs() < 1e-13, "{a}");
            quotient *= (a + 0.5) / a;
        }
    }

    proptest! {
        #[test]
        fn a_quantile_rises_and_is_odd(p in 1e-9..0.499_f64, freedom in 1.0..1e6_f64) {
            let low = student_quantile_at(p, freedom).unwrap();
            prop_assert!(student_quantile_at(p + 1e-3, freedom).unwrap() > low);
            let mirrored = student_quantile_at(0.75, freedom).unwrap() + student_quantile_at(0.25, freedom).unwrap();
            prop_assert!(mirrored.abs() < 1e-12);
            prop_assert!(low <= normal_quantile_at(p) * (1.0 - 1e-9));
        }

        #[test]
        fn any_number_is_taken(p in any::<f64>(), freedom in any::<f64>()) {
            let _ = t_quantile(Ratio::new::<uom::si::ratio::ratio>(p), freedom);
        }

        #[test]
        fn every_allowed_pair_settles(exponent in -300.0..-0.31_f64, freedom in 1.0..1e6_f64) {
            let p = math::pow(10.0, exponent);
            prop_assert!(student_quantile_at(p, freedom).is_some());
        }
    }
}
