# Written by `cargo xtask surface`: change what it is made from.
"""What a day is planned from, as types: made from the JSON Schema of the inputs.

Wherever a quantity stands, so may a measured value, a text such as ``"170 L"``, or what JSON holds.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Literal, NotRequired, TypeAlias, TypedDict, TypeVar, Union

from . import units as _u
from ._amounts import Measured, Price
from ._sugaring import Quantity

__all__ = [
    "Air",
    "CheckPoint",
    "Compensated",
    "Container",
    "DayInputs",
    "Efficiency",
    "EfficiencyOfGross",
    "EfficiencyOfNet",
    "Element",
    "Evaporator",
    "Finishing",
    "Fuel",
    "Given",
    "Heat",
    "HeatAreaRule",
    "HeatHeldLevel",
    "HeatHeldLevelHeldLevel",
    "HeatLevelDrop",
    "HeatPower",
    "Hydrometer",
    "HydrometerScale",
    "Instrument",
    "InstrumentByName",
    "InstrumentHydrometer",
    "InstrumentRefractometer",
    "LeftInPan",
    "Membrane",
    "Moisture",
    "MoistureDryBasis",
    "MoistureWetBasis",
    "Pan",
    "PanKind",
    "PanRun",
    "Polarisation",
    "PolarisationCoefficient",
    "PolarisationModulus",
    "Pump",
    "PumpPoint",
    "Refractometer",
    "Run",
    "RunRecirculateUntil",
    "RunSinglePass",
    "RunSinglePassSinglePass",
    "Sap",
    "SapReading",
    "Span",
    "Target",
    "TemperatureModel",
    "TemperatureModelSingle",
    "Until",
    "UntilBrix",
    "UntilDuration",
    "UntilRecovery",
    "UntilVolume",
    "Warming",
    "Wood",
    "Written",
    "WrittenPrice",
]

D = TypeVar("D")


class Written(TypedDict):
    """A quantity as JSON holds it."""

    value: float
    unit: NotRequired[str]
    uncertainty: NotRequired[float]


class WrittenPrice(TypedDict):
    """A price as JSON holds it."""

    amount: float
    per: Quantity[_u.Amount] | str


Given: TypeAlias = Union[Quantity[D], Measured[D], Written, str]


class Air(TypedDict):
    """Today's air: one reading at least; the first that stands, in this order, is used, the others are checks."""

    air_temperature: NotRequired[Given[_u.Temperature]]
    """Mean temperature of the air over the last 12 hours."""
    altimeter_setting: NotRequired[Given[_u.Pressure]]
    """The airport's or home station's number; needs the altitude."""
    altitude: NotRequired[Given[_u.Length]]
    """Altitude of the sugarhouse; alone it leaves the weather out."""
    sea_level_pressure: NotRequired[Given[_u.Pressure]]
    """The weather map's number; needs the altitude and the air temperature."""
    station_pressure: NotRequired[Given[_u.Pressure]]
    """A barometer in the sugarhouse, not adjusted to sea level."""
    water_boils_at: NotRequired[Given[_u.Temperature]]
    """What plain water boils at, here, now: the best reading."""


class CheckPoint(TypedDict):
    """What an instrument showed, and what a right one would have."""

    expected: float
    """What a right one would have shown."""
    shown: float
    """What it showed."""


class Compensated(TypedDict):
    """The range of a refractometer's own correction."""

    high: Given[_u.Temperature]
    """To this temperature of the prism."""
    low: Given[_u.Temperature]
    """From this temperature of the prism."""


class Container(TypedDict):
    """A container at hand."""

    brimful: NotRequired[Given[_u.Volume]]
    """What it holds to the brim."""
    mass: NotRequired[Given[_u.Mass]]
    """Its own mass."""
    material: NotRequired[str]
    """Its material, such as `glass`."""
    name: NotRequired[str]
    """Its name."""
    price: NotRequired[Price | WrittenPrice]
    """Price of one."""
    stock: int
    """How many there are."""
    temperature: NotRequired[Given[_u.Temperature]]
    """Its temperature before filling; default 20 °C."""
    volume: Given[_u.Volume]
    """Contents on the label, at 20 °C."""


class EfficiencyOfGross(TypedDict):
    """Of the gross heat."""

    of_gross: float | Given[_u.Ratio]


class EfficiencyOfNet(TypedDict):
    """Of the net heat."""

    of_net: float | Given[_u.Ratio]


class Element(TypedDict):
    """A membrane element as its label describes it."""

    flow: Given[_u.Flow]
    """Permeate flow of the rating test."""
    permeance: NotRequired[Given[_u.Permeance]]
    """Permeance from your own test; the rating then only anchors the film."""
    pressure: Given[_u.GaugePressure]
    """Pressure of the rating test."""
    recovery: float | Given[_u.Ratio]
    """Recovery of the rating test."""
    rejection: float | Given[_u.Ratio]
    """Rejection of the rating test."""
    salt: Given[_u.Concentration]
    """Salt in the water of the rating test."""
    temperature: Given[_u.Temperature]
    """Temperature of the rating test."""


class Evaporator(TypedDict):
    """The big pan, its fire and what stood in it."""

    fuel: NotRequired[Fuel]
    """The fire's fuel; default hardwood."""
    heat: NotRequired[Heat]
    """Heat into the liquid; default the rule by area for a flat pan."""
    left_in_pan: NotRequired[LeftInPan]
    """What stood in the pan from before."""
    pan: Pan
    """The pan."""
    run: NotRequired[PanRun]
    """How it is run; this version knows the batch with topping up."""


class Finishing(TypedDict):
    """The small pan that finishes."""

    capacity: NotRequired[Given[_u.Volume]]
    """What it holds; unchecked where it is left out."""
    fuel: NotRequired[Fuel]
    """Its fuel; default propane."""
    heat: NotRequired[Given[_u.Power]]
    """Heat into the syrup, 0.1 to 100 kW; default 3 kW."""


class Fuel(TypedDict):
    """A fuel, how well it is used, what it costs."""

    efficiency: NotRequired[Efficiency]
    """Share of the fuel's heat that reaches the liquid."""
    named: NotRequired[str]
    """A fuel by name, such as `propane`; or `wood`."""
    price: NotRequired[Price | WrittenPrice]
    """Price per any quantity of it."""
    wood: NotRequired[Wood]
    """Wood; or `named`."""


class HeatHeldLevelHeldLevel(TypedDict):
    added: Given[_u.MassFlow]
    """Water added per time."""
    feed_temperature: Given[_u.Temperature]
    """Its temperature."""


class HeatHeldLevel(TypedDict):
    """Cold water added to hold the level of boiling water."""

    held_level: HeatHeldLevelHeldLevel


class HeatLevelDrop(TypedDict):
    """Water boiled off without any feed."""

    level_drop: Given[_u.MassFlow]


class HeatPower(TypedDict):
    """The heat itself."""

    power: Given[_u.Power]


class HeatAreaRule(TypedDict):
    """The rule by area, assumed."""

    area_rule: PanKind


class Hydrometer(TypedDict):
    """A hydrometer."""

    calibrated_at: Given[_u.Temperature]
    """Temperature of its calibration."""
    glass_expansion: NotRequired[Given[_u.PerKelvin]]
    """Cubical expansion of its glass; default 25e-6 per kelvin."""
    offset: NotRequired[float]
    """What it reads too high, in its own marks; default 0."""
    resolution: NotRequired[float]
    """Step to which it is read, in its own marks; adds step/√12 to the uncertainty."""
    scale: HydrometerScale
    """Its scale."""
    span: NotRequired[Span]
    """The least and the greatest mark on its paper."""
    two_point: NotRequired[Sequence[CheckPoint]]
    """Or two checks of it, the lower first; it is read between them only."""
    uncertainty: NotRequired[float]
    """Standard uncertainty of its scale, in its own marks."""


class InstrumentHydrometer(TypedDict):
    """A glass hydrometer."""

    hydrometer: Hydrometer


class InstrumentRefractometer(TypedDict):
    """A refractometer."""

    refractometer: Refractometer


class LeftInPan(TypedDict):
    """What stood in the pan from before."""

    brix: float | Given[_u.Brix]
    """Its °Brix."""
    temperature: Given[_u.Temperature]
    """Its temperature."""
    volume: Given[_u.Volume]
    """Its volume."""


class Membrane(TypedDict):
    """The membrane rig and how it is run."""

    back_pressure: NotRequired[Given[_u.Pressure]]
    """Pressure on the permeate, to 2 bar; default none."""
    element: Element
    """One element, from its label."""
    element_drop: NotRequired[Given[_u.Pressure]]
    """Pressure lost along one element, to 2 bar; default none."""
    film_factor: NotRequired[float | Given[_u.Ratio]]
    """Factor on the film, 0.1 to 4; default 1."""
    hold_up: NotRequired[Given[_u.Volume]]
    """Volume that stays in the housings, to 100 L; default none."""
    parallel: NotRequired[int]
    """Housings side by side, 1 to 64; default 1."""
    polarisation: NotRequired[Polarisation]
    """How sugar gathers at the membrane; default a film anchored at the rating."""
    prefilter_drop: NotRequired[Given[_u.Pressure]]
    """Pressure lost in the prefilter, to 2 bar; default none."""
    pressure: Given[_u.GaugePressure]
    """Pressure on the gauge."""
    pressure_limit: NotRequired[Given[_u.GaugePressure]]
    """What the rig's weakest part allows; without it nothing is checked."""
    pump: NotRequired[Pump]
    """The pump."""
    retention: NotRequired[float | Given[_u.Ratio]]
    """Share of the sugar that the membrane keeps, 0.5 to 1; default 1."""
    rinse: NotRequired[float | Given[_u.Ratio]]
    """Share of the sap volume kept as permeate for the rinse; default 15 %."""
    run: Run
    """How it is run."""
    series: NotRequired[int]
    """Elements one after another, 1 to 8; default 1."""
    temperature_model: NotRequired[TemperatureModel]
    """How permeance falls in the cold; default the makers' formula."""
    warming: NotRequired[Warming]
    """Whether the hours count the warming of the tank; default not."""


class MoistureWetBasis(TypedDict):
    """Water per total mass."""

    wet_basis: float | Given[_u.Ratio]


class MoistureDryBasis(TypedDict):
    """Water per dry mass, as pin meters show it."""

    dry_basis: float | Given[_u.Ratio]


class Pan(TypedDict):
    """The big pan."""

    least_depth: NotRequired[Given[_u.Length]]
    """Least depth over the fire, 5 to 500 mm; default 25 mm."""
    length: Given[_u.Length]
    """Inner length, 50 mm to 20 m."""
    running_depth: NotRequired[Given[_u.Length]]
    """Depth of the boiling liquid while topping up, 5 to 500 mm; default 50 mm."""
    width: Given[_u.Length]
    """Inner width, 50 mm to 20 m."""


class PolarisationModulus(TypedDict):
    """A fixed ratio of the °Brix at the wall."""

    modulus: float


class PolarisationCoefficient(TypedDict):
    """A fixed film coefficient times area of one element, in m³/s."""

    coefficient: float


class Pump(TypedDict):
    """The pump: a flow or a table of points, an efficiency or a power."""

    efficiency: NotRequired[float | Given[_u.Ratio]]
    """Efficiency of pump and motor; default 35 %."""
    flow: NotRequired[Given[_u.Flow]]
    """Its flow at the pressure of the run; default 250 L/h into each housing side by side."""
    points: NotRequired[Sequence[PumpPoint]]
    """Its flow at several pressures, in place of one flow."""
    power: NotRequired[Given[_u.Power]]
    """Electrical power, in place of an efficiency."""


class PumpPoint(TypedDict):
    """A point of a pump's curve."""

    flow: Given[_u.Flow]
    """It delivers this flow."""
    power: NotRequired[Given[_u.Power]]
    """And draws this electrical power."""
    pressure: Given[_u.GaugePressure]
    """At this pressure."""


class Refractometer(TypedDict):
    """A refractometer: `compensated`, or `uncompensated`."""

    compensated: NotRequired[Compensated]
    """Between which temperatures of its prism it corrects itself."""
    resolution: NotRequired[float]
    """Step to which it is read, °Bx; adds step/√12 to the uncertainty."""
    set_to_zero_at: NotRequired[Given[_u.Temperature]]
    """Or the temperature of its prism at which its screw was turned to 0 in water."""
    two_point: NotRequired[Sequence[CheckPoint]]
    """Or two checks of it, the lower first; it is read between them only."""
    uncertainty: NotRequired[float]
    """Standard uncertainty of its scale, °Bx."""
    uncompensated: NotRequired[bool]
    """True where it does not: what it shows is right with its prism at 20 °C."""
    zero: NotRequired[float]
    """What it shows in water; default 0."""


class RunRecirculateUntil(TypedDict):
    """The concentrate goes back to the tank until an aim is met."""

    recirculate_until: Until


class RunSinglePassSinglePass(TypedDict):
    recovery: float | Given[_u.Ratio]
    """Permeate volume per feed volume."""


class RunSinglePass(TypedDict):
    """Once through, at this share of permeate."""

    single_pass: RunSinglePassSinglePass


class Sap(TypedDict):
    """A lot of sap."""

    brix: NotRequired[float | Given[_u.Brix]]
    """Its true °Brix; or `reading`."""
    mass: NotRequired[Given[_u.Mass]]
    """Its mass; or `volume`."""
    name: NotRequired[str]
    """Its name; numbered where it has none."""
    reading: NotRequired[SapReading]
    """What an instrument showed; or `brix`."""
    temperature: NotRequired[Given[_u.Temperature]]
    """Its temperature."""
    volume: NotRequired[Given[_u.Volume]]
    """Its volume at its own temperature; or `mass`."""


class SapReading(TypedDict):
    """What an instrument of the day showed in the sap."""

    instrument: str
    """The instrument's name among `instruments`."""
    temperature: NotRequired[Given[_u.Temperature]]
    """Temperature of the sap in a hydrometer's jar, of the prism of a refractometer; default the sap's."""
    value: float
    """The number on the instrument's own scale."""


class Span(TypedDict):
    """Where the paper of a hydrometer begins and ends."""

    high: float
    """The greatest mark."""
    low: float
    """The least mark."""


class Target(TypedDict):
    """When the syrup is done."""

    brix: float | Given[_u.Brix]
    """°Brix of the syrup, 50 to 70."""
    guard: NotRequired[float | Given[_u.Brix]]
    """How far above it to aim, 0 to 3 °Bx; default 0."""
    non_sucrose_rise: NotRequired[Given[_u.TemperatureDifference]]
    """How much hotter than pure sucrose this syrup boils, 0 to 1 K; default 0."""
    sugar_lost: NotRequired[float | Given[_u.Ratio]]
    """Share of the syrup left in pans and filters, 0 to 0.2; default 0."""


class TemperatureModelSingle(TypedDict):
    """The same with one constant, in kelvin."""

    single: float


class UntilBrix(TypedDict):
    """At this °Brix of the tank."""

    brix: float | Given[_u.Brix]


class UntilVolume(TypedDict):
    """At this volume left in the tank."""

    volume: Given[_u.Volume]


class UntilRecovery(TypedDict):
    """At this share of permeate per sap, by volume."""

    recovery: float | Given[_u.Ratio]


class UntilDuration(TypedDict):
    """After this time."""

    duration: Given[_u.Time]


class Wood(TypedDict):
    """Wood."""

    moisture: NotRequired[Moisture]
    """Its moisture; default 25 % wet basis."""
    species: NotRequired[str]
    """Its species; default `hardwood`."""


class DayInputs(TypedDict):
    """Everything a day is planned from."""

    air: Air
    """Today's air."""
    containers: NotRequired[Sequence[Container]]
    """Containers at hand; without them there is no packing step."""
    electricity: NotRequired[Price | WrittenPrice]
    """Price of electricity."""
    evaporator: Evaporator
    """The big pan and its fire."""
    fill_temperature: NotRequired[Given[_u.Temperature]]
    """Temperature at which the containers are filled; default 85 °C."""
    finishing: NotRequired[Finishing]
    """The small pan; without it the plan ends at the draw."""
    instruments: NotRequired[InstrumentByName]
    """Instruments at hand, by name; default a Brix hydrometer for 60 °F."""
    labour: NotRequired[Price | WrittenPrice]
    """Price of an hour of work."""
    membrane: NotRequired[Membrane]
    """The membrane rig; without it raw sap is boiled."""
    samples: NotRequired[int]
    """Number of draws behind the ranges, 0 to 1 000 000; 0 leaves the ranges out; default 1000."""
    sap: Sequence[Sap]
    """The lots of sap, one at least."""
    schema_version: NotRequired[int]
    """Version of this shape; 1."""
    seed: NotRequired[int]
    """Seed of the draws behind the ranges; default 1."""
    start: NotRequired[str]
    """`YYYY-MM-DDThh:mm`; printed and counted from, never compared with a clock."""
    target: Target
    """When the syrup is done."""
    title: NotRequired[str]
    """Printed on top; to 80 characters."""


Efficiency: TypeAlias = EfficiencyOfGross | EfficiencyOfNet
"""Heat into the liquid per heat of the fuel."""

Heat: TypeAlias = HeatHeldLevel | HeatLevelDrop | HeatPower | HeatAreaRule
"""Heat into the liquid, however it is known."""

HydrometerScale: TypeAlias = Literal["brix"] | Literal["density"] | Literal["baume_20_20"] | Literal["baume_60_60_f"] | Literal["relative_density_20_20"] | Literal["relative_density_60_60_f"] | Literal["relative_density_20_4"] | Literal["apparent_relative_density_20_20"]
"""Scales of a hydrometer."""

Instrument: TypeAlias = InstrumentHydrometer | InstrumentRefractometer
"""An instrument at hand."""

InstrumentByName: TypeAlias = Mapping[str, Instrument]

Moisture: TypeAlias = MoistureWetBasis | MoistureDryBasis
"""Water in wood."""

PanKind: TypeAlias = Literal["flat"] | Literal["flat_blower"] | Literal["flue"]
"""Kinds of pan of the rule by area."""

PanRun: TypeAlias = Literal["batch"]
"""How a pan is run."""

Polarisation: TypeAlias = Literal["rating_anchored"] | PolarisationModulus | PolarisationCoefficient | Literal["none"]
"""How sugar gathers at the membrane."""

Run: TypeAlias = RunRecirculateUntil | RunSinglePass
"""How the rig is run."""

TemperatureModel: TypeAlias = Literal["makers"] | TemperatureModelSingle | Literal["viscosity"] | Literal["per_degree"]
"""How permeance depends on temperature."""

Until: TypeAlias = UntilBrix | UntilVolume | UntilRecovery | UntilDuration
"""When recirculation ends."""

Warming: TypeAlias = Literal["isothermal"] | Literal["coupled"]
"""Whether the tank's warming is counted in the hours."""
