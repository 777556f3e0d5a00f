//! What went wrong in the last call that answered NaN or nothing.

use core::cell::RefCell;

use sugaring::{Error, form::Tree};
use wasm_bindgen::prelude::wasm_bindgen;

thread_local! {
    static LAST: RefCell<Option<Error>> = const { RefCell::new(None) };
}

/// Keeps the error for [`last_error`].
pub(crate) fn keep<T>(result: Result<T, Error>) -> Option<T> {
    result
        .map_err(|error| LAST.with(|last| *last.borrow_mut() = Some(error)))
        .ok()
}

/// Keeps the error for [`last_error`]; NaN stands for it.
pub(crate) fn keep_number(result: Result<f64, Error>) -> f64 {
    keep(result).unwrap_or(f64::NAN)
}

/// The last refusal as JSON, once.
#[wasm_bindgen]
pub fn last_error() -> Option<String> {
    let error = LAST.with(|last| last.borrow_mut().take())?;
    told(&error).to_json().ok()
}

/// A slip that the facade met itself, in the core's words; [`last_error`] then tells it.
#[wasm_bindgen]
pub fn refuse(what: &str, argument: &str, shown: &str, other: &str) {
    let argument = argument.to_owned();
    let hinted = |error: Error| {
        if other.is_empty() {
            error
        } else {
            error.with_hint(other)
        }
    };
    let error = match what {
        "missing" => hinted(Error::missing(argument)),
        "inconsistent" => Error::inconsistent(argument, shown, other),
        "unknown_name" => Error::unknown_name(argument, shown, other.split(' ')),
        _ => hinted(Error::unreadable(argument, shown)),
    };
    keep::<()>(Err(error));
}

/// The fields; a number that JSON does not know goes as its name.
fn told(error: &Error) -> Tree {
    let text = |text: &str| Tree::from(text);
    let mut fields = vec![
        ("message", text(&error.to_string())),
        ("kind", text(error.kind().name())),
        ("argument", text(error.argument())),
        ("value", number(error.value())),
        ("unit", text(error.unit())),
    ];
    if let Some((low, high)) = error.range() {
        fields.push(("range", [number(low), number(high)].into_iter().collect()));
    }
    if let Some(hint) = error.hint() {
        fields.push(("hint", text(hint)));
    }
    if let Some(reference) = error.reference() {
        fields.push(("reference", text(&reference.to_string())));
    }
    Tree::map(fields)
}

fn number(value: f64) -> Tree {
    if value.is_finite() {
        Tree::from(value)
    } else if value.is_nan() {
        Tree::from("NaN")
    } else if value > 0.0 {
        Tree::from("Infinity")
    } else {
        Tree::from("-Infinity")
    }
}
