//! Lines, labels and wrapping.

use alloc::{format, string::String};

pub(crate) const WIDTH: usize = 70;
use crate::{
    day::{
        page::words::{clock, hours_range},
        plan::{DayPlan, Step},
    },
    digits::fixed,
    units::table,
};

/// A page under construction.
#[derive(Default)]
pub(crate) struct Page(pub(crate) String);

impl Page {
    pub(crate) fn line(&mut self, text: &str) {
        self.0 += text.trim_end();
        self.0.push('\n');
    }

    pub(crate) fn gap(&mut self) {
        self.line("");
    }

    pub(crate) fn gap_if(&mut self, wanted: bool) {
        if wanted {
            self.gap();
        }
    }

    /// A step's first line.
    pub(crate) fn step(&mut self, plan: &DayPlan, step: &Step, name: &str, more: &str) {
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
    pub(crate) fn row(&mut self, label: &str, text: &str) {
        if !text.is_empty() {
            self.wrapped(&format!("  {label}"), text, 8);
        }
    }

    /// Text after a label, wrapped with a hanging indent; a number is not parted from its unit.
    pub(crate) fn wrapped(&mut self, label: &str, text: &str, indent: usize) {
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
pub(crate) fn glued(text: &str, i: usize) -> usize {
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

pub(crate) fn width(text: &str) -> usize {
    text.chars().count()
}
