//! The plan from its numbers.

use crate::{
    day::{
        assemble::totals::fuel_volume,
        inputs::DayInputs,
        plan::{AirToday, Balance, DayPlan, Figure, Filled, How, Remains, Remark, Rest, WithoutMembrane},
        ranges::{Quantity as Of, Ranges},
        resolve::Model,
        slots::Values,
        stations::Outcome,
    },
    finish,
    units::{Temperature, Value, Word},
};
use alloc::vec::Vec;

/// What the plan is put together from.
pub(crate) struct Parts<'a> {
    pub(crate) inputs: &'a DayInputs,
    pub(crate) model: &'a Model,
    pub(crate) values: &'a Values,
    pub(crate) outcome: &'a Outcome,
    pub(crate) without: Option<&'a Outcome>,
    pub(crate) ranges: &'a Ranges,
    pub(crate) remarks: Vec<Remark>,
}

impl Parts<'_> {
    pub(crate) fn plan(self) -> DayPlan {
        let (model, outcome) = (self.model, self.outcome);
        let marks = self.marks();
        let packing = outcome.packing.as_ref();
        DayPlan {
            schema_version: crate::day::SCHEMA_VERSION,
            numbers: crate::day::NUMBERS,
            title: self.inputs.title.clone(),
            start: self.inputs.start.clone(),
            coverage: 0.95,
            seed: model.seed,
            samples: model.samples,
            unreachable_draws: self.ranges.unreachable,
            inputs: self.inputs.clone(),
            air: AirToday {
                pressure: Figure::of_si(outcome.pressure),
                origin: model.air.origin,
                water_boils_at: Figure::of_si(outcome.water_boils_at),
            },
            totals: self.totals(),
            steps: self.steps(&marks),
            containers: packing.map_or_else(Vec::new, |p| p.packing.rows.iter().map(filled).collect()),
            rest: packing.map(|p| Rest {
                volume: Figure::of_si(p.packing.rest.volume.si()),
                mass: Figure::of_si(p.packing.rest.mass.si()),
                because: p.packing.rest.because.name(),
            }),
            marks,
            remains: Remains {
                sugar: Figure::of_si(0.0),
                mass: Figure::of_si(0.0),
            },
            without_membrane: self.without.map(|without| WithoutMembrane {
                hours: self.range(without.clock.end, Of::HoursWithout),
                hours_fired: Figure::of_si(without.pan.duration),
                fuel_mass: without.fire.mass.map(|m| self.range(m, Of::FuelMassWithout)),
                fuel_volume: fuel_volume(&model.fuel, &without.fire, None),
                cost: without.cost.sum,
            }),
            other_hours: self.other_hours(),
            rests_on: model.rests_on.clone(),
            balance: balance(outcome),
            remarks: self.remarks,
        }
    }

    pub(crate) fn range<W: Word>(&self, si: f64, of: Of) -> Figure<W> {
        Figure::of_si(si).with_interval(self.ranges.interval(of))
    }

    /// Hours that the film's default makes too short carry their median.
    pub(crate) fn range_with_median<W: Word>(&self, si: f64, of: Of) -> Figure<W> {
        let one_sided = self
            .model
            .rests_on
            .iter()
            .any(|r| r.input == "membrane.film_factor" && r.how == How::Assumed);
        Figure::of_si(si).with_interval(if one_sided && self.outcome.rig.is_some() {
            self.ranges.interval_with_median(of)
        } else {
            self.ranges.interval(of)
        })
    }
}

fn filled(row: &finish::PackedRow) -> Filled {
    let temperature = |t: Option<Temperature>| t.map(|t| Figure::of_si(t.si()));
    Filled {
        name: row.name.clone(),
        count: row.count,
        fill_volume: Figure::of_si(row.fill_volume.si()),
        fill_mass: Figure::of_si(row.fill_mass.si()),
        headspace: row.headspace.map(|v| Figure::of_si(v.si())),
        settled: temperature(row.settled),
        glass_needed: temperature(row.glass_needed),
        fill_needed: temperature(row.fill_needed),
    }
}

/// What came in less what went out, over the whole day.
fn balance(outcome: &Outcome) -> Balance {
    let left = outcome.left.unwrap_or_default();
    let (permeate, permeate_sugar) = outcome.rig.as_ref().map_or((0.0, 0.0), |r| {
        (r.permeate_mass, r.permeate_mass * r.permeate_brix / 100.0)
    });
    let draw = outcome.pan.draw;
    let (out, out_sugar) = match (&outcome.finish, outcome.pan.finishes) {
        (Some(finish), _) => (
            finish.water + outcome.syrup.mass + outcome.syrup.lost,
            (outcome.syrup.mass + outcome.syrup.lost) * outcome.syrup.brix / 100.0,
        ),
        (None, true) => (
            outcome.syrup.mass + outcome.syrup.lost,
            (outcome.syrup.mass + outcome.syrup.lost) * outcome.syrup.brix / 100.0,
        ),
        (None, false) => (draw.mass, draw.sugar()),
    };
    Balance {
        mass: Figure::of_si(outcome.tank.mass + left.mass - permeate - outcome.pan.water - out),
        sugar: Figure::of_si(outcome.tank.sugar() + left.sugar() - permeate_sugar - out_sugar),
    }
}
