use super::{
    Pan,
    boiling_line::{BoilingLine, Fineness},
    heat::STATION,
};
use crate::{
    air::StationPressure,
    error::Error,
    math,
    relation::{Range, Relation, Source},
    units::{Brix, Mass, Si, Value, table},
};

/// What stays in a continuous pan while it runs.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct HoldUp {
    /// Sugar in the pan.
    pub sugar: Mass,
    /// Liquid in the pan.
    pub mass: Mass,
    /// °Brix along the pan, on the mean.
    pub mean_brix: Brix,
}

impl Pan {
    /// Sugar that a continuous pan holds, from feed to draw-off: what must go in before the first draw.
    ///
    /// 1/B is linear along the pan:  `S = (V/100) ∫₀¹ ρ(B) B da`,  `1/B = (1 − a)/B_f + a/B_d`;
    /// `mean = B_f B_d ln(B_d/B_f) / (B_d − B_f)`.  With n mixed sections the integrals are sums over a = 1/n … 1.
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | V | hot volume at the running depth | m³ | |
    /// | `B_f`, `B_d` | °Brix of feed and draw | °Bx | 0.5 to 72 |
    /// | ρ | density at the boil | kg/m³ | |
    /// | n | sections of the pan; without them plug flow, the least a pan can hold | 1 | 1 to 1000 |
    ///
    /// # Errors
    /// Out of range or not finite.
    /// # Source
    /// Even evaporation along the pan. Real pans lie between plug flow and their number of compartments.
    /// # Examples
    /// ```
    /// use sugaring::{air::StationPressure, evaporator::Pan, units::*};
    /// let station = StationPressure::measured(kpa(96.5))?;
    /// let pan = Pan::new(metre(1.22), metre(0.61))?;
    /// let held = pan.hold_up(brix(4.0)?, brix(66.9)?, station)?;
    /// assert_eq!(format!("{:.2} kg at {:.2}", held.sugar.get::<kg>(), held.mean_brix), "4.70 kg at 11.98 °Bx");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{air::StationPressure, evaporator::Pan, units::*};
    /// # let station = StationPressure::measured(kpa(96.5))?;
    /// # let pan = Pan::new(metre(1.22), metre(0.61))?;
    /// assert_eq!(
    ///     pan.hold_up(brix(4.0)?, brix(2.0)?, station).unwrap_err().to_string(),
    ///     "draw = 2 °Bx is outside 4 to 72 °Bx",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn hold_up(&self, feed: Brix, draw: Brix, station: StationPressure) -> Result<HoldUp, Error> {
        let low = HOLD_UP.check(0, feed.get())?;
        let high = HOLD_UP.check(1, draw.get())?;
        let pascal = HOLD_UP.check(2, station.pressure().si())?;
        if high < low {
            return Err(Error::out_of_limits("draw", high, &table::deg_brix, low, STRONGEST));
        }
        let volume = self.area().si() * self.running_depth().si();
        let held = hold_up_at(volume, low, high, self.sections, pascal, Fineness::Full)
            .ok_or_else(|| Error::no_convergence("temperature"))?;
        Ok(HoldUp {
            sugar: Mass::of_si(held.sugar),
            mass: Mass::of_si(held.mass),
            mean_brix: Brix::trusted(held.mean_brix),
        })
    }
}

/// A hold-up in SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct HoldUpSi {
    pub(crate) sugar: f64,
    pub(crate) mass: f64,
    pub(crate) mean_brix: f64,
}

/// What `volume` m³ hold from `feed` to `draw` °Bx, no range check; plug flow without sections.
pub(crate) fn hold_up_at(
    volume: f64,
    feed: f64,
    draw: f64,
    sections: Option<u32>,
    pascal: f64,
    fineness: Fineness,
) -> Option<HoldUpSi> {
    let line = BoilingLine::new(pascal, feed, draw, fineness)?;
    match sections {
        Some(sections) => Some(in_sections(volume, feed, draw, sections, &line)),
        None => Some(in_plug_flow(volume, feed, draw, &line)),
    }
}

fn in_plug_flow(volume: f64, feed: f64, draw: f64, line: &BoilingLine) -> HoldUpSi {
    let spread = math::ln(draw / feed);
    // da = B_f B_d / (B_d − B_f) · d ln B / B, whose limit at equal strengths is B d ln B / ln(B_d / B_f).
    let mean_brix = if spread < ALIKE {
        feed
    } else {
        feed * draw * spread / (draw - feed)
    };
    let along = |part: f64, divided: bool| {
        let brix = feed * math::exp(part * spread);
        line.density(brix) / if divided { brix } else { 1.0 }
    };
    let density = line.rule.integrate(|part| along(part, false), 0.0, 1.0);
    let by_brix = line.rule.integrate(|part| along(part, true), 0.0, 1.0);
    HoldUpSi {
        sugar: volume * mean_brix * density / 100.0,
        mass: volume * mean_brix * by_brix,
        mean_brix,
    }
}

fn in_sections(volume: f64, feed: f64, draw: f64, sections: u32, line: &BoilingLine) -> HoldUpSi {
    let each = 1.0 / f64::from(sections);
    let mut held = HoldUpSi {
        sugar: 0.0,
        mass: 0.0,
        mean_brix: 0.0,
    };
    for section in 1..=sections {
        let along = f64::from(section) * each;
        let brix = 1.0 / ((1.0 - along) / feed + along / draw);
        let mass = volume * each * line.density(brix);
        held.sugar += mass * brix / 100.0;
        held.mass += mass;
        held.mean_brix += brix * each;
    }
    held
}

/// What [`Pan::hold_up`] covers.
pub static HOLD_UP: Relation = Relation {
    name: "evaporator::Pan::hold_up",
    inputs: &[
        Range::new("feed", &table::deg_brix, 0.5, STRONGEST),
        Range::new("draw", &table::deg_brix, 0.5, STRONGEST),
        STATION,
    ],
    output: &table::kg,
    source: Source::Derived {
        text: "mass balance with even evaporation along the pan",
    },
    accuracy: "0.5 % for the hot density; plug flow is the least a pan can hold",
};

const STRONGEST: f64 = 72.0;
/// ln of a ratio below which two strengths count as one.
const ALIKE: f64 = 1e-9;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{brix, kpa, metre};
    use proptest::prelude::*;

    fn held(feed: f64, draw: f64, sections: Option<u32>) -> HoldUp {
        let pan = Pan::new(metre(1.22), metre(0.61)).unwrap();
        let pan = sections.map_or(pan, |n| pan.with_sections(n).unwrap());
        let station = StationPressure::measured(kpa(96.5)).unwrap();
        pan.hold_up(brix(feed).unwrap(), brix(draw).unwrap(), station).unwrap()
    }

    proptest! {
        #[test]
        fn more_sections_hold_less(feed in 0.5..30.0_f64, draw in 31.0..72.0_f64, n in 1_u32..50) {
            let (few, more, plug) = (held(feed, draw, Some(n)), held(feed, draw, Some(n + 1)), held(feed, draw, None));
            prop_assert!(few.sugar > more.sugar && more.sugar > plug.sugar);
            prop_assert!(few.mass > more.mass && more.mass > plug.mass);
        }

        #[test]
        fn many_sections_are_plug_flow(feed in 2.0..30.0_f64, draw in 31.0..72.0_f64) {
            let (many, plug) = (held(feed, draw, Some(1000)), held(feed, draw, None));
            prop_assert!((many.sugar / plug.sugar).si() - 1.0 < 0.03);
        }

        #[test]
        fn equal_strengths_are_a_limit(feed in 0.5..71.0_f64, tiny in 0.0..1e-7_f64) {
            let (alike, nearly) = (held(feed, feed, None), held(feed, feed + tiny, None));
            prop_assert!(((alike.sugar / nearly.sugar).si() - 1.0).abs() < 1e-6);
        }

        #[test]
        fn any_number_is_taken(a in any::<f64>(), b in any::<f64>(), n in any::<u32>()) {
            let pan = Pan::new(metre(1.22), metre(0.61)).unwrap();
            let station = StationPressure::measured(kpa(96.5)).unwrap();
            let _ = (pan.hold_up(Brix::trusted(a), Brix::trusted(b), station), pan.with_sections(n));
            let _ = (Pan::new(metre(a), metre(b)), pan.with_running_depth(metre(a)), pan.with_least_depth(metre(b)));
        }
    }
}
