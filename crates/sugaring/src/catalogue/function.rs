use core::fmt;

use crate::{
    error::Error,
    relation::Relation,
    units::{Dimension, Value},
};

/// How another language hands over an argument.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Kind {
    /// A quantity of this dimension; a bare number where the dimension is plain.
    Quantity(Dimension),
    /// A [`StationPressure`](crate::air::StationPressure), which crosses as its pressure.
    Station,
}

impl Kind {
    /// Its name in data: that of the dimension, or `station_pressure`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Quantity(dimension) => dimension.name(),
            Self::Station => "station_pressure",
        }
    }

    /// What the number measures once it is in SI.
    #[must_use]
    pub const fn dimension(self) -> Dimension {
        match self {
            Self::Quantity(dimension) => dimension,
            Self::Station => Dimension::Pressure,
        }
    }
}

/// An argument of a [`Function`].
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Argument {
    /// Its name.
    pub name: &'static str,
    /// How it is handed over.
    pub kind: Kind,
}

/// A public function of numbers, as data that can be called: one row of the table all languages are made from.
///
/// ```
/// use sugaring::catalogue;
/// let density = catalogue::functions().iter().find(|f| f.module == "sucrose" && f.name == "density").unwrap();
/// assert_eq!(density.summary, "True density of a sucrose solution.");
/// assert_eq!(format!("{:.2}", density.value(&[66.9, 293.15])?), "1328.19");
/// # Ok::<(), sugaring::Error>(())
/// ```
#[derive(Clone, Copy)]
pub struct Function {
    /// The module it lives in.
    pub module: &'static str,
    /// Its name.
    pub name: &'static str,
    /// What it is for, in a line.
    pub summary: &'static str,
    /// Its arguments, in order.
    pub arguments: &'static [Argument],
    /// What the result measures.
    pub result: Dimension,
    /// What it covers.
    pub relation: &'static Relation,
    pub(super) call: fn(&[f64]) -> Result<f64, Error>,
    pub(super) lanes: fn(&[&[f64]], &mut [f64]) -> usize,
}

impl Function {
    /// The result in SI, of arguments in SI.
    ///
    /// # Errors
    /// Those of the function; missing, where the number of arguments is not the function's.
    pub fn value(&self, si: &[f64]) -> Result<f64, Error> {
        (self.call)(si)
    }

    /// The results in SI of columns in SI, a lane after the other and each with the bits of [`Function::value`];
    /// refused lanes become NaN, and their number is returned.
    ///
    /// Columns shorter than `out`, or of another number than the arguments, are refused as a whole.
    pub fn block(&self, si: &[&[f64]], out: &mut [f64]) -> usize {
        if si.len() == self.arguments.len() && si.iter().all(|column| column.len() >= out.len()) {
            return (self.lanes)(si, out);
        }
        out.fill(f64::NAN);
        out.len()
    }
}

impl fmt::Debug for Function {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Function")
            .field("module", &self.module)
            .field("name", &self.name)
            .field("arguments", &self.arguments)
            .field("result", &self.result)
            .finish_non_exhaustive()
    }
}

/// The argument `name` of a row, from its number in SI.
pub(super) fn taken<T: Value>(row: &Function, name: &'static str, si: f64) -> Result<T, Error> {
    T::from_si(si).map_err(|error| refused(row, name, si, T::DIMENSION, error))
}

/// °Brix is refused by the limits of the function, which are narrower than its own.
#[cold]
fn refused(row: &Function, name: &'static str, si: f64, dimension: Dimension, own: Error) -> Error {
    let narrower = match dimension {
        Dimension::Brix => {
            let index = row.arguments.iter().position(|argument| argument.name == name);
            index.and_then(|index| row.relation.check(index, si).err())
        }
        _ => None,
    };
    narrower.unwrap_or_else(|| own.named(name))
}

/// The first argument that a call left out, or the function itself where it was given too many.
#[cold]
pub(super) fn arity(row: &Function, given: usize) -> Error {
    Error::missing(row.arguments.get(given).map_or(row.name, |argument| argument.name))
}

/// Whether every lane of every column lies within the limits, as written.
#[expect(
    clippy::needless_bitwise_bool,
    reason = "without branches the loop takes several lanes at once"
)]
pub(super) fn fits(relation: &Relation, columns: &[&[f64]], lanes: usize) -> bool {
    relation.inputs.len() == columns.len()
        && relation.inputs.iter().zip(columns).all(|(range, column)| {
            let (low, high) = range.limits_si();
            column
                .iter()
                .take(lanes)
                .fold(true, |fit, &x| fit & (x >= low) & (x <= high))
        })
}
