//! What a gauge shows is given where an absolute pressure is needed.
use sugaring::{units::*, water};

fn main() {
    let _ = water::saturation_temperature(psi_gauge(14.0));
}
