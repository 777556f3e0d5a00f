//! Uncertainties of models that are JavaScript's own.

use js_sys::{Array, Float64Array, Function};
use sugaring::{
    Error, catalogue,
    uncertainty::Sampled,
    units::{Dimension, Unit, fraction, table::ALL},
};
use wasm_bindgen::{JsValue, prelude::wasm_bindgen};

use crate::{plan::goes_on, reading, refusal::keep};

/// How uncertain `inputs` make the result of `model` uncertain, to first order.
///
/// `model` is given the inputs as numbers in their units, must not throw, and answers NaN where it refuses; `unit` tells
/// afterwards the index of the unit of its answers.
#[wasm_bindgen]
pub fn propagate(model: &Function, inputs: &str, unit: &Function) -> Option<String> {
    let found = || {
        let inputs = reading::tree(inputs)?;
        let found = catalogue::ask_propagate(|x| answer(model, x), &inputs, || answered(unit))?;
        reading::told(found)
    };
    keep(found())
}

/// The same by many draws: JSON, and the draws, rising. `progress` is given the share done and stops the work by false.
#[wasm_bindgen]
#[expect(clippy::needless_pass_by_value, reason = "the border hands it over")]
pub fn monte_carlo(model: &Function, given: &str, unit: &Function, progress: Option<Function>) -> Option<Array> {
    let found = || {
        let given = reading::tree(given)?;
        let mut tick = |share: f64| goes_on(progress.as_ref(), share);
        let found = catalogue::ask_monte_carlo(|x| answer(model, x), &given, || answered(unit), &mut tick)?;
        let values = Float64Array::from(found.1.as_slice());
        Ok(Array::of2(&JsValue::from(reading::told(found.0)?), &values))
    };
    keep(found())
}

/// The same of a function of the table, whose name `given` holds.
#[wasm_bindgen]
#[expect(clippy::needless_pass_by_value, reason = "the border hands it over")]
pub fn monte_carlo_of(given: &str, progress: Option<Function>) -> Option<Array> {
    let found = || {
        let given = reading::tree(given)?;
        let mut tick = |share: f64| goes_on(progress.as_ref(), share);
        let found = catalogue::ask_monte_carlo_of(&given, &mut tick)?;
        let values = Float64Array::from(found.1.as_slice());
        Ok(Array::of2(&JsValue::from(reading::told(found.0)?), &values))
    };
    keep(found())
}

/// The ends of an interval of draws that holds the truth with `coverage`.
#[wasm_bindgen]
pub fn sampled_interval(values: Vec<f64>, coverage: f64, shortest: bool) -> Option<Vec<f64>> {
    let found = || {
        let sampled = Sampled::of(values)?;
        let coverage = fraction(coverage);
        if shortest {
            sampled.shortest(coverage)
        } else {
            sampled.interval(coverage)
        }
    };
    keep(found()).map(|(low, high)| vec![low, high])
}

/// Share of the draws that are no less than `limit`.
#[wasm_bindgen]
pub fn sampled_at_least(values: Vec<f64>, limit: f64) -> Option<f64> {
    let found = || Sampled::of(values)?.probability_at_least(limit);
    keep(found()).map(|share| share.value)
}

fn answer(model: &Function, inputs: &[f64]) -> Result<f64, Error> {
    let numbers: Array = inputs.iter().copied().map(JsValue::from_f64).collect();
    let answer = model
        .call1(&JsValue::UNDEFINED, &numbers)
        .ok()
        .and_then(|answer| answer.as_f64());
    match answer {
        Some(answer) if answer.is_finite() => Ok(answer),
        Some(answer) if !answer.is_nan() => Err(Error::not_finite("model", answer)),
        _ => Err(Error::not_finite("model", f64::NAN)),
    }
}

fn answered(unit: &Function) -> &'static Unit {
    let index = unit.call0(&JsValue::UNDEFINED).ok().and_then(|index| index.as_f64());
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "an index of the table; what is none becomes 0 or the largest"
    )]
    let found = index.and_then(|index| ALL.get(index as usize).copied().filter(|_| index >= 0.0));
    found.unwrap_or_else(|| Unit::base(Dimension::Ratio))
}
