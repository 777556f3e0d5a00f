//! The functions of the table, by row: one value at a time.

use sugaring::{Error, catalogue};
use wasm_bindgen::prelude::wasm_bindgen;

use crate::refusal::keep_number;

/// `module.name` of each row, in order; the facade compares it with what it was generated from.
#[wasm_bindgen]
pub fn rows() -> String {
    let names = catalogue::functions().iter();
    let names = names.map(|function| format!("{}.{}", function.module, function.name));
    names.collect::<Vec<_>>().join(" ")
}

/// The result of a row of one argument, all in SI.
#[wasm_bindgen]
pub fn call1(row: usize, a: f64) -> f64 {
    keep_number(value(row, &[a]))
}

/// The result of a row of two arguments, all in SI.
#[wasm_bindgen]
pub fn call2(row: usize, a: f64, b: f64) -> f64 {
    keep_number(value(row, &[a, b]))
}

/// The result of a row of three arguments, all in SI.
#[wasm_bindgen]
pub fn call3(row: usize, a: f64, b: f64, c: f64) -> f64 {
    keep_number(value(row, &[a, b, c]))
}

/// The result of a row of four arguments, all in SI.
#[wasm_bindgen]
pub fn call4(row: usize, a: f64, b: f64, c: f64, d: f64) -> f64 {
    keep_number(value(row, &[a, b, c, d]))
}

fn value(row: usize, si: &[f64]) -> Result<f64, Error> {
    match catalogue::functions().get(row) {
        Some(function) => function.value(si),
        None => Err(Error::missing("row")),
    }
}
