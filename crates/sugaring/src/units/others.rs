use super::{Dimension, Si, Value, Word};
use crate::error::Error;

macro_rules! own {
    ($($(#[$doc:meta])+ $name:ident;)+) => { $(
        $(#[$doc])+
        #[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl $name {
            /// The number in the unit of `W`.
            #[must_use]
            pub fn get<W: Word<Quantity = Self>>(self) -> f64 {
                W::unit().from_si(self.0)
            }
        }

        impl Value for $name {
            const DIMENSION: Dimension = Dimension::$name;

            fn from_si(si: f64) -> Result<Self, Error> {
                Ok(Self(si))
            }

            fn si(self) -> f64 {
                self.0
            }
        }

        impl Si for $name {
            fn of_si(si: f64) -> Self {
                Self(si)
            }
        }
    )+ };
}

own! {
    /// Flow of a membrane element per pressure that drives it.
    Permeance;
    /// Pieces, of which prices of containers are per.
    Count;
}
