use crate::units::{Unit, Word};
use core::{fmt, marker::PhantomData};

/// A number of a plan in the unit of `W`, with its range where draws gave one.
///
/// ```
/// # use sugaring::{air::StationPressure, day::{self, DayInputs, Sap, Target}, evaporator::Pan, units::*};
/// # let air = StationPressure::from_altitude(metre(410.0))?;
/// # let sap = Sap::of_volume(litre(265.0), brix(1.98)?, deg_c(4.0));
/// # let inputs = DayInputs::new(air, vec![sap], Pan::new(metre(0.61), metre(1.22))?, Target::brix(brix(66.9)?)).with_samples(0);
/// let plan = day::plan(&inputs)?;
/// let hours = plan.totals.hours;
/// assert!((hours.value() - hours.quantity().get::<hours>()).abs() < 1e-12);
/// assert_eq!(hours.low(), None); // no draws were asked for
/// # Ok::<(), sugaring::Error>(())
/// ```
pub struct Figure<W: Word> {
    si: f64,
    interval: Option<Interval>,
    word: PhantomData<fn() -> W>,
}

/// The middle 95 % of the draws, in SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Interval {
    pub(crate) low: f64,
    pub(crate) high: f64,
    /// Where the nominal value sits at one end of the range.
    pub(crate) median: Option<f64>,
}

impl<W: Word> Figure<W> {
    pub(crate) fn of_si(si: f64) -> Self {
        Self {
            si,
            interval: None,
            word: PhantomData,
        }
    }

    pub(crate) fn with_interval(mut self, interval: Option<Interval>) -> Self {
        self.interval = interval;
        self
    }

    /// The number in SI.
    pub(crate) fn si(&self) -> f64 {
        self.si
    }

    pub(crate) fn interval(&self) -> Option<Interval> {
        self.interval
    }

    /// The typed quantity.
    #[must_use]
    pub fn quantity(&self) -> W::Quantity {
        W::of_si(self.si)
    }

    /// The number in the unit of `W`.
    #[must_use]
    pub fn value(&self) -> f64 {
        W::unit().from_si(self.si)
    }

    /// Lower end of the range, in the unit of `W`; none where no draws were asked for.
    #[must_use]
    pub fn low(&self) -> Option<f64> {
        self.interval.map(|i| W::unit().from_si(i.low))
    }

    /// Upper end of the range, in the unit of `W`.
    #[must_use]
    pub fn high(&self) -> Option<f64> {
        self.interval.map(|i| W::unit().from_si(i.high))
    }

    /// Middle of the draws, given where the value itself sits at one end of its range.
    #[must_use]
    pub fn median(&self) -> Option<f64> {
        self.interval.and_then(|i| i.median).map(|m| W::unit().from_si(m))
    }

    /// The unit.
    #[must_use]
    pub fn unit(&self) -> &'static Unit {
        W::unit()
    }
}

impl<W: Word> Copy for Figure<W> {}

#[expect(clippy::expl_impl_clone_on_copy, reason = "a derive would ask for W: Clone")]
impl<W: Word> Clone for Figure<W> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<W: Word> PartialEq for Figure<W> {
    fn eq(&self, other: &Self) -> bool {
        self.si.to_bits() == other.si.to_bits() && self.interval == other.interval
    }
}

impl<W: Word> fmt::Debug for Figure<W> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}", self.value(), W::unit().symbol)?;
        match (self.low(), self.high()) {
            (Some(low), Some(high)) => write!(f, " ({low} to {high})"),
            _ => Ok(()),
        }
    }
}

#[cfg(feature = "serde")]
impl<W: Word> serde::Serialize for Figure<W> {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeMap;
        let mut map = serializer.serialize_map(None)?;
        map.serialize_entry("value", &self.value())?;
        map.serialize_entry("unit", W::unit().symbol)?;
        for (key, value) in [("low", self.low()), ("high", self.high()), ("median", self.median())] {
            if let Some(value) = value {
                map.serialize_entry(key, &value)?;
            }
        }
        map.end()
    }
}

#[cfg(feature = "schema")]
impl<W: Word> schemars::JsonSchema for Figure<W> {
    fn schema_name() -> alloc::borrow::Cow<'static, str> {
        alloc::format!("figure_in_{}", W::unit().word).into()
    }

    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({
            "type": "object",
            "description": "a number with its unit; low and high hold 95 % of the draws",
            "properties": {
                "value": {"type": "number"},
                "unit": {"const": W::unit().symbol},
                "low": {"type": "number"},
                "high": {"type": "number"},
                "median": {"type": "number"},
            },
            "required": ["value", "unit"],
            "additionalProperties": false,
        })
    }
}
