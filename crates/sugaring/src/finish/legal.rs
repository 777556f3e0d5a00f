use alloc::format;
use core::fmt;

use crate::{
    digits,
    error::Error,
    form::Tree,
    jurisdiction::{CHECK_LOCAL_RULE, JurisdictionRow},
    relation::Range,
    uncertainty::normal_probability_at,
    units::{Brix, Measured, Value, table},
};

/// Whether syrup of `brix` is as dense as `jurisdiction` asks, by how much, and how surely.
///
/// P = Φ((max − w)/u) − Φ((min − w)/u)
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | w | true °Brix of the syrup | °Bx | 0 to 100 |
/// | u | its standard uncertainty | °Bx | 0 to 100 |
/// | min, max | the limits, inclusive; some rules have no upper one | °Bx | as in [`JurisdictionRow`] |
///
/// Legality is a matter of °Brix: a reading in Baumé is turned into °Brix first, and mass per cent is the same at every
/// temperature. No legal advice: [`CHECK_LOCAL_RULE`].
///
/// # Errors
/// Unknown name; out of range where the uncertainty is negative, or not finite.
/// # Source
/// The limits as [`JurisdictionRow::source`] says; the probability of a normal value, JCGM 106:2012, clause 7 (from memory).
/// # Examples
/// ```
/// use sugaring::{finish::legal, units::*};
/// let found = legal(measured(brix(67.2)?, 0.15), "vermont")?;
/// assert!(found.legal);
/// assert_eq!(format!("{:.1} {:.3}", found.margin, found.probability), "0.3 0.977");
/// assert_eq!(
///     found.to_string(),
///     "67.2 °Bx in Vermont: lawful, 0.3 °Bx above 66.9 (98 % sure); check your local rule",
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{finish::legal, units::*};
/// assert_eq!(
///     legal(measured(brix(66.9)?, -0.1), "vermont").unwrap_err().to_string(),
///     "brix.uncertainty = -0.1 °Bx is outside 0 to 100 °Bx",
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn legal(brix: Measured<Brix>, jurisdiction: &str) -> Result<Legality, Error> {
    let reference = JurisdictionRow::named(jurisdiction)?;
    let w = BRIX.check(brix.value.si())?;
    let u = UNCERTAINTY.check(brix.uncertainty)?;
    let margin = settled(w - reference.min.get());
    let room = reference.max.map(|max| settled(max.get() - w));
    let density = if margin < 0.0 {
        Density::TooThin
    } else if room.is_some_and(|room| room < 0.0) {
        Density::TooThick
    } else {
        Density::Within
    };
    let too_thin = likely_below(-margin, u);
    let too_thick = room.map_or(0.0, |room| likely_below(-room, u));
    Ok(Legality {
        legal: density == Density::Within,
        density,
        brix: brix.value,
        margin,
        room,
        probability: (1.0 - too_thin - too_thick).max(0.0),
        too_thin,
        too_thick,
        reference,
    })
}

/// How syrup stands to a rule on its density.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Legality {
    /// Whether the best estimate lies within the limits, both inclusive.
    pub legal: bool,
    /// On which side it lies.
    pub density: Density,
    /// The best estimate.
    pub brix: Brix,
    /// How far it lies above the least, °Bx; negative below it.
    pub margin: f64,
    /// How far it lies below the most, °Bx; negative above it, `None` where the rule has none.
    pub room: Option<f64>,
    /// Probability that the syrup is within the limits.
    pub probability: f64,
    /// Probability that it is below the least.
    pub too_thin: f64,
    /// Probability that it is above the most.
    pub too_thick: f64,
    /// The rule.
    pub reference: &'static JurisdictionRow,
}

/// Which side of the rule syrup is on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Density {
    /// Below the least: it may ferment.
    TooThin,
    /// Within the limits.
    Within,
    /// Above the most: it may crystallise in store.
    TooThick,
}

impl Density {
    /// Its name in data.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::TooThin => "too_thin",
            Self::Within => "within",
            Self::TooThick => "too_thick",
        }
    }
}

impl Legality {
    /// The same as data, °Bx and probabilities as plain numbers, with the rule and its sentence.
    #[must_use]
    pub fn to_tree(&self) -> Tree {
        let mut map = alloc::vec![
            ("legal", Tree::from(self.legal)),
            ("density", Tree::from(self.density.name())),
            ("brix", Tree::from(self.brix.get())),
            ("margin", Tree::from(self.margin)),
        ];
        if let Some(room) = self.room {
            map.push(("room", Tree::from(room)));
        }
        map.extend([
            ("probability", Tree::from(self.probability)),
            ("too_thin", Tree::from(self.too_thin)),
            ("too_thick", Tree::from(self.too_thick)),
            ("jurisdiction", Tree::from(self.reference.key)),
            ("law", Tree::from(self.reference.law)),
            ("advice", Tree::from(CHECK_LOCAL_RULE)),
            ("text", Tree::from(format!("{self}"))),
        ]);
        Tree::map(map)
    }
}

impl fmt::Display for Legality {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let two = |size: f64| digits::significant(size.abs(), 2);
        let min = digits::shortest(self.reference.min.get());
        let max = self.reference.max.map_or(f64::NAN, Brix::get);
        let brix = table::deg_brix.show(digits::rounded_to(self.brix.get(), 4));
        write!(f, "{brix} in {}: ", self.reference.name)?;
        match self.density {
            Density::TooThin => write!(f, "too thin by {} °Bx, it may ferment", two(self.margin)),
            Density::TooThick => write!(
                f,
                "too thick by {} °Bx, it may crystallise",
                two(self.room.unwrap_or(max))
            ),
            Density::Within => write!(f, "lawful, {} °Bx above {min}", two(self.margin)),
        }?;
        let sure = if self.legal {
            self.probability
        } else {
            1.0 - self.probability
        };
        match digits::fixed(100.0 * sure, 0).as_str() {
            // A model of the reading is not as sure as that.
            "100" => f.write_str(" (more than 99 % sure)"),
            percent => write!(f, " ({percent} % sure)"),
        }?;
        write!(f, "; {CHECK_LOCAL_RULE}")
    }
}

/// What the rounding of an inverse leaves beside a limit is on it.
fn settled(margin: f64) -> f64 {
    if margin.abs() < ROUNDING { 0.0 } else { margin }
}

/// Probability that a normal value of standard deviation `u` lies beyond a limit that is `-beyond` away.
fn likely_below(beyond: f64, u: f64) -> f64 {
    if u > 0.0 {
        normal_probability_at(beyond / u)
    } else {
        f64::from(u8::from(beyond > 0.0))
    }
}

/// °Bx.
const ROUNDING: f64 = 1e-9;
const BRIX: Range = Range::new("brix", &table::deg_brix, 0.0, 100.0);
const UNCERTAINTY: Range = Range::new("brix.uncertainty", &table::deg_brix, 0.0, 100.0);

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{brix, measured};
    use alloc::string::ToString;
    use proptest::prelude::*;

    fn syrup(w: f64, u: f64) -> Measured<Brix> {
        measured(brix(w).unwrap(), u)
    }

    #[test]
    fn limits_are_inclusive() {
        for (w, legal_there) in [(66.8, false), (66.9, true), (68.9, true), (68.95, false)] {
            let found = legal(syrup(w, 0.0), "vermont").unwrap();
            assert_eq!(found.legal, legal_there, "{w}");
            assert!(
                (found.probability - f64::from(u8::from(legal_there))).abs() < 1e-15,
                "{w}"
            );
        }
        assert!(legal(syrup(66.9 - 1e-12, 0.0), "vermont").unwrap().legal);
        assert!(legal(syrup(80.0, 0.0), "ontario").unwrap().legal, "no upper limit");
    }

    #[test]
    fn the_side_is_said() {
        let said = |w, u, place| legal(syrup(w, u), place).unwrap().to_string();
        assert_eq!(
            said(66.0, 0.3, "vermont"),
            "66 °Bx in Vermont: too thin by 0.9 °Bx, it may ferment (more than 99 % sure); check your local rule"
        );
        assert_eq!(
            said(69.2, 0.3, "canada"),
            "69.2 °Bx in Canada: too thick by 0.3 °Bx, it may crystallise (84 % sure); check your local rule"
        );
        assert!((legal(syrup(66.9, 0.2), "vermont").unwrap().probability - 0.5).abs() < 1e-9);
    }

    proptest! {
        #[test]
        fn anything_is_taken(w in any::<f64>(), u in any::<f64>(), place in ".*") {
            let _ = legal(measured(Brix::trusted(w), u), &place);
            if let Ok(found) = legal(measured(Brix::trusted(w), u), "maine") {
                prop_assert!((0.0..=1.0).contains(&found.probability));
                let _ = found.to_string();
            }
        }

        #[test]
        fn probabilities_sum_to_one(w in 60.0..75.0_f64, u in 0.0..3.0_f64) {
            let found = legal(syrup(w, u), "vermont").unwrap();
            prop_assert!((found.probability + found.too_thin + found.too_thick - 1.0).abs() < 1e-12);
        }
    }
}
