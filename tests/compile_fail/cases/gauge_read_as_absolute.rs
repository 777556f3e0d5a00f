//! A gauge pressure is read in a unit of absolute pressure.
use sugaring::units::*;

fn main() {
    let _ = bar_gauge(7.6).get::<bar>();
}
