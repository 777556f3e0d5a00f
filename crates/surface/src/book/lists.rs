//! Units, kinds of error and schemas as tables.

use serde_json::Value;
use sugaring::{
    catalogue,
    units::{Dimension, Unit},
};

use super::functions::in_cell;

/// A table a dimension.
pub(super) fn units() -> String {
    let mut text = String::new();
    for dimension in Dimension::ALL {
        text += &format!(
            "\n**{}**{}\n\n| word | symbol | also read | in {} | defined by |\n| --- | --- | --- | --- | --- |\n",
            title(dimension),
            if dimension.is_plain() {
                ", a bare number will do"
            } else {
                ""
            },
            symbol(Unit::base(dimension)),
        );
        let of_it = catalogue::units().iter().filter(|unit| unit.dimension == dimension);
        of_it.for_each(|unit| text += &row(unit));
    }
    text + "\n"
}

fn row(unit: &Unit) -> String {
    let word = if catalogue_word(unit) {
        format!("`{}`", unit.word)
    } else {
        String::from("–")
    };
    let aliases: Vec<_> = unit.aliases.iter().map(|alias| format!("`{alias}`")).collect();
    let shown = if unit.symbol.is_empty() {
        String::from("none")
    } else {
        format!("`{}`", unit.symbol)
    };
    let cells = [
        word,
        shown,
        aliases.join(", "),
        size(unit),
        String::from(unit.definition),
    ];
    format!("| {} |\n", cells.map(|cell| in_cell(&cell)).join(" | "))
}

/// °Brix has no word: it is a function in Rust and a bare number elsewhere.
fn catalogue_word(unit: &Unit) -> bool {
    unit.dimension != Dimension::Brix
}

/// The exact size, as it is computed with.
fn size(unit: &Unit) -> String {
    let [zero, times, over, offset] = unit.numbers();
    let over = match number(over).as_str() {
        "1" => String::new(),
        over => format!("/{over}"),
    };
    if offset == 0.0 {
        return format!("{}{over}", number(times));
    }
    let from = if zero == 0.0 {
        String::from("x")
    } else {
        format!("(x − {})", number(zero))
    };
    format!("{from}{over} + {}", number(offset))
}

/// Digits in groups of three on both sides of the point, which is how long factors are compared.
fn number(x: f64) -> String {
    let text = if x != 0.0 && !(1e-6..1e9).contains(&x.abs()) {
        format!("{x:e}")
    } else {
        x.to_string()
    };
    let (digits, power) = text
        .split_once('e')
        .map_or((text.as_str(), ""), |(digits, power)| (digits, power));
    let (whole, fraction) = digits.split_once('.').unwrap_or((digits, ""));
    let mut shown = String::new();
    for (at, digit) in whole.chars().enumerate() {
        if at > 0 && whole.len() > 4 && (whole.len() - at) % 3 == 0 {
            shown.push('\u{202f}');
        }
        shown.push(digit);
    }
    for (at, digit) in fraction.chars().enumerate() {
        shown += match at {
            0 => ".",
            at if at % 3 == 0 && fraction.len() > 4 => "\u{202f}",
            _ => "",
        };
        shown.push(digit);
    }
    if power.is_empty() {
        shown
    } else {
        format!("{shown} · 10<sup>{}</sup>", power.replace('-', "−"))
    }
}

fn title(dimension: Dimension) -> String {
    let name = dimension.article_name();
    let bare = ["a ", "an "]
        .iter()
        .find_map(|article| name.strip_prefix(article))
        .unwrap_or(name);
    let mut letters = bare.chars();
    letters
        .next()
        .map(|first| first.to_uppercase().chain(letters).collect())
        .unwrap_or_default()
}

fn symbol(unit: &Unit) -> String {
    match unit.dimension {
        Dimension::TemperatureDifference => String::from("K"),
        Dimension::Concentration => String::from("kg/m³"),
        _ if unit.symbol.is_empty() => String::from("plain numbers"),
        _ => String::from(unit.symbol),
    }
}

/// What each kind means, its class in Python, how its text begins.
pub(super) fn errors() -> String {
    let mut text =
        String::from("\n| kind | Python | what it means | how its text begins |\n| --- | --- | --- | --- |\n");
    for kind in catalogue::error_kinds() {
        let class = class(kind.name());
        text += &format!(
            "| `{}` | `{class}` | {} | {} |\n",
            kind.name(),
            kind.meaning(),
            kind.begins()
        );
    }
    text + "\n"
}

/// `out_of_range` is the class `OutOfRange`.
fn class(kind: &str) -> String {
    let capital = |word: &str| {
        let mut letters = word.chars();
        letters
            .next()
            .map(|first| first.to_uppercase().chain(letters).collect::<String>())
            .unwrap_or_default()
    };
    kind.split('_').map(capital).collect()
}

/// Name, title and what each describes.
pub(super) fn schemas() -> String {
    let mut text = String::from("\n| name | title | describes | its keys |\n| --- | --- | --- | --- |\n");
    for name in catalogue::schemas() {
        let schema: Value = catalogue::schema(name)
            .ok()
            .and_then(|schema| serde_json::from_str(schema).ok())
            .unwrap_or_default();
        let said = |key: &str| schema.get(key).and_then(Value::as_str).unwrap_or_default();
        let keys = schema.get("properties").and_then(Value::as_object);
        let keys: Vec<_> = keys
            .into_iter()
            .flat_map(|keys| keys.keys())
            .map(|key| format!("`{key}`"))
            .collect();
        let cells = [
            format!("`{name}`"),
            format!("`{}`", said("title")),
            in_cell(said("description")),
            keys.join(", "),
        ];
        text += &format!("| {} |\n", cells.join(" | "));
    }
    text + "\n"
}
