//! Fuels and the finishing pan.

use crate::{
    day::{
        inputs::{Efficiency, Finishing, Fuel, Moisture},
        plan::How,
        resolve::{
            FinishingModel, FuelKind, FuelModel, Resolver,
            checks::{checked_price, priced, uncertainty},
            default, limits as range, spread,
        },
        slots::{Shape, Slot},
    },
    digits::significant,
    error::Error,
    fuel,
    units::Given,
};
use alloc::{format, string::String, vec::Vec};

impl Resolver {
    pub(crate) fn fire(&mut self, given: Option<&Fuel>) -> Result<FuelModel, Error> {
        let wood = Fuel {
            wood: Some(crate::day::inputs::Wood::default()),
            ..Fuel::default()
        };
        self.fuel(given.unwrap_or(&wood), "evaporator.fuel")
            .map_err(|e| e.within("evaporator.fuel"))
    }

    pub(crate) fn fuel(&mut self, given: &Fuel, path: &str) -> Result<FuelModel, Error> {
        checked_price(given.price).map_err(|e| e.within("price"))?;
        if let (Some(named), Some(_)) = (&given.named, &given.wood) {
            return Err(Error::inconsistent(
                "named",
                &format!("\"{named}\""),
                "wood; give one of them",
            ));
        }
        let mut texts = Vec::new();
        let (name, kind) = if let Some(named) = &given.named {
            let made = fuel::Fuel::named(named).map_err(|e| e.named("named"))?;
            priced(made, given.price)?;
            (named.clone(), FuelKind::Named)
        } else {
            let wood = given.wood.clone().unwrap_or_default();
            let species = wood.species.unwrap_or_else(|| String::from("hardwood"));
            let moisture = self.moisture(wood.moisture.as_ref()).map_err(|e| e.within("wood"))?;
            let wet = fuel::Moisture::wet_basis(crate::units::fraction(default::MOISTURE))?;
            let made = fuel::Fuel::wood(&species, wet).map_err(|e| e.named("wood.species"))?;
            priced(made, given.price)?;
            if wood.moisture.is_none() {
                texts.push(String::from("wood 25 % wet"));
            }
            let cord = self.slots.spread(1.0, Some(spread::CORD), 0.5, 1.5);
            (species, FuelKind::Wood { moisture, cord })
        };
        let fallback = if matches!(kind, FuelKind::Wood { .. }) {
            default::WOOD_EFFICIENCY
        } else {
            default::BURNER_EFFICIENCY
        };
        let (efficiency, of_net) = match &given.efficiency {
            Some(Efficiency::OfGross(x)) => (self.efficiency(x, false)?, false),
            Some(Efficiency::OfNet(x)) => (self.efficiency(x, true)?, true),
            None => {
                let percent = significant(fallback * 100.0, 3);
                texts.push(if matches!(kind, FuelKind::Wood { .. }) {
                    format!("{percent} % of gross heat")
                } else {
                    format!("{name} {percent} % of gross heat")
                });
                (self.slots.spread(fallback, Some(spread::EFFICIENCY), 0.05, 1.0), false)
            }
        };
        if !texts.is_empty() {
            self.assume(&format!("{path}.efficiency"), &texts.join(", "));
        }
        if matches!(kind, FuelKind::Wood { .. }) {
            self.assume(path, "cord of 85 ft³ solid");
        }
        Ok(FuelModel {
            name,
            kind,
            efficiency,
            of_net,
            price: given.price,
        })
    }

    pub(crate) fn moisture(&mut self, moisture: Option<&Moisture>) -> Result<Slot, Error> {
        let (wet, own) = match moisture {
            Some(Moisture::WetBasis(x)) => {
                fuel::Moisture::wet_basis(x.value)?;
                (x.si(), uncertainty(x, &range::MOISTURE)?)
            }
            Some(Moisture::DryBasis(x)) => {
                fuel::Moisture::dry_basis(x.value)?;
                let dry = x.si();
                let slope = (1.0 + dry) * (1.0 + dry);
                (dry / (1.0 + dry), uncertainty(x, &range::MOISTURE)?.map(|u| u / slope))
            }
            None => (default::MOISTURE, None),
        };
        let shape = Shape::Normal(own.unwrap_or(spread::MOISTURE));
        Ok(self.slots.spread(wet, Some(shape), 0.10, 0.45))
    }

    pub(crate) fn efficiency(&mut self, given: &Given<crate::units::Ratio>, of_net: bool) -> Result<Slot, Error> {
        if of_net {
            fuel::Efficiency::of_net(given.value)?;
        } else {
            fuel::Efficiency::of_gross(given.value)?;
        }
        let own = uncertainty(given, &range::EFFICIENCY)?.map(Shape::Normal);
        Ok(self
            .slots
            .spread(given.si(), own.or(Some(spread::EFFICIENCY)), 0.05, 1.0))
    }

    pub(crate) fn finishing(&mut self, finishing: &Finishing) -> Result<FinishingModel, Error> {
        let heat = self.optional(
            finishing.heat.as_ref(),
            &range::FINISHING_HEAT,
            default::FINISHING_HEAT,
            Some(Shape::LogNormal(spread::BURNER)),
        )?;
        if finishing.heat.is_none() {
            self.assume("finishing.heat", "finishing burner 3 kW");
        }
        let capacity = self.maybe(finishing.capacity.as_ref(), &range::CAPACITY)?;
        let propane = Fuel::named("propane");
        let fuel = self
            .fuel(finishing.fuel.as_ref().unwrap_or(&propane), "finishing.fuel")
            .map_err(|e| e.within("fuel"))?;
        let how = if finishing.heat.is_some() {
            How::Given
        } else {
            How::Assumed
        };
        Ok(FinishingModel {
            heat,
            capacity,
            fuel,
            how,
        })
    }
}
