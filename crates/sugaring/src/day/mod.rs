//! The day's plan, from sap to bottles.
//!
//! [`plan`] takes [`DayInputs`] and answers a [`DayPlan`]: steps in order, amounts, hours, fuel, set points, marks
//! on the instruments, ranges, cautions, and what all of it rests on. `Display` prints a page to carry into the
//! sugarhouse; with the feature `json` the same goes out and comes in as JSON.

#[cfg(feature = "schema")]
pub use data::schemas;
pub use inputs::{
    Air, CheckPoint, Compensated, Container, DayInputs, Efficiency, Element, Evaporator, Finishing, Fuel, Heat,
    Hydrometer, HydrometerScale, Instrument, LeftInPan, Membrane, Moisture, Pan, PanKind, PanRun, Polarisation, Pump,
    PumpPoint, Refractometer, Run, Sap, SapReading, Span, Target, TemperatureModel, Until, Warming, Wood,
};
pub use page::System;
pub use plan::{
    AirToday, Balance, ContainerCost, Cost, DayPlan, Electricity, Figure, Filled, FuelLine, FuelVolume, How, Level,
    Mark, OtherHours, Remains, Remark, Rest, RestsOn, Settings, StageState, Step, Stop, Stream, SyrupMade, ToFinish,
    Totals, Watch, WaterRemoved, WithoutMembrane,
};
pub use planning::{plan, plan_watched};
pub use version::{NUMBERS, SCHEMA_VERSION};

mod assemble;
mod data;
mod inputs;
mod page;
mod plan;
mod planning;
mod ranges;
mod remarks;
mod resolve;
mod slots;
mod stations;
mod version;
