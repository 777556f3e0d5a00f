//! What other languages call, one value and a block at a time, against the bare equation in a loop.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use sugaring::catalogue::{Function, functions};
use sugaring_benches::{GOLDEN, SILVER, agree, group, peer, spread};

/// As many lanes as a binding hands over at once.
const LANES: usize = 256;
const COUNT: usize = 40 * LANES;

fn row(module: &str, name: &str) -> &'static Function {
    let mut all = functions().iter().copied();
    all.find(|row| (row.module, row.name) == (module, name))
        .expect("in the table")
}

fn values(row: &Function, columns: &[Vec<f64>], out: &mut [f64]) {
    let mut si = vec![0.0; columns.len()];
    for (lane, out) in out.iter_mut().enumerate() {
        for (si, column) in si.iter_mut().zip(columns) {
            *si = column[lane];
        }
        *out = row.value(&si).unwrap_or(f64::NAN);
    }
}

fn blocks(row: &Function, columns: &[Vec<f64>], out: &mut [f64]) {
    for (index, out) in out.chunks_mut(LANES).enumerate() {
        let from = index * LANES;
        match columns {
            [one] => row.block(&[&one[from..from + out.len()]], out),
            [one, two] => row.block(&[&one[from..from + out.len()], &two[from..from + out.len()]], out),
            _ => unreachable!("one or two columns"),
        };
    }
}

/// Times `row` over `columns`; `bare` is the equation of a lane.
fn time(criterion: &mut Criterion, row: &Function, columns: &[Vec<f64>], tolerance: f64, bare: impl Fn(usize) -> f64) {
    let (mut one, mut other) = (vec![0.0; COUNT], vec![0.0; COUNT]);
    values(row, columns, &mut one);
    blocks(row, columns, &mut other);
    agree(one.into_iter(), (0..COUNT).map(&bare), tolerance);
    agree(other.into_iter(), (0..COUNT).map(&bare), tolerance);

    let mut out = vec![0.0; COUNT];
    let mut group = group(criterion, &format!("surface/{}_{}", row.module, row.name), COUNT);
    group.bench_function("value", |b| {
        b.iter(|| values(row, black_box(columns), black_box(&mut out)));
    });
    group.bench_function("block", |b| {
        b.iter(|| blocks(row, black_box(columns), black_box(&mut out)));
    });
    group.bench_function("peer", |b| {
        b.iter(|| {
            black_box(&mut out)
                .iter_mut()
                .enumerate()
                .for_each(|(lane, out)| *out = bare(lane));
        });
    });
    group.finish();
}

fn density(criterion: &mut Criterion) {
    let columns = [spread(COUNT, 0.0, 70.0, GOLDEN), spread(COUNT, 273.15, 373.15, SILVER)];
    let bare = |lane: usize| peer::density(columns[0][lane], columns[1][lane] - 273.15);
    time(criterion, row("sucrose", "density"), &columns, 1e-9, bare);
}

fn saturation_pressure(criterion: &mut Criterion) {
    let columns = [spread(COUNT, 273.15, 405.0, GOLDEN)];
    let bare = |lane: usize| peer::saturation_pressure(columns[0][lane]);
    time(criterion, row("water", "saturation_pressure"), &columns, 1e-6, bare);
}

criterion_group!(benches, density, saturation_pressure);
criterion_main!(benches);
