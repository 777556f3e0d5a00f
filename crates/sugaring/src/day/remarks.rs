//! Limits met, cautions and notices. Numbers have three significant digits, shares two.

use crate::{
    day::{
        plan::{Level, Remark},
        resolve::Model,
        slots::Values,
        stations::{Outcome, RigOutcome},
    },
    digits::{fixed, padded, significant},
    math,
    safety::StepKind,
    sucrose,
    units::{brix, deg_c, table},
};
use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};

/// Above this °Brix, or this supersaturation in a cold store, sugar may crystallise: common practice, no source.
const CRYSTALLISES: (f64, f64) = (68.9, 1.1);
/// A tank warmer than this should be boiled at once, as one that circulates longer: common practice, no source.
const WARM_TANK: f64 = 280.15;
const LONG: f64 = 4.0 * 3600.0;

/// Everything the day wants to say, in the order of its steps.
pub(crate) fn remarks(model: &Model, values: &Values, outcome: &Outcome, already_there: Option<f64>) -> Vec<Remark> {
    let mut remarks = model.remarks.clone();
    if let Some(brix) = already_there {
        remarks.push(Remark {
            level: Level::Notice,
            key: "already_there",
            step: None,
            text: format!("the tank is already at {} °Bx: no membrane step", padded(brix, 3)),
        });
    }
    if let Some(rig) = &outcome.rig {
        at_the_rig(&mut remarks, model, outcome, rig);
    }
    at_the_pan(&mut remarks, outcome);
    at_the_finish(&mut remarks, model, values, outcome);
    in_the_bottles(&mut remarks, outcome);
    remarks
}

fn at_the_rig(remarks: &mut Vec<Remark>, model: &Model, outcome: &Outcome, rig: &RigOutcome) {
    let mut say = |level, key, text| push(remarks, level, key, StepKind::Concentrate, text);
    if !rig.single_pass && rig.last_flow < 0.35 * rig.first_flow {
        let flow = |si| padded(table::litre_per_h.from_si(si), 3);
        let aim = significant(rig.concentrate.brix, 3);
        say(
            Level::Notice,
            "flow_falls",
            format!(
                "at the end the permeate runs at {} % of its first flow ({} of {} L/h): {aim} °Bx is near the \
                 osmotic limit of {} °Bx",
                share(rig.last_flow / rig.first_flow),
                flow(rig.last_flow),
                flow(rig.first_flow),
                padded(rig.osmotic_limit, 3)
            ),
        );
    }
    if let Some(warms_to) = rig.warms_to.filter(|t| *t > WARM_TANK) {
        say(
            Level::Caution,
            "tank_warms",
            format!(
                "the tank warms from {} to {} °C: cool it, or boil at once",
                fixed(table::deg_c.from_si(outcome.tank.kelvin), 1),
                fixed(table::deg_c.from_si(warms_to), 1)
            ),
        );
    }
    if rig.warms_to.is_none() {
        say(
            Level::Caution,
            "tank_warms",
            String::from("the pump would warm the tank past 45 °C: cool it, or aim lower"),
        );
    }
    if !rig.single_pass && rig.duration > LONG {
        say(
            Level::Caution,
            "circulates_long",
            format!(
                "the sap circulates for {} h: cool it, or boil at once",
                fixed(rig.duration / 3600.0, 1)
            ),
        );
    }
    let film = model
        .rig
        .as_ref()
        .is_some_and(|r| r.polarisation == crate::day::inputs::Polarisation::RatingAnchored);
    if film && !(0.1..=3.0).contains(&rig.least_crossflow) {
        say(
            Level::Notice,
            "film_range",
            format!(
                "crossflow falls to {} % of the rated: outside the film model's 10 to 300 %",
                share(rig.least_crossflow)
            ),
        );
    } else if film && rig.feed_crossflow > 3.0 {
        say(
            Level::Notice,
            "film_range",
            format!(
                "crossflow is {} % of the rated: outside the film model's 10 to 300 %",
                share(rig.feed_crossflow)
            ),
        );
    }
    if rig.element_recovery > 0.2 || rig.feed_crossflow < 0.5 {
        say(
            Level::Notice,
            "high_recovery",
            format!(
                "each element takes out {} % in one pass at {} % of the rated crossflow: rinse after use",
                share(rig.element_recovery),
                share(rig.feed_crossflow)
            ),
        );
    }
}

fn at_the_pan(remarks: &mut Vec<Remark>, outcome: &Outcome) {
    let pan = &outcome.pan;
    let mut say = |level, key, text| push(remarks, level, key, StepKind::Boil, text);
    let topped_up = pan.stages.iter().any(|s| s.kind == "top_up");
    let mm = |si| significant(table::mm.from_si(si), 3);
    if !pan.finishes {
        say(
            Level::Limit,
            "least_depth",
            format!(
                "the pan reaches its least depth of {} mm at {} °Bx: draw off {} kg ({} L) and finish it in a small \
                 pan; all the syrup would stand {} mm deep here",
                mm(pan.least_depth),
                padded(pan.draw.brix, 3),
                padded(pan.draw.mass, 3),
                padded(table::litre.from_si(pan.draw.volume), 3),
                padded(table::mm.from_si(pan.depth_if_finished), 3)
            ),
        );
    }
    if let (false, Some(first)) = (topped_up, pan.stages.first()) {
        say(
            Level::Notice,
            "no_topping_up",
            format!(
                "all of it goes in at once and stands {} mm deep when hot",
                mm(first.depth)
            ),
        );
    }
    let sugar = outcome.tank.sugar() + outcome.left.map_or(0.0, |l| l.sugar());
    if pan.continuous_hold_up > 0.5 * sugar {
        say(
            Level::Notice,
            "hold_up",
            format!(
                "run as a continuous pan, this one would hold {} kg of the day's {} kg of sugar: run it as a batch",
                padded(pan.continuous_hold_up, 3),
                padded(sugar, 3)
            ),
        );
    }
}

fn at_the_finish(remarks: &mut Vec<Remark>, model: &Model, values: &Values, outcome: &Outcome) {
    let capacity = model
        .finishing
        .as_ref()
        .and_then(|f| f.capacity)
        .map(|slot| values.of(slot));
    let draw = outcome.pan.draw.volume;
    if let Some(capacity) = capacity.filter(|c| outcome.finish.is_some() && *c < draw) {
        push(
            remarks,
            Level::Limit,
            "finishing_pan",
            StepKind::Finish,
            format!(
                "the finishing pan of {} L does not hold the draw of {} L: finish in {} batches, and leave room for \
                 foam",
                significant(table::litre.from_si(capacity), 3),
                padded(table::litre.from_si(draw), 3),
                significant(math::ceil(draw / capacity), 3)
            ),
        );
    }
    let target = model.target.brix;
    let cold = brix(target).and_then(|b| sucrose::supersaturation(b, deg_c(4.0)));
    if outcome.is_finished() && (target > CRYSTALLISES.0 || cold.is_ok_and(|s| s > CRYSTALLISES.1)) {
        push(
            remarks,
            Level::Notice,
            "may_crystallise",
            StepKind::Bottle,
            format!("at {} °Bx sugar may crystallise in store", significant(target, 3)),
        );
    }
}

fn in_the_bottles(remarks: &mut Vec<Remark>, outcome: &Outcome) {
    let Some(packing) = &outcome.packing else {
        return;
    };
    for remark in &packing.packing.remarks {
        let level = match remark.key() {
            "cold_container" => Level::Caution,
            "stock" => Level::Limit,
            _ => Level::Notice,
        };
        push(remarks, level, remark.key(), StepKind::Bottle, remark.to_string());
    }
}

fn push(remarks: &mut Vec<Remark>, level: Level, key: &'static str, step: StepKind, text: String) {
    remarks.push(Remark {
        level,
        key,
        step: Some(step),
        text,
    });
}

/// A share in per cent, two digits.
fn share(share: f64) -> String {
    significant(100.0 * share, 2)
}
