use sugaring::{
    air::{FROM_ALTIMETER_SETTING, StationPressure},
    units::{in_hg, kpa, metre},
};

use super::rows::altitude;
use crate::{
    axis::Axis,
    formula::{Formula, curve, marks},
    plot::{Below, Plot, step},
};

pub(super) fn plots() -> Vec<Plot> {
    vec![standard_atmosphere(), station_pressure()]
}

fn standard_atmosphere() -> Plot {
    let formula = Formula::of("air::pressure_at_altitude");
    Plot {
        name: "standard_atmosphere",
        title: "Pressure of the standard atmosphere",
        x: Axis::new("Altitude", "m", -500.0, 11_000.0, 2000.0),
        y: Axis::new("Pressure", "kPa", 20.0, 110.0, 20.0),
        curves: vec![formula.curve("", &[0.0], 0, -500.0, 11_000.0)],
        marks: marks(formula.relation(), altitude),
        below: Below::Difference("kPa", Vec::new()),
        accuracy: formula.relation().accuracy,
        note: "The weather moves the real pressure by 2 kPa to either side, more than the whole lower part shows.",
    }
}

/// What a report means in the house.
fn station_pressure() -> Plot {
    let reported = |inches: f64| {
        curve(&format!("{inches:.1} inHg"), 0.0, 1500.0, |altitude| {
            let station = StationPressure::from_altimeter_setting(in_hg(inches), metre(altitude)).ok()?;
            Some(station.pressure().get::<kpa>())
        })
    };
    Plot {
        name: "station_pressure",
        title: "Pressure in the sugarhouse behind an airport's report",
        x: Axis::new("Altitude", "m", 0.0, 1500.0, 250.0),
        y: Axis::new("Station pressure", "kPa", 78.0, 106.0, 4.0),
        curves: [30.9, 29.9, 28.9].map(reported).into(),
        marks: marks(&FROM_ALTIMETER_SETTING, altitude),
        below: Below::Difference("kPa", vec![step(1500.0, 0.1)]),
        accuracy: FROM_ALTIMETER_SETTING.accuracy,
        note: "The rows are reports of 100 to 103 kPa.",
    }
}
