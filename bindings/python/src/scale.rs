//! Density scales: one pair of functions, whose row is found by the scale's word.

use pyo3::{
    prelude::*,
    types::{PyDict, PyString},
};
use sugaring::{
    Error,
    catalogue::{self, Function},
    units::{self, Dimension},
};

use crate::{
    functions::call,
    guard::guarded,
    quantity::{Quantity, described},
    raise::raise,
    unit::Unit,
};

/// Where a sucrose solution stands on a density scale.
///
/// The temperatures of solution and water are part of the scale's word. Syrup standards print the pairs of
/// ``baume_20_20``.
///
/// Parameters
/// ----------
/// brix : float
///     0 to 85 °Bx.
/// scale : Unit
///     ``baume_20_20``, ``baume_60_60_f``, ``relative_density_20_20``, ``relative_density_60_60_f``,
///     ``relative_density_20_4`` or ``apparent_relative_density_20_20``.
/// on_error : "nan", optional
///     NaN where a value is refused, in place of an error.
///
/// Returns
/// -------
/// Quantity
///     On that scale; of a column where ``brix`` is one.
///
/// Raises
/// ------
/// SugaringError
///     An argument out of range, not finite, or no density scale.
///
/// Examples
/// --------
/// >>> from sugaring import sucrose
/// >>> from sugaring.units import baume_20_20
/// >>> round(sucrose.on_scale(66.9, baume_20_20).to(baume_20_20), 3)
/// 36.025
#[pyfunction]
#[pyo3(signature = (brix, scale, /, *, on_error = None))]
fn on_scale(
    py: Python<'_>,
    brix: &Bound<'_, PyAny>,
    scale: &Bound<'_, PyAny>,
    on_error: Option<&Bound<'_, PyAny>>,
) -> PyResult<Py<PyAny>> {
    let row = guarded(py, || {
        let Ok(word) = scale.cast::<Unit>() else {
            let needed = "the word of a density scale such as baume_20_20";
            return Err(raise(py, &Error::foreign("scale", &described(scale), needed)));
        };
        let word = word.get().unit;
        let row = rows().find(|row| row.result == word.dimension);
        row.ok_or_else(|| raise(py, &Error::unknown_name("scale", word.word, names())))
    })?;
    call(py, row, [brix], on_error)
}

/// °Brix of the sucrose solution that stands at ``value`` on a density scale: the inverse of ``on_scale``.
///
/// Parameters
/// ----------
/// value : Quantity
///     A mark on a density scale, from that of water to that of 85 °Bx.
/// on_error : "nan", optional
///     NaN where a value is refused, in place of an error.
///
/// Returns
/// -------
/// float
///     In °Bx; a column where ``value`` is one.
///
/// Raises
/// ------
/// SugaringError
///     A value out of range, not finite, or not on a density scale.
///
/// Examples
/// --------
/// >>> from sugaring import sucrose
/// >>> from sugaring.units import baume_20_20
/// >>> round(sucrose.brix_from_scale(baume_20_20(36)), 2)
/// 66.85
#[pyfunction]
#[pyo3(signature = (value, /, *, on_error = None))]
fn brix_from_scale(
    py: Python<'_>,
    value: &Bound<'_, PyAny>,
    on_error: Option<&Bound<'_, PyAny>>,
) -> PyResult<Py<PyAny>> {
    let row = guarded(py, || {
        let scale = dimension(value);
        let mut inverses = catalogue::functions().iter().filter(|row| row.module == SCALE);
        let takes = |row: &&&Function, wanted| row.arguments.iter().any(|given| given.kind.dimension() == wanted);
        // What is on no scale is refused by the first.
        let row = inverses.find(|row| takes(row, scale.unwrap_or(Dimension::Baume2020)));
        row.copied().ok_or_else(|| {
            let given = value.cast::<Quantity>().ok().and_then(|quantity| quantity.get().core());
            match given {
                Some(quantity) => raise(
                    py,
                    &Error::wrong_dimension(&quantity, Dimension::Baume2020).named("value"),
                ),
                None => raise(
                    py,
                    &Error::foreign("value", &described(value), "a value on a density scale"),
                ),
            }
        })
    })?;
    call(py, row, [value], on_error)
}

/// What a quantity, or its plain data, measures.
fn dimension(value: &Bound<'_, PyAny>) -> Option<Dimension> {
    if let Ok(quantity) = value.cast::<Quantity>() {
        return Some(quantity.get().dimension());
    }
    let unit = value.cast::<PyDict>().ok()?.get_item("unit").ok()??;
    let unit = unit.cast::<PyString>().ok()?.to_string_lossy().into_owned();
    units::Unit::named(&unit).map(|unit| unit.dimension)
}

/// The rows that lead to a scale.
fn rows() -> impl Iterator<Item = &'static Function> {
    let rows = catalogue::functions().iter().copied();
    rows.filter(|row| row.module == SCALE && row.result.is_density_scale())
}

fn names() -> impl Iterator<Item = &'static str> {
    rows().map(|row| row.name)
}

const SCALE: &str = "scale";

pub(crate) fn register(sucrose: &Bound<'_, PyModule>) -> PyResult<()> {
    sucrose.add_function(wrap_pyfunction!(on_scale, sucrose)?)?;
    sucrose.add_function(wrap_pyfunction!(brix_from_scale, sucrose)?)
}
