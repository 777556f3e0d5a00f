//! How much sap a syrup takes.

use super::Lot;
use crate::{
    error::Error,
    sucrose,
    units::{Brix, Ratio, Si, Temperature, Value, table},
};

/// Sap per syrup.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct SapRatio {
    /// Mass of sap per mass of syrup.
    pub by_mass: Ratio,
    /// Volume of sap, at its temperature, per volume of syrup at 20 °C.
    pub by_volume: Ratio,
    /// Mass of water to take out per mass of syrup.
    pub water: Ratio,
}

impl Lot {
    /// How much of this sap a syrup of `syrup` takes, no sugar being lost.
    ///
    /// `r_m = B_s/B, r_V = B_s·ρ(B_s, 20 °C)/(B·ρ(B, T)), w = r_m − 1`
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | `B_s` | `syrup` | % | from the sap's own to 85 |
    /// | B, T | °Brix and temperature of the sap | %, K | those of [`Lot`] |
    /// | ρ | density | kg/m³ | |
    /// | `r_m`, `r_V` | sap per syrup by mass, by volume | 1 | |
    /// | w | water to take out per syrup, by mass | 1 | |
    ///
    /// Exact: rules such as "86 over the °Brix" hold for one syrup and weak sap only.
    ///
    /// # Errors
    /// [`OutOfRange`](crate::ErrorKind::OutOfRange) below the sap's own °Brix or above 85;
    /// [`Unreachable`](crate::ErrorKind::Unreachable) where there is no sugar.
    /// # Source
    /// Balance of mass and sugar, with [`sucrose::density`].
    /// # Examples
    /// ```
    /// use sugaring::{lot::Lot, units::*};
    /// let sap = Lot::of_volume(litre(265.0), brix(2.0)?, deg_c(4.0))?;
    /// let ratio = sap.sap_per_syrup(brix(66.9)?)?;
    /// assert_eq!(format!("{:.2}", ratio.by_volume.get::<fraction>()), "44.08");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{lot::Lot, units::*};
    /// # let sap = Lot::of_volume(litre(265.0), brix(2.0)?, deg_c(4.0))?;
    /// let error = sap.sap_per_syrup(brix(1.0)?).unwrap_err();
    /// assert_eq!(error.to_string(), "syrup = 1 °Bx is outside 2 to 85 °Bx");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn sap_per_syrup(&self, syrup: Brix) -> Result<SapRatio, Error> {
        let syrup = self.sweeter(syrup).map_err(|e| e.named("syrup"))?;
        let by_mass = syrup / self.brix;
        let densities = sucrose::density_at(syrup, TRADE) / sucrose::density_at(self.brix, self.kelvin);
        Ok(SapRatio {
            by_mass: Ratio::of_si(by_mass),
            by_volume: Ratio::of_si(by_mass * densities),
            water: Ratio::of_si(by_mass - 1.0),
        })
    }

    /// The sap that this much syrup takes, no sugar being lost.
    ///
    /// `M = M_s·B_s/B`
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | B | `sap` | % | above 0, to the syrup's own |
    /// | T | `temperature` of the sap | K | that of [`Lot`] |
    /// | `M_s`, `B_s` | mass and °Brix of this lot, the syrup | kg, % | |
    /// | M | mass of the sap | kg | |
    ///
    /// # Errors
    /// [`OutOfRange`](crate::ErrorKind::OutOfRange) above the syrup's own °Brix, or where the sap is more than a [`Lot`]
    /// may be.
    /// # Source
    /// Balance of mass and sugar.
    /// # Examples
    /// ```
    /// use sugaring::{lot::Lot, units::*};
    /// let syrup = Lot::of_volume(litre(6.0), brix(66.9)?, deg_c(20.0))?;
    /// let sap = syrup.sap_needed(brix(2.0)?, deg_c(4.0))?;
    /// assert_eq!(format!("{:.1}", sap.volume().get::<litre>()), "264.5");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{lot::Lot, units::*};
    /// # let syrup = Lot::of_volume(litre(6.0), brix(66.9)?, deg_c(20.0))?;
    /// let error = syrup.sap_needed(brix(70.0)?, deg_c(4.0)).unwrap_err();
    /// assert_eq!(error.to_string(), "sap = 70 °Bx is outside 0.001 to 66.9 °Bx");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn sap_needed(&self, sap: Brix, temperature: Temperature) -> Result<Self, Error> {
        let sap = sap.get();
        if !(WEAKEST..=self.brix).contains(&sap) {
            return Err(Error::out_of_limits("sap", sap, &table::deg_brix, WEAKEST, self.brix));
        }
        Self::new(self.mass * (self.brix / sap), sap, temperature.si())
    }
}

/// The temperature at which syrup is sold by volume.
const TRADE: f64 = 293.15;
/// Sap with less sugar than anybody could find in it.
const WEAKEST: f64 = 0.001;
