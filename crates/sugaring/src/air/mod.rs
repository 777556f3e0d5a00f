//! Air pressure: the pressure in the sugarhouse, the three numbers that are called a barometer's, and the standard
//! atmosphere.
//!
//! Water's boiling point moves 0.28 K with each kPa, and syrup's with it; a wrong *kind* of pressure costs more than
//! a bad instrument. [`StationPressure`] is made by naming the kind.

pub use origin::Origin;
pub use reduction::{
    ALTIMETER_SETTING, FROM_ALTIMETER_SETTING, FROM_SEA_LEVEL, SEA_LEVEL_PRESSURE, altimeter_setting,
    sea_level_pressure,
};
pub use standard::{ALTITUDE_AT_PRESSURE, PRESSURE_AT_ALTITUDE, altitude_at_pressure, pressure_at_altitude};
pub use station::{FROM_ALTITUDE, FROM_BOILING_WATER, STATION_PRESSURE, StationPressure};

mod origin;
mod reduction;
mod standard;
mod station;
