//! The boiling point of water against a general steam-table crate.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use sugaring::{
    units::{Pressure, deg_c, kpa},
    water,
};
use sugaring_benches::{GOLDEN, agree, group, spread};

fn ours(pressure: Pressure) -> f64 {
    water::saturation_temperature(pressure).map_or(f64::NAN, |t| t.get::<deg_c>())
}

fn peer(megapascal: f64) -> f64 {
    seuif97::px2t(megapascal, 0.0)
}

fn saturation(criterion: &mut Criterion) {
    let kilopascals = spread(1000, 50.0, 110.0, GOLDEN);
    let pressures = kilopascals.iter().map(|&p| kpa(p)).collect::<Vec<_>>();
    let megapascals = kilopascals.iter().map(|p| p / 1000.0).collect::<Vec<_>>();
    agree(
        pressures.iter().map(|&p| ours(p)),
        megapascals.iter().map(|&p| peer(p)),
        1e-9,
    );

    let mut group = group(criterion, "water/saturation", pressures.len());
    group.bench_function("sugaring", |b| {
        b.iter(|| black_box(&pressures).iter().map(|&p| ours(p)).sum::<f64>());
    });
    group.bench_function("peer", |b| {
        b.iter(|| black_box(&megapascals).iter().map(|&p| peer(p)).sum::<f64>());
    });
    group.finish();
}

criterion_group!(benches, saturation);
criterion_main!(benches);
