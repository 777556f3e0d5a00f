//! What a day starts from: air, sap, instruments.

use crate::{
    day::{
        data::read::keys::{given, needed, number, optional, text},
        inputs::{
            Air, CheckPoint, Compensated, Hydrometer, HydrometerScale, Instrument, Refractometer, Sap, SapReading, Span,
        },
    },
    error::Error,
    form::{Node, Tree},
};
use alloc::string::ToString;

pub(crate) fn air(node: &Node<'_>) -> Result<Air, Error> {
    node.keys(
        &[
            "water_boils_at",
            "station_pressure",
            "altimeter_setting",
            "sea_level_pressure",
            "altitude",
            "air_temperature",
        ],
        &[],
    )?;
    Ok(Air {
        water_boils_at: given(node, "water_boils_at")?,
        station_pressure: given(node, "station_pressure")?,
        altimeter_setting: given(node, "altimeter_setting")?,
        sea_level_pressure: given(node, "sea_level_pressure")?,
        altitude: given(node, "altitude")?,
        air_temperature: given(node, "air_temperature")?,
        typed: None,
    })
}

pub(crate) fn sap(node: &Node<'_>) -> Result<Sap, Error> {
    node.keys(
        &["name", "volume", "mass", "brix", "reading", "temperature"],
        &["ice", "owner"],
    )?;
    Ok(Sap {
        name: text(node, "name")?,
        volume: given(node, "volume")?,
        mass: given(node, "mass")?,
        brix: given(node, "brix")?,
        reading: optional(node, "reading", |reading| {
            reading.keys(&["value", "instrument", "temperature"], &[])?;
            Ok(SapReading {
                value: reading.required("value")?.number()?,
                instrument: reading.required("instrument")?.text(80)?.to_string(),
                temperature: given(reading, "temperature")?,
            })
        })?,
        temperature: given(node, "temperature")?,
    })
}

pub(crate) fn instrument(node: &Node<'_>) -> Result<Instrument, Error> {
    let (name, inner) = node.one_of(&["hydrometer", "refractometer"], &["thermometer", "barometer"])?;
    if name == "hydrometer" {
        inner.keys(
            &[
                "scale",
                "calibrated_at",
                "glass_expansion",
                "offset",
                "two_point",
                "span",
                "resolution",
                "uncertainty",
            ],
            &[],
        )?;
        let names = HydrometerScale::NAMES.map(|(name, _)| name);
        let scale = inner.required("scale")?.choice(&names, &[])?;
        return Ok(Instrument::Hydrometer(Hydrometer {
            scale: HydrometerScale::named(scale),
            calibrated_at: needed(&inner, "calibrated_at")?,
            glass_expansion: given(&inner, "glass_expansion")?,
            offset: number(&inner, "offset")?,
            two_point: optional(&inner, "two_point", two_point)?,
            span: optional(&inner, "span", |span| {
                span.keys(&["low", "high"], &[])?;
                Ok(Span {
                    low: span.required("low")?.number()?,
                    high: span.required("high")?.number()?,
                })
            })?,
            resolution: number(&inner, "resolution")?,
            uncertainty: number(&inner, "uncertainty")?,
        }));
    }
    inner.keys(
        &[
            "compensated",
            "uncompensated",
            "zero",
            "set_to_zero_at",
            "two_point",
            "resolution",
            "uncertainty",
        ],
        &[],
    )?;
    Ok(Instrument::Refractometer(Refractometer {
        compensated: optional(&inner, "compensated", |range| {
            range.keys(&["low", "high"], &[])?;
            Ok(Compensated {
                low: needed(range, "low")?,
                high: needed(range, "high")?,
            })
        })?,
        uncompensated: optional(&inner, "uncompensated", |flag| match flag.tree() {
            Tree::Bool(flag) => Ok(*flag),
            _ => Err(flag.unreadable("true")),
        })?,
        zero: number(&inner, "zero")?,
        set_to_zero_at: given(&inner, "set_to_zero_at")?,
        two_point: optional(&inner, "two_point", two_point)?,
        resolution: number(&inner, "resolution")?,
        uncertainty: number(&inner, "uncertainty")?,
    }))
}

fn two_point(node: &Node<'_>) -> Result<[CheckPoint; 2], Error> {
    let point = |node: &Node<'_>| {
        node.keys(&["shown", "expected"], &[])?;
        Ok(CheckPoint {
            shown: node.required("shown")?.number()?,
            expected: node.required("expected")?.number()?,
        })
    };
    match node.list()?.as_slice() {
        [low, high] => Ok([point(low)?, point(high)?]),
        _ => Err(node.unreadable("a list of two points")),
    }
}
