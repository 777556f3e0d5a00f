_S = TypeVar("_S", bound=_u.DensityScale)

@overload
def on_scale(
    brix: float | Quantity[_u.Brix], scale: Unit[_S], /, *, on_error: Literal["nan"] | None = None
) -> Quantity[_S]:
    """Where a sucrose solution stands on a density scale.

    The temperatures of solution and water are part of the scale's word. Syrup standards print the pairs of
    ``baume_20_20``.

    Parameters
    ----------
    brix : float
        0 to 85 °Bx.
    scale : Unit
        ``baume_20_20``, ``baume_60_60_f``, ``relative_density_20_20``, ``relative_density_60_60_f``,
        ``relative_density_20_4`` or ``apparent_relative_density_20_20``.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    Quantity
        On that scale; of a column where ``brix`` is one.

    Raises
    ------
    SugaringError
        An argument out of range, not finite, or no density scale.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import baume_20_20
    >>> round(sucrose.on_scale(66.9, baume_20_20).to(baume_20_20), 3)
    36.025
    """
@overload
def on_scale(
    brix: float | Column | Quantity[_u.Brix, float | Column],
    scale: Unit[_S],
    /,
    *,
    on_error: Literal["nan"] | None = None,
) -> Quantity[_S, Column]: ...
@overload
def on_scale(
    brix: float | Sequence[float] | NDArray[np.float64] | Quantity[_u.Brix, float | Sequence[float] | NDArray[np.float64]],
    scale: Unit[_S],
    /,
    *,
    on_error: Literal["nan"] | None = None,
) -> Quantity[_S, NDArray[np.float64]]: ...
@overload
def brix_from_scale(value: Quantity[_u.DensityScale], /, *, on_error: Literal["nan"] | None = None) -> float:
    """°Brix of the sucrose solution that stands at ``value`` on a density scale: the inverse of ``on_scale``.

    Parameters
    ----------
    value : Quantity
        A mark on a density scale, from that of water to that of 85 °Bx.
    on_error : "nan", optional
        NaN where a value is refused, in place of an error.

    Returns
    -------
    float
        In °Bx; a column where ``value`` is one.

    Raises
    ------
    SugaringError
        A value out of range, not finite, or not on a density scale.

    Examples
    --------
    >>> from sugaring import sucrose
    >>> from sugaring.units import baume_20_20
    >>> round(sucrose.brix_from_scale(baume_20_20(36)), 2)
    66.85
    """
@overload
def brix_from_scale(
    value: Quantity[_u.DensityScale, float | Column], /, *, on_error: Literal["nan"] | None = None
) -> Column: ...
@overload
def brix_from_scale(
    value: Quantity[_u.DensityScale, float | Sequence[float] | NDArray[np.float64]],
    /,
    *,
    on_error: Literal["nan"] | None = None,
) -> NDArray[np.float64]: ...
