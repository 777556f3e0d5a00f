//! A batch boil in SI: fill and heat up, top up at a constant level, boil down to the least depth.

use alloc::format;

use super::boiling_line::{BoilingLine, Fineness};
use crate::{digits, error::Error, lot::Lot, solve, sucrose, units::table};

/// What a pan's depths come to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct PanShape {
    /// Plan area, m².
    pub(crate) area: f64,
    /// m.
    pub(crate) running_depth: f64,
    /// m, at most the running depth.
    pub(crate) least_depth: f64,
}

/// What happens in a stage of a batch boil.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum StageKind {
    /// The first fill comes to the boil.
    HeatUp,
    /// The level is held from the tank.
    TopUp,
    /// The pan is at the target while the tank still lasts: syrup is drawn off as it comes, the level held.
    DrawOff,
    /// The tank is empty: the level falls.
    BoilDown,
}

impl StageKind {
    /// Its name in data.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::HeatUp => "heat_up",
            Self::TopUp => "top_up",
            Self::DrawOff => "draw_off",
            Self::BoilDown => "boil_down",
        }
    }
}

/// A stage, with what its heat went to and the state at its end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct StageSi {
    pub(crate) kind: StageKind,
    /// s
    pub(crate) duration: f64,
    /// Heat used, J: the sum of the three that follow.
    pub(crate) heat: f64,
    /// To steam.
    pub(crate) evaporation: f64,
    /// To bring what was fed to the boil.
    pub(crate) feed_warming: f64,
    /// To keep what stands in the pan on the boil.
    pub(crate) pan_warming: f64,
    /// Boiled off, kg.
    pub(crate) water: f64,
    /// Fed, kg.
    pub(crate) fed: f64,
    /// Drawn off, kg.
    pub(crate) drawn: f64,
    /// In the pan at the end.
    pub(crate) brix: f64,
    pub(crate) mass: f64,
    /// m, hot
    pub(crate) depth: f64,
    /// K
    pub(crate) kelvin: f64,
}

/// A batch boil.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Batch {
    stages: [Option<StageSi>; 3],
    /// °Bx of what is drawn off.
    pub(crate) ends_at: f64,
    /// Whether that is the target.
    pub(crate) finishes: bool,
    /// Feed of the first fill at its own temperature, m³.
    pub(crate) first_fill: f64,
    /// Hot volume at the running depth, m³.
    pub(crate) running_volume: f64,
    /// s
    pub(crate) duration: f64,
    /// J
    pub(crate) heat: f64,
    /// Boiled off, kg.
    pub(crate) water: f64,
    /// Heat of steam for every kilogram, J/kg.
    pub(crate) latent_heat: f64,
    /// All that is drawn off, kg; it boils at `kelvin` and is then `volume` m³.
    pub(crate) mass: f64,
    pub(crate) kelvin: f64,
    pub(crate) volume: f64,
    /// How deep all the syrup would stand in this pan, m.
    pub(crate) depth_if_finished: f64,
}

impl Batch {
    /// The stages that there are, in order.
    pub(crate) fn stages(&self) -> impl Iterator<Item = &StageSi> {
        self.stages.iter().flatten()
    }
}

/// The boil of `feed`, with what stood in the pan, to `target` °Bx at `heat` W; no range check.
///
/// # Errors
/// Unreachable: too little to keep the least depth. Inconsistent: what stood in the pan is too much or too strong.
pub(crate) fn batch_at(
    shape: &PanShape,
    heat: f64,
    feed: &Lot,
    left: Option<&Lot>,
    target: f64,
    pascal: f64,
    fineness: Fineness,
) -> Result<Batch, Error> {
    let strengths = left.map_or((feed.brix, feed.brix), |l| {
        (feed.brix.min(l.brix), feed.brix.max(l.brix))
    });
    let line = BoilingLine::new(pascal, strengths.0, strengths.1.max(target), fineness)
        .ok_or_else(|| Error::no_convergence("temperature"))?;
    let kettle = Kettle {
        shape,
        heat,
        feed,
        left,
        target,
        line: &line,
    };
    kettle.boil()
}

/// One boil with all it needs.
struct Kettle<'a> {
    shape: &'a PanShape,
    heat: f64,
    feed: &'a Lot,
    left: Option<&'a Lot>,
    target: f64,
    line: &'a BoilingLine,
}

/// What stands in the pan: sugar and mass, kg.
#[derive(Clone, Copy)]
struct Content {
    sugar: f64,
    mass: f64,
}

impl Content {
    fn brix(self) -> f64 {
        100.0 * self.sugar / self.mass
    }
}

impl Kettle<'_> {
    fn boil(&self) -> Result<Batch, Error> {
        let sugar = self.holding(self.feed.mass).sugar;
        let running = self.shape.area * self.shape.running_depth;
        let fed = self.first_fill(running)?;
        let start = self.holding(fed);
        if start.brix() >= self.target {
            return Err(self.too_strong(start.brix()));
        }
        let (heat_up, excess) = self.heat_up(fed, start);
        let tank = self.feed.mass - fed;
        let (second, third) = if tank > 0.0 {
            self.top_up(start, sugar, tank, running, excess)?
        } else {
            (None, self.boil_down(start, excess)?)
        };
        let stages = [Some(heat_up), second, third];
        let ends_at = stages.iter().flatten().last().map_or(f64::NAN, |stage| stage.brix);
        let kelvin = self.line.kelvin(ends_at);
        let mass = 100.0 * sugar / ends_at;
        let volume = |brix: f64| 100.0 * sugar / (brix * self.line.density(brix));
        let sum = |part: fn(&StageSi) -> f64| stages.iter().flatten().map(part).sum();
        Ok(Batch {
            stages,
            ends_at,
            finishes: ends_at >= self.target,
            first_fill: fed / sucrose::density_at(self.feed.brix, self.feed.kelvin),
            running_volume: running,
            duration: sum(|stage| stage.duration),
            heat: sum(|stage| stage.heat),
            water: sum(|stage| stage.water),
            latent_heat: self.line.latent_heat,
            mass,
            kelvin,
            volume: volume(ends_at),
            depth_if_finished: volume(self.target) / self.shape.area,
        })
    }

    /// What the pan holds once `fed` kg of the feed are in it.
    fn holding(&self, fed: f64) -> Content {
        let of_feed = fed * self.feed.brix / 100.0;
        match self.left {
            Some(left) => Content {
                sugar: of_feed + left.sugar_si(),
                mass: fed + left.mass,
            },
            None => Content {
                sugar: of_feed,
                mass: fed,
            },
        }
    }

    /// Hot volume of a content, m³.
    fn volume(&self, content: Content) -> f64 {
        content.mass / self.line.density(content.brix())
    }

    /// Feed that makes the pan full when it boils, or all of it.
    fn first_fill(&self, running: f64) -> Result<f64, Error> {
        if let Some(left) = self.left {
            let stands = self.volume(self.holding(0.0));
            if stands > running {
                return Err(self.too_much(left, stands, running));
            }
        }
        let all = self.volume(self.holding(self.feed.mass));
        if all < self.shape.area * self.shape.least_depth {
            return Err(self.too_little(all));
        }
        if all <= running {
            return Ok(self.feed.mass);
        }
        match self.left {
            None => Ok(running * self.line.density(self.feed.brix)),
            Some(_) => self.fill_to(running),
        }
    }

    /// Feed with which all that is in the pan has the hot volume `volume`.
    fn fill_to(&self, volume: f64) -> Result<f64, Error> {
        let most = 2.0 * volume * self.line.density(self.feed.brix) + self.feed.mass;
        let over = |fed: f64| self.volume(self.holding(fed)) - volume;
        settled(solve::root(over, 0.0, most, 0.0), "first_fill")
    }

    /// The stage, and the heat (negative) that hot contents of the pan bring along beyond it.
    fn heat_up(&self, fed: f64, content: Content) -> (StageSi, f64) {
        let kelvin = self.line.kelvin(content.brix());
        let feed_warming = fed * BoilingLine::warming(self.feed.brix, self.feed.kelvin, kelvin);
        let pan_warming = self.left.map_or(0.0, |left| {
            left.mass * BoilingLine::warming(left.brix, left.kelvin, kelvin)
        });
        let excess = (feed_warming + pan_warming).min(0.0);
        let stage = self.stage(StageKind::HeatUp, content, 0.0, feed_warming, pan_warming - excess);
        (StageSi { fed, ..stage }.timed(self.heat), excess)
    }

    /// Topping up until the tank is empty, then the rest; or until the target, then drawing off.
    fn top_up(
        &self,
        start: Content,
        sugar: f64,
        tank: f64,
        volume: f64,
        excess: f64,
    ) -> Result<(Option<StageSi>, Option<StageSi>), Error> {
        let at_target = self.filled(volume, self.target);
        if at_target.sugar <= sugar {
            let fed = 100.0 * (at_target.sugar - start.sugar) / self.feed.brix;
            let second = self.topped_up(start, at_target, fed, volume, excess);
            let third = self.draw_off(at_target, tank - fed);
            return Ok((Some(second), Some(third)));
        }
        let brix = self.strength(sugar, volume, start.brix())?;
        let full = Content {
            sugar,
            mass: 100.0 * sugar / brix,
        };
        let second = self.topped_up(start, full, tank, volume, excess);
        Ok((Some(second), self.boil_down(full, 0.0)?))
    }

    /// q dt = L dW + [h(B_c, T_b) − h(B_c, T_c)] dF + m c dT_b at a constant hot volume.
    fn topped_up(&self, start: Content, end: Content, fed: f64, volume: f64, excess: f64) -> StageSi {
        let (low, high) = (start.brix(), end.brix());
        let line = self.line;
        let water = start.mass + fed - end.mass;
        let dry = start.sugar;
        // Both small integrals run over T_b; the feed's is taken by parts, so that no density is differentiated.
        let along = |brix: f64| {
            let kelvin = line.kelvin(brix);
            let mass = volume * sucrose::density_at(brix, kelvin);
            let came = (mass * brix - 100.0 * dry) / self.feed.brix;
            let pan = mass * sucrose::specific_heat_at(brix, kelvin);
            let late = came * sucrose::specific_heat_at(self.feed.brix, kelvin);
            let slope = line.slope(brix);
            (pan * slope, late * slope)
        };
        let pan_warming = line.rule.integrate(|brix| along(brix).0, low, high);
        let late = line.rule.integrate(|brix| along(brix).1, low, high);
        let feed_warming = fed * BoilingLine::warming(self.feed.brix, self.feed.kelvin, line.kelvin(high)) - late;
        let stage = self.stage(StageKind::TopUp, end, water, feed_warming, pan_warming + excess);
        StageSi { fed, ..stage }.timed(self.heat)
    }

    /// The mixed pan at the target: what is fed leaves as steam and syrup.
    fn draw_off(&self, pan: Content, fed: f64) -> StageSi {
        let drawn = fed * self.feed.brix / self.target;
        let kelvin = self.line.kelvin(self.target);
        let feed_warming = fed * BoilingLine::warming(self.feed.brix, self.feed.kelvin, kelvin);
        let stage = self.stage(StageKind::DrawOff, pan, fed - drawn, feed_warming, 0.0);
        StageSi { fed, drawn, ..stage }.timed(self.heat)
    }

    /// q dt = L dW + m c dT_b, down to the least depth or to the target, whichever comes first.
    fn boil_down(&self, start: Content, excess: f64) -> Result<Option<StageSi>, Error> {
        let least = self.shape.area * self.shape.least_depth;
        let from = start.brix();
        let brix = if self.filled(least, self.target).sugar <= start.sugar {
            self.target
        } else {
            self.strength(start.sugar, least, from)?
        };
        let end = Content {
            sugar: start.sugar,
            mass: 100.0 * start.sugar / brix,
        };
        if end.mass >= start.mass {
            return Ok(None);
        }
        let climb = self.line.climb(start.sugar, from, brix);
        let stage = self.stage(StageKind::BoilDown, end, start.mass - end.mass, 0.0, climb + excess);
        Ok(Some(stage.timed(self.heat)))
    }

    /// What fills `volume` with boiling liquid of `brix`.
    fn filled(&self, volume: f64, brix: f64) -> Content {
        let mass = volume * self.line.density(brix);
        Content {
            sugar: mass * brix / 100.0,
            mass,
        }
    }

    /// °Bx at which `sugar` fills `volume`, from `low` up to the target.
    fn strength(&self, sugar: f64, volume: f64, low: f64) -> Result<f64, Error> {
        let over = |brix: f64| self.filled(volume, brix).sugar - sugar;
        // At the lower end of the line the sugar may just fill the volume.
        if over(low) >= 0.0 {
            return Ok(low);
        }
        settled(solve::root(over, low, self.target, 0.0), "brix")
    }

    fn stage(&self, kind: StageKind, end: Content, water: f64, feed_warming: f64, pan_warming: f64) -> StageSi {
        let brix = end.brix();
        let kelvin = self.line.kelvin(brix);
        let evaporation = self.line.latent_heat * water;
        StageSi {
            kind,
            duration: 0.0,
            heat: evaporation + feed_warming + pan_warming,
            evaporation,
            feed_warming,
            pan_warming,
            water,
            fed: 0.0,
            drawn: 0.0,
            brix,
            mass: end.mass,
            depth: end.mass / (sucrose::density_at(brix, kelvin) * self.shape.area),
            kelvin,
        }
    }

    #[cold]
    fn too_little(&self, stands: f64) -> Error {
        let litres = |mass: f64| table::litre.from_si(mass / sucrose::density_at(self.feed.brix, self.feed.kelvin));
        let least = self.shape.area * self.shape.least_depth;
        let enough = match self.left {
            None => least * self.line.density(self.feed.brix),
            Some(_) => self.fill_to(least).unwrap_or(f64::NAN),
        };
        let with = if self.left.is_some() {
            ", with what is in it,"
        } else {
            ""
        };
        let hint = format!(
            "{} L of sap{with} stand {} mm deep in this pan when hot: use a smaller pan, or collect {} L",
            digits::significant(litres(self.feed.mass), 4),
            digits::significant(table::mm.from_si(stands / self.shape.area), 4),
            digits::lower_limit(litres(enough), 4)
        );
        let depth = table::mm.from_si(self.shape.least_depth);
        Error::unkeepable("least_depth", &table::mm.show(depth))
            .with_value(depth, &table::mm)
            .with_hint(hint)
    }

    #[cold]
    fn too_much(&self, left: &Lot, stands: f64, running: f64) -> Error {
        let litres = |si| digits::significant(table::litre.from_si(si), 4);
        let cold = table::litre.from_si(left.mass / sucrose::density_at(left.brix, left.kelvin));
        let depth = table::mm.show(table::mm.from_si(self.shape.running_depth));
        let hint = format!(
            "hot it is {} L and the pan holds {} L: draw some off first",
            litres(stands),
            litres(running)
        );
        Error::inconsistent(
            "left_in_pan.volume",
            &table::litre.show(cold),
            &format!("running_depth = {depth}"),
        )
        .with_value(cold, &table::litre)
        .with_hint(hint)
    }

    #[cold]
    fn too_strong(&self, brix: f64) -> Error {
        let shown = |brix| table::deg_brix.show(brix);
        let strongest = self.left.map_or(self.feed.brix, |left| left.brix);
        let argument = if self.left.is_some() {
            "left_in_pan.brix"
        } else {
            "lot.brix"
        };
        let hint = format!(
            "the pan is full at {} °Bx: draw it off first",
            digits::significant(brix, 4)
        );
        let other = format!("to_brix = {}", shown(self.target));
        Error::inconsistent(argument, &shown(strongest), &other)
            .with_value(strongest, &table::deg_brix)
            .with_hint(hint)
    }
}

impl StageSi {
    /// With the time that its heat takes.
    fn timed(self, power: f64) -> Self {
        Self {
            duration: self.heat.max(0.0) / power,
            ..self
        }
    }
}

fn settled(found: Option<solve::Found>, what: &'static str) -> Result<f64, Error> {
    match found {
        Some(found) if found.settled => Ok(found.at),
        _ => Err(Error::no_convergence(what)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const DEMO: PanShape = PanShape {
        area: 0.7442,
        running_depth: 0.05,
        least_depth: 0.025,
    };
    const FIRE: f64 = 22_337.0;

    fn lot(mass: f64, brix: f64, celsius: f64) -> Lot {
        Lot::trusted(mass, brix, celsius + 273.15)
    }

    fn demo(shape: &PanShape, feed: &Lot, left: Option<&Lot>, target: f64, fineness: Fineness) -> Batch {
        batch_at(shape, FIRE, feed, left, target, 96_500.0, fineness).unwrap()
    }

    /// The balances as they are written, in many small steps of °Brix and straight from the relations.
    fn plainly(feed: &Lot, target: f64) -> [f64; 3] {
        const STEPS: i32 = 4000;
        let boils = |brix: f64| sucrose::boiling_at(brix, 96_500.0).unwrap();
        let density = |brix: f64| sucrose::density_at(brix, boils(brix));
        let latent = crate::water::latent_heat_at(boils(0.0));
        let warm = |to: f64| sucrose::enthalpy_at(feed.brix, boils(to)) - sucrose::enthalpy_at(feed.brix, feed.kelvin);
        let (running, least) = (DEMO.area * DEMO.running_depth, DEMO.area * DEMO.least_depth);
        let filled = |volume: f64| {
            let over = |brix: f64| volume * density(brix) * brix / 100.0 - feed.sugar_si();
            solve::root(over, feed.brix, target, 0.0).unwrap().at
        };
        let (second, third) = (filled(running), filled(least));
        let first = running * density(feed.brix);
        // Simpson's rule with the differentials of the relations themselves.
        let integral = |low: f64, high: f64, part: &dyn Fn(f64, f64) -> f64| {
            let width = (high - low) / f64::from(STEPS);
            let cell = |i: i32| {
                let from = low + width * f64::from(i);
                let at = |x: f64| part(from + x * width, 1e-3);
                (at(0.0) + 4.0 * at(0.5) + at(1.0)) * width / 6.0
            };
            (0..STEPS).map(cell).sum::<f64>()
        };
        let slope = |f: &dyn Fn(f64) -> f64, x: f64, h: f64| {
            (8.0 * (f(x + h) - f(x - h)) - (f(x + 2.0 * h) - f(x - 2.0 * h))) / (12.0 * h)
        };
        let top_up = integral(feed.brix, second, &|brix, h| {
            let fed = slope(&|b| running * density(b) * b / feed.brix, brix, h);
            let mass = slope(&|b| running * density(b), brix, h);
            let climb = slope(&boils, brix, h) * sucrose::specific_heat_at(brix, boils(brix));
            latent * (fed - mass) + warm(brix) * fed + running * density(brix) * climb
        });
        let boil_down = integral(second, third, &|brix, h| {
            let mass = 100.0 * feed.sugar_si() / brix;
            let climb = slope(&boils, brix, h) * sucrose::specific_heat_at(brix, boils(brix));
            latent * mass / brix + mass * climb
        });
        [first * warm(feed.brix), top_up, boil_down]
    }

    #[test]
    fn stages_are_the_balances_plainly_evaluated() {
        for feed in [
            lot(132.166, 4.0, 3.716),
            lot(267.074, 1.979_47, 3.716),
            lot(60.0, 9.0, 20.0),
        ] {
            let plain = plainly(&feed, 66.9);
            for (fineness, close) in [(Fineness::Full, 1e-9), (Fineness::Draw, 1e-5)] {
                let boil = demo(&DEMO, &feed, None, 66.9, fineness);
                let heats: alloc::vec::Vec<f64> = boil.stages().map(|stage| stage.heat).collect();
                assert_eq!(heats.len(), 3);
                for (ours, plain) in heats.iter().zip(plain) {
                    assert!((ours / plain - 1.0).abs() < close, "{fineness:?} {ours} {plain}");
                }
            }
        }
    }

    #[test]
    fn what_stood_in_the_pan_joins_the_first_fill() {
        let (feed, left) = (lot(132.166, 4.0, 3.716), lot(20.0, 12.0, 5.0));
        let boil = demo(&DEMO, &feed, Some(&left), 66.9, Fineness::Full);
        let first = boil.stages().next().unwrap();
        assert!((first.mass - first.fed - 20.0).abs() < 1e-9);
        assert!((first.depth - 0.05).abs() < 1e-12);
        assert!((boil.mass * boil.ends_at / 100.0 - (132.166 * 0.04 + 2.4)).abs() < 1e-12);
    }

    #[test]
    fn the_texts_of_the_limits() {
        let text = |feed: &Lot, left: Option<&Lot>| {
            batch_at(&DEMO, FIRE, feed, left, 66.9, 96_500.0, Fineness::Full)
                .unwrap_err()
                .to_string()
        };
        let stands = Lot::of_volume(
            crate::units::litre(40.0),
            crate::units::brix(12.0).unwrap(),
            crate::units::deg_c(5.0),
        );
        assert_eq!(
            text(&lot(100.0, 2.0, 4.0), Some(&stands.unwrap())),
            "left_in_pan.volume = 40 L does not fit running_depth = 50 mm; hot it is 41.74 L and the pan holds \
             37.21 L: draw some off first"
        );
        assert_eq!(
            text(&lot(0.5, 2.0, 4.0), Some(&lot(43.0, 68.0, 50.0))),
            "left_in_pan.brix = 68 °Bx does not fit to_brix = 66.9 °Bx; the pan is full at 67.24 °Bx: draw it off first"
        );
        assert_eq!(
            text(&lot(5.0, 2.0, 4.0), Some(&lot(5.0, 8.0, 4.0))),
            "least_depth = 25 mm cannot be kept; 4.961 L of sap, with what is in it, stand 13.74 mm deep in this pan \
             when hot: use a smaller pan, or collect 13 L"
        );
    }

    #[test]
    fn a_small_pan_draws_off_while_it_is_fed() {
        let shape = PanShape { area: 0.1, ..DEMO };
        let feed = lot(300.0, 8.0, 4.0);
        let boil = demo(&shape, &feed, None, 66.9, Fineness::Full);
        let kinds: alloc::vec::Vec<StageKind> = boil.stages().map(|stage| stage.kind).collect();
        assert_eq!(kinds, [StageKind::HeatUp, StageKind::TopUp, StageKind::DrawOff]);
        assert!(boil.finishes);
        let drawn: f64 = boil.stages().map(|stage| stage.drawn).sum();
        let last = boil.stages().last().unwrap();
        assert!((drawn + last.mass - boil.mass).abs() < 1e-9);
        assert!((boil.water + boil.mass - 300.0).abs() < 1e-9);
    }

    #[test]
    fn a_level_that_must_not_fall_ends_with_the_tank() {
        let shape = PanShape {
            least_depth: 0.05,
            ..DEMO
        };
        let boil = demo(&shape, &lot(132.166, 4.0, 3.716), None, 66.9, Fineness::Full);
        assert!(boil.stages().all(|stage| stage.kind != StageKind::BoilDown));
        assert!((boil.ends_at - 14.0158).abs() < 1e-3);
    }

    #[test]
    fn hot_remains_save_fire() {
        // As much as the pan takes, boiling; a spoon of hot feed: no heat is needed, some is left over.
        let left = lot(37.0, 30.0, 99.0);
        let boil = demo(&DEMO, &lot(0.5, 29.0, 98.0), Some(&left), 66.9, Fineness::Full);
        for stage in boil.stages() {
            let parts = stage.evaporation + stage.feed_warming + stage.pan_warming;
            assert!(stage.heat >= 0.0 && (stage.heat - parts).abs() < 1e-9 * boil.heat);
        }
    }

    prop_compose! {
        fn any_boil()(
            area in 0.05..4.0_f64, running in 0.02..0.2_f64, least_share in 0.05..1.0_f64, fill in 1.02..40.0_f64,
            brix in 0.5..30.0_f64, celsius in 0.0..90.0_f64, target in 50.0..70.0_f64, pascal in 6e4..10.5e4_f64,
            heat in 1e3..1e6_f64, stands in 0.0..0.9_f64, strength in 0.5..40.0_f64, with_left in any::<bool>(),
        ) -> (PanShape, f64, Lot, Option<Lot>, f64, f64) {
            let shape = PanShape { area, running_depth: running, least_depth: running * least_share };
            let feed = lot(area * running * least_share * 1000.0 * fill, brix, celsius);
            let left = with_left.then(|| lot(area * running * stands * 960.0, strength, celsius));
            (shape, heat, feed, left, target, pascal)
        }
    }

    proptest! {
        #[test]
        fn nothing_is_lost((shape, heat, feed, left, target, pascal) in any_boil()) {
            let boil = batch_at(&shape, heat, &feed, left.as_ref(), target, pascal, Fineness::Full).unwrap();
            let nothing = lot(0.0, 1.0, 20.0);
            let left = left.unwrap_or(nothing);
            let (mass, sugar) = (feed.mass + left.mass, feed.sugar_si() + left.sugar_si());
            prop_assert!(((boil.water + boil.mass) / mass - 1.0).abs() < 1e-12);
            prop_assert!((boil.mass * boil.ends_at / 100.0 / sugar - 1.0).abs() < 1e-12);
            let fed: f64 = boil.stages().map(|stage| stage.fed).sum();
            prop_assert!((fed / feed.mass - 1.0).abs() < 1e-12);
            let (mut before, mut mass) = (left.mass, 0.0);
            for stage in boil.stages() {
                prop_assert!(stage.duration >= 0.0 && stage.water >= 0.0 && stage.drawn >= 0.0);
                prop_assert!(stage.depth <= shape.running_depth * (1.0 + 1e-9));
                let after = before + stage.fed - stage.water - stage.drawn;
                prop_assert!((stage.mass / after - 1.0).abs() < 1e-11);
                prop_assert!((stage.duration * heat - stage.heat).abs() <= 1e-9 * boil.heat);
                let parts = stage.evaporation + stage.feed_warming + stage.pan_warming;
                prop_assert!((stage.heat - parts).abs() <= 1e-9 * boil.heat);
                prop_assert!((stage.evaporation - boil.latent_heat * stage.water).abs() <= 1e-9 * boil.heat);
                (before, mass) = (after, stage.mass);
            }
            let last = boil.stages().last().unwrap();
            prop_assert!(last.depth >= shape.least_depth * (1.0 - 1e-9));
            prop_assert!(mass <= boil.mass * (1.0 + 1e-9));
            prop_assert!((boil.heat - boil.duration * heat).abs() <= 1e-9 * boil.heat);
        }

        #[test]
        fn draws_are_close((shape, heat, feed, left, target, pascal) in any_boil()) {
            let at = |fineness| batch_at(&shape, heat, &feed, left.as_ref(), target, pascal, fineness).unwrap();
            let (full, draw) = (at(Fineness::Full), at(Fineness::Draw));
            prop_assert!((draw.duration / full.duration - 1.0).abs() < 2e-5);
            prop_assert!((draw.ends_at / full.ends_at - 1.0).abs() < 2e-5);
        }

        #[test]
        fn more_heat_is_never_later((shape, heat, feed, left, target, pascal) in any_boil(), more in 1.0..2.0_f64) {
            let hours = |heat| batch_at(&shape, heat, &feed, left.as_ref(), target, pascal, Fineness::Draw).unwrap().duration;
            prop_assert!(hours(heat * more) <= hours(heat) * (1.0 + 1e-12));
        }

        #[test]
        fn warmer_feed_is_never_later((shape, heat, feed, left, target, pascal) in any_boil(), more in 0.0..5.0_f64) {
            let hours = |kelvin| {
                let feed = Lot { kelvin, ..feed };
                // Less of a hot fill is weighed out for the same level; what is boiled stays the same.
                batch_at(&shape, heat, &feed, left.as_ref(), target, pascal, Fineness::Full).unwrap().duration
            };
            prop_assert!(hours(feed.kelvin + more) <= hours(feed.kelvin) * (1.0 + 1e-12));
        }

        #[test]
        fn pan_fire_and_lot_scale_together((shape, heat, feed, left, target, pascal) in any_boil(), k in 0.1..10.0_f64) {
            let hours = |k: f64| {
                let shape = PanShape { area: shape.area * k, ..shape };
                let scaled = |lot: Lot| Lot { mass: lot.mass * k, ..lot };
                let left = left.map(scaled);
                batch_at(&shape, heat * k, &scaled(feed), left.as_ref(), target, pascal, Fineness::Full).unwrap().duration
            };
            prop_assert!((hours(k) / hours(1.0) - 1.0).abs() < 1e-9);
        }

        #[test]
        fn what_must_be_collected_is_enough(
            share in 0.05..0.999_f64, brix in 0.5..30.0_f64, celsius in 0.0..40.0_f64, area in 0.05..4.0_f64,
        ) {
            let shape = PanShape { area, ..DEMO };
            let at = |litres: f64| {
                let mass = litres / 1000.0 * sucrose::density_at(brix, celsius + 273.15);
                batch_at(&shape, FIRE, &lot(mass, brix, celsius), None, 66.9, 96_500.0, Fineness::Full)
            };
            let error = at(share * area * 25.0 * 0.9).unwrap_err().to_string();
            let (_, enough) = error.rsplit_once("collect ").unwrap();
            let litres: f64 = enough.strip_suffix(" L").unwrap().parse().unwrap();
            prop_assert!(at(litres).is_ok(), "{error}");
        }
    }
}
