//! JSON Schemas of quantities.
#![cfg(feature = "schema")]

use alloc::borrow::Cow;

use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};

use crate::units::Quantity;

impl JsonSchema for Quantity {
    fn schema_name() -> Cow<'static, str> {
        Cow::Borrowed("Quantity")
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "description": "A number with its unit.",
            "anyOf": [
                {"type": "string", "examples": ["40 gal", "7.6 bar gauge"]},
                {
                    "type": "object",
                    "properties": {"value": {"type": "number"}, "unit": {"type": "string"}},
                    "required": ["value", "unit"],
                    "additionalProperties": false
                }
            ]
        })
    }
}
