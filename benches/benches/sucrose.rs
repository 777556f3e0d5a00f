//! Sucrose solutions against the same equations written by hand.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use sugaring::{
    air::StationPressure,
    sucrose,
    units::{Brix, Temperature, brix, deg_c, kelvin, kg_per_m3, kpa},
};
use sugaring_benches::{GOLDEN, SILVER, agree, group, peer, spread};

fn density_of((brix, temperature): (Brix, Temperature)) -> f64 {
    sucrose::density(brix, temperature).map_or(f64::NAN, |d| d.get::<kg_per_m3>())
}

fn density(criterion: &mut Criterion) {
    let numbers = spread(10_000, 0.0, 70.0, GOLDEN)
        .into_iter()
        .zip(spread(10_000, 0.0, 100.0, SILVER))
        .collect::<Vec<_>>();
    let typed = numbers
        .iter()
        .map(|&(b, t)| (brix(b).expect("in range"), deg_c(t)))
        .collect::<Vec<_>>();
    let by_hand = |&(b, t): &(f64, f64)| peer::density(b, t);
    agree(typed.iter().map(|&x| density_of(x)), numbers.iter().map(by_hand), 1e-9);

    let mut group = group(criterion, "sucrose/density", typed.len());
    group.bench_function("sugaring", |b| {
        b.iter(|| black_box(&typed).iter().map(|&x| density_of(x)).sum::<f64>());
    });
    group.bench_function("peer", |b| {
        b.iter(|| black_box(&numbers).iter().map(by_hand).sum::<f64>());
    });
    group.finish();
}

fn boils_at((brix, station): (Brix, StationPressure)) -> f64 {
    sucrose::boiling_temperature(brix, station).map_or(f64::NAN, |t| t.get::<kelvin>())
}

fn boiling_temperature(criterion: &mut Criterion) {
    let numbers = spread(100, 0.5, 70.0, GOLDEN)
        .into_iter()
        .zip(spread(100, 60.0, 105.0, SILVER))
        .collect::<Vec<_>>();
    let typed = numbers
        .iter()
        .map(|&(b, p)| {
            let station = StationPressure::measured(kpa(p)).expect("in range");
            (brix(b).expect("in range"), station)
        })
        .collect::<Vec<_>>();
    let by_hand = |&(b, p): &(f64, f64)| peer::boiling_temperature(b, 1000.0 * p);
    agree(typed.iter().map(|&x| boils_at(x)), numbers.iter().map(by_hand), 1e-8);

    let mut group = group(criterion, "sucrose/boiling_temperature", typed.len());
    group.bench_function("sugaring", |b| {
        b.iter(|| black_box(&typed).iter().map(|&x| boils_at(x)).sum::<f64>());
    });
    group.bench_function("peer", |b| {
        b.iter(|| black_box(&numbers).iter().map(by_hand).sum::<f64>());
    });
    group.finish();
}

criterion_group!(benches, density, boiling_temperature);
criterion_main!(benches);
