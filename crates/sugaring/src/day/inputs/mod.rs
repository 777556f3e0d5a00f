//! What a day is planned from. The names are the keys of the JSON; what is left out has a default that the plan names.

pub use air::Air;
pub use day::DayInputs;
pub use evaporator::{Evaporator, Heat, LeftInPan, Pan, PanKind, PanRun};
pub use finish::{Container, Finishing, Target};
pub use fuel::{Efficiency, Fuel, Moisture, Wood};
pub use instrument::{CheckPoint, Compensated, Hydrometer, HydrometerScale, Instrument, Refractometer, Span};
pub use membrane::{Element, Membrane, Polarisation, Pump, PumpPoint, Run, TemperatureModel, Until, Warming};
pub use sap::{Sap, SapReading};

mod air;
mod day;
mod evaporator;
mod finish;
mod fuel;
mod instrument;
mod membrane;
mod options;
mod sap;
