"""The day's plan, from sap to bottles.

Examples
--------
>>> from sugaring import day
>>> from sugaring.units import deg_c, litre, metre
>>> plan = day.plan({
...     "air": {"altitude": metre(410)},
...     "sap": [{"volume": litre(265), "brix": 1.98, "temperature": deg_c(4)}],
...     "evaporator": {"pan": {"length": metre(0.61), "width": metre(1.22)}},
...     "target": {"brix": 66.9},
...     "samples": 0,
... })
>>> print(f"{plan.totals.to_finish.volume.to(litre):.1f} L at {plan.totals.to_finish.brix:.1f} °Bx")
18.6 L at 26.6 °Bx
"""

from __future__ import annotations

import json
from html import escape
from typing import TYPE_CHECKING, Any

from . import _records, _sugaring
from ._record import Estimate, Record

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping
    from typing import Literal

    from ._inputs import *  # noqa: F403
    from ._records import *  # noqa: F403
    from ._inputs import DayInputs as DayInputs

__all__ = ["DayInputs", "DayPlan", "Estimate", "Record", "plan"]


class DayPlan(_records.PlanRecord):
    """A planned day: steps in order, amounts, hours, fuel, marks, ranges, remarks and what it rests on.

    ``str`` and ``print`` give the page to carry into the sugarhouse. Fields are those of the JSON; figures carry their
    range: ``plan.steps[0].duration.low``, ``plan.totals.syrup.volume.to(litre)``.
    """

    def __init__(self, text: str, pages: Mapping[str, str]) -> None:
        super().__init__(json.loads(text))
        self.__dict__.update(_text=text, _pages=dict(pages))

    def page(self, *, system: Literal["as_given", "us", "metric"] = "as_given") -> str:
        """The page, in the units of most inputs, in US or in metric ones."""
        found = self.__dict__["_pages"].get(system) if isinstance(system, str) else None
        if found is None:
            raise _sugaring._unknown_name("system", str(system), ["as_given", "us", "metric"])
        page: str = found
        return page

    def to_json(self) -> str:
        """The plan as JSON on one line."""
        text: str = self.__dict__["_text"]
        return text

    def __str__(self) -> str:
        return self.page()

    def __repr__(self) -> str:
        steps = ", ".join(step.kind for step in self.steps)
        return f"<DayPlan {self.title or ''}: {steps}>".replace(" :", ":")

    def __eq__(self, other: object) -> bool:
        return self.to_json() == other.to_json() if isinstance(other, DayPlan) else NotImplemented

    def __hash__(self) -> int:
        return hash(self.to_json())

    def __reduce__(self) -> tuple[Any, ...]:
        return (DayPlan, (self.to_json(), self.__dict__["_pages"]))

    def _repr_html_(self) -> str:
        return f"<pre>{escape(self.page())}</pre>"

    def _repr_mimebundle_(self, include: object = None, exclude: object = None) -> dict[str, Any]:
        return {"text/plain": self.page(), "text/html": self._repr_html_(), "application/json": self.to_dict()}


def plan(inputs: DayInputs | str, /, *, progress: Callable[[float], object] | None = None) -> DayPlan:
    """The day's plan: sap through membrane, pan and finish into bottles, with what each step needs.

    Parameters
    ----------
    inputs : DayInputs or str
        A dict with quantities, measured values, prices, texts such as ``"170 L"`` and plain numbers; or JSON text.
    progress : callable, optional
        Called with the share done, 0 to 1, about a hundred times; returning False stops the work. Ctrl-C stops it
        with or without.

    Returns
    -------
    DayPlan

    Raises
    ------
    SugaringError
        The first input, in the order of the keys, that is out of range, missing or inconsistent, with its path; an
        aim that the rig cannot reach; a depth that the pan cannot keep; ``Cancelled`` when `progress` said so.
    """
    if progress is not None and not callable(progress):
        raise _sugaring._foreign("progress", f"<{type(progress).__name__}>", "a function of the share done")
    text, pages = _sugaring._plan(inputs, progress)
    return DayPlan(text, dict(pages))


if not TYPE_CHECKING:

    def __getattr__(name: str) -> Any:
        """The types of inputs and of a plan's parts, which only annotations need."""
        if name in _records.__all__:
            return getattr(_records, name)
        if not name.startswith("_"):
            from . import _inputs

            if name in _inputs.__all__:
                return getattr(_inputs, name)
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")


