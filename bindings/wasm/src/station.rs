//! Station pressures by how they were come by.

use sugaring::{
    Error,
    air::{Origin, StationPressure},
    units::Value,
};
use wasm_bindgen::prelude::wasm_bindgen;

use crate::refusal::keep;

/// The pressure and its standard uncertainty, Pa, from the arguments of the constructor `origin`, in SI and in order.
#[wasm_bindgen]
pub fn station(origin: &str, a: f64, b: f64, c: f64) -> Option<Vec<f64>> {
    let made = made(origin, a, b, c);
    keep(made).map(|station| vec![station.pressure().si(), station.uncertainty().si()])
}

/// The same of a station pressure that was plain data: `pascal`, come by as `origin`, which errors name `argument`.
#[wasm_bindgen]
pub fn station_again(argument: &str, origin: &str, pascal: f64) -> Option<Vec<f64>> {
    let again = || {
        let origin = Origin::named(origin)
            .ok_or_else(|| Error::unknown_name(argument.to_owned(), origin, Origin::ALL.map(Origin::name)))?;
        Ok(StationPressure::measured(taken(pascal)?)?.with_origin(origin))
    };
    keep(again()).map(|station| vec![station.pressure().si(), station.uncertainty().si()])
}

fn made(origin: &str, a: f64, b: f64, c: f64) -> Result<StationPressure, Error> {
    match origin {
        "measured" => StationPressure::measured(taken(a)?),
        "altimeter_setting" => StationPressure::from_altimeter_setting(taken(a)?, taken(b)?),
        "sea_level" => StationPressure::from_sea_level(taken(a)?, taken(b)?, taken(c)?),
        "altitude" => StationPressure::from_altitude(taken(a)?),
        "boiling_water" => StationPressure::from_boiling_water(taken(a)?),
        other => Err(Error::unknown_name("origin", other, Origin::ALL.map(Origin::name))),
    }
}

fn taken<T: Value>(si: f64) -> Result<T, Error> {
    T::from_si(si)
}
