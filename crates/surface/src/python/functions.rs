//! Stubs of the modules of functions: three overloads a function, for numbers, for columns that stay what they are, and
//! for lists, which come back as arrays.

use std::collections::BTreeMap;

use sugaring::catalogue::{self, Argument, Function, Kind};

use super::{
    PACKAGE, WRITTEN, docs,
    words::{dimension, docstring},
};
use crate::{File, SCALE, file::top};

/// Modules with a part written by hand: what it imports from `typing`, and its names.
const BESIDE: [(&str, &str, &[&str]); 4] = [
    (
        "air",
        "Any, Generic, TypeVar, final, ",
        &["StationPressure", "StationPressures"],
    ),
    (
        "finish",
        "Any, NamedTuple, final, ",
        &["FinishingPoint", "Legality", "finishing_point", "legal"],
    ),
    ("sucrose", "TypeVar, ", &["brix_from_scale", "on_scale"]),
    (
        "uncertainty",
        "Any, ClassVar, Generic, Self, TypeVar, final, ",
        &[
            "Combined",
            "Contribution",
            "Line",
            "Propagated",
            "Sampled",
            "Spread",
            "combine",
            "line_fit",
            "monte_carlo",
            "probability_at_least",
            "propagate",
        ],
    ),
];

pub(super) fn files() -> Vec<File> {
    let mut modules: BTreeMap<&str, Vec<&Function>> = BTreeMap::new();
    for row in catalogue::functions().iter().filter(|row| row.module != SCALE) {
        modules.entry(row.module).or_default().push(row);
    }
    modules
        .into_iter()
        .map(|(module, rows)| File::new(format!("{PACKAGE}/{module}.pyi"), stub(module, &rows)))
        .collect()
}

/// What the arguments may be, and what comes back.
#[derive(Clone, Copy)]
enum Carrier {
    Number,
    Column,
    List,
}

impl Carrier {
    const ALL: [Self; 3] = [Self::Number, Self::Column, Self::List];

    fn argument(self) -> &'static str {
        match self {
            Self::Number => "float",
            Self::Column => "float | Column",
            // A quantity of a list is one of an array.
            Self::List => "float | Sequence[float] | NDArray[np.float64]",
        }
    }

    fn result(self) -> &'static str {
        match self {
            Self::Number => "float",
            Self::Column => "Column",
            Self::List => "NDArray[np.float64]",
        }
    }
}

fn stub(module: &str, rows: &[&Function]) -> String {
    let hand = std::fs::read_to_string(top().join(format!("bindings/python/stubs/{module}.pyi"))).unwrap_or_default();
    let mut text = String::from(WRITTEN);
    text += &docstring(&docs::module(module), "");
    text += "# mypy: disable-error-code=\"overload-overlap\"\n";
    let beside = BESIDE.iter().find(|(known, ..)| *known == module);
    let (_, imported, written) = beside.copied().unwrap_or_default();
    let called = if hand.contains("Callable[") {
        "Callable, Iterable, Mapping, "
    } else {
        ""
    };
    text +=
        &format!("from collections.abc import {called}Sequence\nfrom typing import {imported}Literal, overload\n\n");
    text += "import numpy as np\nfrom numpy.typing import NDArray\n\n";
    let unit = if hand.contains("Unit[") { ", Unit" } else { "" };
    let measured = if hand.contains("Measured[") {
        "from ._amounts import Measured\n"
    } else {
        ""
    };
    text += &format!("from . import units as _u\n{measured}from ._sugaring import Column, Quantity{unit}\n");
    let station = rows
        .iter()
        .any(|row| row.arguments.iter().any(|a| a.kind == Kind::Station));
    if module != "air" && (station || hand.contains("StationPressure")) {
        let columns = if station { ", StationPressures" } else { "" };
        text += &format!("from .air import StationPressure{columns}\n");
    }
    let mut names: Vec<&str> = rows.iter().map(|row| row.name).collect();
    names.extend(written);
    names.sort_unstable();
    let names: Vec<String> = names.iter().map(|name| format!("\"{name}\"")).collect();
    text += &format!("\n__all__ = [{}]\n\n{hand}", names.join(", "));
    for row in rows {
        for (index, carrier) in Carrier::ALL.into_iter().enumerate() {
            text += &overload(row, carrier, index == 0);
        }
        text.push('\n');
    }
    text.trim_end().to_owned() + "\n"
}

fn overload(row: &Function, carrier: Carrier, documented: bool) -> String {
    let mut arguments: Vec<String> = row
        .arguments
        .iter()
        .map(|argument| format!("{}: {}", argument.name, kind(argument, carrier.argument())))
        .collect();
    let positional = arguments.len().min(2);
    arguments.insert(positional, String::from("/"));
    arguments.insert(positional + 1, String::from("*"));
    arguments.push(String::from("on_error: Literal[\"nan\"] | None = None"));
    let result = if row.result.is_plain() {
        carrier.result().to_owned()
    } else {
        match carrier {
            Carrier::Number => format!("Quantity[_u.{}]", dimension(row.result)),
            other => format!("Quantity[_u.{}, {}]", dimension(row.result), other.result()),
        }
    };
    let head = format!("@overload\ndef {}({}) -> {result}:", row.name, arguments.join(", "));
    if documented {
        let doc: String = docs::text(row)
            .lines()
            .map(|line| {
                if line.is_empty() {
                    String::from("\n")
                } else {
                    format!("    {line}\n")
                }
            })
            .collect();
        format!("{head}\n{}", docstring(&doc, "    "))
    } else {
        format!("{head} ...\n")
    }
}

fn kind(argument: &Argument, inner: &str) -> String {
    match argument.kind {
        Kind::Station if inner == "float" => String::from("StationPressure"),
        Kind::Station => {
            let columns = inner.trim_start_matches("float | ");
            format!("StationPressure | StationPressures[{columns}]")
        }
        Kind::Quantity(plain) if plain.is_plain() => format!("{inner} | Quantity[_u.{}, {inner}]", dimension(plain)),
        other if inner == "float" => format!("Quantity[_u.{}]", dimension(other.dimension())),
        other => format!("Quantity[_u.{}, {inner}]", dimension(other.dimension())),
    }
}
