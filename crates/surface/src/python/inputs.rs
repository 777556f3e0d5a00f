//! Types of a day's inputs, from the schema: a misspelt key, a mass for a volume and a bare number are refused.

use serde_json::Value;
use sugaring::units::Dimension;

use super::{
    PACKAGE, WRITTEN,
    schema::{choices, description, is_required, kind, properties, read, reference},
    words::{class, dimension, docstring},
};
use crate::File;

const TOP: &str = r#""""What a day is planned from, as types: made from the JSON Schema of the inputs.

Wherever a quantity stands, so may a measured value, a text such as ``"170 L"``, or what JSON holds.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Literal, NotRequired, TypeAlias, TypedDict, TypeVar, Union

from . import units as _u
from ._amounts import Measured, Price
from ._sugaring import Quantity

D = TypeVar("D")


class Written(TypedDict):
    """A quantity as JSON holds it."""

    value: float
    unit: NotRequired[str]
    uncertainty: NotRequired[float]


class WrittenPrice(TypedDict):
    """A price as JSON holds it."""

    amount: float
    per: Quantity[_u.Amount] | str


Given: TypeAlias = Union[Quantity[D], Measured[D], Written, str]
"#;

pub(super) fn files() -> Vec<File> {
    let schema = read("day_inputs");
    let mut writer = Writer::default();
    for (name, definition) in properties_of(&schema, "$defs") {
        if name.starts_with(char::is_uppercase) {
            writer.definition(name, definition);
        }
    }
    writer.object("DayInputs", &schema);
    let mut names = writer.names;
    names.extend(["Given", "Written", "WrittenPrice"].map(String::from));
    names.sort_unstable();
    let names: Vec<String> = names.iter().map(|name| format!("    \"{name}\",\n")).collect();
    let all = format!("__all__ = [\n{}]\n\nD = ", names.concat());
    let text = format!(
        "{WRITTEN}{}{}\n{}",
        TOP.replacen("D = ", &all, 1),
        writer.text,
        writer.aliases
    );
    vec![File::new(format!("{PACKAGE}/_inputs.py"), text)]
}

fn properties_of<'a>(schema: &'a Value, key: &str) -> Vec<(&'a str, &'a Value)> {
    let all = schema.get(key).and_then(Value::as_object);
    all.map(|all| all.iter().map(|(name, value)| (name.as_str(), value)).collect())
        .unwrap_or_default()
}

#[derive(Default)]
struct Writer {
    text: String,
    aliases: String,
    names: Vec<String>,
}

impl Writer {
    fn definition(&mut self, name: &str, schema: &Value) {
        let name = &class(name);
        if choices(schema).is_empty() && !properties(schema).is_empty() {
            return self.object(name, schema);
        }
        let what = self.kind(name, schema);
        self.names.push(name.clone());
        // Aliases are read as they stand, so that the classes come before them.
        self.aliases += &format!("\n{name}: TypeAlias = {what}\n");
        if !description(schema).is_empty() {
            self.aliases += &docstring(description(schema), "");
        }
    }

    fn object(&mut self, name: &str, schema: &Value) {
        let fields: Vec<String> = properties(schema)
            .into_iter()
            .map(|(key, value)| {
                let what = self.kind(&format!("{name}{}", class(key)), value);
                let what = if is_required(schema, key) {
                    what
                } else {
                    format!("NotRequired[{what}]")
                };
                let said = description(value);
                let said = if said.is_empty() {
                    String::new()
                } else {
                    docstring(said, "    ")
                };
                format!("    {key}: {what}\n{said}")
            })
            .collect();
        self.names.push(name.to_owned());
        self.text += &format!("\n\nclass {name}(TypedDict):\n");
        if !description(schema).is_empty() {
            self.text += &format!("{}\n", docstring(description(schema), "    "));
        }
        self.text += &fields.concat();
    }

    /// The type of a schema; `name` is that of a class where one has to be made.
    fn kind(&mut self, name: &str, schema: &Value) -> String {
        if let Some(target) = reference(schema) {
            return referred(target);
        }
        if let Some(constant) = schema.get("const") {
            return format!("Literal[{constant}]");
        }
        let choices = choices(schema);
        if !choices.is_empty() {
            let kinds: Vec<String> = choices
                .iter()
                .map(|choice| {
                    let key = properties(choice)
                        .first()
                        .map(|(key, _)| class(key))
                        .unwrap_or_default();
                    self.kind(&format!("{name}{key}"), choice)
                })
                .collect();
            return kinds.join(" | ");
        }
        match kind(schema) {
            "array" => {
                let items = schema
                    .get("items")
                    .map(|items| self.kind(name, items))
                    .unwrap_or_default();
                format!("Sequence[{items}]")
            }
            "number" => String::from("float"),
            "integer" => String::from("int"),
            "string" => String::from("str"),
            "boolean" => String::from("bool"),
            _ if !properties(schema).is_empty() => {
                self.object(name, schema);
                name.to_owned()
            }
            _ => {
                let values = schema.get("additionalProperties").map(|values| self.kind(name, values));
                format!("Mapping[str, {}]", values.unwrap_or_else(|| String::from("object")))
            }
        }
    }
}

fn referred(target: &str) -> String {
    if target == "price" {
        return String::from("Price | WrittenPrice");
    }
    match Dimension::ALL.into_iter().find(|known| known.name() == target) {
        Some(plain) if plain.is_plain() => format!("float | Given[_u.{}]", dimension(plain)),
        Some(known) => format!("Given[_u.{}]", dimension(known)),
        None => class(target),
    }
}
