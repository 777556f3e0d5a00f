//! The types of the functions of numbers, a file a module.

use sugaring::{
    Range,
    catalogue::{self, Argument, Function, Kind},
};

use super::{camel, comment, file, quoted};
use crate::{File, SCALE};

const IMPORTS: &str = "
import type { Column, Options, Plain, PlainColumn, Quantity, Taken, TakenColumn } from \"../quantity.js\";
import type { Station, StationColumn } from \"../station_pressure.js\";
";

/// Parts of a module that are no functions of numbers.
const BESIDE: [(&str, &str); 4] = [
    (
        "air",
        "\nexport { StationPressure, StationPressures } from \"../station_pressure.js\";\n",
    ),
    (
        "finish",
        "\nexport { finishingPoint, legal, type FinishingPoint, type Legality } from \"../finishing.js\";\n",
    ),
    ("sucrose", "\nexport { brixFromScale, onScale } from \"../scale.js\";\n"),
    ("uncertainty", "\nexport * from \"../uncertainty.js\";\n"),
];

pub(super) fn modules() -> Vec<File> {
    let rows = catalogue::functions()
        .iter()
        .filter(|function| function.module != SCALE);
    let mut modules: Vec<&str> = rows.map(|function| function.module).collect();
    modules.dedup();
    modules.into_iter().map(module).collect()
}

fn module(name: &str) -> File {
    let mut text = String::from(IMPORTS);
    text.extend(
        BESIDE
            .iter()
            .filter(|(module, _)| *module == name)
            .map(|(_, part)| *part),
    );
    for function in catalogue::functions().iter().filter(|function| function.module == name) {
        text += "\n";
        text += &comment("", &docs(function));
        text += &format!("export function {};\n", signature(function, false));
        text += &format!("export function {};\n", signature(function, true));
    }
    file(&format!("types/{name}.d.ts"), &text)
}

fn signature(function: &Function, columns: bool) -> String {
    let option = "on_error?: \"nan\"";
    let typed = |argument: &Argument| format!("{}: {}", argument.name, taken(argument, columns));
    let mut arguments: Vec<String> = function.arguments.iter().take(2).map(typed).collect();
    let rest: Vec<String> = function.arguments.iter().skip(2).map(typed).collect();
    arguments.push(if rest.is_empty() {
        String::from("options?: Options")
    } else {
        format!("options: {{ {}; {option} }}", rest.join("; "))
    });
    let result = match (function.result.is_plain(), columns) {
        (true, false) => String::from("number"),
        (true, true) => String::from("Float64Array"),
        (false, false) => format!("Quantity<{}>", quoted(function.result.name())),
        (false, true) => format!("Quantity<{}, Float64Array>", quoted(function.result.name())),
    };
    format!("{}({}): {result}", camel(function.name), arguments.join(", "))
}

fn taken(argument: &Argument, columns: bool) -> String {
    let Kind::Quantity(dimension) = argument.kind else {
        return String::from(if columns { "StationColumn" } else { "Station" });
    };
    let plain = if dimension.is_plain() { "Plain" } else { "Taken" };
    let column = if columns { "Column" } else { "" };
    format!("{plain}{column}<{}>", quoted(dimension.name()))
}

fn docs(function: &Function) -> Vec<String> {
    let relation = function.relation;
    let source = format!("Source: {}.", relation.source);
    let mut lines = vec![function.summary.to_owned(), String::new(), source, String::new()];
    let inputs = function.arguments.iter().zip(relation.inputs).enumerate();
    lines.extend(inputs.map(|(index, (argument, range))| {
        let owner = if index < 2 { "" } else { "options." };
        format!("@param {owner}{} {}", argument.name, limits(range))
    }));
    let unit = relation.output.symbol;
    let shown = if unit.is_empty() {
        String::from("A number")
    } else {
        format!("In {unit}")
    };
    lines.push(format!("@returns {shown}; accuracy: {}", relation.accuracy));
    lines.push(String::from("@throws SugaringError"));
    lines
}

fn limits(range: &Range) -> String {
    let unit = range.unit.symbol;
    let space = if unit.is_empty() { "" } else { " " };
    format!("{:?} to {:?}{space}{unit}", range.low, range.high)
        .replace(".0 to", " to")
        .replace(".0 ", " ")
}
