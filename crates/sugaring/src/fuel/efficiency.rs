use crate::{
    error::Error,
    relation::{Range, Relation, Source},
    units::{Ratio, Si, Value, table},
};

/// Share of a fuel's heat that reaches the liquid, with the heat it is a share of.
///
/// On wood with 25 % of water 45 % of gross is 50 % of net: mixing the two is an error of 12 %.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Efficiency {
    share: f64,
    basis: HeatBasis,
}

/// Which heat of a fuel an efficiency is a share of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum HeatBasis {
    /// Gross (higher): the steam of the flue gas condensed. The North American trade's.
    Gross,
    /// Net (lower): the steam lost. Pellet and European stove figures.
    Net,
}

impl Efficiency {
    /// A share of the fuel's gross heat as fired.
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | η | heat into the liquid / gross heat | 1 | 0.05 to 1 |
    ///
    /// # Errors
    /// Out of range, with a hint where a percentage was written as a number; or not finite.
    /// # Source
    /// A definition; the limits are our choice. Usual figures of gross, common practice: open wood arch 0.25 to
    /// 0.45, wood with forced draught 0.55 to 0.75, hobby gas burner under an open pan 0.30 to 0.45.
    /// # Examples
    /// ```
    /// use sugaring::{fuel::Efficiency, units::*};
    /// assert_eq!(Efficiency::of_gross(percent(45.0))?.share().get::<fraction>(), 0.45);
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{fuel::Efficiency, units::*};
    /// assert_eq!(
    ///     Efficiency::of_gross(fraction(45.0)).unwrap_err().to_string(),
    ///     "efficiency = 45 is outside 0.05 to 1; 45 % is written percent(45), \"45 %\" or 0.45",
    /// );
    /// ```
    pub fn of_gross(share: Ratio) -> Result<Self, Error> {
        Self::of(share, HeatBasis::Gross)
    }

    /// A share of the fuel's net heat as fired; the rest as [`Efficiency::of_gross`].
    ///
    /// # Errors
    /// Out of range or not finite.
    /// # Source
    /// A definition.
    /// # Examples
    /// ```
    /// use sugaring::{fuel::{Efficiency, HeatBasis}, units::*};
    /// assert_eq!(Efficiency::of_net(percent(50.0))?.basis(), HeatBasis::Net);
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{fuel::Efficiency, units::*};
    /// assert!(Efficiency::of_net(fraction(0.01)).is_err());
    /// ```
    pub fn of_net(share: Ratio) -> Result<Self, Error> {
        Self::of(share, HeatBasis::Net)
    }

    /// The share.
    #[must_use]
    pub fn share(self) -> Ratio {
        Ratio::of_si(self.share)
    }

    /// What it is a share of.
    #[must_use]
    pub const fn basis(self) -> HeatBasis {
        self.basis
    }

    fn of(share: Ratio, basis: HeatBasis) -> Result<Self, Error> {
        let share = EFFICIENCY.check(0, share.si())?;
        Ok(Self { share, basis })
    }

    /// Gross heat to burn for `heat` in the liquid, where the fuel's net heat is `net_per_gross` of its gross.
    pub(crate) fn gross_for(self, heat: f64, net_per_gross: f64) -> f64 {
        heat / (self.share * self.of_gross_share(net_per_gross))
    }

    /// Heat in the liquid from `gross`, where the fuel's net heat is `net_per_gross` of its gross.
    pub(crate) fn heat_from(self, gross: f64, net_per_gross: f64) -> f64 {
        gross * self.share * self.of_gross_share(net_per_gross)
    }

    fn of_gross_share(self, net_per_gross: f64) -> f64 {
        match self.basis {
            HeatBasis::Gross => 1.0,
            HeatBasis::Net => net_per_gross,
        }
    }
}

/// What [`Efficiency::of_gross`] and [`Efficiency::of_net`] cover.
pub static EFFICIENCY: Relation = Relation {
    name: "fuel::Efficiency",
    inputs: &[Range::new("efficiency", &table::fraction, 0.05, 1.0)],
    output: &table::fraction,
    source: Source::CommonPractice,
    accuracy: "a definition; a guessed efficiency is good to 20 %",
};
