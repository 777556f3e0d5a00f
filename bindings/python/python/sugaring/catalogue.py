"""What there is: functions with their limits and sources, units, kinds of error, schemas, the version of the results.

Examples
--------
>>> from sugaring import catalogue
>>> density = next(f for f in catalogue.functions() if (f.module, f.name) == ("sucrose", "density"))
>>> density.relation.inputs[0]
Range(argument='brix', unit=brix, low=0.0, high=85.0)
>>> catalogue.schema("day_inputs")["title"]
'DayInputs'
"""

from __future__ import annotations

import json
from importlib.resources import files
from typing import Any, NamedTuple

from . import _sugaring
from ._sugaring import Unit

__all__ = [
    "Argument",
    "Function",
    "Range",
    "Relation",
    "error_kinds",
    "functions",
    "numbers",
    "relations",
    "schema",
    "units",
]


class Argument(NamedTuple):
    """An argument of a function."""

    name: str
    kind: str
    """What it measures, or ``station_pressure``."""


class Range(NamedTuple):
    """The inclusive limits of an argument."""

    argument: str
    unit: Unit[Any]
    low: float
    high: float


class Relation(NamedTuple):
    """What a function covers."""

    name: str
    inputs: tuple[Range, ...]
    output: Unit[Any]
    source: str
    accuracy: str


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
    for (module, name, summary, result), arguments, (path, inputs, output, source, accuracy) in _LISTS["functions"]:
        ranges = tuple(Range(argument, _sugaring._unit(word), low, high) for argument, word, low, high in inputs)
        relation = Relation(path, ranges, _sugaring._unit(output), source, accuracy)
        made.append(Function(module, name, summary, result, tuple(Argument(*part) for part in arguments), relation))
    return tuple(made)


def relations() -> tuple[Relation, ...]:
    """What each of the functions covers."""
    return tuple(function.relation for function in functions())


def units() -> tuple[Unit[Any], ...]:
    """Every unit word, by dimension."""
    return tuple(_sugaring._unit(word) for word in _LISTS["units"])


def error_kinds() -> tuple[str, ...]:
    """Every kind of error."""
    return (*_LISTS["error_kinds"], "internal")


def numbers() -> str:
    """Version of the results: the same inputs give the same bits under the same version."""
    version: str = _LISTS["numbers"]
    return version


def schema(name: str, /) -> dict[str, Any]:
    """The JSON Schema ``day_inputs`` or ``day_plan``."""
    known = ["day_inputs", "day_plan"]
    if name not in known:
        raise _sugaring._unknown_name("schema", str(name), known)
    read: dict[str, Any] = json.loads((files(__package__) / "schema" / f"{name}.json").read_text("utf-8"))
    return read
