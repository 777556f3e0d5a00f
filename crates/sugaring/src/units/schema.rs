//! JSON Schemas of the data forms of quantities.
#![cfg(feature = "schema")]

use alloc::{borrow::Cow, format, string::String, vec::Vec};

use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};

use super::{Dimension, Given, Price, Value, table};

impl<T: Value> JsonSchema for Given<T> {
    fn schema_name() -> Cow<'static, str> {
        T::DIMENSION.name().into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        let dimension = T::DIMENSION;
        let symbols = symbols(dimension);
        let named: Vec<String> = symbols
            .iter()
            .filter(|s| !s.is_empty())
            .map(|s| format!("\"1 {s}\""))
            .collect();
        let text = json_schema!({
            "type": "string",
            "description": format!("a number and its unit, such as {}", named.join(", ")),
        });
        let mut object = json_schema!({
            "type": "object",
            "properties": {
                "value": {"type": "number"},
                "unit": {"enum": spellings(dimension)},
                "uncertainty": {
                    "type": "number",
                    "minimum": 0,
                    "description": "one standard deviation, in the same unit",
                },
            },
            "required": ["value", "unit"],
            "additionalProperties": false,
        });
        if dimension.is_plain() {
            object.insert(String::from("required"), serde_json::json!(["value"]));
            json_schema!({"anyOf": [{"type": "number"}, text, object]})
        } else {
            json_schema!({"anyOf": [text, object]})
        }
    }
}

impl JsonSchema for Price {
    fn schema_name() -> Cow<'static, str> {
        "price".into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "type": "object",
            "description": "an amount of the user's own currency per a quantity",
            "properties": {
                "amount": {"type": "number", "minimum": 0},
                "per": {"type": "string", "description": "such as \"1 cord\", \"1 gal\", \"1 kWh\", \"1 each\""},
            },
            "required": ["amount", "per"],
            "additionalProperties": false,
        })
    }
}

fn symbols(dimension: Dimension) -> Vec<&'static str> {
    table::ALL
        .iter()
        .filter(|unit| unit.dimension == dimension)
        .map(|unit| unit.symbol)
        .collect()
}

/// Symbols, words and aliases.
fn spellings(dimension: Dimension) -> Vec<&'static str> {
    let mut spellings = Vec::new();
    for unit in table::ALL.iter().filter(|unit| unit.dimension == dimension) {
        for text in [unit.symbol, unit.word].into_iter().chain(unit.aliases.iter().copied()) {
            if !text.is_empty() && !spellings.contains(&text) {
                spellings.push(text);
            }
        }
    }
    spellings
}
