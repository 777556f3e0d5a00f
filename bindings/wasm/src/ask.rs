//! The functions that take or give more than numbers: JSON in, JSON out, by name.

use sugaring::catalogue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::{reading, refusal::keep};

/// What the core answers to `name`, of arguments by name.
#[wasm_bindgen]
pub fn ask(name: &str, json: &str) -> Option<String> {
    let answer = || reading::told(catalogue::ask(name, &reading::tree(json)?)?);
    keep(answer())
}

/// The columns that the core answers to `name`, end to end, of `count` columns in SI, end to end; NaN where a lane is
/// refused.
#[wasm_bindgen]
pub fn ask_lanes(name: &str, instrument: &str, lanes: &[f64], count: usize) -> Option<Vec<f64>> {
    let answer = || {
        let length = lanes.len() / count.max(1);
        let columns: Vec<&[f64]> = lanes.chunks(length.max(1)).collect();
        catalogue::ask_lanes(name, &reading::tree(instrument)?, &columns)
    };
    keep(answer()).map(|columns| columns.concat())
}
