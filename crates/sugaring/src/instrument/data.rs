//! Instruments as data, in the shape in which a plan's inputs have them.
//!
//! `{"hydrometer": {"scale", "calibrated_at", "glass_expansion", "offset" or "two_point", "span", "resolution",
//! "uncertainty"}}`, `{"refractometer": {"compensated": {"low", "high"} or "uncompensated": true, "zero",
//! "set_to_zero_at" or "two_point", "resolution", "uncertainty"}}`, `{"thermometer": {"offset" or "two_point",
//! "emergent_stem": {"outside", "temperature", "expansion"}, "resolution", "uncertainty"}}`, `{"barometer":
//! {"set_to_sea_level", "offset", "resolution", "uncertainty"}}`. `two_point` is a list of two, each what the instrument
//! `shown` and what was `expected`.

use alloc::{string::String, vec::Vec};

use super::{
    Barometer, Hydrometer, Instrument, Refractometer, Thermometer,
    correction::{Correction, Point},
    marking::Marking,
    refractometer::{Compensation, Zero},
};
use crate::{
    error::Error,
    form::{Node, Tree},
    units::{Dimension, Length, PerKelvin, Pressure, Quantity, Temperature, Unit, Value, table},
};

/// Reading and writing.
impl Instrument {
    /// Of `{"hydrometer": …}` or `{"refractometer": …}`.
    pub(crate) fn read(node: &Node<'_>) -> Result<Self, Error> {
        let (kind, inner) = node.one_of(&["hydrometer", "refractometer"], &[])?;
        match kind {
            "hydrometer" => Hydrometer::read_within(&inner).map(Self::Hydrometer),
            _ => Refractometer::read_within(&inner).map(Self::Refractometer),
        }
    }
}

/// A kind of instrument that is read from data and written as data.
macro_rules! kept_as_data {
    ($($instrument:ident $kind:literal;)+) => { $(
        impl $instrument {
            /// Of the map with its kind as key.
            pub(crate) fn read(node: &Node<'_>) -> Result<Self, Error> {
                let (_, inner) = node.one_of(&[$kind], &[])?;
                Self::read_within(&inner)
            }

            /// The map with its kind as key.
            pub(crate) fn to_tree(self) -> Tree {
                Tree::map([($kind, self.written())])
            }
        }
    )+ };
}

kept_as_data! {
    Hydrometer "hydrometer";
    Refractometer "refractometer";
    Thermometer "thermometer";
    Barometer "barometer";
}

impl Hydrometer {
    pub(crate) fn read_within(node: &Node<'_>) -> Result<Self, Error> {
        node.keys(
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
        let scale = node.required("scale")?;
        let names: Vec<&'static str> = Marking::names().collect();
        let marking = Marking::named(scale.choice(&names, &[])?).unwrap_or(Marking::Brix);
        let mut made = set(node, Self::marked(marking, quantity(node, "calibrated_at")?))?;
        if let Some(expansion) = optional::<PerKelvin>(node, "glass_expansion")? {
            made = set(node, made.with_glass_expansion(expansion))?;
        }
        made = match node.either(&["offset", "two_point"])? {
            Some(("two_point", points)) => Self {
                correction: two_point(&points, made.marking.unit())?,
                ..made
            },
            Some((_, offset)) => set(node, made.with_offset(offset.number()?))?,
            None => made,
        };
        if let Some(span) = node.get("span")? {
            span.keys(&["low", "high"], &[])?;
            let limits = (span.required("low")?.number()?, span.required("high")?.number()?);
            made = set(&span, made.with_span(limits.0, limits.1))?;
        }
        if let Some(step) = number(node, "resolution")? {
            made = set(node, made.with_resolution(step))?;
        }
        if let Some(uncertainty) = number(node, "uncertainty")? {
            made = set(node, made.with_uncertainty(uncertainty))?;
        }
        Ok(made)
    }

    fn written(self) -> Tree {
        let mut map = Map::default();
        map.put("scale", Tree::from(self.marking.name()));
        map.put("calibrated_at", temperature(self.float.calibrated_at));
        map.put("glass_expansion", of(self.float.expansion, &table::per_kelvin));
        map.correction(&self.correction, None);
        if let Some((low, high)) = self.span {
            map.put(
                "span",
                Tree::map([("low", Tree::Number(low)), ("high", Tree::Number(high))]),
            );
        }
        map.put("resolution", Tree::Number(self.graduation.resolution));
        map.put("uncertainty", Tree::Number(self.graduation.uncertainty));
        map.tree()
    }
}

impl Refractometer {
    pub(crate) fn read_within(node: &Node<'_>) -> Result<Self, Error> {
        node.keys(
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
        let mut made = match node.either(&["compensated", "uncompensated"])? {
            Some(("compensated", range)) => {
                range.keys(&["low", "high"], &[])?;
                set(
                    &range,
                    Self::compensated(quantity(&range, "low")?, quantity(&range, "high")?),
                )?
            }
            Some((_, flag)) if *flag.tree() == Tree::Bool(true) => Self::uncompensated(),
            Some((_, flag)) => return Err(flag.unreadable("true")),
            None => {
                let missing = Error::missing(String::from(node.path()));
                return Err(missing.with_hint("one of compensated, uncompensated is needed"));
            }
        };
        made = match node.either(&["zero", "set_to_zero_at", "two_point"])? {
            Some(("two_point", points)) => Self {
                zero: Zero::Known(two_point(&points, &table::deg_brix)?),
                ..made
            },
            Some(("set_to_zero_at", prism)) => {
                let prism = exact(&prism)?;
                made.set_to_zero_at(prism)
                    .map_err(|error| error.named("set_to_zero_at").within(node.path()))?
            }
            Some((_, zero)) => set(node, made.with_zero(zero.number()?))?,
            None => made,
        };
        if let Some(step) = number(node, "resolution")? {
            made = set(node, made.with_resolution(step))?;
        }
        if let Some(uncertainty) = number(node, "uncertainty")? {
            made = set(node, made.with_uncertainty(uncertainty))?;
        }
        Ok(made)
    }

    fn written(self) -> Tree {
        let mut map = Map::default();
        match self.compensation {
            Compensation::Automatic { low, high } => {
                let range = [("low", temperature(low)), ("high", temperature(high))];
                map.put("compensated", Tree::map(range));
            }
            Compensation::None => map.put("uncompensated", Tree::Bool(true)),
        }
        match self.zero {
            Zero::Known(Correction::Offset(zero)) => map.put("zero", Tree::Number(zero)),
            Zero::Known(correction) => map.correction(&correction, None),
            Zero::SetAt(kelvin) => map.put("set_to_zero_at", temperature(kelvin)),
        }
        map.put("resolution", Tree::Number(self.graduation.resolution));
        map.put("uncertainty", Tree::Number(self.graduation.uncertainty));
        map.tree()
    }
}

impl Thermometer {
    pub(crate) fn read_within(node: &Node<'_>) -> Result<Self, Error> {
        node.keys(
            &["offset", "two_point", "emergent_stem", "resolution", "uncertainty"],
            &[],
        )?;
        let mut made = Self::plain();
        made = match node.either(&["offset", "two_point"])? {
            Some(("two_point", points)) => Self {
                correction: two_temperatures(&points)?,
                ..made
            },
            Some((_, offset)) => set(node, made.with_offset(exact(&offset)?))?,
            None => made,
        };
        if let Some(stem) = node.get("emergent_stem")? {
            stem.keys(&["outside", "temperature", "expansion"], &[])?;
            let (outside, column) = (quantity(&stem, "outside")?, quantity(&stem, "temperature")?);
            made = set(&stem, made.with_emergent_stem(outside, column))?;
            if let Some(expansion) = optional(&stem, "expansion")? {
                made = set(&stem, made.with_stem_expansion(expansion))?;
            }
        }
        if let Some(step) = optional(node, "resolution")? {
            made = set(node, made.with_resolution(step))?;
        }
        if let Some(uncertainty) = optional(node, "uncertainty")? {
            made = set(node, made.with_uncertainty(uncertainty))?;
        }
        Ok(made)
    }

    fn written(self) -> Tree {
        let mut map = Map::default();
        map.correction(&self.correction, Some((&table::delta_c, &table::kelvin)));
        if let Some(stem) = self.stem {
            let keys = [
                ("outside", of(stem.outside, &table::delta_c)),
                ("temperature", temperature(stem.temperature)),
                ("expansion", of(stem.expansion, &table::per_kelvin)),
            ];
            map.put("emergent_stem", Tree::map(keys));
        }
        map.put("resolution", of(self.graduation.resolution, &table::delta_c));
        map.put("uncertainty", of(self.graduation.uncertainty, &table::delta_c));
        map.tree()
    }
}

impl Barometer {
    pub(crate) fn read_within(node: &Node<'_>) -> Result<Self, Error> {
        node.keys(&["set_to_sea_level", "offset", "resolution", "uncertainty"], &[])?;
        let mut made = match optional::<Length>(node, "set_to_sea_level")? {
            Some(altitude) => {
                Self::set_to_sea_level(altitude).map_err(|error| error.named("set_to_sea_level").within(node.path()))?
            }
            None => Self::station(),
        };
        if let Some(offset) = optional::<Pressure>(node, "offset")? {
            made = set(node, made.with_offset(offset))?;
        }
        if let Some(step) = optional(node, "resolution")? {
            made = set(node, made.with_resolution(step))?;
        }
        if let Some(uncertainty) = optional(node, "uncertainty")? {
            made = set(node, made.with_uncertainty(uncertainty))?;
        }
        Ok(made)
    }

    fn written(self) -> Tree {
        let mut map = Map::default();
        if let Some(altitude) = self.set_at {
            map.put("set_to_sea_level", of(altitude, &table::metre));
        }
        map.correction(&self.correction, Some((&table::pa, &table::pa)));
        map.put("resolution", of(self.graduation.resolution, &table::pa));
        map.put("uncertainty", of(self.graduation.uncertainty, &table::pa));
        map.tree()
    }
}

/// What a constructor said, with the path.
fn set<T>(node: &Node<'_>, made: Result<T, Error>) -> Result<T, Error> {
    made.map_err(|error| error.within(node.path()))
}

/// The quantity here: an instrument has no uncertain parts, but for its own uncertainty.
fn exact<T: Value>(node: &Node<'_>) -> Result<T, Error> {
    let given = node.quantity()?;
    match given.uncertainty {
        None => Ok(given.value),
        Some(_) => Err(node
            .required("uncertainty")?
            .unreadable("a quantity without uncertainty")),
    }
}

fn quantity<T: Value>(node: &Node<'_>, key: &str) -> Result<T, Error> {
    exact(&node.required(key)?)
}

fn optional<T: Value>(node: &Node<'_>, key: &str) -> Result<Option<T>, Error> {
    node.get(key)?.map(|node| exact(&node)).transpose()
}

fn number(node: &Node<'_>, key: &str) -> Result<Option<f64>, Error> {
    node.get(key)?.map(|node| node.number()).transpose()
}

fn two_point(node: &Node<'_>, unit: &'static Unit) -> Result<Correction, Error> {
    points(node, unit, |point, key| point.required(key)?.number())
}

fn two_temperatures(node: &Node<'_>) -> Result<Correction, Error> {
    points(node, &table::deg_c, |point, key| {
        quantity::<Temperature>(point, key).map(Value::si)
    })
}

fn points(
    node: &Node<'_>,
    unit: &'static Unit,
    read: impl Fn(&Node<'_>, &str) -> Result<f64, Error>,
) -> Result<Correction, Error> {
    let items = node.list()?;
    let [low, high] = items.as_slice() else {
        return Err(node.unreadable("a list of two points"));
    };
    let point = |node: &Node<'_>| {
        node.keys(&["shown", "expected"], &[])?;
        Ok(Point {
            shown: read(node, "shown")?,
            expected: read(node, "expected")?,
        })
    };
    set(node, Correction::through(point(low)?, point(high)?, unit))
}

/// A temperature in the unit in which it is shortest and reads back to the bit.
fn temperature(kelvin: f64) -> Tree {
    let units = [&table::deg_c, &table::deg_f, &table::kelvin];
    let exact = units
        .into_iter()
        .filter(|unit| unit.to_si(unit.from_si(kelvin)).to_bits() == kelvin.to_bits());
    let length = |unit: &&'static Unit| crate::digits::shortest(unit.from_si(kelvin)).len();
    of(kelvin, exact.min_by_key(length).unwrap_or(&table::kelvin))
}

fn of(si: f64, unit: &'static Unit) -> Tree {
    Tree::Quantity(Quantity::new(unit.from_si(si), unit))
}

/// Keys and values, in order.
#[derive(Default)]
struct Map(Vec<(String, Tree)>);

impl Map {
    fn put(&mut self, key: &str, value: Tree) {
        self.0.push((String::from(key), value));
    }

    /// An offset or two points, in marks or in the units of an offset and of a reading.
    fn correction(&mut self, correction: &Correction, units: Option<(&'static Unit, &'static Unit)>) {
        let offset = |si| units.map_or(Tree::Number(si), |(unit, _)| of(si, unit));
        let reading = |si| match units {
            None => Tree::Number(si),
            Some((_, unit)) if unit.dimension == Dimension::Temperature => temperature(si),
            Some((_, unit)) => of(si, unit),
        };
        match *correction {
            Correction::Offset(si) => self.put("offset", offset(si)),
            Correction::TwoPoint(points) => {
                let point =
                    |point: Point| Tree::map([("shown", reading(point.shown)), ("expected", reading(point.expected))]);
                self.put("two_point", points.map(point).into_iter().collect());
            }
        }
    }

    fn tree(self) -> Tree {
        Tree::Map(self.0)
    }
}
