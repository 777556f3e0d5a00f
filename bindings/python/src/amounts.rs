//! Measured values and prices, checked as they are made.

use pyo3::{prelude::*, types::PyDict};
use sugaring::{
    Error,
    units::{Dimension, Unit},
};

use crate::{
    arithmetic::difference,
    guard::guarded,
    quantity::{Quantity, convert, described},
    raise::raise,
    shown,
    take::{self, Number},
};

/// A measured value as a plan reads it, if the uncertainty is one of the value.
#[pyfunction]
fn _measured<'py>(
    py: Python<'py>,
    value: &Bound<'py, PyAny>,
    uncertainty: &Bound<'py, PyAny>,
) -> PyResult<Bound<'py, PyDict>> {
    guarded(py, || {
        let data = PyDict::new(py);
        let steps = if let Ok(quantity) = value.cast::<Quantity>() {
            let Some(quantity) = quantity.get().core() else {
                return Err(raise(py, &Error::foreign("value", "<a column>", "one quantity")));
            };
            let unit = quantity.unit();
            data.set_item("value", quantity.value())?;
            if unit != Unit::base(unit.dimension) || !unit.dimension.is_plain() {
                data.set_item("unit", unit.word)?;
            }
            let step = difference(unit);
            let given = take::quantity(uncertainty, "uncertainty", step.dimension)?;
            let Number::Scalar(number) = given.number else {
                return Err(raise(py, &Error::foreign("uncertainty", "<a column>", "one quantity")));
            };
            convert(number, given.unit, step)
        } else {
            data.set_item("value", one(value, "value")?)?;
            one(uncertainty, "uncertainty")?
        };
        if !steps.is_finite() {
            return Err(raise(py, &Error::not_finite("uncertainty", steps)));
        }
        data.set_item("uncertainty", steps)?;
        Ok(data)
    })
}

/// Refuses what is no price.
#[pyfunction]
fn _price(py: Python<'_>, amount: &Bound<'_, PyAny>, per: &Bound<'_, PyAny>) -> PyResult<()> {
    guarded(py, || {
        one(amount, "amount")?;
        match per.cast::<Quantity>() {
            Ok(quantity) if quantity.get().core().is_some() => Ok(()),
            _ => Err(raise(
                py,
                &Error::foreign("per", &described(per), "a quantity such as cord(1)"),
            )),
        }
    })
}

fn one(any: &Bound<'_, PyAny>, name: &str) -> PyResult<f64> {
    match take::number(any, name)? {
        Number::Scalar(number) => Ok(number),
        Number::Column(_) => Err(raise(any.py(), &Error::foreign(name, &shown::kind(any), "one number"))),
    }
}

/// A quantity of another library that is of another dimension, as an exception.
#[pyfunction]
fn _wrong_dimension<'py>(py: Python<'py>, name: &str, shown: &str, dimension: &str) -> PyResult<Bound<'py, PyAny>> {
    let wanted = Dimension::ALL.into_iter().find(|known| known.name() == dimension);
    let needed = wanted.map_or("a number", Dimension::article_name);
    crate::raise::instance(py, &Error::foreign_dimension(name, shown, needed), None)
}

pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(_measured, module)?)?;
    module.add_function(wrap_pyfunction!(_price, module)?)?;
    module.add_function(wrap_pyfunction!(_wrong_dimension, module)?)
}
