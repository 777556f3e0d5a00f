//! Docstrings of the functions, as the binding includes them: numpydoc, with limits, source, accuracy and an example.

use std::{collections::BTreeSet, fs};

use sugaring::{
    catalogue::{self, Function, Kind},
    units::{Quantity, Unit},
};

use super::words::{dimension, number, typed};
use crate::{File, SCALE, file::top};

pub(super) fn files() -> Vec<File> {
    let path = |name: &str| format!("bindings/python/docs/{name}.txt");
    let rows = catalogue::functions().iter();
    let rows = rows.map(|row| File::new(path(&format!("{}.{}", row.module, row.name)), text(row)));
    let modules: BTreeSet<&str> = catalogue::functions().iter().map(|row| row.module).collect();
    let modules = modules.into_iter().map(|name| File::new(path(name), module(name)));
    modules.chain(rows).collect()
}

/// The first paragraph of the core's own documentation of a module.
pub(super) fn module(name: &str) -> String {
    if name == SCALE {
        return String::from("What stands behind `sucrose.on_scale` and `sucrose.brix_from_scale`.\n");
    }
    let source = fs::read_to_string(top().join(format!("crates/sugaring/src/{name}/mod.rs"))).unwrap_or_default();
    let lines = source.lines().map_while(|line| line.strip_prefix("//!"));
    let first: Vec<&str> = lines.map(str::trim).take_while(|line| !line.is_empty()).collect();
    format!("{}\n", first.join("\n").replace(['[', ']'], ""))
}

/// The docstring of a row.
pub(super) fn text(row: &Function) -> String {
    let mut text = format!("{}\n\nParameters\n----------\n", row.summary.trim());
    for (argument, range) in row.arguments.iter().zip(row.relation.inputs) {
        let limits = format!("{} to {}", typed(range.low), shown(range.high, range.unit));
        text += &format!("{} : {}\n    {limits}.\n", argument.name, kind(argument.kind));
    }
    text += "on_error : \"nan\", optional\n    NaN where a value is refused, in place of an error.\n\n";
    text += "Returns\n-------\n";
    if row.result.is_plain() {
        let what = match row.relation.output.symbol {
            "" => String::from("A plain number"),
            symbol => format!("In {symbol}"),
        };
        text += &format!("float\n    {what}; a column where an argument is one.\n\n");
    } else {
        let unit = row.relation.output;
        text += &format!(
            "Quantity[{}]\n    Shown in {} (``{}``); of a column where an argument is one.\n\n",
            dimension(row.result),
            unit.symbol,
            unit.word
        );
    }
    text += "Raises\n------\nSugaringError\n    An argument out of range, not finite, or of another dimension.\n\n";
    text += &format!(
        "Notes\n-----\nSource: {}.\n\nAccuracy: {}.\n",
        sentence(&row.relation.source.to_string()),
        sentence(row.relation.accuracy)
    );
    if let Some(example) = example(row).filter(|_| row.module != SCALE) {
        text += &format!("\nExamples\n--------\n{example}");
    }
    text
}

fn sentence(text: &str) -> &str {
    text.trim().trim_end_matches('.')
}

fn shown(value: f64, unit: &'static Unit) -> String {
    Quantity::new(value, unit).to_string()
}

fn kind(kind: Kind) -> String {
    match kind {
        Kind::Station => String::from("StationPressure"),
        Kind::Quantity(dimension_) if dimension_.is_plain() => String::from("float"),
        kind => format!("Quantity[{}]", dimension(kind.dimension())),
    }
}

/// A call from the middle of the range, or nearer to an end where the middle has no answer.
fn example(row: &Function) -> Option<String> {
    let found = [0.5, 0.25, 0.75, 0.1].into_iter().find_map(|share| {
        let given: Vec<f64> = row
            .relation
            .inputs
            .iter()
            .zip([0.0, 0.1, -0.1, 0.0])
            .map(|(range, aside)| rounded(range.low + (share + aside) * (range.high - range.low)))
            .collect();
        let si: Vec<f64> = row
            .relation
            .inputs
            .iter()
            .zip(&given)
            .map(|(range, x)| range.unit.to_si(*x))
            .collect();
        row.value(&si).ok().map(|result| (given, result))
    });
    let (given, result) = found?;
    let mut words: Vec<&str> = Vec::new();
    let mut arguments = Vec::new();
    let mut station = false;
    for (index, ((argument, range), x)) in row.arguments.iter().zip(row.relation.inputs).zip(&given).enumerate() {
        let x = typed(*x);
        let plain = argument.kind.dimension().is_plain() && argument.kind != Kind::Station;
        let bare = plain && *range.unit == *Unit::base(argument.kind.dimension());
        if !bare && !words.contains(&range.unit.word) {
            words.push(range.unit.word);
        }
        let value = match argument.kind {
            Kind::Station => {
                station = true;
                format!("StationPressure.measured({}({x}))", range.unit.word)
            }
            _ if bare => x,
            _ => format!("{}({x})", range.unit.word),
        };
        arguments.push(if index < 2 {
            value
        } else {
            format!("{}={value}", argument.name)
        });
    }
    words.sort_unstable();
    let mut text = format!(">>> from sugaring import {}\n", row.module);
    if station {
        text += ">>> from sugaring.air import StationPressure\n";
    }
    if !words.is_empty() {
        text += &format!(">>> from sugaring.units import {}\n", words.join(", "));
    }
    text += &format!(">>> {}.{}({})\n", row.module, row.name, arguments.join(", "));
    let unit = row.relation.output;
    text += &if row.result.is_plain() {
        format!("{}\n", number(result))
    } else {
        format!("{}({})\n", unit.word, number(in_unit(result, unit)))
    };
    Some(text)
}

/// As the binding reads it out: what is held in SI stays as it is.
fn in_unit(si: f64, unit: &'static Unit) -> f64 {
    if *unit == *Unit::base(unit.dimension) {
        si
    } else {
        unit.from_si(si)
    }
}

/// Two digits are enough for an example.
fn rounded(value: f64) -> f64 {
    let step = if value.abs() >= 100.0 {
        10.0
    } else if value.abs() >= 10.0 {
        1.0
    } else if value.abs() >= 1.0 {
        0.1
    } else {
        0.001
    };
    let text = format!("{:.0}", value / step);
    let steps: f64 = text.parse().unwrap_or_default();
    if step < 1.0 { steps / (1.0 / step) } else { steps * step }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_function_has_an_example() {
        for row in catalogue::functions() {
            assert!(example(row).is_some(), "{}.{}", row.module, row.name);
        }
    }
}
