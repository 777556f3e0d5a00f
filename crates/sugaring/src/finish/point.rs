use crate::{
    air::StationPressure,
    error::Error,
    math,
    relation::{Range, Relation, Source},
    sucrose,
    units::{Brix, Si, Temperature, TemperatureDifference, Value, table},
    water,
};

/// Where syrup is done.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct FinishingPoint {
    /// What a perfect thermometer shows when it is done.
    pub temperature: Temperature,
    /// That above boiling water: what to add to the boiling water of today's thermometer.
    pub elevation: TemperatureDifference,
    /// Where plain water boils here and now.
    pub water_boils_at: Temperature,
    /// Standard uncertainty of `temperature`, from the pressure and from the boiling relation.
    pub uncertainty: TemperatureDifference,
}

/// The temperature at which syrup of `target` boils at today's pressure.
///
/// `T = T_b(target, P) + δ`
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | target | °Brix of the finished syrup | °Bx | 50 to 85 |
/// | P | station pressure | kPa | 50 to 110 |
/// | δ | rise of what is not sucrose, default 0; maple +0.1 to +0.25 | K | 0 to 1 |
/// | T | boiling temperature | °C | |
///
/// Draw off by the thermometer, accept by the hydrometer: 0.1 K is half a °Brix. A thermometer that is zeroed in plain
/// boiling water beside the pan needs no barometer: add `elevation` to what it showed.
///
/// # Errors
/// Out of range or not finite.
/// # Source
/// [`sucrose::boiling_temperature`]; its standard uncertainty at 65 to 68 °Bx is 0.06 K (judgement over the sources).
/// # Examples
/// ```
/// use sugaring::{air::StationPressure, finish, units::*};
/// let done = finish::finishing_point(brix(66.9)?, StationPressure::measured(kpa(96.5))?, None)?;
/// assert_eq!(format!("{:.2}", done.elevation.get::<delta_c>()), "4.16");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{air::StationPressure, finish, units::*};
/// let station = StationPressure::measured(kpa(96.5))?;
/// assert_eq!(
///     finish::finishing_point(brix(0.669)?, station, None).unwrap_err().to_string(),
///     "target = 0.669 °Bx is outside 50 to 85 °Bx; 66.9 % is written 66.9",
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn finishing_point(
    target: Brix,
    station: StationPressure,
    non_sucrose_rise: Option<TemperatureDifference>,
) -> Result<FinishingPoint, Error> {
    let brix = FINISHING_POINT.check(0, target.get())?;
    let pascal = FINISHING_POINT.check(1, station.pressure().si())?;
    let rise = FINISHING_POINT.check(2, non_sucrose_rise.map_or(0.0, Value::si))?;
    let water_boils_at = water::saturation_temperature_at(pascal);
    let boils = |pascal| sucrose::boiling_at(brix, pascal).ok_or_else(|| Error::no_convergence("temperature"));
    let kelvin = boils(pascal)? + rise;
    let slope = (boils(pascal + STEP)? - boils(pascal - STEP)?) / (2.0 * STEP);
    let from_pressure = slope * station.uncertainty().si();
    Ok(FinishingPoint {
        temperature: Temperature::of_si(kelvin),
        elevation: TemperatureDifference::of_si(kelvin - water_boils_at),
        water_boils_at: Temperature::of_si(water_boils_at),
        uncertainty: TemperatureDifference::of_si(math::sqrt(from_pressure * from_pressure + RELATION * RELATION)),
    })
}

/// What [`finishing_point`] covers.
pub static FINISHING_POINT: Relation = Relation {
    name: "finish::finishing_point",
    inputs: &[
        Range::new("target", &table::deg_brix, 50.0, 85.0),
        Range::new("station", &table::kpa, 50.0, 110.0),
        Range::new("non_sucrose_rise", &table::delta_c, 0.0, 1.0),
    ],
    output: &table::deg_c,
    source: Source::Derived {
        text: "boiling temperature of sucrose solutions at today's pressure",
    },
    accuracy: "0.12 K (two standard deviations) at 65 to 68 °Bx for pure sucrose",
};

/// Standard uncertainty of the boiling relation at syrup strength, K.
const RELATION: f64 = 0.06;
/// Step of the slope with pressure, Pa.
const STEP: f64 = 100.0;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{brix, delta_c, hpa, pa};
    use proptest::prelude::*;

    fn point(station: StationPressure) -> FinishingPoint {
        finishing_point(brix(66.9).unwrap(), station, None).unwrap()
    }

    #[test]
    fn uncertainty_is_of_pressure_and_relation() {
        let station = StationPressure::measured(hpa(965.0)).unwrap();
        let from_barometer = point(station).uncertainty.get::<delta_c>();
        assert!((from_barometer - 0.0667).abs() < 0.0005, "{from_barometer}");
        let exact = point(station.with_uncertainty(pa(0.0))).uncertainty.get::<delta_c>();
        assert!((exact - 0.06).abs() < 1e-12);
    }

    /// The same numbers stand in the tests of Python and JavaScript.
    #[test]
    fn numbers_are_the_same_in_every_language() {
        let done = point(StationPressure::measured(hpa(965.0)).unwrap());
        let found = [
            done.temperature.si(),
            done.elevation.si(),
            done.water_boils_at.si(),
            done.uncertainty.si(),
        ];
        let known = [
            375.918_737_217_205_94,
            4.155_718_884_603_004,
            371.763_018_332_602_94,
            0.066_803_678_251_637_54,
        ];
        assert_eq!(found.map(f64::to_bits), known.map(f64::to_bits));
    }

    proptest! {
        #[test]
        fn thicker_and_higher_boils_hotter(b in 50.0..84.0_f64, step in 1e-3..1.0_f64, p in 500.0..1090.0_f64) {
            let at = |b, p| {
                let station = StationPressure::measured(hpa(p)).unwrap();
                finishing_point(brix(b).unwrap(), station, Some(delta_c(0.1))).unwrap().temperature
            };
            prop_assert!(at(b + step, p) > at(b, p));
            prop_assert!(at(b, p + step) > at(b, p));
        }

        #[test]
        fn any_number_is_taken(b in any::<f64>(), rise in any::<f64>(), u in any::<f64>()) {
            let station = StationPressure::measured(hpa(965.0)).unwrap().with_uncertainty(pa(u));
            let _ = finishing_point(Brix::trusted(b), station, Some(delta_c(rise)));
        }
    }
}
