use alloc::format;

use crate::{
    digits,
    error::Error,
    relation::{Range, Relation, Source},
    units::{Ratio, Si, Value, table},
};

/// Water in wood as a share of the whole; made by naming the basis, because 30 % dry is only 23 % wet.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Moisture(f64);

impl Moisture {
    /// Water per wood with its water: what fuel is traded by.
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | M | water / (dry wood + water) | 1 | 0 to 0.6 |
    ///
    /// # Errors
    /// Out of range, with a hint where the number looks like dry basis or like a percentage; or not finite.
    /// # Source
    /// A definition; the limit is the wettest wood that burns, common practice.
    /// # Examples
    /// ```
    /// use sugaring::{fuel::Moisture, units::*};
    /// assert_eq!(Moisture::wet_basis(percent(25.0))?.wet().get::<fraction>(), 0.25);
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{fuel::Moisture, units::*};
    /// assert_eq!(
    ///     Moisture::wet_basis(fraction(0.7)).unwrap_err().to_string(),
    ///     "moisture = 0.7 is outside 0 to 0.6; if it is dry basis it is 0.4118 wet: write dry_basis",
    /// );
    /// ```
    pub fn wet_basis(share: Ratio) -> Result<Self, Error> {
        let wet = share.si();
        WET_BASIS.check(0, wet).map(Self).map_err(|error| {
            if wet > 0.0 && wet <= DRIEST_LIMIT {
                let meant = digits::significant(wet_from_dry(wet), 4);
                error.with_hint(format!("if it is dry basis it is {meant} wet: write dry_basis"))
            } else {
                error
            }
        })
    }

    /// Water per dry wood: what a pin meter shows and firewood tables print.
    ///
    /// M = D / (1 + D)
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | D | water / dry wood | 1 | 0 to 1.5 |
    /// | M | water / (dry wood + water) | 1 | 0 to 0.6 |
    ///
    /// # Errors
    /// Out of range or not finite.
    /// # Source
    /// A definition.
    /// # Examples
    /// ```
    /// use sugaring::{fuel::Moisture, units::*};
    /// let seasoned = Moisture::dry_basis(percent(20.0))?;
    /// assert!((seasoned.wet().get::<percent>() - 16.667).abs() < 0.001);
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{fuel::Moisture, units::*};
    /// assert_eq!(
    ///     Moisture::dry_basis(fraction(20.0)).unwrap_err().to_string(),
    ///     "moisture = 20 is outside 0 to 1.5; 20 % is written percent(20), \"20 %\" or 0.2",
    /// );
    /// ```
    pub fn dry_basis(share: Ratio) -> Result<Self, Error> {
        DRY_BASIS.check(0, share.si()).map(|dry| Self(wet_from_dry(dry)))
    }

    /// Water per wood with its water.
    #[must_use]
    pub fn wet(self) -> Ratio {
        Ratio::of_si(self.0)
    }

    /// Water per dry wood.
    #[must_use]
    pub fn dry(self) -> Ratio {
        Ratio::of_si(self.0 / (1.0 - self.0))
    }

    pub(crate) const fn get(self) -> f64 {
        self.0
    }
}

/// What [`Moisture::wet_basis`] covers.
pub static WET_BASIS: Relation = Relation {
    name: "fuel::Moisture::wet_basis",
    inputs: &[Range::new("moisture", &table::fraction, 0.0, 0.6)],
    output: &table::fraction,
    source: Source::CommonPractice,
    accuracy: "a definition",
};

/// What [`Moisture::dry_basis`] covers.
pub static DRY_BASIS: Relation = Relation {
    name: "fuel::Moisture::dry_basis",
    inputs: &[Range::new("moisture", &table::fraction, 0.0, DRIEST_LIMIT)],
    output: &table::fraction,
    source: Source::CommonPractice,
    accuracy: "a definition",
};

/// 0.6 wet basis on the dry one.
const DRIEST_LIMIT: f64 = 1.5;

fn wet_from_dry(dry: f64) -> f64 {
    dry / (1.0 + dry)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{fraction, percent};
    use proptest::prelude::*;

    #[test]
    fn slips_are_recognised() {
        let text = |share| Moisture::wet_basis(fraction(share)).unwrap_err().to_string();
        assert_eq!(
            text(25.0),
            "moisture = 25 is outside 0 to 0.6; 25 % is written percent(25), \"25 %\" or 0.25"
        );
        assert_eq!(text(-0.1), "moisture = -0.1 is outside 0 to 0.6");
        assert_eq!(text(f64::NAN), "moisture = NaN is not a finite number");
        assert!((Moisture::dry_basis(fraction(1.5)).unwrap().get() - 0.6).abs() < 1e-15);
        assert!(Moisture::wet_basis(percent(60.0)).is_ok());
    }

    proptest! {
        #[test]
        fn bases_convert_back(wet in 0.0..0.6_f64) {
            let there = Moisture::wet_basis(fraction(wet)).unwrap();
            let back = Moisture::dry_basis(there.dry()).unwrap();
            prop_assert!((back.get() - wet).abs() < 1e-15);
        }

        #[test]
        fn any_number_is_taken(share in any::<f64>()) {
            let _ = (Moisture::wet_basis(fraction(share)), Moisture::dry_basis(fraction(share)));
        }
    }
}
