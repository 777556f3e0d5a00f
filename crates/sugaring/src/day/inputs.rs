//! What a day is planned from. The names are the keys of the JSON; what is left out has a default that the plan names.

use alloc::{
    string::{String, ToString},
    vec::Vec,
};

use crate::{
    air::StationPressure,
    units::{
        Brix, GaugePressure, Given, Length, Mass, MassFlow, PerKelvin, Permeance, Power, Pressure, Price, Ratio,
        Temperature, TemperatureDifference, Time, Volume,
    },
};

/// Everything a day is planned from.
///
/// ```
/// use sugaring::{air::StationPressure, day::{DayInputs, Sap, Target}, evaporator::Pan, units::*};
/// let air = StationPressure::from_altitude(metre(410.0))?;
/// let sap = Sap::of_volume(litre(265.0), brix(1.98)?, deg_c(4.0));
/// let pan = Pan::new(metre(0.61), metre(1.22))?;
/// let inputs = DayInputs::new(air, vec![sap], pan, Target::brix(brix(66.9)?)).with_samples(0);
/// assert_eq!(inputs.sap.len(), 1);
/// # Ok::<(), sugaring::Error>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct DayInputs {
    /// Version of this shape; 1.
    #[cfg_attr(feature = "schema", schemars(default))]
    pub schema_version: u32,
    /// Printed on top; to 80 characters.
    pub title: Option<String>,
    /// `YYYY-MM-DDThh:mm`; printed and counted from, never compared with a clock.
    pub start: Option<String>,
    /// Seed of the draws behind the ranges; default 1.
    pub seed: Option<u64>,
    /// Number of draws behind the ranges, 0 to 1 000 000; 0 leaves the ranges out; default 1000.
    pub samples: Option<u32>,
    /// Today's air.
    pub air: Air,
    /// The lots of sap, one at least.
    pub sap: Vec<Sap>,
    /// The membrane rig; without it raw sap is boiled.
    pub membrane: Option<Membrane>,
    /// The big pan and its fire.
    pub evaporator: Evaporator,
    /// The small pan; without it the plan ends at the draw.
    pub finishing: Option<Finishing>,
    /// When the syrup is done.
    pub target: Target,
    /// Instruments at hand, by name; default a Brix hydrometer for 60 °F.
    #[cfg_attr(feature = "schema", schemars(default, with = "super::schema::ByName<Instrument>"))]
    pub instruments: Vec<(String, Instrument)>,
    /// Containers at hand; without them there is no packing step.
    #[cfg_attr(feature = "schema", schemars(default))]
    pub containers: Vec<Container>,
    /// Temperature at which the containers are filled; default 85 °C.
    pub fill_temperature: Option<Given<Temperature>>,
    /// Price of electricity.
    pub electricity: Option<Price>,
    /// Price of an hour of work.
    pub labour: Option<Price>,
}

impl DayInputs {
    /// The least a day needs: air, sap, pan and target.
    pub fn new(air: impl Into<Air>, sap: Vec<Sap>, pan: impl Into<Evaporator>, target: Target) -> Self {
        Self {
            schema_version: super::SCHEMA_VERSION,
            title: None,
            start: None,
            seed: None,
            samples: None,
            air: air.into(),
            sap,
            membrane: None,
            evaporator: pan.into(),
            finishing: None,
            target,
            instruments: Vec::new(),
            containers: Vec::new(),
            fill_temperature: None,
            electricity: None,
            labour: None,
        }
    }

    /// With an instrument at hand, under its name.
    #[must_use]
    pub fn with_instrument(mut self, name: &str, instrument: impl Into<Instrument>) -> Self {
        self.instruments.push((name.to_string(), instrument.into()));
        self
    }

    /// With the containers at hand.
    #[must_use]
    pub fn with_containers(mut self, containers: Vec<Container>) -> Self {
        self.containers = containers;
        self
    }
}

/// Today's air: one reading at least; the first that stands, in this order, is used, the others are checks.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Air {
    /// What plain water boils at, here, now: the best reading.
    pub water_boils_at: Option<Given<Temperature>>,
    /// A barometer in the sugarhouse, not adjusted to sea level.
    pub station_pressure: Option<Given<Pressure>>,
    /// The airport's or home station's number; needs the altitude.
    pub altimeter_setting: Option<Given<Pressure>>,
    /// The weather map's number; needs the altitude and the air temperature.
    pub sea_level_pressure: Option<Given<Pressure>>,
    /// Altitude of the sugarhouse; alone it leaves the weather out.
    pub altitude: Option<Given<Length>>,
    /// Mean temperature of the air over the last 12 hours.
    pub air_temperature: Option<Given<Temperature>>,
    /// How a typed pressure was come by.
    #[cfg_attr(feature = "schema", schemars(skip))]
    pub(super) typed: Option<StationPressure>,
}

impl From<StationPressure> for Air {
    fn from(station: StationPressure) -> Self {
        Self {
            typed: Some(station),
            ..Self::default()
        }
    }
}

/// A lot of sap.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Sap {
    /// Its name; numbered where it has none.
    pub name: Option<String>,
    /// Its volume at its own temperature; or `mass`.
    pub volume: Option<Given<Volume>>,
    /// Its mass; or `volume`.
    pub mass: Option<Given<Mass>>,
    /// Its true °Brix; or `reading`.
    pub brix: Option<Given<Brix>>,
    /// What an instrument showed; or `brix`.
    pub reading: Option<SapReading>,
    /// Its temperature.
    pub temperature: Option<Given<Temperature>>,
}

/// What an instrument of the day showed in the sap.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct SapReading {
    /// The number on the instrument's own scale.
    pub value: f64,
    /// The instrument's name among `instruments`.
    pub instrument: String,
    /// Temperature of the sap in a hydrometer's jar, of the prism of a refractometer; default the sap's.
    pub temperature: Option<Given<Temperature>>,
}

impl Sap {
    /// A volume of sap, true °Brix, its temperature.
    pub fn of_volume(
        volume: impl Into<Given<Volume>>,
        brix: impl Into<Given<Brix>>,
        temperature: impl Into<Given<Temperature>>,
    ) -> Self {
        Self {
            volume: Some(volume.into()),
            brix: Some(brix.into()),
            temperature: Some(temperature.into()),
            ..Self::default()
        }
    }

    /// A mass of sap, true °Brix, its temperature.
    pub fn of_mass(
        mass: impl Into<Given<Mass>>,
        brix: impl Into<Given<Brix>>,
        temperature: impl Into<Given<Temperature>>,
    ) -> Self {
        Self {
            mass: Some(mass.into()),
            brix: Some(brix.into()),
            temperature: Some(temperature.into()),
            ..Self::default()
        }
    }

    /// A volume of sap, as the named instrument read it at the sap's temperature.
    pub fn as_read(
        volume: impl Into<Given<Volume>>,
        reading: crate::instrument::Reading,
        instrument: &str,
        temperature: impl Into<Given<Temperature>>,
    ) -> Self {
        Self {
            volume: Some(volume.into()),
            reading: Some(SapReading {
                value: reading.get(),
                instrument: instrument.to_string(),
                temperature: None,
            }),
            temperature: Some(temperature.into()),
            ..Self::default()
        }
    }

    /// Under a name of its own.
    #[must_use]
    pub fn with_name(mut self, name: &str) -> Self {
        self.name = Some(name.to_string());
        self
    }
}

/// The membrane rig and how it is run.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Membrane {
    /// One element, from its label.
    pub element: Element,
    /// Housings side by side, 1 to 64; default 1.
    pub parallel: Option<u32>,
    /// Elements one after another, 1 to 8; default 1.
    pub series: Option<u32>,
    /// Pressure on the gauge.
    pub pressure: Given<GaugePressure>,
    /// What the rig's weakest part allows; without it nothing is checked.
    pub pressure_limit: Option<Given<GaugePressure>>,
    /// The pump.
    pub pump: Option<Pump>,
    /// How permeance falls in the cold; default the makers' formula.
    pub temperature_model: Option<TemperatureModel>,
    /// How sugar gathers at the membrane; default a film anchored at the rating.
    pub polarisation: Option<Polarisation>,
    /// Factor on the film, 0.1 to 4; default 1.
    pub film_factor: Option<Given<Ratio>>,
    /// Share of the sugar that the membrane keeps, 0.5 to 1; default 1.
    pub retention: Option<Given<Ratio>>,
    /// Pressure lost along one element, to 2 bar; default none.
    pub element_drop: Option<Given<Pressure>>,
    /// Pressure lost in the prefilter, to 2 bar; default none.
    pub prefilter_drop: Option<Given<Pressure>>,
    /// Pressure on the permeate, to 2 bar; default none.
    pub back_pressure: Option<Given<Pressure>>,
    /// Volume that stays in the housings, to 100 L; default none.
    pub hold_up: Option<Given<Volume>>,
    /// Share of the sap volume kept as permeate for the rinse; default 15 %.
    pub rinse: Option<Given<Ratio>>,
    /// Whether the hours count the warming of the tank; default not.
    pub warming: Option<Warming>,
    /// How it is run.
    pub run: Run,
}

/// A membrane element as its label describes it.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Element {
    /// Permeate flow of the rating test.
    pub flow: Given<crate::units::Flow>,
    /// Pressure of the rating test.
    pub pressure: Given<GaugePressure>,
    /// Temperature of the rating test.
    pub temperature: Given<Temperature>,
    /// Salt in the water of the rating test.
    pub salt: Given<crate::units::Concentration>,
    /// Recovery of the rating test.
    pub recovery: Given<Ratio>,
    /// Rejection of the rating test.
    pub rejection: Given<Ratio>,
    /// Permeance from your own test; the rating then only anchors the film.
    pub permeance: Option<Given<Permeance>>,
}

/// The pump: a flow or a table of points, an efficiency or a power.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Pump {
    /// Its flow at the pressure of the run; default 250 L/h an element.
    pub flow: Option<Given<crate::units::Flow>>,
    /// Its flow at several pressures, in place of one flow.
    #[cfg_attr(feature = "schema", schemars(default))]
    pub points: Vec<PumpPoint>,
    /// Efficiency of pump and motor; default 35 %.
    pub efficiency: Option<Given<Ratio>>,
    /// Electrical power, in place of an efficiency.
    pub power: Option<Given<Power>>,
}

/// A point of a pump's curve.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct PumpPoint {
    /// At this pressure.
    pub pressure: Given<GaugePressure>,
    /// It delivers this flow.
    pub flow: Given<crate::units::Flow>,
    /// And draws this electrical power.
    pub power: Option<Given<Power>>,
}

/// How permeance depends on temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum TemperatureModel {
    /// The formula that makers publish.
    Makers,
    /// The same with one constant, in kelvin.
    Single(f64),
    /// By the viscosity of water.
    Viscosity,
    /// 3 % a kelvin.
    PerDegree,
}

/// How sugar gathers at the membrane.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum Polarisation {
    /// A film anchored at the rating, times `film_factor`.
    RatingAnchored,
    /// A fixed ratio of the °Brix at the wall.
    Modulus(f64),
    /// A fixed film coefficient times area of one element, in m³/s.
    Coefficient(f64),
    /// None.
    None,
}

/// Whether the tank's warming is counted in the hours.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum Warming {
    /// The hours at the tank's first temperature; the warming is reported beside them.
    Isothermal,
    /// The hours with the warming.
    Coupled,
}

/// How the rig is run.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum Run {
    /// The concentrate goes back to the tank until an aim is met.
    RecirculateUntil(Until),
    /// Once through, at this share of permeate.
    SinglePass {
        /// Permeate volume per feed volume.
        recovery: Given<Ratio>,
    },
}

/// When recirculation ends.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum Until {
    /// At this °Brix of the tank.
    Brix(Given<Brix>),
    /// At this volume left in the tank.
    Volume(Given<Volume>),
    /// At this share of permeate per sap, by volume.
    Recovery(Given<Ratio>),
    /// After this time.
    Duration(Given<Time>),
}

/// The big pan, its fire and what stood in it.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Evaporator {
    /// The pan.
    pub pan: Pan,
    /// Heat into the liquid; default the rule by area for a flat pan.
    pub heat: Option<Heat>,
    /// What stood in the pan from before.
    pub left_in_pan: Option<LeftInPan>,
    /// The fire's fuel; default hardwood.
    pub fuel: Option<Fuel>,
}

/// The big pan.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Pan {
    /// Inner length, 50 mm to 20 m.
    pub length: Given<Length>,
    /// Inner width, 50 mm to 20 m.
    pub width: Given<Length>,
    /// Depth of the boiling liquid while topping up, 5 to 500 mm; default 50 mm.
    pub running_depth: Option<Given<Length>>,
    /// Least depth over the fire, 5 to 500 mm; default 25 mm.
    pub least_depth: Option<Given<Length>>,
    /// Of a typed pan; refused, because this version runs a pan as a batch.
    #[cfg_attr(feature = "schema", schemars(skip))]
    pub(super) sections: Option<u32>,
}

/// Heat into the liquid, however it is known.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum Heat {
    /// Cold water added to hold the level of boiling water.
    HeldLevel {
        /// Water added per time.
        added: Given<MassFlow>,
        /// Its temperature.
        feed_temperature: Given<Temperature>,
    },
    /// Water boiled off without any feed.
    LevelDrop(Given<MassFlow>),
    /// The heat itself.
    Power(Given<Power>),
    /// The rule by area, assumed.
    AreaRule(PanKind),
}

/// Kinds of pan of the rule by area.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum PanKind {
    /// A flat pan.
    Flat,
    /// A flat pan with a blower.
    FlatBlower,
    /// A flue pan.
    Flue,
}

/// What stood in the pan from before.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct LeftInPan {
    /// Its volume.
    pub volume: Given<Volume>,
    /// Its °Brix.
    pub brix: Given<Brix>,
    /// Its temperature.
    pub temperature: Given<Temperature>,
}

/// A fuel, how well it is used, what it costs.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Fuel {
    /// Wood; or `named`.
    pub wood: Option<Wood>,
    /// A fuel by name, such as `propane`; or `wood`.
    pub named: Option<String>,
    /// Share of the fuel's heat that reaches the liquid.
    pub efficiency: Option<Efficiency>,
    /// Price per any quantity of it.
    pub price: Option<Price>,
}

/// Wood.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Wood {
    /// Its species; default `hardwood`.
    pub species: Option<String>,
    /// Its moisture; default 25 % wet basis.
    pub moisture: Option<Moisture>,
}

/// Water in wood.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum Moisture {
    /// Water per total mass.
    WetBasis(Given<Ratio>),
    /// Water per dry mass, as pin meters show it.
    DryBasis(Given<Ratio>),
}

/// Heat into the liquid per heat of the fuel.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum Efficiency {
    /// Of the gross heat.
    OfGross(Given<Ratio>),
    /// Of the net heat.
    OfNet(Given<Ratio>),
}

/// The small pan that finishes.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Finishing {
    /// Heat into the syrup, 0.1 to 100 kW; default 3 kW.
    pub heat: Option<Given<Power>>,
    /// What it holds; unchecked where it is left out.
    pub capacity: Option<Given<Volume>>,
    /// Its fuel; default propane.
    pub fuel: Option<Fuel>,
}

/// When the syrup is done.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Target {
    /// °Brix of the syrup, 50 to 70.
    pub brix: Given<Brix>,
    /// How far above it to aim, 0 to 3 °Bx; default 0.
    pub guard: Option<Given<Brix>>,
    /// How much hotter than pure sucrose this syrup boils, 0 to 1 K; default 0.
    pub non_sucrose_rise: Option<Given<TemperatureDifference>>,
    /// Share of the syrup left in pans and filters, 0 to 0.2; default 0.
    pub sugar_lost: Option<Given<Ratio>>,
}

impl Target {
    /// Syrup of this °Brix.
    pub fn brix(brix: impl Into<Given<Brix>>) -> Self {
        Self {
            brix: brix.into(),
            guard: None,
            non_sucrose_rise: None,
            sugar_lost: None,
        }
    }
}

/// An instrument at hand.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum Instrument {
    /// A glass hydrometer.
    Hydrometer(Hydrometer),
    /// A refractometer.
    Refractometer(Refractometer),
}

/// A hydrometer.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Hydrometer {
    /// Its scale.
    pub scale: HydrometerScale,
    /// Temperature of its calibration.
    pub calibrated_at: Given<Temperature>,
    /// Cubical expansion of its glass; default 25e-6 per kelvin.
    pub glass_expansion: Option<Given<PerKelvin>>,
    /// What it reads too high, °Bx; default 0.
    pub offset: Option<f64>,
    /// Standard uncertainty of a reading, °Bx.
    pub uncertainty: Option<f64>,
}

/// Scales of a hydrometer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(rename_all = "snake_case")
)]
pub enum HydrometerScale {
    /// °Brix.
    Brix,
}

/// A refractometer that corrects itself for temperature.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Refractometer {
    /// Between which temperatures of its prism it does.
    pub compensated: Compensated,
    /// What it shows in water; default 0.
    pub zero: Option<f64>,
    /// Standard uncertainty of a reading, °Bx.
    pub uncertainty: Option<f64>,
}

/// The range of a refractometer's own correction.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Compensated {
    /// From this temperature of the prism.
    pub low: Given<Temperature>,
    /// To this temperature of the prism.
    pub high: Given<Temperature>,
}

/// A container at hand.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Container {
    /// Its name.
    pub name: Option<String>,
    /// Contents on the label, at 20 °C.
    pub volume: Given<Volume>,
    /// How many there are.
    pub stock: u32,
    /// What it holds to the brim.
    pub brimful: Option<Given<Volume>>,
    /// Its material, such as `glass`.
    pub material: Option<String>,
    /// Its own mass.
    pub mass: Option<Given<Mass>>,
    /// Its temperature before filling; default 20 °C.
    pub temperature: Option<Given<Temperature>>,
    /// Price of one.
    pub price: Option<Price>,
}

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

impl Fuel {
    /// Wood of a species, with its moisture.
    pub fn wood(species: &str, moisture: impl Into<Moisture>) -> Self {
        Self {
            wood: Some(Wood {
                species: Some(species.to_string()),
                moisture: Some(moisture.into()),
            }),
            ..Self::default()
        }
    }

    /// A fuel by name.
    #[must_use]
    pub fn named(name: &str) -> Self {
        Self {
            named: Some(name.to_string()),
            ..Self::default()
        }
    }
}

impl Container {
    /// Containers of a label volume, so many in stock.
    pub fn new(volume: impl Into<Given<Volume>>, stock: u32) -> Self {
        Self {
            name: None,
            volume: volume.into(),
            stock,
            brimful: None,
            material: None,
            mass: None,
            temperature: None,
            price: None,
        }
    }
}
