//! An absolute pressure is given where a gauge's is needed.
use sugaring::units::*;

fn pump(_: GaugePressure) {}

fn main() {
    pump(bar(7.6));
}
