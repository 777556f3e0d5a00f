//! Hydrometers and refractometers against their tables, and within their limits.

use sugaring::{
    instrument::{self, Hydrometer, Refractometer, reading},
    units::*,
};
use sugaring_tests::{limits, tables};

#[test]
fn tables_stand() {
    tables::INSTRUMENT.judge();
}

/// A reading is held to narrower limits than its relation's: those of water and of 85 °Bx at its temperature.
#[test]
fn limits_hold_as_written() {
    let float = || Hydrometer::brix(deg_f(60.0));
    let hand = || Refractometer::compensated(deg_c(10.0), deg_c(30.0));
    limits(&instrument::HYDROMETER, 1, |t| float()?.truth(reading(20.0), kelvin(t)));
    limits(&instrument::HYDROMETER, 1, |t| float()?.reading(brix(66.9)?, kelvin(t)));
    limits(&instrument::HYDROMETER, 2, |b| float()?.reading(brix(b)?, deg_c(20.0)));
    limits(&instrument::REFRACTOMETER, 1, |b| {
        hand()?.reading(brix(b)?, deg_c(20.0))
    });
}
