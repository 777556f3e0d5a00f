//! The one water activity: boiling point, osmotic pressure and freezing point all follow from it.

use crate::{
    error::Error,
    lanes::widest,
    math,
    relation::{Range, Relation, Source},
    units::{Brix, Temperature, Value, table},
};

/// Water activity of a sucrose solution: the share of pure water's vapour pressure that it has.
///
/// ```text
/// ln a_w = ln(1 − x) + x² (A(w) + u B(w) + v C),  x = (w / M_s) / (w / M_s + (1 − w) / M_w)
/// u = T₀ / T − 1,  v = ln(T / T₀) + T₀ / T − 1,  T₀ = 298.15 K
/// A = −5.1469 + 1.8184 w − 19.1023 w² + 20.3519 w³,  B = −16.2427 + 18.9561 w,  C = 24.4732
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | w | `brix` / 100 | | 0 to 0.85 |
/// | T | `temperature` | K | 258.15 to 405.15, that is −15 to 132 °C |
/// | x | mole fraction of sucrose, with molar masses 0.3422965 and 0.018015268 kg/mol | | |
/// | `a_w` | water activity | | 1 to 0.49 |
///
/// A carries the strength at 25 °C, B the heat of dilution, C its slope with temperature. Syrup of 66.9 °Bx has 0.852,
/// and mould grows well below that: only a hot pack keeps it off.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// Our own fit to osmotic coefficients (Robinson and Stokes, from memory), freezing points (CRC, Pickering), heats of
/// dilution (Gucker, from memory) and boiling points (Starzak and Peacock 1997); the coefficients are exact as
/// printed here. Within 0.002 to 70 °Bx and 0.004 to 85 °Bx.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let activity = sucrose::water_activity(brix(66.9)?, deg_c(25.0))?;
/// assert_eq!(format!("{activity:.4}"), "0.8520");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::water_activity(brix(86.0)?, deg_c(25.0)).unwrap_err();
/// assert_eq!(error.to_string(), "brix = 86 °Bx is outside 0 to 85 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn water_activity(brix: Brix, temperature: Temperature) -> Result<f64, Error> {
    let brix = WATER_ACTIVITY.check(0, brix.si())?;
    let kelvin = WATER_ACTIVITY.check(1, temperature.si())?;
    Ok(math::exp(ln_water_activity_at(brix, kelvin)))
}

/// Osmotic coefficient of a sucrose solution: how far its water activity lies from that of an ideal one.
///
/// ```text
/// φ = −ln a_w / (m M_w),  m = w / ((1 − w) M_s)
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | w | `brix` / 100 | | 0 to 0.85 |
/// | T | `temperature` | K | 258.15 to 405.15, that is −15 to 132 °C |
/// | m | molality | mol/kg | 0 to 16.6 |
/// | φ | osmotic coefficient, 1 at infinite dilution | | 1 to 2.4 |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// [`water_activity`]. At 25 °C within 0.006 to 2 mol/kg and 0.003 above.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let coefficient = sucrose::osmotic_coefficient(brix(25.5)?, deg_c(25.0))?;
/// assert_eq!(format!("{coefficient:.3}"), "1.088");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::osmotic_coefficient(brix(25.5)?, deg_c(-20.0)).unwrap_err();
/// assert_eq!(error.to_string(), "temperature = -20 °C is outside -15 to 132 °C");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn osmotic_coefficient(brix: Brix, temperature: Temperature) -> Result<f64, Error> {
    let brix = OSMOTIC_COEFFICIENT.check(0, brix.si())?;
    let kelvin = OSMOTIC_COEFFICIENT.check(1, temperature.si())?;
    Ok(osmotic_coefficient_at(brix, kelvin))
}

/// What [`water_activity`] covers.
pub static WATER_ACTIVITY: Relation = Relation {
    name: "sucrose::water_activity",
    inputs: &[BRIX, TEMPERATURE],
    output: &table::fraction,
    source: SOURCE,
    accuracy: "0.002 to 70 °Bx, 0.004 to 85 °Bx",
};

/// What [`osmotic_coefficient`] covers.
pub static OSMOTIC_COEFFICIENT: Relation = Relation {
    name: "sucrose::osmotic_coefficient",
    inputs: &[BRIX, TEMPERATURE],
    output: &table::fraction,
    source: SOURCE,
    accuracy: "at 25 °C: 0.006 to 2 mol/kg, 0.003 above",
};

pub(super) const SOURCE: Source = Source::Derived {
    text: "least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, \
        Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997)",
};
pub(super) const BRIX: Range = Range::new("brix", &table::deg_brix, 0.0, 85.0);
pub(super) const TEMPERATURE: Range = Range::new("temperature", &table::deg_c, -15.0, 132.0);

/// ln `a_w` from °Bx and K, no range check; sound to 90 °Bx for a solver on its way.
pub(super) fn ln_water_activity_at(brix: f64, kelvin: f64) -> f64 {
    ActivityIsotherm::at(kelvin).ln(brix)
}

/// The water activities of one temperature: for many strengths at once.
#[derive(Clone, Copy, Debug)]
pub(super) struct ActivityIsotherm([f64; 4]);

impl ActivityIsotherm {
    /// The activities at `kelvin`.
    pub(super) fn at(kelvin: f64) -> Self {
        Self::by(kelvin, math::ln_1p)
    }

    /// The same in lanes, from −60 to 145 °C.
    #[inline(always)]
    pub(super) fn near(kelvin: f64) -> Self {
        Self::by(kelvin, math::ln_1p_near)
    }

    #[inline(always)]
    fn by(kelvin: f64, ln_1p: impl Fn(f64) -> f64) -> Self {
        let u = REFERENCE / kelvin - 1.0;
        let v = u - ln_1p(u);
        let [a0, a1, a2, a3] = A;
        let [b0, b1] = B;
        Self([a0 + u * b0 + v * C, a1 + u * b1, a2, a3])
    }

    /// ln `a_w` of a strength in °Bx.
    pub(super) fn ln(&self, brix: f64) -> f64 {
        self.ln_by(brix, math::ln_1p)
    }

    /// The same in lanes, to 85 °Bx.
    #[inline(always)]
    pub(super) fn ln_near(&self, brix: f64) -> f64 {
        self.ln_by(brix, math::ln_1p_near)
    }

    #[inline(always)]
    fn ln_by(&self, brix: f64, ln_1p: impl Fn(f64) -> f64) -> f64 {
        let w = brix / 100.0;
        let x = mole_fraction(w);
        ln_1p(-x) + x * x * math::polynomial(&self.0, w)
    }

    /// ln `a_w` in lanes, and 1 − w times its slope, of mass fraction `w` to 0.85.
    #[inline(always)]
    pub(super) fn ln_and_slope_near(&self, w: f64) -> (f64, f64) {
        let sucrose = w * (1.0 / SUCROSE_MOLAR_MASS);
        let inverse = 1.0 / (sucrose + (1.0 - w) * (1.0 / WATER_MOLAR_MASS));
        let x = sucrose * inverse;
        let [k0, k1, k2, k3] = self.0;
        let bracket = k0 + w * (k1 + w * (k2 + w * k3));
        let bracket_slope = k1 + w * (2.0 * k2 + w * (3.0 * k3));
        let x_slope = inverse * inverse * (1.0 / (SUCROSE_MOLAR_MASS * WATER_MOLAR_MASS));
        let slope =
            (1.0 - w) * x * (2.0 * x_slope * bracket + x * bracket_slope) - inverse * (1.0 / SUCROSE_MOLAR_MASS);
        (math::ln_1p_near(-x) + x * x * bracket, slope)
    }

    /// What it is made of, for lanes that are stored.
    #[inline(always)]
    pub(super) fn terms(&self) -> [f64; 4] {
        self.0
    }

    /// Made again.
    #[inline(always)]
    pub(super) fn of_terms(terms: [f64; 4]) -> Self {
        Self(terms)
    }

    /// ln `a_w` and its slope per °Bx, never above −0.000526, at once: for Newton's method.
    pub(super) fn ln_and_slope(&self, brix: f64) -> (f64, f64) {
        let w = brix / 100.0;
        let x = mole_fraction(w);
        let moles = w / SUCROSE_MOLAR_MASS + (1.0 - w) / WATER_MOLAR_MASS;
        let x_slope = 1.0 / (SUCROSE_MOLAR_MASS * WATER_MOLAR_MASS * moles * moles);
        let [_, k1, k2, k3] = self.0;
        let bracket_slope = k1 + w * (2.0 * k2 + w * 3.0 * k3);
        let bracket = math::polynomial(&self.0, w);
        let slope = x_slope * (2.0 * x * bracket - 1.0 / (1.0 - x)) + x * x * bracket_slope;
        (math::ln_1p(-x) + x * x * bracket, slope / 100.0)
    }
}

/// ln `a_w` in lanes, from °Bx and K.
#[inline(always)]
pub(super) fn ln_water_activity_near(brix: f64, kelvin: f64) -> f64 {
    ActivityIsotherm::near(kelvin).ln_near(brix)
}

widest! {
    /// Water activities from °Bx and K within the limits.
    pub(crate) fn water_activities(brix: &[f64], kelvin: &[f64], out: &mut [f64]) {
        for ((out, brix), kelvin) in out.iter_mut().zip(brix).zip(kelvin) {
            *out = ln_water_activity_near(*brix, *kelvin);
        }
        for ln in out {
            *ln = math::exp(*ln);
        }
    }
}

/// From °Bx and K, no range check.
#[inline(always)]
pub(crate) fn osmotic_coefficient_at(brix: f64, kelvin: f64) -> f64 {
    let w = brix / 100.0;
    let coefficient = -ln_water_activity_near(brix, kelvin) * (1.0 - w) * SUCROSE_MOLAR_MASS / (w * WATER_MOLAR_MASS);
    // Below this the molality is no normal number, and φ is 1 to the last bit.
    if w < 1e-300 { 1.0 } else { coefficient }
}

/// Mole fraction of sucrose from mass fraction.
#[inline(always)]
pub(super) fn mole_fraction(w: f64) -> f64 {
    let sucrose = w / SUCROSE_MOLAR_MASS;
    sucrose / (sucrose + (1.0 - w) / WATER_MOLAR_MASS)
}

/// A(w) of the model.
#[inline(always)]
pub(super) fn strength_term(w: f64) -> f64 {
    math::polynomial(&A, w)
}

/// B(w) of the model.
#[inline(always)]
pub(super) fn heat_term(w: f64) -> f64 {
    math::polynomial(&B, w)
}

/// kg/mol, IAPWS.
pub(super) const WATER_MOLAR_MASS: f64 = 0.018_015_268;
/// kg/mol.
pub(super) const SUCROSE_MOLAR_MASS: f64 = 0.342_296_5;
/// J/(mol K), SI, exact.
pub(super) const GAS: f64 = 8.314_462_618_153_24;
/// T₀, 25 °C.
pub(super) const REFERENCE: f64 = 298.15;

// The fit, exact as printed: rounded before every check.
const A: [f64; 4] = [-5.1469, 1.8184, -19.1023, 20.3519];
const B: [f64; 2] = [-16.2427, 18.9561];
pub(super) const C: f64 = 24.4732;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    #[test]
    fn values_of_the_note() {
        for (strength, value) in [(66.0, 0.8586), (66.9, 0.8520), (67.89, 0.8444)] {
            let found = water_activity(brix(strength).unwrap(), deg_c(25.0)).unwrap();
            assert!((found - value).abs() < 5.1e-5, "{strength} {found}");
        }
    }

    /// Avogadro's number times Boltzmann's constant, both exact in the SI; the last digit is too small for any result.
    #[test]
    fn gas_constant_is_exact() {
        assert!((6.022_140_76 * 1.380_649 - GAS).abs() < 4e-15);
    }

    #[test]
    fn water_alone_has_all_of_it() {
        for celsius in [-15.0, 0.0, 25.0, 132.0] {
            assert_eq!(water_activity(brix(0.0).unwrap(), deg_c(celsius)), Ok(1.0));
            assert_eq!(osmotic_coefficient(brix(0.0).unwrap(), deg_c(celsius)), Ok(1.0));
        }
    }

    #[test]
    fn falls_with_strength_and_holds_its_pressure_rising_with_temperature() {
        // So every inverse has one root.
        let water = crate::water::saturation_pressure_at;
        for step in 0..=900 {
            let strength = f64::from(step) / 10.0;
            for celsius in (-15..=132).step_by(3) {
                let kelvin = f64::from(celsius) + 273.15;
                assert!(ActivityIsotherm::at(kelvin).ln_and_slope(strength).1 <= -0.000_525_9);
                let rise = ln_water_activity_at(strength, kelvin + 0.5) - ln_water_activity_at(strength, kelvin - 0.5);
                let line = math::ln(water(kelvin + 0.5) / water(kelvin - 0.5));
                assert!(rise + line >= 0.0295, "{strength} {celsius} {}", rise + line);
            }
        }
    }

    proptest! {
        #[test]
        fn never_panics(b in any::<f64>(), t in any::<f64>()) {
            let isotherm = ActivityIsotherm::at(t);
            let _ = (isotherm.ln(b), isotherm.ln_and_slope(b));
            if let Ok(strength) = brix(b) {
                let _ = (water_activity(strength, kelvin(t)), osmotic_coefficient(strength, kelvin(t)));
            }
        }

        #[test]
        fn any_strength_is_taken(b in 0.0..=85.0_f64, celsius in -15.0..=132.0_f64) {
            let coefficient = osmotic_coefficient(brix(b).unwrap(), deg_c(celsius)).unwrap();
            prop_assert!((0.99..3.0).contains(&coefficient));
        }

        #[test]
        fn slope_is_the_derivative(b in 0.01..89.9_f64, celsius in -15.0..132.0_f64) {
            let isotherm = ActivityIsotherm::at(celsius + 273.15);
            let by_difference = (isotherm.ln(b + 5e-4) - isotherm.ln(b - 5e-4)) / 1e-3;
            prop_assert!((isotherm.ln_and_slope(b).1 / by_difference - 1.0).abs() < 1e-7);
        }

        #[test]
        fn dilute_solutions_are_ideal(exponent in -12.0..-4.0_f64, celsius in -15.0..132.0_f64) {
            let strength = brix(libm::pow(10.0, exponent)).unwrap();
            let coefficient = osmotic_coefficient(strength, deg_c(celsius)).unwrap();
            prop_assert!((coefficient - 1.0).abs() < 1e-5);
        }
    }
}
