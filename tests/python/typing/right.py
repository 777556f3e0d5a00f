"""What a type checker must take: `mypy --strict` finds nothing here."""

from typing import Any, assert_type

import numpy as np
from numpy.typing import NDArray

from sugaring import Quantity, SugaringError, Unit, air, catalogue, day, finish, membrane, sucrose, units, water
from sugaring.air import StationPressure, StationPressures
from sugaring.errors import OutOfRange
from sugaring.units import (
    Density,
    EnergyPerMass,
    Measured,
    Temperature,
    TemperatureDifference,
    Volume,
    bar_gauge,
    cord,
    deg_c,
    deg_f,
    delta_c,
    gal,
    hours,
    kg_per_m3,
    kpa,
    litre,
    litre_per_h,
    measured,
    metre,
    percent,
    price,
)

station = StationPressure.measured(kpa(96.5))
assert_type(deg_c(20), Quantity[Temperature])
assert_type(deg_c(20).to(deg_f), float)
assert_type(deg_c(20).unit, Unit[Temperature])
assert_type(sucrose.density(66.9, deg_c(20)), Quantity[Density])
assert_type(sucrose.density(66.9, deg_c(20)).to(kg_per_m3), float)
assert_type(sucrose.on_scale(66.9, units.baume_20_20), Quantity[units.Baume2020])
assert_type(sucrose.on_scale(66.9, units.baume_20_20).to(units.baume_20_20), float)
assert_type(sucrose.brix_from_scale(units.baume_60_60_f(36)), float)
assert_type(sucrose.brix_from_refractive_index(1.4, deg_c(20)), float)
assert_type(finish.finishing_point(66.9, station, non_sucrose_rise=delta_c(0.2)).temperature.to(deg_c), float)
assert_type(units.heading("temp [°F]")[0], str)
assert_type(sucrose.boiling_temperature(66.9, station), Quantity[Temperature])
assert_type(sucrose.water_activity(66.9, deg_c(20)), float)
assert_type(sucrose.brix_from_boiling(deg_f(217), station), float)
readings: NDArray[np.float64] = np.linspace(96.5, 97.1, 7)
stations = StationPressure.measured(kpa(readings))
assert_type(sucrose.on_scale(readings, units.baume_20_20).to(units.baume_20_20), NDArray[np.float64])
assert_type(stations, StationPressures[NDArray[np.float64]])
assert_type(sucrose.boiling_temperature(66.9, stations), Quantity[Temperature, NDArray[np.float64]])
assert_type(sucrose.brix_from_boiling(deg_f([217, 218]), stations), NDArray[np.float64])
assert_type(sucrose.heat_to_warm(2, deg_c(4), to_temperature=deg_c(90)), Quantity[EnergyPerMass])
assert_type(air.pressure_at_altitude(metre(410)).to(kpa), float)
membrane.pump_energy(bar_gauge(7.6), litre_per_h(500), duration=hours(2), efficiency=percent(35))
membrane.pump_energy(bar_gauge(7.6), litre_per_h(500), duration=hours(2), efficiency=0.35)

brix: NDArray[np.float64] = np.linspace(0, 60, 7)
assert_type(sucrose.density(brix, deg_c(20)).to(kg_per_m3), NDArray[np.float64])
assert_type(sucrose.density(50, deg_c(brix)).to(kg_per_m3), NDArray[np.float64])
assert_type(sucrose.density(brix, deg_c(brix), on_error="nan").to(kg_per_m3), NDArray[np.float64])
assert_type(sucrose.density([1.0, 2.0], deg_c([20.0, 30.0])).to(kg_per_m3), NDArray[np.float64])
assert_type(water.density(deg_c(brix)).to(kg_per_m3), NDArray[np.float64])

assert_type(gal(1) + litre(1), Quantity[Volume])
assert_type(2 * gal(1), Quantity[Volume])
assert_type(gal(1) / litre(1), float)
assert_type(deg_c(20) - deg_c(5), Quantity[TemperatureDifference])
assert_type(deg_c(20) + delta_c(5), Quantity[Temperature])
assert gal(1) > litre(1)
total = sum([gal(1), gal(2)], start=gal(0))
assert_type(total, Quantity[Volume])
assert_type(measured(litre(95), litre(2)), Measured[Volume])
assert_type(measured(deg_c(4), delta_c(0.5)), Measured[Temperature])
assert_type(units.parse("40 gal"), Quantity[Any])
bar_gauge(7.6).absolute(station)


def warmer(temperature: Quantity[Temperature]) -> Quantity[Temperature]:
    return temperature + delta_c(1)


inputs: day.DayInputs = {
    "title": "Far Orchard",
    "air": {"station_pressure": kpa(96.5), "altitude": "410 m"},
    "sap": [
        {"volume": litre(170), "brix": 1.8, "temperature": warmer(deg_c(3))},
        {"volume": measured(litre(95), litre(2)), "brix": measured(2.3, 0.1), "temperature": "5 °C"},
    ],
    "membrane": {
        "element": {
            "flow": "0.9 m³/d",
            "pressure": bar_gauge(4.1),
            "temperature": deg_c(25),
            "salt": "500 mg/L",
            "recovery": percent(15),
            "rejection": 0.97,
        },
        "parallel": 2,
        "pressure": bar_gauge(7.6),
        "run": {"recirculate_until": {"brix": 4}},
    },
    "evaporator": {
        "pan": {"length": metre(1.22), "width": {"value": 0.61, "unit": "m"}},
        "fuel": {"wood": {"species": "hardwood"}, "price": price(280, cord(1))},
    },
    "target": {"brix": 66.9},
    "instruments": {"hydrometer": {"hydrometer": {"scale": "brix", "calibrated_at": "60 °F"}}},
}
plan = day.plan(inputs, progress=lambda share: share < 2)
assert_type(plan, day.DayPlan)
assert_type(plan.steps[0].duration.low, float | None)
assert plan.totals.syrup is None or plan.totals.syrup.volume.to(litre) > 0
assert_type(plan.totals.hours.quantity.to(hours), float)
day.plan('{"air": {}}') if plan.title is None else plan.page(system="us")
assert_type(catalogue.functions()[0].relation.inputs[0].low, float)



def longest(steps: tuple[day.Step, ...]) -> day.Estimate[units.Time]:
    return max((step.duration for step in steps), key=lambda duration: duration.value)


assert longest(plan.steps).to(hours) > 0

try:
    sucrose.density(99, deg_c(20))
except OutOfRange as error:
    assert_type(error.range, tuple[float, float] | None)
    assert isinstance(error, SugaringError)
