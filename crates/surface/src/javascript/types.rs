//! The types of a day's inputs and of its plan, from the JSON Schemas.

use super::{comment, file, quoted};
use crate::{
    File,
    shapes::{Field, Form, Shape, Type, shapes},
};

const IMPORTS: &str = "
import type { Figure, Given, PriceGiven, QuantityData } from \"../quantity.js\";
";

pub(super) fn day() -> File {
    let inputs = shapes("day_inputs", &[]);
    let plan = shapes("day_plan", &inputs);
    let mut text = String::from(IMPORTS);
    text.extend(inputs.iter().map(|shape| declared(shape, "")));
    text.extend(plan.iter().map(|shape| declared(shape, "readonly ")));
    file("types/day_data.d.ts", &text)
}

fn declared(shape: &Shape, access: &str) -> String {
    let doc = comment("", &told(&shape.doc));
    let name = &shape.name;
    match &shape.form {
        Form::Record(fields) => {
            let fields: String = fields.iter().map(|field| key(field, access)).collect();
            format!("\n{doc}export interface {name} {{\n{fields}}}\n")
        }
        Form::Either(cases) => {
            let cases: Vec<_> = cases.iter().map(written).collect();
            format!("\n{doc}export type {name} = {};\n", cases.join(" | "))
        }
    }
}

fn key(field: &Field, access: &str) -> String {
    let doc = comment("  ", &told(&field.doc));
    let optional = if field.required { "" } else { "?" };
    format!("{doc}  {access}{}{optional}: {};\n", field.name, written(&field.of))
}

fn told(doc: &str) -> Vec<String> {
    doc.lines()
        .filter(|line| !line.trim().is_empty())
        .map(str::to_owned)
        .collect()
}

fn written(of: &Type) -> String {
    match of {
        Type::Text => String::from("string"),
        Type::Number | Type::Integer => String::from("number"),
        Type::Literal(text) => quoted(text),
        Type::Given(dimension) => format!("Given<{}>", quoted(dimension.name())),
        Type::Price => String::from("PriceGiven"),
        Type::Figure(unit) => format!("Figure<{}, {}>", quoted(unit.dimension.name()), quoted(unit.symbol)),
        Type::Quantity => String::from("QuantityData"),
        Type::Named(name) => name.clone(),
        Type::List(item) => format!("readonly {}[]", written(item)),
        Type::ByName(item) => format!("{{ readonly [name: string]: {} }}", written(item)),
    }
}
