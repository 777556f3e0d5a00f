//! The tables of the book's page on properties say what the relations say.

use std::fmt::Write as _;

use sugaring::{Relation, Source, air, air::StationPressure, sucrose, units::*, water};

const PAGE: &str = include_str!("../../book/src/properties.md");

#[test]
fn tables_are_those_of_the_relations() {
    let water = [
        &water::SATURATION_PRESSURE,
        &water::SATURATION_TEMPERATURE,
        &water::LATENT_HEAT,
        &water::SATURATED_LIQUID_DENSITY,
        &water::SATURATED_VAPOUR_DENSITY,
        &water::DENSITY,
        &water::SPECIFIC_HEAT,
        &water::ENTHALPY,
        &water::VISCOSITY,
        &water::THERMAL_CONDUCTIVITY,
    ];
    let air = [
        &air::STATION_PRESSURE,
        &air::PRESSURE_AT_ALTITUDE,
        &air::ALTITUDE_AT_PRESSURE,
        &air::ALTIMETER_SETTING,
        &air::SEA_LEVEL_PRESSURE,
    ];
    let sucrose = [
        &sucrose::DENSITY,
        &sucrose::BRIX_FROM_DENSITY,
        &sucrose::SUGAR_PER_VOLUME,
        &sucrose::CONTRACTION,
        &sucrose::WATER_ACTIVITY,
        &sucrose::OSMOTIC_COEFFICIENT,
        &sucrose::OSMOTIC_PRESSURE,
        &sucrose::BRIX_FROM_OSMOTIC_PRESSURE,
        &sucrose::BOILING_TEMPERATURE,
        &sucrose::BOILING_POINT_ELEVATION,
        &sucrose::BRIX_FROM_BOILING,
        &sucrose::PRESSURE_FROM_BOILING,
        &sucrose::HEAT_OF_EVAPORATION,
        &sucrose::FREEZING_TEMPERATURE,
        &sucrose::BRIX_FROM_FREEZING,
        &sucrose::SPECIFIC_HEAT,
        &sucrose::SPECIFIC_HEAT_BUBNIK,
        &sucrose::ENTHALPY,
        &sucrose::HEAT_TO_WARM,
        &sucrose::VISCOSITY,
        &sucrose::SOLUBILITY,
        &sucrose::SATURATION_TEMPERATURE,
        &sucrose::SUPERSATURATION,
    ];
    let mut sources = Vec::new();
    let tables = [&water[..], &air, &sucrose].map(|relations| table(relations, &mut sources));
    let list = sources.iter().enumerate().fold(String::new(), |mut list, (i, source)| {
        let _ = writeln!(list, "{}. {source}", i + 1);
        list
    });
    for wanted in tables.iter().chain([&list]) {
        assert!(PAGE.contains(wanted), "book/src/properties.md lacks this:\n{wanted}");
    }
}

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

/// One row a relation; a source is a number in the list of `sources`.
fn table(relations: &[&Relation], sources: &mut Vec<String>) -> String {
    let mut text = String::from("| function | takes | gives | accuracy | source |\n|---|---|---|---|---|\n");
    let mut before = "";
    for relation in relations {
        let takes = relation.inputs.iter().map(|range| {
            let (low, high, unit) = (range.low, range.high, range.unit.symbol);
            format!("{} {low} to {high} {unit}", range.argument)
        });
        let gives = match relation.output.symbol {
            "" => "a number",
            symbol => symbol,
        };
        let accuracy = if relation.accuracy == before {
            "the same"
        } else {
            relation.accuracy
        };
        before = relation.accuracy;
        let source = number(relation.source, sources);
        let (name, takes) = (relation.name, takes.collect::<Vec<_>>().join(", "));
        let _ = writeln!(text, "| `{name}` | {takes} | {gives} | {accuracy} | {source} |");
    }
    text
}

fn number(source: Source, sources: &mut Vec<String>) -> usize {
    let text = match source {
        Source::Published { text, at } => format!("{text}, {at}"),
        Source::Derived { text } => format!("Derived here: {text}"),
        other => format!("{other:?}"),
    };
    let known = sources.iter().position(|known| *known == text);
    1 + known.unwrap_or_else(|| {
        sources.push(text);
        sources.len() - 1
    })
}
