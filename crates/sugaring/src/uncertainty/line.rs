use alloc::format;

use crate::{
    error::Error,
    math,
    relation::Range,
    units::{Measured, measured, table},
};

/// The straight line through points by least squares, with the covariance of its two figures.
///
/// y = a + b(x − x₀); b = Σ(xᵢ − x̄)(yᵢ − ȳ)/S, S = Σ(xᵢ − x̄)²; s² = Σ(yᵢ − a − b(xᵢ − x₀))²/(n − 2);
/// u²(b) = s²/S, u²(a) = s²[1/n + (x₀ − x̄)²/S], u(a, b) = s²(x₀ − x̄)/S
///
/// | symbol | meaning | range |
/// |---|---|---|
/// | x, y | the points, whose x is exact and whose y all scatter alike | −1e100 to 1e100, three or more |
/// | x₀ | where a is the height of the line | −1e100 to 1e100 |
/// | a, b | intercept and slope | |
/// | s | standard deviation of the residuals | |
///
/// # Errors
/// Inconsistent: fewer than three points, lengths that differ, or x that are all alike. Out of range; not finite.
/// # Source
/// JCGM 100:2008, H.3.2, equations H.13.
/// # Examples
/// A thermometer against a reference, and its correction at 30 °C:
/// ```
/// use sugaring::uncertainty::line_fit;
/// let reading = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511];
/// let correction = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160];
/// let line = line_fit(&reading, &correction, 20.0)?;
/// let at_30 = line.at(30.0);
/// assert_eq!(format!("{:.4} ± {:.4}", at_30.value, at_30.uncertainty), "-0.1494 ± 0.0041");
/// assert_eq!(
///     line_fit(&[20.0, 20.0, 20.0], &[0.1, 0.2, 0.3], 20.0).unwrap_err().to_string(),
///     "x = 20 does not fit a line; the points need a spread in x"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn line_fit(x: &[f64], y: &[f64], x0: f64) -> Result<Line, Error> {
    check(x, y, x0)?;
    let (low, high) = (
        x.iter().fold(f64::INFINITY, |low, x| low.min(*x)),
        x.iter().fold(f64::NEG_INFINITY, |high, x| high.max(*x)),
    );
    let span = high - low;
    // Below it the spread is rounding.
    if span <= (1e-12 * low.abs().max(high.abs())).max(1e-100) {
        let shown = crate::digits::significant(low, 6);
        return Err(Error::inconsistent("x", &shown, "a line").with_hint("the points need a spread in x"));
    }
    #[expect(clippy::cast_precision_loss, reason = "no more points than fit into memory")]
    let n = x.len() as f64;
    let mean = |values: &[f64]| {
        let about = values.first().copied().unwrap_or_default();
        about + values.iter().map(|value| value - about).sum::<f64>() / n
    };
    let (x_mean, y_mean) = (mean(x), mean(y));
    // In parts of the span, so that no square is too small.
    let apart = |x: f64| (x - x_mean) / span;
    let points = || x.iter().zip(y).map(|(x, y)| (apart(*x), y - y_mean));
    let squares: f64 = points().map(|(d, _)| d * d).sum();
    let slope = points().map(|(d, e)| d * e).sum::<f64>() / squares;
    let residuals: f64 = points().map(|(d, e)| (e - slope * d) * (e - slope * d)).sum();
    let freedom = n - 2.0;
    let variance = residuals / freedom;
    let from_mean = apart(x0);
    let slope_variance = variance / squares;
    let joint = from_mean * slope_variance / span;
    let line = Line {
        intercept: y_mean + slope * from_mean,
        slope: slope / span,
        covariance: [
            [variance / n + from_mean * from_mean * slope_variance, joint],
            [joint, slope_variance / span / span],
        ],
        residual_deviation: math::sqrt(variance),
        degrees_of_freedom: freedom,
        reference: x0,
        low,
        high,
    };
    let [[a, ab], [_, b]] = line.covariance;
    match [line.intercept, line.slope, a, ab, b]
        .into_iter()
        .find(|figure| !figure.is_finite())
    {
        Some(figure) => Err(Error::not_finite("line", figure)),
        None => Ok(line),
    }
}

/// A straight line y = a + b(x − x₀) and how well it is known.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Line {
    /// Its height at the reference.
    pub intercept: f64,
    /// Its slope.
    pub slope: f64,
    /// Variances of intercept and slope, and their covariance beside the diagonal.
    pub covariance: [[f64; 2]; 2],
    /// Standard deviation of the points about it.
    pub residual_deviation: f64,
    /// Points less the two figures that were found.
    pub degrees_of_freedom: f64,
    /// Where the intercept is its height.
    pub reference: f64,
    /// The least x of the points: below, the line is a guess.
    pub low: f64,
    /// The largest x of the points: above, the line is a guess.
    pub high: f64,
}

impl Line {
    /// Its height at `x`, and the standard uncertainty of that from intercept and slope together.
    #[must_use]
    pub fn at(&self, x: f64) -> Measured<f64> {
        let d = x - self.reference;
        let [[a, ab], [_, b]] = self.covariance;
        let variance = a + 2.0 * d * ab + d * d * b;
        measured(self.intercept + self.slope * d, math::sqrt(variance.max(0.0)))
    }

    /// Correlation of intercept and slope; 0 where one of them is exact.
    #[must_use]
    pub fn correlation(&self) -> f64 {
        let [[a, ab], [_, b]] = self.covariance;
        let product = math::sqrt(a) * math::sqrt(b);
        if product > 0.0 {
            (ab / product).clamp(-1.0, 1.0)
        } else {
            0.0
        }
    }
}

const POINT: Range = Range::new("", &table::fraction, -1e100, 1e100);

fn check(x: &[f64], y: &[f64], x0: f64) -> Result<(), Error> {
    if x.len() != y.len() {
        let shown = format!("{} numbers", x.len());
        return Err(Error::inconsistent("x", &shown, &format!("y = {} numbers", y.len())));
    }
    if x.len() < 3 {
        let shown = format!("{} points", x.len());
        return Err(Error::inconsistent("x", &shown, "a line and its uncertainty").with_hint("three points at least"));
    }
    for (name, values) in [("x", x), ("y", y)] {
        for (i, value) in values.iter().enumerate() {
            POINT
                .check(*value)
                .map_err(|error| error.named(&format!("{name}[{i}]")))?;
        }
    }
    POINT.check(x0).map_err(|error| error.named("x0")).map(|_| ())
}

#[cfg(test)]
mod tests {
    use super::*;
    use alloc::string::ToString;
    use proptest::prelude::*;

    #[test]
    fn what_is_no_line_is_refused() {
        let text = |x: &[f64], y: &[f64]| line_fit(x, y, 0.0).unwrap_err().to_string();
        assert_eq!(text(&[1.0, 2.0], &[1.0]), "x = 2 numbers does not fit y = 1 numbers");
        assert_eq!(
            text(&[1.0, 2.0], &[1.0, 2.0]),
            "x = 2 points does not fit a line and its uncertainty; three points at least"
        );
        assert_eq!(
            text(&[1.0, 2.0, 3.0], &[1.0, f64::NAN, 3.0]),
            "y[1] = NaN is not a finite number"
        );
        assert_eq!(
            text(&[1.0, 2.0, 1e200], &[1.0, 2.0, 3.0]),
            "x[2] = 1e200 is outside -1e100 to 1e100"
        );
    }

    proptest! {
        #[test]
        fn points_on_a_line_give_it_back(a in -10.0..10.0_f64, b in -10.0..10.0_f64, x0 in -5.0..5.0_f64) {
            let x = [-1.0, 0.5, 2.0, 3.0];
            let line = line_fit(&x, &x.map(|x| a + b * (x - x0)), x0).unwrap();
            prop_assert!((line.intercept - a).abs() < 1e-12 * (1.0 + a.abs() + b.abs() * 10.0));
            prop_assert!((line.slope - b).abs() < 1e-12 * (1.0 + a.abs() + b.abs()));
            prop_assert!(line.residual_deviation < 1e-12);
        }

        #[test]
        fn where_the_intercept_lies_changes_nothing(y in prop::array::uniform4(-1.0..1.0_f64), x0 in -5.0..5.0_f64) {
            let x = [-1.0, 0.5, 2.0, 3.0];
            let (here, there) = (line_fit(&x, &y, 0.0).unwrap(), line_fit(&x, &y, x0).unwrap());
            prop_assert!((here.at(7.0).value - there.at(7.0).value).abs() < 1e-12);
            prop_assert!((here.at(7.0).uncertainty - there.at(7.0).uncertainty).abs() < 1e-9);
            prop_assert!(there.correlation().abs() <= 1.0);
        }

        #[test]
        fn any_number_is_taken(x in prop::array::uniform3(any::<f64>()), y in prop::array::uniform3(any::<f64>())) {
            if let Ok(line) = line_fit(&x, &y, y[0]) {
                let _ = (line.at(x[0]), line.correlation());
            }
        }
    }
}
