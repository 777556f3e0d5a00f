//! Refractive index of sucrose solutions and the °Brix behind an index.

use super::density::DensityIsotherm;
use crate::{
    error::Error,
    lanes::{LANES, Lanes, block_of, spill, widest},
    math,
    relation::{Range, Relation, Source},
    solve,
    units::{Brix, Temperature, Value, table},
};

/// Refractive index of a sucrose solution for yellow sodium light, against air.
///
/// ```text
/// n = √((1 + 2 L) / (1 − L)) / 1.000272,  L = ρ(B, t) ((1 − w) r_w(t) + w r_s)
/// r_s = 1e-6 (206.8752 − 1.6111 w − 1.5243 w² + 0.4509 w³ + (t − 20) (0.01245 + 0.00451 w)) m³/kg
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | w | `brix` / 100 | | 0 to 0.85 |
/// | t | `temperature` of the prism | °C | 5 to 60 |
/// | ρ | [`density`](super::density) | kg/m³ | |
/// | `r_w` | refractivity of water per density, IAPWS R9-97 at 589.3 nm | m³/kg | |
/// | n | refractive index | | 1.32 to 1.51 |
///
/// It falls with the temperature, so that a scale made for 20 °C reads low in warm syrup: by 0.4 °Bx at 25 °C.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// Lorentz and Lorenz mixing; the refractivity of sucrose fitted to OIV-MA-AS2-02 Tables I and II and, above 26 °Bx, to
/// the ICUMSA table (from memory), that of water by IAPWS R9-97. 1.000272 is the index of air (from memory).
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let syrup = sucrose::refractive_index(brix(66.9)?, deg_c(20.0))?;
/// assert_eq!(format!("{syrup:.5}"), "1.45798");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// A drop straight from the pan:
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::refractive_index(brix(66.9)?, deg_c(102.0)).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "temperature = 102 °C is outside 5 to 60 °C; 102 °F is 38.89 °C: write deg_f(102)"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn refractive_index(brix: Brix, temperature: Temperature) -> Result<f64, Error> {
    let brix = REFRACTIVE_INDEX.check(0, brix.si())?;
    let kelvin = REFRACTIVE_INDEX.check(1, temperature.si())?;
    Ok(refractive_index_at(brix, kelvin))
}

/// °Brix of the sucrose solution of this refractive `index` at `temperature`: the inverse of [`refractive_index`].
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | n | refractive `index` | | n(0 °Bx, t) to n(85 °Bx, t), in all 1.32 to 1.51 |
/// | t | `temperature` of the prism | °C | 5 to 60 |
/// | B | °Brix | °Bx | 0 to 85 |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange) with the indices that
/// this temperature allows.
/// # Source
/// As [`refractive_index`], solved for °Brix; found to 1e-12 °Bx.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let syrup = sucrose::brix_from_refractive_index(1.45798, deg_c(20.0))?;
/// assert_eq!(format!("{syrup:.1}"), "66.9 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// Less than water:
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::brix_from_refractive_index(1.33, deg_c(20.0)).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "index = 1.33 is outside 1.333 to 1.503; it reads below pure water at this temperature: set the instrument to \
///      zero in water"
/// );
/// ```
pub fn brix_from_refractive_index(index: f64, temperature: Temperature) -> Result<Brix, Error> {
    let target = BRIX_FROM_REFRACTIVE_INDEX.check(0, index)?;
    let kelvin = BRIX_FROM_REFRACTIVE_INDEX.check(1, temperature.si())?;
    let isotherm = RefractionIsotherm::at(kelvin);
    match isotherm.brix(target) {
        // A unit in the last place of the index is 1.5e-13 °Bx.
        Some(found) if (-ROUNDING..=STRONGEST + ROUNDING).contains(&found) => {
            Ok(Brix::trusted(found.clamp(0.0, STRONGEST)))
        }
        _ => Err(outside(&isotherm, target)),
    }
}

#[cold]
fn outside(isotherm: &RefractionIsotherm, target: f64) -> Error {
    let (low, high) = (isotherm.index(0.0), isotherm.index(STRONGEST));
    let error = Error::out_of_limits("index", target, &table::fraction, low, high);
    if target < low {
        error.with_hint("it reads below pure water at this temperature: set the instrument to zero in water")
    } else {
        error
    }
}

/// What [`refractive_index`] covers.
pub static REFRACTIVE_INDEX: Relation = Relation {
    name: "sucrose::refractive_index",
    inputs: &[Range::new("brix", &table::deg_brix, 0.0, STRONGEST), TEMPERATURE],
    output: &table::fraction,
    source: SOURCE,
    accuracy: ACCURACY,
};

/// What [`brix_from_refractive_index`] covers.
pub static BRIX_FROM_REFRACTIVE_INDEX: Relation = Relation {
    name: "sucrose::brix_from_refractive_index",
    inputs: &[Range::new("index", &table::fraction, 1.32, 1.51), TEMPERATURE],
    output: &table::deg_brix,
    source: SOURCE,
    accuracy: ACCURACY,
};

const SOURCE: Source = Source::Derived {
    text: "Lorentz and Lorenz mixing on the density; sucrose by least squares to OIV-MA-AS2-02 Tables I and II and to \
        the ICUMSA table (from memory), water by IAPWS R9-97",
};
const ACCURACY: &str = "at 20 °C 0.00001 to 30 °Bx, 0.00003 to 75 °Bx; the correction for temperature 0.02 °Bx from 10 \
    to 17 °C, 0.05 °Bx elsewhere to 40 °C; not checked above";
const TEMPERATURE: Range = Range::new("temperature", &table::deg_c, 5.0, 60.0);
const STRONGEST: f64 = 85.0;
const ROUNDING: f64 = 1e-9;

/// The refractive indices of one temperature: for many strengths at once.
#[derive(Clone, Copy, Debug)]
struct RefractionIsotherm {
    density: DensityIsotherm,
    /// m³/kg.
    water: f64,
    /// m³/kg, by power of the strength.
    sucrose: [f64; 4],
}

impl RefractionIsotherm {
    #[inline(always)]
    fn at(kelvin: f64) -> Self {
        let density = DensityIsotherm::at(kelvin);
        let warm = kelvin - 293.15;
        let [s0, s1, s2, s3] = SUCROSE;
        let [w0, w1] = SUCROSE_WARM;
        Self {
            density,
            water: water_refractivity(density.density(0.0), kelvin),
            sucrose: [s0 + warm * w0, s1 + warm * w1, s2, s3].map(|term| 1e-6 * term),
        }
    }

    /// Of a strength in °Bx.
    #[inline(always)]
    fn index(&self, brix: f64) -> f64 {
        let w = brix / 100.0;
        let sucrose = math::polynomial(&self.sucrose, w);
        let l = self.density.density(brix) * ((1.0 - w) * self.water + w * sucrose);
        math::sqrt((1.0 + 2.0 * l) / (1.0 - l)) / AIR
    }

    /// °Bx on [−6, 95] of an index: it rises with the strength throughout, by 0.0013 per °Bx at least.
    ///
    /// To 85 °Bx by steps that lead there, elsewhere bracketed.
    fn brix(&self, index: f64) -> Option<f64> {
        let (refraction, terms) = (refraction(index), self.terms());
        let (mut w, mut step) = (self.start(refraction), 0.0);
        for _ in 0..STEPS {
            (w, step) = nearer(terms, refraction, w);
        }
        if settled(100.0 * w, step) {
            return Some(100.0 * w);
        }
        let found = solve::root(|brix| self.index(brix) - index, -6.0, 95.0, 1e-13)?;
        found.settled.then_some(found.at)
    }
}

impl RefractionIsotherm {
    /// Mass fraction of a refraction, within 0.0063 to 85 °Bx.
    #[inline(always)]
    fn start(&self, refraction: f64) -> f64 {
        let [c1, c1_warm, c2] = START;
        let excess = 10.0 * (refraction - self.density.density(0.0) * self.water);
        excess * (c1 + c1_warm * self.density.u() + c2 * excess)
    }

    /// Density and refraction per density, both by power of the strength.
    #[inline(always)]
    fn terms(&self) -> [f64; 12] {
        let [d0, d1, d2, d3, d4, d5, d6] = self.density.terms();
        let [s0, s1, s2, s3] = self.sucrose;
        [d0, d1, d2, d3, d4, d5, d6, self.water, s0 - self.water, s1, s2, s3]
    }
}

/// Refractive index from °Bx and K, no range check.
#[inline(always)]
pub(crate) fn refractive_index_at(brix: f64, kelvin: f64) -> f64 {
    RefractionIsotherm::at(kelvin).index(brix)
}

/// °Bx on [−6, 95] from refractive index and K, no range check; `None` where no solution has it.
pub(crate) fn brix_from_refractive_index_at(index: f64, kelvin: f64) -> Option<f64> {
    RefractionIsotherm::at(kelvin).brix(index)
}

widest! {
    /// °Bx from index and K within the limits of the inverse; NaN where the temperature allows no such index.
    pub(crate) fn brixes_from_refractive_index(index: &[f64], kelvin: &[f64], out: &mut [f64]) {
        for (place, out) in out.chunks_mut(LANES).enumerate() {
            let found = block(&block_of(index, place, 1.4), &block_of(kelvin, place, 293.15));
            spill(&found, out);
        }
    }
}

/// The steps of the inverse, each for every lane before the next.
#[inline(always)]
#[expect(clippy::indexing_slicing, reason = "arrays of as many lanes as the loops count")]
fn block(index: &Lanes, kelvin: &Lanes) -> Lanes {
    let mut terms = [[0.0; LANES]; 12];
    let [mut target, mut w, mut step] = [[0.0; LANES]; 3];
    for i in 0..LANES {
        let isotherm = RefractionIsotherm::at(kelvin[i]);
        target[i] = refraction(index[i]);
        w[i] = isotherm.start(target[i]);
        for (terms, term) in terms.iter_mut().zip(isotherm.terms()) {
            terms[i] = term;
        }
    }
    for _ in 0..STEPS {
        for i in 0..LANES {
            (w[i], step[i]) = nearer(terms.each_ref().map(|terms| terms[i]), target[i], w[i]);
        }
    }
    for i in 0..LANES {
        let found = 100.0 * w[i];
        w[i] = if settled(found, step[i]) {
            found.clamp(0.0, STRONGEST)
        } else {
            f64::NAN
        };
    }
    w
}

/// (n² − 1) / (n² + 2) in vacuum, of an index against air.
#[inline(always)]
fn refraction(index: f64) -> f64 {
    let n = index * AIR;
    (n * n - 1.0) / (n * n + 2.0)
}

/// One of Newton's steps from mass fraction `w`: where it leads, and how far.
#[inline(always)]
fn nearer([d0, d1, d2, d3, d4, d5, d6, r0, r1, r2, r3, r4]: [f64; 12], refraction: f64, w: f64) -> (f64, f64) {
    let density = d0 + w * (d1 + w * (d2 + w * (d3 + w * (d4 + w * (d5 + w * d6)))));
    let density_rise = d1 + w * (2.0 * d2 + w * (3.0 * d3 + w * (4.0 * d4 + w * (5.0 * d5 + w * 6.0 * d6))));
    let per_density = r0 + w * (r1 + w * (r2 + w * (r3 + w * r4)));
    let per_density_rise = r1 + w * (2.0 * r2 + w * (3.0 * r3 + w * 4.0 * r4));
    let step = (density * per_density - refraction) / (density_rise * per_density + density * per_density_rise);
    (w - step, step)
}

/// Whether a last step that short ended within the limits.
#[inline(always)]
fn settled(brix: f64, step: f64) -> bool {
    (step.abs() < 1e-7) & (-ROUNDING..=STRONGEST + ROUNDING).contains(&brix)
}

/// From a start within 0.0063 of w they leave 1.3e-5, 6e-11 and rounding.
const STEPS: usize = 3;

/// IAPWS R9-97 at 589.3 nm: (n² − 1) / (n² + 2) of water in vacuum over its density, m³/kg from kg/m³ and K.
#[inline(always)]
fn water_refractivity(density: f64, kelvin: f64) -> f64 {
    let r = density / 1000.0;
    let t = kelvin / 273.15;
    let l = WAVELENGTH / 0.589;
    let squared = l * l;
    let [a0, a1, a2, a3, a4, a5, a6, a7] = WATER;
    let sum = a0
        + a1 * r
        + a2 * t
        + a3 * squared * t
        + a4 / squared
        + a5 / (squared - ULTRAVIOLET * ULTRAVIOLET)
        + a6 / (squared - INFRARED * INFRARED)
        + a7 * r * r;
    sum / 1000.0
}

/// Fitted to the inverse itself.
const START: [f64; 3] = [1.189, 0.037_63, -0.2815];

/// µm.
const WAVELENGTH: f64 = 0.5893;
/// Of air at 20 °C, against vacuum.
const AIR: f64 = 1.000_272;
/// By power of the strength, 1e-6 m³/kg at 20 °C.
const SUCROSE: [f64; 4] = [206.8752, -1.6111, -1.5243, 0.4509];
/// The same per kelvin, of the first two.
const SUCROSE_WARM: [f64; 2] = [0.012_45, 0.004_51];

// IAPWS R9-97, table 1; resonances as multiples of 0.589 µm.
const WATER: [f64; 8] = [
    0.244_257_733,
    9.746_344_76e-3,
    -3.732_349_96e-3,
    2.686_784_72e-4,
    1.589_205_70e-3,
    2.459_342_59e-3,
    0.900_704_920,
    -1.666_262_19e-2,
];
const ULTRAVIOLET: f64 = 0.229_202_0;
const INFRARED: f64 = 5.432_937;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    #[test]
    fn values_of_the_note() {
        for (strength, celsius, value) in [(0.0, 20.0, 1.332_985), (2.0, 20.0, 1.335_863), (66.9, 20.0, 1.457_981)] {
            let found = refractive_index(brix(strength).unwrap(), deg_c(celsius)).unwrap();
            assert!((found - value).abs() < 5.1e-7, "{strength} {celsius} {found}");
        }
        let hot = RefractionIsotherm::at(82.0 + 273.15).index(66.9);
        assert!((hot - 1.444_935).abs() < 5.1e-7);
    }

    /// What to add to the reading of a 20 °C scale.
    #[test]
    fn corrections_of_the_note() {
        for (celsius, corrections) in [
            (5.0, [-0.66, -0.87, -1.11]),
            (10.0, [-0.51, -0.63, -0.75]),
            (25.0, [0.35, 0.38, 0.39]),
            (30.0, [0.75, 0.80, 0.79]),
            (40.0, [1.71, 1.74, 1.61]),
        ] {
            for (strength, value) in [2.0, 20.0, 67.0].into_iter().zip(corrections) {
                let index = refractive_index(brix(strength).unwrap(), deg_c(20.0)).unwrap();
                let truth = RefractionIsotherm::at(celsius + 273.15).brix(index).unwrap();
                assert!(
                    (truth - strength - value).abs() < 5.1e-3,
                    "{celsius} {strength} {truth}"
                );
            }
        }
    }

    /// A bracketed root of the same equation; nothing in range needs it.
    #[test]
    fn the_steps_lead_to_the_bracketed_root() {
        for step in 0..=850 {
            for celsius in 5..=60 {
                let (strength, kelvin) = (f64::from(step) / 10.0, f64::from(celsius) + 273.15);
                let isotherm = RefractionIsotherm::at(kelvin);
                let index = isotherm.index(strength);
                let target = refraction(index);
                let (mut w, mut last) = (isotherm.start(target), 0.0);
                assert!((100.0 * w - strength).abs() < 0.63, "{strength} {celsius} {w}");
                for _ in 0..STEPS {
                    (w, last) = nearer(isotherm.terms(), target, w);
                }
                assert!(settled(100.0 * w, last), "{strength} {celsius}");
                if step % 10 == 0 {
                    let root = solve::root(|brix| isotherm.index(brix) - index, -6.0, 95.0, 0.0).unwrap();
                    assert!((100.0 * w - root.at).abs() < 1e-12, "{strength} {celsius} {w} {root:?}");
                }
            }
        }
    }

    #[test]
    fn corners_meet() {
        for strength in [0.0, 85.0] {
            for celsius in [5.0, 20.0, 40.0, 60.0] {
                let t = deg_c(celsius);
                let back =
                    brix_from_refractive_index(refractive_index(brix(strength).unwrap(), t).unwrap(), t).unwrap();
                assert!((back.get() - strength).abs() < 1e-9);
            }
        }
    }

    proptest! {
        #[test]
        fn never_panics(n in any::<f64>(), t in any::<f64>()) {
            let _ = (brix_from_refractive_index(n, kelvin(t)), RefractionIsotherm::at(t).index(n));
            if let Ok(strength) = brix(n) {
                let _ = refractive_index(strength, kelvin(t));
            }
        }

        #[test]
        fn inverse_meets_forward(strength in 0.0..85.0_f64, celsius in 5.0..60.0_f64) {
            let t = deg_c(celsius);
            let there = refractive_index(brix(strength).unwrap(), t).unwrap();
            prop_assert!((brix_from_refractive_index(there, t).unwrap().get() - strength).abs() < 1e-10);
        }

        #[test]
        fn stronger_or_colder_bends_more(b in -6.0..94.0_f64, celsius in 5.0..59.0_f64, step in 1e-4..1.0_f64) {
            let kelvin = celsius + 273.15;
            let here = RefractionIsotherm::at(kelvin).index(b);
            prop_assert!(RefractionIsotherm::at(kelvin).index(b + step) > here);
            if b >= 0.0 {
                prop_assert!(RefractionIsotherm::at(kelvin + step).index(b) < here);
            }
        }
    }
}
