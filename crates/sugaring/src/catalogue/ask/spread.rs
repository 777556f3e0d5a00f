//! Inputs of a model, out of data.

use alloc::{format, string::String, vec::Vec};

use crate::{
    error::Error,
    form::{Node, Tree},
    uncertainty::{Distribution, Spread},
    units::{Dimension, Quantity, Unit},
};

/// An input, in the unit it was given in.
#[derive(Clone, Debug)]
pub(super) struct Input {
    pub(super) spread: Spread,
    pub(super) unit: &'static Unit,
}

impl Input {
    /// The unit of an argument that measures `wanted`: bare numbers are of every plain dimension.
    pub(super) fn unit_of(&self, wanted: Dimension) -> &'static Unit {
        if self.unit == Unit::base(Dimension::Ratio) && wanted.is_plain() {
            Unit::base(wanted)
        } else {
            self.unit
        }
    }
}

/// The inputs in a list: numbers, quantities, measured values, and these with `name`, `distribution`, `cause`,
/// `degrees_of_freedom` and `correlation` beside them. What has no name takes that of `names`.
pub(super) fn inputs(node: &Node<'_>, names: &[&str]) -> Result<Vec<Input>, Error> {
    let items = node.list()?;
    let named = items.iter().enumerate().map(|(index, item)| {
        let name = names
            .get(index)
            .map_or_else(|| format!("input {}", index + 1), |name| String::from(*name));
        input(item, name)
    });
    named.collect()
}

fn input(node: &Node<'_>, name: String) -> Result<Input, Error> {
    match node.tree() {
        Tree::Number(number) => exact(name, *number, Unit::base(Dimension::Ratio)),
        Tree::Quantity(quantity) => exact(name, quantity.value(), quantity.unit()),
        _ => uncertain(node, name),
    }
}

fn exact(name: String, value: f64, unit: &'static Unit) -> Result<Input, Error> {
    let spread = Spread::exact(name, value)?;
    Ok(Input { spread, unit })
}

fn uncertain(node: &Node<'_>, name: String) -> Result<Input, Error> {
    node.keys(
        &[
            "name",
            "value",
            "unit",
            "uncertainty",
            "distribution",
            "cause",
            "degrees_of_freedom",
            "correlation",
        ],
        &[],
    )?;
    let name = match node.get("name")? {
        Some(name) => String::from(name.text(80)?),
        None => name,
    };
    let (value, unit) = value(node)?;
    let uncertainty = match node.get("uncertainty")? {
        None => 0.0,
        Some(steps) => self::steps(&steps, unit)?,
    };
    let mut spread = Spread::new(name, value, uncertainty)?;
    if let Some(distribution) = node.get("distribution")? {
        let known = Distribution::ALL.map(Distribution::name);
        spread = spread.with_distribution(Distribution::named(distribution.choice(&known, &[])?)?);
    }
    if let Some(cause) = node.get("cause")? {
        spread = spread.with_cause(cause.text(80)?);
    }
    if let Some(freedom) = node.get("degrees_of_freedom")? {
        spread = spread.with_degrees_of_freedom(bare(&freedom)?)?;
    }
    if let Some(correlation) = node.get("correlation")? {
        for (other, coefficient) in correlation.entries()? {
            spread = spread.with_correlation(other, bare(&coefficient)?)?;
        }
    }
    Ok(Input { spread, unit })
}

/// The number at `value`, and its unit.
pub(super) fn value(node: &Node<'_>) -> Result<(f64, &'static Unit), Error> {
    let value = node.required("value")?;
    match (value.tree(), node.get("unit")?) {
        (Tree::Quantity(quantity), None) => Ok((quantity.value(), quantity.unit())),
        (_, None) => Ok((bare(&value)?, Unit::base(Dimension::Ratio))),
        (_, Some(unit)) => {
            let number = bare(&value)?;
            let symbol = unit.text(usize::MAX)?;
            let known = Quantity::in_unit(0.0, symbol, None).map_err(|error| error.named(node.path()))?;
            Ok((number, known.unit()))
        }
    }
}

/// An uncertainty in steps of `unit`: a number, or a quantity of its differences.
pub(super) fn steps(node: &Node<'_>, unit: &'static Unit) -> Result<f64, Error> {
    match node.tree() {
        Tree::Quantity(quantity) => {
            let step = unit.difference();
            if quantity.dimension() != step.dimension {
                return Err(Error::wrong_dimension(quantity, step.dimension).named(node.path()));
            }
            Ok(if quantity.unit() == step {
                quantity.value()
            } else {
                step.from_si(quantity.si())
            })
        }
        _ => bare(node),
    }
}

/// A number that the function checks.
pub(super) fn bare(node: &Node<'_>) -> Result<f64, Error> {
    match node.tree() {
        Tree::Number(number) => Ok(*number),
        _ => node.number(),
    }
}
