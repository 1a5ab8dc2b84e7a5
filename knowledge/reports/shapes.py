"""Shapes of what people report: behaviour, trials, earlier work.

Knows ``model`` and the words of reports; what a rule may ask for is of these shapes.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from knowledge.model import Cause, Finding, Gauge, Source, Station, Strength
from knowledge.reports.words import (
    NOISES,
    Circumstance,
    Course,
    Done,
    Hands,
    Onset,
    Result,
    Shows,
    Since,
)


@dataclass(frozen=True, slots=True)
class Behaviour:
    """One thing seen of the pressure or heard of the engine, with all that was said of it.

    ``during``: it shows then; ``never``: it was watched then and does not show; ``only``: it
    shows at no other time. ``lasts`` is how long, in seconds. ``with_pressure``: a noise or
    lamp that comes and goes with the pressure.
    ``work_named``: the report says elsewhere what the work was that it is ``since``.
    ``just_built``: the whole engine was rebuilt straight before.
    """

    shows: Shows
    during: frozenset[Circumstance] = frozenset()
    never: frozenset[Circumstance] = frozenset()
    only: bool = False
    onset: Onset | None = None
    course: frozenset[Course] = frozenset()
    since: Since | None = None
    lasts: float | None = None
    with_pressure: bool = False
    gauge: Gauge = Gauge.PANEL
    work_named: bool = False
    just_built: bool = False

    @property
    def is_noise(self) -> bool:
        """Whether it is heard rather than read."""
        return self.shows in NOISES


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class TrialKind:
    """Something that is tried to cure the trouble.

    ``cures`` are the causes it cures, each with how surely. ``cured`` is the finding "it was
    tried, and that cured it", which comes of them. ``worse`` and ``still`` are the findings that
    it made things worse or changed nothing, where the trade draws more from that than "these
    causes are less likely". ``retired`` are ids of earlier findings that said "no difference".
    """

    id: str
    station: Station
    says: str
    asks: str
    cures: Mapping[Cause, tuple[Strength, Source]]
    cured: Finding
    source: Source
    worse: Finding | None = None
    still: Finding | None = None
    retired: tuple[str, ...] = ()
    also: tuple[str, ...] = ()

    def __repr__(self) -> str:
        return f"<trial {self.id}>"

    @property
    def findings(self) -> tuple[Finding, ...]:
        """The findings that its result shows."""
        return tuple(f for f in (self.cured, self.worse, self.still) if f is not None)


@dataclass(frozen=True, slots=True)
class TrialMade:
    """A trial that was made, and what it did."""

    trial: TrialKind
    result: Result


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class WorkArea:
    """A place that may have been worked on before the trouble began.

    ``causes`` are those that work there can bring about, each with how readily: 1 is the
    usual multiple for its age, 0.5 half of its logarithm. ``renews`` are those that a new part
    there makes rarer for a time.
    """

    id: str
    station: Station
    says: str
    asks: str
    causes: Mapping[Cause, float]
    source: Source
    renews: tuple[Cause, ...] = ()
    implies: tuple[Finding, ...] = ()  #: facts of history that follow where it was lately
    also: tuple[str, ...] = ()

    def __repr__(self) -> str:
        return f"<area {self.id}>"


@dataclass(frozen=True, slots=True)
class EarlierWork:
    """Work done before the trouble began; ``before`` is how long before, in seconds.

    0 is "straight before, or it began with it"; None where it is not known.
    """

    area: WorkArea
    done: Done | None = None
    before: float | None = None
    hands: Hands | None = None
