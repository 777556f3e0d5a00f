"""What ``sugaring.finish`` has beside functions of numbers and the finishing point."""

from __future__ import annotations

from typing import NamedTuple

from . import _sugaring
from ._amounts import Measured

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


class Legality(NamedTuple):
    """How syrup stands to a rule."""

    legal: bool
    """Whether what was measured lies within the limits, themselves included."""
    density: str
    """On which side of them it lies."""
    brix: float
    margin: float
    """How far above the least, in °Bx; below it negative."""
    probability: float
    """Probability that the truth lies within."""
    too_thin: float
    too_thick: float
    jurisdiction: str
    law: str
    advice: str
    text: str
    """The same in a sentence."""
    room: float | None = None
    """How far below the most, where the rule has one."""


def legal(brix: Measured[Any], jurisdiction: str, /) -> Legality:
    """Whether syrup is lawful, by how much, and how surely: data that was seen on a day, and no advice.

    Examples
    --------
    >>> from sugaring import finish
    >>> from sugaring.units import measured
    >>> syrup = finish.legal(measured(67.1, 0.15), "vermont")
    >>> print(syrup.legal, f"{syrup.margin:.1f} {syrup.probability:.2f}")
    True 0.2 0.91
    """
    if not isinstance(brix, Measured):
        raise _sugaring._foreign("brix", f"<{type(brix).__name__}>", "a value such as measured(66.9, 0.15)")
    given = {"value": brix.value, "uncertainty": brix.uncertainty}
    return Legality(**_sugaring._ask("finish.legal", {"brix": given, "jurisdiction": jurisdiction}))


for _made in (Legality, legal):
    _made.__module__ = "sugaring.finish"
del _made
