//! Where the rows of tables stand, in the units of the pictures.

use sugaring_tests::Row;

use crate::formula::Formula;

/// kg/mol of sucrose.
const SUCROSE: f64 = 0.342_296_5;
/// Radius of the standard atmosphere, in m.
const EARTH: f64 = 6_356_766.0;

/// °Brix of a row, whatever it is written in.
pub(super) fn brix(row: &Row) -> Option<f64> {
    let molal = || {
        let grams = row.optional_number("molality_mol_kg")? * SUCROSE;
        Some(100.0 * grams / (1.0 + grams))
    };
    row.optional_number("brix_pct")
        .or_else(molal)
        .or_else(|| of_concentration(row))
}

/// °Brix of so much sugar per volume.
fn of_concentration(row: &Row) -> Option<f64> {
    let wanted = row.optional_number("conc_g_l")?;
    let per_volume = Formula::of("sucrose::sugar_per_volume");
    let (mut low, mut high) = (0.0, 85.0);
    while high - low > 1e-9 {
        let middle = f64::midpoint(low, high);
        if per_volume.at(&[middle, celsius(row)])? < wanted {
            low = middle;
        } else {
            high = middle;
        }
    }
    Some(low)
}

pub(super) fn celsius(row: &Row) -> f64 {
    row.number("temp_c")
}

/// The value in the unit of the picture.
pub(super) fn value(row: &Row, per_unit: &[(&str, f64)]) -> f64 {
    let unit = row.text("unit");
    let factor = per_unit.iter().find(|(name, _)| *name == unit);
    row.number("value") * factor.unwrap_or_else(|| panic!("{}: {unit}", row.place())).1
}

/// Geometric altitude in m of a row of the standard atmosphere.
pub(super) fn altitude(row: &Row) -> f64 {
    let altitude = row.number("altitude_m");
    match row.text("quantity") {
        "pressure_geopotential" => EARTH * altitude / (EARTH - altitude),
        _ => altitude,
    }
}
