//! A mass is given where a volume is needed.
use sugaring::units::*;

fn tank(_: Volume) {}

fn main() {
    tank(kg(170.0));
}
