# Written by `cargo xtask surface`: change what it is made from.
"""The finish: where syrup is done today, how much to fill hot, what fits into which containers."""
# mypy: disable-error-code="overload-overlap"
from collections.abc import Sequence
from typing import Literal, overload

import numpy as np
from numpy.typing import NDArray

from . import units as _u
from ._sugaring import Column, Quantity

__all__ = ["hot_fill"]

@overload
def hot_fill(label: Quantity[_u.Volume], brix: float | Quantity[_u.Brix, float], /, *, fill_temperature: Quantity[_u.Temperature], on_error: Literal["nan"] | None = None) -> Quantity[_u.Volume]:
    """How much to fill hot so that the label's contents are there when cold.

    Parameters
    ----------
    label : Quantity[Volume]
        1 to 1000000000 mL.
    brix : float
        50 to 85 °Bx.
    fill_temperature : Quantity[Temperature]
        20 to 100 °C.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity[Volume]
        Shown in mL (``ml``); of a column where an argument is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or of another dimension.

    Notes
    -----
    Source: ratio of the densities of sucrose solutions.

    Accuracy: 0.12 % above 55 °C, as the density.

    Examples
    --------
    >>> from sugaring import finish
    >>> from sugaring.units import deg_c, ml
    >>> finish.hot_fill(ml(500000000), 71, fill_temperature=deg_c(52))
    ml(506692783.1433128)
    """
@overload
def hot_fill(label: Quantity[_u.Volume, float | Column], brix: float | Column | Quantity[_u.Brix, float | Column], /, *, fill_temperature: Quantity[_u.Temperature, float | Column], on_error: Literal["nan"] | None = None) -> Quantity[_u.Volume, Column]: ...
@overload
def hot_fill(label: Quantity[_u.Volume, float | Sequence[float] | NDArray[np.float64]], brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]], /, *, fill_temperature: Quantity[_u.Temperature, float | Sequence[float] | NDArray[np.float64]], on_error: Literal["nan"] | None = None) -> Quantity[_u.Volume, NDArray[np.float64]]: ...
