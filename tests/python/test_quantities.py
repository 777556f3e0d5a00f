"""What adds, scales, compares, prints and travels."""

import copy
import math
import operator
import pickle

import numpy as np
import pytest

import sugaring
from sugaring import Quantity, catalogue, errors, sucrose, units
from sugaring.air import StationPressure
from sugaring.units import (
    bar,
    bar_gauge,
    cord,
    deg_c,
    deg_f,
    delta_c,
    delta_f,
    gal,
    kelvin,
    kg,
    kpa,
    kpa_gauge,
    litre,
    measured,
    percent,
    price,
)

WORDS = [getattr(units, word.word) for word in catalogue.units()]


def evaluated(quantity):
    return eval(repr(quantity), {name: getattr(units, name) for name in units.__all__})


@pytest.mark.parametrize("word", WORDS, ids=repr)
def test_word(word):
    quantity = word(40)
    assert quantity.to(word) == quantity.value == 40.0
    assert type(quantity.value) is float
    assert quantity.unit is word and quantity.unit.word == repr(word)
    assert evaluated(quantity) == quantity
    assert units.parse(f"40 {word.symbol}").unit is word if word.symbol else True
    for spelling in word.aliases:
        assert units.parse(f"40 {spelling}") == quantity
    assert pickle.loads(pickle.dumps(word)) is word is copy.copy(word) is copy.deepcopy(word)
    assert pickle.loads(pickle.dumps(quantity)) == quantity
    assert quantity.dimension == word.dimension
    assert word.definition


@pytest.mark.parametrize("word", WORDS, ids=repr)
def test_equal_values_hash_alike(word):
    for other in WORDS:
        if other.dimension == word.dimension:
            for number in (0.0, -0.0, 1.0, 32.0, 100.0, 212.0):
                one = word(number)
                two = other(one.to(other))
                if one == two:
                    assert hash(one) == hash(two)
        else:
            assert word(1) != other(1)
            assert not word(1) == other(1)


def test_sums():
    assert gal(1) + gal(2) == gal(3)
    assert (gal(1) + litre(1)).unit is gal
    assert gal(3) - gal(2) == gal(1)
    assert sum([gal(1), gal(2), gal(3)]) == gal(6)
    assert 0 + gal(1) == gal(1) == gal(1) + 0
    assert 0 - gal(1) == gal(-1) == -gal(1)
    assert +gal(1) == abs(gal(-1)) == gal(1)
    assert 2 * gal(3) == gal(3) * 2 == gal(12) / 2 == gal(6)
    assert gal(6) / gal(3) == 2.0 and isinstance(gal(6) / gal(3), float)
    assert kpa(200) / bar(1) == pytest.approx(2)
    assert percent(25) + percent(25) == percent(50)


def test_points():
    assert deg_c(20) - deg_c(5) == delta_c(15)
    assert deg_c(20) - deg_f(50) == delta_c(10)
    assert (deg_f(50) - deg_f(32)).unit is delta_f
    assert deg_f(50) + delta_c(5) == deg_f(59)
    assert delta_c(5) + deg_f(50) == deg_f(59)
    assert deg_c(20) - delta_c(5) == deg_c(15)
    assert kelvin(300) - kelvin(290) == delta_c(10)
    assert (bar_gauge(7.5) - bar_gauge(0.5)).unit is bar
    assert kpa_gauge(100) + kpa(50) == kpa_gauge(150)


REFUSED = [
    (operator.add, deg_c(1), deg_c(2)),
    (operator.add, bar_gauge(1), bar_gauge(2)),
    (operator.add, gal(1), kg(1)),
    (operator.sub, gal(1), kg(1)),
    (operator.sub, delta_c(1), deg_c(1)),
    (operator.add, gal(1), 1),
    (operator.add, 1, gal(1)),
    (operator.add, 0, deg_c(1)),
    (operator.add, deg_c(1), 0),
    (operator.add, gal(1), 0.0),
    (operator.add, gal(1), False),
    (operator.sub, 1, gal(1)),
    (operator.mul, 2, deg_c(20)),
    (operator.mul, deg_c(20), 2),
    (operator.truediv, deg_c(20), 2),
    (operator.truediv, deg_c(20), deg_c(10)),
    (operator.mul, gal(1), gal(1)),
    (operator.mul, gal(1), True),
    (operator.mul, gal(1), "2"),
    (operator.truediv, gal(1), kg(1)),
    (operator.lt, gal(1), kg(1)),
    (operator.le, gal(1), 1),
    (operator.gt, gal(1), "1 L"),
    (operator.ge, deg_c(1), delta_c(1)),
]


@pytest.mark.parametrize(("operation", "one", "two"), REFUSED)
def test_refused(operation, one, two):
    with pytest.raises(sugaring.SugaringError):
        operation(one, two)


def test_point_hint():
    with pytest.raises(errors.WrongDimension) as caught:
        deg_c(20) + deg_c(5)
    assert str(caught.value) == (
        "other = 5 °C is a point on its scale; "
        "points neither add nor scale: a difference is written delta_c or delta_f"
    )


@pytest.mark.parametrize("operation", [operator.pow, operator.floordiv, operator.mod, operator.matmul])
def test_no_other_operators(operation):
    with pytest.raises(TypeError):
        operation(gal(1), 2)


def test_zero_division():
    with pytest.raises(ZeroDivisionError):
        gal(1) / 0
    with pytest.raises(ZeroDivisionError):
        gal(1) / gal(0)
    with pytest.raises(TypeError):
        1 / gal(1)


def test_order():
    assert gal(1) > litre(1) and litre(1) < gal(1) and gal(1) >= gal(1) and gal(1) <= gal(1)
    assert sorted([gal(1), litre(1), litre(9)]) == [litre(1), gal(1), litre(9)]
    assert deg_f(212) == deg_c(100) and deg_c(100) <= deg_f(212)
    assert gal(math.nan) != gal(math.nan)
    assert gal(1) != 1 and gal(1) != "1 gal" and gal(1) is not None


def test_format():
    tank = gal(40)
    assert (str(tank), f"{tank}", f"{tank:.1f}", f"{tank:litre:.1f}") == ("40 gal", "40 gal", "40.0", "151.4")
    assert f"{tank:litre}" == "151.41647136 L"
    assert f"{tank:>8.1f}|" == "    40.0|"
    with pytest.raises(errors.UnknownName, match='format has the unknown name "liter"; nearest: litre'):
        f"{tank:liter:.1f}"
    with pytest.raises(ValueError):
        f"{tank:litre:q}"


def test_a_result_keeps_its_bits():
    boils = sucrose.boiling_temperature(66.9, StationPressure.measured(kpa(96.5)))
    assert boils.unit is deg_c
    assert boils.to(deg_c) == boils.value == deg_c.__call__(boils.to(deg_c)).value
    assert boils.to(kelvin) == kelvin(boils.to(kelvin)).to(kelvin)
    assert boils.shown_in(deg_f).unit is deg_f
    assert pickle.loads(pickle.dumps(boils)).to(kelvin) == boils.to(kelvin)


def test_no_bare_number():
    for made in (float, int, round, complex, math.floor, np.float64, operator.index):
        with pytest.raises(TypeError):
            made(gal(1))
    for ufunc in (np.sqrt, np.add, np.sum):
        with pytest.raises(TypeError):
            ufunc(gal(1), gal(1)) if ufunc is np.add else ufunc(gal(1))
    assert type(np.float64(2) * gal(1)) is Quantity
    assert type(np.arange(3) * gal(1)) is Quantity
    with pytest.raises(AttributeError):
        gal(1).value = 2
    with pytest.raises(TypeError):
        Quantity(1, gal)
    with pytest.raises(TypeError):
        type("Mine", (Quantity,), {})


def test_columns():
    column = deg_c(np.array([0.0, 50.0, 100.0]))
    assert list(column.to(deg_f)) == [32.0, 122.0, 212.0]
    assert list((column - deg_c(10)).to(delta_c)) == [-10.0, 40.0, 90.0]
    assert list((gal([1, 2]) * 2).to(gal)) == [2.0, 4.0]
    assert list(gal([1, 2]) < gal(1.5)) == [True, False]
    with pytest.raises(TypeError):
        hash(column)
    deep = copy.deepcopy(column)
    column.to(deg_c)[0] = 5.0
    assert deep.to(deg_c)[0] == 0.0
    assert repr(gal([1, 2])) == "gal(array([1., 2.]))"


def test_measured_and_price():
    tank = measured(litre(95), litre(2))
    assert tank == measured(litre(95), litre(2)) != measured(litre(95), litre(3))
    assert hash(tank) == hash(measured(litre(95), litre(2)))
    assert (tank.value, tank.uncertainty) == (litre(95), litre(2))
    assert repr(measured(deg_c(4), delta_c(0.5))) == "measured(deg_c(4.0), delta_c(0.5))"
    assert pickle.loads(pickle.dumps(tank)) == tank
    wood = price(280, cord(1))
    assert wood == price(280, cord(1)) and repr(wood) == "price(280, cord(1.0))"
    assert pickle.loads(pickle.dumps(wood)) == wood
    for refused in (
        lambda: measured(litre(95), kg(2)),
        lambda: measured(litre(95), 2),
        lambda: measured(deg_c(4), deg_c(1)),
        lambda: measured("95 L", litre(2)),
        lambda: price("280", cord(1)),
        lambda: price(280, "1 cord"),
        lambda: price(True, cord(1)),
    ):
        with pytest.raises(sugaring.SugaringError):
            refused()
    with pytest.raises(AttributeError):
        tank.value = litre(1)


def test_absolute():
    air = StationPressure.measured(kpa(96.5))
    assert bar_gauge(7.6).absolute(air) == kpa(856.5)
    with pytest.raises(errors.WrongDimension):
        kpa(1).absolute(air)
    with pytest.raises(errors.WrongDimension):
        bar_gauge(1).absolute(kpa(96.5))


def test_station_pressure_travels():
    air = StationPressure.measured(kpa(96.5)).with_uncertainty(kpa(0.02))
    assert pickle.loads(pickle.dumps(air)) == air == copy.deepcopy(air)
    assert hash(pickle.loads(pickle.dumps(air))) == hash(air)
    assert air.origin == "measured" and air.uncertainty == kpa(0.02)
    assert air != StationPressure.measured(kpa(96.5))


def test_generics_at_run_time():
    assert Quantity[units.Volume, float].__origin__ is Quantity
    assert units.Unit[units.Volume].__origin__ is units.Unit
    assert units.Measured[units.Volume].__origin__ is units.Measured
