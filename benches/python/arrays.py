"""What an element of a column costs, against what else one would use: best of seven, both sides in one process.

Run it with the package installed: `python benches/python/arrays.py`. Peers that are not installed are named. The wheel
built with `--no-default-features` has no dispatch to wider instructions; its numbers are the same.
"""

import numpy as np
import peers
from peers import chunked, head, line, package, race

import sugaring
from sugaring import sucrose, water
from sugaring.air import StationPressure
from sugaring.units import deg_c, kelvin, kg_per_m3, pa

LANES = 1_000_000


def spread(low, high, step):
    """`LANES` numbers in an order that no predictor learns, the same every time."""
    return low + (high - low) * np.mod(0.5 + step * np.arange(LANES), 1.0)


BRIX = spread(0, 85, 0.6180339887498949)
CELSIUS = spread(0.1, 99.9, 0.41421356237309503)
PASCAL = spread(50e3, 110e3, 0.7320508075688772)


def by_hand(what, ours, hand, columns, goals, apart):
    """Against NumPy by hand, plain and in chunks; both must agree first."""
    found, theirs = ours(), hand(*columns)
    difference = float(np.max(np.abs(np.asarray(found) - theirs)))
    assert difference <= apart, f"{what}: {difference} apart"
    mine, plain, parts = race(ours, lambda: hand(*columns), lambda: chunked(hand, *columns))
    line(f"{what}: NumPy by hand", mine, plain, goals[0], LANES)
    line(f"{what}: the same in chunks of 8192", mine, parts, goals[1], LANES)


def densities():
    temperature = deg_c(CELSIUS)
    ours = lambda: sucrose.density(BRIX, temperature).to(kg_per_m3)
    by_hand("P1 density", ours, peers.density, (BRIX, CELSIUS), (5, 3), 1e-9)


def strengths():
    rho = peers.density(BRIX, CELSIUS)
    density, temperature = kg_per_m3(rho), deg_c(CELSIUS)
    ours = lambda: sucrose.brix_from_density(density, temperature)
    by_hand("P2 Brix from density", ours, peers.brix_from_density, (rho, CELSIUS), (3, None), 1e-6)
    optimize = package("scipy.optimize")
    if optimize is None:
        print("P2 Brix from density: scipy is not installed, skipped")
        return
    terms = peers.density_terms(CELSIUS)
    slopes = [power * term for power, term in enumerate(terms)][1:]
    start = (rho - terms[0]) / 535

    def newton():
        return optimize.newton(lambda w: peers.horner(terms, w) - rho, start, fprime=lambda w: peers.horner(slopes, w))

    mine, theirs = race(ours, newton)
    line("P2 Brix from density: scipy.optimize.newton", mine, theirs, 8, LANES)


def boiling_water():
    pressure = pa(PASCAL)
    ours = lambda: water.saturation_temperature(pressure).to(kelvin)
    by_hand("P3 boiling point of water", ours, peers.saturation_temperature, (PASCAL,), (3, None), 1e-9)
    coolprop = package("CoolProp.CoolProp")
    if coolprop is None:
        print("P3 boiling point of water: CoolProp is not installed, skipped")
    else:
        theirs = lambda: coolprop.PropsSI("T", "P", PASCAL, "Q", 0, "IF97::Water")
        assert np.max(np.abs(theirs() - ours())) < 1e-6
        mine, theirs = race(ours, theirs)
        line("P3 boiling point of water: CoolProp IF97", mine, theirs, 15, LANES)
    vectorized = package("chemicals.vectorized")
    if vectorized is None:
        print("P3 boiling point of water: chemicals is not installed, skipped")
    else:
        # Its own loop: a tenth of the column is enough to see.
        few, some = pa(PASCAL[:100_000]), PASCAL[:100_000]
        mine, theirs = race(lambda: water.saturation_temperature(few), lambda: vectorized.Tsat_IAPWS(some), repeat=3)
        line("P3 boiling point of water: chemicals.vectorized, 1e5", mine, theirs, None, 100_000)


def solutions():
    weak, cold = spread(0, 60, 0.6180339887498949), spread(273.2, 323.1, 0.41421356237309503)
    temperature = kelvin(cold)
    ours = lambda: sucrose.osmotic_pressure(weak, temperature).to(pa)
    by_hand("P4 osmotic pressure", ours, peers.osmotic_pressure, (weak, cold), (0.9, None), 1e-6)
    stations = StationPressure.measured(pa(PASCAL))
    ours = lambda: sucrose.boiling_temperature(BRIX, stations).to(kelvin)
    by_hand("P4 boiling point, 4 steps", ours, peers.boiling_temperature, (BRIX, PASCAL), (2, 4), 1e-10)


def main():
    print(f"sugaring {sugaring.__version__}, NumPy {np.__version__}, {LANES} elements, all checked")
    head("ns an element")
    for part in (densities, strengths, boiling_water, solutions):
        part()


if __name__ == "__main__":
    main()
