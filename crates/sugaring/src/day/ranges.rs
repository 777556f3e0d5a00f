//! Ranges of the results: the whole day over again for each draw of the inputs.

use crate::{
    day::{
        plan::Interval,
        resolve::Model,
        stations::{self, Fidelity, Outcome},
    },
    error::{Error, ErrorKind},
    uncertainty::{Draws, quantile},
};
use alloc::{vec, vec::Vec};

/// What a range is given for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Quantity {
    Hours,
    HoursFired,
    SyrupVolume,
    SyrupMass,
    Permeate,
    FireMass,
    FireVolume,
    BurnerMass,
    BurnerVolume,
    Electricity,
    Cost,
    RigHours,
    PermeateFirst,
    PermeateLast,
    PanHours,
    FinishHours,
    FinishingTemperature,
    HoursWithout,
    FuelMassWithout,
}

const QUANTITIES: [Quantity; 19] = [
    Quantity::Hours,
    Quantity::HoursFired,
    Quantity::SyrupVolume,
    Quantity::SyrupMass,
    Quantity::Permeate,
    Quantity::FireMass,
    Quantity::FireVolume,
    Quantity::BurnerMass,
    Quantity::BurnerVolume,
    Quantity::Electricity,
    Quantity::Cost,
    Quantity::RigHours,
    Quantity::PermeateFirst,
    Quantity::PermeateLast,
    Quantity::PanHours,
    Quantity::FinishHours,
    Quantity::FinishingTemperature,
    Quantity::HoursWithout,
    Quantity::FuelMassWithout,
];

/// The draws, sorted, one column a quantity.
#[derive(Clone, Debug, Default)]
pub(crate) struct Ranges {
    columns: Vec<Vec<f64>>,
    pub(crate) unreachable: u32,
}

impl Ranges {
    /// Draws of the day; `progress` is told the share done about a hundred times and may stop the work.
    pub(crate) fn of(model: &Model, progress: &mut dyn FnMut(f64) -> bool) -> Result<Self, Error> {
        let mut ranges = Self {
            columns: vec![Vec::new(); QUANTITIES.len()],
            unreachable: 0,
        };
        let mut draws = Draws::new(model.seed);
        let mut values = model.slots.nominal();
        // A hundredth of many draws may take seconds, which is long for somebody who wants to stop.
        let tick = (model.samples / 100).clamp(1, 200);
        for i in 0..model.samples {
            if i % tick == 0 && !progress(f64::from(i) / f64::from(model.samples)) {
                return Err(Error::new(ErrorKind::Cancelled, "", "the work was stopped"));
            }
            model.slots.draw(&mut draws, &mut values);
            match stations::day(model, &values, Fidelity::Draw) {
                Ok((outcome, without)) => ranges.note(&outcome, without.as_ref()),
                Err(_) => ranges.unreachable += 1,
            }
        }
        for column in &mut ranges.columns {
            column.sort_by(f64::total_cmp);
        }
        Ok(ranges)
    }

    fn note(&mut self, outcome: &Outcome, without: Option<&Outcome>) {
        for (column, quantity) in self.columns.iter_mut().zip(QUANTITIES) {
            if let Some(value) = value(quantity, outcome, without) {
                column.push(value);
            }
        }
    }

    /// The middle 95 % of a quantity.
    pub(crate) fn interval(&self, quantity: Quantity) -> Option<Interval> {
        let column = self.columns.get(quantity as usize).filter(|c| c.len() > 1)?;
        Some(Interval {
            low: quantile(column, 0.025),
            high: quantile(column, 0.975),
            median: None,
        })
    }

    /// The same with the median, for what sits at one end of its range.
    pub(crate) fn interval_with_median(&self, quantity: Quantity) -> Option<Interval> {
        let column = self.columns.get(quantity as usize)?;
        let mut interval = self.interval(quantity)?;
        interval.median = Some(quantile(column, 0.5));
        Some(interval)
    }
}

fn value(quantity: Quantity, day: &Outcome, without: Option<&Outcome>) -> Option<f64> {
    Some(match quantity {
        Quantity::Hours => day.clock.end,
        Quantity::HoursFired | Quantity::PanHours => day.pan.duration,
        Quantity::SyrupVolume => day.syrup.volume,
        Quantity::SyrupMass => day.syrup.mass,
        Quantity::Permeate => day.rig.as_ref()?.permeate_mass,
        Quantity::FireMass => day.fire.mass?,
        Quantity::FireVolume => day.fire.volume?,
        Quantity::BurnerMass => day.burner?.mass?,
        Quantity::BurnerVolume => day.burner?.volume?,
        Quantity::Electricity => day.rig.as_ref()?.energy,
        Quantity::Cost => day.cost.sum,
        Quantity::RigHours => day.rig.as_ref()?.duration,
        Quantity::PermeateFirst => day.rig.as_ref()?.first_flow,
        Quantity::PermeateLast => day.rig.as_ref()?.last_flow,
        Quantity::FinishHours => day.finish?.duration,
        Quantity::FinishingTemperature => day.finishing_temperature,
        Quantity::HoursWithout => without?.clock.end,
        Quantity::FuelMassWithout => without?.fire.mass?,
    })
}
