//! The steps on the page.

use crate::{
    day::{
        page::{
            Face,
            layout::Page,
            words::{clock, mixed, stream_in},
        },
        plan::{DayPlan, Filled, Step},
    },
    digits::{fixed, significant},
    units::deg_c,
};
use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};

pub(crate) fn concentrate(page: &mut Page, plan: &DayPlan, step: &Step, face: Face) {
    page.step(plan, step, "CONCENTRATE", "");
    let settings = &step.settings;
    page.row("in", &stream_in(step.streams_in.first(), mixed(plan), face));
    let gauge = settings
        .pressure
        .map_or(String::new(), |p| format!("{} on the gauge", face.gauge(p.si())));
    let out = |name| step.streams_out.iter().find(|s| s.name == name);
    let permeate = out("permeate").and_then(|s| s.volume);
    let tank = out("concentrate");
    let left = tank.and_then(|s| s.volume).map_or(0.0, |v| v.si());
    let brix = tank.and_then(|s| s.brix).map_or(String::new(), |b| fixed(b, 1));
    if let (Some(first), Some(last)) = (settings.permeate_first, settings.permeate_last) {
        page.row("set", &format!("{gauge}; concentrate goes back to the tank"));
        let mut flow = format!(
            "permeate {} at first ({})",
            face.flow(first.si()),
            face.seconds_each(first.si())
        );
        if 1e-9 < last.si() {
            flow += &format!(
                ", {} at the end ({})",
                face.flow(last.si()),
                face.seconds_short(last.si())
            );
        }
        if let Some(interval) = first.interval() {
            flow += &format!(
                "; seen less is no fault: {} to {} at first",
                face.flow_number(interval.low),
                face.flow_number(interval.high)
            );
        }
        page.row("flow", &flow);
        page.row(
            "stop",
            &format!(
                "when {} of permeate are drained: {} left, {brix} °Bx",
                face.volume(permeate.map_or(0.0, |v| v.si())),
                face.volume(left)
            ),
        );
    } else if let (Some(permeate_flow), Some(concentrate_flow)) = (settings.permeate, settings.concentrate) {
        page.row(
            "set",
            &format!(
                "{gauge}; permeate {} ({}), concentrate {}",
                face.flow(permeate_flow.si()),
                face.seconds_each(permeate_flow.si()),
                face.flow(concentrate_flow.si())
            ),
        );
        page.row(
            "stop",
            &format!(
                "when the tank is empty: {} of permeate, {} of concentrate at {brix} °Bx",
                face.volume(permeate.map_or(0.0, |v| v.si())),
                face.volume(left)
            ),
        );
    }
    if let Some(kept) = settings.permeate_kept {
        page.row(
            "keep",
            &format!(
                "{} of permeate: to rinse the membranes, and one pan full beside the fire",
                face.volume(kept.si())
            ),
        );
    }
    let mut note = settings.osmotic_limit.map_or(String::new(), |limit| {
        format!("{} °Bx is the most this pressure can reach.", fixed(limit, 1))
    });
    if let Some(warm) = settings.warms_to {
        note += &format!(" The tank warms to {}.", face.temperature(warm.si()));
    }
    page.row("note", note.trim());
}

pub(crate) fn boil(page: &mut Page, plan: &DayPlan, step: &Step, face: Face) {
    page.step(plan, step, "BOIL", "");
    let settings = &step.settings;
    let pan = &plan.inputs.evaporator.pan;
    let heat = settings.heat.map_or(0.0, |h| h.value());
    let sizes = format!("pan {}, {} kW", face.pan(&pan.length, &pan.width), significant(heat, 3));
    page.row("in", &stream_in(step.streams_in.first(), &sizes, face));
    let stage = |kind| step.stages.iter().find(|s| s.kind == kind);
    if let (Some(fill), Some(heat_up)) = (settings.first_fill, stage("heat_up")) {
        let minutes = significant(heat_up.duration.si() / 60.0, 2);
        let all = if stage("top_up").is_none() { "all " } else { "" };
        page.row(
            "fill",
            &format!(
                "{all}{} cold: {} deep when it boils, after {minutes} min",
                face.volume_two(fill.si()),
                face.depth(heat_up.depth.si())
            ),
        );
    }
    let start = step.start.si();
    let mut at = start;
    for stage in &step.stages {
        at += stage.duration.si();
        if stage.kind == "top_up" {
            page.row(
                "feed",
                &format!(
                    "keep {} until the tank is empty, about {} ({} °Bx)",
                    face.depth(stage.depth.si()),
                    clock(plan, at),
                    fixed(stage.brix, 1)
                ),
            );
        }
    }
    let draw = step.streams_out.iter().find(|s| s.name != "vapour");
    if let (Some(draw), Some(last)) = (draw, step.stages.last()) {
        let what = format!(
            "{} ({}) at {} °Bx",
            face.mass(draw.mass.si()),
            face.volume(draw.volume.map_or(0.0, |v| v.si())),
            fixed(draw.brix.unwrap_or(0.0), 1)
        );
        let short = plan.remarks.iter().any(|r| r.key == "least_depth");
        let sign = if short {
            format!("at {} deep", face.depth(last.depth.si()))
        } else {
            format!(
                "when it boils at {} ({} deep)",
                face.temperature(last.temperature.si()),
                face.depth(last.depth.si())
            )
        };
        page.row("stop", &format!("{sign}, about {}: {what}", clock(plan, at)));
        if let (true, Some(depth)) = (short, settings.depth_if_finished) {
            page.row(
                "why",
                &format!(
                    "the whole syrup would stand only {} deep in this pan",
                    face.depth(depth.si())
                ),
            );
        }
    }
}

pub(crate) fn finish(page: &mut Page, plan: &DayPlan, step: &Step, face: Face) {
    let heat = step.settings.heat.map_or(0.0, |h| h.value());
    page.step(plan, step, "FINISH", &format!(" at {} kW", fixed(heat, 1)));
    if let Some(vapour) = step.streams_out.iter().find(|s| s.name == "vapour") {
        page.row("boil", &format!("off {} more water", face.mass(vapour.mass.si())));
    }
    done(page, plan, step, face);
    if let (Some(syrup), Some(made)) = (
        step.streams_out.iter().find(|s| s.name == "syrup"),
        plan.totals.syrup.as_ref(),
    ) {
        page.row(
            "out",
            &format!(
                "{} = {} at {}",
                face.mass(syrup.mass.si()),
                face.volume(made.volume.si()),
                face.round_temperature(deg_c(20.0))
            ),
        );
    }
}

pub(crate) fn done(page: &mut Page, plan: &DayPlan, step: &Step, face: Face) {
    let thermometer = step.stop_when.iter().find(|s| s.what == "thermometer");
    if let Some((temperature, rise)) = thermometer.and_then(|s| Some((s.temperature?, s.elevation?))) {
        let mut text = format!(
            "at water's boiling point + {}: {} today",
            face.difference(rise.si()),
            face.temperature(temperature.si())
        );
        if let Some(interval) = temperature.interval() {
            text += &format!(
                " ({} to {})",
                face.temperature_number(interval.low),
                face.temperature(interval.high)
            );
        }
        page.row("done", &text);
    }
    let hydrometer = plan.marks.iter().find(|m| m.temperature.si() > 350.0);
    if let Some(name) = hydrometer.map(|m| m.instrument.as_str()) {
        let float = plan.inputs.instruments.iter().find_map(|(key, kind)| match kind {
            crate::day::inputs::Instrument::Hydrometer(h) if key == name => Some((h.calibrated_at, h.scale)),
            _ => None,
        });
        let (scale, decimals) = float.map_or(("Brix scale", 1), |(_, scale)| scale.on_page());
        let base = float.map(|(calibrated_at, _)| calibrated_at).map_or_else(
            || String::from("60 °F"),
            |t| match t.unit {
                Some(unit) => unit.with_symbol(&significant(unit.from_si(t.value.value), 4)),
                None => face.round_temperature(t.value),
            },
        );
        page.row("", &format!("The hydrometer decides ({scale} for {base}):"));
        let marks: Vec<String> = plan
            .marks
            .iter()
            .filter(|m| m.instrument == name && (m.temperature.si() - 288.706).abs() > 0.1)
            .map(|m| {
                let at = format!("{} ", face.round_temperature(crate::units::kelvin(m.temperature.si())));
                format!("{at:>7} {}", fixed(m.reading, decimals))
            })
            .collect();
        page.row("", &marks.join("   "));
    }
}

pub(crate) fn bottle(page: &mut Page, plan: &DayPlan, step: &Step, face: Face) {
    let fill = step.settings.fill_temperature.map_or(0.0, |t| t.si());
    let text = format!(
        "filter hot, fill at {}, {} or more after",
        face.round_temperature(crate::units::kelvin(fill)),
        face.round_temperature(deg_c(82.0))
    );
    page.gap();
    page.line(&format!("{}   BOTTLE        {text}", clock(plan, step.start.si())));
    for (i, filled) in plan.containers.iter().filter(|c| c.count > 0).enumerate() {
        let mut text = format!(
            "{} x {} at {} hot, {} each",
            filled.count,
            filled.name,
            face.small_volume(filled.fill_volume.si()),
            face.small_mass(filled.fill_mass.si())
        );
        if filled.count == 1 {
            text = text.trim_end_matches(" each").to_string();
        }
        if i + 1 == plan.containers.iter().filter(|c| c.count > 0).count() {
            if let Some(rest) = &plan.rest {
                text += &format!("; {} over", face.volume_two(rest.volume.si()));
            }
        }
        page.row(if i == 0 { "fill" } else { "" }, &text);
    }
    if plan.containers.iter().all(|c| c.count == 0) {
        if let Some(rest) = &plan.rest {
            page.row(
                "fill",
                &format!("no container: {} over", face.volume_two(rest.volume.si())),
            );
        }
    }
    for (i, cold) in plan.containers.iter().filter(|c| too_cold(c)).enumerate() {
        let settled = cold.settled.map_or(0.0, |t| t.si());
        let glass = cold.glass_needed.map_or(0.0, |t| t.si());
        page.row(
            if i == 0 { "warm" } else { "" },
            &format!(
                "the {} to {} first: cold, it drops to {}",
                cold.name,
                face.warm_glass(glass),
                face.round_temperature(crate::units::kelvin(settled))
            ),
        );
    }
}

pub(crate) fn too_cold(filled: &Filled) -> bool {
    filled.count > 0 && filled.glass_needed.is_some()
}
