"""What an uncertainty costs in Python, against what else one would use: best of seven, both sides in one process.

Run it with the package installed: `python benches/python/uncertainty.py [WHEEL]`. Peers that are not installed are
named.
"""

import numpy as np
import peers
from peers import line, package, race
from scalar import bare

from sugaring import sucrose
from sugaring.uncertainty import monte_carlo, propagate
from sugaring.units import deg_c, delta_c, kg_per_m3, measured

BRIX, U_BRIX, CELSIUS, U_CELSIUS = 66.9, 0.15, 25.0, 0.5
DRAWS = 100_000


def first_order():
    """Density of a reading, with both uncertainties, made anew each time on both sides."""
    peer = package("uncertainties")
    if peer is None:
        print("P9 propagated density: uncertainties is not installed, skipped")
        return
    inputs = [measured(BRIX, U_BRIX), measured(deg_c(CELSIUS), delta_c(U_CELSIUS))]

    def ours():
        return propagate(sucrose.density, inputs).uncertainty.to(kg_per_m3)

    def by_operators():
        return bare(peer.ufloat(BRIX, U_BRIX), peer.ufloat(CELSIUS, U_CELSIUS)).std_dev

    wrapped = peer.wrap(bare)

    def by_wrap():
        return wrapped(peer.ufloat(BRIX, U_BRIX), peer.ufloat(CELSIUS, U_CELSIUS)).std_dev

    for what, theirs in (("operators", by_operators), ("wrap", by_wrap)):
        assert abs(ours() / theirs() - 1) < 1e-4, f"{ours()} and {theirs()}"
        mine, its = race(ours, theirs, number=1_000)
        line(f"P9 propagated density: uncertainties, {what}", mine, its, 50)


def drawn():
    """Density of 100 000 draws, with its interval."""
    inputs = [measured(BRIX, U_BRIX), measured(deg_c(CELSIUS), delta_c(U_CELSIUS))]

    def ours():
        found = monte_carlo(sucrose.density, inputs, seed=1, samples=DRAWS)
        return found.uncertainty.to(kg_per_m3), found.low.to(kg_per_m3), found.high.to(kg_per_m3)

    def theirs():
        draws = np.random.default_rng(1)
        y = bare(draws.normal(BRIX, U_BRIX, DRAWS), draws.normal(CELSIUS, U_CELSIUS, DRAWS))
        return (y.std(ddof=1), *np.quantile(y, (0.025, 0.975)))

    # Four standard errors of a standard deviation, twice; the ends of an interval scatter more.
    for mine, its, apart in zip(ours(), theirs(), (0.02, 0.05, 0.05), strict=True):
        assert abs(mine - its) < apart, f"{mine} and {its}"
    mine, its = race(ours, theirs, number=3)
    line("P9 Monte Carlo, 100 000 draws of the density: NumPy", mine, its, 2)


if __name__ == "__main__":
    peers.head("ns a call")
    first_order()
    drawn()
