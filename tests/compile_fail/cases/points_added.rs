//! Two temperatures are added.
use sugaring::units::*;

fn main() {
    let _ = deg_c(20.0) + deg_c(4.0);
}
