"""What could explain readings that no plausible engine of a case shows.

Each hidden condition is added to the engines as found, over its severities; what brings every
reading within its error is named.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from diagnose.circuit.as_read import FITS
from diagnose.circuit.condition_effects import FAULTS
from diagnose.circuit.engine_model import known_points, shown
from diagnose.circuit.fitting import NODES
from diagnose.circuit.forecast import Forecast
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.ranges import FloatArray
from knowledge.circuit.conditions import READING_FALSE

MOST = 3  #: conditions named
BETTER = 0.7  #: of the misfit before: what leaves more of it explains nothing
READS_LOW = np.array([0.3, 0.5, 0.7, 0.85])[:, None, None]  #: share of the pressure shown
READS_HIGH = np.array([1.15, 1.3, 1.6])[:, None, None]


@dataclass(frozen=True, slots=True)
class Explanation:
    """A condition, or a wrong gauge, that would bring the engines nearer to the readings."""

    id: str
    says: str
    settles: bool  #: whether every reading then fits


@dataclass(frozen=True, slots=True)
class _Tried:
    """A condition that was tried, and by how many errors the reading worst met is off then."""

    off: float
    id: str
    says: str


def explanations(forecast: Forecast) -> tuple[Explanation, ...]:
    """Return the conditions that explain the readings best, best first; none where none does."""
    fits = forecast.state.readings
    read = np.array([r.read.reading.pressure for r in fits])
    error = np.array([r.error for r in fits])
    points = known_points(forecast.case, [r.read.reading for r in fits])
    wrong = float(np.max([abs(r.off) / r.error for r in fits]))

    def left(pressures: FloatArray) -> float:
        """The least, over severities, of the most errors that the mean engine is off a reading."""
        mean = pressures.reshape(-1, *pressures.shape[-2:]).mean(1)
        return float(np.min(np.max(np.abs(mean - read) / error, axis=-1)))

    def with_each(engine: Engine) -> list[_Tried]:
        steps = NODES[:, None, None]
        return [
            _Tried(left(shown(f.apply(engine, steps), points)), f.condition.id, f.condition.says)
            for f in FAULTS.values()
        ]

    bare = forecast.state.engine(closed=forecast.state.kinds)
    tried = with_each(forecast.before.engine) + with_each(bare)
    for shares, id_, says in (
        (READS_LOW, READING_FALSE.id, READING_FALSE.says),
        (READS_HIGH, "gauge_reads_high", "the gauge reads more than there is"),
    ):
        tried.append(_Tried(left(shares * shown(bare, points)), id_, says))
    best: dict[str, _Tried] = {}
    for each in sorted(tried, key=lambda t: (t.off, t.id)):
        best.setdefault(each.id, each)
    return tuple(
        Explanation(t.id, t.says, t.off <= FITS) for t in best.values() if t.off < BETTER * wrong
    )[:MOST]
