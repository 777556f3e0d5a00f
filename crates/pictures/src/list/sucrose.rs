use sugaring_tests::Row;

use super::rows::brix;
use crate::{
    axis::Axis,
    formula::{Formula, curve, marks},
    plot::{Below, Curve, Mark, Plot, step},
};

pub(super) fn plots() -> Vec<Plot> {
    vec![
        density(),
        baume(),
        refractive_index(),
        specific_heat(),
        viscosity(),
        thermal_conductivity(),
        solubility(),
        contraction(),
        water_activity(),
        osmotic_coefficient(),
        boiling(),
        osmotic_pressure(),
        freezing(),
        heat_of_evaporation(),
    ]
}

fn strength(high: f64) -> Axis {
    Axis::new("Strength", "°Bx", 0.0, high, 10.0)
}

/// One curve a temperature, over the strength.
fn isotherms(formula: Formula, temperatures: &[f64], high: f64) -> Vec<Curve> {
    let one = |&celsius: &f64| {
        formula.curve(
            &format!("{celsius} °C").replace('-', "−"),
            &[0.0, celsius],
            0,
            0.0,
            high,
        )
    };
    temperatures.iter().map(one).collect()
}

fn by_strength(formula: Formula) -> Vec<Mark> {
    marks(formula.relation(), brix)
}

fn density() -> Plot {
    let formula = Formula::of("sucrose::density");
    Plot {
        name: "density",
        title: "Density of a sucrose solution",
        x: strength(85.0),
        y: Axis::new("Density", "kg/m³", 950.0, 1475.0, 100.0),
        curves: isotherms(formula, &[0.0, 20.0, 60.0, 100.0], 85.0),
        marks: by_strength(formula),
        below: Below::Difference("kg/m³", vec![step(35.0, 0.1), step(78.0, 0.4), step(85.0, 0.9)]),
        accuracy: formula.relation().accuracy,
        note: "The rows seen are tables after Plato, at 15 and 20 °C; the band is that from 10 to 30 °C.",
    }
}

fn baume() -> Plot {
    let formula = Formula::of("scale::baume_20_20");
    Plot {
        name: "baume",
        title: "Degrees Baumé of a sucrose solution at 20 °C",
        x: strength(85.0),
        y: Axis::new("Degrees Baumé", "°Bé 20/20", 0.0, 46.0, 10.0),
        curves: vec![formula.curve("", &[0.0], 0, 0.0, 85.0)],
        marks: by_strength(formula),
        below: Below::Difference("°Bé", vec![step(35.0, 0.014), step(78.0, 0.05), step(85.0, 0.07)]),
        accuracy: formula.relation().accuracy,
        note: "",
    }
}

fn refractive_index() -> Plot {
    let formula = Formula::of("sucrose::refractive_index");
    Plot {
        name: "refractive_index",
        title: "Refractive index of a sucrose solution",
        x: strength(85.0),
        y: Axis::new("Refractive index", "", 1.32, 1.52, 0.04),
        curves: isotherms(formula, &[5.0, 20.0, 40.0, 60.0], 85.0),
        marks: by_strength(formula),
        below: Below::Difference("", vec![step(30.0, 0.00001), step(75.0, 0.00003)]),
        accuracy: formula.relation().accuracy,
        note: "The rows are those of 20 °C, to which the band belongs; those printed to four digits scatter by 0.00005.",
    }
}

fn specific_heat() -> Plot {
    let formula = Formula::of("sucrose::specific_heat");
    Plot {
        name: "specific_heat",
        title: "Specific heat of a sucrose solution",
        x: strength(80.0),
        y: Axis::new("Specific heat", "kJ/(kg K)", 2.0, 4.4, 0.4),
        curves: isotherms(formula, &[4.0, 20.0, 60.0, 100.0], 80.0),
        marks: by_strength(formula),
        below: Below::Percent(vec![
            step(20.0, 1.0),
            step(40.0, 3.0),
            step(67.0, 6.0),
            step(80.0, 12.0),
        ]),
        accuracy: formula.relation().accuracy,
        note: "Nobody was found who measured strong syrup, so that there is no row where it matters most.",
    }
}

fn viscosity() -> Plot {
    let formula = Formula::of("sucrose::viscosity");
    Plot {
        name: "viscosity",
        title: "Viscosity of a sucrose solution",
        x: strength(75.0),
        y: Axis::logarithmic(
            "Viscosity",
            "mPa·s",
            0.2,
            30_000.0,
            &[1.0, 10.0, 100.0, 1000.0, 10_000.0],
        ),
        curves: isotherms(formula, &[0.0, 20.0, 50.0, 82.0, 100.0], 75.0),
        marks: by_strength(formula),
        below: Below::Percent(vec![step(70.0, 3.0), step(75.0, 8.0)]),
        accuracy: formula.relation().accuracy,
        note: "The scale of the viscosity is logarithmic. The rows were taken from 0 to 100 °C; those far out are of 1918, \
               before better ones of 1958.",
    }
}

fn thermal_conductivity() -> Plot {
    let formula = Formula::of("sucrose::thermal_conductivity");
    Plot {
        name: "thermal_conductivity",
        title: "Thermal conductivity of a sucrose solution",
        x: strength(formula.relation().inputs[0].high),
        y: Axis::new("Thermal conductivity", "W/(m K)", 0.25, 0.7, 0.1),
        curves: isotherms(formula, &[0.0, 20.0, 50.0, 80.0], formula.relation().inputs[0].high),
        marks: Vec::new(),
        below: Below::Nothing("No table to hold beside it was found"),
        accuracy: formula.relation().accuracy,
        note: "",
    }
}

fn solubility() -> Plot {
    let formula = Formula::of("sucrose::solubility");
    Plot {
        name: "solubility",
        title: "Strength of a solution saturated with sucrose",
        x: Axis::new("Temperature", "°C", -13.0, 100.0, 20.0),
        y: Axis::new("Strength at saturation", "°Bx", 62.0, 84.0, 4.0),
        curves: vec![formula.curve("", &[0.0], 0, -13.0, 100.0)],
        marks: marks(formula.relation(), Row::celsius),
        below: Below::Difference("°Bx", vec![step(80.0, 0.15), step(100.0, 0.3)]),
        accuracy: formula.relation().accuracy,
        note: "The rows far out are of a scale of 1892, which the later ones leave behind.",
    }
}

fn contraction() -> Plot {
    let formula = Formula::of("sucrose::contraction");
    let to_cold = |brix: f64, label: &str| curve(label, 20.0, 100.0, |hot| formula.at(&[brix, hot, 20.0]));
    Plot {
        name: "contraction",
        title: "What a hot filling loses on cooling to 20 °C",
        x: Axis::new("Temperature of filling", "°C", 20.0, 100.0, 10.0),
        y: Axis::new("Volume lost", "% of the hot volume", 0.0, 4.5, 1.0),
        curves: vec![to_cold(0.0, "water"), to_cold(66.9, "66.9 °Bx")],
        marks: marks(formula.relation(), |row| {
            let cold = row.optional_number("cold_c")?;
            row.optional_number("hot_c").filter(|_| (cold - 20.0).abs() < 1e-9)
        }),
        below: Below::Difference("% of the volume", vec![step(100.0, 0.12)]),
        accuracy: formula.relation().accuracy,
        note: "",
    }
}

fn water_activity() -> Plot {
    let formula = Formula::of("sucrose::water_activity");
    Plot {
        name: "water_activity",
        title: "Water activity of a sucrose solution",
        x: strength(85.0),
        y: Axis::new("Water activity", "", 0.5, 1.0, 0.1),
        curves: isotherms(formula, &[0.0, 25.0, 100.0], 85.0),
        marks: by_strength(formula),
        below: Below::Difference("", vec![step(70.0, 0.002), step(85.0, 0.004)]),
        accuracy: formula.relation().accuracy,
        note: "",
    }
}

fn osmotic_coefficient() -> Plot {
    let formula = Formula::of("sucrose::osmotic_coefficient");
    // 2 mol per kg of water are 40.6 °Bx.
    Plot {
        name: "osmotic_coefficient",
        title: "Osmotic coefficient of a sucrose solution",
        x: strength(85.0),
        y: Axis::new("Osmotic coefficient", "", 0.9, 1.8, 0.2),
        curves: isotherms(formula, &[0.0, 25.0, 100.0], 85.0),
        marks: by_strength(formula),
        below: Below::Difference("", vec![step(40.6, 0.006), step(85.0, 0.003)]),
        accuracy: formula.relation().accuracy,
        note: "The rows are those of 25 °C, to which the band belongs.",
    }
}

fn boiling() -> Plot {
    let formula = Formula::of("sucrose::boiling_point_elevation");
    let at = |kpa: f64| formula.curve(&format!("{kpa} kPa"), &[0.0, kpa], 0, 0.0, 85.0);
    Plot {
        name: "boiling_point_elevation",
        title: "How far a sucrose solution boils above water",
        x: strength(85.0),
        y: Axis::new("Rise over water's boiling point", "K", 0.0, 15.0, 5.0),
        curves: [110.0, 80.0, 50.0].map(at).into(),
        marks: by_strength(formula),
        below: Below::Difference("K", vec![step(70.0, 0.1), step(80.0, 0.15), step(85.0, 0.35)]),
        accuracy: formula.relation().accuracy,
        note: "The pressure hardly matters to the rise; it matters to the boiling point of water, to which the rise is added.",
    }
}

fn osmotic_pressure() -> Plot {
    let formula = Formula::of("sucrose::osmotic_pressure");
    Plot {
        name: "osmotic_pressure",
        title: "Osmotic pressure of a sucrose solution",
        x: strength(60.0),
        y: Axis::new("Osmotic pressure", "bar", 0.0, 170.0, 50.0),
        curves: isotherms(formula, &[0.0, 25.0, 50.0], 60.0),
        marks: by_strength(formula),
        below: Below::Percent(vec![step(30.0, 1.0), step(45.0, 2.0), step(60.0, 3.5)]),
        accuracy: formula.relation().accuracy,
        note: "",
    }
}

fn freezing() -> Plot {
    let formula = Formula::of("sucrose::freezing_temperature");
    Plot {
        name: "freezing",
        title: "Temperature at which a sucrose solution begins to freeze",
        x: strength(60.0),
        y: Axis::new("Begins to freeze at", "°C", -12.0, 0.0, 2.0),
        curves: vec![formula.curve("", &[0.0], 0, 0.0, 60.0)],
        marks: by_strength(formula),
        below: Below::Difference("K", vec![step(15.0, 0.02), step(36.0, 0.05), step(57.0, 0.1)]),
        accuracy: formula.relation().accuracy,
        note: "",
    }
}

fn heat_of_evaporation() -> Plot {
    let formula = Formula::of("sucrose::heat_of_evaporation");
    let at = |kpa: f64| formula.curve(&format!("{kpa} kPa"), &[0.0, kpa], 0, 0.0, 85.0);
    Plot {
        name: "heat_of_evaporation",
        title: "Heat that takes 1 kg of water out of a boiling solution",
        x: strength(85.0),
        y: Axis::new("Heat of evaporation", "kJ/kg", 2230.0, 2350.0, 20.0),
        curves: [50.0, 80.0, 110.0].map(at).into(),
        marks: Vec::new(),
        below: Below::Nothing("Nobody was found who measured it"),
        accuracy: formula.relation().accuracy,
        note: "",
    }
}
