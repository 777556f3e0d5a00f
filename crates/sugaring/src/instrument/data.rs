//! Instruments as data, in the shape in which a plan's inputs have them.
//!
//! `{"hydrometer": {"scale", "calibrated_at", "glass_expansion", "offset" or "two_point", "span", "resolution",
//! "uncertainty"}}`, `{"refractometer": {"compensated": {"low", "high"} or "uncompensated": true, "zero",
//! "set_to_zero_at" or "two_point", "resolution", "uncertainty"}}`, `{"thermometer": {"offset", "two_point" or
//! "line", "emergent_stem": {"outside", "temperature", "expansion"}, "resolution", "uncertainty"}}`, `{"barometer":
//! {"set_to_sea_level", "offset", "resolution", "uncertainty"}}`. `two_point` is a list of two, each what the instrument
//! `shown` and what was `expected`; `line` is a fitted [`Line`](crate::uncertainty::Line) by its fields, of kelvins to add
//! over readings in °C, as bare numbers.

use alloc::{string::String, vec::Vec};

use super::{
    Barometer, Hydrometer, Instrument, Refractometer, Thermometer,
    correction::{Correction, Point},
    hydrometer::Marking,
    refractometer::{Compensation, Zero},
};
use crate::{
    digits,
    error::Error,
    form::{Node, Tree},
    math,
    uncertainty::Line,
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
            &[
                "offset",
                "two_point",
                "line",
                "emergent_stem",
                "resolution",
                "uncertainty",
            ],
            &[],
        )?;
        let mut made = Self::plain();
        made = match node.either(&["offset", "two_point", "line"])? {
            Some(("line", line)) => set(node, Self::line(&line_of_data(&line)?))?,
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
        match &self.line {
            Some(line) => map.put("line", fitted(line)),
            None => map.correction(&self.correction, Some((&table::delta_c, &table::kelvin))),
        }
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
    set(node, Correction::through(point(low)?, point(high)?, unit, POINTS))
}

/// A line by its fields.
pub(crate) fn line_of_data(node: &Node<'_>) -> Result<Line, Error> {
    node.keys(
        &[
            "intercept",
            "slope",
            "covariance",
            "residual_deviation",
            "degrees_of_freedom",
            "reference",
            "low",
            "high",
        ],
        &[],
    )?;
    let needed = |key| node.required(key)?.number();
    let pair = |node: &Node<'_>| match node.list()?.as_slice() {
        [first, second] => Ok([first.number()?, second.number()?]),
        _ => Err(node.unreadable("a list of two numbers")),
    };
    let covariance = node.required("covariance")?;
    let covariance = match covariance.list()?.as_slice() {
        [first, second] => [pair(first)?, pair(second)?],
        _ => return Err(covariance.unreadable("two lists of two numbers")),
    };
    Ok(Line {
        intercept: needed("intercept")?,
        slope: needed("slope")?,
        covariance,
        residual_deviation: needed("residual_deviation")?,
        degrees_of_freedom: needed("degrees_of_freedom")?,
        reference: needed("reference")?,
        low: needed("low")?,
        high: needed("high")?,
    })
}

fn fitted(line: &Line) -> Tree {
    let row = |numbers: [f64; 2]| numbers.map(Tree::Number).into_iter().collect::<Tree>();
    Tree::map([
        ("intercept", Tree::Number(line.intercept)),
        ("slope", Tree::Number(line.slope)),
        ("covariance", line.covariance.map(row).into_iter().collect()),
        ("residual_deviation", Tree::Number(line.residual_deviation)),
        ("degrees_of_freedom", Tree::Number(line.degrees_of_freedom)),
        ("reference", Tree::Number(line.reference)),
        ("low", Tree::Number(line.low)),
        ("high", Tree::Number(line.high)),
    ])
}

const POINTS: [[&str; 2]; 2] = [
    ["[0].shown", "two_point[1].shown"],
    ["[0].expected", "two_point[1].expected"],
];

/// A temperature in the unit in which it is shortest and reads back to the bit.
fn temperature(kelvin: f64) -> Tree {
    let mut best = (usize::MAX, kelvin, &table::kelvin);
    for unit in [&table::deg_c, &table::deg_f, &table::kelvin] {
        let value = unit.from_si(kelvin);
        for value in [math::floor(value * 1e6 + 0.5) / 1e6, value] {
            let length = digits::shortest(value).len();
            if length < best.0 && unit.to_si(value).to_bits() == kelvin.to_bits() {
                best = (length, value, unit);
            }
        }
    }
    Tree::Quantity(Quantity::new(best.1, best.2))
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        air::StationPressure,
        instrument::{Check, reading},
        uncertainty::line_fit,
        units::{brix, deg_c, deg_f, delta_c, kpa, metre, pa, per_kelvin},
    };
    use alloc::string::ToString;
    use proptest::prelude::*;

    /// By way of the text as well: the plan and other languages write it so.
    macro_rules! reads_back {
        ($($made:expr => $kind:ident),+ $(,)?) => { $(
            let made: $kind = $made;
            let tree = made.to_tree();
            prop_assert_eq!($kind::read(&Node::argument(&tree, "instrument")), Ok(made));
            #[cfg(feature = "json")]
            {
                let text = Tree::from_json(&tree.to_json().unwrap()).unwrap();
                prop_assert_eq!($kind::read(&Node::argument(&text, "instrument")), Ok(made));
            }
        )+ };
    }

    fn refused(kind: &'static str, keys: &[(&'static str, Tree)]) -> String {
        let tree = Tree::map([(kind, Tree::map(keys.iter().cloned()))]);
        let node = Node::argument(&tree, "instrument");
        let error = match kind {
            "hydrometer" => Hydrometer::read(&node).map(drop),
            "refractometer" => Refractometer::read(&node).map(drop),
            "thermometer" => Thermometer::read(&node).map(drop),
            _ => Barometer::read(&node).map(drop),
        };
        error.unwrap_err().to_string()
    }

    #[test]
    fn slips_name_their_key() {
        let point = |shown: f64, expected: f64| {
            Tree::map([("shown", shown), ("expected", expected)].map(|(k, x)| (k, Tree::from(x))))
        };
        let glass = [("scale", Tree::from("brix")), ("calibrated_at", Tree::from("60 °F"))];
        let with = |key, value| refused("hydrometer", &[&glass[..], &[(key, value)]].concat());
        assert_eq!(
            with("ofset", Tree::from(1.0)),
            "instrument.hydrometer has the unknown name \"ofset\"; nearest: offset",
        );
        assert_eq!(
            with("offset", Tree::from(36.0)),
            "instrument.hydrometer.offset = 36 °Bx is outside -10 to 10 °Bx",
        );
        assert_eq!(
            with("uncertainty", Tree::from(-0.1)),
            "instrument.hydrometer.uncertainty = -0.1 °Bx is outside 0 to 10 °Bx",
        );
        assert_eq!(
            with("uncertainty", Tree::from(f64::INFINITY)),
            "instrument.hydrometer.uncertainty = infinity is not a finite number",
        );
        assert_eq!(
            with("two_point", Tree::List(Vec::from([point(0.0, 0.0)]))),
            "instrument.hydrometer.two_point = […] cannot be read; a list of two points is needed",
        );
        assert_eq!(
            with("two_point", Tree::List(Vec::from([point(60.0, 60.0), point(0.0, 0.0)]))),
            "instrument.hydrometer.two_point[0].shown = 60 °Bx does not fit two_point[1].shown = 0 °Bx; the low check comes \
             first",
        );
        let paper = [("scale", Tree::from("baume")), ("calibrated_at", Tree::from("60 °F"))];
        assert_eq!(
            refused("hydrometer", &paper),
            "instrument.hydrometer.scale has the unknown name \"baume\"; nearest: baume_20_20, baume_60_60_f",
        );
        assert_eq!(
            refused(
                "hydrometer",
                &[("scale", Tree::from("brix")), ("calibrated_at", Tree::from("60 °C"))]
            ),
            "instrument.hydrometer.calibrated_at = 60 °C is outside 0 to 40 °C; 60 °F is 15.56 °C: write deg_f(60)",
        );
        assert_eq!(
            refused("refractometer", &[("uncompensated", Tree::from(false))]),
            "instrument.refractometer.uncompensated = false cannot be read; true is needed",
        );
        assert_eq!(
            refused("thermometer", &[("offset", Tree::from("60 °C"))]),
            "instrument.thermometer.offset = 60 °C is a temperature; a difference of temperatures is needed: write \
             delta_c or delta_f",
        );
        assert_eq!(
            refused("barometer", &[("set_to_sea_level", Tree::from("41 kPa"))]),
            "instrument.barometer.set_to_sea_level = 41 kPa is an absolute pressure; a length is needed",
        );
    }

    proptest! {
        #[test]
        fn every_instrument_reads_back_to_the_bit(
            t in 0.0..40.0_f64, w in 0.0..40.0_f64, x in -0.04..0.04_f64, u in 0.0..0.05_f64, p in 90.0..105.0_f64,
        ) {
            let air = StationPressure::measured(kpa(p)).unwrap();
            for name in Marking::names() {
                let bare = Hydrometer::marked(Marking::named(name).unwrap(), deg_f(t + 40.0)).unwrap();
                let set = bare.with_offset(x).unwrap().with_uncertainty(u).unwrap().with_resolution(u / 3.0).unwrap();
                let spanned = set.with_glass_expansion(per_kelvin(1e-3 * u)).unwrap().with_span(x, w + 1.0).unwrap();
                let check = |strength: f64| Check {
                    reading: reading(bare.reading(brix(strength).unwrap(), deg_c(t)).unwrap().get() + x),
                    brix: brix(strength).unwrap(),
                    temperature: deg_c(t),
                };
                reads_back! {
                    bare => Hydrometer,
                    spanned => Hydrometer,
                    bare.two_point(check(w), check(w + 40.0)).unwrap() => Hydrometer,
                }
            }
            let hand = Refractometer::compensated(deg_c(t), deg_f(t + 80.0)).unwrap();
            let plain = Refractometer::uncompensated().with_resolution(u).unwrap();
            let check = |strength: f64| Check {
                reading: reading(strength + x),
                brix: brix(strength).unwrap(),
                temperature: deg_c(20.0),
            };
            let probe = Thermometer::plain().with_offset(delta_c(x)).unwrap().with_resolution(delta_c(u)).unwrap();
            let checked = Thermometer::two_point(deg_c(10.0 * x), deg_c(99.0 + x), air).unwrap();
            let points = [20.0 + w, 50.0, 100.0 + w];
            let line = Thermometer::line(&line_fit(&points, &[x, 3.0 * u, 0.2], t).unwrap()).unwrap();
            let stem = probe.with_emergent_stem(delta_c(w), deg_c(t)).unwrap();
            let hung = Barometer::set_to_sea_level(metre(10.0 * w)).unwrap();
            reads_back! {
                hand => Refractometer,
                plain.with_zero(x).unwrap() => Refractometer,
                plain.set_to_zero_at(deg_c(t + 5.0)).unwrap() => Refractometer,
                plain.two_point(check(w), check(w + 40.0)).unwrap() => Refractometer,
                probe => Thermometer,
                line => Thermometer,
                checked => Thermometer,
                Thermometer::zeroed_in_boiling_water(deg_c(99.0 + x), air).unwrap() => Thermometer,
                stem.with_stem_expansion(per_kelvin(1e-3 * u)).unwrap() => Thermometer,
                Barometer::station().with_offset(kpa(x)).unwrap() => Barometer,
                hung.with_uncertainty(pa(u)).unwrap().with_resolution(kpa(u)).unwrap() => Barometer,
            }
        }
    }
}
