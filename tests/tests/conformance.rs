//! The vectors that every language is judged by, held against this build: `tests/conformance/README.md`.
//!
//! They were written by the core too, so this is no judge of its numbers; it says that another set of features, another
//! way in (JSON against data, one call against a block) and a later commit have the same bits.

use std::{collections::BTreeMap, fs, path::PathBuf};

use serde_json::Value;
use sugaring::{
    Error,
    day::{self, DayInputs, DayPlan, System},
    form::Tree,
    units::{Quantity, Unit},
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
