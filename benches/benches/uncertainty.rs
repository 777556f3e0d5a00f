//! Propagation and draws of the density of a reading; what the model alone costs stands beside them.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use sugaring::{
    Error, sucrose,
    uncertainty::{Samples, Spread, monte_carlo, propagate},
    units::{brix, deg_c, kg_per_m3},
};
use sugaring_benches::group;

const DRAWS: u32 = 100_000;

fn density(x: &[f64]) -> Result<f64, Error> {
    let [w, t] = x else {
        return Err(Error::missing("inputs"));
    };
    Ok(sucrose::density(brix(*w)?, deg_c(*t))?.get::<kg_per_m3>())
}

fn inputs() -> Result<[Spread; 2], Error> {
    Ok([Spread::new("brix", 66.9, 0.15)?, Spread::new("temperature", 25.0, 0.5)?])
}

fn first_order(criterion: &mut Criterion) {
    let inputs = inputs().expect("these are sound");
    let mut group = group(criterion, "uncertainty/first_order", 1);
    group.bench_function("sugaring", |b| b.iter(|| propagate(density, black_box(&inputs))));
    group.bench_function("model", |b| b.iter(|| density(black_box(&[66.9, 25.0]))));
    group.finish();
}

fn draws(criterion: &mut Criterion) {
    let inputs = inputs().expect("these are sound");
    let mut group = group(criterion, "uncertainty/monte_carlo", DRAWS as usize);
    group.bench_function("sugaring", |b| {
        b.iter(|| monte_carlo(density, black_box(&inputs), 1, Samples::Count(DRAWS)));
    });
    group.finish();
}

criterion_group!(benches, first_order, draws);
criterion_main!(benches);
