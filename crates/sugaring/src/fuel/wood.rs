use crate::{
    relation::{Range, Relation, Source},
    units::table,
};

/// Wood as it lies in the pile: what it weighs, how much of the pile is wood, and how wet it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Wood {
    /// Gross heat of oven-dry wood, J/kg.
    pub(super) dry_heat: f64,
    /// Oven-dry mass per green volume, over that of water.
    pub(super) specific_gravity: f64,
    /// Solid wood per stacked volume.
    pub(super) solid_share: f64,
    /// Water per wood with its water.
    pub(super) moisture: f64,
}

impl Wood {
    /// Gross heat as fired, J/kg.
    pub(super) fn gross(&self) -> f64 {
        gross_at(self.dry_heat, self.moisture)
    }

    /// Net heat as fired, J/kg.
    pub(super) fn net(&self) -> f64 {
        net_at(self.dry_heat, self.moisture)
    }

    /// Mass as fired per stacked volume, kg/m³.
    pub(super) fn stacked_density(&self) -> f64 {
        self.specific_gravity * WATER * self.solid_share / (1.0 - self.moisture)
    }
}

/// Gross heat of moist wood, J/kg: what is dry in it brings the heat.
pub(crate) fn gross_at(dry_heat: f64, moisture: f64) -> f64 {
    dry_heat * (1.0 - moisture)
}

/// Net heat of moist wood, J/kg: less the steam of its water and of its hydrogen.
pub(crate) fn net_at(dry_heat: f64, moisture: f64) -> f64 {
    let dry = 1.0 - moisture;
    dry_heat * dry - STEAM * (moisture + WATER_PER_HYDROGEN * HYDROGEN * dry)
}

/// What the heat and the cord of [`Fuel::wood`](super::Fuel::wood) cover.
pub static WOOD: Relation = Relation {
    name: "fuel::Fuel::wood",
    inputs: &[
        Range::new("moisture", &table::fraction, 0.0, 0.6),
        Range::new("dry_heat", &table::mj_per_kg, 15.0, 25.0),
        Range::new("specific_gravity", &table::fraction, 0.2, 1.2),
        Range::new("solid_share", &table::fraction, 0.4, 0.9),
    ],
    output: &table::mj_per_kg,
    source: Source::FromMemory {
        text: "EN 14918: net heat is gross heat less the steam of water and hydrogen",
    },
    accuracy: "3 % of the heat of dry wood; a cord 8 %",
};

/// Hardwood, oven dry, J/kg: 8600 Btu/lb, as two firewood pages print it.
pub(super) const HARDWOOD_HEAT: f64 = 8600.0 * table::btu_per_lb.factor();
/// Resinous wood, oven dry, J/kg: 9000 Btu/lb, as one firewood page prints it.
pub(super) const RESINOUS_HEAT: f64 = 9000.0 * table::btu_per_lb.factor();
/// Solid wood in a cord of 128 ft³: 85 ft³ as printed beside firewood tables; 80 to 90 is common practice.
pub(crate) const SOLID_SHARE: f64 = 85.0 / 128.0;
/// Latent heat of water at 25 °C, J/kg. From memory of the practice of EN 14918.
const STEAM: f64 = 2.443e6;
/// Water that one kilogram of hydrogen burns to, kg. From memory of the practice of EN 14918.
const WATER_PER_HYDROGEN: f64 = 8.937;
/// Hydrogen in dry wood, kg/kg. From memory of the practice of EN 14918.
const HYDROGEN: f64 = 0.06;
/// What specific gravity counts against, kg/m³.
const WATER: f64 = 1000.0;

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn wetter_wood_brings_less(dry_heat in 15e6..25e6_f64, wet in 0.0..0.59_f64, step in 1e-6..1e-2_f64) {
            prop_assert!(gross_at(dry_heat, wet + step) < gross_at(dry_heat, wet));
            prop_assert!(net_at(dry_heat, wet + step) < net_at(dry_heat, wet));
            prop_assert!(net_at(dry_heat, wet) > 0.0 && net_at(dry_heat, wet) < gross_at(dry_heat, wet));
        }
    }
}
