//! A hundred thousand arbitrary calls of every constructor and method of the instruments: an answer or a typed error,
//! never a panic, and no answer that is not finite.

use sugaring::{
    air::StationPressure,
    instrument::{Barometer, Check, Hydrometer, Instrument, Refractometer, Thermometer, reading},
    uncertainty::line_fit,
    units::*,
};

const CALLS: u32 = 100_000;

/// Odd numbers of all sizes, and those that people write; the same at every run.
struct Odd(u64);

impl Odd {
    /// `SplitMix64`: Steele, Lea, Flood 2014.
    fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    fn of(&mut self, many: u64) -> u64 {
        self.bits() % many
    }

    fn number(&mut self) -> f64 {
        const WRITTEN: [f64; 28] = [
            0.0,
            -0.0,
            1.0,
            -1.0,
            1e-300,
            5e-324,
            1e300,
            f64::MAX,
            f64::MIN,
            f64::EPSILON,
            f64::NAN,
            f64::INFINITY,
            f64::NEG_INFINITY,
            273.15,
            -273.15,
            60.0,
            20.0,
            15.556,
            59.0,
            66.9,
            36.0,
            32.25,
            211.0,
            101.325,
            96.5,
            410.0,
            1.33,
            1328.2,
        ];
        let part = f64::from(u32::try_from(self.bits() >> 32).unwrap()) / 4_294_967_296.0;
        match self.of(8) {
            0 => WRITTEN[usize::try_from(self.of(28)).unwrap()],
            1 => f64::from_bits(self.bits()),
            2 => 200.0 * part - 100.0,
            3 => part,
            4 => 2000.0 * (part - 0.5),
            // Where instruments work.
            5 => 30.0 * part,
            _ => 100.0 * part,
        }
    }

    fn brix(&mut self) -> Option<Brix> {
        brix(self.number()).ok()
    }

    fn check(&mut self) -> Option<Check> {
        Some(Check {
            reading: reading(self.number()),
            brix: self.brix()?,
            temperature: deg_c(self.number()),
        })
    }

    fn air(&mut self) -> Option<StationPressure> {
        let station = match self.of(3) {
            0 => StationPressure::measured(kpa(self.number())),
            1 => StationPressure::from_boiling_water(deg_c(self.number())),
            _ => StationPressure::measured(kpa(50.0 + 60.0 * (self.number() / 100.0))),
        };
        // An uncertainty may be anything.
        Some(station.ok()?.with_uncertainty(kpa(self.number())))
    }

    fn hydrometer(&mut self) -> Option<Hydrometer> {
        let at = deg_c(self.number());
        let mut made = match self.of(8) {
            0 => Hydrometer::on_scale::<baume_20_20>(at),
            1 => Hydrometer::on_scale::<baume_60_60_f>(at),
            2 => Hydrometer::on_scale::<relative_density_20_20>(at),
            3 => Hydrometer::on_scale::<relative_density_60_60_f>(at),
            4 => Hydrometer::on_scale::<relative_density_20_4>(at),
            5 => Hydrometer::on_scale::<apparent_relative_density_20_20>(at),
            6 => Hydrometer::density(at),
            _ => Hydrometer::brix(at),
        }
        .ok()?;
        for _ in 0..self.of(4) {
            let tried = match self.of(7) {
                0 => made.with_offset(self.number()),
                1 => made.with_resolution(self.number()),
                2 => made.with_uncertainty(self.number()),
                3 => made.with_glass_expansion(per_kelvin(1e-5 * self.number())),
                4 => made.with_span(self.number(), self.number()),
                5 => made.zeroed(reading(self.number()), self.brix()?, deg_c(self.number())),
                _ => made.two_point(self.check()?, self.check()?),
            };
            made = tried.unwrap_or(made);
        }
        Some(made)
    }

    fn refractometer(&mut self) -> Option<Refractometer> {
        let mut made = match self.of(2) {
            0 => Refractometer::compensated(deg_c(self.number()), deg_c(self.number())).ok()?,
            _ => Refractometer::uncompensated(),
        };
        for _ in 0..self.of(4) {
            let tried = match self.of(6) {
                0 => made.with_zero(self.number()),
                1 => made.with_resolution(self.number()),
                2 => made.with_uncertainty(self.number()),
                3 => made.zeroed_in_water(reading(self.number()), deg_c(self.number())),
                4 => made.set_to_zero_at(deg_c(self.number())),
                _ => made.two_point(self.check()?, self.check()?),
            };
            made = tried.unwrap_or(made);
        }
        Some(made)
    }

    fn thermometer(&mut self) -> Option<Thermometer> {
        let mut made = match self.of(4) {
            3 => {
                let points = [self.number(), self.number(), self.number()];
                let corrections = [self.number(), self.number(), self.number()].map(|x| 0.05 * x);
                let line = line_fit(&points, &corrections, self.number()).ok()?;
                Thermometer::line(&line).ok()?
            }
            0 => Thermometer::zeroed_in_boiling_water(deg_c(self.number()), self.air()?).ok()?,
            1 => Thermometer::two_point(deg_c(0.1 * self.number()), deg_c(self.number()), self.air()?).ok()?,
            _ => Thermometer::plain(),
        };
        for _ in 0..self.of(4) {
            let tried = match self.of(5) {
                0 => made.with_offset(delta_c(self.number())),
                1 => made.with_resolution(delta_c(self.number())),
                2 => made.with_uncertainty(delta_c(self.number())),
                3 => made.with_emergent_stem(delta_c(self.number()), deg_c(self.number())),
                _ => made.with_stem_expansion(per_kelvin(1e-5 * self.number())),
            };
            made = tried.unwrap_or(made);
        }
        Some(made)
    }

    fn barometer(&mut self) -> Option<Barometer> {
        let mut made = match self.of(2) {
            0 => Barometer::set_to_sea_level(metre(self.number())).ok()?,
            _ => Barometer::station(),
        };
        let _ = made.usual_slip(kpa(self.number()), metre(self.number()));
        for _ in 0..self.of(4) {
            let tried = match self.of(4) {
                0 => made.with_offset(kpa(self.number())),
                1 => made.with_resolution(kpa(self.number())),
                2 => made.with_uncertainty(kpa(self.number())),
                _ => made.zeroed(kpa(self.number()), self.air()?),
            };
            made = tried.unwrap_or(made);
        }
        Some(made)
    }

    /// Asks one instrument once; whether it answered.
    fn ask(&mut self) -> bool {
        self.asked().is_some()
    }

    fn asked(&mut self) -> Option<()> {
        let (x, y) = (self.number(), self.number());
        let at = deg_c(y);
        match self.of(4) {
            0 => {
                let made = self.hydrometer()?;
                let _ = made.usual_slip(reading(x), at);
                self.of_brix(made.into(), x, y)
            }
            1 => {
                let made = self.refractometer()?;
                self.of_brix(made.into(), x, y)
            }
            2 => {
                let made = self.thermometer()?;
                let truth = made.truth(deg_c(x));
                let shown = made.reading(at);
                if let Ok(truth) = truth {
                    assert!(
                        truth.value.is_finite() && truth.uncertainty.get::<delta_c>() >= 0.0,
                        "{made:?} {x}"
                    );
                }
                if let Ok(shown) = shown {
                    assert!(shown.is_finite(), "{made:?} {y}");
                }
                truth.ok().map(drop)
            }
            _ => {
                let (made, air) = (self.barometer()?, self.air()?);
                let (truth, shown) = (made.truth(kpa(x)), made.reading(air));
                if let Ok(truth) = truth {
                    assert!(
                        truth.pressure().is_finite() && truth.uncertainty().get::<pa>() >= 0.0,
                        "{made:?} {x}"
                    );
                }
                if let Ok(shown) = shown {
                    assert!(shown.is_finite(), "{made:?} {air:?}");
                }
                truth.ok().map(drop)
            }
        }
    }

    /// What is read is a truth of the liquid's range; where it can be shown again, it is the same reading.
    fn of_brix(&mut self, made: Instrument, x: f64, y: f64) -> Option<()> {
        if let Some(strength) = self.brix() {
            if let Ok(shown) = made.reading(strength, deg_c(y)) {
                assert!(shown.get().is_finite(), "{made:?} {strength} {y}");
            }
        }
        let truth = made.truth(reading(x), deg_c(y)).ok()?;
        assert!((0.0..=85.0).contains(&truth.value.get()), "{made:?} {x} {y}");
        assert!(
            truth.uncertainty >= 0.0 && truth.uncertainty.is_finite(),
            "{made:?} {x} {y}"
        );
        let again = made.reading(truth.value, deg_c(y));
        let again = again.unwrap_or_else(|error| panic!("{made:?} {x} {y}: {error}")).get();
        assert!((again - x).abs() <= 1e-9 * x.abs().max(1.0), "{made:?} {x} {y} {again}");
        Some(())
    }
}

#[test]
fn a_hundred_thousand_arbitrary_calls() {
    let mut odd = Odd(5);
    let answered = (0..CALLS).filter(|_| odd.ask()).count();
    // Most numbers are no instrument's; enough are.
    assert!(answered > 10_000, "{answered}");
}
