//! The table of the book's page on boiling says what the library says.

use sugaring::{air::StationPressure, sucrose, units::*, water};

const PAGE: &str = include_str!("../../book/src/properties/boiling.md");

#[test]
fn the_most_important_numbers_are_ours() {
    let stations = [80.0, 90.0, 95.0, 100.0, 101.325].map(|p| StationPressure::measured(kpa(p)).expect("a pressure"));
    let boils = stations.map(|station| water::saturation_temperature(station.pressure()).expect("water"));
    let celsius = boils.map(|t| format!("{:.2} °C", t.get::<deg_c>())).join(" | ");
    let line = format!("| water boils at | {celsius} | {:.2} |", boils[4].get::<deg_f>());
    assert!(PAGE.contains(&line), "{line}");
    for strength in [66.0, 66.9] {
        let solution = brix(strength).expect("a strength");
        let rises = stations.map(|station| sucrose::boiling_point_elevation(solution, station).expect("a rise"));
        let mut kelvins = rises.map(|rise| format!("{:.2} K", rise.get::<delta_c>()));
        kelvins[4] = format!("**{}**", kelvins[4]);
        let fahrenheit = rises[4].get::<delta_f>();
        let line = format!(
            "| {strength:.1} °Bx, above it | {} | **{fahrenheit:.2}** |",
            kelvins.join(" | ")
        );
        assert!(PAGE.contains(&line), "{line}");
    }
}
