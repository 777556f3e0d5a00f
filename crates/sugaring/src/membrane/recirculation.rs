//! Concentrate back into the tank until it is sweet enough.

use super::{Fidelity, Recirculation, Rig, batch::Batch, local::Local, rig::checked};
use crate::{
    error::Error,
    lot::Lot,
    relation::Range,
    units::{Brix, Ratio, Time, Value, Volume, table},
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

#[cfg(test)]
mod tests {
    use super::super::{
        LimitedBy, Pump,
        sample::{any_rig, any_sap, element, rig, sap},
    };
    use super::*;
    use crate::units::{
        Si, bar_gauge, brix, deg_c, fraction, hours, kg, kwh, litre, litre_per_h, litre_per_h_bar, percent, psi_gauge,
    };
    use proptest::prelude::*;

    fn near(value: f64, wanted: f64, share: f64) -> bool {
        (value - wanted).abs() <= share * wanted.abs()
    }

    /// Somewhere between the tank and its limit, below the kink in the diffusivity at 25 g/100 mL.
    fn reachable(rig: &Rig, sap: &Lot, way: f64) -> Option<Brix> {
        let limit = rig.osmotic_limit(sap.temperature()).unwrap().get().min(22.0);
        (limit > sap.brix * 1.001).then(|| Brix::trusted(sap.brix + way * (limit - sap.brix)))
    }

    #[test]
    fn the_demo_run() {
        let run = rig().recirculate(&sap(), Until::Brix(brix(4.0).unwrap())).unwrap();
        assert!((element().permeance().get::<litre_per_h_bar>() - 10.304).abs() < 0.002);
        assert!((rig().temperature_factor_at(sap().kelvin) - 0.45864).abs() < 5e-6);
        assert!(near(run.flow_first.get::<litre_per_h>(), 54.183, 1e-4));
        assert!(near(run.flow_last.get::<litre_per_h>(), 38.121, 1e-4));
        assert!(near(run.duration.get::<hours>(), 2.8453, 1e-4));
        assert!(near(run.energy.get::<kwh>(), 0.85812, 1e-4));
        assert!(near(run.osmotic_limit.get(), 9.866, 1e-4));
        let warm = run.warming.unwrap();
        assert!(near(warm.duration.get::<hours>(), 2.7864, 1e-4));
        assert!((warm.temperature.get::<deg_c>() - 5.0753).abs() < 1e-3);
        assert_eq!(run.limited_by, LimitedBy::Aim);
        let [first, .., last] = run.trajectory.as_slice() else {
            panic!("no trajectory")
        };
        assert!(near(first.flow.value, run.flow_first.value, 1e-8) && first.time.value.abs() < 1e-9);
        assert!(near(last.flow.value, run.flow_last.value, 1e-8) && near(last.time.value, run.duration.value, 1e-12));
    }

    #[test]
    fn what_cannot_be_reached_says_so() {
        let text = |rig: Rig, until| rig.recirculate(&sap(), until).unwrap_err().to_string();
        let at = "cannot be reached; at 7.6 bar gauge and 3.716 °C the osmotic limit is 9.866 °Bx";
        let more = "or use a rig rated for more pressure";
        assert_eq!(
            text(rig(), Until::Brix(brix(12.0).unwrap())),
            format!("brix = 12 °Bx {at}, and 9.373 °Bx takes 7.122 h: aim lower, {more}")
        );
        assert_eq!(
            text(rig(), Until::Volume(litre(40.0))),
            format!("volume = 40 L {at}, and 54.33 L (9.373 °Bx) takes 7.122 h: leave more, {more}")
        );
        assert_eq!(
            text(rig(), Until::Recovery(percent(85.0))),
            format!("recovery = 0.85 {at}, and 0.795 (9.373 °Bx) takes 7.122 h: ask for less, {more}")
        );
        let weak = Rig::new(&element(), bar_gauge(1.0)).unwrap();
        assert_eq!(
            text(weak.clone(), Until::Brix(brix(4.0).unwrap())),
            "brix = 4 °Bx cannot be reached; at 1 bar gauge and 3.716 °C the osmotic limit is 1.458 °Bx, \
             not above the tank's 1.979 °Bx: use a rig rated for more pressure"
        );
        assert!(text(weak, Until::Duration(hours(1.0))).starts_with("duration = 1 h cannot be reached; at 1 bar"));
        assert_eq!(
            text(rig(), Until::Duration(hours(-1.0))),
            "duration = -1 h is outside 0 to 10000 h"
        );
        let water = Lot::of_mass(kg(10.0), brix(0.0).unwrap(), deg_c(5.0)).unwrap();
        let error = rig().recirculate(&water, Until::Brix(brix(4.0).unwrap())).unwrap_err();
        assert_eq!(
            error.to_string(),
            "brix = 4 °Bx cannot be reached; there is no sugar in the sap"
        );
        let hot = Lot::of_mass(kg(10.0), brix(2.0).unwrap(), deg_c(60.0)).unwrap();
        let error = rig().recirculate(&hot, Until::Brix(brix(4.0).unwrap())).unwrap_err();
        assert_eq!(
            error.to_string(),
            "sap.temperature = 60 °C is outside 0 to 45 °C; 60 °F is 15.56 °C: write deg_f(60)"
        );
    }

    #[test]
    fn a_tank_that_is_there_takes_no_time() {
        for until in [
            Until::Brix(brix(1.9).unwrap()),
            Until::Volume(litre(300.0)),
            Until::Recovery(fraction(0.0)),
            Until::Duration(hours(0.0)),
        ] {
            let run = rig().recirculate(&sap(), until).unwrap();
            assert_eq!((run.limited_by, run.duration.value), (LimitedBy::AlreadyThere, 0.0));
            assert_eq!((run.concentrate, run.permeate.mass.value), (sap(), 0.0));
            assert!(run.flow_first.value > 0.0);
        }
    }

    #[test]
    fn water_runs_out_and_sap_stands_still() {
        let water = Lot::of_mass(kg(100.0), brix(0.0).unwrap(), deg_c(10.0)).unwrap();
        let half = rig().recirculate(&water, Until::Recovery(percent(50.0))).unwrap();
        let flow = rig().permeate_flow(brix(0.0).unwrap(), deg_c(10.0)).unwrap();
        assert!(near(half.duration.value * flow.value, half.permeate.volume.value, 1e-9));
        let all = rig().recirculate(&water, Until::Duration(hours(100.0))).unwrap();
        assert_eq!(all.limited_by, LimitedBy::OsmoticLimit);
        assert!(all.concentrate.mass < 1e-3);
        let long = rig().recirculate(&sap(), Until::Duration(hours(1000.0))).unwrap();
        assert_eq!(long.limited_by, LimitedBy::OsmoticLimit);
        assert!(near(long.concentrate.brix, long.osmotic_limit.get(), 2e-6));
    }

    #[test]
    fn a_warm_run_is_the_one_reported_beside_the_cold() {
        let aim = Until::Brix(brix(8.0).unwrap());
        let cold = rig().recirculate(&sap(), aim).unwrap();
        let warm = rig().with_warming(Warming::Coupled).recirculate(&sap(), aim).unwrap();
        let beside = cold.warming.unwrap();
        assert!(near(warm.duration.value, beside.duration.value, 1e-12));
        assert!(near(warm.concentrate.kelvin, beside.temperature.value, 1e-12));
        assert!(warm.flow_last > cold.flow_last && near(warm.trajectory[12].time.value, warm.duration.value, 1e-12));
        let time = Until::Duration(warm.duration);
        let timed = rig().with_warming(Warming::Coupled).recirculate(&sap(), time).unwrap();
        assert!(
            near(timed.concentrate.brix, 8.0, 1e-6) && near(timed.concentrate.kelvin, warm.concentrate.kelvin, 1e-8)
        );
        // Twenty litres under a pump of 1 kW do not stay cold.
        let pot = Lot::of_volume(litre(20.0), brix(2.0).unwrap(), deg_c(5.0)).unwrap();
        let pump = Pump::of_flow(litre_per_h(5000.0)).unwrap();
        let hot = Rig::new(&element(), psi_gauge(110.0)).unwrap().with_pump(pump).unwrap();
        let aim = Until::Brix(brix(9.0).unwrap());
        assert!(hot.recirculate(&pot, aim).unwrap().warming.is_none());
        let error = hot.with_warming(Warming::Coupled).recirculate(&pot, aim).unwrap_err();
        assert_eq!(
            error.to_string(),
            "brix = 9 °Bx cannot be reached; the tank passes 45 °C, or its osmotic limit as it warms: \
             cool it, or use a smaller pump"
        );
    }

    proptest! {
        #[test]
        fn mass_and_sugar_are_kept(rig in any_rig(), sap in any_sap(), way in 0.0..0.99_f64) {
            let Some(aim) = reachable(&rig, &sap, way) else { return Ok(()) };
            let run = rig.recirculate(&sap, Until::Brix(aim)).unwrap();
            prop_assert!(near(run.concentrate.mass + run.permeate.mass.value, sap.mass, 1e-12));
            let sugar = run.concentrate.sugar_si() + run.permeate.sugar.value;
            prop_assert!(near(sugar, sap.sugar_si(), 1e-12));
            prop_assert!(run.sugar_lost == run.permeate.sugar && run.duration.value >= 0.0);
            prop_assert!(run.flow_last.value <= run.flow_first.value * (1.0 + 1e-7));
            prop_assert!(near(run.permeate.brix.get() * run.permeate.mass.value, 100.0 * run.sugar_lost.value, 1e-12));
            if rig.retention() >= 1.0 {
                prop_assert!(run.sugar_lost.value == 0.0);
            }
        }

        #[test]
        fn sweeter_takes_longer_and_pressure_helps(rig in any_rig(), sap in any_sap(), way in 0.02..0.9_f64) {
            let Some(aim) = reachable(&rig, &sap, way) else { return Ok(()) };
            let Some(less) = reachable(&rig, &sap, way * 0.9) else { return Ok(()) };
            let seconds = |rig: &Rig, aim| rig.recirculate(&sap, Until::Brix(aim)).unwrap().duration.value;
            prop_assert!(seconds(&rig, less) < seconds(&rig, aim));
            let harder = Rig { pressure: rig.pressure * 1.05, ..rig.clone() };
            prop_assert!(seconds(&harder, aim) < seconds(&rig, aim), "{} {}", seconds(&harder, aim), seconds(&rig, aim));
        }

        #[test]
        fn other_aims_are_the_same_run(rig in any_rig(), sap in any_sap(), way in 0.01..0.95_f64) {
            let Some(aim) = reachable(&rig, &sap, way) else { return Ok(()) };
            let run = rig.recirculate(&sap, Until::Brix(aim)).unwrap();
            // At the recoveries of a tank's passes; nearer a dead end, and over the kink, the runs are known to 1e-5 only.
            prop_assume!(run.element_recovery.value < 0.5 && rig.element_drop == Some(0.0));
            let recovery = Ratio::of_si(run.permeate.volume.value / sap.volume().value);
            let mut aims = vec![Until::Volume(run.concentrate.volume())];
            if run.duration.get::<hours>() < 1e4 {
                aims.push(Until::Duration(run.duration));
            }
            if recovery.value < 0.99 {
                aims.push(Until::Recovery(recovery));
            }
            for until in aims {
                let same = rig.recirculate(&sap, until).unwrap();
                prop_assert!(near(same.concentrate.brix, aim.get(), 1e-6), "{until:?} {same:?}");
                prop_assert!(near(same.duration.value, run.duration.value, 1e-5), "{until:?} {} {}", same.duration.value, run.duration.value);
            }
        }

        #[test]
        fn hours_begin_at_nothing(rig in any_rig(), sap in any_sap(), step in 1e-9..1e-4_f64) {
            let Some(_) = reachable(&rig, &sap, 0.1) else { return Ok(()) };
            let aim = Brix::trusted(sap.brix * (1.0 + step));
            let run = rig.recirculate(&sap, Until::Brix(aim)).unwrap();
            let passed = sap.mass * step / crate::water::density_at(sap.kelvin) / rig.retention();
            prop_assert!(near(run.duration.value * run.flow_first.value, passed, 0.2), "{} {}", run.duration.value * run.flow_first.value, passed);
        }

        #[test]
        fn a_rig_of_any_size_takes_the_same_hours(way in 0.05..0.9_f64, times in 1..16_u32, factor in 0.25..1.0_f64) {
            let of = |times: u32| {
                let pump = Pump::of_flow(litre_per_h(250.0 * f64::from(times))).unwrap();
                let rig = Rig::new(&element(), bar_gauge(7.6)).unwrap().with_parallel(times).unwrap();
                let film = super::super::Polarisation::RatingAnchored { factor };
                rig.with_pump(pump).unwrap().with_polarisation(film).unwrap()
            };
            let lot = |times: u32| Lot::trusted(100.0 * f64::from(times), 2.0, 277.0);
            let aim = reachable(&of(1), &lot(1), way).unwrap();
            let one = of(1).recirculate(&lot(1), Until::Brix(aim)).unwrap();
            let many = of(times).recirculate(&lot(times), Until::Brix(aim)).unwrap();
            prop_assert!(near(many.duration.value, one.duration.value, 1e-12));
            prop_assert!(near(many.energy.value, one.energy.value * f64::from(times), 1e-12));
        }

        #[test]
        fn draws_stay_near_the_nominal(rig in any_rig(), sap in any_sap(), way in 0.01..0.9_f64) {
            let rig = Rig { element_drop: None, ..rig };
            let Some(aim) = reachable(&rig, &sap, way) else { return Ok(()) };
            let seconds = |fidelity| rig.recirculate_with(&sap, Until::Brix(aim), fidelity).unwrap().duration.value;
            prop_assert!(near(seconds(Fidelity::DRAW), seconds(Fidelity::FULL), 1e-4));
        }

        #[test]
        fn never_panics(n in prop::array::uniform9(any::<f64>()), film in 0..3, kind in 0..4, small in any::<u32>()) {
            let quantity = |value: f64| if small % 3 == 0 { value } else { value.abs() % 97.0 };
            let n = n.map(quantity);
            let Ok(rig) = Rig::new(&element(), bar_gauge(n[0])) else { return Ok(()) };
            let film = match film {
                0 => super::super::Polarisation::RatingAnchored { factor: n[1] },
                1 => super::super::Polarisation::Modulus(n[1]),
                _ => super::super::Polarisation::None,
            };
            let built = rig.with_parallel(small % 70)
                .and_then(|rig| rig.with_series(small % 9))
                .and_then(|rig| rig.with_polarisation(film))
                .and_then(|rig| rig.with_retention(fraction(n[2] / 97.0)))
                .and_then(|rig| rig.with_pump(Pump::of_flow(litre_per_h(n[3] * n[3]))?));
            let (Ok(rig), Ok(strength)) = (built, brix(n[4])) else { return Ok(()) };
            let Ok(sap) = Lot::of_mass(kg(n[5]), strength, deg_c(n[6])) else { return Ok(()) };
            let until = match kind {
                0 => brix(n[7]).map(Until::Brix),
                1 => Ok(Until::Volume(litre(n[7]))),
                2 => Ok(Until::Recovery(fraction(n[7] / 97.0))),
                _ => Ok(Until::Duration(hours(n[7]))),
            };
            if let Ok(until) = until {
                let rig = if small % 5 == 0 { rig.with_warming(Warming::Coupled) } else { rig };
                let _ = (rig.recirculate(&sap, until), rig.pass_once(&sap, fraction(n[8] / 97.0)));
                let _ = (rig.permeate_flow(strength, deg_c(n[6])), rig.osmotic_limit(deg_c(n[6])));
            }
        }
    }
}
