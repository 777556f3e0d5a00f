use crate::{
    air::StationPressure,
    error::Error,
    relation::{Range, Relation, Source},
    units::{Area, MassFlow, Measured, Power, Si, Temperature, Value, measured, table},
    water,
};

/// Heat into the pan from a water test without feed: the level drops.
///
/// `q = ṁ L(t_s(P))`
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | ṁ | water boiled off, weighed or measured *cold* | kg/h | 0.01 to 1e5 |
/// | P | station pressure today | kPa | 50 to 110 |
/// | L | latent heat where water boils at P | J/kg | |
/// | q | heat into the liquid, standard uncertainty 5 % | kW | |
///
/// A drop read in the boiling pan is hot volume, 4 % more than cold.
///
/// # Errors
/// Out of range or not finite.
/// # Source
/// Heat balance; uncertainty of a careful test of half an hour or more, common practice.
/// # Examples
/// ```
/// use sugaring::{air::StationPressure, evaporator, units::*};
/// let station = StationPressure::measured(kpa(101.325))?;
/// let heat = evaporator::heat_from_level_drop(kg_per_h(30.0), station)?;
/// assert_eq!(format!("{:.2}", heat.value.get::<kw>()), "18.81");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{air::StationPressure, evaporator, units::*};
/// # let station = StationPressure::measured(kpa(101.325))?;
/// assert_eq!(
///     evaporator::heat_from_level_drop(kg_per_h(-3.0), station).unwrap_err().to_string(),
///     "evaporated = -3 kg/h is outside 0.01 to 100000 kg/h",
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn heat_from_level_drop(evaporated: MassFlow, station: StationPressure) -> Result<Measured<Power>, Error> {
    let rate = HEAT_FROM_LEVEL_DROP.check(0, evaporated.si())?;
    let pascal = HEAT_FROM_LEVEL_DROP.check(1, station.pressure().si())?;
    Ok(known_to(WATER_TEST, level_drop_heat_at(rate, pascal)))
}

/// Heat into the pan from a water test that holds the level with cold water.
///
/// `q = ṁ [L(t_s(P)) + h(t_s) − h(T)]`
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | ṁ | water added | kg/h | 0.01 to 1e5 |
/// | T | its temperature | °C | 0 to 80 |
/// | P | station pressure today | kPa | 50 to 110 |
/// | L, h | latent heat and enthalpy of water | J/kg | |
/// | q | heat into the liquid, standard uncertainty 5 % | kW | |
///
/// # Errors
/// Out of range or not finite.
/// # Source
/// Heat balance; uncertainty of a careful test of half an hour or more, common practice.
/// # Examples
/// ```
/// use sugaring::{air::StationPressure, evaporator, units::*};
/// let station = StationPressure::measured(kpa(96.5))?;
/// let heat = evaporator::heat_from_held_level(kg_per_h(30.0), deg_c(5.0), station)?;
/// assert_eq!(format!("{:.1}", heat.value.get::<kw>()), "22.1");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{air::StationPressure, evaporator, units::*};
/// # let station = StationPressure::measured(kpa(96.5))?;
/// assert_eq!(
///     evaporator::heat_from_held_level(kg_per_h(30.0), deg_c(-5.0), station).unwrap_err().to_string(),
///     "feed_temperature = -5 °C is outside 0 to 80 °C",
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn heat_from_held_level(
    added: MassFlow,
    feed_temperature: Temperature,
    station: StationPressure,
) -> Result<Measured<Power>, Error> {
    let rate = HEAT_FROM_HELD_LEVEL.check(0, added.si())?;
    let kelvin = HEAT_FROM_HELD_LEVEL.check(1, feed_temperature.si())?;
    let pascal = HEAT_FROM_HELD_LEVEL.check(2, station.pressure().si())?;
    Ok(known_to(WATER_TEST, held_level_heat_at(rate, kelvin, pascal)))
}

/// Heat into the pan from its plan area: what to assume before a water test.
///
/// q as [`heat_from_held_level`], with ṁ = g A · 998.2 kg/m³ and water at 4 °C
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | A | plan area of the pan | m² | 0.0025 to 400 |
/// | g | US gallons of 20 °C water an hour and square foot: flat 1, with a blower 1.5, flues 2 | | |
/// | q | heat into the liquid, standard uncertainty 15 % | kW | |
///
/// # Errors
/// Out of range or not finite.
/// # Source
/// Rule of thumb, ±30 % read as two standard deviations: 1 gallon for a flat pan as growers' pages have it, the others
/// common practice without a source. A rate without its feed is ambiguous; the feed of 4 °C is our reading.
/// # Examples
/// ```
/// use sugaring::{air::StationPressure, evaporator::{self, PanKind}, units::*};
/// let station = StationPressure::measured(kpa(96.5))?;
/// let heat = evaporator::heat_from_area(square_metre(0.7442), PanKind::Flat, station)?;
/// assert_eq!(format!("{:.2} ± {:.1}", heat.value.get::<kw>(), heat.uncertainty.get::<kw>()), "22.34 ± 3.4");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{air::StationPressure, evaporator::{self, PanKind}, units::*};
/// # let station = StationPressure::measured(kpa(96.5))?;
/// assert_eq!(
///     evaporator::heat_from_area(square_metre(0.0), PanKind::Flat, station).unwrap_err().to_string(),
///     "area = 0 m² is outside 0.0025 to 400 m²",
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn heat_from_area(area: Area, kind: PanKind, station: StationPressure) -> Result<Measured<Power>, Error> {
    let area = HEAT_FROM_AREA.check(0, area.si())?;
    let pascal = HEAT_FROM_AREA.check(1, station.pressure().si())?;
    Ok(known_to(AREA_RULE, area_heat_at(area, kind, pascal)))
}

/// Kinds of pan that [`heat_from_area`] knows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum PanKind {
    /// A flat pan.
    Flat,
    /// A flat pan with a blower, and preheating.
    FlatBlower,
    /// A flue pan.
    Flue,
}

impl PanKind {
    /// Its name in data.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Flat => "flat",
            Self::FlatBlower => "flat_blower",
            Self::Flue => "flue",
        }
    }

    /// m³ of 20 °C water per second and m²: US gallons an hour and square foot.
    const fn rate(self) -> f64 {
        let gallons = match self {
            Self::Flat => 1.0,
            Self::FlatBlower => 1.5,
            Self::Flue => 2.0,
        };
        gallons * table::gal_per_h.factor() / table::square_foot.factor()
    }
}

/// W from kg/s of water boiled off without feed.
pub(crate) fn level_drop_heat_at(rate: f64, pascal: f64) -> f64 {
    rate * water::latent_heat_at(water::saturation_temperature_at(pascal))
}

/// W from kg/s of water of `kelvin` that hold the level.
pub(crate) fn held_level_heat_at(rate: f64, kelvin: f64, pascal: f64) -> f64 {
    rate * heat_of_fed_water(kelvin, pascal)
}

/// W of a pan of `area` m² that nobody tested.
pub(crate) fn area_heat_at(area: f64, kind: PanKind, pascal: f64) -> f64 {
    held_level_heat_at(kind.rate() * area * WATER, COLD_FEED, pascal)
}

/// kg/s of water that `heat` W boils off while water of 4 °C holds the level.
pub(crate) fn water_rate_at(heat: f64, pascal: f64) -> f64 {
    heat / heat_of_fed_water(COLD_FEED, pascal)
}

/// J to warm a kilogram of water from `kelvin` and boil it off.
pub(super) fn heat_of_fed_water(kelvin: f64, pascal: f64) -> f64 {
    let boils = water::saturation_temperature_at(pascal);
    water::latent_heat_at(boils) + water::enthalpy_at(boils) - water::enthalpy_at(kelvin)
}

fn known_to(share: f64, heat: f64) -> Measured<Power> {
    measured(Power::of_si(heat), Power::of_si(share * heat))
}

/// What [`heat_from_level_drop`] covers.
pub static HEAT_FROM_LEVEL_DROP: Relation = Relation {
    name: "evaporator::heat_from_level_drop",
    inputs: &[Range::new("evaporated", &table::kg_per_h, 0.01, 1e5), STATION],
    output: &table::kw,
    source: BALANCE,
    accuracy: "0.02 % for the latent heat; the test itself 5 %",
};

/// What [`heat_from_held_level`] covers.
pub static HEAT_FROM_HELD_LEVEL: Relation = Relation {
    name: "evaporator::heat_from_held_level",
    inputs: &[
        Range::new("added", &table::kg_per_h, 0.01, 1e5),
        Range::new("feed_temperature", &table::deg_c, 0.0, 80.0),
        STATION,
    ],
    output: &table::kw,
    source: BALANCE,
    accuracy: "0.02 % for the latent heat; the test itself 5 %",
};

/// What [`heat_from_area`] covers.
pub static HEAT_FROM_AREA: Relation = Relation {
    name: "evaporator::heat_from_area",
    inputs: &[Range::new("area", &table::square_metre, 0.0025, 400.0), STATION],
    output: &table::kw,
    source: Source::CommonPractice,
    accuracy: "30 % (two standard deviations)",
};

pub(super) const STATION: Range = Range::new("station", &table::kpa, 50.0, 110.0);
pub(super) const BALANCE: Source = Source::Derived {
    text: "heat balance with the latent heat and the enthalpy of water",
};

/// Standard uncertainty of a careful water test; common practice.
const WATER_TEST: f64 = 0.05;
/// Standard uncertainty of the rule by area: ±30 % read as two.
const AREA_RULE: f64 = 0.15;
/// Water at 20 °C, kg/m³, in which the rule by area counts its gallons.
const WATER: f64 = 998.2;
/// The feed that the rule by area is read with, K: 4 °C.
pub(super) const COLD_FEED: f64 = 277.15;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{deg_c, kg_per_h, kpa, kw, square_metre};
    use proptest::prelude::*;

    #[test]
    fn each_way_says_how_well_it_is_known() {
        let station = StationPressure::measured(kpa(96.5)).unwrap();
        let share = |heat: Measured<Power>| heat.uncertainty.get::<kw>() / heat.value.get::<kw>();
        let area = heat_from_area(square_metre(0.7442), PanKind::Flat, station).unwrap();
        assert!((share(area) - 0.15).abs() < 1e-12);
        let held = heat_from_held_level(kg_per_h(30.0), deg_c(5.0), station).unwrap();
        let drop = heat_from_level_drop(kg_per_h(30.0), station).unwrap();
        assert!((share(held) - 0.05).abs() < 1e-12 && (share(drop) - 0.05).abs() < 1e-12);
    }

    proptest! {
        #[test]
        fn colder_feed_takes_more(rate in 0.1..1e4_f64, celsius in 0.0..79.0_f64, step in 1e-3..1.0_f64, p in 50.0..110.0_f64) {
            let station = StationPressure::measured(kpa(p)).unwrap();
            let fed = |celsius| heat_from_held_level(kg_per_h(rate), deg_c(celsius), station).unwrap().value;
            prop_assert!(fed(celsius) > fed(celsius + step));
            prop_assert!(fed(79.0) > heat_from_level_drop(kg_per_h(rate), station).unwrap().value);
        }

        #[test]
        fn area_and_water_rate_are_inverse(area in 0.01..100.0_f64, p in 50.0..110.0_f64) {
            let station = StationPressure::measured(kpa(p)).unwrap();
            let heat = heat_from_area(square_metre(area), PanKind::Flat, station).unwrap().value;
            let gallons = water_rate_at(heat.get::<kw>() * 1e3, p * 1e3) / WATER / table::gal_per_h.factor();
            prop_assert!((gallons * table::square_foot.factor() / area - 1.0).abs() < 1e-12);
        }

        #[test]
        fn any_number_is_taken(a in any::<f64>(), b in any::<f64>()) {
            let station = StationPressure::measured(kpa(96.5)).unwrap();
            let _ = (heat_from_level_drop(kg_per_h(a), station), heat_from_held_level(kg_per_h(a), deg_c(b), station));
            let _ = heat_from_area(square_metre(a), PanKind::Flue, station);
        }
    }
}
