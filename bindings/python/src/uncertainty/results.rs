//! What propagation and Monte Carlo give: numbers in the unit of the model's first answer.

use numpy::PyArray1;
use pyo3::{IntoPyObjectExt, prelude::*, types::PyTuple};
use sugaring::{
    Error, uncertainty,
    units::{self, Unit},
};

use super::spread::{one, plain, shown};
use crate::{
    arithmetic::difference,
    guard::guarded,
    quantity::{Quantity, convert},
    raise::raise,
    take::Number,
};

/// The part that one input, or one shared cause, has in an uncertainty.
#[pyclass(frozen, module = "sugaring.uncertainty", name = "Contribution", eq)]
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Contribution {
    /// Name of the input, or of the cause that several share.
    #[pyo3(get)]
    name: String,
    /// Change of the result with the input, in their units; None of a shared cause, and of an input that is known.
    #[pyo3(get)]
    sensitivity: Option<f64>,
    uncertainty: f64,
    /// Share of the variance.
    #[pyo3(get)]
    share: f64,
    /// Whether one of the two steps was refused, and the effect is that of the other.
    #[pyo3(get)]
    one_sided: bool,
    unit: Option<&'static Unit>,
}

type Part = (String, Option<f64>, f64, f64, bool, Option<&'static str>);

#[pymethods]
impl Contribution {
    /// Effect of one standard uncertainty, with its sign.
    #[getter]
    fn uncertainty(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        shown(py, self.uncertainty, self.unit.map(difference))
    }

    fn __repr__(&self) -> String {
        let unit = self.unit.map_or("", |unit| difference(unit).symbol);
        let space = if unit.is_empty() { "" } else { " " };
        format!(
            "<Contribution {}: {:.4e}{space}{unit}, {:.1} %>",
            self.name,
            self.uncertainty,
            100.0 * self.share
        )
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Part)> {
        Ok((py.get_type::<Self>().getattr("_restore")?, self.part()))
    }

    /// For reading back.
    #[staticmethod]
    fn _restore(
        name: String,
        sensitivity: Option<f64>,
        uncertainty: f64,
        share: f64,
        one_sided: bool,
        unit: Option<&str>,
    ) -> Self {
        Self {
            name,
            sensitivity,
            uncertainty,
            share,
            one_sided,
            unit: word(unit),
        }
    }
}

impl Contribution {
    fn part(&self) -> Part {
        (
            self.name.clone(),
            self.sensitivity,
            self.uncertainty,
            self.share,
            self.one_sided,
            self.unit.map(|unit| unit.word),
        )
    }
}

/// A result with its standard uncertainty to first order, and where that comes from; made by ``propagate``.
#[pyclass(frozen, module = "sugaring.uncertainty", name = "Propagated", eq, generic)]
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Propagated {
    value: f64,
    uncertainty: f64,
    /// Effective degrees of freedom; infinite where those of every input are.
    #[pyo3(get)]
    degrees_of_freedom: f64,
    contributions: Vec<Contribution>,
    unit: Option<&'static Unit>,
}

impl Propagated {
    pub(super) fn of(found: uncertainty::Propagated, unit: Option<&'static Unit>) -> Self {
        let contributions = found.contributions.into_iter().map(|part| Contribution {
            name: part.name,
            sensitivity: part.sensitivity,
            uncertainty: part.uncertainty,
            share: part.share,
            one_sided: part.one_sided,
            unit,
        });
        Self {
            value: found.value,
            uncertainty: found.uncertainty,
            degrees_of_freedom: found.degrees_of_freedom,
            contributions: contributions.collect(),
            unit,
        }
    }
}

type Whole = (f64, f64, f64, Vec<Part>, Option<&'static str>);
type Read = (String, Option<f64>, f64, f64, bool, Option<String>);

#[pymethods]
impl Propagated {
    /// The model at the inputs.
    #[getter]
    fn value(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        shown(py, self.value, self.unit)
    }

    /// Its standard uncertainty.
    #[getter]
    fn uncertainty(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        shown(py, self.uncertainty, self.unit.map(difference))
    }

    /// What each input, or shared cause, has to do with it; the largest first.
    #[getter]
    fn contributions<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        PyTuple::new(
            py,
            self.contributions
                .iter()
                .cloned()
                .map(|part| part.into_pyobject(py))
                .collect::<PyResult<Vec<_>>>()?,
        )
    }

    /// How many standard uncertainties to either side hold the truth with ``coverage``.
    #[pyo3(signature = (coverage, /))]
    fn coverage_factor(&self, py: Python<'_>, coverage: &Bound<'_, PyAny>) -> PyResult<f64> {
        guarded(py, || {
            let coverage = units::fraction(plain_ratio(coverage, "coverage")?);
            uncertainty::coverage_factor(coverage, self.degrees_of_freedom.min(1e300))
                .map_err(|error| raise(py, &error))
        })
    }

    /// The interval that holds the truth with ``coverage``.
    #[pyo3(signature = (coverage, /))]
    fn interval(&self, py: Python<'_>, coverage: &Bound<'_, PyAny>) -> PyResult<(Py<PyAny>, Py<PyAny>)> {
        let half = self.coverage_factor(py, coverage)? * self.uncertainty;
        Ok((
            shown(py, self.value - half, self.unit)?,
            shown(py, self.value + half, self.unit)?,
        ))
    }

    fn __repr__(&self) -> String {
        described("Propagated", self.value, self.uncertainty, self.unit)
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Whole)> {
        let parts = self.contributions.iter().map(Contribution::part).collect();
        let unit = self.unit.map(|unit| unit.word);
        let whole = (self.value, self.uncertainty, self.degrees_of_freedom, parts, unit);
        Ok((py.get_type::<Self>().getattr("_restore")?, whole))
    }

    /// For reading back.
    #[staticmethod]
    fn _restore(
        value: f64,
        uncertainty: f64,
        degrees_of_freedom: f64,
        contributions: Vec<Read>,
        unit: Option<&str>,
    ) -> Self {
        let contributions = contributions.into_iter();
        Self {
            value,
            uncertainty,
            degrees_of_freedom,
            contributions: contributions
                .map(|(name, sensitivity, u, share, one_sided, unit)| {
                    Contribution::_restore(name, sensitivity, u, share, one_sided, unit.as_deref())
                })
                .collect(),
            unit: word(unit),
        }
    }
}

/// What many draws of a result show; made by ``monte_carlo``.
#[pyclass(frozen, module = "sugaring.uncertainty", name = "Sampled", eq, generic)]
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Sampled {
    core: uncertainty::Sampled,
    unit: Option<&'static Unit>,
}

impl Sampled {
    pub(super) fn of(core: uncertainty::Sampled, unit: Option<&'static Unit>) -> Self {
        Self { core, unit }
    }
}

/// What draws are read back from, with the word of their unit.
type Drawn = (Vec<f64>, Option<&'static str>);

#[pymethods]
impl Sampled {
    /// Mean of the draws.
    #[getter]
    fn value(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        shown(py, self.core.value, self.unit)
    }

    /// Their standard deviation.
    #[getter]
    fn uncertainty(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        shown(py, self.core.uncertainty, self.unit.map(difference))
    }

    /// Low end of the interval that leaves 2.5 % of the draws at either side.
    #[getter]
    fn low(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        shown(py, self.core.low, self.unit)
    }

    /// High end of that interval.
    #[getter]
    fn high(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        shown(py, self.core.high, self.unit)
    }

    /// Low end of the shortest interval that holds 95 % of the draws.
    #[getter]
    fn shortest_low(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        shown(py, self.core.shortest_low, self.unit)
    }

    /// High end of that interval.
    #[getter]
    fn shortest_high(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        shown(py, self.core.shortest_high, self.unit)
    }

    /// As many draws lie below it as above.
    #[getter]
    fn median(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        shown(py, self.core.median, self.unit)
    }

    /// How many draws there were.
    #[getter]
    fn samples(&self) -> u32 {
        self.core.samples
    }

    /// The draws, rising: an array, a list where there is no NumPy; a column of quantities where the model gave these.
    #[getter]
    fn values(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        let column = if py.import("numpy").is_ok() {
            PyArray1::from_slice(py, self.core.values()).into_any().unbind()
        } else {
            self.core.values().into_py_any(py)?
        };
        match self.unit {
            Some(unit) => Quantity::given(Number::Column(column), unit).into_py_any(py),
            None => Ok(column),
        }
    }

    /// The interval that holds the truth with ``coverage`` and leaves as much below as above.
    #[pyo3(signature = (coverage, /))]
    fn interval(&self, py: Python<'_>, coverage: &Bound<'_, PyAny>) -> PyResult<(Py<PyAny>, Py<PyAny>)> {
        guarded(py, || {
            let coverage = units::fraction(plain_ratio(coverage, "coverage")?);
            let (low, high) = self.core.interval(coverage).map_err(|error| raise(py, &error))?;
            Ok((shown(py, low, self.unit)?, shown(py, high, self.unit)?))
        })
    }

    /// The shortest interval that holds the truth with ``coverage``.
    #[pyo3(signature = (coverage, /))]
    fn shortest(&self, py: Python<'_>, coverage: &Bound<'_, PyAny>) -> PyResult<(Py<PyAny>, Py<PyAny>)> {
        guarded(py, || {
            let coverage = units::fraction(plain_ratio(coverage, "coverage")?);
            let (low, high) = self.core.shortest(coverage).map_err(|error| raise(py, &error))?;
            Ok((shown(py, low, self.unit)?, shown(py, high, self.unit)?))
        })
    }

    /// Share of the draws that are no less than ``limit``.
    #[pyo3(signature = (limit, /))]
    fn probability_at_least(&self, py: Python<'_>, limit: &Bound<'_, PyAny>) -> PyResult<f64> {
        guarded(py, || {
            let limit = in_unit(limit, self.unit, "limit")?;
            let found = self
                .core
                .probability_at_least(limit)
                .map_err(|error| raise(py, &error))?;
            Ok(found.value)
        })
    }

    fn __repr__(&self) -> String {
        described("Sampled", self.core.value, self.core.uncertainty, self.unit)
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Drawn)> {
        let parts = (self.core.values().to_vec(), self.unit.map(|unit| unit.word));
        Ok((py.get_type::<Self>().getattr("_restore")?, parts))
    }

    /// For reading back.
    #[staticmethod]
    fn _restore(py: Python<'_>, values: Vec<f64>, unit: Option<&str>) -> PyResult<Self> {
        let core = uncertainty::Sampled::of(values).map_err(|error| raise(py, &error))?;
        Ok(Self { core, unit: word(unit) })
    }
}

/// A plain ratio, or a quantity of one such as ``percent(95)``.
pub(super) fn plain_ratio(any: &Bound<'_, PyAny>, name: &str) -> PyResult<f64> {
    let (number, unit) = one(any, name)?;
    match unit {
        Some(unit) if unit.dimension == units::Dimension::Ratio => Ok(unit.to_si(number)),
        Some(_) => plain(any, name),
        None => Ok(number),
    }
}

/// The number of a value in `unit`, or a bare one where there is none.
pub(super) fn in_unit(any: &Bound<'_, PyAny>, unit: Option<&'static Unit>, name: &str) -> PyResult<f64> {
    let Some(unit) = unit else { return plain(any, name) };
    let given = crate::take::quantity(any, name, unit.dimension)?;
    match given.number {
        Number::Scalar(number) => Ok(convert(number, given.unit, unit)),
        Number::Column(_) => Err(raise(any.py(), &Error::foreign(name, "<a column>", "one quantity"))),
    }
}

pub(super) fn described(class: &str, value: f64, uncertainty: f64, unit: Option<&'static Unit>) -> String {
    let unit = unit.map_or_else(String::new, |unit| format!(" {}", unit.symbol));
    format!("<{class} {value:.6} ± {uncertainty:.2e}{unit}>")
}

/// The unit of a word that was written here.
pub(super) fn word(word: Option<&str>) -> Option<&'static Unit> {
    let word = word?;
    units::table::ALL.iter().copied().find(|unit| unit.word == word)
}
