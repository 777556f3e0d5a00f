//! Inputs from data: one builder walks the tree with the path in hand, whatever language or file it came from.

use crate::{
    day::inputs::{
        Air, Compensated, Container, DayInputs, Efficiency, Element, Evaporator, Finishing, Fuel, Heat, Hydrometer,
        HydrometerScale, Instrument, LeftInPan, Membrane, Moisture, Pan, PanKind, PanRun, Polarisation, Pump,
        PumpPoint, Refractometer, Run, Sap, SapReading, Target, TemperatureModel, Until, Warming, Wood,
    },
    error::Error,
    form::{Node, Tree},
    units::{Given, Price, Value},
};
use alloc::{
    string::{String, ToString},
    vec::Vec,
};

impl DayInputs {
    /// The inputs of a tree of keys and values.
    ///
    /// # Errors
    /// An unknown, missing or unreadable key, with its path. Ranges are checked by [`plan`](crate::day::plan).
    pub fn from_tree(tree: &Tree) -> Result<Self, Error> {
        let day = Node::top(tree);
        day.keys(
            &[
                "schema_version",
                "title",
                "start",
                "seed",
                "samples",
                "air",
                "sap",
                "membrane",
                "evaporator",
                "finishing",
                "target",
                "instruments",
                "containers",
                "fill_temperature",
                "electricity",
                "labour",
            ],
            &["blend", "arrangement"],
        )?;
        Ok(Self {
            schema_version: match whole(&day, "schema_version", 1, 1)? {
                Some(version) => version,
                None => crate::day::SCHEMA_VERSION,
            },
            title: text(&day, "title")?,
            start: text(&day, "start")?,
            seed: match day.get("seed")? {
                Some(seed) => Some(read_seed(&seed)?),
                None => None,
            },
            samples: whole(&day, "samples", 0, crate::day::resolve::MOST_SAMPLES)?,
            air: air(&day.required("air")?)?,
            sap: each(Some(day.required("sap")?), sap)?,
            membrane: optional(&day, "membrane", membrane)?,
            evaporator: evaporator(&day.required("evaporator")?)?,
            finishing: optional(&day, "finishing", finishing)?,
            target: target(&day.required("target")?)?,
            instruments: match day.get("instruments")? {
                Some(named) => {
                    let mut list = Vec::new();
                    for (name, node) in named.entries()? {
                        list.push((name.to_string(), instrument(&node)?));
                    }
                    list
                }
                None => Vec::new(),
            },
            containers: each(day.get("containers")?, container)?,
            fill_temperature: given(&day, "fill_temperature")?,
            electricity: price(&day, "electricity")?,
            labour: price(&day, "labour")?,
        })
    }

    /// The inputs of a JSON text.
    ///
    /// # Errors
    /// Unreadable JSON, with line and column; else as [`DayInputs::from_tree`].
    ///
    /// ```
    /// use sugaring::day::{self, DayInputs};
    /// let inputs = DayInputs::from_json(r#"{
    ///     "air": {"altitude": "410 m"},
    ///     "sap": [{"volume": "265 L", "brix": 1.98, "temperature": "4 °C"}],
    ///     "evaporator": {"pan": {"length": "0.61 m", "width": "1.22 m"}},
    ///     "target": {"brix": 66.9}, "samples": 0}"#)?;
    /// assert_eq!(day::plan(&inputs)?.totals.water_removed.membrane, None);
    ///
    /// let error = DayInputs::from_json(r#"{"air": {"altitude": "410 m"}, "sapp": []}"#).unwrap_err();
    /// assert_eq!(error.to_string(), "inputs has the unknown name \"sapp\"; nearest: sap");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    #[cfg(feature = "json")]
    #[cfg_attr(docsrs, doc(cfg(feature = "json")))]
    pub fn from_json(text: &str) -> Result<Self, Error> {
        Self::from_tree(&Tree::from_json(text)?)
    }
}

fn air(node: &Node<'_>) -> Result<Air, Error> {
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

fn sap(node: &Node<'_>) -> Result<Sap, Error> {
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

fn membrane(node: &Node<'_>) -> Result<Membrane, Error> {
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

fn element(node: &Node<'_>) -> Result<Element, Error> {
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

fn temperature_model(node: &Node<'_>) -> Result<TemperatureModel, Error> {
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

fn polarisation(node: &Node<'_>) -> Result<Polarisation, Error> {
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

fn run(node: &Node<'_>) -> Result<Run, Error> {
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

fn evaporator(node: &Node<'_>) -> Result<Evaporator, Error> {
    node.keys(&["pan", "heat", "left_in_pan", "fuel", "run"], &["preheated_to"])?;
    let pan = node.required("pan")?;
    pan.keys(&["length", "width", "running_depth", "least_depth"], &["sections"])?;
    Ok(Evaporator {
        pan: Pan {
            length: needed(&pan, "length")?,
            width: needed(&pan, "width")?,
            running_depth: given(&pan, "running_depth")?,
            least_depth: given(&pan, "least_depth")?,
            sections: None,
        },
        heat: optional(node, "heat", heat)?,
        left_in_pan: optional(node, "left_in_pan", |left| {
            left.keys(&["volume", "brix", "temperature"], &[])?;
            Ok(LeftInPan {
                volume: needed(left, "volume")?,
                brix: needed(left, "brix")?,
                temperature: needed(left, "temperature")?,
            })
        })?,
        fuel: optional(node, "fuel", fuel)?,
        run: optional(node, "run", |run| {
            run.choice(&["batch"], &["continuous"]).map(|_| PanRun::Batch)
        })?,
    })
}

fn heat(node: &Node<'_>) -> Result<Heat, Error> {
    let (name, inner) = node.one_of(
        &["held_level", "level_drop", "power", "area_rule"],
        &["sap_rate", "fuel_rate"],
    )?;
    Ok(match name {
        "held_level" => {
            inner.keys(&["added", "feed_temperature"], &[])?;
            Heat::HeldLevel {
                added: needed(&inner, "added")?,
                feed_temperature: needed(&inner, "feed_temperature")?,
            }
        }
        "level_drop" => Heat::LevelDrop(inner.quantity()?),
        "power" => Heat::Power(inner.quantity()?),
        _ => Heat::AreaRule(match inner.choice(&["flat", "flat_blower", "flue"], &[])? {
            "flat_blower" => PanKind::FlatBlower,
            "flue" => PanKind::Flue,
            _ => PanKind::Flat,
        }),
    })
}

fn fuel(node: &Node<'_>) -> Result<Fuel, Error> {
    node.keys(&["wood", "named", "efficiency", "price"], &[])?;
    node.either(&["wood", "named"])?;
    Ok(Fuel {
        wood: optional(node, "wood", |wood| {
            wood.keys(&["species", "moisture"], &[])?;
            Ok(Wood {
                species: text(wood, "species")?,
                moisture: optional(wood, "moisture", |moisture| {
                    let (name, share) = moisture.one_of(&["wet_basis", "dry_basis"], &[])?;
                    let share = share.quantity()?;
                    Ok(match name {
                        "dry_basis" => Moisture::DryBasis(share),
                        _ => Moisture::WetBasis(share),
                    })
                })?,
            })
        })?,
        named: text(node, "named")?,
        efficiency: optional(node, "efficiency", |efficiency| {
            let (name, share) = efficiency.one_of(&["of_gross", "of_net"], &[])?;
            let share = share.quantity()?;
            Ok(match name {
                "of_net" => Efficiency::OfNet(share),
                _ => Efficiency::OfGross(share),
            })
        })?,
        price: price(node, "price")?,
    })
}

fn finishing(node: &Node<'_>) -> Result<Finishing, Error> {
    node.keys(&["heat", "capacity", "fuel"], &[])?;
    Ok(Finishing {
        heat: given(node, "heat")?,
        capacity: given(node, "capacity")?,
        fuel: optional(node, "fuel", fuel)?,
    })
}

fn target(node: &Node<'_>) -> Result<Target, Error> {
    node.keys(&["brix", "guard", "non_sucrose_rise", "sugar_lost"], &["jurisdiction"])?;
    Ok(Target {
        brix: needed(node, "brix")?,
        guard: given(node, "guard")?,
        non_sucrose_rise: given(node, "non_sucrose_rise")?,
        sugar_lost: given(node, "sugar_lost")?,
    })
}

fn instrument(node: &Node<'_>) -> Result<Instrument, Error> {
    let (name, inner) = node.one_of(&["hydrometer", "refractometer"], &["thermometer", "barometer"])?;
    if name == "hydrometer" {
        inner.keys(
            &["scale", "calibrated_at", "glass_expansion", "offset", "uncertainty"],
            &["resolution"],
        )?;
        inner
            .required("scale")?
            .choice(&["brix"], &["baume", "relative_density"])?;
        return Ok(Instrument::Hydrometer(Hydrometer {
            scale: HydrometerScale::Brix,
            calibrated_at: needed(&inner, "calibrated_at")?,
            glass_expansion: given(&inner, "glass_expansion")?,
            offset: number(&inner, "offset")?,
            uncertainty: number(&inner, "uncertainty")?,
        }));
    }
    inner.keys(
        &["compensated", "zero", "uncertainty"],
        &["uncompensated", "two_point", "resolution"],
    )?;
    let range = inner.required("compensated")?;
    range.keys(&["low", "high"], &[])?;
    Ok(Instrument::Refractometer(Refractometer {
        compensated: Compensated {
            low: needed(&range, "low")?,
            high: needed(&range, "high")?,
        },
        zero: number(&inner, "zero")?,
        uncertainty: number(&inner, "uncertainty")?,
    }))
}

fn container(node: &Node<'_>) -> Result<Container, Error> {
    node.keys(
        &[
            "name",
            "volume",
            "stock",
            "brimful",
            "material",
            "mass",
            "temperature",
            "price",
        ],
        &[],
    )?;
    Ok(Container {
        name: text(node, "name")?,
        volume: needed(node, "volume")?,
        stock: match whole(node, "stock", 0, 1_000_000)? {
            Some(stock) => stock,
            None => return Err(Error::missing("stock").within(node.path())),
        },
        brimful: given(node, "brimful")?,
        material: text(node, "material")?,
        mass: given(node, "mass")?,
        temperature: given(node, "temperature")?,
        price: price(node, "price")?,
    })
}

fn given<T: Value>(node: &Node<'_>, key: &str) -> Result<Option<Given<T>>, Error> {
    match node.get(key)? {
        Some(node) => node.quantity().map(Some),
        None => Ok(None),
    }
}

fn needed<T: Value>(node: &Node<'_>, key: &str) -> Result<Given<T>, Error> {
    node.required(key)?.quantity()
}

fn optional<'a, T>(
    node: &Node<'a>,
    key: &str,
    read: impl FnOnce(&Node<'a>) -> Result<T, Error>,
) -> Result<Option<T>, Error> {
    match node.get(key)? {
        Some(node) => read(&node).map(Some),
        None => Ok(None),
    }
}

fn each<'a, T>(node: Option<Node<'a>>, read: impl Fn(&Node<'a>) -> Result<T, Error>) -> Result<Vec<T>, Error> {
    match node {
        Some(node) => node.list()?.iter().map(read).collect(),
        None => Ok(Vec::new()),
    }
}

fn text(node: &Node<'_>, key: &str) -> Result<Option<String>, Error> {
    match node.get(key)? {
        Some(node) => Ok(Some(node.text(80)?.to_string())),
        None => Ok(None),
    }
}

fn number(node: &Node<'_>, key: &str) -> Result<Option<f64>, Error> {
    match node.get(key)? {
        Some(node) => node.number().map(Some),
        None => Ok(None),
    }
}

fn whole(node: &Node<'_>, key: &str, low: u32, high: u32) -> Result<Option<u32>, Error> {
    match node.get(key)? {
        Some(node) => {
            let number = node.whole(u64::from(low)..=u64::from(high))?;
            Ok(u32::try_from(number).ok())
        }
        None => Ok(None),
    }
}

/// A seed of 64 bits: a number where a double holds it, else its digits as a text.
fn read_seed(node: &Node<'_>) -> Result<u64, Error> {
    if let Tree::Text(text) = node.tree() {
        if let Ok(seed) = text.parse() {
            return Ok(seed);
        }
    }
    node.whole(0..=u64::MAX)
}

fn price(node: &Node<'_>, key: &str) -> Result<Option<Price>, Error> {
    match node.get(key)? {
        Some(node) => node.price().map(Some),
        None => Ok(None),
    }
}

/// Minutes after midnight of a `YYYY-MM-DDThh:mm`.
pub(crate) fn start_minutes(start: &str) -> Option<f64> {
    let (date, time) = start.split_once('T')?;
    let mut date = date.split('-');
    let (year, month, day) = (date.next()?, date.next()?, date.next()?);
    let (hour, minute) = time.split_once(':')?;
    let digits = |text: &str, count: usize, low: u32, high: u32| -> Option<u32> {
        let plain = text.len() == count && text.bytes().all(|b| b.is_ascii_digit());
        let number = text.parse().ok()?;
        (plain && (low..=high).contains(&number)).then_some(number)
    };
    digits(year, 4, 0, 9999)?;
    let month = digits(month, 2, 1, 12)?;
    let longest = match month {
        2 => 29,
        4 | 6 | 9 | 11 => 30,
        _ => 31,
    };
    digits(day, 2, 1, longest)?;
    if date.next().is_some() {
        return None;
    }
    let (hour, minute) = (digits(hour, 2, 0, 23)?, digits(minute, 2, 0, 59)?);
    Some(f64::from(60 * hour + minute))
}

#[cfg(feature = "serde")]
impl<'de> serde::Deserialize<'de> for DayInputs {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let tree = Tree::deserialize(deserializer)?;
        Self::from_tree(&tree).map_err(serde::de::Error::custom)
    }
}
