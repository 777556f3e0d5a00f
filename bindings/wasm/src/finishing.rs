//! Where syrup is done.

use sugaring::{
    air::StationPressure,
    finish,
    units::{Value, pa},
};
use wasm_bindgen::prelude::wasm_bindgen;

use crate::refusal::keep;

/// Temperature, elevation, boiling point of water and uncertainty, K, from °Bx, the station pressure and its
/// uncertainty in Pa, and the rise of what is not sucrose in K.
#[wasm_bindgen]
pub fn finishing_point(target: f64, pascal: f64, uncertainty: f64, rise: f64) -> Option<Vec<f64>> {
    let found = || {
        let station = StationPressure::measured(pa(pascal))?.with_uncertainty(pa(uncertainty));
        let target = Value::from_si(target).map_err(|error: sugaring::Error| error.named("target"))?;
        finish::finishing_point(target, station, Some(Value::from_si(rise)?))
    };
    keep(found()).map(|found| {
        [
            found.temperature.si(),
            found.elevation.si(),
            found.water_boils_at.si(),
            found.uncertainty.si(),
        ]
        .to_vec()
    })
}
