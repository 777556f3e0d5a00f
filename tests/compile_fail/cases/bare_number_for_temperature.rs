//! A bare number is given where a temperature is needed.
use sugaring::{units::*, water};

fn main() {
    let _ = water::saturation_pressure(100.0);
}
