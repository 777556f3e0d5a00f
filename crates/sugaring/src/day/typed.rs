//! Inputs from the stations' own types: a pan, a rig, instruments and containers that Rust code already has.

use super::inputs::{Evaporator, Heat, Pan};
use crate::{evaporator, units::metre};

impl From<evaporator::Pan> for Evaporator {
    fn from(pan: evaporator::Pan) -> Self {
        Self {
            pan: Pan {
                length: metre(pan.length).into(),
                width: metre(pan.width).into(),
                running_depth: pan.running_depth.map(|d| metre(d).into()),
                least_depth: pan.least_depth.map(|d| metre(d).into()),
                sections: pan.sections,
            },
            heat: pan.heat.map(Heat::Power),
            left_in_pan: None,
            fuel: None,
        }
    }
}
