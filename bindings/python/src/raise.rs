//! Errors of the core as exceptions of `sugaring.errors`.

use pyo3::{IntoPyObjectExt, prelude::*, sync::PyOnceLock};
use sugaring::{Error, ErrorKind};

/// Where in a column an error was found: the index, and how many of how many were refused.
pub(crate) struct Place<'py> {
    pub(crate) index: Bound<'py, PyAny>,
    pub(crate) refused: usize,
    pub(crate) of: usize,
}

/// The exception of `error`.
#[cold]
pub(crate) fn raise(py: Python<'_>, error: &Error) -> PyErr {
    instance(py, error, None).map_or_else(|fault| fault, PyErr::from_value)
}

/// The same as an object, for code in Python to raise.
pub(crate) fn instance<'py>(py: Python<'py>, error: &Error, place: Option<&Place<'py>>) -> PyResult<Bound<'py, PyAny>> {
    let (index, count) = match place {
        Some(place) => (Some(&place.index), Some((place.refused, place.of))),
        None => (None, None),
    };
    // A number that is not finite is the offence itself; elsewhere NaN says that no number was given.
    let value = error.value();
    let value = (error.kind() == ErrorKind::NotFinite || !value.is_nan()).then_some(value);
    let fields = (
        error.kind().name(),
        error.to_string(),
        error.argument(),
        value,
        error.unit(),
        error.range(),
        error.hint(),
        error.reference().map(|source| source.to_string()),
        index,
        count,
    );
    factory(py)?.call1(fields)
}

/// A fault of the core; `said` is what the panic said.
#[cold]
pub(crate) fn internal(py: Python<'_>, said: &str) -> PyErr {
    let text = if said.is_empty() {
        String::from("a fault in sugaring, please report it")
    } else {
        format!("a fault in sugaring, please report it: {said}")
    };
    let none = || py.None();
    let fields = ("internal", text, "", none(), "", none(), none(), none(), none(), none());
    factory(py)
        .and_then(|factory| factory.call1(fields))
        .map_or_else(|fault| fault, PyErr::from_value)
}

/// `sugaring.errors._made`, which finds the class of a kind.
fn factory(py: Python<'_>) -> PyResult<&Bound<'_, PyAny>> {
    static MADE: PyOnceLock<Py<PyAny>> = PyOnceLock::new();
    let made = MADE.get_or_try_init(py, || py.import("sugaring.errors")?.getattr("_made")?.into_py_any(py))?;
    Ok(made.bind(py))
}

/// Names that `choice` does not have.
#[pyfunction]
fn _unknown_name(py: Python<'_>, argument: String, given: &str, known: Vec<String>) -> PyResult<Py<PyAny>> {
    let error = Error::unknown_name(argument, given, known.iter().map(String::as_str));
    instance(py, &error, None).map(Bound::unbind)
}

/// An argument that is missing, with what to write.
#[pyfunction]
fn _missing(py: Python<'_>, argument: String, hint: &str) -> PyResult<Py<PyAny>> {
    instance(py, &Error::missing(argument).with_hint(hint), None).map(Bound::unbind)
}

pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(_unknown_name, module)?)?;
    module.add_function(wrap_pyfunction!(_missing, module)?)
}
