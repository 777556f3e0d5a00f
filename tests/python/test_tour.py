"""The ten lines of the tour, and its mistakes with their texts."""

import subprocess
import sys

import numpy as np
import pytest

from sugaring import SugaringError, day, errors, sucrose, units
from sugaring.air import StationPressure
from sugaring.units import bar_gauge, deg_c, hpa, kg_per_m3, kpa, litre, metre

TEN_LINES = '''
from sugaring import day, sucrose
from sugaring.units import deg_c, kg_per_m3, litre, metre
print(f"{sucrose.density(66.9, deg_c(20)).to(kg_per_m3):.2f}")
print(day.plan({"air": {"altitude": metre(410)},
                "sap": [{"volume": litre(265), "brix": 1.98, "temperature": deg_c(4)}],
                "evaporator": {"pan": {"length": metre(0.61), "width": metre(1.22)}},
                "target": {"brix": 66.9}}))
'''
AIR = StationPressure.measured(kpa(96.5))


def test_ten_lines():
    ran = subprocess.run([sys.executable, "-c", TEN_LINES], capture_output=True, text=True, check=True)
    lines = ran.stdout.splitlines()
    assert lines[0] == "1328.19"
    page = " ".join(lines[1:])
    assert "265 L of sap at 1.98 °Bx  ->  19.9 kg at 26.6 °Bx, enough for 5.95 L" in page


def inputs(**changed):
    return {
        "air": {"altitude": metre(410)},
        "sap": [{"volume": litre(265), "brix": 1.98, "temperature": deg_c(4)}],
        "evaporator": {"pan": {"length": metre(0.61), "width": metre(1.22)}},
        "target": {"brix": 66.9},
        "samples": 0,
    } | changed


def membrane(**changed):
    element = {
        "flow": "0.9 m³/d",
        "pressure": bar_gauge(4.1),
        "temperature": deg_c(25),
        "salt": "500 mg/L",
        "recovery": "15 %",
        "rejection": "97 %",
    }
    element |= changed
    return {
        "element": element,
        "parallel": 2,
        "pressure": bar_gauge(7.6),
        "pressure_limit": bar_gauge(7.6),
        "pump": {"flow": "500 L/h"},
        "run": {"recirculate_until": {"brix": 4}},
    }


SLIPS = {
    "a temperature in the other scale": (
        lambda: sucrose.brix_from_boiling(deg_c(217), AIR),
        errors.OutOfRange,
        "temperature = 217 °C is outside 60 to 132 °C; 217 °F is 102.8 °C: write deg_f(217)",
    ),
    "per cent for a share": (
        lambda: day.plan(inputs(membrane=membrane(recovery=15))),
        errors.OutOfRange,
        'membrane.element.recovery = 15 is outside 0.01 to 0.8; 15 % is written percent(15), "15 %" or 0.15',
    ),
    "a gauge for a barometer": (
        lambda: StationPressure.measured(bar_gauge(0.97)),
        errors.WrongDimension,
        "pressure = 0.97 bar gauge is a gauge pressure; "
        "an absolute one is needed: a barometer's 970 hPa is hpa(970)",
    ),
    "an altimeter setting for a station pressure": (
        lambda: day.plan(inputs(air={"station_pressure": "30.02 inHg", "altitude": "410 m"})),
        errors.Inconsistent,
        "air.station_pressure = 101.659 kPa does not fit altitude = 410 m; "
        "it looks like an altimeter setting, which means 96.82 kPa here: write altimeter_setting",
    ),
    "a misspelt unit": (
        lambda: day.plan(inputs(sap=[{"volume": "40 gall", "brix": 2, "temperature": deg_c(4)}])),
        errors.UnknownUnit,
        'sap[0].volume has the unknown unit "gall"; nearest: gal (US gallon), imp gal',
    ),
    "too little sap": (
        lambda: day.plan(inputs(sap=[{"volume": litre(15), "brix": 1.98, "temperature": deg_c(4)}])),
        errors.Unreachable,
        "evaporator.pan.least_depth = 25 mm cannot be kept; ",
    ),
    "no number": (
        lambda: sucrose.density(float("nan"), deg_c(20)),
        errors.NotFinite,
        "brix = NaN is not a finite number",
    ),
    "one lane of a list": (
        lambda: sucrose.density([2, 2, 2], deg_c([4, 5, -30])),
        errors.OutOfRange,
        "temperature = -30 °C is outside 0 to 100 °C (index 2; 1 of 3)",
    ),
    "volume and mass": (
        lambda: day.plan(
            inputs(sap=[{"volume": "170 L", "mass": "180 kg", "brix": 1.8, "temperature": deg_c(3)}]),
        ),
        errors.Inconsistent,
        "sap[0].mass = 180 kg does not fit volume = 170 L; 170 L at 1.8 °Bx and 3 °C is 171.2 kg: give one of them",
    ),
    "no unit": (
        lambda: sucrose.density(66.9, 20),
        errors.WrongDimension,
        "temperature = 20 needs a unit: write deg_c(20) or deg_f(20)",
    ),
    "a misspelt key": (
        lambda: day.plan(inputs(membrane=membrane() | {"presure": bar_gauge(7.6)})),
        errors.UnknownName,
        'membrane has the unknown name "presure"; nearest: pressure',
    ),
    "an aim beyond the rig": (
        lambda: day.plan(inputs(membrane=membrane() | {"run": {"recirculate_until": {"brix": 12}}})),
        errors.Unreachable,
        "membrane.run.recirculate_until.brix = 12 °Bx cannot be reached; at 7.6 bar gauge and 4 °C the osmotic limit",
    ),
    "a pressure for a station pressure": (
        lambda: sucrose.boiling_temperature(66.9, kpa(96.5)),
        errors.WrongDimension,
        "station = 96.5 kPa is an absolute pressure; "
        "a station pressure is needed: write StationPressure.measured(kpa(96.5))",
    ),
    "JSON that is no JSON": (
        lambda: day.plan('{"air": 1'),
        errors.Unreadable,
        'json = "{"air": 1" cannot be read; line 1 column 9: the text ends within an object',
    ),
}


@pytest.mark.parametrize("slip", SLIPS)
def test_slip(slip):
    make, kind, text = SLIPS[slip]
    with pytest.raises(kind) as caught:
        make()
    error = caught.value
    assert str(error).startswith(text)
    assert isinstance(error, SugaringError) and isinstance(error, ValueError)
    assert error.kind == kind.kind
    if error.hint and error.index is None:
        assert error.hint in str(error)


def test_fields_of_an_error():
    with pytest.raises(errors.OutOfRange) as caught:
        sucrose.density(66.9, deg_c([20, 180]))
    error = caught.value
    assert (error.kind, error.argument, error.value, error.unit) == ("out_of_range", "temperature", 180.0, "°C")
    assert (error.range, error.index, error.count) == ((0.0, 100.0), 1, 1)
    assert error.hint == "180 °F is 82.22 °C: write deg_f(180)"
    assert error.reference is not None and error.reference.startswith("ICUMSA")


def test_hints_work_as_written():
    assert units.deg_f(217).to(deg_c) == pytest.approx(102.78, abs=0.01)
    assert hpa(970) == kpa(97)
    assert np.isfinite(sucrose.density(66.9, deg_c(20)).to(kg_per_m3))
