//! The catalogue's lists as plain data; `sugaring.catalogue` makes records of them.

use pyo3::{prelude::*, types::PyDict};
use sugaring::catalogue;

/// Functions with their relations, units, kinds of error, and the version of the results.
#[pyfunction]
fn _catalogue(py: Python<'_>) -> PyResult<Bound<'_, PyDict>> {
    let functions = catalogue::functions().iter().map(|row| {
        let arguments = row
            .arguments
            .iter()
            .map(|argument| (argument.name, argument.kind.name()));
        let inputs = row.relation.inputs.iter();
        let inputs = inputs.map(|range| {
            let (low_si, high_si) = range.limits_si();
            (range.argument, range.unit.word, range.low, range.high, low_si, high_si)
        });
        (
            (row.module, row.name, row.summary, row.result.name()),
            arguments.collect::<Vec<_>>(),
            (
                row.relation.name,
                inputs.collect::<Vec<_>>(),
                row.relation.output.word,
                row.relation.source.to_string(),
                row.relation.source.kind(),
                row.relation.accuracy,
            ),
        )
    });
    let all = PyDict::new(py);
    all.set_item("functions", functions.collect::<Vec<_>>())?;
    all.set_item(
        "units",
        catalogue::units().iter().map(|unit| unit.word).collect::<Vec<_>>(),
    )?;
    all.set_item(
        "error_kinds",
        catalogue::error_kinds()
            .iter()
            .map(|kind| (kind.name(), kind.meaning(), kind.begins()))
            .collect::<Vec<_>>(),
    )?;
    all.set_item("schemas", catalogue::schemas().collect::<Vec<_>>())?;
    all.set_item("numbers", catalogue::numbers())?;
    all.set_item("version", env!("CARGO_PKG_VERSION"))?;
    Ok(all)
}

pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(_catalogue, module)?)
}
