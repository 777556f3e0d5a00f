//! The finish: where syrup is done today, how much to fill hot, what fits into which containers.
//!
//! ```
//! use sugaring::{air::StationPressure, finish, units::*};
//! let station = StationPressure::measured(kpa(96.5))?;
//! let done = finish::finishing_point(brix(66.9)?, station, None)?;
//! assert_eq!(format!("{:.1}", done.temperature.get::<deg_c>()), "102.8");
//! let hot = finish::hot_fill(ml(500.0), brix(66.9)?, deg_c(85.0))?;
//! assert_eq!(format!("{:.1}", hot.get::<ml>()), "514.9");
//! # Ok::<(), sugaring::Error>(())
//! ```

pub use container::{Container, Material};
pub use fill::{HOT_FILL, hot_fill};
pub use legal::{Density, Legality, legal};
pub use pack::{Because, PACK, PackedRow, Packing, Rest, pack};
pub use point::{FINISHING_POINT, FinishingPoint, finishing_point};
pub use remark::PackingRemark;

pub use crate::jurisdiction::{CHECK_LOCAL_RULE, JurisdictionRow};

mod bottles;
mod container;
mod fill;
mod legal;
mod pack;
mod point;
mod remark;
