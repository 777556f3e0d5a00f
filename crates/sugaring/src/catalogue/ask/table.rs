use super::given::Given;
use crate::{error::Error, form::Tree, units::Unit};

/// What the function `name` answers to the arguments `given`, both as data: keys are the names of the arguments, an
/// instrument is as the plan's inputs have it, a station pressure is `{"pressure", "uncertainty", "origin"}`.
///
/// In Rust call the functions themselves; this is how languages without their types do.
///
/// # Errors
/// Those of the function; unknown name, where there is none such.
///
/// ```
/// use sugaring::{catalogue, form::Tree};
/// let error = catalogue::ask("Hydrometer.truht", &Tree::map::<&str>([])).unwrap_err();
/// assert_eq!(error.to_string(), "name has the unknown name \"Hydrometer.truht\"; nearest: Hydrometer.truth");
/// ```
pub fn ask(name: &str, given: &Tree) -> Result<Tree, Error> {
    let found = answers().find(|(known, _)| *known == name);
    let Some((_, answer)) = found else {
        return Err(Error::unknown_name("name", name, asks()));
    };
    answer(Given::of(given)?).map(plainly)
}

/// Quantities of plain numbers, as °Brix, as the numbers that they are in JSON.
fn plainly(tree: Tree) -> Tree {
    match tree {
        Tree::Quantity(quantity)
            if quantity.dimension().is_plain() && quantity.unit() == Unit::base(quantity.dimension()) =>
        {
            Tree::Number(quantity.value())
        }
        Tree::List(list) => list.into_iter().map(plainly).collect(),
        Tree::Map(map) => Tree::Map(map.into_iter().map(|(key, value)| (key, plainly(value))).collect()),
        other => other,
    }
}

/// The names that [`ask`] knows.
pub fn asks() -> impl Iterator<Item = &'static str> {
    answers().map(|(name, _)| *name)
}

/// A function's name, and the function of its arguments.
pub(super) type Answer = (&'static str, fn(Given<'_>) -> Result<Tree, Error>);

fn answers() -> impl Iterator<Item = &'static Answer> {
    let rooms = [
        super::instrument::ANSWERS,
        super::card::ANSWERS,
        super::uncertainty::ANSWERS,
    ];
    rooms.into_iter().flatten()
}
