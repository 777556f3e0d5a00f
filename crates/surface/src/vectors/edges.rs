//! `edges.jsonl`: every function of numbers and every kind of station pressure, an argument at a time: at its limits,
//! a little beside them, in the wrong unit, far away, and no number at all.

use std::collections::BTreeSet;

use sugaring::{
    Error, ErrorKind,
    air::StationPressure,
    catalogue::{self, Function, Kind},
    units::{Dimension, Unit, Value, kelvin, metre, pa},
};

use super::{
    functions::{limits, spread, steps},
    json::{error, line, number, object, text},
};

/// A step outside that no rounding explains.
const PART: f64 = 1e-9;
/// A step outside in units of the last place: within four counts as the limit.
const ULPS: f64 = 8.0;
/// Where limits depend on the other arguments: how many of these are tried.
const OTHERS: usize = 3;
const LARGEST_SUBNORMAL: f64 = f64::from_bits(f64::MIN_POSITIVE.to_bits() - 1);

pub(super) fn lines() -> Vec<String> {
    let functions = catalogue::functions().iter().copied().map(Subject::of_function);
    functions
        .chain(stations())
        .flat_map(|subject| subject.lines())
        .collect()
}

/// What is called.
struct Subject {
    call: String,
    arguments: Vec<Argument>,
    /// Arguments that have a result: the first for all that follows, the others where limits depend on them.
    inside: Vec<Vec<f64>>,
    answer: Answer,
}

/// The fields of a result, of arguments in SI.
type Answer = Box<dyn Fn(&[f64]) -> Result<Vec<(&'static str, String)>, Error>>;

/// An argument and what it may be, in SI.
struct Argument {
    kind: Kind,
    unit: &'static Unit,
    low: f64,
    high: f64,
}

impl Subject {
    fn of_function(function: &'static Function) -> Self {
        let pairs = function.arguments.iter().zip(function.relation.inputs);
        let arguments = pairs.map(|(argument, range)| {
            let (low, high) = limits(range);
            Argument {
                kind: argument.kind,
                unit: range.unit,
                low,
                high,
            }
        });
        // Point 0 is the middle, where two temperatures are one and nothing happens between them.
        let good = (1..)
            .map(|n| spread(function, n))
            .filter(|si| function.value(si).is_ok());
        Self {
            call: format!("{}.{}", function.module, function.name),
            arguments: arguments.collect(),
            inside: good.take(OTHERS).collect(),
            answer: Box::new(|si| Ok(vec![("result", number(function.value(si)?))])),
        }
    }

    /// A kind of station pressure; its limits are those it names when it refuses.
    fn of_station(
        name: &str,
        inside: &[f64],
        make: impl Fn(&[f64]) -> Result<StationPressure, Error> + 'static,
    ) -> Self {
        let arguments = (0..inside.len()).filter_map(|index| {
            let refusal = make(&with(inside, index, 1e300)).err()?;
            let unit = Unit::named(refusal.unit())?;
            let (low, high) = refusal.range()?;
            Some(Argument {
                kind: Kind::Quantity(unit.dimension),
                unit,
                low: unit.to_si(low),
                high: unit.to_si(high),
            })
        });
        Self {
            call: format!("StationPressure.{name}"),
            arguments: arguments.collect(),
            inside: vec![inside.to_vec()],
            answer: Box::new(move |si| {
                let station = make(si)?;
                Ok(vec![
                    ("pressure", number(station.pressure().si())),
                    ("uncertainty", number(station.uncertainty().si())),
                    ("origin", text(station.origin().name())),
                ])
            }),
        }
    }

    fn lines(&self) -> Vec<String> {
        let Some(inside) = self.inside.first() else {
            return Vec::new();
        };
        let mut lines = vec![self.line(inside, None, "inside")];
        for (index, argument) in self.arguments.iter().enumerate() {
            let mut add = |others: &[f64], edge: &str, x: f64| {
                // A station pressure is refused when it is made.
                if argument.kind != Kind::Station || StationPressure::measured(pa(x)).is_ok() {
                    lines.push(self.line(&with(others, index, x), Some(index), edge));
                }
            };
            for (edge, x) in argument.edges() {
                add(inside, edge, x);
            }
            for (edge, x) in argument.slips(inside.get(index).copied().unwrap_or_default()) {
                add(inside, edge, x);
            }
            for others in &self.inside {
                if let Some((low, high)) = self.dependent(others, index) {
                    for (edge, x) in beside(low, high, argument.scale()) {
                        add(others, edge, x);
                    }
                }
            }
        }
        let mut seen = BTreeSet::new();
        lines.retain(|line| seen.insert(line.clone()));
        lines
    }

    /// Limits that `others` narrow, as the refusal of the widest names them.
    fn dependent(&self, others: &[f64], index: usize) -> Option<(f64, f64)> {
        let argument = self.arguments.get(index)?;
        let declared = (
            argument.unit.from_si(argument.low),
            argument.unit.from_si(argument.high),
        );
        [argument.low, argument.high].into_iter().find_map(|x| {
            let refusal = (self.answer)(&with(others, index, x)).err()?;
            let (low, high) = refusal.range().filter(|range| *range != declared)?;
            let unit = Unit::named(refusal.unit()).unwrap_or(argument.unit);
            (refusal.kind() == ErrorKind::OutOfRange).then(|| (unit.to_si(low), unit.to_si(high)))
        })
    }

    fn line(&self, point: &[f64], moved: Option<usize>, edge: &str) -> String {
        let pairs = || self.arguments.iter().zip(point);
        let si: Vec<f64> = pairs().map(|(argument, &x)| argument.taken(x)).collect();
        let what = [
            (
                "moved",
                moved.map_or_else(|| String::from("null"), |index| index.to_string()),
            ),
            ("edge", text(edge)),
        ];
        let outcome = (self.answer)(&si).unwrap_or_else(|refusal| vec![("error", error(&refusal))]);
        let written = pairs().map(|(argument, &x)| argument.written(x));
        line(&self.call, written, what.into_iter().chain(outcome))
    }
}

impl Argument {
    fn base(&self) -> &'static Unit {
        Unit::base(self.unit.dimension)
    }

    fn written(&self, x: f64) -> String {
        match self.kind {
            Kind::Station => object([("station", number(x))]),
            _ if self.unit.dimension.is_plain() => object([("number", number(x))]),
            _ => object([("unit", text(self.base().word)), ("number", number(x))]),
        }
    }

    /// A quantity is made by its SI word, which gives a zero no sign; a bare number stays as it is.
    fn taken(&self, x: f64) -> f64 {
        if self.unit.dimension.is_plain() {
            x
        } else {
            self.base().to_si(x)
        }
    }

    /// The size of a limit that is zero.
    fn scale(&self) -> f64 {
        self.high - self.low
    }

    fn edges(&self) -> Vec<(&'static str, f64)> {
        let odd = [
            ("nan", f64::NAN),
            ("infinity", f64::INFINITY),
            ("-infinity", f64::NEG_INFINITY),
            ("subnormal", f64::from_bits(1)),
            ("-subnormal", -f64::from_bits(1)),
            ("largest subnormal", LARGEST_SUBNORMAL),
            ("-zero", -0.0),
            ("wild", 1e300),
            ("-wild", -1e300),
        ];
        let mut edges = odd.to_vec();
        edges.extend(beside(self.low, self.high, self.scale()));
        edges
    }

    /// The number of what lies `inside`, in other units than the one that it is taken for.
    fn slips(&self, inside: f64) -> Vec<(&'static str, f64)> {
        if self.unit.dimension == Dimension::Brix {
            return vec![("slip brix as fraction", inside / 100.0)];
        }
        let units = catalogue::units().iter().copied();
        let others = units.filter(|unit| unit.dimension == self.unit.dimension && *unit != self.unit);
        let slip = |unit: &'static Unit| {
            let taken = self.unit.to_si(unit.from_si(inside));
            (taken < self.low || taken > self.high).then_some((unit.word, taken))
        };
        // One a side says enough.
        let slips: Vec<_> = others.filter_map(slip).collect();
        let below = slips.iter().find(|(_, taken)| *taken < self.low);
        let above = slips.iter().find(|(_, taken)| *taken > self.high);
        below.into_iter().chain(above).copied().collect()
    }
}

/// The limits, and a step to either side of them; a limit that is zero takes its step from `scale`.
fn beside(low: f64, high: f64, scale: f64) -> Vec<(&'static str, f64)> {
    // Of the limit's own last place: just below a power of two the numbers lie closer.
    let ulps = |limit: f64| ULPS * (limit.abs().next_up() - limit.abs());
    let part = |limit: f64| PART * if limit == 0.0 { scale } else { limit.abs() };
    vec![
        ("low", low),
        ("low - 8 ulp", low - ulps(low)),
        ("low - 1e-9", low - part(low)),
        ("low + 1 ulp", steps(low, 1)),
        ("high", high),
        ("high + 8 ulp", high + ulps(high)),
        ("high + 1e-9", high + part(high)),
        ("high - 1 ulp", steps(high, -1)),
    ]
}

fn with(point: &[f64], index: usize, x: f64) -> Vec<f64> {
    let mut moved = point.to_vec();
    if let Some(place) = moved.get_mut(index) {
        *place = x;
    }
    moved
}

fn stations() -> Vec<Subject> {
    let one = |si: &[f64]| si.first().copied().unwrap_or(f64::NAN);
    let two = |si: &[f64]| si.get(1).copied().unwrap_or(f64::NAN);
    let three = |si: &[f64]| si.get(2).copied().unwrap_or(f64::NAN);
    vec![
        Subject::of_station("measured", &[96_500.0], move |si| {
            StationPressure::measured(pa(one(si)))
        }),
        Subject::of_station("from_altimeter_setting", &[101_660.0, 410.0], move |si| {
            StationPressure::from_altimeter_setting(pa(one(si)), metre(two(si)))
        }),
        Subject::of_station("from_sea_level", &[101_510.0, 410.0, 275.15], move |si| {
            StationPressure::from_sea_level(pa(one(si)), metre(two(si)), kelvin(three(si)))
        }),
        Subject::of_station("from_altitude", &[410.0], move |si| {
            StationPressure::from_altitude(metre(one(si)))
        }),
        Subject::of_station("from_boiling_water", &[371.75], move |si| {
            StationPressure::from_boiling_water(kelvin(one(si)))
        }),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_argument_of_every_function_is_moved() {
        for function in catalogue::functions() {
            let subject = Subject::of_function(function);
            assert_eq!(subject.inside.len(), OTHERS, "{function:?}");
            let least: usize = function
                .arguments
                .iter()
                .map(|argument| if argument.kind == Kind::Station { 4 } else { 17 })
                .sum();
            assert!(subject.lines().len() > least, "{function:?}");
        }
        for (subject, arguments) in stations().iter().zip([1, 2, 3, 1, 1]) {
            assert_eq!(subject.arguments.len(), arguments, "{}", subject.call);
        }
    }

    #[test]
    fn limits_that_hang_on_others_are_found() {
        let found: Vec<String> = catalogue::functions()
            .iter()
            .map(|function| Subject::of_function(function))
            .filter(|subject| {
                let mut all = (0..subject.arguments.len()).flat_map(|index| {
                    subject
                        .inside
                        .iter()
                        .map(move |others| subject.dependent(others, index))
                });
                all.any(|limits| limits.is_some())
            })
            .map(|subject| subject.call)
            .collect();
        for known in [
            "sucrose.brix_from_density",
            "sucrose.brix_from_boiling",
            "sucrose.brix_from_osmotic_pressure",
        ] {
            assert!(found.iter().any(|call| call == known), "{known}: {found:?}");
        }
    }
}
