//! Dissolved mass per volume is given where mass per volume is needed.
use sugaring::units::*;

fn syrup(_: Density) {}

fn main() {
    syrup(gram_per_litre(890.0));
}
