//! What adds, what scales, what compares: the rules of quantities.

use pyo3::{IntoPyObjectExt, basic::CompareOp, prelude::*};
use sugaring::{
    Error,
    units::{Dimension, Unit},
};

use crate::{
    quantity::Quantity,
    raise::raise,
    shown,
    take::{self, Number},
};

/// What a difference of two values in `unit` is measured in.
pub(crate) fn difference(unit: &'static Unit) -> &'static Unit {
    unit.difference()
}

/// self + other.
pub(crate) fn sum(this: &Quantity, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<Quantity> {
    let Some(that) = partner(py, this, other, "__add__")? else {
        return Ok(same(this, py));
    };
    let that = that.get();
    let (one, two) = (this.dimension(), that.dimension());
    match (one.is_point(), two.is_point()) {
        (true, true) if one == two => Err(point(py, that)),
        // difference + point
        (false, true) if difference(that.shown).dimension == one => sum_of(that, this, difference(that.shown), py),
        (true, _) => {
            let step = difference(this.shown);
            alike(py, that, step.dimension)?;
            sum_of(this, that, step, py)
        }
        (false, _) => {
            alike(py, that, one)?;
            sum_of(this, that, this.shown, py)
        }
    }
}

/// other + self, where other is no quantity: 0 + self is self, so that `sum()` works.
pub(crate) fn sum_from(this: &Quantity, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<Quantity> {
    sum(this, py, other)
}

/// self − other.
pub(crate) fn minus(this: &Quantity, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<Quantity> {
    let Some(that) = partner(py, this, other, "__sub__")? else {
        return Ok(same(this, py));
    };
    let that = that.get();
    let step = difference(this.shown);
    if this.dimension().is_point() && this.dimension() == that.dimension() {
        let numbers = (this.number_in(py, this.shown)?, that.number_in(py, this.shown)?);
        return Ok(Quantity::given(apply(py, numbers, "__sub__", |a, b| a - b)?, step));
    }
    alike(py, that, step.dimension)?;
    let numbers = (this.number_in(py, this.shown)?, that.number_in(py, step)?);
    Ok(Quantity::given(
        apply(py, numbers, "__sub__", |a, b| a - b)?,
        this.shown,
    ))
}

/// other − self, where other is no quantity.
pub(crate) fn minus_from(this: &Quantity, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<Quantity> {
    match partner(py, this, other, "__sub__")? {
        Some(that) => minus(that.get(), py, &Bound::new(py, same(this, py))?.into_any()),
        None => scaled(this, py, "__neg__"),
    }
}

/// self × a number.
pub(crate) fn times(this: &Quantity, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<Quantity> {
    let factor = take::number(other, "factor")?;
    no_point(py, this)?;
    let numbers = (this.number_in(py, this.shown)?, factor);
    Ok(Quantity::given(
        apply(py, numbers, "__mul__", |a, b| a * b)?,
        this.shown,
    ))
}

/// self ÷ a number, or the ratio of two of one dimension.
pub(crate) fn over(this: &Quantity, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<Py<PyAny>> {
    no_point(py, this)?;
    if let Ok(that) = other.cast::<Quantity>() {
        let that = that.get();
        alike(py, that, this.dimension())?;
        let numbers = (this.number_in(py, this.shown)?, that.number_in(py, this.shown)?);
        zero_divisor(&numbers.1)?;
        return apply(py, numbers, "__truediv__", |a, b| a / b)?.object(py);
    }
    let divisor = take::number(other, "divisor")?;
    zero_divisor(&divisor)?;
    let numbers = (this.number_in(py, this.shown)?, divisor);
    Quantity::given(apply(py, numbers, "__truediv__", |a, b| a / b)?, this.shown).into_py_any(py)
}

/// −self, +self, |self|.
pub(crate) fn scaled(this: &Quantity, py: Python<'_>, operator: &str) -> PyResult<Quantity> {
    no_point(py, this)?;
    let number = match this.number_in(py, this.shown)? {
        Number::Scalar(number) => Number::Scalar(match operator {
            "__neg__" => -number,
            "__abs__" => number.abs(),
            _ => number,
        }),
        Number::Column(column) => Number::Column(column.call_method0(py, operator)?),
    };
    Ok(Quantity::given(number, this.shown))
}

/// ==, !=, <, <=, >, >=: by SI; an order is refused across dimensions.
pub(crate) fn compare(this: &Quantity, py: Python<'_>, other: &Bound<'_, PyAny>, op: CompareOp) -> PyResult<Py<PyAny>> {
    let equality = matches!(op, CompareOp::Eq | CompareOp::Ne);
    let differ = matches!(op, CompareOp::Ne);
    let Ok(that) = other.cast::<Quantity>() else {
        if equality {
            return Ok(py.NotImplemented());
        }
        return Err(raise(py, &shown::refused(other, "other", this.dimension())));
    };
    let that = that.get();
    if this.dimension() != that.dimension() {
        if equality {
            return differ.into_py_any(py);
        }
        return Err(raise(py, &that.unlike(this.dimension()).named("other")));
    }
    let base = Unit::base(this.dimension());
    let numbers = (this.number_in(py, base)?, that.number_in(py, base)?);
    if let (Number::Scalar(one), Number::Scalar(two)) = &numbers {
        let answer = one.partial_cmp(two).map_or(differ, |order| op.matches(order));
        return answer.into_py_any(py);
    }
    let (one, two) = (numbers.0.object(py)?, numbers.1.object(py)?);
    Ok(one.bind(py).rich_compare(two.bind(py), op)?.unbind())
}

/// The other operand as a quantity; none where it is the literal 0.
fn partner<'a, 'py>(
    py: Python<'py>,
    this: &Quantity,
    other: &'a Bound<'py, PyAny>,
    _operator: &str,
) -> PyResult<Option<&'a Bound<'py, Quantity>>> {
    if let Ok(that) = other.cast::<Quantity>() {
        return Ok(Some(that));
    }
    let zero = other.is_instance_of::<pyo3::types::PyInt>()
        && !other.is_instance_of::<pyo3::types::PyBool>()
        && other.extract::<i64>().is_ok_and(|number| number == 0);
    if zero && !this.dimension().is_point() {
        return Ok(None);
    }
    let wanted = difference(this.shown).dimension;
    Err(raise(py, &shown::refused(other, "other", wanted)))
}

fn sum_of(point: &Quantity, step: &Quantity, step_unit: &'static Unit, py: Python<'_>) -> PyResult<Quantity> {
    let numbers = (point.number_in(py, point.shown)?, step.number_in(py, step_unit)?);
    Ok(Quantity::given(
        apply(py, numbers, "__add__", |a, b| a + b)?,
        point.shown,
    ))
}

fn same(this: &Quantity, py: Python<'_>) -> Quantity {
    Quantity::result(this.number.clone_ref(py), this.held, this.shown)
}

fn apply(
    py: Python<'_>,
    numbers: (Number, Number),
    operator: &str,
    scalar: impl Fn(f64, f64) -> f64,
) -> PyResult<Number> {
    match numbers {
        (Number::Scalar(one), Number::Scalar(two)) => Ok(Number::Scalar(scalar(one, two))),
        (one, two) => {
            let (one, two) = (one.object(py)?, two.object(py)?);
            let (one, two) = (one.bind(py), two.bind(py));
            let answer = match operator {
                "__add__" => one.add(two),
                "__sub__" => one.sub(two),
                "__mul__" => one.mul(two),
                _ => one.div(two),
            };
            Ok(Number::Column(answer?.unbind()))
        }
    }
}

fn zero_divisor(number: &Number) -> PyResult<()> {
    match number {
        Number::Scalar(number) if *number == 0.0 => Err(pyo3::exceptions::PyZeroDivisionError::new_err(
            "quantity divided by zero",
        )),
        _ => Ok(()),
    }
}

fn alike(py: Python<'_>, that: &Quantity, wanted: Dimension) -> PyResult<()> {
    if that.dimension() == wanted {
        return Ok(());
    }
    Err(raise(py, &that.unlike(wanted).named("other")))
}

fn no_point(py: Python<'_>, this: &Quantity) -> PyResult<()> {
    if this.dimension().is_point() {
        Err(point(py, this))
    } else {
        Ok(())
    }
}

fn point(py: Python<'_>, this: &Quantity) -> PyErr {
    match this.core() {
        Some(quantity) => raise(py, &Error::point("other", &quantity)),
        None => raise(py, &this.unlike(difference(this.shown).dimension).named("other")),
    }
}
