//! Texts such as "40 gal" in: a number, a unit, and nothing that could mean two things.

use alloc::format;
use core::str::FromStr;

use super::{Dimension, Quantity, Unit, Value, refusal, spelling::normal, table};
use crate::error::{Error, ErrorKind};

/// The quantity a text such as `"40 gal"` gives.
///
/// A number with a decimal point (`2.5`, `.5`, `1e3`, a leading `-`), then the unit by symbol, word or
/// alias; spaces around and between do not matter. °Brix, ratios (as fractions) and counts need no unit.
///
/// # Errors
/// Unreadable, unknown unit, wrong dimension, not finite, or outside the range of the type. The error
/// names no argument: [`Error::within`] gives it the path of the input.
///
/// # Examples
/// ```
/// use sugaring::units::{self, *};
/// assert_eq!(units::parse::<Volume>("40 gal")?, gal(40.0));
/// assert_eq!(units::parse::<GaugePressure>("7.6bar_gauge")?, bar_gauge(7.6));
/// assert_eq!(units::parse::<Ratio>("25 %")?, percent(25.0));
/// # Ok::<(), sugaring::Error>(())
/// ```
/// What could mean two things is refused:
/// ```
/// use sugaring::units::{self, Volume};
/// let error = units::parse::<Volume>("2,5 L").unwrap_err().within("sap[0].volume");
/// assert_eq!(error.to_string(), "sap[0].volume = \"2,5 L\" cannot be read; is it 2.5 L or 25 L?");
/// ```
pub fn parse<T: Value>(text: &str) -> Result<T, Error> {
    let quantity = Quantity::read(text, Some(T::DIMENSION))?;
    quantity.typed().map_err(|error| error.named(""))
}

impl Quantity {
    /// The quantity of a text, in the unit it names.
    ///
    /// # Errors
    /// Unreadable, unknown unit, not finite, or wrong dimension where the unit is left out.
    ///
    /// ```
    /// use sugaring::units::Quantity;
    /// let burned = Quantity::parse("1.5 cords")?;
    /// assert_eq!((burned.value(), burned.unit().word), (1.5, "cord"));
    /// assert_eq!(burned.to_string(), "1.5 cord");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn parse(text: &str) -> Result<Self, Error> {
        Self::read(text, None)
    }

    /// The quantity of a text where `wanted` is needed; the error's argument is left empty.
    pub(crate) fn read(text: &str, wanted: Option<Dimension>) -> Result<Self, Error> {
        let text = text.trim();
        let Some((value, rest)) = number(text) else {
            return Err(refusal::no_number(text, wanted));
        };
        let rest = rest.trim_start();
        if rest.is_empty() {
            return Self::plain(value, wanted);
        }
        match Unit::named(rest) {
            Some(unit) => Self::new(value, unit).checked(wanted),
            None => Err(refusal::no_unit(text, value, rest, wanted)),
        }
    }

    /// `value` in the unit of a symbol, word or alias; without one it is a bare number.
    pub(crate) fn in_unit(value: f64, unit: &str, wanted: Option<Dimension>) -> Result<Self, Error> {
        if unit.trim().is_empty() {
            return Self::plain(value, wanted);
        }
        match Unit::named(unit) {
            Some(unit) => Self::new(value, unit).checked(wanted),
            None => Err(refusal::unknown_unit(value, unit, wanted)),
        }
    }

    /// A bare number where `wanted` is needed: a °Brix, a fraction or a count, and nothing else.
    pub(crate) fn plain(value: f64, wanted: Option<Dimension>) -> Result<Self, Error> {
        match wanted {
            Some(dimension) if dimension.is_plain() => Self::new(value, Unit::base(dimension)).checked(wanted),
            _ if !value.is_finite() => Err(Error::not_finite("", value)),
            _ => Err(Error::needs_unit(value, wanted)),
        }
    }

    /// The quantity itself, if its number is finite, in SI too, and it is of the dimension `wanted`.
    pub(crate) fn checked(self, wanted: Option<Dimension>) -> Result<Self, Error> {
        match wanted {
            _ if !self.si().is_finite() => Err(Error::not_finite("", self.si())),
            Some(dimension) if dimension != self.dimension() => Err(Error::wrong_dimension(&self, dimension)),
            _ => Ok(self),
        }
    }
}

impl FromStr for Quantity {
    type Err = Error;

    fn from_str(text: &str) -> Result<Self, Error> {
        Self::parse(text)
    }
}

impl Unit {
    /// The unit of a symbol, a word or an alias.
    ///
    /// ```
    /// use sugaring::units::Unit;
    /// assert_eq!(Unit::named("gallons").map(|unit| unit.word), Some("gal"));
    /// assert_eq!(Unit::named("gall"), None);
    /// ```
    #[must_use]
    pub fn named(text: &str) -> Option<&'static Self> {
        let text = text.trim();
        let all = || table::ALL.iter().copied();
        if text.is_empty() {
            return None;
        }
        if let Some(unit) = all().find(|unit| unit.spellings().any(|known| known == text)) {
            return Some(unit);
        }
        let folded = normal(text);
        let same = |known: &str| {
            let known = normal(known);
            known == folded || is_spaced_form(&known, &folded)
        };
        all().find(|unit| unit.spellings().any(same))
    }

    /// Every spelling: symbol, word, aliases.
    pub(crate) fn spellings(&self) -> impl Iterator<Item = &'static str> + use<> {
        let aliases = self.aliases.iter().copied();
        [self.symbol, self.word].into_iter().chain(aliases)
    }
}

/// Whether `known` is `text` once its spaces are dropped.
fn is_spaced_form(known: &str, text: &str) -> bool {
    known.split(' ').try_fold(text, |left, part| left.strip_prefix(part)) == Some("")
}

/// The number a text starts with, and what stands behind it.
pub(super) fn number(text: &str) -> Option<(f64, &str)> {
    let (minus, unsigned) = match text.strip_prefix(['-', '−']) {
        Some(rest) => (true, rest),
        None => (false, text.strip_prefix('+').unwrap_or(text)),
    };
    let end = number_end(unsigned)?;
    let (digits, rest) = unsigned.split_at_checked(end)?;
    let size: f64 = digits.parse().ok()?;
    Some((if minus { -size } else { size }, rest))
}

/// Where the digits of a number end: digits, a point, an exponent if digits follow it.
fn number_end(text: &str) -> Option<usize> {
    let bytes = text.as_bytes();
    let digits_from = |start: usize| {
        let rest = bytes.get(start..).unwrap_or_default();
        start + rest.iter().take_while(|b| b.is_ascii_digit()).count()
    };
    let whole = digits_from(0);
    let mut end = whole;
    let mut digits = whole;
    if bytes.get(whole) == Some(&b'.') {
        end = digits_from(whole + 1);
        digits = end - 1;
    }
    if digits == 0 {
        return None;
    }
    if matches!(bytes.get(end), Some(b'e' | b'E')) {
        let sign = usize::from(matches!(bytes.get(end + 1), Some(b'+' | b'-')));
        let exponent = end + 1 + sign;
        let last = digits_from(exponent);
        if last > exponent {
            end = last;
        }
    }
    Some(end)
}

impl Error {
    /// A bare number where a unit is needed.
    #[cold]
    pub(crate) fn needs_unit(value: f64, wanted: Option<Dimension>) -> Self {
        let shown = table::fraction.show(value);
        let hint = match wanted.map(Dimension::common_units) {
            Some((Some(one), Some(two))) => format!("write {}({shown}) or {}({shown})", one.word, two.word),
            Some((Some(one), None)) => format!("write {}({shown})", one.word),
            _ => format!("write it behind, as in {shown} gal"),
        };
        Self::new(ErrorKind::WrongDimension, "", format!(" = {shown} needs a unit:"))
            .with_value(value, &table::fraction)
            .with_hint(hint)
    }
}

impl Dimension {
    /// The units most people would write, for hints; none where a bare number will do.
    pub(crate) fn common_units(self) -> (Option<&'static Unit>, Option<&'static Unit>) {
        use table::{
            bar_gauge, btu, btu_per_h, btu_per_lb, deg_c, deg_f, delta_c, delta_f, foot, gal, gal_per_h,
            gram_per_litre, hours, in_hg, kg, kg_per_h, kg_per_m3, kj_per_kg, kj_per_kg_k, kpa, kw, kwh, lb,
            lb_per_gal, lb_per_h, litre, litre_per_h, litre_per_h_bar, metre, mg_per_litre, minutes, mpa_s, per_kelvin,
            psi_gauge, square_foot, square_metre, w_per_m_k,
        };
        let both = |one: &'static Unit, two: &'static Unit| (Some(one), Some(two));
        match self {
            Self::Volume => both(&litre, &gal),
            Self::Mass => both(&kg, &lb),
            Self::Temperature => both(&deg_c, &deg_f),
            Self::TemperatureDifference => both(&delta_c, &delta_f),
            Self::Pressure => both(&kpa, &in_hg),
            Self::GaugePressure => both(&bar_gauge, &psi_gauge),
            Self::Length => both(&metre, &foot),
            Self::Area => both(&square_metre, &square_foot),
            Self::Time => both(&hours, &minutes),
            Self::Flow => both(&litre_per_h, &gal_per_h),
            Self::MassFlow => both(&kg_per_h, &lb_per_h),
            Self::Power => both(&kw, &btu_per_h),
            Self::Energy => both(&kwh, &btu),
            Self::Density => both(&kg_per_m3, &lb_per_gal),
            Self::Concentration => both(&mg_per_litre, &gram_per_litre),
            Self::EnergyPerMass => both(&kj_per_kg, &btu_per_lb),
            Self::SpecificHeat => (Some(&kj_per_kg_k), None),
            Self::Viscosity => (Some(&mpa_s), None),
            Self::Conductivity => (Some(&w_per_m_k), None),
            Self::Permeance => (Some(&litre_per_h_bar), None),
            Self::PerKelvin => (Some(&per_kelvin), None),
            Self::Ratio | Self::Brix | Self::Count => (None, None),
            scale => (Some(Unit::base(scale)), None),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn numbers_end_where_people_end_them() {
        let read = |text| number(text).map(|(value, rest)| (value, rest.to_owned()));
        let cases = [
            ("40 gal", 40.0, " gal"),
            (".5L", 0.5, "L"),
            ("2.", 2.0, ""),
            ("-2.5 °C", -2.5, " °C"),
            ("−2.5 °C", -2.5, " °C"),
            ("+3 °C", 3.0, " °C"),
            ("1e3 L", 1000.0, " L"),
            ("1E-3L", 1e-3, "L"),
            ("1each", 1.0, "each"),
            ("1e+ L", 1.0, "e+ L"),
            ("1.2.3", 1.2, ".3"),
        ];
        for (text, value, rest) in cases {
            assert_eq!(read(text), Some((value, rest.to_owned())), "{text}");
        }
        for text in ["", ".", "-", "-.", "e3", ".e3", "gal", "NaN", "inf", "--1"] {
            assert_eq!(read(text), None, "{text}");
        }
        assert_eq!(number("1e999 gal").map(|(value, _)| value), Some(f64::INFINITY));
    }

    #[test]
    fn no_spelling_means_two_units() {
        for unit in table::ALL {
            for spelling in unit.spellings().filter(|s| !s.is_empty()) {
                assert_eq!(Unit::named(spelling), Some(*unit), "{spelling}");
                let tight = normal(spelling).replace(' ', "");
                assert_eq!(Unit::named(&tight), Some(*unit), "{tight}");
                let wide = spelling.replace(' ', "   ");
                assert_eq!(Unit::named(&wide), Some(*unit), "{wide}");
            }
        }
    }

    #[test]
    fn letters_are_not_pushed_together() {
        assert_eq!(Unit::named("m in"), None);
        assert_eq!(Unit::named("k Pa"), None);
    }

    #[test]
    fn no_module_is_a_unit_word() {
        let root = include_str!("../lib.rs");
        let modules = root.lines().filter_map(|line| {
            let line = line.trim_start_matches("pub ");
            line.strip_prefix("mod ")?.strip_suffix(';')
        });
        let modules: Vec<&str> = modules.collect();
        assert!(modules.contains(&"day"), "{modules:?}");
        for unit in table::ALL {
            assert!(!modules.contains(&unit.word) || unit.word == "brix", "{}", unit.word);
        }
    }

    #[test]
    fn a_bare_number_is_a_brix_a_fraction_or_a_count() {
        for unit in table::ALL {
            let bare = Quantity::read("20", Some(unit.dimension));
            assert_eq!(bare.is_ok(), unit.dimension.is_plain(), "{}", unit.word);
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(2000))]

        #[test]
        fn every_quantity_reads_back(index in 0..table::ALL.len(), bits in any::<u64>()) {
            let value = f64::from_bits(bits);
            let unit = table::ALL[index];
            prop_assume!(unit.to_si(value).is_finite() && value.to_bits() != (-0.0_f64).to_bits());
            let text = Quantity::new(value, unit).to_string();
            let back = Quantity::read(&text, Some(unit.dimension)).map_err(|e| TestCaseError::fail(e.to_string()))?;
            prop_assert_eq!(back.unit(), unit);
            prop_assert_eq!(back.value().to_bits(), value.to_bits(), "{}", text);
        }

        #[test]
        fn any_text_is_read_or_refused(text in any::<String>(), index in 0..table::ALL.len()) {
            let wanted = table::ALL[index].dimension;
            let _ = Quantity::read(&text, Some(wanted)).map_err(|e| e.to_string());
            let _ = Quantity::parse(&text).map_err(|e| e.to_string());
        }

        #[test]
        fn near_misses_are_read_or_refused(
            text in "[-+−]?[0-9,./ e½]{0,8}[ ]{0,2}[a-zA-Z°º%³/() ]{0,8}[ 0-9.,/]{0,3}[a-zA-Z ]{0,3}",
            index in 0..table::ALL.len(),
        ) {
            let wanted = table::ALL[index].dimension;
            if let Err(error) = Quantity::read(&text, Some(wanted)) {
                prop_assert!(!error.to_string().is_empty());
                prop_assert_eq!(error.argument(), "");
            }
        }
    }
}
