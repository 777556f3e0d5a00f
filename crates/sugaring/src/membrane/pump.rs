//! The pump: what it moves at a pressure, and what that costs.

use alloc::{vec, vec::Vec};

use crate::{
    error::Error,
    relation::{Range, Relation, Source},
    units::{Energy, Flow, GaugePressure, Power, Ratio, Si, Time, Value, table},
};

/// Energy a pump draws.
///
/// E = P·Q·t/η
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | P | `pressure`, gauge | Pa | 0 to 7e6, that is 70 bar gauge |
/// | Q | `feed`, what the pump moves | m³/s | 0 to 0.28, that is 1e6 L/h |
/// | t | `duration` | s | 0 to 3.6e7, that is 10 000 h |
/// | η | `efficiency` of pump and motor | 1 | 0.05 to 1 |
/// | E | energy | J | |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// Definition of hydraulic work. Small diaphragm sets reach 0.25 to 0.45: common practice, no source.
/// # Examples
/// ```
/// use sugaring::{membrane::pump_energy, units::*};
/// let energy = pump_energy(bar_gauge(7.6), litre_per_h(500.0), hours(2.8453), percent(35.0))?;
/// assert_eq!(format!("{:.4}", energy.get::<kwh>()), "0.8581");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{membrane::pump_energy, units::*};
/// let error = pump_energy(bar_gauge(7.6), litre_per_h(500.0), hours(1.0), fraction(35.0)).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "efficiency = 35 is outside 0.05 to 1; 35 % is written percent(35), \"35 %\" or 0.35"
/// );
/// ```
pub fn pump_energy(pressure: GaugePressure, feed: Flow, duration: Time, efficiency: Ratio) -> Result<Energy, Error> {
    let pressure = PUMP_ENERGY.check(0, pressure.si())?;
    let feed = PUMP_ENERGY.check(1, feed.si())?;
    let duration = PUMP_ENERGY.check(2, duration.si())?;
    let efficiency = PUMP_ENERGY.check(3, efficiency.si())?;
    Ok(Energy::of_si(pressure * feed * duration / efficiency))
}

/// A pump: its flow, fixed or falling with pressure, and its efficiency or power.
///
/// What the pump moves beyond a single pass's feed goes back to its inlet through a bypass; the energy counts all of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Pump {
    pub(crate) points: Vec<PumpPoint>,
    /// `None` stands for 0.35.
    pub(crate) efficiency: Option<f64>,
    /// W, at any pressure.
    pub(crate) power: Option<f64>,
}

/// One row of a pump's table.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PumpPoint {
    /// Pressure it works against.
    pub pressure: GaugePressure,
    /// What it moves then.
    pub flow: Flow,
    /// What it draws then, where the table says so.
    pub power: Option<Power>,
}

impl Pump {
    /// A pump that moves `flow` at any pressure, 0.1 to 1e6 L/h, for the whole rig.
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
    /// # Examples
    /// ```
    /// use sugaring::{membrane::Pump, units::*};
    /// let pump = Pump::of_flow(litre_per_h(500.0))?.with_efficiency(percent(30.0))?;
    /// let error = Pump::of_flow(litre_per_h(-1.0)).unwrap_err();
    /// assert_eq!(error.to_string(), "flow = -1 L/h is outside 0.1 to 1000000 L/h");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn of_flow(flow: Flow) -> Result<Self, Error> {
        let point = PumpPoint {
            pressure: GaugePressure::of_si(0.0),
            flow: Flow::of_si(FLOW.check(flow.si())?),
            power: None,
        };
        Ok(Self {
            points: vec![point],
            efficiency: None,
            power: None,
        })
    }

    /// A pump whose flow stands in a table, by rising pressure; straight lines join the rows.
    ///
    /// # Errors
    /// [`Missing`](crate::ErrorKind::Missing) with fewer than two rows; [`OutOfRange`](crate::ErrorKind::OutOfRange);
    /// [`Inconsistent`](crate::ErrorKind::Inconsistent) where pressure does not rise or flow rises with it.
    /// # Examples
    /// ```
    /// use sugaring::{membrane::{Pump, PumpPoint}, units::*};
    /// let row = |p, q| PumpPoint { pressure: bar_gauge(p), flow: litre_per_min(q), power: None };
    /// let pump = Pump::of_points(&[row(0.0, 6.0), row(9.0, 0.5)])?;
    /// let error = Pump::of_points(&[row(5.0, 2.0), row(4.0, 3.0)]).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "points[1].pressure = 4 bar gauge does not fit points[0].pressure = 5 bar gauge; list them by rising pressure"
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn of_points(points: &[PumpPoint]) -> Result<Self, Error> {
        if points.len() < 2 {
            return Err(Error::missing("points").with_hint("two pressures and flows, or one flow under flow"));
        }
        for (index, point) in points.iter().enumerate() {
            let named = |e: Error| e.within(&alloc::format!("points[{index}]"));
            PRESSURE.check(point.pressure.si()).map_err(named)?;
            FLOW.check(point.flow.si()).map_err(named)?;
            if let Some(power) = point.power {
                POWER.check(power.si()).map_err(named)?;
            }
        }
        for (index, pair) in points.windows(2).enumerate() {
            if let [before, after] = pair {
                falling(index, before, after)?;
            }
        }
        Ok(Self {
            points: points.to_vec(),
            efficiency: None,
            power: None,
        })
    }

    /// The same pump with the efficiency of pump and motor, 0.05 to 1, in place of 0.35.
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
    pub fn with_efficiency(mut self, efficiency: Ratio) -> Result<Self, Error> {
        self.efficiency = Some(PUMP_ENERGY.check(3, efficiency.si())?);
        Ok(self)
    }

    /// The same pump with the power it draws, read from a meter, in place of an efficiency.
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange) outside 0 to 100 kW.
    pub fn with_power(mut self, power: Power) -> Result<Self, Error> {
        self.power = Some(POWER.check(power.si())?);
        Ok(self)
    }

    /// Whether the pump can work at a pressure in Pa.
    pub(super) fn covers(&self, pressure: f64) -> Result<(), Error> {
        let [first, .., last] = self.points.as_slice() else {
            return Ok(());
        };
        let [low, high] = [first, last].map(|point| point.pressure.si());
        if (low..=high).contains(&pressure) {
            return Ok(());
        }
        let [shown, low, high] = [pressure, low, high].map(|si| table::bar_gauge.from_si(si));
        let error = Error::out_of_limits("pressure", shown, &table::bar_gauge, low, high);
        Err(error.with_hint("the pump's points reach no further"))
    }

    /// m³/s at a pressure in Pa.
    pub(super) fn flow_at(&self, pressure: f64) -> f64 {
        self.between(pressure, |point| point.flow.si())
    }

    /// W drawn while it works at a pressure in Pa, by meter or by efficiency.
    pub(super) fn power_at(&self, pressure: f64, hydraulic: f64) -> f64 {
        if let Some(power) = self.power {
            return power;
        }
        if self.points.iter().all(|point| point.power.is_some()) {
            return self.between(pressure, |point| point.power.map_or(0.0, Value::si));
        }
        hydraulic / self.efficiency.unwrap_or(EFFICIENCY)
    }

    fn between(&self, pressure: f64, read: impl Fn(&PumpPoint) -> f64) -> f64 {
        let first = self.points.first().map_or(0.0, &read);
        let pairs = self.points.windows(2);
        pairs.fold(first, |value, pair| match pair {
            [before, after] if pressure > before.pressure.si() => {
                let (from, to) = (before.pressure.si(), after.pressure.si());
                let way = ((pressure - from) / (to - from)).min(1.0);
                read(before) + way * (read(after) - read(before))
            }
            _ => value,
        })
    }
}

fn falling(index: usize, before: &PumpPoint, after: &PumpPoint) -> Result<(), Error> {
    let unfit = |key: &str, earlier: f64, later: f64, unit: &'static crate::units::Unit, hint: &str| {
        let other = alloc::format!("points[{index}].{key} = {}", unit.show(unit.from_si(earlier)));
        let name = alloc::format!("points[{}].{key}", index + 1);
        let later = unit.from_si(later);
        let error = Error::inconsistent(name, &unit.show(later), &other);
        Err(error.with_value(later, unit).with_hint(hint))
    };
    let (earlier, later) = (before.pressure.si(), after.pressure.si());
    if later <= earlier {
        return unfit(
            "pressure",
            earlier,
            later,
            &table::bar_gauge,
            "list them by rising pressure",
        );
    }
    let (earlier, later) = (before.flow.si(), after.flow.si());
    if later > earlier {
        return unfit(
            "flow",
            earlier,
            later,
            &table::litre_per_h,
            "a pump moves less against more pressure",
        );
    }
    Ok(())
}

/// What [`pump_energy`] covers.
pub static PUMP_ENERGY: Relation = Relation {
    name: "membrane::pump_energy",
    inputs: &[
        PRESSURE,
        Range::new("feed", &table::litre_per_h, 0.0, 1e6),
        Range::new("duration", &table::hours, 0.0, 10_000.0),
        Range::new("efficiency", &table::fraction, 0.05, 1.0),
    ],
    output: &table::kwh,
    source: Source::Derived {
        text: "definition of hydraulic work",
    },
    accuracy: "as the efficiency",
};

/// What membranes and their housings are made for; above it nothing here was looked at.
pub(super) const PRESSURE: Range = Range::new("pressure", &table::bar_gauge, 0.0, 70.0);

const FLOW: Range = Range::new("flow", &table::litre_per_h, 0.1, 1e6);
const POWER: Range = Range::new("power", &table::kw, 0.0, 100.0);

/// Flow into each train of elements where no pump is given: inside the film's range for small elements; no source.
pub(crate) const FEED: f64 = 250.0 / 3.6e6;

/// Small diaphragm sets: common practice, no source.
pub(crate) const EFFICIENCY: f64 = 0.35;

/// W drawn by a pump nobody described.
pub(super) fn assumed_power(hydraulic: f64) -> f64 {
    hydraulic / EFFICIENCY
}
