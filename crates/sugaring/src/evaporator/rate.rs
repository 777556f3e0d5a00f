use super::{
    boil::boil_at,
    boiling_line::{BoilingLine, Fineness},
    heat::{BALANCE, STATION},
};
use crate::{
    air::StationPressure,
    error::Error,
    lot::Lot,
    relation::{Range, Relation},
    sucrose,
    units::{Brix, MassFlow, Power, Si, Temperature, Value, table},
    water,
};

/// How a pan is fed while its rate is read; without it a rate means nothing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FeedCondition {
    /// Nothing is fed: the level drops.
    None,
    /// The level is held.
    Fed {
        /// °Brix of what is fed; 0 for water.
        feed: Brix,
        /// Its temperature.
        feed_temperature: Temperature,
        /// °Brix of what is drawn off as it comes; `None` while a batch is topped up.
        draw: Option<Brix>,
    },
}

/// Water that a heat boils off, with the pan fed as said.
///
/// `R = q / L` without feed;  `R = q / [L + h(B_f, T_b) − h(B_f, T_f)]` while topping up;
/// with a draw the feed is `F = R / (1 − B_f/B_d)`, and its whole boil counts.
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | q | heat into the liquid | kW | 0.001 to 1e5 |
/// | `B_f`, `T_f` | °Brix and temperature of the feed | °Bx, °C | 0 to 72, 0 to 100 |
/// | `B_d` | °Brix of the draw, above the feed's | °Bx | 0.5 to 72 |
/// | P | station pressure | kPa | 50 to 110 |
/// | L | latent heat where water boils | J/kg | |
///
/// # Errors
/// Out of range or not finite; inconsistent where the draw is not sweeter than the feed.
/// # Source
/// Heat balance.
/// # Examples
/// ```
/// use sugaring::{air::StationPressure, evaporator::{self, FeedCondition}, units::*};
/// let station = StationPressure::measured(kpa(96.5))?;
/// let cold = FeedCondition::Fed { feed: brix(0.0)?, feed_temperature: deg_c(4.0), draw: None };
/// let fed = evaporator::evaporation_rate(kw(22.337), &cold, station)?;
/// let unfed = evaporator::evaporation_rate(kw(22.337), &FeedCondition::None, station)?;
/// assert_eq!(format!("{:.2} {:.2}", fed.get::<kg_per_h>(), unfed.get::<kg_per_h>()), "30.27 35.58");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{air::StationPressure, evaporator::{self, FeedCondition}, units::*};
/// # let station = StationPressure::measured(kpa(96.5))?;
/// let odd = FeedCondition::Fed { feed: brix(8.0)?, feed_temperature: deg_c(4.0), draw: Some(brix(4.0)?) };
/// assert_eq!(
///     evaporator::evaporation_rate(kw(22.0), &odd, station).unwrap_err().to_string(),
///     "draw = 4 °Bx does not fit feed = 8 °Bx; what is drawn off is sweeter than what is fed",
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn evaporation_rate(heat: Power, feed: &FeedCondition, station: StationPressure) -> Result<MassFlow, Error> {
    let heat = EVAPORATION_RATE.check(0, heat.si())?;
    let pascal = EVAPORATION_RATE.check(4, station.pressure().si())?;
    Ok(MassFlow::of_si(heat / heat_per_water(feed, pascal)?))
}

/// J for each kilogram of water boiled off.
fn heat_per_water(feed: &FeedCondition, pascal: f64) -> Result<f64, Error> {
    let unsettled = || Error::no_convergence("temperature");
    let latent_heat = water::latent_heat_at(water::saturation_temperature_at(pascal));
    let FeedCondition::Fed {
        feed,
        feed_temperature,
        draw,
    } = *feed
    else {
        return Ok(latent_heat);
    };
    let brix = EVAPORATION_RATE.check(1, feed.get())?;
    let kelvin = EVAPORATION_RATE.check(2, feed_temperature.si())?;
    let boils = sucrose::boiling_at(brix, pascal).ok_or_else(unsettled)?;
    if kelvin > boils {
        let celsius = |si| table::deg_c.from_si(si);
        let limits = (celsius(kelvin), celsius(boils));
        return Err(
            Error::out_of_limits("feed_temperature", limits.0, &table::deg_c, 0.0, limits.1)
                .with_hint("it boils there at this pressure"),
        );
    }
    let Some(draw) = draw else {
        return Ok(latent_heat + BoilingLine::warming(brix, kelvin, boils));
    };
    let drawn = EVAPORATION_RATE.check(3, draw.get())?;
    if drawn <= brix {
        let shown = |x| table::deg_brix.show(x);
        let other = alloc::format!("feed = {}", shown(brix));
        return Err(Error::inconsistent("draw", &shown(drawn), &other)
            .with_hint("what is drawn off is sweeter than what is fed"));
    }
    if brix <= 0.0 {
        // Water leaves nothing to draw.
        return Ok(latent_heat + BoilingLine::warming(brix, kelvin, boils));
    }
    let kilogram = Lot::trusted(1.0, brix, kelvin);
    let boil = boil_at(&kilogram, drawn, pascal, Fineness::Full).ok_or_else(unsettled)?;
    Ok(boil.total() / boil.water)
}

/// What [`evaporation_rate`] covers.
pub static EVAPORATION_RATE: Relation = Relation {
    name: "evaporator::evaporation_rate",
    inputs: &[
        Range::new("heat", &table::kw, 0.001, 1e5),
        Range::new("feed", &table::deg_brix, 0.0, 72.0),
        Range::new("feed_temperature", &table::deg_c, 0.0, 100.0),
        Range::new("draw", &table::deg_brix, 0.5, 72.0),
        STATION,
    ],
    output: &table::kg_per_h,
    source: BALANCE,
    accuracy: "0.1 %; the heat itself 5 to 15 %",
};

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{brix, deg_c, kg_per_h, kpa, kw};
    use proptest::prelude::*;

    fn station() -> StationPressure {
        StationPressure::measured(kpa(96.5)).unwrap()
    }

    fn fed(feed: f64, celsius: f64, draw: Option<f64>) -> f64 {
        let condition = FeedCondition::Fed {
            feed: brix(feed).unwrap(),
            feed_temperature: deg_c(celsius),
            draw: draw.map(|b| brix(b).unwrap()),
        };
        let rate = evaporation_rate(kw(20.0), &condition, station()).unwrap();
        rate.get::<kg_per_h>()
    }

    proptest! {
        #[test]
        fn warmer_feed_boils_more(feed in 0.0..30.0_f64, celsius in 0.0..97.0_f64, step in 1e-3..1.0_f64) {
            prop_assert!(fed(feed, celsius + step, None) > fed(feed, celsius, None));
            let none = evaporation_rate(kw(20.0), &FeedCondition::None, station()).unwrap().get::<kg_per_h>();
            prop_assert!(none > fed(feed, celsius, None));
        }

        #[test]
        fn a_sweeter_draw_wastes_less(feed in 0.5..30.0_f64, draw in 31.0..71.0_f64) {
            prop_assert!(fed(feed, 4.0, Some(draw + 1.0)) > fed(feed, 4.0, Some(draw)));
            prop_assert!(fed(feed, 4.0, Some(draw)) < fed(feed, 4.0, None));
        }

        #[test]
        fn any_number_is_taken(a in any::<f64>(), b in any::<f64>(), c in any::<f64>()) {
            let feed = FeedCondition::Fed {
                feed: Brix::trusted(a),
                feed_temperature: deg_c(b),
                draw: Some(Brix::trusted(c)),
            };
            let _ = (evaporation_rate(kw(20.0), &feed, station()), evaporation_rate(kw(a), &FeedCondition::None, station()));
        }
    }
}
