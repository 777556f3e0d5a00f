use super::{
    Area, Concentration, Conductivity, Density, Energy, EnergyPerMass, Flow, Length, Mass, MassFlow, PerKelvin, Power,
    Ratio, SpecificHeat, Time, Viscosity, Volume,
};
use super::{Brix, Count, GaugePressure, Permeance, Pressure, Si, Temperature, TemperatureDifference, Unit, Value};

/// A quantity whose uncertainty is a quantity too: of a temperature it is a difference of temperatures.
pub trait Uncertain: Value {
    /// What a difference of two such values is.
    type Difference: Copy;

    /// Size of a difference in SI.
    fn difference_si(difference: Self::Difference) -> f64;

    /// The difference of a size in SI.
    fn difference_of_si(si: f64) -> Self::Difference;
}

macro_rules! uncertain {
    ($($value:ty, $difference:ty, $si:expr, $of:expr;)+) => { $(
        impl Uncertain for $value {
            type Difference = $difference;

            fn difference_si(difference: Self::Difference) -> f64 {
                $si(difference)
            }

            fn difference_of_si(si: f64) -> Self::Difference {
                $of(si)
            }
        }
    )+ };
    ($($value:ty),+) => { uncertain! { $($value, $value, Value::si, Si::of_si;)+ } };
}

uncertain! {
    Temperature, TemperatureDifference, Value::si, Si::of_si;
    GaugePressure, Pressure, Value::si, Si::of_si;
    Brix, f64, |x: f64| x, |x: f64| x;
    f64, f64, |x: f64| x, |x: f64| x;
}
uncertain!(
    Volume,
    Mass,
    TemperatureDifference,
    Pressure,
    Length,
    Area,
    Time,
    Flow,
    MassFlow,
    Power,
    Energy,
    Density,
    Concentration,
    EnergyPerMass,
    SpecificHeat,
    Viscosity,
    Conductivity,
    Permeance,
    PerKelvin,
    Ratio,
    Count
);

/// A value with its standard uncertainty.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Measured<T: Uncertain> {
    /// The value.
    pub value: T,
    /// One standard deviation.
    pub uncertainty: T::Difference,
}

/// `value` with the standard uncertainty `uncertainty`.
///
/// ```
/// use sugaring::units::*;
/// let tank = measured(litre(95.0), litre(2.0));
/// let sap = measured(deg_c(4.0), delta_c(0.5));
/// # let _ = (tank, sap);
/// ```
/// A temperature is no uncertainty:
/// ```compile_fail,E0308
/// use sugaring::units::*;
/// measured(deg_c(4.0), deg_c(0.5));
/// ```
pub fn measured<T: Uncertain>(value: T, uncertainty: T::Difference) -> Measured<T> {
    Measured { value, uncertainty }
}

/// An input as it was given: the value, the user's own uncertainty where there is one, and the unit it was written in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Given<T> {
    /// The value.
    pub value: T,
    /// One standard deviation in SI; `None` leaves the default.
    pub uncertainty: Option<f64>,
    /// The unit it was written in, for the echo; `None` where a typed value was given.
    pub unit: Option<&'static Unit>,
}

impl<T: Value> From<T> for Given<T> {
    fn from(value: T) -> Self {
        Self {
            value,
            uncertainty: None,
            unit: None,
        }
    }
}

impl<T: Uncertain> From<Measured<T>> for Given<T> {
    fn from(measured: Measured<T>) -> Self {
        Self {
            value: measured.value,
            uncertainty: Some(T::difference_si(measured.uncertainty)),
            unit: None,
        }
    }
}

impl<T: Value> Given<T> {
    /// The number in SI.
    pub(crate) fn si(&self) -> f64 {
        self.value.si()
    }
}
