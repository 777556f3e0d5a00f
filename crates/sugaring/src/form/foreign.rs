//! What another language hands a function: taken, or refused in the words of the plan's reader.

use alloc::{format, string::String};

use super::{Node, Tree};
use crate::{
    digits,
    error::{Error, ErrorKind},
    units::{Dimension, Quantity, Unit, quoted, table},
};

impl Tree {
    /// The quantity this is as the argument `argument` of a function that needs `wanted`.
    ///
    /// Quantities, `{"value": 20, "unit": "°C"}`, and bare numbers for °Brix, ratios and counts; texts are for
    /// plans, where nothing else can stand.
    ///
    /// # Errors
    /// Wrong dimension, unknown unit, not finite or unreadable; the hint is what to write.
    ///
    /// ```
    /// use sugaring::{form::Tree, units::Dimension};
    /// let says = |tree: Tree, wanted| tree.argument("temperature", wanted).unwrap_err().to_string();
    /// assert_eq!(
    ///     says(Tree::from(20.0), Dimension::Temperature),
    ///     "temperature = 20 needs a unit: write deg_c(20) or deg_f(20)"
    /// );
    /// assert_eq!(
    ///     says(Tree::from("20 °C"), Dimension::Temperature),
    ///     "temperature = \"20 °C\" cannot be read; write deg_c(20)"
    /// );
    /// ```
    pub fn argument(&self, argument: &str, wanted: Dimension) -> Result<Quantity, Error> {
        let found = match self {
            Self::Quantity(quantity) => quantity.checked(Some(wanted)),
            Self::Number(number) => Quantity::plain(*number, Some(wanted)),
            Self::Map(_) => {
                return match Node::argument(self, argument).any_quantity()?.checked(Some(wanted)) {
                    Ok(quantity) => Ok(quantity),
                    Err(error) => Err(error.named(argument)),
                };
            }
            Self::Text(text) => Err(match Quantity::read(text, Some(wanted)) {
                Ok(quantity) => Error::unreadable("", &quoted(text)).with_hint(format!("write {}", called(&quantity))),
                Err(error) => error,
            }),
            _ => Err(Error::unreadable("", &self.shown()).with_hint(needed(wanted))),
        };
        found.map_err(|error| error.named(argument))
    }
}

/// A quantity as it is written in a program: `deg_c(20)`, `66.9`.
fn called(quantity: &Quantity) -> String {
    let number = digits::shortest(quantity.value());
    if quantity.dimension().is_plain() && quantity.unit() == Unit::base(quantity.dimension()) {
        number
    } else {
        format!("{}({number})", quantity.unit().word)
    }
}

/// What is needed, as an example.
fn needed(wanted: Dimension) -> String {
    match wanted.common_units().0 {
        Some(unit) => format!(
            "{} such as {} is needed",
            wanted.article_name(),
            called(&Quantity::new(40.0, unit))
        ),
        None => String::from("a number is needed"),
    }
}

/// Errors that arise where another language hands something in.
impl Error {
    /// Something that no argument can be; `shown` is how it looks, `needed` what is needed, such as "a number".
    #[cold]
    #[must_use]
    pub fn foreign(argument: &str, shown: &str, needed: &str) -> Self {
        Self::unreadable(String::from(argument), shown).with_hint(format!("{needed} is needed"))
    }

    /// A quantity of another library that is of another dimension than is needed.
    #[cold]
    #[must_use]
    pub fn foreign_dimension(argument: &str, shown: &str, needed: &str) -> Self {
        let finding = format!(" = {shown} is of another dimension");
        Self::new(ErrorKind::WrongDimension, String::from(argument), finding).with_hint(format!("{needed} is needed"))
    }

    /// A pressure, or something else, where a station pressure is needed: its kind must be named.
    #[cold]
    #[must_use]
    pub fn no_station(argument: &str, given: &Tree) -> Self {
        let error = match given {
            Tree::Quantity(quantity) => {
                let finding = format!(" = {quantity} is {}", quantity.dimension().article_name());
                Self::new(ErrorKind::WrongDimension, String::from(argument), finding)
                    .with_value(quantity.value(), quantity.unit())
            }
            Tree::Number(number) => {
                let finding = format!(" = {} is a bare number", digits::significant(*number, 6));
                Self::new(ErrorKind::WrongDimension, String::from(argument), finding)
                    .with_value(*number, &table::fraction)
            }
            other => Self::unreadable(String::from(argument), &other.shown()),
        };
        let example = match given {
            Tree::Quantity(quantity) if quantity.dimension() == Dimension::Pressure => called(quantity),
            _ => String::from("kpa(96.5)"),
        };
        error.with_hint(format!(
            "a station pressure is needed: write StationPressure.measured({example})"
        ))
    }

    /// A point on a scale that was to be added to another, or scaled.
    #[cold]
    #[must_use]
    pub fn point(argument: &str, given: &Quantity) -> Self {
        let finding = format!(" = {given} is a point on its scale");
        let hint = if given.dimension() == Dimension::Temperature {
            "points neither add nor scale: a difference is written delta_c or delta_f"
        } else {
            "points neither add nor scale: a difference of pressures is written kpa, bar or psi"
        };
        Self::new(ErrorKind::WrongDimension, String::from(argument), finding)
            .with_value(given.value(), given.unit())
            .with_hint(hint)
    }

    /// A quantity where a plain number is needed, as a factor.
    #[cold]
    #[must_use]
    pub fn no_number(argument: &str, given: &Quantity) -> Self {
        let finding = format!(" = {given} is {}", given.dimension().article_name());
        Self::new(ErrorKind::WrongDimension, String::from(argument), finding)
            .with_value(given.value(), given.unit())
            .with_hint("a plain number is needed")
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use alloc::string::ToString;

    fn says(tree: &Tree, wanted: Dimension) -> String {
        tree.argument("x", wanted).unwrap_err().to_string()
    }

    #[test]
    fn arguments_are_taken() {
        let celsius = Quantity::new(20.0, &table::deg_c);
        assert_eq!(Tree::from(celsius).argument("x", Dimension::Temperature), Ok(celsius));
        let map = Tree::map([("value", Tree::from(20.0)), ("unit", Tree::from("°C"))]);
        assert_eq!(map.argument("x", Dimension::Temperature), Ok(celsius));
        let brix = Tree::from(66.9).argument("x", Dimension::Brix);
        assert_eq!(brix.map(|q| q.si()), Ok(66.9));
    }

    #[test]
    fn what_is_no_argument_is_refused() {
        let temperature = Dimension::Temperature;
        assert_eq!(
            says(&Tree::Null, temperature),
            "x = null cannot be read; a temperature such as deg_c(40) is needed"
        );
        assert_eq!(
            says(&Tree::Null, Dimension::Brix),
            "x = null cannot be read; a number is needed"
        );
        assert_eq!(
            says(&Tree::from(true), Dimension::Brix),
            "x = true cannot be read; a number is needed"
        );
        assert_eq!(
            says(&Tree::from("66.9"), Dimension::Brix),
            "x = \"66.9\" cannot be read; write 66.9"
        );
        assert_eq!(
            says(&Tree::from("20"), temperature),
            "x = 20 needs a unit: write deg_c(20) or deg_f(20)"
        );
        let litre = Tree::from(Quantity::new(5.0, &table::litre));
        assert_eq!(
            says(&litre, temperature),
            "x = 5 L is a volume; a temperature is needed"
        );
        let map = Tree::map([("value", Tree::from(5.0)), ("unit", Tree::from("L"))]);
        assert_eq!(says(&map, temperature), "x = 5 L is a volume; a temperature is needed");
        assert_eq!(
            says(&Tree::from(f64::NAN), Dimension::Brix),
            "x = NaN is not a finite number"
        );
    }

    #[test]
    fn a_station_pressure_names_its_kind() {
        let pressure = Tree::from(Quantity::new(96.5, &table::kpa));
        assert_eq!(
            Error::no_station("station", &pressure).to_string(),
            "station = 96.5 kPa is an absolute pressure; \
             a station pressure is needed: write StationPressure.measured(kpa(96.5))"
        );
        assert_eq!(
            Error::no_station("station", &Tree::from(96.5)).to_string(),
            "station = 96.5 is a bare number; a station pressure is needed: write StationPressure.measured(kpa(96.5))"
        );
    }
}
