//! The functions of the table, by row: columns, a block of lanes at a time.
//!
//! The lanes lie in one buffer that the facade writes to and reads from in place: nothing is allocated for a call,
//! however long the columns are.

use core::cell::RefCell;

use sugaring::catalogue;
use wasm_bindgen::{JsValue, prelude::wasm_bindgen};

/// Lanes of a block: small enough to stay in the processor's cache, large enough that a call costs nothing.
const LANES: usize = 2048;

/// Columns of a block: four arguments and the result.
const COLUMNS: usize = 5;

thread_local! {
    static BUFFER: RefCell<Vec<f64>> = const { RefCell::new(Vec::new()) };
}

/// Address of the buffer: five columns of [`lanes`] numbers, the last for the result.
#[wasm_bindgen]
pub fn buffer() -> usize {
    BUFFER.with(|buffer| {
        let mut buffer = buffer.borrow_mut();
        buffer.resize(LANES * COLUMNS, 0.0);
        buffer.as_mut_ptr().addr()
    })
}

/// The module's memory, in which the buffer lies.
#[wasm_bindgen]
pub fn linear_memory() -> JsValue {
    wasm_bindgen::memory()
}

/// Lanes of a column of the buffer.
#[wasm_bindgen]
pub fn lanes() -> usize {
    LANES
}

/// Fills the first `lanes` results of `row` from the argument columns, all in SI, and returns how many were refused;
/// these are NaN.
#[wasm_bindgen]
pub fn block(row: usize, lanes: usize) -> usize {
    let lanes = lanes.min(LANES);
    BUFFER.with(|buffer| {
        let mut buffer = buffer.borrow_mut();
        let (given, out) = buffer.split_at_mut(LANES * (COLUMNS - 1));
        let (Some(function), Some(out)) = (catalogue::functions().get(row), out.get_mut(..lanes)) else {
            return lanes;
        };
        let columns = given.chunks(LANES).take(function.arguments.len());
        let columns = columns.collect::<Vec<_>>();
        function.block(&columns, out)
    })
}
