//! The big pan, its heat and what stood in it.

use crate::{
    day::{
        inputs::{Evaporator, Heat, LeftInPan, PanKind},
        plan::How,
        resolve::{HeatModel, LeftModel, PanModel, Resolver, limits as range, spread},
        slots::Shape,
    },
    error::Error,
    evaporator::{LEAST_DEPTH, RUNNING_DEPTH},
    units::table,
};
use alloc::format;

impl Resolver {
    pub(crate) fn evaporator(&mut self, evaporator: &Evaporator) -> Result<PanModel, Error> {
        let pan = &evaporator.pan;
        let inner = |e: Error| e.within("pan");
        if pan.sections.is_some_and(|n| n > 1) {
            return Err(Error::not_yet("pan", "sections"));
        }
        let length = self.take(&pan.length, &range::PAN_LENGTH, None).map_err(inner)?;
        let width = self.take(&pan.width, &range::PAN_WIDTH, None).map_err(inner)?;
        let running_depth = self
            .optional(pan.running_depth.as_ref(), &range::RUNNING_DEPTH, RUNNING_DEPTH, None)
            .map_err(inner)?;
        let least_depth = self
            .optional(pan.least_depth.as_ref(), &range::LEAST_DEPTH, LEAST_DEPTH, None)
            .map_err(inner)?;
        let depths = (
            pan.running_depth.map_or(RUNNING_DEPTH, |d| d.si()),
            pan.least_depth.map_or(LEAST_DEPTH, |d| d.si()),
        );
        if depths.1 > depths.0 {
            let mm = |si| table::mm.show(table::mm.from_si(si));
            return Err(Error::inconsistent(
                "pan.least_depth",
                &mm(depths.1),
                &format!("running_depth = {}", mm(depths.0)),
            )
            .with_hint("the pan runs deeper than its least depth"));
        }
        let (heat, error, how) = self.heat(evaporator.heat.as_ref()).map_err(|e| e.within("heat"))?;
        match (pan.running_depth, pan.least_depth) {
            (None, None) => self.assume("evaporator.pan.running_depth", "depths 50 and 25 mm"),
            (None, _) => self.assume("evaporator.pan.running_depth", "running depth 50 mm"),
            (_, None) => self.assume("evaporator.pan.least_depth", "least depth 25 mm"),
            _ => {}
        }
        let left = match &evaporator.left_in_pan {
            Some(left) => Some(self.left_in_pan(left).map_err(|e| e.within("left_in_pan"))?),
            None => None,
        };
        Ok(PanModel {
            length,
            width,
            running_depth,
            least_depth,
            heat,
            heat_error: self.slots.spread(1.0, error, 0.1, 10.0),
            left,
            how,
        })
    }

    pub(crate) fn heat(&mut self, heat: Option<&Heat>) -> Result<(HeatModel, Option<Shape>, How), Error> {
        Ok(match heat {
            Some(Heat::HeldLevel {
                added,
                feed_temperature,
            }) => {
                let wrap = |e: Error| e.within("held_level");
                let slot = self.take(added, &range::WATER_ADDED, None).map_err(wrap)?;
                let feed = self
                    .take(feed_temperature, &range::WATER_TEMPERATURE, None)
                    .map_err(wrap)?;
                self.calibrated("evaporator.heat", "heat from your water test");
                let error = added.uncertainty.is_none().then_some(spread::WATER_TEST);
                (HeatModel::HeldLevel { added: slot, feed }, error, How::Calibrated)
            }
            Some(Heat::LevelDrop(evaporated)) => {
                let slot = self.take(evaporated, &range::LEVEL_DROP, None)?;
                self.calibrated("evaporator.heat", "heat from your water test");
                let error = evaporated.uncertainty.is_none().then_some(spread::DIP_STICK);
                (HeatModel::LevelDrop(slot), error, How::Calibrated)
            }
            Some(Heat::Power(power)) => {
                let slot = self.take(power, &range::PAN_POWER, None)?;
                let error = power.uncertainty.is_none().then_some(spread::WATER_TEST);
                (HeatModel::Power(slot), error, How::Given)
            }
            Some(Heat::AreaRule(kind)) => {
                self.area_rule(*kind);
                (HeatModel::AreaRule(*kind), Some(spread::AREA_RULE), How::Assumed)
            }
            None => {
                self.area_rule(PanKind::Flat);
                (
                    HeatModel::AreaRule(PanKind::Flat),
                    Some(spread::AREA_RULE),
                    How::Assumed,
                )
            }
        })
    }

    pub(crate) fn area_rule(&mut self, kind: PanKind) {
        let rate = match kind {
            PanKind::Flat => "1 gal/(h ft²) from the pan",
            PanKind::FlatBlower => "1.5 gal/(h ft²) from the pan",
            PanKind::Flue => "2 gal/(h ft²) from the pan",
        };
        self.assume("evaporator.heat", rate);
    }

    pub(crate) fn left_in_pan(&mut self, left: &LeftInPan) -> Result<LeftModel, Error> {
        Ok(LeftModel {
            volume: self.take(&left.volume, &range::LEFT_VOLUME, None)?,
            brix: self.take(&left.brix, &range::LEFT_BRIX, None)?,
            kelvin: self.take(&left.temperature, &range::LEFT_TEMPERATURE, None)?,
        })
    }
}
