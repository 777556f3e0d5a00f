//! How a solution flows: the fit that serves everywhere, and the published form where it is good.

use crate::{
    error::Error,
    math,
    relation::{Range, Relation, Source},
    units::{Brix, Si, Temperature, Value, Viscosity, table},
    water,
};

/// Viscosity of a sucrose solution.
///
/// ```text
/// ln η = ln η_w(t) + 40.664 x + 32.234 x^1.25 − 25.049 x²
///        + (20 − t) / (96.038 + t) (1.333 x + 91.758 x^1.25 + 72.581 x²),  x = B / (1900 − 18 B)
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | B | `brix` | °Bx | 0 to 75 |
/// | t | `temperature` | °C | 0 to 100 |
/// | `η_w` | [viscosity of water](crate::water::viscosity) | mPa s | |
/// | η | dynamic viscosity | mPa s | 0.28 to 27 900 |
///
/// Syrup of 66.9 °Bx thins twentyfold from 20 to 82 °C: filter and fill it hot. Invert sugar makes it thinner by a few
/// per cent; ropy syrup is none of this.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// Our own fit to the CRC table at 20 °C, to Bingham and Jackson 1918 and to the NBS Circular 440 supplement of 1958,
/// anchored on water. Within 0.35 % at 20 °C, 3 % elsewhere to 70 °Bx, 8 % to 75 °Bx.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let cold = sucrose::viscosity(brix(66.9)?, deg_c(20.0))?;
/// let hot = sucrose::viscosity(brix(66.9)?, deg_c(82.0))?;
/// assert_eq!(format!("{:.2} {:.3}", cold.get::<mpa_s>(), hot.get::<mpa_s>()), "222.65 10.505");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::viscosity(brix(80.0)?, deg_c(20.0)).unwrap_err();
/// assert_eq!(error.to_string(), "brix = 80 °Bx is outside 0 to 75 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn viscosity(brix: Brix, temperature: Temperature) -> Result<Viscosity, Error> {
    let brix = VISCOSITY.check(0, brix.si())?;
    let kelvin = VISCOSITY.check(1, temperature.si())?;
    Ok(Viscosity::of_si(viscosity_at(brix, kelvin)))
}

/// Viscosity of syrup by the published form of Génotelle.
///
/// ```text
/// log₁₀ η = 22.46 x − 0.114 + (30 − t) / (91 + t) (1.1 + 43.1 x^1.25),  x = B / (1900 − 18 B)
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | B | `brix` | °Bx | 55 to 75 |
/// | t | `temperature` | °C | 20 to 40 |
/// | η | dynamic viscosity | mPa s | 11.5 to 2342 |
///
/// To compare with those who cite it; [`viscosity`] covers more. Outside this range it drifts: water 8 % high at 100 °C,
/// 40 °Bx 13 % high at 0 °C.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// Mathlouthi and Génotelle 1995.
/// # Examples
/// ```
/// use sugaring::{sucrose, units::*};
/// let published = sucrose::viscosity_genotelle(brix(66.9)?, deg_c(20.0))?;
/// assert_eq!(format!("{:.1}", published.get::<mpa_s>()), "225.2");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{sucrose, units::*};
/// let error = sucrose::viscosity_genotelle(brix(20.0)?, deg_c(20.0)).unwrap_err();
/// assert_eq!(error.to_string(), "brix = 20 °Bx is outside 55 to 75 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn viscosity_genotelle(brix: Brix, temperature: Temperature) -> Result<Viscosity, Error> {
    let brix = VISCOSITY_GENOTELLE.check(0, brix.si())?;
    let kelvin = VISCOSITY_GENOTELLE.check(1, temperature.si())?;
    Ok(Viscosity::of_si(viscosity_genotelle_at(brix, kelvin)))
}

/// What [`viscosity`] covers.
pub static VISCOSITY: Relation = Relation {
    name: "sucrose::viscosity",
    inputs: &[
        Range::new("brix", &table::deg_brix, 0.0, 75.0),
        Range::new("temperature", &table::deg_c, 0.0, 100.0),
    ],
    output: &table::mpa_s,
    source: Source::Derived {
        text: "least squares to CRC Handbook rows at 20 °C, Bingham and Jackson 1918, Supplement to NBS Circular 440 \
            (1958), on the water of IAPWS SR6-08(2011)",
    },
    accuracy: "0.35 % at 20 °C, 3 % elsewhere to 70 °Bx, 8 % to 75 °Bx",
};

/// What [`viscosity_genotelle`] covers.
pub static VISCOSITY_GENOTELLE: Relation = Relation {
    name: "sucrose::viscosity_genotelle",
    inputs: &[
        Range::new("brix", &table::deg_brix, 55.0, 75.0),
        Range::new("temperature", &table::deg_c, 20.0, 40.0),
    ],
    output: &table::mpa_s,
    source: Source::Published {
        text: "Mathlouthi and Génotelle 1995",
        at: "viscosity of pure sucrose solutions",
    },
    accuracy: "2.5 %",
};

/// Pa s from °Bx and K, no range check.
pub(crate) fn viscosity_genotelle_at(brix: f64, kelvin: f64) -> f64 {
    let celsius = kelvin - 273.15;
    let x = mole_ratio(brix);
    let [linear, constant] = GENOTELLE;
    let [at_rest, with_sugar] = GENOTELLE_COLD;
    let cold = (30.0 - celsius) / (91.0 + celsius);
    let log = linear * x + constant + cold * (at_rest + with_sugar * x * math::sqrt(math::sqrt(x)));
    1e-3 * math::exp(core::f64::consts::LN_10 * log)
}

/// Moles of sucrose per mole of all, with 342 and 18 g/mol as both forms of the viscosity have it.
fn mole_ratio(brix: f64) -> f64 {
    brix / (1900.0 - 18.0 * brix)
}

/// Pa s from °Bx and K, no range check.
pub(crate) fn viscosity_at(brix: f64, kelvin: f64) -> f64 {
    ViscosityIsotherm::at(kelvin).viscosity(brix)
}

/// The viscosities of one temperature: for many strengths at once.
#[derive(Clone, Copy, Debug)]
pub(crate) struct ViscosityIsotherm {
    water: f64,
    /// Factors of x, x^1.25 and x².
    factors: [f64; 3],
}

impl ViscosityIsotherm {
    /// The viscosities at `kelvin`.
    pub(crate) fn at(kelvin: f64) -> Self {
        let celsius = kelvin - 273.15;
        let cold = (20.0 - celsius) / (96.038 + celsius);
        let [a1, a2, a3] = AT_20;
        let [b1, b2, b3] = WITH_COLD;
        Self {
            water: water::viscosity_at(kelvin),
            factors: [a1 + cold * b1, a2 + cold * b2, a3 + cold * b3],
        }
    }

    /// Pa s of a strength in °Bx.
    pub(crate) fn viscosity(&self, brix: f64) -> f64 {
        self.water * math::exp(self.ln_ratio(brix))
    }

    /// ln of the viscosity of a strength in °Bx per that of water.
    pub(crate) fn ln_ratio(&self, brix: f64) -> f64 {
        let x = mole_ratio(brix);
        let [f1, f2, f3] = self.factors;
        let quarter = math::sqrt(math::sqrt(x));
        x * (f1 + f2 * quarter + f3 * x)
    }
}

const AT_20: [f64; 3] = [40.664, 32.234, -25.049];
const WITH_COLD: [f64; 3] = [1.333, 91.758, 72.581];
const GENOTELLE: [f64; 2] = [22.46, -0.114];
const GENOTELLE_COLD: [f64; 2] = [1.1, 43.1];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    #[test]
    fn values_of_the_note() {
        for (strength, celsius, value, digit) in [
            (0.0, 20.0, 1.0016, 1e-4),
            (2.0, 4.0, 1.6526, 1e-4),
            (8.0, 5.0, 1.9303, 1e-4),
            (20.0, 20.0, 1.9479, 1e-4),
            (66.9, 20.0, 222.65, 1e-2),
            (66.9, 82.0, 10.505, 1e-3),
        ] {
            let found = viscosity(brix(strength).unwrap(), deg_c(celsius)).unwrap();
            assert!(
                (found.get::<mpa_s>() - value).abs() < 0.51 * digit,
                "{strength} {celsius} {found:?}"
            );
        }
    }

    #[test]
    fn water_is_water() {
        assert_eq!(
            viscosity(brix(0.0).unwrap(), deg_c(20.0)),
            water::viscosity(deg_c(20.0))
        );
    }

    #[test]
    fn both_forms_agree_where_the_published_one_is_good() {
        for strength in [55.0, 60.0, 66.9, 70.0] {
            for celsius in [20.0, 30.0, 40.0] {
                let (ours, published) = (
                    viscosity_at(strength, celsius + 273.15),
                    viscosity_genotelle_at(strength, celsius + 273.15),
                );
                assert!(
                    (published / ours - 1.0).abs() < 0.055,
                    "{strength} {celsius} {ours} {published}"
                );
            }
        }
    }

    proptest! {
        #[test]
        fn never_panics(b in any::<f64>(), t in any::<f64>()) {
            let _ = (viscosity_at(b, t), viscosity_genotelle_at(b, t));
            if let Ok(strength) = brix(b) {
                let _ = (viscosity(strength, kelvin(t)), viscosity_genotelle(strength, kelvin(t)));
            }
        }

        #[test]
        fn thicker_when_stronger_or_colder(b in 0.0..74.0_f64, celsius in 0.0..99.0_f64, step in 1e-4..1.0_f64) {
            let kelvin = celsius + 273.15;
            prop_assert!(viscosity_at(b + step, kelvin) > viscosity_at(b, kelvin));
            prop_assert!(viscosity_at(b, kelvin + step) < viscosity_at(b, kelvin));
        }
    }
}
