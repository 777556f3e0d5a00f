# Written by `cargo xtask surface`: change what it is made from.
"""The records of a plan: made from its JSON Schema."""

from __future__ import annotations

from typing import Any, ClassVar, Literal

from . import units as _u
from ._record import Estimate, Record, Shape, copied, quantity
from ._sugaring import Quantity

__all__ = [
    "AirToday",
    "Balance",
    "ContainerCost",
    "Cost",
    "Electricity",
    "Filled",
    "FuelLine",
    "Mark",
    "OtherHours",
    "PlanRecord",
    "Remains",
    "Remark",
    "Rest",
    "RestsOn",
    "Settings",
    "StageState",
    "Step",
    "Stop",
    "Stream",
    "SyrupMade",
    "ToFinish",
    "Totals",
    "Watch",
    "WaterRemoved",
    "WithoutMembrane",
]


class AirToday(Record):
    """Today's air."""

    origin: str
    """How it was come by."""
    pressure: Estimate[_u.Pressure]
    """Station pressure."""
    water_boils_at: Estimate[_u.Temperature]
    """What plain water boils at."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "origin": None,
        "pressure": Estimate,
        "water_boils_at": Estimate,
    }


class Balance(Record):
    """What came in less what went out."""

    mass: Estimate[_u.Mass]
    """Mass."""
    sugar: Estimate[_u.Mass]
    """Sugar."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "mass": Estimate,
        "sugar": Estimate,
    }


class Filled(Record):
    """Containers of one kind."""

    count: int
    """How many."""
    fill_mass: Estimate[_u.Mass]
    """In each."""
    fill_needed: Estimate[_u.Temperature] | None
    """Or least temperature of filling, where the syrup bears it."""
    fill_volume: Estimate[_u.Volume]
    """Hot, in each."""
    glass_needed: Estimate[_u.Temperature] | None
    """Least temperature of the container that keeps the syrup hot enough."""
    headspace: Estimate[_u.Volume] | None
    """Between the hot fill and the brim."""
    name: str
    """Their name."""
    settled: Estimate[_u.Temperature] | None
    """Where syrup and container settle."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "count": None,
        "fill_mass": Estimate,
        "fill_needed": Estimate,
        "fill_volume": Estimate,
        "glass_needed": Estimate,
        "headspace": Estimate,
        "name": None,
        "settled": Estimate,
    }


class Mark(Record):
    """What an instrument shows in finished syrup."""

    instrument: str
    """Its name."""
    reading: float
    """It shows this."""
    temperature: Quantity[Any]
    """At this temperature."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "instrument": None,
        "reading": None,
        "temperature": quantity,
    }


class OtherHours(Record):
    """Hours of the other arrangements that this day can offer."""

    in_sequence: Estimate[_u.Time] | None
    """One step after another."""
    overlapped: Estimate[_u.Time] | None
    """The pan fed as concentrate comes."""
    together: Estimate[_u.Time] | None
    """Rig and pan on one tank at once."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "in_sequence": Estimate,
        "overlapped": Estimate,
        "together": Estimate,
    }


class Remains(Record):
    """What stays in the pans."""

    mass: Estimate[_u.Mass]
    """Mass."""
    sugar: Estimate[_u.Mass]
    """Sugar."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "mass": Estimate,
        "sugar": Estimate,
    }


class Remark(Record):
    """A limit met, a caution or a notice."""

    key: str
    """Which."""
    level: Literal["limit", "caution", "notice"]
    """How grave."""
    step: Literal["concentrate", "rinse", "boil", "finish", "mend", "filter", "bottle"] | None
    """At which step."""
    text: str
    """In words."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "key": None,
        "level": None,
        "step": None,
        "text": None,
    }


class Rest(Record):
    """Syrup left over."""

    because: str
    """`less_than_one_container`, `stock_used_up` or `no_containers`."""
    mass: Estimate[_u.Mass]
    """Its mass."""
    volume: Estimate[_u.Volume]
    """At 20 °C."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "because": None,
        "mass": Estimate,
        "volume": Estimate,
    }


class RestsOn(Record):
    """What a number rests on."""

    how: Literal["assumed", "calibrated", "given"]
    """How it is known."""
    input: str
    """Path of the input."""
    text: str
    """In words."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "how": None,
        "input": None,
        "text": None,
    }


class Settings(Record):
    """What to set at a step, and what follows from it."""

    concentrate: Estimate[_u.Flow] | None
    """Of a single pass."""
    continuous_hold_up: Estimate[_u.Mass] | None
    """Sugar this pan would hold if it ran continuously."""
    depth_if_finished: Estimate[_u.Length] | None
    """Where all the syrup would stand in this pan."""
    duration_coupled: Estimate[_u.Time] | None
    """With the warming counted."""
    feed: Estimate[_u.Flow] | None
    """Into the rig."""
    fill_temperature: Estimate[_u.Temperature] | None
    """Of the syrup."""
    first_fill: Estimate[_u.Volume] | None
    """Cold, to start with."""
    heat: Estimate[_u.Power] | None
    """Into the liquid."""
    osmotic_limit: float | None
    """°Brix that this pressure cannot pass."""
    permeance: Estimate[_u.Permeance] | None
    """Of one element, at 25 °C."""
    permeate: Estimate[_u.Flow] | None
    """Of a single pass."""
    permeate_first: Estimate[_u.Flow] | None
    """At the start of a recirculation."""
    permeate_kept: Estimate[_u.Volume] | None
    """For the rinse, and a pan full beside the fire."""
    permeate_last: Estimate[_u.Flow] | None
    """At its end."""
    pressure: Estimate[_u.GaugePressure] | None
    """On the gauge."""
    running_volume: Estimate[_u.Volume] | None
    """Hot, at the running depth."""
    temperature_factor: float | None
    """Share of it at the sap's temperature."""
    volume: Estimate[_u.Volume] | None
    """To hold."""
    warms_to: Estimate[_u.Temperature] | None
    """The tank at the end."""
    water_rate: Estimate[_u.MassFlow] | None
    """Water boiled off while the level is held with cold water."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "concentrate": Estimate,
        "continuous_hold_up": Estimate,
        "depth_if_finished": Estimate,
        "duration_coupled": Estimate,
        "feed": Estimate,
        "fill_temperature": Estimate,
        "first_fill": Estimate,
        "heat": Estimate,
        "osmotic_limit": None,
        "permeance": Estimate,
        "permeate": Estimate,
        "permeate_first": Estimate,
        "permeate_kept": Estimate,
        "permeate_last": Estimate,
        "pressure": Estimate,
        "running_volume": Estimate,
        "temperature_factor": None,
        "volume": Estimate,
        "warms_to": Estimate,
        "water_rate": Estimate,
    }


class StageState(Record):
    """A stage of a boil, and the pan at its end."""

    brix: float
    """°Brix at the end."""
    depth: Estimate[_u.Length]
    """Of the boiling liquid at the end."""
    duration: Estimate[_u.Time]
    """How long it takes."""
    kind: str
    """`heat_up`, `top_up` or `boil_down`."""
    mass: Estimate[_u.Mass]
    """In the pan at the end."""
    temperature: Estimate[_u.Temperature]
    """Of the boiling liquid at the end."""
    water: Estimate[_u.Mass]
    """Water boiled off."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "brix": None,
        "depth": Estimate,
        "duration": Estimate,
        "kind": None,
        "mass": Estimate,
        "temperature": Estimate,
        "water": Estimate,
    }


class Stop(Record):
    """A sign that a step is done."""

    depth: Estimate[_u.Length] | None
    """At this depth."""
    elevation: Estimate[_u.TemperatureDifference] | None
    """So far above boiling water."""
    reading: float | None
    """At this reading."""
    temperature: Estimate[_u.Temperature] | None
    """At this temperature."""
    volume: Estimate[_u.Volume] | None
    """At this volume."""
    what: str
    """Where to see it."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "depth": Estimate,
        "elevation": Estimate,
        "reading": None,
        "temperature": Estimate,
        "volume": Estimate,
        "what": None,
    }


class Stream(Record):
    """A stream."""

    brix: float | None
    """Its °Brix."""
    mass: Estimate[_u.Mass]
    """Its mass."""
    name: str
    """Its name."""
    sugar: Estimate[_u.Mass] | None
    """Its sugar."""
    temperature: Estimate[_u.Temperature] | None
    """Its temperature."""
    volume: Estimate[_u.Volume] | None
    """Its volume at its temperature."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "brix": None,
        "mass": Estimate,
        "name": None,
        "sugar": Estimate,
        "temperature": Estimate,
        "volume": Estimate,
    }


class Watch(Record):
    """A number to watch."""

    first: float
    """At the start."""
    last: float | None
    """At the end; left out where nothing passes any more."""
    what: str
    """What it is."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "first": None,
        "last": None,
        "what": None,
    }


class Step(Record):
    """One step."""

    cautions: tuple[str, ...]
    """Keys of the cautions."""
    duration: Estimate[_u.Time]
    """How long it takes."""
    kind: Literal["concentrate", "rinse", "boil", "finish", "mend", "filter", "bottle"]
    """Which."""
    rests_on: Literal["assumed", "calibrated", "given"]
    """What its numbers rest on."""
    settings: Settings
    """What to set, and what follows from it."""
    stages: tuple[StageState, ...]
    """Stages of a boil."""
    start: Estimate[_u.Time]
    """After the start of the day."""
    stop_when: tuple[Stop, ...]
    """When it ends; any of these."""
    streams_in: tuple[Stream, ...]
    """What goes in."""
    streams_out: tuple[Stream, ...]
    """What comes out."""
    watch: tuple[Watch, ...]
    """What to watch."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "cautions": [None],
        "duration": Estimate,
        "kind": None,
        "rests_on": None,
        "settings": Settings,
        "stages": [StageState],
        "start": Estimate,
        "stop_when": [Stop],
        "streams_in": [Stream],
        "streams_out": [Stream],
        "watch": [Watch],
    }


class ContainerCost(Record):
    """Containers used."""

    cost: float | None
    """What they cost."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "cost": None,
    }


class Cost(Record):
    """Money, in the user's own currency."""

    high: float | None
    """Upper end of the range."""
    left_out: tuple[str, ...]
    """Lines without a price."""
    low: float | None
    """Lower end of the range."""
    per_litre: float | None
    """Per litre of syrup made today."""
    per_litre_packed: float | None
    """Per litre of syrup packed."""
    value: float
    """The sum of all lines that have a price."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "high": None,
        "left_out": [None],
        "low": None,
        "per_litre": None,
        "per_litre_packed": None,
        "value": None,
    }


class Electricity(Estimate[_u.Energy]):
    """Electricity."""

    cost: float | None
    """What it costs."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "cost": None,
    }


class FuelLine(Record):
    """A step's fuel."""

    cost: float | None
    """What it costs."""
    energy: Estimate[_u.Energy] | None
    """Its energy, where it is sold so."""
    mass: Estimate[_u.Mass] | None
    """Its mass, as burned."""
    name: str
    """The fuel."""
    step: Literal["concentrate", "rinse", "boil", "finish", "mend", "filter", "bottle"]
    """The step."""
    volume: Estimate[_u.Volume] | None
    """Its volume, as it is sold."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "cost": None,
        "energy": Estimate,
        "mass": Estimate,
        "name": None,
        "step": None,
        "volume": Estimate,
    }


class SyrupMade(Record):
    """Syrup."""

    mass: Estimate[_u.Mass]
    """Its mass."""
    volume: Estimate[_u.Volume]
    """At 20 °C."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "mass": Estimate,
        "volume": Estimate,
    }


class ToFinish(Record):
    """A draw that is not syrup yet."""

    brix: float
    """Its °Brix."""
    mass: Estimate[_u.Mass]
    """Its mass."""
    syrup: Estimate[_u.Volume]
    """The syrup it is enough for, at 20 °C."""
    volume: Estimate[_u.Volume]
    """Its volume, hot."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "brix": None,
        "mass": Estimate,
        "syrup": Estimate,
        "volume": Estimate,
    }


class WaterRemoved(Record):
    """Water taken out."""

    evaporator: Estimate[_u.Mass]
    """Boiled off in the big pan."""
    finishing: Estimate[_u.Mass] | None
    """Boiled off in the small pan."""
    membrane: Estimate[_u.Mass] | None
    """Permeate."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "evaporator": Estimate,
        "finishing": Estimate,
        "membrane": Estimate,
    }


class Totals(Record):
    """Sums of the day."""

    containers: ContainerCost | None
    """Containers used."""
    cost: Cost
    """All that has a price."""
    electricity: Electricity | None
    """Electricity of the pump."""
    fuel: tuple[FuelLine, ...]
    """Fuel, by step."""
    heat: Estimate[_u.Energy]
    """Heat into the liquid."""
    hours: Estimate[_u.Time]
    """From the start to the syrup."""
    hours_fired: Estimate[_u.Time]
    """Hours of the fire."""
    syrup: SyrupMade | None
    """Syrup made."""
    to_finish: ToFinish | None
    """Where no finishing pan was given: what is drawn, to be finished."""
    water_removed: WaterRemoved
    """Water taken out, by station."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "containers": ContainerCost,
        "cost": Cost,
        "electricity": Electricity,
        "fuel": [FuelLine],
        "heat": Estimate,
        "hours": Estimate,
        "hours_fired": Estimate,
        "syrup": SyrupMade,
        "to_finish": ToFinish,
        "water_removed": WaterRemoved,
    }


class WithoutMembrane(Record):
    """The same day without the rig."""

    cost: float
    """All that has a price."""
    fuel_mass: Estimate[_u.Mass] | None
    """Of the big pan's fuel."""
    fuel_volume: Estimate[_u.Volume] | None
    """Of the big pan's fuel."""
    hours: Estimate[_u.Time]
    """From the start to the syrup."""
    hours_fired: Estimate[_u.Time]
    """Hours of the fire."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "cost": None,
        "fuel_mass": Estimate,
        "fuel_volume": Estimate,
        "hours": Estimate,
        "hours_fired": Estimate,
    }


class PlanRecord(Record):
    """A planned day: steps in order, amounts, hours, fuel, marks, ranges, remarks and what it rests on."""

    air: AirToday
    """Today's air."""
    balance: Balance
    """What came in less what went out: rounding alone."""
    containers: tuple[Filled, ...]
    """Containers filled, largest first."""
    coverage: float
    """Share of the draws that the ranges hold."""
    inputs: dict[str, Any]
    """The inputs as read, units as given."""
    marks: tuple[Mark, ...]
    """What each instrument shows when the syrup is done."""
    numbers: str
    """Version of the results: the same inputs give the same bits under the same version."""
    other_hours: OtherHours
    """Hours of the other ways to arrange the day."""
    remains: Remains
    """What stays in the pans."""
    remarks: tuple[Remark, ...]
    """Limits met, cautions and notices."""
    rest: Rest | None
    """Syrup that fills no container."""
    rests_on: tuple[RestsOn, ...]
    """What was assumed, and what rests on the user's own measurement."""
    samples: int
    """Number of draws."""
    schema_version: int
    """Version of this shape."""
    seed: int
    """Seed of the draws."""
    start: str | None
    """As given; every time counts from it."""
    steps: tuple[Step, ...]
    """The steps, in order of their start."""
    title: str | None
    """As given."""
    totals: Totals
    """Sums of the day."""
    unreachable_draws: int
    """Draws whose day could not be planned; they are left out of the ranges."""
    without_membrane: WithoutMembrane | None
    """The same day without the rig."""

    _shapes: ClassVar[dict[str, Shape]] = {
        "air": AirToday,
        "balance": Balance,
        "containers": [Filled],
        "coverage": None,
        "inputs": copied,
        "marks": [Mark],
        "numbers": None,
        "other_hours": OtherHours,
        "remains": Remains,
        "remarks": [Remark],
        "rest": Rest,
        "rests_on": [RestsOn],
        "samples": None,
        "schema_version": None,
        "seed": None,
        "start": None,
        "steps": [Step],
        "title": None,
        "totals": Totals,
        "unreachable_draws": None,
        "without_membrane": WithoutMembrane,
    }
