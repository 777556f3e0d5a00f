//! What a rig may be told beyond its element and its pressure.

use super::{FactorModel, Polarisation, Pump, Rig, Warming, pump::PRESSURE, rinse::HOLD_UP};
use crate::{
    error::Error,
    relation::Range,
    units::{GaugePressure, Pressure, Ratio, Value, Volume, table},
};

impl Rig {
    /// Trains of elements side by side that share the feed, 1 to 64.
    ///
    /// # Errors
    /// [`OutOfRange`](crate::ErrorKind::OutOfRange).
    pub fn with_parallel(mut self, elements: u32) -> Result<Self, Error> {
        PARALLEL.check(f64::from(elements))?;
        self.parallel = Some(elements);
        Ok(self)
    }

    /// Elements one behind the other in each train, 1 to 8.
    ///
    /// # Errors
    /// [`OutOfRange`](crate::ErrorKind::OutOfRange).
    pub fn with_series(mut self, elements: u32) -> Result<Self, Error> {
        SERIES.check(f64::from(elements))?;
        self.series = Some(elements);
        Ok(self)
    }

    /// The pump of the whole rig.
    ///
    /// # Errors
    /// [`OutOfRange`](crate::ErrorKind::OutOfRange) where the pump's table does not reach the rig's pressure.
    pub fn with_pump(mut self, pump: Pump) -> Result<Self, Error> {
        pump.covers(self.pressure)?;
        self.pump = Some(pump);
        Ok(self)
    }

    /// What the lowest rated part (housing, hose, element, pump) allows, 0 to 70 bar gauge.
    ///
    /// # Errors
    /// [`OutOfRange`](crate::ErrorKind::OutOfRange), and where the rig's pressure is higher.
    pub fn with_pressure_limit(mut self, limit: GaugePressure) -> Result<Self, Error> {
        let limit = PRESSURE.check(limit.si()).map_err(|e| e.named("pressure_limit"))?;
        if self.pressure > limit {
            let [pressure, limit] = [self.pressure, limit].map(|si| table::bar_gauge.from_si(si));
            let error = Error::out_of_limits("pressure", pressure, &table::bar_gauge, 0.0, limit);
            return Err(error.with_hint("the rig's weakest part allows no more"));
        }
        self.pressure_limit = Some(limit);
        Ok(self)
    }

    /// How the film at the membrane is reckoned.
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange): the limits stand at
    /// [`Polarisation`].
    pub fn with_polarisation(mut self, polarisation: Polarisation) -> Result<Self, Error> {
        self.polarisation = Some(polarisation.checked()?);
        Ok(self)
    }

    /// Which temperature factor applies.
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
    pub fn with_temperature_model(mut self, model: FactorModel) -> Result<Self, Error> {
        self.temperature_model = Some(model.checked()?);
        Ok(self)
    }

    /// Pressure lost along each element, 0 to 2 bar; 0.1 to 0.3 in small ones (common practice, no source).
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
    pub fn with_element_drop(mut self, drop: Pressure) -> Result<Self, Error> {
        self.element_drop = Some(ELEMENT_DROP.check(drop.si())?);
        Ok(self)
    }

    /// Pressure lost in the filter before the pump, 0 to 2 bar: the pump makes it up, so it costs energy, not flow.
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
    pub fn with_prefilter_drop(mut self, drop: Pressure) -> Result<Self, Error> {
        self.prefilter_drop = Some(PREFILTER_DROP.check(drop.si())?);
        Ok(self)
    }

    /// Pressure on the permeate side, 0 to 2 bar; an open pail has none.
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
    pub fn with_back_pressure(mut self, pressure: Pressure) -> Result<Self, Error> {
        self.back_pressure = Some(BACK_PRESSURE.check(pressure.si())?);
        Ok(self)
    }

    /// Share of the sugar beside the membrane that it keeps back, 0.5 to 1: the permeate has 1 − R of the sap's °Brix.
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
    pub fn with_retention(mut self, retention: Ratio) -> Result<Self, Error> {
        self.retention = Some(RETENTION.check(retention.si())?);
        Ok(self)
    }

    /// What housings, hoses and filter hold, 0 to 100 L; permeate drives it into the tank at the end.
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
    pub fn with_hold_up(mut self, hold_up: Volume) -> Result<Self, Error> {
        self.hold_up = Some(HOLD_UP.check(hold_up.si())?);
        Ok(self)
    }

    /// Whether the hours follow the warming of a recirculated tank.
    #[must_use]
    pub fn with_warming(mut self, warming: Warming) -> Self {
        self.warming = Some(warming);
        self
    }
}

const PARALLEL: Range = Range::new("parallel", &table::each, 1.0, 64.0);
const SERIES: Range = Range::new("series", &table::each, 1.0, 8.0);
const ELEMENT_DROP: Range = Range::new("element_drop", &table::bar, 0.0, 2.0);
const PREFILTER_DROP: Range = Range::new("prefilter_drop", &table::bar, 0.0, 2.0);
const BACK_PRESSURE: Range = Range::new("back_pressure", &table::bar, 0.0, 2.0);
const RETENTION: Range = Range::new("retention", &table::fraction, 0.5, 1.0);
