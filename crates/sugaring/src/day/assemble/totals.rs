//! Sums of the day.

use crate::{
    day::{
        assemble::Parts,
        plan::{
            ContainerCost, Cost, Electricity, Figure, FuelLine, FuelVolume, Interval, OtherHours, SyrupMade, ToFinish,
            Totals, WaterRemoved,
        },
        ranges::Quantity as Of,
        resolve::FuelModel,
        stations::FuelOutcome,
    },
    safety::StepKind,
    units::table,
};
use alloc::vec;

impl Parts<'_> {
    pub(crate) fn totals(&self) -> Totals {
        let outcome = self.outcome;
        let made = outcome.is_finished();
        let rig = outcome.rig.as_ref();
        let mut fuel = vec![self.fuel_line(
            StepKind::Boil,
            &self.model.fuel,
            &outcome.fire,
            Of::FireMass,
            Of::FireVolume,
        )];
        if let (Some(finishing), Some(burner)) = (&self.model.finishing, &outcome.burner) {
            fuel.push(self.fuel_line(
                StepKind::Finish,
                &finishing.fuel,
                burner,
                Of::BurnerMass,
                Of::BurnerVolume,
            ));
        }
        let finish_energy = outcome.finish.map_or(0.0, |f| f.energy);
        Totals {
            syrup: made.then(|| SyrupMade {
                volume: self.range(outcome.syrup.volume, Of::SyrupVolume),
                mass: self.range(outcome.syrup.mass, Of::SyrupMass),
            }),
            to_finish: (!made).then(|| ToFinish {
                mass: Figure::of_si(outcome.pan.draw.mass),
                brix: outcome.pan.draw.brix,
                volume: Figure::of_si(outcome.pan.draw.volume),
                syrup: self.range(outcome.syrup.volume, Of::SyrupVolume),
            }),
            water_removed: WaterRemoved {
                membrane: rig.map(|r| self.range(r.permeate_mass, Of::Permeate)),
                evaporator: Figure::of_si(outcome.pan.water),
                finishing: outcome.finish.map(|f| Figure::of_si(f.water)),
            },
            heat: Figure::of_si(outcome.pan.energy + finish_energy),
            hours: self.range_with_median(outcome.clock.end, Of::Hours),
            hours_fired: self.range(outcome.pan.duration, Of::HoursFired),
            fuel,
            electricity: rig.map(|r| Electricity {
                energy: self.range(r.energy, Of::Electricity),
                cost: outcome.cost.electricity,
            }),
            containers: outcome.packing.is_some().then_some(ContainerCost {
                cost: outcome.cost.containers,
            }),
            cost: self.cost(made),
        }
    }

    pub(crate) fn cost(&self, made: bool) -> Cost {
        let outcome = self.outcome;
        let sum = outcome.cost.sum;
        let interval = self.ranges.interval(Of::Cost);
        let per = |si: f64| (made && si > 0.0 && sum > 0.0).then(|| sum / table::litre.from_si(si));
        Cost {
            value: sum,
            low: interval.map(|i| i.low),
            high: interval.map(|i| i.high),
            per_litre: per(outcome.syrup.volume),
            per_litre_packed: outcome.packing.as_ref().and_then(|p| per(p.packed)),
            left_out: outcome.cost.left_out.clone(),
        }
    }

    pub(crate) fn fuel_line(
        &self,
        step: StepKind,
        fuel: &FuelModel,
        burned: &FuelOutcome,
        mass: Of,
        volume: Of,
    ) -> FuelLine {
        FuelLine {
            step,
            name: fuel.name.clone(),
            mass: burned.mass.map(|m| self.range(m, mass)),
            volume: fuel_volume(fuel, burned, self.ranges.interval(volume)),
            energy: (burned.mass.is_none() && burned.volume.is_none()).then(|| Figure::of_si(burned.energy)),
            cost: burned.cost,
        }
    }

    pub(crate) fn other_hours(&self) -> OtherHours {
        let clock = &self.outcome.clock;
        let single = self.outcome.rig.as_ref().is_some_and(|r| r.single_pass);
        OtherHours {
            in_sequence: single.then(|| Figure::of_si(clock.in_sequence)),
            overlapped: (!single && self.outcome.rig.is_some()).then(|| Figure::of_si(clock.overlapped)),
            together: clock.together.map(Figure::of_si),
        }
    }
}

pub(crate) fn fuel_volume(fuel: &FuelModel, burned: &FuelOutcome, interval: Option<Interval>) -> Option<FuelVolume> {
    let volume = burned.volume?;
    Some(match fuel.kind {
        crate::day::resolve::FuelKind::Wood { .. } => FuelVolume::Cords(Figure::of_si(volume).with_interval(interval)),
        crate::day::resolve::FuelKind::Named => FuelVolume::Gallons(Figure::of_si(volume).with_interval(interval)),
    })
}
