//! A batch boil in SI: fill and heat up, top up at a constant level, boil down to the least depth.

use super::boiling_line::{BoilingLine, Fineness};
use crate::{error::Error, lot::Lot, solve, sucrose};

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
pub(super) struct Kettle<'a> {
    pub(super) shape: &'a PanShape,
    heat: f64,
    pub(super) feed: &'a Lot,
    pub(super) left: Option<&'a Lot>,
    pub(super) target: f64,
    pub(super) line: &'a BoilingLine,
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
    pub(super) fn fill_to(&self, volume: f64) -> Result<f64, Error> {
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

    /// `q dt = L dW + [h(B_c, T_b) − h(B_c, T_c)] dF + m c dT_b` at a constant hot volume.
    fn topped_up(&self, start: Content, end: Content, fed: f64, volume: f64, excess: f64) -> StageSi {
        let (low, high) = (start.brix(), end.brix());
        let line = self.line;
        let water = start.mass + fed - end.mass;
        let dry = start.sugar;
        // Both small integrals run over the boiling point; the feed's is taken by parts, so that no density is differentiated.
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

    /// `q dt = L dW + m c dT_b`, down to the least depth or to the target, whichever comes first.
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
mod tests;
