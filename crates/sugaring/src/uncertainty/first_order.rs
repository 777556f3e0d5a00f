use alloc::{string::String, vec::Vec};

use super::{
    causes::{Cause, Causes, Correlated},
    coverage::coverage_factor,
    spread::Spread,
};
use crate::{error::Error, math, units::Ratio};

/// How uncertain inputs make the result of `model` uncertain, to first order, and how much each has a part in it.
///
/// u² = Σ Σ rᵢⱼ eᵢ eⱼ, with eᵢ = [f(x + uᵢ) − f(x − uᵢ)]/2, where all inputs of one cause move at once;
/// ν = u⁴/Σ(eᵢ⁴/νᵢ).
///
/// | symbol | meaning |
/// |---|---|
/// | x, uᵢ | the inputs; standard uncertainty of those of cause i |
/// | eᵢ | effect of one standard uncertainty of cause i |
/// | rᵢⱼ | correlation of two inputs, 0 unless said, 1 with itself |
/// | νᵢ | degrees of freedom of cause i, the least of its inputs |
/// | u, ν | standard uncertainty of the result, and its effective degrees of freedom |
///
/// Where f(x + uᵢ) or f(x − uᵢ) is refused, the effect is what the other side shows, and the contribution says so.
///
/// First order takes the model for a straight line within ± u. Near a turning point it is too small, by 28 % in
/// JCGM 101:2008, 9.3: there [`monte_carlo`](super::monte_carlo) decides.
///
/// # Errors
/// What `model` refuses at the inputs themselves, or on both sides of one; `model` not finite. Inconsistent: two
/// inputs of one name, a correlation of what is not normal or shares a cause, correlations that cannot be together.
/// Unknown name: a correlation with no input.
/// # Source
/// JCGM 100:2008, 5.1.2, 5.1.3 note 2 (the step), 5.2.2 and G.4.1; one cause as the joint effect of its inputs: 5.2.4
/// and F.1.2.3.
/// # Examples
/// Syrup read by a hydrometer in a cup: which instrument to better first.
/// ```
/// use sugaring::{sucrose, uncertainty::{Spread, propagate}, units::*};
/// let inputs = [Spread::new("brix", 66.9, 0.15)?, Spread::new("temperature", 25.0, 0.5)?];
/// let density = |x: &[f64]| match x {
///     [w, t] => sucrose::density(brix(*w)?, deg_c(*t)).map(|density| density.get::<kg_per_m3>()),
///     _ => Ok(f64::NAN),
/// };
/// let found = propagate(density, &inputs)?;
/// assert_eq!(format!("{:.1} ± {:.1}", found.value, found.uncertainty), "1325.6 ± 1.0");
/// let first = &found.contributions[0];
/// assert_eq!((first.name.as_str(), format!("{:.2}", first.share)), ("brix", "0.93".to_string()));
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// use sugaring::uncertainty::{Spread, propagate};
/// let inputs = [Spread::exact("x", 0.0)?];
/// assert_eq!(propagate(|x| 1.0 / x[0], &inputs).unwrap_err().to_string(), "model = infinity is not a finite number");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn propagate<M: ModelValue>(mut model: impl FnMut(&[f64]) -> M, inputs: &[Spread]) -> Result<Propagated, Error> {
    first_order(&mut |x| finite(model(x)), inputs)
}

/// What a model may return: a number, or a number that may be refused.
pub trait ModelValue: sealed::Sealed {
    /// The number, or why there is none.
    ///
    /// # Errors
    /// Those of the model.
    fn result(self) -> Result<f64, Error>;
}

mod sealed {
    pub trait Sealed {}
    impl Sealed for f64 {}
    impl Sealed for Result<f64, crate::error::Error> {}
}

impl ModelValue for f64 {
    fn result(self) -> Result<f64, Error> {
        Ok(self)
    }
}

impl ModelValue for Result<f64, Error> {
    fn result(self) -> Result<f64, Error> {
        self
    }
}

/// The number of a model, which must be one.
pub(super) fn finite(value: impl ModelValue) -> Result<f64, Error> {
    let value = value.result()?;
    if value.is_finite() {
        Ok(value)
    } else {
        Err(Error::not_finite("model", value))
    }
}

/// A result with its standard uncertainty to first order, and where that comes from.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Propagated {
    /// The model at the inputs.
    pub value: f64,
    /// Its standard uncertainty.
    pub uncertainty: f64,
    /// Effective degrees of freedom (Welch and Satterthwaite); infinite where those of every input are.
    pub degrees_of_freedom: f64,
    /// What each input, or shared cause, has to do with it; the largest first.
    pub contributions: Vec<Contribution>,
}

/// The part that one input, or one shared cause, has in an uncertainty.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Contribution {
    /// Name of the input, or of the cause that several share.
    pub name: String,
    /// Change of the result with the input; `None` of a shared cause, and of an input that is known.
    pub sensitivity: Option<f64>,
    /// Effect of one standard uncertainty, with its sign.
    pub uncertainty: f64,
    /// Share of the variance. Shares add up to 1; beside a correlation one may be negative.
    pub share: f64,
    /// Whether one of the two steps was refused, and the effect is that of the other.
    pub one_sided: bool,
}

impl Propagated {
    /// How many standard uncertainties to either side hold the truth with `coverage`.
    ///
    /// That of [`coverage_factor`](super::coverage_factor()) for its effective degrees of freedom.
    ///
    /// # Errors
    /// Coverage out of range.
    pub fn coverage_factor(&self, coverage: Ratio) -> Result<f64, Error> {
        // Infinite ones are more than the limit of the normal distribution.
        coverage_factor(coverage, self.degrees_of_freedom.min(1e300))
    }

    /// The interval that holds the truth with `coverage`, as many standard uncertainties to either side.
    ///
    /// # Errors
    /// Coverage out of range.
    ///
    /// ```
    /// use sugaring::{uncertainty::{Spread, propagate}, units::percent};
    /// let found = propagate(|x| x[0] + x[1], &[Spread::new("a", 1.0, 0.3)?, Spread::new("b", 2.0, 0.4)?])?;
    /// let (low, high) = found.interval(percent(95.0))?;
    /// assert_eq!(format!("{low:.2} to {high:.2}"), "2.02 to 3.98");
    /// assert_eq!(
    ///     found.interval(percent(100.0)).unwrap_err().to_string(),
    ///     "coverage = 1 is outside 0.0001 to 0.9999"
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn interval(&self, coverage: Ratio) -> Result<(f64, f64), Error> {
        let half = self.coverage_factor(coverage)? * self.uncertainty;
        Ok((self.value - half, self.value + half))
    }
}

type Model<'m> = &'m mut dyn FnMut(&[f64]) -> Result<f64, Error>;

fn first_order(model: Model, inputs: &[Spread]) -> Result<Propagated, Error> {
    let causes = Causes::of(inputs)?;
    let mut at: Vec<f64> = inputs.iter().map(Spread::value).collect();
    let value = model(&at)?;
    let mut contributions = Vec::with_capacity(causes.list.len());
    for cause in &causes.list {
        contributions.push(contribution(model, inputs, cause, value, &mut at)?);
    }
    let effects: Vec<f64> = contributions.iter().map(|c| c.uncertainty).collect();
    let largest = effects.iter().fold(0.0, |largest: f64, e| largest.max(e.abs()));
    let (mut uncertainty, mut degrees_of_freedom) = (0.0, f64::INFINITY);
    if largest > 0.0 {
        // In parts of the largest, so that no square is too large or too small.
        let effects: Vec<f64> = effects.iter().map(|e| e / largest).collect();
        let with = joint(&effects, causes.correlated.as_ref());
        let variance: f64 = effects.iter().zip(&with).map(|(e, joint)| e * joint).sum();
        let squares: f64 = effects.iter().map(|e| e * e).sum();
        // What rounding leaves where correlated effects cancel is nothing.
        if variance > 4.0 * f64::EPSILON * squares {
            uncertainty = largest * math::sqrt(variance);
            for ((contribution, e), joint) in contributions.iter_mut().zip(&effects).zip(&with) {
                contribution.share = e * joint / variance;
            }
            let freedom = causes.list.iter().map(|cause| freedom(inputs, cause));
            let parts = effects.iter().zip(freedom).map(|(e, freedom)| {
                let share = e * e / variance;
                share * share / freedom
            });
            degrees_of_freedom = 1.0 / parts.sum::<f64>();
        }
    }
    if !uncertainty.is_finite() {
        return Err(Error::not_finite("model", uncertainty));
    }
    contributions.sort_by(|a, b| b.uncertainty.abs().total_cmp(&a.uncertainty.abs()));
    Ok(Propagated {
        value,
        uncertainty,
        degrees_of_freedom,
        contributions,
    })
}

/// Moves all inputs of `cause` up and down; `at` holds the inputs before and after.
fn contribution(
    model: Model,
    inputs: &[Spread],
    cause: &Cause,
    value: f64,
    at: &mut [f64],
) -> Result<Contribution, Error> {
    let mut contribution = Contribution {
        name: cause.name.into(),
        sensitivity: None,
        uncertainty: 0.0,
        share: 0.0,
        one_sided: false,
    };
    let members = || cause.members.iter().filter_map(|&i| Some((i, inputs.get(i)?)));
    if members().all(|(_, input)| input.uncertainty() == 0.0) {
        return Ok(contribution);
    }
    let mut moved = |by: f64| {
        for (i, input) in members() {
            if let Some(x) = at.get_mut(i) {
                *x = input.value() + by * input.uncertainty();
            }
        }
        model(at)
    };
    let (above, below) = (moved(1.0), moved(-1.0));
    for (i, input) in members() {
        if let Some(x) = at.get_mut(i) {
            *x = input.value();
        }
    }
    contribution.one_sided = above.is_err() != below.is_err();
    contribution.uncertainty = match (above, below) {
        (Ok(above), Ok(below)) => 0.5 * above - 0.5 * below,
        (Ok(above), Err(_)) => above - value,
        (Err(_), Ok(below)) => value - below,
        (Err(error), Err(_)) => return Err(error),
    };
    if !contribution.uncertainty.is_finite() {
        return Err(Error::not_finite("model", contribution.uncertainty));
    }
    if let [only] = cause.members.as_slice() {
        contribution.sensitivity = inputs
            .get(*only)
            .map(|input| contribution.uncertainty / input.uncertainty());
    }
    Ok(contribution)
}

/// Σⱼ rᵢⱼ eⱼ of each cause.
fn joint(effects: &[f64], correlated: Option<&Correlated>) -> Vec<f64> {
    let mut joint = effects.to_vec();
    let Some(correlated) = correlated else { return joint };
    let effects: Vec<f64> = correlated
        .places
        .iter()
        .filter_map(|&place| effects.get(place).copied())
        .collect();
    for (row, &place) in correlated.matrix.iter().zip(&correlated.places) {
        if let Some(joint) = joint.get_mut(place) {
            *joint = row.iter().zip(&effects).map(|(r, e)| r * e).sum();
        }
    }
    joint
}

fn freedom(inputs: &[Spread], cause: &Cause) -> f64 {
    let members = cause.members.iter().filter_map(|&i| inputs.get(i));
    members.fold(f64::INFINITY, |least, input| least.min(input.degrees_of_freedom()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Si;
    use alloc::format;
    use proptest::prelude::*;

    fn spread(name: &str, value: f64, uncertainty: f64) -> Spread {
        Spread::new(name, value, uncertainty).unwrap()
    }

    /// One thermometer in boiling water and at the finish.
    #[test]
    #[expect(clippy::float_cmp, reason = "it is to be nothing at all")]
    fn a_shared_cause_leaves_a_difference_alone() {
        let inputs = ["water", "finish"].map(|name| spread(name, 100.0, 0.3).with_cause("thermometer"));
        let found = propagate(|x| x[1] - x[0], &inputs).unwrap();
        assert_eq!(found.uncertainty, 0.0);
        assert_eq!(found.contributions.len(), 1);
        assert_eq!(found.contributions[0].name, "thermometer");
        assert_eq!(found.contributions[0].sensitivity, None);
        let sum = propagate(|x| x[1] + x[0], &inputs).unwrap();
        assert!((sum.uncertainty - 0.6).abs() < 1e-12);
    }

    #[test]
    #[expect(clippy::float_cmp, reason = "these are exact")]
    fn what_one_side_refuses_the_other_shows() {
        let root = |x: &[f64]| {
            if x[0] >= 0.0 {
                Ok(x[0])
            } else {
                Err(Error::missing("root"))
            }
        };
        let found = propagate(root, &[spread("x", 0.125, 0.25)]).unwrap();
        assert!(found.contributions[0].one_sided && found.contributions[0].uncertainty == 0.25);
        let wide = |x: &[f64]| if x[0] == 1.0 { 1.0 } else { f64::NAN };
        let error = propagate(wide, &[spread("x", 1.0, 0.25)]).unwrap_err();
        assert_eq!(format!("{error}"), "model = NaN is not a finite number");
        assert!(!propagate(|x| x[0], &[spread("x", 1.0, 0.25)]).unwrap().contributions[0].one_sided);
    }

    #[test]
    fn correlations_enter_the_sum() {
        let with = |r: f64| {
            let inputs = [
                spread("a", 1.0, 0.3).with_correlation("b", r).unwrap(),
                spread("b", 2.0, 0.4),
                spread("c", 2.0, 0.0),
            ];
            propagate(|x| x[0] - x[1] + x[2], &inputs).unwrap()
        };
        for r in [-1.0_f64, -0.5, 0.0, 0.9, 1.0] {
            let expected = libm::sqrt(0.25 - 2.0 * r * 0.12);
            let found = with(r);
            assert!((found.uncertainty - expected).abs() < 1e-12, "{r}");
            let shares: f64 = found.contributions.iter().map(|c| c.share).sum();
            assert!((shares - 1.0).abs() < 1e-12, "{r}");
        }
        let alike = [
            spread("a", 1.0, 0.3).with_correlation("b", 1.0).unwrap(),
            spread("b", 2.0, 0.3),
        ];
        let none = propagate(|x| x[0] - x[1], &alike).unwrap();
        assert_eq!(none.uncertainty.to_bits(), 0);
        assert!(none.degrees_of_freedom.is_infinite());
    }

    proptest! {
        #[test]
        fn shares_add_up(u in prop::array::uniform3(0.0..2.0_f64), x in prop::array::uniform3(-3.0..3.0_f64)) {
            let inputs = [spread("a", x[0], u[0]), spread("b", x[1], u[1]), spread("c", x[2], u[2])];
            let found = propagate(|x| x[0] * x[1] + 3.0 * x[2], &inputs).unwrap();
            let shares: f64 = found.contributions.iter().map(|c| c.share).sum();
            prop_assert!((shares - 1.0).abs() < 1e-12 || found.uncertainty == 0.0);
            let effects: Vec<f64> = found.contributions.iter().map(|c| c.uncertainty.abs()).collect();
            prop_assert!(effects.is_sorted_by(|a, b| a >= b));
            let squares: f64 = effects.iter().map(|e| e * e).sum();
            prop_assert!((found.uncertainty * found.uncertainty - squares).abs() < 1e-9 * (1.0 + squares));
        }

        #[test]
        fn a_linear_model_scales(k in 1e-3..1e3_f64, u in prop::array::uniform2(1e-3..2.0_f64)) {
            let model = |x: &[f64]| 2.0 * x[0] - 5.0 * x[1];
            let of = |k: f64| propagate(model, &[spread("a", 1.0, k * u[0]), spread("b", -1.0, k * u[1])]).unwrap();
            prop_assert!((of(k).uncertainty / of(1.0).uncertainty / k - 1.0).abs() < 1e-9);
        }

        #[test]
        fn without_uncertainty_it_is_the_plain_result(x in -100.0..100.0_f64) {
            let found = propagate(|x| x[0] * x[0], &[Spread::exact("x", x).unwrap()]).unwrap();
            prop_assert_eq!(found.value.to_bits(), (x * x).to_bits());
            prop_assert_eq!((found.uncertainty.to_bits(), found.contributions[0].share.to_bits()), (0, 0));
        }

        #[test]
        fn a_wider_interval_holds_a_narrower(p in 0.01..0.9_f64, nu in 1.0..50.0_f64) {
            let inputs = [spread("x", 1.0, 0.25).with_degrees_of_freedom(nu).unwrap()];
            let found = propagate(|x| x[0], &inputs).unwrap();
            let (inner, outer) = (found.interval(Ratio::of_si(p)).unwrap(), found.interval(Ratio::of_si(p + 0.05)).unwrap());
            prop_assert!(outer.0 < inner.0 && inner.1 < outer.1);
        }

        #[test]
        fn any_number_is_taken(x in any::<f64>(), u in any::<f64>(), y in any::<f64>(), nu in any::<f64>()) {
            let spread = Spread::new("x", x, u).and_then(|spread| spread.with_degrees_of_freedom(nu));
            if let Ok(found) = spread.and_then(|spread| propagate(|x| x[0] * y, &[spread])) {
                let _ = found.interval(Ratio::of_si(nu));
            }
        }
    }
}
