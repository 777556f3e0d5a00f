//! A temperature is given where a difference of temperatures is needed.
use sugaring::units::*;

fn finishing_rise(_: TemperatureDifference) {}

fn main() {
    finishing_rise(deg_f(7.1));
}
