use alloc::{borrow::Cow, format, string::String};

use super::{
    FUELS, Moisture, SPECIES,
    wood::{SOLID_SHARE, WOOD, Wood},
};
use crate::{
    error::{Error, ErrorKind},
    relation::{Range, Relation, Source},
    units::{Dimension, Energy, EnergyPerMass, Price, Quantity, Ratio, Value, table},
};

/// What burns: the heat of it, and how it is counted and paid.
#[derive(Clone, Debug, PartialEq)]
pub struct Fuel {
    pub(super) name: Cow<'static, str>,
    pub(super) kind: Kind,
    pub(super) price: Option<Price>,
}

#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Kind {
    Wood(Wood),
    /// Heats in J per SI unit of `per`: a mass, a volume or an energy.
    Counted {
        gross: f64,
        net: f64,
        per: Quantity,
    },
}

/// A fuel of the user's own.
#[derive(Clone, Debug, PartialEq)]
pub struct OwnFuel {
    /// What it is called.
    pub name: String,
    /// The amount whose heat is given: a mass, a volume or an energy.
    pub unit: Quantity,
    /// Gross heat of that amount.
    pub gross: Energy,
    /// Net heat per gross heat, 0.5 to 1; matters only for an efficiency of net.
    pub net_per_gross: Ratio,
}

/// Making a fuel.
impl Fuel {
    /// A fuel of [`FUELS`] by its name, such as `propane`.
    ///
    /// # Errors
    /// Unknown name, with the nearest one.
    /// # Source
    /// Each row of [`FUELS`] names its own.
    /// # Examples
    /// ```
    /// use sugaring::{fuel::Fuel, units::*};
    /// let gallon = Fuel::named("propane")?.heat().per_volume.unwrap();
    /// assert!((gallon.gross.get::<btu>() - 91_452.0).abs() < 1e-6);
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::fuel::Fuel;
    /// assert_eq!(
    ///     Fuel::named("propan").unwrap_err().to_string(),
    ///     "fuel has the unknown name \"propan\"; nearest: propane",
    /// );
    /// ```
    pub fn named(key: &str) -> Result<Self, Error> {
        match FUELS.iter().find(|row| same(row.key, key) || same(row.name, key)) {
            Some(row) => Ok(Self {
                name: Cow::Borrowed(row.name),
                kind: counted(row.per, row.gross.si(), row.net_per_gross),
                price: None,
            }),
            None if SPECIES.iter().any(|row| same(row.name, key)) => Err(Error::unknown_name("fuel", key, [])
                .with_hint("it is a wood, whose heat depends on its water: give species and moisture under wood")),
            None => Err(Error::unknown_name("fuel", key, FUELS.iter().map(|row| row.key))),
        }
    }

    /// Wood of a species of [`SPECIES`], or plain `hardwood`.
    ///
    /// gross = H (1 − M);  net = gross − L \[M + 8.937 h (1 − M)\];  kg/cord as fired = 1000 G V / (1 − M)
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | H | gross heat of dry wood: 8600 Btu/lb, resinous 9000 | MJ/kg | 15 to 25 |
    /// | M | moisture, wet basis | 1 | 0 to 0.6 |
    /// | L | latent heat of water at 25 °C | MJ/kg | 2.443 |
    /// | h | hydrogen in dry wood | 1 | 0.06 |
    /// | G | oven-dry mass per green volume, over that of water | 1 | 0.2 to 1.2 |
    /// | V | solid wood in a cord of 128 ft³ | ft³ | 85 |
    ///
    /// # Errors
    /// Unknown name, with the nearest one.
    /// # Source
    /// Heat of dry wood as firewood tables print it; h and L from memory of EN 14918; G from the USDA's reference
    /// species table. A cord stacked after drying holds up to 10 % more.
    /// # Examples
    /// ```
    /// use sugaring::{fuel::{Fuel, Moisture}, units::*};
    /// let maple = Fuel::wood("sugar maple", Moisture::wet_basis(percent(25.0))?)?.heat();
    /// assert!((maple.gross.unwrap().get::<mj_per_kg>() - 15.00).abs() < 0.01);
    /// assert!((maple.net.unwrap().get::<mj_per_kg>() - 13.41).abs() < 0.01);
    /// assert!((maple.per_volume.unwrap().gross.get::<million_btu>() - 25.56).abs() < 0.01);
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{fuel::{Fuel, Moisture}, units::*};
    /// let dry = Moisture::wet_basis(percent(15.0))?;
    /// assert_eq!(
    ///     Fuel::wood("suger maple", dry).unwrap_err().to_string(),
    ///     "species has the unknown name \"suger maple\"; nearest: sugar maple",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn wood(species: &str, moisture: Moisture) -> Result<Self, Error> {
        let row = SPECIES
            .iter()
            .find(|row| same(row.name, species))
            .ok_or_else(|| Error::unknown_name("species", species, SPECIES.iter().map(|row| row.name)))?;
        Ok(Self {
            name: Cow::Borrowed(row.name),
            kind: Kind::Wood(Wood {
                dry_heat: row.group.dry_heat(),
                specific_gravity: row.specific_gravity,
                solid_share: SOLID_SHARE,
                moisture: moisture.get(),
            }),
            price: None,
        })
    }

    /// A fuel of the user's own, by the heat of a mass, a volume or an energy of it.
    ///
    /// # Errors
    /// Out of range, not finite, or wrong dimension of the unit.
    /// # Source
    /// The user's.
    /// # Examples
    /// ```
    /// use sugaring::{fuel::{Efficiency, Fuel, OwnFuel}, units::*};
    /// let butane = Fuel::own(&OwnFuel {
    ///     name: "butane".into(),
    ///     unit: Quantity::new(1.0, &table::kg),
    ///     gross: mj(49.5),
    ///     net_per_gross: fraction(0.92),
    /// })?;
    /// let burned = butane.needed(mj(10.0), Efficiency::of_gross(percent(40.0))?)?;
    /// assert!((burned.mass.unwrap().get::<kg>() - 0.505).abs() < 0.001);
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{fuel::{Fuel, OwnFuel}, units::*};
    /// # let unit = Quantity::new(1.0, &table::metre);
    /// let rope = OwnFuel { name: "rope".into(), unit, gross: mj(1.0), net_per_gross: fraction(1.0) };
    /// assert_eq!(
    ///     Fuel::own(&rope).unwrap_err().to_string(),
    ///     "unit = 1 m is a length; a mass, a volume or an energy is needed",
    /// );
    /// ```
    pub fn own(fuel: &OwnFuel) -> Result<Self, Error> {
        if !matches!(
            fuel.unit.dimension(),
            Dimension::Mass | Dimension::Volume | Dimension::Energy
        ) {
            return Err(Error::wrong_dimension(&fuel.unit, Dimension::Mass)
                .named("unit")
                .with_hint("a mass, a volume or an energy is needed"));
        }
        positive("unit", fuel.unit)?;
        let gross = OWN.check(0, fuel.gross.si())?;
        let net_per_gross = OWN.check(1, fuel.net_per_gross.si())?;
        Ok(Self {
            name: Cow::Owned(fuel.name.clone()),
            kind: counted(fuel.unit, gross, net_per_gross),
            price: None,
        })
    }

    /// With gross heat of oven-dry wood from a laboratory or another table; other fuels stay as they are.
    ///
    /// # Errors
    /// Out of range or not finite.
    pub fn with_dry_heat(self, dry_heat: EnergyPerMass) -> Result<Self, Error> {
        let dry_heat = WOOD.check(1, dry_heat.si())?;
        Ok(self.with_wood(|wood| Wood { dry_heat, ..wood }))
    }

    /// With another oven-dry mass per green volume, over that of water; other fuels stay as they are.
    ///
    /// # Errors
    /// Out of range or not finite.
    pub fn with_specific_gravity(self, specific_gravity: Ratio) -> Result<Self, Error> {
        let specific_gravity = WOOD.check(2, specific_gravity.si())?;
        Ok(self.with_wood(|wood| Wood {
            specific_gravity,
            ..wood
        }))
    }

    /// With another share of solid wood in the stack than 85/128; other fuels stay as they are.
    ///
    /// # Errors
    /// Out of range or not finite.
    pub fn with_solid_share(self, solid_share: Ratio) -> Result<Self, Error> {
        let solid_share = WOOD.check(3, solid_share.si())?;
        Ok(self.with_wood(|wood| Wood { solid_share, ..wood }))
    }

    /// With a price, per any quantity the fuel is counted in: cords or kilograms of wood, gallons of propane.
    ///
    /// # Errors
    /// Out of range or not finite, or wrong dimension where the fuel is not counted so.
    ///
    /// ```
    /// use sugaring::{fuel::{Efficiency, Fuel}, units::*};
    /// let propane = Fuel::named("propane")?.with_price(Price::per::<gal>(3.6))?;
    /// let burned = propane.needed(mj(27.156), Efficiency::of_gross(percent(40.0))?)?;
    /// assert!((burned.cost.unwrap() - 2.533).abs() < 0.001);
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn with_price(self, price: Price) -> Result<Self, Error> {
        PRICE.check(price.amount).map_err(|e| e.within("price"))?;
        positive("per", price.per).map_err(|e| e.within("price"))?;
        let counts = match self.kind {
            Kind::Wood(_) => matches!(price.per.dimension(), Dimension::Mass | Dimension::Volume),
            Kind::Counted { per, .. } => price.per.dimension() == per.dimension(),
        };
        if counts {
            return Ok(Self {
                price: Some(price),
                ..self
            });
        }
        let needed = self.volume_unit().map_or(self.base_dimension(), |_| Dimension::Volume);
        Err(Error::wrong_dimension(&price.per, needed).named("per").within("price"))
    }

    fn with_wood(mut self, change: impl FnOnce(Wood) -> Wood) -> Self {
        if let Kind::Wood(wood) = self.kind {
            self.kind = Kind::Wood(change(wood));
        }
        self
    }
}

static OWN: Relation = Relation {
    name: "fuel::Fuel::own",
    inputs: &[
        Range::new("gross", &table::mj, 1e-6, 1e9),
        Range::new("net_per_gross", &table::fraction, 0.5, 1.0),
    ],
    output: &table::mj,
    source: Source::CommonPractice,
    accuracy: "the user's",
};

const PRICE: Range = Range::new("amount", &table::fraction, 0.0, 1e9);

fn counted(per: Quantity, gross: f64, net_per_gross: f64) -> Kind {
    let gross = gross / per.si();
    Kind::Counted {
        gross,
        net: gross * net_per_gross,
        per,
    }
}

fn positive(argument: &'static str, amount: Quantity) -> Result<(), Error> {
    let value = amount.value();
    if !value.is_finite() {
        return Err(Error::not_finite(argument, value));
    }
    // Down to a drop or a grain, up to a ship: beyond, the quotient is no heat of anything.
    if (1e-9..=1e9).contains(&value) {
        return Ok(());
    }
    let finding = format!(" = {amount} is outside 1e-9 to {}", amount.unit().with_symbol("1e9"));
    Err(Error::new(ErrorKind::OutOfRange, argument, finding)
        .with_value(value, amount.unit())
        .with_range(1e-9, 1e9))
}

/// Whether two names are the same but for case and the sign between words.
fn same(known: &str, given: &str) -> bool {
    let plain = |text: &str| {
        text.chars()
            .map(|c| if c == '_' { ' ' } else { c.to_ascii_lowercase() })
            .collect::<String>()
    };
    plain(known) == plain(given)
}

#[cfg(test)]
mod tests {
    use super::{super::Efficiency, *};
    use crate::units::{self as words, Si, fraction, kg_per_h, mj, percent};
    use proptest::prelude::*;

    fn wood(wet: f64) -> Fuel {
        Fuel::wood("hardwood", Moisture::wet_basis(fraction(wet)).unwrap()).unwrap()
    }

    #[test]
    fn names_are_taken_in_any_case() {
        assert_eq!(Fuel::named("Heating oil").unwrap(), Fuel::named("heating_oil").unwrap());
        assert_eq!(Fuel::named("heating oil no. 2").unwrap().name(), "heating oil no. 2");
        assert!(Fuel::wood("Sugar_Maple", Moisture::wet_basis(fraction(0.2)).unwrap()).is_ok());
        assert_eq!(
            Fuel::named("hardwood").unwrap_err().to_string(),
            "fuel has the unknown name \"hardwood\"; it is a wood, whose heat depends on its water: give species and \
             moisture under wood"
        );
    }

    #[test]
    fn a_price_counts_what_is_counted() {
        let cord = wood(0.25).with_price(Price::per::<words::cord>(280.0)).unwrap();
        let burned = cord
            .needed(mj(305.44), Efficiency::of_gross(percent(45.0)).unwrap())
            .unwrap();
        assert!((burned.cost.unwrap() - 7.05).abs() < 0.005);
        let error = Fuel::named("electricity")
            .unwrap()
            .with_price(Price::per::<words::gal>(1.0))
            .unwrap_err();
        assert_eq!(error.to_string(), "price.per = 1 gal is a volume; an energy is needed");
        assert!(wood(0.25).with_price(Price::per::<words::cord>(f64::NAN)).is_err());
    }

    proptest! {
        #[test]
        fn wetter_wood_is_never_less(wet in 0.0..0.59_f64, step in 1e-4..1e-2_f64, share in 0.05..1.0_f64) {
            for efficiency in [Efficiency::of_gross(fraction(share)), Efficiency::of_net(fraction(share))] {
                let burned = |wet| wood(wet).needed(mj(100.0), efficiency.clone().unwrap()).unwrap().mass.unwrap();
                prop_assert!(burned(wet + step) > burned(wet));
            }
        }

        #[test]
        fn what_is_needed_brings_the_heat(wet in 0.0..0.6_f64, share in 0.05..1.0_f64, heat in 1.0..1e4_f64) {
            for efficiency in [Efficiency::of_gross(fraction(share)).unwrap(), Efficiency::of_net(fraction(share)).unwrap()] {
                let burned = wood(wet).needed(mj(heat), efficiency).unwrap().mass.unwrap();
                let hour = kg_per_h(burned.get::<words::kg>());
                let back = wood(wet).heat_rate(hour, efficiency).unwrap().get::<words::watt>() * 3600.0;
                prop_assert!((back / (heat * 1e6) - 1.0).abs() < 1e-12);
            }
        }

        #[test]
        fn any_number_is_taken(a in any::<f64>(), b in any::<f64>()) {
            let fuel = wood(0.25);
            let efficiency = Efficiency::of_gross(percent(45.0)).unwrap();
            let _ = (fuel.needed(mj(a), efficiency), fuel.heat_rate(kg_per_h(a), efficiency));
            let _ = fuel.clone().with_dry_heat(EnergyPerMass::of_si(a)).and_then(|f| f.with_solid_share(fraction(b)));
            let unit = Quantity::new(a, &table::kg);
            let own = OwnFuel { name: String::new(), unit, gross: mj(b), net_per_gross: fraction(0.9) };
            if let Ok(own) = Fuel::own(&own) {
                let burned = own.needed(mj(1.0), efficiency).unwrap();
                prop_assert!(burned.mass.unwrap().si() > 0.0);
            }
            let _ = fuel.with_price(Price { amount: a, per: Quantity::new(b, &table::cord) });
        }
    }
}
