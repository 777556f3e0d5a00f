"""Columns of station pressures: made by naming the kind of reading, taken where columns are."""

import copy
import pickle

import numpy as np
import pandas as pd
import polars as pl
import pytest

from sugaring import SugaringError, day, sucrose
from sugaring.air import StationPressure, StationPressures, altimeter_setting
from sugaring.units import bar_gauge, deg_c, hpa, kpa, metre

READINGS = [96.5, 97.1, 101.3]


def one_by_one(strength=66.9):
    return [sucrose.boiling_temperature(strength, StationPressure.measured(kpa(p))).to(deg_c) for p in READINGS]


@pytest.mark.parametrize("column", [READINGS, tuple(READINGS), np.array(READINGS), pd.Series(READINGS)])
def test_each_reading_is_a_station(column):
    stations = StationPressure.measured(kpa(column))
    assert isinstance(stations, StationPressures)
    found = sucrose.boiling_temperature(66.9, stations).to(deg_c)
    assert type(found) is (pd.Series if isinstance(column, pd.Series) else np.ndarray)
    assert list(found) == one_by_one()


def test_units_and_other_columns_go_along():
    stations = StationPressure.measured(hpa(np.array(READINGS) * 10))
    assert np.allclose(sucrose.boiling_temperature(66.9, stations).to(deg_c), one_by_one(), rtol=0, atol=1e-11)
    strengths = np.array([0.0, 30.0, 66.9])
    found = sucrose.boiling_point_elevation(strengths, StationPressure.measured(kpa(READINGS)))
    each = zip(strengths, READINGS, strict=True)
    wanted = [sucrose.boiling_point_elevation(s, StationPressure.measured(kpa(p))) for s, p in each]
    assert [found.value[lane] for lane in range(3)] == [one.value for one in wanted]
    # A place whose reduction to sea level is wanted for every reading.
    assert len(altimeter_setting(StationPressure.measured(kpa(READINGS)), metre(410)).value) == 3


def test_it_broadcasts_as_other_columns_do():
    grid = sucrose.boiling_temperature(np.array([[0.0], [66.9]]), StationPressure.measured(kpa(READINGS))).to(deg_c)
    assert grid.shape == (2, 3)
    assert list(grid[1]) == one_by_one()


def test_polars_takes_it_in_an_expression():
    frame = pl.DataFrame({"kilopascal": READINGS})
    stations = StationPressure.measured(kpa(pl.col("kilopascal")))
    found = sucrose.boiling_temperature(pl.lit(66.9), stations, on_error="nan").to(deg_c)
    assert frame.select(found.alias("t"))["t"].to_list() == one_by_one()


def test_the_first_bad_reading_is_named():
    stations = StationPressure.measured(kpa([96.5, 965.0, 9.65]))
    with pytest.raises(SugaringError) as caught:
        sucrose.boiling_temperature(66.9, stations)
    assert (caught.value.argument, caught.value.index, caught.value.count) == ("station", 1, 2)
    assert str(caught.value) == "station = 965 kPa is outside 50 to 110 kPa; 965 hPa is 96.5 kPa: write hpa(965) (index 1; 2 of 3)"
    holes = sucrose.boiling_temperature(66.9, stations, on_error="nan").to(deg_c)
    assert list(np.isnan(holes)) == [False, True, True]


def test_it_says_what_it_is():
    stations = StationPressure.measured(kpa(np.array([96.5, 97.1])))
    assert (stations.origin, stations.uncertainty) == ("measured", kpa(0.1))
    assert list(stations.pressure.to(hpa)) == [965.0, 971.0]
    assert repr(stations) == "<StationPressures [96.5 97.1] kPa, measured>"
    again = pickle.loads(pickle.dumps(stations))
    assert list(again.pressure.to(kpa)) == [96.5, 97.1]
    assert list(copy.deepcopy(stations).pressure.to(kpa)) == [96.5, 97.1]
    assert StationPressures[np.ndarray].__origin__ is StationPressures
    with pytest.raises(TypeError):
        StationPressures()


def test_one_pressure_is_one_pressure():
    stations = StationPressure.measured(kpa(READINGS))
    with pytest.raises(SugaringError, match="StationPressure"):
        bar_gauge(1).absolute(stations)
    with pytest.raises(SugaringError):
        day.plan({"air": stations})
    for made, column in [(StationPressure.from_altitude, metre), (StationPressure.from_boiling_water, deg_c)]:
        with pytest.raises(SugaringError, match="one value"):
            made(column([1.0, 2.0]))
