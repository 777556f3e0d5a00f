//! Where the rows of tables stand along a picture.

use sugaring_tests::Row;

use crate::formula::Formula;

/// Radius of the standard atmosphere, in m.
const EARTH: f64 = 6_356_766.0;

/// °Brix of a row, whatever it is written in.
pub(super) fn brix(row: &Row) -> Option<f64> {
    let input = || {
        row.optional_number("input")
            .filter(|_| row.text("direction") == "brix_to_baume")
    };
    row.brix().or_else(|| of_concentration(row)).or_else(input)
}

/// °Brix of so much sugar per volume.
fn of_concentration(row: &Row) -> Option<f64> {
    let (wanted, celsius) = (row.optional_number("conc_g_l")?, row.celsius()?);
    let per_volume = Formula::of("sucrose::sugar_per_volume");
    let (mut low, mut high) = (0.0, 85.0);
    while high - low > 1e-9 {
        let middle = f64::midpoint(low, high);
        if per_volume.at(&[middle, celsius])? < wanted {
            low = middle;
        } else {
            high = middle;
        }
    }
    Some(low)
}

/// Geometric altitude in m of a row of the atmosphere.
pub(super) fn altitude(row: &Row) -> Option<f64> {
    let altitude = row.optional_number("altitude_m")?;
    let geometric = match row.optional_text("quantity") {
        Some("pressure_geopotential") => EARTH * altitude / (EARTH - altitude),
        _ => altitude,
    };
    Some(geometric)
}
