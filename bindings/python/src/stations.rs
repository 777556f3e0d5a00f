//! `StationPressures`: a column of barometer readings, where a function takes one after the other.

use pyo3::{
    PyTraverseError, PyVisit,
    prelude::*,
    types::{PyGenericAlias, PyTuple, PyType},
};
use sugaring::{
    air::{self, Origin},
    units::{self, Unit, table},
};

use crate::{
    quantity::Quantity,
    raise::raise,
    station::{StationPressure, in_kpa},
    take::Number,
};

/// A column of station pressures, as ``StationPressure.measured`` makes it of a column of a barometer's readings.
///
/// Taken wherever a function takes columns and a station pressure. The range is checked when a function is called,
/// which then says at which index the first refused one is, or gives NaN there; only one pressure makes a plan.
///
/// Examples
/// --------
/// >>> from sugaring import sucrose
/// >>> from sugaring.air import StationPressure
/// >>> from sugaring.units import deg_c, kpa
/// >>> morning_and_noon = StationPressure.measured(kpa([96.5, 97.1]))
/// >>> print(sucrose.boiling_temperature(66.9, morning_and_noon).to(deg_c).round(2))
/// [102.77 102.94]
#[pyclass(frozen, module = "sugaring.air", name = "StationPressures")]
#[derive(Debug)]
pub(crate) struct StationPressures {
    column: Py<PyAny>,
    unit: &'static Unit,
}

impl StationPressures {
    pub(crate) fn new(column: Py<PyAny>, unit: &'static Unit) -> Self {
        Self { column, unit }
    }

    /// The readings, and the unit they are in.
    pub(crate) fn column(&self, py: Python<'_>) -> (Number, &'static Unit) {
        (Number::Column(self.column.clone_ref(py)), self.unit)
    }
}

#[pymethods]
impl StationPressures {
    /// The absolute pressures.
    #[getter]
    fn pressure(&self, py: Python<'_>) -> Quantity {
        let (number, unit) = self.column(py);
        Quantity::result(number, unit, &table::kpa)
    }

    /// The standard uncertainty of each.
    #[getter]
    #[expect(clippy::unused_self, reason = "an attribute, as that of one pressure")]
    fn uncertainty(&self, py: Python<'_>) -> PyResult<Quantity> {
        // It does not depend on the reading.
        let one = air::StationPressure::measured(units::kpa(100.0));
        one.map(|one| in_kpa(one.uncertainty()))
            .map_err(|error| raise(py, &error))
    }

    /// How they were come by: "measured".
    #[getter]
    #[expect(clippy::unused_self, reason = "an attribute, as that of one pressure")]
    fn origin(&self) -> &'static str {
        Origin::Measured.name()
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        let pressure = self.pressure(py).into_pyobject(py)?;
        Ok(format!("<StationPressures {}, {}>", pressure.str()?, self.origin()))
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Bound<'py, PyTuple>)> {
        let made = py.get_type::<StationPressure>().getattr("measured")?;
        let (number, unit) = self.column(py);
        Ok((made, (Quantity::given(number, unit),).into_pyobject(py)?))
    }

    fn __traverse__(&self, visit: PyVisit<'_>) -> Result<(), PyTraverseError> {
        visit.call(&self.column)
    }

    #[classmethod]
    fn __class_getitem__<'py>(
        class: &Bound<'py, PyType>,
        item: &Bound<'py, PyAny>,
    ) -> PyResult<Bound<'py, PyGenericAlias>> {
        PyGenericAlias::new(class.py(), class.as_any(), item)
    }
}
