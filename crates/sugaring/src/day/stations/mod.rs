//! One set of numbers through the stations: tank, rig, pan, finish, bottles, clock and money.

pub(crate) use outcome::{
    Clock, CostOutcome, FinishOutcome, FuelOutcome, Outcome, PackingOutcome, PanOutcome, RigOutcome, StageOutcome,
    State, SyrupOutcome,
};
pub(crate) use today::{Fidelity, day};

mod clock;
mod money;
mod outcome;
mod pan;
mod rig;
mod today;
mod together;
