use alloc::format;

use super::heat::{HEAT_FROM_AREA, PanKind, area_heat_at};
use crate::{
    air::StationPressure,
    error::Error,
    relation::{Range, Relation, Source},
    units::{Area, Given, Length, Measured, Power, Si, Value, measured, table},
};

/// A pan over a fire.
///
/// What is not said is assumed: 50 mm deep while it is topped up, never below 25 mm, heat by the rule of area.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pan {
    pub(crate) length: f64,
    pub(crate) width: f64,
    pub(crate) running_depth: Option<f64>,
    pub(crate) least_depth: Option<f64>,
    pub(crate) sections: Option<u32>,
    pub(crate) heat: Option<Given<Power>>,
}

impl Pan {
    /// A flat pan by its inner lengths.
    ///
    /// | symbol | meaning | unit | range | default |
    /// |---|---|---|---|---|
    /// | length, width | inner lengths | m | 0.05 to 20 | |
    /// | running depth | of the boiling liquid while topping up | mm | 5 to 500 | 50 |
    /// | least depth | over the fire | mm | 5 to 500 | 25 |
    /// | sections | compartments in a row | 1 | 1 to 1000 | plug flow |
    /// | heat | into the liquid | kW | 0.001 to 1e5 | [`heat_from_area`](super::heat_from_area), flat |
    ///
    /// # Errors
    /// Out of range or not finite.
    /// # Source
    /// Depths of 2 in and 1 in are common practice.
    /// # Examples
    /// ```
    /// use sugaring::{evaporator::Pan, units::*};
    /// let pan = Pan::new(foot(4.0), foot(2.0))?.with_running_depth(inch(2.0))?;
    /// assert_eq!(format!("{:.3}", pan.area().get::<square_metre>()), "0.743");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{evaporator::Pan, units::*};
    /// assert_eq!(
    ///     Pan::new(metre(122.0), metre(0.61)).unwrap_err().to_string(),
    ///     "length = 122 m is outside 0.05 to 20 m",
    /// );
    /// ```
    pub fn new(length: Length, width: Length) -> Result<Self, Error> {
        Ok(Self {
            length: PAN.check(0, length.si())?,
            width: PAN.check(1, width.si())?,
            running_depth: None,
            least_depth: None,
            sections: None,
            heat: None,
        })
    }

    /// With another depth of the boiling liquid while topping up.
    ///
    /// # Errors
    /// Out of range or not finite.
    pub fn with_running_depth(mut self, depth: Length) -> Result<Self, Error> {
        self.running_depth = Some(PAN.check(2, depth.si())?);
        Ok(self)
    }

    /// With another least depth over the fire; below 25 mm a pan scorches easily.
    ///
    /// # Errors
    /// Out of range or not finite. That it is not above the running depth is checked when the pan is used.
    pub fn with_least_depth(mut self, depth: Length) -> Result<Self, Error> {
        self.least_depth = Some(PAN.check(3, depth.si())?);
        Ok(self)
    }

    /// With compartments that the sap passes in a row, each of them mixed.
    ///
    /// # Errors
    /// Out of range.
    pub fn with_sections(mut self, sections: u32) -> Result<Self, Error> {
        PAN.check(4, f64::from(sections))?;
        self.sections = Some(sections);
        Ok(self)
    }

    /// With the heat that a water test found.
    ///
    /// # Errors
    /// Out of range or not finite.
    ///
    /// ```
    /// use sugaring::{air::StationPressure, evaporator::{self, Pan}, units::*};
    /// let station = StationPressure::measured(kpa(96.5))?;
    /// let heat = evaporator::heat_from_held_level(kg_per_h(30.0), deg_c(5.0), station)?;
    /// let pan = Pan::new(metre(1.22), metre(0.61))?.with_heat(heat)?;
    /// assert_eq!(pan.heat(station)?.value, heat.value);
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn with_heat(mut self, heat: impl Into<Given<Power>>) -> Result<Self, Error> {
        let heat = heat.into();
        PAN.check(5, heat.si())?;
        self.heat = Some(heat);
        Ok(self)
    }

    /// Plan area.
    #[must_use]
    pub fn area(&self) -> Area {
        Area::of_si(self.length * self.width)
    }

    /// Depth of the boiling liquid while topping up.
    #[must_use]
    pub fn running_depth(&self) -> Length {
        Length::of_si(self.running_depth.unwrap_or(RUNNING_DEPTH))
    }

    /// Least depth over the fire.
    #[must_use]
    pub fn least_depth(&self) -> Length {
        Length::of_si(self.least_depth.unwrap_or(LEAST_DEPTH))
    }

    /// Heat into the liquid: what was said, else by the rule of area, which is assumed.
    ///
    /// # Errors
    /// Out of range, where the rule of area does not cover the pan.
    pub fn heat(&self, station: StationPressure) -> Result<Measured<Power>, Error> {
        if let Some(heat) = self.heat {
            let uncertainty = heat.uncertainty.unwrap_or(KNOWN_TO * heat.si());
            return Ok(measured(heat.value, Power::of_si(uncertainty)));
        }
        let area = HEAT_FROM_AREA.check(0, self.area().si())?;
        let heat = area_heat_at(area, PanKind::Flat, station.pressure().si());
        Ok(measured(Power::of_si(heat), Power::of_si(ASSUMED_TO * heat)))
    }

    /// The depths, where they fit one another.
    pub(super) fn depths(&self) -> Result<(f64, f64), Error> {
        let (running, least) = (self.running_depth().si(), self.least_depth().si());
        if least <= running {
            return Ok((running, least));
        }
        let mm = |si| table::mm.show(table::mm.from_si(si));
        let other = format!("running_depth = {}", mm(running));
        Err(Error::inconsistent("least_depth", &mm(least), &other).with_hint("a pan runs deeper than its least depth"))
    }
}

/// What a [`Pan`] may be.
pub static PAN: Relation = Relation {
    name: "evaporator::Pan",
    inputs: &[
        Range::new("length", &table::metre, 0.05, 20.0),
        Range::new("width", &table::metre, 0.05, 20.0),
        Range::new("running_depth", &table::mm, 5.0, 500.0),
        Range::new("least_depth", &table::mm, 5.0, 500.0),
        Range::new("sections", &table::each, 1.0, 1000.0),
        Range::new("heat", &table::kw, 0.001, 1e5),
    ],
    output: &table::square_metre,
    source: Source::CommonPractice,
    accuracy: "as measured",
};

/// m: 2 in; common practice.
pub(crate) const RUNNING_DEPTH: f64 = 0.05;
/// m: 1 in; common practice.
pub(crate) const LEAST_DEPTH: f64 = 0.025;
/// Standard uncertainty of a heat that was given without one: a water test's; common practice.
const KNOWN_TO: f64 = 0.05;
/// That of the rule of area: ±30 % read as two.
const ASSUMED_TO: f64 = 0.15;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{kpa, kw, metre, mm};

    #[test]
    fn a_heat_says_how_well_it_is_known() {
        let station = StationPressure::measured(kpa(96.5)).unwrap();
        let pan = Pan::new(metre(1.22), metre(0.61)).unwrap();
        let share = |pan: Pan| {
            let heat = pan.heat(station).unwrap();
            heat.uncertainty.get::<kw>() / heat.value.get::<kw>()
        };
        assert!((share(pan) - 0.15).abs() < 1e-12);
        assert!((share(pan.with_heat(kw(20.0)).unwrap()) - 0.05).abs() < 1e-12);
        assert!((share(pan.with_heat(measured(kw(20.0), kw(2.0))).unwrap()) - 0.1).abs() < 1e-12);
    }

    #[test]
    fn depths_must_fit() {
        let pan = Pan::new(metre(1.22), metre(0.61))
            .unwrap()
            .with_running_depth(mm(20.0))
            .unwrap();
        assert_eq!(
            pan.depths().unwrap_err().to_string(),
            "least_depth = 25 mm does not fit running_depth = 20 mm; a pan runs deeper than its least depth"
        );
        assert!(pan.with_least_depth(mm(20.0)).unwrap().depths().is_ok());
    }
}
