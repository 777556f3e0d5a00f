//! Propagation, Monte Carlo, combination and lines: models are functions of Python, or of the library's own table.

use pyo3::prelude::*;

mod inputs;
mod lines;
mod model;
mod results;
mod runs;
mod spread;

pub(crate) fn register(uncertainty: &Bound<'_, PyModule>) -> PyResult<()> {
    uncertainty.add_class::<spread::Spread>()?;
    uncertainty.add_class::<results::Contribution>()?;
    uncertainty.add_class::<results::Propagated>()?;
    uncertainty.add_class::<results::Sampled>()?;
    uncertainty.add_class::<lines::Combined>()?;
    uncertainty.add_class::<lines::Line>()?;
    uncertainty.add_function(wrap_pyfunction!(runs::propagate, uncertainty)?)?;
    uncertainty.add_function(wrap_pyfunction!(runs::monte_carlo, uncertainty)?)?;
    uncertainty.add_function(wrap_pyfunction!(lines::combine, uncertainty)?)?;
    uncertainty.add_function(wrap_pyfunction!(lines::line_fit, uncertainty)?)?;
    uncertainty.add_function(wrap_pyfunction!(lines::probability_at_least, uncertainty)?)
}
