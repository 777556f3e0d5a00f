"""The package itself: import, help, pickling, doctests, interrupts, faults."""

import concurrent.futures
import doctest
import importlib
import inspect
import json
import multiprocessing
import os
import pickle
import shutil
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

import sugaring
from sugaring import catalogue, day, errors, sucrose, units, water
from sugaring.air import StationPressure
from sugaring.units import cord, deg_c, kg_per_m3, kpa, litre, measured, metre, price

TOP = Path(__file__).resolve().parents[2]
MODULES = ["air", "catalogue", "day", "errors", "finish", "membrane", "sucrose", "uncertainty", "units", "water"]
LEAST = {
    "air": {"altitude": metre(410)},
    "sap": [{"volume": litre(265), "brix": 1.98, "temperature": deg_c(4)}],
    "evaporator": {"pan": {"length": metre(0.61), "width": metre(1.22)}},
    "target": {"brix": 66.9},
    "samples": 20,
}


def run(code, **options):
    return subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=60, **options)


def test_import_is_light():
    code = "import sys, sugaring; print([m for m in ('numpy', 'json', 'typing', 'dataclasses') if m in sys.modules])"
    assert run(f"import sys; sys.modules.pop('typing', None); {code}").stdout.strip() == "[]"


@pytest.mark.parametrize("name", MODULES)
def test_module(name):
    module = importlib.import_module(f"sugaring.{name}")
    assert module is getattr(sugaring, name)
    assert module.__name__ == f"sugaring.{name}"
    assert name in dir(sugaring)
    code = f"import sys; from sugaring.{name} import *; import sugaring.{name} as m; print(m.__name__)"
    assert run(code).stdout.strip() == f"sugaring.{name}"


def test_no_attribute():
    with pytest.raises(AttributeError):
        sugaring.nothing  # noqa: B018
    with pytest.raises(AttributeError):
        day.nothing  # noqa: B018


# The density scales are called through their words: test_scales.py.
CALLED = [row for row in catalogue.functions() if row.module != "scale"]


@pytest.mark.parametrize("row", CALLED, ids=lambda row: f"{row.module}.{row.name}")
def test_function(row):
    function = getattr(getattr(sugaring, row.module), row.name)
    assert function.__module__ == f"sugaring.{row.module}"
    assert pickle.loads(pickle.dumps(function)) is function
    parameters = inspect.signature(function).parameters
    assert list(parameters) == [*(argument.name for argument in row.arguments), "on_error"]
    kinds = [parameter.kind for parameter in parameters.values()]
    assert kinds[:2] == [inspect.Parameter.POSITIONAL_ONLY] * min(2, len(row.arguments)) + kinds[2:2] + (
        [inspect.Parameter.KEYWORD_ONLY] if len(row.arguments) == 1 else []
    )
    assert all(kind is inspect.Parameter.KEYWORD_ONLY for kind in kinds[2:])
    for part in ("Parameters", "Returns", "Raises", "Notes", "Source: ", "Accuracy: ", ">>> "):
        assert part in function.__doc__


@pytest.mark.parametrize("name", [*MODULES, ""])
def test_docstrings(name):
    module = importlib.import_module(f"sugaring.{name}" if name else "sugaring")
    tests = doctest.DocTestFinder(exclude_empty=True).find(module, module.__name__, module=False)
    if not hasattr(module, "__file__") or name == "air":
        members = [member for member in vars(module).values() if hasattr(member, "__name__")]
        texts = [(member.__name__, member.__doc__) for member in members if member.__doc__]
        parser = doctest.DocTestParser()
        tests = [parser.get_doctest(text, {}, label, None, 0) for label, text in texts]
    runner = doctest.DocTestRunner(optionflags=doctest.IGNORE_EXCEPTION_DETAIL)
    for test in tests:
        if test.examples:
            runner.run(test)
    assert runner.failures == 0
    if name not in ("errors",):
        assert runner.tries > 0


def test_docstrings_of_classes():
    parser, runner = doctest.DocTestParser(), doctest.DocTestRunner()
    for member in (sugaring.Quantity, StationPressure, units.parse, units.measured, units.price):
        runner.run(parser.get_doctest(member.__doc__, {}, member.__name__, None, 0))
    assert runner.failures == 0 and runner.tries > 5


def crossed(value):
    return value


def refused(_):
    return sucrose.density(66.9, deg_c([20, 180]))


def density(temperature):
    return sucrose.density(66.9, temperature)


def test_process_pool():
    plan = day.plan(LEAST)
    values = [
        deg_c(20),
        sucrose.density(66.9, deg_c(20)),
        deg_c,
        sucrose.density,
        StationPressure.from_altitude(metre(410)),
        measured(litre(95), litre(2)),
        price(280, cord(1)),
        plan,
        plan.totals,
        plan.steps[0].duration,
        catalogue.functions()[0],
    ]
    spawn = multiprocessing.get_context("spawn")
    with concurrent.futures.ProcessPoolExecutor(1, mp_context=spawn) as pool:
        assert list(pool.map(crossed, values)) == values
        there = pool.submit(density, deg_c(20)).result()
        assert there.to(kg_per_m3) == sucrose.density(66.9, deg_c(20)).to(kg_per_m3)
        with pytest.raises(errors.OutOfRange) as caught:
            pool.submit(refused, 0).result()
        error = caught.value
        assert str(error).endswith("(index 1; 1 of 2)")
        assert (error.argument, error.value, error.range, error.index, error.count) == (
            "temperature",
            180.0,
            (0.0, 100.0),
            1,
            1,
        )
        from sugaring import _columns

        sucrose.density([1.0], deg_c(20))
        assert pool.submit(crossed, _columns.sucrose_density).result() is _columns.sucrose_density


def test_errors_travel():
    for kind in errors.SugaringError.__subclasses__():
        error = kind("text", argument="x", value=1.0, unit="m", range=(0, 1), hint="h", reference="r", index=2, count=1)
        error.add_note("row 5")
        back = pickle.loads(pickle.dumps(error))
        assert type(back) is kind and str(back) == "text" and vars(back) == vars(error)
    assert {kind.kind for kind in errors.SugaringError.__subclasses__()} == {kind.name for kind in catalogue.error_kinds()}
    assert set(errors.__all__) == {"SugaringError", *(kind.__name__ for kind in errors.SugaringError.__subclasses__())}


WITHOUT_NUMPY = """
import sys
sys.modules["numpy"] = None
from sugaring import SugaringError, day, sucrose
from sugaring.units import deg_c, kg_per_m3, kelvin
print(sucrose.density([0, 30, 60], deg_c(20)).to(kg_per_m3))
print(sucrose.density(((0, 30), (60, 50)), deg_c(20)).to(kg_per_m3))
print(deg_c([0, 1]).to(kelvin))
print(sucrose.water_activity([0, 130], deg_c(20), on_error="nan"))
for wrong in (lambda: sucrose.density([1, 99], deg_c(20)), lambda: sucrose.density([1, 2], deg_c([1])),
              lambda: sucrose.density([1, None], deg_c(20)), lambda: sucrose.density([1, "2"], deg_c(20))):
    try:
        wrong()
    except SugaringError as error:
        print(error)
"""


def test_without_numpy():
    ran = run(WITHOUT_NUMPY)
    assert ran.stderr == ""
    one = sucrose.density([0, 30, 60, 50], deg_c(20)).to(kg_per_m3).tolist()
    assert ran.stdout.splitlines() == [
        str(one[:3]),
        str([one[:2], one[2:]]),
        "[273.15, 274.15]",
        "[1.0, nan]",
        "brix = 99 °Bx is outside 0 to 85 °Bx (index 1; 1 of 2)",
        "temperature = a list of 1 does not fit brix of 2",
        "brix = NaN is not a finite number (index 1; 1 of 2)",
        'brix = "2" cannot be read; write 2 (index 1; 1 of 2)',
    ]


LONG = """
import json, sys, time
from sugaring import day
inputs = json.load(open(sys.argv[1])) | {"samples": 1_000_000}
print("ready", flush=True)
try:
    day.plan(inputs)
except KeyboardInterrupt:
    print(time.time(), flush=True)
"""


@pytest.mark.skipif(sys.platform == "win32", reason="sends a signal")
def test_an_interrupt_stops_a_long_plan():
    command = [sys.executable, "-c", LONG, str(TOP / "examples" / "far_orchard.json")]
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True) as running:
        assert running.stdout.readline() == "ready\n"
        time.sleep(1.0)
        assert running.poll() is None, "the plan was too short to interrupt"
        sent = time.time()
        running.send_signal(signal.SIGINT)
        stopped = float(running.stdout.readline())
    assert stopped - sent < 0.5


def test_missing_extension(tmp_path):
    package = shutil.copytree(Path(sugaring.__file__).parent, tmp_path / "sugaring")
    for library in package.glob("_sugaring*.so"):
        library.unlink()
    ran = run("import sugaring", cwd=tmp_path, env=os.environ | {"PYTHONPATH": str(tmp_path)})
    for part in ("the compiled part of sugaring cannot be loaded", "this Python: CPython", "files found: none", "pip"):
        assert part in ran.stderr


FAULT = """
import sys
from sugaring import SugaringError, _sugaring, errors, sucrose
from sugaring.units import deg_c, kg_per_m3
try:
    _sugaring.fault()
except Exception as error:
    print(type(error).__name__, error.kind, error, sep="|")
print(f"{sucrose.density(66.9, deg_c(20)).to(kg_per_m3):.2f}")
"""


@pytest.mark.skipif("SUGARING_WITH_FAULT" not in os.environ, reason="SUGARING_WITH_FAULT names no build with a fault")
def test_fault():
    """`SUGARING_WITH_FAULT` is a folder with the package built with the feature `fault`."""
    there = os.environ | {"PYTHONPATH": os.environ["SUGARING_WITH_FAULT"]}
    ran = run(FAULT, env=there)
    assert ran.stdout.splitlines() == [
        "Internal|internal|a fault in sugaring, please report it: on purpose",
        "1328.19",
    ], ran.stderr


def test_the_shipped_package_has_no_fault():
    assert not hasattr(sugaring._sugaring, "fault")


def test_plan():
    plan = day.plan(json.loads((TOP / "examples" / "far_orchard.json").read_text("utf-8")))
    assert plan.totals.syrup.volume.to(litre) == pytest.approx(5.95, abs=0.005)
    assert plan.totals.syrup.volume.low < plan.totals.syrup.volume.value < plan.totals.syrup.volume.high
    assert [step.kind for step in plan.steps] == ["concentrate", "rinse", "boil", "finish", "bottle"]
    assert plan.steps[0].duration.unit is units.hours
    assert plan.steps[0].settings.pressure.to(units.bar_gauge) == pytest.approx(7.6)
    assert plan.totals.fuel[0].volume.unit is cord and plan.totals.fuel[1].volume.unit is units.gal
    assert plan.totals.electricity.cost == pytest.approx(0.17, abs=0.005)
    assert plan.marks[0].temperature.unit is units.deg_f
    assert plan.containers[0].count == 11 and plan.title == "Far Orchard"
    assert plan.totals.to_finish is None
    assert plan == pickle.loads(pickle.dumps(plan)) == day.plan(plan.to_dict()["inputs"])
    assert hash(plan) == hash(pickle.loads(pickle.dumps(plan)))
    assert plan.to_dict() == json.loads(plan.to_json()) and plan.totals.to_dict() == plan.to_dict()["totals"]
    assert "<pre>FAR ORCHARD" in plan._repr_html_() and "-&gt;" in plan._repr_html_()
    assert "gal" in plan.page(system="us") and plan.page() == str(plan)
    with pytest.raises(errors.UnknownName, match='system has the unknown name "imperial"'):
        plan.page(system="imperial")
    for broken in (lambda: setattr(plan, "title", "x"), lambda: setattr(plan.totals, "heat", 1)):
        with pytest.raises(AttributeError):
            broken()
    assert "Totals(" in repr(plan.totals) and "Far Orchard" in repr(plan)


def test_quantities_and_texts_make_one_plan():
    texts = {
        "air": {"altitude": "410 m"},
        "sap": [{"volume": "265 L", "brix": 1.98, "temperature": "4 °C"}],
        "evaporator": {"pan": {"length": "0.61 m", "width": "1.22 m"}},
        "target": {"brix": 66.9},
        "samples": 20,
    }
    assert day.plan(LEAST) == day.plan(texts) == day.plan(json.dumps(texts))


def test_measured_and_price_in_a_plan():
    sap = {"volume": measured(litre(265), litre(2)), "brix": measured(1.98, 0.05), "temperature": deg_c(4)}
    fuel = {"wood": {}, "price": price(280, cord(1))}
    plan = day.plan(LEAST | {"sap": [sap], "evaporator": LEAST["evaporator"] | {"fuel": fuel}})
    written = plan.to_dict()["inputs"]
    assert written["sap"][0]["volume"] == {"value": 265, "unit": "L", "uncertainty": 2}
    assert written["sap"][0]["brix"]["uncertainty"] == 0.05
    assert written["evaporator"]["fuel"]["price"] == {"amount": 280, "per": "1 cord"} or written["evaporator"]["fuel"][
        "price"
    ] == {"amount": 280, "per": {"value": 1, "unit": "cord"}}
    assert plan.totals.fuel[0].cost > 0


def test_types_of_inputs_and_plans_are_there():
    plan = day.plan(LEAST)
    assert type(plan.steps[0]) is day.Step and type(plan.totals) is day.Totals
    assert day.DayInputs.__required_keys__ >= {"air", "sap", "evaporator", "target"}
    assert day.Air.__annotations__


def test_catalogue():
    assert {(row.module, row.name) for row in catalogue.functions()} >= {("sucrose", "density"), ("water", "viscosity")}
    assert len(catalogue.relations()) == len(catalogue.functions()) > 35
    assert catalogue.schema("day_plan")["title"] == "DayPlan"
    assert catalogue.numbers() and sugaring.__version__.count(".") == 2
    with pytest.raises(errors.UnknownName, match='schema has the unknown name "day_input"; nearest: day_inputs'):
        catalogue.schema("day_input")
    assert {unit.word for unit in catalogue.units()} <= set(units.__all__)
    for row in catalogue.functions():
        assert [argument.name for argument in row.arguments] == [limit.argument for limit in row.relation.inputs]


def test_foreign_quantities():
    pint = pytest.importorskip("pint")
    registry = pint.UnitRegistry()
    here = sucrose.density(50, deg_c(20)).to(kg_per_m3)
    assert sucrose.density(50, registry.Quantity(20, "degC")).to(kg_per_m3) == here
    assert list(water.density(registry.Quantity([20, 30], "degC")).to(kg_per_m3)) == list(
        water.density(deg_c([20, 30])).to(kg_per_m3)
    )
    assert StationPressure.measured(registry.Quantity(965, "hPa")).pressure == kpa(96.5)
    with pytest.raises(errors.WrongDimension, match="temperature = 20 kilogram is of another dimension"):
        sucrose.density(50, registry.Quantity(20, "kg"))

    class Astronomical:
        """As astropy and unyt do it."""

        def to_value(self, unit):
            assert unit == "K"
            return 293.15

    assert sucrose.density(50, Astronomical()).to(kg_per_m3) == here


def test_the_library_names_no_folder_of_the_machine_that_built_it():
    library = Path(sugaring._sugaring.__file__).read_bytes()
    assert b"/.cargo/registry" not in library
    assert str(Path.home()).encode() + b"/.cargo" not in library
