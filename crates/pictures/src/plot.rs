use crate::{axis::Axis, draw, svg, words};

/// A picture of the book.
#[derive(Clone, Debug)]
pub struct Picture {
    /// Its file, without folder and ending.
    pub name: &'static str,
    /// What it shows, in a line.
    pub title: String,
    /// What is seen, in words with numbers.
    pub words: String,
    /// The picture, to stand within a page: it takes its colours from the page's theme.
    pub svg: String,
}

/// What is drawn.
pub(crate) struct Plot {
    pub(crate) name: &'static str,
    pub(crate) title: &'static str,
    pub(crate) x: Axis,
    pub(crate) y: Axis,
    pub(crate) curves: Vec<Curve>,
    pub(crate) marks: Vec<Mark>,
    pub(crate) below: Below,
    /// The accuracy that the relation declares, which the steps below draw.
    pub(crate) accuracy: &'static str,
    /// What the numbers do not say: appended to the words.
    pub(crate) note: &'static str,
}

/// A line with its label at the end.
pub(crate) struct Curve {
    pub(crate) label: String,
    pub(crate) line: Vec<(f64, f64)>,
}

/// A row of a table, in the units of the axes.
#[derive(Clone, Copy)]
pub(crate) struct Mark {
    pub(crate) x: f64,
    pub(crate) value: f64,
    /// Table minus relation.
    pub(crate) difference: f64,
    pub(crate) kind: Kind,
}

/// How a row is known.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Kind {
    Seen,
    FromMemory,
    Derived,
}

impl Kind {
    pub(crate) const ALL: [Self; 3] = [Self::Seen, Self::FromMemory, Self::Derived];

    pub(crate) fn name(self) -> &'static str {
        match self {
            Self::Seen => "seen in print",
            Self::FromMemory => "from memory",
            Self::Derived => "computed apart",
        }
    }
}

/// The lower part: table minus relation.
pub(crate) enum Below {
    /// There is no row to compare with; why.
    Nothing(&'static str),
    /// In the unit of the upper axis, or of another that its symbol names.
    Difference(&'static str, Vec<Step>),
    /// In per cent of the relation.
    Percent(Vec<Step>),
}

/// The declared accuracy to the left of `to`, as half-width.
#[derive(Clone, Copy)]
pub(crate) struct Step {
    pub(crate) to: f64,
    pub(crate) half: f64,
}

pub(crate) fn step(to: f64, half: f64) -> Step {
    Step { to, half }
}

impl Below {
    pub(crate) fn steps(&self) -> &[Step] {
        match self {
            Self::Nothing(_) => &[],
            Self::Difference(_, steps) | Self::Percent(steps) => steps,
        }
    }

    pub(crate) fn unit(&self) -> &'static str {
        match self {
            Self::Nothing(_) => "",
            Self::Difference(unit, _) => unit,
            Self::Percent(_) => "%",
        }
    }

    pub(crate) fn deviation(&self, mark: &Mark) -> f64 {
        match self {
            Self::Percent(_) => 100.0 * mark.difference / (mark.value - mark.difference),
            _ => mark.difference,
        }
    }
}

impl Plot {
    pub(crate) fn picture(&self) -> Picture {
        let words = words::of(self);
        let drawn = draw::drawing(self);
        Picture {
            name: self.name,
            title: String::from(self.title),
            svg: svg::themed(&drawn, self.name, self.title, &words),
            words,
        }
    }
}
