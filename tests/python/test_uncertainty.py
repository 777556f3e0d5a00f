"""Propagation, Monte Carlo, combination, lines and limits: against other libraries, and what is refused."""

import math
import pickle

import numpy as np
import pytest
import uncertainties
from uncertainties.umath import exp as uexp

from sugaring import SugaringError, sucrose, uncertainty, water
from sugaring.uncertainty import (
    Spread,
    combine,
    coverage_factor,
    line_fit,
    monte_carlo,
    probability_at_least,
    propagate,
)
from sugaring.units import brix, deg_c, deg_f, delta_c, delta_f, kg_per_m3, kpa, measured, percent

READING = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511]
CORRECTION = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160]


def model(a, b, c):
    return a * b + (np if isinstance(a, np.ndarray) else math).exp(c)


INPUTS = {"a": measured(2.0, 0.01), "b": measured(3.0, 0.02), "c": measured(0.5, 0.01)}


def test_first_order_agrees_with_another_library():
    """Their derivative is of the formula, ours a difference over ± u: they part by its third order, 1.3e-5 here."""
    a, b, c = (uncertainties.ufloat(x.value, x.uncertainty) for x in INPUTS.values())
    theirs = a * b + uexp(c)
    ours = propagate(model, INPUTS)
    assert ours.value == pytest.approx(theirs.nominal_value, rel=1e-15)
    assert ours.uncertainty == pytest.approx(theirs.std_dev, rel=2e-5)
    parts = {part.name: part for part in ours.contributions}
    for name, variable in zip("abc", (a, b, c), strict=True):
        assert parts[name].sensitivity == pytest.approx(theirs.derivatives[variable], rel=2e-5)


def test_correlations_agree_with_another_library():
    covariance = [[0.01, 0.006], [0.006, 0.04]]
    a, b = uncertainties.correlated_values([1.0, 2.0], covariance)
    inputs = {"a": Spread(1.0, 0.1, correlation={"b": 0.3}), "b": measured(2.0, 0.2)}
    assert propagate(lambda a, b: a - 2 * b, inputs).uncertainty == pytest.approx((a - 2 * b).std_dev, rel=1e-12)


def test_monte_carlo_agrees_with_numpy():
    ours = monte_carlo(model, INPUTS, seed=1, samples=200_000, columns=True)
    draws = np.random.default_rng(1)
    theirs = model(*(draws.normal(x.value, x.uncertainty, 200_000) for x in INPUTS.values()))
    # Four standard errors on either side.
    assert ours.uncertainty == pytest.approx(theirs.std(ddof=1), rel=8 / math.sqrt(400_000))
    assert ours.value == pytest.approx(theirs.mean(), abs=8 * ours.uncertainty / math.sqrt(200_000))
    assert (ours.low, ours.high) == pytest.approx(tuple(np.quantile(theirs, (0.025, 0.975))), abs=0.002)


def test_columns_and_single_draws_are_the_same_draws():
    def plain(a, b, c):
        return a * b - c

    once = monte_carlo(plain, INPUTS, seed=7, samples=3000)
    assert once == monte_carlo(plain, INPUTS, seed=7, samples=3000, columns=True)
    assert once != monte_carlo(plain, INPUTS, seed=8, samples=3000)
    assert len(once.values) == once.samples == 3000


def test_a_function_of_the_library_is_the_same_through_python():
    inputs = [measured(66.9, 0.15), measured(deg_f(77), delta_f(0.9))]
    through = lambda brix, temperature: sucrose.density(brix, temperature)  # noqa: E731
    assert propagate(sucrose.density, inputs) == propagate(through, inputs)
    native = monte_carlo(sucrose.density, inputs, seed=3, samples=2000)
    assert native == monte_carlo(through, inputs, seed=3, samples=2000)
    columns = monte_carlo(through, inputs, seed=3, samples=2000, columns=True)
    assert native == columns
    assert native.values.to(kg_per_m3).shape == (2000,)
    assert native.probability_at_least(kg_per_m3(1000)) == 1.0
    assert propagate(sucrose.density, [brix(66.9), deg_c(20)]).uncertainty == kg_per_m3(0)


def test_a_shared_cause_cancels():
    one = Spread(deg_c(100), delta_c(0.3), cause="thermometer")
    found = propagate(lambda a, b: b - a, {"water": one, "finish": one})
    assert found.uncertainty == delta_c(0)
    assert found.contributions[0].name == "thermometer"
    assert found.contributions[0].sensitivity is None


def test_temperatures_come_back_as_temperatures():
    found = propagate(water.saturation_temperature, [measured(kpa(96.5), kpa(0.5))])
    low, high = found.interval(percent(95))
    assert low < found.value < high
    assert found.uncertainty.to(delta_c) == pytest.approx(0.143, abs=0.002)


def test_degrees_of_freedom_widen_an_interval():
    found = propagate(lambda x: x, [Spread(1.0, 0.25, degrees_of_freedom=16)])
    assert found.degrees_of_freedom == pytest.approx(16)
    assert found.coverage_factor(0.99) == coverage_factor(0.99, 16) == pytest.approx(2.9208, abs=1e-4)


def test_the_line_of_a_thermometer():
    line = line_fit(READING, CORRECTION, x0=20.0)
    assert f"{line.intercept:.4f} {line.slope:.5f} {line.correlation:.3f}" == "-0.1712 0.00218 -0.930"
    at = line.at(30.0)
    assert (f"{at.value:.4f}", f"{at.uncertainty:.4f}") == ("-0.1494", "0.0041")
    (slope, intercept), covariance = np.polyfit(np.array(READING) - 20, CORRECTION, 1, cov=True)
    assert (line.slope, line.intercept) == pytest.approx((slope, intercept), rel=1e-10)
    assert line.covariance[0][1] == pytest.approx(covariance[0][1], rel=1e-9)


def test_two_readings_of_one_syrup():
    found = combine([measured(brix(66.9), brix(0.15)), measured(brix(67.1), brix(0.2))])
    assert found.agree
    assert str(found.value).startswith("66.97")
    assert probability_at_least(measured(66.9, 0.15), 66.7) == pytest.approx(0.9088, abs=1e-4)


@pytest.mark.parametrize(
    "thing",
    [
        Spread(deg_c(82), delta_c(0.5), name="cup", distribution="arcsine", cause="cup", degrees_of_freedom=4),
        Spread(1.0, 0.5, correlation={"b": 0.25}),
        propagate(model, INPUTS),
        propagate(model, INPUTS).contributions[0],
        monte_carlo(model, INPUTS, seed=1, samples=100),
        combine([measured(1.0, 0.1), measured(2.0, 0.1)]),
        line_fit(READING, CORRECTION, x0=20.0),
    ],
)
def test_things_are_pickled_and_shown(thing):
    assert pickle.loads(pickle.dumps(thing)) == thing
    assert type(thing).__name__ in repr(thing)
    with pytest.raises(AttributeError):
        thing.value = 1


TWO = [1.0, 2.0]


@pytest.mark.parametrize(
    ("call", "kind", "text"),
    [
        (lambda: Spread(1.0, -0.5), "out_of_range", "uncertainty = -0.5 is outside 0 to 1e300; a standard uncertainty"),
        (lambda: Spread(1.0, math.inf), "not_finite", "uncertainty = infinity is not a finite number"),
        (lambda: Spread(deg_c(1), deg_c(1)), "wrong_dimension", "uncertainty = 1 °C is a temperature"),
        (lambda: Spread(1.0, 0.1, distribution="normel"), "unknown_name", 'distribution has the unknown name "normel"; nearest: normal'),
        (lambda: Spread(1.0, 0.1, correlation={"b": 1.5}), "out_of_range", "correlation = 1.5 is outside -1 to 1"),
        (lambda: Spread(1.0, 0.1, degrees_of_freedom=0), "out_of_range", "degrees_of_freedom = 0 is outside 1"),
        (lambda: propagate(max, [Spread(1.0, 0.1, correlation={"z": 0.5})]), "unknown_name", "inputs[0].correlation has the unknown name"),
        (lambda: propagate(3, TWO), "unreadable", "model = 3 cannot be read"),
        (lambda: propagate(max, 3), "unreadable", "inputs = 3 cannot be read"),
        (lambda: propagate(sucrose.density, [measured(99.9, 0.1), 20.0]), "wrong_dimension", "temperature = 20 needs a unit"),
        (lambda: propagate(sucrose.density, [measured(120, 0.1), deg_c(20)]), "out_of_range", "brix = 120 °Bx is outside"),
        (lambda: monte_carlo(sucrose.density, [measured(0.1, 0.1), deg_c(4)], seed=1, samples=1000), "out_of_range", "brix = -"),
        (lambda: monte_carlo(max, TWO, seed=-1, samples=1000), "unreadable", "seed = -1 cannot be read"),
        (lambda: monte_carlo(max, TWO, seed=1, samples=10), "out_of_range", "samples = 10 is outside 100 to"),
        (lambda: monte_carlo(max, TWO, seed=1, samples={"til": 1}), "unknown_name", 'samples has the unknown name "til"'),
        (lambda: monte_carlo(max, TWO, seed=1, samples=100, progress=lambda share: False), "cancelled", "the work was stopped"),
        (lambda: combine([]), "missing", "readings is missing"),
        (lambda: combine([measured(1.0, 0.0), measured(2.0, 0.0)]), "inconsistent", "readings[1] = 2 does not fit readings[0] = 1"),
        (lambda: combine([measured(1.0, -0.1)]), "out_of_range", "readings[0].uncertainty = -0.1 is outside 0"),
        (lambda: line_fit([1, 1, 1], [1, 2, 3], x0=0), "inconsistent", "x = 1 does not fit a line; the points need a spread in x"),
        (lambda: line_fit([1, 2], [1, 2, 3], x0=0), "inconsistent", "x = 2 numbers does not fit y = 3 numbers"),
        (lambda: probability_at_least(measured(1.0, 0.1), math.nan), "not_finite", "minimum = NaN is not a finite number"),
    ],
)
def test_what_is_refused(call, kind, text):
    with pytest.raises(SugaringError) as caught:
        call()
    assert caught.value.kind == kind
    assert str(caught.value).startswith(text)


def test_what_a_model_raises_passes_through():
    def broken(x):
        raise KeyError("mine")

    def narrow(x):
        return math.sqrt(x)

    for run in (propagate, lambda f, inputs: monte_carlo(f, inputs, seed=1, samples=100)):
        with pytest.raises(KeyError, match="mine"):
            run(broken, [measured(1.0, 0.1)])
    assert propagate(narrow, [measured(0.1, 0.2)]).contributions[0].one_sided
    with pytest.raises(ValueError, match=r"math domain|nonnegative"):
        monte_carlo(narrow, [measured(0.1, 0.2)], seed=1, samples=100)
    with pytest.raises(KeyboardInterrupt):
        monte_carlo(stopped, [measured(0.1, 0.2)], seed=1, samples=100)
    mixed = iter([deg_c(1), kpa(2)])
    with pytest.raises(SugaringError, match="model"):
        propagate(lambda x: next(mixed), [measured(0.1, 0.2)])


def stopped(x):
    raise KeyboardInterrupt


def test_progress_is_told_a_hundred_times():
    told = []
    monte_carlo(sucrose.density, [measured(66.9, 0.1), deg_c(20)], seed=1, samples=50_000, progress=told.append)
    assert 10 < len(told) <= 101
    assert told == sorted(told)
    with pytest.raises(ZeroDivisionError):
        monte_carlo(max, TWO, seed=1, samples=100, progress=lambda share: 1 / 0)


def test_until_it_is_known_well_enough():
    found = monte_carlo(lambda a, b, c: a + b + c, INPUTS, seed=1, samples={"digits": 1})
    assert found.samples >= 20_000
    assert uncertainty.guard_band(0.15, percent(95)) == pytest.approx(0.2467, abs=1e-4)
