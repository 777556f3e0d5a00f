//! The evaporator: heat into the pan, a batch boil, what the pan holds.
//!
//! A pan is known by the heat that reaches the liquid; rates follow from it and from how the pan is fed: the same fire
//! boils 15 % less water while cold sap is added than while the pan boils down.
//!
//! ```
//! use sugaring::{air::StationPressure, evaporator::Pan, lot::Lot, units::*};
//! let station = StationPressure::measured(kpa(96.5))?;
//! let concentrate = Lot::of_mass(kg(132.17), brix(4.0)?, deg_c(3.7))?;
//! let pan = Pan::new(metre(1.22), metre(0.61))?;
//! let boil = pan.batch(&concentrate, brix(66.9)?, station)?;
//! assert_eq!(format!("{:.2}", boil.duration.get::<hours>()), "3.80");
//! assert_eq!(format!("{:.1}", boil.draw.brix), "26.6 °Bx");
//! # Ok::<(), sugaring::Error>(())
//! ```

pub use batch::{BATCH, Boil, Draw, Stage};
pub use boil::{BOIL_HEAT, BoilHeat, FINISH_BOIL, FinishBoil, boil_heat, finish_boil};
pub use heat::{
    HEAT_FROM_AREA, HEAT_FROM_HELD_LEVEL, HEAT_FROM_LEVEL_DROP, PanKind, heat_from_area, heat_from_held_level,
    heat_from_level_drop,
};
pub use hold_up::{HOLD_UP, HoldUp};
pub use pan::{PAN, Pan};
pub use rate::{EVAPORATION_RATE, FeedCondition, evaporation_rate};
pub use stages::StageKind;

pub(crate) use boil::boil_at;
pub(crate) use boiling_line::Fineness;
pub(crate) use fed::FedPan;
pub(crate) use heat::{area_heat_at, held_level_heat_at, level_drop_heat_at, water_rate_at};
pub(crate) use hold_up::hold_up_at;
pub(crate) use pan::{LEAST_DEPTH, RUNNING_DEPTH};
pub(crate) use stages::{PanShape, batch_at};

mod batch;
mod boil;
mod boiling_line;
mod fed;
mod heat;
mod hold_up;
mod limits;
mod pan;
mod rate;
mod stages;
