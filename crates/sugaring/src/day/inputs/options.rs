//! `with_x` for every key that may be left out.
use crate::{
    day::inputs::{Container, DayInputs, Efficiency, Evaporator, Finishing, Fuel, Heat, LeftInPan, Membrane, Target},
    units::{Brix, Given, Mass, Power, Price, Ratio, Temperature, TemperatureDifference, Volume},
};

/// `with_x` for every key that may be left out.
macro_rules! with {
    ($($type:ident { $($(#[$doc:meta])+ $with:ident($key:ident: $given:ty) $(= $how:expr)?;)+ })+) => { $(
        impl $type { $(
            $(#[$doc])+
            #[must_use]
            pub fn $with(mut self, $key: $given) -> Self {
                self.$key = Some($key.into());
                self
            }
        )+ }
    )+ };
}

with! {
    DayInputs {
        /// With a title.
        with_title(title: &str);
        /// With a start, `YYYY-MM-DDThh:mm`.
        with_start(start: &str);
        /// With the seed of the draws.
        with_seed(seed: u64);
        /// With the number of draws; 0 leaves the ranges out.
        with_samples(samples: u32);
        /// With a membrane rig.
        with_membrane(membrane: Membrane);
        /// With a finishing pan.
        with_finishing(finishing: Finishing);
        /// With the temperature of filling.
        with_fill_temperature(fill_temperature: impl Into<Given<Temperature>>);
        /// With a price of electricity.
        with_electricity(electricity: Price);
        /// With a price of an hour of work.
        with_labour(labour: Price);
    }
    Evaporator {
        /// With the heat into the liquid.
        with_heat(heat: Heat);
        /// With what stood in the pan from before.
        with_left_in_pan(left_in_pan: LeftInPan);
        /// With a fuel.
        with_fuel(fuel: Fuel);
    }
    Finishing {
        /// With the heat into the syrup.
        with_heat(heat: impl Into<Given<Power>>);
        /// With what the pan holds.
        with_capacity(capacity: impl Into<Given<Volume>>);
        /// With a fuel.
        with_fuel(fuel: Fuel);
    }
    Fuel {
        /// With an efficiency.
        with_efficiency(efficiency: impl Into<Efficiency>);
        /// With a price.
        with_price(price: Price);
    }
    Target {
        /// Aiming above the target.
        with_guard(guard: impl Into<Given<Brix>>);
        /// With a known rise above pure sucrose.
        with_non_sucrose_rise(non_sucrose_rise: impl Into<Given<TemperatureDifference>>);
        /// With a share that stays in pans and filters.
        with_sugar_lost(sugar_lost: impl Into<Given<Ratio>>);
    }
    Container {
        /// Under a name.
        with_name(name: &str);
        /// With what it holds to the brim.
        with_brimful(brimful: impl Into<Given<Volume>>);
        /// Of a material.
        with_material(material: &str);
        /// With its own mass.
        with_mass(mass: impl Into<Given<Mass>>);
        /// At a temperature other than 20 °C.
        with_temperature(temperature: impl Into<Given<Temperature>>);
        /// With a price.
        with_price(price: Price);
    }
}
