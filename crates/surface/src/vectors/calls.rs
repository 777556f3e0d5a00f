//! `calls.jsonl`, but for the days: units, texts, station pressures, and the words of errors.

use sugaring::{
    Error,
    air::StationPressure,
    catalogue::{self, Function, Kind},
    form::Tree,
    units::{Dimension, Length, Pressure, Quantity, Temperature, Unit, Value, pa},
};

use super::json::{error, error_of_column, line, list, number, numbers, object, text};

/// Round numbers, odd numbers, small and large ones.
const GIVEN: [f64; 12] = [
    0.0,
    1.0,
    0.1,
    -40.0,
    3.7,
    2.0 / 3.0,
    37.5,
    66.9,
    212.0,
    1e-3,
    123_456.789,
    6.022e23,
];
const SI: [f64; 10] = [
    0.0,
    1.0,
    273.15,
    300.1,
    1e-3,
    101_325.0,
    12_345.678,
    0.264_172,
    7.0 / 3.0,
    1.6e-19,
];

/// Quantities, percentages, spellings, and texts that are refused with a hint.
const TEXTS: [&str; 88] = [
    "40 gal",
    "40gal",
    " 40  gallons ",
    "2.5 L",
    ".5 L",
    "1e3 mL",
    "-5 °C",
    "−5 ℃",
    "38 °F",
    "96.5 kPa",
    "7.6 bar gauge",
    "7.6 bar_gauge",
    "110 psig",
    "25 %",
    "12 each",
    "0.9 m³/d",
    "0.9 m3/d",
    "66.9 °Bx",
    "1.5 cords",
    "0.1 in",
    "500 mg/L",
    "5 Δ°C",
    "1/2 in",
    "2,5 L",
    "2,500 L",
    "5 ft 3 in",
    "gal",
    "40",
    "",
    "40 gall",
    "40 GAL",
    "20 C",
    "20 F",
    "nan L",
    "1e999 L",
    "forty gal",
    // Fractions and numbers in two units.
    "3/4 cord",
    "1 1/2 in",
    "½ gal",
    "1/0 in",
    "5 feet 3 inches",
    "5ft3in",
    "5 ft, 3 in",
    "5' 3\"",
    "1 lb 4 oz",
    "2 h 30 min",
    "5 ft 3",
    "5 °C 3 °F",
    // Other lands' commas, points and groups.
    "1.234,5 L",
    "1 234,5 L",
    "1.234.567 L",
    "1'234.5 L",
    "12 345 gal",
    "1_000 L",
    "\u{a0}5\u{a0}L",
    "٣ L",
    // Signs and numbers that are none.
    "+5 °C",
    "- 5 °C",
    "--5 °C",
    "1e3e2 L",
    "0x10 L",
    "inf L",
    "-infinity",
    "about 5 L",
    "95 ± 2 L",
    "7-8 bar",
    // Slips in the unit, and units that are not offered.
    "20 c",
    "68 degrees F",
    "20 Celsius",
    "40 gals",
    "40 gal.",
    "40 Gal",
    "gal 40",
    "deg_c(20)",
    "3 Kg",
    "30 in. Hg",
    "30 inHG",
    "7 bar a",
    "1 m^2",
    "1 m**2",
    "1 ton",
    "4 cups",
    "1 acre",
    "5 °Bé",
    "5 $",
    "5 L approx",
    "L",
    "x",
];

/// Numbers that are written with a unit and read again.
const WRITTEN: [f64; 5] = [0.1, -40.0, 2.0 / 3.0, 1e-9, 1.5e21];

pub(super) fn lines() -> Vec<String> {
    let mut lines: Vec<String> = catalogue::units().iter().filter_map(|unit| of_unit(unit)).collect();
    lines.extend(TEXTS.iter().map(|given| of_text(given)));
    lines.extend(spelt().iter().map(|given| of_text(given)));
    lines.extend(stations());
    lines.extend(refused());
    lines.extend(columns());
    lines
}

/// °Brix is a bare number and has no word.
fn of_unit(unit: &Unit) -> Option<String> {
    let base = Unit::base(unit.dimension);
    let si = GIVEN.map(|x| unit.to_si(x));
    let read = SI.map(|x| unit.from_si(x));
    let outcome = [
        ("given", numbers(&GIVEN)),
        ("si", numbers(&si)),
        ("from", numbers(&SI)),
        ("read", numbers(&read)),
    ];
    (unit.dimension != Dimension::Brix).then(|| line("unit", [text(unit.word), text(base.word)], outcome))
}

/// Every spelling of every unit, and numbers as each unit writes them; plain numbers have no spelling.
fn spelt() -> Vec<String> {
    let units = catalogue::units().iter().filter(|unit| !unit.symbol.is_empty());
    let texts = units.flat_map(|unit| {
        let spellings = [unit.symbol, unit.word].into_iter().chain(unit.aliases.iter().copied());
        let spelt = spellings.map(|spelling| format!("37.5 {spelling}"));
        spelt
            .chain(WRITTEN.map(|x| Quantity::new(x, unit).to_string()))
            .collect::<Vec<_>>()
    });
    texts.collect()
}

/// A text that is read is written again, and that is read as the same.
fn of_text(given: &str) -> String {
    let outcome = match Quantity::parse(given) {
        Ok(quantity) => vec![
            ("unit", text(quantity.unit().word)),
            ("number", number(quantity.value())),
            ("text", text(&quantity.to_string())),
        ],
        Err(refusal) => vec![("error", error(&refusal))],
    };
    line("units.parse", [text(given)], outcome)
}

/// What a language hands over.
#[derive(Clone)]
enum Given {
    Of(f64, &'static str),
    Bare(f64),
    Text(&'static str),
    Station(f64),
}

use Given::{Bare, Of, Station, Text};

impl Given {
    fn written(&self) -> String {
        match *self {
            Of(value, word) => object([("unit", text(word)), ("number", number(value))]),
            Bare(value) => object([("number", number(value))]),
            Text(words) => text(words),
            Station(pascal) => object([("station", number(pascal))]),
        }
    }

    fn tree(&self) -> Tree {
        match *self {
            Of(value, word) => Tree::from(Quantity::new(value, unit(word))),
            Bare(value) | Station(value) => Tree::from(value),
            Text(words) => Tree::from(words),
        }
    }

    /// The number in SI, or what a language says that hands over the wrong thing.
    fn si(&self, argument: &str, kind: Kind) -> Result<f64, Error> {
        match (self, kind) {
            (Station(pascal), Kind::Station) => StationPressure::measured(pa(*pascal)).map(Value::si),
            (_, Kind::Station) => Err(Error::no_station(argument, &self.tree())),
            (_, kind) => Ok(self.tree().argument(argument, kind.dimension())?.si()),
        }
    }

    fn typed<T: Value>(&self, argument: &str) -> Result<T, Error> {
        self.tree().argument(argument, T::DIMENSION)?.typed()
    }
}

fn unit(word: &str) -> &'static Unit {
    let found = catalogue::units().iter().find(|unit| unit.word == word);
    found.copied().unwrap_or_else(|| Unit::base(Dimension::Count))
}

/// Each kind of reading, in range, in other units, at the limits and refused.
fn stations() -> Vec<String> {
    let measured = |given: Given| {
        let made = given.typed("pressure").and_then(StationPressure::measured);
        station("measured", &[given], made)
    };
    let from_altitude = |given: Given| {
        let made = given.typed("altitude").and_then(StationPressure::from_altitude);
        station("from_altitude", &[given], made)
    };
    let from_boiling_water = |given: Given| {
        let made = given.typed("temperature").and_then(StationPressure::from_boiling_water);
        station("from_boiling_water", &[given], made)
    };
    let pressures = [
        Of(96.5, "kpa"),
        Of(965.0, "hpa"),
        Of(28.5, "in_hg"),
        Of(14.0, "psi"),
        Of(723.8, "mm_hg"),
        Of(1.0, "atm"),
        Of(50.0, "kpa"),
        Of(110.0, "kpa"),
        Of(49.9, "kpa"),
        Of(965.0, "kpa"),
        Of(0.965, "kpa"),
        Of(0.97, "bar_gauge"),
        Of(f64::NAN, "kpa"),
        Bare(96.5),
        Text("96.5 kPa"),
    ];
    let altitudes = [
        Of(410.0, "metre"),
        Of(1345.0, "foot"),
        Of(0.0, "metre"),
        Of(-500.0, "metre"),
        Of(5000.0, "metre"),
        Of(-600.0, "metre"),
        Of(410.0, "kpa"),
        Bare(410.0),
    ];
    let boiling = [
        Of(98.6, "deg_c"),
        Of(209.5, "deg_f"),
        Of(371.8, "kelvin"),
        Of(209.5, "deg_c"),
        Of(5.0, "delta_c"),
        Bare(98.6),
    ];
    let mut lines: Vec<String> = pressures.into_iter().map(measured).collect();
    lines.extend(reduced());
    lines.extend(altitudes.into_iter().map(from_altitude));
    lines.extend(boiling.into_iter().map(from_boiling_water));
    lines
}

/// The two kinds that are reduced to sea level.
fn reduced() -> Vec<String> {
    let setting = |setting: Given, altitude: Given| {
        let made = (|| {
            let pressure: Pressure = setting.typed("setting")?;
            let height: Length = altitude.typed("altitude")?;
            StationPressure::from_altimeter_setting(pressure, height)
        })();
        station("from_altimeter_setting", &[setting, altitude], made)
    };
    let sea_level = |pressure: Given, altitude: Given, air: Given| {
        let made = (|| {
            let reported: Pressure = pressure.typed("pressure")?;
            let height: Length = altitude.typed("altitude")?;
            let temperature: Temperature = air.typed("air_temperature")?;
            StationPressure::from_sea_level(reported, height, temperature)
        })();
        station("from_sea_level", &[pressure, altitude, air], made)
    };
    vec![
        setting(Of(30.02, "in_hg"), Of(410.0, "metre")),
        setting(Of(1013.25, "hpa"), Of(1345.0, "foot")),
        setting(Of(30.02, "kpa"), Of(410.0, "metre")),
        setting(Of(100.0, "kpa"), Of(6000.0, "metre")),
        sea_level(Of(1015.1, "hpa"), Of(410.0, "metre"), Of(2.0, "deg_c")),
        sea_level(Of(29.9, "in_hg"), Of(1345.0, "foot"), Of(36.0, "deg_f")),
        sea_level(Of(880.0, "hpa"), Of(5000.0, "metre"), Of(2.0, "deg_c")),
        sea_level(Of(1015.1, "hpa"), Of(410.0, "metre"), Of(2.0, "delta_c")),
    ]
}

fn station(constructor: &str, given: &[Given], made: Result<StationPressure, Error>) -> String {
    let outcome = match made {
        Ok(station) => vec![
            ("pressure", number(station.pressure().si())),
            ("uncertainty", number(station.uncertainty().si())),
            ("origin", text(station.origin().name())),
        ],
        Err(refusal) => vec![("error", error(&refusal))],
    };
    let call = format!("StationPressure.{constructor}");
    line(&call, given.iter().map(Given::written), outcome)
}

/// Calls in other units, and the usual slips with all that the error says.
fn refused() -> Vec<String> {
    const AIR: Given = Station(96_500.0);
    let calls: [(&str, &str, &[Given]); 27] = [
        ("sucrose", "density", &[Bare(66.9), Of(20.0, "deg_c")]),
        ("sucrose", "density", &[Bare(66.9), Of(68.0, "deg_f")]),
        ("sucrose", "boiling_temperature", &[Bare(66.9), AIR]),
        ("sucrose", "brix_from_boiling", &[Of(217.0, "deg_f"), AIR]),
        ("sucrose", "brix_from_boiling", &[Of(217.0, "deg_c"), AIR]),
        (
            "sucrose",
            "contraction",
            &[Bare(66.9), Of(85.0, "deg_c"), Of(68.0, "deg_f")],
        ),
        (
            "membrane",
            "pump_energy",
            &[
                Of(110.0, "psi_gauge"),
                Of(132.0, "gal_per_h"),
                Of(95.0, "minutes"),
                Of(35.0, "percent"),
            ],
        ),
        (
            "membrane",
            "pump_energy",
            &[
                Of(7.6, "bar_gauge"),
                Of(500.0, "litre_per_h"),
                Of(2.0, "hours"),
                Bare(35.0),
            ],
        ),
        (
            "membrane",
            "pump_energy",
            &[Of(7.6, "bar"), Of(500.0, "litre_per_h"), Of(2.0, "hours"), Bare(0.35)],
        ),
        ("finish", "hot_fill", &[Of(500.0, "ml"), Bare(66.9), Of(185.0, "deg_f")]),
        ("uncertainty", "normal_quantile", &[Of(97.5, "percent")]),
        ("sucrose", "density", &[Bare(66.9), Bare(20.0)]),
        ("sucrose", "density", &[Bare(f64::NAN), Of(20.0, "deg_c")]),
        ("sucrose", "density", &[Bare(66.9), Of(f64::INFINITY, "deg_c")]),
        ("sucrose", "density", &[Bare(120.0), Of(20.0, "deg_c")]),
        ("sucrose", "density", &[Bare(66.9), Of(180.0, "deg_c")]),
        ("sucrose", "density", &[Bare(66.9), Of(20.0, "delta_c")]),
        ("sucrose", "density", &[Bare(66.9), Of(20.0, "litre")]),
        ("sucrose", "density", &[Bare(66.9), Text("20 °C")]),
        ("sucrose", "density", &[Text("66.9"), Of(20.0, "deg_c")]),
        ("sucrose", "density", &[Of(66.9, "percent"), Of(20.0, "deg_c")]),
        ("sucrose", "boiling_temperature", &[Bare(66.9), Of(96.5, "kpa")]),
        ("sucrose", "boiling_temperature", &[Bare(66.9), Bare(96.5)]),
        (
            "sucrose",
            "brix_from_density",
            &[Of(995.0, "kg_per_m3"), Of(4.0, "deg_c")],
        ),
        (
            "sucrose",
            "brix_from_density",
            &[Of(11.1, "lb_per_gal"), Of(68.0, "deg_f")],
        ),
        (
            "air",
            "sea_level_pressure",
            &[AIR, Of(410.0, "metre"), Of(2.0, "deg_c")],
        ),
        ("water", "saturation_pressure", &[Of(-5.0, "deg_c")]),
    ];
    calls
        .into_iter()
        .map(|(module, name, given)| of_function(function(module, name), given))
        .collect()
}

fn function(module: &str, name: &str) -> Option<&'static Function> {
    let mut all = catalogue::functions().iter().copied();
    all.find(|function| (function.module, function.name) == (module, name))
}

fn of_function(function: Option<&Function>, given: &[Given]) -> String {
    let Some(function) = function else {
        return String::from("\"a function that is in no table\"");
    };
    let pairs = function.arguments.iter().zip(given);
    let si: Result<Vec<f64>, Error> = pairs
        .map(|(argument, given)| given.si(argument.name, argument.kind))
        .collect();
    let outcome = match si.and_then(|si| function.value(&si)) {
        Ok(result) => ("result", number(result)),
        Err(refusal) => ("error", error(&refusal)),
    };
    let call = format!("{}.{}", function.module, function.name);
    line(&call, given.iter().map(Given::written), [outcome])
}

/// Columns with a lane that is refused: the first one is told, and how many there are.
fn columns() -> Vec<String> {
    let of = |word, numbers: &[f64]| (word, numbers.to_vec());
    let calls = [
        ("density", [of("", &[2.0; 3]), of("deg_c", &[4.0, 5.0, -30.0])]),
        (
            "density",
            [
                of("", &[2.0, f64::NAN, 90.0, 66.9]),
                of("deg_f", &[40.0, 50.0, 60.0, 70.0]),
            ],
        ),
        (
            "osmotic_pressure",
            [of("", &[40.0]), of("deg_c", &[4.0, 5.0, 200.0, -273.15, 20.0])],
        ),
    ];
    calls
        .into_iter()
        .filter_map(|(name, columns)| of_columns(function("sucrose", name)?, &columns))
        .collect()
}

fn of_columns(function: &Function, columns: &[(&str, Vec<f64>); 2]) -> Option<String> {
    let lanes = columns.iter().map(|(_, numbers)| numbers.len()).max()?;
    // A single number stands for a whole column.
    let at = |(word, numbers): &(&str, Vec<f64>), lane: usize| {
        let number = numbers.get(lane).or(numbers.first()).copied().unwrap_or(f64::NAN);
        if word.is_empty() {
            number
        } else {
            unit(word).to_si(number)
        }
    };
    let values = (0..lanes).map(|lane| function.value(&columns.each_ref().map(|column| at(column, lane))));
    let refusals: Vec<_> = values
        .enumerate()
        .filter_map(|(lane, value)| Some((lane, value.err()?)))
        .collect();
    let (index, first) = refusals.first()?;
    let written = columns.iter().map(|(word, given)| {
        let column = match given.as_slice() {
            [one] => ("number", number(*one)),
            many => ("numbers", list(many.iter().copied().map(number))),
        };
        object(
            (!word.is_empty())
                .then(|| ("unit", text(word)))
                .into_iter()
                .chain([column]),
        )
    });
    let call = format!("{}.{}", function.module, function.name);
    Some(line(
        &call,
        written,
        [("error", error_of_column(first, *index, refusals.len(), lanes))],
    ))
}
