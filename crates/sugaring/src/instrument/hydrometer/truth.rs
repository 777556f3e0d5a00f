//! From the mark to the liquid and back.

use alloc::format;

use super::{
    super::{Reading, reading},
    Hydrometer,
    float::{BRACKET, density_rise},
    marking::Marking,
};
use crate::{
    error::Error,
    math,
    relation::{Range, Relation, Source},
    units::{Brix, Measured, Temperature, Value, measured, table},
};

impl Hydrometer {
    /// What the liquid is that shows `reading` at `temperature`.
    ///
    /// ρ(r, t₀) = ρ(w, t) \[1 + β (t − t₀)\], solved for w
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | r | reading, corrected | °Bx | −15 to 100 |
    /// | t | temperature of liquid and glass | °C | 0 to 106 |
    /// | t₀ | temperature of calibration | °C | 0 to 40 |
    /// | β | cubical expansion of the glass | 1/K | 0 to 1e-4 |
    /// | w | true °Brix | °Bx | 0 to 85 |
    ///
    /// The uncertainty is that of the marks, times the slope ∂w/∂r there: in hot syrup a °Bx of the scale is 0.95 of the
    /// liquid. Above 100 °C the density is extrapolated, which it then includes (2.5 kg/m³).
    ///
    /// # Errors
    /// Out of range, where the liquid would be thinner than water or thicker than 85 °Bx; or not finite.
    /// # Source
    /// Archimedes, with the density of [`sucrose::density`](crate::sucrose::density). Agrees with the corrections of NBS
    /// Circular 440 within 0.055 °Bx from 5 to 60 °C, 0.105 at 0 °C. Air on the stem, surface tension and pressure are
    /// left out, each below 0.02 °Bx.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::{Hydrometer, reading}, units::*};
    /// let sap = Hydrometer::brix(deg_c(20.0))?.with_uncertainty(0.1)?;
    /// let truth = sap.truth(reading(2.4), deg_c(4.0))?;
    /// assert_eq!(format!("{:.2}", truth.value), "2.00 °Bx");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{instrument::{Hydrometer, reading}, units::*};
    /// let syrup = Hydrometer::brix(deg_f(60.0))?;
    /// assert_eq!(
    ///     syrup.truth(reading(59.0), deg_c(211.0)).unwrap_err().to_string(),
    ///     "temperature = 211 °C is outside 0 to 106 °C; 211 °F is 99.44 °C: write deg_f(211)",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn truth(&self, reading: Reading, temperature: Temperature) -> Result<Measured<Brix>, Error> {
        let shown = reading.get();
        if matches!(self.marking, Marking::Brix) {
            HYDROMETER.check(0, shown)?;
        } else if !shown.is_finite() {
            return Err(Error::not_finite("reading", shown));
        }
        let kelvin = HYDROMETER.check(1, temperature.si())?;
        self.on_paper(shown)?;
        if let Some(slip) = self.usual_slip(reading, temperature) {
            let unit = &table::deg_c;
            let at = format!("temperature = {}", unit.show(unit.from_si(kelvin)));
            return Err(Error::inconsistent("reading", &self.marking.unit().show(shown), &at).with_hint(slip));
        }
        match self.strength(shown, kelvin) {
            // A reading of water, fed back, may come out a rounding below nothing.
            Some((beside, brix)) if (-1e-9..=DENSEST + 1e-9).contains(&brix) => {
                let brix = brix.clamp(0.0, DENSEST);
                Ok(measured(Brix::trusted(brix), self.uncertainty_at(beside, brix, kelvin)))
            }
            _ => Err(self.off_scale(shown, kelvin)),
        }
    }

    /// Where it floats: the mark that a liquid of `brix` shows at `temperature`.
    ///
    /// ρ(r, t₀) = ρ(w, t) \[1 + β (t − t₀)\], solved for r; symbols as for [`Hydrometer::truth`]
    ///
    /// # Errors
    /// Out of range or not finite, also where the mark would lie beyond its paper or its two checks.
    /// # Source
    /// As [`Hydrometer::truth`], of which it is the inverse.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::Hydrometer, units::*};
    /// let syrup = Hydrometer::brix(deg_f(60.0))?;
    /// assert_eq!(format!("{:.1}", syrup.reading(brix(66.9)?, deg_f(211.0))?), "59.0");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{instrument::Hydrometer, units::*};
    /// let syrup = Hydrometer::brix(deg_f(60.0))?;
    /// assert_eq!(
    ///     syrup.reading(brix(90.0)?, deg_c(20.0)).unwrap_err().to_string(),
    ///     "brix = 90 °Bx is outside 0 to 85 °Bx",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn reading(&self, brix: Brix, temperature: Temperature) -> Result<Reading, Error> {
        let brix = HYDROMETER.check(2, brix.get())?;
        let kelvin = HYDROMETER.check(1, temperature.si())?;
        let Some(mark) = self.shows(brix, kelvin) else {
            return Err(Error::no_convergence("reading"));
        };
        match self.on_paper(mark) {
            Ok(()) => Ok(reading(mark)),
            Err(beyond) => Err(self.off_paper(brix, kelvin, &beyond)),
        }
    }

    /// °Brix beside the mark `shown`, and of the liquid that shows it; `None` where no solution does.
    pub(super) fn strength(&self, shown: f64, kelvin: f64) -> Option<(f64, f64)> {
        let mark = self.correction.corrected(shown);
        let beside = self.marking.brix(mark, self.float.calibrated_at)?;
        Some((beside, self.float.brix(beside, kelvin)?))
    }

    /// What it shows, offset and all.
    pub(super) fn shows(&self, brix: f64, kelvin: f64) -> Option<f64> {
        let beside = self.float.mark(brix, kelvin)?;
        Some(
            self.correction
                .shown(self.marking.mark(beside, self.float.calibrated_at)),
        )
    }

    /// Of a truth `brix`, where the mark stands beside `beside`.
    fn uncertainty_at(&self, beside: f64, brix: f64, kelvin: f64) -> f64 {
        let per_mark = self.marking.brix_per_mark(beside, self.float.calibrated_at);
        let slope = self.correction.slope() * per_mark * self.float.slope(beside, brix, kelvin);
        let mut squares = self.graduation.squares() * (slope * slope);
        if kelvin > DENSITY_COVERED {
            let limits = DENSITY_EXTRAPOLATED / density_rise(brix, kelvin);
            squares += limits * limits / 3.0;
        }
        math::sqrt(squares)
    }
}

/// What [`Hydrometer::truth`] and [`Hydrometer::reading`] cover.
pub static HYDROMETER: Relation = Relation {
    name: "instrument::Hydrometer",
    inputs: &[
        Range::new("reading", &table::deg_brix, BRACKET.0, BRACKET.1),
        Range::new("temperature", &table::deg_c, 0.0, 106.0),
        Range::new("brix", &table::deg_brix, 0.0, DENSEST),
    ],
    output: &table::deg_brix,
    source: Source::Derived {
        text: "floating condition with the density of sucrose solutions and the expansion of glass",
    },
    accuracy: "0.05 °Bx from 5 to 60 °C, 0.1 at 0 and 99 °C; extrapolated above 100 °C",
};

/// The strongest solution whose density is known, °Bx.
pub(super) const DENSEST: f64 = 85.0;
/// Up to here the density's source covers it, K; beyond, it is off by up to so much, kg/m³ (judgement).
const DENSITY_COVERED: f64 = 373.15;
const DENSITY_EXTRAPOLATED: f64 = 2.5;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::instrument::Check;
    use crate::units::{brix, deg_c, deg_f, per_kelvin};
    use proptest::prelude::*;

    fn usual() -> Hydrometer {
        Hydrometer::brix(deg_f(60.0)).unwrap()
    }

    #[test]
    fn water_reads_below_nothing_when_warm() {
        let shows = |celsius| usual().reading(brix(0.0).unwrap(), deg_c(celsius)).unwrap().get();
        assert!((shows(40.0) - -1.6).abs() < 0.05);
        assert!((shows(100.0) - -10.3).abs() < 0.05);
        let error = usual().truth(reading(-12.0), deg_c(100.0)).unwrap_err();
        assert_eq!(
            error.to_string(),
            "reading = -12 °Bx is outside -10.33 to 78 °Bx; it reads below pure water at this temperature"
        );
    }

    /// NBS Circular 440, readings of 0 on a 20 °C scale: no liquid is so thin, but the condition of floating holds.
    #[test]
    fn corrections_of_a_reading_of_nothing() {
        let float = Hydrometer::brix(deg_c(20.0)).unwrap().float;
        for (celsius, correction) in [
            (10.0, -0.32),
            (11.0, -0.31),
            (13.0, -0.26),
            (14.0, -0.24),
            (16.0, -0.17),
            (17.0, -0.13),
            (19.0, -0.05),
        ] {
            let found = float.brix(0.0, celsius + 273.15).unwrap();
            assert!((found - correction).abs() < 0.055, "{celsius} {found}");
        }
    }

    #[test]
    fn uncertainties_add_in_squares() {
        let at = |hydrometer: Hydrometer, celsius| hydrometer.truth(reading(60.0), deg_c(celsius)).unwrap().uncertainty;
        let truth = |shown| usual().truth(reading(shown), deg_c(90.0)).unwrap().value.get();
        let slope = (truth(60.01) - truth(59.99)) / 0.02;
        assert!(
            (at(usual(), 90.0) - 0.3 * slope).abs() < 1e-5 && slope < 0.98,
            "{slope}"
        );
        let tested = usual().with_uncertainty(0.15).unwrap().with_resolution(0.5).unwrap();
        assert!((at(tested, 15.556) - 0.2082).abs() < 1e-4);
        // 2.5 kg/m³ of the density as limits, 6.2 kg/m³ per °Bx there.
        let cooler = at(usual(), 99.9);
        let hot = at(usual(), 103.0);
        let more = math::sqrt(hot * hot - cooler * cooler);
        assert!((more - 0.2327).abs() < 3e-3, "{more}");
    }

    proptest! {
        #[test]
        fn reading_and_truth_are_inverse(
            w in 0.0..85.0_f64, t in 0.0..106.0_f64, t0 in 0.0..40.0_f64, offset in -1.0..1.0_f64, glass in 0.0..1e-4_f64,
        ) {
            let hydrometer = Hydrometer::brix(deg_c(t0)).unwrap().with_offset(offset).unwrap();
            let hydrometer = hydrometer.with_glass_expansion(per_kelvin(glass)).unwrap().with_span(-15.0, 100.0).unwrap();
            let mark = hydrometer.reading(brix(w).unwrap(), deg_c(t)).unwrap();
            prop_assert!((hydrometer.truth(mark, deg_c(t)).unwrap().value.get() - w).abs() < 1e-9);
            let again = hydrometer.reading(hydrometer.truth(mark, deg_c(t)).unwrap().value, deg_c(t)).unwrap();
            prop_assert!((again.get() - mark.get()).abs() < 1e-9);
        }

        /// On every scale, offset or checked at two points, hot water included.
        #[test]
        fn every_scale_reads_back(w in 0.0..85.0_f64, t in 0.0..106.0_f64, t0 in 0.0..40.0_f64, part in 0.0..1.0_f64) {
            for name in Marking::names() {
                let right = Hydrometer::marked(Marking::named(name).unwrap(), deg_c(t0)).unwrap();
                let slipped = right.with_offset(0.03).unwrap();
                let of = |strength: f64| {
                    let mark = right.reading(brix(strength).unwrap(), deg_c(t)).unwrap().get();
                    Check { reading: reading(1.01 * mark + 0.02), brix: brix(strength).unwrap(), temperature: deg_c(t) }
                };
                let checked = right.two_point(of(0.0), of(85.0)).unwrap();
                for hydrometer in [right, slipped, checked] {
                    let span = hydrometer.with_span(-15.0, 1600.0).unwrap();
                    let mark = span.reading(brix(w).unwrap(), deg_c(t)).unwrap();
                    let truth = span.truth(mark, deg_c(t)).unwrap();
                    prop_assert!((truth.value.get() - w).abs() < 1e-9, "{} {}", name, truth.value);
                    prop_assert!(truth.uncertainty > 0.2 && truth.uncertainty < 0.8, "{} {}", name, truth.uncertainty);
                    let again = span.reading(truth.value, deg_c(t)).unwrap().get();
                    prop_assert!((again - mark.get()).abs() < 1e-9 * mark.get().abs().max(1.0));
                    let zeroed = right.zeroed(reading(mark.get() + 0.01 * part), truth.value, deg_c(t)).unwrap();
                    let back = zeroed.reading(truth.value, deg_c(t)).unwrap().get();
                    prop_assert!((back - mark.get() - 0.01 * part).abs() < 1e-9 * mark.get().abs().max(1.0));
                }
            }
        }

        #[test]
        fn sweeter_floats_higher(w in 0.0..84.0_f64, step in 1e-3..1.0_f64, t in 0.0..106.0_f64) {
            let at = |w| usual().reading(brix(w).unwrap(), deg_c(t)).unwrap();
            prop_assert!(at(w + step) > at(w));
        }

        #[test]
        fn any_number_is_taken(a in any::<f64>(), b in any::<f64>()) {
            let _ = (Hydrometer::brix(deg_c(a)), usual().with_offset(a), usual().with_resolution(a));
            let _ = (usual().with_uncertainty(a), usual().with_glass_expansion(per_kelvin(a)));
            let _ = (usual().truth(reading(a), deg_c(b)), usual().usual_slip(reading(a), deg_c(b)));
            let _ = usual().reading(Brix::trusted(a), deg_c(b));
        }
    }
}
