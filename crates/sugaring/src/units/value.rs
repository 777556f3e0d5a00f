use core::fmt::Debug;

use super::{Dimension, Unit};
use crate::{
    error::Error,
    uom::{
        lib::marker::PhantomData,
        si::{Quantity as Uom, f64 as si},
    },
};

/// A type that one number in SI carries: every quantity, °Brix (as mass %), ratios and counts.
pub trait Value: Copy + Debug + PartialEq {
    /// What it measures.
    const DIMENSION: Dimension;

    /// The value of `si`.
    ///
    /// # Errors
    /// Where the type itself has a range, as [`Brix`](super::Brix) has.
    fn from_si(si: f64) -> Result<Self, Error>;

    /// The number in SI.
    fn si(self) -> f64;
}

/// A plain number, as a ratio is.
impl Value for f64 {
    const DIMENSION: Dimension = Dimension::Ratio;

    fn from_si(si: f64) -> Result<Self, Error> {
        Ok(si)
    }

    fn si(self) -> f64 {
        self
    }
}

/// A value every finite number makes.
pub(crate) trait Si: Value {
    fn of_si(si: f64) -> Self;
}

/// A unit word as a type, for reading: `volume.get::<gal>()`.
pub trait Word: Copy + Debug {
    /// The quantity it makes and reads.
    type Quantity: Value;

    /// The unit as data.
    fn unit() -> &'static Unit;

    /// The quantity of a number in SI.
    fn of_si(si: f64) -> Self::Quantity;
}

macro_rules! quantities {
    ($($(#[$doc:meta])+ $name:ident = $uom:ident;)+) => { $(
        $(#[$doc])+
        pub type $name = si::$uom;

        impl Value for $name {
            const DIMENSION: Dimension = Dimension::$name;

            fn from_si(si: f64) -> Result<Self, Error> {
                Ok(Self::of_si(si))
            }

            fn si(self) -> f64 {
                self.value
            }
        }

        impl Si for $name {
            fn of_si(si: f64) -> Self {
                Uom { dimension: PhantomData, units: PhantomData, value: si }
            }
        }
    )+ };
}

quantities! {
    /// A volume of liquid, at the temperature that stands beside it.
    Volume = Volume;
    /// A mass.
    Mass = Mass;
    /// A temperature, a point on the scale.
    Temperature = ThermodynamicTemperature;
    /// A difference of two temperatures.
    TemperatureDifference = TemperatureInterval;
    /// An absolute pressure, or a difference of pressures.
    Pressure = Pressure;
    /// A length, a depth or an altitude.
    Length = Length;
    /// An area.
    Area = Area;
    /// A duration, or hours after the start.
    Time = Time;
    /// A volume per time.
    Flow = VolumeRate;
    /// A mass per time.
    MassFlow = MassRate;
    /// Heat or work per time.
    Power = Power;
    /// Heat or work.
    Energy = Energy;
    /// Mass per volume.
    Density = MassDensity;
    /// Dissolved mass per volume of solution.
    Concentration = MassConcentration;
    /// Heat per mass.
    EnergyPerMass = AvailableEnergy;
    /// Heat per mass and kelvin.
    SpecificHeat = SpecificHeatCapacity;
    /// Dynamic viscosity.
    Viscosity = DynamicViscosity;
    /// Thermal conductivity.
    Conductivity = ThermalConductivity;
    /// A coefficient per kelvin, such as the expansion of glass.
    PerKelvin = TemperatureCoefficient;
    /// A number without unit: a share, an efficiency, a recovery.
    Ratio = Ratio;
}
