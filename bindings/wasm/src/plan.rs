//! The day's plan: JSON in, JSON and pages out.

use js_sys::Function;
use sugaring::{
    Error,
    day::{self, DayInputs, System},
};
use wasm_bindgen::{JsValue, prelude::wasm_bindgen};

use crate::{reading, refusal::keep};

/// The plan as JSON, then its page as given, in US units and in metric ones.
///
/// `own` says that the facade wrote the text from an object; else it is the caller's JSON. `progress` is given the
/// share done, must not throw, and stops the work by false.
#[wasm_bindgen]
#[expect(clippy::needless_pass_by_value, reason = "the border hands it over")]
pub fn day_plan(inputs: &str, own: bool, progress: Option<Function>) -> Option<Vec<String>> {
    keep(planned(inputs, own, progress.as_ref()))
}

fn planned(inputs: &str, own: bool, progress: Option<&Function>) -> Result<Vec<String>, Error> {
    let inputs = if own {
        DayInputs::from_tree(&reading::tree(inputs)?)?
    } else {
        DayInputs::from_json(inputs)?
    };
    let plan = day::plan_watched(&inputs, &mut |share| goes_on(progress, share))?;
    let page = |system| plan.page(system);
    let pages = [System::AsGiven, System::Us, System::Metric].map(page);
    Ok([plan.to_json()?].into_iter().chain(pages).collect())
}

/// Whether the work goes on, as the callback says.
pub(crate) fn goes_on(progress: Option<&Function>, share: f64) -> bool {
    let answer = progress.map(|progress| progress.call1(&JsValue::UNDEFINED, &JsValue::from_f64(share)));
    !matches!(answer, Some(Ok(answer)) if answer.as_bool() == Some(false))
}
