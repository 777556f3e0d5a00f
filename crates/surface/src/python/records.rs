//! Types of a plan, from the schema: a class a record, with what makes each of its fields.

use std::collections::BTreeSet;

use serde_json::Value;
use sugaring::units::Unit;

use super::{
    PACKAGE, WRITTEN,
    schema::{choices, description, is_required, kind, properties, read, reference},
    words::{class, dimension, docstring},
};
use crate::File;

const TOP: &str = r#""""The records of a plan: made from its JSON Schema."""

from __future__ import annotations

from typing import Any, ClassVar, Literal

from . import units as _u
from ._record import Estimate, Record, Shape, copied, quantity
from ._sugaring import Quantity
"#;

pub(super) fn files() -> Vec<File> {
    let schema = read("day_plan");
    let mut writer = Writer {
        schema: &schema,
        done: BTreeSet::new(),
        text: String::new(),
    };
    writer.record("PlanRecord", &schema, "Record");
    let mut names: Vec<String> = writer.done.iter().map(|name| class(name)).collect();
    names.push(String::from("PlanRecord"));
    names.sort_unstable();
    let names: Vec<String> = names.iter().map(|name| format!("    \"{name}\",\n")).collect();
    let all = format!("\n__all__ = [\n{}]\n", names.concat());
    vec![File::new(
        format!("{PACKAGE}/_records.py"),
        format!("{WRITTEN}{TOP}{all}{}", writer.text),
    )]
}

struct Writer<'a> {
    schema: &'a Value,
    done: BTreeSet<String>,
    text: String,
}

/// A field's type, and the expression of what makes it; none where JSON's own value stands.
struct Field {
    kind: String,
    shape: Option<String>,
}

impl Field {
    fn plain(kind: &str) -> Self {
        Self {
            kind: kind.to_owned(),
            shape: None,
        }
    }

    fn made(kind: impl Into<String>, shape: &str) -> Self {
        Self {
            kind: kind.into(),
            shape: Some(shape.to_owned()),
        }
    }
}

impl<'a> Writer<'a> {
    fn record(&mut self, name: &str, schema: &'a Value, base: &str) {
        let mut fields = String::new();
        let mut shapes = String::new();
        let estimate = base != "Record";
        for (key, value) in properties(schema) {
            if estimate && ["value", "unit", "low", "high", "median"].contains(&key) {
                continue;
            }
            let field = self.field(value);
            let optional = !is_required(schema, key) && !field.kind.starts_with("tuple[");
            let kind = if optional {
                format!("{} | None", field.kind)
            } else {
                field.kind
            };
            fields += &format!("    {key}: {kind}\n");
            if !description(value).is_empty() {
                fields += &docstring(description(value), "    ");
            }
            shapes += &format!(
                "        \"{key}\": {},\n",
                field.shape.unwrap_or_else(|| String::from("None"))
            );
        }
        self.text += &format!("\n\nclass {name}({base}):\n");
        if !description(schema).is_empty() {
            self.text += &format!("{}\n", docstring(description(schema), "    "));
        }
        self.text += &format!("{fields}\n    _shapes: ClassVar[dict[str, Shape]] = {{\n{shapes}    }}\n");
    }

    fn field(&mut self, schema: &'a Value) -> Field {
        if let Some(target) = reference(schema) {
            return self.referred(target);
        }
        let constants: Vec<String> = choices(schema)
            .iter()
            .filter_map(|choice| choice.get("const").map(ToString::to_string))
            .collect();
        if !constants.is_empty() {
            return Field::plain(&format!("Literal[{}]", constants.join(", ")));
        }
        match kind(schema) {
            "array" => {
                let Some(items) = schema.get("items") else {
                    return Field::plain("tuple[Any, ...]");
                };
                let item = self.field(items);
                let shape = format!("[{}]", item.shape.unwrap_or_else(|| String::from("None")));
                Field::made(format!("tuple[{}, ...]", item.kind), &shape)
            }
            "number" => Field::plain("float"),
            "integer" => Field::plain("int"),
            "string" => Field::plain("str"),
            _ => Field::plain("Any"),
        }
    }

    fn referred(&mut self, target: &str) -> Field {
        if target == "DayInputs" {
            return Field::made("dict[str, Any]", "copied");
        }
        if target == "Quantity" {
            return Field::made("Quantity[Any]", "quantity");
        }
        let Some(schema) = self.schema.get("$defs").and_then(|all| all.get(target)) else {
            return Field::plain("Any");
        };
        if let Some(measured) = measured(schema) {
            if properties(schema).len() == 5 {
                return Field::made(format!("Estimate[_u.{measured}]"), "Estimate");
            }
            self.once(target, schema, &format!("Estimate[_u.{measured}]"));
            return Field::made(class(target), &class(target));
        }
        // A fuel's volume, in one unit or another.
        let figures = choices(schema).iter().filter_map(reference);
        let mut figures = figures.filter_map(|target| self.schema.get("$defs").and_then(|all| all.get(target)));
        if let Some(measured) = figures.next().and_then(measured) {
            return Field::made(format!("Estimate[_u.{measured}]"), "Estimate");
        }
        if properties(schema).is_empty() {
            return self.field(schema);
        }
        self.once(target, schema, "Record");
        Field::made(class(target), &class(target))
    }

    /// What a record is made of stands before it.
    fn once(&mut self, target: &str, schema: &'a Value, base: &str) {
        if self.done.insert(target.to_owned()) {
            self.record(&class(target), schema, base);
        }
    }
}

/// The class of what a figure measures, if it is one.
fn measured(schema: &Value) -> Option<String> {
    let symbol = schema.get("properties")?.get("unit")?.get("const")?.as_str()?;
    Unit::named(symbol).map(|unit| dimension(unit.dimension))
}
