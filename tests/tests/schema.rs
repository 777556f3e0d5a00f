//! The published JSON Schemas are those of the types.

use std::fs;

use sugaring_tests::schema::{folder, schemas};

#[test]
fn published_schemas_have_not_drifted() {
    let made = schemas();
    for (name, text) in &made {
        let stored = fs::read_to_string(folder().join(format!("{name}.json"))).unwrap_or_default();
        assert!(
            stored == *text,
            "{name}.json differs from the types: run `cargo xtask schema`, and say so in the change log"
        );
    }
    let stored = fs::read_dir(folder()).into_iter().flatten().flatten();
    for file in stored.map(|entry| entry.file_name().into_string().unwrap()) {
        let known = made.iter().any(|(name, _)| file == format!("{name}.json"));
        assert!(known, "{file} belongs to no type");
    }
}

const FAR_ORCHARD: &str = include_str!("../../examples/far_orchard.json");

/// Everything in `text` that the stored schema `name` objects to, by an independent validator.
fn objections(name: &str, text: &str) -> Vec<String> {
    let schema = fs::read_to_string(folder().join(format!("{name}.json"))).unwrap();
    let validator = jsonschema::validator_for(&serde_json::from_str(&schema).unwrap()).unwrap();
    let document: serde_json::Value = serde_json::from_str(text).unwrap();
    validator
        .iter_errors(&document)
        .map(|e| format!("{}: {e}", e.instance_path()))
        .collect()
}

#[test]
fn the_demo_day_and_its_plan_fit_their_schemas() {
    assert_eq!(objections("day_inputs", FAR_ORCHARD), Vec::<String>::new());
    let inputs = sugaring::day::DayInputs::from_json(FAR_ORCHARD)
        .unwrap()
        .with_samples(50);
    assert_eq!(
        objections("day_inputs", &inputs.to_json().unwrap()),
        Vec::<String>::new()
    );
    let plan = sugaring::day::plan(&inputs).unwrap();
    assert_eq!(objections("day_plan", &plan.to_json().unwrap()), Vec::<String>::new());
}

#[test]
fn the_schema_refuses_what_the_builder_refuses() {
    for (good, bad) in [
        (r#""pressure": "7.6 bar gauge""#, r#""presure": "7.6 bar gauge""#),
        (r#""brix": 1.8"#, r#""brix": null"#),
        (r#""volume": "170 L""#, r#""volume": 170"#),
        (r#"{"brix": 4}"#, r#"{"brix": 4, "volume": "100 L"}"#),
        (r#""scale": "brix""#, r#""scale": "baume""#),
    ] {
        let changed = FAR_ORCHARD.replace(good, bad);
        assert_ne!(changed, FAR_ORCHARD, "{good} is not in the demo day");
        assert!(sugaring::day::DayInputs::from_json(&changed).is_err(), "{bad}");
        assert!(!objections("day_inputs", &changed).is_empty(), "{bad}");
    }
}
