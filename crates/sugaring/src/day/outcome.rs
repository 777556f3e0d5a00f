//! What one set of numbers comes to: the day's streams, times and amounts in SI.

use alloc::vec::Vec;

use crate::finish;

/// A liquid: mass, °Brix, temperature, volume at that temperature.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct State {
    pub(super) mass: f64,
    pub(super) brix: f64,
    pub(super) kelvin: f64,
    pub(super) volume: f64,
}

impl State {
    pub(super) fn sugar(&self) -> f64 {
        self.mass * self.brix / 100.0
    }
}

#[derive(Clone, Debug)]
pub(super) struct Outcome {
    pub(super) pressure: f64,
    pub(super) water_boils_at: f64,
    pub(super) tank: State,
    /// What stood in the pan from before.
    pub(super) left: Option<State>,
    pub(super) rig: Option<RigOutcome>,
    pub(super) pan: PanOutcome,
    pub(super) finish: Option<FinishOutcome>,
    /// Where the syrup boils when it is done.
    pub(super) finishing_temperature: f64,
    pub(super) rise: f64,
    /// Syrup made, or the syrup that the draw is enough for.
    pub(super) syrup: SyrupOutcome,
    pub(super) clock: Clock,
    pub(super) fire: FuelOutcome,
    pub(super) burner: Option<FuelOutcome>,
    pub(super) packing: Option<PackingOutcome>,
    pub(super) cost: CostOutcome,
}

impl Outcome {
    /// Whether the day ends with syrup rather than with a draw to be finished.
    pub(super) fn is_finished(&self) -> bool {
        self.finish.is_some() || self.pan.finishes
    }
}

#[derive(Clone, Debug)]
pub(super) struct RigOutcome {
    pub(super) duration: f64,
    pub(super) permeate_mass: f64,
    pub(super) permeate_volume: f64,
    pub(super) permeate_brix: f64,
    pub(super) concentrate: State,
    /// Flows of the whole rig; of a single pass both are the same.
    pub(super) first_flow: f64,
    pub(super) last_flow: f64,
    pub(super) feed: f64,
    pub(super) single_pass: bool,
    /// The tank at the end; none where it would pass 45 °C.
    pub(super) warms_to: Option<f64>,
    pub(super) duration_coupled: Option<f64>,
    pub(super) energy: f64,
    pub(super) permeance: f64,
    pub(super) temperature_factor: f64,
    pub(super) osmotic_limit: f64,
    /// Least crossflow and the crossflow of the feed, as shares of the rated.
    pub(super) least_crossflow: f64,
    pub(super) feed_crossflow: f64,
    pub(super) element_recovery: f64,
    /// Permeate to keep.
    pub(super) kept: f64,
    /// Of it, for the rinse.
    pub(super) rinse: f64,
}

#[derive(Clone, Debug)]
pub(super) struct PanOutcome {
    /// What is boiled, without what stood in the pan.
    pub(super) fed: State,
    pub(super) heat: f64,
    pub(super) water_rate: f64,
    pub(super) running_volume: f64,
    pub(super) least_depth: f64,
    /// Cold.
    pub(super) first_fill: f64,
    pub(super) stages: Vec<StageOutcome>,
    pub(super) duration: f64,
    pub(super) energy: f64,
    pub(super) water: f64,
    pub(super) draw: State,
    /// Whether the draw is syrup.
    pub(super) finishes: bool,
    pub(super) depth_if_finished: f64,
    pub(super) continuous_hold_up: f64,
}

#[derive(Clone, Copy, Debug)]
pub(super) struct StageOutcome {
    pub(super) kind: &'static str,
    pub(super) duration: f64,
    pub(super) water: f64,
    pub(super) fed: f64,
    pub(super) brix: f64,
    pub(super) mass: f64,
    pub(super) depth: f64,
    pub(super) kelvin: f64,
}

#[derive(Clone, Copy, Debug)]
pub(super) struct FinishOutcome {
    pub(super) heat: f64,
    pub(super) water: f64,
    pub(super) energy: f64,
    pub(super) duration: f64,
}

#[derive(Clone, Copy, Debug)]
pub(super) struct SyrupOutcome {
    pub(super) brix: f64,
    /// Made, losses taken off.
    pub(super) mass: f64,
    /// At 20 °C.
    pub(super) volume: f64,
    pub(super) lost: f64,
}

/// Seconds after the start.
#[derive(Clone, Copy, Debug)]
pub(super) struct Clock {
    pub(super) boil: f64,
    pub(super) finish: f64,
    pub(super) end: f64,
    pub(super) in_sequence: f64,
    pub(super) overlapped: f64,
    /// Rig and pan on one tank at once, where the day allows it.
    pub(super) together: Option<f64>,
}

#[derive(Clone, Copy, Debug)]
pub(super) struct FuelOutcome {
    pub(super) mass: Option<f64>,
    pub(super) volume: Option<f64>,
    pub(super) energy: f64,
    pub(super) cost: Option<f64>,
}

#[derive(Clone, Debug)]
pub(super) struct PackingOutcome {
    pub(super) fill_temperature: f64,
    pub(super) packing: finish::Packing,
    /// What the containers hold, at 20 °C.
    pub(super) packed: f64,
}

#[derive(Clone, Debug, Default)]
pub(super) struct CostOutcome {
    pub(super) electricity: Option<f64>,
    pub(super) containers: Option<f64>,
    pub(super) sum: f64,
    pub(super) left_out: Vec<&'static str>,
}
