//! One input of a model.

use pyo3::{
    prelude::*,
    types::{PyDict, PyMapping, PyString},
};
use sugaring::{
    Error,
    uncertainty::{self, Distribution},
    units::Unit,
};

use crate::{
    arithmetic::difference,
    guard::guarded,
    quantity::{Quantity, convert, described},
    raise::raise,
    take::{self, Number},
};

/// One input of a model: its value, its standard uncertainty, and what else is known of its spread.
#[pyclass(frozen, module = "sugaring.uncertainty", name = "Spread", eq)]
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Spread {
    /// In the numbers of `unit`; without a name of its own, an empty one.
    pub(super) core: uncertainty::Spread,
    pub(super) unit: Option<&'static Unit>,
}

/// What a spread is read back from.
type Parts = (
    Py<PyAny>,
    Py<PyAny>,
    Option<String>,
    &'static str,
    Option<String>,
    Option<f64>,
    Option<Vec<(String, f64)>>,
);

#[pymethods]
impl Spread {
    #[new]
    #[pyo3(signature = (value, uncertainty, *, name=None, distribution="normal", cause=None, degrees_of_freedom=None, correlation=None))]
    fn new(
        value: &Bound<'_, PyAny>,
        uncertainty: &Bound<'_, PyAny>,
        name: Option<&str>,
        distribution: &str,
        cause: Option<String>,
        degrees_of_freedom: Option<&Bound<'_, PyAny>>,
        correlation: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Self> {
        let py = value.py();
        guarded(py, || {
            let (number, unit) = one(value, "value")?;
            let u = steps(uncertainty, unit)?;
            let core = |made: Result<uncertainty::Spread, Error>| made.map_err(|error| raise(py, &error));
            let mut spread = core(uncertainty::Spread::new(name.unwrap_or_default(), number, u))?;
            let distribution = Distribution::named(distribution).map_err(|error| raise(py, &error))?;
            spread = spread.with_distribution(distribution);
            if let Some(cause) = cause {
                spread = spread.with_cause(cause);
            }
            if let Some(freedom) = degrees_of_freedom {
                spread = core(spread.with_degrees_of_freedom(plain(freedom, "degrees_of_freedom")?))?;
            }
            for (other, coefficient) in correlation.map(correlations).transpose()?.into_iter().flatten() {
                let Ok(other) = other.cast::<PyString>() else {
                    let error = Error::foreign("correlation", &described(&other), "the name of another input");
                    return Err(raise(py, &error));
                };
                let other = other.to_string_lossy().into_owned();
                spread = core(spread.with_correlation(other, plain(&coefficient, "correlation")?))?;
            }
            Ok(Self { core: spread, unit })
        })
    }

    /// The value, as it was given.
    #[getter]
    fn value(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        shown(py, self.core.value(), self.unit)
    }

    /// Its standard uncertainty.
    #[getter]
    fn uncertainty(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        shown(py, self.core.uncertainty(), self.unit.map(difference))
    }

    /// What it is called in the list of contributions; None leaves that to the call.
    #[getter]
    fn name(&self) -> Option<&str> {
        Some(self.core.name()).filter(|name| !name.is_empty())
    }

    /// How it spreads.
    #[getter]
    fn distribution(&self) -> &'static str {
        self.core.distribution().name()
    }

    /// What makes it uncertain, where it shares that.
    #[getter]
    fn cause(&self) -> Option<&str> {
        self.core.cause()
    }

    /// Degrees of freedom of its uncertainty.
    #[getter]
    fn degrees_of_freedom(&self) -> f64 {
        self.core.degrees_of_freedom()
    }

    /// Its correlation with other inputs, by name.
    #[getter]
    fn correlation<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let found = PyDict::new(py);
        for (other, coefficient) in self.core.correlations() {
            found.set_item(other, coefficient)?;
        }
        Ok(found)
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        let value = self.value(py)?.bind(py).repr()?;
        let uncertainty = self.uncertainty(py)?.bind(py).repr()?;
        let mut text = format!("Spread({value}, {uncertainty}");
        if let Some(name) = self.name() {
            text += &format!(", name={}", PyString::new(py, name).repr()?);
        }
        if self.core.distribution() != Distribution::Normal {
            text += &format!(", distribution='{}'", self.distribution());
        }
        if let Some(cause) = self.cause() {
            text += &format!(", cause={}", PyString::new(py, cause).repr()?);
        }
        if self.degrees_of_freedom().is_finite() {
            text += &format!(", degrees_of_freedom={}", self.degrees_of_freedom());
        }
        if !self.core.correlations().is_empty() {
            text += &format!(", correlation={}", self.correlation(py)?.repr()?);
        }
        Ok(text + ")")
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Parts)> {
        let correlations = self.core.correlations();
        let parts = (
            self.value(py)?,
            self.uncertainty(py)?,
            self.name().map(str::to_owned),
            self.distribution(),
            self.cause().map(str::to_owned),
            Some(self.degrees_of_freedom()).filter(|freedom| freedom.is_finite()),
            Some(correlations.to_vec()).filter(|said| !said.is_empty()),
        );
        Ok((py.get_type::<Self>().getattr("_restore")?, parts))
    }

    /// For reading back.
    #[staticmethod]
    fn _restore(
        value: &Bound<'_, PyAny>,
        uncertainty: &Bound<'_, PyAny>,
        name: Option<&str>,
        distribution: &str,
        cause: Option<String>,
        degrees_of_freedom: Option<&Bound<'_, PyAny>>,
        correlation: Option<Vec<(String, f64)>>,
    ) -> PyResult<Self> {
        let said = PyDict::new(value.py());
        for (other, coefficient) in correlation.into_iter().flatten() {
            said.set_item(other, coefficient)?;
        }
        Self::new(
            value,
            uncertainty,
            name,
            distribution,
            cause,
            degrees_of_freedom,
            Some(&said),
        )
    }
}

/// Names of other inputs with numbers.
fn correlations<'py>(any: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyDict>> {
    if let Ok(named) = any.cast::<PyMapping>() {
        return PyDict::from_sequence(named.items()?.as_any());
    }
    let error = Error::foreign("correlation", &described(any), "a dict of other inputs and numbers");
    Err(raise(any.py(), &error))
}

/// A number, or one of a quantity with its unit.
pub(super) fn one(any: &Bound<'_, PyAny>, name: &str) -> PyResult<(f64, Option<&'static Unit>)> {
    if let Ok(quantity) = any.cast::<Quantity>() {
        return match quantity.get().core() {
            Some(quantity) => Ok((quantity.value(), Some(quantity.unit()))),
            None => Err(raise(any.py(), &Error::foreign(name, "<a column>", "one quantity"))),
        };
    }
    Ok((plain(any, name)?, None))
}

/// A plain number.
pub(super) fn plain(any: &Bound<'_, PyAny>, name: &str) -> PyResult<f64> {
    match take::number(any, name)? {
        Number::Scalar(number) => Ok(number),
        Number::Column(_) => {
            let error = Error::foreign(name, &crate::shown::kind(any), "one number");
            Err(raise(any.py(), &error))
        }
    }
}

/// The uncertainty of a value in `unit`, in differences of that.
pub(super) fn steps(any: &Bound<'_, PyAny>, unit: Option<&'static Unit>) -> PyResult<f64> {
    let Some(unit) = unit else {
        return plain(any, "uncertainty");
    };
    let step = difference(unit);
    let given = take::quantity(any, "uncertainty", step.dimension)?;
    match given.number {
        Number::Scalar(number) => Ok(convert(number, given.unit, step)),
        Number::Column(_) => Err(raise(
            any.py(),
            &Error::foreign("uncertainty", "<a column>", "one quantity"),
        )),
    }
}

/// A number of `unit`; a bare one where there is none.
pub(super) fn shown(py: Python<'_>, number: f64, unit: Option<&'static Unit>) -> PyResult<Py<PyAny>> {
    use pyo3::IntoPyObjectExt;
    match unit {
        Some(unit) => Quantity::given(Number::Scalar(number), unit).into_py_any(py),
        None => number.into_py_any(py),
    }
}
