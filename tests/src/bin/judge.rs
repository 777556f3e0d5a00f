//! How many rows and vectors this build misses, without stopping at the first: what `cargo xtask mutate` asks of each
//! mutant.

use sugaring_tests::{
    tables::{ROOMS, Room},
    vectors,
};

fn main() {
    let rows: usize = ROOMS.iter().copied().map(Room::misses).map(|misses| misses.len()).sum();
    let (_, vectors) = vectors::functions_of_numbers();
    let worst = vectors.iter().max_by(|a, b| a.change.total_cmp(&b.change));
    let (change, name) = worst.map_or((0.0, "none"), |miss| (miss.change, miss.name.as_str()));
    println!("rows {rows} vectors {} change {change:e} {name}", vectors.len());
}
