use super::{
    boiling_line::{BoilingLine, Fineness},
    heat::STATION,
};
use crate::{
    air::StationPressure,
    error::Error,
    lot::Lot,
    relation::{Range, Relation, Source},
    units::{Brix, Energy, Mass, Power, Si, Time, Value, table},
};

/// Heat that a boil takes, into the liquid.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct BoilHeat {
    /// To bring the lot to its boil.
    pub warm_up: Energy,
    /// To make steam of the water.
    pub evaporation: Energy,
    /// To keep the ever stronger liquid on the boil.
    pub sensible: Energy,
    /// All of it.
    pub total: Energy,
    /// Water boiled off.
    pub water: Mass,
}

/// A boil in a finishing pan.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct FinishBoil {
    /// Water boiled off.
    pub water: Mass,
    /// Heat into the syrup.
    pub heat: Energy,
    /// How long it takes.
    pub duration: Time,
    /// What is left: the syrup, where it boils.
    pub syrup: Lot,
}

/// Heat to boil a lot down to `to_brix`.
///
/// `Q = M [h(B₀, T_b) − h(B₀, T₀)] + L(t_s) W + ∫ m c(B, T_b) dT_b`;  `W = M (1 − B₀/B₁)`;  `m = M B₀/B`
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | M, B₀, T₀ | mass, °Brix, temperature of the lot | kg, °Bx, °C | 0.5 to 72 °Bx, up to its boil |
/// | B₁ | `to_brix` | °Bx | B₀ to 72 |
/// | P | station pressure: water boils at `t_s(P)`, the liquid at `T_b(B, P)` | kPa | 50 to 110 |
/// | L | latent heat at `t_s`, for every kilogram | J/kg | |
/// | h, c | enthalpy and specific heat at constant strength | J/kg, J/(kg K) | |
///
/// # Errors
/// Out of range or not finite.
/// # Source
/// Enthalpy balance; an independent one with superheated steam agrees to 0.02 %. Heat of dilution (below 0.02 %) is left out.
/// # Examples
/// ```
/// use sugaring::{air::StationPressure, evaporator, lot::Lot, units::*};
/// let sap = Lot::of_mass(kg(100.0), brix(2.0)?, deg_c(4.0))?;
/// let heat = evaporator::boil_heat(&sap, brix(66.9)?, StationPressure::measured(kpa(101.325))?)?;
/// assert_eq!(format!("{:.1} MJ for {:.2} kg", heat.total.get::<mj>(), heat.water.get::<kg>()), "258.8 MJ for 97.01 kg");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{air::StationPressure, evaporator, lot::Lot, units::*};
/// # let station = StationPressure::measured(kpa(101.325))?;
/// let syrup = Lot::of_mass(kg(100.0), brix(66.0)?, deg_c(4.0))?;
/// assert_eq!(
///     evaporator::boil_heat(&syrup, brix(60.0)?, station).unwrap_err().to_string(),
///     "to_brix = 60 °Bx is outside 66 to 72 °Bx",
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn boil_heat(lot: &Lot, to_brix: Brix, station: StationPressure) -> Result<BoilHeat, Error> {
    let (target, pascal) = checked(lot, to_brix, station)?;
    let boil = checked_boil(lot, target, pascal)?;
    Ok(BoilHeat {
        warm_up: Energy::of_si(boil.warm_up),
        evaporation: Energy::of_si(boil.evaporation),
        sensible: Energy::of_si(boil.sensible),
        total: Energy::of_si(boil.total()),
        water: Mass::of_si(boil.water),
    })
}

/// The boil in a finishing pan: what was drawn off, down to `target`.
///
/// t = Q/q, Q as [`boil_heat`]
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | Q | heat, of a draw that comes in boiling or has cooled | J | |
/// | q | heat into the syrup | kW | 0.001 to 1e5 |
/// | t | duration | h | |
///
/// # Errors
/// Out of range or not finite.
/// # Source
/// As [`boil_heat`].
/// # Examples
/// ```
/// use sugaring::{air::StationPressure, evaporator, lot::Lot, units::*};
/// let draw = Lot::of_mass(kg(19.862), brix(26.617)?, deg_c(99.167))?;
/// let finish = evaporator::finish_boil(&draw, brix(66.9)?, kw(3.0), StationPressure::measured(kpa(96.5))?)?;
/// assert_eq!(format!("{:.2} kg in {:.2} h", finish.water.get::<kg>(), finish.duration.get::<hours>()), "11.96 kg in 2.51 h");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{air::StationPressure, evaporator, lot::Lot, units::*};
/// # let draw = Lot::of_mass(kg(19.862), brix(26.617)?, deg_c(99.167))?;
/// # let station = StationPressure::measured(kpa(96.5))?;
/// assert_eq!(
///     evaporator::finish_boil(&draw, brix(66.9)?, kw(0.0), station).unwrap_err().to_string(),
///     "heat = 0 kW is outside 0.001 to 100000 kW",
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn finish_boil(draw: &Lot, target: Brix, heat: Power, station: StationPressure) -> Result<FinishBoil, Error> {
    let (brix, pascal) = checked(draw, target, station).map_err(|e| match e.argument() {
        "to_brix" => e.named("target"),
        _ => e,
    })?;
    let heat = FINISH_BOIL.check(0, heat.si())?;
    let boil = checked_boil(draw, brix, pascal)?;
    Ok(FinishBoil {
        water: Mass::of_si(boil.water),
        heat: Energy::of_si(boil.total()),
        duration: Time::of_si(boil.total().max(0.0) / heat),
        syrup: Lot::trusted(draw.mass().si() - boil.water, brix, boil.ends_at),
    })
}

/// A boil in SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct BoilSi {
    pub(crate) warm_up: f64,
    pub(crate) evaporation: f64,
    pub(crate) sensible: f64,
    pub(crate) water: f64,
    /// Where the result boils, K.
    pub(crate) ends_at: f64,
}

impl BoilSi {
    pub(crate) fn total(&self) -> f64 {
        self.warm_up + self.evaporation + self.sensible
    }
}

/// The boil of `lot` to `target` °Bx, no range check; `None` where a boiling point is not known.
pub(crate) fn boil_at(lot: &Lot, target: f64, pascal: f64, fineness: Fineness) -> Option<BoilSi> {
    let line = BoilingLine::new(pascal, lot.brix, target, fineness)?;
    let water = lot.mass * (1.0 - lot.brix / target);
    Some(BoilSi {
        warm_up: lot.mass * BoilingLine::warming(lot.brix, lot.kelvin, line.kelvin(lot.brix)),
        evaporation: line.latent_heat * water,
        sensible: line.climb(lot.sugar_si(), lot.brix, target),
        water,
        ends_at: line.kelvin(target),
    })
}

fn checked_boil(lot: &Lot, target: f64, pascal: f64) -> Result<BoilSi, Error> {
    let boil = boil_at(lot, target, pascal, Fineness::Full).ok_or_else(|| Error::no_convergence("temperature"))?;
    // The draw's own temperature is read to a few digits: a boil may seem a little above its boiling point.
    if boil.warm_up < -lot.mass * ABOVE_THE_BOIL {
        return Err(hotter_than_its_boil(lot, pascal));
    }
    Ok(BoilSi {
        warm_up: boil.warm_up.max(0.0),
        ..boil
    })
}

/// Strength, aim and pressure of a boil, checked.
pub(super) fn checked(lot: &Lot, to_brix: Brix, station: StationPressure) -> Result<(f64, f64), Error> {
    let brix = BOIL_HEAT.check(0, lot.brix().get()).map_err(|e| e.within("lot"))?;
    let target = BOIL_HEAT.check(1, to_brix.get())?;
    let pascal = BOIL_HEAT.check(2, station.pressure().si())?;
    if target < brix {
        return Err(Error::out_of_limits(
            "to_brix",
            target,
            &table::deg_brix,
            brix,
            STRONGEST,
        ));
    }
    Ok((target, pascal))
}

#[cold]
pub(super) fn hotter_than_its_boil(lot: &Lot, pascal: f64) -> Error {
    let celsius = |si| table::deg_c.from_si(si);
    let boils = crate::sucrose::boiling_at(lot.brix, pascal).unwrap_or(f64::NAN);
    Error::out_of_limits("temperature", celsius(lot.kelvin), &table::deg_c, 0.0, celsius(boils))
        .with_hint("it boils there at this pressure")
        .within("lot")
}

/// What [`boil_heat`] covers.
pub static BOIL_HEAT: Relation = Relation {
    name: "evaporator::boil_heat",
    inputs: &[
        Range::new("brix", &table::deg_brix, 0.5, STRONGEST),
        Range::new("to_brix", &table::deg_brix, 0.5, STRONGEST),
        STATION,
    ],
    output: &table::mj,
    source: Source::Derived {
        text: "enthalpy balance with one latent heat for every kilogram of water",
    },
    accuracy: "0.3 % of the heat, by the choice of properties",
};

/// What [`finish_boil`] covers.
pub static FINISH_BOIL: Relation = Relation {
    name: "evaporator::finish_boil",
    inputs: &[Range::new("heat", &table::kw, 0.001, 1e5)],
    output: &table::hours,
    source: Source::Derived {
        text: "enthalpy balance with one latent heat for every kilogram of water",
    },
    accuracy: "that of the heat into the syrup",
};

/// Thicker is no syrup any more, °Bx.
const STRONGEST: f64 = 72.0;
/// J/kg: a tenth of a kelvin.
const ABOVE_THE_BOIL: f64 = 400.0;
