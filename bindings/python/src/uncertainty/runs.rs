//! Propagation and Monte Carlo of a model.

use pyo3::{
    prelude::*,
    types::{PyBool, PyDict, PyInt},
};
use sugaring::{
    Error,
    uncertainty::{self, Samples},
};

use super::{
    inputs::Inputs,
    model::{Model, Row, names},
    results::{Propagated, Sampled},
    spread::plain,
};
use crate::{guard::guarded, quantity::described, raise::raise};

/// How uncertain inputs make the result of ``model`` uncertain, to first order.
#[pyfunction]
#[pyo3(signature = (model, inputs, /))]
pub(super) fn propagate(py: Python<'_>, model: &Bound<'_, PyAny>, inputs: &Bound<'_, PyAny>) -> PyResult<Propagated> {
    guarded(py, || match Row::of(model, Inputs::of(inputs, &names(model))?) {
        Ok(row) => {
            let found = uncertainty::propagate(|x| row.call(x), &row.inputs.spreads);
            let found = found.map_err(|error| raise(py, &error))?;
            Ok(Propagated::of(found, row.unit()))
        }
        Err(inputs) => {
            let model = Model::new(model, inputs)?;
            let found = uncertainty::propagate(|x| model.call(x), &model.inputs.spreads);
            match (found, model.raised()) {
                (Ok(found), _) if !model.has_ended() => Ok(Propagated::of(found, model.unit())),
                (_, Some(raised)) => Err(raised),
                (Ok(found), None) => Ok(Propagated::of(found, model.unit())),
                (Err(error), None) => Err(raise(py, &error)),
            }
        }
    })
}

/// How uncertain inputs make the result of ``model`` uncertain, by drawing the inputs many times.
#[pyfunction]
#[pyo3(signature = (model, inputs, /, *, seed, samples, columns=false, progress=None))]
pub(super) fn monte_carlo(
    py: Python<'_>,
    model: &Bound<'_, PyAny>,
    inputs: &Bound<'_, PyAny>,
    seed: &Bound<'_, PyAny>,
    samples: &Bound<'_, PyAny>,
    columns: bool,
    progress: Option<Py<PyAny>>,
) -> PyResult<Sampled> {
    guarded(py, || {
        let seed = read_seed(seed)?;
        let samples = read_samples(samples)?;
        let mut stopped = None;
        let mut tick = |share: f64| {
            let told = Python::attach(|py| -> PyResult<bool> {
                py.check_signals()?;
                match &progress {
                    Some(callback) => {
                        let answer = callback.bind(py).call1((share,))?;
                        Ok(answer.is_none() || answer.is_truthy()?)
                    }
                    None => Ok(true),
                }
            });
            told.unwrap_or_else(|raised| {
                stopped = Some(raised);
                false
            })
        };
        let (found, raised, unit) = match Row::of(model, Inputs::of(inputs, &names(model))?) {
            Ok(row) => {
                let found = py.detach(|| row.monte_carlo(seed, samples, &mut tick));
                (found, None, row.unit())
            }
            Err(inputs) => {
                let model = Model::new(model, inputs)?;
                let spreads = &model.inputs.spreads;
                let found = if columns {
                    uncertainty::monte_carlo_columns(|x, y| model.call_columns(x, y), spreads, seed, samples, &mut tick)
                } else {
                    uncertainty::monte_carlo_watched(|x| model.call(x), spreads, seed, samples, &mut tick)
                };
                (found, model.raised(), model.unit())
            }
        };
        match (found, stopped.or(raised)) {
            (_, Some(raised)) => Err(raised),
            (Ok(found), None) => Ok(Sampled::of(found, unit)),
            (Err(error), None) => Err(raise(py, &error)),
        }
    })
}

fn read_seed(seed: &Bound<'_, PyAny>) -> PyResult<u64> {
    if seed.is_instance_of::<PyInt>() && !seed.is_instance_of::<PyBool>() {
        if let Ok(seed) = seed.extract() {
            return Ok(seed);
        }
    }
    let error = Error::foreign("seed", &described(seed), "a whole number from 0 to 2**64 - 1");
    Err(raise(seed.py(), &error))
}

/// A whole number, or ``{"until": tolerance}`` or ``{"digits": digits}``.
fn read_samples(samples: &Bound<'_, PyAny>) -> PyResult<Samples> {
    let py = samples.py();
    if let Ok(choice) = samples.cast::<PyDict>() {
        if let Some((key, value)) = choice.iter().next().filter(|_| choice.len() == 1) {
            let key: String = key.extract().unwrap_or_default();
            return match key.as_str() {
                "until" => plain(&value, "samples.until").map(Samples::Until),
                "digits" => Ok(Samples::Digits(whole(plain(&value, "samples.digits")?))),
                _ => Err(raise(py, &Error::unknown_name("samples", &key, ["until", "digits"]))),
            };
        }
    } else if samples.is_instance_of::<PyInt>() && !samples.is_instance_of::<PyBool>() {
        return Ok(Samples::Count(samples.extract().unwrap_or(u32::MAX)));
    }
    let wanted = "a whole number, {\"until\": tolerance} or {\"digits\": digits}";
    Err(raise(py, &Error::foreign("samples", &described(samples), wanted)))
}

/// A number of digits; what is none is one that the core refuses.
fn whole(digits: f64) -> u8 {
    (1..=9)
        .find(|known| (f64::from(*known) - digits).abs() < f64::EPSILON)
        .unwrap_or(0)
}
