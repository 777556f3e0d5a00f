"""What the records of a plan have in common."""

from __future__ import annotations

import json
from typing import Any, ClassVar, Generic, TypeAlias, TypeVar, overload

from . import units as _u
from ._sugaring import Quantity, Unit

D = TypeVar("D")
A = TypeVar("A", bound=_u.Amount)

#: What makes a field of JSON's value: a record, a quantity, a list of them, or nothing.
Shape: TypeAlias = Any

_UNITS: dict[str, Unit[Any]] = {}


def unit_of(symbol: str) -> Unit[Any]:
    """The unit word of a symbol that the core wrote."""
    if not _UNITS:
        words = (getattr(_u, name) for name in _u.__all__)
        _UNITS.update((word.symbol, word) for word in words if isinstance(word, Unit))
    return _UNITS[symbol]


def quantity(data: dict[str, Any]) -> Quantity[Any]:
    """The quantity of ``{"value": 20, "unit": "°C"}``."""
    return unit_of(data["unit"])(data["value"])


def copied(data: dict[str, Any]) -> dict[str, Any]:
    """JSON's own values, for a reader to do with as they like."""
    copy: dict[str, Any] = json.loads(json.dumps(data))
    return copy


class Record:
    """Named, read-only fields of a plan; a field without an answer is None."""

    _shapes: ClassVar[dict[str, Shape]] = {}
    _data: dict[str, Any]

    def __init__(self, data: dict[str, Any]) -> None:
        fields = self.__dict__
        fields["_data"] = data
        for name, shape in self._shapes.items():
            fields[name] = _shaped(shape, data.get(name))

    def to_dict(self) -> dict[str, Any]:
        """The record as JSON's own values: a copy."""
        return copied(self._data)

    def __setattr__(self, name: str, value: object) -> None:
        raise AttributeError(f"a plan is read-only: {name}")

    def __delattr__(self, name: str) -> None:
        raise AttributeError(f"a plan is read-only: {name}")

    def __eq__(self, other: object) -> bool:
        return self._data == other._data if isinstance(other, type(self)) else NotImplemented

    def __hash__(self) -> int:
        return hash(json.dumps(self._data))

    def __repr__(self) -> str:
        fields = ((name, getattr(self, name)) for name in self._shapes)
        given = ", ".join(f"{name}={value!r}" for name, value in fields if value is not None and value != ())
        return f"{type(self).__name__}({given})"

    def __reduce__(self) -> tuple[Any, ...]:
        return (type(self), (self._data,))


class Estimate(Record, Generic[D]):
    """A number of a plan in its unit, with the range that holds 95 % of the draws."""

    value: float
    """The number, in `unit`."""
    unit: Unit[D]
    """Its unit."""
    low: float | None
    """Lower end of the range, in `unit`; None where no draws were asked for."""
    high: float | None
    """Upper end of the range, in `unit`."""
    median: float | None
    """Middle of the draws, where the number itself sits at one end of its range."""

    def __init__(self, data: dict[str, Any]) -> None:
        super().__init__(data)
        fields = self.__dict__
        for name in ("value", "low", "high", "median"):
            fields[name] = _shaped(None, data.get(name))
        fields["unit"] = unit_of(data["unit"])

    @property
    def quantity(self) -> Quantity[D]:
        """The number with its unit."""
        return self.unit(self.value)

    def to(self, unit: Unit[D], /) -> float:
        """The number in another unit."""
        return self.quantity.to(unit)

    def __str__(self) -> str:
        if self.low is None or self.high is None:
            return f"{self.value:.4g} {self.unit.symbol}"
        return f"{self.value:.4g} {self.unit.symbol} ({self.low:.4g} to {self.high:.4g})"

    def __repr__(self) -> str:
        return f"<{type(self).__name__} {self}>"


@overload
def _shaped(shape: None, value: int | float | None) -> float | None: ...
@overload
def _shaped(shape: Shape, value: Any) -> Any: ...
def _shaped(shape: Shape, value: Any) -> Any:
    if isinstance(shape, list):
        return tuple(_shaped(shape[0], item) for item in value or ())
    if value is None or shape is None:
        return value
    return shape(value)
