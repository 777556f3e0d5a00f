//! The day's plan: inputs in, JSON and pages out. `sugaring.day` makes the typed plan of them.

use pyo3::{prelude::*, types::PyString};
use sugaring::{
    Error,
    day::{self, DayInputs, System},
};

use crate::{guard::guarded, raise::raise, tree::tree};

/// JSON on one line, and the page in each system of units.
type Plan = (String, Vec<(&'static str, String)>);

/// The plan of JSON text, or of a dict.
///
/// The core runs without the interpreter; at each tick Python sees its signals, and then the callback, if there is
/// one, which stops the work by returning False.
#[pyfunction]
fn _plan(py: Python<'_>, inputs: &Bound<'_, PyAny>, progress: Option<Py<PyAny>>) -> PyResult<Plan> {
    guarded(py, || {
        let inputs = read(inputs)?;
        let mut stopped = None;
        let mut told = -1.0;
        let planned = py.detach(|| {
            day::plan_watched(&inputs, &mut |share| {
                let tick = Python::attach(|py| -> PyResult<bool> {
                    py.check_signals()?;
                    match &progress {
                        // The core ticks more often where a draw takes long; nobody wants more than a hundred calls.
                        Some(callback) if share >= told + 0.01 - 1e-9 => {
                            told = share;
                            let answer = callback.bind(py).call1((share,))?;
                            Ok(answer.is_none() || answer.is_truthy()?)
                        }
                        _ => Ok(true),
                    }
                });
                tick.unwrap_or_else(|error| {
                    stopped = Some(error);
                    false
                })
            })
        });
        if let Some(error) = stopped {
            return Err(error);
        }
        let plan = planned.map_err(|error| raise(py, &error))?;
        let json = plan.to_json().map_err(|error| raise(py, &error))?;
        let pages = System::NAMES.map(|(name, system)| (name, plan.page(system)));
        Ok((json, pages.into()))
    })
}

fn read(inputs: &Bound<'_, PyAny>) -> PyResult<DayInputs> {
    let py = inputs.py();
    let read = match inputs.cast::<PyString>() {
        Ok(text) => match text.to_str() {
            Ok(text) => DayInputs::from_json(text),
            Err(_) => Err(Error::foreign("json", "a text with half a character", "JSON")),
        },
        Err(_) => DayInputs::from_tree(&tree(inputs, "", 0)?),
    };
    read.map_err(|error| raise(py, &error))
}

pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(_plan, module)?)
}
