"""Measured values and prices: what a plan's inputs carry beside plain quantities."""

from types import GenericAlias

from . import _sugaring


class Measured:
    """A value with its standard uncertainty; made by ``measured``."""

    __slots__ = ("uncertainty", "value")
    __match_args__ = ("value", "uncertainty")

    def __init__(self, value, uncertainty):
        _sugaring._measured(value, uncertainty)
        object.__setattr__(self, "value", value)
        object.__setattr__(self, "uncertainty", uncertainty)

    def __setattr__(self, name, value):
        raise AttributeError(f"a measured value is read-only: {name}")

    def __eq__(self, other):
        if not isinstance(other, Measured):
            return NotImplemented
        return bool(self.value == other.value and self.uncertainty == other.uncertainty)

    def __hash__(self):
        return hash((self.value, self.uncertainty))

    def __repr__(self):
        return f"measured({self.value!r}, {self.uncertainty!r})"

    def __reduce__(self):
        return (Measured, (self.value, self.uncertainty))

    def __class_getitem__(cls, item):
        return GenericAlias(cls, item)

    def _as_data(self):
        return _sugaring._measured(self.value, self.uncertainty)


class Price:
    """An amount of the user's own currency per a quantity; made by ``price``."""

    __slots__ = ("amount", "per")
    __match_args__ = ("amount", "per")

    def __init__(self, amount, per):
        _sugaring._price(amount, per)
        object.__setattr__(self, "amount", amount)
        object.__setattr__(self, "per", per)

    def __setattr__(self, name, value):
        raise AttributeError(f"a price is read-only: {name}")

    def __eq__(self, other):
        return self._parts() == other._parts() if isinstance(other, Price) else NotImplemented

    def __hash__(self):
        return hash(self._parts())

    def __repr__(self):
        return f"price({self.amount!r}, {self.per!r})"

    def __reduce__(self):
        return (Price, self._parts())

    def _parts(self):
        return (self.amount, self.per)

    def _as_data(self):
        return {"amount": self.amount, "per": self.per}


def measured(value, uncertainty, /):
    """A value with its standard uncertainty, which is a quantity too; of a temperature it is a difference.

    Examples
    --------
    >>> from sugaring.units import deg_c, delta_c, litre, measured
    >>> measured(litre(95), litre(2))
    measured(litre(95.0), litre(2.0))
    >>> measured(deg_c(4), delta_c(0.5)).uncertainty
    delta_c(0.5)
    """
    return Measured(value, uncertainty)


def price(amount, per, /):
    """An amount of the user's own currency per a quantity; nothing is converted.

    Examples
    --------
    >>> from sugaring.units import cord, price
    >>> price(280, cord(1))
    price(280, cord(1.0))
    """
    return Price(amount, per)


for _made in (Measured, Price, measured, price):
    _made.__module__ = "sugaring.units"
del _made
