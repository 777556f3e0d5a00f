//! The inputs of a model, as they may be given.

use pyo3::{
    IntoPyObjectExt,
    prelude::*,
    sync::PyOnceLock,
    types::{PyDict, PyMapping, PyString},
};
use sugaring::{
    Error,
    air::{self, Origin},
    uncertainty,
    units::{self, Unit, Value, table},
};

use super::spread::{Spread, one, shown, steps};
use crate::{guard::guarded, quantity::described, raise::raise, station::StationPressure};

/// Inputs by place, each with the unit its numbers are in.
pub(super) struct Inputs {
    pub(super) spreads: Vec<uncertainty::Spread>,
    pub(super) units: Vec<Option<&'static Unit>>,
    /// Of station pressures, how they were come by.
    pub(super) stations: Vec<Option<Origin>>,
}

impl Inputs {
    /// Of a dict by name, or of anything that runs through inputs; what has no name of its own takes that of its place in
    /// `names`.
    pub(super) fn of(any: &Bound<'_, PyAny>, names: &[String]) -> PyResult<Self> {
        let py = any.py();
        guarded(py, || {
            let mut inputs = Self {
                spreads: Vec::new(),
                units: Vec::new(),
                stations: Vec::new(),
            };
            if let Ok(named) = any.cast::<PyDict>() {
                for (name, input) in named {
                    let Ok(name) = name.cast::<PyString>() else {
                        let error = Error::foreign("inputs", &described(&name), "names");
                        return Err(raise(py, &error));
                    };
                    let name = name.to_string_lossy().into_owned();
                    inputs.push(&input, Some(&name), &name)?;
                }
            } else if let Ok(named) = any.cast::<PyMapping>() {
                return Self::of(PyDict::from_sequence(named.items()?.as_any())?.as_any(), names);
            } else if any.is_instance_of::<PyString>() {
                return Err(raise(py, &wrong(any)));
            } else {
                let Ok(list) = any.try_iter() else {
                    return Err(raise(py, &wrong(any)));
                };
                for (index, input) in list.enumerate() {
                    let place = names.get(index).cloned();
                    inputs.push(&input?, None, &place.unwrap_or_else(|| format!("inputs[{index}]")))?;
                }
            }
            Ok(inputs)
        })
    }

    fn push(&mut self, input: &Bound<'_, PyAny>, name: Option<&str>, place: &str) -> PyResult<()> {
        let py = input.py();
        if let Ok(spread) = input.cast::<Spread>() {
            let spread = spread.get();
            let given = Some(spread.core.name()).filter(|name| !name.is_empty());
            self.units.push(spread.unit);
            self.stations.push(None);
            self.spreads
                .push(match name.or(if given.is_some() { None } else { Some(place) }) {
                    Some(name) => spread.core.clone().with_name(name),
                    None => spread.core.clone(),
                });
            return Ok(());
        }
        let name = name.unwrap_or(place);
        if let Ok(station) = input.cast::<StationPressure>() {
            let air = station.get().0;
            let spread = uncertainty::Spread::new(name, air.pressure().si(), air.uncertainty().si());
            self.spreads.push(spread.map_err(|error| raise(py, &error))?);
            self.units.push(Some(&table::pa));
            self.stations.push(Some(air.origin()));
            return Ok(());
        }
        let measured = input.is_instance(measured(py)?)?;
        let (number, unit, u) = if measured {
            let (number, unit) = one(&input.getattr("value")?, name)?;
            (number, unit, steps(&input.getattr("uncertainty")?, unit)?)
        } else {
            let (number, unit) = one(input, name)?;
            (number, unit, 0.0)
        };
        self.spreads
            .push(uncertainty::Spread::new(name, number, u).map_err(|error| raise(py, &error))?);
        self.units.push(unit);
        self.stations.push(None);
        Ok(())
    }

    /// The arguments of the model at `numbers`.
    pub(super) fn arguments(&self, py: Python<'_>, numbers: &[f64]) -> PyResult<Vec<Py<PyAny>>> {
        let places = numbers.iter().zip(&self.units).zip(&self.stations);
        let arguments = places.map(|((number, unit), station)| match station {
            None => shown(py, *number, *unit),
            Some(origin) => {
                let made = air::StationPressure::measured(units::pa(*number)).map_err(|error| raise(py, &error))?;
                StationPressure(made.with_origin(*origin)).into_py_any(py)
            }
        });
        arguments.collect()
    }
}

fn wrong(any: &Bound<'_, PyAny>) -> Error {
    Error::foreign("inputs", &described(any), "a list of inputs, or a dict of them by name")
}

/// `sugaring._amounts.Measured`.
pub(super) fn measured(py: Python<'_>) -> PyResult<&Bound<'_, PyAny>> {
    static MEASURED: PyOnceLock<Py<PyAny>> = PyOnceLock::new();
    let class = MEASURED.get_or_try_init(py, || {
        py.import("sugaring._amounts")?.getattr("Measured")?.into_py_any(py)
    })?;
    Ok(class.bind(py))
}
