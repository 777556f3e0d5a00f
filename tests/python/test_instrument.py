"""Instruments: the answers of the core to the bit, columns, travel, and refusals."""

import copy
import json
import math
import pickle
import struct
from pathlib import Path

import numpy as np
import pytest

from sugaring import SugaringError, catalogue, finish, instrument, units
from sugaring.air import StationPressure
from sugaring.instrument import Barometer, Check, Hydrometer, Refractometer, Thermometer
from sugaring.units import baume_20_20, deg_c, deg_f, in_hg, kelvin, kpa, metre

FOLDER = Path(__file__).resolve().parents[2] / "tests" / "conformance"
ASKS = [json.loads(line) for line in (FOLDER / "asks.jsonl").read_text("utf-8").splitlines()]
ROOMS = {"instrument": instrument, "catalogue": catalogue, "finish": finish, "DensityChart": instrument}
INSTRUMENTS = [ask for ask in ASKS if ask["ask"].split(".")[0] in ROOMS or hasattr(instrument, ask["ask"].split(".")[0])]


def bits(value):
    return "7ff8000000000000" if math.isnan(value) else struct.pack(">d", value).hex()


def made(name, data):
    """The argument that a line of `asks.jsonl` has as data."""
    if isinstance(data, list):
        return [made("", item) for item in data]
    if not isinstance(data, dict):
        return getattr(units, data, data) if name == "scale" else data
    if set(data) == {"bits"}:
        return struct.unpack(">d", bytes.fromhex(data["bits"]))[0]
    if set(data) == {"value", "uncertainty"}:
        return units.measured(made("", data["value"]), made("", data["uncertainty"]))
    if set(data) == {"value", "unit"}:
        return getattr(units, data["unit"])(made("", data["value"]))
    if name == "station":
        pascal = [data[key]["value"] for key in ("pressure", "uncertainty")]
        return StationPressure._restore(*pascal, data["origin"])
    inner = {key: made("", value) for key, value in data.items()}
    if name in ("low", "high") and "reading" in inner:
        return Check(**inner)
    return inner


def asked(ask):
    kind, method = ask["ask"].split(".")
    given = {name: made(name, value) for name, value in ask["given"].items()}
    known = ROOMS[kind] if kind in ("instrument", "catalogue", "finish") else getattr(instrument, kind)
    if kind == "instrument" and "instrument" in given:
        (of,) = given["instrument"]
        given["instrument"] = getattr(instrument, of.capitalize())(given["instrument"])
    whom = known
    if kind == "DensityChart":
        whom = instrument.chart(given.pop("chart")["jurisdiction"])
    elif kind != "instrument" and "instrument" in given:
        whom = known(given.pop("instrument"))
    first = list(given.items())[:2]
    keywords = dict(list(given.items())[2:])
    # What may be left out is a keyword however few are given.
    optional = {"temperatures", "offset", "zero", "resolution", "uncertainty", "glass_expansion"}
    positional = [value for name, value in first if name not in optional]
    keywords |= {name: value for name, value in first if name in optional}
    return getattr(whom, method)(*positional, **keywords)


def written(answer):
    """An answer as the line has it, with numbers as bits."""
    if isinstance(answer, StationPressure):
        parts = {"pressure": units.pa(answer.pressure.to(units.pa)), "uncertainty": units.pa(answer.uncertainty.to(units.pa))}
        return written({**parts, "origin": answer.origin})
    if isinstance(answer, units.Measured):
        return written({"value": answer.value, "uncertainty": answer.uncertainty})
    if isinstance(answer, instrument.Card):
        return written(answer._written)
    if isinstance(answer, instrument.DensityChart):
        return written(answer._data)
    if hasattr(answer, "_asdict"):
        # What is not known is left out, but for limits that a law does not have.
        kept = ("max", "reference_temperature")
        return written({k: v for k, v in answer._asdict().items() if v is not None or k in kept})
    if hasattr(answer, "to_dict"):
        return written(answer.to_dict())
    if hasattr(answer, "dimension"):
        return {"value": bits(answer.value), "unit": answer.unit.word}
    if isinstance(answer, dict):
        return {key: written(value) for key, value in answer.items()}
    if isinstance(answer, (list, tuple)):
        return [written(item) for item in answer]
    return bits(answer) if isinstance(answer, float) else answer


def stored(data):
    if isinstance(data, dict):
        return data["bits"] if set(data) == {"bits"} else {key: stored(value) for key, value in data.items()}
    if isinstance(data, list):
        return [stored(item) for item in data]
    return bits(data) if isinstance(data, (int, float)) and not isinstance(data, bool) else data


@pytest.mark.parametrize("ask", INSTRUMENTS, ids=lambda ask: ask["ask"])
def test_asks(ask):
    try:
        answer = asked(ask)
    except SugaringError as error:
        expected = ask["error"]
        said = {"kind": error.kind, "argument": error.argument, "text": str(error), "unit": error.unit, "hint": error.hint}
        said["value"] = "7ff8000000000000" if error.value is None else bits(error.value)
        said["range"] = None if error.range is None else [bits(limit) for limit in error.range]
        assert said == expected
    else:
        assert written(answer) == stored(ask["answer"])


def test_columns_have_the_bits_of_single_values():
    hydrometer = Hydrometer.brix(deg_f(60), resolution=0.1)
    shown, at = np.linspace(1, 62, 50), deg_f(np.linspace(40, 150, 50))
    column = hydrometer.truth(shown, at)
    single = [hydrometer.truth(float(r), kelvin(float(t))) for r, t in zip(shown, at.to(kelvin), strict=True)]
    assert column.value.tolist() == [truth.value for truth in single]
    assert column.uncertainty.tolist() == [truth.uncertainty for truth in single]
    back = hydrometer.reading(column.value, at)
    assert np.abs(back - shown).max() < 1e-9


def test_columns_keep_what_they_are():
    pandas = pytest.importorskip("pandas")
    series = pandas.Series([2.2, 2.4], index=["upper", "lower"])
    hand = Refractometer.compensated(deg_c(10), deg_c(30), zero=0.2)
    truth = hand.truth(series, deg_c(12))
    assert list(truth.value.index) == ["upper", "lower"] and truth.value.round(9).tolist() == [2.0, 2.2]
    assert hand.truth([2.2, 2.4], deg_c([12, 13])).value.shape == (2,)
    dial = Thermometer.plain()
    assert dial.reading(deg_c(np.array([20.0, 30.0]))).to(deg_c).round(9).tolist() == [20, 30]


def test_a_refused_lane_is_named():
    hydrometer = Hydrometer.brix(deg_f(60))
    with pytest.raises(SugaringError) as caught:
        hydrometer.truth([59.0, 300.0, 400.0], deg_f(211))
    assert str(caught.value) == "reading = 300 °Bx is outside -15 to 100 °Bx (index 1; 2 of 3)"
    assert (caught.value.index, caught.value.count) == (1, 2)
    lenient = hydrometer.truth([59.0, 300.0], deg_f(211), on_error="nan")
    assert np.isnan(lenient.value).tolist() == [False, True] == np.isnan(lenient.uncertainty).tolist()
    assert math.isnan(hydrometer.truth(300.0, deg_f(211), on_error="nan").value)
    with pytest.raises(SugaringError, match="on_error has the unknown name"):
        hydrometer.truth(59.0, deg_f(211), on_error="none")


@pytest.mark.parametrize(
    "known",
    [
        Hydrometer.on_scale(baume_20_20, deg_f(60), offset=0.1),
        Hydrometer.brix(deg_f(60)).two_point(Check(0.4, 0.0, deg_f(60)), Check(67.2, 66.9, deg_f(60))),
        Refractometer.uncompensated().set_to_zero_at(deg_c(12)),
        Thermometer.two_point(deg_c(0.4), deg_c(99.4), station=StationPressure.measured(kpa(96.5))),
        Barometer.set_to_sea_level(metre(410)),
    ],
)
def test_they_travel_and_are_read_only(known):
    for other in (pickle.loads(pickle.dumps(known)), copy.deepcopy(known), type(known)(known.to_dict())):
        assert other == known and hash(other) == hash(known)
    with pytest.raises(AttributeError):
        known.offset = 1
    with pytest.raises(AttributeError):
        del known._data
    assert repr(known).startswith(f"<{type(known).__name__} ")


def test_a_plan_takes_them():
    from sugaring import day

    inputs = {
        "air": {"altitude": metre(410)},
        "sap": [{"volume": "265 L", "brix": 1.98, "temperature": deg_c(4)}],
        "evaporator": {"pan": {"length": "0.61 m", "width": "1.22 m"}},
        "finishing": {"heat": "3 kW"},
        "target": {"brix": 66.9},
        "instruments": {"double paper": Hydrometer.on_scale(baume_20_20, deg_f(60))},
        "samples": 0,
    }
    plan = day.plan(inputs)
    first = plan.marks[0]
    assert (first.instrument, round(first.reading, 2)) == ("double paper", 31.99)
    assert "Baumé scale 20/20 °C for 60 °F" in plan.page()


def test_odd_things_are_refused():
    hydrometer = Hydrometer.brix(deg_f(60))
    for call in (
        lambda: Hydrometer({"hydrometer": {"scale": "brix"}}),
        lambda: Hydrometer({"thermometer": {}}),
        lambda: Hydrometer.brix(60),
        lambda: Hydrometer.brix(None),
        lambda: Hydrometer.on_scale("baume", deg_f(60)),
        lambda: Hydrometer.on_scale(deg_f, deg_f(60)),
        lambda: hydrometer.truth("59", deg_f(211)),
        lambda: hydrometer.truth(None, deg_f(211)),
        lambda: hydrometer.truth(True, deg_f(211)),
        lambda: hydrometer.truth([59.0, 60, 61], deg_f([211, 212])),
        lambda: hydrometer.truth(["59"], deg_f(211)),
        lambda: hydrometer.two_point(Check(0.4, 0.0, deg_f(60)), None),
        lambda: Thermometer.zeroed_in_boiling_water(deg_f(211), kpa(96.5)),
        lambda: Barometer.station().truth(96.5),
        lambda: Barometer.station().truth(in_hg([28.5])),
    ):
        with pytest.raises(SugaringError):
            call()
