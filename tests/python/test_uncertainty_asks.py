"""Uncertainties: the answers of the core to the bit, as the other languages have them, and its refusals."""

import json
import math
import struct
from pathlib import Path

import pytest

import sugaring
from sugaring import SugaringError, uncertainty, units
from sugaring.uncertainty import Spread
from sugaring.units import measured

FOLDER = Path(__file__).resolve().parents[2] / "tests" / "conformance"
ASKS = [json.loads(line) for line in (FOLDER / "asks.jsonl").read_text("utf-8").splitlines()]
ASKS = [ask for ask in ASKS if ask["ask"].startswith("uncertainty.")]


def bits(value):
    return "7ff8000000000000" if math.isnan(value) else struct.pack(">d", value).hex()


def plain(data):
    """A number, or a quantity."""
    if isinstance(data, dict) and set(data) == {"bits"}:
        return struct.unpack(">d", bytes.fromhex(data["bits"]))[0]
    if isinstance(data, dict):
        return getattr(units, data["unit"])(plain(data["value"]))
    return data


def spread(data):
    if not isinstance(data, dict) or set(data) <= {"value", "unit"} or set(data) == {"bits"}:
        return plain(data)
    value, steps = plain(data["value"]), plain(data["uncertainty"])
    return Spread(value, steps, **{key: more for key, more in data.items() if key not in ("value", "uncertainty")})


def asked(name, given):
    if name in ("propagate", "monte_carlo"):
        module, function = given["function"].split(".")
        inputs = [spread(item) for item in given["inputs"]]
        if name == "monte_carlo":
            options = {"seed": given["seed"], "samples": given["samples"]}
            whole = {key: int(value) for key, value in options.items() if isinstance(value, float)}
            if isinstance(options["samples"], dict) and "digits" in options["samples"]:
                whole["samples"] = {"digits": int(options["samples"]["digits"])}
            return uncertainty.monte_carlo(getattr(getattr(sugaring, module), function), inputs, **{**options, **whole})
        return uncertainty.propagate(getattr(getattr(sugaring, module), function), inputs)
    if name == "combine":
        return uncertainty.combine([measured(plain(r["value"]), plain(r["uncertainty"])) for r in given["readings"]])
    if name == "line_fit":
        x, y = ([plain(item) for item in given[key]] for key in ("x", "y"))
        return uncertainty.line_fit(x, y, x0=given["x0"])
    value = given["value"]
    return uncertainty.probability_at_least(
        measured(plain(value["value"]), plain(value["uncertainty"])), plain(given["minimum"])
    )


def same(answer, stored):
    if isinstance(stored, dict) and "bits" not in stored and set(stored) != {"value", "unit"}:
        return all(same(getattr(answer, key), value) for key, value in stored.items())
    if isinstance(stored, list):
        return len(answer) == len(stored) and all(map(same, answer, stored))
    if isinstance(stored, dict) and set(stored) == {"value", "unit"}:
        return answer.unit.word == stored["unit"] and bits(answer.value) == bits(plain(stored["value"]))
    if isinstance(stored, (bool, str)):
        return answer == stored
    return bits(answer) == bits(plain(stored))


# There a station pressure is data with a name; here it is a class, judged below.
ANSWERED = [ask for ask in ASKS if "answer" in ask and ask["given"].get("function") != "sucrose.boiling_temperature"]


@pytest.mark.parametrize("ask", ANSWERED, ids=lambda ask: ask["ask"])
def test_answers(ask):
    answer = asked(ask["ask"].split(".")[1], ask["given"])
    if isinstance(ask["answer"], dict) and set(ask["answer"]) == {"value", "uncertainty", "z", "agree"}:
        assert all(same(getattr(answer, key), value) for key, value in ask["answer"].items())
    else:
        assert same(answer, ask["answer"]), (answer, ask["answer"])


def test_a_station_pressure_brings_its_own_uncertainty():
    air = sugaring.air.StationPressure.measured(units.kpa(96.5))
    named = uncertainty.propagate(sugaring.sucrose.boiling_temperature, [66.9, air])
    own = uncertainty.propagate(lambda air: sugaring.sucrose.boiling_temperature(66.9, air), {"barometer": air})
    assert [part.name for part in named.contributions] == ["station", "brix"]
    assert own.contributions[0].name == "barometer" and own.uncertainty.to(units.delta_c) > 0.02
    assert abs(own.uncertainty.to(units.delta_c) - named.uncertainty.to(units.delta_c)) < 1e-12
    drawn = [
        uncertainty.monte_carlo(model, {"barometer": air}, seed=1, samples=500, columns=columns)
        for model, columns in ((lambda p: sugaring.sucrose.boiling_temperature(66.9, p), c) for c in (False, True))
    ]
    assert drawn[0] == drawn[1]


def test_parameters_of_a_model_name_its_inputs():
    found = uncertainty.propagate(lambda strength, cup: strength * cup, [measured(2, 0.1), measured(3, 0.1)])
    assert [part.name for part in found.contributions] == ["strength", "cup"]


@pytest.mark.parametrize("ask", [ask for ask in ASKS if "error" in ask], ids=lambda ask: ask["error"]["text"])
def test_refusals(ask):
    """A spread that is refused as it is made does not know its place yet; kind and last word are the same."""
    with pytest.raises(SugaringError) as caught:
        asked(ask["ask"].split(".")[1], ask["given"])
    error, expected = caught.value, ask["error"]
    if expected["argument"] == "seed":
        # Python's whole numbers have no lower limit to name.
        assert error.kind == "unreadable"
        return
    assert (error.kind, error.argument.rsplit(".")[-1]) == (expected["kind"], expected["argument"].rsplit(".")[-1])
