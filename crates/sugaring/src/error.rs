//! One error for the whole library: what was given, what is wrong with it, what to do.

use alloc::{
    borrow::Cow,
    boxed::Box,
    format,
    string::{String, ToString},
    vec::Vec,
};
use core::fmt;

use crate::{
    digits,
    nearest::nearest,
    relation::{Range, Source},
    units::{Dimension, Quantity, Unit, quoted},
};

/// What went wrong, as one word.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum ErrorKind {
    /// The value lies outside the range of the relation or input.
    OutOfRange,
    /// NaN or infinite.
    NotFinite,
    /// A quantity of another kind, or a bare number where a unit is needed.
    WrongDimension,
    /// A text with a unit nobody knows.
    UnknownUnit,
    /// A key, fuel, species, instrument or choice nobody knows.
    UnknownName,
    /// A required input is absent.
    Missing,
    /// A text that is no number with a unit, or JSON that is no JSON.
    Unreadable,
    /// Two inputs contradict one another.
    Inconsistent,
    /// The goal cannot be reached, or the limit not be kept.
    Unreachable,
    /// A solver did not settle.
    NoConvergence,
    /// The caller stopped the work.
    Cancelled,
}

impl ErrorKind {
    /// Every kind, in the order of the documentation.
    pub const ALL: [Self; 11] = [
        Self::OutOfRange,
        Self::NotFinite,
        Self::WrongDimension,
        Self::UnknownUnit,
        Self::UnknownName,
        Self::Missing,
        Self::Unreadable,
        Self::Inconsistent,
        Self::Unreachable,
        Self::NoConvergence,
        Self::Cancelled,
    ];

    /// The kind's name in data and other languages.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::OutOfRange => "out_of_range",
            Self::NotFinite => "not_finite",
            Self::WrongDimension => "wrong_dimension",
            Self::UnknownUnit => "unknown_unit",
            Self::UnknownName => "unknown_name",
            Self::Missing => "missing",
            Self::Unreadable => "unreadable",
            Self::Inconsistent => "inconsistent",
            Self::Unreachable => "unreachable",
            Self::NoConvergence => "no_convergence",
            Self::Cancelled => "cancelled",
        }
    }

    /// What it means, in a line.
    #[must_use]
    pub const fn meaning(self) -> &'static str {
        match self {
            Self::OutOfRange => "The value lies outside the range of the relation or input.",
            Self::NotFinite => "NaN or infinite.",
            Self::WrongDimension => "A quantity of another kind, or a bare number where a unit is needed.",
            Self::UnknownUnit => "A text with a unit nobody knows.",
            Self::UnknownName => "A key, fuel, species, instrument or choice nobody knows.",
            Self::Missing => "A required input is absent.",
            Self::Unreadable => "A text that is no number with a unit, or JSON that is no JSON.",
            Self::Inconsistent => "Two inputs contradict one another.",
            Self::Unreachable => "The goal cannot be reached, or the limit not be kept.",
            Self::NoConvergence => "A solver did not settle.",
            Self::Cancelled => "The caller stopped the work.",
        }
    }

    /// How its text begins, with … for what differs; behind it stands the hint.
    #[must_use]
    pub const fn begins(self) -> &'static str {
        match self {
            Self::OutOfRange => "… = … is outside … to …",
            Self::NotFinite => "… = … is not a finite number",
            Self::WrongDimension => "… = … is …; … is needed",
            Self::UnknownUnit => "… has the unknown unit …",
            Self::UnknownName => "… has the unknown name …",
            Self::Missing => "… is missing",
            Self::Unreadable => "… = … cannot be read",
            Self::Inconsistent => "… = … does not fit …",
            Self::Unreachable => "… = … cannot be reached",
            Self::NoConvergence => "… did not settle",
            Self::Cancelled => "the work was stopped",
        }
    }
}

/// The one error: its text names the input, its value, what is wrong and a hint; its fields give the same as data.
///
/// One type, because errors of a plan come from every floor and finer types compose badly; the
/// fields say what finer types would.
///
/// ```
/// use sugaring::{ErrorKind, units::brix};
/// let error = brix(120.0).unwrap_err();
/// assert_eq!(error.to_string(), "brix = 120 °Bx is outside 0 to 100 °Bx");
/// assert_eq!(error.kind(), ErrorKind::OutOfRange);
/// assert_eq!(error.range(), Some((0.0, 100.0)));
/// ```
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[error("{0}")]
pub struct Error(Box<Details>);

#[derive(Clone, Debug, PartialEq)]
struct Details {
    kind: ErrorKind,
    argument: Cow<'static, str>,
    /// What stands after the argument: " = -5 °C is outside 0 to 100 °C".
    finding: String,
    value: f64,
    unit: &'static str,
    range: Option<(f64, f64)>,
    hint: Option<String>,
    reference: Option<Source>,
}

impl fmt::Display for Details {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.argument.is_empty() {
            f.write_str(self.finding.trim_start_matches([' ', '=']))?;
        } else {
            write!(f, "{}{}", self.argument, self.finding)?;
        }
        match &self.hint {
            Some(hint) if self.finding.ends_with(':') => write!(f, " {hint}"),
            Some(hint) => write!(f, "; {hint}"),
            None => Ok(()),
        }
    }
}

/// What the error says as data.
impl Error {
    /// What went wrong.
    #[must_use]
    pub fn kind(&self) -> ErrorKind {
        self.0.kind
    }

    /// The offending argument or the path of the offending input, such as `membrane.pressure`.
    #[must_use]
    pub fn argument(&self) -> &str {
        &self.0.argument
    }

    /// The offending number, in [`Error::unit`]; NaN where the offence is no number.
    #[must_use]
    pub fn value(&self) -> f64 {
        self.0.value
    }

    /// Symbol of the unit of value and range; empty for plain numbers.
    #[must_use]
    pub fn unit(&self) -> &'static str {
        self.0.unit
    }

    /// The inclusive limits, in [`Error::unit`].
    #[must_use]
    pub fn range(&self) -> Option<(f64, f64)> {
        self.0.range
    }

    /// What to do about it.
    #[must_use]
    pub fn hint(&self) -> Option<&str> {
        self.0.hint.as_deref()
    }

    /// Where the limit comes from.
    #[must_use]
    pub fn reference(&self) -> Option<Source> {
        self.0.reference
    }

    /// The same error one level further out: `pressure` becomes `membrane.pressure`.
    #[must_use]
    pub fn within(mut self, outer: &str) -> Self {
        let inner = &self.0.argument;
        self.0.argument = Cow::Owned(if inner.is_empty() {
            outer.to_string()
        } else if outer.is_empty() || inner.starts_with('[') {
            format!("{outer}{inner}")
        } else {
            format!("{outer}.{inner}")
        });
        self
    }

    /// The same error under the caller's name for the argument.
    #[must_use]
    pub fn named(mut self, argument: &str) -> Self {
        self.0.argument = Cow::Owned(argument.to_string());
        self
    }
}

/// Making errors. Numbers are shown in the unit their limit is stated in.
impl Error {
    #[cold]
    pub(crate) fn new(kind: ErrorKind, argument: impl Into<Cow<'static, str>>, finding: impl Into<String>) -> Self {
        Self(Box::new(Details {
            kind,
            argument: argument.into(),
            finding: finding.into(),
            value: f64::NAN,
            unit: "",
            range: None,
            hint: None,
            reference: None,
        }))
    }

    /// The same error with this hint in place of its own.
    #[must_use]
    pub fn with_hint(mut self, hint: impl Into<String>) -> Self {
        self.0.hint = Some(hint.into());
        self
    }

    #[must_use]
    pub(crate) fn with_value(mut self, value: f64, unit: &Unit) -> Self {
        self.0.value = value;
        self.0.unit = unit.symbol;
        self
    }

    #[must_use]
    pub(crate) fn with_range(mut self, low: f64, high: f64) -> Self {
        self.0.range = Some((low, high));
        self
    }

    #[must_use]
    pub(crate) fn with_reference(mut self, reference: Source) -> Self {
        self.0.reference = Some(reference);
        self
    }

    /// `si` lies outside `range`; the usual slips are recognised.
    #[cold]
    pub(crate) fn out_of_range(range: &Range, si: f64) -> Self {
        if !si.is_finite() {
            return Self::not_finite(range.argument, si);
        }
        let value = range.unit.from_si(si);
        let (low, high) = (digits::shortest(range.low), digits::shortest(range.high));
        let error = Self::outside(range.argument, value, range.unit, range.low, range.high, &low, &high);
        match range.slip(value) {
            Some(hint) => error.with_hint(hint),
            None => error,
        }
    }

    /// `value` (in `unit`) lies outside limits that were computed: the lower is printed rounded up, the upper down.
    #[cold]
    pub(crate) fn out_of_limits(argument: &'static str, value: f64, unit: &'static Unit, low: f64, high: f64) -> Self {
        if !value.is_finite() {
            return Self::not_finite(argument, value);
        }
        let texts = (digits::lower_limit(low, 4), digits::upper_limit(high, 4));
        Self::outside(argument, value, unit, low, high, &texts.0, &texts.1)
    }

    fn outside(
        argument: &'static str,
        value: f64,
        unit: &'static Unit,
        low: f64,
        high: f64,
        low_text: &str,
        high_text: &str,
    ) -> Self {
        let (low_shown, high_shown) = (low_text.parse().unwrap_or(low), high_text.parse().unwrap_or(high));
        let finding = format!(
            " = {} is outside {low_text} to {}",
            unit.with_symbol(&digits::outside(value, low_shown, high_shown, 6)),
            unit.with_symbol(high_text)
        );
        Self::new(ErrorKind::OutOfRange, argument, finding)
            .with_value(value, unit)
            .with_range(low, high)
    }

    /// NaN or infinity.
    #[cold]
    #[must_use]
    pub fn not_finite(argument: impl Into<Cow<'static, str>>, value: f64) -> Self {
        let shown = if value.is_nan() {
            "NaN"
        } else if value > 0.0 {
            "infinity"
        } else {
            "-infinity"
        };
        let mut error = Self::new(
            ErrorKind::NotFinite,
            argument,
            format!(" = {shown} is not a finite number"),
        );
        error.0.value = value;
        error
    }

    /// A quantity of another kind than is needed.
    #[cold]
    #[must_use]
    pub fn wrong_dimension(given: &Quantity, needed: Dimension) -> Self {
        let finding = format!(" = {given} is {}", given.dimension().article_name());
        let hint = match (given.dimension(), needed) {
            (Dimension::GaugePressure, Dimension::Pressure) => {
                String::from("an absolute one is needed: a barometer's 970 hPa is hpa(970)")
            }
            (Dimension::Pressure, Dimension::GaugePressure) => {
                String::from("a gauge pressure is needed: what a gauge shows as 110 psi is psi_gauge(110)")
            }
            (Dimension::TemperatureDifference, Dimension::Temperature) => {
                String::from("a temperature is needed: write deg_c or deg_f")
            }
            (Dimension::Temperature, Dimension::TemperatureDifference) => {
                String::from("a difference of temperatures is needed: write delta_c or delta_f")
            }
            (Dimension::Ratio, Dimension::Brix) => {
                let percent = digits::significant(given.si() * 100.0, 6);
                format!("a °Brix is needed: {percent} % is written {percent}")
            }
            _ => format!("{} is needed", needed.article_name()),
        };
        Self::new(ErrorKind::WrongDimension, "", finding)
            .with_value(given.value(), given.unit())
            .with_hint(hint)
    }

    /// A key, fuel, species or choice nobody knows; the nearest of `names` is the hint, or else all of them.
    #[cold]
    #[must_use]
    pub fn unknown_name<'a>(
        argument: impl Into<Cow<'static, str>>,
        given: &str,
        names: impl IntoIterator<Item = &'a str>,
    ) -> Self {
        const MOST: usize = 24;
        let names: Vec<&str> = names.into_iter().collect();
        let near = nearest(given, &names);
        let hint = match (near.as_slice(), names.get(MOST)) {
            ([], None) => format!("known: {}", names.join(", ")),
            ([], Some(_)) => format!("known: {}, …", names.get(..MOST).unwrap_or_default().join(", ")),
            (near, _) => format!("nearest: {}", near.join(", ")),
        };
        Self::unknown(argument, given).with_hint(hint)
    }

    /// A key or a choice of the documentation that comes later.
    #[cold]
    pub(crate) fn not_yet(argument: impl Into<Cow<'static, str>>, given: &str) -> Self {
        Self::unknown(argument, given).with_hint("this version does not know it yet")
    }

    fn unknown(argument: impl Into<Cow<'static, str>>, given: &str) -> Self {
        let finding = format!(" has the unknown name {}", quoted(given));
        Self::new(ErrorKind::UnknownName, argument, finding)
    }

    /// Something that is no input of the kind that is needed; `shown` as it was given, texts in quotes.
    #[cold]
    #[must_use]
    pub fn unreadable(argument: impl Into<Cow<'static, str>>, shown: &str) -> Self {
        Self::new(ErrorKind::Unreadable, argument, format!(" = {shown} cannot be read"))
    }

    /// A required input that is absent.
    #[cold]
    #[must_use]
    pub fn missing(argument: impl Into<Cow<'static, str>>) -> Self {
        Self::new(ErrorKind::Missing, argument, " is missing")
    }

    /// `argument = shown does not fit other`, where `other` reads `altitude = 410 m`.
    #[cold]
    #[must_use]
    pub fn inconsistent(argument: impl Into<Cow<'static, str>>, shown: &str, other: &str) -> Self {
        Self::new(
            ErrorKind::Inconsistent,
            argument,
            format!(" = {shown} does not fit {other}"),
        )
    }

    /// A goal that cannot be reached.
    #[cold]
    pub(crate) fn unreachable(argument: impl Into<Cow<'static, str>>, shown: &str) -> Self {
        Self::new(
            ErrorKind::Unreachable,
            argument,
            format!(" = {shown} cannot be reached"),
        )
    }

    /// A limit that cannot be kept.
    #[cold]
    pub(crate) fn unkeepable(argument: impl Into<Cow<'static, str>>, shown: &str) -> Self {
        Self::new(ErrorKind::Unreachable, argument, format!(" = {shown} cannot be kept"))
    }

    #[cold]
    pub(crate) fn no_convergence(argument: impl Into<Cow<'static, str>>) -> Self {
        Self::new(ErrorKind::NoConvergence, argument, " did not settle")
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::table;

    #[test]
    fn a_result_stays_small_and_crosses_threads() {
        fn shared<T: Send + Sync + 'static>() {}
        shared::<Error>();
        assert_eq!(size_of::<Error>(), size_of::<usize>());
    }

    #[test]
    fn a_misspelt_name_shows_the_nearest() {
        let error = Error::unknown_name("membrane", "presure", ["pressure", "pump"]);
        assert_eq!(
            error.to_string(),
            "membrane has the unknown name \"presure\"; nearest: pressure"
        );
        let error = Error::unknown_name("evaporator.run", "stream", ["batch", "flood"]);
        assert_eq!(
            error.to_string(),
            "evaporator.run has the unknown name \"stream\"; known: batch, flood"
        );
    }

    #[test]
    fn texts_begin_as_their_kind_says() {
        let errors = [
            Error::out_of_range(&Range::new("temperature", &table::deg_c, 0.0, 100.0), 500.0),
            Error::not_finite("temperature", f64::NAN),
            Error::wrong_dimension(&Quantity::parse("170 L").unwrap(), Dimension::Mass).named("sap[0].mass"),
            Quantity::parse("40 gall").unwrap_err().named("volume"),
            Error::unknown_name("membrane", "presure", ["pressure"]),
            Error::missing("air"),
            Error::unreadable("volume", "\"2,5 L\""),
            Error::inconsistent("temperature", "97 °C", "station = 96.5 kPa"),
            Error::unreachable("target", "66.9 °Bx"),
            Error::no_convergence("brix"),
        ];
        for error in errors {
            let text = error.to_string();
            let mut rest = text.as_str();
            for part in error.kind().begins().split('…') {
                let at = rest.find(part).unwrap_or_else(|| panic!("{text}: no {part:?}"));
                rest = &rest[at + part.len()..];
            }
        }
    }

    #[test]
    fn paths_join() {
        let inner = Error::missing("pressure");
        assert_eq!(
            inner.clone().within("membrane").to_string(),
            "membrane.pressure is missing"
        );
        assert_eq!(Error::missing("[0]").within("sap").argument(), "sap[0]");
        assert_eq!(Error::missing("").within("air").argument(), "air");
        assert_eq!(inner.named("feed").argument(), "feed");
    }
}
