//! The day as stations see it: every number in its slot.

use crate::{
    day::{
        inputs::{PanKind, Polarisation, TemperatureModel, Warming},
        plan::{How, Remark, RestsOn},
        resolve::{air::TodaysAir, sap::LotModel},
        slots::{Slot, Slots},
    },
    finish,
    instrument::Instrument,
    membrane,
    units::Price,
};
use alloc::{string::String, vec::Vec};

/// The day as stations see it.
#[derive(Clone, Debug)]
pub(crate) struct Model {
    pub(crate) slots: Slots,
    pub(crate) seed: u64,
    pub(crate) samples: u32,
    pub(crate) air: TodaysAir,
    pub(crate) lots: Vec<LotModel>,
    pub(crate) rig: Option<RigModel>,
    pub(crate) pan: PanModel,
    pub(crate) fuel: FuelModel,
    pub(crate) finishing: Option<FinishingModel>,
    pub(crate) target: TargetModel,
    pub(crate) instruments: Vec<(String, Instrument)>,
    pub(crate) containers: Vec<ContainerModel>,
    pub(crate) fill_temperature: Slot,
    pub(crate) electricity: Option<Price>,
    pub(crate) labour: Option<Price>,
    pub(crate) remarks: Vec<Remark>,
    pub(crate) rests_on: Vec<RestsOn>,
}

#[derive(Clone, Debug)]
pub(crate) struct RigModel {
    pub(crate) flow: Slot,
    pub(crate) rated_pressure: Slot,
    pub(crate) rated_temperature: Slot,
    pub(crate) salt: Slot,
    pub(crate) recovery: Slot,
    pub(crate) rejection: Slot,
    pub(crate) permeance: Option<Slot>,
    /// One factor on the permeance for each element, train by train.
    pub(crate) shares: Vec<Slot>,
    pub(crate) parallel: u32,
    pub(crate) series: u32,
    pub(crate) pressure: Slot,
    pub(crate) pump: PumpModel,
    pub(crate) temperature_model: TemperatureModel,
    /// Standard normal: its size depends on the tank's temperature.
    pub(crate) factor_error: Slot,
    pub(crate) polarisation: Polarisation,
    pub(crate) film_factor: Slot,
    pub(crate) retention: Slot,
    pub(crate) element_drop: Slot,
    pub(crate) prefilter_drop: Slot,
    pub(crate) back_pressure: Slot,
    pub(crate) hold_up: Slot,
    pub(crate) rinse: Slot,
    pub(crate) warming: Warming,
    pub(crate) run: RunModel,
    pub(crate) how: How,
}

#[derive(Clone, Debug)]
pub(crate) struct PumpModel {
    pub(crate) flow: Slot,
    /// In place of the flow.
    pub(crate) points: Vec<membrane::PumpPoint>,
    pub(crate) efficiency: Slot,
    /// In place of the efficiency.
    pub(crate) power: Option<Slot>,
}

#[derive(Clone, Copy, Debug)]
pub(crate) enum RunModel {
    Brix(Slot),
    Volume(Slot),
    Recovery(Slot),
    Duration(Slot),
    SinglePass(Slot),
}

#[derive(Clone, Debug)]
pub(crate) struct PanModel {
    pub(crate) length: Slot,
    pub(crate) width: Slot,
    pub(crate) running_depth: Slot,
    pub(crate) least_depth: Slot,
    pub(crate) heat: HeatModel,
    /// Factor on the heat.
    pub(crate) heat_error: Slot,
    pub(crate) left: Option<LeftModel>,
    pub(crate) how: How,
}

#[derive(Clone, Copy, Debug)]
pub(crate) enum HeatModel {
    HeldLevel { added: Slot, feed: Slot },
    LevelDrop(Slot),
    Power(Slot),
    AreaRule(PanKind),
}

#[derive(Clone, Copy, Debug)]
pub(crate) struct LeftModel {
    pub(crate) volume: Slot,
    pub(crate) brix: Slot,
    pub(crate) kelvin: Slot,
}

#[derive(Clone, Debug)]
pub(crate) struct FuelModel {
    pub(crate) name: String,
    pub(crate) kind: FuelKind,
    pub(crate) efficiency: Slot,
    pub(crate) of_net: bool,
    pub(crate) price: Option<Price>,
}

#[derive(Clone, Debug)]
pub(crate) enum FuelKind {
    /// Wood: its moisture (wet basis), and a factor on the solid wood in a cord.
    Wood {
        moisture: Slot,
        cord: Slot,
    },
    Named,
}

#[derive(Clone, Debug)]
pub(crate) struct FinishingModel {
    pub(crate) heat: Slot,
    pub(crate) capacity: Option<Slot>,
    pub(crate) fuel: FuelModel,
    pub(crate) how: How,
}

#[derive(Clone, Copy, Debug)]
pub(crate) struct TargetModel {
    /// °Brix aimed at, guard included.
    pub(crate) brix: f64,
    /// What the hydrometer allows: a difference of °Brix.
    pub(crate) error: Slot,
    pub(crate) rise: Slot,
    /// How far the boiling relation is off: a difference of temperatures.
    pub(crate) relation_error: Slot,
    pub(crate) lost: Slot,
}

#[derive(Clone, Debug)]
pub(crate) struct ContainerModel {
    pub(crate) name: String,
    pub(crate) volume: Slot,
    pub(crate) stock: u32,
    pub(crate) brimful: Option<Slot>,
    pub(crate) material: Option<finish::Material>,
    pub(crate) mass: Option<Slot>,
    pub(crate) kelvin: Slot,
    pub(crate) price: Option<Price>,
}
