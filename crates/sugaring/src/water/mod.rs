//! Water: the boiling line, the latent heat, the liquid that sap, permeate and syrup are made of.
//!
//! Every function is the release named in its docs, with the range that the release gives; what each covers is
//! readable as data in the [`Relation`](crate::Relation) of the same name in capitals.

pub use latent::{
    LATENT_HEAT, SATURATED_LIQUID_DENSITY, SATURATED_VAPOUR_DENSITY, latent_heat, saturated_liquid_density,
    saturated_vapour_density,
};
pub use liquid::{DENSITY, ENTHALPY, SPECIFIC_HEAT, density, enthalpy, specific_heat};
pub use saturation::{SATURATION_PRESSURE, SATURATION_TEMPERATURE, saturation_pressure, saturation_temperature};
pub use transport::{THERMAL_CONDUCTIVITY, VISCOSITY, thermal_conductivity, viscosity};

pub(crate) use latent::{latent_heat_at, saturated_liquid_enthalpy_at, saturated_vapour_enthalpy_at};
pub(crate) use liquid::{density_at, enthalpy_at, specific_heat_at};
pub(crate) use saturation::{Line, saturation_pressure_at, saturation_temperature_at, saturation_temperature_within};
pub(crate) use transport::{thermal_conductivity_at, viscosity_at};

mod latent;
mod liquid;
mod saturation;
mod transport;
