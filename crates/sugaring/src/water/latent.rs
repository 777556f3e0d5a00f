//! Steam: the heat it takes, and the densities on both sides of the boiling line.

use crate::{
    error::Error,
    math,
    relation::{Range, Relation, Source},
    units::{Density, EnergyPerMass, Si, Temperature, Value, table},
};

/// Heat that turns boiling water of `temperature` into steam of the same temperature.
///
/// ```text
/// L = T (1/ρ″ − 1/ρ′) dp/dT,  τ = 1 − T/T_c
/// dp/dT = −(p/T) (ln(p/p_c) + a₁ + 1.5 a₂τ^0.5 + 3 a₃τ² + 3.5 a₄τ^2.5 + 4 a₅τ³ + 7.5 a₆τ^6.5)
/// ln(p/p_c) = (T_c/T) (a₁τ + a₂τ^1.5 + a₃τ³ + a₄τ^3.5 + a₅τ⁴ + a₆τ^7.5)
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | T | `temperature` | K | 273.16 to 647.096, that is 0.01 to 373.946 °C |
/// | L | latent heat | kJ/kg | 2500.5 to 0 |
/// | ρ′, ρ″ | densities of boiling water and of its steam | kg/m³ | |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange) below the triple
/// point or above the critical point.
/// # Source
/// IAPWS SR1-86(1992), equations 1 to 7: h″ − h′, in which the auxiliary α cancels.
/// # Examples
/// ```
/// use sugaring::{units::*, water};
/// let heat = water::latent_heat(deg_c(99.974))?;
/// assert_eq!(format!("{:.1}", heat.get::<kj_per_kg>()), "2256.7");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// A temperature in °F, read as °C:
/// ```
/// # use sugaring::{units::*, water};
/// let error = water::latent_heat(deg_c(400.0)).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "temperature = 400 °C is outside 0.01 to 373.946 °C; 400 °F is 204.4 °C: write deg_f(400)"
/// );
/// ```
pub fn latent_heat(temperature: Temperature) -> Result<EnergyPerMass, Error> {
    let kelvin = LATENT_HEAT.check(0, temperature.si())?;
    Ok(EnergyPerMass::of_si(latent_heat_at(kelvin)))
}

/// Density of boiling water.
///
/// ```text
/// ρ′/ρ_c = 1 + b₁τ^⅓ + b₂τ^⅔ + b₃τ^(5/3) + b₄τ^(16/3) + b₅τ^(43/3) + b₆τ^(110/3),  τ = 1 − T/T_c
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | T | `temperature` | K | 273.16 to 647.096, that is 0.01 to 373.946 °C |
/// | ρ′ | density | kg/m³ | 999.8 to 322 |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange) below the triple
/// point or above the critical point.
/// # Source
/// IAPWS SR1-86(1992), equation 2.
/// # Examples
/// ```
/// use sugaring::{units::*, water};
/// let hot = water::saturated_liquid_density(deg_c(100.0))?;
/// assert_eq!(format!("{:.1}", hot.get::<kg_per_m3>()), "958.3");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{units::*, water};
/// let error = water::saturated_liquid_density(deg_c(-1.0)).unwrap_err();
/// assert_eq!(error.to_string(), "temperature = -1 °C is outside 0.01 to 373.946 °C");
/// ```
pub fn saturated_liquid_density(temperature: Temperature) -> Result<Density, Error> {
    let kelvin = SATURATED_LIQUID_DENSITY.check(0, temperature.si())?;
    Ok(Density::of_si(Critical::of(kelvin).liquid_density()))
}

/// Density of the steam over boiling water.
///
/// ```text
/// ln(ρ″/ρ_c) = c₁τ^(2/6) + c₂τ^(4/6) + c₃τ^(8/6) + c₄τ^(18/6) + c₅τ^(37/6) + c₆τ^(71/6),  τ = 1 − T/T_c
/// ```
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | T | `temperature` | K | 273.16 to 647.096, that is 0.01 to 373.946 °C |
/// | ρ″ | density | kg/m³ | 0.00485 to 322 |
///
/// # Errors
/// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange) below the triple
/// point or above the critical point.
/// # Source
/// IAPWS SR1-86(1992), equation 3.
/// # Examples
/// ```
/// use sugaring::{units::*, water};
/// let steam = water::saturated_vapour_density(deg_c(100.0))?;
/// assert_eq!(format!("{:.3}", steam.get::<kg_per_m3>()), "0.598");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{units::*, water};
/// let error = water::saturated_vapour_density(deg_c(f64::NAN)).unwrap_err();
/// assert_eq!(error.to_string(), "temperature = NaN is not a finite number");
/// ```
pub fn saturated_vapour_density(temperature: Temperature) -> Result<Density, Error> {
    let kelvin = SATURATED_VAPOUR_DENSITY.check(0, temperature.si())?;
    Ok(Density::of_si(Critical::of(kelvin).vapour_density()))
}

/// What [`latent_heat`] covers.
pub static LATENT_HEAT: Relation = Relation {
    name: "water::latent_heat",
    inputs: &[TEMPERATURE],
    output: &table::kj_per_kg,
    source: Source::Published {
        text: "IAPWS SR1-86(1992)",
        at: "equations 1 to 7",
    },
    accuracy: "0.38 kJ/kg of IAPWS-95 at 0 °C, 0.22 kJ/kg from 25 to 130 °C",
};

/// What [`saturated_liquid_density`] covers.
pub static SATURATED_LIQUID_DENSITY: Relation = Relation {
    name: "water::saturated_liquid_density",
    inputs: &[TEMPERATURE],
    output: &table::kg_per_m3,
    source: Source::Published {
        text: "IAPWS SR1-86(1992)",
        at: "equation 2",
    },
    accuracy: "as the release states",
};

/// What [`saturated_vapour_density`] covers.
pub static SATURATED_VAPOUR_DENSITY: Relation = Relation {
    name: "water::saturated_vapour_density",
    inputs: &[TEMPERATURE],
    output: &table::kg_per_m3,
    source: Source::Published {
        text: "IAPWS SR1-86(1992)",
        at: "equation 3",
    },
    accuracy: "as the release states",
};

const TEMPERATURE: Range = Range::new("temperature", &table::deg_c, 0.01, 373.946);

/// J/kg from K, no range check.
pub(crate) fn latent_heat_at(kelvin: f64) -> f64 {
    let tau = Critical::of(kelvin);
    kelvin * tau.pressure_slope(kelvin) * (1.0 / tau.vapour_density() - 1.0 / tau.liquid_density())
}

/// J/kg from K, no range check; of boiling water, from a datum shared with [`saturated_vapour_enthalpy_at`] alone.
pub(crate) fn saturated_liquid_enthalpy_at(kelvin: f64) -> f64 {
    let tau = Critical::of(kelvin);
    alpha(kelvin) + kelvin / tau.liquid_density() * tau.pressure_slope(kelvin)
}

/// J/kg from K, no range check; of saturated steam, from the datum of [`saturated_liquid_enthalpy_at`].
pub(crate) fn saturated_vapour_enthalpy_at(kelvin: f64) -> f64 {
    let tau = Critical::of(kelvin);
    alpha(kelvin) + kelvin / tau.vapour_density() * tau.pressure_slope(kelvin)
}

/// Distance from the critical point: the powers of `τ = 1 − T/T_c` that the equations share; products, because they cost a tenth of `pow`.
struct Critical {
    tau: f64,
    root: f64,
    third: f64,
    sixth: f64,
    p3: f64,
    p6: f64,
}

impl Critical {
    fn of(kelvin: f64) -> Self {
        let tau = 1.0 - kelvin / CRITICAL_TEMPERATURE;
        // 373.946 °C is the critical point to a unit in the last place of binary kelvin.
        let tau = if tau < 0.0 && tau > -1e-14 { 0.0 } else { tau };
        let third = math::pow(tau, 1.0 / 3.0);
        let p3 = tau * tau * tau;
        Self {
            tau,
            root: math::sqrt(tau),
            third,
            sixth: math::sqrt(third),
            p3,
            p6: p3 * p3,
        }
    }

    fn liquid_density(&self) -> f64 {
        let [b1, b2, b3, b4, b5, b6] = B;
        let p12 = self.p6 * self.p6;
        let two_thirds = self.third * self.third;
        let p5_3 = self.tau * two_thirds;
        let p16_3 = self.p3 * self.tau * self.tau * self.third;
        let p43_3 = p12 * self.tau * self.tau * self.third;
        let p110_3 = p12 * p12 * p12 * two_thirds;
        let sum = b1 * self.third + b2 * two_thirds + b3 * p5_3 + b4 * p16_3 + b5 * p43_3 + b6 * p110_3;
        CRITICAL_DENSITY * (1.0 + sum)
    }

    fn vapour_density(&self) -> f64 {
        let [c1, c2, c3, c4, c5, c6] = C;
        let two_thirds = self.third * self.third;
        let p8_6 = self.tau * self.third;
        let p37_6 = self.p6 * self.sixth;
        let p71_6 = self.p6 * self.p3 * self.tau * self.tau * two_thirds * self.sixth;
        let sum = c1 * self.third + c2 * two_thirds + c3 * p8_6 + c4 * self.p3 + c5 * p37_6 + c6 * p71_6;
        CRITICAL_DENSITY * math::exp(sum)
    }

    /// dp/dT along the line, Pa/K.
    fn pressure_slope(&self, kelvin: f64) -> f64 {
        let [a1, a2, a3, a4, a5, a6] = A;
        let (tau, root, p3) = (self.tau, self.root, self.p3);
        let p2 = tau * tau;
        let value = tau * (a1 + a2 * root) + p3 * (a3 + a4 * root + a5 * tau) + a6 * self.p6 * tau * root;
        let rise =
            a1 + 1.5 * a2 * root + p2 * (3.0 * a3 + 3.5 * a4 * root + 4.0 * a5 * tau) + 7.5 * a6 * self.p6 * root;
        let log = CRITICAL_TEMPERATURE / kelvin * value;
        -CRITICAL_PRESSURE * math::exp(log) / kelvin * (log + rise)
    }
}

/// The auxiliary α without its constant, J/kg: only differences are ever used.
fn alpha(kelvin: f64) -> f64 {
    let [d1, d2, d3, d4, d5] = D;
    let theta = kelvin / CRITICAL_TEMPERATURE;
    let root = math::sqrt(theta);
    let p2 = theta * theta;
    let p4 = p2 * p2;
    let p16 = p4 * p4 * p4 * p4;
    let p54 = p16 * p16 * p16 * p4 * p2;
    1e3 * (d1 / (p16 * p2 * theta) + d2 * theta + d3 * p4 * root + d4 * p4 * theta + d5 * p54 * root)
}

const CRITICAL_TEMPERATURE: f64 = 647.096;
const CRITICAL_PRESSURE: f64 = 22.064e6;
const CRITICAL_DENSITY: f64 = 322.0;

// Coefficients of the release, in its grouping: vapour pressure, the two densities, α in kJ/kg.
const A: [f64; 6] = [
    -7.859_517_83,
    1.844_082_59,
    -11.786_649_7,
    22.680_741_1,
    -15.961_871_9,
    1.801_225_02,
];
const B: [f64; 6] = [
    1.992_740_64,
    1.099_653_42,
    -0.510_839_303,
    -1.754_934_79,
    -45.517_035_2,
    -6.746_944_50e5,
];
const C: [f64; 6] = [
    -2.031_502_40,
    -2.683_029_40,
    -5.386_264_92,
    -17.299_160_5,
    -44.758_658_1,
    -63.920_106_3,
];
const D: [f64; 5] = [-5.651_349_98e-8, 2_690.666_31, 127.287_297, -135.003_439, 0.981_825_814];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::*;
    use proptest::prelude::*;

    #[test]
    fn heats_of_the_pan() {
        for (celsius, heat) in [(99.974, 2256.7), (95.0, 2269.7), (90.0, 2282.6), (104.0, 2246.0)] {
            let found = latent_heat(deg_c(celsius)).unwrap();
            assert!((found.get::<kj_per_kg>() - heat).abs() < 0.05);
        }
    }

    /// Equations 4 to 6 of the release in 40-digit arithmetic, typed apart; the last digit of each dᵢ shows.
    #[test]
    fn enthalpies_rise_as_printed() {
        for (low, high, rise) in [
            (273.25, 400.0, 532_559.047_894_083_4),
            (400.0, 640.0, 1_308_244.715_444_216_7),
        ] {
            let found = saturated_liquid_enthalpy_at(high) - saturated_liquid_enthalpy_at(low);
            assert!((found - rise).abs() < 1e-7, "{low} {high} {found}");
        }
    }

    #[test]
    fn critical_point_is_inside() {
        assert!(latent_heat(deg_c(373.946)).unwrap().get::<kj_per_kg>().abs() < 1e-6);
        let density = saturated_liquid_density(deg_c(373.946)).unwrap();
        assert_eq!(density, saturated_vapour_density(deg_c(373.946)).unwrap());
    }

    proptest! {
        #[test]
        fn never_panics(x in any::<f64>()) {
            let t = kelvin(x);
            let _ = (latent_heat(t), saturated_liquid_density(t), saturated_vapour_density(t));
            let _ = (latent_heat_at(x), saturated_liquid_enthalpy_at(x), saturated_vapour_enthalpy_at(x));
        }

        #[test]
        fn hotter_water_needs_less(x in 273.16..646.0_f64, step in 1e-3..1.0_f64) {
            prop_assert!(latent_heat_at(x + step) < latent_heat_at(x));
            let (cool, hot) = (Critical::of(x), Critical::of(x + step));
            prop_assert!(hot.vapour_density() > cool.vapour_density());
            prop_assert!(x < 278.0 || hot.liquid_density() < cool.liquid_density());
        }

        #[test]
        fn enthalpies_differ_by_the_latent_heat(x in 274.0..640.0_f64) {
            let difference = saturated_vapour_enthalpy_at(x) - saturated_liquid_enthalpy_at(x);
            prop_assert!((difference / latent_heat_at(x) - 1.0).abs() < 1e-11);
        }
    }
}
