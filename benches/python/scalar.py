"""What a call costs in Python: best of seven, in nanoseconds.

Run it with the package installed: `python benches/python/scalar.py [WHEEL]`.
"""

import math
import subprocess
import sys
import timeit
from pathlib import Path

import numpy as np

from sugaring import sucrose, water
from sugaring.units import deg_c, kg_per_m3, kpa

REPEAT = 7
LANES = 1_000_000


def best(call, number):
    return min(timeit.repeat(call, number=number, repeat=REPEAT)) / number * 1e9


def by_hand(kelvin):
    """Saturation pressure of water, Pa: IAPWS R7-97(2012), equation 30, as one writes it with NumPy."""
    n = (
        0.11670521452767e4,
        -0.72421316703206e6,
        -0.17073846940092e2,
        0.12020824702470e5,
        -0.32325550322333e7,
        0.14915108613530e2,
        -0.48232657361591e4,
        0.40511340542057e6,
        -0.23855557567849,
        0.65017534844798e3,
    )
    theta = kelvin + n[8] / (kelvin - n[9])
    a = theta**2 + n[0] * theta + n[1]
    b = n[2] * theta**2 + n[3] * theta + n[4]
    c = n[5] * theta**2 + n[6] * theta + n[7]
    return 1e6 * (2 * c / (-b + np.sqrt(b**2 - 4 * a * c))) ** 4


def main():
    celsius = deg_c(20.0)
    root = math.sqrt
    print(f"{'math.sqrt(2.0), for scale':52}{best(lambda: root(2.0), 200_000):10.0f} ns")
    density = sucrose.density
    print(f"{'density(66.9, q)':52}{best(lambda: density(66.9, celsius), 200_000):10.0f} ns")
    print(f"{'density(66.9, deg_c(20.0)).to(kg_per_m3)':52}", end="")
    print(f"{best(lambda: density(66.9, deg_c(20.0)).to(kg_per_m3), 200_000):10.0f} ns")
    print(f"{'nothing, called as these are':52}{best(lambda: None, 200_000):10.0f} ns")

    brix, temperatures = np.linspace(0, 80, LANES), np.linspace(1, 99, LANES)
    column = deg_c(temperatures)
    per_lane = 1 / LANES
    print(f"{'density of an array, per element':52}{best(lambda: density(brix, column), 1) * per_lane:10.2f} ns")
    ours, kelvin = water.saturation_pressure, temperatures + 273.15
    print(f"{'saturation_pressure of an array, per element':52}{best(lambda: ours(column), 1) * per_lane:10.2f} ns")
    print(f"{'the same by hand with NumPy':52}{best(lambda: by_hand(kelvin), 1) * per_lane:10.2f} ns")
    apart = np.abs(by_hand(kelvin) / (ours(column).to(kpa) * 1e3) - 1).max()
    print(f"{'they differ by at most':52}{apart:10.1e}")
    assert apart < 1e-9
    few = deg_c(temperatures[:10])
    print(f"{'density of ten elements':52}{best(lambda: density(66.9, few), 20_000):10.0f} ns")

    timed = "import time; t = time.perf_counter(); import sugaring; print(time.perf_counter() - t)"
    imports = [subprocess.check_output([sys.executable, "-c", timed], text=True) for _ in range(9)]
    print(f"{'import, without NumPy':52}{min(map(float, imports)) * 1e3:10.2f} ms")
    for wheel in map(Path, sys.argv[1:]):
        print(f"{'wheel':52}{wheel.stat().st_size / 1e3:10.0f} kB")
    assert sucrose.density(66.9, celsius).unit is kg_per_m3


if __name__ == "__main__":
    main()
