//! Draws of the inputs of a model, a block at a time.

use alloc::{vec, vec::Vec};

use super::{
    causes::Causes,
    draws::Draws,
    normal::normal_quantile_at,
    spread::{Distribution, Spread},
    student::{MOST_FREEDOM, student_quantile_at},
};
use crate::{error::Error, math};

/// Draws in a block: columns of so many stay near the processor.
pub(super) const BLOCK: usize = 1024;

pub(super) struct Sampler<'a> {
    inputs: &'a [Spread],
    causes: Causes<'a>,
    draws: Draws,
    /// One uniform number a cause, draw after draw: what a seed gives does not depend on the size of a block.
    uniform: Vec<f64>,
    columns: Vec<Vec<f64>>,
}

impl<'a> Sampler<'a> {
    pub(super) fn new(inputs: &'a [Spread], seed: u64) -> Result<Self, Error> {
        let causes = Causes::of(inputs)?;
        Ok(Self {
            inputs,
            draws: Draws::new(seed),
            uniform: vec![0.0; BLOCK * causes.list.len()],
            columns: vec![vec![0.0; BLOCK]; inputs.len()],
            causes,
        })
    }

    /// The next `count` draws, at most a [`BLOCK`]: one column an input.
    pub(super) fn next(&mut self, count: usize) -> Vec<&[f64]> {
        let causes = self.causes.list.len();
        for uniform in self.uniform.iter_mut().take(count * causes) {
            *uniform = self.draws.uniform();
        }
        let partly = self
            .causes
            .correlated
            .as_ref()
            .map(|correlated| correlated.places.as_slice());
        for (place, cause) in self.causes.list.iter().enumerate() {
            let correlated = partly.is_some_and(|places| places.binary_search(&place).is_ok());
            let uniform = self
                .uniform
                .iter()
                .skip(place)
                .step_by(causes.max(1))
                .take(count)
                .copied();
            for &i in &cause.members {
                if let (Some(input), Some(column)) = (self.inputs.get(i), self.columns.get_mut(i)) {
                    spread(input, correlated, uniform.clone(), column);
                }
            }
        }
        self.correlate(count);
        self.columns.iter().filter_map(|column| column.get(..count)).collect()
    }

    /// Mixes the columns of correlated inputs, which hold values as if they were not.
    fn correlate(&mut self, count: usize) {
        let Some(correlated) = &self.causes.correlated else {
            return;
        };
        let member = |place: usize| self.causes.list.get(place)?.members.first().copied();
        let members: Vec<usize> = correlated.places.iter().filter_map(|&place| member(place)).collect();
        let mut mixed = vec![vec![0.0; count]; members.len()];
        for (row, mixed) in correlated.factor.iter().zip(&mut mixed) {
            for (coefficient, &j) in row.iter().zip(&members) {
                if let Some(column) = self.columns.get(j) {
                    for (sum, x) in mixed.iter_mut().zip(column) {
                        *sum += coefficient * x;
                    }
                }
            }
        }
        for (mixed, &i) in mixed.iter().zip(&members) {
            if let (Some(input), Some(column)) = (self.inputs.get(i), self.columns.get_mut(i)) {
                for (x, z) in column.iter_mut().zip(mixed) {
                    *x = input.value() + input.uncertainty() * z;
                }
            }
        }
    }
}

/// What `uniform` makes of an input; of a correlated one, the standard normal number behind it.
fn spread(input: &Spread, correlated: bool, uniform: impl Iterator<Item = f64>, column: &mut [f64]) {
    let (value, u) = (input.value(), input.uncertainty());
    let freedom = input.degrees_of_freedom();
    if correlated {
        fill(column, uniform, normal_quantile_at);
    } else if u == 0.0 {
        fill(column, uniform, |_| value);
    } else {
        match input.distribution() {
            Distribution::Normal if freedom <= MOST_FREEDOM => {
                fill(column, uniform, |p| {
                    value + u * student_quantile_at(p, freedom).unwrap_or(f64::NAN)
                });
            }
            Distribution::Normal => fill(column, uniform, |p| value + u * normal_quantile_at(p)),
            Distribution::Rectangular => {
                let half = u * math::sqrt(3.0);
                fill(column, uniform, |p| value + half * (2.0 * p - 1.0));
            }
            Distribution::Triangular => {
                let half = u * math::sqrt(6.0);
                let rise = |p: f64| math::sqrt(2.0 * p) - 1.0;
                fill(column, uniform, |p| {
                    value + half * if p < 0.5 { rise(p) } else { -rise(1.0 - p) }
                });
            }
            Distribution::Arcsine => {
                let half = u * core::f64::consts::SQRT_2;
                fill(column, uniform, |p| value - half * math::cos(core::f64::consts::PI * p));
            }
        }
    }
}

fn fill(column: &mut [f64], uniform: impl Iterator<Item = f64>, quantile: impl Fn(f64) -> f64) {
    for (x, p) in column.iter_mut().zip(uniform) {
        *x = quantile(p);
    }
}
