//! What a picture shows, for those who do not see it.

use crate::{
    axis::{Axis, grouped},
    plot::{Below, Curve, Kind, Mark, Plot},
};

pub(crate) fn of(plot: &Plot) -> String {
    let mut parts = vec![format!("{}, over {}.", plot.title, heading(&plot.x))];
    parts.extend(plot.curves.iter().map(|curve| course(plot, curve)));
    parts.extend(rows(plot));
    if !plot.note.is_empty() {
        parts.push(String::from(plot.note));
    }
    parts.join(" ")
}

fn heading(axis: &Axis) -> String {
    let (low, high) = (digits(axis.low), digits(axis.high));
    let unit = with_space(axis.unit);
    format!("{} from {low} to {high}{unit}", lower(axis.title))
}

/// From where to where a curve runs, by way of its turn, if it has one.
fn course(plot: &Plot, curve: &Curve) -> String {
    let ends = curve.line.first().zip(curve.line.last());
    let Some((&first, &last)) = ends else {
        return format!("{}: no value.", curve.label);
    };
    let label = if curve.label.is_empty() {
        String::from("It")
    } else {
        format!("{}: it", curve.label)
    };
    let inner = curve.line.iter().copied();
    let highest = inner
        .clone()
        .fold(first, |best, point| if point.1 > best.1 { point } else { best });
    let lowest = inner.fold(first, |best, point| if point.1 < best.1 { point } else { best });
    let (from, to) = (at(plot, first), at(plot, last));
    let span = highest.1 - lowest.1;
    let turn = [(highest, "a greatest"), (lowest, "a least")]
        .into_iter()
        .find(|((x, y), _)| {
            (x - first.0).abs() > 1e-9
                && (x - last.0).abs() > 1e-9
                && (y - first.1).abs().min((y - last.1).abs()) > 0.001 * span
        });
    if let Some((point, name)) = turn {
        return format!("{label} goes from {from} by way of {name} {} to {to}.", at(plot, point));
    }
    let verb = if last.1 >= first.1 { "rises" } else { "falls" };
    format!("{label} {verb} from {from} to {to}.")
}

fn at(plot: &Plot, (x, y): (f64, f64)) -> String {
    format!(
        "{}{} at {}{}",
        digits(y),
        with_space(plot.y.unit),
        digits(x),
        with_space(plot.x.unit)
    )
}

/// How many rows there are of each kind, and how far they lie off.
fn rows(plot: &Plot) -> Vec<String> {
    // A thousandth of the band, or of a per cent, is nothing that a picture shows.
    let least = plot.below.steps().iter().map(|step| step.half).reduce(f64::min);
    let smallest = 1e-3 * least.unwrap_or(if plot.below.unit() == "%" { 1.0 } else { 0.0 });
    let kinds = Kind::ALL.into_iter().filter_map(|kind| {
        let of_kind: Vec<_> = plot.marks.iter().filter(|mark| mark.kind == kind).collect();
        let deviations = of_kind.iter().map(|mark| plot.below.deviation(mark));
        let (low, high) = deviations.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), d| {
            (low.min(d), high.max(d))
        });
        let count = of_kind.len();
        let row = if count == 1 { "row" } else { "rows" };
        let unit = with_space(plot.below.unit());
        let between = if low.abs().max(high.abs()) <= smallest {
            String::from(if count == 1 {
                "lies on it, to rounding"
            } else {
                "lie on it, to rounding"
            })
        } else if count == 1 {
            format!("lies {}{unit} from it", signed(low))
        } else {
            format!("lie {} to {}{unit} from it", signed(low), signed(high))
        };
        (count > 0).then(|| format!("{count} {row} {} {between}.", kind.name()))
    });
    let mut said: Vec<_> = kinds.collect();
    if let Below::Nothing(why) = plot.below {
        said.push(format!("{why}."));
    }
    let steps = plot.below.steps();
    if !steps.is_empty() {
        let outside = plot.marks.iter().filter(|mark| !inside(plot, mark)).count();
        let outside = match outside {
            0 => String::from("no row lies outside"),
            1 => String::from("1 row lies outside"),
            n => format!("{n} rows lie outside"),
        };
        said.push(format!(
            "The band is the declared accuracy ({}); {outside}.",
            plot.accuracy
        ));
    }
    said
}

/// Whether a row lies within the declared accuracy.
fn inside(plot: &Plot, mark: &Mark) -> bool {
    let half = plot
        .below
        .steps()
        .iter()
        .find(|step| mark.x <= step.to)
        .map(|step| step.half);
    half.is_none_or(|half| plot.below.deviation(mark).abs() <= half * (1.0 + 1e-9))
}

fn with_space(unit: &str) -> String {
    match unit {
        "" => String::new(),
        unit => format!(" {unit}"),
    }
}

fn lower(title: &str) -> String {
    let mut letters = title.chars();
    letters
        .next()
        .map(|first| first.to_lowercase().chain(letters).collect())
        .unwrap_or_default()
}

fn signed(x: f64) -> String {
    let text = rounded(x, 2);
    if x > 0.0 && text != "0" {
        format!("+{text}")
    } else {
        text
    }
}

fn digits(x: f64) -> String {
    rounded(x, 4)
}

/// With `significant` digits, whole numbers kept whole.
fn rounded(x: f64, significant: i32) -> String {
    let size = x.abs();
    if size < 1e-12 {
        return String::from("0");
    }
    let decimals = (significant - 1 - size.log10().floor() as i32).max(0) as usize;
    let text = format!("{x:.decimals$}");
    let text = if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.')
    } else {
        &text
    };
    if text.trim_start_matches('-').chars().all(|c| matches!(c, '0' | '.')) {
        return String::from("0");
    }
    grouped(text)
}
