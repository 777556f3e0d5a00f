"""Errors: one class a kind, all of them ``SugaringError``, which is a ``ValueError``.

Examples
--------
>>> from sugaring import SugaringError, sucrose
>>> from sugaring.units import deg_c
>>> try:
...     sucrose.density(66.9, deg_c(180))
... except SugaringError as error:
...     print(error.kind, error.argument, error.value, error.range)
out_of_range temperature 180.0 (0.0, 100.0)
"""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

__all__ = [
    "Cancelled",
    "Inconsistent",
    "Internal",
    "Missing",
    "NoConvergence",
    "NotFinite",
    "OutOfRange",
    "SugaringError",
    "Unreachable",
    "Unreadable",
    "UnknownName",
    "UnknownUnit",
    "WrongDimension",
]


class SugaringError(ValueError):
    """An input that cannot be computed with, a goal that cannot be reached, or work that was stopped."""

    kind: str = ""
    """What went wrong, as one word."""
    argument: str
    """The offending argument or the path of the offending input, such as ``membrane.pressure``."""
    value: float | None
    """The offending number, in `unit`; None where the offence is no number."""
    unit: str
    """Symbol of the unit of value and range; empty for plain numbers."""
    range: tuple[float, float] | None
    """The inclusive limits, in `unit`."""
    hint: str | None
    """What to do about it."""
    reference: str | None
    """Where the limit comes from."""
    index: int | tuple[int, ...] | None
    """Of a column: where the first refused value stands."""
    count: int | None
    """Of a column: how many values were refused."""

    def __init__(
        self,
        message: str = "",
        *,
        argument: str = "",
        value: float | None = None,
        unit: str = "",
        range: tuple[float, float] | None = None,
        hint: str | None = None,
        reference: str | None = None,
        index: int | tuple[int, ...] | None = None,
        count: int | None = None,
    ) -> None:
        super().__init__(message)
        self.argument = argument
        self.value = value
        self.unit = unit
        self.range = range
        self.hint = hint
        self.reference = reference
        self.index = index
        self.count = count

    def __reduce__(self) -> tuple[Any, ...]:
        return (_restored, (type(self), str(self), dict(self.__dict__)))


class OutOfRange(SugaringError):
    """The value lies outside the range of the relation or input."""

    kind = "out_of_range"


class NotFinite(SugaringError):
    """NaN or infinite."""

    kind = "not_finite"


class WrongDimension(SugaringError):
    """A quantity of another kind, or a bare number where a unit is needed."""

    kind = "wrong_dimension"


class UnknownUnit(SugaringError):
    """A text with a unit nobody knows."""

    kind = "unknown_unit"


class UnknownName(SugaringError):
    """A key, fuel, species, instrument or choice nobody knows."""

    kind = "unknown_name"


class Missing(SugaringError):
    """A required input is absent."""

    kind = "missing"


class Unreadable(SugaringError):
    """Something that is no number with a unit, or JSON that is no JSON."""

    kind = "unreadable"


class Inconsistent(SugaringError):
    """Two inputs contradict one another."""

    kind = "inconsistent"


class Unreachable(SugaringError):
    """The goal cannot be reached, or the limit not be kept."""

    kind = "unreachable"


class NoConvergence(SugaringError):
    """A solver did not settle."""

    kind = "no_convergence"


class Cancelled(SugaringError):
    """The caller stopped the work."""

    kind = "cancelled"


class Internal(SugaringError):
    """A fault in sugaring itself: please report it."""

    kind = "internal"


_KINDS: dict[str, type[SugaringError]] = {known.kind: known for known in SugaringError.__subclasses__()}


def _made(
    kind: str,
    message: str,
    argument: str,
    value: float | None,
    unit: str,
    range: tuple[float, float] | None,
    hint: str | None,
    reference: str | None,
    index: int | tuple[int, ...] | None,
    count: tuple[int, int] | None,
) -> SugaringError:
    """The error of the compiled part; in a column with its place, `count` being how many of how many."""
    refused = None
    if index is not None and count is not None:
        refused, lanes = count
        place = ", ".join(map(str, index)) if isinstance(index, tuple) else index
        message = f"{message} (index {place}; {refused} of {lanes})"
    return _KINDS[kind](
        message,
        argument=argument,
        value=value,
        unit=unit,
        range=range,
        hint=hint,
        reference=reference,
        index=index,
        count=refused,
    )


def _restored(made: type[SugaringError], message: str, fields: dict[str, Any]) -> SugaringError:
    error = made(message)
    error.__dict__.update(fields)
    return error
