"""Argument types of every formula here, and checks of their ranges."""

from __future__ import annotations

from typing import Any, TypeAlias

import numpy as np
from numpy.typing import NDArray

FloatArray: TypeAlias = NDArray[np.float64]
Floats: TypeAlias = float | FloatArray


def refuse_outside(
    name: str, value: Any, low: float, high: float, unit: str = "", *, open_low: bool = False
) -> None:
    """Raise ValueError, naming the range, unless every element of ``value`` lies in it.

    >>> refuse_outside("eccentricity ratio", 0.6, 0.0, 1.0)
    >>> refuse_outside("eccentricity ratio", np.array([0.6, 1.2]), 0.0, 1.0)
    Traceback (most recent call last):
    ...
    ValueError: eccentricity ratio must lie in [0, 1], got 1.2
    """
    if isinstance(value, float) and (value > low if open_low else value >= low) and value <= high:
        return  # a plain number needs no array; every formula comes by here at every step
    values = np.asarray(value, dtype=float)
    inside = values > low if open_low else values >= low
    if high != np.inf:
        inside = inside & (values <= high)
    if not inside.all():
        worst = values[~inside].flat[0]
        bracket, unit = "(" if open_low else "[", f" {unit}" if unit else ""
        end = "inf)" if high == np.inf else f"{high:g}]"
        raise ValueError(f"{name} must lie in {bracket}{low:g}, {end}{unit}, got {worst:g}")


def refuse_unless_positive(unit: str = "", **values: Any) -> None:
    """Raise ValueError, naming the first of ``values`` that is not above zero everywhere.

    >>> refuse_unless_positive("Pa·s", mu=0.0)
    Traceback (most recent call last):
    ...
    ValueError: mu must lie in (0, inf) Pa·s, got 0
    """
    for name, value in values.items():
        if isinstance(value, np.ndarray) and (value > 0.0).all():
            continue
        refuse_outside(name.replace("_", " "), value, 0.0, np.inf, unit, open_low=True)
