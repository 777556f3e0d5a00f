//! What a hydrometer shows is given where the true °Brix is needed.
use sugaring::{instrument::reading, sucrose, units::*};

fn main() {
    let _ = sucrose::density(reading(59.0), deg_c(20.0));
}
