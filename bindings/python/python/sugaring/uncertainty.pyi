# Written by `cargo xtask surface`: change what it is made from.
"""How sure a result is: propagation, Monte Carlo, combination, lines, limits, quantiles."""
# mypy: disable-error-code="overload-overlap"
from collections.abc import Sequence
from typing import Literal, overload

import numpy as np
from numpy.typing import NDArray

from . import units as _u
from ._sugaring import Column, Quantity

__all__ = ["from_limits", "from_resolution", "guard_band", "normal_probability", "normal_quantile", "t_quantile"]

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
