"""Columns through an instrument: arrays and Series as they are, lists where there is no NumPy."""

from __future__ import annotations

from . import _sugaring
from ._sugaring import Quantity
from ._take import _numpy
from .units import kelvin

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

#: What an argument measures; a reading without a unit is one of the instrument's own marks.
_DIMENSIONS = {"temperature": "temperature", "prism": "temperature", "brix": "brix"}


def among(given: dict[str, Any]) -> bool:
    """Whether one of the arguments is a column."""
    return any(_is_column(value.value if isinstance(value, Quantity) else value) for value in given.values())


def or_nan(ask: Callable[[], Any], on_error: str | None) -> Any:
    """What `ask` answers; None where it refuses and NaN was wanted."""
    if not _is_lenient(on_error):
        return ask()
    from .errors import Internal, SugaringError

    try:
        return ask()
    except Internal:
        raise
    except SugaringError:
        return None


def through(instrument: Any, method: str, given: dict[str, Any], on_error: str | None) -> list[Any]:
    """The columns that `method` answers to columns and numbers; NaN where refused, or an error with its index."""
    lenient = _is_lenient(on_error)
    kind = type(instrument).__name__
    dimensions = {**_DIMENSIONS, "reading": "temperature"} if kind == "Thermometer" else _DIMENSIONS
    taken = {name: _sugaring._taken(value, name, dimensions.get(name)) for name, value in given.items()}
    numpy = _numpy()
    lanes, shape = _broadcast(numpy, taken)
    results = _sugaring._ask_lanes(f"{kind}.{method}", instrument._as_data(), lanes)
    refused = [lane for lane, result in enumerate(results[0]) if result != result]
    if refused and not lenient:
        names = zip(taken, lanes, strict=True)
        lane = {name: _argument(column[refused[0]], dimensions.get(name)) for name, column in names}
        place: Any = refused[0]
        if numpy is not None and len(shape) > 1:
            place = tuple(int(part) for part in numpy.unravel_index(place, shape))
        asked = {"instrument": instrument._as_data(), **lane}
        raise _sugaring._ask_refusal(f"{kind}.{method}", asked, place, len(refused), len(results[0]))
    columns = [_like(numpy, result, shape, taken) for result in results]
    if kind == "Thermometer":
        from .units import deg_c, delta_c

        words: list[Any] = [kelvin, delta_c]
        warm = [word(column) for word, column in zip(words, columns)]
        return [warm[0].shown_in(deg_c), *warm[1:]]
    return columns


def _is_lenient(on_error: str | None) -> bool:
    if on_error not in (None, "nan"):
        if isinstance(on_error, str):
            raise _sugaring._unknown_name("on_error", on_error, ["nan"])
        raise _sugaring._foreign("on_error", f"<{type(on_error).__name__}>", '"nan"')
    return on_error is not None


def _is_column(value: Any) -> bool:
    if isinstance(value, (list, tuple)):
        return True
    return getattr(value, "ndim", None) != 0 and hasattr(value, "__array_ufunc__")


def _argument(si: float, dimension: str | None) -> Any:
    return kelvin(si) if dimension == "temperature" else si


def _broadcast(numpy: Any, taken: dict[str, Any]) -> tuple[list[list[float]], tuple[int, ...]]:
    """Flat lists of one length, and the shape they have."""
    if numpy is None:
        lengths = {name: len(column) for name, column in taken.items() if isinstance(column, list)}
        (first, length), *others = lengths.items()
        for name, other in others:
            if other != length:
                raise _sugaring._misfit(name, f"a list of {other}", f"{first} of {length}")
        return [c if isinstance(c, list) else [c] * length for c in taken.values()], (length,)
    arrays = {name: numpy.asarray(column, dtype="float64") for name, column in taken.items()}
    try:
        full = numpy.broadcast_arrays(*arrays.values())
    except ValueError as error:
        (one, first), (two, second) = list(arrays.items())[:2]
        message = (two, f"a column of shape {second.shape}", f"{one} of shape {first.shape}")
        raise _sugaring._misfit(*message) from error
    return [array.ravel().tolist() for array in full], full[0].shape


def _like(numpy: Any, result: list[float], shape: tuple[int, ...], taken: dict[str, Any]) -> Any:
    """A result as the columns it comes of: a Series keeps its index."""
    if numpy is None:
        return result
    array = numpy.asarray(result, dtype="float64").reshape(shape)
    for column in taken.values():
        if not isinstance(column, (float, numpy.ndarray)) or isinstance(column, numpy.ma.MaskedArray):
            # Nothing of each lane, and the result added to it; where the lane is no number, it was refused.
            return numpy.add(numpy.multiply(column, 0.0), array)
    return array
