//! What is no number, in the words of the core.

use pyo3::{
    prelude::*,
    types::{PyBool, PyDict, PyFloat, PyInt, PyList, PyString, PyTuple},
};
use sugaring::{Error, form::Tree, units::Dimension};

use crate::quantity::Quantity;

/// `any` as data, one level deep, if it is data at all.
pub(crate) fn data(any: &Bound<'_, PyAny>) -> Option<Tree> {
    if any.is_none() {
        return Some(Tree::Null);
    }
    if let Ok(flag) = any.cast::<PyBool>() {
        return Some(Tree::Bool(flag.is_true()));
    }
    if any.is_instance_of::<PyFloat>() || any.is_instance_of::<PyInt>() {
        return Some(Tree::Number(any.extract().unwrap_or(f64::INFINITY)));
    }
    if let Ok(text) = any.cast::<PyString>() {
        return Some(Tree::Text(text.to_string_lossy().into_owned()));
    }
    if let Ok(quantity) = any.cast::<Quantity>() {
        return quantity.get().core().map(Tree::Quantity);
    }
    if let Ok(map) = any.cast::<PyDict>() {
        let entries = map.iter().map(|(key, value)| {
            let leaf = if value.is_instance_of::<PyDict>() {
                None
            } else {
                data(&value)
            };
            (text(&key), leaf.unwrap_or(Tree::Null))
        });
        return Some(Tree::Map(entries.collect()));
    }
    if any.is_instance_of::<PyList>() || any.is_instance_of::<PyTuple>() {
        let full = any.len().is_ok_and(|length| length > 0);
        return Some(Tree::List(if full { vec![Tree::Null] } else { Vec::new() }));
    }
    None
}

/// The error of `any` where `wanted` is needed.
#[cold]
pub(crate) fn refused(any: &Bound<'_, PyAny>, argument: &str, wanted: Dimension) -> Error {
    if let Some(tree) = data(any) {
        return match tree.argument(argument, wanted) {
            Err(error) => error,
            // A number in another form than a function takes.
            Ok(_) => Error::foreign(argument, &kind(any), needed(wanted)),
        };
    }
    Error::foreign(argument, &kind(any), needed(wanted))
}

/// What is needed, in words.
pub(crate) fn needed(wanted: Dimension) -> &'static str {
    if wanted.is_plain() {
        "a number"
    } else {
        wanted.article_name()
    }
}

/// The type of `any`, as it is shown in place of a value.
pub(crate) fn kind(any: &Bound<'_, PyAny>) -> String {
    let name = any.get_type().name();
    let name = name.as_ref().map_or_else(|_| String::from("object"), |name| text(name));
    format!("<{name}>")
}

/// A text; what no text can hold is replaced.
pub(crate) fn text(any: &Bound<'_, PyAny>) -> String {
    match any.cast::<PyString>() {
        Ok(text) => text.to_string_lossy().into_owned(),
        Err(_) => kind(any),
    }
}
