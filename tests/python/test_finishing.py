"""Where syrup is done: the numbers of the core, to the bit, and its refusals."""

import copy
import pickle

import pytest

from sugaring import SugaringError, finish, sucrose
from sugaring.air import StationPressure
from sugaring.units import deg_c, delta_c, kelvin, kpa

AIR = StationPressure.measured(kpa(96.5))
# The same numbers stand in the tests of Rust and JavaScript.
NUMBERS = [375.91873721720594, 4.155718884603004, 371.76301833260294, 0.06680367825163754]


def test_the_day_of_the_demo():
    done = finish.finishing_point(66.9, AIR)
    assert f"{done.temperature:deg_c:.1f}" == "102.8"
    assert done.temperature == sucrose.boiling_temperature(66.9, AIR)
    assert [done.temperature.to(kelvin), done.elevation.to(delta_c)] == NUMBERS[:2]
    assert [done.water_boils_at.to(kelvin), done.uncertainty.to(delta_c)] == NUMBERS[2:]


def test_maple_boils_hotter_than_sucrose():
    plain, maple = (finish.finishing_point(66.9, AIR, non_sucrose_rise=rise) for rise in (None, delta_c(0.2)))
    assert abs((maple.temperature - plain.temperature).to(delta_c) - 0.2) < 1e-12


def test_it_travels():
    done = finish.finishing_point(66.9, AIR)
    for other in (pickle.loads(pickle.dumps(done)), copy.deepcopy(done)):
        assert other == done and hash(other) == hash(done)
    assert repr(done) == "<FinishingPoint 102.77 °C, 4.16 K above water>"


@pytest.mark.parametrize(
    ("call", "text"),
    [
        (lambda: finish.finishing_point(0.669, AIR), "target = 0.669 °Bx is outside 50 to 85 °Bx; 66.9 % is written 66.9"),
        (
            lambda: finish.finishing_point(66.9, AIR, non_sucrose_rise=deg_c(0.2)),
            "non_sucrose_rise = 0.2 °C is a temperature; a difference of temperatures is needed: write delta_c or delta_f",
        ),
        (lambda: finish.finishing_point(66.9, AIR, non_sucrose_rise=delta_c(7)), "non_sucrose_rise = 7 Δ°C is outside 0 to 1 Δ°C"),
        (
            lambda: finish.finishing_point(float("nan"), AIR),
            "target = NaN is not a finite number",
        ),
    ],
)
def test_slips(call, text):
    with pytest.raises(SugaringError) as caught:
        call()
    assert str(caught.value) == text


def test_a_bare_pressure_is_refused():
    with pytest.raises(SugaringError) as caught:
        finish.finishing_point(66.9, kpa(96.5))
    assert caught.value.argument == "station" and caught.value.kind == "wrong_dimension"
