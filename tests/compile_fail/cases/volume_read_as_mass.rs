//! A volume is read in a unit of mass.
use sugaring::units::*;

fn main() {
    let _ = gal(40.0).get::<lb>();
}
