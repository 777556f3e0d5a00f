//! Lots mixed: masses, sugar and heat add; volumes do not.

use super::Lot;
use crate::{
    error::Error,
    solve, sucrose,
    units::{Brix, Ratio, Si, table},
};

/// All of `lots` in one tank.
///
/// `M = ΣMᵢ, S = ΣSᵢ, B = 100·S/M, Σ Mᵢ·[h(Bᵢ, T) − h(Bᵢ, Tᵢ)] = 0`
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | Mᵢ, Sᵢ, Bᵢ, Tᵢ | mass, sugar, °Brix, temperature of each lot | kg, kg, %, K | those of [`Lot`] |
/// | h | enthalpy at constant composition | J/kg | |
/// | T | temperature of the mixture, between the coldest and the warmest | K | |
///
/// The heat of mixing is neglected.
///
/// # Errors
/// [`Missing`](crate::ErrorKind::Missing) without lots; [`OutOfRange`](crate::ErrorKind::OutOfRange) where the mixture
/// is more than a [`Lot`] may be, or would freeze.
/// # Source
/// Balance of mass, sugar and heat, with [`sucrose::enthalpy`].
/// # Examples
/// ```
/// use sugaring::{lot::{Lot, blend}, units::*};
/// let upper = Lot::of_volume(litre(170.0), brix(1.8)?, deg_c(3.0))?;
/// let lower = Lot::of_volume(litre(95.0), brix(2.3)?, deg_c(5.0))?;
/// let tank = blend(&[upper, lower])?;
/// assert_eq!(format!("{:.2} {:.4}", tank.mass().get::<kg>(), tank.brix().get()), "267.07 1.9795");
/// assert_eq!(format!("{:.3}", tank.temperature().get::<deg_c>()), "3.716");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// let error = sugaring::lot::blend(&[]).unwrap_err();
/// assert_eq!(error.to_string(), "lots is missing");
/// ```
pub fn blend(lots: &[Lot]) -> Result<Lot, Error> {
    if lots.is_empty() {
        return Err(Error::missing("lots"));
    }
    let mixed = blended(lots).ok_or_else(|| Error::no_convergence("temperature"))?;
    Lot::new(mixed.mass, mixed.brix, mixed.kelvin)
}

/// The share of `first`, by mass, in a mixture with `second` that has `brix`.
///
/// s = (B − B₂)/(B₁ − B₂)
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | B | `brix` | % | between B₁ and B₂ |
/// | B₁, B₂ | °Brix of the two lots | % | |
/// | s | share of the first | 1 | 0 to 1 |
///
/// # Errors
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) where `brix` does not lie between the two. Two lots of one °Brix give
/// 1: any share will do.
/// # Source
/// Balance of mass and sugar.
/// # Examples
/// ```
/// use sugaring::{lot::{Lot, blend_to}, units::*};
/// let thick = Lot::of_mass(kg(10.0), brix(70.0)?, deg_c(20.0))?;
/// let thin = Lot::of_mass(kg(10.0), brix(60.0)?, deg_c(20.0))?;
/// let share = blend_to(&thick, &thin, brix(67.0)?)?;
/// assert_eq!(share.get::<percent>(), 70.0);
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{lot::{Lot, blend_to}, units::*};
/// # let thick = Lot::of_mass(kg(10.0), brix(70.0)?, deg_c(20.0))?;
/// # let thin = Lot::of_mass(kg(10.0), brix(60.0)?, deg_c(20.0))?;
/// let error = blend_to(&thick, &thin, brix(72.0)?).unwrap_err();
/// assert_eq!(error.to_string(), "brix = 72 °Bx is outside 60 to 70 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn blend_to(first: &Lot, second: &Lot, brix: Brix) -> Result<Ratio, Error> {
    let target = brix.get();
    let (low, high) = (first.brix.min(second.brix), first.brix.max(second.brix));
    if !(low..=high).contains(&target) {
        return Err(Error::out_of_limits("brix", target, &table::deg_brix, low, high));
    }
    let share = (target - second.brix) / (first.brix - second.brix);
    Ok(Ratio::of_si(if share.is_finite() { share } else { 1.0 }))
}

/// The mixture without a look at its range; `None` without lots, or where the temperature does not settle.
pub(crate) fn blended(lots: &[Lot]) -> Option<Lot> {
    let mass: f64 = lots.iter().map(|lot| lot.mass).sum();
    let sugar: f64 = lots.iter().map(|lot| lot.mass * lot.brix).sum();
    let coldest = lots.iter().map(|lot| lot.kelvin).fold(f64::INFINITY, f64::min);
    let warmest = lots.iter().map(|lot| lot.kelvin).fold(0.0, f64::max);
    // As weighted means, neither strength nor temperature may leave the span of the lots by rounding.
    let thinnest = lots.iter().map(|lot| lot.brix).fold(f64::INFINITY, f64::min);
    let sweetest = lots.iter().map(|lot| lot.brix).fold(0.0, f64::max);
    let brix = (sugar / mass).max(thinnest).min(sweetest);
    if coldest >= warmest {
        return lots.first().map(|lot| Lot::trusted(mass, brix, lot.kelvin));
    }
    let gained = |kelvin| {
        let each = lots.iter().map(|lot| {
            let warmed = sucrose::enthalpy_at(lot.brix, kelvin) - sucrose::enthalpy_at(lot.brix, lot.kelvin);
            lot.mass * warmed
        });
        each.sum::<f64>() / mass
    };
    let found = solve::root(gained, coldest, warmest, 1e-12)?;
    found.settled.then(|| Lot::trusted(mass, brix, found.at))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{brix, deg_c, kelvin, kg};
    use proptest::prelude::*;

    fn any_lot() -> impl Strategy<Value = Lot> {
        (1e-3..1e4_f64, 0.0..80.0_f64, 0.0..100.0_f64)
            .prop_map(|(m, b, t)| Lot::of_mass(kg(m), brix(b).unwrap(), deg_c(t)).unwrap())
    }

    fn heat(lot: &Lot) -> f64 {
        lot.mass * sucrose::enthalpy_at(lot.brix, lot.kelvin)
    }

    proptest! {
        #[test]
        fn mass_sugar_and_heat_are_kept(lots in prop::collection::vec(any_lot(), 1..6)) {
            let all = blend(&lots).unwrap();
            let sum = |f: fn(&Lot) -> f64| lots.iter().map(f).sum::<f64>();
            prop_assert!((all.mass / sum(|l| l.mass) - 1.0).abs() < 1e-12);
            let sugar = sum(Lot::sugar_si);
            prop_assert!((all.sugar_si() - sugar).abs() <= 1e-12 * sugar);
            // The enthalpy is linear in °Brix, so the heat of the mixture is the sum of the parts'.
            let scale = lots.iter().map(|l| l.mass * 4e5).sum::<f64>();
            prop_assert!((heat(&all) - sum(heat)).abs() < 1e-12 * scale);
        }

        #[test]
        fn order_does_not_matter(a in any_lot(), b in any_lot(), c in any_lot()) {
            let one = blend(&[a, b, c]).unwrap();
            for other in [blend(&[c, a, b]).unwrap(), blend(&[blend(&[b, c]).unwrap(), a]).unwrap()] {
                prop_assert!((one.mass / other.mass - 1.0).abs() < 1e-14);
                prop_assert!((one.brix - other.brix).abs() < 1e-12 && (one.kelvin - other.kelvin).abs() < 1e-10);
            }
        }

        #[test]
        fn diluted_then_concentrated_returns(lot in any_lot(), water in any_lot(), way in 0.05..0.95_f64) {
            prop_assume!((lot.brix - water.brix).abs() > 1e-3);
            let target = brix(water.brix + way * (lot.brix - water.brix)).unwrap();
            let mixed = lot.dilute_to(target, &water).unwrap();
            let added = mixed.diluent_mass.get::<kg>();
            prop_assert!((mixed.lot.mass / (lot.mass + added) - 1.0).abs() < 1e-12);
            let sugar = lot.sugar_si() + added * water.brix / 100.0;
            prop_assert!((mixed.lot.sugar_si() / sugar - 1.0).abs() < 1e-11);
            let pure = Lot::of_mass(kg(1.0), brix(0.0).unwrap(), kelvin(lot.kelvin)).unwrap();
            if lot.brix > 1e-3 {
                let thin = lot.dilute_to(brix(way * lot.brix).unwrap(), &pure).unwrap().lot;
                let back = thin.concentrate_to(lot.brix()).unwrap();
                prop_assert!((back.concentrate.mass / lot.mass - 1.0).abs() < 1e-12);
                prop_assert!((back.water.get::<kg>() - (thin.mass - lot.mass)).abs() < 1e-11 * thin.mass);
            }
        }

        #[test]
        fn shares_make_the_strength(a in any_lot(), b in any_lot(), way in 0.0..1.0_f64) {
            let target = b.brix + way * (a.brix - b.brix);
            let share = blend_to(&a, &b, brix(target.max(0.0)).unwrap()).unwrap().value;
            prop_assert!((share * a.brix + (1.0 - share) * b.brix - target).abs() < 1e-12 * (1.0 + target));
        }

        #[test]
        fn parts_make_the_whole(lot in any_lot(), share in 1e-5..0.99999_f64) {
            let parts = lot.split(Ratio::of_si(share)).unwrap();
            prop_assert!((parts.first.mass + parts.second.mass) / lot.mass - 1.0 < 1e-15);
            prop_assert_eq!((parts.first.brix, parts.second.kelvin), (lot.brix, lot.kelvin));
        }
    }
}
