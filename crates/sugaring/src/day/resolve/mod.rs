//! The day resolved: from inputs to numbers in slots.

pub(crate) use checks::{exact, gauge, priced, uncertainty};
pub(crate) use limits::MOST_SAMPLES;
pub(crate) use model::{
    ContainerModel, FinishingModel, FuelKind, FuelModel, HeatModel, LeftModel, Model, PanModel, PumpModel, RigModel,
    RunModel, TargetModel,
};
pub(crate) use resolver::Resolver;
pub(crate) use sap::{Amount, LotModel};

mod air;
mod burning;
mod checks;
mod default;
mod finish;
mod limits;
mod model;
mod pan;
mod resolver;
mod rig;
mod sap;
mod spread;
