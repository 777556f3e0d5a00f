//! Target and containers.

use crate::{
    day::{
        inputs::{Container, Target},
        resolve::{
            ContainerModel, Resolver, TargetModel,
            checks::{checked_price, exact, price_of_what, uncertainty},
            default, limits as range, spread,
        },
        slots::Shape,
    },
    digits::significant,
    error::Error,
    finish,
    units::{Dimension, table},
};
use alloc::format;

impl Resolver {
    pub(crate) fn target(&mut self, target: &Target) -> Result<TargetModel, Error> {
        range::TARGET_BRIX.check(target.brix.si())?;
        let own = uncertainty(&target.brix, &range::TARGET_BRIX)?.map(Shape::Normal);
        let guard = match &target.guard {
            Some(guard) => {
                exact(guard, "guard")?;
                range::GUARD.check(guard.si())?
            }
            None => 0.0,
        };
        let rise = self.optional(target.non_sucrose_rise.as_ref(), &range::NON_SUCROSE_RISE, 0.0, None)?;
        let lost = self.optional(target.sugar_lost.as_ref(), &range::SUGAR_LOST, 0.0, None)?;
        Ok(TargetModel {
            brix: target.brix.si() + guard,
            error: self.slots.spread(0.0, own.or(Some(spread::TARGET)), -5.0, 5.0),
            rise,
            relation_error: self.slots.spread(0.0, Some(spread::BOILING_RELATION), -1.0, 1.0),
            lost,
        })
    }

    pub(crate) fn container(&mut self, container: &Container, index: usize) -> Result<ContainerModel, Error> {
        let volume = self.take(&container.volume, &range::LABEL, None)?;
        let brimful = self.maybe(container.brimful.as_ref(), &range::BRIMFUL)?;
        let mass = self.maybe(container.mass.as_ref(), &range::CONTAINER_MASS)?;
        let kelvin = self.optional(
            container.temperature.as_ref(),
            &range::CONTAINER_TEMPERATURE,
            default::CONTAINER_TEMPERATURE,
            None,
        )?;
        checked_price(container.price).map_err(|e| e.within("price"))?;
        if container.price.is_some_and(|p| p.per.dimension() != Dimension::Count) {
            return Err(price_of_what("price", "1.6 per 1 each"));
        }
        let assumed = "glass at 20 °C";
        if container.temperature.is_none() && !self.rests_on.iter().any(|r| r.text == assumed) {
            self.assume(&format!("containers[{index}].temperature"), assumed);
        }
        let material = match &container.material {
            Some(name) => Some(finish::Material::named(name)?),
            None => None,
        };
        let label = table::ml.from_si(container.volume.si());
        Ok(ContainerModel {
            name: match &container.name {
                Some(name) => name.clone(),
                None => format!("{} mL container", significant(label, 4)),
            },
            volume,
            stock: container.stock,
            brimful,
            material,
            mass,
            kelvin,
            price: container.price,
        })
    }
}
