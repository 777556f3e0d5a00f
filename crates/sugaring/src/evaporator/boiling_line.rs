//! Where solutions boil at one pressure, tabulated once for a boil: its roots and integrals then cost no solver each.

use crate::{
    math,
    solve::{GAUSS_8, GAUSS_16, Rule},
    sucrose, water,
};

/// How finely a boil is computed: fully, or for one of a thousand draws.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Fineness {
    /// Within 1e-9 of the heat.
    Full,
    /// Within 1e-5 of the heat, and in half of the time.
    Draw,
}

/// Boiling temperature against °Brix at one pressure as a Chebyshev series, and what all boils at that pressure share.
#[derive(Clone, Copy, Debug)]
pub(super) struct BoilingLine {
    middle: f64,
    half: f64,
    series: [f64; MOST],
    slopes: [f64; MOST],
    /// Terms of the series that are used.
    terms: usize,
    /// Where water boils, K.
    pub(super) water: f64,
    /// Its latent heat there, J/kg: that of every kilogram boiled off.
    pub(super) latent_heat: f64,
    /// For integrals along the line.
    pub(super) rule: Rule,
}

impl BoilingLine {
    /// For solutions from `low` to `high` °Bx; `None` where a boiling point is not known.
    pub(super) fn new(pascal: f64, low: f64, high: f64, fineness: Fineness) -> Option<Self> {
        let high = high.max(LEAST_WIDTH);
        let low = low.min(high - LEAST_WIDTH);
        let (nodes, rule): (&[f64], Rule) = match fineness {
            Fineness::Full => (&CHEBYSHEV_16, GAUSS_16),
            Fineness::Draw => (&CHEBYSHEV_8, GAUSS_8),
        };
        let water = water::saturation_temperature_at(pascal);
        let mut line = Self {
            middle: 0.5 * (low + high),
            half: 0.5 * (high - low),
            series: [0.0; MOST],
            slopes: [0.0; MOST],
            terms: 2 * nodes.len(),
            water,
            latent_heat: water::latent_heat_at(water),
            rule,
        };
        let mut weight = 0.0;
        for &node in nodes {
            line.add(node, pascal)?;
            line.add(-node, pascal)?;
            weight += 1.0;
        }
        line.series.iter_mut().for_each(|term| *term /= weight);
        line.differentiate();
        Some(line)
    }

    /// K at which `brix` boils.
    pub(super) fn kelvin(&self, brix: f64) -> f64 {
        self.water + self.sum(&self.series, brix)
    }

    /// How fast that rises, K per °Bx.
    pub(super) fn slope(&self, brix: f64) -> f64 {
        self.sum(&self.slopes, brix)
    }

    /// Density of the boiling solution, kg/m³.
    pub(super) fn density(&self, brix: f64) -> f64 {
        sucrose::density_at(brix, self.kelvin(brix))
    }

    /// J to warm a kilogram of `brix`, at its strength, from `from` K to `to` K.
    pub(super) fn warming(brix: f64, from: f64, to: f64) -> f64 {
        sucrose::enthalpy_at(brix, to) - sucrose::enthalpy_at(brix, from)
    }

    /// J to keep `sugar` kg on the boil from `from` to `to` °Bx, over the heat of the steam: ∫ m c dT along the line.
    pub(super) fn climb(&self, sugar: f64, from: f64, to: f64) -> f64 {
        let along = |logarithm: f64| {
            let brix = math::exp(logarithm);
            sucrose::specific_heat_at(brix, self.kelvin(brix)) * self.slope(brix)
        };
        100.0 * sugar * self.rule.integrate(along, math::ln(from), math::ln(to))
    }

    /// Adds what the boiling point at `node` brings to each term.
    fn add(&mut self, node: f64, pascal: f64) -> Option<()> {
        // The rise alone: water's own boiling point would take digits from every term.
        let rise = sucrose::boiling_at(self.middle + self.half * node, pascal)? - self.water;
        let (mut this, mut next) = (1.0, node);
        for term in self.series.iter_mut().take(self.terms) {
            *term += rise * this;
            (this, next) = (next, 2.0 * node * next - this);
        }
        // The first term counts half.
        if let Some(first) = self.series.first_mut() {
            *first -= 0.5 * rise;
        }
        Some(())
    }

    /// Derivative of the series: dₖ₋₁ = dₖ₊₁ + 2k cₖ, the first one halved.
    fn differentiate(&mut self) {
        let (mut after, mut this) = (0.0, 0.0);
        let mut order = 2.0 * f64::from(MOST_TERMS);
        for (term, slope) in self
            .series
            .iter()
            .skip(1)
            .rev()
            .zip(self.slopes.iter_mut().rev().skip(1))
        {
            order -= 2.0;
            let before = after + order * term / self.half;
            *slope = before;
            (after, this) = (this, before);
        }
        if let Some(first) = self.slopes.first_mut() {
            *first *= 0.5;
        }
    }

    /// Clenshaw's sum of a series at `brix`.
    fn sum(&self, series: &[f64; MOST], brix: f64) -> f64 {
        let x = (brix - self.middle) / self.half;
        let (mut this, mut after) = (0.0, 0.0);
        for term in series.iter().take(self.terms).rev() {
            (this, after) = (term + 2.0 * x * this - after, this);
        }
        this - x * after
    }
}

const MOST: usize = 16;
const MOST_TERMS: u8 = 16;
/// A line of one strength has no width to be tabulated over, °Bx.
const LEAST_WIDTH: f64 = 1.0;

// Zeros of the Chebyshev polynomials, cos((2k + 1)π/2n), the half above 0.
const CHEBYSHEV_16: [f64; 8] = [
    0.9951847266721969,
    0.9569403357322088,
    0.881921264348355,
    0.773010453362737,
    0.6343932841636455,
    0.47139673682599764,
    0.2902846772544624,
    0.0980171403295606,
];
const CHEBYSHEV_8: [f64; 4] = [
    0.9807852804032304,
    0.8314696123025452,
    0.5555702330196022,
    0.19509032201612828,
];

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn nodes_are_zeros_of_their_polynomials() {
        for nodes in [&CHEBYSHEV_16[..], &CHEBYSHEV_8[..]] {
            for &node in nodes {
                let order = 2 * nodes.len();
                let (zero, _) = (0..order).fold((1.0, node), |(this, next), _| (next, 2.0 * node * next - this));
                assert!(zero.abs() < 1e-14, "{node} {zero:e}");
            }
        }
    }

    proptest! {
        #[test]
        fn the_line_is_the_relation(low in 0.0..60.0_f64, width in 0.0..72.0_f64, share in 0.0..1.0_f64, p in 5e4..11e4_f64) {
            let high = (low + width).min(72.0);
            let brix = low + share * (high - low);
            for (fineness, kelvin, slope) in [(Fineness::Full, 1e-7, 1e-6), (Fineness::Draw, 2e-3, 4e-3)] {
                let line = BoilingLine::new(p, low, high, fineness).unwrap();
                let boils = |brix| sucrose::boiling_at(brix, p).unwrap();
                prop_assert!((line.kelvin(brix) - boils(brix)).abs() < kelvin);
                let inside = brix.max(0.01);
                let rises = (boils(inside + 0.01) - boils(inside - 0.01)) / 0.02;
                prop_assert!((line.slope(inside) - rises).abs() < slope, "{} {}", line.slope(inside), rises);
            }
        }
    }
}
