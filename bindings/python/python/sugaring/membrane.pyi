# Written by `cargo xtask surface`: change what it is made from.
"""Membranes: concentrating sap by reverse osmosis."""
# mypy: disable-error-code="overload-overlap"
from collections.abc import Sequence
from typing import Literal, overload

import numpy as np
from numpy.typing import NDArray

from . import units as _u
from ._sugaring import Column, Quantity

__all__ = ["pump_energy", "test_water_osmotic_pressure"]

@overload
def test_water_osmotic_pressure(salt: Quantity[_u.Concentration], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure]:
    """Osmotic pressure of the NaCl water on which elements are rated.

    Parameters
    ----------
    salt : Quantity[Concentration]
        0 to 35000 mg/L.
    temperature : Quantity[Temperature]
        0 to 40 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity[Pressure]
        Shown in kPa (``kpa``); of a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: common practice, no source.

    Accuracy: low by 5 % at 250 mg/L, 4 % at 500, 2 % at 2000 (Pitzer, computed).

    Examples
    --------
    >>> from sugaring import membrane
    >>> from sugaring.units import deg_c, mg_per_litre
    >>> membrane.test_water_osmotic_pressure(mg_per_litre(17500), deg_c(24))
    kpa(1376.0363219054302)
    """
@overload
def test_water_osmotic_pressure(salt: Quantity[_u.Concentration, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure, Column]: ...
@overload
def test_water_osmotic_pressure(salt: Quantity[_u.Concentration, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure, NDArray[np.float64]]: ...

@overload
def pump_energy(pressure: Quantity[_u.GaugePressure], feed: Quantity[_u.Flow], /, *, duration: Quantity[_u.Time], efficiency: float | Quantity[_u.Ratio, float], on_error: Literal["nan"] | None = None) -> Quantity[_u.Energy]:
    """Energy a pump draws.

    Parameters
    ----------
    pressure : Quantity[GaugePressure]
        0 to 70 bar gauge.
    feed : Quantity[Flow]
        0 to 1000000 L/h.
    duration : Quantity[Time]
        0 to 10000 h.
    efficiency : float
        0.05 to 1.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity[Energy]
        Shown in kWh (``kwh``); of a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: definition of hydraulic work.

    Accuracy: as the efficiency.

    Examples
    --------
    >>> from sugaring import membrane
    >>> from sugaring.units import bar_gauge, hours, litre_per_h
    >>> membrane.pump_energy(bar_gauge(35), litre_per_h(600000), duration=hours(4000), efficiency=0.525)
    kwh(4444444.444444444)
    """
@overload
def pump_energy(pressure: Quantity[_u.GaugePressure, float | Column], feed: Quantity[_u.Flow, float | Column], /, *, duration: Quantity[_u.Time, float | Column], efficiency: float | Column | Quantity[_u.Ratio, float | Column], on_error: Literal["nan"] | None = None) -> Quantity[_u.Energy, Column]: ...
@overload
def pump_energy(pressure: Quantity[_u.GaugePressure, float | Sequence[float] | NDArray[np.float64]], feed: Quantity[_u.Flow, float | Sequence[float] | NDArray[np.float64]], /, *, duration: Quantity[_u.Time, float | Sequence[float] | NDArray[np.float64]], efficiency: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Ratio, float | Sequence[float] | NDArray[np.float64]], on_error: Literal["nan"] | None = None) -> Quantity[_u.Energy, NDArray[np.float64]]: ...
