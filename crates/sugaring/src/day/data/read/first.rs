//! What a day starts from: air, sap, instruments.

use crate::{
    day::{
        data::read::keys::{given, needed, number, optional, text},
        inputs::{Air, Compensated, Hydrometer, HydrometerScale, Instrument, Refractometer, Sap, SapReading},
    },
    error::Error,
    form::Node,
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
                "resolution",
                "uncertainty",
            ],
            &[],
        )?;
        inner
            .required("scale")?
            .choice(&["brix"], &["baume", "relative_density"])?;
        return Ok(Instrument::Hydrometer(Hydrometer {
            scale: HydrometerScale::Brix,
            calibrated_at: needed(&inner, "calibrated_at")?,
            glass_expansion: given(&inner, "glass_expansion")?,
            offset: number(&inner, "offset")?,
            resolution: number(&inner, "resolution")?,
            uncertainty: number(&inner, "uncertainty")?,
        }));
    }
    inner.keys(
        &["compensated", "zero", "resolution", "uncertainty"],
        &["uncompensated", "two_point"],
    )?;
    let range = inner.required("compensated")?;
    range.keys(&["low", "high"], &[])?;
    Ok(Instrument::Refractometer(Refractometer {
        compensated: Compensated {
            low: needed(&range, "low")?,
            high: needed(&range, "high")?,
        },
        zero: number(&inner, "zero")?,
        resolution: number(&inner, "resolution")?,
        uncertainty: number(&inner, "uncertainty")?,
    }))
}
