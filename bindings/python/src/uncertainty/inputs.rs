//! The inputs of a model, as they may be given.

use pyo3::{
    IntoPyObjectExt,
    prelude::*,
    sync::PyOnceLock,
    types::{PyDict, PyMapping, PyString},
};
use sugaring::{Error, uncertainty, units::Unit};

use super::spread::{Spread, one, shown, steps};
use crate::{guard::guarded, quantity::described, raise::raise};

/// Inputs by place, each with the unit its numbers are in.
pub(super) struct Inputs {
    pub(super) spreads: Vec<uncertainty::Spread>,
    pub(super) units: Vec<Option<&'static Unit>>,
}

impl Inputs {
    /// Of a dict by name, or of anything that runs through inputs.
    pub(super) fn of(any: &Bound<'_, PyAny>) -> PyResult<Self> {
        let py = any.py();
        guarded(py, || {
            let mut inputs = Self {
                spreads: Vec::new(),
                units: Vec::new(),
            };
            if let Ok(named) = any.cast::<PyDict>() {
                for (name, input) in named {
                    let Ok(name) = name.cast::<PyString>() else {
                        let error = Error::foreign("inputs", &described(&name), "names");
                        return Err(raise(py, &error));
                    };
                    inputs.push(&input, Some(&name.to_string_lossy()))?;
                }
            } else if let Ok(named) = any.cast::<PyMapping>() {
                return Self::of(PyDict::from_sequence(named.items()?.as_any())?.as_any());
            } else if any.is_instance_of::<PyString>() {
                return Err(raise(py, &wrong(any)));
            } else {
                let Ok(list) = any.try_iter() else {
                    return Err(raise(py, &wrong(any)));
                };
                for input in list {
                    inputs.push(&input?, None)?;
                }
            }
            Ok(inputs)
        })
    }

    fn push(&mut self, input: &Bound<'_, PyAny>, name: Option<&str>) -> PyResult<()> {
        let py = input.py();
        let place = format!("inputs[{}]", self.spreads.len());
        if let Ok(spread) = input.cast::<Spread>() {
            let spread = spread.get();
            let given = Some(spread.core.name()).filter(|name| !name.is_empty());
            self.units.push(spread.unit);
            self.spreads
                .push(match name.or(if given.is_some() { None } else { Some(&place) }) {
                    Some(name) => spread.core.clone().with_name(name),
                    None => spread.core.clone(),
                });
            return Ok(());
        }
        let name = name.unwrap_or(&place);
        let measured = input.is_instance(measured(py)?)?;
        let (number, unit, u) = if measured {
            let (number, unit) = one(&input.getattr("value")?, name)?;
            (number, unit, steps(&input.getattr("uncertainty")?, unit)?)
        } else {
            let (number, unit) = one(input, name)?;
            (number, unit, 0.0)
        };
        self.spreads
            .push(uncertainty::Spread::new(name, number, u).map_err(|error| raise(py, &error))?);
        self.units.push(unit);
        Ok(())
    }

    /// The arguments of the model at `numbers`.
    pub(super) fn arguments(&self, py: Python<'_>, numbers: &[f64]) -> PyResult<Vec<Py<PyAny>>> {
        numbers
            .iter()
            .zip(&self.units)
            .map(|(number, unit)| shown(py, *number, *unit))
            .collect()
    }
}

fn wrong(any: &Bound<'_, PyAny>) -> Error {
    Error::foreign("inputs", &described(any), "a list of inputs, or a dict of them by name")
}

/// `sugaring._amounts.Measured`.
pub(super) fn measured(py: Python<'_>) -> PyResult<&Bound<'_, PyAny>> {
    static MEASURED: PyOnceLock<Py<PyAny>> = PyOnceLock::new();
    let class = MEASURED.get_or_try_init(py, || {
        py.import("sugaring._amounts")?.getattr("Measured")?.into_py_any(py)
    })?;
    Ok(class.bind(py))
}
