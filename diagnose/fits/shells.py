"""Which shells bring a bearing to its clearance, and how far a journal must be ground.

Metres; an undersize is how much less than standard a shell's bore is, so that each wall is half of
it thicker. Knows neither case nor unit.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from knowledge.stations.bearings import sizes

TOLERANCE = 1e-9  #: m: differences below this are rounding


@dataclass(frozen=True, slots=True)
class Pair:
    """Two shells of one bearing by their undersizes [m], the thinner wall first."""

    thin: float
    thick: float

    @property
    def undersize(self) -> float:
        """What both together take off the bore."""
        return (self.thin + self.thick) / 2

    @property
    def mixed(self) -> bool:
        """Whether the halves differ."""
        return self.thick - self.thin > TOLERANCE


def pairs(undersizes: Iterable[float]) -> tuple[Pair, ...]:
    """Return every pair of shells that may share a bore, equal halves first.

    >>> [p.mixed for p in pairs([0.0, 0.001 * 0.0254, 0.002 * 0.0254])]
    [False, False, False, True, True]
    """
    ordered = sorted(set(undersizes))
    equal = [Pair(u, u) for u in ordered]
    mixed = [
        Pair(thin, thick)
        for i, thin in enumerate(ordered)
        for thick in ordered[i + 1 :]
        if (thick - thin) / 2 <= sizes.MOST_MIXED + TOLERANCE
    ]
    return (*equal, *mixed)


def clearance_with(measured: float, fitted: float, pair: Pair) -> float:
    """Return the clearance with other shells [m].

    ``measured``: the clearance with shells of undersize ``fitted``.

    >>> under = 0.001 * 0.0254
    >>> round(clearance_with(0.003 * 0.0254, 0.0, Pair(under, under)) / 0.0254, 4)
    0.002
    """
    return measured - (pair.undersize - fitted)


def best_pair(
    measured: float,
    fitted: float,
    wanted: tuple[float, float],
    choice: Sequence[Pair],
    rare: Sequence[float] = (),
) -> Pair | None:
    """Return the pair that brings the clearance into the band; None where none does.

    Sizes made for most engines go before ``rare`` ones, equal halves before mixed ones; of each,
    the pair nearest the middle of the band.
    """
    low, high = wanted
    middle = (low + high) / 2

    def off(pair: Pair) -> float:
        return abs(clearance_with(measured, fitted, pair) - middle)

    inside = [p for p in choice if off(p) <= (high - low) / 2 + TOLERANCE]

    def order(pair: Pair) -> tuple[bool, bool, float]:
        return is_rare(pair, rare), pair.mixed, off(pair)

    return min(inside, key=order, default=None)


def is_rare(pair: Pair, rare: Sequence[float]) -> bool:
    """Whether one of the shells is of a size that is made for some engines only."""
    return any(abs(u - r) <= TOLERANCE for u in (pair.thin, pair.thick) for r in rare)


def ground_undersize(
    least: float, standard: tuple[float, float], undersizes: Iterable[float]
) -> float | None:
    """Return the smallest undersize a worn journal can be ground to; None: it is below the last.

    ``least``: its smallest reading. ``standard``: least and most diameter of a new journal. The
    grinder needs ``sizes.CLEAN_UP`` to get it clean.
    """
    clean = least - sizes.CLEAN_UP
    reachable = (u for u in sorted(undersizes) if clean >= standard[0] - u - TOLERANCE)
    return next(reachable, None)


def ground_to(standard: tuple[float, float], undersize: float) -> tuple[float, float]:
    """Return least and most diameter of a journal ground to an undersize [m]."""
    return standard[0] - undersize, standard[1] - undersize
