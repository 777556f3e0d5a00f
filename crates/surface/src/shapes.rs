//! The shapes of inputs and plans, read from the JSON Schemas: what the types of other languages are made from.

use serde_json::{Map, Value};
use sugaring::{
    catalogue,
    units::{Dimension, Unit, table::ALL},
};

/// A named shape.
#[derive(Clone, Debug)]
pub(crate) struct Shape {
    pub(crate) name: String,
    pub(crate) doc: String,
    pub(crate) form: Form,
}

#[derive(Clone, Debug)]
pub(crate) enum Form {
    /// Keys and values.
    Record(Vec<Field>),
    /// One of several things.
    Either(Vec<Type>),
}

#[derive(Clone, Debug)]
pub(crate) struct Field {
    pub(crate) name: String,
    pub(crate) doc: String,
    pub(crate) required: bool,
    pub(crate) of: Type,
}

/// What a value may be.
#[derive(Clone, Debug)]
pub(crate) enum Type {
    Text,
    Number,
    Integer,
    /// This very text.
    Literal(String),
    /// An input: a quantity in any unit, a text, or data, with or without uncertainty.
    Given(Dimension),
    Price,
    /// A result in this unit, with its range.
    Figure(&'static Unit),
    /// A quantity in the unit it was given in.
    Quantity,
    Named(String),
    List(Box<Type>),
    ByName(Box<Type>),
}

/// The shapes of the schema `name`, its own last; what a shape names comes before it, unless it is of `known`.
pub(crate) fn shapes(name: &str, known: &[Shape]) -> Vec<Shape> {
    let text = catalogue::schema(name).unwrap_or_default();
    let schema: Value = serde_json::from_str(text).unwrap_or_default();
    let mut reader = Reader {
        definitions: schema
            .get("$defs")
            .and_then(Value::as_object)
            .cloned()
            .unwrap_or_default(),
        known: known.iter().map(|shape| shape.name.clone()).collect(),
        shapes: Vec::new(),
    };
    let title = schema.get("title").and_then(Value::as_str).unwrap_or(name).to_owned();
    reader.shape(&title, &schema);
    reader.shapes
}

struct Reader {
    definitions: Map<String, Value>,
    known: Vec<String>,
    shapes: Vec<Shape>,
}

impl Reader {
    fn shape(&mut self, name: &str, schema: &Value) {
        self.known.push(name.to_owned());
        let form = if let Some(cases) = schema.get("oneOf").or(schema.get("anyOf")).and_then(Value::as_array) {
            Form::Either(cases.iter().map(|case| self.case(name, case)).collect())
        } else {
            Form::Record(self.fields(name, schema))
        };
        self.shapes.push(Shape {
            name: name.to_owned(),
            doc: doc(schema),
            form,
        });
    }

    fn fields(&mut self, owner: &str, schema: &Value) -> Vec<Field> {
        let required: Vec<&str> = list(schema, "required").iter().filter_map(Value::as_str).collect();
        let properties = schema
            .get("properties")
            .and_then(Value::as_object)
            .into_iter()
            .flatten();
        properties
            .map(|(name, property)| Field {
                name: name.clone(),
                doc: doc(property),
                required: required.contains(&name.as_str()),
                of: self.of(&format!("{owner}{}", camel(name)), property),
            })
            .collect()
    }

    /// A choice: a text, or a record of one key that becomes a shape of its own.
    fn case(&mut self, owner: &str, schema: &Value) -> Type {
        match schema
            .get("properties")
            .and_then(Value::as_object)
            .and_then(|keys| keys.keys().next())
        {
            Some(key) => self.nested(&format!("{owner}{}", camel(key)), schema),
            None => self.of(owner, schema),
        }
    }

    fn nested(&mut self, name: &str, schema: &Value) -> Type {
        if !self.known.iter().any(|known| known == name) {
            self.shape(name, schema);
        }
        Type::Named(name.to_owned())
    }

    fn of(&mut self, place: &str, schema: &Value) -> Type {
        if let Some(path) = schema.get("$ref").and_then(Value::as_str) {
            return self.referred(path.rsplit('/').next().unwrap_or(path));
        }
        if let Some(text) = schema.get("const").and_then(Value::as_str) {
            return Type::Literal(text.to_owned());
        }
        match schema.get("type").and_then(Value::as_str) {
            Some("integer") => Type::Integer,
            Some("number") => Type::Number,
            Some("array") => {
                let item = schema.get("items").cloned().unwrap_or_default();
                Type::List(Box::new(self.of(place, &item)))
            }
            Some("object") if schema.get("properties").is_some() => self.nested(&format!("{place}Keys"), schema),
            _ => Type::Text,
        }
    }

    fn referred(&mut self, name: &str) -> Type {
        if let Some(unit) = figure(name) {
            return Type::Figure(unit);
        }
        if let Some(unit) = ALL.iter().find(|unit| unit.dimension.name() == name) {
            return Type::Given(unit.dimension);
        }
        match name {
            "price" => return Type::Price,
            "Quantity" => return Type::Quantity,
            _ => {}
        }
        let schema = self.definitions.get(name).cloned().unwrap_or_default();
        if let Some(of) = schema.get("additionalProperties").filter(|of| of.is_object()) {
            return Type::ByName(Box::new(self.of(name, of)));
        }
        self.nested(name, &schema)
    }
}

/// The unit of `figure_in_kg`.
fn figure(name: &str) -> Option<&'static Unit> {
    let word = name.strip_prefix("figure_in_")?;
    ALL.iter().find(|unit| unit.word == word).copied()
}

fn doc(schema: &Value) -> String {
    schema
        .get("description")
        .and_then(Value::as_str)
        .unwrap_or_default()
        .to_owned()
}

fn list<'a>(schema: &'a Value, key: &str) -> &'a [Value] {
    schema.get(key).and_then(Value::as_array).map_or(&[], Vec::as_slice)
}

/// `held_level` as `HeldLevel`.
pub(crate) fn camel(name: &str) -> String {
    let words = name.split('_').map(|word| {
        let mut letters = word.chars();
        letters
            .next()
            .map_or(String::new(), |first| first.to_uppercase().chain(letters).collect())
    });
    words.collect()
}
