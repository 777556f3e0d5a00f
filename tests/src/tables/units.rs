//! Our factors against the exact definitions and against what NIST SP 811, Appendix B.8, prints.

use sugaring::units::{Unit, deg_c, deg_f, delta_c, delta_f, kelvin, table as words};

use super::{Figure, Subject, Table, table::table};
use crate::Row;

pub(super) static TABLES: [Table; 2] = [
    table!("published" "units_factors" |row| Ok(factor(row))),
    table!("derived" "units_temperature" |row| Ok(temperature(row))),
];

const FACTOR: Subject = Subject {
    name: "factors",
    part: None,
    accuracy: "exact where the definition is: 1 part in 10¹⁴; what is printed is rounded",
    output: None,
    is_depression: false,
};

const TEMPERATURE: Subject = Subject {
    name: "temperatures and differences",
    accuracy: "exact",
    ..FACTOR
};

/// Units of the table that the library offers.
pub fn offered(name: &str) -> Option<&'static Unit> {
    Some(match name {
        "inch" => &words::inch,
        "US gallon" => &words::gal,
        "US liquid quart" => &words::quart,
        "US fluid ounce" => &words::fl_oz,
        "imperial gallon" => &words::imp_gal,
        "cord" => &words::cord,
        "pound" => &words::lb,
        "ounce avoirdupois" => &words::oz,
        "short ton" => &words::short_ton,
        "psi" => &words::psi,
        "bar" => &words::bar,
        "mmHg conventional" => &words::mm_hg,
        "inHg conventional" => &words::in_hg,
        "Btu_IT" => &words::btu,
        "Btu_IT/lb" => &words::btu_per_lb,
        "US gallon per minute" => &words::gal_per_min,
        "lb per US gallon" => &words::lb_per_gal,
        _ => return None,
    })
}

/// Units of the table that the library leaves out: kinds without an exact definition, and kinds no sugarhouse reads.
const NOT_OFFERED: [&str; 23] = [
    "US survey foot",
    "acre",
    "US cup",
    "US teaspoon",
    "US bushel",
    "US dry quart",
    "petroleum barrel",
    "pound-force",
    "technical atmosphere",
    "cmHg 0 degC",
    "inH2O 39.2 degF",
    "inH2O 60 degF",
    "ftH2O 39.2 degF",
    "Btu mean",
    "Btu 39 degF",
    "Btu 60 degF",
    "calorie_IT",
    "therm (EC)",
    "horsepower 550 ft lbf/s",
    "horsepower electric",
    "horsepower boiler",
    "ton of refrigeration",
    "Btu_IT/(lb degF)",
];

fn factor(row: &Row) -> Figure {
    let name = row.text("from_unit");
    if let Some(unit) = offered(name) {
        return Figure::Of(FACTOR, unit.to_si(1.0));
    }
    assert!(
        NOT_OFFERED.contains(&name),
        "{}: {name} is neither offered nor listed",
        row.place()
    );
    Figure::NotOffered("units that the library leaves out")
}

fn temperature(row: &Row) -> Figure {
    let x = row.number("input");
    let converted = match (row.text("quantity"), row.text("from_unit"), row.text("to_unit")) {
        ("point", "degF", "degC") => deg_f(x).get::<deg_c>(),
        ("point", "degC", "degF") => deg_c(x).get::<deg_f>(),
        ("point", "degC", "K") => deg_c(x).get::<kelvin>(),
        ("difference", "degF", "K") => delta_f(x).get::<delta_c>(),
        ("difference", "K", "degF") => delta_c(x).get::<delta_f>(),
        other => panic!("{}: no conversion for {other:?}", row.place()),
    };
    Figure::Of(TEMPERATURE, converted)
}
