//! Numbers, columns and quantities out of Python objects: the quick way for what is common, the rest in Python.

use pyo3::{
    IntoPyObjectExt,
    prelude::*,
    sync::PyOnceLock,
    types::{PyBool, PyDict, PyFloat, PyInt},
};
use sugaring::{
    Error,
    catalogue::{Argument, Kind},
    units::{Dimension, Unit},
};

use crate::{quantity::Quantity, raise::raise, shown, station::StationPressure, stations::StationPressures};

/// A number, or a column of numbers: anything that computes by `__array_ufunc__`; a list where there is no `NumPy`.
#[derive(Debug)]
pub(crate) enum Number {
    Scalar(f64),
    Column(Py<PyAny>),
}

impl Number {
    pub(crate) fn clone_ref(&self, py: Python<'_>) -> Self {
        match self {
            Self::Scalar(number) => Self::Scalar(*number),
            Self::Column(column) => Self::Column(column.clone_ref(py)),
        }
    }

    pub(crate) fn object(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        match self {
            Self::Scalar(number) => number.into_py_any(py),
            Self::Column(column) => Ok(column.clone_ref(py)),
        }
    }
}

/// A number with the unit it is in.
pub(crate) struct Taken {
    pub(crate) number: Number,
    pub(crate) unit: &'static Unit,
}

/// The plain number or column `any`, an argument called `name`.
pub(crate) fn number(any: &Bound<'_, PyAny>, name: &str) -> PyResult<Number> {
    if let Ok(number) = any.cast::<PyFloat>() {
        return Ok(Number::Scalar(number.value()));
    }
    if any.is_instance_of::<PyInt>() && !any.is_instance_of::<PyBool>() {
        // A whole number beyond every float is refused as infinite.
        return Ok(Number::Scalar(any.extract().unwrap_or(f64::INFINITY)));
    }
    if let Ok(quantity) = any.cast::<Quantity>() {
        return Err(match quantity.get().core() {
            Some(quantity) => raise(any.py(), &Error::no_number(name, &quantity)),
            None => raise(any.py(), &Error::foreign(name, &shown::kind(any), "a number")),
        });
    }
    other(any, name, None)
}

/// The argument `any` of a function.
pub(crate) fn argument(any: &Bound<'_, PyAny>, argument: &Argument) -> PyResult<Taken> {
    match argument.kind {
        Kind::Station => station(any, argument.name),
        kind => quantity(any, argument.name, kind.dimension()),
    }
}

/// A quantity of `wanted`; where that is plain, a number too.
pub(crate) fn quantity(any: &Bound<'_, PyAny>, name: &str, wanted: Dimension) -> PyResult<Taken> {
    if let Ok(quantity) = any.cast::<Quantity>() {
        let quantity = quantity.get();
        if quantity.dimension() == wanted {
            return Ok(Taken {
                number: quantity.number.clone_ref(any.py()),
                unit: quantity.held,
            });
        }
        return Err(raise(any.py(), &quantity.unlike(wanted).named(name)));
    }
    if wanted.is_plain() {
        let number = number_or_foreign(any, name, wanted)?;
        return Ok(Taken {
            number,
            unit: Unit::base(wanted),
        });
    }
    if any.is_instance_of::<PyFloat>() || any.is_instance_of::<PyInt>() {
        return Err(raise(any.py(), &shown::refused(any, name, wanted)));
    }
    if let Some(given) = as_data(any, name, wanted)? {
        return Ok(given);
    }
    Ok(Taken {
        number: other(any, name, Some(wanted))?,
        unit: Unit::base(wanted),
    })
}

/// `{"value": 20, "unit": "°C"}`, as JSON gives it back.
fn as_data(any: &Bound<'_, PyAny>, name: &str, wanted: Dimension) -> PyResult<Option<Taken>> {
    if !any.is_instance_of::<PyDict>() {
        return Ok(None);
    }
    let Some(tree) = shown::data(any) else { return Ok(None) };
    match tree.argument(name, wanted) {
        Ok(quantity) => Ok(Some(Taken {
            number: Number::Scalar(quantity.value()),
            unit: quantity.unit(),
        })),
        Err(error) => Err(raise(any.py(), &error)),
    }
}

fn number_or_foreign(any: &Bound<'_, PyAny>, name: &str, wanted: Dimension) -> PyResult<Number> {
    if any.is_instance_of::<PyFloat>() || (any.is_instance_of::<PyInt>() && !any.is_instance_of::<PyBool>()) {
        return number(any, name);
    }
    other(any, name, Some(wanted))
}

/// A station pressure, which crosses as its pressure, or a column of them.
fn station(any: &Bound<'_, PyAny>, name: &str) -> PyResult<Taken> {
    if let Ok(stations) = any.cast::<StationPressures>() {
        let (number, unit) = stations.get().column(any.py());
        return Ok(Taken { number, unit });
    }
    match any.cast::<StationPressure>() {
        Ok(station) => Ok(Taken {
            number: Number::Scalar(station.get().pascal()),
            unit: Unit::base(Dimension::Pressure),
        }),
        Err(_) => Err(raise(
            any.py(),
            &match shown::data(any) {
                Some(tree) => Error::no_station(name, &tree),
                None => Error::foreign(name, &shown::kind(any), "a StationPressure"),
            },
        )),
    }
}

/// Everything that is rare: columns, numbers of other libraries, quantities of other libraries, and what is refused.
#[cold]
fn other(any: &Bound<'_, PyAny>, name: &str, wanted: Option<Dimension>) -> PyResult<Number> {
    static OTHER: PyOnceLock<Py<PyAny>> = PyOnceLock::new();
    let py = any.py();
    let other = OTHER.get_or_try_init(py, || py.import("sugaring._take")?.getattr("other")?.into_py_any(py))?;
    let found = other.bind(py).call1((any, name, wanted.map(Dimension::name)))?;
    Ok(match found.cast::<PyFloat>() {
        Ok(number) => Number::Scalar(number.value()),
        Err(_) => Number::Column(found.unbind()),
    })
}
