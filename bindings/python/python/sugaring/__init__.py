"""Typed, unit-safe calculations for making maple syrup: sap, membrane, evaporator, finish, bottles.

Examples
--------
>>> from sugaring import sucrose
>>> from sugaring.units import deg_c, kg_per_m3
>>> print(f"{sucrose.density(66.9, deg_c(20)).to(kg_per_m3):.2f}")
1328.19
"""

from __future__ import annotations

import sys

TYPE_CHECKING = False
if TYPE_CHECKING:
    from . import air, catalogue, day, finish, instrument, membrane, sucrose, uncertainty, water

try:
    from . import _sugaring
except ImportError as _error:
    from ._missing import explained as _explained

    raise _explained(_error) from _error

from . import errors
from .errors import SugaringError

for _name in ("water", "air", "sucrose", "membrane", "finish", "uncertainty"):
    sys.modules[f"{__name__}.{_name}"] = globals()[_name] = getattr(_sugaring, _name)
del _name

from . import units  # noqa: E402
from ._sugaring import Quantity, Unit  # noqa: E402

__version__: str = _sugaring.__version__

__all__ = [
    "Quantity",
    "SugaringError",
    "Unit",
    "air",
    "catalogue",
    "day",
    "errors",
    "finish",
    "instrument",
    "membrane",
    "sucrose",
    "uncertainty",
    "units",
    "water",
]


if not TYPE_CHECKING:

    def __getattr__(name: str) -> object:
        """`day`, `catalogue` and `instrument` are read when they are first used: importing the package stays quick."""
        if name in ("day", "catalogue", "instrument"):
            from importlib import import_module

            return import_module(f"{__name__}.{name}")
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")


def _beside(name: str) -> object:
    """What ``finish`` has in Python is read when it is first used, as well."""
    if name in ("Legality", "legal"):
        from . import _finish

        return getattr(_finish, name)
    raise AttributeError(f"module 'sugaring.finish' has no attribute {name!r}")


setattr(_sugaring.finish, "__getattr__", _beside)
getattr(_sugaring.finish, "__all__").extend(("Legality", "legal"))


def __dir__() -> list[str]:
    return sorted({*globals(), *__all__})
