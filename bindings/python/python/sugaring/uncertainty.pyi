# Written by `cargo xtask surface`: change what it is made from.
"""How sure a result is: propagation, Monte Carlo, combination, lines, limits, quantiles."""
# mypy: disable-error-code="overload-overlap"
from collections.abc import Callable, Iterable, Mapping, Sequence
from typing import Any, ClassVar, Generic, Self, TypeVar, final, Literal, overload

import numpy as np
from numpy.typing import NDArray

from . import units as _u
from ._amounts import Measured
from ._sugaring import Column, Quantity
from .air import StationPressure

__all__ = ["Combined", "Contribution", "Line", "Propagated", "Sampled", "Spread", "combine", "coverage_factor", "from_limits", "from_resolution", "guard_band", "line_fit", "monte_carlo", "normal_probability", "normal_quantile", "probability_at_least", "propagate", "t_quantile"]

_R = TypeVar("_R")
_Distribution = Literal["normal", "rectangular", "triangular", "arcsine"]
# What a model's input may be: with its uncertainty, or known.
_Input = Spread | Measured[Any] | StationPressure | Quantity[Any] | float

@final
class Spread:
    """One input of a model: its value, its standard uncertainty, and what else is known of its spread.

    Parameters
    ----------
    value : float or Quantity
        The value; the model is called with its kind.
    uncertainty : float or Quantity
        Its standard uncertainty whatever the distribution, 0 and more; of a quantity, a difference of its kind.
    name : str, optional
        What it is called in the list of contributions; left out, its key in a dict, or the parameter of the model in its
        place.
    distribution : str, optional
        How values spread; a normal one of few degrees of freedom is drawn from Student's t.
    cause : str, optional
        Inputs of one cause move together, each by its own uncertainty.
    degrees_of_freedom : float, optional
        How well the uncertainty is known, 1 and more; left out, infinite.
    correlation : dict, optional
        Names of other normal inputs, and the correlation with each, -1 to 1.

    Raises
    ------
    SugaringError
        Not finite; an uncertainty below 0; a correlation beyond 1; an unknown distribution.

    Examples
    --------
    >>> from sugaring.uncertainty import Spread
    >>> from sugaring.units import deg_c, delta_c
    >>> Spread(deg_c(82), delta_c(0.5), cause="thermometer")
    Spread(deg_c(82.0), delta_c(0.5), cause='thermometer')
    """

    def __new__(
        cls,
        value: float | Quantity[Any],
        uncertainty: float | Quantity[Any],
        *,
        name: str | None = None,
        distribution: _Distribution = "normal",
        cause: str | None = None,
        degrees_of_freedom: float | None = None,
        correlation: Mapping[str, float] | None = None,
    ) -> Self: ...
    @property
    def value(self) -> float | Quantity[Any]:
        """The value, as it was given."""

    @property
    def uncertainty(self) -> float | Quantity[Any]:
        """Its standard uncertainty."""

    @property
    def name(self) -> str | None:
        """What it is called in the list of contributions; None leaves that to the call."""

    @property
    def distribution(self) -> _Distribution:
        """How it spreads."""

    @property
    def cause(self) -> str | None:
        """What makes it uncertain, where it shares that."""

    @property
    def degrees_of_freedom(self) -> float:
        """Degrees of freedom of its uncertainty."""

    @property
    def correlation(self) -> dict[str, float]:
        """Its correlation with other inputs, by name."""

    def __eq__(self, other: object, /) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]
    @staticmethod
    def _restore(
        value: float | Quantity[Any],
        uncertainty: float | Quantity[Any],
        name: str | None,
        distribution: str,
        cause: str | None,
        degrees_of_freedom: float | None,
        correlation: list[tuple[str, float]] | None,
    ) -> Spread: ...

@final
class Contribution:
    """The part that one input, or one shared cause, has in an uncertainty."""

    @property
    def name(self) -> str:
        """Name of the input, or of the cause that several share."""

    @property
    def sensitivity(self) -> float | None:
        """Change of the result with the input, in their units; None of a shared cause, and of an input that is known."""

    @property
    def uncertainty(self) -> Any:
        """Effect of one standard uncertainty, with its sign."""

    @property
    def share(self) -> float:
        """Share of the variance."""

    @property
    def one_sided(self) -> bool:
        """Whether one of the two steps was refused, and the effect is that of the other."""

    def __eq__(self, other: object, /) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]
    @staticmethod
    def _restore(
        name: str, sensitivity: float | None, uncertainty: float, share: float, one_sided: bool, unit: str | None
    ) -> Contribution: ...

@final
class Propagated(Generic[_R]):
    """A result with its standard uncertainty to first order, and where that comes from; made by ``propagate``."""

    @property
    def value(self) -> _R:
        """The model at the inputs."""

    @property
    def uncertainty(self) -> Any:
        """Its standard uncertainty."""

    @property
    def degrees_of_freedom(self) -> float:
        """Effective degrees of freedom; infinite where those of every input are."""

    @property
    def contributions(self) -> tuple[Contribution, ...]:
        """What each input, or shared cause, has to do with it; the largest first."""

    def coverage_factor(self, coverage: float | Quantity[_u.Ratio], /) -> float:
        """How many standard uncertainties to either side hold the truth with ``coverage``."""

    def interval(self, coverage: float | Quantity[_u.Ratio], /) -> tuple[_R, _R]:
        """The interval that holds the truth with ``coverage``."""

    def __eq__(self, other: object, /) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]
    @classmethod
    def __class_getitem__(cls, key: Any) -> Any: ...
    @staticmethod
    def _restore(
        value: float, uncertainty: float, degrees_of_freedom: float, contributions: list[Any], unit: str | None
    ) -> Propagated[Any]: ...

@final
class Sampled(Generic[_R]):
    """What many draws of a result show; made by ``monte_carlo``."""

    @property
    def value(self) -> _R:
        """Mean of the draws."""

    @property
    def uncertainty(self) -> Any:
        """Their standard deviation."""

    @property
    def low(self) -> _R:
        """Low end of the interval that leaves 2.5 % of the draws at either side."""

    @property
    def high(self) -> _R:
        """High end of that interval."""

    @property
    def shortest_low(self) -> _R:
        """Low end of the shortest interval that holds 95 % of the draws."""

    @property
    def shortest_high(self) -> _R:
        """High end of that interval."""

    @property
    def median(self) -> _R:
        """As many draws lie below it as above."""

    @property
    def samples(self) -> int:
        """How many draws there were."""

    @property
    def values(self) -> Any:
        """The draws, rising: an array, a list where there is no NumPy; a column of quantities where the model gave these."""

    def interval(self, coverage: float | Quantity[_u.Ratio], /) -> tuple[_R, _R]:
        """The interval that holds the truth with ``coverage`` and leaves as much below as above."""

    def shortest(self, coverage: float | Quantity[_u.Ratio], /) -> tuple[_R, _R]:
        """The shortest interval that holds the truth with ``coverage``."""

    def probability_at_least(self, limit: float | Quantity[Any], /) -> float:
        """Share of the draws that are no less than ``limit``."""

    def __eq__(self, other: object, /) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]
    @classmethod
    def __class_getitem__(cls, key: Any) -> Any: ...
    @staticmethod
    def _restore(values: list[float], unit: str | None) -> Sampled[Any]: ...

@final
class Combined:
    """What several readings of one truth say together; made by ``combine``."""

    @property
    def value(self) -> Any:
        """The mean, each reading weighted by 1/u²."""

    @property
    def uncertainty(self) -> Any:
        """Its standard uncertainty, if the readings agree."""

    @property
    def z(self) -> float:
        """The largest difference of two readings, in its own standard uncertainty."""

    @property
    def agree(self) -> bool:
        """Whether ``z`` is at most 2."""

    def __eq__(self, other: object, /) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]
    @staticmethod
    def _restore(value: float, uncertainty: float, z: float, agree: bool, unit: str | None) -> Combined: ...

@final
class Line:
    """A straight line and how well it is known; made by ``line_fit``."""

    @property
    def intercept(self) -> float:
        """Its height at the reference."""

    @property
    def slope(self) -> float:
        """Its slope."""

    @property
    def covariance(self) -> tuple[tuple[float, float], tuple[float, float]]:
        """Variances of intercept and slope, and their covariance beside the diagonal."""

    @property
    def residual_deviation(self) -> float:
        """Standard deviation of the points about it."""

    @property
    def degrees_of_freedom(self) -> float:
        """Points less the two figures that were found."""

    @property
    def reference(self) -> float:
        """Where the intercept is its height."""

    @property
    def low(self) -> float:
        """The least x of the points: below, the line is a guess."""

    @property
    def high(self) -> float:
        """The largest x of the points: above, the line is a guess."""

    @property
    def correlation(self) -> float:
        """Correlation of intercept and slope."""

    def at(self, x: float, /) -> Measured[Any]:
        """Its height at ``x``, and the standard uncertainty of that."""

    def __eq__(self, other: object, /) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]
    @staticmethod
    def _restore(x: list[float], y: list[float], x0: float) -> Line: ...

def propagate(model: Callable[..., _R], inputs: Iterable[_Input] | Mapping[str, _Input], /) -> Propagated[_R]:
    """How uncertain inputs make the result of ``model`` uncertain, to first order, and how much each has a part in it.

    First order takes the model for a straight line; near a turning point it is too small, and ``monte_carlo`` decides.
    A function of the library is called without Python between.

    Parameters
    ----------
    model : callable
        Any function of the inputs, in their order, that gives a number or a quantity.
    inputs : list or dict
        Each a ``Spread``, a ``measured`` value, or a number or quantity that is known; a dict names them.

    Returns
    -------
    Propagated
        ``value``, ``uncertainty``, ``degrees_of_freedom`` and the ranked ``contributions``.

    Raises
    ------
    SugaringError
        Inputs that cannot be together; what the model refuses on both sides of an input.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.uncertainty import propagate
    >>> from sugaring.units import deg_c, delta_c, kg_per_m3, measured
    >>> inputs = {"brix": measured(66.9, 0.15), "temperature": measured(deg_c(25), delta_c(0.5))}
    >>> density = propagate(sucrose.density, inputs)
    >>> print(f"{density.value:kg_per_m3:.1f} ± {density.uncertainty:kg_per_m3:.1f}")
    1325.6 ± 1.0
    >>> print(density.contributions[0].name)
    brix
    """

def monte_carlo(
    model: Callable[..., _R],
    inputs: Iterable[_Input] | Mapping[str, _Input],
    /,
    *,
    seed: int,
    samples: int | Mapping[Literal["until", "digits"], float],
    columns: bool = False,
    progress: Callable[[float], object] | None = None,
) -> Sampled[_R]:
    """How uncertain inputs make the result of ``model`` uncertain, by drawing the inputs many times.

    The same seed gives the same bits on every machine and in every language.

    Parameters
    ----------
    model : callable
        Any function of the inputs, in their order, that gives a number or a quantity.
    inputs : list or dict
        Each a ``Spread``, a ``measured`` value, or a number or quantity that is known; a dict names them.
    seed : int
        0 to 2**64 - 1.
    samples : int or dict
        So many, 100 to 10 million; or ``{"until": tolerance}`` or ``{"digits": digits}``, as many as that takes.
    columns : bool, optional
        Whether the model takes columns of draws and gives one.
    progress : callable, optional
        Told the share done, 0 to 1, at most about a hundred times; returning False stops.

    Returns
    -------
    Sampled
        Mean, standard deviation, 95 % intervals, median and the draws.

    Raises
    ------
    SugaringError
        A draw that a function of the library refuses; samples out of range, or too few for the tolerance; cancelled.

    Examples
    --------
    >>> from sugaring.uncertainty import monte_carlo
    >>> from sugaring.units import measured
    >>> total = monte_carlo(lambda a, b: a + b, [measured(1, 0.3), measured(2, 0.4)], seed=1, samples=10_000)
    >>> print(f"{total.value:.1f} ± {total.uncertainty:.1f}")
    3.0 ± 0.5
    """

def combine(readings: Iterable[Measured[Any]], /) -> Combined:
    """What several readings of one truth say together, each weighted by 1/u², and whether they agree.

    Parameters
    ----------
    readings : list of Measured
        One at least, whose errors have nothing to do with one another.

    Returns
    -------
    Combined
        ``value`` and ``uncertainty``; ``z``, the largest difference in its own standard uncertainty; ``agree``.

    Raises
    ------
    SugaringError
        No reading; an uncertainty below 0; two readings without uncertainty that differ.

    Examples
    --------
    >>> from sugaring.uncertainty import combine
    >>> from sugaring.units import measured
    >>> combine([measured(66.9, 0.15), measured(67.1, 0.2)]).agree
    True
    """

def line_fit(x: Iterable[float], y: Iterable[float], /, *, x0: float) -> Line:
    """The straight line through points by least squares, with the covariance of its two figures.

    Parameters
    ----------
    x, y : list of float
        The points, three at least; x is exact.
    x0 : float
        Where the intercept is the height of the line.

    Returns
    -------
    Line
        y = intercept + slope (x - x0), and how well it is known.

    Raises
    ------
    SugaringError
        Fewer than three points, lengths that differ, x that are all alike; not finite.

    Examples
    --------
    >>> from sugaring.uncertainty import line_fit
    >>> line = line_fit([60, 80, 100], [0.2, 0.3, 0.3], x0=100)
    >>> print(f"{line.at(104).value:.2f}")
    0.33
    """

def probability_at_least(value: Measured[Any], minimum: float | Quantity[Any], /) -> float:
    """Probability that the truth behind a measured value is at least ``minimum``.

    Parameters
    ----------
    value : Measured
        A number or a quantity with its standard uncertainty.
    minimum : float or Quantity
        The limit.

    Returns
    -------
    float
        0 to 1.

    Raises
    ------
    SugaringError
        Not finite; an uncertainty below 0.

    Examples
    --------
    >>> from sugaring.uncertainty import probability_at_least
    >>> from sugaring.units import measured
    >>> print(f"{probability_at_least(measured(66.9, 0.15), 66.7):.2f}")
    0.91
    """

@overload
def from_resolution(step: float | Quantity[_u.Ratio, float], /, *, on_error: Literal["nan"] | None = None) -> float:
    """Standard uncertainty of an indication that is read to the nearest `step`.

    Parameters
    ----------
    step : float
        0 to 1e300.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        A plain number; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: JCGM 100:2008, F.2.2.1.

    Accuracy: exact for readings that fall anywhere within the step.

    Examples
    --------
    >>> from sugaring import uncertainty
    >>> uncertainty.from_resolution(5e+299)
    1.4433756729740645e+299
    """
@overload
def from_resolution(step: float | Column | Quantity[_u.Ratio, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def from_resolution(step: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Ratio, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...

@overload
def from_limits(half_width: float | Quantity[_u.Ratio, float], /, *, on_error: Literal["nan"] | None = None) -> float:
    """Standard uncertainty of a value that lies within ± `half_width`, anywhere alike.

    Parameters
    ----------
    half_width : float
        0 to 1e300.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        A plain number; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: JCGM 100:2008, 4.3.7, equation 7.

    Accuracy: exact for a rectangular distribution.

    Examples
    --------
    >>> from sugaring import uncertainty
    >>> uncertainty.from_limits(5e+299)
    2.886751345948129e+299
    """
@overload
def from_limits(half_width: float | Column | Quantity[_u.Ratio, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def from_limits(half_width: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Ratio, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...

@overload
def normal_quantile(probability: float | Quantity[_u.Ratio, float], /, *, on_error: Literal["nan"] | None = None) -> float:
    """How many standard deviations above the mean a normal value lies with `probability` below it.

    Parameters
    ----------
    probability : float
        1e-300 to 0.999999999999999.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        A plain number; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: Wichura 1988, Algorithm AS 241, Applied Statistics 37, 477-484, routine PPND16.

    Accuracy: 1 part in 1e15.

    Examples
    --------
    >>> from sugaring import uncertainty
    >>> uncertainty.normal_quantile(0.5)
    0.0
    """
@overload
def normal_quantile(probability: float | Column | Quantity[_u.Ratio, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def normal_quantile(probability: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Ratio, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...

@overload
def normal_probability(deviations: float | Quantity[_u.Ratio, float], /, *, on_error: Literal["nan"] | None = None) -> float:
    """Probability that a normal value lies below `deviations` standard deviations above the mean.

    Parameters
    ----------
    deviations : float
        -1e+300 to 1e300.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        A plain number; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: NIST Digital Library of Mathematical Functions, 7.17.

    Accuracy: 1 part in 1e14.

    Examples
    --------
    >>> from sugaring import uncertainty
    >>> uncertainty.normal_probability(0)
    0.5
    """
@overload
def normal_probability(deviations: float | Column | Quantity[_u.Ratio, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def normal_probability(deviations: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Ratio, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...

@overload
def t_quantile(probability: float | Quantity[_u.Ratio, float], degrees_of_freedom: float | Quantity[_u.Ratio, float], /, *, on_error: Literal["nan"] | None = None) -> float:
    """How many standard uncertainties above the mean a value of Student's distribution lies with `probability` below it.

    Parameters
    ----------
    probability : float
        1e-300 to 0.999999999999999.
    degrees_of_freedom : float
        1 to 1000000.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        A plain number; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: JCGM 100:2008, G.3, table G.2.

    Accuracy: 1 part in 1e12.

    Examples
    --------
    >>> from sugaring import uncertainty
    >>> uncertainty.t_quantile(0.5, 600000)
    0.0
    """
@overload
def t_quantile(probability: float | Column | Quantity[_u.Ratio, float | Column], degrees_of_freedom: float | Column | Quantity[_u.Ratio, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def t_quantile(probability: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Ratio, float | Sequence[float] | NDArray[np.float64]], degrees_of_freedom: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Ratio, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...

@overload
def coverage_factor(coverage: float | Quantity[_u.Ratio, float], degrees_of_freedom: float | Quantity[_u.Ratio, float], /, *, on_error: Literal["nan"] | None = None) -> float:
    """How many standard uncertainties to either side hold the truth with `coverage`.

    Parameters
    ----------
    coverage : float
        0.0001 to 0.9999.
    degrees_of_freedom : float
        1 to 1e300.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        A plain number; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: JCGM 100:2008, G.3.2, G.4.1 note 1.

    Accuracy: 1 part in 1e12.

    Examples
    --------
    >>> from sugaring import uncertainty
    >>> uncertainty.coverage_factor(0.5, 6e+299)
    0.6744897501960817
    """
@overload
def coverage_factor(coverage: float | Column | Quantity[_u.Ratio, float | Column], degrees_of_freedom: float | Column | Quantity[_u.Ratio, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def coverage_factor(coverage: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Ratio, float | Sequence[float] | NDArray[np.float64]], degrees_of_freedom: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Ratio, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...

@overload
def guard_band(uncertainty: float | Quantity[_u.Ratio, float], confidence: float | Quantity[_u.Ratio, float], /, *, on_error: Literal["nan"] | None = None) -> float:
    """How far above a minimum to aim, so that the truth meets it with `confidence`.

    Parameters
    ----------
    uncertainty : float
        0 to 1e300.
    confidence : float
        0.5 to 0.999999999999999.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        A plain number; a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: JCGM 106:2012, 8.3.2.

    Accuracy: 1 part in 1e15, for a normal distribution.

    Examples
    --------
    >>> from sugaring import uncertainty
    >>> uncertainty.guard_band(5e+299, 0.8)
    4.208106167864572e+299
    """
@overload
def guard_band(uncertainty: float | Column | Quantity[_u.Ratio, float | Column], confidence: float | Column | Quantity[_u.Ratio, float | Column], /, *, on_error: Literal["nan"] | None = None) -> Column: ...
@overload
def guard_band(uncertainty: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Ratio, float | Sequence[float] | NDArray[np.float64]], confidence: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Ratio, float | Sequence[float] | NDArray[np.float64]], /, *, on_error: Literal["nan"] | None = None) -> NDArray[np.float64]: ...
