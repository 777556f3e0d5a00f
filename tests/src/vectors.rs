//! The vectors of the functions of numbers, held against this build: `tests/conformance/README.md`.

use std::{collections::BTreeMap, fs, path::PathBuf};

use sugaring::catalogue::{self, Function};

/// A vector that this build does not give.
#[derive(Clone, Debug)]
pub struct Miss {
    /// Function, arguments and the result it should have.
    pub text: String,
    /// `module.name` of the function.
    pub name: String,
    /// How far the result lies off, as a share of it; infinite where one of the two is an error.
    pub change: f64,
}

/// Every line as one call, and every function's lines as one block: how many there are, and those that differ.
pub fn functions_of_numbers() -> (usize, Vec<Miss>) {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("conformance/functions.txt");
    let text = fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    let mut lines: BTreeMap<&str, Vec<(Vec<f64>, &str)>> = BTreeMap::new();
    for line in text.lines().filter(|line| !line.starts_with('#')) {
        let [name, arguments, result] = line.split(' ').collect::<Vec<_>>()[..] else {
            panic!("{line}");
        };
        let arguments = arguments.split(',').map(bits).collect();
        lines.entry(name).or_default().push((arguments, result));
    }
    assert_eq!(lines.len(), catalogue::functions().len());
    let misses = lines.iter().flat_map(|(name, lines)| {
        let function = function(name).unwrap_or_else(|| panic!("{name} is in no table"));
        differing(name, function, lines)
    });
    (lines.values().map(Vec::len).sum(), misses.collect())
}

fn differing(name: &str, function: &Function, lines: &[(Vec<f64>, &str)]) -> Vec<Miss> {
    let columns: Vec<Vec<f64>> = (0..function.arguments.len())
        .map(|index| lines.iter().map(|(arguments, _)| arguments[index]).collect())
        .collect();
    let columns: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
    let mut block = vec![0.0; lines.len()];
    function.block(&columns, &mut block);
    let mut misses = Vec::new();
    for ((arguments, result), lane) in lines.iter().zip(block) {
        let found = function.value(arguments);
        let well = match (&found, result.strip_prefix('!')) {
            (Ok(value), None) => same(*value, bits(result)) && same(lane, *value),
            (Err(error), Some(wanted)) => {
                format!("{}:{}", error.kind().name(), error.argument()) == wanted && lane.is_nan()
            }
            _ => false,
        };
        if !well {
            let change = match (found, result.starts_with('!')) {
                (Ok(value), false) => ((value - bits(result)) / bits(result)).abs(),
                _ => f64::INFINITY,
            };
            misses.push(Miss {
                text: format!("{name} {arguments:?}: {result}"),
                name: name.to_owned(),
                change,
            });
        }
    }
    misses
}

/// The number that a vector spells by its bits.
pub fn bits(text: &str) -> f64 {
    f64::from_bits(u64::from_str_radix(text, 16).unwrap_or_else(|error| panic!("{text}: {error}")))
}

/// The same bits, or both no number.
pub fn same(one: f64, other: f64) -> bool {
    one.to_bits() == other.to_bits() || one.is_nan() && other.is_nan()
}

fn function(name: &str) -> Option<&'static Function> {
    let (module, name) = name.split_once('.')?;
    let mut all = catalogue::functions().iter().copied();
    all.find(|function| (function.module, function.name) == (module, name))
}
