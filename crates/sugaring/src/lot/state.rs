//! What a lot is, how it is made and what can be read from it.

use alloc::format;

use crate::{
    digits,
    error::Error,
    relation::{Range, Relation, Source},
    sucrose,
    units::{Brix, Mass, Si, Temperature, Value, Volume, table},
};

/// An amount of sap, concentrate or syrup in one state: mass, °Brix and temperature.
///
/// S = M·B/100, W = M − S, V = M/ρ(B, T)
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | M | mass | kg | 1e-9 to 1e9 |
/// | B | °Brix, the sugar's share of the mass | % | 0 to 85 |
/// | T | temperature | K | from the freezing point of B (above 60 °Bx that of 60 °Bx) to 379.15, that is 106 °C |
/// | S, W | mass of sugar, of water | kg | |
/// | V | volume at T | m³ | |
///
/// Below 0 °C and above 100 °C the density is the polynomial carried beyond its range.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lot {
    pub(crate) mass: f64,
    pub(crate) brix: f64,
    pub(crate) kelvin: f64,
}

impl Lot {
    /// A lot of known mass.
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange): [`Lot`] has the
    /// limits; below its freezing point a lot holds ice.
    /// # Source
    /// Definition; the freezing point is that of [`sucrose::freezing_temperature`].
    /// # Examples
    /// ```
    /// use sugaring::{lot::Lot, units::*};
    /// let sap = Lot::of_mass(kg(100.0), brix(2.0)?, deg_c(4.0))?;
    /// assert_eq!(format!("{:.2} {:.2}", sap.sugar().get::<kg>(), sap.volume().get::<litre>()), "2.00 99.21");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// Ice does not flow:
    /// ```
    /// # use sugaring::{lot::Lot, units::*};
    /// let error = Lot::of_mass(kg(100.0), brix(1.8)?, deg_c(-2.0)).unwrap_err();
    /// assert_eq!(error.to_string(), "temperature = -2 °C is outside -0.1002 to 106 °C; 1.8 °Bx freezes below");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn of_mass(mass: Mass, brix: Brix, temperature: Temperature) -> Result<Self, Error> {
        Self::new(mass.si(), brix.get(), temperature.si())
    }

    /// A lot of known volume, measured at its own temperature.
    ///
    /// M = ρ(B, T)·V
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | V | `volume` | m³ | 1e-12 to 1e6, that is 1e-9 to 1e9 L |
    /// | B, T, M | as in [`Lot`] | | |
    /// | ρ | density | kg/m³ | |
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
    /// # Source
    /// [`sucrose::density`].
    /// # Examples
    /// ```
    /// use sugaring::{lot::Lot, units::*};
    /// let tank = Lot::of_volume(litre(170.0), brix(1.8)?, deg_c(3.0))?;
    /// assert_eq!(format!("{:.1}", tank.mass().get::<kg>()), "171.2");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{lot::Lot, units::*};
    /// let error = Lot::of_volume(litre(-1.0), brix(1.8)?, deg_c(3.0)).unwrap_err();
    /// assert_eq!(error.to_string(), "volume = -1 L is outside 1e-9 to 1000000000 L");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn of_volume(volume: Volume, brix: Brix, temperature: Temperature) -> Result<Self, Error> {
        let cubic = VOLUME.check(volume.si())?;
        let brix = LOT.check(1, brix.get())?;
        let kelvin = liquid(brix, temperature.si())?;
        Self::new(cubic * sucrose::density_at(brix, kelvin), brix, kelvin)
    }

    /// Mass.
    #[must_use]
    pub fn mass(&self) -> Mass {
        Mass::of_si(self.mass)
    }

    /// True °Brix.
    #[must_use]
    pub fn brix(&self) -> Brix {
        Brix::trusted(self.brix)
    }

    /// Temperature.
    #[must_use]
    pub fn temperature(&self) -> Temperature {
        Temperature::of_si(self.kelvin)
    }

    /// Mass of the sugar in it.
    #[must_use]
    pub fn sugar(&self) -> Mass {
        Mass::of_si(self.sugar_si())
    }

    /// Mass of the water in it.
    #[must_use]
    pub fn water(&self) -> Mass {
        Mass::of_si(self.mass - self.sugar_si())
    }

    /// Volume at its own temperature.
    #[must_use]
    pub fn volume(&self) -> Volume {
        Volume::of_si(self.mass / sucrose::density_at(self.brix, self.kelvin))
    }

    /// Volume it would have at another temperature.
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange) below the freezing
    /// point or above 106 °C.
    /// # Examples
    /// ```
    /// use sugaring::{lot::Lot, units::*};
    /// let syrup = Lot::of_volume(litre(1.0), brix(66.9)?, deg_c(85.0))?;
    /// assert_eq!(format!("{:.3}", syrup.volume_at(deg_c(20.0))?.get::<litre>()), "0.971");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn volume_at(&self, temperature: Temperature) -> Result<Volume, Error> {
        let kelvin = liquid(self.brix, temperature.si())?;
        Ok(Volume::of_si(self.mass / sucrose::density_at(self.brix, kelvin)))
    }

    pub(crate) fn new(mass: f64, brix: f64, kelvin: f64) -> Result<Self, Error> {
        let mass = LOT.check(0, mass)?;
        let brix = LOT.check(1, brix)?;
        let kelvin = liquid(brix, kelvin)?;
        Ok(Self { mass, brix, kelvin })
    }

    /// A state that was computed from a valid one, or drawn around it.
    pub(crate) const fn trusted(mass: f64, brix: f64, kelvin: f64) -> Self {
        Self { mass, brix, kelvin }
    }

    pub(crate) const fn sugar_si(&self) -> f64 {
        self.mass * self.brix / 100.0
    }
}

/// What a [`Lot`] may be.
pub static LOT: Relation = Relation {
    name: "lot::Lot",
    inputs: &[
        Range::new("mass", &table::kg, 1e-9, 1e9),
        Range::new("brix", &table::deg_brix, 0.0, 85.0),
        TEMPERATURE,
    ],
    output: &table::kg,
    source: Source::Derived {
        text: "range of sucrose::density, and of sucrose::freezing_temperature to 60 °Bx",
    },
    accuracy: "masses and sugar close to rounding; volumes as sucrose::density",
};

const VOLUME: Range = Range::new("volume", &table::litre, 1e-9, 1e9);
const TEMPERATURE: Range = Range::new("temperature", &table::deg_c, -11.67, 106.0);

/// Strongest solution whose freezing point is known.
const FREEZING_KNOWN_TO: f64 = 60.0;

/// `kelvin`, where a solution of `brix` is liquid and its density known.
fn liquid(brix: f64, kelvin: f64) -> Result<f64, Error> {
    // Every solution is liquid where water is: the solver is spared. NaN ends here too.
    if !kelvin.is_finite() || kelvin >= WATER_FREEZES {
        return TEMPERATURE.check(kelvin);
    }
    let freezes = sucrose::freezing_at(brix.min(FREEZING_KNOWN_TO));
    let freezes = freezes.ok_or_else(|| Error::no_convergence("temperature"))?;
    if kelvin >= freezes {
        return Ok(kelvin);
    }
    let [shown, low] = [kelvin, freezes].map(|si| table::deg_c.from_si(si));
    let error = Error::out_of_limits("temperature", shown, &table::deg_c, low, TEMPERATURE.high);
    Err(error.with_hint(format!("{} °Bx freezes below", digits::significant(brix, 4))))
}

const WATER_FREEZES: f64 = 273.15;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{brix, deg_c, kg, litre};
    use proptest::prelude::*;

    #[test]
    fn limits_speak() {
        let text = |m, b, t| Lot::of_mass(kg(m), brix(b).unwrap(), deg_c(t)).unwrap_err().to_string();
        assert_eq!(text(0.0, 2.0, 4.0), "mass = 0 kg is outside 1e-9 to 1000000000 kg");
        assert_eq!(text(1.0, 90.0, 4.0), "brix = 90 °Bx is outside 0 to 85 °Bx");
        assert_eq!(
            text(1.0, 66.9, 180.0),
            "temperature = 180 °C is outside -11.67 to 106 °C; 180 °F is 82.22 °C: write deg_f(180)"
        );
        assert_eq!(text(1.0, 2.0, f64::NAN), "temperature = NaN is not a finite number");
        assert_eq!(text(f64::INFINITY, 2.0, 4.0), "mass = infinity is not a finite number");
        assert_eq!(
            text(1.0, 70.0, -20.0),
            "temperature = -20 °C is outside -11.66 to 106 °C; 70 °Bx freezes below"
        );
    }

    proptest! {
        #[test]
        fn never_panics(m in any::<f64>(), b in any::<f64>(), t in any::<f64>()) {
            let Ok(b) = brix(b) else { return Ok(()) };
            let made = [Lot::of_mass(kg(m), b, deg_c(t)), Lot::of_volume(litre(m), b, deg_c(t))];
            for lot in made.into_iter().flatten() {
                prop_assert!(lot.volume().get::<litre>() > 0.0 && lot.water().get::<kg>() >= 0.0);
                let _ = lot.volume_at(deg_c(m));
            }
        }

        #[test]
        fn a_volume_comes_back(v in 1e-6..1e6_f64, b in 0.0..85.0_f64, t in 0.0..106.0_f64) {
            let lot = Lot::of_volume(litre(v), brix(b).unwrap(), deg_c(t)).unwrap();
            prop_assert!((lot.volume().get::<litre>() / v - 1.0).abs() < 1e-14);
            let parts = lot.sugar().get::<kg>() + lot.water().get::<kg>();
            prop_assert!((parts / lot.mass().get::<kg>() - 1.0).abs() < 1e-15);
        }
    }
}
