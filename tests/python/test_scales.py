"""Density scales by their words, and headings of columns."""

import pickle

import numpy as np
import pytest

from sugaring import SugaringError, sucrose, units
from sugaring.units import (
    apparent_relative_density_20_20,
    baume_20_20,
    baume_60_60_f,
    fraction,
    kg_per_m3,
    litre,
    measured,
    relative_density_20_20,
)

SCALES = [getattr(units, name) for name in units.__all__ if "_20" in name or "_60" in name]


def test_the_pair_of_the_trade():
    assert round(sucrose.on_scale(66.9, baume_20_20).to(baume_20_20), 3) == 36.025
    assert round(sucrose.on_scale(66.9, baume_60_60_f).to(baume_60_60_f), 2) == 36.12
    assert round(sucrose.brix_from_scale(baume_20_20(36)), 2) == 66.85
    assert f"{sucrose.on_scale(66.9, baume_20_20):.2f}" == "36.03"


@pytest.mark.parametrize("scale", SCALES, ids=repr)
def test_there_and_back(scale):
    brix = np.linspace(0, 85, 171)
    marks = sucrose.on_scale(brix, scale)
    assert np.abs(sucrose.brix_from_scale(marks) - brix).max() < 1e-9
    assert [sucrose.on_scale(float(x), scale).to(scale) for x in brix] == list(marks.to(scale))
    data = {"value": marks.to(scale)[100], "unit": scale.symbol}
    assert sucrose.brix_from_scale(data) == sucrose.brix_from_scale(marks)[100]
    mark = pickle.loads(pickle.dumps(scale(1.2)))
    assert mark == scale(1.2) and units.parse(str(mark)) == mark


@pytest.mark.parametrize("function", [sucrose.on_scale, sucrose.brix_from_scale], ids=lambda f: f.__name__)
def test_functions_travel(function):
    assert function.__module__ == "sugaring.sucrose"
    assert pickle.loads(pickle.dumps(function)) is function
    for part in ("Parameters", "Returns", "Raises", ">>> "):
        assert part in function.__doc__


def test_points_neither_add_nor_scale():
    with pytest.raises(SugaringError):
        baume_20_20(36) + baume_20_20(1)
    with pytest.raises(SugaringError):
        2 * baume_20_20(36)
    with pytest.raises(SugaringError):
        baume_20_20(36) - baume_60_60_f(36)
    assert baume_20_20(36) - baume_20_20(35.5) == fraction(0.5)
    assert measured(baume_20_20(36), 0.1).uncertainty == 0.1


@pytest.mark.parametrize(
    ("call", "text"),
    [
        (
            lambda: sucrose.brix_from_scale(baume_20_20(66.9)),
            "value = 66.9 °Bé 20/20 is outside 0 to 44.9 °Bé 20/20; 66.9 °Bx is 36.03 °Bé 20/20: is it °Brix already?",
        ),
        (
            lambda: sucrose.brix_from_scale(kg_per_m3(1328)),
            "value = 1328 kg/m³ is a density; a degree Baumé (20/20 °C) is needed",
        ),
        (lambda: sucrose.brix_from_scale(36), "value = 36 needs a unit: write baume_20_20(36)"),
        (
            lambda: sucrose.on_scale(66.9, litre),
            'scale has the unknown name "litre"; known: baume_20_20, baume_60_60_f, relative_density_20_20, '
            "relative_density_60_60_f, relative_density_20_4, apparent_relative_density_20_20",
        ),
        (
            lambda: sucrose.on_scale(66.9, "baume"),
            "scale = 'baume' cannot be read; the word of a density scale such as baume_20_20 is needed",
        ),
        (lambda: sucrose.on_scale(90, baume_20_20), "brix = 90 °Bx is outside 0 to 85 °Bx"),
        (
            lambda: sucrose.brix_from_scale(relative_density_20_20([1.1, 0.9])),
            "value = 0.9 SG 20/20 is outside 1 to 1.4486 SG 20/20 (index 1; 1 of 2)",
        ),
        (
            lambda: units.parse("36 °Bé"),
            'has the unknown unit "°Bé"; nearest: °Bé 20/20, °Bé 60/60 °F',
        ),
    ],
)
def test_slips(call, text):
    with pytest.raises(SugaringError) as caught:
        call()
    assert str(caught.value) == text


def test_holes_become_nan():
    back = sucrose.brix_from_scale(apparent_relative_density_20_20([1.1, 0.9]), on_error="nan")
    assert np.isnan(back).tolist() == [False, True]


def test_headings():
    assert units.heading("temp [°F]") == ("temp", units.deg_f)
    assert units.heading("note") == ("note", None)
    with pytest.raises(SugaringError, match='sap has the unknown unit "gall"; nearest: gal'):
        units.heading("sap [gall]")
    with pytest.raises(SugaringError, match="a heading such as"):
        units.heading(3)
