//! Elements, pump and pressure: the rig, and what it does with a tank of given °Brix.

use alloc::{format, string::String, vec::Vec};

use super::{
    Element, FactorModel, Fidelity, Polarisation, Pump, Warming,
    factor::TEMPERATURE,
    local::Local,
    pump::{self, PRESSURE},
};
use crate::{
    digits,
    error::Error,
    lot::Lot,
    relation::{Range, Relation, Source},
    units::{Brix, Flow, GaugePressure, Si, Temperature, Value, table},
};

/// Elements in parallel and in series at one gauge pressure, with their pump.
///
/// What is not given has a default, which every result names under `rests_on`: one element, a pump of 250 L/h for each
/// element fed, efficiency 0.35, the makers' temperature factor, the rating-anchored film with a factor of 1, all sugar
/// kept, no pressure drop, no back pressure, no hold-up. Options that depend on others come last: a pump's table and a
/// pressure limit are checked against the pressure.
#[derive(Clone, Debug, PartialEq)]
pub struct Rig {
    pub(crate) element: Element,
    /// Pa, gauge.
    pub(crate) pressure: f64,
    pub(crate) parallel: Option<u32>,
    pub(crate) series: Option<u32>,
    pub(crate) pump: Option<Pump>,
    /// Pa, gauge.
    pub(crate) pressure_limit: Option<f64>,
    pub(crate) polarisation: Option<Polarisation>,
    pub(crate) temperature_model: Option<FactorModel>,
    /// Pa for each element.
    pub(crate) element_drop: Option<f64>,
    /// Pa.
    pub(crate) prefilter_drop: Option<f64>,
    /// Pa.
    pub(crate) back_pressure: Option<f64>,
    pub(crate) retention: Option<f64>,
    /// m³.
    pub(crate) hold_up: Option<f64>,
    pub(crate) warming: Option<Warming>,
    /// What each element lets through for its permeance, one train after the other; one train where all are alike,
    /// none where all are as rated.
    pub(crate) shares: Vec<f64>,
    /// What the temperature factor is multiplied with.
    pub(crate) temperature_factor_scale: f64,
}

impl Rig {
    /// A rig of one element at `pressure`, 0 to 70 bar gauge.
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
    /// # Source
    /// Definition.
    /// # Examples
    /// ```
    /// use sugaring::{membrane::{Element, ElementRating, Pump, Rig}, units::*};
    /// let element = Element::from_rating(&ElementRating {
    ///     flow: cubic_metre_per_day(0.9),
    ///     pressure: bar_gauge(4.1),
    ///     temperature: deg_c(25.0),
    ///     salt: mg_per_litre(500.0),
    ///     recovery: percent(15.0),
    ///     rejection: percent(97.0),
    /// })?;
    /// let rig = Rig::new(&element, bar_gauge(7.6))?.with_parallel(2)?.with_pump(Pump::of_flow(litre_per_h(500.0))?)?;
    /// let flow = rig.permeate_flow(brix(1.98)?, deg_c(3.7))?;
    /// assert_eq!(format!("{:.1}", flow.get::<litre_per_h>()), "54.1");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// The lowest rated part sets the limit:
    /// ```
    /// # use sugaring::{membrane::{Element, ElementRating, Rig}, units::*};
    /// # let element = Element::from_rating(&ElementRating { flow: cubic_metre_per_day(0.9), pressure: bar_gauge(4.1),
    /// #     temperature: deg_c(25.0), salt: mg_per_litre(500.0), recovery: percent(15.0), rejection: percent(97.0) })?;
    /// let error = Rig::new(&element, bar_gauge(9.0))?.with_pressure_limit(bar_gauge(7.6)).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "pressure = 9 bar gauge is outside 0 to 7.6 bar gauge; the rig's weakest part allows no more"
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn new(element: &Element, pressure: GaugePressure) -> Result<Self, Error> {
        Ok(Self {
            element: *element,
            pressure: PRESSURE.check(pressure.si())?,
            parallel: None,
            series: None,
            pump: None,
            pressure_limit: None,
            polarisation: None,
            temperature_model: None,
            element_drop: None,
            prefilter_drop: None,
            back_pressure: None,
            retention: None,
            hold_up: None,
            warming: None,
            shares: Vec::new(),
            temperature_factor_scale: 1.0,
        })
    }

    /// The °Brix at which nothing passes any more at this pressure: no tank can be brought above it.
    ///
    /// `π(x·β, T) − π((1 − R)·x, T) = P − P_b`
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | T | `temperature` | K | 273.15 to 318.15, that is 0 to 45 °C |
    /// | π | osmotic pressure | Pa | |
    /// | P, `P_b` | pressure of the rig, on the permeate side | Pa | |
    /// | R | retention | 1 | |
    /// | β | 1, or a fixed modulus | 1 | |
    /// | x | osmotic limit | % | 0 to 60 |
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
    /// # Source
    /// [`sucrose::osmotic_pressure`](crate::sucrose::osmotic_pressure), inverted.
    /// # Examples
    /// ```
    /// # use sugaring::{membrane::{Element, ElementRating, Rig}, units::*};
    /// # let element = Element::from_rating(&ElementRating { flow: cubic_metre_per_day(0.9), pressure: bar_gauge(4.1),
    /// #     temperature: deg_c(25.0), salt: mg_per_litre(500.0), recovery: percent(15.0), rejection: percent(97.0) })?;
    /// let rig = Rig::new(&element, bar_gauge(7.6))?;
    /// assert_eq!(format!("{:.2}", rig.osmotic_limit(deg_c(3.0))?.get()), "9.89");
    /// let error = rig.osmotic_limit(deg_c(-1.0)).unwrap_err();
    /// assert_eq!(error.to_string(), "temperature = -1 °C is outside 0 to 45 °C");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn osmotic_limit(&self, temperature: Temperature) -> Result<Brix, Error> {
        let kelvin = TEMPERATURE.check(temperature.si())?;
        Ok(Brix::trusted(Local::new(self, kelvin)?.limit))
    }

    /// Permeate flow of the whole rig while the pump feeds it sap of `brix`.
    ///
    /// `dM/ds = −ρ_w·Q(s), Q = A·f(T)·(P(s) − P_b − π(x_m) + π(x_p)), x_m = x_p + (x − x_p)·exp(Q/kS)`, over s from 0
    /// to the number of elements in series
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | x | °Brix along the element, `brix` at the inlet | % | 0 to 60 |
    /// | T | `temperature` | K | 273.15 to 318.15, that is 0 to 45 °C |
    /// | M | mass flow along the element | kg/s | |
    /// | `ρ_w` | density of water | kg/m³ | |
    /// | A, f | permeance of the element at 25 °C, temperature factor | m³/(s Pa), 1 | |
    /// | P(s), `P_b` | pressure along the elements, on the permeate side | Pa | |
    /// | `x_m`, `x_p` | °Brix at the membrane, of the permeate: (1 − R)·x | % | |
    /// | kS | film coefficient of the element, see [`Polarisation`] | m³/s | |
    /// | Q | local flow, as if it were the whole element's | m³/s | 0 and up |
    ///
    /// The nominal flow, without a range: an element alone is ±20 % of its rating, the film takes up to a third more.
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange);
    /// [`NoConvergence`](crate::ErrorKind::NoConvergence).
    /// # Source
    /// Solution-diffusion with a film; the rating-anchored film is derived from the makers' rule for salt and the
    /// exponents of Koutsou and others 2009. Judged by nothing measured on sap: none is published.
    /// # Examples
    /// ```
    /// # use sugaring::{membrane::{Element, ElementRating, Rig}, units::*};
    /// # let element = Element::from_rating(&ElementRating { flow: cubic_metre_per_day(0.9), pressure: bar_gauge(4.1),
    /// #     temperature: deg_c(25.0), salt: mg_per_litre(500.0), recovery: percent(15.0), rejection: percent(97.0) })?;
    /// let rig = Rig::new(&element, bar_gauge(7.6))?;
    /// let water = rig.permeate_flow(brix(0.0)?, deg_c(25.0))?;
    /// let sap = rig.permeate_flow(brix(2.0)?, deg_c(4.0))?;
    /// assert_eq!(format!("{:.1} {:.1}", water.get::<litre_per_h>(), sap.get::<litre_per_h>()), "78.3 27.3");
    /// let error = rig.permeate_flow(brix(66.9)?, deg_c(4.0)).unwrap_err();
    /// assert_eq!(error.to_string(), "brix = 66.9 °Bx is outside 0 to 60 °Bx");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn permeate_flow(&self, brix: Brix, temperature: Temperature) -> Result<Flow, Error> {
        let brix = PERMEATE_FLOW.check(0, brix.get())?;
        let local = Local::new(self, PERMEATE_FLOW.check(1, temperature.si())?)?;
        let through = self
            .through(&local, brix, self.feed(), Fidelity::FULL.tolerance)
            .ok_or_else(|| Error::no_convergence("flow"))?;
        Ok(Flow::of_si(through.permeate))
    }
}

/// Numbers for the stations and the day.
impl Rig {
    /// The same rig with elements that differ: each one's permeance as a share of the rated, train by train. Elements
    /// without a share are as rated.
    pub(crate) fn with_element_shares(mut self, shares: &[f64]) -> Self {
        let series = self.series();
        let mut all = shares.to_vec();
        all.resize(series * self.parallel(), 1.0);
        let mut trains = all.chunks(series);
        let first = trains.next().unwrap_or_default();
        if trains.all(|train| train == first) {
            all.truncate(series);
        }
        self.shares = all;
        self
    }

    /// The same rig with its temperature factor multiplied by `scale`.
    pub(crate) fn with_temperature_factor_scale(mut self, scale: f64) -> Self {
        self.temperature_factor_scale = scale;
        self
    }

    pub(crate) fn parallel(&self) -> usize {
        usize::try_from(self.parallel.unwrap_or(1)).unwrap_or(1).max(1)
    }

    pub(crate) fn series(&self) -> usize {
        usize::try_from(self.series.unwrap_or(1)).unwrap_or(1).max(1)
    }

    pub(crate) fn trains(&self) -> f64 {
        f64::from(self.parallel.unwrap_or(1))
    }

    pub(crate) fn retention(&self) -> f64 {
        self.retention.unwrap_or(1.0)
    }

    pub(crate) fn polarisation(&self) -> Polarisation {
        self.polarisation
            .unwrap_or(Polarisation::RatingAnchored { factor: 1.0 })
    }

    /// What the temperature factor is at a temperature in K.
    pub(crate) fn temperature_factor_at(&self, kelvin: f64) -> f64 {
        self.temperature_model.unwrap_or(FactorModel::Makers).at(kelvin) * self.temperature_factor_scale
    }

    /// Permeance of one element, as rated, in m³/(s Pa) at a temperature in K.
    pub(crate) fn permeance_at(&self, kelvin: f64) -> f64 {
        let model = self.temperature_model.unwrap_or(FactorModel::Makers);
        self.element.permeance_at(kelvin, model) * self.temperature_factor_scale
    }

    /// What the pump moves, m³/s.
    pub(crate) fn pump_flow(&self) -> f64 {
        match &self.pump {
            Some(pump) => pump.flow_at(self.pressure),
            None => pump::FEED * self.trains(),
        }
    }

    /// What enters each train when the pump feeds the rig, m³/s.
    pub(super) fn feed(&self) -> f64 {
        self.pump_flow() / self.trains()
    }

    /// Work the pump does on the sap, W; all of it ends as heat in the sap.
    pub(crate) fn hydraulic_power(&self) -> f64 {
        (self.pressure + self.prefilter_drop.unwrap_or(0.0)) * self.pump_flow()
    }

    /// What the pump draws, W.
    pub(crate) fn power(&self) -> f64 {
        let hydraulic = self.hydraulic_power();
        match &self.pump {
            Some(pump) => pump.power_at(self.pressure, hydraulic),
            None => pump::assumed_power(hydraulic),
        }
    }

    /// The inputs that were left to their defaults, by name.
    pub(super) fn assumed(&self) -> Vec<&'static str> {
        let efficiency = self.pump.as_ref().is_some_and(|pump| {
            pump.efficiency.is_some() || pump.power.is_some() || pump.points.iter().all(|point| point.power.is_some())
        });
        let inputs = [
            ("parallel", self.parallel.is_some()),
            ("series", self.series.is_some()),
            ("pump", self.pump.is_some()),
            ("pump.efficiency", efficiency),
            ("pressure_limit", self.pressure_limit.is_some()),
            ("temperature_model", self.temperature_model.is_some()),
            ("film_factor", self.polarisation.is_some()),
            ("retention", self.retention.is_some()),
            ("element_drop", self.element_drop.is_some()),
            ("prefilter_drop", self.prefilter_drop.is_some()),
            ("back_pressure", self.back_pressure.is_some()),
            ("hold_up", self.hold_up.is_some()),
            ("warming", self.warming.is_some()),
        ];
        let left = inputs.iter().filter(|(_, given)| !given);
        left.map(|(input, _)| *input).collect()
    }

    /// Where a rig's run stands, as errors tell it: "7.6 bar gauge and 3.716 °C".
    pub(super) fn place(&self, kelvin: f64) -> String {
        let pressure = table::bar_gauge.show(table::bar_gauge.from_si(self.pressure));
        let celsius = digits::significant(table::deg_c.from_si(kelvin), 4);
        format!("{pressure} and {celsius} °C")
    }
}

/// Whether a rig may be run on `sap`.
pub(super) fn checked(sap: &Lot) -> Result<(), Error> {
    let named = |e: Error| e.within("sap");
    PERMEATE_FLOW.check(0, sap.brix).map_err(named)?;
    PERMEATE_FLOW.check(1, sap.kelvin).map_err(named)?;
    Ok(())
}

/// What [`Rig::permeate_flow`] covers.
pub static PERMEATE_FLOW: Relation = Relation {
    name: "membrane::Rig::permeate_flow",
    inputs: &[Range::new("brix", &table::deg_brix, 0.0, 60.0), TEMPERATURE],
    output: &table::litre_per_h,
    source: Source::Derived {
        text: "solution-diffusion with a rating-anchored film, exponents of Koutsou and others 2009",
    },
    accuracy: "−30 to +25 % from the rating; no published flow of sap to compare with",
};
