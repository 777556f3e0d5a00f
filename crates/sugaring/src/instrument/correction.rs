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
    /// The line through two checks, whose readings are in `unit`; `named` are those of the low and the high check, what was
    /// shown and what was expected.
    pub(super) fn through(
        low: Point,
        high: Point,
        unit: &'static Unit,
        named: [[&'static str; 2]; 2],
    ) -> Result<Self, Error> {
        let show = |value| unit.show(unit.from_si(value));
        let [shown, expected] = named;
        for ([name, beside], [one, other]) in [
            (shown, [low.shown, high.shown]),
            (expected, [low.expected, high.expected]),
        ] {
            if one.partial_cmp(&other) != Some(Ordering::Less) {
                let error = Error::inconsistent(name, &show(one), &format!("{beside} = {}", show(other)));
                return Err(error.with_hint("the low check comes first"));
            }
        }
        let slope = (high.expected - low.expected) / (high.shown - low.shown);
        if !(0.5..=2.0).contains(&slope) {
            let [_, name] = shown;
            let shown = format!("{} to {}", show(low.shown), show(high.shown));
            let expected = format!("{} to {}", show(low.expected), show(high.expected));
            let error = Error::inconsistent(name, &shown, &format!("what was checked = {expected}"));
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

    /// By how much what a right instrument would show rises with what this one shows.
    pub(super) fn slope(&self) -> f64 {
        match *self {
            Self::Offset(_) => 1.0,
            Self::TwoPoint([low, high]) => slope(low, high),
        }
    }

    /// The readings at which it was checked, where it is known between them only.
    pub(super) fn ends(&self) -> Option<(f64, f64)> {
        match *self {
            Self::Offset(_) => None,
            Self::TwoPoint([low, high]) => Some((low.shown, high.shown)),
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

/// The names of two checks.
pub(super) const CHECKS: [[&str; 2]; 2] = [["low.reading", "high.reading"], ["low.brix", "high.brix"]];

/// Where what ends at `low` and `high` reaches, within 0 and `most` °Bx; a rounding above nothing is nothing.
pub(super) fn reach(low: f64, high: f64, most: f64) -> (f64, f64) {
    (if low < 1e-9 { 0.0 } else { low }, high.min(most))
}
