//! How people spell: look-alike signs and spaces; and how their texts are shown in errors.

use alloc::{format, string::String};

/// Longer texts are shown in part.
const SHOWN: usize = 40;

/// `text` with look-alike signs folded, runs of spaces made one, and none beside a sign: `º C` is `°C`, `L / h` is `L/h`.
pub(super) fn normal(text: &str) -> String {
    let mut folded = String::with_capacity(text.len());
    let mut space = false;
    for c in text.trim().chars() {
        if c.is_whitespace() {
            space = true;
            continue;
        }
        let beside_letters = c.is_alphanumeric() && folded.ends_with(char::is_alphanumeric);
        if space && beside_letters {
            folded.push(' ');
        }
        space = false;
        match c {
            'º' | '˚' => folded.push('°'),
            '℃' => folded.push_str("°C"),
            '℉' => folded.push_str("°F"),
            '∆' => folded.push('Δ'),
            '²' => folded.push('2'),
            '³' => folded.push('3'),
            '⋅' | '•' | '∙' => folded.push('·'),
            other => folded.push(other),
        }
    }
    folded
}

/// `text` in quotes for an error: one line, cut where it is long.
pub(crate) fn quoted(text: &str) -> String {
    format!("\"{}\"", clipped(text, SHOWN))
}

/// At most `most` characters of `text`, on one line.
pub(crate) fn clipped(text: &str, most: usize) -> String {
    let mut shown: String = text
        .chars()
        .take(most)
        .map(|c| if c.is_control() { ' ' } else { c })
        .collect();
    if text.chars().nth(most).is_some() {
        shown.push('…');
    }
    shown
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn signs_that_look_alike_are_one() {
        for spelling in ["°C", "ºC", "˚C", "℃", "° C", " °C "] {
            assert_eq!(normal(spelling), "°C", "{spelling}");
        }
        assert_eq!(normal("bar   gauge"), "bar gauge");
        assert_eq!(normal("L / h"), "L/h");
        assert_eq!(normal("∆ ℃"), "Δ°C");
        assert_eq!(normal("m³"), "m3");
    }
}
