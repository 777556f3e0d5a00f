use super::rows::altitude;
use crate::{
    axis::Axis,
    formula::{Formula, marks},
    plot::{Below, Plot, step},
};

pub(super) fn plots() -> Vec<Plot> {
    vec![standard_atmosphere(), altimeter_setting()]
}

fn standard_atmosphere() -> Plot {
    let formula = Formula::of("air::pressure_at_altitude");
    let rows = marks("atmosphere_pressure", |row| {
        let x = altitude(row);
        let standard = row.text("quantity").starts_with("pressure");
        standard.then_some((x, row.number("value"), formula.at(&[x])?))
    });
    Plot {
        name: "standard_atmosphere",
        title: "Pressure of the standard atmosphere",
        x: Axis::new("Altitude", "m", -500.0, 11_000.0, 2000.0),
        y: Axis::new("Pressure", "kPa", 20.0, 110.0, 20.0),
        curves: vec![formula.curve("", &[0.0], 0, -500.0, 11_000.0)],
        marks: rows,
        below: Below::Difference("kPa", Vec::new()),
        accuracy: formula.relation().accuracy,
        note: "The weather moves the real pressure by 2 kPa to either side, more than the whole lower part shows.",
    }
}

fn altimeter_setting() -> Plot {
    let formula = Formula::of("air::altimeter_setting");
    let at = |metres: f64| formula.curve(&format!("{metres} m"), &[0.0, metres], 0, 80.0, 106.0);
    let rows = marks("atmosphere_pressure", |row| {
        let station = (row.text("quantity") == "station_from_altimeter").then(|| row.number("value"))?;
        Some((
            station,
            row.number("reported_kpa"),
            formula.at(&[station, altitude(row)])?,
        ))
    });
    Plot {
        name: "altimeter_setting",
        title: "What an airport reports where the barometer shows this",
        x: Axis::new("Station pressure", "kPa", 80.0, 106.0, 5.0),
        y: Axis::new("Altimeter setting", "kPa", 80.0, 130.0, 10.0),
        curves: [1000.0, 500.0, 0.0].map(at).into(),
        marks: rows,
        below: Below::Difference("kPa", vec![step(106.0, 0.1)]),
        accuracy: formula.relation().accuracy,
        note: "",
    }
}
