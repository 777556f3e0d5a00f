use sugaring_tests::Row;

use crate::{
    axis::Axis,
    formula::{Formula, marks},
    plot::{Below, Mark, Plot, step},
};

pub(super) fn plots() -> Vec<Plot> {
    vec![
        saturation_pressure(),
        latent_heat(),
        saturated_vapour_density(),
        density(),
        specific_heat(),
        viscosity(),
        thermal_conductivity(),
    ]
}

fn temperature(low: f64, high: f64) -> Axis {
    Axis::new("Temperature", "°C", low, high, 20.0)
}

fn by_temperature(formula: Formula) -> Vec<Mark> {
    marks(formula.relation(), Row::celsius)
}

fn saturation_pressure() -> Plot {
    let formula = Formula::of("water::saturation_pressure");
    let mut rows = by_temperature(formula);
    rows.retain(|row| row.x <= 130.0);
    Plot {
        name: "saturation_pressure",
        title: "Pressure at which water boils",
        x: temperature(0.0, 130.0),
        y: Axis::logarithmic(
            "Absolute pressure",
            "kPa",
            0.5,
            320.0,
            &[1.0, 3.0, 10.0, 30.0, 100.0, 300.0],
        ),
        curves: vec![formula.curve("", &[0.0], 0, 0.0, 130.0)],
        marks: rows,
        below: Below::Percent(vec![step(130.0, 0.02)]),
        accuracy: formula.relation().accuracy,
        note: "The scale of the pressure is logarithmic. Of the range to the critical point the sugarhouse's part is shown.",
    }
}

fn latent_heat() -> Plot {
    let formula = Formula::of("water::latent_heat");
    Plot {
        name: "latent_heat",
        title: "Heat that makes steam of boiling water",
        x: temperature(0.0, 130.0),
        y: Axis::new("Latent heat", "kJ/kg", 2150.0, 2520.0, 100.0),
        curves: vec![formula.curve("", &[0.0], 0, 0.01, 130.0)],
        marks: by_temperature(formula),
        below: Below::Difference("kJ/kg", vec![step(25.0, 0.38), step(130.0, 0.22)]),
        accuracy: formula.relation().accuracy,
        note: "",
    }
}

fn saturated_vapour_density() -> Plot {
    let formula = Formula::of("water::saturated_vapour_density");
    Plot {
        name: "saturated_vapour_density",
        title: "Density of the steam over boiling water",
        x: temperature(0.0, 130.0),
        y: Axis::logarithmic("Density of the steam", "kg/m³", 0.004, 2.0, &[0.01, 0.1, 1.0]),
        curves: vec![formula.curve("", &[0.0], 0, 0.01, 130.0)],
        marks: by_temperature(formula),
        below: Below::Percent(Vec::new()),
        accuracy: formula.relation().accuracy,
        note: "The scale of the density is logarithmic.",
    }
}

fn density() -> Plot {
    let formula = Formula::of("water::density");
    Plot {
        name: "water_density",
        title: "Density of liquid water",
        x: temperature(-20.0, 110.0),
        y: Axis::new("Density", "kg/m³", 945.0, 1005.0, 20.0),
        curves: vec![formula.curve("", &[0.0], 0, -20.0, 110.0)],
        marks: by_temperature(formula),
        below: Below::Percent(vec![step(40.0, 0.0001), step(110.0, 0.003)]),
        accuracy: formula.relation().accuracy,
        note: "",
    }
}

fn specific_heat() -> Plot {
    let formula = Formula::of("water::specific_heat");
    Plot {
        name: "water_specific_heat",
        title: "Specific heat of liquid water",
        x: temperature(-20.0, 110.0),
        y: Axis::new("Specific heat", "kJ/(kg K)", 4.16, 4.42, 0.05),
        curves: vec![formula.curve("", &[0.0], 0, -20.0, 110.0)],
        marks: by_temperature(formula),
        below: Below::Percent(vec![step(110.0, 0.1)]),
        accuracy: formula.relation().accuracy,
        note: "",
    }
}

fn viscosity() -> Plot {
    let formula = Formula::of("water::viscosity");
    Plot {
        name: "water_viscosity",
        title: "Viscosity of liquid water",
        x: temperature(-20.0, 110.0),
        y: Axis::new("Viscosity", "mPa·s", 0.0, 4.5, 1.0),
        curves: vec![formula.curve("", &[0.0], 0, -20.0, 110.0)],
        marks: by_temperature(formula),
        below: Below::Percent(vec![step(110.0, 1.0)]),
        accuracy: formula.relation().accuracy,
        note: "",
    }
}

fn thermal_conductivity() -> Plot {
    let formula = Formula::of("water::thermal_conductivity");
    Plot {
        name: "water_thermal_conductivity",
        title: "Thermal conductivity of liquid water",
        x: temperature(-20.0, 110.0),
        y: Axis::new("Thermal conductivity", "W/(m K)", 0.48, 0.7, 0.05),
        curves: vec![formula.curve("", &[0.0], 0, -20.0, 110.0)],
        marks: by_temperature(formula),
        below: Below::Percent(vec![step(110.0, 1.5)]),
        accuracy: formula.relation().accuracy,
        note: "",
    }
}
