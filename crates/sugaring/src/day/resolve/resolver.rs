//! Every number in its slot, every default named, every range checked, in the order of the keys.

use crate::{
    day::{
        inputs::DayInputs,
        plan::{How, Remark, RestsOn},
        resolve::{
            Model, air,
            checks::{checked_price, heading, price_of_what, uncertainty},
            default, limits as range, sap,
        },
        slots::{Shape, Slot, Slots},
    },
    error::Error,
    relation::Range,
    units::{Dimension, Given, Value},
};
use alloc::{format, string::ToString, vec::Vec};

impl Model {
    pub(crate) fn of(inputs: &DayInputs) -> Result<Self, Error> {
        Resolver::default().resolve(inputs)
    }
}

/// Collects slots, defaults and remarks on the way through the inputs.
#[derive(Debug, Default)]
pub(crate) struct Resolver {
    pub(crate) slots: Slots,
    pub(crate) remarks: Vec<Remark>,
    pub(crate) rests_on: Vec<RestsOn>,
}

impl Resolver {
    pub(crate) fn resolve(mut self, inputs: &DayInputs) -> Result<Model, Error> {
        heading(inputs)?;
        let air = air::resolve(&mut self, &inputs.air).map_err(|e| e.within("air"))?;
        let instruments = sap::instruments(inputs)?;
        let lots = sap::resolve(&mut self, inputs, &instruments)?;
        let rig = match &inputs.membrane {
            Some(membrane) => Some(self.membrane(membrane).map_err(|e| e.within("membrane"))?),
            None => None,
        };
        let pan = self
            .evaporator(&inputs.evaporator)
            .map_err(|e| e.within("evaporator"))?;
        let fuel = self.fire(inputs.evaporator.fuel.as_ref())?;
        let finishing = match &inputs.finishing {
            Some(finishing) => Some(self.finishing(finishing).map_err(|e| e.within("finishing"))?),
            None => None,
        };
        let target = self.target(&inputs.target).map_err(|e| e.within("target"))?;
        let mut containers = Vec::new();
        for (i, container) in inputs.containers.iter().enumerate() {
            let path = || format!("containers[{i}]");
            containers.push(self.container(container, i).map_err(|e| e.within(&path()))?);
        }
        let fill_temperature = self.optional(
            inputs.fill_temperature.as_ref(),
            &range::FILL_TEMPERATURE,
            default::FILL_TEMPERATURE,
            None,
        )?;
        for (price, path) in [(inputs.electricity, "electricity"), (inputs.labour, "labour")] {
            checked_price(price).map_err(|e| e.within(path))?;
        }
        if inputs
            .electricity
            .is_some_and(|p| p.per.dimension() != Dimension::Energy)
        {
            return Err(price_of_what("electricity", "0.2 per 1 kWh"));
        }
        if inputs.labour.is_some_and(|p| p.per.dimension() != Dimension::Time) {
            return Err(price_of_what("labour", "20 per 1 h"));
        }
        if inputs.target.sugar_lost.is_none() {
            self.assume("target.sugar_lost", "no sugar lost");
        }
        self.assume("day", "no time for lighting, carrying and packing");
        Ok(Model {
            slots: self.slots,
            seed: inputs.seed.unwrap_or(default::SEED),
            samples: inputs.samples.unwrap_or(default::SAMPLES),
            air,
            lots,
            rig,
            pan,
            fuel,
            finishing,
            target,
            instruments,
            containers,
            fill_temperature,
            electricity: inputs.electricity,
            labour: inputs.labour,
            remarks: self.remarks,
            rests_on: self.rests_on,
        })
    }

    pub(crate) fn maybe<T: Value>(&mut self, given: Option<&Given<T>>, range: &Range) -> Result<Option<Slot>, Error> {
        given.map(|given| self.take(given, range, None)).transpose()
    }

    pub(crate) fn take<T: Value>(
        &mut self,
        given: &Given<T>,
        range: &Range,
        usual: Option<Shape>,
    ) -> Result<Slot, Error> {
        let si = range.check(given.si())?;
        let own = uncertainty(given, range)?.map(Shape::Normal);
        let (low, high) = range.limits_si();
        Ok(self.slots.spread(si, own.or(usual), low, high))
    }

    pub(crate) fn optional<T: Value>(
        &mut self,
        given: Option<&Given<T>>,
        range: &Range,
        fallback: f64,
        usual: Option<Shape>,
    ) -> Result<Slot, Error> {
        if let Some(given) = given {
            return self.take(given, range, usual);
        }
        let (low, high) = range.limits_si();
        Ok(self.slots.spread(fallback, usual, low, high))
    }

    pub(crate) fn assume(&mut self, input: &str, text: &str) {
        self.rest(input, How::Assumed, text);
    }

    pub(crate) fn calibrated(&mut self, input: &str, text: &str) {
        self.rest(input, How::Calibrated, text);
    }

    pub(crate) fn rest(&mut self, input: &str, how: How, text: &str) {
        self.rests_on.push(RestsOn {
            input: input.to_string(),
            how,
            text: text.to_string(),
        });
    }
}
