use alloc::format;

use super::{Efficiency, Fuel, station::Kind};
use crate::{
    error::Error,
    relation::{Range, Relation, Source},
    units::{Dimension, Energy, EnergyPerMass, Mass, MassFlow, Power, Si, Unit, Value, Volume, table},
};

/// What a fuel gives.
impl Fuel {
    /// What it is called.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Its heat as fired, gross and net, by what it is counted in.
    #[must_use]
    pub fn heat(&self) -> HeatContent {
        let per_mass = |gross, net| (Some(EnergyPerMass::of_si(gross)), Some(EnergyPerMass::of_si(net)));
        let per_volume = |volume: f64, gross: f64, net: f64| {
            Some(HeatPerVolume {
                volume: Volume::of_si(volume),
                gross: Energy::of_si(gross * volume),
                net: Energy::of_si(net * volume),
            })
        };
        let (masses, volumes) = match self.kind {
            Kind::Wood(wood) => {
                let (gross, net, density) = (wood.gross(), wood.net(), wood.stacked_density());
                let cord = table::cord.factor();
                (per_mass(gross, net), per_volume(cord, gross * density, net * density))
            }
            Kind::Counted { gross, net, per } => match per.dimension() {
                Dimension::Mass => (per_mass(gross, net), None),
                Dimension::Volume => ((None, None), per_volume(per.si(), gross, net)),
                _ => ((None, None), None),
            },
        };
        HeatContent {
            gross: masses.0,
            net: masses.1,
            per_volume: volumes,
        }
    }

    /// What must be burned so that `heat` reaches the liquid.
    ///
    /// burned = Q / (η H)
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | Q | heat into the liquid | MJ | 0 to 1e9 |
    /// | η | efficiency | 1 | 0.05 to 1 |
    /// | H | heat of the fuel as fired, gross or net as η says | MJ per kg, m³ | |
    ///
    /// # Errors
    /// Out of range or not finite.
    /// # Source
    /// The definition of efficiency.
    /// # Examples
    /// ```
    /// use sugaring::{fuel::{Efficiency, Fuel, Moisture}, units::*};
    /// let wood = Fuel::wood("hardwood", Moisture::wet_basis(percent(25.0))?)?;
    /// let burned = wood.needed(mj(305.44), Efficiency::of_gross(percent(45.0))?)?;
    /// assert!((burned.mass.unwrap().get::<kg>() - 45.24).abs() < 0.01);
    /// assert!((burned.volume.unwrap().get::<cord>() - 0.02517).abs() < 1e-5);
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{fuel::{Efficiency, Fuel}, units::*};
    /// let efficiency = Efficiency::of_gross(percent(40.0))?;
    /// assert_eq!(
    ///     Fuel::named("propane")?.needed(mj(-1.0), efficiency).unwrap_err().to_string(),
    ///     "heat = -1 MJ is outside 0 to 1000000000 MJ",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn needed(&self, heat: Energy, efficiency: Efficiency) -> Result<FuelUse, Error> {
        let heat = NEEDED.check(0, heat.si())?;
        let (gross, net) = self.heats();
        Ok(self.burning(efficiency.gross_for(heat, net / gross)))
    }

    /// Heat into the liquid from a fuel that is weighed into the fire.
    ///
    /// q = η H ṁ
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | ṁ | fuel burned | kg/h | 0 to 1e6 |
    /// | η | efficiency | 1 | 0.05 to 1 |
    /// | H | heat of the fuel as fired, gross or net as η says | J/kg | |
    ///
    /// # Errors
    /// Out of range or not finite; inconsistent where the fuel's heat is not known per mass.
    /// # Source
    /// The definition of efficiency.
    /// # Examples
    /// ```
    /// use sugaring::{fuel::{Efficiency, Fuel, Moisture}, units::*};
    /// let wood = Fuel::wood("hardwood", Moisture::wet_basis(percent(25.0))?)?;
    /// let efficiency = Efficiency::of_gross(percent(45.0))?;
    /// assert!((wood.heat_rate(kg_per_h(12.0), efficiency)?.get::<kw>() - 22.50).abs() < 0.01);
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{fuel::{Efficiency, Fuel}, units::*};
    /// # let efficiency = Efficiency::of_gross(percent(40.0))?;
    /// assert_eq!(
    ///     Fuel::named("propane")?.heat_rate(kg_per_h(1.0), efficiency).unwrap_err().to_string(),
    ///     "burned = 1 kg/h does not fit fuel = propane; its heat is known per volume: make an own fuel with its heat per mass",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn heat_rate(&self, burned: MassFlow, efficiency: Efficiency) -> Result<Power, Error> {
        let burned = HEAT_RATE.check(0, burned.si())?;
        if self.base_dimension() != Dimension::Mass {
            let shown = table::kg_per_h.show(table::kg_per_h.from_si(burned));
            let counted = self.base_dimension().name();
            return Err(
                Error::inconsistent("burned", &shown, &format!("fuel = {}", self.name)).with_hint(format!(
                    "its heat is known per {counted}: make an own fuel with its heat per mass"
                )),
            );
        }
        let (gross, net) = self.heats();
        Ok(Power::of_si(efficiency.heat_from(gross * burned, net / gross)))
    }

    /// The unit its volume is read in: cords of wood, gallons of propane.
    pub(crate) fn volume_unit(&self) -> Option<&'static Unit> {
        match self.kind {
            Kind::Wood(_) => Some(&table::cord),
            Kind::Counted { per, .. } if per.dimension() == Dimension::Volume => Some(per.unit()),
            Kind::Counted { .. } => None,
        }
    }

    /// Gross and net heat per kg, m³ or J, as the fuel is counted.
    fn heats(&self) -> (f64, f64) {
        match self.kind {
            Kind::Wood(wood) => (wood.gross(), wood.net()),
            Kind::Counted { gross, net, .. } => (gross, net),
        }
    }

    pub(super) fn base_dimension(&self) -> Dimension {
        match self.kind {
            Kind::Wood(_) => Dimension::Mass,
            Kind::Counted { per, .. } => per.dimension(),
        }
    }

    /// What `gross` heat of it amounts to.
    fn burning(&self, gross: f64) -> FuelUse {
        let amount = gross / self.heats().0;
        let (mass, volume) = match (self.kind, self.base_dimension()) {
            (Kind::Wood(wood), _) => (Some(amount), Some(amount / wood.stacked_density())),
            (_, Dimension::Mass) => (Some(amount), None),
            (_, Dimension::Volume) => (None, Some(amount)),
            _ => (None, None),
        };
        let cost = self.price.and_then(|price| {
            let counted = match price.per.dimension() {
                Dimension::Mass => mass,
                Dimension::Volume => volume,
                _ => Some(gross),
            };
            counted.map(|counted| counted / price.per.si() * price.amount)
        });
        FuelUse {
            mass: mass.map(Mass::of_si),
            volume: volume.map(Volume::of_si),
            energy: Energy::of_si(gross),
            cost,
        }
    }
}

/// Heat of a fuel as fired.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct HeatContent {
    /// Gross heat per mass; `None` where the fuel is counted otherwise.
    pub gross: Option<EnergyPerMass>,
    /// Net heat per mass.
    pub net: Option<EnergyPerMass>,
    /// Heat of one gallon, cord or cubic metre; `None` where the fuel is counted otherwise.
    pub per_volume: Option<HeatPerVolume>,
}

/// Heat of a volume of fuel.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct HeatPerVolume {
    /// The volume; of wood, stacked.
    pub volume: Volume,
    /// Its gross heat.
    pub gross: Energy,
    /// Its net heat.
    pub net: Energy,
}

/// How much fuel a heat takes.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct FuelUse {
    /// Mass as fired; `None` where the fuel is counted otherwise.
    pub mass: Option<Mass>,
    /// Volume, of wood stacked; `None` where the fuel is counted otherwise.
    pub volume: Option<Volume>,
    /// Gross heat of what is burned.
    pub energy: Energy,
    /// What it costs, in the currency of the price; `None` without a price.
    pub cost: Option<f64>,
}

/// What [`Fuel::needed`] covers.
pub static NEEDED: Relation = Relation {
    name: "fuel::Fuel::needed",
    inputs: &[Range::new("heat", &table::mj, 0.0, 1e9)],
    output: &table::kg,
    source: Source::Derived {
        text: "definition of efficiency",
    },
    accuracy: "that of the efficiency: 20 % where it is guessed",
};

/// What [`Fuel::heat_rate`] covers.
pub static HEAT_RATE: Relation = Relation {
    name: "fuel::Fuel::heat_rate",
    inputs: &[Range::new("burned", &table::kg_per_h, 0.0, 1e6)],
    output: &table::kw,
    source: Source::Derived {
        text: "definition of efficiency",
    },
    accuracy: "that of the efficiency: 20 % where it is guessed",
};
