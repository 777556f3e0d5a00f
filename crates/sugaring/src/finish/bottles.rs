//! Filling containers, in SI and without a check.

use alloc::vec::Vec;

use super::{
    fill::{REFERENCE, hot_fill_at},
    pack::Because,
};
use crate::{math, sucrose};

/// A kind of container.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Bottle {
    /// Label, m³ at 20 °C.
    pub(crate) label: f64,
    /// m³ to the brim at 20 °C.
    pub(crate) brimful: Option<f64>,
    /// Cubical expansion, 1/K; 0 where it is not known.
    pub(crate) expansion: f64,
    /// J/K, where mass and material are known.
    pub(crate) heat_capacity: Option<f64>,
    /// Temperature, K.
    pub(crate) kelvin: f64,
    pub(crate) stock: u32,
}

/// How some containers of one kind are filled.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Filled {
    /// Which kind.
    pub(crate) index: usize,
    pub(crate) count: u32,
    /// Hot volume in one, m³.
    pub(crate) volume: f64,
    /// Syrup in one, kg.
    pub(crate) mass: f64,
    pub(crate) headspace: Option<f64>,
    /// Temperature that syrup and container come to, K.
    pub(crate) settled: Option<f64>,
    /// Temperature that the container needs, K, where it settles too cold.
    pub(crate) container_needed: Option<f64>,
    /// Or temperature that the syrup needs, where that is not too hot.
    pub(crate) fill_needed: Option<f64>,
}

/// All the syrup in containers.
#[derive(Clone, Debug)]
pub(crate) struct Bottled {
    pub(crate) rows: Vec<Filled>,
    /// What is left over, kg and m³ at 20 °C.
    pub(crate) rest_mass: f64,
    pub(crate) rest_volume: f64,
    pub(crate) because: Because,
}

/// `mass` kg of syrup filled at `kelvin`: the largest containers first, as many of each as are there.
pub(crate) fn bottled(mass: f64, brix: f64, kelvin: f64, bottles: &[Bottle]) -> Bottled {
    let density = sucrose::density_at(brix, REFERENCE);
    let mut order: Vec<(usize, &Bottle)> = bottles.iter().enumerate().collect();
    order.sort_by(|a, b| b.1.label.total_cmp(&a.1.label));
    let mut left = mass;
    let mut rows = Vec::new();
    let mut because = Because::LessThanOneContainer;
    for (index, bottle) in order {
        let full = density * bottle.label;
        let count = whole(left / full + FULL_ENOUGH, bottle.stock);
        if count > 0 {
            // The last one of an even division may lack a rounding; it is not made up from nothing.
            let each = full.min(left / f64::from(count));
            left -= f64::from(count) * each;
            rows.push(filled(index, bottle, count, each, brix, kelvin));
        }
        // More syrup than one container takes is left only where there is no other.
        if left / full + FULL_ENOUGH >= 1.0 {
            because = Because::StockUsedUp;
        }
    }
    let left = left.max(0.0);
    Bottled {
        rows,
        rest_mass: left,
        rest_volume: left / density,
        because,
    }
}

fn filled(index: usize, bottle: &Bottle, count: u32, each: f64, brix: f64, kelvin: f64) -> Filled {
    let volume = hot_fill_at(bottle.label, brix, kelvin);
    let mut row = Filled {
        index,
        count,
        volume,
        mass: each,
        headspace: bottle.brimful.map(|brimful| brimful - volume),
        settled: None,
        container_needed: None,
        fill_needed: None,
    };
    if let Some(container) = bottle.heat_capacity {
        let syrup = each * sucrose::specific_heat_at(brix, kelvin - COOLING);
        let settled = (syrup * kelvin + container * bottle.kelvin) / (syrup + container);
        row.settled = Some(settled);
        if settled < COLDEST {
            row.container_needed = Some(COLDEST - syrup * (kelvin - COLDEST) / container);
            let fill = COLDEST + container * (COLDEST - bottle.kelvin) / syrup;
            row.fill_needed = (fill <= HOTTEST).then_some(fill);
        }
    }
    row
}

/// The whole part of `number`, at most `most`.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "between 0 and a u32, and a cast of NaN is 0"
)]
fn whole(number: f64, most: u32) -> u32 {
    if number >= f64::from(most) {
        return most;
    }
    math::floor(number).max(0.0) as u32
}

/// A container that lacks this share counts as full.
const FULL_ENOUGH: f64 = 1e-9;
/// Below this the fill is not safe, K: 82 °C, that is 180 °F; common practice.
pub(super) const COLDEST: f64 = 355.15;
/// Above this syrup darkens and drops niter, K: 93 °C, that is 200 °F; common practice.
const HOTTEST: f64 = 366.15;
/// Its specific heat is taken so far below the fill: half of what it cools by.
const COOLING: f64 = 5.0;
