//! The page that a person carries into the sugarhouse.

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};
use core::fmt;

use super::{
    face::Face,
    figure::Figure,
    plan::{DayPlan, Filled, FuelVolume, How, Level, Step, Stream},
};
use crate::{
    digits::{fixed, significant},
    safety::{self, StepKind},
    units::{deg_c, hours, kg, table},
};

pub use super::face::System;

const WIDTH: usize = 70;

impl fmt::Display for DayPlan {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.page(System::AsGiven))
    }
}

impl DayPlan {
    /// The plan as plain text, at most 70 columns wide.
    #[must_use]
    pub fn page(&self, system: System) -> String {
        let face = Face::new(system, &self.inputs);
        let mut page = Page::default();
        head(&mut page, self, face);
        air(&mut page, self, face);
        for step in &self.steps {
            match step.kind {
                StepKind::Concentrate => concentrate(&mut page, self, step, face),
                StepKind::Boil => boil(&mut page, self, step, face),
                StepKind::Finish => finish(&mut page, self, step, face),
                StepKind::Bottle => bottle(&mut page, self, step, face),
                _ => {}
            }
        }
        cost(&mut page, self);
        without(&mut page, self, face);
        remarks(&mut page, self);
        cautions(&mut page, self, face);
        rests_on(&mut page, self);
        page.0
    }
}

fn head(page: &mut Page, plan: &DayPlan, face: Face) {
    let title = plan.title.as_deref().unwrap_or("A day's plan").to_uppercase();
    let start = plan.start.as_deref().and_then(|s| s.split_once('T'));
    let when = start.map_or(String::new(), |(date, time)| format!("{date}, from {time}"));
    let gap = WIDTH.saturating_sub(width(&title) + width(&when)).max(2);
    page.line(format!("{title}{}{when}", " ".repeat(gap)).trim_end());

    let sap = lots_in(plan);
    let from = format!("{} of sap at {} °Bx", face.volume(sap.volume), significant(sap.brix, 3));
    let totals = &plan.totals;
    let mut outcome = String::new();
    if let Some(syrup) = &totals.syrup {
        let brix = plan.inputs.target.brix.value.get() + plan.inputs.target.guard.map_or(0.0, |g| g.value.get());
        outcome = format!(
            "{from}  ->  {} of syrup at {} °Bx{}",
            face.volume(syrup.volume.si()),
            significant(brix, 4),
            face.volume_range(&syrup.volume)
        );
    } else if let Some(draw) = &totals.to_finish {
        outcome = format!(
            "{from}  ->  {} at {} °Bx, enough for {} of syrup{}",
            face.mass(draw.mass.si()),
            fixed(draw.brix, 1),
            face.volume(draw.syrup.si()),
            face.volume_range(&draw.syrup)
        );
    }
    page.wrapped("", &outcome, 0);

    let done = if totals.syrup.is_none() {
        "Drawn off"
    } else if plan.containers.is_empty() {
        "Syrup"
    } else {
        "In bottles"
    };
    let mut text = format!("{done} about {}", five_minutes(plan, totals.hours.si()));
    if let (Some(low), Some(high)) = (totals.hours.low(), totals.hours.high()) {
        text += &format!(
            " ({} to {})",
            five_minutes(plan, low * 3600.0),
            five_minutes(plan, high * 3600.0)
        );
    }
    text += &format!(". Fire {} h", fixed(totals.hours_fired.value(), 1));
    for fuel in &totals.fuel {
        text += ", ";
        text += &fuel_words(&fuel.name, fuel.mass.as_ref(), fuel.volume.as_ref(), face);
    }
    if let Some(power) = &totals.electricity {
        text += &format!(", power {} kWh", two(power.energy.value()));
    }
    page.wrapped("", &(text + "."), 0);
}

fn air(page: &mut Page, plan: &DayPlan, face: Face) {
    let air = &plan.air;
    let by = match air.origin {
        "boiling_water" => "by boiling water",
        "altimeter_setting" => "from the altimeter setting",
        "sea_level" => "from the sea-level pressure",
        "altitude" => "from the altitude alone",
        _ => "by barometer",
    };
    let mut text = format!(
        "{} {by}: water boils at {}.",
        face.pressure(air.pressure.si()),
        face.temperature(air.water_boils_at.si())
    );
    if air.origin != "boiling_water" {
        text += " Boil plain water beside the pan first, and trust your own number.";
    }
    page.gap();
    page.wrapped("AIR", &text, 8);
}

fn concentrate(page: &mut Page, plan: &DayPlan, step: &Step, face: Face) {
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

fn boil(page: &mut Page, plan: &DayPlan, step: &Step, face: Face) {
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

fn finish(page: &mut Page, plan: &DayPlan, step: &Step, face: Face) {
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

fn done(page: &mut Page, plan: &DayPlan, step: &Step, face: Face) {
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
        let calibrated = plan.inputs.instruments.iter().find_map(|(key, kind)| match kind {
            super::inputs::Instrument::Hydrometer(h) if key == name => Some(h.calibrated_at),
            _ => None,
        });
        let base = calibrated.map_or_else(
            || String::from("60 °F"),
            |t| match t.unit {
                Some(unit) => unit.with_symbol(&significant(unit.from_si(t.value.value), 4)),
                None => face.round_temperature(t.value),
            },
        );
        page.row("", &format!("The hydrometer decides (Brix scale for {base}):"));
        let marks: Vec<String> = plan
            .marks
            .iter()
            .filter(|m| m.instrument == name && (m.temperature.si() - 288.706).abs() > 0.1)
            .map(|m| {
                let at = format!("{} ", face.round_temperature(crate::units::kelvin(m.temperature.si())));
                format!("{at:>7} {}", fixed(m.reading, 1))
            })
            .collect();
        page.row("", &marks.join("   "));
    }
}

fn bottle(page: &mut Page, plan: &DayPlan, step: &Step, face: Face) {
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

fn too_cold(filled: &Filled) -> bool {
    filled.count > 0 && filled.glass_needed.is_some()
}

fn cost(page: &mut Page, plan: &DayPlan) {
    let totals = &plan.totals;
    let mut lines: Vec<String> = totals
        .fuel
        .iter()
        .filter_map(|fuel| Some(format!("{} {}", fuel_name(&fuel.name), fixed(fuel.cost?, 2))))
        .collect();
    if let Some(cost) = totals.electricity.as_ref().and_then(|e| e.cost) {
        lines.push(format!("power {}", fixed(cost, 2)));
    }
    if let Some(cost) = totals.containers.as_ref().and_then(|c| c.cost) {
        lines.push(format!("containers {}", fixed(cost, 2)));
    }
    if lines.is_empty() {
        return;
    }
    page.gap();
    page.wrapped("COST", &lines.join("  "), 8);
    let mut sum = format!("sum {}", fixed(totals.cost.value, 2));
    if let (Some(low), Some(high)) = (totals.cost.low, totals.cost.high) {
        sum += &format!(" ({} to {})", significant(low, 2), significant(high, 2));
    }
    if !totals.cost.left_out.is_empty() {
        sum += &format!(
            "; without a price: {}",
            totals.cost.left_out.join(", ").replace('_', " ")
        );
    }
    page.row("", &sum);
}

fn without(page: &mut Page, plan: &DayPlan, face: Face) {
    let Some(without) = &plan.without_membrane else {
        return;
    };
    page.gap();
    page.line("WITHOUT THE MEMBRANE");
    let name = plan.totals.fuel.first().map_or("fuel", |f| f.name.as_str());
    let mut text = format!(
        "{} h, fire {} h, {}",
        fixed(without.hours.value(), 1),
        fixed(without.hours_fired.value(), 1),
        fuel_words(name, without.fuel_mass.as_ref(), without.fuel_volume.as_ref(), face)
    );
    if plan.totals.cost.value > 0.0 {
        text += &format!(", sum {}", fixed(without.cost, 2));
    }
    page.row("", &text);
}

fn remarks(page: &mut Page, plan: &DayPlan) {
    // Limits and cautions stand at their steps; these two have no row there.
    let loose = ["finishing_pan", "stock", "tank_warms", "circulates_long"];
    let shown = |level, key: &str| level == Level::Notice || loose.contains(&key);
    let mut heading = "NOTICE";
    page.gap_if(plan.remarks.iter().any(|r| shown(r.level, r.key)));
    for remark in plan.remarks.iter().filter(|r| shown(r.level, r.key)) {
        page.wrapped(heading, &(sentence(&remark.text) + "."), 8);
        heading = "";
    }
}

fn cautions(page: &mut Page, plan: &DayPlan, face: Face) {
    let at_a_step = |key| plan.steps.iter().any(|s| s.cautions.contains(&key));
    let done = plan.steps.iter().flat_map(|s| &s.stop_when).find_map(|s| s.temperature);
    let hot = done.map(|t| face.round_temperature(t.quantity()));
    let mut text: Vec<String> = safety::ALL
        .iter()
        .filter(|caution| at_a_step(caution.key))
        .map(|caution| caution.short(hot.as_deref()))
        .collect();
    text.push(safety::LOCAL_RULES.to_string());
    page.gap();
    page.line("TAKE CARE");
    page.wrapped("  ", &text.join(" "), 2);
}

fn rests_on(page: &mut Page, plan: &DayPlan) {
    page.gap();
    page.line("RESTS ON");
    for (how, label) in [(How::Calibrated, "calibrated"), (How::Assumed, "assumed")] {
        let texts: Vec<&str> = plan
            .rests_on
            .iter()
            .filter(|r| r.how == how)
            .map(|r| r.text.as_str())
            .collect();
        if !texts.is_empty() {
            page.wrapped(&format!("  {label}"), &texts.join("; "), 14);
        }
    }
    if plan.samples > 0 {
        page.wrapped("  ranges", "in brackets, hold 19 times in 20", 14);
    }
}

/// A page under construction.
#[derive(Default)]
struct Page(String);

impl Page {
    fn line(&mut self, text: &str) {
        self.0 += text.trim_end();
        self.0.push('\n');
    }

    fn gap(&mut self) {
        self.line("");
    }

    fn gap_if(&mut self, wanted: bool) {
        if wanted {
            self.gap();
        }
    }

    /// A step's first line.
    fn step(&mut self, plan: &DayPlan, step: &Step, name: &str, more: &str) {
        self.gap();
        let text = format!(
            "{}   {name:<14}{} h{}{more}",
            clock(plan, step.start.si()),
            fixed(step.duration.value(), 1),
            hours_range(&step.duration)
        );
        self.line(&text);
    }

    /// A labelled row of a step.
    fn row(&mut self, label: &str, text: &str) {
        if !text.is_empty() {
            self.wrapped(&format!("  {label}"), text, 8);
        }
    }

    /// Text after a label, wrapped with a hanging indent; a number is not parted from its unit.
    fn wrapped(&mut self, label: &str, text: &str, indent: usize) {
        let mut line = format!("{label:<indent$}");
        let mut column = width(&line);
        let mut fresh = true;
        // Runs of spaces inside a row are columns and are kept.
        for (i, word) in text.split(' ').enumerate() {
            let glued = glued(text, i);
            if !fresh && !word.is_empty() && column + 1 + width(word) + glued > WIDTH {
                self.line(&line);
                line = " ".repeat(indent);
                column = indent;
                fresh = true;
            }
            if !fresh || (i > 0 && word.is_empty()) {
                line.push(' ');
                column += 1;
            }
            line += word;
            column += width(word);
            fresh = fresh && word.is_empty();
        }
        self.line(&line);
    }
}

/// Width of what must stay with word `i`, spaces included: the unit of a number, the rest of a short bracket.
fn glued(text: &str, i: usize) -> usize {
    const BRACKET: usize = 16;
    let mut words = text.split(' ').skip(i);
    let (Some(word), Some(next)) = (words.next(), words.next()) else {
        return 0;
    };
    if word.starts_with('(') && !word.contains(')') {
        let mut rest = 1 + width(next);
        let mut last = next;
        while !last.contains(')') {
            let Some(word) = words.next() else { break };
            rest += 1 + width(word);
            last = word;
        }
        return if rest <= BRACKET { rest } else { 0 };
    }
    let unit = next.trim_end_matches([')', ',', ';', '.', ':']);
    let is_number = word.ends_with(|c: char| c.is_ascii_digit()) && word.starts_with(|c: char| c.is_ascii_digit());
    if is_number && (unit == "s" || table::ALL.iter().any(|u| !u.symbol.is_empty() && u.symbol == unit)) {
        1 + width(next)
    } else {
        0
    }
}

fn width(text: &str) -> usize {
    text.chars().count()
}

struct Sap {
    volume: f64,
    brix: f64,
}

/// The lots together, as volume and °Brix of the tank.
fn lots_in(plan: &DayPlan) -> Sap {
    let first = plan
        .steps
        .iter()
        .filter(|s| matches!(s.kind, StepKind::Concentrate | StepKind::Boil))
        .find_map(|s| s.streams_in.first());
    Sap {
        volume: first.and_then(|s| s.volume).map_or(0.0, |v| v.si()),
        brix: first.and_then(|s| s.brix).unwrap_or(0.0),
    }
}

fn mixed(plan: &DayPlan) -> &'static str {
    match plan.inputs.sap.len() {
        0 | 1 => "",
        2 => "both lots mixed",
        _ => "all lots mixed",
    }
}

fn stream_in(stream: Option<&Stream>, beside: &str, face: Face) -> String {
    let Some(stream) = stream else {
        return beside.to_string();
    };
    let brix = stream.brix.unwrap_or(0.0);
    let brix = if brix < 3.0 { fixed(brix, 2) } else { fixed(brix, 1) };
    let state = format!(
        "{}, {brix} °Bx, {}",
        face.mass(stream.mass.si()),
        face.temperature(stream.temperature.map_or(0.0, |t| t.si()))
    );
    let gap = 32_usize.saturating_sub(width(&state)).max(2);
    format!("{state}{}{beside}", " ".repeat(gap)).trim_end().to_string()
}

fn fuel_name(name: &str) -> &str {
    if name == "hardwood" || name == "softwood" {
        "wood"
    } else {
        name
    }
}

fn fuel_words(name: &str, mass: Option<&Figure<kg>>, volume: Option<&FuelVolume>, face: Face) -> String {
    let name = fuel_name(name);
    match (mass, volume) {
        (_, Some(FuelVolume::Gallons(gallons))) => format!("{name} {}", face.fuel_gallons(gallons.si())),
        (Some(mass), _) => format!("{name} {}{}", face.mass_two(mass.si()), face.mass_range(mass)),
        _ => name.to_string(),
    }
}

fn hours_range(duration: &Figure<hours>) -> String {
    let (Some(low), Some(high)) = (duration.low(), duration.high()) else {
        return String::new();
    };
    let range = format!("{} to {}", fixed(low, 1), fixed(high, 1));
    match duration.median() {
        Some(median) => format!(" ({range}, more likely {})", fixed(median, 1)),
        None => format!(" ({range})"),
    }
}

fn two(value: f64) -> String {
    // Two significant digits, but with their zeros: 0.70, 0.86, 12.
    let decimals = if value >= 9.95 {
        0
    } else if value >= 0.995 {
        1
    } else {
        2
    };
    fixed(value, decimals)
}

fn sentence(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or(String::new(), |first| {
        first.to_uppercase().collect::<String>() + letters.as_str()
    })
}

/// Clock time of `seconds` after the start; without a start, hours and minutes after it.
fn clock(plan: &DayPlan, seconds: f64) -> String {
    minutes_text(plan, crate::math::round(seconds / 60.0))
}

/// The same to five minutes.
fn five_minutes(plan: &DayPlan, seconds: f64) -> String {
    minutes_text(plan, 5.0 * crate::math::round(seconds / 300.0))
}

fn minutes_text(plan: &DayPlan, minutes: f64) -> String {
    let begin = plan.start.as_deref().and_then(super::read::start_minutes);
    let all = begin.unwrap_or(0.0) + minutes;
    if !(0.0..1e7).contains(&all) {
        return String::from("later");
    }
    let (hour, minute) = (
        crate::math::floor(all / 60.0),
        all - 60.0 * crate::math::floor(all / 60.0),
    );
    match begin {
        Some(_) => format!("{:02}:{minute:02}", hour - 24.0 * crate::math::floor(hour / 24.0)),
        None => format!("+{hour}:{minute:02}"),
    }
}
