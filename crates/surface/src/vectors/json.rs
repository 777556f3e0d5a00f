//! Lines of JSON, written by hand: keys stay in the order in which they are read best.

use sugaring::Error;

/// A number as its bits.
pub(super) fn bits(number: f64) -> String {
    // Which NaN it is differs between machines and means nothing.
    let number = if number.is_nan() { f64::NAN } else { number };
    format!("{:016x}", number.to_bits())
}

pub(super) fn number(number: f64) -> String {
    text(&bits(number))
}

pub(super) fn text(text: &str) -> String {
    serde_json::Value::from(text).to_string()
}

pub(super) fn list(items: impl IntoIterator<Item = String>) -> String {
    format!("[{}]", items.into_iter().collect::<Vec<_>>().join(","))
}

pub(super) fn numbers(items: &[f64]) -> String {
    list(items.iter().copied().map(number))
}

pub(super) fn object<'a>(fields: impl IntoIterator<Item = (&'a str, String)>) -> String {
    let fields = fields.into_iter().map(|(key, value)| format!("\"{key}\":{value}"));
    format!("{{{}}}", fields.collect::<Vec<_>>().join(","))
}

/// A line: the call, its arguments, and what comes of it.
pub(super) fn line<'a>(
    call: &str,
    arguments: impl IntoIterator<Item = String>,
    outcome: impl IntoIterator<Item = (&'a str, String)>,
) -> String {
    let head = [("call", text(call)), ("args", list(arguments))];
    object(head.into_iter().chain(outcome))
}

/// All that an error says.
pub(super) fn error(error: &Error) -> String {
    object(fields(error, &error.to_string()))
}

/// All that the error of a column says, at lane `index` and in `count` lanes of `lanes`.
pub(super) fn error_of_column(error: &Error, index: usize, count: usize, lanes: usize) -> String {
    let words = format!("{error} (index {index}; {count} of {lanes})");
    let place = [("index", index.to_string()), ("count", count.to_string())];
    object(fields(error, &words).into_iter().chain(place))
}

fn fields(error: &Error, words: &str) -> [(&'static str, String); 7] {
    let null = || String::from("null");
    [
        ("kind", text(error.kind().name())),
        ("argument", text(error.argument())),
        ("text", text(words)),
        ("value", number(error.value())),
        ("unit", text(error.unit())),
        (
            "range",
            error.range().map_or_else(null, |(low, high)| numbers(&[low, high])),
        ),
        ("hint", error.hint().map_or_else(null, text)),
    ]
}
