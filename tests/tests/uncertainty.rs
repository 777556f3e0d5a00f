//! Quantiles of the normal distribution against another build of the same algorithm.

use sugaring::{uncertainty::normal_quantile, units::fraction};
use sugaring_tests::judge;

#[test]
fn normal_quantiles() {
    let table = include_str!("../derived/normal_quantile.csv");
    judge("derived/normal_quantile.csv", table, |row| {
        normal_quantile(fraction(row.number("probability"))).map(Some)
    });
}
