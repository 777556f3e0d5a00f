//! The plan as data: what [`plan`](super::plan) answers, and what the JSON holds.

pub use bottles::{Filled, Rest};
pub use figure::Figure;
pub use said::{How, Level, Remark, RestsOn};
pub use step::{Mark, Settings, StageState, Step, Stop, Stream, Watch};
pub use totals::{ContainerCost, Cost, Electricity, FuelLine, FuelVolume, SyrupMade, ToFinish, Totals, WaterRemoved};
pub use whole::{AirToday, Balance, DayPlan, OtherHours, Remains, WithoutMembrane};

pub(crate) use figure::Interval;

mod bottles;
mod figure;
mod said;
mod step;
mod totals;
mod whole;
