//! Density of sucrose solutions and the °Brix behind a density.

use crate::{
    error::Error,
    lanes::{LANES, Lanes, block_of, spill, widest},
    math,
    relation::{Range, Relation, Source},
    solve,
    units::{Brix, Density, Si, Temperature, Value, table},
};

/// True density of a sucrose solution.
///
/// ```text
/// ρ = ρ_w(t) + Σⱼ uʲ Σᵢ bⱼᵢ wⁱ,  w = B / 100,  u = (t − 20) / 100,  i from 1
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | B | `brix` | °Bx | 0 to 85 |
/// | t | `temperature` | °C | 0 to 100 |
/// | `ρ_w` | density of water, Kell 1975 at 1 atm | kg/m³ | |
/// | ρ | density | kg/m³ | 958 to 1455 |
///
/// Within 0.1 kg/m³ to 35 °Bx, 0.4 to 78 °Bx and 0.9 to 85 °Bx at 10 to 30 °C; within 0.25 at best from 0 to 10 and from
/// 30 to 55 °C; within 1.5 above 55 °C. It lies up to 0.36 kg/m³ above the older tables after Plato, on which US
/// hydrometers are graduated; at 66.9 °Bx that is 0.044 °Bx.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// ICUMSA SPS-4, the double polynomial of Bosse and Emmerich, as printed by Bubnik, Kadlec, Urban and Bruhns, *Sugar
/// Technologists Manual* (1995), p. 164.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let syrup = sucrose::density(brix(66.9)?, deg_c(20.0))?;
/// assert_eq!(format!("{:.2}", syrup.get::<kg_per_m3>()), "1328.19");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// A temperature in °F, read as °C:
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::density(brix(66.9)?, deg_c(180.0)).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "temperature = 180 °C is outside 0 to 100 °C; 180 °F is 82.22 °C: write deg_f(180)"
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn density(brix: Brix, temperature: Temperature) -> Result<Density, Error> {
    let brix = DENSITY.check(0, brix.si())?;
    let kelvin = DENSITY.check(1, temperature.si())?;
    Ok(Density::of_si(density_at(brix, kelvin)))
}

/// °Brix of a sucrose solution of true `density` at `temperature`: the inverse of [`density`].
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | ρ | `density` | kg/m³ | ρ(0 °Bx, t) to ρ(85 °Bx, t), in all 950 to 1460 |
/// | t | `temperature` | °C | 0 to 100 |
/// | B | °Brix | °Bx | 0 to 85 |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange) with the densities that
/// this temperature allows.
/// # Source
/// ICUMSA SPS-4, solved for °Brix; found to 1e-12 °Bx.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let syrup = sucrose::brix_from_density(kg_per_m3(1328.19), deg_c(20.0))?;
/// assert_eq!(format!("{:.2}", syrup), "66.90 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// Lighter than water:
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::brix_from_density(kg_per_m3(995.0), deg_c(4.0)).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "density = 995 kg/m³ is outside 1000 to 1454 kg/m³; it reads below pure water at this temperature"
/// );
/// ```
pub fn brix_from_density(density: Density, temperature: Temperature) -> Result<Brix, Error> {
    let target = BRIX_FROM_DENSITY.check(0, density.si())?;
    let kelvin = BRIX_FROM_DENSITY.check(1, temperature.si())?;
    let isotherm = DensityIsotherm::at(kelvin);
    match isotherm.brix(target) {
        // A unit in the last place of the density is 3e-14 °Bx.
        Some(found) if (-ROUNDING..=STRONGEST + ROUNDING).contains(&found) => {
            Ok(Brix::trusted(found.clamp(0.0, STRONGEST)))
        }
        _ => Err(outside(&isotherm, target)),
    }
}

#[cold]
fn outside(isotherm: &DensityIsotherm, target: f64) -> Error {
    let (low, high) = (isotherm.density(0.0), isotherm.density(STRONGEST));
    let error = Error::out_of_limits("density", target, &table::kg_per_m3, low, high);
    if target < low {
        error.with_hint("it reads below pure water at this temperature")
    } else {
        error
    }
}

/// What [`density`] covers.
pub static DENSITY: Relation = Relation {
    name: "sucrose::density",
    inputs: &[BRIX, TEMPERATURE],
    output: &table::kg_per_m3,
    source: SOURCE,
    accuracy: ACCURACY,
};

/// What [`brix_from_density`] covers.
pub static BRIX_FROM_DENSITY: Relation = Relation {
    name: "sucrose::brix_from_density",
    inputs: &[Range::new("density", &table::kg_per_m3, 950.0, 1460.0), TEMPERATURE],
    output: &table::deg_brix,
    source: SOURCE,
    accuracy: ACCURACY,
};

pub(super) const SOURCE: Source = Source::Published {
    text: "ICUMSA SPS-4 in Bubnik, Kadlec, Urban, Bruhns, Sugar Technologists Manual (1995)",
    at: "p. 164",
};
pub(super) const ACCURACY: &str = "10 to 30 °C: 0.1 kg/m³ to 35 °Bx, 0.4 to 78 °Bx, 0.9 to 85 °Bx; \
    0.25 at best from 0 to 10 and 30 to 55 °C; 1.5 above 55 °C";
pub(super) const BRIX: Range = Range::new("brix", &table::deg_brix, 0.0, STRONGEST);
pub(super) const TEMPERATURE: Range = Range::new("temperature", &table::deg_c, 0.0, 100.0);

pub(super) const STRONGEST: f64 = 85.0;
const ROUNDING: f64 = 1e-9;

/// kg/m³ from °Bx and K, no range check; to 106 °C for the volume of boiling syrup, there within 2.5 kg/m³.
#[inline(always)]
pub(crate) fn density_at(brix: f64, kelvin: f64) -> f64 {
    DensityIsotherm::at(kelvin).density(brix)
}

/// °Bx on [−15, 100] from kg/m³ and K, or `None` where no solution is so dense: one bracket for every density inverse.
pub(crate) fn brix_from_density_at(density: f64, kelvin: f64) -> Option<f64> {
    DensityIsotherm::at(kelvin).brix(density)
}

/// The densities of one temperature: for many strengths at once.
#[derive(Clone, Copy, Debug)]
pub(crate) struct DensityIsotherm {
    /// By power of the strength.
    terms: [f64; 7],
    u: f64,
}

impl DensityIsotherm {
    /// The densities at `kelvin`.
    #[inline(always)]
    pub(crate) fn at(kelvin: f64) -> Self {
        let celsius = kelvin - 273.15;
        let u = (celsius - 20.0) / 100.0;
        let terms = [
            water(celsius),
            math::polynomial(&B1, u),
            math::polynomial(&B2, u),
            math::polynomial(&B3, u),
            math::polynomial(&B4, u),
            math::polynomial(&B5, u),
            B6,
        ];
        Self { terms, u }
    }

    /// kg/m³ of a strength in °Bx.
    #[inline(always)]
    pub(crate) fn density(&self, brix: f64) -> f64 {
        math::polynomial(&self.terms, brix / 100.0)
    }

    /// Densities by power of the strength as mass fraction.
    #[inline(always)]
    pub(super) fn terms(&self) -> [f64; 7] {
        self.terms
    }

    /// Temperature over 20 °C, in 100 K.
    #[inline(always)]
    pub(super) fn u(&self) -> f64 {
        self.u
    }

    /// Mass fraction of a density in kg/m³, within 0.0056 to 85 °Bx.
    #[inline(always)]
    fn start(&self, density: f64) -> f64 {
        let [water, ..] = self.terms;
        let [c1, c1_warm, c2, c2_warm, c3] = START;
        let excess = (density - water) / 1000.0;
        excess * (c1 + self.u * c1_warm + excess * (c2 + self.u * c2_warm + excess * c3))
    }

    /// °Bx on [−15, 100] of a density in kg/m³: it rises with the strength throughout, by 3.35 kg/m³ per °Bx at least.
    pub(crate) fn brix(&self, density: f64) -> Option<f64> {
        let (mut w, mut step) = (self.start(density), 0.0);
        for _ in 0..STEPS {
            (w, step) = nearer(self.terms, density, w);
        }
        if settled(100.0 * w, step) {
            return Some(100.0 * w);
        }
        let found = solve::root(|brix| self.density(brix) - density, -15.0, 100.0, 1e-13)?;
        found.settled.then_some(found.at)
    }
}

widest! {
    /// °Bx from kg/m³ and K within the limits of the inverse; NaN where the temperature allows no such density.
    pub(crate) fn brixes_from_density(density: &[f64], kelvin: &[f64], out: &mut [f64]) {
        for (index, out) in out.chunks_mut(LANES).enumerate() {
            let found = block(&block_of(density, index, 1200.0), &block_of(kelvin, index, 293.15));
            spill(&found, out);
        }
    }
}

/// Three of Newton's steps, each for every lane before the next.
#[inline(always)]
#[expect(clippy::indexing_slicing, reason = "arrays of as many lanes as the loops count")]
fn block(density: &Lanes, kelvin: &Lanes) -> Lanes {
    let mut terms = [[0.0; LANES]; 7];
    let [mut w, mut step] = [[0.0; LANES]; 2];
    for i in 0..LANES {
        let isotherm = DensityIsotherm::at(kelvin[i]);
        w[i] = isotherm.start(density[i]);
        for (terms, term) in terms.iter_mut().zip(isotherm.terms) {
            terms[i] = term;
        }
    }
    for _ in 0..STEPS {
        for i in 0..LANES {
            (w[i], step[i]) = nearer(terms.each_ref().map(|terms| terms[i]), density[i], w[i]);
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

/// From a start within 0.0056 of w they leave 1.1e-5, 5e-11 and rounding.
const STEPS: usize = 3;

/// One of Newton's steps from mass fraction `w`: where it leads, and how far.
#[inline(always)]
fn nearer([water, b1, b2, b3, b4, b5, b6]: [f64; 7], density: f64, w: f64) -> (f64, f64) {
    let value = water + w * (b1 + w * (b2 + w * (b3 + w * (b4 + w * (b5 + w * b6)))));
    let rise = b1 + w * (2.0 * b2 + w * (3.0 * b3 + w * (4.0 * b4 + w * (5.0 * b5 + w * 6.0 * b6))));
    let step = (value - density) / rise;
    (w - step, step)
}

/// Whether a last step that short ended within the limits.
#[inline(always)]
// Without branches the loop takes several lanes at once.
fn settled(brix: f64, step: f64) -> bool {
    (step.abs() < 1e-7) & (-ROUNDING..=STRONGEST + ROUNDING).contains(&brix)
}

/// Kell 1975 at 1 atm, which the polynomial was fitted to; water's own relation lies 0.002 to 0.006 kg/m³ above.
#[inline(always)]
fn water(celsius: f64) -> f64 {
    math::polynomial(&WATER, celsius) / (1.0 + WATER_BELOW * celsius)
}

const WATER: [f64; 6] = [
    999.839_52,
    16.952_577,
    -7.990_512_7e-3,
    -46.241_757e-6,
    105.846_01e-9,
    -281.030_06e-12,
];
const WATER_BELOW: f64 = 16.887_236e-3;

// bⱼᵢ by power of the strength, then by power of the temperature. One stored copy of the source prints −3.9646 for the
// first of the fourth row, a difference of 0.0003 kg/m³ at most.
const B1: [f64; 5] = [385.1761, -46.2720, 59.7712, -47.2207, 18.3184];
const B2: [f64; 5] = [135.3705, -7.1720, 7.2491, -21.6977, 12.3081];
const B3: [f64; 4] = [40.9299, 1.1597, 12.3630, 27.6301];
const B4: [f64; 3] = [-3.9643, 5.1126, -35.4791];
const B5: [f64; 2] = [13.4853, 17.5254];
const B6: f64 = -17.2890;

/// Fitted to the inverse itself.
const START: [f64; 5] = [2.523, 0.1503, -1.856, -0.2161, 0.9986];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    #[test]
    fn values_of_the_note() {
        for (strength, celsius, value) in [
            (2.0, 4.0, 1007.913),
            (2.0, 20.0, 1005.961),
            (8.0, 5.0, 1032.350),
            (20.0, 20.0, 1080.977),
            (50.0, 60.0, 1208.715),
            (66.0, 20.0, 1322.662),
            (66.9, 20.0, 1328.191),
            (66.9, 82.0, 1291.701),
            (66.9, 100.0, 1279.830),
            (68.9, 20.0, 1340.591),
        ] {
            let found = density(brix(strength).unwrap(), deg_c(celsius)).unwrap();
            assert!(
                (found.get::<kg_per_m3>() - value).abs() < 5.1e-4,
                "{strength} {celsius} {found:?}"
            );
        }
    }

    /// A bracketed root of the same polynomial; nothing in range needs it.
    #[test]
    fn the_steps_lead_to_the_bracketed_root() {
        for step in 0..=850 {
            for celsius in 0..=100 {
                let isotherm = DensityIsotherm::at(f64::from(celsius) + 273.15);
                let target = isotherm.density(f64::from(step) / 10.0);
                let start = isotherm.start(target);
                assert!(
                    (100.0 * start - f64::from(step) / 10.0).abs() < 0.62,
                    "{step} {celsius} {start}"
                );
                let (mut w, mut last) = (start, 0.0);
                for _ in 0..STEPS {
                    (w, last) = nearer(isotherm.terms, target, w);
                }
                assert!(settled(100.0 * w, last), "{step} {celsius}");
                if step % 10 == 0 {
                    let root = solve::root(|brix| isotherm.density(brix) - target, -15.0, 100.0, 0.0).unwrap();
                    assert!(
                        (isotherm.brix(target).unwrap() - root.at).abs() < 3e-13,
                        "{step} {celsius}"
                    );
                }
            }
        }
    }

    #[test]
    fn corners_meet() {
        for strength in [0.0, 85.0] {
            for celsius in [0.0, 20.0, 55.0, 100.0] {
                let t = deg_c(celsius);
                let back = brix_from_density(density(brix(strength).unwrap(), t).unwrap(), t).unwrap();
                assert!((back.get() - strength).abs() < 1e-9);
            }
        }
    }

    #[test]
    fn fahrenheit_limits_are_inside() {
        for fahrenheit in [32.0, 212.0] {
            assert!(density(brix(66.9).unwrap(), deg_f(fahrenheit)).is_ok());
        }
    }

    proptest! {
        #[test]
        fn never_panics(b in any::<f64>(), t in any::<f64>()) {
            let _ = (brix_from_density(kg_per_m3(b), kelvin(t)), density_at(b, t), brix_from_density_at(b, t));
            if let Ok(strength) = brix(b) {
                let _ = density(strength, kelvin(t));
            }
        }

        #[test]
        fn inverse_meets_forward(strength in 0.0..85.0_f64, celsius in 0.0..100.0_f64) {
            let there = density(brix(strength).unwrap(), deg_c(celsius)).unwrap();
            let back = brix_from_density(there, deg_c(celsius)).unwrap();
            prop_assert!((back.get() - strength).abs() < 1e-11);
        }

        #[test]
        fn stronger_is_denser(strength in -15.0..99.0_f64, step in 1e-6..1.0_f64, celsius in 0.0..106.0_f64) {
            let isotherm = DensityIsotherm::at(celsius + 273.15);
            prop_assert!(isotherm.density(strength + step) > isotherm.density(strength));
        }
    }
}
