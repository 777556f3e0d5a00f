//! Numbers and names as the page words them.

use alloc::{
    format,
    string::{String, ToString},
};

pub(crate) struct Sap {
    pub(crate) volume: f64,
    pub(crate) brix: f64,
}
use crate::{
    day::{
        page::{Face, layout::width},
        plan::{DayPlan, Figure, FuelVolume, Stream},
    },
    digits::fixed,
    safety::StepKind,
    units::{hours, kg},
};

/// The lots together, as volume and °Brix of the tank.
pub(crate) fn lots_in(plan: &DayPlan) -> Sap {
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

pub(crate) fn mixed(plan: &DayPlan) -> &'static str {
    match plan.inputs.sap.len() {
        0 | 1 => "",
        2 => "both lots mixed",
        _ => "all lots mixed",
    }
}

pub(crate) fn stream_in(stream: Option<&Stream>, beside: &str, face: Face) -> String {
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

pub(crate) fn fuel_name(name: &str) -> &str {
    if name == "hardwood" || name == "softwood" {
        "wood"
    } else {
        name
    }
}

pub(crate) fn fuel_words(name: &str, mass: Option<&Figure<kg>>, volume: Option<&FuelVolume>, face: Face) -> String {
    let name = fuel_name(name);
    match (mass, volume) {
        (_, Some(FuelVolume::Gallons(gallons))) => format!("{name} {}", Face::fuel_gallons(gallons.si())),
        (Some(mass), _) => format!("{name} {}{}", face.mass_two(mass.si()), face.mass_range(mass)),
        _ => name.to_string(),
    }
}

pub(crate) fn hours_range(duration: &Figure<hours>) -> String {
    let (Some(low), Some(high)) = (duration.low(), duration.high()) else {
        return String::new();
    };
    let range = format!("{} to {}", fixed(low, 1), fixed(high, 1));
    match duration.median() {
        Some(median) => format!(" ({range}, more likely {})", fixed(median, 1)),
        None => format!(" ({range})"),
    }
}

pub(crate) fn two(value: f64) -> String {
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

pub(crate) fn sentence(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or(String::new(), |first| {
        first.to_uppercase().collect::<String>() + letters.as_str()
    })
}

/// Clock time of `seconds` after the start; without a start, hours and minutes after it.
pub(crate) fn clock(plan: &DayPlan, seconds: f64) -> String {
    minutes_text(plan, crate::math::round(seconds / 60.0))
}

/// The same to five minutes.
pub(crate) fn five_minutes(plan: &DayPlan, seconds: f64) -> String {
    minutes_text(plan, 5.0 * crate::math::round(seconds / 300.0))
}

pub(crate) fn minutes_text(plan: &DayPlan, minutes: f64) -> String {
    let begin = plan.start.as_deref().and_then(crate::day::data::start_minutes);
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
