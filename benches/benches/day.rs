//! The demo day: planned without draws, and with the thousand draws behind its ranges.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use sugaring::day::{self, DayInputs};

const FAR_ORCHARD: &str = include_str!("../../examples/far_orchard.json");

fn plan(criterion: &mut Criterion) {
    let mut inputs = DayInputs::from_json(FAR_ORCHARD).expect("the demo day reads");
    let mut group = criterion.benchmark_group("day/plan");
    for samples in [0, 1000] {
        inputs.samples = Some(samples);
        group.bench_function(format!("{samples} draws"), |b| {
            b.iter(|| day::plan(black_box(&inputs)).expect("the demo day can be planned"));
        });
    }
    group.finish();
}

fn page(criterion: &mut Criterion) {
    let mut inputs = DayInputs::from_json(FAR_ORCHARD).expect("the demo day reads");
    inputs.samples = Some(0);
    let plan = day::plan(&inputs).expect("the demo day can be planned");
    let mut group = criterion.benchmark_group("day/page");
    group.bench_function("text", |b| b.iter(|| black_box(&plan).to_string()));
    group.bench_function("json", |b| b.iter(|| black_box(&plan).to_json()));
    group.finish();
}

criterion_group!(benches, plan, page);
criterion_main!(benches);
