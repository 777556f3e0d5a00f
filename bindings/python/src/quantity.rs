//! `Quantity`: a number or a column with its unit.

use pyo3::{
    PyTraverseError, PyVisit,
    basic::CompareOp,
    exceptions::PyTypeError,
    prelude::*,
    types::{PyFloat, PyGenericAlias, PyString, PyTuple, PyType},
};
use std::{
    hash::{DefaultHasher, Hash, Hasher},
    ptr,
};
use sugaring::{
    Error, air,
    units::{self, Dimension, Value, table::ALL},
};

use crate::{
    arithmetic, columns,
    guard::guarded,
    raise::raise,
    shown,
    station::StationPressure,
    take::Number,
    unit::{self, Unit},
};

/// A number, or a column of numbers, with its unit. Unit words make it, ``gal(40)``, and read it, ``.to(litre)``.
///
/// Quantities add and subtract within a dimension and scale by numbers; one divided by another of its dimension is a
/// number. Temperatures, gauge pressures and other points on a scale neither add nor scale: point - point is a
/// difference, point + difference a point. Nothing but ``.to`` gives the bare number, so that no unit is lost unseen.
///
/// Examples
/// --------
/// >>> from sugaring.units import deg_c, deg_f, gal, litre
/// >>> gal(40).to(litre)
/// 151.41647136
/// >>> gal(1) + gal(2)
/// gal(3.0)
/// >>> deg_f(212) == deg_c(100)
/// True
/// >>> f"{gal(40):litre:.1f}"
/// '151.4'
#[pyclass(frozen, module = "sugaring", name = "Quantity")]
#[derive(Debug)]
pub(crate) struct Quantity {
    pub(crate) number: Number,
    /// The unit of the number.
    pub(crate) held: &'static units::Unit,
    /// The unit it is shown in.
    pub(crate) shown: &'static units::Unit,
}

impl Quantity {
    /// As a user gives it.
    pub(crate) fn given(number: Number, unit: &'static units::Unit) -> Self {
        Self {
            number,
            held: unit,
            shown: unit,
        }
    }

    /// As a function returns it: held in SI, shown in the unit of its relation.
    pub(crate) fn result(number: Number, held: &'static units::Unit, shown: &'static units::Unit) -> Self {
        Self { number, held, shown }
    }

    pub(crate) fn dimension(&self) -> Dimension {
        self.held.dimension
    }

    /// The quantity of the core, unless it is a column.
    pub(crate) fn core(&self) -> Option<units::Quantity> {
        match self.number {
            Number::Scalar(number) => Some(units::Quantity::new(convert(number, self.held, self.shown), self.shown)),
            Number::Column(_) => None,
        }
    }

    /// The number in `unit`, which must be of the dimension.
    pub(crate) fn number_in(&self, py: Python<'_>, unit: &'static units::Unit) -> PyResult<Number> {
        match &self.number {
            Number::Scalar(number) => Ok(Number::Scalar(convert(*number, self.held, unit))),
            Number::Column(column) if self.held == unit => Ok(Number::Column(column.clone_ref(py))),
            Number::Column(column) => columns::convert(py, column.bind(py), self.held, unit).map(Number::Column),
        }
    }

    /// The error of this where `wanted` is needed.
    pub(crate) fn unlike(&self, wanted: Dimension) -> Error {
        let sample = self
            .core()
            .unwrap_or_else(|| units::Quantity::new(f64::NAN, self.shown));
        if self.core().is_some() {
            return Error::wrong_dimension(&sample, wanted);
        }
        Error::foreign("", &format!("a column in {}", self.shown.word), wanted.article_name())
    }

    /// The unit of a word, which must be of this dimension.
    fn wanted(&self, word: &Bound<'_, PyAny>) -> PyResult<&'static units::Unit> {
        let py = word.py();
        let Ok(unit) = word.cast::<Unit>() else {
            let error = Error::foreign("unit", &described(word), "a unit word such as litre");
            return Err(raise(py, &error));
        };
        let unit = unit.get().unit;
        if unit.dimension == self.dimension() {
            Ok(unit)
        } else {
            Err(raise(py, &self.unlike(unit.dimension).named("quantity")))
        }
    }

    fn text(&self, py: Python<'_>) -> PyResult<String> {
        if let Some(quantity) = self.core() {
            return Ok(quantity.to_string());
        }
        let column = self.number_in(py, self.shown)?.object(py)?;
        let column = column.bind(py).str()?;
        Ok(format!("{} {}", shown::text(column.as_any()), self.shown.symbol))
    }
}

/// `number` in another unit of its dimension; in its own it stays as it is.
pub(crate) fn convert(number: f64, from: &'static units::Unit, to: &'static units::Unit) -> f64 {
    if ptr::eq(from, to) {
        number
    } else {
        to.from_si(from.to_si(number))
    }
}

/// Whether numbers in `unit` are SI already.
pub(crate) fn is_si(unit: &'static units::Unit) -> bool {
    ptr::eq(unit, units::Unit::base(unit.dimension))
}

/// `number` in SI, with the bits that the core's own unit words give it: there a zero has no sign, but a bare number
/// keeps its own.
pub(crate) fn si(number: f64, unit: &'static units::Unit) -> f64 {
    match is_si(unit) {
        true if unit.dimension.is_plain() => number,
        true => number + 0.0,
        false => unit.to_si(number),
    }
}

#[pymethods]
impl Quantity {
    /// NumPy asks the quantity's own operators, so that no unit is lost.
    #[classattr]
    fn __array_ufunc__() -> Option<bool> {
        None
    }

    /// The number, or the column, in `unit`.
    #[pyo3(signature = (unit, /))]
    fn to(&self, py: Python<'_>, unit: &Bound<'_, PyAny>) -> PyResult<Py<PyAny>> {
        guarded(py, || {
            let unit = self.wanted(unit)?;
            self.number_in(py, unit)?.object(py)
        })
    }

    /// The number, or the column, in the unit it is shown in.
    #[getter]
    fn value(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        guarded(py, || self.number_in(py, self.shown)?.object(py))
    }

    /// The unit it is shown in: as given, or that of the function's relation.
    #[getter]
    fn unit<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, Unit>> {
        unit::word(py, self.shown)
    }

    /// What it measures, such as "volume".
    #[getter(dimension)]
    fn dimension_name(&self) -> &'static str {
        self.dimension().name()
    }

    /// The same, shown in `unit`.
    #[pyo3(signature = (unit, /))]
    fn shown_in(&self, py: Python<'_>, unit: &Bound<'_, PyAny>) -> PyResult<Self> {
        guarded(py, || {
            let unit = self.wanted(unit)?;
            Ok(Self::result(self.number.clone_ref(py), self.held, unit))
        })
    }

    /// Of a gauge pressure: the absolute pressure where the air has `station` pressure.
    #[pyo3(signature = (station, /))]
    fn absolute(&self, py: Python<'_>, station: &Bound<'_, PyAny>) -> PyResult<Self> {
        guarded(py, || {
            if self.dimension() != Dimension::GaugePressure {
                return Err(raise(py, &self.unlike(Dimension::GaugePressure).named("quantity")));
            }
            let Ok(air) = station.cast::<StationPressure>() else {
                let tree = shown::data(station).unwrap_or(sugaring::form::Tree::Null);
                return Err(raise(py, &Error::no_station("station", &tree)));
            };
            let air: air::StationPressure = air.get().0;
            match self.number {
                Number::Scalar(number) => {
                    let gauge = units::GaugePressure::from_si(self.held.to_si(number)).map_err(|e| raise(py, &e))?;
                    let shown = arithmetic::difference(self.shown);
                    Ok(Self::result(
                        Number::Scalar(gauge.absolute(air).si()),
                        units::Unit::base(Dimension::Pressure),
                        shown,
                    ))
                }
                Number::Column(_) => Err(raise(py, &Error::foreign("quantity", "a column", "one gauge pressure"))),
            }
        })
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        guarded(py, || {
            let value = self.number_in(py, self.shown)?.object(py)?;
            Ok(format!(
                "{}({})",
                self.shown.word,
                shown::text(value.bind(py).repr()?.as_any())
            ))
        })
    }

    fn __str__(&self, py: Python<'_>) -> PyResult<String> {
        guarded(py, || self.text(py))
    }

    fn __format__(&self, py: Python<'_>, spec: &str) -> PyResult<String> {
        guarded(py, || {
            let (word, digits) = match spec.split_once(':') {
                Some((word, digits)) => (Some(word), digits),
                None if ALL.iter().any(|unit| unit.word == spec) => (Some(spec), ""),
                None => (None, spec),
            };
            let unit = match word {
                None | Some("") => self.shown,
                Some(word) => {
                    let known = ALL.iter().copied().filter(|unit| unit.dimension == self.dimension());
                    let Some(unit) = known.clone().find(|unit| unit.word == word) else {
                        let names = known.map(|unit| unit.word);
                        return Err(raise(py, &Error::unknown_name("format", word, names)));
                    };
                    unit
                }
            };
            let Number::Scalar(number) = self.number_in(py, unit)? else {
                return Err(PyTypeError::new_err(
                    "a column has no format; format its numbers: .to(unit)",
                ));
            };
            if digits.is_empty() {
                return Ok(units::Quantity::new(number, unit).to_string());
            }
            let number = number.into_pyobject(py)?.call_method1("__format__", (digits,))?;
            Ok(shown::text(&number))
        })
    }

    fn __hash__(&self, py: Python<'_>) -> PyResult<u64> {
        let Number::Scalar(number) = self.number else {
            return Err(PyTypeError::new_err("unhashable: a quantity of a column"));
        };
        guarded(py, || {
            let mut hasher = DefaultHasher::new();
            // -0.0 equals 0.0.
            (self.dimension(), (self.held.to_si(number) + 0.0).to_bits()).hash(&mut hasher);
            Ok(hasher.finish())
        })
    }

    fn __richcmp__(&self, py: Python<'_>, other: &Bound<'_, PyAny>, op: CompareOp) -> PyResult<Py<PyAny>> {
        guarded(py, || arithmetic::compare(self, py, other, op))
    }

    fn __add__(&self, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<Self> {
        guarded(py, || arithmetic::sum(self, py, other))
    }

    fn __radd__(&self, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<Self> {
        guarded(py, || arithmetic::sum_from(self, py, other))
    }

    fn __sub__(&self, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<Self> {
        guarded(py, || arithmetic::minus(self, py, other))
    }

    fn __rsub__(&self, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<Self> {
        guarded(py, || arithmetic::minus_from(self, py, other))
    }

    fn __mul__(&self, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<Self> {
        guarded(py, || arithmetic::times(self, py, other))
    }

    fn __rmul__(&self, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<Self> {
        guarded(py, || arithmetic::times(self, py, other))
    }

    fn __truediv__(&self, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<Py<PyAny>> {
        guarded(py, || arithmetic::over(self, py, other))
    }

    fn __neg__(&self, py: Python<'_>) -> PyResult<Self> {
        guarded(py, || arithmetic::scaled(self, py, "__neg__"))
    }

    fn __pos__(&self, py: Python<'_>) -> PyResult<Self> {
        guarded(py, || arithmetic::scaled(self, py, "__pos__"))
    }

    fn __abs__(&self, py: Python<'_>) -> PyResult<Self> {
        guarded(py, || arithmetic::scaled(self, py, "__abs__"))
    }

    fn __traverse__(&self, visit: PyVisit<'_>) -> Result<(), PyTraverseError> {
        match &self.number {
            Number::Scalar(_) => Ok(()),
            Number::Column(column) => visit.call(column),
        }
    }

    fn __copy__(slf: Bound<'_, Self>) -> Bound<'_, Self> {
        slf
    }

    fn __deepcopy__<'py>(slf: Bound<'py, Self>, memo: &Bound<'py, PyAny>) -> PyResult<Bound<'py, Self>> {
        let py = slf.py();
        let Number::Column(column) = &slf.get().number else {
            return Ok(slf);
        };
        let column = py.import("copy")?.getattr("deepcopy")?.call1((column.bind(py), memo))?;
        let this = slf.get();
        Bound::new(py, Self::result(Number::Column(column.unbind()), this.held, this.shown))
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Bound<'py, PyTuple>)> {
        let restore = py.import("sugaring._sugaring")?.getattr("_quantity")?;
        let parts = (self.number.object(py)?, self.held.word, self.shown.word);
        Ok((restore, parts.into_pyobject(py)?))
    }

    #[classmethod]
    fn __class_getitem__<'py>(
        class: &Bound<'py, PyType>,
        item: &Bound<'py, PyAny>,
    ) -> PyResult<Bound<'py, PyGenericAlias>> {
        PyGenericAlias::new(class.py(), class.as_any(), item)
    }
}

/// A value of no use, as an error shows it.
pub(crate) fn described(any: &Bound<'_, PyAny>) -> String {
    match any.repr() {
        Ok(text) if !any.is_instance_of::<Quantity>() => {
            let text = shown::text(text.as_any());
            text.chars().take(40).collect()
        }
        _ => shown::kind(any),
    }
}

/// For reading back.
#[pyfunction]
fn _quantity(py: Python<'_>, number: &Bound<'_, PyAny>, held: &str, shown: &str) -> PyResult<Quantity> {
    guarded(py, || {
        let (held, shown) = (unit::named(py, held)?, unit::named(py, shown)?);
        let number = match number.cast::<PyFloat>() {
            Ok(number) => Number::Scalar(number.value()),
            Err(_) => Number::Column(number.clone().unbind()),
        };
        Ok(Quantity::result(number, held.get().unit, shown.get().unit))
    })
}

/// The quantity of a text such as ``"40 gal"``, in the unit it names.
///
/// Examples
/// --------
/// >>> from sugaring import units
/// >>> units.parse("40 gal")
/// gal(40.0)
/// >>> units.parse("2,5 L")
/// Traceback (most recent call last):
///     ...
/// sugaring.errors.Unreadable: "2,5 L" cannot be read; is it 2.5 L or 25 L?
#[pyfunction]
#[pyo3(signature = (text, /))]
fn parse(py: Python<'_>, text: &Bound<'_, PyAny>) -> PyResult<Quantity> {
    guarded(py, || {
        let Ok(given) = text.cast::<PyString>() else {
            return Err(raise(
                py,
                &Error::foreign("text", &described(text), "a text such as \"40 gal\""),
            ));
        };
        let quantity = units::Quantity::parse(&given.to_string_lossy()).map_err(|error| raise(py, &error))?;
        Ok(Quantity::given(Number::Scalar(quantity.value()), quantity.unit()))
    })
}

/// Name and unit of a column's heading such as ``"temp [°F]"``; without brackets the unit is None.
///
/// Examples
/// --------
/// >>> from sugaring import units
/// >>> units.heading("temp [°F]")
/// ('temp', deg_f)
/// >>> units.heading("sap [gall]")
/// Traceback (most recent call last):
///     ...
/// sugaring.errors.UnknownUnit: sap has the unknown unit "gall"; nearest: gal (US gallon), imp gal
#[pyfunction]
#[pyo3(signature = (text, /))]
fn heading<'py>(py: Python<'py>, text: &Bound<'py, PyAny>) -> PyResult<(String, Option<Bound<'py, Unit>>)> {
    guarded(py, || {
        let Ok(given) = text.cast::<PyString>() else {
            return Err(raise(
                py,
                &Error::foreign("text", &described(text), "a heading such as \"temp [°F]\""),
            ));
        };
        let given = given.to_string_lossy();
        let (name, found) = units::heading(&given).map_err(|error| raise(py, &error))?;
        Ok((name.to_owned(), found.map(|found| unit::word(py, found)).transpose()?))
    })
}

pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    for function in [wrap_pyfunction!(parse, module)?, wrap_pyfunction!(heading, module)?] {
        function.setattr("__module__", "sugaring.units").ok();
        module.add_function(function)?;
    }
    module.add_function(wrap_pyfunction!(_quantity, module)?)
}
