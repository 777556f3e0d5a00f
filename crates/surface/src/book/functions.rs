//! The book's table of the functions: what each covers, how well it holds, where it comes from.

use sugaring::{
    Range, Relation, air,
    catalogue::{self, Function, Kind},
    units::Unit,
};

use crate::{File, SCALE};

const HEAD: &str = "<!-- Written by `cargo xtask surface`. -->
# Which functions are there, and what do they cover?

Each takes its arguments in this order, in any unit of their kind, and refuses what lies outside these limits; a value at a limit counts as inside. Where limits depend on one another, as the densities that a temperature allows, the error says them. °Brix, ratios and plain numbers are bare numbers; a station pressure is a `StationPressure`. Names are those of Rust and Python; in JavaScript they are written in camelCase. The calls: [How do I call it from my language?](languages.md).
";

const COLUMNS: &str = "| function | arguments | result | accuracy | source |\n| --- | --- | --- | --- | --- |\n";

/// The page of all functions.
pub(super) fn file() -> File {
    let mut text = String::from(HEAD);
    let mut module = "";
    for function in catalogue::functions() {
        if function.module != module {
            module = function.module;
            text += &format!("\n## {module}\n{}\n{COLUMNS}", said_of(module));
        }
        text += &line(row(function));
    }
    File::new("book/src/functions.md", text)
}

/// What stands above a table.
fn said_of(module: &str) -> &'static str {
    if module == SCALE {
        "\nNot called by name: `sucrose.on_scale(brix, baume_20_20)` and `sucrose.brix_from_scale(baume_20_20(36))` find \
         the scale by its word.\n"
    } else {
        ""
    }
}

/// The rows of these functions, whose paths stand in a block's mark.
pub(super) fn of(paths: &str) -> Option<String> {
    let mut rows = Vec::new();
    for path in paths.split(' ') {
        let function = catalogue::functions()
            .iter()
            .find(|function| function.relation.name == path);
        let constructor = || CONSTRUCTORS.iter().find(|relation| relation.name == path);
        rows.push(match function {
            Some(function) => row(function),
            None => row_of(constructor()?),
        });
    }
    let mut text = format!("\n{COLUMNS}");
    let mut before = [String::new(), String::new()];
    for row in rows {
        let [.., accuracy, source] = row.clone();
        let mut shown = row;
        for (cell, before) in shown.iter_mut().rev().zip(before.iter().rev()) {
            if cell == before {
                *cell = String::from("the same");
            }
        }
        text += &line(shown);
        before = [accuracy, source];
    }
    Some(text + "\n")
}

/// What makes a station pressure is no function of numbers.
static CONSTRUCTORS: [&Relation; 5] = [
    &air::STATION_PRESSURE,
    &air::FROM_ALTIMETER_SETTING,
    &air::FROM_SEA_LEVEL,
    &air::FROM_ALTITUDE,
    &air::FROM_BOILING_WATER,
];

fn row_of(relation: &Relation) -> [String; 5] {
    let name = relation.name.split_once("::").map_or(relation.name, |(_, name)| name);
    let arguments = relation
        .inputs
        .iter()
        .map(|range| format!("`{}`: {}", range.argument, limits(range)));
    [
        format!("`{name}`"),
        arguments.collect::<Vec<_>>().join("<br>"),
        String::from("station pressure"),
        relation.accuracy.to_owned(),
        relation.source.to_string(),
    ]
}

fn row(function: &Function) -> [String; 5] {
    let arguments = function.arguments.iter().zip(function.relation.inputs);
    let arguments: Vec<_> = arguments
        .map(|(argument, range)| {
            let kind = match argument.kind {
                Kind::Station => "station pressure, ",
                _ => "",
            };
            format!("`{}`: {kind}{}", argument.name, limits(range))
        })
        .collect();
    [
        format!("`{}`: {}", function.name, function.summary),
        arguments.join("<br>"),
        result(function),
        function.relation.accuracy.to_owned(),
        function.relation.source.to_string(),
    ]
}

fn line(texts: [String; 5]) -> String {
    format!("| {} |\n", texts.map(|text| in_cell(&text)).join(" | "))
}

fn limits(range: &Range) -> String {
    with_symbol(&format!("{} to {}", number(range.low), number(range.high)), range.unit)
}

/// The digits that read back, with a power of ten where there would be many of them.
fn number(x: f64) -> String {
    let size = x.abs();
    if x == 0.0 || (1e-6..1e9).contains(&size) {
        x.to_string()
    } else {
        format!("{x:e}")
    }
}

fn result(function: &Function) -> String {
    let unit = function.relation.output;
    let kind = function.result.name().replace('_', " ");
    match (function.result.is_plain(), unit.symbol) {
        (true, "") => String::from("number"),
        (_, symbol) => format!("{kind}, {symbol}"),
    }
}

fn with_symbol(numbers: &str, unit: &Unit) -> String {
    let minus = numbers.replace('-', "−");
    if unit.symbol.is_empty() {
        minus
    } else {
        format!("{minus} {}", unit.symbol)
    }
}

/// A text that ends no cell and no line.
pub(super) fn in_cell(text: &str) -> String {
    text.split_whitespace()
        .collect::<Vec<_>>()
        .join(" ")
        .replace('|', "\\|")
}
