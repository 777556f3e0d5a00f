//! Our factors against their tables, and against the exact definitions.

use sugaring::units::table;
use sugaring_tests::{
    rows,
    tables::{self, units::offered},
};

const FACTORS: &str = include_str!("../published/units_factors.csv");

#[test]
fn tables_stand() {
    tables::UNITS.judge();
}

#[test]
fn factors_are_exact() {
    for row in rows("units_factors.csv", FACTORS) {
        let name = row.text("from_unit");
        let Some(unit) = offered(name) else {
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
