//! Uncertainties: of a function of the table by its name, and what is found from numbers.

use alloc::{format, vec::Vec};

use super::{
    given::Given,
    spread::{bare, inputs, steps, value},
    table::Answer,
};
use crate::{
    catalogue::{self, Model},
    error::Error,
    form::{Node, Tree},
    instrument::line_of_data,
    uncertainty::{self, Line, Propagated, Sampled, Samples, Spread},
    units::{Dimension, Measured, Quantity, Unit, Value, measured},
};

pub(super) const ANSWERS: &[Answer] = &[
    ("uncertainty.propagate", |given| {
        let (model, inputs) = model(given)?;
        let found = uncertainty::propagate(|x| model.value(x), &inputs)?;
        Ok(propagated(&found, model.unit()))
    }),
    ("uncertainty.monte_carlo", |given| {
        let (model, inputs) = model(given)?;
        let (seed, samples) = sampling(given)?;
        let found = uncertainty::monte_carlo(|x| model.value(x), &inputs, seed, samples)?;
        Ok(sampled(&found, model.unit()))
    }),
    ("uncertainty.combine", |given| {
        let (readings, unit) = alike(&given.node("readings")?)?;
        let found = uncertainty::combine(&readings)?;
        Ok(Tree::map([
            ("value", number(found.value, unit)),
            ("uncertainty", number(found.uncertainty, unit.difference())),
            ("z", Tree::Number(found.z)),
            ("agree", Tree::Bool(found.agree)),
        ]))
    }),
    ("uncertainty.probability_at_least", |given| {
        let node = given.node("value")?;
        let (measured, unit) = measured_here(&node)?;
        let minimum = in_unit(given.tree("minimum")?, "minimum", unit)?;
        let found = uncertainty::probability_at_least(measured, minimum)?;
        Ok(Tree::Number(found.si()))
    }),
    ("uncertainty.line_fit", |given| {
        let line = uncertainty::line_fit(&given.numbers("x")?, &given.numbers("y")?, given.number("x0")?)?;
        Ok(of_line(&line))
    }),
    ("Line.at", |given| {
        let at = line_of_data(&given.node("line")?)?.at(given.number("x")?);
        Ok(Tree::map([
            ("value", Tree::Number(at.value)),
            ("uncertainty", Tree::Number(at.uncertainty)),
        ]))
    }),
    ("Line.correlation", |given| {
        Ok(Tree::Number(line_of_data(&given.node("line")?)?.correlation()))
    }),
    ("Propagated.coverage_factor", |given| {
        let (found, _) = read_propagated(&given.node("propagated")?)?;
        found.coverage_factor(given.value("coverage")?).map(Tree::Number)
    }),
    ("Propagated.interval", |given| {
        let (found, unit) = read_propagated(&given.node("propagated")?)?;
        Ok(interval(found.interval(given.value("coverage")?)?, unit))
    }),
];

/// The function of the table that is named, as a model of the inputs that are given.
fn model(given: Given<'_>) -> Result<(Model<'static>, Vec<Spread>), Error> {
    let function = catalogue::function(given.text("function")?)?;
    let names: Vec<&str> = function.arguments.iter().map(|argument| argument.name).collect();
    let inputs = inputs(&given.node("inputs")?, &names)?;
    for (input, argument) in inputs.iter().zip(function.arguments) {
        let wanted = argument.kind.dimension();
        if input.unit == Unit::base(Dimension::Ratio) && !wanted.is_plain() {
            // Said as of a bare argument of the function itself.
            Tree::Number(input.spread.value()).argument(argument.name, wanted)?;
        }
    }
    let units: Vec<&'static Unit> = inputs
        .iter()
        .zip(function.arguments)
        .map(|(input, argument)| input.unit_of(argument.kind.dimension()))
        .collect();
    // What is too many keeps its own unit: their number is refused.
    let rest = inputs.iter().skip(units.len()).map(|input| input.unit);
    let model = function.model(&units.iter().copied().chain(rest).collect::<Vec<_>>())?;
    Ok((model, inputs.into_iter().map(|input| input.spread).collect()))
}

/// How inputs of a model of another language make its result uncertain; `inputs` as [`ask`](super::ask) takes them,
/// and numbers in their units to the model, whose result is in `unit`.
///
/// # Errors
/// As [`uncertainty::propagate`](crate::uncertainty::propagate()).
pub fn ask_propagate(
    model: impl FnMut(&[f64]) -> Result<f64, Error>,
    inputs: &Tree,
    unit: impl FnOnce() -> &'static Unit,
) -> Result<Tree, Error> {
    let inputs = self::inputs(&Node::argument(inputs, "inputs"), &[])?;
    let spreads: Vec<Spread> = inputs.into_iter().map(|input| input.spread).collect();
    let found = uncertainty::propagate(model, &spreads)?;
    Ok(propagated(&found, unit()))
}

/// The same by many draws, and all of them, rising; `given` has `inputs`, `seed` and `samples`.
///
/// # Errors
/// As [`uncertainty::monte_carlo_watched`](crate::uncertainty::monte_carlo_watched).
pub fn ask_monte_carlo(
    model: impl FnMut(&[f64]) -> Result<f64, Error>,
    given: &Tree,
    unit: impl FnOnce() -> &'static Unit,
    progress: &mut dyn FnMut(f64) -> bool,
) -> Result<(Tree, Vec<f64>), Error> {
    let given = Given::of(given)?;
    let inputs = inputs(&given.node("inputs")?, &[])?;
    let spreads: Vec<Spread> = inputs.into_iter().map(|input| input.spread).collect();
    let (seed, samples) = sampling(given)?;
    let found = uncertainty::monte_carlo_watched(model, &spreads, seed, samples, progress)?;
    Ok((sampled(&found, unit()), found.values().to_vec()))
}

/// The same of the function of the table that `given` names.
///
/// # Errors
/// As [`uncertainty::monte_carlo_watched`](crate::uncertainty::monte_carlo_watched).
pub fn ask_monte_carlo_of(given: &Tree, progress: &mut dyn FnMut(f64) -> bool) -> Result<(Tree, Vec<f64>), Error> {
    let given = Given::of(given)?;
    let (model, inputs) = model(given)?;
    let (seed, samples) = sampling(given)?;
    let found = uncertainty::monte_carlo_watched(|x| model.value(x), &inputs, seed, samples, progress)?;
    Ok((sampled(&found, model.unit()), found.values().to_vec()))
}

/// Seed and number of samples: a count, `{"until": tolerance}` or `{"digits": 2}`.
fn sampling(given: Given<'_>) -> Result<(u64, Samples), Error> {
    let seed = given.node("seed")?.whole(0..=u64::MAX)?;
    let samples = given.node("samples")?;
    let samples = match samples.tree() {
        Tree::Map(_) => match samples.one_of(&["until", "digits"], &[])? {
            ("until", tolerance) => Samples::Until(tolerance.number()?),
            (_, digits) => Samples::Digits(u8::try_from(digits.whole(0..=255)?).unwrap_or(u8::MAX)),
        },
        _ => Samples::Count(u32::try_from(samples.whole(0..=u64::from(u32::MAX))?).unwrap_or(u32::MAX)),
    };
    Ok((seed, samples))
}

fn propagated(found: &Propagated, unit: &'static Unit) -> Tree {
    let contributions = found.contributions.iter().map(|contribution| {
        let mut map = Vec::from([("name", Tree::from(contribution.name.as_str()))]);
        if let Some(sensitivity) = contribution.sensitivity {
            map.push(("sensitivity", Tree::Number(sensitivity)));
        }
        map.push(("uncertainty", number(contribution.uncertainty, unit.difference())));
        map.push(("share", Tree::Number(contribution.share)));
        map.push(("one_sided", Tree::Bool(contribution.one_sided)));
        Tree::map(map)
    });
    Tree::map([
        ("value", number(found.value, unit)),
        ("uncertainty", number(found.uncertainty, unit.difference())),
        ("degrees_of_freedom", Tree::Number(found.degrees_of_freedom)),
        ("contributions", contributions.collect()),
    ])
}

/// As far as intervals need it.
fn read_propagated(node: &Node<'_>) -> Result<(Propagated, &'static Unit), Error> {
    let (value, unit) = value(node)?;
    Ok((
        Propagated {
            value,
            uncertainty: steps(&node.required("uncertainty")?, unit)?,
            degrees_of_freedom: bare(&node.required("degrees_of_freedom")?)?,
            contributions: Vec::new(),
        },
        unit,
    ))
}

fn sampled(found: &Sampled, unit: &'static Unit) -> Tree {
    Tree::map([
        ("value", number(found.value, unit)),
        ("uncertainty", number(found.uncertainty, unit.difference())),
        ("low", number(found.low, unit)),
        ("high", number(found.high, unit)),
        ("shortest_low", number(found.shortest_low, unit)),
        ("shortest_high", number(found.shortest_high, unit)),
        ("median", number(found.median, unit)),
        ("samples", Tree::Number(f64::from(found.samples))),
    ])
}

fn interval((low, high): (f64, f64), unit: &'static Unit) -> Tree {
    Tree::map([("low", number(low, unit)), ("high", number(high, unit))])
}

/// A bare number where the unit is that of plain numbers.
fn number(value: f64, unit: &'static Unit) -> Tree {
    if unit.dimension.is_plain() && unit == Unit::base(unit.dimension) {
        Tree::Number(value)
    } else {
        Tree::Quantity(Quantity::new(value, unit))
    }
}

/// Measured values of one dimension, in the unit of the first.
fn alike(node: &Node<'_>) -> Result<(Vec<Measured<f64>>, &'static Unit), Error> {
    let mut readings = Vec::new();
    let mut shared: Option<&'static Unit> = None;
    for item in node.list()? {
        let (found, unit) = measured_here(&item)?;
        let first = *shared.get_or_insert(unit);
        if unit.dimension != first.dimension {
            let error = Error::wrong_dimension(&Quantity::new(found.value, unit), first.dimension);
            return Err(error.named(&format!("{}.value", item.path())));
        }
        readings.push(if unit == first {
            found
        } else {
            let step = first.difference();
            measured(
                first.from_si(unit.to_si(found.value)),
                step.from_si(unit.difference().to_si(found.uncertainty)),
            )
        });
    }
    Ok((readings, shared.unwrap_or_else(|| Unit::base(Dimension::Ratio))))
}

/// `{"value", "unit", "uncertainty"}`.
pub(super) fn measured_here(node: &Node<'_>) -> Result<(Measured<f64>, &'static Unit), Error> {
    node.keys(&["value", "unit", "uncertainty"], &[])?;
    let (value, unit) = value(node)?;
    let uncertainty = steps(&node.required("uncertainty")?, unit)?;
    Ok((measured(value, uncertainty), unit))
}

/// A quantity, or a bare number where `unit` is that of plain numbers, in `unit`.
fn in_unit(tree: &Tree, name: &str, unit: &'static Unit) -> Result<f64, Error> {
    match tree {
        Tree::Number(number) if unit.dimension.is_plain() => Ok(*number),
        _ => {
            let quantity = tree.argument(name, unit.dimension)?;
            Ok(if quantity.unit() == unit {
                quantity.value()
            } else {
                unit.from_si(quantity.si())
            })
        }
    }
}

fn of_line(line: &Line) -> Tree {
    let [[a, ab], [_, b]] = line.covariance;
    let row = |x: f64, y: f64| -> Tree { [Tree::Number(x), Tree::Number(y)].into_iter().collect() };
    Tree::map([
        ("intercept", Tree::Number(line.intercept)),
        ("slope", Tree::Number(line.slope)),
        ("covariance", [row(a, ab), row(ab, b)].into_iter().collect()),
        ("residual_deviation", Tree::Number(line.residual_deviation)),
        ("degrees_of_freedom", Tree::Number(line.degrees_of_freedom)),
        ("reference", Tree::Number(line.reference)),
        ("low", Tree::Number(line.low)),
        ("high", Tree::Number(line.high)),
    ])
}
