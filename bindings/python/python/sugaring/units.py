# Written by `cargo xtask surface`: change what it is made from.
"""Quantities, unit words, measured values and prices.

One word both makes and reads: ``gal(40)`` is a volume, ``gal(40).to(litre)`` its litres. ``gal`` is the US gallon.
What a quantity measures is part of its type, so that a type checker refuses a mass where a volume is needed.

Examples
--------
>>> from sugaring.units import deg_c, deg_f, gal, litre
>>> gal(40).to(litre)
151.41647136
>>> deg_f(212) == deg_c(100)
True
"""

from __future__ import annotations

from ._amounts import Measured, Price, measured, price
from ._sugaring import Quantity, Unit, _unit, heading, parse

__all__ = [
    "Amount",
    "ApparentRelativeDensity2020",
    "Area",
    "Baume2020",
    "Baume6060F",
    "Brix",
    "Concentration",
    "Conductivity",
    "Count",
    "Density",
    "DensityScale",
    "Energy",
    "EnergyPerMass",
    "Flow",
    "GaugePressure",
    "Length",
    "Mass",
    "MassFlow",
    "Measured",
    "PerKelvin",
    "Permeance",
    "Point",
    "Power",
    "Pressure",
    "Price",
    "Quantity",
    "Ratio",
    "RelativeDensity2020",
    "RelativeDensity204",
    "RelativeDensity6060F",
    "SpecificHeat",
    "Temperature",
    "TemperatureDifference",
    "Time",
    "Unit",
    "Viscosity",
    "Volume",
    "apparent_relative_density_20_20",
    "atm",
    "bar",
    "bar_gauge",
    "baume_20_20",
    "baume_60_60_f",
    "brix",
    "btu",
    "btu_per_h",
    "btu_per_lb",
    "cm",
    "cord",
    "cubic_metre",
    "cubic_metre_per_day",
    "cubic_metre_per_s",
    "cubic_metre_per_s_pa",
    "days",
    "deg_c",
    "deg_f",
    "delta_c",
    "delta_f",
    "each",
    "fl_oz",
    "foot",
    "fraction",
    "gal",
    "gal_per_day",
    "gal_per_h",
    "gal_per_min",
    "gram",
    "gram_per_litre",
    "heading",
    "hours",
    "hpa",
    "imp_gal",
    "in_hg",
    "inch",
    "joule",
    "joule_per_kg",
    "joule_per_kg_k",
    "kelvin",
    "kg",
    "kg_per_h",
    "kg_per_m3",
    "kg_per_s",
    "kj",
    "kj_per_kg",
    "kj_per_kg_k",
    "kpa",
    "kpa_gauge",
    "kw",
    "kwh",
    "lb",
    "lb_per_gal",
    "lb_per_h",
    "litre",
    "litre_per_h",
    "litre_per_h_bar",
    "litre_per_min",
    "measured",
    "metre",
    "mg_per_litre",
    "million_btu",
    "minutes",
    "mj",
    "mj_per_kg",
    "ml",
    "mm",
    "mm_hg",
    "mpa_s",
    "oz",
    "pa",
    "pa_gauge",
    "parse",
    "pascal_s",
    "per_kelvin",
    "percent",
    "price",
    "psi",
    "psi_gauge",
    "quart",
    "relative_density_20_20",
    "relative_density_20_4",
    "relative_density_60_60_f",
    "seconds",
    "short_ton",
    "square_foot",
    "square_metre",
    "tonne",
    "w_per_m_k",
    "watt",
]


class Amount:
    """What adds, and scales by numbers."""


class Point:
    """A place on a scale: two differ by an amount, and neither add nor scale."""


class DensityScale(Point):
    """A place on a density scale, which says at what temperatures it holds."""


class Volume(Amount):
    """A volume."""


class Mass(Amount):
    """A mass."""


class Temperature(Point):
    """A temperature."""


class TemperatureDifference(Amount):
    """A difference of temperatures."""


class Pressure(Amount):
    """An absolute pressure."""


class GaugePressure(Point):
    """A gauge pressure."""


class Length(Amount):
    """A length."""


class Area(Amount):
    """An area."""


class Time(Amount):
    """A time."""


class Flow(Amount):
    """A flow."""


class MassFlow(Amount):
    """A mass flow."""


class Power(Amount):
    """A power."""


class Energy(Amount):
    """An energy."""


class Density(Amount):
    """A density."""


class Concentration(Amount):
    """A concentration."""


class EnergyPerMass(Amount):
    """An energy per mass."""


class SpecificHeat(Amount):
    """A specific heat."""


class Viscosity(Amount):
    """A viscosity."""


class Conductivity(Amount):
    """A thermal conductivity."""


class Permeance(Amount):
    """A permeance."""


class PerKelvin(Amount):
    """A coefficient per kelvin."""


class Ratio(Amount):
    """A ratio."""


class Brix(Amount):
    """A °Brix."""


class Count(Amount):
    """A count."""


class Baume2020(DensityScale):
    """A degree Baumé (20/20 °C)."""


class Baume6060F(DensityScale):
    """A degree Baumé (60/60 °F)."""


class RelativeDensity2020(DensityScale):
    """A relative density (20/20 °C)."""


class RelativeDensity6060F(DensityScale):
    """A relative density (60/60 °F)."""


class RelativeDensity204(DensityScale):
    """A relative density (20/4 °C)."""


class ApparentRelativeDensity2020(DensityScale):
    """A relative density in air (20/20 °C)."""


gal: Unit[Volume] = _unit("gal")
"""gal: 231 in³ exactly."""
imp_gal: Unit[Volume] = _unit("imp_gal")
"""imp gal: exact by definition."""
quart: Unit[Volume] = _unit("quart")
"""qt: a quarter of a US gallon."""
fl_oz: Unit[Volume] = _unit("fl_oz")
"""fl oz: a US gallon / 128."""
litre: Unit[Volume] = _unit("litre")
"""L: 1e-3 m³."""
ml: Unit[Volume] = _unit("ml")
"""mL: 1e-6 m³."""
cubic_metre: Unit[Volume] = _unit("cubic_metre")
"""m³: SI."""
cord: Unit[Volume] = _unit("cord")
"""cord: 128 ft³ stacked."""

kg: Unit[Mass] = _unit("kg")
"""kg: SI."""
gram: Unit[Mass] = _unit("gram")
"""g: 1e-3 kg."""
lb: Unit[Mass] = _unit("lb")
"""lb: exact by the agreement of 1959."""
oz: Unit[Mass] = _unit("oz")
"""oz: a pound / 16."""
tonne: Unit[Mass] = _unit("tonne")
"""t: 1000 kg."""
short_ton: Unit[Mass] = _unit("short_ton")
"""short ton: 2000 lb."""

deg_c: Unit[Temperature] = _unit("deg_c")
"""°C: K − 273.15."""
deg_f: Unit[Temperature] = _unit("deg_f")
"""°F: (x − 32)/1.8 °C."""
kelvin: Unit[Temperature] = _unit("kelvin")
"""K: SI."""

delta_c: Unit[TemperatureDifference] = _unit("delta_c")
"""Δ°C: 1 K."""
delta_f: Unit[TemperatureDifference] = _unit("delta_f")
"""Δ°F: 5/9 K."""

pa: Unit[Pressure] = _unit("pa")
"""Pa: SI."""
hpa: Unit[Pressure] = _unit("hpa")
"""hPa: 100 Pa."""
kpa: Unit[Pressure] = _unit("kpa")
"""kPa: 1000 Pa."""
bar: Unit[Pressure] = _unit("bar")
"""bar: 1e5 Pa."""
psi: Unit[Pressure] = _unit("psi")
"""psi: lb · 9.80665 m/s² / in²."""
in_hg: Unit[Pressure] = _unit("in_hg")
"""inHg: 25.4 mm of conventional mercury."""
mm_hg: Unit[Pressure] = _unit("mm_hg")
"""mmHg: 13 595.1 kg/m³ · 9.80665 m/s² · 1 mm."""
atm: Unit[Pressure] = _unit("atm")
"""atm: exact by definition."""

mm: Unit[Length] = _unit("mm")
"""mm: 1e-3 m."""
cm: Unit[Length] = _unit("cm")
"""cm: 1e-2 m."""
metre: Unit[Length] = _unit("metre")
"""m: SI."""
inch: Unit[Length] = _unit("inch")
"""in: exact by the agreement of 1959."""
foot: Unit[Length] = _unit("foot")
"""ft: 12 in."""

square_metre: Unit[Area] = _unit("square_metre")
"""m²: SI."""
square_foot: Unit[Area] = _unit("square_foot")
"""ft²: ft²."""

seconds: Unit[Time] = _unit("seconds")
"""s: SI."""
minutes: Unit[Time] = _unit("minutes")
"""min: 60 s."""
hours: Unit[Time] = _unit("hours")
"""h: 3600 s."""
days: Unit[Time] = _unit("days")
"""d: 24 h."""

gal_per_h: Unit[Flow] = _unit("gal_per_h")
"""gal/h: US gallons per 3600 s."""
gal_per_min: Unit[Flow] = _unit("gal_per_min")
"""gal/min: US gallons per 60 s."""
gal_per_day: Unit[Flow] = _unit("gal_per_day")
"""gal/d: US gallons per 24 h."""
litre_per_h: Unit[Flow] = _unit("litre_per_h")
"""L/h: 1e-3 m³ per 3600 s."""
litre_per_min: Unit[Flow] = _unit("litre_per_min")
"""L/min: 1e-3 m³ per 60 s."""
cubic_metre_per_day: Unit[Flow] = _unit("cubic_metre_per_day")
"""m³/d: 1 m³ per 24 h."""
cubic_metre_per_s: Unit[Flow] = _unit("cubic_metre_per_s")
"""m³/s: SI."""

kg_per_h: Unit[MassFlow] = _unit("kg_per_h")
"""kg/h: 1 kg per 3600 s."""
lb_per_h: Unit[MassFlow] = _unit("lb_per_h")
"""lb/h: 1 lb per 3600 s."""
kg_per_s: Unit[MassFlow] = _unit("kg_per_s")
"""kg/s: SI."""

watt: Unit[Power] = _unit("watt")
"""W: SI."""
kw: Unit[Power] = _unit("kw")
"""kW: 1000 W."""
btu_per_h: Unit[Power] = _unit("btu_per_h")
"""Btu/h: Btu (IT) per 3600 s."""

joule: Unit[Energy] = _unit("joule")
"""J: SI."""
kj: Unit[Energy] = _unit("kj")
"""kJ: 1000 J."""
mj: Unit[Energy] = _unit("mj")
"""MJ: 1e6 J."""
kwh: Unit[Energy] = _unit("kwh")
"""kWh: 3.6 MJ."""
btu: Unit[Energy] = _unit("btu")
"""Btu: international table: 4.1868 kJ/(kg K) · lb · 5/9 K."""
million_btu: Unit[Energy] = _unit("million_btu")
"""million Btu: 1e6 Btu (IT)."""

kg_per_m3: Unit[Density] = _unit("kg_per_m3")
"""kg/m³: SI."""
lb_per_gal: Unit[Density] = _unit("lb_per_gal")
"""lb/gal: 1 lb per US gallon."""

mg_per_litre: Unit[Concentration] = _unit("mg_per_litre")
"""mg/L: 1e-3 kg/m³."""
gram_per_litre: Unit[Concentration] = _unit("gram_per_litre")
"""g/L: 1 kg/m³."""

joule_per_kg: Unit[EnergyPerMass] = _unit("joule_per_kg")
"""J/kg: SI."""
kj_per_kg: Unit[EnergyPerMass] = _unit("kj_per_kg")
"""kJ/kg: 1000 J/kg."""
mj_per_kg: Unit[EnergyPerMass] = _unit("mj_per_kg")
"""MJ/kg: 1e6 J/kg."""
btu_per_lb: Unit[EnergyPerMass] = _unit("btu_per_lb")
"""Btu/lb: Btu (IT) per lb, exactly 2326 J/kg."""

joule_per_kg_k: Unit[SpecificHeat] = _unit("joule_per_kg_k")
"""J/(kg K): SI."""
kj_per_kg_k: Unit[SpecificHeat] = _unit("kj_per_kg_k")
"""kJ/(kg K): 1000 J/(kg K)."""

pascal_s: Unit[Viscosity] = _unit("pascal_s")
"""Pa·s: SI."""
mpa_s: Unit[Viscosity] = _unit("mpa_s")
"""mPa·s: 1e-3 Pa s."""

w_per_m_k: Unit[Conductivity] = _unit("w_per_m_k")
"""W/(m K): SI."""

per_kelvin: Unit[PerKelvin] = _unit("per_kelvin")
"""1/K: SI."""

fraction: Unit[Ratio] = _unit("fraction")
"""no symbol: a plain number."""
percent: Unit[Ratio] = _unit("percent")
"""%: 1/100."""

pa_gauge: Unit[GaugePressure] = _unit("pa_gauge")
"""Pa gauge: 1 Pa above the room."""
kpa_gauge: Unit[GaugePressure] = _unit("kpa_gauge")
"""kPa gauge: 1000 Pa above the room."""
bar_gauge: Unit[GaugePressure] = _unit("bar_gauge")
"""bar gauge: 1e5 Pa above the room."""
psi_gauge: Unit[GaugePressure] = _unit("psi_gauge")
"""psi gauge: psi above the room."""

litre_per_h_bar: Unit[Permeance] = _unit("litre_per_h_bar")
"""L/h/bar: 1 L/h per bar."""
cubic_metre_per_s_pa: Unit[Permeance] = _unit("cubic_metre_per_s_pa")
"""m³/s/Pa: SI."""

each: Unit[Count] = _unit("each")
"""each: a count."""

baume_20_20: Unit[Baume2020] = _unit("baume_20_20")
"""°Bé 20/20: modulus 145, solution and water at 20 °C."""

baume_60_60_f: Unit[Baume6060F] = _unit("baume_60_60_f")
"""°Bé 60/60 °F: modulus 145, solution and water at 60 °F."""

relative_density_20_20: Unit[RelativeDensity2020] = _unit("relative_density_20_20")
"""SG 20/20: density over that of water, both at 20 °C."""

relative_density_60_60_f: Unit[RelativeDensity6060F] = _unit("relative_density_60_60_f")
"""SG 60/60 °F: density over that of water, both at 60 °F."""

relative_density_20_4: Unit[RelativeDensity204] = _unit("relative_density_20_4")
"""SG 20/4: density at 20 °C over that of water at 4 °C."""

apparent_relative_density_20_20: Unit[ApparentRelativeDensity2020] = _unit("apparent_relative_density_20_20")
"""SG 20/20 in air: weights in air over that of water, both at 20 °C."""

brix: Unit[Brix] = _unit("brix")
"""°Bx: mass per cent of dissolved solids."""
