"""What there is: functions with their limits and sources, units, kinds of error, schemas, the version of the results.

Examples
--------
>>> from sugaring import catalogue
>>> density = next(f for f in catalogue.functions() if (f.module, f.name) == ("sucrose", "density"))
>>> density.relation.inputs[0]
Range(argument='brix', unit=brix, low=0.0, high=85.0, low_si=0.0, high_si=85.0)
>>> catalogue.schema("day_inputs")["title"]
'DayInputs'
"""

from __future__ import annotations

import json
from importlib.resources import files
from typing import Any, NamedTuple

from . import _sugaring
from . import units as _u
from ._sugaring import Quantity, Unit

__all__ = [
    "Argument",
    "Function",
    "InstrumentRow",
    "JurisdictionRow",
    "KindRow",
    "Range",
    "Relation",
    "Typical",
    "error_kinds",
    "functions",
    "instruments",
    "jurisdictions",
    "numbers",
    "relations",
    "schema",
    "schemas",
    "units",
]


class Argument(NamedTuple):
    """An argument of a function."""

    name: str
    kind: str
    """What it measures, or ``station_pressure``."""


class Range(NamedTuple):
    """The inclusive limits of an argument, in the unit people read and in SI."""

    argument: str
    unit: Unit[Any]
    low: float
    high: float
    low_si: float
    high_si: float


class Relation(NamedTuple):
    """What a function covers."""

    name: str
    inputs: tuple[Range, ...]
    output: Unit[Any]
    source: str
    source_kind: str
    """``published``, ``derived``, ``common_practice`` or ``from_memory``."""
    accuracy: str


class KindRow(NamedTuple):
    """A kind of error."""

    name: str
    meaning: str
    begins: str
    """How its text begins, with … for what differs."""


class JurisdictionRow(NamedTuple):
    """What density is lawful where: data that was seen on a day, and no advice."""

    key: str
    name: str
    law: str
    min: float
    """The least, °Bx, inclusive."""
    max: float | None
    """The most, °Bx, inclusive, where the rule has one."""
    reference_temperature: Quantity[_u.Temperature] | None
    """The temperature that the rule names; it matters for the instrument alone."""
    has_chart: bool
    """Whether it prescribes a chart: ``instrument.chart``."""
    note: str
    seen: str
    """When the text was seen; what it said later is not known."""
    source: str


class Typical(NamedTuple):
    """A usual size, from ``low`` to ``high``; both the same where there is one figure."""

    low: float
    high: float
    unit: str


class InstrumentRow(NamedTuple):
    """What an instrument at hand usually shows, and how surely: what to take where nobody tested it."""

    key: str
    name: str
    uncertainty: Typical
    """One standard deviation of what it says."""
    of: str
    """What an uncertainty is counted in: its own unit, or a share."""
    source: str
    resolution: Typical | None = None
    """The steps in which it is read, where there is a usual one."""


class Function(NamedTuple):
    """A function of numbers."""

    module: str
    name: str
    summary: str
    result: str
    arguments: tuple[Argument, ...]
    relation: Relation


_LISTS: dict[str, Any] = _sugaring._catalogue()


def functions() -> tuple[Function, ...]:
    """The public functions of numbers, by module."""
    made = []
    for (module, name, summary, result), arguments, (path, inputs, output, *said) in _LISTS["functions"]:
        ranges = tuple(Range(argument, _sugaring._unit(word), *limits) for argument, word, *limits in inputs)
        relation = Relation(path, ranges, _sugaring._unit(output), *said)
        made.append(Function(module, name, summary, result, tuple(Argument(*part) for part in arguments), relation))
    return tuple(made)


def relations() -> tuple[Relation, ...]:
    """What each of the functions covers."""
    return tuple(function.relation for function in functions())


def units() -> tuple[Unit[Any], ...]:
    """Every unit word, by dimension."""
    return tuple(_sugaring._unit(word) for word in _LISTS["units"])


def jurisdictions() -> tuple[JurisdictionRow, ...]:
    """What density is lawful where; check the local rule."""
    return tuple(JurisdictionRow(**row) for row in _sugaring._ask("catalogue.jurisdictions", {}))


def instruments() -> tuple[InstrumentRow, ...]:
    """What instruments at hand usually show, and how surely."""
    sizes = ("resolution", "uncertainty")
    made = []
    for row in _sugaring._ask("catalogue.instruments", {}):
        fields: dict[str, Any] = {key: Typical(**value) if key in sizes else value for key, value in row.items()}
        made.append(InstrumentRow(**fields))
    return tuple(made)


def error_kinds() -> tuple[KindRow, ...]:
    """Every kind of error; the last is made here alone."""
    internal = KindRow("internal", "A fault in sugaring itself: please report it.", "a fault in sugaring")
    return (*(KindRow(*row) for row in _LISTS["error_kinds"]), internal)


def numbers() -> str:
    """Version of the results: the same inputs give the same bits under the same version."""
    version: str = _LISTS["numbers"]
    return version


def schemas() -> tuple[str, ...]:
    """The names of the JSON Schemas, each with its content by `schema`."""
    return tuple(_LISTS["schemas"])


def schema(name: str, /) -> dict[str, Any]:
    """The JSON Schema ``day_inputs`` or ``day_plan``."""
    known = _LISTS["schemas"]
    if name not in known:
        raise _sugaring._unknown_name("schema", str(name), known)
    read: dict[str, Any] = json.loads((files(__package__) / "schema" / f"{name}.json").read_text("utf-8"))
    return read
