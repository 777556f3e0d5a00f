//! Numbers as people read them: a few significant digits, no trailing zeros, no locale.

use alloc::{format, string::String};

/// `value` in at most `digits` significant digits, trailing zeros dropped.
pub(crate) fn significant(value: f64, digits: usize) -> String {
    shortest(rounded_to(value, digits))
}

/// The number of that text.
pub(crate) fn rounded_to(value: f64, digits: usize) -> f64 {
    rounded(value, digits, Toward::Nearest)
}

/// A computed lower limit: rounded up, so that typing it works.
pub(crate) fn lower_limit(value: f64, digits: usize) -> String {
    shortest(rounded(value, digits, Toward::Up))
}

/// A computed upper limit: rounded down, so that typing it works.
pub(crate) fn upper_limit(value: f64, digits: usize) -> String {
    shortest(rounded(value, digits, Toward::Down))
}

/// `value`, which lies outside `low` to `high`, in at least `digits` significant digits and in as many as show it there.
pub(crate) fn outside(value: f64, low: f64, high: f64, digits: usize) -> String {
    let seen = |shown: &f64| *shown < low || *shown > high;
    shortest(
        (digits..17)
            .map(|digits| rounded_to(value, digits))
            .find(seen)
            .unwrap_or(value),
    )
}

/// `value` with a fixed number of decimals, and no "-0".
pub(crate) fn fixed(value: f64, decimals: usize) -> String {
    let text = format!("{value:.decimals$}");
    let zero = text.trim_start_matches('-');
    if zero.bytes().all(|b| b == b'0' || b == b'.') {
        return String::from(zero);
    }
    text
}

/// `digits` significant digits with their zeros: 5.95, 18.6, 265, 0.20.
pub(crate) fn padded(value: f64, digits: usize) -> String {
    let mut size = rounded(value, digits, Toward::Nearest).abs();
    let mut decimals = digits.saturating_sub(1);
    while decimals > 0 && size >= 10.0 {
        decimals -= 1;
        size /= 10.0;
    }
    while decimals < 6 && size > 0.0 && size < 1.0 {
        decimals += 1;
        size *= 10.0;
    }
    fixed(value, decimals)
}

/// The shortest digits that read back to `value`.
pub(crate) fn shortest(value: f64) -> String {
    let size = value.abs();
    if value == 0.0 {
        String::from("0")
    } else if size.is_finite() && !(1e-6..1e15).contains(&size) {
        format!("{value:e}")
    } else {
        format!("{value}")
    }
}

#[derive(Clone, Copy, PartialEq)]
pub(crate) enum Toward {
    Nearest,
    Up,
    Down,
}

/// `value` rounded to significant digits, as a number.
pub(crate) fn rounded(value: f64, digits: usize, toward: Toward) -> f64 {
    if value == 0.0 || !value.is_finite() {
        return value;
    }
    let decimals = digits.saturating_sub(1);
    let nearest = read(&format!("{value:.decimals$e}"), value);
    let wrong_side = match toward {
        Toward::Nearest => false,
        Toward::Up => nearest < value,
        Toward::Down => nearest > value,
    };
    if !wrong_side {
        return nearest;
    }
    // One unit of the last kept digit further, read from text so that it is the decimal people type.
    let text = format!("{nearest:.decimals$e}");
    let (mantissa, exponent) = text.split_once('e').unwrap_or((&text, "0"));
    let plain: String = mantissa.chars().filter(|c| *c != '.').collect();
    let step = if toward == Toward::Up { 1 } else { -1 };
    let places = i64::try_from(decimals).unwrap_or(0);
    match (plain.parse::<i64>(), exponent.parse::<i64>()) {
        (Ok(mantissa), Ok(exponent)) => read(&format!("{}e{}", mantissa + step, exponent - places), value),
        _ => value,
    }
}

fn read(text: &str, otherwise: f64) -> f64 {
    text.parse().unwrap_or(otherwise)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn digits_are_those_people_write() {
        assert_eq!(significant(101.659_123, 6), "101.659");
        assert_eq!(significant(217.000_000_000_01, 6), "217");
        assert_eq!(significant(0.7921, 4), "0.7921");
        assert_eq!(significant(-2.0, 6), "-2");
        assert_eq!(lower_limit(-0.100_231, 4), "-0.1002");
        assert_eq!(lower_limit(17.843_1, 4), "17.85");
        assert_eq!(upper_limit(9.866_04, 4), "9.866");
        assert_eq!(fixed(-0.04, 1), "0.0");
        assert_eq!(
            [padded(4.698, 3), padded(264.96, 3), padded(0.1997, 2)],
            ["4.70", "265", "0.20"]
        );
        assert_eq!(outside(132.000_000_4, 60.0, 132.0, 6), "132.0000004");
        assert_eq!(
            [outside(217.0, 60.0, 132.0, 6), outside(60.0, 60.0, 132.0, 6)],
            ["217", "60"]
        );
        assert_eq!(shortest(f64::NAN), "NaN");
        assert_eq!(shortest(1e300), "1e300");
    }

    proptest! {
        #[test]
        fn a_limit_is_on_the_safe_side(value in any::<f64>(), digits in 1usize..8) {
            let up = rounded(value, digits, Toward::Up);
            let down = rounded(value, digits, Toward::Down);
            prop_assert!(value.is_nan() || (down <= value && value <= up));
            let _ = (significant(value, digits), fixed(value, digits));
        }
    }
}
