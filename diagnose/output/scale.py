"""Pressures in the unit a case is written in; imported by the reports that print many of them."""

from __future__ import annotations

from dataclasses import dataclass

from diagnose.case.case import Case
from diagnose.case.pressures import pressure_unit
from diagnose.circuit.band import Band
from knowledge.units import PRESSURE, PSI, unit_named


@dataclass(frozen=True, slots=True)
class Scale:
    """A unit of pressure, in Pa, and the decimals worth printing."""

    unit: str = "psi"
    factor: float = PSI
    decimals: int = 0

    @property
    def least(self) -> float:
        """Half of the last digit printed, Pa: less than this shows as nothing.

        >>> Scale("bar", 1e5, 1).least
        5000.0
        """
        return 0.5 * self.factor / float(10**self.decimals)

    def figure(self, pascals: float) -> str:
        """A pressure without its unit.

        >>> Scale().figure(55158.0), Scale("bar", 1e5, 1).figure(55158.0)
        ('8', '0.6')
        """
        text = f"{pascals / self.factor:.{self.decimals}f}"
        return text.removeprefix("-") if float(text) == 0 else text

    def one(self, pascals: float) -> str:
        """A pressure with its unit."""
        return f"{self.figure(pascals)} {self.unit}"

    def range(self, band: Band) -> str:
        """The mean and what nine plausible engines in ten keep to.

        >>> Scale().range(Band(20e3, 55e3, 90e3))
        '8 psi (3 to 13)'
        """
        return f"{self.one(band.mean)} ({self.figure(band.low)} to {self.figure(band.high)})"

    def ends(self, band: Band) -> str:
        """The mean with its range, short enough for a table."""
        return f"{self.figure(band.mean)} ({self.figure(band.low)}-{self.figure(band.high)})"


def scale_of(case: Case) -> Scale:
    """The unit of the case's last reading; psi where there is none."""
    texts = [r.entry.pressure or "" for r in case.readings]
    unit = next(filter(None, map(pressure_unit, reversed(texts))), None)
    named = unit_named(unit, PRESSURE) if unit else None
    if not unit or named is None or named.factor == PSI:
        return Scale()
    return Scale(
        unit, named.factor, max(0, 5 - len(f"{named.factor:.0f}")) if named.factor < 9e4 else 1
    )
