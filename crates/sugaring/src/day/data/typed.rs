//! Inputs from the stations' own types: a pan, a rig, instruments, containers that Rust code already has.

use crate::{
    day::inputs::{
        CheckPoint, Compensated, Container, Efficiency, Element, Evaporator, Heat, Hydrometer, HydrometerScale,
        Instrument, Membrane, Moisture, Pan, Polarisation, Pump, PumpPoint, Refractometer, Run, Span, TemperatureModel,
        Until, Warming,
    },
    evaporator, finish, fuel, instrument, membrane,
    units::{Given, Power, Pressure, Ratio, Si, Value, Volume, fraction, kelvin, metre, pa_gauge, per_kelvin},
};
use alloc::vec::Vec;

impl From<evaporator::Pan> for Evaporator {
    fn from(pan: evaporator::Pan) -> Self {
        Self {
            pan: Pan {
                length: metre(pan.length).into(),
                width: metre(pan.width).into(),
                running_depth: pan.running_depth.map(|d| metre(d).into()),
                least_depth: pan.least_depth.map(|d| metre(d).into()),
                sections: pan.sections,
            },
            heat: pan.heat.map(Heat::Power),
            left_in_pan: None,
            fuel: None,
            run: None,
        }
    }
}

impl Membrane {
    /// A rig and how it is run; what the rig leaves to its defaults is named by the plan.
    ///
    /// ```
    /// use sugaring::{day::{Membrane, Run}, membrane::{Element, ElementRating, Rig, Until}, units::*};
    /// let element = Element::from_rating(&ElementRating {
    ///     flow: cubic_metre_per_day(0.9),
    ///     pressure: bar_gauge(4.1),
    ///     temperature: deg_c(25.0),
    ///     salt: mg_per_litre(500.0),
    ///     recovery: percent(15.0),
    ///     rejection: percent(97.0),
    /// })?;
    /// let rig = Rig::new(&element, bar_gauge(7.6))?.with_parallel(2)?;
    /// let membrane = Membrane::new(&rig, Run::recirculate(Until::Brix(brix(4.0)?)));
    /// assert_eq!(membrane.parallel, Some(2));
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    #[must_use]
    pub fn new(rig: &membrane::Rig, run: Run) -> Self {
        let pressure = |si: Option<f64>| si.map(|si| Given::from(Pressure::of_si(si)));
        let (polarisation, film_factor) = match rig.polarisation {
            None => (None, None),
            Some(membrane::Polarisation::RatingAnchored { factor }) => {
                (Some(Polarisation::RatingAnchored), Some(fraction(factor).into()))
            }
            Some(membrane::Polarisation::Modulus(x)) => (Some(Polarisation::Modulus(x)), None),
            Some(membrane::Polarisation::Coefficient(k)) => (Some(Polarisation::Coefficient(k.si())), None),
            Some(membrane::Polarisation::None) => (Some(Polarisation::None), None),
        };
        Self {
            element: Element::from(&rig.element),
            parallel: rig.parallel,
            series: rig.series,
            pressure: pa_gauge(rig.pressure).into(),
            pressure_limit: rig.pressure_limit.map(|p| pa_gauge(p).into()),
            pump: rig.pump.as_ref().map(Pump::from),
            temperature_model: rig.temperature_model.map(|model| match model {
                membrane::FactorModel::Makers => TemperatureModel::Makers,
                membrane::FactorModel::Single(k) => TemperatureModel::Single(k),
                membrane::FactorModel::Viscosity => TemperatureModel::Viscosity,
                membrane::FactorModel::PerDegree => TemperatureModel::PerDegree,
            }),
            polarisation,
            film_factor,
            retention: rig.retention.map(|r| fraction(r).into()),
            element_drop: pressure(rig.element_drop),
            prefilter_drop: pressure(rig.prefilter_drop),
            back_pressure: pressure(rig.back_pressure),
            hold_up: rig.hold_up.map(|v| Volume::of_si(v).into()),
            rinse: None,
            warming: rig.warming.map(|warming| match warming {
                membrane::Warming::Isothermal => Warming::Isothermal,
                membrane::Warming::Coupled => Warming::Coupled,
            }),
            run,
        }
    }
}

impl From<&membrane::Element> for Element {
    fn from(element: &membrane::Element) -> Self {
        let rating = element.rating;
        Self {
            flow: rating.flow.into(),
            pressure: rating.pressure.into(),
            temperature: rating.temperature.into(),
            salt: rating.salt.into(),
            recovery: rating.recovery.into(),
            rejection: rating.rejection.into(),
            permeance: element.own.map(Into::into),
        }
    }
}

impl From<&membrane::Pump> for Pump {
    fn from(pump: &membrane::Pump) -> Self {
        let one = match pump.points.as_slice() {
            [only] if only.power.is_none() => Some(only.flow),
            _ => None,
        };
        Self {
            flow: one.map(Into::into),
            points: match one {
                Some(_) => Vec::new(),
                None => pump.points.iter().map(PumpPoint::from).collect(),
            },
            efficiency: pump.efficiency.map(|e| fraction(e).into()),
            power: pump.power.map(|p| Power::of_si(p).into()),
        }
    }
}

impl From<&membrane::PumpPoint> for PumpPoint {
    fn from(point: &membrane::PumpPoint) -> Self {
        Self {
            pressure: point.pressure.into(),
            flow: point.flow.into(),
            power: point.power.map(Into::into),
        }
    }
}

impl Run {
    /// Back into the tank until an aim is met.
    #[must_use]
    pub fn recirculate(until: membrane::Until) -> Self {
        Self::RecirculateUntil(match until {
            membrane::Until::Brix(x) => Until::Brix(x.into()),
            membrane::Until::Volume(x) => Until::Volume(x.into()),
            membrane::Until::Recovery(x) => Until::Recovery(x.into()),
            membrane::Until::Duration(x) => Until::Duration(x.into()),
        })
    }

    /// Once through, at this share of permeate.
    pub fn single_pass(recovery: impl Into<Given<Ratio>>) -> Self {
        Self::SinglePass {
            recovery: recovery.into(),
        }
    }
}

impl From<finish::Container> for Container {
    fn from(container: finish::Container) -> Self {
        Self {
            name: Some(container.name),
            volume: container.volume.into(),
            stock: container.stock,
            brimful: container.brimful.map(Into::into),
            material: container.material.map(|m| m.name().into()),
            mass: container.mass.map(Into::into),
            temperature: Some(container.temperature.into()),
            price: container.price,
        }
    }
}

impl From<fuel::Moisture> for Moisture {
    fn from(moisture: fuel::Moisture) -> Self {
        Self::WetBasis(moisture.wet().into())
    }
}

impl From<fuel::Efficiency> for Efficiency {
    fn from(efficiency: fuel::Efficiency) -> Self {
        match efficiency.basis() {
            fuel::HeatBasis::Gross => Self::OfGross(efficiency.share().into()),
            fuel::HeatBasis::Net => Self::OfNet(efficiency.share().into()),
        }
    }
}

impl From<instrument::Instrument> for Instrument {
    fn from(instrument: instrument::Instrument) -> Self {
        match instrument {
            instrument::Instrument::Hydrometer(hydrometer) => hydrometer.into(),
            instrument::Instrument::Refractometer(refractometer) => refractometer.into(),
        }
    }
}

impl From<instrument::Hydrometer> for Instrument {
    fn from(hydrometer: instrument::Hydrometer) -> Self {
        let (offset, two_point) = of_correction(hydrometer.correction);
        Self::Hydrometer(Hydrometer {
            scale: HydrometerScale::named(hydrometer.marking.name()),
            calibrated_at: kelvin(hydrometer.float.calibrated_at).into(),
            glass_expansion: Some(per_kelvin(hydrometer.float.expansion).into()),
            offset,
            two_point,
            span: hydrometer.span.map(|(low, high)| Span { low, high }),
            resolution: Some(hydrometer.graduation.resolution),
            uncertainty: Some(hydrometer.graduation.uncertainty),
        })
    }
}

impl From<instrument::Refractometer> for Instrument {
    fn from(refractometer: instrument::Refractometer) -> Self {
        let compensated = match refractometer.compensation {
            instrument::Compensation::Automatic { low, high } => Some(Compensated {
                low: kelvin(low).into(),
                high: kelvin(high).into(),
            }),
            instrument::Compensation::None => None,
        };
        let (zero, two_point, set_to_zero_at) = match refractometer.zero {
            instrument::Zero::Known(correction) => {
                let (zero, two_point) = of_correction(correction);
                (zero, two_point, None)
            }
            instrument::Zero::SetAt(at) => (None, None, Some(kelvin(at).into())),
        };
        Self::Refractometer(Refractometer {
            compensated,
            uncompensated: compensated.is_none().then_some(true),
            zero,
            set_to_zero_at,
            two_point,
            resolution: Some(refractometer.graduation.resolution),
            uncertainty: Some(refractometer.graduation.uncertainty),
        })
    }
}

fn of_correction(correction: instrument::Correction) -> (Option<f64>, Option<[CheckPoint; 2]>) {
    match correction {
        instrument::Correction::Offset(offset) => (Some(offset), None),
        instrument::Correction::TwoPoint(points) => {
            let point = |point: instrument::Point| CheckPoint {
                shown: point.shown,
                expected: point.expected,
            };
            (None, Some(points.map(point)))
        }
    }
}
