//! The tables of the property rooms: what is printed, and the relation that each row judges.

pub use figure::{Figure, Subject};
pub use table::{Judged, Room, Table};

use sugaring::Relation;

mod air;
mod figure;
mod instrument;
mod sucrose;
mod table;
pub mod units;
mod water;

/// Tables of the room `water`.
pub static WATER: Room = Room {
    name: "water",
    tables: &water::TABLES,
};
/// Tables of the room `air`.
pub static AIR: Room = Room {
    name: "air",
    tables: &air::TABLES,
};
/// Tables of the room `sucrose`.
pub static SUCROSE: Room = Room {
    name: "sucrose",
    tables: &sucrose::TABLES,
};
/// Tables of the room `instrument`.
pub static INSTRUMENT: Room = Room {
    name: "instrument",
    tables: &instrument::TABLES,
};
/// Tables of the room `units`.
pub static UNITS: Room = Room {
    name: "units",
    tables: &units::TABLES,
};

/// Every room with tables.
pub static ROOMS: [&Room; 5] = [&WATER, &AIR, &SUCROSE, &INSTRUMENT, &UNITS];

/// Every row that judges the result of `relation` itself, with our figure: the points of a picture.
///
/// ```
/// use sugaring::water;
/// let points = sugaring_tests::tables::points(&water::DENSITY);
/// let hottest = points.iter().filter_map(|point| point.row.celsius()).fold(0.0, f64::max);
/// assert!(points.len() > 10 && hottest > 90.0);
/// assert!(points.iter().all(|point| point.value > 950.0 && (point.figure - point.value).abs() < 0.1));
/// ```
pub fn points(relation: &Relation) -> Vec<Judged> {
    let tables = ROOMS.iter().flat_map(|room| room.tables);
    let judged = tables.flat_map(Table::judged);
    judged
        .filter(|judged| judged.subject.name == relation.name && judged.subject.part.is_none())
        .collect()
}
