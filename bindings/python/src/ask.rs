//! The functions that take or give more than numbers: data in, data out, by name.

use pyo3::{
    IntoPyObjectExt,
    prelude::*,
    types::{PyDict, PyList, PyString},
};
use sugaring::{
    Error, catalogue,
    form::Tree,
    units::{self, Dimension, Unit, Value},
};

use crate::{
    guard::guarded,
    quantity::{Quantity, described},
    raise::{self, Place, raise},
    station::StationPressure,
    take::{self, Number},
    tree::tree,
};

/// What the core answers to `name`, of arguments by name; None leaves one out.
#[pyfunction]
fn _ask(py: Python<'_>, name: &str, given: &Bound<'_, PyDict>) -> PyResult<Py<PyAny>> {
    guarded(py, || {
        let given = arguments(given)?;
        let answer = catalogue::ask(name, &given).map_err(|error| raise(py, &error))?;
        object(py, answer)
    })
}

/// The columns that the core answers to `name`, of columns in SI; NaN where a lane is refused.
#[pyfunction]
fn _ask_lanes(
    py: Python<'_>,
    name: &str,
    instrument: &Bound<'_, PyAny>,
    lanes: Vec<Vec<f64>>,
) -> PyResult<Vec<Vec<f64>>> {
    guarded(py, || {
        let instrument = tree(instrument, "instrument", 0)?;
        let lanes: Vec<&[f64]> = lanes.iter().map(Vec::as_slice).collect();
        catalogue::ask_lanes(name, &instrument, &lanes).map_err(|error| raise(py, &error))
    })
}

/// Why a lane was refused, as an exception with its place.
#[pyfunction]
fn _ask_refusal<'py>(
    py: Python<'py>,
    name: &str,
    given: &Bound<'py, PyDict>,
    index: Bound<'py, PyAny>,
    refused: usize,
    of: usize,
) -> PyResult<Bound<'py, PyAny>> {
    guarded(py, || {
        let error = match catalogue::ask(name, &arguments(given)?) {
            Ok(_) => Error::missing(name.to_owned()),
            Err(error) => error,
        };
        raise::instance(py, &error, Some(&Place { index, refused, of }))
    })
}

/// The number or column `value` in SI; without a dimension a bare one.
#[pyfunction]
fn _taken(py: Python<'_>, value: &Bound<'_, PyAny>, name: &str, dimension: Option<&str>) -> PyResult<Py<PyAny>> {
    guarded(py, || {
        let known = Dimension::ALL.into_iter().find(|known| Some(known.name()) == dimension);
        match known {
            None => take::number(value, name)?.object(py),
            Some(wanted) => {
                let taken = take::quantity(value, name, wanted)?;
                let quantity = Quantity::given(taken.number, taken.unit);
                quantity.number_in(py, Unit::base(wanted))?.object(py)
            }
        }
    })
}

fn arguments(given: &Bound<'_, PyDict>) -> PyResult<Tree> {
    let mut entries = Vec::new();
    for (key, value) in given {
        if value.is_none() {
            continue;
        }
        let name = key.cast::<PyString>()?.to_string_lossy().into_owned();
        let value = argument(&value, &name)?;
        entries.push((name, value));
    }
    Ok(Tree::Map(entries))
}

/// Quantities with the very number they hold, station pressures as their data.
fn argument(value: &Bound<'_, PyAny>, name: &str) -> PyResult<Tree> {
    if let Ok(quantity) = value.cast::<Quantity>() {
        let quantity = quantity.get();
        if let Number::Scalar(number) = quantity.number {
            return Ok(Tree::Quantity(units::Quantity::new(number, quantity.held)));
        }
        let error = Error::foreign(name, &described(value), "one quantity");
        return Err(raise(value.py(), &error));
    }
    match value.cast::<StationPressure>() {
        Ok(station) => Ok(of_station(station.get())),
        Err(_) => tree(value, name, 1),
    }
}

fn of_station(station: &StationPressure) -> Tree {
    let pascal = |number| Tree::Quantity(units::Quantity::new(number, &units::table::pa));
    Tree::map([
        ("pressure", pascal(station.pascal())),
        ("uncertainty", pascal(station.0.uncertainty().si())),
        ("origin", Tree::from(station.0.origin().name())),
    ])
}

/// Data as objects: maps as dicts, quantities as quantities.
pub(crate) fn object(py: Python<'_>, tree: Tree) -> PyResult<Py<PyAny>> {
    match tree {
        Tree::Null => Ok(py.None()),
        Tree::Bool(flag) => flag.into_py_any(py),
        Tree::Number(number) => number.into_py_any(py),
        Tree::Text(text) => text.into_py_any(py),
        Tree::Quantity(quantity) => Quantity::given(Number::Scalar(quantity.value()), quantity.unit()).into_py_any(py),
        Tree::List(list) => {
            let items = list.into_iter().map(|item| object(py, item));
            PyList::new(py, items.collect::<PyResult<Vec<_>>>()?)?.into_py_any(py)
        }
        Tree::Map(map) => {
            let dict = PyDict::new(py);
            for (key, value) in map {
                dict.set_item(key, object(py, value)?)?;
            }
            dict.into_py_any(py)
        }
    }
}

pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(_ask, module)?)?;
    module.add_function(wrap_pyfunction!(_ask_lanes, module)?)?;
    module.add_function(wrap_pyfunction!(_ask_refusal, module)?)?;
    module.add_function(wrap_pyfunction!(_taken, module)?)
}
