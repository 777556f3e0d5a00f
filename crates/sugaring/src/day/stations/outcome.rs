//! What one set of numbers comes to: the day's streams, times and amounts in SI.

use crate::finish;
use alloc::vec::Vec;

/// A liquid: mass, °Brix, temperature, volume at that temperature.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct State {
    pub(crate) mass: f64,
    pub(crate) brix: f64,
    pub(crate) kelvin: f64,
    pub(crate) volume: f64,
}

impl State {
    pub(crate) fn sugar(&self) -> f64 {
        self.mass * self.brix / 100.0
    }
}

#[derive(Clone, Debug)]
pub(crate) struct Outcome {
    pub(crate) pressure: f64,
    pub(crate) water_boils_at: f64,
    pub(crate) tank: State,
    /// What stood in the pan from before.
    pub(crate) left: Option<State>,
    pub(crate) rig: Option<RigOutcome>,
    pub(crate) pan: PanOutcome,
    pub(crate) finish: Option<FinishOutcome>,
    /// Where the syrup boils when it is done.
    pub(crate) finishing_temperature: f64,
    pub(crate) rise: f64,
    /// Syrup made, or the syrup that the draw is enough for.
    pub(crate) syrup: SyrupOutcome,
    pub(crate) clock: Clock,
    pub(crate) fire: FuelOutcome,
    pub(crate) burner: Option<FuelOutcome>,
    pub(crate) packing: Option<PackingOutcome>,
    pub(crate) cost: CostOutcome,
}

impl Outcome {
    /// Whether the day ends with syrup rather than with a draw to be finished.
    pub(crate) fn is_finished(&self) -> bool {
        self.finish.is_some() || self.pan.finishes
    }
}

#[derive(Clone, Debug, Default)]
pub(crate) struct RigOutcome {
    pub(crate) duration: f64,
    pub(crate) permeate_mass: f64,
    pub(crate) permeate_volume: f64,
    pub(crate) permeate_brix: f64,
    pub(crate) concentrate: State,
    /// Flows of the whole rig; of a single pass both are the same.
    pub(crate) first_flow: f64,
    pub(crate) last_flow: f64,
    pub(crate) feed: f64,
    pub(crate) single_pass: bool,
    /// The tank at the end; none where it would pass 45 °C.
    pub(crate) warms_to: Option<f64>,
    pub(crate) duration_coupled: Option<f64>,
    pub(crate) energy: f64,
    pub(crate) permeance: f64,
    pub(crate) temperature_factor: f64,
    pub(crate) osmotic_limit: f64,
    /// Least crossflow and the crossflow of the feed, as shares of the rated.
    pub(crate) least_crossflow: f64,
    pub(crate) feed_crossflow: f64,
    pub(crate) element_recovery: f64,
    /// Permeate to keep.
    pub(crate) kept: f64,
    /// Of it, for the rinse.
    pub(crate) rinse: f64,
}

#[derive(Clone, Debug)]
pub(crate) struct PanOutcome {
    /// What is boiled, without what stood in the pan.
    pub(crate) fed: State,
    pub(crate) heat: f64,
    pub(crate) water_rate: f64,
    pub(crate) running_volume: f64,
    pub(crate) least_depth: f64,
    /// Cold.
    pub(crate) first_fill: f64,
    pub(crate) stages: Vec<StageOutcome>,
    pub(crate) duration: f64,
    pub(crate) energy: f64,
    pub(crate) water: f64,
    pub(crate) draw: State,
    /// Whether the draw is syrup.
    pub(crate) finishes: bool,
    pub(crate) depth_if_finished: f64,
    pub(crate) continuous_hold_up: f64,
}

#[derive(Clone, Copy, Debug)]
pub(crate) struct StageOutcome {
    pub(crate) kind: &'static str,
    pub(crate) duration: f64,
    pub(crate) water: f64,
    pub(crate) fed: f64,
    pub(crate) brix: f64,
    pub(crate) mass: f64,
    pub(crate) depth: f64,
    pub(crate) kelvin: f64,
}

#[derive(Clone, Copy, Debug)]
pub(crate) struct FinishOutcome {
    pub(crate) heat: f64,
    pub(crate) water: f64,
    pub(crate) energy: f64,
    pub(crate) duration: f64,
}

#[derive(Clone, Copy, Debug)]
pub(crate) struct SyrupOutcome {
    pub(crate) brix: f64,
    /// Made, losses taken off.
    pub(crate) mass: f64,
    /// At 20 °C.
    pub(crate) volume: f64,
    pub(crate) lost: f64,
}

/// Seconds after the start.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Clock {
    pub(crate) boil: f64,
    pub(crate) finish: f64,
    pub(crate) end: f64,
    pub(crate) in_sequence: f64,
    pub(crate) overlapped: f64,
    /// Rig and pan on one tank at once, where the day allows it.
    pub(crate) together: Option<f64>,
}

#[derive(Clone, Copy, Debug)]
pub(crate) struct FuelOutcome {
    pub(crate) mass: Option<f64>,
    pub(crate) volume: Option<f64>,
    pub(crate) energy: f64,
    pub(crate) cost: Option<f64>,
}

#[derive(Clone, Debug)]
pub(crate) struct PackingOutcome {
    pub(crate) fill_temperature: f64,
    pub(crate) packing: finish::Packing,
    /// What the containers hold, at 20 °C.
    pub(crate) packed: f64,
}

#[derive(Clone, Debug, Default)]
pub(crate) struct CostOutcome {
    pub(crate) electricity: Option<f64>,
    pub(crate) containers: Option<f64>,
    pub(crate) sum: f64,
    pub(crate) left_out: Vec<&'static str>,
}
