//! A bare number is given where a temperature is needed.
use sugaring::units::*;

fn boils_at(_: Temperature) {}

fn main() {
    boils_at(100.0);
}
