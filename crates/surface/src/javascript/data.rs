//! The table and the units as the data that the facade runs on.

use sugaring::{
    catalogue::{self, Argument, Function, Kind},
    units::{Dimension, Unit},
};

use super::{file, quoted};
use crate::File;

/// `surface.js`: what every call needs.
pub(super) fn surface() -> File {
    let mut text =
        String::from("\n// Name, name with article, its SI unit in UNITS, and whether a bare number will do.\n");
    let rows = dimensions().into_iter().map(|dimension| {
        let base = index_of(Unit::base(dimension));
        let plain = u8::from(dimension.is_plain());
        format!(
            "[{}, {}, {base}, {plain}]",
            quoted(dimension.name()),
            quoted(dimension.article_name())
        )
    });
    text += &list("DIMENSIONS", rows);
    text += "\n// Word, symbol, dimension, and the numbers of (x - zero) * times / over + offset.\n";
    let rows = catalogue::units().iter().map(|unit| {
        let [zero, times, over, offset] = unit.numbers();
        let names = format!(
            "{}, {}, {}",
            quoted(unit.word),
            quoted(unit.symbol),
            place(unit.dimension)
        );
        format!("[{names}, {zero}, {times}, {over}, {offset}]")
    });
    text += &list("UNITS", rows);
    text += "\n// Module, name, arguments, the dimension of each (-1 a station pressure), and the unit results are shown in.\n";
    text += &list("ROWS", catalogue::functions().iter().map(|function| row(function)));
    file("surface.js", &text)
}

/// `catalogue_data.js`: what forms and tables are made from.
pub(super) fn catalogue() -> File {
    let mut text = String::from(
        "\n// Module, name, summary, arguments with kind, unit and limits as read and in SI, result, its unit, source, its kind, accuracy.\n",
    );
    text += &list(
        "FUNCTIONS",
        catalogue::functions().iter().map(|function| described(function)),
    );
    text += "\n// Aliases and definition of each unit.\n";
    let spellings = catalogue::units().iter().map(|unit| {
        let aliases: Vec<_> = unit.aliases.iter().map(|alias| quoted(alias)).collect();
        format!("[[{}], {}]", aliases.join(", "), quoted(unit.definition))
    });
    text += &list("SPELLINGS", spellings);
    let kinds = catalogue::error_kinds()
        .iter()
        .map(|kind| [kind.name(), kind.meaning(), kind.begins()]);
    let internal = [
        "internal",
        "A fault in sugaring itself: please report it.",
        "a fault in sugaring",
    ];
    text += "\n// Every kind of error, what it means and how its text begins; the last is made here alone.\n";
    text += &list(
        "KINDS",
        kinds
            .chain([internal])
            .map(|row| format!("[{}]", row.map(quoted).join(", "))),
    );
    text += &format!("\nexport const NUMBERS = {};\n", quoted(catalogue::numbers()));
    text += "\nexport const SCHEMAS = {\n";
    for name in catalogue::schemas() {
        text += &format!("  {name}: () => import(\"./schema/{name}.js\"),\n");
    }
    text += "};\n";
    file("catalogue_data.js", &text)
}

fn list(name: &str, rows: impl Iterator<Item = String>) -> String {
    let mut text = format!("export const {name} = [\n");
    rows.for_each(|row| text += &format!("  {row},\n"));
    text + "];\n"
}

fn row(function: &Function) -> String {
    let names: Vec<_> = function
        .arguments
        .iter()
        .map(|argument| quoted(argument.name))
        .collect();
    let kinds: Vec<_> = function.arguments.iter().map(kind).collect();
    let names = names.join(", ");
    let kinds = kinds.join(", ");
    let output = index_of(function.relation.output);
    format!(
        "[{}, {}, [{names}], [{kinds}], {output}]",
        quoted(function.module),
        quoted(function.name)
    )
}

fn kind(argument: &Argument) -> String {
    match argument.kind {
        Kind::Station => String::from("-1"),
        kind => place(kind.dimension()).to_string(),
    }
}

fn described(function: &Function) -> String {
    let inputs = function
        .arguments
        .iter()
        .zip(function.relation.inputs)
        .map(|(argument, range)| {
            let [name, kind, unit] = [argument.name, argument.kind.name(), range.unit.symbol].map(quoted);
            let (low_si, high_si) = range.limits_si();
            format!(
                "[{name}, {kind}, {unit}, {:?}, {:?}, {low_si:?}, {high_si:?}]",
                range.low, range.high
            )
        });
    let inputs = inputs.collect::<Vec<_>>().join(", ");
    let [module, name, summary] = [function.module, function.name, function.summary].map(quoted);
    let [result, unit] = [function.result.name(), function.relation.output.symbol].map(quoted);
    let source = quoted(&function.relation.source.to_string());
    let source_kind = quoted(function.relation.source.kind());
    let accuracy = quoted(function.relation.accuracy);
    format!("[{module}, {name}, {summary}, [{inputs}], {result}, {unit}, {source}, {source_kind}, {accuracy}]")
}

/// The dimensions in the order of their units.
pub(super) fn dimensions() -> Vec<Dimension> {
    let mut found = Vec::new();
    for unit in catalogue::units() {
        if !found.contains(&unit.dimension) {
            found.push(unit.dimension);
        }
    }
    found
}

fn place(dimension: Dimension) -> usize {
    dimensions()
        .iter()
        .position(|&known| known == dimension)
        .unwrap_or_default()
}

fn index_of(unit: &Unit) -> usize {
    catalogue::units()
        .iter()
        .position(|&known| known == unit)
        .unwrap_or_default()
}
