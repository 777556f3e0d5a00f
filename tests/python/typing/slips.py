"""What a type checker must refuse: `mypy --strict` reports each mark below that refuses nothing."""

from sugaring import day, membrane, sucrose, units, water
from sugaring.air import StationPressure
from sugaring.units import (
    bar_gauge,
    deg_c,
    delta_c,
    gal,
    hours,
    kg,
    kg_per_m3,
    kpa,
    litre,
    litre_per_h,
    measured,
    metre,
    price,
)

station = StationPressure.measured(kpa(96.5))

sucrose.density(66.9, 20)  # type: ignore[call-overload]
sucrose.density(66.9, litre(20))  # type: ignore[arg-type]
sucrose.density(66.9, "20 °C")  # type: ignore[call-overload]
sucrose.density(66.9, delta_c(20))  # type: ignore[arg-type]
sucrose.on_scale(66.9, litre)  # type: ignore[type-var]
sucrose.on_scale(66.9, units.baume_20_20).to(units.baume_60_60_f)  # type: ignore[arg-type]
sucrose.brix_from_scale(36)  # type: ignore[call-overload]
sucrose.brix_from_scale(kg_per_m3(1328))  # type: ignore[arg-type]
sucrose.density("66.9", deg_c(20))  # type: ignore[arg-type]
sucrose.density(None, deg_c(20))  # type: ignore[call-overload]
sucrose.density(kg(1), deg_c(20))  # type: ignore[arg-type]
sucrose.density(66.9, deg_c(20), on_error="raise")  # type: ignore[call-overload]
sucrose.density(66.9)  # type: ignore[call-overload]
sucrose.density([1.0, 2.0], [20.0, 30.0])  # type: ignore[call-overload]
sucrose.density(66.9, deg_c(20)).to(kg)  # type: ignore[arg-type]
sucrose.density(66.9, deg_c(20)) + 1  # type: ignore[operator]
sucrose.heat_to_warm(2, deg_c(4), deg_c(90))  # type: ignore[call-overload]
sucrose.heat_to_warm(2, deg_c(4), to_temperature=90)  # type: ignore[call-overload]
sucrose.boiling_temperature(66.9, kpa(96.5))  # type: ignore[call-overload]
sucrose.boiling_temperature(66.9, 96.5)  # type: ignore[call-overload]
water.density(20)  # type: ignore[call-overload]
membrane.pump_energy(kpa(760), litre_per_h(500), duration=hours(2), efficiency=0.35)  # type: ignore[arg-type]

StationPressure.measured(bar_gauge(0.97))  # type: ignore[arg-type]
StationPressure.measured(96.5)  # type: ignore[call-overload]
bar_gauge(7.6).absolute(StationPressure.measured(kpa([96.5])))  # type: ignore[arg-type]
StationPressure.from_altitude(kpa(96.5))  # type: ignore[arg-type]

gal(1) + kg(1)  # type: ignore[operator]
gal(1) - kg(1)  # type: ignore[operator]
deg_c(20) + deg_c(5)  # type: ignore[operator]
2 * deg_c(20)  # type: ignore[operator]
deg_c(20) / 2  # type: ignore[operator]
bar_gauge(1) + bar_gauge(1)  # type: ignore[operator]
gal(1) * gal(1)  # type: ignore[operator]
gal(1) < kg(1)  # type: ignore[operator]
gal(1).to(kg)  # type: ignore[arg-type]
gal("40")  # type: ignore[arg-type]
gal(None)  # type: ignore[call-overload]
float(gal(1))  # type: ignore[arg-type]
kpa(1).absolute(station)  # type: ignore[misc]
units.gallon(40)  # type: ignore[attr-defined]
units.parse(40)  # type: ignore[arg-type]

measured(litre(95), kg(2))  # type: ignore[arg-type]
measured(deg_c(4), deg_c(0.5))  # type: ignore[arg-type]
measured(litre(95), 2)  # type: ignore[call-overload]
price("280", litre(1))  # type: ignore[arg-type]
price(280, "1 cord")  # type: ignore[arg-type]

pan: day.Evaporator = {"pan": {"length": metre(0.61), "width": metre(1.22)}}
target: day.Target = {"brix": 66.9}
air: day.Air = {"altitude": metre(410)}
misspelt: day.Air = {"altitud": metre(410)}  # type: ignore[typeddict-unknown-key]
bare: day.Air = {"altitude": 410}  # type: ignore[typeddict-item]
wrong: day.Air = {"altitude": kpa(410)}  # type: ignore[typeddict-item]
mass_for_volume: day.Sap = {"volume": kg(265), "brix": 1.98, "temperature": deg_c(4)}  # type: ignore[typeddict-item]
point: day.Sap = {"volume": litre(265), "temperature": delta_c(4)}  # type: ignore[typeddict-item]
text: day.Target = {"brix": None}  # type: ignore[typeddict-item]
choice: day.Evaporator = {"pan": pan["pan"], "run": "flood"}  # type: ignore[typeddict-item]
missing: day.DayInputs = {"air": air, "sap": [], "evaporator": pan}  # type: ignore[typeddict-item]

plan = day.plan({"air": air, "sap": [], "evaporator": pan, "target": target})
plan.page(system="imperial")  # type: ignore[arg-type]
plan.page("us")  # type: ignore[call-arg]
plan.totals.hours.to(kg_per_m3)  # type: ignore[arg-type]
plan.totals.ours  # type: ignore[attr-defined]
plan.steps[0].duration.low + 1  # type: ignore[operator]
day.plan(day.plan)  # type: ignore[arg-type]
