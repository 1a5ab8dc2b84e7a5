"""The faults found in one file, and figures read with faults collected."""

from __future__ import annotations

from knowledge.units import Dimension, UnitError, parse, show, unit_in

MOST_FAULTS = 100
ROUNDING = 1e-12  #: share of a bound that converting its unit may be off by


class TooManyFaultsError(Exception):
    """The file has so many faults that reading stops."""


class Faults(list[str]):
    """What is wrong with one file."""

    def add(self, fault: str) -> None:
        """Add a fault. Raises TooManyFaultsError."""
        self.append(fault)
        if len(self) >= MOST_FAULTS:
            raise TooManyFaultsError


def quantity(text: str, dimension: Dimension, where: str, faults: Faults) -> float | None:
    """The figure in SI, or None and a fault."""
    try:
        return parse(text, dimension)
    except UnitError as error:
        faults.add(f"{where}: {error}")
        return None


def within(value: float, plausible: tuple[float, float]) -> bool:
    """Whether a value can be; a bound typed in another unit is on it, whatever the rounding."""
    low, high = plausible
    return low - ROUNDING * abs(low) <= value <= high + ROUNDING * abs(high)


def bounds_in_words(bounds: tuple[float, float], dimension: Dimension, text: str) -> str:
    """What can be, in the unit the person used."""
    low, high = (show(v, dimension, unit_in(text, dimension)) for v in bounds)
    return f"expected {low} to {high}"
