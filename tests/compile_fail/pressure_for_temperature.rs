//! A pressure is given where a temperature is needed.
use sugaring::units::*;

fn boils_at(_: Temperature) {}

fn main() {
    boils_at(kpa(100.0));
}
