//! The vectors that every language is judged by, held against this build: `tests/conformance/README.md`.
//!
//! They were written by the core too, so this is no judge of its numbers; it says that another set of features, another
//! way in (JSON against data, one call against a block) and a later commit have the same bits.

use std::{collections::BTreeMap, fs, path::PathBuf};

use serde_json::Value;
use sugaring::{
    Error, catalogue,
    day::{self, DayInputs, DayPlan, System},
    form::Tree,
    units::{Dimension, Quantity, Unit},
};
use sugaring_tests::vectors::{self, bits, same};

fn stored(path: &str) -> String {
    let top = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("..");
    fs::read_to_string(top.join(path)).unwrap_or_else(|error| panic!("{path}: {error}"))
}

fn number(value: &Value) -> f64 {
    bits(value.as_str().unwrap())
}

fn numbers(value: &Value) -> Vec<f64> {
    value.as_array().unwrap().iter().map(number).collect()
}

#[test]
fn functions_of_numbers() {
    let (vectors, misses) = vectors::functions_of_numbers();
    println!("conformance: {vectors} vectors of functions");
    let misses: Vec<_> = misses.into_iter().map(|miss| miss.text).collect();
    assert!(misses.is_empty(), "{} miss\n{}", misses.len(), misses.join("\n"));
}

/// Units, texts and days; calls with quantities are judged where quantities are handed over.
#[test]
fn everything_else() {
    let mut judged = BTreeMap::<String, usize>::new();
    for line in stored("tests/conformance/calls.jsonl").lines() {
        let line: Value = serde_json::from_str(line).unwrap();
        let call = line["call"].as_str().unwrap();
        match call {
            "unit" => unit(&line),
            "units.parse" => parsed(&line),
            "day.plan" => planned(&line),
            _ => continue,
        }
        *judged.entry(call.to_owned()).or_default() += 1;
    }
    println!("conformance: {judged:?}");
    assert_eq!(judged.len(), 3);
    assert!(judged["unit"] > 60 && judged["day.plan"] > 20);
}

/// Functions of more than numbers, asked of data; each has a line at least.
#[test]
fn functions_of_data() {
    let lines = stored("tests/conformance/asks.jsonl");
    let mut judged = BTreeMap::<String, usize>::new();
    for line in lines.lines() {
        let line: Value = serde_json::from_str(line).unwrap();
        let name = line["ask"].as_str().unwrap();
        match catalogue::ask(name, &tree(&line["given"])) {
            Ok(answer) => assert!(alike(&answer, &tree(&line["answer"])), "{line}: {answer:?}"),
            Err(error) => refused(&error, &line),
        }
        *judged.entry(name.to_owned()).or_default() += 1;
    }
    println!(
        "conformance: {} asks of {} functions",
        lines.lines().count(),
        judged.len()
    );
    // What is read back from data is judged by every line with an instrument.
    let unjudged: Vec<_> = catalogue::asks()
        .filter(|name| !name.ends_with(".of_data") && !judged.contains_key(*name))
        .collect();
    assert!(unjudged.is_empty(), "{unjudged:?}");
}

fn tree(value: &Value) -> Tree {
    match value {
        Value::Null => Tree::Null,
        Value::Bool(flag) => Tree::Bool(*flag),
        Value::Number(number) => Tree::Number(number.as_f64().unwrap()),
        Value::String(text) => Tree::from(text.as_str()),
        Value::Array(items) => items.iter().map(tree).collect(),
        Value::Object(map) => match (map.get("bits"), map.get("value"), map.get("unit")) {
            (Some(bits), None, None) => Tree::Number(number(bits)),
            (None, Some(value), Some(Value::String(word))) => {
                let Tree::Number(value) = tree(value) else {
                    panic!("{map:?}")
                };
                Tree::from(Quantity::new(value, Unit::named(word).unwrap()))
            }
            _ => Tree::map(map.iter().map(|(key, value)| (key.as_str(), tree(value)))),
        },
    }
}

/// Whether two trees have the same keys and the same bits.
fn alike(one: &Tree, other: &Tree) -> bool {
    match (one, other) {
        (Tree::Number(one), Tree::Number(other)) => same(*one, *other),
        (Tree::Quantity(one), Tree::Quantity(other)) => one.unit() == other.unit() && same(one.value(), other.value()),
        (Tree::List(one), Tree::List(other)) => {
            one.len() == other.len() && one.iter().zip(other).all(|(one, other)| alike(one, other))
        }
        (Tree::Map(one), Tree::Map(other)) => {
            let find = |key: &str| other.iter().find(|(known, _)| known == key);
            one.len() == other.len()
                && one
                    .iter()
                    .all(|(key, one)| find(key).is_some_and(|(_, other)| alike(one, other)))
        }
        _ => one == other,
    }
}

/// Columns through an instrument have the bits of single values, and NaN where these are refused.
#[test]
fn functions_of_data_in_columns() {
    let lines = stored("tests/conformance/asks.jsonl");
    let mut lanes = 0;
    for line in lines.lines() {
        let line: Value = serde_json::from_str(line).unwrap();
        let name = line["ask"].as_str().unwrap();
        let Tree::Map(given) = tree(&line["given"]) else {
            panic!("{line}")
        };
        let Some((_, instrument)) = given.iter().find(|(key, _)| key == "instrument") else {
            continue;
        };
        // In the order of the arguments, whichever order the reader of JSON keeps.
        let named = ["reading", "brix", "temperature", "prism"].iter();
        let rest = named.filter_map(|name| given.iter().find(|(key, _)| key == name));
        let si: Option<Vec<f64>> = rest.map(|(_, value)| in_si(value)).collect();
        let Some(si) = si.filter(|si| si.len() + 1 == given.len()) else {
            continue;
        };
        let columns: Vec<Vec<f64>> = si.iter().map(|number| vec![*number; 3]).collect();
        let columns: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
        let Ok(answers) = catalogue::ask_lanes(name, instrument, &columns) else {
            continue;
        };
        lanes += 1;
        let wanted = match tree(&line["answer"]) {
            Tree::Map(found) => ["value", "uncertainty"]
                .iter()
                .filter_map(|name| found.iter().find(|(key, _)| key == name))
                .filter_map(|(_, value)| in_si(value))
                .collect(),
            other => vec![in_si(&other).unwrap_or(f64::NAN)],
        };
        for (answer, wanted) in answers.iter().zip(wanted) {
            // A quantity of the answer went through its unit.
            assert!(
                answer
                    .iter()
                    .all(|lane| same(*lane, wanted) || (lane - wanted).abs() < 1e-12),
                "{line}"
            );
        }
    }
    assert!(lanes > 40, "{lanes}");
}

fn in_si(tree: &Tree) -> Option<f64> {
    match tree {
        Tree::Number(number) => Some(*number),
        Tree::Quantity(quantity) if quantity.unit().word.starts_with("delta") => Some(quantity.si()),
        Tree::Quantity(quantity) if quantity.dimension() == Dimension::Temperature => Some(quantity.si()),
        _ => None,
    }
}

fn unit(line: &Value) {
    let [unit, base] = [0, 1].map(|index| Unit::named(line["args"][index].as_str().unwrap()).unwrap());
    assert_eq!(base, Unit::base(unit.dimension));
    let there = numbers(&line["given"]).into_iter().zip(numbers(&line["si"]));
    let back = numbers(&line["from"]).into_iter().zip(numbers(&line["read"]));
    for (given, si) in there {
        assert!(same(unit.to_si(given), si), "{line}");
        assert!(same(base.to_si(si), si), "{base:?} changes a number");
    }
    for (si, read) in back {
        assert!(same(unit.from_si(si), read), "{line}");
    }
}

fn parsed(line: &Value) {
    match Quantity::parse(line["args"][0].as_str().unwrap()) {
        Ok(quantity) => {
            assert_eq!(quantity.unit().word, line["unit"].as_str().unwrap());
            assert!(same(quantity.value(), number(&line["number"])), "{line}");
            assert_eq!(quantity.to_string(), line["text"], "{line}");
            let again = Quantity::parse(&quantity.to_string()).unwrap();
            assert_eq!(again.unit(), quantity.unit(), "{line}");
            assert!(same(again.value(), quantity.value()), "{line}");
        }
        Err(error) => refused(&error, line),
    }
}

fn planned(line: &Value) {
    let argument = &line["args"][0];
    let text = match argument["file"].as_str() {
        Some(path) => stored(path),
        None => argument.as_str().unwrap().to_owned(),
    };
    plan_of(DayInputs::from_json(&text), line);
    if line["json"] != false {
        plan_of(DayInputs::from_tree(&Tree::from_json(&text).unwrap()), line);
    }
}

fn plan_of(inputs: Result<DayInputs, Error>, line: &Value) {
    let plan: DayPlan = match inputs.and_then(|inputs| day::plan(&inputs)) {
        Ok(plan) => plan,
        Err(error) => return refused(&error, line),
    };
    let path = line["plan"].as_str().unwrap();
    assert_eq!(plan.to_json().unwrap(), stored(path).trim_end(), "{path}");
    for (key, system) in [
        ("as_given", System::AsGiven),
        ("us", System::Us),
        ("metric", System::Metric),
    ] {
        let path = line["pages"][key].as_str().unwrap();
        assert_eq!(plan.page(system), stored(path), "{path}");
    }
}

fn refused(error: &Error, line: &Value) {
    let wanted = &line["error"];
    assert!(wanted.is_object(), "{line}: {error}");
    assert_eq!(error.to_string(), wanted["text"].as_str().unwrap());
    assert_eq!(error.kind().name(), wanted["kind"].as_str().unwrap());
    assert_eq!(error.argument(), wanted["argument"].as_str().unwrap());
    assert_eq!(error.unit(), wanted["unit"].as_str().unwrap());
    assert_eq!(error.hint(), wanted["hint"].as_str());
    assert!(same(error.value(), number(&wanted["value"])), "{line}");
    let range = wanted["range"]
        .as_array()
        .map(|range| (number(&range[0]), number(&range[1])));
    assert_eq!(error.range(), range);
}
