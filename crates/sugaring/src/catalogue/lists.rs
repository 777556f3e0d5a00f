use alloc::{format, string::String, vec::Vec};

use super::{Function, table};
use crate::{
    day,
    error::{Error, ErrorKind},
    finish::JurisdictionRow,
    instrument::InstrumentRow,
    relation::Relation,
    units::{Unit, table::ALL},
};

/// The public functions of numbers, by module.
#[must_use]
pub fn functions() -> &'static [&'static Function] {
    table::FUNCTIONS
}

/// The function of numbers of that name, such as `sucrose.density`.
///
/// # Errors
/// Unknown name.
///
/// ```
/// use sugaring::catalogue;
/// assert_eq!(catalogue::function("water.viscosity")?.summary, "Viscosity of liquid water.");
/// let error = catalogue::function("sucrose.densty").unwrap_err();
/// assert_eq!(error.to_string(), "function has the unknown name \"sucrose.densty\"; nearest: sucrose.density");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn function(name: &str) -> Result<&'static Function, Error> {
    let of = |row: &Function| format!("{}.{}", row.module, row.name);
    let found = table::FUNCTIONS.iter().find(|row| of(row) == name);
    found.copied().ok_or_else(|| {
        let names: Vec<String> = table::FUNCTIONS.iter().map(|row| of(row)).collect();
        Error::unknown_name("function", name, names.iter().map(String::as_str))
    })
}

/// What each of the [`functions`] covers, in their order.
pub fn relations() -> impl ExactSizeIterator<Item = &'static Relation> {
    table::FUNCTIONS.iter().map(|function| function.relation)
}

/// Every unit, by dimension.
#[must_use]
pub fn units() -> &'static [&'static Unit] {
    ALL
}

/// What density is lawful where; no row is legal advice.
#[must_use]
pub fn jurisdictions() -> &'static [JurisdictionRow] {
    JurisdictionRow::all()
}

/// What instruments at hand usually show, and how surely: what to take where nobody tested them.
#[must_use]
pub fn instruments() -> &'static [InstrumentRow] {
    InstrumentRow::all()
}

/// Every kind of error that the core makes.
#[must_use]
pub fn error_kinds() -> &'static [ErrorKind] {
    &ErrorKind::ALL
}

/// Version of the results: the same inputs give the same bits under the same version.
#[must_use]
pub fn numbers() -> &'static str {
    day::NUMBERS
}

/// The names of the JSON Schemas, each with its text by [`schema`].
pub fn schemas() -> impl ExactSizeIterator<Item = &'static str> {
    SCHEMAS.iter().map(|(name, _)| *name)
}

/// The JSON Schema of `day_inputs` or `day_plan`.
///
/// # Errors
/// Unknown name.
///
/// ```
/// use sugaring::catalogue;
/// assert!(catalogue::schema("day_inputs")?.contains("\"title\": \"DayInputs\""));
/// let error = catalogue::schema("day_input").unwrap_err();
/// assert_eq!(error.to_string(), "schema has the unknown name \"day_input\"; nearest: day_inputs");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn schema(name: &str) -> Result<&'static str, Error> {
    let known = SCHEMAS.iter().find(|(known, _)| *known == name);
    known
        .map(|(_, text)| *text)
        .ok_or_else(|| Error::unknown_name("schema", name, SCHEMAS.iter().map(|(known, _)| *known)))
}

const SCHEMAS: [(&str, &str); 2] = [
    ("day_inputs", include_str!("../../schema/day_inputs.json")),
    ("day_plan", include_str!("../../schema/day_plan.json")),
];
