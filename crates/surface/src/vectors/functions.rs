//! `functions.txt`: every function of numbers over its range, at its limits, one step outside, and at what is no number.

use sugaring::{
    Range,
    air::StationPressure,
    catalogue::{self, Function, Kind},
    units::{Unit, pa},
};

use super::json::bits;
use crate::File;

/// Points spread over the ranges, a function; where the ranges depend on one another and many points are refused, as
/// many more as give this many results.
const SPREAD: u32 = 100;
/// The end of that search.
const MOST: u32 = 4000;
/// Station pressures of the spread points, as shares of the range: few, so that a judge can make a column of each.
const STATIONS: [f64; 5] = [0.0, 0.35, 0.775, 0.85, 1.0];
/// Steps around a limit, in units of its last place: within 4 counts as the limit, 8 does not.
const STEPS: [i64; 4] = [-8, -1, 1, 8];

pub(super) fn file() -> File {
    let mut text = String::from("# Written by `cargo xtask surface`; what it holds: README.md\n");
    for function in catalogue::functions() {
        for (point, result) in judged(function) {
            let arguments: Vec<_> = point.iter().copied().map(bits).collect();
            let name = format!("{}.{}", function.module, function.name);
            text += &format!("{name} {} {result}\n", arguments.join(","));
        }
    }
    File::new("tests/conformance/functions.txt", text)
}

/// The points of `function` with its result; the lanes of one block must have the bits of the single values.
fn judged(function: &Function) -> Vec<(Vec<f64>, String)> {
    let points = points(function);
    let columns: Vec<Vec<f64>> = (0..function.arguments.len())
        .map(|index| points.iter().filter_map(|point| point.get(index)).copied().collect())
        .collect();
    let columns: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
    let mut lanes = vec![0.0; points.len()];
    function.block(&columns, &mut lanes);
    let results = points.iter().zip(lanes).map(|(point, lane)| {
        let value = function.value(point);
        let (alone, in_block) = (bits(value.clone().unwrap_or(f64::NAN)), bits(lane));
        assert_eq!(alone, in_block, "{function:?} at {point:?}: alone, and in a block");
        value.map_or_else(|error| format!("!{}:{}", error.kind().name(), error.argument()), bits)
    });
    let results: Vec<_> = results.collect();
    points.into_iter().zip(results).collect()
}

/// Corners, limits, what is no number, and points spread over the ranges.
fn points(function: &Function) -> Vec<Vec<f64>> {
    let ranges = function.relation.inputs;
    let mut points = corners(ranges);
    for (index, range) in ranges.iter().enumerate() {
        points.extend(beside(range).into_iter().map(|x| with(ranges, index, x)));
    }
    points.extend(spread_points(function));
    // A quantity is made by its SI word, which gives a zero no sign.
    for (index, argument) in function.arguments.iter().enumerate() {
        let dimension = argument.kind.dimension();
        if !dimension.is_plain() {
            let column = points.iter_mut().filter_map(|point| point.get_mut(index));
            column.for_each(|x| *x = Unit::base(dimension).to_si(*x));
        }
    }
    let is_made = |point: &Vec<f64>| {
        let mut pairs = function.arguments.iter().zip(point);
        pairs.all(|(argument, &x)| argument.kind != Kind::Station || StationPressure::measured(pa(x)).is_ok())
    };
    points.retain(is_made);
    points
}

fn spread_points(function: &Function) -> Vec<Vec<f64>> {
    let mut good = 0;
    let mut points = Vec::new();
    for n in 0..MOST {
        let point = spread(function, n);
        let is_good = function.value(&point).is_ok();
        good += u32::from(is_good);
        if is_good || n < SPREAD {
            points.push(point);
        }
        if good == SPREAD {
            break;
        }
    }
    points
}

/// Every combination of the limits.
fn corners(ranges: &[Range]) -> Vec<Vec<f64>> {
    let mut corners = vec![Vec::new()];
    for range in ranges {
        let (low, high) = limits(range);
        let longer = |corner: &Vec<f64>, x| [corner.as_slice(), &[x]].concat();
        corners = corners.iter().flat_map(|c| [longer(c, low), longer(c, high)]).collect();
    }
    corners
}

/// What lies beside the limits of `range`, near and far, and what is no number.
fn beside(range: &Range) -> Vec<f64> {
    let (low, high) = limits(range);
    let outside = (high - low) / 64.0;
    let near = [low, high].into_iter().flat_map(|limit| STEPS.map(|n| steps(limit, n)));
    let far = [low - outside, high + outside, -1e300, 1e300, -0.0];
    let none = [f64::NAN, f64::INFINITY, f64::NEG_INFINITY];
    near.chain(far).chain(none).collect()
}

/// `x` as the argument `index`, the others inside their ranges.
fn with(ranges: &[Range], index: usize, x: f64) -> Vec<f64> {
    let inside = |(at, range): (usize, &Range)| {
        let (low, high) = limits(range);
        if at == index { x } else { low + 0.4 * (high - low) }
    };
    ranges.iter().enumerate().map(inside).collect()
}

/// Point `n` of the additive recurrence whose step is made of powers of the root of g^(k+1) = g + 1 for k arguments.
pub(super) fn spread(function: &Function, n: u32) -> Vec<f64> {
    let free = function
        .arguments
        .iter()
        .filter(|argument| argument.kind != Kind::Station)
        .count();
    let root = root(free);
    let mut step = 1.0;
    let pairs = function.arguments.iter().zip(function.relation.inputs);
    let point = pairs.map(|(argument, range)| {
        let (low, high) = limits(range);
        let share = if argument.kind == Kind::Station {
            let turn = usize::try_from(n).unwrap_or_default() % STATIONS.len();
            STATIONS.get(turn).copied().unwrap_or_default()
        } else {
            step /= root;
            (0.5 + f64::from(n) * step).fract()
        };
        low + share * (high - low)
    });
    point.collect()
}

/// The root of g^(k+1) = g + 1, by halving: nothing here may hang on a platform's mathematics.
fn root(arguments: usize) -> f64 {
    let (mut low, mut high) = (1.0, 2.0);
    for _ in 0..64 {
        let middle = 0.5 * (low + high);
        let power = (0..=arguments).fold(1.0, |power, _| power * middle);
        if power < middle + 1.0 {
            low = middle;
        } else {
            high = middle;
        }
    }
    low
}

/// The limits in SI.
pub(super) fn limits(range: &Range) -> (f64, f64) {
    (range.unit.to_si(range.low), range.unit.to_si(range.high))
}

/// The number `steps` units in the last place of `x` above it.
pub(super) fn steps(x: f64, steps: i64) -> f64 {
    let (up, times) = (steps > 0, steps.unsigned_abs());
    (0..times).fold(x, |x, _| if up { x.next_up() } else { x.next_down() })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_roots_are_the_golden_ratio_and_its_sisters() {
        assert!((root(1) - 1.618_033_988_749_895).abs() < 1e-15);
        assert!((root(2) - 1.324_717_957_244_746).abs() < 1e-15);
    }

    #[test]
    fn every_function_has_many_points_of_each_sort() {
        for function in catalogue::functions() {
            let judged = judged(function);
            let good = judged.iter().filter(|(_, result)| !result.starts_with('!')).count();
            assert!(
                judged.len() >= 100 && good >= 100,
                "{function:?}: {good} of {}",
                judged.len()
            );
        }
    }
}
