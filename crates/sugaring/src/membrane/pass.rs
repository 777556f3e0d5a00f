//! Once through the rig, the valve set for a split.

use alloc::vec::Vec;

use super::{
    Fidelity, Permeate, Rig, batch,
    local::Local,
    rig::checked,
    train::{Through, Way},
};
use crate::{
    digits::{self, Toward},
    error::Error,
    lot::Lot,
    math,
    relation::{Range, Relation, Source},
    solve,
    units::{Energy, Flow, Mass, Ratio, Si, Time, Value, table},
};

/// Sap that went through the rig once.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Pass {
    /// What enters the elements; the rest of the pump's flow returns to its inlet through a bypass.
    pub feed_flow: Flow,
    /// What leaves as permeate.
    pub permeate_flow: Flow,
    /// What leaves as concentrate.
    pub concentrate_flow: Flow,
    /// What has passed.
    pub permeate: Permeate,
    /// What has not.
    pub concentrate: Lot,
    /// How long it takes.
    pub duration: Time,
    /// Energy the pump draws, for all of its flow.
    pub energy: Energy,
    /// Sugar lost with the permeate.
    pub sugar_lost: Mass,
    /// Largest permeate per feed of one element.
    pub element_recovery: Ratio,
    /// Least crossflow along an element, per the rated.
    pub crossflow_least: Ratio,
    /// Largest crossflow, that at the inlet, per the rated.
    pub crossflow_most: Ratio,
    /// Inputs of the rig that were left to their defaults.
    pub rests_on: Vec<&'static str>,
}

impl Rig {
    /// Sends `sap` through once, the feed set so that `recovery` of its volume becomes permeate.
    ///
    /// `Y(Q_f) = Y, t = V₀/Q_f, M = M₀ − ρ_w·Y·V₀, x = x₀·(M/M₀)^(−R)`
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | Y | `recovery`, permeate per feed by volume | 1 | 0.01 to 0.99 |
    /// | M₀, V₀, x₀ | mass, volume, °Brix of `sap` | kg, m³, % | x₀ 0 to 60, 0 to 45 °C |
    /// | `Q_f` | feed; each train 0.02 to 3 times the rated crossflow, all of it at most the pump's flow | m³/s | |
    /// | M, x | mass and °Brix of the concentrate | kg, % | |
    /// | `ρ_w`, R | density of water, retention | kg/m³, 1 | |
    /// | t | duration | s | |
    ///
    /// Pressure and split can both be set because the pump's surplus returns through a bypass.
    ///
    /// # Errors
    /// [`Unreachable`](crate::ErrorKind::Unreachable) where no feed gives the split, with the most that can be had;
    /// [`NotFinite`](crate::ErrorKind::NotFinite) or [`OutOfRange`](crate::ErrorKind::OutOfRange) for the recovery and
    /// the sap; [`NoConvergence`](crate::ErrorKind::NoConvergence).
    /// # Source
    /// Balance of mass and sugar over the elements, see [`Rig::permeate_flow`].
    /// # Examples
    /// ```
    /// use sugaring::{lot::Lot, membrane::{Element, ElementRating, Rig}, units::*};
    /// let element = Element::from_rating(&ElementRating {
    ///     flow: cubic_metre_per_day(0.9),
    ///     pressure: bar_gauge(4.1),
    ///     temperature: deg_c(25.0),
    ///     salt: mg_per_litre(500.0),
    ///     recovery: percent(15.0),
    ///     rejection: percent(97.0),
    /// })?;
    /// let rig = Rig::new(&element, bar_gauge(7.6))?.with_parallel(2)?;
    /// let sap = Lot::of_volume(litre(170.0), brix(1.8)?, deg_c(3.0))?;
    /// let pass = rig.pass_once(&sap, percent(50.0))?;
    /// assert_eq!(format!("{:.1} {:.3}", pass.duration.get::<hours>(), pass.concentrate.brix().get()), "2.2 3.575");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{lot::Lot, membrane::{Element, ElementRating, Rig}, units::*};
    /// # let element = Element::from_rating(&ElementRating { flow: cubic_metre_per_day(0.9), pressure: bar_gauge(4.1),
    /// #     temperature: deg_c(25.0), salt: mg_per_litre(500.0), recovery: percent(15.0), rejection: percent(97.0) })?;
    /// # let rig = Rig::new(&element, bar_gauge(7.6))?.with_parallel(2)?;
    /// let sap = Lot::of_mass(kg(267.07), brix(1.9795)?, deg_c(3.7162))?;
    /// let error = rig.pass_once(&sap, percent(90.0)).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "recovery = 0.9 cannot be reached; the most at this pressure is 0.7921, \
    ///      because of the osmotic limit: ask for less, or recirculate"
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn pass_once(&self, sap: &Lot, recovery: Ratio) -> Result<Pass, Error> {
        checked(sap)?;
        self.pass_once_with(sap, recovery, Fidelity::FULL)
    }

    /// [`Rig::pass_once`] as finely as asked, on sap that is not checked.
    pub(crate) fn pass_once_with(&self, sap: &Lot, recovery: Ratio, fidelity: Fidelity) -> Result<Pass, Error> {
        let wanted = PASS_ONCE.check(0, recovery.si())?;
        let local = Local::new(self, sap.kelvin)?;
        let split = Split {
            rig: self,
            local: &local,
            sap,
            fidelity,
        };
        let (feed, through) = split.feed_for(wanted)?;

        let feed = feed * self.trains();
        let density = local.density.density(sap.brix);
        let mass = sap.mass * (1.0 - wanted * local.water / density);
        // What the trains keep of the sugar; one train, or trains that are alike, keep it by the closed form.
        let sugar = through.kept * sap.mass * sap.brix;
        let leaked = (sap.mass * sap.brix - sugar).max(0.0) / 100.0;
        let seconds = sap.mass / density / feed;
        let concentrate = Lot::trusted(mass, sugar / mass, sap.kelvin);
        Ok(Pass {
            feed_flow: Flow::of_si(feed),
            permeate_flow: Flow::of_si(wanted * feed),
            concentrate_flow: Flow::of_si(mass / local.density.density(concentrate.brix) / seconds),
            permeate: batch::permeate(sap.mass - mass, leaked, &local, sap.kelvin),
            concentrate,
            duration: Time::of_si(seconds),
            energy: Energy::of_si(self.power() * seconds),
            sugar_lost: Mass::of_si(leaked),
            element_recovery: Ratio::of_si(through.recovery),
            crossflow_least: Ratio::of_si(through.crossflow.0),
            crossflow_most: Ratio::of_si(through.crossflow.1),
            rests_on: if fidelity.detail { self.assumed() } else { Vec::new() },
        })
    }
}

/// The search for the feed.
struct Split<'a> {
    rig: &'a Rig,
    local: &'a Local,
    sap: &'a Lot,
    fidelity: Fidelity,
}

impl Split<'_> {
    /// Feed of each train (m³/s) that gives the recovery, and what becomes of it.
    fn feed_for(&self, wanted: f64) -> Result<(f64, Through), Error> {
        let rated = self.rig.element.crossflow;
        let unsettled = || Error::no_convergence("feed_flow");
        let highest = (FEEDS.1 * rated).min(self.rig.feed());
        let (floor, lowest) = ((FLOOR * rated).min(highest), (FEEDS.0 * rated).min(highest));
        let recovery_at = |feed: f64| {
            self.through(feed)
                .map(|through| through.permeate / (feed * self.rig.trains()))
        };
        let ceiling = recovery_at(floor).ok_or_else(unsettled)?;
        if wanted > ceiling {
            let most = recovery_at(lowest).ok_or_else(unsettled)?;
            return Err(self.too_much(wanted, most, ceiling));
        }
        let least = recovery_at(highest).ok_or_else(unsettled)?;
        if wanted < least {
            return Err(Self::too_little(wanted, least, highest < FEEDS.1 * rated));
        }
        // Y falls with ln Q_f, steadily.
        let over = |ln_feed: f64| recovery_at(math::exp(ln_feed)).map_or(f64::NAN, |recovery| recovery - wanted);
        let found = solve::root(over, math::ln(floor), math::ln(highest), 1e-13).filter(|found| found.settled);
        let feed = math::exp(found.ok_or_else(unsettled)?.at);
        Ok((feed, self.through(feed).ok_or_else(unsettled)?))
    }

    fn through(&self, feed: f64) -> Option<Through> {
        self.rig
            .through(self.local, self.sap.brix, feed, self.fidelity.tolerance)
    }

    #[cold]
    fn too_much(&self, wanted: f64, most: f64, ceiling: f64) -> Error {
        let nearest = digits::rounded(most, 4, Toward::Nearest);
        // Typed back in, it must work.
        let offered = if nearest <= ceiling {
            digits::shortest(nearest)
        } else {
            digits::upper_limit(most, 4)
        };
        let way = Way::from(self.sap.mass, self.sap.brix, self.local.limit, self.local.retention);
        let at_limit = 1.0 - self.sap.brix / self.local.limit;
        let cause = if way.is_none() || at_limit < wanted {
            "the osmotic limit"
        } else {
            "polarisation"
        };
        unreachable(wanted).with_hint(alloc::format!(
            "the most at this pressure is {offered}, because of {cause}: ask for less, or recirculate"
        ))
    }

    #[cold]
    fn too_little(wanted: f64, least: f64, pump: bool) -> Error {
        let least = digits::lower_limit(least, 4);
        let cause = if pump {
            "the pump moves no more"
        } else {
            "more than three times the rated crossflow is too much"
        };
        unreachable(wanted).with_hint(alloc::format!(
            "the least at this pressure is {least}, because {cause}: ask for more"
        ))
    }
}

fn unreachable(wanted: f64) -> Error {
    Error::unreachable("recovery", &table::fraction.show(wanted)).with_value(wanted, &table::fraction)
}

/// What [`Rig::pass_once`] covers.
pub static PASS_ONCE: Relation = Relation {
    name: "membrane::Rig::pass_once",
    inputs: &[Range::new("recovery", &table::fraction, 0.01, 0.99)],
    output: &table::hours,
    source: Source::Derived {
        text: "balance of mass and sugar over membrane::Rig::permeate_flow",
    },
    accuracy: "as membrane::Rig::permeate_flow; low crossflow makes the film uncertain",
};

/// Least and largest feed of a train, per the rated crossflow.
const FEEDS: (f64, f64) = (0.02, 3.0);
/// A little below the least feed, so that the most as printed can be asked for.
const FLOOR: f64 = 0.0195;

#[cfg(test)]
mod tests {
    use super::super::{
        Polarisation, Pump,
        sample::{any_rig, any_sap, element, rig, sap},
    };
    use super::*;
    use crate::units::{bar_gauge, brix, deg_c, fraction, hours, litre, litre_per_h, percent};
    use proptest::prelude::*;

    fn near(value: f64, wanted: f64, share: f64) -> bool {
        (value - wanted).abs() <= share * wanted.abs()
    }

    #[test]
    fn what_cannot_be_reached_says_so() {
        let text = |rig: Rig, share| rig.pass_once(&sap(), fraction(share)).unwrap_err().to_string();
        let most = "recovery = 0.9 cannot be reached; the most at this pressure is 0.7921, because of the osmotic limit: \
            ask for less, or recirculate";
        assert_eq!(text(rig(), 0.9), most);
        let thick = Polarisation::RatingAnchored { factor: 0.1 };
        let film = rig().with_polarisation(thick).unwrap();
        assert_eq!(
            text(film, 0.79),
            "recovery = 0.79 cannot be reached; the most at this pressure is 0.3138, because of polarisation: \
             ask for less, or recirculate"
        );
        assert_eq!(
            text(rig(), 0.02),
            "recovery = 0.02 cannot be reached; the least at this pressure is 0.1084, because the pump moves no more: \
             ask for more"
        );
        let flood = rig().with_pump(Pump::of_flow(litre_per_h(9000.0)).unwrap()).unwrap();
        assert_eq!(
            text(flood, 0.02),
            "recovery = 0.02 cannot be reached; the least at this pressure is 0.04079, because more than three times the \
             rated crossflow is too much: ask for more"
        );
        assert_eq!(
            text(rig(), 15.0),
            "recovery = 15 is outside 0.01 to 0.99; 15 % is written percent(15), \"15 %\" or 0.15"
        );
        // What is offered can be had.
        assert!(rig().pass_once(&sap(), fraction(0.7921)).is_ok());
    }

    /// Half of the demo day's tank in one pass: the crossflow starves.
    #[test]
    fn the_demo_pass() {
        let pass = rig().pass_once(&sap(), percent(50.0)).unwrap();
        assert!((pass.crossflow_least.value - 0.081).abs() < 5e-4 && (pass.crossflow_most.value - 0.16).abs() < 5e-3);
        assert!(near(pass.element_recovery.value, 0.5, 1e-9));
        assert!(near(pass.duration.get::<hours>(), 3.5503, 1e-4));
        assert!(near(pass.permeate.volume.value, 0.5 * sap().volume().value, 1e-12));
    }

    proptest! {
        #[test]
        fn mass_and_sugar_are_kept(rig in any_rig(), sap in any_sap(), share in 0.05..0.95_f64) {
            let Ok(pass) = rig.pass_once(&sap, fraction(share)) else { return Ok(()) };
            prop_assert!(near(pass.concentrate.mass + pass.permeate.mass.value, sap.mass, 1e-12));
            prop_assert!(near(pass.concentrate.sugar_si() + pass.permeate.sugar.value, sap.sugar_si(), 1e-12));
            prop_assert!(near(pass.permeate.volume.value, share * sap.volume().value, 1e-12));
            prop_assert!(near(pass.duration.value * pass.feed_flow.value, sap.volume().value, 1e-12));
            prop_assert!(pass.concentrate.brix < rig.osmotic_limit(sap.temperature()).unwrap().get() * (1.0 + 1e-9));
            // The closed form of a share kept back.
            let kept = math::pow(pass.concentrate.mass / sap.mass, -rig.retention());
            prop_assert!(near(pass.concentrate.brix, sap.brix * kept, 1e-7));
        }

        #[test]
        fn more_takes_longer(share in 0.2..0.7_f64, more in 0.01..0.08_f64, celsius in 1.0..20.0_f64) {
            let sap = Lot::of_volume(litre(100.0), brix(1.9).unwrap(), deg_c(celsius)).unwrap();
            let seconds = |share| rig().pass_once(&sap, fraction(share)).map(|pass| pass.duration.value);
            if let (Ok(less), Ok(more)) = (seconds(share), seconds(share + more)) {
                prop_assert!(less < more);
            }
        }

        /// Without a film, through and around take the same time.
        #[test]
        fn series_and_parallel_are_alike_without_a_film(share in 0.3..0.7_f64) {
            let of = |parallel, series| {
                let pump = Pump::of_flow(litre_per_h(500.0)).unwrap();
                let rig = Rig::new(&element(), bar_gauge(7.6)).unwrap().with_polarisation(Polarisation::None).unwrap();
                let rig = rig.with_parallel(parallel).unwrap().with_series(series).unwrap().with_pump(pump).unwrap();
                rig.pass_once(&sap(), fraction(share)).unwrap().duration.value
            };
            prop_assert!(near(of(2, 1), of(1, 2), 1e-6));
        }
    }
}
