//! A difference of temperatures is given where a temperature is needed.
use sugaring::units::*;

fn sap_at(_: Temperature) {}

fn main() {
    sap_at(delta_c(4.0));
}
