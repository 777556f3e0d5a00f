use alloc::vec::Vec;

use super::{
    Pan,
    boil::{checked, hotter_than_its_boil},
    boiling_line::Fineness,
    stages::{Batch, PanShape, StageKind, StageSi, batch_at},
};
use crate::{
    air::StationPressure,
    error::Error,
    lot::Lot,
    relation::{Range, Relation, Source},
    sucrose,
    units::{Brix, Energy, EnergyPerMass, Length, Mass, Si, Temperature, Time, Value, Volume, table},
};

/// A batch boil, stage by stage.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Boil {
    /// What happens, in order.
    pub stages: Vec<Stage>,
    /// °Brix at which this pan stops.
    pub ends_at: Brix,
    /// Whether that is short of the target: the draw goes to a smaller pan.
    pub needs_finishing_pan: bool,
    /// How much goes in first, at its own temperature: boiling it stands at the running depth.
    pub first_fill: Volume,
    /// What the pan holds at the running depth, hot.
    pub running_volume: Volume,
    /// How long the fire burns.
    pub duration: Time,
    /// Heat into the liquid.
    pub heat: Energy,
    /// Water boiled off.
    pub water: Mass,
    /// Heat of steam for every kilogram of it.
    pub latent_heat: EnergyPerMass,
    /// What is drawn off at the end, and on the way where the pan reached the target early.
    pub draw: Draw,
    /// How deep all the syrup would stand in this pan.
    pub depth_if_finished: Length,
}

/// A stage of a batch boil: what it took, and the state at its end.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Stage {
    /// What happens.
    pub kind: StageKind,
    /// How long.
    pub duration: Time,
    /// Heat used: the sum of the three that follow.
    pub heat: Energy,
    /// For steam.
    pub evaporation: Energy,
    /// To bring what is fed to the boil.
    pub feed_warming: Energy,
    /// To keep what stands in the pan on the boil.
    pub pan_warming: Energy,
    /// Water boiled off.
    pub water: Mass,
    /// Fed from the tank.
    pub fed: Mass,
    /// Drawn off.
    pub drawn: Mass,
    /// °Brix in the pan at the end.
    pub brix: Brix,
    /// Mass in the pan at the end.
    pub mass: Mass,
    /// Depth at the end, hot.
    pub depth: Length,
    /// Temperature at the end.
    pub temperature: Temperature,
}

/// What is drawn off.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Draw {
    /// Its mass.
    pub mass: Mass,
    /// Its °Brix.
    pub brix: Brix,
    /// Its temperature: it boils.
    pub temperature: Temperature,
    /// Its volume, boiling.
    pub volume: Volume,
}

impl Pan {
    /// A lot boiled as one batch: filled, topped up from the tank, boiled down as far as this pan may.
    ///
    /// heat up `q t = M₁ [h(B₀, T_b) − h(B₀, T₀)]`;  top up, at constant hot volume,
    /// `q dt = L dW + [h(B₀, T_b) − h(B₀, T₀)] dF + m c dT_b`;  boil down `q dt = L dW + m c dT_b`
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | M, B₀, T₀ | mass, °Brix, temperature of the lot | kg, °Bx, °C | 0.5 to 72 °Bx, up to its boil |
    /// | B₁ | `to_brix` | °Bx | B₀ to 72 |
    /// | P | station pressure: the liquid boils at `T_b(B, P)` | kPa | 50 to 110 |
    /// | M₁ | first fill: at the running depth when it boils | kg | |
    /// | q | heat into the liquid, of the pan | kW | 0.001 to 1e5 |
    /// | F, W | fed, boiled off | kg | |
    /// | m | in the pan | kg | |
    /// | L | latent heat where water boils, for every kilogram | J/kg | |
    /// | h, c | enthalpy and specific heat at constant strength | J/kg, J/(kg K) | |
    ///
    /// Depths are hot. The pan stops at its least depth or at the target. A pan that is at the target while the tank
    /// still lasts is drawn off from there on, its level held.
    ///
    /// # Errors
    /// Out of range or not finite; unreachable where the lot cannot cover the pan; inconsistent where the least depth is
    /// above the running depth.
    /// # Source
    /// Mass and heat balance. No measured time series of a batch boil was found: stages are checked by conservation.
    /// # Examples
    /// ```
    /// use sugaring::{air::StationPressure, evaporator::Pan, lot::Lot, units::*};
    /// let station = StationPressure::measured(kpa(96.5))?;
    /// let pan = Pan::new(metre(1.22), metre(0.61))?;
    /// let concentrate = Lot::of_mass(kg(132.17), brix(4.0)?, deg_c(3.7))?;
    /// let boil = pan.batch(&concentrate, brix(66.9)?, station)?;
    /// assert!(boil.needs_finishing_pan);
    /// assert_eq!(format!("{:.1} kg at {:.1}", boil.draw.mass.get::<kg>(), boil.draw.brix), "19.9 kg at 26.6 °Bx");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{air::StationPressure, evaporator::Pan, lot::Lot, units::*};
    /// # let station = StationPressure::measured(kpa(96.5))?;
    /// # let pan = Pan::new(metre(1.22), metre(0.61))?;
    /// let too_little = Lot::of_volume(litre(15.0), brix(1.98)?, deg_c(4.0))?;
    /// assert_eq!(
    ///     pan.batch(&too_little, brix(66.9)?, station).unwrap_err().to_string(),
    ///     "least_depth = 25 mm cannot be kept; 15 L of sap stand 21.01 mm deep in this pan when hot: \
    ///      use a smaller pan, or collect 17.85 L",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn batch(&self, lot: &Lot, to_brix: Brix, station: StationPressure) -> Result<Boil, Error> {
        let (target, pascal) = checked(lot, to_brix, station)?;
        let (running_depth, least_depth) = self.depths()?;
        // A tenth of a kelvin: a boiling lot's temperature is read to a few digits.
        if sucrose::boiling_at(lot.brix, pascal).is_none_or(|boils| lot.kelvin > boils + 0.1) {
            return Err(hotter_than_its_boil(lot, pascal));
        }
        let shape = PanShape {
            area: self.area().si(),
            running_depth,
            least_depth,
        };
        let heat = self.heat(station)?.value.si();
        batch_at(&shape, heat, lot, None, target, pascal, Fineness::Full).map(|batch| batch.typed())
    }
}

impl Batch {
    /// The same in quantities.
    pub(crate) fn typed(&self) -> Boil {
        Boil {
            stages: self.stages().map(StageSi::typed).collect(),
            ends_at: Brix::trusted(self.ends_at),
            needs_finishing_pan: !self.finishes,
            first_fill: Volume::of_si(self.first_fill),
            running_volume: Volume::of_si(self.running_volume),
            duration: Time::of_si(self.duration),
            heat: Energy::of_si(self.heat),
            water: Mass::of_si(self.water),
            latent_heat: EnergyPerMass::of_si(self.latent_heat),
            draw: Draw {
                mass: Mass::of_si(self.mass),
                brix: Brix::trusted(self.ends_at),
                temperature: Temperature::of_si(self.kelvin),
                volume: Volume::of_si(self.volume),
            },
            depth_if_finished: Length::of_si(self.depth_if_finished),
        }
    }
}

impl StageSi {
    fn typed(&self) -> Stage {
        Stage {
            kind: self.kind,
            duration: Time::of_si(self.duration),
            heat: Energy::of_si(self.heat),
            evaporation: Energy::of_si(self.evaporation),
            feed_warming: Energy::of_si(self.feed_warming),
            pan_warming: Energy::of_si(self.pan_warming),
            water: Mass::of_si(self.water),
            fed: Mass::of_si(self.fed),
            drawn: Mass::of_si(self.drawn),
            brix: Brix::trusted(self.brix),
            mass: Mass::of_si(self.mass),
            depth: Length::of_si(self.depth),
            temperature: Temperature::of_si(self.kelvin),
        }
    }
}

/// What [`Pan::batch`] covers.
pub static BATCH: Relation = Relation {
    name: "evaporator::Pan::batch",
    inputs: &[
        Range::new("brix", &table::deg_brix, 0.5, 72.0),
        Range::new("to_brix", &table::deg_brix, 0.5, 72.0),
        Range::new("station", &table::kpa, 50.0, 110.0),
    ],
    output: &table::hours,
    source: Source::Derived {
        text: "mass and enthalpy balance of a mixed pan at constant heat",
    },
    accuracy: "0.3 % of the hours by the choice of properties; the heat itself 5 to 15 %",
};
