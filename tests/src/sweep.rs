//! Sweeps over the range of an argument.

use sugaring::{Error, Range, air::StationPressure, units::kpa};

/// As a barometer shows it.
///
/// # Errors
/// Out of range.
pub fn station(kilopascal: f64) -> Result<StationPressure, Error> {
    StationPressure::measured(kpa(kilopascal))
}

/// The value at `share` of a range, in the unit people read.
pub fn at(range: &Range, share: f64) -> f64 {
    // The upper limit itself, which the sum may miss.
    if share >= 1.0 {
        range.high
    } else {
        range.low + share * (range.high - range.low)
    }
}

/// Panics where values do not rise, or do not fall, throughout.
pub fn is_monotone(name: &str, rises: bool, values: impl Iterator<Item = f64>) {
    let mut last = None;
    for value in values {
        assert!(value.is_finite(), "{name}");
        if let Some(last) = last {
            assert!(
                if rises { value > last } else { value < last },
                "{name}: {last} then {value}"
            );
        }
        last = Some(value);
    }
}
