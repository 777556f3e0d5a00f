//! The rig.
use crate::{
    day::{
        data::read::keys::{each, given, needed, optional, whole},
        inputs::{Element, Membrane, Polarisation, Pump, PumpPoint, Run, TemperatureModel, Until, Warming},
    },
    error::Error,
    form::{Node, Tree},
};

pub(crate) fn membrane(node: &Node<'_>) -> Result<Membrane, Error> {
    node.keys(
        &[
            "element",
            "parallel",
            "series",
            "pressure",
            "pressure_limit",
            "pump",
            "temperature_model",
            "polarisation",
            "film_factor",
            "retention",
            "element_drop",
            "prefilter_drop",
            "back_pressure",
            "hold_up",
            "rinse",
            "warming",
            "run",
        ],
        &["readings"],
    )?;
    Ok(Membrane {
        element: element(&node.required("element")?)?,
        parallel: whole(node, "parallel", 1, 64)?,
        series: whole(node, "series", 1, 8)?,
        pressure: needed(node, "pressure")?,
        pressure_limit: given(node, "pressure_limit")?,
        pump: optional(node, "pump", |pump| {
            pump.keys(&["flow", "points", "efficiency", "power"], &[])?;
            pump.either(&["flow", "points"])?;
            pump.either(&["efficiency", "power"])?;
            Ok(Pump {
                flow: given(pump, "flow")?,
                points: each(pump.get("points")?, |point| {
                    point.keys(&["pressure", "flow", "power"], &[])?;
                    Ok(PumpPoint {
                        pressure: needed(point, "pressure")?,
                        flow: needed(point, "flow")?,
                        power: given(point, "power")?,
                    })
                })?,
                efficiency: given(pump, "efficiency")?,
                power: given(pump, "power")?,
            })
        })?,
        temperature_model: optional(node, "temperature_model", temperature_model)?,
        polarisation: optional(node, "polarisation", polarisation)?,
        film_factor: given(node, "film_factor")?,
        retention: given(node, "retention")?,
        element_drop: given(node, "element_drop")?,
        prefilter_drop: given(node, "prefilter_drop")?,
        back_pressure: given(node, "back_pressure")?,
        hold_up: given(node, "hold_up")?,
        rinse: given(node, "rinse")?,
        warming: optional(node, "warming", |warming| {
            Ok(match warming.choice(&["isothermal", "coupled"], &[])? {
                "coupled" => Warming::Coupled,
                _ => Warming::Isothermal,
            })
        })?,
        run: run(&node.required("run")?)?,
    })
}

pub(crate) fn element(node: &Node<'_>) -> Result<Element, Error> {
    node.keys(
        &[
            "flow",
            "pressure",
            "temperature",
            "salt",
            "recovery",
            "rejection",
            "permeance",
        ],
        &[],
    )?;
    Ok(Element {
        flow: needed(node, "flow")?,
        pressure: needed(node, "pressure")?,
        temperature: needed(node, "temperature")?,
        salt: needed(node, "salt")?,
        recovery: needed(node, "recovery")?,
        rejection: needed(node, "rejection")?,
        permeance: given(node, "permeance")?,
    })
}

pub(crate) fn temperature_model(node: &Node<'_>) -> Result<TemperatureModel, Error> {
    if let Tree::Map(_) = node.tree() {
        let (_, k) = node.one_of(&["single"], &[])?;
        return Ok(TemperatureModel::Single(k.number()?));
    }
    Ok(match node.choice(&["makers", "viscosity", "per_degree"], &[])? {
        "viscosity" => TemperatureModel::Viscosity,
        "per_degree" => TemperatureModel::PerDegree,
        _ => TemperatureModel::Makers,
    })
}

pub(crate) fn polarisation(node: &Node<'_>) -> Result<Polarisation, Error> {
    if let Tree::Map(_) = node.tree() {
        let (name, number) = node.one_of(&["modulus", "coefficient"], &[])?;
        let number = number.number()?;
        return Ok(match name {
            "modulus" => Polarisation::Modulus(number),
            _ => Polarisation::Coefficient(number),
        });
    }
    Ok(match node.choice(&["rating_anchored", "none"], &[])? {
        "none" => Polarisation::None,
        _ => Polarisation::RatingAnchored,
    })
}

pub(crate) fn run(node: &Node<'_>) -> Result<Run, Error> {
    let (name, inner) = node.one_of(&["recirculate_until", "single_pass"], &[])?;
    if name == "single_pass" {
        inner.keys(&["recovery"], &["times"])?;
        return Ok(Run::SinglePass {
            recovery: needed(&inner, "recovery")?,
        });
    }
    let (name, aim) = inner.one_of(&["brix", "volume", "recovery", "duration"], &[])?;
    Ok(Run::RecirculateUntil(match name {
        "brix" => Until::Brix(aim.quantity()?),
        "volume" => Until::Volume(aim.quantity()?),
        "recovery" => Until::Recovery(aim.quantity()?),
        _ => Until::Duration(aim.quantity()?),
    }))
}
