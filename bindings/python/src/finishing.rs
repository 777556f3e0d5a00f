//! Where syrup is done: several quantities at once.

use pyo3::prelude::*;
use sugaring::{
    Error, finish,
    units::{Brix, Dimension, TemperatureDifference, Unit, Value, table},
};

use crate::{
    guard::guarded,
    quantity::Quantity,
    raise::raise,
    shown,
    station::{StationPressure, taken},
    take::Number,
};

/// What a finishing point is read back from, K.
type Parts = (f64, f64, f64, f64);

/// Where syrup is done today; made by ``finishing_point``.
#[pyclass(frozen, module = "sugaring.finish", name = "FinishingPoint", eq)]
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct FinishingPoint {
    temperature: f64,
    elevation: f64,
    water_boils_at: f64,
    uncertainty: f64,
}

#[pymethods]
impl FinishingPoint {
    /// What a perfect thermometer shows when the syrup is done.
    #[getter]
    fn temperature(&self) -> Quantity {
        point(self.temperature)
    }

    /// That above boiling water: what to add to the boiling water of today's thermometer.
    #[getter]
    fn elevation(&self) -> Quantity {
        difference(self.elevation)
    }

    /// Where plain water boils here and now.
    #[getter]
    fn water_boils_at(&self) -> Quantity {
        point(self.water_boils_at)
    }

    /// Standard uncertainty of ``temperature``, from the pressure and from the boiling relation.
    #[getter]
    fn uncertainty(&self) -> Quantity {
        difference(self.uncertainty)
    }

    fn __repr__(&self) -> String {
        let celsius = table::deg_c.from_si(self.temperature);
        format!("<FinishingPoint {celsius:.2} °C, {:.2} K above water>", self.elevation)
    }

    fn __hash__(&self) -> u64 {
        self.temperature.to_bits() ^ (self.uncertainty.to_bits() >> 1)
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Parts)> {
        let restore = py.get_type::<Self>().getattr("_restore")?;
        Ok((
            restore,
            (self.temperature, self.elevation, self.water_boils_at, self.uncertainty),
        ))
    }

    /// For reading back.
    #[staticmethod]
    fn _restore(temperature: f64, elevation: f64, water_boils_at: f64, uncertainty: f64) -> Self {
        Self {
            temperature,
            elevation,
            water_boils_at,
            uncertainty,
        }
    }
}

/// The temperature at which syrup of ``target`` boils at today's pressure.
///
/// Draw off by the thermometer, accept by the hydrometer: 0.1 K is half a °Brix. A thermometer that is zeroed in plain
/// boiling water beside the pan needs no barometer: add ``elevation`` to what it showed.
///
/// Parameters
/// ----------
/// target : float
///     °Brix of the finished syrup, 50 to 85 °Bx.
/// station : StationPressure
///     50 to 110 kPa.
/// non_sucrose_rise : Quantity[TemperatureDifference], optional
///     Rise of what is not sucrose, 0 to 1 Δ°C; 0.1 to 0.25 for maple, left out 0.
///
/// Returns
/// -------
/// FinishingPoint
///     ``temperature``, ``elevation``, ``water_boils_at`` and ``uncertainty``.
///
/// Raises
/// ------
/// SugaringError
///     An argument out of range, not finite, or of another dimension.
///
/// Examples
/// --------
/// >>> from sugaring import finish
/// >>> from sugaring.air import StationPressure
/// >>> from sugaring.units import deg_c, delta_c, kpa
/// >>> done = finish.finishing_point(66.9, StationPressure.measured(kpa(96.5)))
/// >>> f"{done.temperature:deg_c:.1f} °C, {done.elevation:delta_c:.2f} K above water"
/// '102.8 °C, 4.16 K above water'
#[pyfunction]
#[pyo3(signature = (target, station, /, *, non_sucrose_rise = None))]
fn finishing_point(
    py: Python<'_>,
    target: &Bound<'_, PyAny>,
    station: &Bound<'_, PyAny>,
    non_sucrose_rise: Option<&Bound<'_, PyAny>>,
) -> PyResult<FinishingPoint> {
    guarded(py, || {
        let target: Brix = taken(target, "target")?;
        let Ok(air) = station.cast::<StationPressure>() else {
            return Err(raise(
                py,
                &match shown::data(station) {
                    Some(tree) => Error::no_station("station", &tree),
                    None => Error::foreign("station", &shown::kind(station), "a StationPressure"),
                },
            ));
        };
        let rise: Option<TemperatureDifference> = non_sucrose_rise
            .map(|rise| taken(rise, "non_sucrose_rise"))
            .transpose()?;
        let found = finish::finishing_point(target, air.get().0, rise).map_err(|error| raise(py, &error))?;
        Ok(FinishingPoint {
            temperature: found.temperature.si(),
            elevation: found.elevation.si(),
            water_boils_at: found.water_boils_at.si(),
            uncertainty: found.uncertainty.si(),
        })
    })
}

fn point(si: f64) -> Quantity {
    Quantity::result(Number::Scalar(si), Unit::base(Dimension::Temperature), &table::deg_c)
}

fn difference(si: f64) -> Quantity {
    Quantity::result(
        Number::Scalar(si),
        Unit::base(Dimension::TemperatureDifference),
        &table::delta_c,
    )
}

pub(crate) fn register(finish: &Bound<'_, PyModule>) -> PyResult<()> {
    finish.add_class::<FinishingPoint>()?;
    finish.add_function(wrap_pyfunction!(finishing_point, finish)?)
}
