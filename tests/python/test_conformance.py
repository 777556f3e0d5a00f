"""The vectors of ``tests/conformance``, judged to the last bit: one call a line, then each function as columns."""

import json
import math
import struct
from collections import Counter, defaultdict
from pathlib import Path

import numpy as np
import pytest

import sugaring
from sugaring import SugaringError, catalogue, day, sucrose, units
from sugaring.air import StationPressure

TOP = Path(__file__).resolve().parents[2]
FOLDER = TOP / "tests" / "conformance"
FUNCTIONS = {f"{row.module}.{row.name}": row for row in catalogue.functions()}


def number(bits):
    return struct.unpack(">d", bytes.fromhex(bits))[0]


def bits(value):
    return "7ff8000000000000" if math.isnan(value) else struct.pack(">d", value).hex()


# The SI word of each dimension, as the core's `Unit::base` has it.
SI = """cubic_metre kg kelvin delta_c pa pa_gauge metre square_metre seconds cubic_metre_per_s kg_per_s watt joule
kg_per_m3 gram_per_litre joule_per_kg joule_per_kg_k pascal_s w_per_m_k cubic_metre_per_s_pa per_kelvin fraction brix each
baume_20_20 baume_60_60_f relative_density_20_20 relative_density_60_60_f relative_density_20_4
apparent_relative_density_20_20"""
BASE = {word.dimension: word for word in (getattr(units, name) for name in SI.split())}


def function(name):
    module, name = name.split(".")
    if module == "scale":
        if name.startswith("brix_from_"):
            return sucrose.brix_from_scale
        return lambda brix, **options: sucrose.on_scale(brix, getattr(units, name), **options)
    return getattr(getattr(sugaring, module), name)


def arguments(row, values):
    made = []
    for argument, value in zip(row.arguments, values, strict=True):
        if argument.kind == "station_pressure":
            made.append(StationPressure.measured(units.pa(value)))
        elif argument.kind in ("brix", "ratio", "count"):
            made.append(value)
        else:
            made.append(BASE[argument.kind](value))
    return made


def called(name, row, made, **options):
    keywords = {argument.name: value for argument, value in list(zip(row.arguments, made))[2:]}
    result = function(name)(*made[:2], **keywords, **options)
    return result if row.result in ("brix", "ratio", "count") else result.to(BASE[row.result])


def vectors():
    found = defaultdict(list)
    for line in (FOLDER / "functions.txt").read_text("utf-8").splitlines():
        if not line.startswith("#"):
            name, given, result = line.split(" ")
            found[name].append(([number(part) for part in given.split(",")], result))
    return found


VECTORS = vectors()
# What was judged, for the summary.
JUDGED = Counter()


def test_catalogue():
    """What can be read at run time is what the core says, by the names of JSON."""
    kinds = [row._asdict() for row in catalogue.error_kinds() if row.name != "internal"]
    found = {
        "functions": [function_row(row) for row in catalogue.functions()],
        "units": [unit_row(unit) for unit in catalogue.units()],
        "error_kinds": kinds,
        "schemas": list(catalogue.schemas()),
        "numbers": catalogue.numbers(),
    }
    stored = json.loads((FOLDER / "catalogue.json").read_text("utf-8"))
    assert found == stored
    assert [relation.name for relation in catalogue.relations()] == [
        f"{row['module']}::{row['name']}" for row in stored["functions"]
    ]


def function_row(row):
    arguments = [
        {
            "name": argument.name,
            "kind": argument.kind,
            "unit": limits.unit.symbol,
            "low": limits.low,
            "high": limits.high,
            "low_si": limits.low_si,
            "high_si": limits.high_si,
        }
        for argument, limits in zip(row.arguments, row.relation.inputs, strict=True)
    ]
    return {
        "module": row.module,
        "name": row.name,
        "summary": row.summary,
        "arguments": arguments,
        "result": row.result,
        "unit": row.relation.output.symbol,
        "source": row.relation.source,
        "source_kind": row.relation.source_kind,
        "accuracy": row.relation.accuracy,
    }


def unit_row(unit):
    return {
        "word": unit.word,
        "symbol": unit.symbol,
        "dimension": unit.dimension,
        "aliases": list(unit.aliases),
        "definition": unit.definition,
        "numbers": list(unit.numbers),
    }


def test_every_function_has_vectors():
    assert set(VECTORS) == set(FUNCTIONS)
    assert sum(map(len, VECTORS.values())) > 5000


@pytest.mark.parametrize("name", VECTORS)
def test_numbers(name):
    row = FUNCTIONS[name]
    wrong = []
    for given, expected in VECTORS[name]:
        try:
            said = bits(called(name, row, arguments(row, given)))
        except SugaringError as error:
            said = f"!{error.kind}:{error.argument}"
        if said != expected:
            wrong.append((given, expected, said))
    assert not wrong
    JUDGED["vectors"] += len(VECTORS[name])
    JUDGED["functions"] += 1


@pytest.mark.parametrize("name", VECTORS)
def test_columns(name):
    row = FUNCTIONS[name]
    given = list(np.array([given for given, _ in VECTORS[name]]).T)
    judge_lanes(name, given, VECTORS[name])
    JUDGED["lanes"] += len(VECTORS[name])

    station = next((i for i, argument in enumerate(row.arguments) if argument.kind == "station_pressure"), None)
    if station is None:
        return
    # One station pressure for a whole column.
    groups = defaultdict(list)
    for line in VECTORS[name]:
        groups[bits(line[0][station])].append(line)
    for lines in groups.values():
        columns = list(np.array([given for given, _ in lines]).T)
        columns[station] = float(columns[station][0])
        judge_lanes(name, columns, lines)


def judge_lanes(name, columns, lines):
    row = FUNCTIONS[name]
    results = called(name, row, arguments(row, columns), on_error="nan")
    assert isinstance(results, np.ndarray)
    for (_, expected), result in zip(lines, results, strict=True):
        assert bits(result) == ("7ff8000000000000" if expected.startswith("!") else expected)


CALLS = [json.loads(line) for line in (FOLDER / "calls.jsonl").read_text("utf-8").splitlines()]


def argument(given):
    if isinstance(given, str):
        return given
    if "station" in given:
        return StationPressure.measured(units.pa(number(given["station"])))
    value = number(given["number"]) if "number" in given else np.array([number(part) for part in given["numbers"]])
    return getattr(units, given["unit"])(value) if "unit" in given else value


def judge_error(call, error):
    expected = call["error"]
    said = {"kind": error.kind, "argument": error.argument, "text": str(error), "unit": error.unit, "hint": error.hint}
    said["value"] = "7ff8000000000000" if error.value is None else bits(error.value)
    said["range"] = None if error.range is None else [bits(limit) for limit in error.range]
    if "index" in expected:
        said |= {"index": error.index, "count": error.count}
    else:
        assert error.index is error.count is None
    assert said == expected


def judged(call, made):
    """Runs a call that may be refused; None where it was, as expected."""
    try:
        result = made()
    except SugaringError as error:
        assert "error" in call, str(error)
        judge_error(call, error)
        return None
    assert "error" not in call, call
    return result


@pytest.mark.parametrize("call", [call for call in CALLS if call["call"] == "unit"], ids=lambda call: call["args"][0])
def test_unit(call):
    word, si = (getattr(units, name) for name in call["args"])
    assert [bits(word(number(given)).to(si)) for given in call["given"]] == call["si"]
    assert [bits(si(number(given)).to(word)) for given in call["from"]] == call["read"]
    column = word(np.array([number(given) for given in call["given"]])).to(si)
    assert [bits(value) for value in column] == call["si"]


def test_every_word_is_judged():
    # °Brix are bare numbers, and so is what the vectors judge of them.
    known = {word.word for word in catalogue.units()} - {"brix"}
    assert {call["args"][0] for call in CALLS if call["call"] == "unit"} == known


@pytest.mark.parametrize("call", [call for call in CALLS if call["call"] == "units.parse"], ids=lambda c: c["args"][0])
def test_parse(call):
    if (quantity := judged(call, lambda: units.parse(*call["args"]))) is not None:
        assert (quantity.unit.word, bits(quantity.value)) == (call["unit"], call["number"])
        assert str(quantity) == call["text"]
        again = units.parse(str(quantity))
        assert (again.unit, bits(again.value)) == (quantity.unit, call["number"])


def test_every_spelling_is_read():
    texts = {call["args"][0] for call in CALLS if call["call"] == "units.parse"}
    for unit in catalogue.units():
        for spelling in {unit.symbol, unit.word, *unit.aliases} if unit.symbol else ():
            assert f"37.5 {spelling}" in texts


def judge_station(call):
    made = getattr(StationPressure, call["call"].split(".")[1])
    *given, last = (argument(given) for given in call["args"])
    sea_level = made is StationPressure.from_sea_level
    keywords = {"air_temperature": last} if sea_level else {}
    positional = given if sea_level else [*given, last]
    if (station := judged(call, lambda: made(*positional, **keywords))) is not None:
        assert bits(station.pressure.to(units.pa)) == call["pressure"]
        assert bits(station.uncertainty.to(units.pa)) == call["uncertainty"]
        assert station.origin == call["origin"]


def judge_call(call):
    row = FUNCTIONS[call["call"]]
    given = [argument(given) for given in call["args"]]
    result = judged(call, lambda: called(call["call"], row, given))
    if result is not None:
        assert bits(result) == call["result"]


@pytest.mark.parametrize("call", [call for call in CALLS if call["call"].startswith("StationPressure.")])
def test_station_pressure(call):
    judge_station(call)


@pytest.mark.parametrize("call", [call for call in CALLS if call["call"] in FUNCTIONS])
def test_call(call):
    judge_call(call)


EDGES = defaultdict(list)
for line in (FOLDER / "edges.jsonl").read_text("utf-8").splitlines():
    edge = json.loads(line)
    EDGES[edge["call"]].append(edge)


def test_every_function_has_edges():
    assert set(FUNCTIONS) == {name for name in EDGES if not name.startswith("StationPressure.")}


@pytest.mark.parametrize("name", EDGES)
def test_edges(name):
    judge = judge_call if name in FUNCTIONS else judge_station
    for edge in EDGES[name]:
        judge(edge)
    JUDGED["edges"] += len(EDGES[name])


@pytest.mark.parametrize("name", sorted(FUNCTIONS))
def test_edges_in_columns(name):
    """The argument that is moved as a column, its middle lane at the edge: the error says which lane."""
    row = FUNCTIONS[name]
    inside = next(edge for edge in EDGES[name] if edge["moved"] is None)
    for edge in EDGES[name]:
        moved = edge["moved"]
        if moved is None or row.arguments[moved].kind == "station_pressure":
            continue
        # The others of the edge itself; where its limits hang on them, the outer lanes lie at the edge too.
        others = [given for index, given in enumerate(edge["args"]) if index != moved]
        same = others == [given for index, given in enumerate(inside["args"]) if index != moved]
        outer = inside if same else edge
        lanes = [outer["args"][moved]["number"], edge["args"][moved]["number"], outer["args"][moved]["number"]]
        column = {key: value for key, value in edge["args"][moved].items() if key != "number"} | {"numbers": lanes}
        given = [argument(column if index == moved else given) for index, given in enumerate(edge["args"])]
        refused = [outer, edge, outer]
        index = next((lane for lane, line in enumerate(refused) if "error" in line), None)
        if index is None:
            results = called(name, row, given)
            assert [bits(result) for result in results] == [line["result"] for line in refused]
        else:
            count = sum("error" in line for line in refused)
            error = edge["error"] | {"index": index, "count": count}
            error["text"] += f" (index {index}; {count} of 3)"
            judged({"error": error}, lambda: called(name, row, given))
        empty = called(name, row, given, on_error="nan")
        wanted = ["7ff8000000000000" if "error" in line else line["result"] for line in refused]
        assert [bits(result) for result in empty] == wanted
        JUDGED["columns"] += 1


def days():
    for index, call in enumerate(call for call in CALLS if call["call"] == "day.plan"):
        (given,) = call["args"]
        text = given if isinstance(given, str) else (TOP / given["file"]).read_text("utf-8")
        yield pytest.param(call, text, id=f"{index}-text")
        if call.get("json", True):
            yield pytest.param(call, json.loads(text), id=f"{index}-dict")


@pytest.mark.parametrize(("call", "given"), list(days()))
def test_day(call, given):
    plan = judged(call, lambda: day.plan(given))
    if plan is None:
        return
    assert plan.to_json() == (TOP / call["plan"]).read_text("utf-8").removesuffix("\n")
    for system, path in call["pages"].items():
        assert plan.page(system=system) == (TOP / path).read_text("utf-8"), system
    assert str(plan) == plan.page()
    assert plan.to_dict() == json.loads(plan.to_json())
