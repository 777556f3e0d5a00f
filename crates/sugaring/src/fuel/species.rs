use super::wood::{HARDWOOD_HEAT, RESINOUS_HEAT};
use crate::relation::Source;

/// One wood: its name and how dense it is.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct SpeciesRow {
    /// Name, as [`Fuel::wood`](super::Fuel::wood) takes it.
    pub name: &'static str,
    /// Number in the forest inventory's list; 0 for the mean kinds.
    pub inventory_code: u32,
    /// Whether it is resinous.
    pub group: WoodGroup,
    /// Oven-dry mass per green volume, over that of water.
    pub specific_gravity: f64,
    /// Where it comes from.
    pub source: Source,
}

/// What decides the heat of dry wood.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WoodGroup {
    /// 8600 Btu/lb dry.
    Hardwood,
    /// Resinous: 9000 Btu/lb dry.
    Softwood,
}

impl WoodGroup {
    /// Gross heat of oven-dry wood, J/kg.
    pub(super) const fn dry_heat(self) -> f64 {
        match self {
            Self::Hardwood => HARDWOOD_HEAT,
            Self::Softwood => RESINOUS_HEAT,
        }
    }
}

const fn row(name: &'static str, inventory_code: u32, group: WoodGroup, specific_gravity: f64) -> SpeciesRow {
    SpeciesRow {
        name,
        inventory_code,
        group,
        specific_gravity,
        source: Source::Published {
            text: "USDA Forest Inventory and Analysis, reference species table",
            at: "wood specific gravity, green volume and oven-dry mass",
        },
    }
}

use WoodGroup::{Hardwood, Softwood};

/// The woods, mean hardwood first; one species spreads by about 10 %.
pub static SPECIES: &[SpeciesRow] = &[
    SpeciesRow {
        source: Source::Derived {
            text: "a cord of sugar maple stands for mixed hardwood",
        },
        ..row("hardwood", 0, Hardwood, 0.56)
    },
    row("balsam fir", 12, Softwood, 0.33),
    row("tamarack", 71, Softwood, 0.49),
    row("red spruce", 97, Softwood, 0.37),
    row("eastern white pine", 129, Softwood, 0.34),
    row("eastern hemlock", 261, Softwood, 0.38),
    row("red maple", 316, Hardwood, 0.49),
    row("silver maple", 317, Hardwood, 0.44),
    row("sugar maple", 318, Hardwood, 0.56),
    row("yellow birch", 371, Hardwood, 0.55),
    row("sweet (black) birch", 372, Hardwood, 0.6),
    row("paper birch", 375, Hardwood, 0.48),
    row("pignut hickory", 403, Hardwood, 0.66),
    row("shagbark hickory", 407, Hardwood, 0.64),
    row("American beech", 531, Hardwood, 0.56),
    row("white ash", 541, Hardwood, 0.55),
    row("eastern hophornbeam", 701, Hardwood, 0.63),
    row("quaking aspen", 746, Hardwood, 0.35),
    row("black cherry", 762, Hardwood, 0.47),
    row("white oak", 802, Hardwood, 0.6),
    row("northern red oak", 833, Hardwood, 0.56),
    row("black locust", 901, Hardwood, 0.66),
    row("American basswood", 951, Hardwood, 0.32),
    row("American elm", 972, Hardwood, 0.46),
];
