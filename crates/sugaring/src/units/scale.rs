use core::{fmt, marker::PhantomData};

use super::{
    Dimension, Si, Value, Word, apparent_relative_density_20_20, baume_20_20, baume_60_60_f, relative_density_20_4,
    relative_density_20_20, relative_density_60_60_f,
};
use crate::error::Error;

/// A density scale, named by the temperatures of the solution and of the water it is compared with: the words
/// `baume_20_20`, `relative_density_60_60_f` and their like, as types.
///
/// Values on different scales are different types, because only the strength of the solution leads from one to another:
/// [`sucrose::on_scale`](crate::sucrose::on_scale), [`sucrose::brix_from_scale`](crate::sucrose::brix_from_scale).
pub trait Scale: Word<Quantity = OnScale<Self>> {
    /// The kind of its values.
    const DIMENSION: Dimension;
    /// How its marks follow from densities.
    const MARKS: Marks;
}

/// How the marks of a [`Scale`] follow from densities.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Marks {
    pub(crate) graduation: Graduation,
    /// Temperature of the solution, K.
    pub(crate) solution: f64,
    /// Temperature of the water it is compared with, K.
    pub(crate) water: f64,
    /// Whether both are weighed in air.
    pub(crate) in_air: bool,
}

#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Graduation {
    RelativeDensity,
    /// Of modulus 145, for liquids heavier than water.
    Baume,
}

/// A value on the density scale `S`, a point as a temperature is: it neither adds nor scales.
///
/// ```
/// use sugaring::units::*;
/// assert_eq!(baume_20_20(36.0).get::<baume_20_20>(), 36.0);
/// ```
/// The scale's temperatures are part of the type:
/// ```compile_fail,E0308
/// use sugaring::units::*;
/// let marked: OnScale<baume_60_60_f> = baume_20_20(36.0);
/// ```
#[derive(Clone, Copy)]
pub struct OnScale<S>(f64, PhantomData<S>);

impl<S: Scale> OnScale<S> {
    /// The number on the scale.
    #[must_use]
    pub fn get<W: Word<Quantity = Self>>(self) -> f64 {
        W::unit().from_si(self.0)
    }
}

impl<S: Scale> Value for OnScale<S> {
    const DIMENSION: Dimension = S::DIMENSION;

    fn from_si(si: f64) -> Result<Self, Error> {
        Ok(Self(si, PhantomData))
    }

    fn si(self) -> f64 {
        self.0
    }
}

impl<S: Scale> Si for OnScale<S> {
    fn of_si(si: f64) -> Self {
        Self(si, PhantomData)
    }
}

impl<S> fmt::Debug for OnScale<S> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_tuple("OnScale").field(&self.0).finish()
    }
}

impl<S> PartialEq for OnScale<S> {
    fn eq(&self, other: &Self) -> bool {
        self.0 == other.0
    }
}

impl<S> PartialOrd for OnScale<S> {
    fn partial_cmp(&self, other: &Self) -> Option<core::cmp::Ordering> {
        self.0.partial_cmp(&other.0)
    }
}

macro_rules! scales {
    ($($(#[$doc:meta])+ $name:ident = $word:ident: $graduation:ident, $solution:expr, $water:expr, $in_air:literal;)+) => { $(
        $(#[$doc])+
        pub type $name = OnScale<$word>;

        impl Scale for $word {
            const DIMENSION: Dimension = Dimension::$name;
            const MARKS: Marks = Marks {
                graduation: Graduation::$graduation,
                solution: $solution,
                water: $water,
                in_air: $in_air,
            };
        }
    )+ };
}

scales! {
    /// Degrees Baumé of modulus 145, solution and water at 20 °C.
    Baume2020 = baume_20_20: Baume, C20, C20, false;
    /// Degrees Baumé of modulus 145, solution and water at 60 °F.
    Baume6060F = baume_60_60_f: Baume, F60, F60, false;
    /// Relative density, solution and water at 20 °C.
    RelativeDensity2020 = relative_density_20_20: RelativeDensity, C20, C20, false;
    /// Relative density, solution and water at 60 °F.
    RelativeDensity6060F = relative_density_60_60_f: RelativeDensity, F60, F60, false;
    /// Relative density, solution at 20 °C and water at 4 °C.
    RelativeDensity204 = relative_density_20_4: RelativeDensity, C20, C4, false;
    /// Relative density of solution and water at 20 °C, both weighed in air.
    ApparentRelativeDensity2020 = apparent_relative_density_20_20: RelativeDensity, C20, C20, true;
}

const C4: f64 = 277.15;
const C20: f64 = 293.15;
const F60: f64 = super::table::deg_f.to_si(60.0);
