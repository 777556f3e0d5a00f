//! Fuel, bottles and money.

use crate::{
    day::{
        resolve::{ContainerModel, FuelKind, FuelModel},
        stations::{CostOutcome, FuelOutcome, Outcome, PackingOutcome, SyrupOutcome, today::Today},
    },
    error::Error,
    finish, fuel,
    lot::Lot,
    units::{Brix, Price, Si, Value, fraction, kelvin},
};
use alloc::vec::Vec;

impl Today<'_> {
    /// The fuel for a heat into the liquid.
    pub(crate) fn fuel(&self, model: &FuelModel, heat: f64) -> Result<FuelOutcome, Error> {
        let made = match model.kind {
            FuelKind::Named => fuel::Fuel::named(&model.name)?,
            FuelKind::Wood { moisture, cord } => {
                let moisture = fuel::Moisture::wet_basis(fraction(self.of(moisture)))?;
                let wood = fuel::Fuel::wood(&model.name, moisture)?;
                wood.with_solid_share(fraction((fuel::SOLID_SHARE * self.of(cord)).clamp(0.4, 0.9)))?
            }
        };
        let share = fraction(self.of(model.efficiency));
        let efficiency = if model.of_net {
            fuel::Efficiency::of_net(share)
        } else {
            fuel::Efficiency::of_gross(share)
        }?;
        let burned = crate::day::resolve::priced(made, model.price)?.needed(crate::units::joule(heat), efficiency)?;
        Ok(FuelOutcome {
            mass: burned.mass.map(Value::si),
            volume: burned.volume.map(Value::si),
            energy: burned.energy.si(),
            cost: burned.cost,
        })
    }

    pub(crate) fn pack(&self, syrup: &SyrupOutcome) -> Result<Option<PackingOutcome>, Error> {
        if self.model.containers.is_empty() {
            return Ok(None);
        }
        let fill = self.of(self.model.fill_temperature);
        let lot = Lot::of_mass(crate::units::kg(syrup.mass), Brix::from_si(syrup.brix)?, kelvin(fill))
            .map_err(|e| e.within("syrup"))?;
        let containers: Vec<finish::Container> = self.model.containers.iter().map(|c| self.container(c)).collect();
        let packing = finish::pack(&lot, &containers, kelvin(fill))?;
        let packed = packing
            .rows
            .iter()
            .filter_map(|row| Some(f64::from(row.count) * containers.get(row.container)?.volume.si()))
            .sum();
        Ok(Some(PackingOutcome {
            fill_temperature: fill,
            packing,
            packed,
        }))
    }

    pub(crate) fn container(&self, model: &ContainerModel) -> finish::Container {
        finish::Container {
            name: model.name.clone(),
            volume: Si::of_si(self.of(model.volume)),
            brimful: model.brimful.map(|slot| Si::of_si(self.of(slot))),
            material: model.material,
            mass: model.mass.map(|slot| Si::of_si(self.of(slot))),
            temperature: kelvin(self.of(model.kelvin)),
            stock: model.stock,
            price: model.price,
        }
    }

    /// Every line that has a price; the others are named.
    pub(crate) fn cost(&self, outcome: &Outcome) -> CostOutcome {
        let mut cost = CostOutcome::default();
        let mut line = |amount: Option<f64>, name| match amount {
            Some(amount) => cost.sum += amount,
            None => cost.left_out.push(name),
        };
        line(outcome.fire.cost, "fuel");
        if let Some(burner) = &outcome.burner {
            line(burner.cost, "finishing_fuel");
        }
        let electricity = outcome
            .rig
            .as_ref()
            .map(|rig| self.model.electricity.map(|price| amount(price, rig.energy)));
        if let Some(electricity) = electricity {
            line(electricity, "electricity");
        }
        let containers = outcome.packing.as_ref().map(|packing| self.containers(packing));
        if let Some(containers) = containers {
            line(containers, "containers");
        }
        if let Some(price) = self.model.labour {
            line(Some(amount(price, outcome.clock.end)), "labour");
        }
        cost.electricity = electricity.flatten();
        cost.containers = containers.flatten();
        cost
    }

    /// What the containers used cost; unknown as soon as one kind has no price.
    pub(crate) fn containers(&self, packing: &PackingOutcome) -> Option<f64> {
        let mut sum = 0.0;
        for row in packing.packing.rows.iter().filter(|row| row.count > 0) {
            let price = self.model.containers.get(row.container)?.price?;
            sum += amount(price, f64::from(row.count));
        }
        Some(sum)
    }
}

pub(crate) fn amount(price: Price, quantity: f64) -> f64 {
    quantity / price.per.si() * price.amount
}
