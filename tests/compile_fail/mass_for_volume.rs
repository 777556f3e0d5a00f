//! A mass is given where a volume is needed.
use sugaring::{day::Sap, units::*};

fn main() {
    let _ = Sap::of_volume(kg(170.0), brix(2.0).unwrap(), deg_c(4.0));
}
