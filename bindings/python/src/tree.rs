//! A dict of Python as the tree that a plan is read from.

use pyo3::{
    exceptions::PyException,
    prelude::*,
    types::{PyBool, PyDict, PyFloat, PyInt, PyList, PyMapping, PyString, PyTuple},
};
use sugaring::{Error, form::Tree};

use crate::{quantity::Quantity, raise::raise, shown, station::StationPressure};

/// Inputs are a few levels deep; what is deeper is no input, or goes round in a circle.
const DEEPEST: usize = 64;

/// The tree of `any`, at `path`; quantities keep their units.
pub(crate) fn tree(any: &Bound<'_, PyAny>, path: &str, depth: usize) -> PyResult<Tree> {
    let py = any.py();
    if depth > DEEPEST {
        let error = Error::foreign(&clipped(path), "<nested data>", "data of at most 64 levels");
        return Err(raise(py, &error));
    }
    if let Ok(number) = any.cast::<PyFloat>() {
        return Ok(Tree::Number(number.value()));
    }
    if let Ok(text) = any.cast::<PyString>() {
        return match text.to_str() {
            Ok(text) => Ok(Tree::Text(text.to_owned())),
            Err(_) => Err(raise(
                py,
                &Error::foreign(path, &format!("\"{}\"", shown::text(any)), "a text of whole characters"),
            )),
        };
    }
    if let Ok(quantity) = any.cast::<Quantity>() {
        return match quantity.get().core() {
            Some(quantity) => Ok(Tree::Quantity(quantity)),
            None => Err(raise(py, &Error::foreign(path, "<a column>", "one quantity"))),
        };
    }
    if let Ok(dict) = any.cast_exact::<PyDict>() {
        return entries(dict.iter().map(Ok), path, depth, py);
    }
    if any.is_none() || any.is_instance_of::<PyBool>() || any.is_instance_of::<PyInt>() {
        return Ok(shown::data(any).unwrap_or(Tree::Null));
    }
    if any.is_instance_of::<PyList>() || any.is_instance_of::<PyTuple>() {
        let items = any.try_iter().map_err(|error| failed(py, path, error))?;
        return list(items, path, depth);
    }
    if any.is_instance_of::<StationPressure>() {
        let error = Error::foreign(path, &shown::kind(any), "a set of keys with values")
            .with_hint("write {\"station_pressure\": station.pressure}");
        return Err(raise(py, &error));
    }
    other(any, path, depth)
}

/// Measured values, prices and other things that say what they are as keys and values; mappings; numbers of others.
fn other(any: &Bound<'_, PyAny>, path: &str, depth: usize) -> PyResult<Tree> {
    let py = any.py();
    if any.hasattr("_as_data").unwrap_or(false) {
        let data = any.call_method0("_as_data").map_err(|error| failed(py, path, error))?;
        return tree(&data, path, depth + 1);
    }
    if let Ok(mapping) = any.cast::<PyMapping>() {
        let items = mapping.items().map_err(|error| failed(py, path, error))?;
        let pairs = items
            .iter()
            .map(|pair| pair.extract::<(Bound<'_, PyAny>, Bound<'_, PyAny>)>());
        return entries(pairs, path, depth, py);
    }
    let number = py.import("sugaring._take")?.getattr("plain")?.call1((any, path))?;
    Ok(Tree::Number(number.extract()?))
}

fn entries<'py>(
    pairs: impl Iterator<Item = PyResult<(Bound<'py, PyAny>, Bound<'py, PyAny>)>>,
    path: &str,
    depth: usize,
    py: Python<'py>,
) -> PyResult<Tree> {
    let mut map = Vec::new();
    for pair in pairs {
        let (key, value) = pair.map_err(|error| failed(py, path, error))?;
        let whole = if path.is_empty() { "inputs" } else { path };
        let Ok(name) = key.cast::<PyString>() else {
            let error = Error::foreign(
                whole,
                &format!("the key {}", crate::quantity::described(&key)),
                "a text as key",
            );
            return Err(raise(py, &error));
        };
        let name = name.to_string_lossy().into_owned();
        let inner = if path.is_empty() {
            name.clone()
        } else {
            format!("{path}.{name}")
        };
        map.push((name, tree(&value, &inner, depth + 1)?));
    }
    Ok(Tree::Map(map))
}

fn list<'py>(items: impl Iterator<Item = PyResult<Bound<'py, PyAny>>>, path: &str, depth: usize) -> PyResult<Tree> {
    let mut list = Vec::new();
    for (index, item) in items.enumerate() {
        list.push(tree(&item?, &format!("{path}[{index}]"), depth + 1)?);
    }
    Ok(Tree::List(list))
}

/// An exception of the caller's own object: the cause of ours; interrupts pass as they are.
fn failed(py: Python<'_>, path: &str, error: PyErr) -> PyErr {
    if !error.is_instance_of::<PyException>(py) {
        return error;
    }
    let shown = shown::kind(error.value(py).as_any());
    let whole = if path.is_empty() { "inputs" } else { path };
    let ours = raise(py, &Error::foreign(whole, &shown, "data that can be read"));
    ours.set_cause(py, Some(error));
    ours
}

/// A path of a circle is as long as it is deep.
fn clipped(path: &str) -> String {
    const MOST: usize = 60;
    let mut short: String = path.chars().take(MOST).collect();
    if path.chars().nth(MOST).is_some() {
        short.push('…');
    }
    short
}
