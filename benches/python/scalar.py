"""What a call costs in Python, against what else one would use: best of seven, both sides in one process.

Run it with the package installed: `python benches/python/scalar.py [WHEEL]`. Peers that are not installed are named.
"""

import math
import subprocess
import sys
from pathlib import Path

import numpy as np
import peers
from peers import head, line, package, race

from sugaring import sucrose, water
from sugaring.air import StationPressure
from sugaring.units import deg_c, gal, kg_per_m3, kpa, litre


def against(what, ours, theirs, goal, number=2_000, apart=1e-6):
    """One against another; both must agree first."""
    assert abs(ours() - theirs()) <= apart, f"{what}: {ours()} and {theirs()}"
    mine, peer = race(ours, theirs, number=number)
    line(what, mine, peer, goal)


def bare(brix, celsius):
    """Density as one writes it with floats and no units: every constant in its place."""
    w, u, t = brix / 100, (celsius - 20) / 100, celsius
    water = 999.83952 + t * (16.952577 + t * (-7.9905127e-3 + t * (-46.241757e-6 + t * (105.84601e-9 - t * 281.03006e-12))))
    b1 = 385.1761 + u * (-46.2720 + u * (59.7712 + u * (-47.2207 + u * 18.3184)))
    b2 = 135.3705 + u * (-7.1720 + u * (7.2491 + u * (-21.6977 + u * 12.3081)))
    b3 = 40.9299 + u * (1.1597 + u * (12.3630 + u * 27.6301))
    b4 = -3.9643 + u * (5.1126 + u * -35.4791)
    b5 = 13.4853 + u * 17.5254
    return water / (1 + 16.887236e-3 * t) + w * (b1 + w * (b2 + w * (b3 + w * (b4 + w * (b5 - w * 17.2890)))))


def typed():
    density = sucrose.density
    ours = lambda: density(66.9, deg_c(20.0)).to(kg_per_m3)
    pint = package("pint")
    if pint is None:
        print("P5 typed density: pint is not installed, skipped")
    else:
        registry = pint.UnitRegistry()
        wrapped = registry.wraps("kg/m**3", (None, "degC"))(bare)
        theirs = lambda: wrapped(66.9, registry.Quantity(20.0, "degC")).m_as("kg/m**3")
        against("P5 typed density: pint, @wraps", ours, theirs, 50)
    unyt = package("unyt")
    if unyt is None:
        print("P5 typed density: unyt is not installed, skipped")
    else:
        kilogram = unyt.kg / unyt.m**3
        theirs = lambda: (bare(66.9, 20.0) * kilogram).to("kg/m**3").value
        against("P5 typed density: unyt, units on the result alone", ours, theirs, 30)
    against("P5 typed density: floats without units", ours, lambda: bare(66.9, 20.0), 1.5, number=20_000)


def boiling_water():
    ours = lambda: water.saturation_temperature(kpa(96.5)).to(deg_c)
    seuif97 = package("seuif97")
    if seuif97 is None:
        print("P6 boiling point of water: seuif97 is not installed, skipped")
    else:
        against("P6 boiling point of water: seuif97, no units", ours, lambda: seuif97.px2t(0.0965, 0.0), 1 / 1.5, 20_000)
    chemicals = package("chemicals")
    if chemicals is None:
        print("P6 boiling point of water: chemicals is not installed, skipped")
    else:
        theirs = lambda: chemicals.iapws.iapws95_Tsat(96_500.0) - 273.15
        against("P6 boiling point of water: chemicals, IAPWS-95", ours, theirs, 2, apart=1e-3)
        theirs = lambda: chemicals.Tsat_IAPWS(96_500.0) - 273.15
        against("P6 boiling point of water: chemicals, its line", ours, theirs, 2, apart=1e-2)


def inverses():
    optimize = package("scipy.optimize")
    if optimize is None:
        print("P7 inverses: scipy is not installed, skipped")
        return
    ours = lambda: sucrose.brix_from_density(kg_per_m3(1328.19), deg_c(20.0))
    theirs = lambda: optimize.brentq(lambda brix: bare(brix, 20.0) - 1328.19, 0.0, 85.0)
    against("P7 Brix from density: scipy.optimize.brentq", ours, theirs, 20, 500)
    station = StationPressure.measured(kpa(96.5))
    goal = math.log(96_500.0)

    def excess(kelvin):
        return math.log(saturation_pressure(kelvin)) + ln_activity(0.669, kelvin) - goal

    ours = lambda: sucrose.boiling_temperature(66.9, station).to(deg_c)
    theirs = lambda: optimize.brentq(excess, 370.0, 400.0) - 273.15
    against("P7 boiling point: scipy.optimize.brentq", ours, theirs, 20, 500)


def saturation_pressure(kelvin):
    n = peers.N
    theta = kelvin + n[8] / (kelvin - n[9])
    a = (theta + n[0]) * theta + n[1]
    b = (n[2] * theta + n[3]) * theta + n[4]
    c = (n[5] * theta + n[6]) * theta + n[7]
    return 1e6 * (2 * c / (-b + math.sqrt(b * b - 4 * a * c))) ** 4


def ln_activity(w, kelvin):
    sugar = w / 0.3422965
    x = sugar / (sugar + (1 - w) / 0.018015268)
    u = 298.15 / kelvin - 1
    v = math.log(kelvin / 298.15) + u
    a = -5.1469 + w * (1.8184 + w * (-19.1023 + w * 20.3519))
    return math.log1p(-x) + x * x * (a + u * (-16.2427 + 18.9561 * w) + 24.4732 * v)


def calls():
    """What there is no goal for."""
    celsius, few = deg_c(20.0), deg_c(np.linspace(1, 99, 10))
    density = sucrose.density
    for what, call, number in [
        ("nothing, called as these are", lambda: None, 200_000),
        ("gal(40).to(litre)", lambda: gal(40).to(litre), 100_000),
        ("density(66.9, q)", lambda: density(66.9, celsius), 100_000),
        ("density of ten elements", lambda: density(66.9, few), 10_000),
    ]:
        (best,) = race(call, number=number)
        print(f"{what:62}{best * 1e9:10.2f}")


def sizes(wheels):
    timed = "import time; t = time.perf_counter(); import sugaring; print(time.perf_counter() - t)"
    imports = [subprocess.check_output([sys.executable, "-c", timed], text=True) for _ in range(9)]
    print(f"{'import, without NumPy':62}{min(map(float, imports)) * 1e3:10.2f} ms")
    for wheel in map(Path, wheels):
        print(f"{'wheel':62}{wheel.stat().st_size / 1e3:10.0f} kB")


def main():
    head("ns a call")
    for part in (typed, boiling_water, inverses, calls):
        part()
    sizes(sys.argv[1:])


if __name__ == "__main__":
    main()
