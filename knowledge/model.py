"""Shapes of the knowledge: stations, findings, quantities, measures, conditions, causes.

Imported by all of ``knowledge`` and by the reasoning in ``diagnose``; imports nothing of ours.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from dataclasses import dataclass, fields
from datetime import date
from enum import Enum, StrEnum
from typing import TypeVar

T = TypeVar("T")


class Station(StrEnum):
    """A stretch of the oil's path; knowledge is sorted by it."""

    INSTRUMENT = "instrument"
    OIL = "oil"
    SUCTION = "suction"
    PUMP = "pump"
    RELIEF = "relief"
    DELIVERY = "delivery"
    BEARINGS = "bearings"
    TOPEND = "topend"
    ASSEMBLY = "assembly"
    LEAKS = "leaks"


class Kind(StrEnum):
    """What sort of fact a finding is."""

    LAYOUT = "layout"  #: how this engine is built; gates causes
    HISTORY = "history"  #: what happened to it; shifts how common a cause is
    SEEN = "seen"  #: evidence: seen, heard, smelt, read or measured


class Stage(StrEnum):
    """How far one must go to learn a finding."""

    KNOWN = "told"  #: the person knows it already
    OUTSIDE = "outside"  #: a check without dismantling
    OPENED = "opened"  #: something has to come off


class State(StrEnum):
    """What was observed of a finding. Not looked at is no state and no evidence."""

    PRESENT = "present"
    ABSENT = "absent"


class Strength(Enum):
    """How often the parent alone brings the child about (judgement, closed scale)."""

    ALWAYS = 0.97
    MOSTLY = 0.80
    OFTEN = 0.55
    SOMETIMES = 0.25
    SELDOM = 0.08
    RARELY = 0.02


ALWAYS, MOSTLY, OFTEN, SOMETIMES, SELDOM, RARELY = Strength


class Background(Enum):
    """How often a finding is there for reasons that are not listed (judgement).

    The last two are of sights that define a cause: they stand well below its prior.
    """

    COMMON = 0.15
    OCCASIONAL = 0.05
    RARE = 0.015
    VERY_RARE = 0.004
    EXCEPTIONAL = 0.001
    HARDLY_EVER = 0.0002


COMMON, OCCASIONAL, RARE, VERY_RARE, EXCEPTIONAL, HARDLY_EVER = Background


class Rate(Enum):
    """How common a root cause is among real complaints: relative weights (judgement).

    Flat on purpose: confirmed cases hold more rare causes than their class predicts.
    """

    VERY_COMMON = 6.0
    COMMON = 4.0
    OCCASIONAL = 2.0
    RARE = 0.8
    VERY_RARE = 0.2


class Shift(Enum):
    """What a circumstance does to a cause's rate (judgement)."""

    STRONG_UP = 4.0
    UP = 2.0
    DOWN = 0.5
    STRONG_DOWN = 0.15


STRONG_UP, UP, DOWN, STRONG_DOWN = Shift


@dataclass(frozen=True, slots=True, kw_only=True)
class Shifts:
    """What each of five facts of history does to a cause's rate; None changes nothing.

    The fields are the ids of the findings of history.
    """

    high_mileage: Shift | None = None
    freshly_rebuilt: Shift | None = None
    oil_just_changed: Shift | None = None
    stood_long: Shift | None = None
    raced_or_heeled: Shift | None = None

    def get(self, fact: str) -> Shift | None:
        """Return the shift for the id of a finding of history. Raises AttributeError."""
        shift: Shift | None = getattr(self, fact)
        return shift

    def items(self) -> Iterator[tuple[str, Shift]]:
        """Yield the facts that change the rate, each with its shift."""
        for each in fields(self):
            if (shift := self.get(each.name)) is not None:
                yield each.name, shift


class Severity(StrEnum):
    """What an alarm asks of the person."""

    STOP = "stop the engine"
    DO_NOT_RUN = "do not start or run"
    CARE = "take care"


@dataclass(frozen=True, slots=True, eq=False)
class Source:
    """Where a statement was read, or the mark that it was not.

    ``trust`` is how far it is relied on: "strong" for a maker's own text, "strong, read in a copy"
    where a copy of it was read, "medium" for trade press, marketing and named authors, "weak" for
    forums and for what has neither address nor page; "in part" where the idea was read there and
    the rest is judgement; "practice", "judgement" and "memory" mark what has no source.
    """

    key: str
    title: str
    trust: str = ""

    def __str__(self) -> str:
        return self.title


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class Finding:
    """Something a person can know, see, hear, smell, read or measure.

    ``says`` completes "it was found: …", ``denies`` the opposite; ``asks`` is the question
    asked of a person; ``background`` is how often it is there without any listed cause.
    """

    id: str
    station: Station
    says: str
    asks: str
    source: Source
    denies: str = ""
    kind: Kind = Kind.SEEN
    stage: Stage = Stage.KNOWN
    normal: str = ""
    why: str = ""
    background: Background = RARE
    also: tuple[str, ...] = ()

    def __repr__(self) -> str:
        return f"<finding {self.id}>"

    def stated(self, there: bool) -> str:
        """The sentence for it being there, or for its not being there."""
        return self.says if there else self.denies or f"not: {self.says}"


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class Quantity:
    """Something of an engine that has a value: a clearance, a pressure, a volume.

    Its figures stand here and nowhere else; what a person measures (``Measure``), what a maker
    allows (``Limit``), what a profile states and what a repair sets refer to it. Every figure
    is in the SI unit of ``dimension`` (see ``units``); ``source`` is that of these figures.
    """

    id: str
    says: str
    dimension: str  #: a key of ``units.DIMENSIONS``
    plausible: tuple[float, float]  #: what can be real; outside is an error of writing
    source: Source
    short: str = ""  #: the same in a few words, for tables; empty: ``says`` is short enough
    spread: float = 0.0  #: usual measuring error, one standard deviation; 0: never measured
    unit: str = ""  #: to show it in where nobody chose one; empty: the dimension's first

    def __repr__(self) -> str:
        return f"<quantity {self.id}>"


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class Measure:
    """A quantity that a person measures on an engine and enters with a unit.

    A case names it by the id of its quantity; ``source`` is that of the way to measure it.
    """

    quantity: Quantity
    station: Station
    asks: str
    source: Source
    also: tuple[str, ...] = ()

    def __repr__(self) -> str:
        return f"<measure {self.id}>"

    @property
    def id(self) -> str:
        """The name in a case."""
        return self.quantity.id

    @property
    def says(self) -> str:
        """What is measured, and how or where."""
        return self.quantity.says

    @property
    def dimension(self) -> str:
        """The key of ``units.DIMENSIONS``."""
        return self.quantity.dimension

    @property
    def plausible(self) -> tuple[float, float]:
        """What can be real, SI."""
        return self.quantity.plausible

    @property
    def spread(self) -> float:
        """Usual measuring error, one standard deviation, SI."""
        return self.quantity.spread


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class Condition:
    """A hidden hydraulic or damage state between causes and findings.

    One with a ``rate`` is a root that feeds several causes: how common it is beside them, and what
    facts of history do to that.
    """

    id: str
    station: Station
    says: str
    mechanism: str
    source: Source
    damage: bool = False
    rate: Rate | None = None
    shifts: Shifts | None = None

    def __repr__(self) -> str:
        return f"<condition {self.id}>"


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class Cause:
    """A root cause: what went wrong first.

    ``rate`` is how common it is, ``shifts`` what five facts of history do to that rate. Where its
    name is that of a ``state`` other causes can bring about too, its figure in the ranking is
    that of the state, whatever brought it about, as soon as an effect of the state was seen.
    """

    id: str
    station: Station
    says: str
    mechanism: str
    rate: Rate
    shifts: Shifts
    remedy: str
    source: Source
    follows: str = ""  #: what it leads to if left
    no_fault: bool = False
    state: Condition | None = None
    gives_way: bool = False  #: its state is another cause's where one explains it
    also: tuple[str, ...] = ()

    def __repr__(self) -> str:
        return f"<cause {self.id}>"


class Gauge(StrEnum):
    """The instrument that shows the pressure."""

    PANEL = "panel"
    DIRECT = "direct"  #: a trusted test gauge
    LAMP = "lamp"


@dataclass(frozen=True, slots=True)
class Reading:
    """One look at a gauge, in SI: rev/min, kelvin, pascal.

    Speed and oil temperature may be reported in words; then they are the middle of a
    distribution whose standard deviation is ``rpm_spread`` and ``oil_spread``.
    """

    rpm: float
    oil_temperature: float | None
    pressure: float
    gauge: Gauge = Gauge.PANEL
    tap: str = "gallery"
    error: float | None = None  #: the gauge's own error, Pa, where it is known
    when: date | None = None  #: the day it was taken, where it is known
    rpm_spread: float = 0.0  #: rev/min
    oil_spread: float = 0.0  #: kelvin
    pressure_spread: float = (
        0.0  #: Pa, of a range or a share of the dial, without the gauge's error
    )
    at_most: bool = False  #: never above ``pressure``
    at_least: bool = False  #: ``pressure`` or more, as where the needle leaves the scale
    usual: float | None = None  #: Pa, what this gauge usually shows under these conditions
    at_all_speeds: bool = False  #: reported of every speed that was tried
    at_all_heats: bool = False  #: reported of cold and of hot oil
    station: str = ""  #: where a panel gauge sits, where there are several
    said: str = ""  #: the reading in the person's words, where it has any; for output only


def all_in(module: str, kind: type[T]) -> tuple[T, ...]:
    """Every word of a kind that a module itself defines, in the order written there."""
    return tuple(v for v in vars(sys.modules[module]).values() if isinstance(v, kind))
