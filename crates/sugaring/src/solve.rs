//! Bracketed root, quadrature on constant nodes, bounded minimum, initial-value step: small, `no_std`, and each says
//! whether it settled.
//!
//! Kept libraries judge them in the tests; at run time they would cost bit equality or `no_std`.

use alloc::{vec, vec::Vec};
use core::ops::{Add, Mul};

use crate::math;

/// A root or minimum, with how well it is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Found {
    /// Where.
    pub(crate) at: f64,
    /// Width of the bracket that is left.
    pub(crate) width: f64,
    /// Whether `width` came below what was asked.
    pub(crate) settled: bool,
}

const STEPS: usize = 200;
/// Part of a march that no step may be smaller than.
const SMALLEST: f64 = 1e-14;

/// Root of `f` on `[low, high]`, where it must change sign; `None` where it does not.
///
/// Chandrupatla 1997 (Advances in Engineering Software 28, 145): inverse quadratic steps where they are safe,
/// bisection elsewhere. Stops at a bracket of `tolerance`, or of a few units in the last place.
pub(crate) fn root(mut f: impl FnMut(f64) -> f64, low: f64, high: f64, tolerance: f64) -> Option<Found> {
    let (mut a, mut b) = (high, low);
    let (mut fa, mut fb) = (f(a), f(b));
    if fa == 0.0 {
        return Some(exact(a));
    }
    if fb == 0.0 {
        return Some(exact(b));
    }
    if !(fa.is_finite() && fb.is_finite()) || (fa > 0.0) == (fb > 0.0) {
        return None;
    }
    let mut t = 0.5;
    for _ in 0..STEPS {
        let x = a + t * (b - a);
        let fx = f(x);
        if !fx.is_finite() {
            return None;
        }
        let (c, fc) = if (fx > 0.0) == (fa > 0.0) {
            (a, fa)
        } else {
            let behind = (b, fb);
            (b, fb) = (a, fa);
            behind
        };
        (a, fa) = (x, fx);
        let best = if fa.abs() < fb.abs() { a } else { b };
        let width = (b - a).abs();
        let enough = tolerance.max(4.0 * f64::EPSILON * best.abs());
        if width <= enough || fa == 0.0 {
            return Some(Found {
                at: best,
                width,
                settled: true,
            });
        }
        let (xi, phi) = ((a - b) / (c - b), (fa - fb) / (fc - fb));
        // The region in which the inverse quadratic through three points stays inside.
        t = if phi * phi < xi && (1.0 - phi) * (1.0 - phi) < 1.0 - xi {
            fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb)
        } else {
            0.5
        };
        let least = 0.5 * enough / width;
        t = t.clamp(least, 1.0 - least);
    }
    let best = if fa.abs() < fb.abs() { a } else { b };
    Some(Found {
        at: best,
        width: (b - a).abs(),
        settled: false,
    })
}

fn exact(at: f64) -> Found {
    Found {
        at,
        width: 0.0,
        settled: true,
    }
}

/// Least value of `f` on `[low, high]` by golden section: right for one valley, some valley otherwise.
#[cfg_attr(not(test), expect(dead_code, reason = "the best pressure of a rig will ask for it"))]
pub(crate) fn minimum(mut f: impl FnMut(f64) -> f64, low: f64, high: f64, tolerance: f64) -> Found {
    const GOLDEN: f64 = 0.618_033_988_749_894_9;
    let (mut a, mut b) = (low, high);
    let (mut x, mut y) = (b - GOLDEN * (b - a), a + GOLDEN * (b - a));
    let (mut fx, mut fy) = (f(x), f(y));
    for _ in 0..STEPS {
        if (b - a).abs() <= tolerance {
            break;
        }
        if fx <= fy {
            (b, y, fy) = (y, x, fx);
            x = b - GOLDEN * (b - a);
            fx = f(x);
        } else {
            (a, x, fx) = (x, y, fy);
            y = a + GOLDEN * (b - a);
            fy = f(y);
        }
    }
    let width = (b - a).abs();
    Found {
        at: 0.5 * (a + b),
        width,
        settled: width <= tolerance,
    }
}

/// Where dy/dx = `slope` leads from `start`, x running up from `from` to `to`; `None` where it does not settle.
///
/// Dormand and Prince 1980 (Journal of Computational and Applied Mathematics 6, 19), fifth order with the embedded
/// fourth. `relative` makes one number of a step's error and of what y has
/// travelled since the start; a step passes where it is at most `tolerance`. `first` is the longest first step for the
/// slope at the start: the error of a step that leaps over everything looks small.
pub(crate) fn march<Y>(
    mut slope: impl FnMut(f64, Y) -> Y,
    from: f64,
    to: f64,
    start: Y,
    first: impl Fn(Y) -> f64,
    relative: impl Fn(Y, Y) -> f64,
    tolerance: f64,
) -> Option<Y>
where
    Y: Copy + Add<Output = Y> + Mul<f64, Output = Y>,
{
    let (mut x, mut y) = (from, start);
    let mut k1 = slope(x, y);
    let mut step = first(k1).min(to - from);
    if relative(k1, k1).is_nan() {
        return None;
    }
    for _ in 0..10 * STEPS {
        if x >= to {
            return Some(y);
        }
        let last = step >= to - x;
        let h = if last { to - x } else { step };
        let k2 = slope(x + h / 5.0, y + k1 * (h / 5.0));
        let k3 = slope(x + 0.3 * h, y + (k1 * (3.0 / 40.0) + k2 * (9.0 / 40.0)) * h);
        let k4 = slope(
            x + 0.8 * h,
            y + (k1 * (44.0 / 45.0) + k2 * (-56.0 / 15.0) + k3 * (32.0 / 9.0)) * h,
        );
        let sum =
            k1 * (19_372.0 / 6561.0) + k2 * (-25_360.0 / 2187.0) + k3 * (64_448.0 / 6561.0) + k4 * (-212.0 / 729.0);
        let k5 = slope(x + h * (8.0 / 9.0), y + sum * h);
        let sum = k1 * (9017.0 / 3168.0)
            + k2 * (-355.0 / 33.0)
            + k3 * (46_732.0 / 5247.0)
            + k4 * (49.0 / 176.0)
            + k5 * (-5103.0 / 18_656.0);
        let k6 = slope(x + h, y + sum * h);
        let change = (k1 * (35.0 / 384.0)
            + k3 * (500.0 / 1113.0)
            + k4 * (125.0 / 192.0)
            + k5 * (-2187.0 / 6784.0)
            + k6 * (11.0 / 84.0))
            * h;
        let k7 = slope(x + h, y + change);
        let error = (k1 * (71.0 / 57_600.0)
            + k3 * (-71.0 / 16_695.0)
            + k4 * (71.0 / 1920.0)
            + k5 * (-17_253.0 / 339_200.0)
            + k6 * (22.0 / 525.0)
            + k7 * (-1.0 / 40.0))
            * h;
        let travelled = y + change + start * -1.0;
        let share = relative(error, travelled) / tolerance;
        if share <= 1.0 {
            (x, y, k1) = (if last { to } else { x + h }, y + change, k7);
        } else if h <= SMALLEST * (to - from) {
            return None;
        }
        // The share grows with the fourth power of the step; a step that led nowhere is tried at a fifth.
        let next = 0.9 / math::sqrt(math::sqrt(share));
        step = h * if next >= 0.2 { next.min(5.0) } else { 0.2 };
    }
    None
}

/// A quadrature rule on [−1, 1]: half of the nodes, the other half mirrored.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Rule(&'static [(f64, f64)]);

impl Rule {
    /// `f` over `[low, high]` as the polynomial through the rule's nodes, for integrals up to any point.
    pub(crate) fn series(self, mut f: impl FnMut(f64) -> f64, low: f64, high: f64) -> Series {
        let (middle, half) = (0.5 * (low + high), 0.5 * (high - low));
        let mut coefficients = vec![0.0; 2 * self.0.len()];
        for &(node, weight) in self.0 {
            let step = half * node;
            let (below, above) = (f(middle - step), f(middle + step));
            // Legendre polynomials are even and odd in turn: (even part, odd part) of f at the node.
            let (mut part, mut other) = (above + below, above - below);
            let (mut before, mut legendre, mut degree) = (0.0, 1.0, 0.0);
            for coefficient in &mut coefficients {
                *coefficient += weight * (degree + 0.5) * legendre * part;
                let next = ((2.0 * degree + 1.0) * node * legendre - degree * before) / (degree + 1.0);
                (before, legendre) = (legendre, next);
                (part, other) = (other, part);
                degree += 1.0;
            }
        }
        Series {
            middle,
            half,
            coefficients,
        }
    }

    /// ∫ f over `[low, high]`, summed in the order of the nodes.
    pub(crate) fn integrate(self, mut f: impl FnMut(f64) -> f64, low: f64, high: f64) -> f64 {
        let (middle, half) = (0.5 * (low + high), 0.5 * (high - low));
        let mut sum = 0.0;
        for &(node, weight) in self.0 {
            let step = half * node;
            sum += weight * (f(middle - step) + f(middle + step));
        }
        half * sum
    }
}

/// A polynomial in Legendre's form.
#[derive(Clone, Debug)]
pub(crate) struct Series {
    middle: f64,
    half: f64,
    coefficients: Vec<f64>,
}

impl Series {
    /// Its value at `x`.
    pub(crate) fn value(&self, x: f64) -> f64 {
        self.sum(x, |_, legendre, _, _| legendre)
    }

    /// Its integral from the low end to `x`.
    pub(crate) fn integral(&self, x: f64) -> f64 {
        // ∫ Pₖ = (Pₖ₊₁ − Pₖ₋₁)/(2k + 1), with P₋₁ = −1 so that it begins at the low end.
        self.half * self.sum(x, |before, _, next, degree| (next - before) / (2.0 * degree + 1.0))
    }

    fn sum(&self, x: f64, term: impl Fn(f64, f64, f64, f64) -> f64) -> f64 {
        let at = (x - self.middle) / self.half;
        let (mut before, mut legendre, mut degree, mut sum) = (-1.0, 1.0, 0.0, 0.0);
        for coefficient in &self.coefficients {
            let next = ((2.0 * degree + 1.0) * at * legendre - degree * before) / (degree + 1.0);
            sum += coefficient * term(before, legendre, next, degree);
            (before, legendre) = (legendre, next);
            degree += 1.0;
        }
        sum
    }
}

// Gauss–Legendre nodes and weights: roots of the Legendre polynomials, computed in 40 digits.

/// Exact for polynomials of degree 15.
pub(crate) const GAUSS_8: Rule = Rule(&[
    (0.1834346424956498, 0.362683783378362),
    (0.525532409916329, 0.31370664587788727),
    (0.7966664774136267, 0.22238103445337448),
    (0.9602898564975363, 0.10122853629037626),
]);

/// Exact for polynomials of degree 31.
pub(crate) const GAUSS_16: Rule = Rule(&[
    (0.09501250983763744, 0.1894506104550685),
    (0.2816035507792589, 0.18260341504492358),
    (0.45801677765722737, 0.16915651939500254),
    (0.6178762444026438, 0.14959598881657674),
    (0.755404408355003, 0.12462897125553388),
    (0.8656312023878318, 0.09515851168249279),
    (0.9445750230732326, 0.062253523938647894),
    (0.9894009349916499, 0.027152459411754096),
]);

/// Exact for polynomials of degree 47.
pub(crate) const GAUSS_24: Rule = Rule(&[
    (0.06405689286260563, 0.12793819534675216),
    (0.1911188674736163, 0.1258374563468283),
    (0.3150426796961634, 0.12167047292780339),
    (0.4337935076260451, 0.1155056680537256),
    (0.5454214713888396, 0.10744427011596563),
    (0.6480936519369755, 0.09761865210411388),
    (0.7401241915785544, 0.08619016153195327),
    (0.820001985973903, 0.0733464814110803),
    (0.8864155270044011, 0.05929858491543678),
    (0.9382745520027328, 0.04427743881741981),
    (0.9747285559713095, 0.028531388628933663),
    (0.9951872199970213, 0.0123412297999872),
]);

#[cfg(test)]
mod tests {
    use super::*;
    use gauss_quad::GaussLegendre;
    use proptest::prelude::*;

    #[test]
    fn nodes_agree_with_a_kept_library() {
        for (rule, degree) in [(GAUSS_8, 8), (GAUSS_16, 16), (GAUSS_24, 24)] {
            let judge = GaussLegendre::new(core::num::NonZeroUsize::new(degree).unwrap());
            let mut theirs: Vec<(f64, f64)> = judge.as_node_weight_pairs().to_vec();
            theirs.retain(|(node, _)| *node > 0.0);
            theirs.sort_by(|a, b| a.0.total_cmp(&b.0));
            assert_eq!(theirs.len(), rule.0.len());
            for (ours, theirs) in rule.0.iter().zip(&theirs) {
                assert!((ours.0 - theirs.0).abs() < 1e-14 && (ours.1 - theirs.1).abs() < 1e-14);
            }
        }
    }

    #[test]
    fn a_rule_is_exact_up_to_its_degree() {
        for (rule, degree) in [(GAUSS_8, 15), (GAUSS_16, 31), (GAUSS_24, 47)] {
            let got = rule.integrate(|x: f64| (0..degree).fold(1.0, |p, _| p * x), 0.0, 1.0);
            assert!((got * f64::from(degree + 1) - 1.0).abs() < 1e-13);
        }
    }

    #[test]
    fn hard_roots_are_found() {
        let cube = root(|x| (x - 1.0) * (x - 1.0) * (x - 1.0), -4.0, 6.5, 1e-12).unwrap();
        assert!(cube.settled && (cube.at - 1.0).abs() < 1e-5);
        let steep = root(|x| if x < 0.3 { -1e-300 } else { 1e300 }, 0.0, 1.0, 1e-12).unwrap();
        assert!(steep.settled && (steep.at - 0.3).abs() < 1e-12);
        assert!(root(|x| x * x + 1.0, -1.0, 1.0, 1e-9).is_none());
        assert!(root(|_| f64::NAN, -1.0, 1.0, 1e-9).is_none());
    }

    #[test]
    fn a_series_is_what_it_went_through() {
        let series = GAUSS_24.series(math::exp, -0.5, 1.5);
        for x in [-0.5, -0.2, 0.7, 1.5] {
            assert!((series.value(x) - math::exp(x)).abs() < 1e-13);
            assert!((series.integral(x) - (math::exp(x) - math::exp(-0.5))).abs() < 1e-14);
        }
        assert!((series.integral(1.5) - GAUSS_24.integrate(math::exp, -0.5, 1.5)).abs() < 1e-14);
    }

    #[test]
    fn a_march_follows_its_slope() {
        let free = |_| f64::INFINITY;
        let relative = |error: f64, travelled: f64| error.abs() / travelled.abs();
        let grown = march(|_, y: f64| y, 0.0, 1.0, 1.0, free, relative, 1e-9).unwrap();
        assert!((grown / core::f64::consts::E - 1.0).abs() < 1e-9);
        let quintic = march(|x: f64, _| 5.0 * x * x * x * x, -1.0, 3.0, 0.0, free, relative, 1.0).unwrap();
        assert!((quintic - 244.0).abs() < 1e-11);
        assert!(march(|_, _: f64| f64::NAN, 0.0, 1.0, 1.0, free, relative, 1e-9).is_none());
        assert!(march(|_, y: f64| y * y, 0.0, 2.0, 1.0, free, relative, 1e-9).is_none());
    }

    proptest! {
        #[test]
        fn a_root_is_where_it_was_put(at in -50.0..50.0_f64, bend in 0.0..3.0_f64) {
            let found = root(|x| (x - at) * (1.0 + bend * (x - at) * (x - at)), -60.0, 61.0, 1e-12).unwrap();
            prop_assert!(found.settled && (found.at - at).abs() < 1e-11);
        }

        #[test]
        fn a_valley_is_found(at in -1.0..1.0_f64) {
            let found = minimum(|x| (x - at) * (x - at), -2.0, 2.0, 1e-6);
            prop_assert!(found.settled && (found.at - at).abs() < 1e-5);
        }
    }
}
