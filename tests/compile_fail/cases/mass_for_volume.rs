//! A mass is given where a volume is needed.
use sugaring::{lot::Lot, units::*};

fn main() {
    let _ = Lot::of_volume(kg(170.0), brix(2.0).unwrap(), deg_c(4.0));
}
