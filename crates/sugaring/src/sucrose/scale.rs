//! Density scales: Baumé and relative density, each with its temperatures.

use alloc::format;

use super::{
    density::{STRONGEST, brix_from_density_at, density_at},
    scales,
    volume::AIR,
};
use crate::{
    digits,
    error::Error,
    units::{Brix, Dimension, Graduation, Marks, OnScale, Scale, Si, Unit, Value, table},
};

/// Where a sucrose solution stands on the density scale `S`, such as [`baume_20_20`](type@crate::units::baume_20_20).
///
/// ```text
/// d = (ρ(B, t) − ρ_a) / (ρ(0, t₀) − ρ_a),  Bé = 145 − 145 / d
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | B | `brix` | °Bx | 0 to 85 |
/// | t, t₀ | temperatures of solution and water, those of the scale | °C | |
/// | ρ | [`density`](super::density) | kg/m³ | |
/// | `ρ_a` | density of air: 1.2 for a scale in air, else 0 | kg/m³ | |
/// | d | relative density | | 0.998 to 1.45 |
/// | Bé | degrees Baumé of modulus 145 | °Bé | 0 to 45 |
///
/// The pairs that syrup standards print, 36 °Bé beside 66.9 °Bx, are those of 20/20, although the standards say 60 °F;
/// a law's °Brix and its °Bé are both kept as printed, never converted.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// [`density`](super::density); the modulus by Hydraulic Institute, table 2.D.5; air as NBS Circular 440 weighs.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let syrup = brix(66.9)?;
/// let trade = sucrose::on_scale::<baume_20_20>(syrup)?.get::<baume_20_20>();
/// let warm = sucrose::on_scale::<baume_60_60_f>(syrup)?.get::<baume_60_60_f>();
/// assert_eq!(format!("{trade:.3} {warm:.2}"), "36.025 36.12");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::on_scale::<baume_20_20>(brix(90.0)?).unwrap_err();
/// assert_eq!(error.to_string(), "brix = 90 °Bx is outside 0 to 85 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn on_scale<S: Scale>(brix: Brix) -> Result<OnScale<S>, Error> {
    let (relation, _) = scales::relations(S::DIMENSION);
    let brix = relation.check(0, brix.si())?;
    Ok(OnScale::of_si(S::MARKS.mark(brix)))
}

/// °Brix of the sucrose solution that stands at `value` on a density scale: the inverse of [`on_scale`].
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | value | mark on the scale | | that of 0 °Bx to that of 85 °Bx |
/// | B | °Brix | °Bx | 0 to 85 |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// As [`on_scale`], solved for °Brix; found to 1e-12 °Bx.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// assert_eq!(format!("{:.2}", sucrose::brix_from_scale(baume_20_20(36.0))?), "66.85 °Bx");
/// assert_eq!(format!("{:.2}", sucrose::brix_from_scale(baume_60_60_f(36.0))?), "66.66 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// A number in °Brix, taken for Baumé:
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::brix_from_scale(baume_20_20(66.9)).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "value = 66.9 °Bé 20/20 is outside 0 to 44.9 °Bé 20/20; 66.9 °Bx is 36.03 °Bé 20/20: is it °Brix already?"
/// );
/// ```
pub fn brix_from_scale<S: Scale>(value: OnScale<S>) -> Result<Brix, Error> {
    strength(S::DIMENSION, &S::MARKS, value.si())
}

/// Once for all scales: the types say no more than dimension and marks.
fn strength(scale: Dimension, marks: &Marks, value: f64) -> Result<Brix, Error> {
    let (_, relation) = scales::relations(scale);
    let mark = relation
        .check(0, value)
        .map_err(|error| hinted(error, scale, marks, value))?;
    match marks.brix(mark) {
        Some(found) if found > 0.0 && found < STRONGEST => Ok(Brix::trusted(found)),
        // A unit in the last place of the density is 3e-14 °Bx.
        Some(found) if (-ROUNDING..=0.0).contains(&found) => Ok(Brix::trusted(0.0)),
        Some(found) if (STRONGEST..=STRONGEST + ROUNDING).contains(&found) => Ok(Brix::trusted(STRONGEST)),
        _ => Err(outside(scale, marks, mark)),
    }
}

#[cold]
fn outside(scale: Dimension, marks: &Marks, mark: f64) -> Error {
    let (low, high) = (marks.mark(0.0), marks.mark(STRONGEST));
    let error = Error::out_of_limits("value", mark, Unit::base(scale), low, high);
    if mark < low {
        error.with_hint("it reads below pure water")
    } else {
        hinted(error, scale, marks, mark)
    }
}

/// The usual slip: °Brix on a scale that does not reach so far.
#[cold]
fn hinted(error: Error, scale: Dimension, marks: &Marks, mark: f64) -> Error {
    if mark > marks.mark(STRONGEST) && mark <= STRONGEST {
        let meant = Unit::base(scale).with_symbol(&digits::significant(marks.mark(mark), 4));
        error.with_hint(format!(
            "{} is {meant}: is it °Brix already?",
            table::deg_brix.show(mark)
        ))
    } else {
        error
    }
}

impl Marks {
    /// The mark of a strength in °Bx, no range check.
    pub(crate) fn mark(&self, brix: f64) -> f64 {
        let air = self.air();
        let relative = (density_at(brix, self.solution) - air) / (density_at(0.0, self.water) - air);
        match self.graduation {
            Graduation::RelativeDensity => relative,
            Graduation::Baume => MODULUS - MODULUS / relative,
        }
    }

    /// °Bx on [−15, 100] of a mark, or `None` where no solution stands there.
    pub(crate) fn brix(&self, mark: f64) -> Option<f64> {
        let relative = match self.graduation {
            Graduation::RelativeDensity => mark,
            Graduation::Baume => MODULUS / (MODULUS - mark),
        };
        let air = self.air();
        brix_from_density_at(relative * (density_at(0.0, self.water) - air) + air, self.solution)
    }

    fn air(&self) -> f64 {
        if self.in_air { AIR } else { 0.0 }
    }
}

/// Of Baumé's scale for liquids heavier than water.
const MODULUS: f64 = 145.0;
const ROUNDING: f64 = 1e-9;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    fn shown<S: Scale>(strength: f64) -> f64 {
        on_scale::<S>(brix(strength).unwrap()).unwrap().si()
    }

    fn corners<S: Scale>() {
        for strength in [0.0, 85.0] {
            let there = on_scale::<S>(brix(strength).unwrap()).unwrap();
            assert!(
                (brix_from_scale(there).unwrap().get() - strength).abs() < 1e-9,
                "{there:?}"
            );
        }
    }

    #[test]
    fn values_of_the_note() {
        for (strength, trade) in [(66.0, 35.570), (66.9, 36.025), (68.9, 37.033)] {
            assert!((shown::<baume_20_20>(strength) - trade).abs() < 5.1e-4);
        }
        assert!((shown::<baume_60_60_f>(66.9) - 36.12).abs() < 5.1e-3);
        for (found, value) in [
            (shown::<relative_density_20_20>(66.9), 1.33058),
            (shown::<relative_density_60_60_f>(66.9), 1.33175),
            (shown::<relative_density_20_4>(66.9), 1.32823),
        ] {
            assert!((found - value).abs() < 5.1e-6, "{found}");
        }
        // In air a syrup reads 0.0004 higher, 0.064 °Bx.
        let apparent = shown::<apparent_relative_density_20_20>(66.9);
        assert!((apparent - shown::<relative_density_20_20>(66.9) - 0.0004).abs() < 5e-6);
    }

    #[test]
    fn corners_meet() {
        corners::<baume_20_20>();
        corners::<baume_60_60_f>();
        corners::<relative_density_20_20>();
        corners::<relative_density_60_60_f>();
        corners::<relative_density_20_4>();
        corners::<apparent_relative_density_20_20>();
    }

    #[test]
    fn below_water_says_so() {
        let error = brix_from_scale(relative_density_20_20(0.9999)).unwrap_err();
        assert_eq!(
            error.to_string(),
            "value = 0.9999 SG 20/20 is outside 1 to 1.4486 SG 20/20"
        );
        let error = brix_from_scale(relative_density_20_4(0.9981)).unwrap_err();
        assert_eq!(
            error.to_string(),
            "value = 0.9981 SG 20/4 is outside 0.9983 to 1.445 SG 20/4; it reads below pure water"
        );
    }

    proptest! {
        #[test]
        fn never_panics(x in any::<f64>()) {
            let _ = (brix_from_scale(baume_20_20(x)), brix_from_scale(apparent_relative_density_20_20(x)));
            if let Ok(strength) = brix(x) {
                let _ = (on_scale::<baume_60_60_f>(strength), on_scale::<relative_density_20_4>(strength));
            }
        }

        #[test]
        fn inverse_meets_forward(strength in 0.0..85.0_f64) {
            let baume = on_scale::<baume_60_60_f>(brix(strength).unwrap()).unwrap();
            prop_assert!((brix_from_scale(baume).unwrap().get() - strength).abs() < 1e-10);
            let apparent = on_scale::<apparent_relative_density_20_20>(brix(strength).unwrap()).unwrap();
            prop_assert!((brix_from_scale(apparent).unwrap().get() - strength).abs() < 1e-10);
        }
    }
}
