//! Our factors against the exact definitions and against what NIST SP 811, Appendix B.8, prints.

use sugaring::units::{Unit, deg_c, deg_f, delta_c, delta_f, kelvin, table};
use sugaring_tests::{Row, judge, rows};

const FACTORS: &str = include_str!("../published/units_factors.csv");

/// Units of the table that the library offers.
fn offered(name: &str) -> Option<&'static Unit> {
    Some(match name {
        "inch" => &table::inch,
        "US gallon" => &table::gal,
        "US liquid quart" => &table::quart,
        "US fluid ounce" => &table::fl_oz,
        "imperial gallon" => &table::imp_gal,
        "cord" => &table::cord,
        "pound" => &table::lb,
        "ounce avoirdupois" => &table::oz,
        "short ton" => &table::short_ton,
        "psi" => &table::psi,
        "bar" => &table::bar,
        "mmHg conventional" => &table::mm_hg,
        "inHg conventional" => &table::in_hg,
        "Btu_IT" => &table::btu,
        "Btu_IT/lb" => &table::btu_per_lb,
        "US gallon per minute" => &table::gal_per_min,
        "lb per US gallon" => &table::lb_per_gal,
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

#[test]
fn factors_are_those_printed() {
    judge("units_factors.csv", FACTORS, |row| {
        Ok(offered(row.text("from_unit")).map(|unit| unit.to_si(1.0)))
    });
}

#[test]
fn factors_are_exact() {
    for row in rows("units_factors.csv", FACTORS) {
        let name = row.text("from_unit");
        let Some(unit) = offered(name) else {
            assert!(
                NOT_OFFERED.contains(&name),
                "{}: {name} is neither offered nor listed",
                row.place()
            );
            continue;
        };
        let exact = row.number("factor_exact");
        let ours = unit.to_si(1.0);
        assert!((ours / exact - 1.0).abs() <= 1e-14, "{name}: {ours} for {exact}");
    }
}

/// What follows from a tabulated definition and has no row of its own.
#[test]
fn compound_factors_follow_from_the_definitions() {
    let (gallon, pound, btu, psi) = (3.785_411_784e-3, 0.453_592_37, 1_055.055_852_62, 6_894.757_293_168_361);
    for (unit, exact) in [
        (&table::foot, 12.0 * 0.0254),
        (&table::square_foot, 144.0 * 0.0254 * 0.0254),
        (&table::gal_per_h, gallon / 3600.0),
        (&table::gal_per_day, gallon / 86_400.0),
        (&table::lb_per_h, pound / 3600.0),
        (&table::btu_per_h, btu / 3600.0),
        (&table::million_btu, 1e6 * btu),
        (&table::psi_gauge, psi),
        (&table::tonne, 1000.0),
        (&table::atm, 101_325.0),
    ] {
        let ours = unit.to_si(1.0);
        assert!((ours / exact - 1.0).abs() <= 1e-14, "{}: {ours} for {exact}", unit.word);
    }
}

#[test]
fn temperatures_are_points_or_differences() {
    judge(
        "units_temperature.csv",
        include_str!("../derived/units_temperature.csv"),
        |row| Ok(Some(convert(row))),
    );
}

fn convert(row: &Row) -> f64 {
    let x = row.number("input");
    match (row.text("quantity"), row.text("from_unit"), row.text("to_unit")) {
        ("point", "degF", "degC") => deg_f(x).get::<deg_c>(),
        ("point", "degC", "degF") => deg_c(x).get::<deg_f>(),
        ("point", "degC", "K") => deg_c(x).get::<kelvin>(),
        ("difference", "degF", "K") => delta_f(x).get::<delta_c>(),
        ("difference", "K", "degF") => delta_c(x).get::<delta_f>(),
        other => panic!("no conversion for {other:?}"),
    }
}
