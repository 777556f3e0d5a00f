//! How cold slows a membrane down.

use crate::{
    error::Error,
    math,
    relation::{Range, Relation, Source},
    units::{Temperature, Value, table},
    water,
};

/// Which published form of the temperature factor.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum FactorModel {
    /// What makers of thin-film elements print: one K below 25 °C, another above. The default.
    Makers,
    /// The same form with one K, in kelvin, 1000 to 6000; 2700 fits a residential maker's chart.
    Single(f64),
    /// Flow in inverse proportion to the viscosity of water.
    Viscosity,
    /// Three per cent a degree.
    PerDegree,
}

/// Share of the permeance at 25 °C that is left at `temperature`.
///
/// makers, single: f = exp(K·(1/298 − 1/(273 + t))); viscosity: f = η(25 °C)/η(t); per degree: f = 1.03^(t − 25)
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | t | `temperature` | °C | 0 to 45 |
/// | K | makers: 3020 below 25 °C, 2640 above; single: as given | K | 1000 to 6000 |
/// | η | viscosity of water | Pa s | |
/// | f | share of the permeance at 25 °C | 1 | 0.2 to 2 |
///
/// The 298 and 273 belong to the makers' formula. Published charts and forms disagree: at 3 °C they give 0.45 to 0.55,
/// one older chart 0.35. A reading on the spot is worth more than the choice among them.
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
/// # Source
/// Makers' design equations, judged by a chart of 10 to 29 °C; single: fit to a residential chart of 5 to 34 °C; per
/// degree: attributed to ASTM D4516.
/// # Examples
/// ```
/// use sugaring::{membrane::{FactorModel, temperature_factor}, units::*};
/// let cold = temperature_factor(deg_c(3.0), FactorModel::Makers)?;
/// assert_eq!(format!("{cold:.4}"), "0.4458");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{membrane::{FactorModel, temperature_factor}, units::*};
/// let error = temperature_factor(deg_c(-3.0), FactorModel::Makers).unwrap_err();
/// assert_eq!(error.to_string(), "temperature = -3 °C is outside 0 to 45 °C");
/// ```
pub fn temperature_factor(temperature: Temperature, model: FactorModel) -> Result<f64, Error> {
    let kelvin = TEMPERATURE_FACTOR.check(0, temperature.si())?;
    Ok(model.checked()?.at(kelvin))
}

/// What [`temperature_factor`] covers.
pub static TEMPERATURE_FACTOR: Relation = Relation {
    name: "membrane::temperature_factor",
    inputs: &[TEMPERATURE],
    output: &table::fraction,
    source: Source::Published {
        text: "makers' design equations; chart of a thin-film maker (scribd.com/document/472189330)",
        at: "temperature correction, 10 to 29 °C; below and above by the formula alone",
    },
    accuracy: "0.0005 of the chart; 10 % at 3 °C, falling to 0 at 25 °C",
};

/// Temperatures a membrane may work at.
pub(super) const TEMPERATURE: Range = Range::new("temperature", &table::deg_c, 0.0, 45.0);

const SINGLE: Range = Range::new("single", &table::kelvin, 1000.0, 6000.0);

impl FactorModel {
    pub(super) fn checked(self) -> Result<Self, Error> {
        if let Self::Single(slope) = self {
            SINGLE.check(slope)?;
        }
        Ok(self)
    }

    /// The factor at a temperature in K, no range check.
    pub(crate) fn at(self, kelvin: f64) -> f64 {
        let celsius = kelvin - 273.15;
        let arrhenius = |slope: f64| math::exp(slope * (1.0 / 298.0 - 1.0 / (273.0 + celsius)));
        match self {
            Self::Makers if celsius >= 25.0 => arrhenius(MAKERS_WARM),
            Self::Makers => arrhenius(MAKERS_COLD),
            Self::Single(slope) => arrhenius(slope),
            Self::Viscosity => water::viscosity_at(BASE) / water::viscosity_at(kelvin),
            Self::PerDegree => math::pow(PER_DEGREE, celsius - 25.0),
        }
    }
}

/// The temperature to which permeances are stated, 25 °C.
pub(super) const BASE: f64 = 298.15;

// Makers' design equations, seen in three independent public copies.
const MAKERS_WARM: f64 = 2640.0;
const MAKERS_COLD: f64 = 3020.0;
// Attributed to ASTM D4516; seen in a review only.
const PER_DEGREE: f64 = 1.03;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::deg_c;
    use proptest::prelude::*;

    const MODELS: [FactorModel; 4] = [
        FactorModel::Makers,
        FactorModel::Single(2700.0),
        FactorModel::Viscosity,
        FactorModel::PerDegree,
    ];

    #[test]
    fn one_at_25_degrees() {
        for model in MODELS {
            assert!((temperature_factor(deg_c(25.0), model).unwrap() - 1.0).abs() < 1e-15);
        }
    }

    #[test]
    fn the_slope_has_a_range() {
        let error = temperature_factor(deg_c(5.0), FactorModel::Single(3.0)).unwrap_err();
        assert_eq!(error.to_string(), "single = 3 K is outside 1000 to 6000 K");
    }

    proptest! {
        #[test]
        fn never_panics(t in any::<f64>(), k in any::<f64>()) {
            let _ = temperature_factor(deg_c(t), FactorModel::Single(k));
        }

        #[test]
        fn rises_with_temperature(t in 0.0..44.0_f64, step in 1e-6..1.0_f64) {
            for model in MODELS {
                let at = |t| temperature_factor(deg_c(t), model).unwrap();
                prop_assert!(at(t + step) > at(t));
            }
        }
    }
}
