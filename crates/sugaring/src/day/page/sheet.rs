//! The page that a person carries into the sugarhouse.

use crate::{
    day::{
        page::{
            Face, System,
            layout::{Page, WIDTH, width},
            steps::{boil, bottle, concentrate, finish},
            words::{five_minutes, fuel_name, fuel_words, lots_in, sentence, two},
        },
        plan::{DayPlan, How, Level},
    },
    digits::{fixed, significant},
    safety::{self, StepKind},
};
use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};
use core::fmt;

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
