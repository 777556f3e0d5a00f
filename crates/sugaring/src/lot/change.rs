//! Taking water out of a lot, adding to it, parting it.

use super::{Lot, blend};
use crate::{
    error::Error,
    relation::Range,
    units::{Brix, Mass, Ratio, Si, Value, table},
};

/// A lot after water has been taken out.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Concentrated {
    /// What is left, at the same temperature.
    pub concentrate: Lot,
    /// Water to take out.
    pub water: Mass,
}

/// A lot after something has been mixed in.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Diluted {
    /// The mixture.
    pub lot: Lot,
    /// What to add.
    pub diluent_mass: Mass,
}

/// A lot in two parts.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Pair {
    /// The share that was asked for.
    pub first: Lot,
    /// The rest.
    pub second: Lot,
}

impl Lot {
    /// The water to take out to reach `brix`, and what is left.
    ///
    /// M₁ = M₀·B₀/B₁, W = M₀ − M₁
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | B₁ | `brix` | % | from the lot's own to 85 |
    /// | M₀, B₀ | mass and °Brix of the lot | kg, % | |
    /// | M₁ | mass of the concentrate | kg | |
    /// | W | water taken out | kg | |
    ///
    /// # Errors
    /// [`OutOfRange`](crate::ErrorKind::OutOfRange) below the lot's own °Brix or above 85;
    /// [`Unreachable`](crate::ErrorKind::Unreachable) where there is no sugar.
    /// # Source
    /// Balance of mass and sugar.
    /// # Examples
    /// ```
    /// use sugaring::{lot::Lot, units::*};
    /// let sap = Lot::of_mass(kg(100.0), brix(2.0)?, deg_c(4.0))?;
    /// let half = sap.concentrate_to(brix(4.0)?)?;
    /// assert_eq!((half.water.get::<kg>(), half.concentrate.mass().get::<kg>()), (50.0, 50.0));
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{lot::Lot, units::*};
    /// # let sap = Lot::of_mass(kg(100.0), brix(2.0)?, deg_c(4.0))?;
    /// let error = sap.concentrate_to(brix(1.0)?).unwrap_err();
    /// assert_eq!(error.to_string(), "brix = 1 °Bx is outside 2 to 85 °Bx");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn concentrate_to(&self, brix: Brix) -> Result<Concentrated, Error> {
        let target = self.sweeter(brix)?;
        let concentrate = Self::new(self.mass * (self.brix / target), target, self.kelvin)?;
        Ok(Concentrated {
            concentrate,
            water: Mass::of_si(self.mass - concentrate.mass),
        })
    }

    /// How much of `diluent` to add to reach `brix`: permeate or sap to syrup that is too thick, syrup to one too thin.
    ///
    /// `M_d = M·(B − B₁)/(B₁ − B_d)`
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | B₁ | `brix` | % | between B and `B_d` |
    /// | M, B | mass and °Brix of the lot | kg, % | |
    /// | `B_d` | °Brix of `diluent`; its mass does not matter | % | |
    /// | `M_d` | what to add | kg | |
    ///
    /// The temperature of the mixture is that of [`blend`].
    ///
    /// # Errors
    /// [`OutOfRange`](crate::ErrorKind::OutOfRange) where `brix` does not lie between the two;
    /// [`Unreachable`](crate::ErrorKind::Unreachable) where it is the diluent's own.
    /// # Source
    /// Balance of mass and sugar.
    /// # Examples
    /// ```
    /// use sugaring::{lot::Lot, units::*};
    /// let thick = Lot::of_mass(kg(10.0), brix(70.0)?, deg_c(90.0))?;
    /// let water = Lot::of_mass(kg(1.0), brix(0.0)?, deg_c(20.0))?;
    /// let right = thick.dilute_to(brix(66.9)?, &water)?;
    /// assert_eq!(format!("{:.3}", right.diluent_mass.get::<kg>()), "0.463");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{lot::Lot, units::*};
    /// # let thick = Lot::of_mass(kg(10.0), brix(70.0)?, deg_c(90.0))?;
    /// # let water = Lot::of_mass(kg(1.0), brix(0.0)?, deg_c(20.0))?;
    /// let error = thick.dilute_to(brix(72.0)?, &water).unwrap_err();
    /// assert_eq!(error.to_string(), "brix = 72 °Bx is outside 0 to 70 °Bx");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn dilute_to(&self, brix: Brix, diluent: &Self) -> Result<Diluted, Error> {
        let target = brix.get();
        let (low, high) = (self.brix.min(diluent.brix), self.brix.max(diluent.brix));
        if !(low..=high).contains(&target) {
            return Err(Error::out_of_limits("brix", target, &table::deg_brix, low, high));
        }
        let missing = self.mass * (self.brix - target);
        if missing == 0.0 {
            return Ok(Diluted {
                lot: *self,
                diluent_mass: Mass::of_si(0.0),
            });
        }
        let added = missing / (target - diluent.brix);
        if !added.is_finite() {
            let error = Error::unreachable("brix", &table::deg_brix.show(target)).with_value(target, &table::deg_brix);
            return Err(error.with_hint("what is mixed in has no other strength: ask for one between the two"));
        }
        let share = Self::new(added, diluent.brix, diluent.kelvin)?;
        let mixed = blend(&[*self, share])?;
        Ok(Diluted {
            // The strength that was asked for, to the bit.
            lot: Self::new(mixed.mass, target, mixed.kelvin)?,
            diluent_mass: Mass::of_si(added),
        })
    }

    /// The lot in two parts, `share` of the mass and the rest.
    ///
    /// # Errors
    /// [`OutOfRange`](crate::ErrorKind::OutOfRange) where `share` is not between 1e-6 and 1 − 1e-6, or a part has less
    /// than the least mass of a [`Lot`].
    /// # Source
    /// Definition.
    /// # Examples
    /// ```
    /// use sugaring::{lot::Lot, units::*};
    /// let sap = Lot::of_mass(kg(100.0), brix(2.0)?, deg_c(4.0))?;
    /// let parts = sap.split(percent(30.0))?;
    /// assert_eq!((parts.first.mass().get::<kg>(), parts.second.mass().get::<kg>()), (30.0, 70.0));
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{lot::Lot, units::*};
    /// # let sap = Lot::of_mass(kg(100.0), brix(2.0)?, deg_c(4.0))?;
    /// let error = sap.split(fraction(30.0)).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "share = 30 is outside 0.000001 to 0.999999; 30 % is written percent(30), \"30 %\" or 0.3"
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn split(&self, share: Ratio) -> Result<Pair, Error> {
        let first = Self::new(self.mass * SHARE.check(share.si())?, self.brix, self.kelvin)?;
        let second = Self::new(self.mass - first.mass, self.brix, self.kelvin)?;
        Ok(Pair { first, second })
    }

    /// `brix`, where this lot can be brought to it by taking water out.
    pub(super) fn sweeter(&self, brix: Brix) -> Result<f64, Error> {
        let target = brix.get();
        if self.brix == 0.0 {
            let error = Error::unreachable("brix", &table::deg_brix.show(target)).with_value(target, &table::deg_brix);
            return Err(error.with_hint("there is no sugar in it"));
        }
        if (self.brix..=STRONGEST).contains(&target) {
            return Ok(target);
        }
        Err(Error::out_of_limits(
            "brix",
            target,
            &table::deg_brix,
            self.brix,
            STRONGEST,
        ))
    }
}

const SHARE: Range = Range::new("share", &table::fraction, 1e-6, 0.999_999);
const STRONGEST: f64 = 85.0;
