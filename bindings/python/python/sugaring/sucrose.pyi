# Written by `cargo xtask surface`: change what it is made from.
"""Sucrose solutions, from sap to syrup: density, heat, viscosity, solubility, and one water activity behind boiling
point, osmotic pressure and freezing point, so that they cannot disagree.
"""
# mypy: disable-error-code="overload-overlap"
from collections.abc import Sequence
from typing import TypeVar, Literal, overload

import numpy as np
from numpy.typing import NDArray

from . import units as _u
from ._sugaring import Column, Quantity, Unit
from .air import StationPressure, StationPressures

__all__ = ["boiling_point_elevation", "boiling_temperature", "brix_from_boiling", "brix_from_density", "brix_from_freezing", "brix_from_osmotic_pressure", "brix_from_refractive_index", "brix_from_scale", "contraction", "density", "enthalpy", "excess_enthalpy_of_water", "freezing_temperature", "heat_of_evaporation", "heat_to_warm", "on_scale", "osmotic_coefficient", "osmotic_pressure", "pressure_from_boiling", "refractive_index", "saturation_temperature", "solubility", "specific_heat", "specific_heat_bubnik", "sugar_per_volume", "supersaturation", "thermal_conductivity", "viscosity", "viscosity_genotelle", "water_activity", "weight_in_air"]

_S = TypeVar("_S", bound=_u.DensityScale)

@overload
def on_scale(
    brix: float | Quantity[_u.Brix], scale: Unit[_S], /, *, on_error: Literal["nan"] | None = None
) -> Quantity[_S]:
    """Where a sucrose solution stands on a density scale.

    The temperatures of solution and water are part of the scale's word. Syrup standards print the pairs of
    ``baume_20_20``.

    Parameters
    ----------
    brix : float
        0 to 85 °Bx.
    scale : Unit
        ``baume_20_20``, ``baume_60_60_f``, ``relative_density_20_20``, ``relative_density_60_60_f``,
        ``relative_density_20_4`` or ``apparent_relative_density_20_20``.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity
        On that scale; of a column where ``brix`` is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or no density scale.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import baume_20_20
    >>> round(sucrose.on_scale(66.9, baume_20_20).to(baume_20_20), 3)
    36.025
    """
@overload
def on_scale(
    brix: float | Column | Quantity[_u.Brix, float | Column],
    scale: Unit[_S],
    /,
    *,
    on_error: Literal["nan"] | None = None,
) -> Quantity[_S, Column]: ...
@overload
def on_scale(
    brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]],
    scale: Unit[_S],
    /,
    *,
    on_error: Literal["nan"] | None = None,
) -> Quantity[_S, NDArray[np.float64]]: ...
@overload
def brix_from_scale(value: Quantity[_u.DensityScale], /, *, on_error: Literal["nan"] | None = None) -> float:
    """°Brix of the sucrose solution that stands at ``value`` on a density scale: the inverse of ``on_scale``.

    Parameters
    ----------
    value : Quantity
        A mark on a density scale, from that of water to that of 85 °Bx.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        In °Bx; a column where ``value`` is one.

    Raises
    ------
    SugaringError
        A value out of range, not finite, or not on a density scale.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import baume_20_20
    >>> round(sucrose.brix_from_scale(baume_20_20(36)), 2)
    66.85
    """
@overload
def brix_from_scale(
    value: Quantity[_u.DensityScale, float | Column], /, *, on_error: Literal["nan"] | None = None
) -> Column: ...
@overload
def brix_from_scale(
    value: Quantity[_u.DensityScale, float | Sequence[float] | NDArray[np.float64]],
    /,
    *,
    on_error: Literal["nan"] | None = None,
) -> NDArray[np.float64]: ...
@overload
def density(brix: float | Quantity[_u.Brix, float], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Density]:
    """True density of a sucrose solution.

    Parameters
    ----------
    brix : float
        0 to 85 °Bx.
    temperature : Quantity[Temperature]
        0 to 100 °C.
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
    Source: ICUMSA SPS-4 in Bubnik, Kadlec, Urban, Bruhns, Sugar Technologists Manual (1995), p. 164.

    Accuracy: 10 to 30 °C: 0.1 kg/m³ to 35 °Bx, 0.4 to 78 °Bx, 0.9 to 85 °Bx; 0.25 at best from 0 to 10 and 30 to 55 °C; 1.5 above 55 °C.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.density(42, deg_c(60))
    kg_per_m3(1166.804824177001)
    """
@overload
def density(brix: float | Column | Quantity[_u.Brix, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Density, Column]: ...
@overload
def density(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Density, NDArray[np.float64]]: ...

@overload
def brix_from_density(density: Quantity[_u.Density], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> float:
    """°Brix of a sucrose solution of true `density` at `temperature`: the inverse of `density`.

    Parameters
    ----------
    density : Quantity[Density]
        950 to 1460 kg/m³.
    temperature : Quantity[Temperature]
        0 to 100 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        In °Bx; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: ICUMSA SPS-4 in Bubnik, Kadlec, Urban, Bruhns, Sugar Technologists Manual (1995), p. 164.

    Accuracy: 10 to 30 °C: 0.1 kg/m³ to 35 °Bx, 0.4 to 78 °Bx, 0.9 to 85 °Bx; 0.25 at best from 0 to 10 and 30 to 55 °C; 1.5 above 55 °C.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c, kg_per_m3
    >>> sucrose.brix_from_density(kg_per_m3(1200), deg_c(60))
    48.37495514170805
    """
@overload
def brix_from_density(density: Quantity[_u.Density, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def brix_from_density(density: Quantity[_u.Density, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...

@overload
def sugar_per_volume(brix: float | Quantity[_u.Brix, float], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Concentration]:
    """Dissolved sugar per volume of solution.

    Parameters
    ----------
    brix : float
        0 to 85 °Bx.
    temperature : Quantity[Temperature]
        0 to 100 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity[Concentration]
        Shown in g/L (``gram_per_litre``); of a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: ICUMSA SPS-4 in Bubnik, Kadlec, Urban, Bruhns, Sugar Technologists Manual (1995), p. 164.

    Accuracy: 10 to 30 °C: 0.1 kg/m³ to 35 °Bx, 0.4 to 78 °Bx, 0.9 to 85 °Bx; 0.25 at best from 0 to 10 and 30 to 55 °C; 1.5 above 55 °C.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.sugar_per_volume(42, deg_c(60))
    gram_per_litre(490.0580261543404)
    """
@overload
def sugar_per_volume(brix: float | Column | Quantity[_u.Brix, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Concentration, Column]: ...
@overload
def sugar_per_volume(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Concentration, NDArray[np.float64]]: ...

@overload
def weight_in_air(brix: float | Quantity[_u.Brix, float], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Density]:
    """What a scale shows of a volume of the solution, weighed in air.

    Parameters
    ----------
    brix : float
        0 to 85 °Bx.
    temperature : Quantity[Temperature]
        0 to 100 °C.
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
    Source: density of ICUMSA SPS-4, weighed in air of 1.2 kg/m³ with brass of 8400 kg/m³ as NBS Circular 440 does.

    Accuracy: 10 to 30 °C: 0.1 kg/m³ to 35 °Bx, 0.4 to 78 °Bx, 0.9 to 85 °Bx; 0.25 at best from 0 to 10 and 30 to 55 °C; 1.5 above 55 °C.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.weight_in_air(42, deg_c(60))
    kg_per_m3(1165.7713629431355)
    """
@overload
def weight_in_air(brix: float | Column | Quantity[_u.Brix, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Density, Column]: ...
@overload
def weight_in_air(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Density, NDArray[np.float64]]: ...

@overload
def refractive_index(brix: float | Quantity[_u.Brix, float], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> float:
    """Refractive index of a sucrose solution for yellow sodium light, against air.

    Parameters
    ----------
    brix : float
        0 to 85 °Bx.
    temperature : Quantity[Temperature]
        5 to 60 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        A plain number; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: Lorentz and Lorenz mixing on the density; sucrose by least squares to OIV-MA-AS2-02 Tables I and II and to the ICUMSA table (from memory), water by IAPWS R9-97.

    Accuracy: at 20 °C 0.00001 to 30 °Bx, 0.00003 to 75 °Bx; the correction for temperature 0.02 °Bx from 10 to 17 °C, 0.05 °Bx elsewhere to 40 °C; not checked above.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.refractive_index(42, deg_c(38))
    1.4007460864766805
    """
@overload
def refractive_index(brix: float | Column | Quantity[_u.Brix, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def refractive_index(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...

@overload
def brix_from_refractive_index(index: float | Quantity[_u.Ratio, float], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> float:
    """°Brix of the sucrose solution of this refractive `index` at `temperature`: the inverse of `refractive_index`.

    Parameters
    ----------
    index : float
        1.32 to 1.51.
    temperature : Quantity[Temperature]
        5 to 60 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        In °Bx; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: Lorentz and Lorenz mixing on the density; sucrose by least squares to OIV-MA-AS2-02 Tables I and II and to the ICUMSA table (from memory), water by IAPWS R9-97.

    Accuracy: at 20 °C 0.00001 to 30 °Bx, 0.00003 to 75 °Bx; the correction for temperature 0.02 °Bx from 10 to 17 °C, 0.05 °Bx elsewhere to 40 °C; not checked above.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.brix_from_refractive_index(1.4, deg_c(38))
    41.617693532356796
    """
@overload
def brix_from_refractive_index(index: float | Column | Quantity[_u.Ratio, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def brix_from_refractive_index(index: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Ratio, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...

@overload
def contraction(brix: float | Quantity[_u.Brix, float], hot: Quantity[_u.Temperature], /, *, cold: Quantity[_u.Temperature], on_error: Literal["nan"] | None = None) -> float:
    """Share of the hot volume that is gone when the solution has cooled.

    Parameters
    ----------
    brix : float
        0 to 85 °Bx.
    hot : Quantity[Temperature]
        0 to 100 °C.
    cold : Quantity[Temperature]
        0 to 100 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        In %; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: ICUMSA SPS-4 in Bubnik, Kadlec, Urban, Bruhns, Sugar Technologists Manual (1995), p. 164.

    Accuracy: 0.12 % of the volume above 55 °C.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.contraction(42, deg_c(60), cold=deg_c(40))
    0.009252219943141293
    """
@overload
def contraction(brix: float | Column | Quantity[_u.Brix, float | Column], hot: Quantity[_u.Temperature, float | Column], /, *, cold: Quantity[_u.Temperature, float | Column], on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def contraction(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], hot: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, cold: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...

@overload
def specific_heat(brix: float | Quantity[_u.Brix, float], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.SpecificHeat]:
    """Specific heat of a sucrose solution, anchored on water's own.

    Parameters
    ----------
    brix : float
        0 to 80 °Bx.
    temperature : Quantity[Temperature]
        0 to 110 °C.
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
    Source: Bubnik, Kadlec, Urban, Bruhns (1995), with the water of IAPWS SR6-08(2011) in place of 4.1868.

    Accuracy: 1 % to 20 °Bx, 3 % at 40 °Bx, 6 % at 67 °Bx below 50 °C, 12 % at 67 °Bx and 100 °C.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.specific_heat(40, deg_c(66))
    kj_per_kg_k(3.3818532434733517)
    """
@overload
def specific_heat(brix: float | Column | Quantity[_u.Brix, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.SpecificHeat, Column]: ...
@overload
def specific_heat(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.SpecificHeat, NDArray[np.float64]]: ...

@overload
def specific_heat_bubnik(brix: float | Quantity[_u.Brix, float], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.SpecificHeat]:
    """Specific heat of a sucrose solution as Bubnik prints it, with 4.1868 kJ/(kg K) for water.

    Parameters
    ----------
    brix : float
        0 to 80 °Bx.
    temperature : Quantity[Temperature]
        0 to 110 °C.
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
    Source: Bubnik, Kadlec, Urban, Bruhns, Sugar Technologists Manual (1995), specific heat of sucrose solutions.

    Accuracy: 1 % to 20 °Bx, 3 % at 40 °Bx, 6 % at 67 °Bx below 50 °C, 12 % at 67 °Bx and 100 °C.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.specific_heat_bubnik(40, deg_c(66))
    kj_per_kg_k(3.3808000000000002)
    """
@overload
def specific_heat_bubnik(brix: float | Column | Quantity[_u.Brix, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.SpecificHeat, Column]: ...
@overload
def specific_heat_bubnik(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.SpecificHeat, NDArray[np.float64]]: ...

@overload
def enthalpy(brix: float | Quantity[_u.Brix, float], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass]:
    """Heat that warms a sucrose solution from 0 °C to `temperature`, its strength unchanged.

    Parameters
    ----------
    brix : float
        0 to 80 °Bx.
    temperature : Quantity[Temperature]
        0 to 110 °C.
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
    Source: Bubnik, Kadlec, Urban, Bruhns (1995), with the water of IAPWS SR6-08(2011) in place of 4.1868.

    Accuracy: 1 % to 20 °Bx, 3 % at 40 °Bx, 6 % at 67 °Bx below 50 °C, 12 % at 67 °Bx and 100 °C.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.enthalpy(40, deg_c(66))
    kj_per_kg(216.5748208636964)
    """
@overload
def enthalpy(brix: float | Column | Quantity[_u.Brix, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass, Column]: ...
@overload
def enthalpy(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass, NDArray[np.float64]]: ...

@overload
def heat_to_warm(brix: float | Quantity[_u.Brix, float], from_temperature: Quantity[_u.Temperature], /, *, to_temperature: Quantity[_u.Temperature], on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass]:
    """Heat that takes a sucrose solution from one temperature to another, its strength unchanged; negative on cooling.

    Parameters
    ----------
    brix : float
        0 to 80 °Bx.
    from_temperature : Quantity[Temperature]
        0 to 110 °C.
    to_temperature : Quantity[Temperature]
        0 to 110 °C.
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
    Source: Bubnik, Kadlec, Urban, Bruhns (1995), with the water of IAPWS SR6-08(2011) in place of 4.1868.

    Accuracy: 1 % to 20 °Bx, 3 % at 40 °Bx, 6 % at 67 °Bx below 50 °C, 12 % at 67 °Bx and 100 °C.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.heat_to_warm(40, deg_c(66), to_temperature=deg_c(44))
    kj_per_kg(-73.57215147968198)
    """
@overload
def heat_to_warm(brix: float | Column | Quantity[_u.Brix, float | Column], from_temperature: Quantity[_u.Temperature, float | Column], /, *, to_temperature: Quantity[_u.Temperature, float | Column], on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass, Column]: ...
@overload
def heat_to_warm(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], from_temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, to_temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass, NDArray[np.float64]]: ...

@overload
def viscosity(brix: float | Quantity[_u.Brix, float], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Viscosity]:
    """Viscosity of a sucrose solution.

    Parameters
    ----------
    brix : float
        0 to 75 °Bx.
    temperature : Quantity[Temperature]
        0 to 100 °C.
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
    Source: least squares to CRC Handbook rows at 20 °C, Bingham and Jackson 1918, Supplement to NBS Circular 440 (1958), on the water of IAPWS SR6-08(2011).

    Accuracy: 0.35 % at 20 °C, 3 % elsewhere to 70 °Bx, 8 % to 75 °Bx.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.viscosity(38, deg_c(60))
    mpa_s(1.765478721945043)
    """
@overload
def viscosity(brix: float | Column | Quantity[_u.Brix, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Viscosity, Column]: ...
@overload
def viscosity(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Viscosity, NDArray[np.float64]]: ...

@overload
def viscosity_genotelle(brix: float | Quantity[_u.Brix, float], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Viscosity]:
    """Viscosity of syrup by the published form of Génotelle.

    Parameters
    ----------
    brix : float
        55 to 75 °Bx.
    temperature : Quantity[Temperature]
        20 to 40 °C.
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
    Source: Mathlouthi and Génotelle 1995, viscosity of pure sucrose solutions.

    Accuracy: 2.5 %.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.viscosity_genotelle(65, deg_c(32))
    mpa_s(68.21654466377386)
    """
@overload
def viscosity_genotelle(brix: float | Column | Quantity[_u.Brix, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Viscosity, Column]: ...
@overload
def viscosity_genotelle(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Viscosity, NDArray[np.float64]]: ...

@overload
def thermal_conductivity(brix: float | Quantity[_u.Brix, float], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Conductivity]:
    """Thermal conductivity of a sucrose solution.

    Parameters
    ----------
    brix : float
        0 to 70 °Bx.
    temperature : Quantity[Temperature]
        0 to 80 °C.
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
    Source: Llano 2005, as a public module cites it, liquor properties.

    Accuracy: 1.5 %.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.thermal_conductivity(35, deg_c(48))
    w_per_m_k(0.5185794944)
    """
@overload
def thermal_conductivity(brix: float | Column | Quantity[_u.Brix, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Conductivity, Column]: ...
@overload
def thermal_conductivity(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Conductivity, NDArray[np.float64]]: ...

@overload
def solubility(temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> float:
    """°Brix of a solution saturated with sucrose.

    Parameters
    ----------
    temperature : Quantity[Temperature]
        -13 to 100 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        In °Bx; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: Vavrinecz 1962 (name from memory), as printed by Bubnik and Kadlec 1995, solubility of sucrose in water.

    Accuracy: 0.15 °Bx to 80 °C, 0.3 °Bx above, of the strength at saturation.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.solubility(deg_c(44))
    70.8887448832
    """
@overload
def solubility(temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def solubility(temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...

@overload
def saturation_temperature(brix: float | Quantity[_u.Brix, float], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Temperature]:
    """Temperature at which a sucrose solution is saturated: the inverse of `solubility`.

    Parameters
    ----------
    brix : float
        63.653 to 82.65 °Bx.
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
    Source: Vavrinecz 1962 (name from memory), as printed by Bubnik and Kadlec 1995, solubility of sucrose in water.

    Accuracy: 0.15 °Bx to 80 °C, 0.3 °Bx above, of the strength at saturation.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> sucrose.saturation_temperature(73)
    deg_c(54.173990541015996)
    """
@overload
def saturation_temperature(brix: float | Column | Quantity[_u.Brix, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Temperature, Column]: ...
@overload
def saturation_temperature(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Temperature, NDArray[np.float64]]: ...

@overload
def supersaturation(brix: float | Quantity[_u.Brix, float], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> float:
    """Sucrose per water, over what saturation would hold at this temperature: above 1 crystals can grow.

    Parameters
    ----------
    brix : float
        0 to 85 °Bx.
    temperature : Quantity[Temperature]
        -13 to 100 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        A plain number; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: Vavrinecz 1962 (name from memory), as printed by Bubnik and Kadlec 1995, solubility of sucrose in water.

    Accuracy: 0.15 °Bx to 80 °C, 0.3 °Bx above, of the strength at saturation.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.supersaturation(42, deg_c(55))
    0.26542792025872286
    """
@overload
def supersaturation(brix: float | Column | Quantity[_u.Brix, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def supersaturation(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...

@overload
def water_activity(brix: float | Quantity[_u.Brix, float], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> float:
    """Water activity of a sucrose solution: the share of pure water's vapour pressure that it has.

    Parameters
    ----------
    brix : float
        0 to 85 °Bx.
    temperature : Quantity[Temperature]
        -15 to 132 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        A plain number; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).

    Accuracy: 0.002 to 70 °Bx, 0.004 to 85 °Bx.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.water_activity(42, deg_c(73))
    0.9570276767744823
    """
@overload
def water_activity(brix: float | Column | Quantity[_u.Brix, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def water_activity(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...

@overload
def osmotic_coefficient(brix: float | Quantity[_u.Brix, float], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> float:
    """Osmotic coefficient of a sucrose solution: how far its water activity lies from that of an ideal one.

    Parameters
    ----------
    brix : float
        0 to 85 °Bx.
    temperature : Quantity[Temperature]
        -15 to 132 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        A plain number; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).

    Accuracy: at 25 °C: 0.006 to 2 mol/kg, 0.003 above.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.osmotic_coefficient(42, deg_c(73))
    1.152476582039383
    """
@overload
def osmotic_coefficient(brix: float | Column | Quantity[_u.Brix, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def osmotic_coefficient(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...

@overload
def osmotic_pressure(brix: float | Quantity[_u.Brix, float], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure]:
    """Osmotic pressure of a sucrose solution.

    Parameters
    ----------
    brix : float
        0 to 60 °Bx.
    temperature : Quantity[Temperature]
        0 to 50 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity[Pressure]
        Shown in bar (``bar``); of a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).

    Accuracy: 1 % to 30 °Bx, 2 % to 45 °Bx, 3.5 % to 60 °Bx, of the pressure.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.osmotic_pressure(30, deg_c(30))
    bar(34.89112869400277)
    """
@overload
def osmotic_pressure(brix: float | Column | Quantity[_u.Brix, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure, Column]: ...
@overload
def osmotic_pressure(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure, NDArray[np.float64]]: ...

@overload
def brix_from_osmotic_pressure(pressure: Quantity[_u.Pressure], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> float:
    """°Brix of the sucrose solution that has this osmotic `pressure`: the ceiling of a membrane. The inverse of `osmotic_pressure`.

    Parameters
    ----------
    pressure : Quantity[Pressure]
        0 to 162 bar.
    temperature : Quantity[Temperature]
        0 to 50 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        In °Bx; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).

    Accuracy: 1 % to 30 °Bx, 2 % to 45 °Bx, 3.5 % to 60 °Bx, of the pressure.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import bar, deg_c
    >>> sucrose.brix_from_osmotic_pressure(bar(81), deg_c(30))
    46.981027855661054
    """
@overload
def brix_from_osmotic_pressure(pressure: Quantity[_u.Pressure, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def brix_from_osmotic_pressure(pressure: Quantity[_u.Pressure, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...

@overload
def boiling_temperature(brix: float | Quantity[_u.Brix, float], station: StationPressure, /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Temperature]:
    """Temperature at which a sucrose solution boils under the `station` pressure.

    Parameters
    ----------
    brix : float
        0 to 85 °Bx.
    station : StationPressure
        50 to 110 kPa.
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
    Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).

    Accuracy: the rise within 0.10 K to 70 °Bx, 0.15 K to 80 °Bx, 0.35 K to 85 °Bx (one source 1.0 K lower).

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.air import StationPressure
    >>> from sugaring.units import kpa
    >>> sucrose.boiling_temperature(42, StationPressure.measured(kpa(86)))
    deg_c(96.61797914984697)
    """
@overload
def boiling_temperature(brix: float | Column | Quantity[_u.Brix, float | Column], station: StationPressure | StationPressures[Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Temperature, Column]: ...
@overload
def boiling_temperature(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], station: StationPressure | StationPressures[Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Temperature, NDArray[np.float64]]: ...

@overload
def boiling_point_elevation(brix: float | Quantity[_u.Brix, float], station: StationPressure, /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.TemperatureDifference]:
    """How far a sucrose solution boils above pure water at the same `station` pressure.

    Parameters
    ----------
    brix : float
        0 to 85 °Bx.
    station : StationPressure
        50 to 110 kPa.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity[TemperatureDifference]
        Shown in Δ°C (``delta_c``); of a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).

    Accuracy: the rise within 0.10 K to 70 °Bx, 0.15 K to 80 °Bx, 0.35 K to 85 °Bx (one source 1.0 K lower).

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.air import StationPressure
    >>> from sugaring.units import kpa
    >>> sucrose.boiling_point_elevation(42, StationPressure.measured(kpa(86)))
    delta_c(1.1743122116864697)
    """
@overload
def boiling_point_elevation(brix: float | Column | Quantity[_u.Brix, float | Column], station: StationPressure | StationPressures[Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.TemperatureDifference, Column]: ...
@overload
def boiling_point_elevation(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], station: StationPressure | StationPressures[Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.TemperatureDifference, NDArray[np.float64]]: ...

@overload
def brix_from_boiling(temperature: Quantity[_u.Temperature], station: StationPressure, /, *, on_error: Literal["nan"] | None = None) -> float:
    """°Brix of the sucrose solution that boils at `temperature` under the `station` pressure: the inverse of `boiling_temperature`.

    Parameters
    ----------
    temperature : Quantity[Temperature]
        60 to 132 °C.
    station : StationPressure
        50 to 110 kPa.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        In °Bx; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).

    Accuracy: the rise within 0.10 K to 70 °Bx, 0.15 K to 80 °Bx, 0.35 K to 85 °Bx (one source 1.0 K lower).

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.air import StationPressure
    >>> from sugaring.units import deg_c, kpa
    >>> sucrose.brix_from_boiling(deg_c(96), StationPressure.measured(kpa(86)))
    27.015078866794447
    """
@overload
def brix_from_boiling(temperature: Quantity[_u.Temperature, float | Column], station: StationPressure | StationPressures[Column], /, *, on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def brix_from_boiling(temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], station: StationPressure | StationPressures[Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...

@overload
def pressure_from_boiling(brix: float | Quantity[_u.Brix, float], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure]:
    """Absolute pressure under which a sucrose solution boils at `temperature`.

    Parameters
    ----------
    brix : float
        0 to 85 °Bx.
    temperature : Quantity[Temperature]
        60 to 132 °C.
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
    Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).

    Accuracy: the rise within 0.10 K to 70 °Bx, 0.15 K to 80 °Bx, 0.35 K to 85 °Bx (one source 1.0 K lower).

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.pressure_from_boiling(42, deg_c(100))
    kpa(97.1683207426445)
    """
@overload
def pressure_from_boiling(brix: float | Column | Quantity[_u.Brix, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure, Column]: ...
@overload
def pressure_from_boiling(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Pressure, NDArray[np.float64]]: ...

@overload
def heat_of_evaporation(brix: float | Quantity[_u.Brix, float], station: StationPressure, /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass]:
    """Heat that takes 1 kg of water as vapour out of a solution that boils already under the `station` pressure.

    Parameters
    ----------
    brix : float
        0 to 85 °Bx.
    station : StationPressure
        50 to 110 kPa.
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
    Source: enthalpies of IAPWS SR1-86(1992) and the heat of dilution of the water activity.

    Accuracy: 0.3 kJ/kg of the water, 20 % of the heat of dilution (12.8 kJ/kg at 66.9 °Bx).

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.air import StationPressure
    >>> from sugaring.units import kpa
    >>> sucrose.heat_of_evaporation(42, StationPressure.measured(kpa(86)))
    kj_per_kg(2268.606567552968)
    """
@overload
def heat_of_evaporation(brix: float | Column | Quantity[_u.Brix, float | Column], station: StationPressure | StationPressures[Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass, Column]: ...
@overload
def heat_of_evaporation(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], station: StationPressure | StationPressures[Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass, NDArray[np.float64]]: ...

@overload
def excess_enthalpy_of_water(brix: float | Quantity[_u.Brix, float], temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass]:
    """Excess enthalpy of the water in a sucrose solution over pure water's, per mass of water: the heat of dilution, which is negative.

    Parameters
    ----------
    brix : float
        0 to 85 °Bx.
    temperature : Quantity[Temperature]
        -15 to 132 °C.
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
    Source: slope of the water activity with temperature, fitted to the heats of dilution of Gucker, Pickard and Planck 1939 (from memory).

    Accuracy: 20 % to 2 mol/kg (40 °Bx); no data above.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.excess_enthalpy_of_water(42, deg_c(73))
    kj_per_kg(-2.2665802374014143)
    """
@overload
def excess_enthalpy_of_water(brix: float | Column | Quantity[_u.Brix, float | Column], temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass, Column]: ...
@overload
def excess_enthalpy_of_water(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.EnergyPerMass, NDArray[np.float64]]: ...

@overload
def freezing_temperature(brix: float | Quantity[_u.Brix, float], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Temperature]:
    """Temperature at which ice begins to form in a sucrose solution.

    Parameters
    ----------
    brix : float
        0 to 60 °Bx.
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
    Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).

    Accuracy: 0.02 K to 15 °Bx, 0.05 K to 36 °Bx, 0.10 K to 57 °Bx.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> sucrose.freezing_temperature(30)
    deg_c(-2.63863296000153)
    """
@overload
def freezing_temperature(brix: float | Column | Quantity[_u.Brix, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Temperature, Column]: ...
@overload
def freezing_temperature(brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Temperature, NDArray[np.float64]]: ...

@overload
def brix_from_freezing(temperature: Quantity[_u.Temperature], /, *, on_error: Literal["nan"] | None = None) -> float:
    """°Brix of the liquid that is left under ice at `temperature`: the inverse of `freezing_temperature`.

    Parameters
    ----------
    temperature : Quantity[Temperature]
        -11.666 to 0 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        In °Bx; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).

    Accuracy: 0.02 K to 15 °Bx, 0.05 K to 36 °Bx, 0.10 K to 57 °Bx.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import deg_c
    >>> sucrose.brix_from_freezing(deg_c(-5.8))
    45.77787704810847
    """
@overload
def brix_from_freezing(temperature: Quantity[_u.Temperature, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def brix_from_freezing(temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...
