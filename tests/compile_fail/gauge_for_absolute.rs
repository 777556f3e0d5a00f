//! What a gauge shows is given where an absolute pressure is needed.
use sugaring::units::*;

fn barometer(_: Pressure) {}

fn main() {
    barometer(psi_gauge(14.0));
}
