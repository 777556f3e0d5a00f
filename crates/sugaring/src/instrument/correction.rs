//! From what an instrument shows to what a right one would show, and back.

use alloc::format;
use core::cmp::Ordering;

use crate::{error::Error, units::Unit};

/// What an instrument is known to show wrong.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Correction {
    /// As much too high all along its scale.
    Offset(f64),
    /// A straight line through two checks, between them only.
    TwoPoint([Point; 2]),
}

/// What an instrument showed, and what a right one would have.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Point {
    pub(crate) shown: f64,
    pub(crate) expected: f64,
}

impl Correction {
    /// The line through two checks, whose readings are in `unit`.
    pub(super) fn through(low: Point, high: Point, unit: &'static Unit) -> Result<Self, Error> {
        let show = |value| unit.show(unit.from_si(value));
        for (what, [one, other]) in [
            ("reading", [low.shown, high.shown]),
            ("truth", [low.expected, high.expected]),
        ] {
            if one.partial_cmp(&other) != Some(Ordering::Less) {
                let error = Error::inconsistent(
                    format!("low.{what}"),
                    &show(one),
                    &format!("high.{what} = {}", show(other)),
                );
                return Err(error.with_hint("the low check comes first"));
            }
        }
        let slope = (high.expected - low.expected) / (high.shown - low.shown);
        if !(0.5..=2.0).contains(&slope) {
            let shown = format!("{} to {}", show(low.shown), show(high.shown));
            let expected = format!("{} to {}", show(low.expected), show(high.expected));
            let error = Error::inconsistent("high.reading", &shown, &format!("what was checked = {expected}"));
            return Err(error.with_hint("an instrument that is so far off is broken, or the checks are another's"));
        }
        Ok(Self::TwoPoint([low, high]))
    }

    /// What a right instrument would show, where this one shows `shown`.
    pub(super) fn corrected(&self, shown: f64) -> f64 {
        match *self {
            Self::Offset(offset) => shown - offset,
            Self::TwoPoint([low, high]) => low.expected + (shown - low.shown) * slope(low, high),
        }
    }

    /// What this one shows, where a right instrument shows `right`.
    pub(super) fn shown(&self, right: f64) -> f64 {
        match *self {
            Self::Offset(offset) => right + offset,
            Self::TwoPoint([low, high]) => low.shown + (right - low.expected) / slope(low, high),
        }
    }

    /// Refuses a reading of the argument `argument` that no check covers; readings are in `unit`.
    pub(super) fn covers(&self, argument: &'static str, shown: f64, unit: &'static Unit) -> Result<(), Error> {
        let Self::TwoPoint([low, high]) = self else {
            return Ok(());
        };
        // A mark that was computed may come back a rounding beyond.
        let slack = 1e-9 * (high.shown - low.shown);
        if shown >= low.shown - slack && shown <= high.shown + slack {
            return Ok(());
        }
        let [shown, low, high] = [shown, low.shown, high.shown].map(|si| unit.from_si(si));
        let error = Error::out_of_limits(argument, shown, unit, low, high);
        Err(error.with_hint("it was checked between these two only"))
    }
}

fn slope(low: Point, high: Point) -> f64 {
    (high.expected - low.expected) / (high.shown - low.shown)
}
