//! A fault on purpose, for the tests.

use wasm_bindgen::prelude::wasm_bindgen;

/// Panics, as the core never should.
#[wasm_bindgen]
#[expect(clippy::panic, reason = "what it is for")]
pub fn fault() {
    panic!("a fault on purpose");
}
