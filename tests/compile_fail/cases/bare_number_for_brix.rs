//! A bare number is given for °Brix, unchecked.
use sugaring::{sucrose, units::*};

fn main() {
    let _ = sucrose::density(66.9, deg_c(20.0));
}
