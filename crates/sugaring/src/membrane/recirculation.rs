//! Concentrate back into the tank until it is sweet enough.

use alloc::vec::Vec;

use super::{Fidelity, Rig, batch::Batch, local::Local, rig::checked};
use crate::{
    error::Error,
    lot::Lot,
    relation::Range,
    units::{Brix, Energy, Flow, Mass, Ratio, Temperature, Time, Value, Volume, table},
};

/// What ends a recirculation.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum Until {
    /// The tank's °Brix.
    Brix(Brix),
    /// What is left in the tank, at the tank's temperature.
    Volume(Volume),
    /// Volume of permeate per volume of sap, 0 to 0.99.
    Recovery(Ratio),
    /// The hours it runs, 0 to 10 000.
    Duration(Time),
}

/// Whether the hours follow the warming of the tank, which takes up all of the pump's work.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
#[non_exhaustive]
pub enum Warming {
    /// They do not; what it would be is reported beside them. Slower, so safe, and the default.
    #[default]
    Isothermal,
    /// They do.
    Coupled,
}

/// What ended a run.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum LimitedBy {
    /// The aim was reached.
    Aim,
    /// The tank was there from the start: nothing ran.
    AlreadyThere,
    /// Hours without end: the tank stands at its osmotic limit.
    OsmoticLimit,
}

/// What has passed the membrane.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Permeate {
    /// Mass.
    pub mass: Mass,
    /// Volume at the sap's temperature, with the density of water.
    pub volume: Volume,
    /// °Brix of all of it.
    pub brix: Brix,
    /// Sugar that went with it.
    pub sugar: Mass,
    /// Temperature.
    pub temperature: Temperature,
}

/// A tank that warms.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Warmed {
    /// Temperature of the tank at the end.
    pub temperature: Temperature,
    /// How long it takes when it warms: warm membranes let more through.
    pub duration: Time,
}

/// The tank on the way.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct TrajectoryPoint {
    /// Since the start.
    pub time: Time,
    /// °Brix of the tank.
    pub brix: Brix,
    /// What the tank holds.
    pub mass: Mass,
    /// Permeate flow of the rig.
    pub flow: Flow,
}

/// A tank concentrated by recirculation.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Recirculation {
    /// How long it takes.
    pub duration: Time,
    /// What has passed.
    pub permeate: Permeate,
    /// What is left in the tank.
    pub concentrate: Lot,
    /// Permeate flow of the rig at the start.
    pub flow_first: Flow,
    /// Permeate flow of the rig at the end.
    pub flow_last: Flow,
    /// The tank warmed by the pump; `None` where nothing ran, where it would pass 45 °C, or where the aim is out of
    /// reach of a warm tank.
    pub warming: Option<Warmed>,
    /// Energy the pump draws.
    pub energy: Energy,
    /// Sugar lost with the permeate.
    pub sugar_lost: Mass,
    /// No tank gets sweeter at this pressure.
    pub osmotic_limit: Brix,
    /// Largest permeate per feed of one element, in one pass.
    pub element_recovery: Ratio,
    /// Least crossflow along an element, per the rated.
    pub crossflow_least: Ratio,
    /// Largest crossflow, that at the inlet, per the rated.
    pub crossflow_most: Ratio,
    /// The tank on the way, from start to end.
    pub trajectory: Vec<TrajectoryPoint>,
    /// What ended it.
    pub limited_by: LimitedBy,
    /// Inputs of the rig that were left to their defaults.
    pub rests_on: Vec<&'static str>,
}

impl Rig {
    /// Recirculates `sap`: what does not pass goes back into the tank, until the aim is reached.
    ///
    /// `t = ∫ (M₀/(R·x))·(x/x₀)^(−1/R)/(ρ_w·Q(x)) dx` from x₀ to x₁, M = M₀·(x/x₀)^(−1/R), `E = P_d·t`; warming:
    /// `dT/dt = P·Q_p/(M·c_p)`
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | M₀, x₀, T | mass, °Brix, temperature of `sap` | kg, %, K | x₀ 0 to 60, T 0 to 45 °C |
    /// | x₁ | °Brix at the end | % | below the osmotic limit |
    /// | Q(x) | [`Rig::permeate_flow`] of the tank's °Brix | m³/s | |
    /// | R | retention | 1 | |
    /// | `ρ_w`, `c_p` | density of water, specific heat of the tank | kg/m³, J/(kg K) | |
    /// | P, `Q_p`, `P_d` | pressure, flow, power of the pump | Pa, m³/s, W | |
    /// | t, E | duration, energy | s, J | |
    ///
    /// An aim the tank has already reached takes no time and gives the sap back.
    ///
    /// # Errors
    /// [`Unreachable`](crate::ErrorKind::Unreachable) at or above the osmotic limit, with what would be reached;
    /// [`NotFinite`](crate::ErrorKind::NotFinite) or [`OutOfRange`](crate::ErrorKind::OutOfRange) for the aim and the
    /// sap; [`NoConvergence`](crate::ErrorKind::NoConvergence).
    /// # Source
    /// Balance of mass and sugar over [`Rig::permeate_flow`].
    /// # Examples
    /// ```
    /// use sugaring::{lot::Lot, membrane::{Element, ElementRating, Pump, Rig, Until}, units::*};
    /// let element = Element::from_rating(&ElementRating {
    ///     flow: cubic_metre_per_day(0.9),
    ///     pressure: bar_gauge(4.1),
    ///     temperature: deg_c(25.0),
    ///     salt: mg_per_litre(500.0),
    ///     recovery: percent(15.0),
    ///     rejection: percent(97.0),
    /// })?;
    /// let rig = Rig::new(&element, bar_gauge(7.6))?.with_parallel(2)?.with_pump(Pump::of_flow(litre_per_h(500.0))?)?;
    /// let sap = Lot::of_mass(kg(267.07), brix(1.9795)?, deg_c(3.7162))?;
    /// let run = rig.recirculate(&sap, Until::Brix(brix(4.0)?))?;
    /// assert_eq!(format!("{:.3}", run.duration.get::<hours>()), "2.845");
    /// assert_eq!(format!("{:.1}", run.permeate.volume.get::<litre>()), "134.9");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{lot::Lot, membrane::{Element, ElementRating, Pump, Rig, Until}, units::*};
    /// # let element = Element::from_rating(&ElementRating { flow: cubic_metre_per_day(0.9), pressure: bar_gauge(4.1),
    /// #     temperature: deg_c(25.0), salt: mg_per_litre(500.0), recovery: percent(15.0), rejection: percent(97.0) })?;
    /// # let rig = Rig::new(&element, bar_gauge(7.6))?.with_parallel(2)?.with_pump(Pump::of_flow(litre_per_h(500.0))?)?;
    /// # let sap = Lot::of_mass(kg(267.07), brix(1.9795)?, deg_c(3.7162))?;
    /// let error = rig.recirculate(&sap, Until::Brix(brix(12.0)?)).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "brix = 12 °Bx cannot be reached; at 7.6 bar gauge and 3.716 °C the osmotic limit is 9.866 °Bx, \
    ///      and 9.373 °Bx takes 7.122 h: aim lower, or use a rig rated for more pressure"
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn recirculate(&self, sap: &Lot, until: Until) -> Result<Recirculation, Error> {
        checked(sap)?;
        self.recirculate_with(sap, until, Fidelity::FULL)
    }

    /// [`Rig::recirculate`] as finely as asked, on sap that is not checked.
    pub(crate) fn recirculate_with(&self, sap: &Lot, until: Until, fidelity: Fidelity) -> Result<Recirculation, Error> {
        let until = until.checked()?;
        let local = Local::new(self, sap.kelvin)?;
        let mut batch = Batch::new(self, local, sap, fidelity)?;
        match batch.end(until)? {
            Some(end) => batch.run(&end),
            None => Ok(batch.nothing()),
        }
    }
}

impl Until {
    fn checked(self) -> Result<Self, Error> {
        match self {
            // Any °Brix may be asked for; the osmotic limit has the better words.
            Self::Brix(_) => Ok(self),
            Self::Volume(volume) => VOLUME.check(volume.si()).map(|_| self),
            Self::Recovery(recovery) => RECOVERY.check(recovery.si()).map(|_| self),
            Self::Duration(duration) => DURATION.check(duration.si()).map(|_| self),
        }
    }
}

const VOLUME: Range = Range::new("volume", &table::litre, 1e-3, 1e9);
const RECOVERY: Range = Range::new("recovery", &table::fraction, 0.0, 0.99);
const DURATION: Range = Range::new("duration", &table::hours, 0.0, 10_000.0);
