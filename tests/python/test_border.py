"""What is no input: a typed error each time, never a panic."""

import array
import decimal
import fractions
import json
import sys
from collections import OrderedDict, UserDict
from pathlib import Path
from types import MappingProxyType

import numpy as np
import pandas as pd
import polars as pl
import pytest

from sugaring import SugaringError, day, errors, membrane, sucrose, units, water
from sugaring.air import StationPressure
from sugaring.units import bar_gauge, deg_c, kg_per_m3, kpa, litre, litre_per_h, measured, metre, price

Q = deg_c(20)
DENSITY = sucrose.density(50, Q).to(kg_per_m3)


class Raises:
    """Every door of it raises."""

    def __init__(self, error):
        self.error = error

    def _raise(self, *_):
        raise self.error

    __float__ = __index__ = __len__ = __getitem__ = __iter__ = __array__ = __str__ = _raise


class FloatRaises:
    def __float__(self):
        raise RuntimeError("no")


class Listed(list):
    def __iter__(self):
        raise RuntimeError("no")


class Sized:
    def __array__(self, dtype=None, copy=None):
        raise RuntimeError("no")


NO_NUMBERS = {
    "None": None,
    "bool": True,
    "numpy bool": np.True_,
    "text": "66.9",
    "bytes": b"66.9",
    "surrogate": "\ud800",
    "dict": {"a": 1},
    "deep dict": {"value": {"value": {"value": 1}}},
    "empty dict": {},
    "set": {1.0},
    "complex": 1j,
    "object": object(),
    "class": int,
    "function": len,
    "generator": (x for x in [1.0]),
    "iterator": iter([1.0]),
    "map": map(float, [1]),
    "raises": Raises(RuntimeError("no")),
    "float raises": FloatRaises(),
    "array raises": Sized(),
    "list raises": Listed([1.0]),
    "list of texts": [1.0, "2"],
    "list of bools": [1.0, True],
    "list of dicts": [1.0, {}],
    "ragged list": [[1.0], [1.0, 2.0]],
    "array of bools": np.array([True]),
    "array of texts": np.array(["1"]),
    "array of times": np.array(["2027-03-14"], dtype="datetime64[D]"),
    "array of complex": np.array([1j]),
    "array of objects": np.array([1.0, object()], dtype=object),
    "records": np.array([(1.0, 2)], dtype=[("a", "f8"), ("b", "i8")]),
    "0-d bool": np.array(True),
    "Series of texts": pd.Series(["1"]),
    "Series of bools": pd.Series([True]),
    "polars texts": pl.Series(["1"]),
    "polars bools": pl.Series([True]),
    "polars dates": pl.Series(["2027-03-14"]).str.to_date(),
    "polars lists": pl.Series([[1.0]]),
    "array of long texts": np.array(["1"], dtype=object),
    "quantity": litre(1),
    "unit": litre,
    "station": StationPressure.measured(kpa(96.5)),
}
CIRCLE = [1.0]
CIRCLE.append(CIRCLE)
NO_NUMBERS["circle"] = CIRCLE


@pytest.mark.parametrize("name", NO_NUMBERS)
@pytest.mark.parametrize("on_error", [None, "nan"])
def test_no_number(name, on_error):
    value = NO_NUMBERS[name]
    with pytest.raises(SugaringError) as caught:
        sucrose.density(value, Q, on_error=on_error)
    assert caught.value.kind != "internal"
    assert caught.value.argument.split(".")[0] == "brix"


@pytest.mark.parametrize("name", NO_NUMBERS)
def test_no_unit_makes_it_one(name):
    with pytest.raises(SugaringError) as caught:
        deg_c(NO_NUMBERS[name])
    assert (caught.value.kind, caught.value.argument) != ("internal", "")


NO_QUANTITIES = NO_NUMBERS | {"number": 20, "float": 20.0, "list": [20.0], "array": np.arange(3.0)}


@pytest.mark.parametrize("name", NO_QUANTITIES)
def test_no_quantity(name):
    value = NO_QUANTITIES[name]
    for made in (lambda: sucrose.density(50, value), lambda: water.density(value)):
        with pytest.raises(SugaringError) as caught:
            made()
        assert (caught.value.argument.split(".")[0], caught.value.kind != "internal") == ("temperature", True)
    with pytest.raises(SugaringError):
        StationPressure.measured(value)


@pytest.mark.parametrize("name", set(NO_QUANTITIES) - {"station"})
def test_no_station(name):
    with pytest.raises(SugaringError) as caught:
        sucrose.boiling_temperature(66.9, NO_QUANTITIES[name])
    assert caught.value.argument == "station"
    assert caught.value.kind in ("wrong_dimension", "unreadable")


@pytest.mark.parametrize("name", set(NO_NUMBERS) - {"unit"})
def test_no_unit(name):
    with pytest.raises(SugaringError):
        litre(1).to(NO_NUMBERS[name])


def test_the_cause_is_kept():
    with pytest.raises(errors.Unreadable) as caught:
        sucrose.density(FloatRaises(), Q)
    assert isinstance(caught.value.__cause__, RuntimeError)
    with pytest.raises(KeyboardInterrupt):
        sucrose.density(Raises(KeyboardInterrupt()), Q)


@pytest.mark.parametrize("number", [1e308, -1e308, float("inf"), float("-inf"), float("nan"), 10**400, -1])
def test_absurd_numbers(number):
    for made in (lambda: sucrose.density(number, Q), lambda: sucrose.density(50, deg_c(number))):
        with pytest.raises(SugaringError) as caught:
            made()
        assert caught.value.kind in ("out_of_range", "not_finite")


def test_numbers_of_other_libraries():
    for number in (np.float32(50), np.int16(50), np.array(50), decimal.Decimal(50), fractions.Fraction(50), 50):
        assert sucrose.density(number, Q).to(kg_per_m3) == DENSITY
        assert type(deg_c(number).to(deg_c)) is float


ARRAYS = {
    "contiguous": np.full(7, 50.0),
    "reversed": np.full(7, 50.0)[::-1],
    "strided": np.full(21, 50.0)[::3],
    "fortran": np.full((3, 4), 50.0, order="F"),
    "broadcast": np.broadcast_to(50.0, (3, 4)),
    "integer": np.full(7, 50),
    "small integer": np.full(7, 50, dtype=np.int8),
    "unsigned": np.full(7, 50, dtype=np.uint64),
    "float32": np.full(7, 50, dtype=np.float32),
    "long double": np.full(7, 50, dtype=np.longdouble),
    "float16": np.full(7, 50, dtype=np.float16),
    "big endian": np.full(7, 50.0).astype(">f8"),
    "unaligned": np.frombuffer(b"\0" + np.full(7, 50.0).tobytes(), dtype="u1")[1:].view("f8"),
    "long": np.full(100_003, 50.0),
    "257": np.full(257, 50.0),
    "3-d": np.full((2, 3, 4), 50.0),
    "objects": np.array([50, 50.0, np.float32(50)], dtype=object),
    "list": [50, 50.0],
    "tuple": (50, 50.0),
    "range": range(50, 51),
    "nested list": [[50.0, 50.0], [50.0, 50.0]],
    "array.array": array.array("d", [50.0, 50.0]),
    "memoryview": memoryview(array.array("d", [50.0])),
}


@pytest.mark.parametrize("name", ARRAYS)
def test_array(name):
    result = sucrose.density(ARRAYS[name], Q).to(kg_per_m3)
    assert isinstance(result, np.ndarray) and result.dtype == np.float64
    assert result.shape == np.shape(ARRAYS[name])
    assert (result == DENSITY).all()
    celsius = deg_c(ARRAYS[name])
    assert (celsius.to(units.kelvin) == deg_c(50).to(units.kelvin)).all()


def test_read_only_and_empty():
    frozen = np.full(3, 50.0)
    frozen.flags.writeable = False
    assert (sucrose.density(frozen, Q).to(kg_per_m3) == DENSITY).all()
    assert sucrose.density(np.array([]), Q).to(kg_per_m3).shape == (0,)
    assert sucrose.density([], Q).to(kg_per_m3).shape == (0,)
    assert sucrose.density(np.zeros((0, 3)), Q, on_error="nan").to(kg_per_m3).shape == (0, 3)


def test_order_of_lanes():
    brix = np.linspace(0, 80, 11)
    forward = sucrose.density(brix, Q).to(kg_per_m3)
    assert (sucrose.density(brix[::-1], Q).to(kg_per_m3) == forward[::-1]).all()
    assert (sucrose.density(brix[::2], Q).to(kg_per_m3) == forward[::2]).all()
    one = [sucrose.density(float(b), Q).to(kg_per_m3) for b in brix]
    assert list(forward) == one
    grid = sucrose.density(brix[:, None], deg_c(np.array([10.0, 20.0]))).to(kg_per_m3)
    assert grid.shape == (11, 2) and (grid[:, 1] == forward).all()


def test_first_refused_lane():
    for brix, index in (
        (np.array([1.0, 99.0, 2.0, 98.0]), 1),
        (np.array([98.0, 2.0, 99.0, 1.0])[::-1], 1),
        (np.array([[1.0, 2.0], [3.0, 99.0]]), (1, 1)),
        (np.asfortranarray([[1.0, 99.0], [98.0, 2.0]]), (0, 1)),
    ):
        with pytest.raises(errors.OutOfRange) as caught:
            sucrose.density(brix, Q)
        assert caught.value.index == index and caught.value.value == 99.0
        assert caught.value.count == int((brix > 85).sum())


def test_nothing_in_a_list():
    with pytest.raises(errors.NotFinite) as caught:
        sucrose.density([1.0, None, 3.0], Q)
    assert caught.value.index == 1
    assert np.isnan(sucrose.density([1.0, None, 3.0], Q, on_error="nan").to(kg_per_m3)).tolist() == [False, True, False]
    assert np.isnan(sucrose.density(pd.Series([1.0, None], dtype=object), Q, on_error="nan").to(kg_per_m3)[1])
    with pytest.raises(errors.Unreadable) as caught:
        sucrose.density([1.0, 2.0, "3"], Q)
    assert (caught.value.index, caught.value.count) == (2, 1)


def test_scalars_with_on_error():
    assert np.isnan(sucrose.density(99, Q, on_error="nan").to(kg_per_m3))
    assert np.isnan(sucrose.water_activity(99, Q, on_error="nan"))
    for wrong in ("raise", "NaN", 1, True, ["nan"]):
        with pytest.raises(SugaringError):
            sucrose.density(50, Q, on_error=wrong)


def test_masked_and_series():
    masked = sucrose.density(np.ma.masked_array([50.0, 999.0], mask=[False, True]), Q).to(kg_per_m3)
    assert masked[0] == DENSITY and masked[1] is np.ma.masked
    series = pd.Series([50.0, 60.0], index=["a", "b"], name="brix")
    result = sucrose.density(series, deg_c(pd.Series([20.0, 30.0], index=["a", "b"]))).to(kg_per_m3)
    assert isinstance(result, pd.Series) and list(result.index) == ["a", "b"] and result["a"] == DENSITY
    result = sucrose.density(pl.Series("brix", [50.0, None]), Q, on_error="nan").to(kg_per_m3)
    assert isinstance(result, pl.Series) and result[0] == DENSITY and result[1] is None
    frame = pl.DataFrame({"brix": [50.0, 99.0], "celsius": [20.0, 20.0]}).lazy()
    rho = sucrose.density(pl.col("brix"), deg_c(pl.col("celsius")), on_error="nan").to(kg_per_m3)
    assert frame.select(rho.alias("rho")).collect()["rho"].to_list()[0] == DENSITY
    with pytest.raises(errors.Missing, match="on_error"):
        sucrose.density(pl.col("brix"), Q)


def test_shapes_that_do_not_fit():
    with pytest.raises(errors.Inconsistent, match="temperature = a column of shape"):
        sucrose.density(np.zeros(3), deg_c(np.zeros(2)))


def test_huge_array():
    brix = np.broadcast_to(np.float64(50), (20_000_000,))
    assert sucrose.water_activity(brix[:5_000_000], Q).shape == (5_000_000,)


def test_no_warning_of_refused_lanes(recwarn):
    sucrose.density(np.array([np.nan, 99.0, 1.0]), Q, on_error="nan")
    assert not recwarn.list


def test_third_argument_is_a_keyword():
    heat = sucrose.heat_to_warm(50, deg_c(10), to_temperature=deg_c(90))
    assert heat > sucrose.heat_to_warm(50, deg_c(10), to_temperature=deg_c(80))
    energy = membrane.pump_energy(
        bar_gauge(7.6), litre_per_h(np.array([500.0, 600.0])), duration=units.hours(2), efficiency=units.percent(35)
    )
    assert energy.to(units.kwh).shape == (2,)
    with pytest.raises(TypeError):
        sucrose.heat_to_warm(50, deg_c(10), deg_c(90))


def far_orchard():
    return json.loads((Path(__file__).parents[2] / "examples" / "far_orchard.json").read_text("utf-8"))


def inputs(**changed):
    return {
        "air": {"altitude": metre(410)},
        "sap": [{"volume": litre(265), "brix": 1.98, "temperature": deg_c(4)}],
        "evaporator": {"pan": {"length": metre(0.61), "width": metre(1.22)}},
        "target": {"brix": 66.9},
        "samples": 0,
    } | changed


class Mapped(UserDict):
    pass


class Evil(dict):
    def items(self):
        raise RuntimeError("no")

    __iter__ = keys = items


def deep(depth):
    value = {}
    for _ in range(depth):
        value = {"sap": value}
    return value


ROUND = {}
ROUND["sap"] = [ROUND]

NO_INPUTS = {
    "None": None,
    "number": 1,
    "bool": True,
    "list": [],
    "list of lists": [[[]]],
    "bytes": b"{}",
    "quantity": litre(1),
    "object": object(),
    "generator": (x for x in "a"),
    "array": np.arange(3),
    "Series": pd.Series([1]),
    "text": "far orchard",
    "empty text": "",
    "surrogate": '"\ud800"',
    "number as key": {1: 2},
    "None as key": {None: 2},
    "tuple as key": {("air",): 2},
    "bytes as key": {b"air": 2},
    "surrogate as key": {"\ud800": 1},
    "surrogate as value": inputs(title="\ud800"),
    "circle": ROUND,
    "deep": deep(10_000),
    "raises": Raises(RuntimeError("no")),
    "value raises": inputs(title=Raises(RuntimeError("no"))),
    "list raises": inputs(sap=Listed([1])),
    "items raise": Evil(a=1),
    "value is a generator": inputs(sap=(x for x in [1])),
    "value is a set": inputs(sap={1}),
    "value is an object": inputs(sap=object()),
    "value is a column": inputs(air={"altitude": metre([1, 2])}),
    "value is an array": inputs(sap=np.arange(3)),
    "value is None": inputs(title=None),
    "value is a bool": inputs(samples=True),
    "value is NaN": inputs(target={"brix": float("nan")}),
    "value is infinite": inputs(air={"altitude": metre(float("inf"))}),
    "value is huge": inputs(samples=10**400),
    "value is a station": inputs(air=StationPressure.measured(kpa(96.5))),
    "value is a unit": inputs(air={"altitude": metre}),
    "bare number": inputs(air={"altitude": 410}),
    "wrong dimension": inputs(air={"altitude": kpa(410)}),
    "measured wrong": inputs(air={"altitude": measured(litre(410), litre(1))}),
    "price wrong": inputs(electricity=price(-1, units.kwh(1))),
    "price for a length": inputs(air={"altitude": price(1, units.kwh(1))}),
    "mass and volume": inputs(sap=[{"volume": litre(1), "mass": units.kg(1), "brix": 2, "temperature": deg_c(4)}]),
}


@pytest.mark.parametrize("name", NO_INPUTS)
def test_no_inputs(name):
    with pytest.raises(SugaringError) as caught:
        day.plan(NO_INPUTS[name])
    assert caught.value.kind != "internal"


def test_paths_of_what_is_no_input():
    with pytest.raises(errors.Unreadable, match=r"^sap\[0\]\.volume = <object> cannot be read"):
        day.plan(inputs(sap=[{"volume": object()}]))
    with pytest.raises(errors.Unreadable, match=r"^air = the key 1 cannot be read; a text as key is needed"):
        day.plan(inputs(air={1: 2}))
    with pytest.raises(errors.Unreadable) as caught:
        day.plan(inputs(title=FloatRaises()))
    assert caught.value.argument == "title"


def test_what_is_like_a_dict():
    plain = day.plan(inputs())
    for made in (OrderedDict, Mapped, MappingProxyType):
        wrapped = {key: made(value) if isinstance(value, dict) else value for key, value in inputs().items()}
        assert day.plan(made(wrapped)) == plain
    assert day.plan(inputs(sap=tuple(inputs()["sap"]))) == plain
    assert day.plan(inputs(samples=np.int64(0), target={"brix": np.float64(66.9)})) == plain


def test_progress():
    shares = []
    day.plan(inputs(samples=500), progress=shares.append)
    assert 50 <= len(shares) <= 101 and shares == sorted(shares) and 0 <= shares[0] <= shares[-1] <= 1
    with pytest.raises(errors.Cancelled, match="^the work was stopped$"):
        day.plan(inputs(samples=500), progress=lambda share: share < 0.5)
    with pytest.raises(ZeroDivisionError):
        day.plan(inputs(samples=500), progress=lambda share: 1 / 0)
    with pytest.raises(errors.Unreadable):
        day.plan(inputs(), progress=1)
    assert day.plan(inputs(samples=5), progress=lambda share: True) == day.plan(inputs(samples=5))


def test_a_surrogate_in_a_text():
    for text in ("\ud800", "40 \ud800", "\0", "4" * 100_000, "²" * 1000):
        with pytest.raises(SugaringError):
            units.parse(text)
    for other in (None, 40, b"40 gal", ["40 gal"]):
        with pytest.raises(errors.Unreadable):
            units.parse(other)


def test_recursion_is_left_alone():
    limit = sys.getrecursionlimit()
    with pytest.raises(SugaringError):
        day.plan(ROUND)
    assert sys.getrecursionlimit() == limit
