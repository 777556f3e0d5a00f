_V = TypeVar("_V", covariant=True)

@final
class StationPressure:
    """Absolute pressure of the air where the pan stands, 50 to 110 kPa, made by naming the kind of reading."""

    @overload
    @staticmethod
    def measured(pressure: Quantity[_u.Pressure], /) -> StationPressure:
        """From a barometer in the sugarhouse that is not adjusted to sea level; standard uncertainty 0.1 kPa. Of a column
        of readings it makes ``StationPressures``."""
    @overload
    @staticmethod
    def measured(pressure: Quantity[_u.Pressure, Column], /) -> StationPressures[Column]: ...

    @staticmethod
    def from_altimeter_setting(setting: Quantity[_u.Pressure], altitude: Quantity[_u.Length], /) -> StationPressure:
        """From the altimeter setting that an airport reports; standard uncertainty 0.1 kPa."""

    @staticmethod
    def from_sea_level(
        pressure: Quantity[_u.Pressure],
        altitude: Quantity[_u.Length],
        /,
        *,
        air_temperature: Quantity[_u.Temperature],
    ) -> StationPressure:
        """From the mean sea level pressure of a weather map or forecast; standard uncertainty 0.2 kPa."""

    @staticmethod
    def from_altitude(altitude: Quantity[_u.Length], /) -> StationPressure:
        """From the altitude alone, by the standard atmosphere; standard uncertainty 0.8 kPa."""

    @staticmethod
    def from_boiling_water(temperature: Quantity[_u.Temperature], /) -> StationPressure:
        """From the temperature at which plain water boils there and now; standard uncertainty 0.35 kPa."""

    @property
    def pressure(self) -> Quantity[_u.Pressure]:
        """The absolute pressure."""

    @property
    def uncertainty(self) -> Quantity[_u.Pressure]:
        """Its standard uncertainty."""

    @property
    def origin(self) -> Literal["measured", "altimeter_setting", "sea_level", "altitude", "boiling_water"]:
        """How it was come by."""

    def with_uncertainty(self, uncertainty: Quantity[_u.Pressure], /) -> StationPressure:
        """The same pressure, known to the standard uncertainty `uncertainty`."""

    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self) -> int: ...
    def __copy__(self) -> StationPressure: ...
    def __deepcopy__(self, _memo: object, /) -> StationPressure: ...
    @classmethod
    def _restore(cls, pascal: float, uncertainty: float, origin: str) -> StationPressure: ...

@final
class StationPressures(Generic[_V]):
    """A column of station pressures, as ``StationPressure.measured`` makes it of a column of a barometer's readings."""

    @property
    def pressure(self) -> Quantity[_u.Pressure, _V]:
        """The absolute pressures."""

    @property
    def uncertainty(self) -> Quantity[_u.Pressure]:
        """The standard uncertainty of each."""

    @property
    def origin(self) -> Literal["measured"]:
        """How they were come by: "measured"."""

    @classmethod
    def __class_getitem__(cls, item: Any) -> Any: ...

