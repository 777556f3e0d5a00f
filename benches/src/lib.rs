//! The peers that have no crate of their own: the same equations in plain `f64`, the platform's
//! mathematics, no units, no range checks. What a user would write by hand.

/// What the groups time.
pub mod peer;

use criterion::{BenchmarkGroup, Criterion, Throughput, measurement::WallTime};

/// A group of which each iteration handles `elements` inputs.
pub fn group<'a>(criterion: &'a mut Criterion, name: &str, elements: usize) -> BenchmarkGroup<'a, WallTime> {
    let mut group = criterion.benchmark_group(name);
    group.throughput(Throughput::Elements(elements as u64));
    group
}

/// `count` numbers that run over `low` to `high` in an order no predictor learns, the same every time.
pub fn spread(count: usize, low: f64, high: f64, step: f64) -> Vec<f64> {
    let shares = std::iter::successors(Some(0.5_f64), |share| Some((share + step).fract()));
    shares.take(count).map(|share| low + share * (high - low)).collect()
}

/// A step of [`spread`]; two inputs that are to be independent take one each.
pub const GOLDEN: f64 = 0.618_033_988_749_894_8;
/// Another: √2 − 1.
pub const SILVER: f64 = 0.414_213_562_373_095_05;

/// Panics unless `ours` and `theirs` agree within `tolerance` for every input.
pub fn agree(ours: impl Iterator<Item = f64>, theirs: impl Iterator<Item = f64>, tolerance: f64) {
    for (index, (ours, theirs)) in ours.zip(theirs).enumerate() {
        assert!(
            (ours - theirs).abs() <= tolerance,
            "input {index}: {ours} is not {theirs}"
        );
    }
}
