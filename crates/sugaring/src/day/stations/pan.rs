//! The big pan and the small one.

use crate::{
    day::{
        inputs::PanKind,
        resolve::{FinishingModel, HeatModel},
        stations::{
            Fidelity, FinishOutcome, PanOutcome, StageOutcome, State,
            today::{Start, Today, state},
        },
    },
    error::Error,
    evaporator::{
        self, Fineness, PanShape, area_heat_at, batch_at, boil_at, held_level_heat_at, hold_up_at, level_drop_heat_at,
        water_rate_at,
    },
    lot::Lot,
    units::Value,
};
use alloc::vec::Vec;

impl Today<'_> {
    /// The big pan; its draw also as a lot.
    pub(crate) fn boil(&self, start: &Start, fed: &Lot, aim: f64) -> Result<(PanOutcome, Lot), Error> {
        let model = &self.model.pan;
        let pascal = start.station.pressure().si();
        let (length, width) = (self.of(model.length), self.of(model.width));
        let shape = PanShape {
            area: length * width,
            running_depth: self.of(model.running_depth),
            least_depth: self.of(model.least_depth),
        };
        let heat = self.heat(model.heat, shape.area, pascal) * self.of(model.heat_error);
        let fineness = self.fineness();
        let left = start.left.as_ref();
        let batch = batch_at(&shape, heat, fed, left, aim, pascal, fineness).map_err(|e| {
            let outer = if e.argument().starts_with("left_in_pan") {
                "evaporator"
            } else {
                "evaporator.pan"
            };
            e.within(outer)
        })?;
        let hold_up = match self.fidelity {
            Fidelity::Full => {
                let strength = fed.brix().get();
                hold_up_at(batch.running_volume, strength, aim, None, pascal, fineness).map_or(0.0, |h| h.sugar)
            }
            Fidelity::Draw => 0.0,
        };
        let stages: Vec<StageOutcome> = batch
            .stages()
            .map(|stage| StageOutcome {
                kind: stage.kind.name(),
                duration: stage.duration,
                water: stage.water,
                fed: stage.fed,
                brix: stage.brix,
                mass: stage.mass,
                depth: stage.depth,
                kelvin: stage.kelvin,
            })
            .collect();
        let outcome = PanOutcome {
            fed: state(fed),
            heat,
            water_rate: water_rate_at(heat, pascal),
            running_volume: batch.running_volume,
            least_depth: shape.least_depth,
            first_fill: batch.first_fill,
            stages,
            duration: batch.duration,
            energy: batch.heat,
            water: batch.water,
            draw: State {
                mass: batch.mass,
                brix: batch.ends_at,
                kelvin: batch.kelvin,
                volume: batch.volume,
            },
            finishes: batch.finishes,
            depth_if_finished: batch.depth_if_finished,
            continuous_hold_up: hold_up,
        };
        Ok((outcome, Lot::trusted(batch.mass, batch.ends_at, batch.kelvin)))
    }

    /// Heat into the liquid, W.
    pub(crate) fn heat(&self, model: HeatModel, area: f64, pascal: f64) -> f64 {
        match model {
            HeatModel::HeldLevel { added, feed } => held_level_heat_at(self.of(added), self.of(feed), pascal),
            HeatModel::LevelDrop(evaporated) => level_drop_heat_at(self.of(evaporated), pascal),
            HeatModel::Power(power) => self.of(power),
            HeatModel::AreaRule(kind) => {
                let kind = match kind {
                    PanKind::Flat => evaporator::PanKind::Flat,
                    PanKind::FlatBlower => evaporator::PanKind::FlatBlower,
                    PanKind::Flue => evaporator::PanKind::Flue,
                };
                area_heat_at(area, kind, pascal)
            }
        }
    }

    /// The small pan, filled with the hot draw.
    pub(crate) fn finish(
        &self,
        model: &FinishingModel,
        start: &Start,
        draw: &Lot,
        aim: f64,
    ) -> Result<FinishOutcome, Error> {
        let heat = self.of(model.heat);
        let boil = boil_at(draw, aim, start.station.pressure().si(), self.fineness())
            .ok_or_else(|| Error::no_convergence("finishing"))?;
        let energy = boil.total();
        Ok(FinishOutcome {
            heat,
            water: boil.water,
            energy,
            duration: energy / heat,
        })
    }

    pub(crate) fn fineness(&self) -> Fineness {
        match self.fidelity {
            Fidelity::Full => Fineness::Full,
            Fidelity::Draw => Fineness::Draw,
        }
    }
}
