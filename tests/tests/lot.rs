//! Sap per syrup against what is printed about it.

use sugaring::{
    Error,
    lot::{Lot, blend},
    units::{brix, deg_c, fraction, kg, litre},
};
use sugaring_tests::{Row, judge};

const YIELD: &str = include_str!("../published/pack_yield.csv");

/// The table's sap is at 4 °C.
fn sap(row: &Row) -> Result<Lot, Error> {
    Lot::of_volume(litre(100.0), brix(row.number("sap_brix_pct"))?, deg_c(4.0))
}

#[test]
fn sap_per_syrup_stands_beside_the_rules_of_the_trade() {
    judge("pack_yield.csv", YIELD, |row| {
        let ratio = sap(row)?.sap_per_syrup(brix(row.number("syrup_brix_pct"))?)?;
        Ok(Some(ratio.by_volume.get::<fraction>()))
    });
}

#[test]
fn the_ratio_and_what_is_needed_agree() -> Result<(), Error> {
    let syrup = Lot::of_volume(litre(6.0), brix(66.9)?, deg_c(20.0))?;
    let sap = syrup.sap_needed(brix(1.98)?, deg_c(4.0))?;
    let ratio = sap.sap_per_syrup(brix(66.9)?)?;
    let volumes = sap.volume().get::<litre>() / syrup.volume().get::<litre>();
    assert!((ratio.by_volume.get::<fraction>() / volumes - 1.0).abs() < 1e-14);
    let masses = sap.mass().get::<kg>() / syrup.mass().get::<kg>();
    assert!((ratio.by_mass.get::<fraction>() / masses - 1.0).abs() < 1e-14);
    assert!((ratio.water.get::<fraction>() - (masses - 1.0)).abs() < 1e-12);
    Ok(())
}

/// Volumes do not add: 10 L of water and 10 L of syrup.
#[test]
fn water_and_syrup_shrink() -> Result<(), Error> {
    let lot = |strength| Lot::of_volume(litre(10.0), brix(strength)?, deg_c(20.0));
    let mixed = blend(&[lot(0.0)?, lot(66.9)?])?;
    assert!((mixed.volume().get::<litre>() - 19.93).abs() < 0.005, "{mixed:?}");
    assert!((mixed.brix().get() - 38.19).abs() < 0.005, "{mixed:?}");
    Ok(())
}
