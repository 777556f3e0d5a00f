//! `asks.jsonl`: the functions that take or give more than numbers, of data and by name.

use sugaring::{
    catalogue,
    form::Tree,
    units::{Quantity, Unit},
};

use super::json::{bits, error, list, object, text};

pub(super) fn lines() -> Vec<String> {
    let cases = [instrument::cases(), card::cases(), uncertainty::cases()].concat();
    cases.iter().map(|(name, given)| line(name, given)).collect()
}

/// A function's name and its arguments.
type Case = (&'static str, Tree);

fn line(name: &str, given: &Tree) -> String {
    let outcome = match catalogue::ask(name, given) {
        Ok(answer) => ("answer", written(&answer)),
        Err(refusal) => ("error", error(&refusal)),
    };
    object([("ask", text(name)), ("given", written(given)), outcome])
}

/// A tree as JSON that keeps every bit: numbers that JSON could bend as `{"bits": BITS}`, quantities by their word.
fn written(tree: &Tree) -> String {
    match tree {
        Tree::Null => String::from("null"),
        Tree::Bool(flag) => flag.to_string(),
        Tree::Number(number) => written_number(*number),
        Tree::Text(words) => text(words),
        Tree::Quantity(quantity) => object([
            ("value", written_number(quantity.value())),
            ("unit", text(quantity.unit().word)),
        ]),
        Tree::List(items) => list(items.iter().map(written)),
        Tree::Map(entries) => object(entries.iter().map(|(key, value)| (key.as_str(), written(value)))),
    }
}

fn written_number(number: f64) -> String {
    if number.is_finite() && number.to_bits() != (-0.0_f64).to_bits() {
        serde_json::Value::from(number).to_string()
    } else {
        object([("bits", text(&bits(number)))])
    }
}

/// A quantity by its word.
fn of(value: f64, word: &str) -> Tree {
    let unit = catalogue::units().iter().find(|unit| unit.word == word);
    Tree::from(Quantity::new(
        value,
        unit.copied()
            .unwrap_or_else(|| Unit::base(sugaring::units::Dimension::Count)),
    ))
}

mod card;
mod instrument;
mod uncertainty;
