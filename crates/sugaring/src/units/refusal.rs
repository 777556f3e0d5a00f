//! What a text must not be, and what to write instead: each hint names one text that is read.

use alloc::{format, string::String, vec::Vec};

use super::{
    Dimension, Quantity, Unit,
    meant::{
        called, comma, feet_and_inches, fraction, fraction_of, second_number, signed_fraction, spaced_sign, unit_first,
        without_degrees, write_as,
    },
    spelling::{clipped, normal, quoted},
    table,
};
use crate::{
    error::{Error, ErrorKind},
    nearest::{closest, distance},
};

/// A text without a number at its start.
#[cold]
pub(super) fn no_number(text: &str, wanted: Option<Dimension>) -> Error {
    let error = Error::unreadable("", &quoted(text));
    if let Some(rest) = text.strip_prefix(',') {
        return error.with_hint(comma(text, "0", rest));
    }
    if let Some((part, rest)) = signed_fraction(text) {
        return error.with_hint(write_as(part, rest));
    }
    if let Some(hint) = called(text).or_else(|| spaced_sign(text)).or_else(|| unit_first(text)) {
        return error.with_hint(hint);
    }
    let example = match wanted.map(Dimension::common_units) {
        Some((Some(unit), _)) => Quantity::new(40.0, unit),
        Some((None, _)) => Quantity::new(0.25, &table::fraction),
        None => Quantity::new(40.0, &table::gal),
    };
    match Unit::named(text) {
        Some(unit) => error.with_hint(format!(
            "write a number before it, such as {}",
            Quantity::new(40.0, unit)
        )),
        None => error.with_hint(format!("write a number with its unit, such as {example}")),
    }
}

/// A number that is followed by something that is no unit.
#[cold]
pub(super) fn no_unit(text: &str, value: f64, rest: &str, wanted: Option<Dimension>) -> Error {
    let unreadable = || Error::unreadable("", &quoted(text));
    if let Some(tail) = rest.strip_prefix(',') {
        let head = text.split(',').next().unwrap_or_default();
        return unreadable().with_hint(comma(text, head.trim(), tail));
    }
    if let Some((share, unit)) = fraction_of(value, rest) {
        return unreadable().with_hint(write_as(share, unit));
    }
    if let Some((part, unit)) = fraction(rest) {
        let whole = if value.is_sign_negative() {
            value - part
        } else {
            value + part
        };
        return unreadable().with_hint(write_as(whole, unit));
    }
    if let Some(hint) = feet_and_inches(value, rest).or_else(|| second_number(text, value, rest)) {
        return unreadable().with_hint(hint);
    }
    unknown_unit(value, rest, wanted)
}

/// A unit nobody knows.
#[cold]
pub(super) fn unknown_unit(value: f64, given: &str, wanted: Option<Dimension>) -> Error {
    let finding = format!(" has the unknown unit {}", quoted(given));
    let error = Error::new(ErrorKind::UnknownUnit, "", finding).with_value(value, &table::fraction);
    let shown = table::fraction.show(value);
    let scale = match without_degrees(&normal(given)) {
        "C" | "c" | "Celsius" => Some("°C"),
        "F" | "f" | "Fahrenheit" => Some("°F"),
        _ => None,
    };
    match (scale, wanted) {
        (Some(scale), Some(Dimension::Temperature)) => error.with_hint(format!("write {shown} {scale}")),
        (Some(scale), Some(Dimension::TemperatureDifference)) => error.with_hint(format!("write {shown} Δ{scale}")),
        (Some(scale), None) => error.with_hint(format!(
            "write {shown} {scale} for a temperature, {shown} Δ{scale} for a difference"
        )),
        _ => error.with_hint(nearest_units(given, wanted)),
    }
}

/// A heading whose brackets hold no unit.
#[cold]
pub(super) fn no_unit_in_heading(heading: &str, name: &str, unit: &str) -> Error {
    let unit = unit.trim();
    if unit.is_empty() {
        let error = Error::unreadable("heading", &quoted(heading));
        return error.with_hint("write the unit in the brackets, or leave them out");
    }
    let argument = if name.is_empty() { "heading" } else { name };
    let finding = format!(" has the unknown unit {}", quoted(unit));
    let error = Error::new(ErrorKind::UnknownUnit, clipped(argument, 40), finding);
    match normal(unit).as_str() {
        scale @ ("C" | "F") => error.with_hint(format!("write °{scale} for a temperature, Δ°{scale} for a difference")),
        _ => error.with_hint(nearest_units(unit, None)),
    }
}

/// The units whose spellings are nearest; without one, those of the dimension.
fn nearest_units(given: &str, wanted: Option<Dimension>) -> String {
    let given = normal(given);
    let fit = |unit: &&&Unit| wanted.is_none_or(|dimension| dimension == unit.dimension) && !unit.symbol.is_empty();
    let near: Vec<(usize, &Unit)> = table::ALL
        .iter()
        .filter(fit)
        .filter_map(|unit| {
            let slips = unit.spellings().filter_map(|known| distance(&given, known)).min()?;
            Some((slips, *unit))
        })
        .collect();
    // Baumé and relative density want their temperatures.
    let begun: Vec<&Unit> = table::ALL
        .iter()
        .filter(fit)
        .filter(|unit| {
            unit.spellings()
                .any(|known| normal(known).split(' ').next() == Some(&given))
        })
        .copied()
        .collect();
    let near = if begun.is_empty() { closest(near) } else { begun };
    if !near.is_empty() {
        let names: Vec<&str> = near.into_iter().map(shown).collect();
        return format!("nearest: {}", names.join(", "));
    }
    if wanted.is_none() {
        return String::from("such as gal, L, lb, kg, °C, °F, kPa, ft, h");
    }
    let names: Vec<&str> = table::ALL.iter().filter(fit).map(|unit| shown(unit)).collect();
    format!("known: {}", names.join(", "))
}

/// A unit in a hint: its symbol, and which gallon it is.
fn shown(unit: &Unit) -> &'static str {
    if *unit == table::gal {
        "gal (US gallon)"
    } else {
        unit.symbol
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What is refused, where a dimension is wanted, with its text.
    const REFUSED: &[(&str, Option<Dimension>, &str)] = &[
        (
            "1/2 in",
            Some(Dimension::Length),
            "\"1/2 in\" cannot be read; write 0.5 in",
        ),
        (
            "1 1/2 in",
            Some(Dimension::Length),
            "\"1 1/2 in\" cannot be read; write 1.5 in",
        ),
        ("5½ in", None, "\"5½ in\" cannot be read; write 5.5 in"),
        ("½ in", None, "\"½ in\" cannot be read; write 0.5 in"),
        (
            "-1/3",
            Some(Dimension::Ratio),
            "\"-1/3\" cannot be read; write -0.333333",
        ),
        ("2,5 L", None, "\"2,5 L\" cannot be read; is it 2.5 L or 25 L?"),
        (
            "1,000 gal",
            None,
            "\"1,000 gal\" cannot be read; is it 1 gal or 1000 gal?",
        ),
        (",5 L", None, "\",5 L\" cannot be read; is it 0.5 L or 5 L?"),
        (
            "1,234.5 L",
            None,
            "\"1,234.5 L\" cannot be read; write the number with a decimal point and without commas",
        ),
        (
            "5 ft 3 in",
            Some(Dimension::Length),
            "\"5 ft 3 in\" cannot be read; write 5.25 ft",
        ),
        (
            "5 °C 3 °F",
            None,
            "\"5 °C 3 °F\" cannot be read; write one number with one unit",
        ),
        ("10 000 L", None, "\"10 000 L\" cannot be read; write 10000 L"),
        ("10'000.5 L", None, "\"10'000.5 L\" cannot be read; write 10000.5 L"),
        ("5ft3in", None, "\"5ft3in\" cannot be read; write 5.25 ft"),
        ("5 ft, 3 in", None, "\"5 ft, 3 in\" cannot be read; write 5.25 ft"),
        (
            "1 lb and 4 oz",
            Some(Dimension::Mass),
            "\"1 lb and 4 oz\" cannot be read; write 1.25 lb",
        ),
        ("5' 3\"", None, "\"5' 3\"\" cannot be read; write 5.25 ft"),
        ("5′", None, "\"5′\" cannot be read; write 5 ft"),
        ("3″", None, "\"3″\" cannot be read; write 3 in"),
        (
            "- 5 °C",
            Some(Dimension::Temperature),
            "\"- 5 °C\" cannot be read; write -5 °C",
        ),
        ("gal 40", None, "\"gal 40\" cannot be read; write 40 gal"),
        (
            "68 degrees F",
            Some(Dimension::Temperature),
            "has the unknown unit \"degrees F\"; write 68 °F",
        ),
        (
            "7-8 bar",
            None,
            "\"7-8 bar\" cannot be read; write one number with one unit",
        ),
        (
            "95 ± 2 L",
            None,
            "\"95 ± 2 L\" cannot be read; write {\"value\": 95, \"unit\": \"L\", \"uncertainty\": 2}",
        ),
        (
            "gal",
            Some(Dimension::Volume),
            "\"gal\" cannot be read; write a number before it, such as 40 gal",
        ),
        (
            "deg_c(20)",
            Some(Dimension::Temperature),
            "\"deg_c(20)\" cannot be read; write 20 °C",
        ),
        (
            "much",
            Some(Dimension::Mass),
            "\"much\" cannot be read; write a number with its unit, such as 40 kg",
        ),
        (
            "",
            None,
            "\"\" cannot be read; write a number with its unit, such as 40 gal",
        ),
        (
            "20 C",
            Some(Dimension::Temperature),
            "has the unknown unit \"C\"; write 20 °C",
        ),
        (
            "7.1F",
            Some(Dimension::TemperatureDifference),
            "has the unknown unit \"F\"; write 7.1 Δ°F",
        ),
        (
            "68 F",
            None,
            "has the unknown unit \"F\"; write 68 °F for a temperature, 68 Δ°F for a difference",
        ),
        (
            "40 gall",
            Some(Dimension::Volume),
            "has the unknown unit \"gall\"; nearest: gal (US gallon), imp gal",
        ),
        (
            "40 KG",
            Some(Dimension::Mass),
            "has the unknown unit \"KG\"; nearest: kg",
        ),
        (
            "3 pails",
            Some(Dimension::Volume),
            "has the unknown unit \"pails\"; known: gal (US gallon), imp gal, qt, fl oz, L, mL, m³, cord",
        ),
        (
            "20",
            Some(Dimension::Temperature),
            "20 needs a unit: write deg_c(20) or deg_f(20)",
        ),
        ("20", None, "20 needs a unit: write it behind, as in 20 gal"),
        ("170 L", Some(Dimension::Mass), "170 L is a volume; a mass is needed"),
        (
            "0.97 bar gauge",
            Some(Dimension::Pressure),
            "0.97 bar gauge is a gauge pressure; an absolute one is needed: a barometer's 970 hPa is hpa(970)",
        ),
        (
            "1.8 %",
            Some(Dimension::Brix),
            "1.8 % is a ratio; a °Brix is needed: 1.8 % is written 1.8",
        ),
        ("1e999 L", None, "infinity is not a finite number"),
    ];

    #[test]
    fn refusals_say_what_to_write() {
        for (text, wanted, says) in REFUSED {
            let error = Quantity::read(text, *wanted).unwrap_err();
            assert_eq!(error.to_string(), *says, "{text}");
        }
    }

    #[test]
    fn what_a_hint_writes_is_read() {
        for (text, wanted, _) in REFUSED {
            let error = Quantity::read(text, *wanted).unwrap_err();
            let hint = error.hint().unwrap_or_default();
            let Some(written) = hint.strip_prefix("write ") else {
                continue;
            };
            if written.starts_with(|c: char| c.is_ascii_digit() || c == '-') {
                let written = written.split(" for a temperature").next().unwrap();
                assert!(Quantity::read(written, *wanted).is_ok(), "{hint}");
            }
        }
    }

    #[test]
    fn a_path_goes_before() {
        let error = Quantity::read("40 gall", Some(Dimension::Volume)).unwrap_err();
        assert_eq!(
            error.within("sap[0].volume").to_string(),
            "sap[0].volume has the unknown unit \"gall\"; nearest: gal (US gallon), imp gal"
        );
        let error = Quantity::read("20", Some(Dimension::Temperature)).unwrap_err();
        assert_eq!(
            error.named("temperature").to_string(),
            "temperature = 20 needs a unit: write deg_c(20) or deg_f(20)"
        );
    }

    #[test]
    fn long_texts_are_cut_and_cost_little() {
        for text in [
            "5 ft ".repeat(50_000),
            "1 ".repeat(50_000),
            "9".repeat(100_000),
            "5 ".to_owned() + &"x".repeat(500_000),
        ] {
            let error = Quantity::parse(&text).unwrap_err();
            assert!(error.to_string().chars().count() < 200, "{error}");
        }
    }
}
