//! Every function of numbers at and beyond its edges, an argument at a time: the points of `tests/conformance/edges.jsonl`,
//! judged here by what an error must say and in every language by whether it says the same.

use std::{fs, path::PathBuf};

use serde_json::Value;
use sugaring::{
    Error, ErrorKind, Range,
    air::StationPressure,
    catalogue::{self, Function, Kind},
    units::{Dimension, Unit, Value as _, kelvin, metre, pa},
};

/// A line of the file.
struct Edge {
    call: String,
    si: Vec<f64>,
    moved: Option<usize>,
    place: String,
    line: Value,
}

fn edges() -> Vec<Edge> {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("conformance/edges.jsonl");
    let text = fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    let edge = |line: &str| {
        let line: Value = serde_json::from_str(line).unwrap();
        let number = |given: &Value| {
            let number = bits(given.get("number").unwrap_or_else(|| &given["station"]));
            let unit = given["unit"].as_str().and_then(Unit::named);
            unit.map_or(number, |unit| unit.to_si(number))
        };
        Edge {
            call: line["call"].as_str().unwrap().to_owned(),
            si: line["args"].as_array().unwrap().iter().map(number).collect(),
            moved: line["moved"].as_u64().map(|index| usize::try_from(index).unwrap()),
            place: line["edge"].as_str().unwrap().to_owned(),
            line,
        }
    };
    text.lines().map(edge).collect()
}

fn bits(value: &Value) -> f64 {
    f64::from_bits(u64::from_str_radix(value.as_str().unwrap(), 16).unwrap())
}

fn same(one: f64, other: f64) -> bool {
    one.to_bits() == other.to_bits() || one.is_nan() && other.is_nan()
}

fn function(call: &str) -> Option<&'static Function> {
    let mut all = catalogue::functions().iter().copied();
    all.find(|function| format!("{}.{}", function.module, function.name) == call)
}

fn station(call: &str, si: &[f64]) -> Result<StationPressure, Error> {
    match *si {
        [p] if call == "StationPressure.measured" => StationPressure::measured(pa(p)),
        [q, z] => StationPressure::from_altimeter_setting(pa(q), metre(z)),
        [p, z, t] => StationPressure::from_sea_level(pa(p), metre(z), kelvin(t)),
        [z] if call == "StationPressure.from_altitude" => StationPressure::from_altitude(metre(z)),
        [t] => StationPressure::from_boiling_water(kelvin(t)),
        _ => panic!("{call}"),
    }
}

/// Arguments with a result, by function.
fn insides() -> impl Iterator<Item = (&'static Function, Vec<f64>)> {
    let inside = edges().into_iter().filter(|edge| edge.moved.is_none());
    inside.filter_map(|edge| Some((function(&edge.call)?, edge.si)))
}

fn with(si: &[f64], index: usize, x: f64) -> Vec<f64> {
    let mut moved = si.to_vec();
    moved[index] = x;
    moved
}

/// The limits in SI.
fn limits(range: &Range) -> [f64; 2] {
    [range.unit.to_si(range.low), range.unit.to_si(range.high)]
}

/// A refusal that the other arguments bring about, where the relation's own ranges are kept.
fn is_of_the_others(function: &Function, error: &Error) -> bool {
    let declared = |range: &Range| range.argument == error.argument() && error.range() == Some((range.low, range.high));
    matches!(error.kind(), ErrorKind::OutOfRange | ErrorKind::Inconsistent)
        && error.range().is_some()
        && !function.relation.inputs.iter().any(declared)
}

/// A result, or a refusal that lies with the other arguments.
fn is_admitted(function: &Function, si: &[f64]) -> bool {
    match function.value(si) {
        Ok(result) => result.is_finite(),
        Err(error) => is_of_the_others(function, &error),
    }
}

#[test]
fn this_build_answers_as_the_file_says() {
    for edge in edges() {
        let line = &edge.line;
        let refused = match function(&edge.call) {
            Some(function) => match function.value(&edge.si) {
                Ok(result) => {
                    assert!(same(result, bits(&line["result"])), "{line}");
                    continue;
                }
                Err(error) => error,
            },
            None => match station(&edge.call, &edge.si) {
                Ok(station) => {
                    assert!(same(station.pressure().si(), bits(&line["pressure"])), "{line}");
                    assert!(same(station.uncertainty().si(), bits(&line["uncertainty"])), "{line}");
                    assert_eq!(station.origin().name(), line["origin"], "{line}");
                    continue;
                }
                Err(error) => error,
            },
        };
        let wanted = &line["error"];
        assert_eq!(refused.to_string(), wanted["text"], "{line}");
        assert_eq!(refused.kind().name(), wanted["kind"], "{line}");
        assert_eq!(refused.argument(), wanted["argument"], "{line}");
        assert_eq!(refused.unit(), wanted["unit"], "{line}");
        assert_eq!(refused.hint(), wanted["hint"].as_str(), "{line}");
        assert!(same(refused.value(), bits(&wanted["value"])), "{line}");
        let range = wanted["range"]
            .as_array()
            .map(|range| (bits(&range[0]), bits(&range[1])));
        assert_eq!(refused.range(), range, "{line}");
    }
}

#[test]
fn every_argument_is_moved_everywhere() {
    const EDGES: [&str; 17] = [
        "nan",
        "infinity",
        "-infinity",
        "subnormal",
        "-subnormal",
        "largest subnormal",
        "-zero",
        "wild",
        "-wild",
        "low",
        "low - 8 ulp",
        "low - 1e-9",
        "low + 1 ulp",
        "high",
        "high + 8 ulp",
        "high + 1e-9",
        "high - 1 ulp",
    ];
    let all = edges();
    for function in catalogue::functions() {
        let call = format!("{}.{}", function.module, function.name);
        for (index, argument) in function.arguments.iter().enumerate() {
            for edge in EDGES {
                let mut lines = all.iter().filter(|line| line.call == call);
                let found = lines.any(|line| line.moved == Some(index) && line.place == edge);
                // A station pressure is refused when it is made.
                let is_made = !matches!(argument.kind, Kind::Station)
                    || matches!(edge, "low" | "low + 1 ulp" | "high" | "high - 1 ulp");
                assert_eq!(found, is_made, "{call} {} {edge}", argument.name);
            }
        }
    }
    println!(
        "edges: {} points of {} functions",
        all.len(),
        catalogue::functions().len()
    );
}

/// Inside the declared range: a result, or a refusal that the other arguments bring about. Outside: the argument that
/// was moved, by its declared range in the unit people read, with the source of the limit. No number: not finite.
#[test]
fn errors_name_what_was_moved_and_its_range() {
    for edge in edges() {
        let (Some(function), Some(index)) = (function(&edge.call), edge.moved) else {
            continue;
        };
        let (x, range, line) = (edge.si[index], &function.relation.inputs[index], &edge.line);
        let [low, high] = limits(range);
        let answer = function.value(&edge.si);
        if x >= low && x <= high {
            assert!(is_admitted(function, &edge.si), "{line}");
            continue;
        }
        let is_dust = x.is_subnormal() && (low == 0.0 || high == 0.0);
        if is_dust && is_admitted(function, &edge.si) {
            continue;
        }
        let error = answer.expect_err(&line.to_string());
        assert_eq!(error.argument(), range.argument, "{line}");
        if !x.is_finite() {
            assert_eq!(error.kind(), ErrorKind::NotFinite, "{line}");
            assert!(same(error.value(), x), "{line}");
            continue;
        }
        assert_eq!(error.kind(), ErrorKind::OutOfRange, "{line}");
        assert_eq!(error.unit(), range.unit.symbol, "{line}");
        assert_eq!(error.range(), Some((range.low, range.high)), "{line}");
        // What is no normal number counts as 0 where the type itself begins at 0.
        let is_value = same(error.value(), range.unit.from_si(x)) || x.is_subnormal() && error.value() == 0.0;
        assert!(is_value, "{line}");
        assert_eq!(error.reference(), Some(function.relation.source), "{line}");
    }
}

/// The same for a station pressure, which other languages make first.
#[test]
fn a_station_that_is_none_is_named() {
    for (function, inside) in insides() {
        for (index, argument) in function.arguments.iter().enumerate() {
            if argument.kind != Kind::Station {
                continue;
            }
            for x in [
                f64::NAN,
                f64::INFINITY,
                f64::NEG_INFINITY,
                5e-324,
                -0.0,
                49_999.999_9,
                110_000.000_1,
                1e300,
            ] {
                let error = function.value(&with(&inside, index, x)).unwrap_err();
                assert_eq!(error.argument(), "station", "{function:?} {x}");
                let kind = if x.is_finite() {
                    ErrorKind::OutOfRange
                } else {
                    ErrorKind::NotFinite
                };
                assert_eq!(error.kind(), kind, "{function:?} {x}");
                assert_eq!(
                    error.range(),
                    x.is_finite().then_some((50.0, 110.0)),
                    "{function:?} {x}"
                );
            }
        }
    }
}

/// "0.35 is outside 0.05 to 0.35" helps nobody: the number that is shown lies outside the limits that are shown.
#[test]
fn texts_show_that_a_value_is_outside() {
    let mut judged = 0;
    for edge in edges() {
        let (Some(text), Some(symbol)) = (edge.line["error"]["text"].as_str(), edge.line["error"]["unit"].as_str())
        else {
            continue;
        };
        let Some((value, low, high)) = shown(text, symbol) else {
            continue;
        };
        assert!(value < low || value > high, "{text}");
        judged += 1;
    }
    assert!(judged > 500, "{judged}");
}

/// Value and limits of "… = VALUE is outside LOW to HIGH", as numbers.
fn shown(text: &str, symbol: &str) -> Option<(f64, f64, f64)> {
    let (_, finding) = text.split_once(" = ")?;
    let finding = finding.split(';').next()?;
    let (value, limits) = finding.split_once(" is outside ")?;
    let (low, high) = limits.split_once(" to ")?;
    let number = |text: &str| text.strip_suffix(symbol).unwrap_or(text).trim().parse().ok();
    Some((number(value)?, number(low)?, number(high)?))
}

/// The limits that an error prints are limits that can be typed.
#[test]
fn printed_limits_are_admitted() {
    let mut narrowed = 0;
    for edge in edges() {
        let (Some(function), Some(index)) = (function(&edge.call), edge.moved) else {
            continue;
        };
        let Some(error) = function.value(&edge.si).err() else {
            continue;
        };
        let Some((_, low, high)) = shown(&error.to_string(), error.unit()) else {
            continue;
        };
        let range = &function.relation.inputs[index];
        if error.argument() != range.argument {
            continue;
        }
        let is_narrowed = is_of_the_others(function, &error);
        for limit in [low, high] {
            let typed = with(&edge.si, index, range.unit.to_si(limit));
            if is_narrowed {
                let result = function.value(&typed);
                assert!(result.is_ok(), "{error}: {limit} gives {result:?}");
                narrowed += 1;
            } else {
                assert!(is_admitted(function, &typed), "{error}: {limit}");
            }
        }
    }
    assert!(narrowed > 10, "{narrowed}");
}

/// A limit is a limit in every unit of its kind, and a part in 1e9 further is none.
#[test]
fn limits_can_be_typed_in_every_unit() {
    let mut typed = 0;
    for (function, inside) in insides() {
        for (index, range) in function.relation.inputs.iter().enumerate() {
            let [low, high] = limits(range);
            let step = |limit: f64| 1e-9 * if limit == 0.0 { high - low } else { limit.abs() };
            for unit in catalogue::units()
                .iter()
                .filter(|unit| unit.dimension == range.unit.dimension)
            {
                for (limit, further) in [(low, low - step(low)), (high, high + step(high))] {
                    // As a person or a program writes it down: the shortest digits that mean this number.
                    let number: f64 = format!("{}", unit.from_si(limit)).parse().unwrap();
                    let at = with(&inside, index, unit.to_si(number));
                    assert!(
                        is_admitted(function, &at),
                        "{function:?}: {} = {number} {}",
                        range.argument,
                        unit.word
                    );
                    let beyond = with(&inside, index, unit.to_si(unit.from_si(further)));
                    let error = function.value(&beyond).unwrap_err();
                    assert_eq!(error.kind(), ErrorKind::OutOfRange, "{error}");
                    typed += 1;
                }
            }
        }
    }
    println!("edges: {typed} limits typed");
    assert!(typed > 300, "{typed}");
}

/// What a number would be in another unit: where the hint says what to write, that is admitted.
#[test]
fn hints_can_be_followed() {
    let (mut followed, mut unhelped) = (0, Vec::new());
    for (function, inside) in insides() {
        for (index, range) in function.relation.inputs.iter().enumerate() {
            let dimension = range.unit.dimension;
            let units = catalogue::units().iter().copied();
            for unit in units.filter(|unit| unit.dimension == dimension && *unit != range.unit) {
                let meant = unit.from_si(inside[index]);
                let taken = with(&inside, index, range.unit.to_si(meant));
                let Some(error) = function.value(&taken).err() else {
                    continue;
                };
                match error.hint() {
                    Some(hint) if hint.contains("write") || hint.contains("written") => {
                        let si = written(hint, dimension).unwrap_or_else(|| panic!("{hint}"));
                        let then = with(&inside, index, si);
                        assert!(is_admitted(function, &then), "{error}");
                        followed += 1;
                    }
                    Some(_) => {}
                    None => unhelped.push(format!("{error}")),
                }
            }
        }
    }
    println!(
        "edges: {followed} hints followed, {} wrong units without a hint",
        unhelped.len()
    );
    assert!(followed > 50, "{followed}");
}

/// The number in SI that a hint tells to write: `deg_f(212)`, or a bare number at its end.
fn written(hint: &str, dimension: Dimension) -> Option<f64> {
    let (_, advice) = hint.split_once("write ").or_else(|| hint.split_once("written "))?;
    let Some((word, rest)) = advice.split_once('(') else {
        return advice.split(' ').next()?.parse().ok();
    };
    let unit = Unit::named(word).filter(|unit| unit.dimension == dimension)?;
    Some(unit.to_si(rest.split_once(')')?.0.parse().ok()?))
}

/// What a percentage that was meant is told to write, in each of its three spellings.
#[test]
fn percentages_are_recognised() {
    let mut recognised = 0;
    for (function, inside) in insides() {
        for (index, range) in function.relation.inputs.iter().enumerate() {
            if range.unit.dimension != Dimension::Ratio || range.high > 1.0 {
                continue;
            }
            let percent = 50.0_f64.clamp(100.0 * range.low, 100.0 * range.high);
            let error = function.value(&with(&inside, index, percent)).unwrap_err();
            let hint = error.hint().unwrap_or_default();
            assert_eq!(
                hint,
                format!(
                    "{percent} % is written percent({percent}), \"{percent} %\" or {}",
                    percent / 100.0
                )
            );
            recognised += 1;
        }
    }
    assert!(recognised > 1);
}

/// Numbers of a range, in it and out of it, odd ones among them.
fn odd_numbers(range: &Range) -> Vec<f64> {
    let [low, high] = limits(range);
    let step = |limit: f64| 1e-9 * if limit == 0.0 { high - low } else { limit.abs() };
    let inside = [low, low.next_up(), low + 0.37 * (high - low), high.next_down(), high];
    let outside = [low - step(low), high + step(high), -1e300, 1e300, f64::MAX];
    let none = [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, -0.0, f64::from_bits(1)];
    [inside, outside, none].concat()
}

/// Every combination of the odd numbers of each argument.
fn odd_points(function: &Function) -> Vec<Vec<f64>> {
    let start = vec![Vec::new()];
    function.relation.inputs.iter().fold(start, |points, range| {
        let longer = |point: &Vec<f64>| {
            odd_numbers(range)
                .into_iter()
                .map(|x| [point.as_slice(), &[x]].concat())
                .collect()
        };
        points
            .iter()
            .flat_map(|point| -> Vec<Vec<f64>> { longer(point) })
            .collect()
    })
}

/// Every argument odd at once: the error names one that is, and its declared range; and a column says the same.
#[test]
fn odd_numbers_together_are_refused_as_one_of_them() {
    let mut judged = 0;
    for function in catalogue::functions() {
        let points = odd_points(function);
        judged += points.len();
        let columns: Vec<Vec<f64>> = (0..function.arguments.len())
            .map(|index| points.iter().map(|point| point[index]).collect())
            .collect();
        let columns: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
        let mut lanes = vec![0.0; points.len()];
        let refused = function.block(&columns, &mut lanes);
        assert_eq!(
            refused,
            lanes.iter().filter(|lane| lane.is_nan()).count(),
            "{function:?}"
        );
        for (si, lane) in points.iter().zip(lanes) {
            let answer = function.value(si);
            assert!(
                same(answer.clone().unwrap_or(f64::NAN), lane),
                "{function:?} {si:?}: {lane} in a block"
            );
            if let Err(error) = answer {
                blames_an_odd_one(function, si, &error);
            }
        }
    }
    println!("edges: {judged} combinations of odd numbers");
    assert!(judged > 50_000, "{judged}");
}

fn blames_an_odd_one(function: &Function, si: &[f64], error: &Error) {
    if is_of_the_others(function, error) {
        return;
    }
    let at = function
        .relation
        .inputs
        .iter()
        .position(|range| range.argument == error.argument());
    let index = at.unwrap_or_else(|| panic!("{function:?} {si:?}: {error}"));
    let [low, high] = limits(&function.relation.inputs[index]);
    assert!(!(low..=high).contains(&si[index]), "{function:?} {si:?}: {error}");
    let kind = if si[index].is_finite() {
        ErrorKind::OutOfRange
    } else {
        ErrorKind::NotFinite
    };
    assert_eq!(error.kind(), kind, "{function:?} {si:?}: {error}");
}

/// Inside the declared ranges there is a finite result, or a refusal that the arguments bring about together.
#[test]
fn every_point_inside_is_answered() {
    // Steps that share no divisor, so that the arguments meet everywhere.
    const SHARES: [f64; 4] = [
        0.618_033_988_749_895,
        0.754_877_666_246_693,
        0.819_172_513_396_164,
        0.856_674_883_854_503,
    ];
    for function in catalogue::functions() {
        for n in 0..2000 {
            let inputs = function.relation.inputs.iter().zip(SHARES);
            let si: Vec<f64> = inputs
                .map(|(range, step)| {
                    let [low, high] = limits(range);
                    low + (f64::from(n) * step).fract() * (high - low)
                })
                .collect();
            assert!(
                is_admitted(function, &si),
                "{function:?} {si:?}: {:?}",
                function.value(&si)
            );
        }
    }
}
