//! Membranes: concentrating sap by reverse osmosis.
//!
//! An [`Element`] comes from the figures on its label; a [`Rig`] is elements in parallel and in series at one gauge
//! pressure. Water passes by solution-diffusion, J = A·(ΔP − Δπ), against the osmotic pressure of the sap at the
//! membrane, which a film makes sweeter than the sap beside it. The film is anchored to the rating and needs no
//! geometry. Everything is integrated along the element: °Brix rises and crossflow falls from its inlet to its outlet.
//!
//! Pressures are gauge pressures and the permeate runs into an open pail, so altitude does not matter. Flows are
//! volumes at the temperature of the sap.

pub use element::{Element, ElementRating, RATING};
pub use factor::{FactorModel, TEMPERATURE_FACTOR, temperature_factor};
pub use pass::{PASS_ONCE, Pass};
pub use polarisation::Polarisation;
pub use pump::{PUMP_ENERGY, Pump, PumpPoint, pump_energy};
pub use recirculation::{Until, Warming};
pub use rig::{PERMEATE_FLOW, Rig};
pub use rinse::Rinse;
pub use run::{LimitedBy, Permeate, Recirculation, TrajectoryPoint, Warmed};
pub use test_water::{TEST_WATER_OSMOTIC_PRESSURE, test_water_osmotic_pressure};

pub(crate) use fidelity::Fidelity;
pub(crate) use pump::{EFFICIENCY, FEED};

mod batch;
mod element;
mod factor;
mod fidelity;
mod local;
mod options;
mod pass;
mod polarisation;
mod pump;
mod recirculation;
mod rig;
mod rinse;
mod run;
#[cfg(test)]
mod sample;
mod test_water;
mod train;
mod unreachable;
mod warm;
