//! JSON Schemas of the day, written from the types.

use alloc::{borrow::Cow, string::String, vec::Vec};
use core::marker::PhantomData;

use crate::day::{inputs::DayInputs, plan::DayPlan};
use schemars::{JsonSchema, Schema, SchemaGenerator, generate::SchemaSettings, json_schema};

/// The schemas by name, as texts: `day_inputs` and `day_plan`.
#[must_use]
pub fn schemas() -> Vec<(&'static str, String)> {
    let text = |schema: Schema| {
        let mut text = serde_json::to_string_pretty(&schema).unwrap_or_default();
        text.push('\n');
        text
    };
    let settings = SchemaSettings::draft2020_12;
    Vec::from([
        (
            "day_inputs",
            text(
                settings()
                    .for_deserialize()
                    .into_generator()
                    .into_root_schema_for::<DayInputs>(),
            ),
        ),
        (
            "day_plan",
            text(
                settings()
                    .for_serialize()
                    .into_generator()
                    .into_root_schema_for::<DayPlan>(),
            ),
        ),
    ])
}

/// A map from the user's own names.
pub(crate) struct ByName<T>(PhantomData<T>);

impl<T: JsonSchema> JsonSchema for ByName<T> {
    fn schema_name() -> Cow<'static, str> {
        alloc::format!("{}_by_name", T::schema_name()).into()
    }

    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        let value = generator.subschema_for::<T>();
        json_schema!({"type": "object", "additionalProperties": value})
    }
}
