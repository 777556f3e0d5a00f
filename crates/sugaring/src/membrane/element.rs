//! One element: what its label says, and what follows from it.

use super::{
    factor::{BASE, FactorModel, TEMPERATURE},
    test_water::{SALT, test_water_osmotic_pressure_at},
};
use crate::{
    error::Error,
    math,
    relation::{Range, Relation, Source},
    units::{Concentration, Flow, GaugePressure, Permeance, Pressure, Ratio, Si, Temperature, Value, table},
};

/// The test an element is rated by, as its label states it.
///
/// Tests differ (50 to 225 psi, 250 to 2000 mg/L, 15 to 50 % recovery), so every figure is asked for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ElementRating {
    /// Permeate flow in the test, 0.001 to 1000 m³/d.
    pub flow: Flow,
    /// Test pressure, 0.1 to 70 bar gauge.
    pub pressure: GaugePressure,
    /// Temperature of the test water, 0 to 45 °C.
    pub temperature: Temperature,
    /// Salt in the test water, 0 to 35 000 mg/L of NaCl.
    pub salt: Concentration,
    /// Permeate per feed in the test, 0.01 to 0.8.
    pub recovery: Ratio,
    /// Share of the feed's salt kept back, 0.5 to 1.
    pub rejection: Ratio,
}

/// A spiral-wound element: how much it lets through for the pressure that drives it, and the film on it at its rating.
///
/// Flow is what makers print, so permeance is of the whole element; area and permeability never appear.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Element {
    pub(crate) rating: ElementRating,
    /// The user's own, at 25 °C, in place of the rating's.
    pub(crate) own: Option<Permeance>,
    /// Permeance in m³/(s Pa) at `tested_at`.
    pub(crate) tested: f64,
    /// K.
    pub(crate) tested_at: f64,
    /// Net driving pressure of the rating test, Pa.
    pub(crate) net: f64,
    /// Film coefficient times area at the rating, m³/s.
    pub(crate) film: f64,
    /// Mean crossflow of the rating test, m³/s.
    pub(crate) crossflow: f64,
}

impl Element {
    /// The element its label describes.
    ///
    /// A = Q/(ΔP·f(T)), ΔP = P − R·π·L·β, L = ln(1/(1 − Y))/Y, β = exp(0.7·Y)
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | Q, P, T, Y, R | the rating's flow, pressure, temperature, recovery, rejection | | those of [`ElementRating`] |
    /// | π | osmotic pressure of the test water, as [`test_water_osmotic_pressure`](super::test_water_osmotic_pressure) | Pa | |
    /// | L | log-mean of feed and brine | 1 | |
    /// | β | excess of salt at the membrane | 1 | |
    /// | f | [`temperature_factor`](super::temperature_factor) | 1 | |
    /// | ΔP | net driving pressure | Pa | above 0 |
    /// | A | permeance at 25 °C | m³/(s Pa) | |
    ///
    /// The rating also anchors the film: J/k = 0.7·Y at the mean crossflow Q/Y·(1 − Y/2).
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite) or [`OutOfRange`](crate::ErrorKind::OutOfRange) with the name of the
    /// figure; [`Inconsistent`](crate::ErrorKind::Inconsistent) where the salt holds back all of the pressure.
    /// # Source
    /// Log-mean: ASTM D4516, seen in a review; β: makers' rule for salt. Elements differ from their rating by ±15 to
    /// ±20 % (makers' sheets).
    /// # Examples
    /// ```
    /// use sugaring::{membrane::{Element, ElementRating}, units::*};
    /// let element = Element::from_rating(&ElementRating {
    ///     flow: cubic_metre_per_day(0.9),
    ///     pressure: bar_gauge(4.1),
    ///     temperature: deg_c(25.0),
    ///     salt: mg_per_litre(500.0),
    ///     recovery: percent(15.0),
    ///     rejection: percent(97.0),
    /// })?;
    /// assert_eq!(format!("{:.3}", element.permeance().get::<litre_per_h_bar>()), "10.304");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{membrane::{Element, ElementRating}, units::*};
    /// # let rating = ElementRating { flow: cubic_metre_per_day(0.9), pressure: bar_gauge(4.1), temperature: deg_c(25.0),
    /// #     salt: mg_per_litre(500.0), recovery: percent(15.0), rejection: percent(97.0) };
    /// let error = Element::from_rating(&ElementRating { recovery: fraction(15.0), ..rating }).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "recovery = 15 is outside 0.01 to 0.8; 15 % is written percent(15), \"15 %\" or 0.15"
    /// );
    /// ```
    pub fn from_rating(rating: &ElementRating) -> Result<Self, Error> {
        let flow = RATING.check(0, rating.flow.si())?;
        let pressure = RATING.check(1, rating.pressure.si())?;
        let tested_at = RATING.check(2, rating.temperature.si())?;
        let salt = RATING.check(3, rating.salt.si())?;
        let recovery = RATING.check(4, rating.recovery.si())?;
        let rejection = RATING.check(5, rating.rejection.si())?;

        let log_mean = -math::ln_1p(-recovery) / recovery;
        let polarisation = math::exp(POLARISATION * recovery);
        let held_back = rejection * test_water_osmotic_pressure_at(salt, tested_at) * log_mean * polarisation;
        let net = pressure - held_back;
        if net <= 0.0 {
            return Err(without_drive(rating, held_back));
        }
        Ok(Self {
            rating: *rating,
            own: None,
            tested: flow / net,
            tested_at,
            net,
            film: flow / (POLARISATION * recovery),
            crossflow: flow / recovery * (1.0 - 0.5 * recovery),
        })
    }

    /// An element whose permeance was measured; its rating anchors the film only.
    ///
    /// # Errors
    /// As [`Element::from_rating`]; the permeance, at 25 °C, may be 0.01 to 10 000 L/h/bar.
    /// # Source
    /// Definition.
    /// # Examples
    /// ```
    /// use sugaring::{membrane::{Element, ElementRating}, units::*};
    /// let rating = ElementRating {
    ///     flow: cubic_metre_per_day(0.9),
    ///     pressure: bar_gauge(4.1),
    ///     temperature: deg_c(25.0),
    ///     salt: mg_per_litre(500.0),
    ///     recovery: percent(15.0),
    ///     rejection: percent(97.0),
    /// };
    /// let element = Element::from_permeance(litre_per_h_bar(9.4), &rating)?;
    /// assert_eq!(format!("{:.1}", element.permeance().get::<litre_per_h_bar>()), "9.4");
    /// let error = Element::from_permeance(litre_per_h_bar(-1.0), &rating).unwrap_err();
    /// assert_eq!(error.to_string(), "permeance = -1 L/h/bar is outside 0.01 to 10000 L/h/bar");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn from_permeance(permeance: Permeance, rating: &ElementRating) -> Result<Self, Error> {
        let tested = PERMEANCE.check(permeance.si())?;
        Ok(Self {
            own: Some(permeance),
            tested,
            tested_at: BASE,
            ..Self::from_rating(rating)?
        })
    }

    /// Permeance of the element at 25 °C, by the makers' temperature factor.
    #[must_use]
    pub fn permeance(&self) -> Permeance {
        Permeance::of_si(self.permeance_at(BASE, FactorModel::Makers))
    }

    /// What drove the water through in the rating test: its pressure less what the salt held back.
    #[must_use]
    pub fn net_driving_pressure(&self) -> Pressure {
        Pressure::of_si(self.net)
    }

    /// Permeance in m³/(s Pa) at a temperature in K, carried there from the test by one model.
    pub(crate) fn permeance_at(&self, kelvin: f64, model: FactorModel) -> f64 {
        self.tested * (model.at(kelvin) / model.at(self.tested_at))
    }
}

/// What [`Element::from_rating`] covers.
pub static RATING: Relation = Relation {
    name: "membrane::Element::from_rating",
    inputs: &[
        Range::new("flow", &table::cubic_metre_per_day, 0.001, 1000.0),
        Range::new("pressure", &table::bar_gauge, 0.1, 70.0),
        TEMPERATURE,
        SALT,
        Range::new("recovery", &table::fraction, 0.01, 0.8),
        Range::new("rejection", &table::fraction, 0.5, 1.0),
    ],
    output: &table::litre_per_h_bar,
    source: Source::Derived {
        text: "solution-diffusion on the rating test: log-mean of ASTM D4516, makers' exp(0.7 recovery)",
    },
    accuracy: "±15 to ±20 % for one element (makers' sheets)",
};

const PERMEANCE: Range = Range::new("permeance", &table::litre_per_h_bar, 0.01, 10_000.0);

/// Makers' rule for salt at 25 °C and recoveries to 0.2: the excess at the membrane is exp(0.7 recovery).
const POLARISATION: f64 = 0.7;

#[cold]
fn without_drive(rating: &ElementRating, held_back: f64) -> Error {
    let salt = table::mg_per_litre.show(table::mg_per_litre.from_si(rating.salt.si()));
    let pressure = table::bar_gauge.show(table::bar_gauge.from_si(rating.pressure.si()));
    let bar = crate::digits::significant(table::bar.from_si(held_back), 4);
    Error::inconsistent("salt", &salt, &alloc::format!("pressure = {pressure}"))
        .with_value(table::mg_per_litre.from_si(rating.salt.si()), &table::mg_per_litre)
        .with_hint(alloc::format!("the salt alone holds back {bar} bar"))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{bar_gauge, cubic_metre_per_day, deg_c, fraction, litre_per_h_bar, mg_per_litre};
    use proptest::prelude::*;

    fn rating(flow: f64, pressure: f64, t: f64, salt: f64, recovery: f64, rejection: f64) -> ElementRating {
        ElementRating {
            flow: cubic_metre_per_day(flow),
            pressure: bar_gauge(pressure),
            temperature: deg_c(t),
            salt: mg_per_litre(salt),
            recovery: fraction(recovery),
            rejection: fraction(rejection),
        }
    }

    #[test]
    fn salt_may_hold_back_everything() {
        let error = Element::from_rating(&rating(0.9, 4.1, 25.0, 8000.0, 0.15, 0.97)).unwrap_err();
        assert_eq!(
            error.to_string(),
            "salt = 8000 mg/L does not fit pressure = 4.1 bar gauge; the salt alone holds back 7.368 bar"
        );
    }

    proptest! {
        #[test]
        fn never_panics(n in prop::array::uniform7(any::<f64>())) {
            let rating = rating(n[0], n[1], n[2], n[3], n[4], n[5]);
            let _ = (Element::from_rating(&rating), Element::from_permeance(litre_per_h_bar(n[6]), &rating));
        }

        #[test]
        fn a_test_at_another_temperature_is_carried_to_25(t in 0.0..45.0_f64) {
            let cold = Element::from_rating(&rating(0.9, 4.1, t, 0.0, 0.15, 1.0)).unwrap();
            let warm = Element::from_rating(&rating(0.9, 4.1, 25.0, 0.0, 0.15, 1.0)).unwrap();
            let ratio = warm.permeance().si() / cold.permeance().si();
            let factor = super::super::temperature_factor(deg_c(t), FactorModel::Makers).unwrap();
            prop_assert!((ratio / factor - 1.0).abs() < 1e-14);
        }
    }
}
