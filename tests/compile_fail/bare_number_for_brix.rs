//! A bare number is given for °Brix, unchecked.
use sugaring::units::*;

fn finish_at(_: Brix) {}

fn main() {
    finish_at(66.9);
}
