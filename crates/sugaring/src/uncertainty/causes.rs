//! Which inputs move together.

use alloc::{collections::BTreeMap, format, vec, vec::Vec};

use super::spread::{Distribution, Spread};
use crate::{digits, error::Error, math, units::quoted};

/// The inputs of a model, sorted by what makes them uncertain.
pub(super) struct Causes<'a> {
    pub(super) list: Vec<Cause<'a>>,
    pub(super) correlated: Option<Correlated>,
}

/// What moves by itself, and all that moves with it.
pub(super) struct Cause<'a> {
    pub(super) name: &'a str,
    /// Their places among the inputs, rising.
    pub(super) members: Vec<usize>,
}

/// Inputs that move together in part.
pub(super) struct Correlated {
    /// Their places among the causes, rising; each has one member.
    pub(super) places: Vec<usize>,
    /// Rows of the matrix of coefficients.
    pub(super) matrix: Vec<Vec<f64>>,
    /// Rows of its Cholesky factor, each up to the diagonal.
    pub(super) factor: Vec<Vec<f64>>,
}

impl<'a> Causes<'a> {
    pub(super) fn of(inputs: &'a [Spread]) -> Result<Self, Error> {
        let mut names = BTreeMap::new();
        let mut shared: BTreeMap<&str, usize> = BTreeMap::new();
        let mut list: Vec<Cause<'a>> = Vec::with_capacity(inputs.len());
        // Where the cause of an input stands in the list.
        let mut places = Vec::with_capacity(inputs.len());
        for (i, input) in inputs.iter().enumerate() {
            if let Some(first) = names.insert(input.name(), i) {
                return Err(same_name(inputs, first, i));
            }
            let new = list.len();
            let place = input.cause().map_or(new, |cause| *shared.entry(cause).or_insert(new));
            places.push(place);
            if let Some(cause) = list.get_mut(place) {
                cause.members.push(i);
            } else {
                list.push(Cause {
                    name: input.cause().unwrap_or(input.name()),
                    members: vec![i],
                });
            }
        }
        let pairs = pairs(inputs, &names, &list, &places)?;
        let correlated = if pairs.is_empty() {
            None
        } else {
            Some(Correlated::of(inputs, &places, &pairs)?)
        };
        Ok(Self { list, correlated })
    }
}

fn same_name(inputs: &[Spread], first: usize, again: usize) -> Error {
    let name = inputs.get(first).map(Spread::quoted).unwrap_or_default();
    Error::inconsistent(format!("inputs[{again}].name"), &name, &format!("inputs[{first}].name"))
        .with_hint("each input has a name of its own; what moves together shares a cause")
}

/// Places of two inputs, the lower first, and their coefficient.
type Pairs = BTreeMap<(usize, usize), f64>;

fn pairs(inputs: &[Spread], names: &BTreeMap<&str, usize>, list: &[Cause], places: &[usize]) -> Result<Pairs, Error> {
    let mut pairs = Pairs::new();
    for (i, input) in inputs.iter().enumerate() {
        for (other, coefficient) in input.correlations() {
            let path = format!("inputs[{i}].correlation");
            let Some(&j) = names.get(other.as_str()) else {
                return Err(Error::unknown_name(path, other, names.keys().copied()));
            };
            if i == j {
                return Err(Error::inconsistent(path, &quoted(other), &format!("inputs[{i}].name"))
                    .with_hint("a correlation is with another input"));
            }
            for k in [i, j] {
                may_correlate(inputs, list, places, k)?;
            }
            let before = pairs.insert((i.min(j), i.max(j)), *coefficient);
            if let Some(before) = before.filter(|before| before.to_bits() != coefficient.to_bits()) {
                let shown = digits::significant(*coefficient, 6);
                let other = format!("inputs[{j}].correlation = {}", digits::significant(before, 6));
                return Err(Error::inconsistent(path, &shown, &other).with_hint("say it once"));
            }
        }
    }
    Ok(pairs)
}

/// Whether the input at `k` may have a correlation of its own.
fn may_correlate(inputs: &[Spread], list: &[Cause], places: &[usize], k: usize) -> Result<(), Error> {
    let Some(input) = inputs.get(k) else { return Ok(()) };
    let members = places.get(k).and_then(|&place| list.get(place));
    let refused = |key: &str, shown: &str, hint: &str| {
        let path = format!("inputs[{k}].{key}");
        Err(Error::inconsistent(path, shown, &format!("a correlation of {}", input.quoted())).with_hint(hint))
    };
    if input.distribution() != Distribution::Normal {
        let hint = "only normal inputs have a correlation; what moves wholly together shares a cause";
        refused("distribution", &quoted(input.distribution().name()), hint)
    } else if input.degrees_of_freedom() < f64::INFINITY {
        let shown = digits::significant(input.degrees_of_freedom(), 6);
        let hint = "only normal inputs have a correlation: leave degrees_of_freedom out";
        refused("degrees_of_freedom", &shown, hint)
    } else if members.is_some_and(|cause| cause.members.len() > 1) {
        let shown = input.cause().map(quoted).unwrap_or_default();
        refused(
            "cause",
            &shown,
            "inputs of a shared cause have no correlation of their own",
        )
    } else {
        Ok(())
    }
}

impl Correlated {
    fn of(inputs: &[Spread], all: &[usize], pairs: &Pairs) -> Result<Self, Error> {
        let mut members: Vec<usize> = pairs.keys().flat_map(|&(i, j)| [i, j]).collect();
        members.sort_unstable();
        members.dedup();
        let coefficient = |i: &usize, j: &usize| {
            let pair = pairs.get(&(*i.min(j), *i.max(j)));
            if i == j { 1.0 } else { pair.copied().unwrap_or(0.0) }
        };
        let rows = members
            .iter()
            .map(|i| members.iter().map(|j| coefficient(i, j)).collect());
        let matrix: Vec<Vec<f64>> = rows.collect();
        let factor = cholesky(&matrix).map_err(|row| {
            let i = members.get(row).copied().unwrap_or_default();
            let said = inputs.get(i).and_then(|input| input.correlations().last());
            let shown = said.map_or_else(|| "this".into(), |(_, r)| digits::significant(*r, 6));
            Error::inconsistent(format!("inputs[{i}].correlation"), &shown, "the other correlations")
                .with_hint("no inputs can have all of them at once")
        })?;
        let places = members.iter().filter_map(|&i| all.get(i).copied()).collect();
        Ok(Self { places, matrix, factor })
    }
}

/// The factor L of `matrix` = L·Lᵀ, whose diagonal is 1; else the row where it is seen that there is none.
fn cholesky(matrix: &[Vec<f64>]) -> Result<Vec<Vec<f64>>, usize> {
    // A pivot of rounding alone: the row is a sum of those above it, and what is left of its column is rounding too.
    const NOTHING: f64 = 1e-14;
    const LEFT: f64 = 1e-7;
    let mut factor: Vec<Vec<f64>> = Vec::with_capacity(matrix.len());
    for (i, row) in matrix.iter().enumerate() {
        let mut new: Vec<f64> = Vec::with_capacity(i + 1);
        for (above, coefficient) in factor.iter().zip(row) {
            let known: f64 = above.iter().zip(&new).map(|(a, b)| a * b).sum();
            let left = coefficient - known;
            let pivot = above.last().copied().unwrap_or_default();
            if pivot > 0.0 {
                new.push(left / pivot);
            } else if left.abs() <= LEFT {
                new.push(0.0);
            } else {
                return Err(i);
            }
        }
        let left = 1.0 - new.iter().map(|a| a * a).sum::<f64>();
        if left < -NOTHING * 100.0 {
            return Err(i);
        }
        new.push(if left <= NOTHING { 0.0 } else { math::sqrt(left) });
        factor.push(new);
    }
    Ok(factor)
}

#[cfg(test)]
mod tests {
    use super::*;
    use alloc::string::{String, ToString};
    use proptest::prelude::*;

    fn refusal(inputs: &[Spread]) -> String {
        Causes::of(inputs).err().unwrap().to_string()
    }

    fn spread(name: &str) -> Spread {
        Spread::new(name, 1.0, 0.1).unwrap()
    }

    #[test]
    fn what_cannot_be_together_is_refused() {
        let a = |other: &str, r| spread("a").with_correlation(other, r).unwrap();
        for (inputs, expected) in [
            (
                vec![spread("t"), spread("t")],
                "inputs[1].name = \"t\" does not fit inputs[0].name; each input has a name of its own; what moves \
                 together shares a cause",
            ),
            (
                vec![a("temprature", 0.5), spread("temperature")],
                "inputs[0].correlation has the unknown name \"temprature\"; nearest: temperature",
            ),
            (
                vec![a("a", 0.5)],
                "inputs[0].correlation = \"a\" does not fit inputs[0].name; a correlation is with another input",
            ),
            (
                vec![a("b", 0.5), spread("b").with_correlation("a", 0.4).unwrap()],
                "inputs[1].correlation = 0.4 does not fit inputs[0].correlation = 0.5; say it once",
            ),
            (
                vec![a("b", 0.5), spread("b").with_distribution(Distribution::Rectangular)],
                "inputs[1].distribution = \"rectangular\" does not fit a correlation of \"b\"; only normal inputs have \
                 a correlation; what moves wholly together shares a cause",
            ),
            (
                vec![a("b", 0.5), spread("b").with_degrees_of_freedom(4.0).unwrap()],
                "inputs[1].degrees_of_freedom = 4 does not fit a correlation of \"b\"; only normal inputs have a \
                 correlation: leave degrees_of_freedom out",
            ),
            (
                vec![a("b", 0.5), spread("b").with_cause("c"), spread("d").with_cause("c")],
                "inputs[1].cause = \"c\" does not fit a correlation of \"b\"; inputs of a shared cause have no \
                 correlation of their own",
            ),
            (
                vec![
                    a("b", 0.9),
                    spread("b").with_correlation("c", 0.9).unwrap(),
                    spread("c").with_correlation("a", -0.9).unwrap(),
                ],
                "inputs[2].correlation = -0.9 does not fit the other correlations; no inputs can have all of them at \
                 once",
            ),
        ] {
            assert_eq!(refusal(&inputs), expected);
        }
    }

    #[test]
    fn inputs_may_be_one_in_all_but_name() {
        let inputs = [
            spread("a")
                .with_correlation("b", 1.0)
                .unwrap()
                .with_correlation("c", -1.0)
                .unwrap(),
            spread("b").with_correlation("c", -1.0).unwrap(),
            spread("c"),
        ];
        let causes = Causes::of(&inputs).unwrap();
        let factor = causes.correlated.unwrap().factor;
        assert_eq!(factor, [vec![1.0], vec![1.0, 0.0], vec![-1.0, 0.0, 0.0]]);
    }

    proptest! {
        #[test]
        fn a_factor_times_itself_is_its_matrix(r in prop::array::uniform3(-1.0..1.0_f64)) {
            let [a, b, c] = r;
            let matrix = vec![vec![1.0, a, b], vec![a, 1.0, c], vec![b, c, 1.0]];
            let determinant = 1.0 + 2.0 * a * b * c - a * a - b * b - c * c;
            match cholesky(&matrix) {
                Ok(factor) => {
                    prop_assert!(determinant > -1e-9);
                    for (row, left) in matrix.iter().zip(&factor) {
                        for (expected, right) in row.iter().zip(&factor) {
                            let product: f64 = left.iter().zip(right).map(|(x, y)| x * y).sum();
                            prop_assert!((product - expected).abs() < 1e-6);
                        }
                    }
                }
                Err(_) => prop_assert!(determinant < 1e-9),
            }
        }
    }
}
