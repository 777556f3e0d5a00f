//! `StationPressure`: made by naming the kind of reading.

use pyo3::{IntoPyObjectExt, prelude::*, types::PyType};
use sugaring::{
    Error,
    air::{self, Origin},
    units::{self, Dimension, Pressure, Unit, Value, table},
};

use crate::{
    guard::guarded,
    quantity::{self, Quantity},
    raise::raise,
    stations::StationPressures,
    take::{self, Number},
};

/// What a station pressure is read back from: pressure and uncertainty in Pa, origin.
type Parts = (f64, f64, &'static str);

/// Absolute pressure of the air where the pan stands, 50 to 110 kPa, made by naming the kind of reading.
///
/// Three different numbers are called a barometer's. The station pressure is the one that boils water; the airport's
/// altimeter setting and the weather map's sea level pressure are reduced to sea level. Best is to boil plain water
/// beside the pan and to use ``from_boiling_water``.
///
/// Examples
/// --------
/// >>> from sugaring.air import StationPressure
/// >>> from sugaring.units import in_hg, kpa, metre
/// >>> StationPressure.measured(kpa(96.5)).pressure
/// kpa(96.5)
/// >>> round(StationPressure.from_altimeter_setting(in_hg(30.02), metre(410)).pressure.to(kpa), 2)
/// 96.82
#[pyclass(frozen, module = "sugaring.air", name = "StationPressure", eq)]
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct StationPressure(pub(crate) air::StationPressure);

#[pymethods]
impl StationPressure {
    /// From a barometer in the sugarhouse that is not adjusted to sea level; standard uncertainty 0.1 kPa. Of a column
    /// of readings it makes ``StationPressures``.
    #[staticmethod]
    #[pyo3(signature = (pressure, /))]
    fn measured(py: Python<'_>, pressure: &Bound<'_, PyAny>) -> PyResult<Py<PyAny>> {
        guarded(py, || {
            let taken = take::quantity(pressure, "pressure", Dimension::Pressure)?;
            match taken.number {
                Number::Column(column) => StationPressures::new(column, taken.unit).into_py_any(py),
                Number::Scalar(number) => air::StationPressure::measured(units::pa(quantity::si(number, taken.unit)))
                    .map_err(|error| raise(py, &error))
                    .and_then(|station| Self(station).into_py_any(py)),
            }
        })
    }

    /// From the altimeter setting that an airport reports, to which most home weather stations are set; standard
    /// uncertainty 0.1 kPa.
    #[staticmethod]
    #[pyo3(signature = (setting, altitude, /))]
    fn from_altimeter_setting(
        py: Python<'_>,
        setting: &Bound<'_, PyAny>,
        altitude: &Bound<'_, PyAny>,
    ) -> PyResult<Self> {
        made(py, || {
            let (setting, altitude) = (taken(setting, "setting")?, taken(altitude, "altitude")?);
            Ok(air::StationPressure::from_altimeter_setting(setting, altitude))
        })
    }

    /// From the mean sea level pressure of a weather map or forecast; standard uncertainty 0.2 kPa.
    #[staticmethod]
    #[pyo3(signature = (pressure, altitude, /, *, air_temperature))]
    fn from_sea_level(
        py: Python<'_>,
        pressure: &Bound<'_, PyAny>,
        altitude: &Bound<'_, PyAny>,
        air_temperature: &Bound<'_, PyAny>,
    ) -> PyResult<Self> {
        made(py, || {
            let (pressure, altitude) = (taken(pressure, "pressure")?, taken(altitude, "altitude")?);
            let air_temperature = taken(air_temperature, "air_temperature")?;
            Ok(air::StationPressure::from_sea_level(
                pressure,
                altitude,
                air_temperature,
            ))
        })
    }

    /// From the altitude alone, by the standard atmosphere; the weather stays unknown, so the standard uncertainty is
    /// 0.8 kPa: never enough to finish syrup by thermometer.
    #[staticmethod]
    #[pyo3(signature = (altitude, /))]
    fn from_altitude(py: Python<'_>, altitude: &Bound<'_, PyAny>) -> PyResult<Self> {
        made(py, || {
            Ok(air::StationPressure::from_altitude(taken(altitude, "altitude")?))
        })
    }

    /// From the temperature at which plain water boils there and now, by the thermometer that will be used: its own
    /// error then cancels. Standard uncertainty 0.35 kPa, which is 0.1 K of scatter.
    #[staticmethod]
    #[pyo3(signature = (temperature, /))]
    fn from_boiling_water(py: Python<'_>, temperature: &Bound<'_, PyAny>) -> PyResult<Self> {
        made(py, || {
            Ok(air::StationPressure::from_boiling_water(taken(
                temperature,
                "temperature",
            )?))
        })
    }

    /// The absolute pressure.
    #[getter]
    fn pressure(&self) -> Quantity {
        in_kpa(self.0.pressure())
    }

    /// Its standard uncertainty.
    #[getter]
    fn uncertainty(&self) -> Quantity {
        in_kpa(self.0.uncertainty())
    }

    /// How it was come by: "measured", "altimeter_setting", "sea_level", "altitude" or "boiling_water".
    #[getter]
    fn origin(&self) -> &'static str {
        self.0.origin().name()
    }

    /// The same pressure, known to the standard uncertainty `uncertainty`.
    #[pyo3(signature = (uncertainty, /))]
    fn with_uncertainty(&self, py: Python<'_>, uncertainty: &Bound<'_, PyAny>) -> PyResult<Self> {
        guarded(py, || {
            let uncertainty: Pressure = taken(uncertainty, "uncertainty")?;
            if !uncertainty.si().is_finite() {
                return Err(raise(py, &Error::not_finite("uncertainty", uncertainty.si())));
            }
            Ok(Self(self.0.with_uncertainty(uncertainty)))
        })
    }

    fn __repr__(&self) -> String {
        let pressure = units::Quantity::new(table::kpa.from_si(self.pascal()), &table::kpa);
        format!("<StationPressure {pressure}, {}>", self.origin())
    }

    fn __hash__(&self) -> u64 {
        self.pascal().to_bits() ^ (self.0.uncertainty().si().to_bits() >> 1)
    }

    fn __copy__(slf: Bound<'_, Self>) -> Bound<'_, Self> {
        slf
    }

    fn __deepcopy__<'py>(slf: Bound<'py, Self>, _memo: &Bound<'py, PyAny>) -> Bound<'py, Self> {
        slf
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Parts)> {
        let restore = py.get_type::<Self>().getattr("_restore")?;
        Ok((restore, (self.pascal(), self.0.uncertainty().si(), self.origin())))
    }

    /// For reading back.
    #[classmethod]
    fn _restore(class: &Bound<'_, PyType>, pascal: f64, uncertainty: f64, origin: &str) -> PyResult<Self> {
        made(class.py(), || {
            let names = || Origin::ALL.into_iter().map(Origin::name);
            let Some(known) = Origin::named(origin) else {
                return Err(raise(class.py(), &Error::unknown_name("origin", origin, names())));
            };
            let uncertainty = units::pa(uncertainty);
            let station = air::StationPressure::measured(units::pa(pascal));
            Ok(station.map(|station| station.with_uncertainty(uncertainty).with_origin(known)))
        })
    }
}

impl StationPressure {
    pub(crate) fn pascal(&self) -> f64 {
        self.0.pressure().si()
    }
}

fn made(
    py: Python<'_>,
    make: impl FnOnce() -> PyResult<Result<air::StationPressure, Error>>,
) -> PyResult<StationPressure> {
    guarded(py, || make()?.map(StationPressure).map_err(|error| raise(py, &error)))
}

/// The one value of an argument that cannot be a column.
pub(crate) fn taken<T: Value>(any: &Bound<'_, PyAny>, name: &str) -> PyResult<T> {
    let taken = take::quantity(any, name, T::DIMENSION)?;
    match taken.number {
        Number::Scalar(number) => {
            T::from_si(quantity::si(number, taken.unit)).map_err(|error| raise(any.py(), &error.named(name)))
        }
        Number::Column(_) => Err(raise(
            any.py(),
            &Error::foreign(name, &crate::shown::kind(any), "one value"),
        )),
    }
}

pub(crate) fn in_kpa(pressure: Pressure) -> Quantity {
    Quantity::result(
        Number::Scalar(pressure.si()),
        Unit::base(Dimension::Pressure),
        &table::kpa,
    )
}
