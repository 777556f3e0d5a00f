//! The instruments.

use super::{given::Given, table::Answer};
use crate::{
    error::Error,
    form::Tree,
    instrument::{Barometer, Check, Hydrometer, Refractometer, Thermometer, line_of_data, reading},
    units::{Brix, Measured, Pressure, Quantity, Temperature, TemperatureDifference, table},
};

pub(super) const ANSWERS: &[Answer] = &[
    ("Hydrometer.brix", |given| {
        marked(given, Hydrometer::brix(given.value("calibrated_at")?)?)
    }),
    ("Hydrometer.on_scale", |given| {
        marked(
            given,
            Hydrometer::on_scale_named(given.text("scale")?, given.value("calibrated_at")?)?,
        )
    }),
    ("Hydrometer.density", |given| {
        marked(given, Hydrometer::density(given.value("calibrated_at")?)?)
    }),
    ("Hydrometer.of_data", |given| {
        Ok(Hydrometer::read(&given.node("data")?)?.to_tree())
    }),
    ("Hydrometer.zeroed", |given| {
        let (shown, brix) = (reading(given.number("reading")?), given.value("brix")?);
        let zeroed = hydrometer(given)?.zeroed(shown, brix, given.value("temperature")?)?;
        Ok(zeroed.to_tree())
    }),
    ("Hydrometer.two_point", |given| {
        Ok(hydrometer(given)?
            .two_point(check(given, "low")?, check(given, "high")?)?
            .to_tree())
    }),
    ("Hydrometer.truth", |given| {
        let shown = reading(given.number("reading")?);
        Ok(of_brix(hydrometer(given)?.truth(shown, given.value("temperature")?)?))
    }),
    ("Hydrometer.reading", |given| {
        let shown = hydrometer(given)?.reading(given.value("brix")?, given.value("temperature")?)?;
        Ok(Tree::Number(shown.get()))
    }),
    ("Refractometer.compensated", |given| {
        polished(
            given,
            Refractometer::compensated(given.value("low")?, given.value("high")?)?,
        )
    }),
    ("Refractometer.uncompensated", |given| {
        polished(given, Refractometer::uncompensated())
    }),
    ("Refractometer.of_data", |given| {
        Ok(Refractometer::read(&given.node("data")?)?.to_tree())
    }),
    ("Refractometer.zeroed_in_water", |given| {
        let shown = reading(given.number("reading")?);
        Ok(refractometer(given)?
            .zeroed_in_water(shown, given.value("prism")?)?
            .to_tree())
    }),
    ("Refractometer.set_to_zero_at", |given| {
        Ok(refractometer(given)?.set_to_zero_at(given.value("prism")?)?.to_tree())
    }),
    ("Refractometer.two_point", |given| {
        Ok(refractometer(given)?
            .two_point(check(given, "low")?, check(given, "high")?)?
            .to_tree())
    }),
    ("Refractometer.truth", |given| {
        let shown = reading(given.number("reading")?);
        Ok(of_brix(refractometer(given)?.truth(shown, given.value("prism")?)?))
    }),
    ("Refractometer.reading", |given| {
        let shown = refractometer(given)?.reading(given.value("brix")?, given.value("prism")?)?;
        Ok(Tree::Number(shown.get()))
    }),
    ("Thermometer.plain", |given| {
        let mut made = Thermometer::plain();
        if let Some(offset) = given.optional("offset")? {
            made = made.with_offset(offset)?;
        }
        graduated(given, made)
    }),
    ("Thermometer.zeroed_in_boiling_water", |given| {
        graduated(
            given,
            Thermometer::zeroed_in_boiling_water(given.value("reading")?, given.station("station")?)?,
        )
    }),
    ("Thermometer.two_point", |given| {
        let (ice, boiling) = (given.value("ice")?, given.value("boiling")?);
        graduated(given, Thermometer::two_point(ice, boiling, given.station("station")?)?)
    }),
    ("Thermometer.line", |given| {
        graduated(given, Thermometer::line(&line_of_data(&given.node("line")?)?)?)
    }),
    ("Thermometer.of_data", |given| {
        Ok(Thermometer::read(&given.node("data")?)?.to_tree())
    }),
    ("Thermometer.truth", |given| {
        Ok(of_temperature(thermometer(given)?.truth(given.value("reading")?)?))
    }),
    ("Thermometer.reading", |given| {
        Ok(celsius(thermometer(given)?.reading(given.value("temperature")?)?))
    }),
    ("Barometer.station", |given| hung(given, Barometer::station())),
    ("Barometer.set_to_sea_level", |given| {
        hung(given, Barometer::set_to_sea_level(given.value("altitude")?)?)
    }),
    ("Barometer.of_data", |given| {
        Ok(Barometer::read(&given.node("data")?)?.to_tree())
    }),
    ("Barometer.zeroed", |given| {
        let zeroed = barometer(given)?.zeroed(given.value("reading")?, given.station("station")?)?;
        Ok(zeroed.to_tree())
    }),
    ("Barometer.truth", |given| {
        Ok(super::given::of_station(
            barometer(given)?.truth(given.value("reading")?)?,
        ))
    }),
    ("Barometer.reading", |given| {
        let shown: Pressure = barometer(given)?.reading(given.station("station")?)?;
        Ok(Tree::Quantity(Quantity::of(shown, &table::kpa)))
    }),
];

/// A hydrometer with what else is said of it.
fn marked(given: Given<'_>, mut made: Hydrometer) -> Result<Tree, Error> {
    if let Some(expansion) = given.optional("glass_expansion")? {
        made = made.with_glass_expansion(expansion)?;
    }
    if let Some(offset) = given.optional_number("offset")? {
        made = made.with_offset(offset)?;
    }
    if let Some(step) = given.optional_number("resolution")? {
        made = made.with_resolution(step)?;
    }
    if let Some(uncertainty) = given.optional_number("uncertainty")? {
        made = made.with_uncertainty(uncertainty)?;
    }
    if let Some(span) = given.optional_node("span") {
        span.keys(&["low", "high"], &[])?;
        let (low, high) = (span.required("low")?.number()?, span.required("high")?.number()?);
        made = made.with_span(low, high).map_err(|error| error.within("span"))?;
    }
    Ok(made.to_tree())
}

/// A refractometer with what else is said of it.
fn polished(given: Given<'_>, mut made: Refractometer) -> Result<Tree, Error> {
    if let Some(zero) = given.optional_number("zero")? {
        made = made.with_zero(zero)?;
    }
    if let Some(step) = given.optional_number("resolution")? {
        made = made.with_resolution(step)?;
    }
    if let Some(uncertainty) = given.optional_number("uncertainty")? {
        made = made.with_uncertainty(uncertainty)?;
    }
    Ok(made.to_tree())
}

/// A thermometer with what else is said of it.
fn graduated(given: Given<'_>, mut made: Thermometer) -> Result<Tree, Error> {
    if let Some(stem) = given.optional_node("emergent_stem") {
        stem.keys(&["outside", "temperature", "expansion"], &[])?;
        let within = |error: Error| error.within("emergent_stem");
        let outside = stem.required("outside")?.quantity()?.value;
        let column = stem.required("temperature")?.quantity()?.value;
        made = made.with_emergent_stem(outside, column).map_err(within)?;
        if let Some(expansion) = stem.get("expansion")? {
            made = made.with_stem_expansion(expansion.quantity()?.value).map_err(within)?;
        }
    }
    if let Some(step) = given.optional("resolution")? {
        made = made.with_resolution(step)?;
    }
    if let Some(uncertainty) = given.optional("uncertainty")? {
        made = made.with_uncertainty(uncertainty)?;
    }
    Ok(made.to_tree())
}

/// A barometer with what else is said of it.
fn hung(given: Given<'_>, mut made: Barometer) -> Result<Tree, Error> {
    if let Some(offset) = given.optional("offset")? {
        made = made.with_offset(offset)?;
    }
    if let Some(step) = given.optional("resolution")? {
        made = made.with_resolution(step)?;
    }
    if let Some(uncertainty) = given.optional("uncertainty")? {
        made = made.with_uncertainty(uncertainty)?;
    }
    Ok(made.to_tree())
}

fn hydrometer(given: Given<'_>) -> Result<Hydrometer, Error> {
    Hydrometer::read(&given.node("instrument")?)
}

fn refractometer(given: Given<'_>) -> Result<Refractometer, Error> {
    Refractometer::read(&given.node("instrument")?)
}

fn thermometer(given: Given<'_>) -> Result<Thermometer, Error> {
    Thermometer::read(&given.node("instrument")?)
}

fn barometer(given: Given<'_>) -> Result<Barometer, Error> {
    Barometer::read(&given.node("instrument")?)
}

/// A check as data: `{"reading", "brix", "temperature"}`.
fn check(given: Given<'_>, name: &'static str) -> Result<Check, Error> {
    let node = given.node(name)?;
    node.keys(&["reading", "brix", "temperature"], &[])?;
    Ok(Check {
        reading: reading(node.required("reading")?.number()?),
        brix: node.required("brix")?.quantity()?.value,
        temperature: node.required("temperature")?.quantity()?.value,
    })
}

fn of_brix(measured: Measured<Brix>) -> Tree {
    Tree::map([
        ("value", Tree::Number(measured.value.get())),
        ("uncertainty", Tree::Number(measured.uncertainty)),
    ])
}

fn of_temperature(measured: Measured<Temperature>) -> Tree {
    let uncertainty: TemperatureDifference = measured.uncertainty;
    Tree::map([
        ("value", celsius(measured.value)),
        (
            "uncertainty",
            Tree::Quantity(Quantity::of(uncertainty, &table::delta_c)),
        ),
    ])
}

fn celsius(temperature: Temperature) -> Tree {
    Tree::Quantity(Quantity::of(temperature, &table::deg_c))
}
