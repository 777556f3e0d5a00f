from types import GenericAlias
from typing import Any, Generic, overload

from typing_extensions import TypeVar

from . import units as _u
from ._sugaring import Quantity

_D = TypeVar("_D")
# Each by name: a bound would take a volume with a mass as two amounts.
_A = TypeVar(
    "_A",
    _u.Volume,
    _u.Mass,
    _u.TemperatureDifference,
    _u.Pressure,
    _u.Length,
    _u.Area,
    _u.Time,
    _u.Flow,
    _u.MassFlow,
    _u.Power,
    _u.Energy,
    _u.Density,
    _u.Concentration,
    _u.EnergyPerMass,
    _u.SpecificHeat,
    _u.Viscosity,
    _u.Conductivity,
    _u.Permeance,
    _u.PerKelvin,
    _u.Ratio,
    _u.Brix,
    _u.Count,
)

class Measured(Generic[_D]):
    __slots__ = ("uncertainty", "value")
    __match_args__ = ("value", "uncertainty")
    @overload
    def __init__(self, value: Quantity[_D], uncertainty: Quantity[Any]) -> None: ...
    @overload
    def __init__(self, value: float, uncertainty: float) -> None: ...
    @property
    def value(self) -> Quantity[_D] | float: ...
    @classmethod
    def __class_getitem__(cls, item: Any) -> GenericAlias: ...
    @property
    def uncertainty(self) -> Quantity[Any] | float: ...
    def __eq__(self, other: object) -> bool: ...
    def __hash__(self) -> int: ...

class Price:
    __slots__ = ("amount", "per")
    __match_args__ = ("amount", "per")
    def __init__(self, amount: float, per: Quantity[Any]) -> None: ...
    @property
    def amount(self) -> float: ...
    @property
    def per(self) -> Quantity[Any]: ...
    def __eq__(self, other: object) -> bool: ...
    def __hash__(self) -> int: ...

@overload
def measured(
    value: Quantity[_u.Temperature], uncertainty: Quantity[_u.TemperatureDifference], /
) -> Measured[_u.Temperature]: ...
@overload
def measured(
    value: Quantity[_u.GaugePressure], uncertainty: Quantity[_u.Pressure], /
) -> Measured[_u.GaugePressure]: ...
@overload
def measured(value: Quantity[_A], uncertainty: Quantity[_A], /) -> Measured[_A]: ...
@overload
def measured(value: float, uncertainty: float, /) -> Measured[Any]: ...
def price(amount: float, per: Quantity[Any], /) -> Price: ...
