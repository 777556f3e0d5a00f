"""Numbers, columns and quantities of other libraries, taken by what they can do."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import chain

from . import _sugaring

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

#: The SI units of dimensions, as pint, astropy and unyt read them.
_SI = {
    "volume": "m**3",
    "mass": "kg",
    "temperature": "K",
    "pressure": "Pa",
    "length": "m",
    "area": "m**2",
    "time": "s",
    "flow": "m**3/s",
    "mass_flow": "kg/s",
    "power": "W",
    "energy": "J",
    "density": "kg/m**3",
    "concentration": "kg/m**3",
    "energy_per_mass": "J/kg",
    "specific_heat": "J/(kg*K)",
    "viscosity": "Pa*s",
    "conductivity": "W/(m*K)",
    "per_kelvin": "1/K",
    "ratio": "",
}
#: Lists in lists: deeper than any array, or in a circle.
_DEEPEST = 32


def other(value: Any, name: str, dimension: str | None) -> Any:
    """A float, or a column, of what is neither float nor int; a column of SI numbers where `dimension` is a unit's.

    Anything else is refused with a typed error, also where the object's own methods raise.
    """
    try:
        found = _found(value, name, dimension)
    except _sugaring_error():
        raise
    except Exception as error:
        raise _sugaring._foreign(name, f"<{type(value).__name__}>", "a number") from error
    if found is None:
        raise _sugaring._unreadable(value, name, dimension, None, 0)
    return found


def plain(value: Any, name: str) -> float:
    """One number of a plan's data."""
    found = None if hasattr(value, "m_as") or hasattr(value, "to_value") else other(value, name, None)
    if not isinstance(found, float):
        raise _sugaring._foreign(name, f"<{type(value).__name__}>", "a number, a text, a quantity, a list or a dict")
    return found


def _found(value: Any, name: str, dimension: str | None) -> Any:
    if dimension is not None and (hasattr(value, "m_as") or hasattr(value, "to_value")):
        return _foreign(value, name, dimension)
    if dimension is not None and dimension not in ("brix", "ratio", "count"):
        return None  # It needs a unit.
    return _number(value, name)


def _number(value: Any, name: str) -> Any:
    if isinstance(value, (bool, str, bytes, bytearray, dict)) or value is None:
        return None
    if isinstance(value, Sequence):
        return _array(_list(value, name))
    dtype = getattr(value, "dtype", None)
    if getattr(value, "ndim", None) == 0:
        return None if _is_flag(dtype) else float(value)
    if getattr(value, "__array_ufunc__", None) is not None:
        return _column(value, name, dtype)
    if hasattr(value, "__array__"):
        from numpy import asarray

        array = asarray(value)
        return _column(array, name, array.dtype)
    if hasattr(value, "__float__") or hasattr(value, "__index__"):
        return None if _is_flag(dtype) else float(value)
    return None


def _column(value: Any, name: str, dtype: Any) -> Any:
    """An array-like of numbers; of objects only where each is a number or nothing."""
    kind = getattr(dtype, "kind", None)
    # Polars says of itself what is a number; a lazy expression has no type yet.
    is_numeric = getattr(dtype, "is_numeric", lambda: True)
    if _is_flag(dtype) or kind in ("U", "S", "M", "m", "V", "c", "T") or str(dtype) == "str" or not is_numeric():
        raise _sugaring._foreign(name, f"<{type(value).__name__} of {dtype}>", "a column of numbers")
    if kind == "O":
        _list(value.tolist(), name)
        return value.astype("float64")
    if kind == "f" and dtype.itemsize > 8:
        return value.astype("float64")
    return value


def _is_flag(dtype: Any) -> bool:
    return getattr(dtype, "kind", None) == "b" or str(dtype).lower() == "boolean"


def _list(value: Sequence[Any], name: str) -> list[Any]:
    """A list of floats and lists of them; nothing counts as NaN."""
    total = sum(1 for _ in _leaves(value, name, 0))
    index = iter(range(total))

    def taken(items: Sequence[Any]) -> list[Any]:
        return [taken(item) if _is_list(item) else leaf(item, next(index)) for item in items]

    def leaf(item: Any, place: int) -> float:
        if type(item) is float:
            return item
        if item is None or type(item).__name__ in ("NAType", "NaTType"):
            return float("nan")
        number = _number(item, name)
        if not isinstance(number, float):
            raise _sugaring._unreadable(item, name, None, place, total)
        return number

    return taken(value)


def _is_list(value: Any) -> bool:
    return isinstance(value, Sequence) and not isinstance(value, (str, bytes, bytearray))


def _leaves(value: Sequence[Any], name: str, depth: int) -> Iterator[Any]:
    if depth > _DEEPEST:
        raise _sugaring._foreign(name, "<nested lists>", f"a list of at most {_DEEPEST} levels")
    return chain.from_iterable(_leaves(item, name, depth + 1) if _is_list(item) else (item,) for item in value)


def _array(values: list[Any]) -> Any:
    """An array where there is NumPy, else the list."""
    numpy = _numpy()
    return values if numpy is None else numpy.array(values, dtype="float64")


def _foreign(value: Any, name: str, dimension: str) -> Any:
    """A quantity of pint, astropy or unyt, in SI."""
    unit = _SI.get(dimension)
    if unit is None:
        raise _sugaring._foreign(name, f"<{type(value).__name__}>", f"a {dimension.replace('_', ' ')} of sugaring")
    try:
        number = value.m_as(unit) if hasattr(value, "m_as") else _to_value(value, unit, dimension)
    except Exception as error:
        raise _sugaring._wrong_dimension(name, str(value), dimension) from error
    return number if isinstance(number, float) else _number(number, name)


def _to_value(value: Any, unit: str, dimension: str) -> Any:
    if dimension == "temperature" and type(value).__module__.startswith("astropy"):
        from astropy.units import temperature  # type: ignore[import-not-found, unused-ignore]

        return value.to_value(unit, equivalencies=temperature())
    return value.to_value(unit or "dimensionless")


def _numpy() -> Any:
    try:
        import numpy
    except ImportError:
        return None
    return numpy


def _sugaring_error() -> type[Exception]:
    from .errors import SugaringError

    return SugaringError
