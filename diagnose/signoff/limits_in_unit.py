"""A limit in the unit of a person who reads it there: 0.002 in is 0.05 mm, not 0.0508 mm."""

from __future__ import annotations

from dataclasses import replace

from knowledge.units import Dimension, show, unit_named
from knowledge.work import Band

#: decimals to which makers print, by unit; a limit with more was turned from another unit
PRINTED = {"in": 4, "thou": 1, "mm": 3, "psi": 1, "bar": 2, "n·m": 1, "lb-ft": 1}
MOVED = 0.02  #: share by which a limit may move as it is rounded (judgement)
_MOST_DECIMALS = 6


def as_read(limit: float, dimension: Dimension, unit: str | None) -> float:
    """A limit [SI] as it is read in a unit: rounded where it was turned from another unit.

    >>> from knowledge.units import INCH, LENGTH
    >>> [round(1e3 * as_read(at * INCH, LENGTH, "mm"), 4) for at in (0.002, 0.004, 0.005)]
    [0.05, 0.1, 0.127]
    """
    used = (unit_named(unit, dimension) if unit else None) or dimension.units[0]
    decimals = next((d for name, d in PRINTED.items() if name in used.names), None)
    value = (limit - used.offset) / used.factor
    if decimals is None or abs(value - round(value, decimals)) <= 1e-6 * abs(value):
        return limit
    for fewest in range(_MOST_DECIMALS):
        rounded = round(value, fewest)
        if abs(rounded - value) <= MOVED * abs(value):
            return rounded * used.factor + used.offset
    return limit


def read_in(band: Band, dimension: Dimension, unit: str | None) -> Band:
    """A band whose ends accept what they read in a unit, and never less than they were."""
    low, high = band.low, band.high
    return replace(
        band,
        low=None if low is None else min(low, as_read(low, dimension, unit)),
        high=None if high is None else max(high, as_read(high, dimension, unit)),
    )


def shown_as_read(limit: float, dimension: Dimension, unit: str | None) -> str:
    """A limit in words, as it is read in a unit.

    >>> from knowledge.units import INCH, LENGTH, MM
    >>> shown_as_read(0.002 * INCH, LENGTH, "mm"), shown_as_read(0.04 * MM, LENGTH, "in")
    ('0.05 mm', '0.0016 in')
    """
    return show(as_read(limit, dimension, unit), dimension, unit)
