//! The film of sweeter sap at the membrane.

use crate::{
    error::Error,
    relation::Range,
    units::{Flow, Value, table},
};

/// How much sweeter the sap is at the membrane than beside it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum Polarisation {
    /// The film of the rating test, carried to cold sucrose and the crossflow at hand. The default, with a factor of 1.
    ///
    /// `x_m = x·exp(J/k), kS = f·(kS)ᵣ·(D/Dᵣ)^(1−b)·(νᵣ/ν)^(a−b)·(q/qᵣ)^a, (kS)ᵣ = Qᵣ/(0.7·Yᵣ)`
    ///
    /// a = 0.57, b = 0.40, Dᵣ = 1.61e-9 m²/s, νᵣ = 8.93e-7 m²/s; D and ν at the °Brix beside the film. Believed from
    /// 0.1 to 3 times the rated crossflow. Its `factor`, 0.1 to 4, is plausible from 0.25 to 1: the default is the
    /// quick end.
    RatingAnchored {
        /// f, which multiplies the film coefficient.
        factor: f64,
    },
    /// A fixed ratio of °Brix at the membrane and beside it, 1 to 5.
    Modulus(f64),
    /// A fixed film coefficient, times the area of one element: 0.001 to 10 000 m³/d.
    Coefficient(Flow),
    /// No film: an upper bound.
    None,
}

impl Polarisation {
    pub(super) fn checked(self) -> Result<Self, Error> {
        match self {
            Self::RatingAnchored { factor } => FACTOR.check(factor).map(|factor| Self::RatingAnchored { factor }),
            Self::Modulus(modulus) => MODULUS.check(modulus).map(Self::Modulus),
            Self::Coefficient(flow) => COEFFICIENT.check(flow.si()).map(|_| self),
            Self::None => Ok(self),
        }
    }
}

const FACTOR: Range = Range::new("film_factor", &table::fraction, 0.1, 4.0);
const MODULUS: Range = Range::new("modulus", &table::fraction, 1.0, 5.0);
const COEFFICIENT: Range = Range::new("coefficient", &table::cubic_metre_per_day, 0.001, 10_000.0);
