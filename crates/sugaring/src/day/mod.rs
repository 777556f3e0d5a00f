//! The day's plan, from sap to bottles.
//!
//! [`plan`] takes [`DayInputs`] and answers a [`DayPlan`]: steps in order, amounts, hours, fuel, set points, marks
//! on the instruments, ranges, cautions, and what all of it rests on. `Display` prints a page to carry into the
//! sugarhouse; with the feature `json` the same goes out and comes in as JSON.

pub use figure::Figure;
pub use inputs::{
    Air, Compensated, Container, DayInputs, Efficiency, Element, Evaporator, Finishing, Fuel, Heat, Hydrometer,
    HydrometerScale, Instrument, LeftInPan, Membrane, Moisture, Pan, PanKind, Polarisation, Pump, PumpPoint,
    Refractometer, Run, Sap, SapReading, Target, TemperatureModel, Until, Warming, Wood,
};
pub use page::System;
pub use plan::{
    AirToday, Balance, ContainerCost, Cost, DayPlan, Electricity, Filled, FuelLine, FuelVolume, How, Level, Mark,
    OtherHours, Remains, Remark, Rest, RestsOn, Settings, StageState, Step, Stop, Stream, SyrupMade, ToFinish, Totals,
    Watch, WaterRemoved, WithoutMembrane,
};
pub use planning::{plan, plan_watched};
#[cfg(feature = "schema")]
pub use schema::schemas;

mod air;
mod assemble;
mod echo;
mod face;
mod figure;
mod inputs;
#[cfg(feature = "json")]
mod json;
mod limits;
mod model;
mod outcome;
mod page;
mod plan;
mod planning;
mod ranges;
mod read;
mod remarks;
mod sap;
#[cfg(feature = "schema")]
mod schema;
mod slots;
mod stations;
mod together;
mod typed;

/// Version of the shape of inputs and plans.
pub const SCHEMA_VERSION: u32 = 1;
/// Version of the results: under the same version and lock file the same inputs give the same bits.
pub const NUMBERS: &str = "0.1";
