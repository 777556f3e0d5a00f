//! Small parts of steps.

use crate::{
    day::{
        plan::{Figure, Stop, Stream},
        stations::{Outcome, State},
    },
    safety::{StepKind, cautions_for},
};
use alloc::{string::ToString, vec::Vec};

/// The syrup is filtered hot on its way into the bottles.
pub(crate) fn filter_and_bottle() -> Vec<&'static str> {
    let mut all = keys(StepKind::Filter);
    all.extend(keys(StepKind::Bottle));
    let mut once: Vec<&'static str> = Vec::new();
    for key in all {
        if !once.contains(&key) {
            once.push(key);
        }
    }
    once
}

pub(crate) fn keys(step: StepKind) -> Vec<&'static str> {
    cautions_for(step).iter().map(|c| c.key).collect()
}

pub(crate) fn stop(what: &str) -> Stop {
    Stop {
        what: what.to_string(),
        volume: None,
        reading: None,
        depth: None,
        temperature: None,
        elevation: None,
    }
}

pub(crate) fn liquid(name: &'static str, state: State) -> Stream {
    Stream {
        name,
        mass: Figure::of_si(state.mass),
        volume: Some(Figure::of_si(state.volume)),
        brix: Some(state.brix),
        sugar: Some(Figure::of_si(state.sugar())),
        temperature: Some(Figure::of_si(state.kelvin)),
    }
}

pub(crate) fn vapour(mass: f64) -> Stream {
    Stream {
        name: "vapour",
        mass: Figure::of_si(mass),
        volume: None,
        brix: None,
        sugar: None,
        temperature: None,
    }
}

pub(crate) fn syrup_state(outcome: &Outcome, at: f64) -> State {
    let syrup = &outcome.syrup;
    State {
        mass: syrup.mass,
        brix: syrup.brix,
        kelvin: at,
        volume: syrup.mass / crate::sucrose::density_at(syrup.brix, at),
    }
}
