//! Readings of one truth, lines and limits.

use pyo3::prelude::*;
use sugaring::{
    Error, uncertainty,
    units::{self, Unit, measured as of},
};

use super::{
    inputs::measured,
    results::{described, in_unit, word},
    spread::{one, plain, shown, steps},
};
use crate::{arithmetic::difference, guard::guarded, quantity::described as seen, raise::raise};

/// What several readings of one truth say together; made by ``combine``.
#[pyclass(frozen, module = "sugaring.uncertainty", name = "Combined", eq)]
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Combined {
    value: f64,
    uncertainty: f64,
    /// The largest difference of two readings, in its own standard uncertainty.
    #[pyo3(get)]
    z: f64,
    /// Whether ``z`` is at most 2.
    #[pyo3(get)]
    agree: bool,
    unit: Option<&'static Unit>,
}

type Parts = (f64, f64, f64, bool, Option<&'static str>);

#[pymethods]
impl Combined {
    /// The mean, each reading weighted by 1/u².
    #[getter]
    fn value(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        shown(py, self.value, self.unit)
    }

    /// Its standard uncertainty, if the readings agree.
    #[getter]
    fn uncertainty(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        shown(py, self.uncertainty, self.unit.map(difference))
    }

    fn __repr__(&self) -> String {
        described("Combined", self.value, self.uncertainty, self.unit)
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Parts)> {
        let unit = self.unit.map(|unit| unit.word);
        let parts = (self.value, self.uncertainty, self.z, self.agree, unit);
        Ok((py.get_type::<Self>().getattr("_restore")?, parts))
    }

    /// For reading back.
    #[staticmethod]
    fn _restore(value: f64, uncertainty: f64, z: f64, agree: bool, unit: Option<&str>) -> Self {
        Self {
            value,
            uncertainty,
            z,
            agree,
            unit: word(unit),
        }
    }
}

/// What several readings of one truth say together, and whether they agree.
#[pyfunction]
#[pyo3(signature = (readings, /))]
pub(super) fn combine(py: Python<'_>, readings: &Bound<'_, PyAny>) -> PyResult<Combined> {
    guarded(py, || {
        let Ok(list) = readings.try_iter() else {
            let error = Error::foreign("readings", &seen(readings), "a list of measured values");
            return Err(raise(py, &error));
        };
        let mut unit: Option<Option<&'static Unit>> = None;
        let mut found = Vec::new();
        for (i, reading) in list.enumerate() {
            let reading = reading?;
            let name = format!("readings[{i}]");
            if !reading.is_instance(measured(py)?)? {
                let error = Error::foreign(&name, &seen(&reading), "a measured value: measured(value, uncertainty)");
                return Err(raise(py, &error));
            }
            let value = reading.getattr("value")?;
            let wanted = match unit {
                Some(unit) => unit,
                None => one(&value, &name)?.1,
            };
            unit = Some(wanted);
            let number = in_unit(&value, wanted, &name)?;
            found.push(of(number, steps(&reading.getattr("uncertainty")?, wanted)?));
        }
        let unit = unit.flatten();
        let combined = uncertainty::combine::<f64>(&found).map_err(|error| raise(py, &error))?;
        Ok(Combined {
            value: combined.value,
            uncertainty: combined.uncertainty,
            z: combined.z,
            agree: combined.agree,
            unit,
        })
    })
}

/// A straight line and how well it is known; made by ``line_fit``.
#[pyclass(frozen, module = "sugaring.uncertainty", name = "Line", eq)]
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Line {
    core: uncertainty::Line,
    x: Vec<f64>,
    y: Vec<f64>,
}

/// What a line is read back from: x, y and x0.
type Points = (Vec<f64>, Vec<f64>, f64);

#[pymethods]
impl Line {
    /// Its height at the reference.
    #[getter]
    fn intercept(&self) -> f64 {
        self.core.intercept
    }

    /// Its slope.
    #[getter]
    fn slope(&self) -> f64 {
        self.core.slope
    }

    /// Variances of intercept and slope, and their covariance beside the diagonal.
    #[getter]
    fn covariance(&self) -> ((f64, f64), (f64, f64)) {
        let [[a, ab], [ba, b]] = self.core.covariance;
        ((a, ab), (ba, b))
    }

    /// Standard deviation of the points about it.
    #[getter]
    fn residual_deviation(&self) -> f64 {
        self.core.residual_deviation
    }

    /// Points less the two figures that were found.
    #[getter]
    fn degrees_of_freedom(&self) -> f64 {
        self.core.degrees_of_freedom
    }

    /// Where the intercept is its height.
    #[getter]
    fn reference(&self) -> f64 {
        self.core.reference
    }

    /// The least x of the points: below, the line is a guess.
    #[getter]
    fn low(&self) -> f64 {
        self.core.low
    }

    /// The largest x of the points: above, the line is a guess.
    #[getter]
    fn high(&self) -> f64 {
        self.core.high
    }

    /// Correlation of intercept and slope.
    #[getter]
    fn correlation(&self) -> f64 {
        self.core.correlation()
    }

    /// Its height at ``x``, and the standard uncertainty of that.
    #[pyo3(signature = (x, /))]
    fn at<'py>(&self, py: Python<'py>, x: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        let x = plain(x, "x")?;
        if !x.is_finite() {
            return Err(raise(py, &Error::not_finite("x", x)));
        }
        let at = self.core.at(x);
        measured(py)?.call1((at.value, at.uncertainty))
    }

    fn __repr__(&self) -> String {
        let (a, b, x0) = (self.core.intercept, self.core.slope, self.core.reference);
        format!("<Line y = {a:.6} + {b:.6} (x - {x0})>")
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Points)> {
        let parts = (self.x.clone(), self.y.clone(), self.core.reference);
        Ok((py.get_type::<Self>().getattr("_restore")?, parts))
    }

    /// For reading back.
    #[staticmethod]
    fn _restore(py: Python<'_>, x: Vec<f64>, y: Vec<f64>, x0: f64) -> PyResult<Self> {
        let core = uncertainty::line_fit(&x, &y, x0).map_err(|error| raise(py, &error))?;
        Ok(Self { core, x, y })
    }
}

/// The straight line through points by least squares, with the covariance of its two figures.
#[pyfunction]
#[pyo3(signature = (x, y, /, *, x0))]
pub(super) fn line_fit(
    py: Python<'_>,
    x: &Bound<'_, PyAny>,
    y: &Bound<'_, PyAny>,
    x0: &Bound<'_, PyAny>,
) -> PyResult<Line> {
    guarded(py, || {
        Line::_restore(py, numbers(x, "x")?, numbers(y, "y")?, plain(x0, "x0")?)
    })
}

fn numbers(any: &Bound<'_, PyAny>, name: &str) -> PyResult<Vec<f64>> {
    let Ok(list) = any.try_iter() else {
        let error = Error::foreign(name, &seen(any), "a list of numbers");
        return Err(raise(any.py(), &error));
    };
    list.enumerate()
        .map(|(i, number)| plain(&number?, &format!("{name}[{i}]")))
        .collect()
}

/// Probability that the truth behind a measured value is at least ``minimum``.
#[pyfunction]
#[pyo3(signature = (value, minimum, /))]
pub(super) fn probability_at_least(
    py: Python<'_>,
    value: &Bound<'_, PyAny>,
    minimum: &Bound<'_, PyAny>,
) -> PyResult<f64> {
    guarded(py, || {
        if !value.is_instance(measured(py)?)? {
            let error = Error::foreign("value", &seen(value), "a measured value: measured(value, uncertainty)");
            return Err(raise(py, &error));
        }
        let (number, unit) = one(&value.getattr("value")?, "value")?;
        let u = steps(&value.getattr("uncertainty")?, unit)?;
        let found = uncertainty::probability_at_least::<f64>(of(number, u), in_unit(minimum, unit, "minimum")?);
        let found: units::Ratio = found.map_err(|error| raise(py, &error))?;
        Ok(found.value)
    })
}
