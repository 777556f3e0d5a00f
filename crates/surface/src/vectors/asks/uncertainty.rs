//! Uncertainties of functions of the table, combined readings, lines and limits.

use sugaring::form::Tree;

use super::{Case, of};

pub(super) fn cases() -> Vec<Case> {
    let mut cases = propagated();
    cases.extend(drawn());
    cases.extend(numbers());
    cases.extend(refused());
    cases
}

fn map<const N: usize>(entries: [(&str, Tree); N]) -> Tree {
    Tree::map(entries)
}

fn number(value: f64) -> Tree {
    Tree::Number(value)
}

fn list(items: &[Tree]) -> Tree {
    items.iter().cloned().collect()
}

fn numbers_of(items: &[f64]) -> Tree {
    items.iter().copied().map(Tree::Number).collect()
}

fn spread(value: Tree, uncertainty: Tree, more: &[(&str, Tree)]) -> Tree {
    let first = [("value", value), ("uncertainty", uncertainty)];
    Tree::map(first.into_iter().chain(more.iter().cloned()))
}

fn strength() -> Tree {
    spread(number(66.9), number(0.15), &[])
}

fn warm() -> Tree {
    spread(
        of(25.0, "deg_c"),
        of(0.5, "delta_c"),
        &[("distribution", Tree::from("rectangular"))],
    )
}

fn propagated() -> Vec<Case> {
    let ask = |function: &str, inputs: &[Tree]| {
        (
            "uncertainty.propagate",
            map([("function", Tree::from(function)), ("inputs", list(inputs))]),
        )
    };
    let air = spread(of(96.5, "kpa"), of(0.1, "kpa"), &[("name", Tree::from("barometer"))]);
    let cause = |value: f64| {
        spread(
            of(value, "deg_f"),
            of(1.0, "delta_f"),
            &[("cause", Tree::from("thermometer"))],
        )
    };
    let correlated = spread(
        of(20.0, "deg_c"),
        of(0.5, "delta_c"),
        &[
            ("name", Tree::from("t")),
            ("correlation", map([("brix", number(-0.6))])),
        ],
    );
    let few = spread(
        of(20.0, "deg_c"),
        of(0.5, "delta_c"),
        &[("degrees_of_freedom", number(4.0))],
    );
    vec![
        ask("sucrose.density", &[strength(), warm()]),
        ask("sucrose.density", &[strength(), correlated]),
        ask("sucrose.density", &[strength(), few]),
        ask("sucrose.density", &[number(66.9), of(25.0, "deg_c")]),
        ask("sucrose.boiling_temperature", &[strength(), air]),
        ask("sucrose.heat_to_warm", &[number(2.0), cause(40.0), cause(210.0)]),
        // At the end of a range one step is refused.
        ask(
            "sucrose.density",
            &[spread(number(84.95), number(0.2), &[]), of(20.0, "deg_c")],
        ),
    ]
}

fn drawn() -> Vec<Case> {
    let ask = |seed: f64, samples: Tree| {
        let entries = [
            ("function", Tree::from("sucrose.density")),
            ("inputs", list(&[strength(), warm()])),
            ("seed", number(seed)),
            ("samples", samples),
        ];
        ("uncertainty.monte_carlo", Tree::map(entries))
    };
    vec![
        ask(1.0, number(1000.0)),
        ask(2.0, map([("digits", number(1.0))])),
        ask(3.0, map([("until", number(0.05))])),
        ask(1.0, number(10.0)),
        ask(-1.0, number(1000.0)),
        ask(1.0, map([("digits", number(9.0))])),
    ]
}

fn numbers() -> Vec<Case> {
    let two = [strength(), spread(number(66.4), number(0.12), &[])];
    let warm = [
        spread(of(102.8, "deg_c"), of(0.2, "delta_c"), &[]),
        spread(of(218.5, "deg_f"), of(1.0, "delta_f"), &[]),
    ];
    // The thermometer of GUM H.3.
    let x = [
        21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511,
    ];
    let y = [
        -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160,
    ];
    let fit = |x: &[f64], y: &[f64]| {
        let entries = [("x", numbers_of(x)), ("y", numbers_of(y)), ("x0", number(20.0))];
        ("uncertainty.line_fit", Tree::map(entries))
    };
    let line = || {
        map([
            ("intercept", number(-0.1712)),
            ("slope", number(0.00218)),
            (
                "covariance",
                list(&[numbers_of(&[8.4e-6, -1.8e-6]), numbers_of(&[-1.8e-6, 4.5e-7])]),
            ),
            ("residual_deviation", number(0.0035)),
            ("degrees_of_freedom", number(9.0)),
            ("reference", number(20.0)),
            ("low", number(21.521)),
            ("high", number(26.511)),
        ])
    };
    let found = || {
        map([
            ("value", of(1328.2, "kg_per_m3")),
            ("uncertainty", of(0.9, "kg_per_m3")),
            ("degrees_of_freedom", number(16.6)),
        ])
    };
    vec![
        ("uncertainty.combine", map([("readings", list(&two))])),
        ("uncertainty.combine", map([("readings", list(&warm))])),
        (
            "uncertainty.combine",
            map([("readings", list(&[spread(number(66.9), number(0.0), &[]), strength()]))]),
        ),
        fit(&x, &y),
        fit(&[1.0, 1.0, 1.0], &[1.0, 2.0, 3.0]),
        fit(&[1.0, 2.0], &[1.0, 2.0]),
        fit(&[1.0, 2.0, 3.0], &[1.0, 2.0]),
        fit(&[1.0, 2.0, f64::NAN], &[1.0, 2.0, 3.0]),
        ("Line.at", map([("line", line()), ("x", number(30.0))])),
        ("Line.correlation", map([("line", line())])),
        (
            "Propagated.interval",
            map([("propagated", found()), ("coverage", number(0.99))]),
        ),
        (
            "Propagated.coverage_factor",
            map([("propagated", found()), ("coverage", number(0.95))]),
        ),
        (
            "Propagated.interval",
            map([("propagated", found()), ("coverage", number(95.0))]),
        ),
        (
            "uncertainty.probability_at_least",
            map([("value", strength()), ("minimum", number(66.7))]),
        ),
        (
            "uncertainty.probability_at_least",
            map([
                ("value", spread(of(102.8, "deg_c"), of(0.2, "delta_c"), &[])),
                ("minimum", of(217.0, "deg_f")),
            ]),
        ),
    ]
}

fn refused() -> Vec<Case> {
    let ask = |inputs: &[Tree]| {
        (
            "uncertainty.propagate",
            map([("function", Tree::from("sucrose.density")), ("inputs", list(inputs))]),
        )
    };
    let with = |key: &str, value: Tree| spread(of(25.0, "deg_c"), of(0.5, "delta_c"), &[(key, value)]);
    vec![
        ask(&[spread(number(66.9), number(-0.1), &[]), of(20.0, "deg_c")]),
        ask(&[spread(number(66.9), number(f64::INFINITY), &[]), of(20.0, "deg_c")]),
        ask(&[spread(number(f64::NAN), number(0.1), &[]), of(20.0, "deg_c")]),
        ask(&[strength(), with("correlation", map([("brix", number(1.5))]))]),
        ask(&[strength(), with("correlation", map([("brx", number(0.5))]))]),
        ask(&[strength(), with("distribution", Tree::from("rectangle"))]),
        ask(&[strength(), with("degrees_of_freedom", number(0.5))]),
        ask(&[strength(), spread(of(25.0, "deg_c"), of(0.5, "deg_c"), &[])]),
        ask(&[strength(), number(20.0)]),
        ask(&[strength()]),
        ask(&[spread(number(90.0), number(0.1), &[]), of(20.0, "deg_c")]),
        ("uncertainty.combine", map([("readings", list(&[]))])),
        (
            "uncertainty.combine",
            map([(
                "readings",
                list(&[strength(), spread(number(66.4), number(-0.12), &[])]),
            )]),
        ),
    ]
}
