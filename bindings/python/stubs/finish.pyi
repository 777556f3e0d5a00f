@final
class FinishingPoint:
    """Where syrup is done today; made by ``finishing_point``."""

    @property
    def temperature(self) -> Quantity[_u.Temperature]:
        """What a perfect thermometer shows when the syrup is done."""

    @property
    def elevation(self) -> Quantity[_u.TemperatureDifference]:
        """That above boiling water: what to add to the boiling water of today's thermometer."""

    @property
    def water_boils_at(self) -> Quantity[_u.Temperature]:
        """Where plain water boils here and now."""

    @property
    def uncertainty(self) -> Quantity[_u.TemperatureDifference]:
        """Standard uncertainty of ``temperature``, from the pressure and from the boiling relation."""

    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self) -> int: ...
    @staticmethod
    def _restore(temperature: float, elevation: float, water_boils_at: float, uncertainty: float) -> FinishingPoint: ...

def finishing_point(
    target: float | Quantity[_u.Brix],
    station: StationPressure,
    /,
    *,
    non_sucrose_rise: Quantity[_u.TemperatureDifference] | None = None,
) -> FinishingPoint:
    """The temperature at which syrup of ``target`` boils at today's pressure.

    Draw off by the thermometer, accept by the hydrometer: 0.1 K is half a °Brix. A thermometer that is zeroed in plain
    boiling water beside the pan needs no barometer: add ``elevation`` to what it showed.

    Parameters
    ----------
    target : float
        °Brix of the finished syrup, 50 to 85 °Bx.
    station : StationPressure
        50 to 110 kPa.
    non_sucrose_rise : Quantity[TemperatureDifference], optional
        Rise of what is not sucrose, 0 to 1 Δ°C; 0.1 to 0.25 for maple, left out 0.

    Returns
    -------
    FinishingPoint
        ``temperature``, ``elevation``, ``water_boils_at`` and ``uncertainty``.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Examples
    --------
    >>> from sugaring import finish
    >>> from sugaring.air import StationPressure
    >>> from sugaring.units import deg_c, delta_c, kpa
    >>> done = finish.finishing_point(66.9, StationPressure.measured(kpa(96.5)))
    >>> f"{done.temperature:deg_c:.1f} °C, {done.elevation:delta_c:.2f} K above water"
    '102.8 °C, 4.16 K above water'
    """


class Legality(NamedTuple):
    """How syrup stands to a rule."""

    legal: bool
    density: str
    brix: float
    margin: float
    probability: float
    too_thin: float
    too_thick: float
    jurisdiction: str
    law: str
    advice: str
    text: str
    room: float | None = ...

def legal(brix: Measured[Any], jurisdiction: str, /) -> Legality:
    """Whether syrup is lawful, by how much, and how surely: data that was seen on a day, and no advice."""
