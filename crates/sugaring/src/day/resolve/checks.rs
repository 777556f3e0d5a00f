//! Checks that more than one station needs.

use crate::{
    day::{
        inputs::{DayInputs, Polarisation},
        resolve::limits as range,
    },
    digits::significant,
    error::{Error, ErrorKind},
    fuel,
    relation::Range,
    units::{GaugePressure, Given, Price, Value, table},
};
use alloc::format;

/// The user's own standard uncertainty, if it is a number that can be one: no wider than the range itself.
pub(crate) fn uncertainty<T: Value>(given: &Given<T>, range: &Range) -> Result<Option<f64>, Error> {
    let Some(own) = given.uncertainty else {
        return Ok(None);
    };
    let (low, high) = range.limits_si();
    if own >= 0.0 && own <= high - low {
        return Ok(Some(own));
    }
    let step = range.unit.factor();
    let error = if own.is_finite() {
        let finding = format!(
            " = {} is outside 0 to {}",
            significant(own / step, 6),
            significant((high - low) / step, 6)
        );
        Error::new(ErrorKind::OutOfRange, "uncertainty", finding)
    } else {
        Error::not_finite("uncertainty", own)
    };
    Err(error.within(range.argument))
}

/// A value that the ranges do not draw may not pretend to scatter.
pub(crate) fn exact<T: Value>(given: &Given<T>, argument: &'static str) -> Result<(), Error> {
    match given.uncertainty {
        Some(u) => Err(Error::new(
            ErrorKind::Inconsistent,
            "uncertainty",
            format!(" = {} is not drawn", significant(u, 6)),
        )
        .with_hint("leave it out here")
        .within(argument)),
        None => Ok(()),
    }
}

pub(crate) fn heading(inputs: &DayInputs) -> Result<(), Error> {
    if inputs.schema_version != crate::day::SCHEMA_VERSION {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "schema_version",
            format!(" = {} is outside 1 to 1", inputs.schema_version),
        )
        .with_hint("this version reads version 1"));
    }
    if let Some(title) = &inputs.title {
        if title.chars().count() > 80 || title.chars().any(char::is_control) {
            return Err(Error::new(ErrorKind::Unreadable, "title", " cannot be printed")
                .with_hint("at most 80 characters on one line"));
        }
    }
    if let Some(start) = &inputs.start {
        if crate::day::data::start_minutes(start).is_none() {
            return Err(
                Error::new(ErrorKind::Unreadable, "start", format!(" = \"{start}\" cannot be read"))
                    .with_hint("write it as 2027-03-14T07:00"),
            );
        }
    }
    if inputs.samples.is_some_and(|n| n > range::MOST_SAMPLES) {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "samples",
            format!(" = {} is outside 0 to 1000000", inputs.samples.unwrap_or(0)),
        ));
    }
    Ok(())
}

pub(crate) fn count(given: Option<u32>, argument: &'static str, most: u32) -> Result<u32, Error> {
    match given {
        None => Ok(1),
        Some(n) if (1..=most).contains(&n) => Ok(n),
        Some(n) => Err(Error::new(
            ErrorKind::OutOfRange,
            argument,
            format!(" = {n} is outside 1 to {most}"),
        )),
    }
}

pub(crate) fn polarisation_in_range(polarisation: Polarisation) -> Result<(), Error> {
    static MODULUS: Range = Range::new("polarisation.modulus", &table::fraction, 1.0, 5.0);
    static COEFFICIENT: Range = Range::new("polarisation.coefficient", &table::cubic_metre_per_s, 1e-9, 1.0);
    match polarisation {
        Polarisation::Modulus(x) => MODULUS.check(x).map(drop),
        Polarisation::Coefficient(k) => COEFFICIENT.check(k).map(drop),
        Polarisation::RatingAnchored | Polarisation::None => Ok(()),
    }
}

pub(crate) fn checked_price(price: Option<Price>) -> Result<(), Error> {
    let Some(price) = price else {
        return Ok(());
    };
    if !price.amount.is_finite() {
        return Err(Error::not_finite("amount", price.amount));
    }
    if price.amount < 0.0 {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "amount",
            format!(" = {} is negative", significant(price.amount, 6)),
        ));
    }
    let per = price.per.si();
    if !per.is_finite() {
        return Err(Error::not_finite("per", per));
    }
    if per <= 0.0 {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "per",
            format!(" = {} is not above 0", price.per),
        ));
    }
    Ok(())
}

/// A fuel with its price, which must be per what the fuel is counted in.
pub(crate) fn priced(fuel: fuel::Fuel, price: Option<Price>) -> Result<fuel::Fuel, Error> {
    match price {
        Some(price) => fuel.with_price(price),
        None => Ok(fuel),
    }
}

pub(crate) fn price_of_what(argument: &'static str, example: &str) -> Error {
    Error::new(ErrorKind::WrongDimension, argument, " is per something else")
        .with_hint(format!("write it as {example}"))
}

/// The gauge pressure of a slot.
pub(crate) fn gauge(si: f64) -> GaugePressure {
    crate::units::pa_gauge(si)
}
