//! Fuel: wood, cord, propane and others, efficiency, and how much of it a heat takes.
//!
//! Heat of a fuel is *gross* (its steam condensed) or *net* (its steam lost up the chimney), water in wood is
//! counted *wet* or *dry*; both pairs differ by more than any other error here, so each has its
//! own constructor and a bare percentage none.
//!
//! ```
//! use sugaring::{fuel::{Efficiency, Fuel, Moisture}, units::*};
//! let maple = Fuel::wood("sugar maple", Moisture::wet_basis(percent(25.0))?)?;
//! let burned = maple.needed(mj(300.0), Efficiency::of_gross(percent(45.0))?)?;
//! assert!((burned.mass.unwrap().get::<kg>() - 44.44).abs() < 0.01);
//! # Ok::<(), sugaring::Error>(())
//! ```

pub use efficiency::{EFFICIENCY, Efficiency, HeatBasis};
pub use fuels::{FUELS, FuelRow};
pub use heat::{FuelUse, HEAT_RATE, HeatContent, HeatPerVolume, NEEDED};
pub use moisture::{DRY_BASIS, Moisture, WET_BASIS};
pub use species::{SPECIES, SpeciesRow, WoodGroup};
pub use station::{Fuel, OwnFuel};
pub use wood::WOOD;

pub(crate) use wood::SOLID_SHARE;

mod efficiency;
mod fuels;
mod heat;
mod moisture;
mod species;
mod station;
mod wood;
