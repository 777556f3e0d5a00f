//! Readings and truths against the same equations solved by hand.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use sugaring::{
    instrument::{Hydrometer, Reading, Refractometer, reading},
    units::{Brix, Temperature, brix, deg_c, deg_f},
};
use sugaring_benches::{GOLDEN, SILVER, agree, group, peer, spread};

const CALIBRATED_AT: f64 = 15.555_555_555_555_6;

/// Syrup on a Brix hydrometer for 60 °F, over all temperatures.
fn hydrometer(criterion: &mut Criterion) {
    let float = Hydrometer::brix(deg_f(60.0)).expect("a syrup hydrometer");
    let numbers = pairs(1000, [50.0, 70.0], [0.0, 100.0]);
    let readings: Vec<(Reading, Temperature)> = numbers.iter().map(|&(r, t)| (reading(r), deg_c(t))).collect();
    let liquids = strengths(&numbers);
    let truth =
        |(shown, at): (Reading, Temperature)| float.truth(shown, at).map_or(f64::NAN, |truth| truth.value.get());
    let mark = |(liquid, at): (Brix, Temperature)| float.reading(liquid, at).map_or(f64::NAN, Reading::get);
    let swelling = |celsius: f64| 1.0 + 25e-6 * (celsius - CALIBRATED_AT);
    let by_hand = |&(r, t): &(f64, f64)| peer::brix_from_density(peer::density(r, CALIBRATED_AT) / swelling(t), t);
    let back_by_hand = |&(w, t): &(f64, f64)| peer::brix_from_density(peer::density(w, t) * swelling(t), CALIBRATED_AT);
    agree(readings.iter().map(|&x| truth(x)), numbers.iter().map(by_hand), 1e-8);
    agree(liquids.iter().map(|&x| mark(x)), numbers.iter().map(back_by_hand), 1e-8);

    let mut there = group(criterion, "instrument/hydrometer/truth", numbers.len());
    there.bench_function("sugaring", |b| {
        b.iter(|| black_box(&readings).iter().map(|&x| truth(x)).sum::<f64>());
    });
    there.bench_function("peer", |b| {
        b.iter(|| black_box(&numbers).iter().map(by_hand).sum::<f64>());
    });
    there.finish();
    let mut back = group(criterion, "instrument/hydrometer/reading", numbers.len());
    back.bench_function("sugaring", |b| {
        b.iter(|| black_box(&liquids).iter().map(|&x| mark(x)).sum::<f64>());
    });
    back.bench_function("peer", |b| {
        b.iter(|| black_box(&numbers).iter().map(back_by_hand).sum::<f64>());
    });
    back.finish();
}

/// Without a correction of its own; no peer solves it.
fn refractometer(criterion: &mut Criterion) {
    let plain = Refractometer::uncompensated();
    let numbers = pairs(1000, [1.0, 70.0], [5.0, 40.0]);
    let liquids = strengths(&numbers);
    let mark = |(liquid, at): (Brix, Temperature)| plain.reading(liquid, at).map_or(f64::NAN, Reading::get);
    let readings: Vec<(Reading, Temperature)> = liquids.iter().map(|&x| (reading(mark(x)), x.1)).collect();
    let truth =
        |(shown, at): (Reading, Temperature)| plain.truth(shown, at).map_or(f64::NAN, |truth| truth.value.get());
    agree(
        readings.iter().map(|&x| truth(x)),
        numbers.iter().map(|&(w, _)| w),
        1e-9,
    );

    let mut group = group(criterion, "instrument/refractometer", numbers.len());
    group.bench_function("truth", |b| {
        b.iter(|| black_box(&readings).iter().map(|&x| truth(x)).sum::<f64>());
    });
    group.bench_function("reading", |b| {
        b.iter(|| black_box(&liquids).iter().map(|&x| mark(x)).sum::<f64>());
    });
    group.finish();
}

fn pairs(count: usize, [low, high]: [f64; 2], [cold, warm]: [f64; 2]) -> Vec<(f64, f64)> {
    let first = spread(count, low, high, GOLDEN);
    first.into_iter().zip(spread(count, cold, warm, SILVER)).collect()
}

fn strengths(numbers: &[(f64, f64)]) -> Vec<(Brix, Temperature)> {
    numbers
        .iter()
        .map(|&(w, t)| (brix(w).expect("in range"), deg_c(t)))
        .collect()
}

criterion_group!(benches, hydrometer, refractometer);
criterion_main!(benches);
