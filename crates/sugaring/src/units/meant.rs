//! What people mean by texts that are not read: fractions, two numbers, commas, marks of feet; each as the text to write.

use alloc::{format, string::String};

use super::{Quantity, Unit, spelling::clipped, table, text::number};
use crate::digits;

/// "1/2 in": the value of the fraction and what stands behind it.
pub(super) fn fraction_of(numerator: f64, rest: &str) -> Option<(f64, &str)> {
    let (denominator, unit) = number(rest.strip_prefix(['/', '⁄'])?.trim_start())?;
    let share = numerator / denominator;
    share.is_finite().then_some((share, unit))
}

/// A fraction at the start of a text: "1/2 in", "½ in".
pub(super) fn fraction(text: &str) -> Option<(f64, &str)> {
    const SIGNS: [(char, f64); 9] = [
        ('½', 0.5),
        ('¼', 0.25),
        ('¾', 0.75),
        ('⅓', 1.0 / 3.0),
        ('⅔', 2.0 / 3.0),
        ('⅛', 0.125),
        ('⅜', 0.375),
        ('⅝', 0.625),
        ('⅞', 0.875),
    ];
    for (sign, value) in SIGNS {
        if let Some(unit) = text.strip_prefix(sign) {
            return Some((value, unit));
        }
    }
    let (numerator, rest) = number(text)?;
    fraction_of(numerator, rest.trim_start())
}

pub(super) fn signed_fraction(text: &str) -> Option<(f64, &str)> {
    match text.strip_prefix(['-', '−']) {
        Some(unsigned) => fraction(unsigned.trim_start()).map(|(value, rest)| (-value, rest)),
        None => fraction(text),
    }
}

/// `"deg_c(20)"`, as it is written in a program.
pub(super) fn called(text: &str) -> Option<String> {
    let (word, inner) = text.strip_suffix(')')?.split_once('(')?;
    let (value, rest) = number(inner.trim())?;
    let unit = Unit::named(word)?;
    rest.is_empty().then(|| format!("write {}", Quantity::new(value, unit)))
}

/// `"- 5 °C"`
pub(super) fn spaced_sign(text: &str) -> Option<String> {
    let rest = text.strip_prefix(['-', '−'])?.trim_start();
    let (value, unit) = number(rest)?;
    let unit = Unit::named(unit)?;
    // A second sign may mean anything.
    rest.starts_with(|c: char| c.is_ascii_digit() || c == '.')
        .then(|| format!("write {}", Quantity::new(-value, unit)))
}

/// `"gal 40"`
pub(super) fn unit_first(text: &str) -> Option<String> {
    let (unit, value) = text.rsplit_once(char::is_whitespace)?;
    let (value, rest) = number(value)?;
    let unit = Unit::named(unit)?;
    rest.is_empty().then(|| format!("write {}", Quantity::new(value, unit)))
}

/// `"degrees C"` is C.
pub(super) fn without_degrees(given: &str) -> &str {
    let words = ["degrees", "degree", "deg."];
    let rest = words.iter().find_map(|word| given.strip_prefix(word));
    rest.unwrap_or(given).trim_start()
}

/// Feet and inches by their marks: `5' 3"`, `5'`, `3"`.
pub(super) fn feet_and_inches(value: f64, rest: &str) -> Option<String> {
    const FEET: [char; 3] = ['\'', '′', '’'];
    const INCHES: [char; 3] = ['"', '″', '”'];
    let written = |value, unit: &Unit| format!("write {}", unit.with_symbol(&digits::significant(value, 6)));
    if rest.strip_prefix(INCHES) == Some("") {
        return Some(written(value, &table::inch));
    }
    let rest = rest.strip_prefix(FEET)?.trim_start();
    if rest.is_empty() {
        return Some(written(value, &table::foot));
    }
    let (inches, rest) = number(rest)?;
    let ends = rest.trim_start().strip_prefix(INCHES) == Some("");
    (ends && value >= 0.0 && inches >= 0.0).then(|| written(value + inches / 12.0, &table::foot))
}

/// A decimal comma, or a comma between thousands?
pub(super) fn comma(text: &str, head: &str, tail: &str) -> String {
    let digits = tail.bytes().take_while(u8::is_ascii_digit).count();
    let whole = |part: &str| {
        part.trim_start_matches(['-', '−', '+'])
            .bytes()
            .all(|b| b.is_ascii_digit())
    };
    let (decimals, rest) = tail.split_at_checked(digits).unwrap_or((tail, ""));
    let plain = !decimals.is_empty() && whole(head) && !rest.contains([',', '.']) && text.len() <= 60;
    let value = |digits: &str| number(digits).map(|(value, _)| value);
    match (
        value(&format!("{head}.{decimals}")),
        value(&format!("{head}{decimals}")),
    ) {
        (Some(decimal), Some(grouped)) if plain => {
            let (decimal, grouped) = (digits::shortest(decimal), digits::shortest(grouped));
            format!("is it {} or {}?", behind(&decimal, rest), behind(&grouped, rest))
        }
        _ => String::from("write the number with a decimal point and without commas"),
    }
}

/// "5 ft 3 in", "10 000 L", "7-8 bar", "95 ± 2 L".
pub(super) fn second_number(text: &str, value: f64, rest: &str) -> Option<String> {
    if let Some(tail) = rest.strip_prefix('±') {
        let (uncertainty, unit) = number(tail.trim_start())?;
        let unit = Unit::named(unit)?;
        return Some(format!(
            "write {{\"value\": {}, \"unit\": \"{}\", \"uncertainty\": {}}}",
            digits::shortest(value),
            unit.symbol,
            digits::shortest(uncertainty)
        ));
    }
    if let Some(hint) = grouped(text, rest) {
        return Some(hint);
    }
    let starts = |part: &str| number(part).is_some() || part.starts_with(',');
    let after_space = || {
        let mut spaces = rest.char_indices().filter(|(_, c)| c.is_whitespace());
        spaces.find_map(|(at, space)| {
            let next = at + space.len_utf8();
            rest.get(next..).is_some_and(starts).then_some(next)
        })
    };
    // "ft3in" has no space to tell it by: only what are two units is taken for two numbers.
    let at_digit = || {
        let start = rest.find(|c: char| c.is_ascii_digit())?;
        let (unit, second) = rest.split_at_checked(start)?;
        let (_, other) = number(second)?;
        (Unit::named(unit).is_some() && Unit::named(other).is_some()).then_some(start)
    };
    let start = if starts(rest) {
        0
    } else {
        after_space().or_else(at_digit)?
    };
    let (unit, second) = rest.split_at_checked(start)?;
    let sum = || {
        let unit = unit.trim_end();
        let unit = Unit::named(unit.strip_suffix(',').or(unit.strip_suffix(" and")).unwrap_or(unit))?;
        let (more, other) = number(second)?;
        let other = Unit::named(other)?;
        let adds = unit.dimension == other.dimension
            && !unit.dimension.is_point()
            && unit != other
            && more >= 0.0
            && value >= 0.0;
        let total = unit.from_si(unit.to_si(value) + other.to_si(more));
        (adds && total.is_finite()).then(|| format!("write {}", unit.with_symbol(&digits::significant(total, 6))))
    };
    Some(sum().unwrap_or_else(|| String::from("write one number with one unit")))
}

/// Digits in groups of three: `10 000 L`, `10'000.5 L`, `10_000 L`.
fn grouped(text: &str, rest: &str) -> Option<String> {
    let head = text.strip_suffix(rest)?.trim_end();
    let tail = rest.strip_prefix(['\'', '’', '_']).unwrap_or(rest);
    let digits = tail.bytes().take_while(u8::is_ascii_digit).count();
    let (_, unit) = number(tail)?;
    let group = tail.strip_suffix(unit)?;
    let fits = digits == 3 && (1..=3).contains(&head.len()) && head.bytes().all(|b| b.is_ascii_digit());
    (fits && !unit.contains(|c: char| c.is_ascii_digit()))
        .then(|| format!("write {}", behind(&format!("{head}{group}"), unit)))
}

pub(super) fn write_as(value: f64, unit: &str) -> String {
    format!("write {}", behind(&digits::significant(value, 6), unit))
}

/// A number before what was written as its unit.
fn behind(number: &str, unit: &str) -> String {
    let unit = clipped(unit.trim(), 24);
    if unit.is_empty() {
        String::from(number)
    } else {
        format!("{number} {unit}")
    }
}
