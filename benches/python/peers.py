"""What a user would write with NumPy, the same equations as ours, and how both sides are timed."""

import importlib
import time

import numpy as np

REPEAT = 7


def package(name):
    """A peer, or None where it is not installed."""
    try:
        return importlib.import_module(name)
    except ImportError:
        return None


def race(*calls, number=1, repeat=REPEAT):
    """Seconds a call of each, best of `repeat`, the sides taking turns."""
    best = [float("inf")] * len(calls)
    for call in calls:
        call()
    for _ in range(repeat):
        for index, call in enumerate(calls):
            begun = time.perf_counter()
            for _ in range(number):
                call()
            best[index] = min(best[index], (time.perf_counter() - begun) / number)
    return best


def line(what, ours, peer, goal, per=1):
    """`ours peer ratio goal`, in nanoseconds; the goal is a least ratio."""
    ratio = peer / ours
    kept = "" if goal is None else ("goal {:g}x".format(goal) + ("" if ratio >= goal else "  MISSED"))
    print(f"{what:62}{ours / per * 1e9:10.2f}{peer / per * 1e9:12.2f}{ratio:9.2f}x  {kept}")


def head(unit):
    print(f"{unit:62}{'ours':>10}{'peer':>12}{'ratio':>10}")


def chunked(function, *columns, size=8192):
    """As one does it who knows the size of a cache."""
    out = np.empty_like(columns[0])
    for start in range(0, len(out), size):
        part = slice(start, start + size)
        out[part] = function(*(column[part] for column in columns))
    return out


# ICUMSA SPS-4.
WATER = (999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9, -281.03006e-12)
ROWS = (
    (385.1761, -46.2720, 59.7712, -47.2207, 18.3184),
    (135.3705, -7.1720, 7.2491, -21.6977, 12.3081),
    (40.9299, 1.1597, 12.3630, 27.6301),
    (-3.9643, 5.1126, -35.4791),
    (13.4853, 17.5254),
    (-17.2890,),
)


def horner(coefficients, x):
    total = coefficients[-1]
    for coefficient in coefficients[-2::-1]:
        total = total * x + coefficient
    return total


def density_terms(celsius):
    u = (celsius - 20) / 100
    return [horner(WATER, celsius) / (1 + 16.887236e-3 * celsius)] + [horner(row, u) for row in ROWS]


def density(brix, celsius):
    return horner(density_terms(celsius), brix / 100)


def brix_from_density(density, celsius, steps=4):
    """Newton's method, four steps from a straight line: the first guess anybody has."""
    terms = density_terms(celsius)
    slopes = [power * term for power, term in enumerate(terms)][1:]
    w = (density - terms[0]) / 535
    for _ in range(steps):
        w = w - (horner(terms, w) - density) / horner(slopes, w)
    return 100 * w


# IAPWS R7-97, region 4.
N = (
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


def saturation_pressure(kelvin):
    theta = kelvin + N[8] / (kelvin - N[9])
    a = (theta + N[0]) * theta + N[1]
    b = (N[2] * theta + N[3]) * theta + N[4]
    c = (N[5] * theta + N[6]) * theta + N[7]
    beta = 2 * c / (-b + np.sqrt(b * b - 4 * a * c))
    squared = beta * beta
    return 1e6 * squared * squared


def saturation_temperature(pascal):
    squared = np.sqrt(pascal / 1e6)
    beta = np.sqrt(squared)
    e = squared + N[2] * beta + N[5]
    f = N[0] * squared + N[3] * beta + N[6]
    g = N[1] * squared + N[4] * beta + N[7]
    d = 2 * g / (-f - np.sqrt(f * f - 4 * e * g))
    total = N[9] + d
    return 0.5 * (total - np.sqrt(total * total - 4 * (N[8] + N[9] * d)))


# The water activity of sugaring.
SUCROSE, SOLVENT, REFERENCE = 0.3422965, 0.018015268, 298.15


def strength_terms(w):
    """Mole fraction, A and B."""
    sugar = w / SUCROSE
    x = sugar / (sugar + (1 - w) / SOLVENT)
    return x, horner((-5.1469, 1.8184, -19.1023, 20.3519), w), horner((-16.2427, 18.9561), w)


def ln_activity(w, kelvin):
    x, a, b = strength_terms(w)
    y = REFERENCE / kelvin
    u = y - 1
    return np.log1p(-x) + x * x * (a + u * b + (u - np.log(y)) * 24.4732)


def osmotic_pressure(brix, kelvin):
    a, b = 10 / (593 - kelvin), 10 / (kelvin - 232)
    a2 = a * a
    cold = b * horner((5.78545292e-3, -1.53195665e-2, 3.11337859e-2, -4.23546241e-2, 3.38713507e-2, -1.19946761e-2), b)
    hot = a2 * a2 * (6.74458446e3 + a * (-2.22521604e5 + a2 * (1.00231247e8 + a * (-1.63552118e9 + a * 8.32299658e9))))
    water = 1e5 / 4615.1805 / (1.93763157e-2 + hot + cold)
    ideal = -8.31446261815324 * kelvin * water / SOLVENT * ln_activity(brix / 100, kelvin)
    return ideal * (1 + 0.5 * 4.6e-10 * ideal)


def boiling_temperature(brix, pascal, steps=4):
    """Newton's method with the analytic slope, from the boiling point of water: four steps reach the last digits."""
    w = brix / 100
    x, a, b = strength_terms(w)
    squared, c = x * x, 24.4732
    offset = np.log1p(-x) - np.log(pascal / 1e6)
    t = saturation_temperature(pascal)
    for _ in range(steps):
        r = 1 / (t - N[9])
        theta = t + N[8] * r
        qa = (theta + N[0]) * theta + N[1]
        qb = (N[2] * theta + N[3]) * theta + N[4]
        qc = (N[5] * theta + N[6]) * theta + N[7]
        root = np.sqrt(qb * qb - 4 * qa * qc)
        beta = 2 * qc / (root - qb)
        by_theta = ((2 * theta + N[0]) * beta + 2 * N[2] * theta + N[3]) * beta + 2 * N[5] * theta + N[6]
        y = REFERENCE / t
        u = y - 1
        excess = 4 * np.log(beta) + offset + squared * (a + u * b + (u - np.log(y)) * c)
        slope = 4 * by_theta * (1 - N[8] * r * r) / (root * beta) + squared * (c - (b + c) * y) / t
        t = t - excess / slope
    return t
