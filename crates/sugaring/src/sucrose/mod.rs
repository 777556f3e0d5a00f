//! Sucrose solutions, from sap to syrup: density, heat, viscosity, solubility, and one water activity behind boiling
//! point, osmotic pressure and freezing point, so that they cannot disagree.
//!
//! Strength is °Brix, true mass per cent. Maple is not pure sucrose: what its other solids do is said where it counts.

pub use activity::{OSMOTIC_COEFFICIENT, WATER_ACTIVITY, osmotic_coefficient, water_activity};
pub use boiling::{
    BOILING_POINT_ELEVATION, BOILING_TEMPERATURE, BRIX_FROM_BOILING, PRESSURE_FROM_BOILING, boiling_point_elevation,
    boiling_temperature, brix_from_boiling, pressure_from_boiling,
};
pub use conduction::{THERMAL_CONDUCTIVITY, thermal_conductivity};
pub use density::{BRIX_FROM_DENSITY, DENSITY, brix_from_density, density};
pub use evaporation::{EXCESS_ENTHALPY_OF_WATER, HEAT_OF_EVAPORATION, excess_enthalpy_of_water, heat_of_evaporation};
pub use freezing::{BRIX_FROM_FREEZING, FREEZING_TEMPERATURE, brix_from_freezing, freezing_temperature};
pub use heat::{
    ENTHALPY, HEAT_TO_WARM, SPECIFIC_HEAT, SPECIFIC_HEAT_BUBNIK, enthalpy, heat_to_warm, specific_heat,
    specific_heat_bubnik,
};
pub use osmosis::{BRIX_FROM_OSMOTIC_PRESSURE, OSMOTIC_PRESSURE, brix_from_osmotic_pressure, osmotic_pressure};
pub use refraction::{BRIX_FROM_REFRACTIVE_INDEX, REFRACTIVE_INDEX, brix_from_refractive_index, refractive_index};
pub use scale::{brix_from_scale, on_scale};
pub use solubility::{
    SATURATION_TEMPERATURE, SOLUBILITY, SUPERSATURATION, saturation_temperature, solubility, supersaturation,
};
pub use viscosity::{VISCOSITY, VISCOSITY_GENOTELLE, viscosity, viscosity_genotelle};
pub use volume::{CONTRACTION, SUGAR_PER_VOLUME, WEIGHT_IN_AIR, contraction, sugar_per_volume, weight_in_air};

pub(crate) use activity::{osmotic_coefficient_at, water_activities};
pub(crate) use boiling_point::{
    boiling_at, boiling_point_elevations, boiling_temperatures, brixes_from_boiling, pressures_from_boiling,
};
pub(crate) use conduction::thermal_conductivity_at;
pub(crate) use density::{DensityIsotherm, brix_from_density_at, brixes_from_density, density_at};
pub(crate) use evaporation::{excess_enthalpy_of_water_at, heats_of_evaporation};
pub(crate) use freezing::{brixes_from_freezing, freezing_at, freezing_temperatures};
pub(crate) use heat::{enthalpy_at, heat_to_warm_at, specific_heat_at, specific_heat_bubnik_at};
pub(crate) use osmosis::{OsmosisIsotherm, brixes_from_osmotic_pressure, osmotic_pressure_at};
pub(crate) use refraction::{brix_from_refractive_index_at, brixes_from_refractive_index, refractive_index_at};
pub(crate) use solubility::{saturation_temperatures, solubility_at, supersaturation_at};
pub(crate) use viscosity::{ViscosityIsotherm, viscosity_at, viscosity_genotelle_at};
pub(crate) use volume::{contraction_at, sugar_per_volume_at, weight_in_air_at};

mod activity;
mod boiling;
mod boiling_point;
mod conduction;
mod density;
mod evaporation;
mod freezing;
mod heat;
mod osmosis;
mod refraction;
mod scale;
#[doc(hidden)]
pub mod scales;
mod solubility;
mod strength;
mod viscosity;
mod volume;
