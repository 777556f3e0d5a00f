//! The checks of the repository, in the order in which a slip shows soonest.

use std::fs;

use crate::{
    command::{cargo, top},
    javascript, no_std, python,
    report::Report,
};

/// Feature sets of the core, each checked and tested; all together is the run over the workspace.
const FEATURE_SETS: [&str; 6] = ["", "std", "dispatch", "serde", "json", "schema"];

/// The inner loop.
pub(crate) fn quick() -> bool {
    let mut report = Report::default();
    core_unit_tests(&mut report);
    tables(&mut report, "--lib --bins --tests");
    report.close()
}

/// Everything.
pub(crate) fn everything() -> bool {
    let mut report = Report::default();
    report.check("format", &mut cargo("fmt --all --check"));
    lints(&mut report);
    report.tests(
        "core, compile-fail cases, xtask",
        &mut cargo("test --locked --workspace --exclude sugaring-tests --all-features --no-fail-fast"),
    );
    tables(&mut report, "");
    feature_sets(&mut report);
    no_std::link(&mut report);
    report.check(
        "documentation",
        cargo("doc --locked --workspace --no-deps --all-features").env("RUSTDOCFLAGS", "-D warnings"),
    );
    report.check(
        "benches, each once",
        &mut cargo("test --locked --package sugaring-benches --benches"),
    );
    examples(&mut report);
    python::all(&mut report);
    javascript::all(&mut report);
    report.close()
}

/// A face alone.
pub(crate) fn face(steps: fn(&mut Report)) -> bool {
    let mut report = Report::default();
    steps(&mut report);
    report.close()
}

fn core_unit_tests(report: &mut Report) {
    report.tests(
        "core: unit tests",
        &mut cargo("test --locked --package sugaring --lib --all-features"),
    );
}

/// The member that judges tables, plans and pages; its summaries are in what passing tests print.
fn tables(report: &mut Report, targets: &str) {
    report.tests(
        "tables, plans, texts, pages",
        cargo("test --locked --package sugaring-tests --no-fail-fast")
            .args(targets.split_whitespace())
            .args(["--", "--show-output"]),
    );
}

fn lints(report: &mut Report) {
    let deny = ["--", "-D", "warnings"];
    report.check(
        "lints: workspace",
        cargo("clippy --locked --workspace --all-targets --all-features").args(deny),
    );
    for features in FEATURE_SETS {
        report.check(
            &format!("lints: core, {}", shown(features)),
            cargo("clippy --locked --package sugaring --no-default-features --features")
                .arg(features)
                .args(deny),
        );
    }
}

fn feature_sets(report: &mut Report) {
    for features in FEATURE_SETS {
        report.tests(
            &format!("unit tests: core, {}", shown(features)),
            // Properties had their full number of cases with all features; so few are sooner run than optimised.
            cargo("test --locked --package sugaring --lib --config profile.dev.package.sugaring.opt-level=0")
                .args(["--no-default-features", "--features"])
                .arg(features)
                .env("PROPTEST_CASES", "16"),
        );
    }
}

fn shown(features: &str) -> String {
    if features.is_empty() {
        String::from("no features")
    } else {
        format!("{features} alone")
    }
}

/// Runs each program of `examples/` without arguments.
fn examples(report: &mut Report) {
    let entries = fs::read_dir(top().join("examples")).into_iter().flatten().flatten();
    let mut names = entries
        .filter_map(|entry| entry.file_name().to_str()?.strip_suffix(".rs").map(str::to_owned))
        .filter(|name| name != "lib")
        .collect::<Vec<_>>();
    names.sort();
    for name in names {
        report.check(
            &format!("example: {name}"),
            cargo("run --quiet --locked --package sugaring-examples --example").arg(&name),
        );
    }
}
