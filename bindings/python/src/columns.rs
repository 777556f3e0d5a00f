//! Columns: handed to the ufuncs by `sugaring._columns`, which knows arrays, Series, expressions and lists.

use pyo3::{IntoPyObjectExt, exceptions::PyIndexError, prelude::*, sync::PyOnceLock, types::PyTuple};
use sugaring::{
    Error,
    catalogue::{self, Function},
    units::{self, table::ALL},
};

use crate::{
    guard::guarded,
    quantity,
    raise::{self, Place},
    shown,
    take::Taken,
    ufunc, unit,
};

/// `row` of columns and numbers.
pub(crate) fn call(py: Python<'_>, row: &'static Function, taken: &[Taken], nan: bool) -> PyResult<Py<PyAny>> {
    let index = catalogue::functions()
        .iter()
        .position(|known| std::ptr::eq(*known, row))
        .unwrap_or(usize::MAX);
    let numbers = taken.iter().map(|taken| taken.number.object(py));
    let numbers = PyTuple::new(py, numbers.collect::<PyResult<Vec<_>>>()?)?;
    #[expect(clippy::cast_precision_loss, reason = "a few score units")]
    let units = PyTuple::new(py, taken.iter().map(|taken| unit::index(taken.unit) as f64))?;
    Ok(columns(py)?
        .getattr("call")?
        .call1((index, numbers, units, nan))?
        .unbind())
}

/// `column` from one unit into another.
pub(crate) fn convert(
    py: Python<'_>,
    column: &Bound<'_, PyAny>,
    from: &'static units::Unit,
    to: &'static units::Unit,
) -> PyResult<Py<PyAny>> {
    #[expect(clippy::cast_precision_loss, reason = "a few score units")]
    let places = (unit::index(from) as f64, unit::index(to) as f64);
    Ok(columns(py)?
        .getattr("convert")?
        .call1((column, places.0, places.1))?
        .unbind())
}

fn columns(py: Python<'_>) -> PyResult<&Bound<'_, PyAny>> {
    static COLUMNS: PyOnceLock<Py<PyAny>> = PyOnceLock::new();
    let columns = COLUMNS.get_or_try_init(py, || py.import("sugaring._columns")?.into_py_any(py))?;
    Ok(columns.bind(py))
}

fn row(index: usize) -> PyResult<&'static Function> {
    let row = catalogue::functions().get(index).copied();
    row.ok_or_else(|| PyIndexError::new_err("no such function"))
}

/// The ufunc of a row of the table, and its name.
#[pyfunction]
fn _ufunc(py: Python<'_>, index: usize) -> PyResult<Py<PyAny>> {
    guarded(py, || ufunc::of_row(py, row(index)?))
}

/// The ufunc that converts between units: of number, from and to.
#[pyfunction]
fn _conversion(py: Python<'_>) -> PyResult<Py<PyAny>> {
    guarded(py, || ufunc::conversion(py))
}

/// How many lanes were computed and refused on this thread since the last time, and what a panic said.
#[pyfunction]
fn _tally(py: Python<'_>) -> PyResult<(u64, u64)> {
    let tally = ufunc::tally();
    match tally.fault {
        Some(said) => Err(raise::internal(py, &said)),
        None => Ok((tally.lanes, tally.refused)),
    }
}

/// Module, name and argument names of each row.
#[pyfunction]
fn _rows() -> Vec<(&'static str, &'static str, Vec<&'static str>)> {
    catalogue::functions()
        .iter()
        .map(|row| {
            (
                row.module,
                row.name,
                row.arguments.iter().map(|argument| argument.name).collect(),
            )
        })
        .collect()
}

/// A row's result in SI of numbers in units; NaN where it is refused.
#[pyfunction]
fn _lane(py: Python<'_>, index: usize, numbers: Vec<f64>, places: Vec<usize>) -> PyResult<f64> {
    guarded(py, || Ok(row(index)?.value(&si(&numbers, &places)).unwrap_or(f64::NAN)))
}

/// One number from one unit into another.
#[pyfunction]
fn _converted(number: f64, from: usize, to: usize) -> f64 {
    match (ALL.get(from), ALL.get(to)) {
        (Some(from), Some(to)) => quantity::convert(number, from, to),
        _ => f64::NAN,
    }
}

/// Why a lane was refused, as an exception; none where it was not.
#[pyfunction]
fn _refusal<'py>(
    py: Python<'py>,
    row_index: usize,
    numbers: Vec<f64>,
    places: Vec<usize>,
    index: Bound<'py, PyAny>,
    refused: usize,
    of: usize,
) -> PyResult<Option<Bound<'py, PyAny>>> {
    guarded(py, || match row(row_index)?.value(&si(&numbers, &places)) {
        Ok(_) => Ok(None),
        Err(error) => raise::instance(py, &error, Some(&Place { index, refused, of })).map(Some),
    })
}

/// What is neither number nor column, as an exception; in a column, with its index.
#[pyfunction]
fn _unreadable<'py>(
    py: Python<'py>,
    value: &Bound<'py, PyAny>,
    name: &str,
    dimension: Option<&str>,
    index: Option<Bound<'py, PyAny>>,
    of: usize,
) -> PyResult<Bound<'py, PyAny>> {
    let wanted = units::Dimension::ALL
        .into_iter()
        .find(|known| Some(known.name()) == dimension);
    let error = match (wanted, index.is_some()) {
        (Some(wanted), false) => shown::refused(value, name, wanted),
        _ => shown::refused(value, name, units::Dimension::Ratio),
    };
    let place = index.map(|index| Place { index, refused: 1, of });
    raise::instance(py, &error, place.as_ref())
}

/// Something foreign where something else is needed, as an exception.
#[pyfunction]
fn _foreign<'py>(py: Python<'py>, name: &str, shown: &str, needed: &str) -> PyResult<Bound<'py, PyAny>> {
    raise::instance(py, &Error::foreign(name, shown, needed), None)
}

/// Columns that do not fit one another, as an exception.
#[pyfunction]
fn _misfit<'py>(py: Python<'py>, name: &str, shown: &str, other: &str) -> PyResult<Bound<'py, PyAny>> {
    raise::instance(py, &Error::inconsistent(name.to_owned(), shown, other), None)
}

fn si(numbers: &[f64], places: &[usize]) -> Vec<f64> {
    let lanes = numbers.iter().zip(places);
    lanes
        .map(|(number, place)| ALL.get(*place).map_or(f64::NAN, |unit| quantity::si(*number, unit)))
        .collect()
}

pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(_ufunc, module)?)?;
    module.add_function(wrap_pyfunction!(_conversion, module)?)?;
    module.add_function(wrap_pyfunction!(_tally, module)?)?;
    module.add_function(wrap_pyfunction!(_rows, module)?)?;
    module.add_function(wrap_pyfunction!(_lane, module)?)?;
    module.add_function(wrap_pyfunction!(_converted, module)?)?;
    module.add_function(wrap_pyfunction!(_refusal, module)?)?;
    module.add_function(wrap_pyfunction!(_unreadable, module)?)?;
    module.add_function(wrap_pyfunction!(_foreign, module)?)?;
    module.add_function(wrap_pyfunction!(_misfit, module)?)
}
