"""Water, air and roots against libraries that others wrote; the largest deviations stand in the book.

``SUGARING_WRITE=1 python -m pytest tests/python/test_independent.py`` writes them anew: the file of figures and the
table of the book's page. Read the difference.
"""

import json
import math
import os
import warnings
from dataclasses import dataclass
from importlib.metadata import version
from pathlib import Path

import CoolProp.CoolProp as coolprop
import numpy as np
import pytest
from ambiance import Atmosphere
from iapws import _iapws, iapws97
from scipy.integrate import quad
from scipy.optimize import brentq
from scipy.special import ndtri

from sugaring import air, sucrose, uncertainty, water
from sugaring.air import StationPressure
from sugaring.units import (
    apparent_relative_density_20_20,
    bar,
    baume_20_20,
    baume_60_60_f,
    deg_c,
    joule_per_kg,
    kelvin,
    kg_per_m3,
    kj_per_kg,
    kj_per_kg_k,
    kpa,
    metre,
    pa,
    pascal_s,
    relative_density_20_4,
    relative_density_20_20,
    relative_density_60_60_f,
    w_per_m_k,
)

TOP = Path(__file__).resolve().parents[2]
FIGURES = TOP / "tests" / "conformance" / "independent.json"
PAGE = TOP / "book" / "src" / "independent.md"
GAS, WATER_MOLAR_MASS = 8.31446261815324, 0.018015268


@dataclass(frozen=True)
class Comparison:
    """One function over a range, against one library."""

    what: str
    over: str
    against: str
    package: str
    #: Of the deviation; "%" is of the other's value.
    unit: str
    allowed: float
    because: str
    #: Ours and theirs, columns of the same length.
    values: object

    def deviation(self):
        ours, theirs = (np.asarray(column, dtype=float) for column in self.values())
        assert ours.shape == theirs.shape and ours.size > 20
        off = ours - theirs
        if self.unit == "%":
            off = 100 * off / theirs
        assert np.isfinite(off).all()
        return float(np.abs(off).max())

    def record(self):
        keys = ("what", "over", "against", "package", "unit", "allowed", "because")
        return {key: getattr(self, key) for key in keys} | {"version": version(self.package)}


def grid(low, high, points=131):
    return np.linspace(low, high, points)


def saturated(property_name, quality, celsius):
    return coolprop.PropsSI(property_name, "T", celsius + 273.15, "Q", quality, "Water")


def liquid(property_name, celsius):
    return coolprop.PropsSI(property_name, "T", celsius + 273.15, "P", 1e5, "Water")


def printed(key, celsius):
    return np.array([_iapws._Liquid(x + 273.15)[key] for x in celsius])


SAME = "the same release, programmed twice: rounding"
LINE = ("IAPWS-95", "CoolProp")
STEAM = ("IAPWS-IF97", "iapws")
LIQUID = ("IAPWS SR6-08", "iapws")
COLD, HOT, LIQUIDS = grid(0.01, 130), grid(130, 373.9), grid(1, 98)
WIDE = grid(-19.9, 109.9)


def latent(celsius):
    return water.latent_heat(deg_c(celsius)).to(kj_per_kg)


def latent_95(celsius):
    return (saturated("H", 1, celsius) - saturated("H", 0, celsius)) / 1000


def latent_97(celsius):
    states = ((iapws97.IAPWS97(T=x + 273.15, x=1), iapws97.IAPWS97(T=x + 273.15, x=0)) for x in celsius)
    return [steam.h - water.h for steam, water in states]


def line(celsius):
    return water.saturation_pressure(deg_c(celsius)).to(pa)


WATER = [
    Comparison(
        "water.saturation_pressure", "0.01 to 373.9 °C", *STEAM, "%", 1e-9, SAME,
        lambda: (line(grid(0.01, 373.9)), [1e6 * iapws97._PSat_T(x + 273.15) for x in grid(0.01, 373.9)]),
    ),
    Comparison(
        "water.saturation_temperature", "0.612 to 22 000 kPa", *STEAM, "K", 1e-9, SAME,
        lambda: (
            water.saturation_temperature(kpa(np.geomspace(0.612, 22e3, 131))).to(kelvin),
            [iapws97._TSat_P(x / 1e3) for x in np.geomspace(0.612, 22e3, 131)],
        ),
    ),
    Comparison(
        "water.saturation_pressure", "0.01 to 130 °C", *LINE, "%", 0.0076, "stated: 0.0076 % of IAPWS-95",
        lambda: (line(COLD), saturated("P", 0, COLD)),
    ),
    Comparison(
        "water.saturation_pressure", "130 to 373.9 °C", *LINE, "%", 0.02, "stated: 0.02 % of IAPWS-95",
        lambda: (line(HOT), saturated("P", 0, HOT)),
    ),
    Comparison(
        "water.saturation_temperature", "60 to 110 kPa", *LINE, "K", 0.00023, "stated: 0.00023 K",
        lambda: (
            water.saturation_temperature(kpa(grid(60, 110))).to(kelvin),
            coolprop.PropsSI("T", "P", 1e3 * grid(60, 110), "Q", 0, "Water"),
        ),
    ),
    Comparison(
        "water.latent_heat", "0.01 to 130 °C", *LINE, "kJ/kg", 0.38, "stated: 0.38 kJ/kg at 0 °C, where it is largest",
        lambda: (latent(COLD), latent_95(COLD)),
    ),
    Comparison(
        "water.latent_heat", "25 to 130 °C", *LINE, "kJ/kg", 0.225, "stated: 0.22 kJ/kg, to the printed digit",
        lambda: (latent(grid(25, 130)), latent_95(grid(25, 130))),
    ),
    Comparison(
        "water.latent_heat", "0.01 to 130 °C", *STEAM, "kJ/kg", 0.38, "as against IAPWS-95",
        lambda: (latent(COLD), latent_97(COLD)),
    ),
    Comparison(
        "water.saturated_liquid_density", "0.01 to 130 °C", *LINE, "%", 0.02, "none stated: that of the boiling line",
        lambda: (water.saturated_liquid_density(deg_c(COLD)).to(kg_per_m3), saturated("D", 0, COLD)),
    ),
    Comparison(
        "water.saturated_vapour_density", "0.01 to 130 °C", *LINE, "%", 0.02, "none stated: that of the boiling line",
        lambda: (water.saturated_vapour_density(deg_c(COLD)).to(kg_per_m3), saturated("D", 1, COLD)),
    ),
    Comparison(
        "water.density", "−19.9 to 109.9 °C", *LIQUID, "kg/m³", 1e-9, SAME,
        lambda: (water.density(deg_c(WIDE)).to(kg_per_m3), printed("rho", WIDE)),
    ),
    Comparison(
        "water.specific_heat", "−19.9 to 109.9 °C", *LIQUID, "kJ/(kg K)", 1e-9, SAME,
        lambda: (water.specific_heat(deg_c(WIDE)).to(kj_per_kg_k), printed("cp", WIDE)),
    ),
    Comparison(
        "water.enthalpy", "−19.9 to 109.9 °C", *LIQUID, "kJ/kg", 1e-9, SAME + ", from 0 °C",
        lambda: (water.enthalpy(deg_c(WIDE)).to(kj_per_kg), printed("h", WIDE) - _iapws._Liquid(273.15)["h"]),
    ),
    Comparison(
        "water.viscosity", "−19.9 to 109.9 °C", *LIQUID, "%", 1e-9, SAME,
        lambda: (water.viscosity(deg_c(WIDE)).to(pascal_s), printed("mu", WIDE)),
    ),
    Comparison(
        "water.thermal_conductivity", "−19.9 to 109.9 °C", *LIQUID, "%", 1e-9, SAME,
        lambda: (water.thermal_conductivity(deg_c(WIDE)).to(w_per_m_k), printed("k", WIDE)),
    ),
    Comparison(
        "water.density", "1 to 98 °C", *LINE, "kg/m³", 0.00004, "stated: 0.00004 kg/m³ at 0.1 MPa",
        lambda: (water.density(deg_c(LIQUIDS)).to(kg_per_m3), liquid("D", LIQUIDS)),
    ),
    Comparison(
        "water.specific_heat", "1 to 98 °C", *LINE, "kJ/(kg K)", 0.00015, "stated: 0.00015 kJ/(kg K)",
        lambda: (water.specific_heat(deg_c(LIQUIDS)).to(kj_per_kg_k), liquid("C", LIQUIDS) / 1000),
    ),
    Comparison(
        "water.enthalpy", "1 to 98 °C", *LINE, "kJ/kg", 0.00015 * 97, "that of the specific heat, over 97 K",
        lambda: (
            water.enthalpy(deg_c(LIQUIDS)).to(kj_per_kg) - water.enthalpy(deg_c(1)).to(kj_per_kg),
            (liquid("H", LIQUIDS) - liquid("H", LIQUIDS[:1])) / 1000,
        ),
    ),
    Comparison(
        "water.viscosity", "1 to 98 °C", "IAPWS R12-08", "CoolProp", "%", 0.004, "stated: 0.004 %",
        lambda: (water.viscosity(deg_c(LIQUIDS)).to(pascal_s), liquid("V", LIQUIDS)),
    ),
    Comparison(
        "water.thermal_conductivity", "1 to 98 °C", "IAPWS R15-11", "CoolProp", "%", 0.004, "stated: 0.004 %",
        lambda: (water.thermal_conductivity(deg_c(LIQUIDS)).to(w_per_m_k), liquid("L", LIQUIDS)),
    ),
]

ALTITUDES = grid(-500, 11_000)
#: p = p₀ (T/T₀)^k, so that a part in 1e6 of k is ln(p/p₀) parts of p: 1.5 of them at the top.
TWO_CONSTANTS = "the two standards round the gas constant of air apart, by 0.7 parts in a million"

AIR = [
    Comparison(
        "air.pressure_at_altitude", "−500 to 11 000 m", "ICAO Standard Atmosphere 1993", "ambiance", "%", 1.1e-4,
        TWO_CONSTANTS,
        lambda: (air.pressure_at_altitude(metre(ALTITUDES)).to(pa), Atmosphere(ALTITUDES).pressure),
    ),
    Comparison(
        "air.altitude_at_pressure", "22.7 to 107.4 kPa", "ICAO Standard Atmosphere 1993", "ambiance", "m", 0.01,
        TWO_CONSTANTS,
        lambda: (
            air.altitude_at_pressure(kpa(grid(22.7, 107.4))).to(metre),
            Atmosphere.from_pressure(1e3 * grid(22.7, 107.4)).h,
        ),
    ),
]


def ice(temperature):
    """ln of the activity that ice keeps: Gibbs energies of IAPWS R10-06 and SR6-08. Not the supercooled routine."""
    with warnings.catch_warnings(action="ignore"):
        difference = _iapws._Ice(temperature, 0.1)["g"] - _iapws._Liquid(temperature)["g"]
    return 1e3 * difference * WATER_MOLAR_MASS / (GAS * temperature)


def frozen(strengths):
    # Under 0.1 MPa of its own ice melts at 0.0026 °C; the relation counts from 0 °C.
    melts = brentq(ice, 273.1, 273.2, xtol=1e-12)
    for strength in strengths:
        yield melts - brentq(lambda t: math.log(sucrose.water_activity(strength, kelvin(t))) - ice(t), 258.2, melts)


def depression(strengths):
    return 273.15 - sucrose.freezing_temperature(strengths).to(kelvin)


FREEZING = [
    Comparison(
        "sucrose.freezing_temperature", over, "IAPWS R10-06 and SR6-08 with our activity", "iapws", "K", allowed,
        because, lambda strengths=strengths: (depression(strengths), list(frozen(strengths))),
    )
    for over, strengths, allowed, because in [
        ("0.5 to 56.9 °Bx", grid(0.5, 56.9, 30), 0.0003, "stated: 0.3 mK to −10 °C"),
        ("57 to 60 °Bx", grid(57, 60, 21), 0.002, "stated: 2 mK to −15 °C"),
    ]
]

SCALES = [
    baume_20_20,
    baume_60_60_f,
    relative_density_20_20,
    relative_density_60_60_f,
    relative_density_20_4,
    apparent_relative_density_20_20,
]
BRENT = ("brentq over the function it inverts", "scipy")
STEP = "a root is a root"


def roots(forward, values, low, high):
    """SciPy's root of ``forward(x, other)`` for each value and its other argument."""
    return [brentq(lambda x: forward(x, *other) - value, low, high, xtol=1e-13) for value, *other in values]


def pairs(low, high, other_low, other_high):
    """Points of both ranges, corners among them."""
    first, second = np.meshgrid(grid(low, high, 21), grid(other_low, other_high, 7))
    return first.ravel(), second.ravel()


def of_brix(inverse, forward, unit, strongest, coldest, hottest):
    """The inverse of a property of strength and temperature."""

    def both():
        strengths, celsius = pairs(0, strongest, coldest, hottest)
        values = [forward(b, deg_c(t)) for b, t in zip(strengths, celsius, strict=True)]
        numbers = [value if unit is None else value.to(unit) for value in values]
        ours = [
            inverse(number if unit is None else unit(number), deg_c(t))
            for number, t in zip(numbers, celsius, strict=True)
        ]
        plain = (lambda b, t: forward(b, deg_c(t))) if unit is None else (lambda b, t: forward(b, deg_c(t)).to(unit))
        # Where the value of a corner is rounded inward there is no root to bracket but the corner.
        theirs = [
            b if b in (0.0, strongest) else roots(plain, [(number, t)], 0, strongest)[0]
            for b, number, t in zip(strengths, numbers, celsius, strict=True)
        ]
        return ours, theirs

    return both


def of_scale(word):
    """The inverse of a density scale."""

    def both():
        strengths = grid(0, 85, 61)
        marks = [sucrose.on_scale(b, word) for b in strengths]
        ours = [sucrose.brix_from_scale(mark) for mark in marks]
        inner = roots(lambda b: sucrose.on_scale(b, word).to(word), [(mark.to(word),) for mark in marks[1:-1]], 0, 85)
        return ours, [0.0, *inner, 85.0]

    return both


def boiling():
    """Where the vapour pressure of the solution, by its activity, is that of the air."""
    ours, theirs = [], []
    for strength, kilopascal in zip(*pairs(0, 85, 50, 110), strict=True):
        ours.append(sucrose.boiling_temperature(strength, StationPressure.measured(kpa(kilopascal))).to(kelvin))

        def excess(t, strength=strength, kilopascal=kilopascal):
            steam = water.saturation_pressure(kelvin(t)).to(kpa)
            return math.log(steam) + math.log(sucrose.water_activity(strength, kelvin(t))) - math.log(kilopascal)

        theirs.append(brentq(excess, 353.15, 405.15, xtol=1e-12))
    return ours, theirs


def boiled():
    ours, theirs = [], []
    for strength, kilopascal in zip(*pairs(0.5, 84.5, 50, 110), strict=True):
        station = StationPressure.measured(kpa(kilopascal))
        boils = sucrose.boiling_temperature(strength, station)
        ours.append(sucrose.brix_from_boiling(boils, station))
        celsius = boils.to(deg_c)
        forward = lambda b, station=station: sucrose.boiling_temperature(b, station).to(deg_c)  # noqa: E731
        theirs += roots(forward, [(celsius,)], 0, 85)
    return ours, theirs


def of_one(inverse, forward, low, high, values):
    return lambda: ([inverse(value) for value in values], roots(forward, [(value,) for value in values], low, high))


ROOTS = [
    Comparison(
        "sucrose.brix_from_density", "0 to 85 °Bx, 0 to 100 °C", *BRENT, "°Bx", 1e-9, STEP,
        of_brix(sucrose.brix_from_density, sucrose.density, kg_per_m3, 85, 0, 100),
    ),
    Comparison(
        "sucrose.brix_from_refractive_index", "0 to 85 °Bx, 5 to 60 °C", *BRENT, "°Bx", 1e-9, STEP,
        of_brix(sucrose.brix_from_refractive_index, sucrose.refractive_index, None, 85, 5, 60),
    ),
    Comparison(
        "sucrose.brix_from_osmotic_pressure", "0 to 60 °Bx, 0 to 50 °C", *BRENT, "°Bx", 1e-9, STEP,
        of_brix(sucrose.brix_from_osmotic_pressure, sucrose.osmotic_pressure, bar, 60, 0, 50),
    ),
    *(
        Comparison(
            "sucrose.brix_from_scale", f"0 to 85 °Bx, {word.word}", *BRENT, "°Bx", 1e-9, STEP, of_scale(word)
        )
        for word in SCALES
    ),
    Comparison("sucrose.brix_from_boiling", "0.5 to 84.5 °Bx, 50 to 110 kPa", *BRENT, "°Bx", 1e-9, STEP, boiled),
    Comparison(
        "sucrose.brix_from_freezing", "0.5 to 59.5 °Bx", *BRENT, "°Bx", 1e-9, STEP,
        of_one(
            lambda t: sucrose.brix_from_freezing(deg_c(t)),
            lambda b: sucrose.freezing_temperature(b).to(deg_c), 0, 60,
            sucrose.freezing_temperature(grid(0.5, 59.5, 61)).to(deg_c),
        ),
    ),
    Comparison(
        "sucrose.saturation_temperature", "63.7 to 82.6 °Bx", *BRENT, "K", 1e-9, STEP,
        of_one(
            lambda b: sucrose.saturation_temperature(b).to(deg_c),
            lambda t: sucrose.solubility(deg_c(t)), -13, 100, grid(63.7, 82.6, 61),
        ),
    ),
    Comparison(
        "sucrose.boiling_temperature", "0 to 85 °Bx, 50 to 110 kPa", "brentq over ln p_sat + ln a_w − ln p", "scipy",
        "K", 1e-9, STEP, boiling,
    ),
    Comparison(
        "water.saturation_temperature", "1 to 22 000 kPa", *BRENT, "K", 1e-9, STEP,
        of_one(
            lambda p: water.saturation_temperature(kpa(p)).to(deg_c),
            lambda t: water.saturation_pressure(deg_c(t)).to(kpa), 0, 373.946, np.geomspace(1, 22e3, 61),
        ),
    ),
    Comparison(
        "air.altitude_at_pressure", "22.7 to 107.4 kPa", *BRENT, "m", 1e-5, "1e-9 of 11 000 m",
        of_one(
            lambda p: air.altitude_at_pressure(kpa(p)).to(metre),
            lambda z: air.pressure_at_altitude(metre(z)).to(kpa), -500, 11_000, grid(22.7, 107.4, 61),
        ),
    ),
]


def heats(specific_heat):
    def both():
        ends = grid(1, 110, 31)
        summed = [quad(lambda t: specific_heat(deg_c(t)).to(kj_per_kg_k), 0, end, epsabs=1e-10)[0] for end in ends]
        return summed, ends

    return both


def water_heat():
    summed, ends = heats(water.specific_heat)()
    return water.enthalpy(deg_c(ends)).to(kj_per_kg), summed


def syrup_heat():
    summed, ends = heats(lambda t: sucrose.specific_heat(66.9, t))()
    heat = sucrose.heat_to_warm(66.9, deg_c(np.zeros_like(ends)), to_temperature=deg_c(ends))
    return heat.to(joule_per_kg) / 1000, summed


SUMS = [
    Comparison(
        "water.enthalpy", "0 to 110 °C", "quad over the specific heat", "scipy", "kJ/kg", 2e-8 * 110,
        "stated: the printed enthalpy has the slope of the printed specific heat within 2e-8 kJ/(kg K)", water_heat,
    ),
    Comparison(
        "sucrose.heat_to_warm", "66.9 °Bx, 0 to 110 °C", "quad over the specific heat", "scipy", "kJ/kg", 2e-8 * 110,
        "that of water's enthalpy", syrup_heat,
    ),
    Comparison(
        "uncertainty.normal_quantile", "1e-12 to 1 − 1e-12", "ndtri", "scipy", "", 1e-9, "both are exact to rounding",
        lambda: [
            np.array([f(p) for p in np.concatenate([np.geomspace(1e-12, 0.5, 99), 1 - np.geomspace(1e-12, 0.5, 99)])])
            for f in (uncertainty.normal_quantile, ndtri)
        ],
    ),
]

SECTIONS = {
    "Water": WATER,
    "The standard atmosphere": AIR,
    "Freezing": FREEZING,
    "Roots": ROOTS,
    "Sums and the normal distribution": SUMS,
}
ALL = [comparison for section in SECTIONS.values() for comparison in section]
#: What was found, for the summary and for the file.
FOUND = {}


@pytest.mark.parametrize("index", range(len(ALL)), ids=lambda index: f"{ALL[index].what}-{ALL[index].against}")
def test_deviation(index):
    comparison = ALL[index]
    FOUND[index] = largest = comparison.deviation()
    assert largest <= comparison.allowed
    if "SUGARING_WRITE" in os.environ:
        return
    stored = json.loads(FIGURES.read_text("utf-8"))[index]
    assert comparison.record() == {key: value for key, value in stored.items() if key != "largest"}
    # Rounding differs a little from machine to machine.
    assert largest == pytest.approx(stored["largest"], rel=0.02, abs=1e-3 * comparison.allowed)


def figure(number, digits):
    number = float(f"{number:.{digits}g}")
    if number >= 1e-6:
        return np.format_float_positional(number, trim="-")
    mantissa, exponent = f"{number:e}".split("e")
    return f"{float(mantissa):g}e{int(exponent)}"


def lines(rows):
    """The table of one section."""
    yield "| function | over | against | largest deviation | allowed |"
    yield "| --- | --- | --- | --- | --- |"
    for row in rows:
        largest, allowed = (f"{figure(row[key], digits)} {row['unit']}".strip() for key, digits in SHOWN.items())
        other = f"{row['against']} ({row['package']} {row['version']})"
        yield f"| `{row['what']}` | {row['over']} | {other} | {largest} | {allowed}: {row['because']} |"


SHOWN = {"largest": 2, "allowed": 3}


def tables(rows):
    rows = iter(rows)
    for title, section in SECTIONS.items():
        yield "\n".join([f"## {title}", "", *lines([next(rows) for _ in section])])


def summary():
    """A line for each comparison, for the end of the run."""
    for index, largest in FOUND.items():
        comparison = ALL[index]
        other = f"{comparison.against} ({comparison.package} {version(comparison.package)})"
        found = f"{figure(largest, 2)} of {figure(comparison.allowed, 3)} {comparison.unit}".strip()
        yield f"independent: {comparison.what}, {comparison.over}, against {other}: {found}"


def test_the_book_prints_them():
    head, _, rest = PAGE.read_text("utf-8").partition("<!-- deviations -->\n")
    written, _, tail = rest.partition("<!-- so far -->")
    if "SUGARING_WRITE" in os.environ and len(FOUND) == len(ALL):
        rows = [comparison.record() | {"largest": float(f"{FOUND[index]:.3g}")} for index, comparison in enumerate(ALL)]
        FIGURES.write_text(json.dumps(rows, indent=1, ensure_ascii=False) + "\n", "utf-8")
        written = "\n" + "\n\n".join(tables(rows)) + "\n\n"
        PAGE.write_text(f"{head}<!-- deviations -->\n{written}<!-- so far -->{tail}", "utf-8")
    rows = json.loads(FIGURES.read_text("utf-8"))
    assert len(rows) == len(ALL)
    assert written.strip() == "\n\n".join(tables(rows))
