//! The JSON Schemas: read for the types, copied into the package.

use serde_json::Value;
use sugaring::catalogue;

use super::PACKAGE;
use crate::File;

const NAMES: [&str; 2] = ["day_inputs", "day_plan"];

pub(super) fn copies() -> Vec<File> {
    NAMES
        .into_iter()
        .map(|name| File::new(format!("{PACKAGE}/schema/{name}.json"), text(name)))
        .collect()
}

pub(super) fn read(name: &str) -> Value {
    serde_json::from_str(text(name)).unwrap_or_default()
}

fn text(name: &str) -> &'static str {
    catalogue::schema(name).unwrap_or_default()
}

/// The name of the definition that `schema` points to.
pub(super) fn reference(schema: &Value) -> Option<&str> {
    schema.get("$ref")?.as_str()?.strip_prefix("#/$defs/")
}

/// Keys and schemas of an object.
pub(super) fn properties(schema: &Value) -> Vec<(&str, &Value)> {
    let properties = schema.get("properties").and_then(Value::as_object);
    properties
        .map(|all| all.iter().map(|(key, value)| (key.as_str(), value)).collect())
        .unwrap_or_default()
}

pub(super) fn is_required(schema: &Value, key: &str) -> bool {
    let required = schema.get("required").and_then(Value::as_array);
    required.is_some_and(|all| all.iter().any(|name| name == key))
}

pub(super) fn description(schema: &Value) -> &str {
    schema.get("description").and_then(Value::as_str).unwrap_or_default()
}

pub(super) fn choices(schema: &Value) -> &[Value] {
    let any = schema.get("oneOf").or_else(|| schema.get("anyOf"));
    any.and_then(Value::as_array).map(Vec::as_slice).unwrap_or_default()
}

pub(super) fn kind(schema: &Value) -> &str {
    schema.get("type").and_then(Value::as_str).unwrap_or_default()
}
