//! A pressure of no named kind is given where the sugarhouse's own is needed.
use sugaring::{sucrose, units::*};

fn main() {
    let _ = sucrose::boiling_temperature(brix(66.9).unwrap(), kpa(96.5));
}
