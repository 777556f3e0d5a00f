//! Rows, unit numbers and types of the JavaScript package.

mod data;
mod functions;
mod types;
mod words;

use crate::File;

const HEAD: &str = "// Written by `cargo xtask surface`.\n";

pub(crate) fn files() -> Vec<File> {
    let mut files = vec![
        data::surface(),
        data::catalogue(),
        words::script(),
        words::types(),
        types::day(),
    ];
    files.extend(functions::modules());
    files
}

fn file(name: &str, text: &str) -> File {
    File::new(format!("bindings/wasm/js/{name}"), format!("{HEAD}{text}"))
}

/// A text as JavaScript and JSON write it.
fn quoted(text: &str) -> String {
    serde_json::Value::from(text).to_string()
}

/// `boiling_temperature` as `boilingTemperature`.
fn camel(name: &str) -> String {
    let whole = crate::shapes::camel(name);
    let mut letters = whole.chars();
    letters
        .next()
        .map_or(String::new(), |first| first.to_lowercase().chain(letters).collect())
}

/// A comment of one or more lines before a declaration, indented by `indent`.
fn comment(indent: &str, lines: &[String]) -> String {
    match lines {
        [] => String::new(),
        [one] => format!("{indent}/** {one} */\n"),
        lines => {
            let mut text = format!("{indent}/**\n");
            for line in lines {
                text += format!("{indent} * {line}").trim_end();
                text += "\n";
            }
            text + indent + " */\n"
        }
    }
}
