//! The catalogue as every language must show it.

use serde_json::{Value, json};
use sugaring::{
    catalogue::{self, Function},
    units::Unit,
};

use crate::File;

pub(super) fn file() -> File {
    let lists = [
        (
            "functions",
            catalogue::functions().iter().map(|row| function(row)).collect(),
        ),
        ("units", catalogue::units().iter().map(|row| unit(row)).collect()),
        (
            "error_kinds",
            catalogue::error_kinds()
                .iter()
                .map(|kind| json!({"name": kind.name(), "meaning": kind.meaning(), "begins": kind.begins()}))
                .collect(),
        ),
        ("schemas", catalogue::schemas().map(Value::from).collect::<Vec<_>>()),
    ];
    // One row a line, so that a change is seen where it is.
    let lists = lists.map(|(name, rows)| {
        let rows: Vec<_> = rows.iter().map(|row| format!("  {row}")).collect();
        format!("\"{name}\": [\n{}\n]", rows.join(",\n"))
    });
    let text = format!(
        "{{\n{},\n\"numbers\": {}\n}}\n",
        lists.join(",\n"),
        json!(catalogue::numbers())
    );
    File::new("tests/conformance/catalogue.json", text)
}

fn function(row: &Function) -> Value {
    let arguments = row.arguments.iter().zip(row.relation.inputs).map(|(argument, range)| {
        let (low_si, high_si) = range.limits_si();
        json!({
            "name": argument.name,
            "kind": argument.kind.name(),
            "unit": range.unit.symbol,
            "low": range.low,
            "high": range.high,
            "low_si": low_si,
            "high_si": high_si,
        })
    });
    json!({
        "module": row.module,
        "name": row.name,
        "summary": row.summary,
        "arguments": arguments.collect::<Vec<_>>(),
        "result": row.result.name(),
        "unit": row.relation.output.symbol,
        "source": row.relation.source.to_string(),
        "source_kind": row.relation.source.kind(),
        "accuracy": row.relation.accuracy,
    })
}

fn unit(row: &Unit) -> Value {
    json!({
        "word": row.word,
        "symbol": row.symbol,
        "dimension": row.dimension.name(),
        "aliases": row.aliases,
        "definition": row.definition,
        "numbers": row.numbers(),
    })
}
