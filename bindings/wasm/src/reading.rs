//! Data of the facade as the core reads it: a tree from JSON, and quantities from all their forms.

use sugaring::{
    Error,
    form::Tree,
    units::{self, Dimension, Quantity, Unit, table},
};
use wasm_bindgen::prelude::wasm_bindgen;

use crate::refusal::keep;

/// Marks a text that stands for a number JSON does not know; a text of the user's own that begins so has it twice.
const MARK: char = '\u{1}';

/// The quantity that `json` is as an argument of a function, as its number and the index of its unit.
#[wasm_bindgen]
pub fn argument(name: &str, dimension: &str, json: &str) -> Option<Vec<f64>> {
    let read = || tree(json)?.argument(name, named(dimension)?);
    keep(read()).map(|quantity| numbers(&quantity))
}

/// The quantity that `json` is, of whatever dimension.
#[wasm_bindgen]
pub fn quantity(name: &str, json: &str) -> Option<Vec<f64>> {
    let read = || match tree(json)? {
        Tree::Quantity(quantity) => Ok(quantity),
        Tree::Text(text) => Quantity::parse(&text).map_err(|error| error.named(name)),
        // What else it may be is refused, whatever dimension would be asked for.
        other => other.argument(name, Dimension::Volume),
    };
    keep(read()).map(|quantity| numbers(&quantity))
}

/// The quantity of a text such as `40 gal`.
#[wasm_bindgen]
pub fn parse(text: &str) -> Option<Vec<f64>> {
    keep(Quantity::parse(text)).map(|quantity| numbers(&quantity))
}

/// The name that a heading such as `temp [°F]` holds, and behind a line feed the index of its unit where it names one.
#[wasm_bindgen]
pub fn heading(text: &str) -> Option<String> {
    let (name, unit) = keep(units::heading(text))?;
    let index = unit.and_then(|unit| table::ALL.iter().position(|known| *known == unit));
    Some(format!(
        "{name}\n{}",
        index.map_or_else(String::new, |index| index.to_string())
    ))
}

/// The words of the units in the order of their indices; the facade compares them with what it was generated from.
#[wasm_bindgen]
pub fn units() -> String {
    let words = table::ALL.iter().map(|unit| unit.word);
    words.collect::<Vec<_>>().join(" ")
}

/// Refuses `value` in the unit of index `unit` where a quantity of `dimension` is needed.
#[wasm_bindgen]
pub fn wrong_dimension(unit: usize, value: f64, dimension: &str) {
    let refused = || {
        let unit = table::ALL.get(unit).ok_or_else(|| Error::missing("unit"))?;
        Err::<(), _>(Error::wrong_dimension(&Quantity::new(value, unit), named(dimension)?).named(""))
    };
    keep(refused());
}

/// Refuses what `json` is where a station pressure is needed.
#[wasm_bindgen]
pub fn no_station(name: &str, json: &str) {
    keep(tree(json).and_then(|tree| Err::<(), _>(Error::no_station(name, &tree))));
}

/// The tree of a text that the facade wrote.
pub(crate) fn tree(json: &str) -> Result<Tree, Error> {
    Tree::from_json(json).map(revived)
}

/// A tree as the facade reads it.
pub(crate) fn told(tree: Tree) -> Result<String, Error> {
    marked(tree).to_json()
}

/// Numbers that JSON does not know, as marked texts.
fn marked(tree: Tree) -> Tree {
    match tree {
        Tree::Number(number) if number.is_nan() => Tree::Text(format!("{MARK}NaN")),
        Tree::Number(number) if number.is_infinite() => {
            Tree::Text(format!("{MARK}{}Infinity", if number < 0.0 { "-" } else { "" }))
        }
        Tree::List(list) => list.into_iter().map(marked).collect(),
        Tree::Map(map) => Tree::Map(map.into_iter().map(|(key, value)| (key, marked(value))).collect()),
        other => other,
    }
}

fn revived(tree: Tree) -> Tree {
    match tree {
        Tree::Text(text) => match text.strip_prefix(MARK) {
            None => Tree::Text(text),
            Some(own) if own.starts_with(MARK) => Tree::from(own),
            Some(number) => number.parse().map_or_else(|_| Tree::from(number), Tree::Number),
        },
        Tree::List(list) => list.into_iter().map(revived).collect(),
        Tree::Map(map) => {
            let map: Vec<_> = map.into_iter().map(|(key, value)| (key, revived(value))).collect();
            as_quantity(&map).map_or(Tree::Map(map), Tree::Quantity)
        }
        other => other,
    }
}

/// `{"value": 40, "unit": "gal"}` and nothing else is a quantity, and errors show it so.
fn as_quantity(map: &[(String, Tree)]) -> Option<Quantity> {
    match map {
        [(value, Tree::Number(number)), (unit, Tree::Text(symbol))] if value == "value" && unit == "unit" => {
            Unit::named(symbol).map(|unit| Quantity::new(*number, unit))
        }
        _ => None,
    }
}

fn numbers(quantity: &Quantity) -> Vec<f64> {
    let index = table::ALL.iter().position(|unit| *unit == quantity.unit());
    #[expect(clippy::cast_precision_loss, reason = "there are about a hundred units")]
    let index = index.map_or(f64::NAN, |index| index as f64);
    vec![quantity.value(), index]
}

fn named(dimension: &str) -> Result<Dimension, Error> {
    let known = || table::ALL.iter().map(|unit| unit.dimension);
    let found = known().find(|known| known.name() == dimension);
    found.ok_or_else(|| Error::unknown_name("dimension", dimension, known().map(Dimension::name)))
}
