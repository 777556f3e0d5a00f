//! JSON Schemas of the day, written from the types.

use alloc::{borrow::Cow, string::String, vec::Vec};
use core::marker::PhantomData;

use crate::day::{inputs::DayInputs, plan::DayPlan};
use schemars::{JsonSchema, Schema, SchemaGenerator, generate::SchemaSettings, json_schema};
use serde_json::{Value, json};

/// The schemas by name, as texts: `day_inputs` and `day_plan`.
#[must_use]
pub fn schemas() -> Vec<(&'static str, String)> {
    let text = |schema: Schema| {
        let mut value = schema.to_value();
        tidy(&mut value);
        let mut text = serde_json::to_string_pretty(&value).unwrap_or_default();
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
                    .for_deserialize()
                    .into_generator()
                    .into_root_schema_for::<DayPlan>(),
            ),
        ),
    ])
}

/// What the derive cannot know: null is never an input, and examples in Rust are for the Rust documentation.
fn tidy(value: &mut Value) {
    match value {
        Value::Object(map) => {
            if let Some(Value::String(text)) = map.get_mut("description") {
                if let Some((words, _)) = text.split_once("\n\n```") {
                    *text = String::from(words);
                }
            }
            if let Some(Value::Array(types)) = map.get_mut("type") {
                types.retain(|name| name != "null");
                if let [one] = types.as_slice() {
                    let one = one.clone();
                    map.insert(String::from("type"), one);
                }
            }
            if let Some(Value::Array(either)) = map.get_mut("anyOf") {
                either.retain(|schema| *schema != json!({"type": "null"}));
                if let [Value::Object(one)] = either.as_slice() {
                    let one = one.clone();
                    map.remove("anyOf");
                    map.extend(one);
                }
            }
            map.values_mut().for_each(tidy);
        }
        Value::Array(list) => list.iter_mut().for_each(tidy),
        _ => {}
    }
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
