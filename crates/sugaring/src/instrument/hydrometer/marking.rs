//! What the marks of a hydrometer say.

use super::float::BRACKET;
use crate::{
    relation::Range,
    sucrose::{brix_from_density_at, density_at},
    units::{Dimension, Graduation, Marks, Scale, Unit, table},
};

/// The scale on a hydrometer's paper.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Marking {
    /// °Brix.
    Brix,
    /// A density scale of the trade, which stands beside the °Brix of the solution that it names.
    On(Dimension, Marks),
    /// Density in kg/m³ at the temperature of calibration.
    Density,
}

impl Marking {
    pub(super) fn of_scale<S: Scale>() -> Self {
        Self::On(S::DIMENSION, S::MARKS)
    }

    /// The marking of a name in data: `brix`, `density`, or a scale's word.
    pub(crate) fn named(name: &str) -> Option<Self> {
        match name {
            "brix" => Some(Self::Brix),
            "density" => Some(Self::Density),
            _ => scales().find(|(word, _)| *word == name).map(|(_, marking)| marking),
        }
    }

    /// Its name in data.
    pub(crate) fn name(&self) -> &'static str {
        match self {
            Self::Brix => "brix",
            Self::Density => "density",
            Self::On(dimension, _) => Unit::base(*dimension).word,
        }
    }

    /// The names of all markings.
    pub(crate) fn names() -> impl Iterator<Item = &'static str> {
        ["brix", "density"].into_iter().chain(scales().map(|(word, _)| word))
    }

    /// The words of the density scales.
    pub(super) fn scales() -> impl Iterator<Item = &'static str> {
        scales().map(|(word, _)| word)
    }

    /// The unit of its marks.
    pub(crate) fn unit(&self) -> &'static Unit {
        match self {
            Self::Brix => &table::deg_brix,
            Self::Density => &table::kg_per_m3,
            Self::On(dimension, _) => Unit::base(*dimension),
        }
    }

    /// The mark beside a strength in °Bx; `calibrated_at` in K.
    pub(super) fn mark(&self, brix: f64, calibrated_at: f64) -> f64 {
        match self {
            Self::Brix => brix,
            Self::Density => density_at(brix, calibrated_at),
            Self::On(_, marks) => marks.mark(brix),
        }
    }

    /// The strength beside a mark, °Bx within what marks may say; `None` where no solution stands there.
    pub(super) fn brix(&self, mark: f64, calibrated_at: f64) -> Option<f64> {
        let found = match self {
            Self::Brix => Some(mark),
            Self::Density => brix_from_density_at(mark, calibrated_at),
            Self::On(_, marks) => marks.brix(mark),
        };
        found.filter(|brix| (BRACKET.0..=BRACKET.1).contains(brix))
    }

    /// °Bx for a mark's worth, beside `brix`.
    pub(super) fn brix_per_mark(&self, brix: f64, calibrated_at: f64) -> f64 {
        match self {
            Self::Brix => 1.0,
            _ => 1.0 / (self.mark(brix + 0.5, calibrated_at) - self.mark(brix - 0.5, calibrated_at)),
        }
    }

    /// How far an offset, a step or an uncertainty called `argument` may reach, in marks.
    pub(super) fn width(&self, argument: &'static str, signed: bool) -> Range {
        let most = match self {
            Self::Brix
            | Self::On(
                _,
                Marks {
                    graduation: Graduation::Baume,
                    ..
                },
            ) => 10.0,
            Self::On(..) => 0.1,
            Self::Density => 100.0,
        };
        Range::new(argument, self.unit(), if signed { -most } else { 0.0 }, most)
    }
}

/// The density scales by their words.
fn scales() -> impl Iterator<Item = (&'static str, Marking)> {
    use crate::units::{
        apparent_relative_density_20_20, baume_20_20, baume_60_60_f, relative_density_20_4, relative_density_20_20,
        relative_density_60_60_f,
    };
    let all = [
        Marking::of_scale::<baume_20_20>(),
        Marking::of_scale::<baume_60_60_f>(),
        Marking::of_scale::<relative_density_20_20>(),
        Marking::of_scale::<relative_density_60_60_f>(),
        Marking::of_scale::<relative_density_20_4>(),
        Marking::of_scale::<apparent_relative_density_20_20>(),
    ];
    all.into_iter().map(|marking| (marking.name(), marking))
}
