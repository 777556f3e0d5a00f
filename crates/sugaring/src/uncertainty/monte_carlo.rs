use alloc::{format, string::String, vec, vec::Vec};

use super::{
    first_order::{ModelValue, finite},
    sampled::{Sampled, middle, spread_of},
    sampler::{BLOCK, Sampler},
    spread::Spread,
};
use crate::{
    digits,
    error::{Error, ErrorKind},
    relation::Range,
    units::table,
};

/// How uncertain inputs make the result of `model` uncertain, by drawing the inputs many times.
///
/// Each draw takes one uniform number a cause, which the quantile function of each of its inputs makes a value;
/// correlated normal inputs are mixed by the Cholesky factor of their correlations. The same seed gives the same bits
/// on every machine and in every language.
///
/// # Errors
/// What `model` refuses in any draw, with the inputs of that draw; `model` not finite. The number of samples out of
/// range. No convergence: 10⁷ draws do not reach the wanted tolerance. And those of
/// [`propagate`](super::propagate()) about the inputs.
/// # Source
/// JCGM 101:2008, 5.9, 6.4 and 7; the adaptive number of draws 7.9.4.
/// # Examples
/// Four alike, of rectangular spread: the middle 95 % is narrower than that of a normal distribution.
/// ```
/// use sugaring::uncertainty::{Distribution, Samples, Spread, monte_carlo};
/// let inputs = ["a", "b", "c", "d"]
///     .map(|name| Spread::new(name, 0.0, 1.0).map(|s| s.with_distribution(Distribution::Rectangular)))
///     .into_iter()
///     .collect::<Result<Vec<_>, _>>()?;
/// let found = monte_carlo(|x| x.iter().sum::<f64>(), &inputs, 1, Samples::Count(100_000))?;
/// assert_eq!(format!("{:.1} to {:.1}", found.low, found.high), "-3.9 to 3.9");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// A draw that the model refuses is not left out:
/// ```
/// use sugaring::{Error, sucrose, uncertainty::{Samples, Spread, monte_carlo}, units::*};
/// let density = |x: &[f64]| Ok::<f64, Error>(sucrose::density(brix(x[0])?, deg_c(4.0))?.get::<kg_per_m3>());
/// let error = monte_carlo(density, &[Spread::new("brix", 0.1, 0.1)?], 1, Samples::Count(1000)).unwrap_err();
/// assert!(error.to_string().starts_with("brix = -"));
/// assert!(error.hint().is_some_and(|hint| hint.starts_with("draw ")));
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn monte_carlo<M: ModelValue>(
    model: impl FnMut(&[f64]) -> M,
    inputs: &[Spread],
    seed: u64,
    samples: Samples,
) -> Result<Sampled, Error> {
    monte_carlo_watched(model, inputs, seed, samples, &mut |_| true)
}

/// [`monte_carlo`] that tells `progress` the share done, 0 to 1, at most about a hundred times, and stops where it
/// returns false.
///
/// # Errors
/// As [`monte_carlo`]; cancelled.
pub fn monte_carlo_watched<M: ModelValue>(
    mut model: impl FnMut(&[f64]) -> M,
    inputs: &[Spread],
    seed: u64,
    samples: Samples,
    progress: &mut dyn FnMut(f64) -> bool,
) -> Result<Sampled, Error> {
    let mut draw = vec![0.0; inputs.len()];
    let mut by_draw = |columns: &[&[f64]], out: &mut [f64]| {
        for (lane, y) in out.iter_mut().enumerate() {
            for (x, column) in draw.iter_mut().zip(columns) {
                *x = column.get(lane).copied().unwrap_or(f64::NAN);
            }
            *y = finite(model(&draw)).map_err(|error| (Some(lane), error))?;
        }
        Ok(())
    };
    run(&mut by_draw, inputs, seed, samples, progress)
}

/// [`monte_carlo_watched`] with a model of columns: it gets one column an input, all of one length, and writes the
/// result of each draw.
///
/// # Errors
/// As [`monte_carlo_watched`]; the first result that is left not finite counts as refused.
///
/// ```
/// use sugaring::uncertainty::{Samples, Spread, monte_carlo, monte_carlo_columns};
/// let inputs = [Spread::new("a", 1.0, 0.3)?, Spread::new("b", 2.0, 0.4)?];
/// let sum = |columns: &[&[f64]], out: &mut [f64]| {
///     for ((y, a), b) in out.iter_mut().zip(columns[0]).zip(columns[1]) {
///         *y = a + b;
///     }
///     Ok(())
/// };
/// let found = monte_carlo_columns(sum, &inputs, 1, Samples::Count(1000), &mut |_| true)?;
/// assert_eq!(found, monte_carlo(|x| x[0] + x[1], &inputs, 1, Samples::Count(1000))?);
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn monte_carlo_columns(
    mut model: impl FnMut(&[&[f64]], &mut [f64]) -> Result<(), Error>,
    inputs: &[Spread],
    seed: u64,
    samples: Samples,
    progress: &mut dyn FnMut(f64) -> bool,
) -> Result<Sampled, Error> {
    let mut by_column = |columns: &[&[f64]], out: &mut [f64]| {
        out.fill(f64::NAN);
        model(columns, out).map_err(|error| (None, error))?;
        match out.iter().enumerate().find(|(_, y)| !y.is_finite()) {
            Some((lane, &y)) => Err((Some(lane), Error::not_finite("model", y))),
            None => Ok(()),
        }
    };
    run(&mut by_column, inputs, seed, samples, progress)
}

/// How many draws: a number, or as many as it takes.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum Samples {
    /// So many, 100 to 10⁷.
    Count(u32),
    /// Until twice the standard error of value, uncertainty and both ends of the 95 % interval is at most this.
    Until(f64),
    /// Until that is at most half a unit of the last of so many significant digits of the uncertainty, 1 to 4.
    Digits(u8),
}

const COUNT: Range = Range::new("samples", &table::fraction, 100.0, MOST as f64);
const UNTIL: Range = Range::new("samples.until", &table::fraction, 0.0, 1e300);
const DIGITS: Range = Range::new("samples.digits", &table::fraction, 1.0, 4.0);

/// More would fill the memory of a browser.
const MOST: u32 = 10_000_000;
/// Draws of one step of the adaptive way: the larger of 100/(1 − 0.95) and 10⁴ (JCGM 101:2008, 7.9.4 b).
const STAGE: usize = 10_000;

/// Takes columns and leaves results; or says which lane was refused, where it is one, and why.
type Model<'m> = &'m mut dyn FnMut(&[&[f64]], &mut [f64]) -> Result<(), (Option<usize>, Error)>;

fn run(
    model: Model,
    inputs: &[Spread],
    seed: u64,
    samples: Samples,
    progress: &mut dyn FnMut(f64) -> bool,
) -> Result<Sampled, Error> {
    let mut work = Work {
        model,
        sampler: Sampler::new(inputs, seed)?,
        inputs,
        values: Vec::new(),
        progress,
        told: 0.0,
    };
    match samples {
        Samples::Count(count) => {
            COUNT.check(f64::from(count))?;
            work.told(0.0)?;
            let count = count as usize;
            work.values.reserve_exact(count);
            work.draw(count, count)?;
        }
        Samples::Until(tolerance) => {
            let tolerance = UNTIL.check(tolerance)?;
            work.told(0.0)?;
            work.settle(&|_| tolerance)?;
        }
        Samples::Digits(digits) => {
            DIGITS.check(f64::from(digits))?;
            work.told(0.0)?;
            work.settle(&|uncertainty| half_last_digit(uncertainty, digits))?;
        }
    }
    let sampled = Sampled::of(work.values)?;
    // The rest was sorting.
    Ok(sampled)
}

struct Work<'m, 's, 'p> {
    model: Model<'m>,
    sampler: Sampler<'s>,
    inputs: &'s [Spread],
    values: Vec<f64>,
    progress: &'p mut dyn FnMut(f64) -> bool,
    told: f64,
}

impl Work<'_, '_, '_> {
    fn told(&mut self, share: f64) -> Result<(), Error> {
        self.told = share;
        if (self.progress)(share) {
            Ok(())
        } else {
            Err(Error::new(ErrorKind::Cancelled, "", "the work was stopped"))
        }
    }

    /// So many more draws of `whole`.
    fn draw(&mut self, count: usize, whole: usize) -> Result<(), Error> {
        let end = self.values.len() + count;
        while self.values.len() < end {
            let start = self.values.len();
            let block = (end - start).min(BLOCK);
            let columns = self.sampler.next(block);
            self.values.resize(start + block, f64::NAN);
            let out = self.values.get_mut(start..).unwrap_or_default();
            (self.model)(&columns, out).map_err(|(lane, error)| refused(error, lane, start, self.inputs, &columns))?;
            let share = part(self.values.len(), whole);
            if share >= self.told + 0.01 {
                self.told(share.min(1.0))?;
            }
        }
        Ok(())
    }

    /// Draws stage by stage until four figures stand still (JCGM 101:2008, 7.9.4).
    fn settle(&mut self, tolerance: &dyn Fn(f64) -> f64) -> Result<(), Error> {
        // Value, uncertainty, low and high of each stage.
        let mut stages: Vec<[f64; 4]> = Vec::new();
        let mut whole = MOST as usize;
        loop {
            let start = self.values.len();
            self.draw(STAGE, whole)?;
            let stage = Sampled::of(self.values.get(start..).unwrap_or_default().to_vec())?;
            stages.push([stage.value, stage.uncertainty, stage.low, stage.high]);
            if stages.len() < 2 {
                continue;
            }
            let (mean, _) = middle(&self.values);
            let wanted = tolerance(spread_of(&self.values, mean));
            let reached = twice_standard_error(&stages);
            let worst = reached.iter().fold(0.0, |worst: f64, x| worst.max(*x));
            if worst <= wanted {
                return Ok(());
            }
            if self.values.len() + STAGE > MOST as usize {
                return Err(unsettled(wanted, reached));
            }
            // Errors fall as the root of the number of draws.
            let ratio = worst / wanted;
            whole = whole_after(self.values.len(), ratio * ratio);
        }
    }
}

/// How many draws it will take, where it takes `times` as many as `now`.
fn whole_after(now: usize, times: f64) -> usize {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        clippy::cast_precision_loss,
        reason = "held between 0 and 10⁷"
    )]
    let whole = (now as f64 * times).clamp(0.0, f64::from(MOST)) as usize;
    whole.max(now + STAGE)
}

#[expect(clippy::cast_precision_loss, reason = "at most 10⁷")]
fn part(done: usize, whole: usize) -> f64 {
    done as f64 / whole as f64
}

/// Twice the standard error of the mean of each figure over the stages.
fn twice_standard_error(stages: &[[f64; 4]]) -> [f64; 4] {
    [0_usize, 1, 2, 3].map(|i| {
        let column: Vec<f64> = stages.iter().filter_map(|stage| stage.get(i).copied()).collect();
        let (mean, _) = middle(&column);
        2.0 * spread_of(&column, mean) / crate::math::sqrt(part(column.len(), 1))
    })
}

/// δ of JCGM 101:2008, 7.9.2: half a unit of the last of `digits` significant digits.
fn half_last_digit(uncertainty: f64, digits: u8) -> f64 {
    if uncertainty <= 0.0 {
        return 0.0;
    }
    let decimals = usize::from(digits).saturating_sub(1);
    let text = format!("{uncertainty:.decimals$e}");
    let exponent = text.split('e').nth(1).and_then(|exponent| exponent.parse::<i32>().ok());
    let last = exponent.unwrap_or_default() - i32::from(digits) + 1;
    format!("5e{}", last - 1).parse().unwrap_or(0.0)
}

#[cold]
fn refused(error: Error, lane: Option<usize>, start: usize, inputs: &[Spread], columns: &[&[f64]]) -> Error {
    const MOST_SHOWN: usize = 6;
    let Some(lane) = lane else { return error };
    let shown = |(input, column): (&Spread, &&[f64])| {
        let x = column.get(lane).copied().unwrap_or(f64::NAN);
        format!("{} = {}", input.name(), digits::significant(x, 6))
    };
    let mut values: Vec<String> = inputs.iter().zip(columns).map(shown).take(MOST_SHOWN).collect();
    if inputs.len() > MOST_SHOWN {
        values.push("…".into());
    }
    error.with_hint(format!(
        "draw {} reaches it, {}: a rectangular spread has ends, and a smaller uncertainty does not go so far",
        start + lane + 1,
        values.join(", ")
    ))
}

#[cold]
fn unsettled(wanted: f64, reached: [f64; 4]) -> Error {
    let [value, uncertainty, low, high] = reached.map(|x| digits::significant(x, 2));
    Error::no_convergence("samples").with_hint(format!(
        "after {MOST} draws value, uncertainty, low and high are known to {value}, {uncertainty}, {low} and {high}; \
         {} is wanted",
        digits::significant(wanted, 2)
    ))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        uncertainty::{Distribution, propagate},
        units::{Ratio, Si},
    };
    use alloc::string::ToString;
    use proptest::prelude::*;

    fn spread(name: &str, value: f64, uncertainty: f64) -> Spread {
        Spread::new(name, value, uncertainty).unwrap()
    }

    fn sum(x: &[f64]) -> f64 {
        x.iter().sum()
    }

    #[test]
    fn every_distribution_has_its_standard_uncertainty() {
        for distribution in Distribution::ALL {
            let input = spread("x", 5.0, 0.5).with_distribution(distribution);
            let found = monte_carlo(sum, &[input], 3, Samples::Count(200_000)).unwrap();
            assert!((found.value - 5.0).abs() < 0.005, "{distribution:?} {}", found.value);
            assert!(
                (found.uncertainty - 0.5).abs() < 0.004,
                "{distribution:?} {}",
                found.uncertainty
            );
        }
        let few = spread("x", 5.0, 0.5).with_degrees_of_freedom(9.0).unwrap();
        let found = monte_carlo(sum, &[few], 3, Samples::Count(50_000)).unwrap();
        // Student's variance is ν/(ν − 2), its quantile 2.2622.
        assert!((found.uncertainty - 0.5 * libm::sqrt(9.0 / 7.0)).abs() < 0.01);
        assert!((found.high - 5.0 - 0.5 * 2.2622).abs() < 0.03);
    }

    #[test]
    fn a_shared_cause_cancels_in_every_draw() {
        let inputs = ["water", "finish"].map(|name| spread(name, 100.0, 0.25).with_cause("thermometer"));
        let found = monte_carlo(|x| x[1] - x[0], &inputs, 1, Samples::Count(1000)).unwrap();
        assert!(found.values().iter().all(|y| *y == 0.0));
    }

    #[test]
    fn correlated_inputs_are_drawn_so() {
        let inputs = [
            spread("a", 1.0, 0.3).with_correlation("b", 0.9).unwrap(),
            spread("c", 1.0, 0.1),
            spread("b", 2.0, 0.4),
        ];
        let model = |x: &[f64]| x[0] - x[2] + x[1];
        let found = monte_carlo(model, &inputs, 5, Samples::Count(200_000)).unwrap();
        let first = propagate(model, &inputs).unwrap();
        assert!((found.uncertainty / first.uncertainty - 1.0).abs() < 0.008);
    }

    #[test]
    fn a_seed_decides_every_bit() {
        let inputs = [spread("a", 1.0, 0.3), spread("b", 2.0, 0.4)];
        let of = |seed| monte_carlo(sum, &inputs, seed, Samples::Count(5000)).unwrap();
        assert_eq!(of(1), of(1));
        assert_ne!(of(1).value.to_bits(), of(2).value.to_bits());
    }

    #[test]
    fn the_work_is_watched_and_stopped() {
        let inputs = [spread("a", 1.0, 0.3)];
        for samples in [Samples::Count(50_000), Samples::Until(0.004), Samples::Count(100)] {
            let mut told = Vec::new();
            let watched = &mut |share| {
                told.push(share);
                true
            };
            monte_carlo_watched(sum, &inputs, 1, samples, watched).unwrap();
            assert!(told.len() <= 101 && told.len() > 1, "{}", told.len());
            assert!(told.is_sorted() && told.iter().all(|share| (0.0..=1.0).contains(share)));
        }
        let error = monte_carlo_watched(sum, &inputs, 1, Samples::Count(1000), &mut |_| false).unwrap_err();
        assert_eq!(error.kind(), ErrorKind::Cancelled);
    }

    #[test]
    fn the_adaptive_number_of_draws_holds_its_tolerance() {
        let inputs = [spread("a", 1.0, 0.3), spread("b", 2.0, 0.4)];
        let found = monte_carlo(sum, &inputs, 1, Samples::Until(0.003)).unwrap();
        assert!((found.value - 3.0).abs() < 0.003 && (found.uncertainty - 0.5).abs() < 0.003);
        assert!((found.high - 3.0 - 0.98).abs() < 0.006 && (found.low - 3.0 + 0.98).abs() < 0.006);
        assert!(
            found.samples > 100_000 && found.samples % 10_000 == 0,
            "{}",
            found.samples
        );
        let digits = monte_carlo(sum, &inputs, 1, Samples::Digits(2)).unwrap();
        assert!((digits.uncertainty - 0.5).abs() < 0.005);
        let none = monte_carlo(sum, &[Spread::exact("a", 1.0).unwrap()], 1, Samples::Digits(2)).unwrap();
        assert_eq!(none.samples, 20_000);
        for (u, digits, delta) in [
            (0.0754, 2, 5e-4),
            (0.0754, 1, 5e-3),
            (9.96, 2, 0.5),
            (9.94, 2, 0.05),
            (100.0, 1, 50.0),
        ] {
            assert_eq!(
                f64::to_bits(half_last_digit(u, digits)),
                f64::to_bits(delta),
                "{u} {digits}"
            );
        }
    }

    #[test]
    fn what_is_asked_in_vain_is_refused() {
        let inputs = [spread("a", 1.0, 0.3)];
        let text = |samples| monte_carlo(sum, &inputs, 1, samples).unwrap_err().to_string();
        assert_eq!(text(Samples::Count(10)), "samples = 10 is outside 100 to 10000000");
        assert_eq!(text(Samples::Digits(9)), "samples.digits = 9 is outside 1 to 4");
        assert_eq!(text(Samples::Until(-1.0)), "samples.until = -1 is outside 0 to 1e300");
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(32))]

        /// Four standard errors of a standard deviation.
        #[test]
        fn a_linear_normal_model_is_of_first_order(u in prop::array::uniform2(0.1..2.0_f64), seed in any::<u64>()) {
            let inputs = [spread("a", 1.0, u[0]), spread("b", 2.0, u[1])];
            let model = |x: &[f64]| 2.0 * x[0] - x[1];
            let found = monte_carlo(model, &inputs, seed, Samples::Count(10_000)).unwrap();
            let first = propagate(model, &inputs).unwrap();
            prop_assert!((found.uncertainty / first.uncertainty - 1.0).abs() < 4.5 / libm::sqrt(20_000.0));
            prop_assert!((found.value - first.value).abs() < 4.5 * first.uncertainty / 100.0);
        }

        #[test]
        fn a_wider_interval_holds_a_narrower(p in 0.01..0.9_f64, seed in any::<u64>()) {
            let found = monte_carlo(sum, &[spread("a", 1.0, 1.0)], seed, Samples::Count(1000)).unwrap();
            let (p, more) = (Ratio::of_si(p), Ratio::of_si(p + 0.05));
            let (inner, outer) = (found.interval(p).unwrap(), found.interval(more).unwrap());
            prop_assert!(outer.0 <= inner.0 && inner.1 <= outer.1);
            let short = found.shortest(p).unwrap();
            prop_assert!(short.1 - short.0 <= inner.1 - inner.0);
        }

        #[test]
        fn without_uncertainty_it_is_the_plain_result(x in -100.0..100.0_f64, seed in any::<u64>()) {
            let inputs = [Spread::exact("x", x).unwrap()];
            let found = monte_carlo(|x| x[0] * x[0], &inputs, seed, Samples::Count(200)).unwrap();
            prop_assert_eq!((found.value.to_bits(), found.uncertainty.to_bits()), ((x * x).to_bits(), 0));
        }

        #[test]
        fn any_number_is_taken(x in any::<f64>(), u in any::<f64>(), y in any::<f64>(), seed in any::<u64>()) {
            if let Ok(input) = Spread::new("x", x, u) {
                if let Ok(found) = monte_carlo(|x| x[0] * y, &[input], seed, Samples::Count(100)) {
                    let _ = (found.interval(Ratio::of_si(y)), found.shortest(Ratio::of_si(u)), found.probability_at_least(y));
                }
            }
        }
    }
}
