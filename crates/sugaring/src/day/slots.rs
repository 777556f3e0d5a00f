//! The numbers of a day, each in its slot, and how each is spread: one list for the plan and for its draws.

use crate::uncertainty::Draws;
use alloc::vec::Vec;

/// Where a number stands.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Slot(usize);

/// How an input scatters.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Shape {
    /// One standard deviation.
    Normal(f64),
    /// Half the width.
    Rectangular(f64),
    /// One standard deviation of the logarithm; the nominal value is the median.
    LogNormal(f64),
    /// Between two factors on the nominal value.
    LogUniform(f64, f64),
}

#[derive(Clone, Copy, Debug)]
struct Spread {
    slot: usize,
    shape: Shape,
    low: f64,
    high: f64,
}

/// The nominal numbers and their spreads, in the order in which they are drawn.
#[derive(Clone, Debug, Default)]
pub(crate) struct Slots {
    nominal: Vec<f64>,
    spreads: Vec<Spread>,
}

impl Slots {
    /// A number that does not scatter.
    pub(crate) fn fixed(&mut self, value: f64) -> Slot {
        self.nominal.push(value);
        Slot(self.nominal.len() - 1)
    }

    /// A number that scatters; a draw is cut to `low` to `high`, which are widened to hold the number itself.
    pub(crate) fn spread(&mut self, value: f64, shape: Option<Shape>, low: f64, high: f64) -> Slot {
        let slot = self.fixed(value);
        if let Some(shape) = shape {
            self.spreads.push(Spread {
                slot: slot.0,
                shape,
                low: low.min(value),
                high: high.max(value),
            });
        }
        slot
    }

    /// The numbers as given.
    pub(crate) fn nominal(&self) -> Values {
        Values(self.nominal.clone())
    }

    /// One draw of all numbers, into `values`.
    pub(crate) fn draw(&self, draws: &mut Draws, values: &mut Values) {
        values.0.clone_from(&self.nominal);
        for spread in &self.spreads {
            let Some(value) = values.0.get_mut(spread.slot) else {
                continue;
            };
            let drawn = match spread.shape {
                Shape::Normal(u) => *value + u * draws.normal(),
                Shape::Rectangular(half) => *value + draws.rectangular(-half, half),
                Shape::LogNormal(u) => *value * draws.log_normal(u),
                Shape::LogUniform(low, high) => *value * draws.log_uniform(low, high),
            };
            *value = drawn.max(spread.low).min(spread.high);
        }
    }
}

/// One set of numbers.
#[derive(Clone, Debug)]
pub(crate) struct Values(Vec<f64>);

impl Values {
    /// The number in a slot.
    pub(crate) fn of(&self, slot: Slot) -> f64 {
        self.0.get(slot.0).copied().unwrap_or(f64::NAN)
    }
}
