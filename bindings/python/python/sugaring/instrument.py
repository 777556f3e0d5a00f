"""Instruments: what they show, what that means, and the mark to look for.

What an instrument shows is a reading, what the syrup is a °Brix: hot syrup of 66.9 °Bx floats a hydrometer at 59.
Instruments are read-only; what calibrates one gives another.

Examples
--------
>>> from sugaring.instrument import Hydrometer
>>> from sugaring.units import deg_f
>>> hydrometer = Hydrometer.brix(deg_f(60))
>>> round(hydrometer.reading(66.9, deg_f(211)), 1)
59.0
>>> truth = hydrometer.truth(59.5, deg_f(211))
>>> f"{truth.value:.1f} ± {truth.uncertainty:.1f}"
'67.4 ± 0.3'
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, NamedTuple, TypeVar, overload

from . import _lanes, _sugaring
from . import units as _u
from ._sugaring import Quantity
from .units import Measured, kelvin

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence
    from typing import Literal

    from numpy.typing import NDArray
    from typing_extensions import Self

    from ._sugaring import Unit
    from .air import StationPressure
    from .uncertainty import Line

    _Column = Sequence[float] | NDArray[Any]
    _Temperature = Quantity[_u.Temperature]
    _Difference = Quantity[_u.TemperatureDifference]
    _Pressure = Quantity[_u.Pressure]

__all__ = [
    "Barometer",
    "Card",
    "ChartMark",
    "ChartRow",
    "Check",
    "DensityChart",
    "EmergentStem",
    "Hydrometer",
    "Mark",
    "MeasuredBrix",
    "MeasuredColumn",
    "MeasuredTemperature",
    "Refractometer",
    "Thermometer",
    "card",
    "chart",
]


class Check(NamedTuple):
    """A reading of something known, to calibrate by."""

    reading: float
    """What the instrument showed."""
    brix: float
    """What it was."""
    temperature: Quantity[_u.Temperature]
    """Of the liquid and the glass, or of the prism."""


class MeasuredBrix(Measured[_u.Brix]):
    """°Brix with its standard uncertainty, both as bare numbers."""

    __slots__ = ()
    if TYPE_CHECKING:

        @property
        def value(self) -> float: ...
        @property
        def uncertainty(self) -> float: ...


class MeasuredTemperature(Measured[_u.Temperature]):
    """A temperature with its standard uncertainty, a difference of temperatures."""

    __slots__ = ()
    if TYPE_CHECKING:

        @property
        def value(self) -> Quantity[_u.Temperature]: ...
        @property
        def uncertainty(self) -> Quantity[_u.TemperatureDifference]: ...


class MeasuredColumn(NamedTuple):
    """What a column of readings means."""

    value: Any
    """The truths."""
    uncertainty: Any
    """The standard uncertainty of each."""


class _Instrument:
    """Read-only data, which the core reads at each call."""

    __slots__ = ("_data",)
    _data: dict[str, Any]

    def __init__(self, data: Mapping[str, Any]) -> None:
        object.__setattr__(self, "_data", _sugaring._ask(f"{type(self).__name__}.of_data", {"data": dict(data)}))

    @classmethod
    def _made(cls, constructor: str, **given: Any) -> Self:
        return cls._of(_sugaring._ask(f"{cls.__name__}.{constructor}", given))

    @classmethod
    def _of(cls, data: dict[str, Any]) -> Self:
        made = cls.__new__(cls)
        object.__setattr__(made, "_data", data)
        return made

    def _answer(self, method: str, **given: Any) -> Any:
        return _sugaring._ask(f"{type(self).__name__}.{method}", {"instrument": self._as_data(), **given})

    def _calibrated(self, method: str, **given: Any) -> Self:
        return self._of(self._answer(method, **given))

    def _as_data(self) -> dict[str, Any]:
        return self._data

    def to_dict(self) -> dict[str, Any]:
        """Its data, as a plan's ``instruments`` have it: a copy, with quantities."""
        copy: dict[str, Any] = _copied(self._as_data())
        return copy

    def __setattr__(self, name: str, value: object) -> None:
        raise AttributeError(f"an instrument is read-only: {name}")

    def __delattr__(self, name: str) -> None:
        raise AttributeError(f"an instrument is read-only: {name}")

    def __eq__(self, other: object) -> bool:
        return self._data == other._data if isinstance(other, type(self)) else NotImplemented

    def __hash__(self) -> int:
        return hash(repr(self._data))

    def __repr__(self) -> str:
        (given,) = self._data.values()
        shown = ", ".join(f"{key}={value!r}" for key, value in given.items())
        return f"<{type(self).__name__} {shown}>"

    def __reduce__(self) -> tuple[Any, ...]:
        return (type(self), (self._data,))


def _copied(data: Any) -> Any:
    if isinstance(data, dict):
        return {key: _copied(value) for key, value in data.items()}
    return [_copied(item) for item in data] if isinstance(data, list) else data


class Hydrometer(_Instrument):
    """A glass hydrometer: what it shows in a liquid of known strength, and what the liquid is that it shows.

    Read at the level surface, not at the top of the meniscus; the temperature is that of the liquid and the glass. In
    marks of its own scale: ``offset`` is what it shows too high, ``resolution`` the step it is read to, ``uncertainty``
    its standard uncertainty, ``span`` the least and the greatest mark on its paper: readings beyond are refused, those on
    it believed, also where they would look like another scale's.
    """

    __slots__ = ()

    @classmethod
    def brix(
        cls,
        calibrated_at: _Temperature,
        /,
        *,
        glass_expansion: Quantity[_u.PerKelvin] | None = None,
        offset: float | None = None,
        span: tuple[float, float] | None = None,
        resolution: float | None = None,
        uncertainty: float | None = None,
    ) -> Self:
        """A Brix hydrometer that is true at `calibrated_at`: 60 °F or 20 °C, as its paper says.

        Untested, 0.3 °Bx of standard uncertainty; tested, 0.15.
        """
        return cls._made(
            "brix",
            calibrated_at=calibrated_at,
            glass_expansion=glass_expansion,
            offset=offset,
            span=_span(span),
            resolution=resolution,
            uncertainty=uncertainty,
        )

    @classmethod
    def on_scale(
        cls,
        scale: Unit[Any],
        calibrated_at: _Temperature,
        /,
        *,
        glass_expansion: Quantity[_u.PerKelvin] | None = None,
        offset: float | None = None,
        span: tuple[float, float] | None = None,
        resolution: float | None = None,
        uncertainty: float | None = None,
    ) -> Self:
        """One with marks of a density scale such as ``baume_20_20``, the scale of the trade's double papers.

        Examples
        --------
        >>> from sugaring.instrument import Hydrometer
        >>> from sugaring.units import baume_20_20, deg_f
        >>> round(Hydrometer.on_scale(baume_20_20, deg_f(60)).reading(66.9, deg_f(211)), 1)
        32.0
        """
        word = getattr(scale, "word", scale)
        return cls._made(
            "on_scale",
            scale=word,
            calibrated_at=calibrated_at,
            glass_expansion=glass_expansion,
            offset=offset,
            span=_span(span),
            resolution=resolution,
            uncertainty=uncertainty,
        )

    @classmethod
    def density(
        cls,
        calibrated_at: _Temperature,
        /,
        *,
        glass_expansion: Quantity[_u.PerKelvin] | None = None,
        offset: float | None = None,
        span: tuple[float, float] | None = None,
        resolution: float | None = None,
        uncertainty: float | None = None,
    ) -> Self:
        """One with marks in kg/m³, true at `calibrated_at`."""
        return cls._made(
            "density",
            calibrated_at=calibrated_at,
            glass_expansion=glass_expansion,
            offset=offset,
            span=_span(span),
            resolution=resolution,
            uncertainty=uncertainty,
        )

    @overload
    def truth(self, reading: float, temperature: _Temperature, /, *, on_error: Literal["nan"] | None = None) -> MeasuredBrix: ...
    @overload
    def truth(self, reading: float | _Column, temperature: Quantity[_u.Temperature, Any], /, *, on_error: Literal["nan"] | None = None) -> MeasuredColumn: ...
    def truth(self, reading: Any, temperature: Any, /, *, on_error: Literal["nan"] | None = None) -> Any:
        """What the liquid is that shows `reading` at `temperature`: °Brix with its standard uncertainty.

        Columns are taken too; the answer is then a ``MeasuredColumn``. Raises where the liquid would be thinner than
        water or thicker than 85 °Bx; a Baumé mark read off a Brix scale in hot syrup is met by a hint.
        """
        return _truth(self, {"reading": reading, "temperature": temperature}, on_error)

    @overload
    def reading(self, brix: float, temperature: _Temperature, /, *, on_error: Literal["nan"] | None = None) -> float: ...
    @overload
    def reading(self, brix: float | _Column, temperature: Quantity[_u.Temperature, Any], /, *, on_error: Literal["nan"] | None = None) -> Any: ...
    def reading(self, brix: Any, temperature: Any, /, *, on_error: Literal["nan"] | None = None) -> Any:
        """The mark that a liquid of `brix` shows at `temperature`: where it floats. Columns are taken too."""
        return _reading(self, {"brix": brix, "temperature": temperature}, on_error)

    def zeroed(self, reading: float, brix: float, /, *, temperature: _Temperature) -> Self:
        """This one, corrected by one comparison: it showed `reading` in a liquid of `brix`."""
        return self._calibrated("zeroed", reading=reading, brix=brix, temperature=temperature)

    def two_point(self, low: Check, high: Check, /) -> Self:
        """This one, corrected by two comparisons; it is read between them only.

        Examples
        --------
        >>> from sugaring.instrument import Check, Hydrometer
        >>> from sugaring.units import deg_c, deg_f
        >>> water, syrup = Check(0.4, 0.0, deg_f(60)), Check(67.2, 66.9, deg_f(60))
        >>> tested = Hydrometer.brix(deg_f(60)).two_point(water, syrup)
        >>> round(tested.truth(67.2, deg_f(60)).value, 9)
        66.9
        """
        return self._calibrated("two_point", low=_check(low), high=_check(high))


class Refractometer(_Instrument):
    """A refractometer with a scale in °Brix, true at 20 °C; the temperature is the prism's.

    A drop takes the prism's temperature in seconds, and a hot drop on a cold prism dries while it does: let the sample
    cool, closed. ``zero`` is what it shows in pure water.
    """

    __slots__ = ()

    @classmethod
    def compensated(
        cls,
        low: _Temperature,
        high: _Temperature,
        /,
        *,
        zero: float | None = None,
        resolution: float | None = None,
        uncertainty: float | None = None,
    ) -> Self:
        """One that corrects itself while its prism is between `low` and `high`; outside its reading means nothing."""
        return cls._made(
            "compensated", low=low, high=high, zero=zero, resolution=resolution, uncertainty=uncertainty
        )

    @classmethod
    def uncompensated(
        cls, *, zero: float | None = None, resolution: float | None = None, uncertainty: float | None = None
    ) -> Self:
        """One without a correction of its own.

        Examples
        --------
        >>> from sugaring.instrument import Refractometer
        >>> from sugaring.units import deg_c
        >>> round(Refractometer.uncompensated().truth(67.5, deg_c(12)).value, 1)
        66.9
        """
        return cls._made("uncompensated", zero=zero, resolution=resolution, uncertainty=uncertainty)

    def zeroed_in_water(self, reading: float, prism: _Temperature, /) -> Self:
        """This one, which showed `reading` in pure water."""
        return self._calibrated("zeroed_in_water", reading=reading, prism=prism)

    def set_to_zero_at(self, prism: _Temperature, /) -> Self:
        """This one, whose screw was turned to 0 in pure water at `prism`."""
        return self._calibrated("set_to_zero_at", prism=prism)

    def two_point(self, low: Check, high: Check, /) -> Self:
        """This one, corrected by two comparisons; it is read between them only."""
        return self._calibrated("two_point", low=_check(low), high=_check(high))

    @overload
    def truth(self, reading: float, prism: _Temperature, /, *, on_error: Literal["nan"] | None = None) -> MeasuredBrix: ...
    @overload
    def truth(self, reading: float | _Column, prism: Quantity[_u.Temperature, Any], /, *, on_error: Literal["nan"] | None = None) -> MeasuredColumn: ...
    def truth(self, reading: Any, prism: Any, /, *, on_error: Literal["nan"] | None = None) -> Any:
        """What the liquid is that shows `reading`: °Brix with its standard uncertainty. Columns are taken too."""
        return _truth(self, {"reading": reading, "prism": prism}, on_error)

    @overload
    def reading(self, brix: float, prism: _Temperature, /, *, on_error: Literal["nan"] | None = None) -> float: ...
    @overload
    def reading(self, brix: float | _Column, prism: Quantity[_u.Temperature, Any], /, *, on_error: Literal["nan"] | None = None) -> Any: ...
    def reading(self, brix: Any, prism: Any, /, *, on_error: Literal["nan"] | None = None) -> Any:
        """What it shows in a liquid of `brix`. Columns are taken too."""
        return _reading(self, {"brix": brix, "prism": prism}, on_error)


class EmergentStem(NamedTuple):
    """The part of a glass thermometer's scale that stands out of the liquid: its column is too short."""

    outside: Quantity[_u.TemperatureDifference]
    """Degrees of the scale outside."""
    temperature: Quantity[_u.Temperature]
    """Of the column there, in the mean."""
    expansion: Quantity[_u.PerKelvin] | None = None
    """Apparent expansion of its liquid in glass; mercury's where nothing is said."""


class Thermometer(_Instrument):
    """A thermometer. The whole sensitive length stands in the liquid; what does not is ``emergent_stem``."""

    __slots__ = ()

    @classmethod
    def plain(
        cls,
        *,
        offset: _Difference | None = None,
        emergent_stem: EmergentStem | None = None,
        resolution: _Difference | None = None,
        uncertainty: _Difference | None = None,
    ) -> Self:
        """One that was not tested, or that shows `offset` too high."""
        return cls._made("plain", offset=offset, emergent_stem=_stem(emergent_stem), resolution=resolution, uncertainty=uncertainty)

    @classmethod
    def zeroed_in_boiling_water(
        cls,
        reading: _Temperature,
        station: StationPressure,
        /,
        *,
        emergent_stem: EmergentStem | None = None,
        resolution: _Difference | None = None,
        uncertainty: _Difference | None = None,
    ) -> Self:
        """One that showed `reading` in plain boiling water, here and now: its offset of today.

        Examples
        --------
        >>> from sugaring.air import StationPressure
        >>> from sugaring.instrument import Thermometer
        >>> from sugaring.units import deg_c, deg_f, kpa
        >>> dial = Thermometer.zeroed_in_boiling_water(deg_f(211), StationPressure.measured(kpa(96.5)))
        >>> print(f"{dial.truth(deg_f(218.5)).value:deg_c:.1f} °C")
        102.8 °C
        """
        return cls._made(
            "zeroed_in_boiling_water",
            reading=reading,
            station=station,
            emergent_stem=_stem(emergent_stem),
            resolution=resolution,
            uncertainty=uncertainty,
        )

    @classmethod
    def two_point(
        cls,
        ice: _Temperature,
        boiling: _Temperature,
        /,
        *,
        station: StationPressure,
        emergent_stem: EmergentStem | None = None,
        resolution: _Difference | None = None,
        uncertainty: _Difference | None = None,
    ) -> Self:
        """One that showed `ice` in melting ice and `boiling` in plain boiling water."""
        return cls._made(
            "two_point",
            ice=ice,
            boiling=boiling,
            station=station,
            emergent_stem=_stem(emergent_stem),
            resolution=resolution,
            uncertainty=uncertainty,
        )

    @classmethod
    def line(
        cls,
        line: Line | dict[str, Any],
        /,
        *,
        emergent_stem: EmergentStem | None = None,
        resolution: _Difference | None = None,
        uncertainty: _Difference | None = None,
    ) -> Self:
        """One that was compared at several temperatures: a line of corrections to add, kelvins over readings in °C.

        Examples
        --------
        >>> from sugaring.instrument import Thermometer
        >>> from sugaring.uncertainty import line_fit
        >>> from sugaring.units import deg_c
        >>> line = line_fit([0.0, 50.0, 100.0], [0.3, 0.1, 0.0], x0=50)
        >>> print(f"{Thermometer.line(line).truth(deg_c(100)).value:deg_c:.2f} °C")
        99.98 °C
        """
        fields = ("intercept", "slope", "residual_deviation", "degrees_of_freedom", "reference", "low", "high")
        data: Any = line
        if not isinstance(line, dict):
            data = {name: getattr(line, name, None) for name in fields}
            data["covariance"] = [list(row) for row in getattr(line, "covariance", ())]
        return cls._made(
            "line",
            line=data,
            emergent_stem=_stem(emergent_stem),
            resolution=resolution,
            uncertainty=uncertainty,
        )

    @overload
    def truth(self, reading: _Temperature, /, *, on_error: Literal["nan"] | None = None) -> MeasuredTemperature: ...
    @overload
    def truth(self, reading: Quantity[_u.Temperature, Any], /, *, on_error: Literal["nan"] | None = None) -> MeasuredColumn: ...
    def truth(self, reading: Any, /, *, on_error: Literal["nan"] | None = None) -> Any:
        """What the temperature is when it shows `reading`, with its standard uncertainty. Columns are taken too."""
        return _truth(self, {"reading": reading}, on_error)

    @overload
    def reading(self, temperature: _Temperature, /, *, on_error: Literal["nan"] | None = None) -> _Temperature: ...
    @overload
    def reading(self, temperature: Quantity[_u.Temperature, Any], /, *, on_error: Literal["nan"] | None = None) -> Quantity[_u.Temperature, Any]: ...
    def reading(self, temperature: Any, /, *, on_error: Literal["nan"] | None = None) -> Any:
        """What this one will show at `temperature`: the mark to look for. Columns are taken too."""
        return _reading(self, {"temperature": temperature}, on_error)


class Barometer(_Instrument):
    """A barometer, as it shows the station pressure or as it is set to sea level."""

    __slots__ = ()

    @classmethod
    def station(
        cls,
        *,
        offset: _Pressure | None = None,
        resolution: _Pressure | None = None,
        uncertainty: _Pressure | None = None,
    ) -> Self:
        """One that shows the pressure where it hangs."""
        return cls._made("station", offset=offset, resolution=resolution, uncertainty=uncertainty)

    @classmethod
    def set_to_sea_level(
        cls,
        altitude: Quantity[_u.Length],
        /,
        *,
        offset: _Pressure | None = None,
        resolution: _Pressure | None = None,
        uncertainty: _Pressure | None = None,
    ) -> Self:
        """One that was set by a weather report, and hangs at `altitude`.

        Examples
        --------
        >>> from sugaring.instrument import Barometer
        >>> from sugaring.units import in_hg, kpa, metre
        >>> parlour = Barometer.set_to_sea_level(metre(410))
        >>> print(f"{parlour.truth(in_hg(30.02)).pressure:kpa:.2f} kPa")
        96.82 kPa
        """
        return cls._made(
            "set_to_sea_level", altitude=altitude, offset=offset, resolution=resolution, uncertainty=uncertainty
        )

    def zeroed(self, reading: _Pressure, station: StationPressure, /) -> Self:
        """This one, which showed `reading` where the pressure was `station`: from boiling water, say."""
        return self._calibrated("zeroed", reading=reading, station=station)

    def truth(self, reading: _Pressure, /) -> StationPressure:
        """The station pressure when it shows `reading`."""
        return _station(self._answer("truth", reading=reading))

    def reading(self, station: StationPressure, /) -> _Pressure:
        """What it shows where the pressure is `station`."""
        shown: Quantity[_u.Pressure] = self._answer("reading", station=station)
        return shown


class Mark(NamedTuple):
    """What an instrument shows at one temperature."""

    temperature: Quantity[_u.Temperature]
    mark: float
    """Rounded to what can be read."""
    reading: float
    """The number itself, in the instrument's own marks."""
    uncertainty: float | None
    """Standard uncertainty of the syrup that shows it, °Bx."""
    chart: float | None
    """What the chart beside it asks for."""


class Card:
    """The card of marks for one instrument and one syrup; made by ``card``. A notebook shows it as it is printed."""

    __slots__ = ("_written",)
    _written: dict[str, Any]

    def __init__(self, written: dict[str, Any]) -> None:
        object.__setattr__(self, "_written", written)

    @property
    def target(self) -> float:
        """The syrup that is wanted, °Bx."""
        target: float = self._written["data"]["target"]
        return target

    @property
    def marks(self) -> tuple[Mark, ...]:
        """The marks, in the order of the temperatures."""
        return tuple(
            Mark(
                mark["temperature"],
                _number(mark["mark"]),
                _number(mark["reading"]),
                mark.get("uncertainty"),
                _number(mark["chart"]) if "chart" in mark else None,
            )
            for mark in self._written["data"]["marks"]
        )

    @property
    def notes(self) -> tuple[str, ...]:
        """What stands below the marks: how to read, what to take care of, what it rests on."""
        return tuple(self._written["data"]["notes"])

    def page(self, *, system: Literal["as_given", "us", "metric"] = "as_given") -> str:
        """The card as text; °F, °C, or both."""
        return _of_system(self._written["pages"], system)

    def to_svg(self, *, system: Literal["as_given", "us", "metric"] = "as_given") -> str:
        """The card as an SVG to print and to laminate."""
        return _of_system(self._written["svgs"], system)

    def to_csv(self) -> str:
        """The marks as CSV, units in the heading."""
        csv: str = self._written["csv"]
        return csv

    def to_json(self) -> str:
        """The card as JSON on one line."""
        import json

        return json.dumps(_plain(self._written["data"]), ensure_ascii=False, separators=(",", ":"))

    def to_dict(self) -> dict[str, Any]:
        """The card as data, with quantities: a copy."""
        copy: dict[str, Any] = _copied(self._written["data"])
        return copy

    def __setattr__(self, name: str, value: object) -> None:
        raise AttributeError(f"a card is read-only: {name}")

    def __eq__(self, other: object) -> bool:
        return self._written == other._written if isinstance(other, Card) else NotImplemented

    def __hash__(self) -> int:
        return hash(self.page())

    def __str__(self) -> str:
        return self.page()

    def __repr__(self) -> str:
        return f"<Card for {self.target:g} °Bx, {len(self.marks)} marks>"

    def __reduce__(self) -> tuple[Any, ...]:
        return (Card, (self._written,))

    def _repr_svg_(self) -> str:
        return self.to_svg()


def card(
    target: float,
    instrument: Hydrometer | Refractometer,
    /,
    *,
    temperatures: Sequence[_Temperature] | None = None,
    name: str | None = None,
    chart: str | None = None,
) -> Card:
    """The card of marks: what `instrument` shows in syrup of `target` at each temperature it may be read at.

    Without `temperatures` every 10 °F or 5 °C that are usual. `chart` is a jurisdiction whose chart is put beside the
    marks, never in place of them; `name` stands on top.

    Examples
    --------
    >>> from sugaring.instrument import Hydrometer, card
    >>> from sugaring.units import deg_f
    >>> marks = card(66.9, Hydrometer.brix(deg_f(60)), temperatures=[deg_f(211), deg_f(120)], chart="vermont").marks
    >>> [(mark.mark, mark.chart) for mark in marks]
    [(59.0, None), (64.1, 63.8)]
    """
    if not isinstance(instrument, _Instrument):
        raise _sugaring._foreign("instrument", f"<{type(instrument).__name__}>", "a hydrometer or a refractometer")
    given = {
        "target": target,
        "instrument": instrument._as_data(),
        "temperatures": None if temperatures is None else list(temperatures),
        "name": name,
        "chart": chart,
    }
    return Card(_sugaring._ask("instrument.card", given))


class ChartMark(NamedTuple):
    """What a chart asks for, on either scale."""

    brix: float
    baume: float


class ChartRow(NamedTuple):
    """A printed row of a chart."""

    temperature: Quantity[_u.Temperature]
    brix: float
    baume: float


class DensityChart:
    """The density chart that a jurisdiction prescribes: data, law where it is adopted, and not the equation."""

    __slots__ = ("_data",)
    _data: dict[str, Any]

    def __init__(self, data: dict[str, Any]) -> None:
        object.__setattr__(self, "_data", data)

    @property
    def jurisdiction(self) -> str:
        """Key of the jurisdiction."""
        return str(self._data["jurisdiction"])

    @property
    def name(self) -> str:
        """Name of the jurisdiction."""
        return str(self._data["name"])

    @property
    def law(self) -> str:
        """The law that prescribes it."""
        return str(self._data["law"])

    @property
    def seen(self) -> str:
        """When it was seen."""
        return str(self._data["seen"])

    @property
    def target(self) -> float:
        """What syrup is held to be by the law, °Bx."""
        return float(self._data["target"])

    @property
    def calibrated_at(self) -> _Temperature:
        """Where the hydrometers it is meant for are true."""
        at: Quantity[_u.Temperature] = self._data["calibrated_at"]
        return at

    @property
    def rows(self) -> tuple[ChartRow, ...]:
        """The rows as printed, from cold to hot."""
        return tuple(ChartRow(**row) for row in self._data["rows"])

    @property
    def source(self) -> str:
        """Where the figures come from."""
        return str(self._data["source"])

    @property
    def advice(self) -> str:
        """What to do before relying on it."""
        return str(self._data["advice"])

    def mark(self, temperature: _Temperature, /) -> ChartMark:
        """What the chart asks a hydrometer to show, at least; linear between rows, refused beyond them.

        Examples
        --------
        >>> from sugaring.instrument import chart
        >>> from sugaring.units import deg_f
        >>> chart("vermont").mark(deg_f(120)).brix
        63.8
        """
        return ChartMark(**_sugaring._ask("DensityChart.mark", {"chart": self._data, "temperature": temperature}))

    def __setattr__(self, name: str, value: object) -> None:
        raise AttributeError(f"a chart is read-only: {name}")

    def __eq__(self, other: object) -> bool:
        return self._data == other._data if isinstance(other, DensityChart) else NotImplemented

    def __hash__(self) -> int:
        return hash(self.jurisdiction)

    def __repr__(self) -> str:
        return f"<DensityChart of {self.name}, {len(self._data['rows'])} rows>"

    def __reduce__(self) -> tuple[Any, ...]:
        return (DensityChart, (self._data,))


def chart(jurisdiction: str, /) -> DensityChart:
    """The density chart of a jurisdiction, as it is printed; keys are listed by ``catalogue.jurisdictions``."""
    return DensityChart(_sugaring._ask("instrument.chart", {"jurisdiction": jurisdiction}))


def _number(mark: Any) -> float:
    number: float = mark.value if isinstance(mark, Quantity) else mark
    return number


def _of_system(written: dict[str, str], system: str) -> str:
    found = written.get(system) if isinstance(system, str) else None
    if found is None:
        raise _sugaring._unknown_name("system", str(system), list(written))
    return found


def _plain(data: Any) -> Any:
    if isinstance(data, dict):
        return {key: _plain(value) for key, value in data.items()}
    if isinstance(data, list):
        return [_plain(item) for item in data]
    return {"value": data.value, "unit": data.unit.symbol} if isinstance(data, Quantity) else data


def _span(span: tuple[float, float] | None) -> Any:
    if isinstance(span, (tuple, list)) and len(span) == 2:
        return {"low": span[0], "high": span[1]}
    return span


def _stem(stem: EmergentStem | None) -> Any:
    if not isinstance(stem, EmergentStem):
        return stem
    return {key: value for key, value in stem._asdict().items() if value is not None}


def _check(check: Check) -> Any:
    return check._asdict() if isinstance(check, Check) else check


def _station(data: dict[str, Any]) -> StationPressure:
    from .air import StationPressure

    pascal = data["pressure"].to(_u.pa), data["uncertainty"].to(_u.pa)
    return StationPressure._restore(*pascal, data["origin"])


def _truth(instrument: _Instrument, given: dict[str, Any], on_error: str | None) -> Any:
    if _lanes.among(given):
        value, uncertainty = _lanes.through(instrument, "truth", given, on_error)
        return MeasuredColumn(value, uncertainty)
    found = _lanes.or_nan(lambda: instrument._answer("truth", **given), on_error)
    if found is None:
        value = kelvin(float("nan")) if isinstance(instrument, Thermometer) else float("nan")
        return MeasuredColumn(value, float("nan"))
    kind = MeasuredTemperature if isinstance(instrument, Thermometer) else MeasuredBrix
    return kind(found["value"], found["uncertainty"])


def _reading(instrument: _Instrument, given: dict[str, Any], on_error: str | None) -> Any:
    if _lanes.among(given):
        return _lanes.through(instrument, "reading", given, on_error)[0]
    found = _lanes.or_nan(lambda: instrument._answer("reading", **given), on_error)
    if found is not None:
        return found
    return kelvin(float("nan")) if isinstance(instrument, Thermometer) else float("nan")
