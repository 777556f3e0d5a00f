//! Quantities, unit words, °Brix, measured values and prices.
//!
//! One word both makes and reads: [`gal`](fn@gal)`(40.0)` is a volume, `volume.get::<gal>()` its gallons. The
//! words are lower case and the same in every language; `gal` is the US gallon. Factors are exact
//! where the definition is exact.
//!
//! Quantities are `uom` SI types under the names below. A quantity of the wrong kind does not compile: rustc says
//! `E0308` and shows the exponents of length, mass, time and temperature of both; write the word of
//! the right kind, such as [`deg_c`](fn@deg_c) for a temperature or [`delta_c`](fn@delta_c) for a difference of temperatures.
//!
//! ```
//! use sugaring::units::*;
//! let tank = gal(40.0);
//! assert!((tank.get::<litre>() - 151.416_471_36).abs() < 1e-9);
//! assert_eq!(deg_f(212.0), deg_c(100.0));
//! ```
//! A difference of temperatures is not a temperature:
//! ```compile_fail,E0308
//! use sugaring::units::*;
//! let warm: Temperature = delta_c(5.0);
//! ```

pub use brix::{Brix, brix};
pub use dimension::Dimension;
pub use gauge::GaugePressure;
pub use heading::heading;
pub use measured::{Given, Measured, Uncertain, measured};
pub use others::{Count, Permeance};
pub use price::{Price, price};
pub use quantity::Quantity;
pub use scale::{
    ApparentRelativeDensity2020, Baume2020, Baume6060F, Marks, OnScale, RelativeDensity204, RelativeDensity2020,
    RelativeDensity6060F, Scale,
};
pub use system::System;
pub use text::parse;
pub use unit::Unit;
pub use value::{
    Area, Concentration, Conductivity, Density, Energy, EnergyPerMass, Flow, Length, Mass, MassFlow, PerKelvin, Power,
    Pressure, Ratio, SpecificHeat, Temperature, TemperatureDifference, Time, Value, Viscosity, Volume, Word,
};
pub use words::*;

pub(crate) use scale::Graduation;
pub(crate) use spelling::{clipped, quoted};
pub(crate) use value::Si;

mod brix;
mod dimension;
mod gauge;
mod heading;
mod meant;
mod measured;
mod others;
mod price;
mod quantity;
mod refusal;
mod scale;
mod schema;
mod spelling;
mod system;
mod text;
mod unit;
mod value;
mod words;
