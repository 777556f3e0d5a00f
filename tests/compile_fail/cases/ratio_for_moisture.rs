//! A share of water is given without saying of what.
use sugaring::{fuel::Fuel, units::*};

fn main() {
    let _ = Fuel::wood("sugar maple", percent(25.0));
}
