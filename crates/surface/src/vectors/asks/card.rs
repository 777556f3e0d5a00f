//! The card of marks, charts and jurisdictions.

use sugaring::form::Tree;

use super::{Case, of};

pub(super) fn cases() -> Vec<Case> {
    let float = |scale: &str, at: Tree| {
        let inner = Tree::map([("scale", Tree::from(scale)), ("calibrated_at", at)]);
        ("instrument", Tree::map([("hydrometer", inner)]))
    };
    let target = |brix: f64| ("target", Tree::Number(brix));
    let sixty = || of(60.0, "deg_f");
    let at = |temperatures: &[Tree]| ("temperatures", temperatures.iter().cloned().collect());
    let two = [of(211.0, "deg_f"), of(120.0, "deg_f")];
    let vermont = || Tree::map([("jurisdiction", Tree::from("vermont"))]);
    vec![
        (
            "instrument.card",
            Tree::map([
                target(66.9),
                float("brix", sixty()),
                at(&two),
                ("name", Tree::from("Far Orchard <1>")),
                ("chart", Tree::from("vermont")),
            ]),
        ),
        (
            "instrument.card",
            Tree::map([target(66.9), float("baume_20_20", sixty())]),
        ),
        (
            "instrument.card",
            Tree::map([target(66.0), float("density", of(20.0, "deg_c")), at(&two)]),
        ),
        (
            "instrument.card",
            Tree::map([
                target(66.9),
                float("brix", sixty()),
                at(&[of(60.0, "deg_f"), of(211.0, "deg_c")]),
            ]),
        ),
        (
            "instrument.card",
            Tree::map([
                target(66.9),
                float("brix", of(20.0, "deg_c")),
                ("chart", Tree::from("vermont")),
            ]),
        ),
        ("instrument.card", Tree::map([target(0.669), float("brix", sixty())])),
        (
            "instrument.card",
            Tree::map([target(66.9), float("brix", sixty()), ("chart", Tree::from("vermnt"))]),
        ),
        ("instrument.chart", vermont()),
        ("instrument.chart", Tree::map([("jurisdiction", Tree::from("maine"))])),
        (
            "instrument.chart",
            Tree::map([("jurisdiction", Tree::from("atlantis"))]),
        ),
        (
            "DensityChart.mark",
            Tree::map([("chart", vermont()), ("temperature", of(115.0, "deg_f"))]),
        ),
        (
            "DensityChart.mark",
            Tree::map([("chart", vermont()), ("temperature", of(211.0, "deg_f"))]),
        ),
        ("catalogue.jurisdictions", Tree::map::<&str>([])),
        legal(67.1, 0.15, "vermont"),
        legal(66.9, 0.0, "vermont"),
        legal(65.8, 0.3, "maine"),
        legal(66.9, -0.1, "vermont"),
        legal(669.0, 0.1, "vermont"),
        legal(66.9, 0.1, "new_hampshire"),
        ("catalogue.instruments", Tree::map::<&str>([])),
    ]
}

fn legal(brix: f64, uncertainty: f64, jurisdiction: &str) -> Case {
    let measured = Tree::map([
        ("value", Tree::Number(brix)),
        ("uncertainty", Tree::Number(uncertainty)),
    ]);
    (
        "finish.legal",
        Tree::map([("brix", measured), ("jurisdiction", Tree::from(jurisdiction))]),
    )
}
