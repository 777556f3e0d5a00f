//! Names and numbers as Python writes them.

use sugaring::units::Dimension;

/// `gauge_pressure` as the class `GaugePressure`.
pub(super) fn class(name: &str) -> String {
    let mut up = true;
    let mut class = String::with_capacity(name.len());
    for letter in name.chars() {
        if letter == '_' {
            up = true;
        } else if up {
            class.extend(letter.to_uppercase());
            up = false;
        } else {
            class.push(letter);
        }
    }
    class
}

/// The class of a dimension.
pub(super) fn dimension(dimension: Dimension) -> String {
    class(dimension.name())
}

/// A number as Python's `repr` writes it.
pub(super) fn number(value: f64) -> String {
    let size = value.abs();
    if size != 0.0 && !(1e-4..1e16).contains(&size) {
        let text = format!("{value:e}");
        if let Some((digits, exponent)) = text.split_once('e') {
            let (sign, exponent) = match exponent.strip_prefix('-') {
                Some(exponent) => ('-', exponent),
                None => ('+', exponent),
            };
            return format!("{digits}e{sign}{exponent:0>2}");
        }
    }
    format!("{value:?}")
}

/// A whole number without its point, as people write arguments.
pub(super) fn typed(value: f64) -> String {
    let text = number(value);
    text.strip_suffix(".0").map_or(text.clone(), str::to_owned)
}

/// A text of several lines as a docstring, indented.
pub(super) fn docstring(text: &str, indent: &str) -> String {
    let text = text.replace('\\', "\\\\").replace("\"\"\"", "'''");
    let text = text.trim();
    let end = if text.contains('\n') {
        format!("\n{indent}")
    } else {
        String::new()
    };
    format!("{indent}\"\"\"{text}{end}\"\"\"\n")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_those_of_repr() {
        for (value, text) in [
            (1328.19, "1328.19"),
            (20.0, "20.0"),
            (1e-5, "1e-05"),
            (2.5e-7, "2.5e-07"),
            (1e16, "1e+16"),
            (0.0, "0.0"),
            (123_456_789.0, "123456789.0"),
        ] {
            assert_eq!(number(value), text);
        }
        assert_eq!(
            (typed(20.0), class("gauge_pressure")),
            ("20".to_owned(), "GaugePressure".to_owned())
        );
    }
}
