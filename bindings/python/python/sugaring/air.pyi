# Written by `cargo xtask surface`: change what it is made from.
"""Air pressure: the pressure in the sugarhouse, the three numbers that are called a barometer's, and the standard
atmosphere.
"""
# mypy: disable-error-code="overload-overlap"
from collections.abc import Sequence
from typing import Any, Generic, TypeVar, final, Literal, overload

import numpy as np
from numpy.typing import NDArray

from . import units as _u
from ._sugaring import Column, Quantity

__all__ = ["StationPressure", "StationPressures", "altimeter_setting", "altitude_at_pressure", "pressure_at_altitude", "sea_level_pressure"]

_V = TypeVar("_V", covariant=True)

@final
class StationPressure:
    """Absolute pressure of the air where the pan stands, 50 to 110 kPa, made by naming the kind of reading."""

    @overload
    @staticmethod
    def measured(pressure: Quantity[_u.Pressure], /) -> StationPressure:
        """From a barometer in the sugarhouse that is not adjusted to sea level; standard uncertainty 0.1 kPa. Of a column
        of readings it makes ``StationPressures``."""
    @overload
    @staticmethod
    def measured(pressure: Quantity[_u.Pressure, Column], /) -> StationPressures[Column]: ...

    @staticmethod
    def from_altimeter_setting(setting: Quantity[_u.Pressure], altitude: Quantity[_u.Length], /) -> StationPressure:
        """From the altimeter setting that an airport reports; standard uncertainty 0.1 kPa."""

    @staticmethod
    def from_sea_level(
        pressure: Quantity[_u.Pressure],
        altitude: Quantity[_u.Length],
        /,
        *,
        air_temperature: Quantity[_u.Temperature],
    ) -> StationPressure:
        """From the mean sea level pressure of a weather map or forecast; standard uncertainty 0.2 kPa."""

    @staticmethod
    def from_altitude(altitude: Quantity[_u.Length], /) -> StationPressure:
        """From the altitude alone, by the standard atmosphere; standard uncertainty 0.8 kPa."""

    @staticmethod
    def from_boiling_water(temperature: Quantity[_u.Temperature], /) -> StationPressure:
        """From the temperature at which plain water boils there and now; standard uncertainty 0.35 kPa."""

    @property
    def pressure(self) -> Quantity[_u.Pressure]:
        """The absolute pressure."""

    @property
    def uncertainty(self) -> Quantity[_u.Pressure]:
        """Its standard uncertainty."""

    @property
    def origin(self) -> Literal["measured", "altimeter_setting", "sea_level", "altitude", "boiling_water"]:
        """How it was come by."""

    def with_uncertainty(self, uncertainty: Quantity[_u.Pressure], /) -> StationPressure:
        """The same pressure, known to the standard uncertainty `uncertainty`."""

    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self) -> int: ...
    def __copy__(self) -> StationPressure: ...
    def __deepcopy__(self, _memo: object, /) -> StationPressure: ...
    @classmethod
    def _restore(cls, pascal: float, uncertainty: float, origin: str) -> StationPressure: ...

@final
class StationPressures(Generic[_V]):
    """A column of station pressures, as ``StationPressure.measured`` makes it of a column of a barometer's readings."""

    @property
    def pressure(self) -> Quantity[_u.Pressure, _V]:
        """The absolute pressures."""

    @property
    def uncertainty(self) -> Quantity[_u.Pressure]:
        """The standard uncertainty of each."""

    @property
    def origin(self) -> Literal["measured"]:
        """How they were come by: "measured"."""

    @classmethod
    def __class_getitem__(cls, item: Any) -> Any: ...

@overload
def pressure_at_altitude(altitude: Quantity[_u.Length], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure]:
    """Pressure of the standard atmosphere at a geometric `altitude`.

    Parameters
    ----------
    altitude : Quantity[Length]
        -500 to 11000 m.
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
    Source: U.S. Standard Atmosphere 1976, geometric altitude to geopotential, lowest layer.

    Accuracy: 2 kPa of the real pressure, the weather.

    Examples
    --------
    >>> from sugaring import air
    >>> from sugaring.units import metre
    >>> air.pressure_at_altitude(metre(5250))
    kpa(52.269892563225866)
    """
@overload
def pressure_at_altitude(altitude: Quantity[_u.Length, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure, Column]: ...
@overload
def pressure_at_altitude(altitude: Quantity[_u.Length, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure, NDArray[np.float64]]: ...

@overload
def altitude_at_pressure(pressure: Quantity[_u.Pressure], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Length]:
    """Geometric altitude at which the standard atmosphere has `pressure`: the inverse of `pressure_at_altitude`.

    Parameters
    ----------
    pressure : Quantity[Pressure]
        22.6985 to 107.4781 kPa.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity[Length]
        Shown in m (``metre``); of a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: U.S. Standard Atmosphere 1976, geometric altitude to geopotential, lowest layer.

    Accuracy: 170 m of the real altitude, the weather.

    Examples
    --------
    >>> from sugaring import air
    >>> from sugaring.units import kpa
    >>> air.altitude_at_pressure(kpa(65))
    metre(3592.7168943922775)
    """
@overload
def altitude_at_pressure(pressure: Quantity[_u.Pressure, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Length, Column]: ...
@overload
def altitude_at_pressure(pressure: Quantity[_u.Pressure, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Length, NDArray[np.float64]]: ...

@overload
def altimeter_setting(station: StationPressure, altitude: Quantity[_u.Length], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure]:
    """Altimeter setting that an airport or a home weather station at `altitude` reports under this station pressure: to compare with a report.

    Parameters
    ----------
    station : StationPressure
        50 to 110 kPa.
    altitude : Quantity[Length]
        -500 to 5000 m.
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
    Source: Smithsonian Meteorological Tables, constants of the U.S. Standard Atmosphere 1976, altimeter setting.

    Accuracy: 0.1 kPa, and 0.012 kPa for each metre of error in the altitude.

    Examples
    --------
    >>> from sugaring import air
    >>> from sugaring.air import StationPressure
    >>> from sugaring.units import kpa, metre
    >>> air.altimeter_setting(StationPressure.measured(kpa(80)), metre(2800))
    kpa(111.95866796480136)
    """
@overload
def altimeter_setting(station: StationPressure | StationPressures[Column], altitude: Quantity[_u.Length, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure, Column]: ...
@overload
def altimeter_setting(station: StationPressure | StationPressures[Sequence[float] | NDArray[np.float64]], altitude: Quantity[_u.Length, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure, NDArray[np.float64]]: ...

@overload
def sea_level_pressure(station: StationPressure, altitude: Quantity[_u.Length], /, *, air_temperature: Quantity[_u.Temperature], on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure]:
    """Mean sea level pressure that a weather map shows where this is the station pressure.

    Parameters
    ----------
    station : StationPressure
        50 to 110 kPa.
    altitude : Quantity[Length]
        -500 to 5000 m.
    air_temperature : Quantity[Temperature]
        -50 to 50 °C.
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
    Source: hydrostatic equation of dry air with the lapse rate of the U.S. Standard Atmosphere 1976.

    Accuracy: 0.2 kPa.

    Examples
    --------
    >>> from sugaring import air
    >>> from sugaring.air import StationPressure
    >>> from sugaring.units import deg_c, kpa, metre
    >>> air.sea_level_pressure(StationPressure.measured(kpa(80)), metre(2800), air_temperature=deg_c(-10))
    kpa(113.6796011275737)
    """
@overload
def sea_level_pressure(station: StationPressure | StationPressures[Column], altitude: Quantity[_u.Length, float | Column], /, *, air_temperature: Quantity[_u.Temperature, float | Column], on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure, Column]: ...
@overload
def sea_level_pressure(station: StationPressure | StationPressures[Sequence[float] | NDArray[np.float64]], altitude: Quantity[_u.Length, float | Sequence[float] | NDArray[np.float64]], /, *, air_temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure, NDArray[np.float64]]: ...
