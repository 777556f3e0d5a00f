//! When the fire is lit, and when it is over.
use crate::day::stations::{Clock, FinishOutcome, PanOutcome, RigOutcome};

/// When the fire is lit, when the finish begins, when it is over; seconds after the start.
///
/// A recirculated tank is concentrate only at the end. A single pass feeds the pan as it comes: the fire is lit as
/// soon as the first fill is there and the supply will never run dry.
pub(crate) fn clock(rig: Option<&RigOutcome>, pan: &PanOutcome, finish: Option<&FinishOutcome>) -> Clock {
    let after = pan.duration + finish.map_or(0.0, |f| f.duration);
    let (in_sequence, overlapped) = match rig {
        None => (0.0, 0.0),
        Some(rig) if rig.single_pass => (rig.duration, lit(rig, pan)),
        Some(rig) => (rig.duration, rig.duration),
    };
    let boil = overlapped;
    Clock {
        boil,
        finish: boil + pan.duration,
        end: boil + after,
        in_sequence: in_sequence + after,
        overlapped: overlapped + after,
        together: None,
    }
}

pub(crate) fn lit(rig: &RigOutcome, pan: &PanOutcome) -> f64 {
    let concentrate = rig.concentrate.mass;
    let supply = concentrate / rig.duration;
    let stage = |kind| pan.stages.iter().find(|s| s.kind == kind);
    let (Some(heat_up), Some(top_up)) = (stage("heat_up"), stage("top_up")) else {
        return rig.duration;
    };
    let fill = heat_up.fed;
    let intake = (concentrate - fill) / top_up.duration;
    let filled = fill / supply;
    if intake <= supply {
        filled
    } else {
        filled.max(rig.duration - heat_up.duration - (concentrate - fill) / intake)
    }
}
