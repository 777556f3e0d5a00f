//! Rinsing the rig with permeate.

use super::Rig;
use crate::{
    error::Error,
    math,
    relation::Range,
    units::{Ratio, Si, Value, Volume, table},
};

/// What a rinse takes.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Rinse {
    /// Permeate that rinses, to waste.
    pub permeate: Volume,
    /// Permeate to keep back: the rinse, and one hold-up before it that drives the concentrate into the tank.
    pub keep: Volume,
    /// Share of the hold-up's sugar still in the rig afterwards, were it well mixed.
    pub left: Ratio,
}

impl Rig {
    /// Permeate to keep back for a rinse of the housings, hoses and filter, which hold `hold_up`.
    ///
    /// `V = n·V_h, V_k = (n + 1)·V_h, s = e^(−n − 1)`
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | `V_h` | `hold_up` | m³ | 0 to 0.1, that is 100 L |
    /// | n | hold-ups of rinse, 5 | 1 | |
    /// | V, `V_k` | permeate to waste, to keep | m³ | |
    /// | s | share of the sugar left, well mixed; in plug flow none | 1 | |
    ///
    /// # Errors
    /// [`NotFinite`](crate::ErrorKind::NotFinite), or [`OutOfRange`](crate::ErrorKind::OutOfRange).
    /// # Source
    /// A stirred vessel; 3 to 5 hold-ups are common practice.
    /// # Examples
    /// ```
    /// # use sugaring::{membrane::{Element, ElementRating, Rig}, units::*};
    /// # let element = Element::from_rating(&ElementRating { flow: cubic_metre_per_day(0.9), pressure: bar_gauge(4.1),
    /// #     temperature: deg_c(25.0), salt: mg_per_litre(500.0), recovery: percent(15.0), rejection: percent(97.0) })?;
    /// let rig = Rig::new(&element, bar_gauge(7.6))?;
    /// let rinse = rig.rinse(litre(4.0))?;
    /// assert_eq!(format!("{:.0} {:.0}", rinse.permeate.get::<litre>(), rinse.keep.get::<litre>()), "20 24");
    /// let error = rig.rinse(litre(400.0)).unwrap_err();
    /// assert_eq!(error.to_string(), "hold_up = 400 L is outside 0 to 100 L");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn rinse(&self, hold_up: Volume) -> Result<Rinse, Error> {
        let hold_up = HOLD_UP.check(hold_up.si())?;
        Ok(Rinse {
            permeate: Volume::of_si(HOLD_UPS * hold_up),
            keep: Volume::of_si((HOLD_UPS + 1.0) * hold_up),
            left: Ratio::of_si(math::exp(-(HOLD_UPS + 1.0))),
        })
    }
}

pub(super) const HOLD_UP: Range = Range::new("hold_up", &table::litre, 0.0, 100.0);

/// Three to five: common practice, no source.
const HOLD_UPS: f64 = 5.0;
