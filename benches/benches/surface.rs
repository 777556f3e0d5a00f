//! What other languages call, one value and a block at a time, against the bare equation in a loop.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use sugaring::catalogue::{Function, functions};
use sugaring_benches::{GOLDEN, SILVER, agree, group, peer, spread};

/// As many lanes as a binding hands over at once.
const LANES: usize = 256;
const COUNT: usize = 40 * LANES;

/// A peer's name, and its equation of a lane.
type Bare<'a> = (&'a str, &'a dyn Fn(usize) -> f64);

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

/// Times `row` over `columns`; the peers are bare equations of a lane, the first the one it must agree with.
fn time(criterion: &mut Criterion, row: &Function, columns: &[Vec<f64>], tolerance: f64, peers: &[Bare<'_>]) {
    let (mut one, mut other) = (vec![0.0; COUNT], vec![0.0; COUNT]);
    values(row, columns, &mut one);
    blocks(row, columns, &mut other);
    for (_, bare) in peers {
        agree(one.iter().copied(), (0..COUNT).map(bare), tolerance);
        agree(other.iter().copied(), (0..COUNT).map(bare), tolerance);
    }

    let mut out = vec![0.0; COUNT];
    let mut group = group(criterion, &format!("surface/{}_{}", row.module, row.name), COUNT);
    group.bench_function("value", |b| {
        b.iter(|| values(row, black_box(columns), black_box(&mut out)));
    });
    group.bench_function("block", |b| {
        b.iter(|| blocks(row, black_box(columns), black_box(&mut out)));
    });
    for (name, bare) in peers {
        group.bench_function(*name, |b| {
            b.iter(|| {
                black_box(&mut out)
                    .iter_mut()
                    .enumerate()
                    .for_each(|(lane, out)| *out = bare(lane));
            });
        });
    }
    group.finish();
}

fn density(criterion: &mut Criterion) {
    let columns = [spread(COUNT, 0.0, 70.0, GOLDEN), spread(COUNT, 273.15, 373.15, SILVER)];
    let bare = |lane: usize| peer::density(columns[0][lane], columns[1][lane] - 273.15);
    time(criterion, row("sucrose", "density"), &columns, 1e-9, &[("peer", &bare)]);
}

fn brix_from_density(criterion: &mut Criterion) {
    let strengths = spread(COUNT, 0.0, 85.0, GOLDEN);
    let kelvins = spread(COUNT, 273.15, 373.15, SILVER);
    let pairs = strengths.iter().zip(&kelvins);
    let densities = pairs.map(|(&b, &k)| peer::density(b, k - 273.15)).collect();
    let columns = [densities, kelvins];
    let root = |lane: usize| peer::brix_from_density(columns[0][lane], columns[1][lane] - 273.15);
    time(
        criterion,
        row("sucrose", "brix_from_density"),
        &columns,
        1e-8,
        &[("bracketed_root", &root)],
    );
}

fn saturation_pressure(criterion: &mut Criterion) {
    let columns = [spread(COUNT, 273.15, 405.0, GOLDEN)];
    let bare = |lane: usize| peer::saturation_pressure(columns[0][lane]);
    time(
        criterion,
        row("water", "saturation_pressure"),
        &columns,
        1e-6,
        &[("peer", &bare)],
    );
}

fn saturation_temperature(criterion: &mut Criterion) {
    let columns = [spread(COUNT, 50e3, 110e3, GOLDEN)];
    let seuif97 = |lane: usize| seuif97::px2t(columns[0][lane] / 1e6, 0.0) + 273.15;
    let rust_steam = |lane: usize| rust_steam::t_sat(columns[0][lane]);
    time(
        criterion,
        row("water", "saturation_temperature"),
        &columns,
        1e-9,
        &[("seuif97", &seuif97), ("rust_steam", &rust_steam)],
    );
}

fn osmotic_pressure(criterion: &mut Criterion) {
    let columns = [spread(COUNT, 0.0, 60.0, GOLDEN), spread(COUNT, 273.2, 323.1, SILVER)];
    let bare = |lane: usize| peer::osmotic_pressure(columns[0][lane], columns[1][lane]);
    time(
        criterion,
        row("sucrose", "osmotic_pressure"),
        &columns,
        1e-6,
        &[("peer", &bare)],
    );
}

fn boiling_temperature(criterion: &mut Criterion) {
    let columns = [spread(COUNT, 0.1, 85.0, GOLDEN), spread(COUNT, 50e3, 110e3, SILVER)];
    let root = |lane: usize| peer::boiling_temperature(columns[0][lane], columns[1][lane]);
    time(
        criterion,
        row("sucrose", "boiling_temperature"),
        &columns,
        1e-8,
        &[("bracketed_root", &root)],
    );
}

criterion_group!(
    benches,
    density,
    brix_from_density,
    saturation_pressure,
    saturation_temperature,
    osmotic_pressure,
    boiling_temperature
);
criterion_main!(benches);
