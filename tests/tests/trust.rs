//! No function of the property rooms goes without a row.

use std::collections::BTreeSet;

use sugaring::catalogue;
use sugaring_tests::tables::{ROOMS, Table};

/// Modules of the catalogue whose functions are properties.
const PROPERTIES: [&str; 4] = ["water", "air", "sucrose", "scale"];

#[test]
fn every_property_has_a_row() {
    let tables = ROOMS.iter().flat_map(|room| room.tables);
    let judged: BTreeSet<&str> = tables
        .flat_map(Table::judged)
        .filter(|row| row.subject.part.is_none())
        .map(|row| row.subject.name)
        .collect();
    let functions = catalogue::functions().iter();
    let without: Vec<&str> = functions
        .filter(|function| PROPERTIES.contains(&function.module))
        .map(|function| function.relation.name)
        .filter(|name| !judged.contains(name))
        .collect();
    assert!(without.is_empty(), "without a row: {without:?}");
}
