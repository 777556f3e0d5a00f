# Written by `cargo xtask surface`: change what it is made from.
"""Water: the boiling line, the latent heat, the liquid that sap, permeate and syrup are made of."""
# mypy: disable-error-code="overload-overlap"
from collections.abc import Sequence
from typing import Literal, overload

import numpy as np
from numpy.typing import NDArray

from . import units as _u
from ._sugaring import Column, Quantity

__all__ = ["density", "enthalpy", "latent_heat", "saturated_liquid_density", "saturated_vapour_density", "saturation_pressure", "saturation_temperature", "specific_heat", "thermal_conductivity", "viscosity"]

@overload
def saturation_pressure(temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure]:
    """Absolute pressure at which water of `temperature` boils.

    Parameters
    ----------
    temperature : Quantity[Temperature]
        0 to 373.946 °C.
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
    Source: IAPWS R7-97(2012), equation 30, table 34.

    Accuracy: 0.02 % of IAPWS-95; 0.0076 % from 0 to 130 °C.

    Examples
    --------
    >>> from sugaring import water
    >>> from sugaring.units import deg_c
    >>> water.saturation_pressure(deg_c(190))
    kpa(1255.0179208610473)
    """
@overload
def saturation_pressure(temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure, Column]: ...
@overload
def saturation_pressure(temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure, NDArray[np.float64]]: ...

@overload
def saturation_temperature(pressure: Quantity[_u.Pressure], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Temperature]:
    """Temperature at which water boils under the absolute `pressure`: the inverse of `saturation_pressure`.

    Parameters
    ----------
    pressure : Quantity[Pressure]
        0.6112126 to 22064.001 kPa.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity[Temperature]
        Shown in °C (``deg_c``); of a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: IAPWS R7-97(2012), equation 31, table 34.

    Accuracy: 0.00023 K from 60 to 110 kPa.

    Examples
    --------
    >>> from sugaring import water
    >>> from sugaring.units import kpa
    >>> water.saturation_temperature(kpa(11030))
    deg_c(318.2859165027669)
    """
@overload
def saturation_temperature(pressure: Quantity[_u.Pressure, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Temperature, Column]: ...
@overload
def saturation_temperature(pressure: Quantity[_u.Pressure, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Temperature, NDArray[np.float64]]: ...

@overload
def latent_heat(temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass]:
    """Heat that turns boiling water of `temperature` into steam of the same temperature.

    Parameters
    ----------
    temperature : Quantity[Temperature]
        0.01 to 373.946 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity[EnergyPerMass]
        Shown in kJ/kg (``kj_per_kg``); of a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: IAPWS SR1-86(1992), equations 1 to 7.

    Accuracy: 0.38 kJ/kg of IAPWS-95 at 0 °C, 0.22 kJ/kg from 25 to 130 °C.

    Examples
    --------
    >>> from sugaring import water
    >>> from sugaring.units import deg_c
    >>> water.latent_heat(deg_c(190))
    kj_per_kg(1977.9005608556913)
    """
@overload
def latent_heat(temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass, Column]: ...
@overload
def latent_heat(temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass, NDArray[np.float64]]: ...

@overload
def saturated_liquid_density(temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Density]:
    """Density of boiling water.

    Parameters
    ----------
    temperature : Quantity[Temperature]
        0.01 to 373.946 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity[Density]
        Shown in kg/m³ (``kg_per_m3``); of a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: IAPWS SR1-86(1992), equation 2.

    Accuracy: as the release states.

    Examples
    --------
    >>> from sugaring import water
    >>> from sugaring.units import deg_c
    >>> water.saturated_liquid_density(deg_c(190))
    kg_per_m3(876.0819268843311)
    """
@overload
def saturated_liquid_density(temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Density, Column]: ...
@overload
def saturated_liquid_density(temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Density, NDArray[np.float64]]: ...

@overload
def saturated_vapour_density(temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Density]:
    """Density of the steam over boiling water.

    Parameters
    ----------
    temperature : Quantity[Temperature]
        0.01 to 373.946 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity[Density]
        Shown in kg/m³ (``kg_per_m3``); of a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: IAPWS SR1-86(1992), equation 3.

    Accuracy: as the release states.

    Examples
    --------
    >>> from sugaring import water
    >>> from sugaring.units import deg_c
    >>> water.saturated_vapour_density(deg_c(190))
    kg_per_m3(6.395386346163483)
    """
@overload
def saturated_vapour_density(temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Density, Column]: ...
@overload
def saturated_vapour_density(temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Density, NDArray[np.float64]]: ...

@overload
def density(temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Density]:
    """Density of liquid water.

    Parameters
    ----------
    temperature : Quantity[Temperature]
        -20 to 110 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity[Density]
        Shown in kg/m³ (``kg_per_m3``); of a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: IAPWS SR6-08(2011), equation 2, tables 1 and 2.

    Accuracy: 1 ppm from 0 to 40 °C, 0.003 % near 100 °C (release, from memory).

    Examples
    --------
    >>> from sugaring import water
    >>> from sugaring.units import deg_c
    >>> water.density(deg_c(45))
    kg_per_m3(990.212336636539)
    """
@overload
def density(temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Density, Column]: ...
@overload
def density(temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Density, NDArray[np.float64]]: ...

@overload
def specific_heat(temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.SpecificHeat]:
    """Specific heat of liquid water.

    Parameters
    ----------
    temperature : Quantity[Temperature]
        -20 to 110 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity[SpecificHeat]
        Shown in kJ/(kg K) (``kj_per_kg_k``); of a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: IAPWS SR6-08(2011), equation 1, tables 1 and 2.

    Accuracy: 0.1 % (release, from memory).

    Examples
    --------
    >>> from sugaring import water
    >>> from sugaring.units import deg_c
    >>> water.specific_heat(deg_c(45))
    kj_per_kg_k(4.180038803012388)
    """
@overload
def specific_heat(temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.SpecificHeat, Column]: ...
@overload
def specific_heat(temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.SpecificHeat, NDArray[np.float64]]: ...

@overload
def enthalpy(temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass]:
    """Heat that warms liquid water from 0 °C to `temperature`; negative below.

    Parameters
    ----------
    temperature : Quantity[Temperature]
        -20 to 110 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity[EnergyPerMass]
        Shown in kJ/kg (``kj_per_kg``); of a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: IAPWS SR6-08(2011), equation 1, tables 1 and 2.

    Accuracy: 0.1 %, as the specific heat it integrates.

    Examples
    --------
    >>> from sugaring import water
    >>> from sugaring.units import deg_c
    >>> water.enthalpy(deg_c(45))
    kj_per_kg(188.45461689938605)
    """
@overload
def enthalpy(temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass, Column]: ...
@overload
def enthalpy(temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass, NDArray[np.float64]]: ...

@overload
def viscosity(temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Viscosity]:
    """Viscosity of liquid water.

    Parameters
    ----------
    temperature : Quantity[Temperature]
        -20 to 110 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity[Viscosity]
        Shown in mPa·s (``mpa_s``); of a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: IAPWS SR6-08(2011), equation 7, table 3.

    Accuracy: 1 %, 0.17 % from 20 to 25 °C (release, from memory).

    Examples
    --------
    >>> from sugaring import water
    >>> from sugaring.units import deg_c
    >>> water.viscosity(deg_c(45))
    mpa_s(0.5957788268993122)
    """
@overload
def viscosity(temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Viscosity, Column]: ...
@overload
def viscosity(temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Viscosity, NDArray[np.float64]]: ...

@overload
def thermal_conductivity(temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Conductivity]:
    """Thermal conductivity of liquid water.

    Parameters
    ----------
    temperature : Quantity[Temperature]
        -20 to 110 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity[Conductivity]
        Shown in W/(m K) (``w_per_m_k``); of a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: IAPWS SR6-08(2011), equation 8, table 3.

    Accuracy: 1.5 % (release, from memory).

    Examples
    --------
    >>> from sugaring import water
    >>> from sugaring.units import deg_c
    >>> water.thermal_conductivity(deg_c(45))
    w_per_m_k(0.6347849815113925)
    """
@overload
def thermal_conductivity(temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Conductivity, Column]: ...
@overload
def thermal_conductivity(temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Conductivity, NDArray[np.float64]]: ...
