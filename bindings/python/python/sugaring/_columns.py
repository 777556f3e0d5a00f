"""Columns through the functions: arrays, Series and expressions by ufuncs, lists where there is no NumPy.

A column stays what it is: its own `__array_ufunc__` carries the call. The ufuncs are made when they are first needed
and found here by name, so that engines that send work elsewhere can pickle them.
"""

from __future__ import annotations

from . import _sugaring
from ._take import _numpy

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

_ROWS = _sugaring._rows()
_INDEX = {f"{module}_{name}": index for index, (module, name, _) in enumerate(_ROWS)}
_NAMES = list(_INDEX)
_ARGUMENTS = [arguments for _, _, arguments in _ROWS]


def __getattr__(name: str) -> Any:
    if name == "convert_":
        made = _sugaring._conversion()
    elif name in _INDEX:
        made = _sugaring._ufunc(_INDEX[name])
    else:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    globals()[name] = made
    return made


def call(index: int, numbers: tuple[Any, ...], units: tuple[float, ...], nan: bool) -> Any:
    """The function `index` of columns and numbers, each in the unit at its place; NaN where refused, or an error."""
    numpy = _numpy()
    if numpy is None:
        return _listwise(index, numbers, list(map(int, units)), nan)
    _sugaring._tally()
    result = _applied(_named(_NAMES[index]), numbers, units, _ARGUMENTS[index])
    lanes, refused = _sugaring._tally()
    if nan:
        return result
    if lanes == 0 and _is_lazy(result):
        raise _sugaring._missing("on_error", 'a column that is computed later needs on_error="nan"')
    if refused:
        _raise_first(numpy, index, numbers, list(map(int, units)), result)
    return result


def convert(column: Any, source: float, target: float) -> Any:
    """A column from one unit into another."""
    if _numpy() is None:
        return _mapped(column, lambda number: _sugaring._converted(number, int(source), int(target)))
    return _applied(_named("convert_"), (column,), (source, target), ["value"])


def _named(name: str) -> Any:
    return globals().get(name) or __getattr__(name)


def _applied(ufunc: Any, numbers: tuple[Any, ...], units: tuple[float, ...], arguments: list[str]) -> Any:
    try:
        return ufunc(*numbers, *units)
    except (TypeError, ValueError) as error:
        shapes = [(name, getattr(x, "shape", None)) for name, x in zip(arguments, numbers)]
        known = [(name, shape) for name, shape in shapes if shape]
        if isinstance(error, ValueError) and len(known) > 1:
            (one, first), (two, second) = known[:2]
            raise _sugaring._misfit(two, f"a column of shape {second}", f"{one} of shape {first}") from error
        kinds = [f"<{type(x).__name__}>" for x in numbers if not isinstance(x, float)]
        raise _sugaring._foreign(arguments[0], ", ".join(kinds), "a column of numbers") from error


def _is_lazy(result: Any) -> bool:
    """Whether nothing was computed although there is something to compute."""
    try:
        return len(result) > 0
    except TypeError:
        return True


def _raise_first(numpy: Any, index: int, numbers: tuple[Any, ...], places: list[int], result: Any) -> None:
    """The error of the first refused lane; a masked lane is nobody's error."""
    holes = numpy.isnan(numpy.asarray(result, dtype="float64"))
    if isinstance(result, numpy.ma.MaskedArray):
        holes &= ~numpy.ma.getmaskarray(result)
    refused = int(holes.sum())
    if not refused:
        return
    shape = holes.shape
    columns = [numpy.broadcast_to(_filled(numpy, column), shape) for column in numbers]
    for first in numpy.argwhere(holes):
        place = tuple(int(part) for part in first)
        lane = [float(column[place]) for column in columns]
        shown = place[0] if len(place) == 1 else place
        error = _sugaring._refusal(index, lane, places, shown, refused, int(holes.size))
        if error is not None:
            raise error


def _filled(numpy: Any, column: Any) -> Any:
    return numpy.asarray(column, dtype="float64")


def _listwise(index: int, numbers: tuple[Any, ...], places: list[int], nan: bool) -> list[Any]:
    """Lists of one length, and lists of lists of one shape, without NumPy."""
    columns = [column for column in numbers if isinstance(column, list)]
    length = len(columns[0])
    for name, column in zip(_ARGUMENTS[index], numbers):
        if isinstance(column, list) and len(column) != length:
            first = next(name for name, column in zip(_ARGUMENTS[index], numbers) if isinstance(column, list))
            raise _sugaring._misfit(name, f"a list of {len(column)}", f"{first} of {length}")
    rows = [[column[lane] if isinstance(column, list) else column for column in numbers] for lane in range(length)]
    if any(isinstance(part, list) for row in rows for part in row):
        return [_listwise(index, tuple(row), places, nan) for row in rows]
    results = [_sugaring._lane(index, row, places) for row in rows]
    refused = [lane for lane, result in enumerate(results) if result != result]
    if refused and not nan:
        error = _sugaring._refusal(index, rows[refused[0]], places, refused[0], len(refused), length)
        if error is not None:
            raise error
    return results


def _mapped(column: Any, made: Any) -> Any:
    return [_mapped(item, made) for item in column] if isinstance(column, list) else made(column)
