use alloc::{vec, vec::Vec};

use crate::{
    error::Error,
    form::{Node, Tree},
    instrument::{Hydrometer, Reading, Refractometer, Thermometer, reading},
    units::{Brix, Measured, Si, Temperature, Uncertain, Value},
};

/// What a `truth` or a `reading` of an instrument answers to columns in SI: one column of values, and for a truth one of
/// their uncertainties.
///
/// Each lane has the bits of [`ask`](super::ask); what that refuses is NaN. Columns shorter than the first, or of another
/// number than the arguments, are refused as a whole.
///
/// # Errors
/// Those of the instrument's data; unknown name, where no instrument answers so.
pub fn ask_lanes(name: &str, instrument: &Tree, columns: &[&[f64]]) -> Result<Vec<Vec<f64>>, Error> {
    let node = Node::argument(instrument, "instrument");
    match name {
        "Hydrometer.truth" => {
            let made = Hydrometer::read(&node)?;
            Ok(truths(columns, |[shown, kelvin]| {
                made.truth(reading(shown), warm(kelvin))
            }))
        }
        "Hydrometer.reading" => {
            let made = Hydrometer::read(&node)?;
            Ok(readings(columns, |[brix, kelvin]| {
                made.reading(strength(brix)?, warm(kelvin)).map(Reading::get)
            }))
        }
        "Refractometer.truth" => {
            let made = Refractometer::read(&node)?;
            Ok(truths(columns, |[shown, kelvin]| {
                made.truth(reading(shown), warm(kelvin))
            }))
        }
        "Refractometer.reading" => {
            let made = Refractometer::read(&node)?;
            Ok(readings(columns, |[brix, kelvin]| {
                made.reading(strength(brix)?, warm(kelvin)).map(Reading::get)
            }))
        }
        "Thermometer.truth" => {
            let made = Thermometer::read(&node)?;
            Ok(truths(columns, |[kelvin]| made.truth(warm(kelvin))))
        }
        "Thermometer.reading" => {
            let made = Thermometer::read(&node)?;
            Ok(readings(columns, |[kelvin]| made.reading(warm(kelvin)).map(Value::si)))
        }
        _ => Err(Error::unknown_name("name", name, NAMES)),
    }
}

const NAMES: [&str; 6] = [
    "Hydrometer.truth",
    "Hydrometer.reading",
    "Refractometer.truth",
    "Refractometer.reading",
    "Thermometer.truth",
    "Thermometer.reading",
];

fn warm(kelvin: f64) -> Temperature {
    Temperature::of_si(kelvin)
}

fn strength(brix: f64) -> Result<Brix, Error> {
    Brix::from_si(brix)
}

fn truths<T: Uncertain, const N: usize>(
    columns: &[&[f64]],
    truth: impl Fn([f64; N]) -> Result<Measured<T>, Error>,
) -> Vec<Vec<f64>> {
    let answers = lanes(columns).map(|lane| match lane.map(&truth) {
        Some(Ok(found)) => (found.value.si(), T::difference_si(found.uncertainty)),
        _ => (f64::NAN, f64::NAN),
    });
    let (values, uncertainties) = answers.unzip();
    vec![values, uncertainties]
}

fn readings<const N: usize>(columns: &[&[f64]], reading: impl Fn([f64; N]) -> Result<f64, Error>) -> Vec<Vec<f64>> {
    let answers = lanes(columns).map(|lane| match lane.map(&reading) {
        Some(Ok(found)) => found,
        _ => f64::NAN,
    });
    vec![answers.collect()]
}

/// The lanes, one after the other; `None` where a column is missing or ends.
fn lanes<'a, const N: usize>(columns: &'a [&[f64]]) -> impl Iterator<Item = Option<[f64; N]>> + 'a {
    let length = columns.first().map_or(0, |column| column.len());
    (0..length).map(move |lane| {
        let mut found = [f64::NAN; N];
        if columns.len() != N {
            return None;
        }
        for (place, column) in found.iter_mut().zip(columns) {
            *place = *column.get(lane)?;
        }
        Some(found)
    })
}
