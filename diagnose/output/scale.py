"""Pressures and oil temperatures in the units of a case."""

from __future__ import annotations

from dataclasses import dataclass

from diagnose.case.case import Case
from diagnose.case.units import units_of
from diagnose.circuit.band import Band
from knowledge.units import PRESSURE, PSI, TEMPERATURE, show, unit_named


@dataclass(frozen=True, slots=True)
class Scale:
    """A unit of pressure, in Pa, with the decimals worth printing, and a unit of temperature."""

    unit: str = "psi"
    factor: float = PSI
    decimals: int = 0
    heat_unit: str = "C"

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

    def heat(self, kelvin: float) -> str:
        """An oil temperature in whole degrees, with its unit.

        >>> Scale(heat_unit="F").heat(368.15), Scale(heat_unit="C").heat(341.45)
        ('203 F', '68 C')
        """
        figure, unit = show(kelvin, TEMPERATURE, self.heat_unit, 4).split()
        return f"{float(figure):.0f} {unit}"

    def range(self, band: Band) -> str:
        """The mean and what nine plausible engines in ten keep to.

        >>> Scale().range(Band(20e3, 55e3, 90e3))
        '8 psi (3 to 13)'
        """
        return f"{self.one(band.mean)} ({self.figure(band.low)} to {self.figure(band.high)})"

    def figures(self, band: Band) -> str:
        """The mean with its range, without the unit.

        >>> Scale().figures(Band(-7e3, 55e3, 90e3))
        '8 (-1 to 13)'
        """
        return f"{self.figure(band.mean)} ({self.figure(band.low)} to {self.figure(band.high)})"

    def ends(self, band: Band) -> str:
        """The mean with its range, short enough for a table."""
        return f"{self.figure(band.mean)} ({self.figure(band.low)}-{self.figure(band.high)})"


def scale_of(case: Case) -> Scale:
    """The units in which the case gives pressures and temperatures; psi and C where it gives none."""
    units = units_of(case)
    unit, heat = units.of(PRESSURE), units.of(TEMPERATURE) or "C"
    named = unit_named(unit, PRESSURE) if unit else None
    if not unit or named is None or named.factor == PSI:
        return Scale(heat_unit=heat)
    decimals = max(0, 5 - len(f"{named.factor:.0f}")) if named.factor < 9e4 else 1
    return Scale(unit, named.factor, decimals, heat)
