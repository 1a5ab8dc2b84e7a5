"""The shapes of the words the book is written in.

Imported by every room of ``knowledge`` and by the parts of ``diagnose`` that reason;
imports nothing of ours.
"""

from __future__ import annotations

import sys
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from enum import Enum, StrEnum
from types import MappingProxyType
from typing import TypeVar

T = TypeVar("T")


class Station(StrEnum):
    """A stretch of the oil's way; every room of the book is sorted by it."""

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

    TOLD = "told"  #: the person knows it already
    OUTSIDE = "outside"  #: a check without dismantling
    OPENED = "opened"  #: something has to come off


class State(StrEnum):
    """What was reported of a finding. Not looked at is no state: it says nothing."""

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
    """How often a finding is there for reasons outside the book (judgement)."""

    COMMON = 0.15
    OCCASIONAL = 0.05
    RARE = 0.015
    VERY_RARE = 0.004


COMMON, OCCASIONAL, RARE, VERY_RARE = Background


class Rate(Enum):
    """How common a root cause is among real complaints: relative weights (judgement).

    Flat on purpose: among confirmed cases rare causes turn up oftener than their class says.
    """

    VERY_COMMON = 6.0
    COMMON = 4.0
    OCCASIONAL = 2.0
    RARE = 0.8


class Shift(Enum):
    """What a circumstance does to a cause's rate (judgement)."""

    STRONG_UP = 4.0
    UP = 2.0
    DOWN = 0.5
    STRONG_DOWN = 0.15


#: how a cause writes what a circumstance does to its rate; ``0`` is nothing
MARKS: Mapping[str, Shift] = MappingProxyType(
    {"++": Shift.STRONG_UP, "+": Shift.UP, "-": Shift.DOWN, "--": Shift.STRONG_DOWN}
)
#: what a cause's five marks stand for, in the order they are written
MARKED_FOR = (
    "high mileage",
    "freshly rebuilt",
    "oil just changed",
    "stood long",
    "raced or heeled",
)


class Severity(StrEnum):
    """What an alarm asks of the person."""

    STOP = "stop the engine"
    DO_NOT_RUN = "do not start or run"
    CARE = "take care"


class Caution(StrEnum):
    """The usual cautions; ``cautions.py`` holds their wording and sources."""

    HOT = "hot"
    EXHAUST = "exhaust"
    ROTATING = "rotating"
    LIFTING = "lifting"
    BATTERY = "battery"
    SPRING = "spring"
    PRESSURE = "pressure"
    SOLVENT = "solvent"
    FIRE = "fire"
    USED_OIL = "used_oil"
    ASBESTOS = "asbestos"
    EYES = "eyes"
    HEAVY = "heavy"
    SHARP = "sharp"
    HAND_TURN = "hand_turn"
    WASTE = "waste"
    INJECTION = "injection"
    BOAT = "boat"
    TRACTOR = "tractor"
    PRIMING = "priming"


class Access(StrEnum):
    """What must be open before a check can be done; ``access.py`` holds the tree."""

    OUTSIDE = "outside"
    GAUGE_PORT = "gauge_port"
    OIL_SAMPLE = "oil_sample"
    DRAINED = "drained"
    FILTER_OFF = "filter_off"
    FILTER_CUT = "filter_cut"
    VALVE_COVER_OFF = "valve_cover_off"
    DISTRIBUTOR_OUT = "distributor_out"
    RELIEF_CAP_OFF = "relief_cap_off"
    ENGINE_EASED = "engine_eased"
    SUMP_OFF = "sump_off"
    TRAY_OFF = "tray_off"
    PICKUP_OFF = "pickup_off"
    PUMP_OFF = "pump_off"
    FRONT_COVER_OFF = "front_cover_off"
    PUMP_COVER_OFF = "pump_cover_off"
    PUMP_RELIEF_OUT = "pump_relief_out"
    CAP_OFF = "cap_off"
    VALLEY_OPEN = "valley_open"
    PLUGS_OUT = "plugs_out"
    FLYWHEEL_OFF = "flywheel_off"
    CRANK_OUT = "crank_out"
    CAM_OUT = "cam_out"


@dataclass(frozen=True, slots=True, eq=False)
class Source:
    """Where a statement was read, or the mark that it was not."""

    key: str
    title: str
    trust: str = ""

    def __str__(self) -> str:
        return self.title


@dataclass(frozen=True, slots=True, eq=False)
class Finding:
    """Something a person can know, see, hear, smell, read or measure.

    ``says`` completes "it was found: …", ``denies`` the opposite; ``asks`` is the question
    put to a person; ``background`` is how often it is there without any cause of the book.
    """

    id: str
    station: Station
    says: str
    asks: str
    source: Source
    denies: str = ""
    kind: Kind = Kind.SEEN
    stage: Stage = Stage.TOLD
    normal: str = ""
    why: str = ""
    background: Background = RARE
    also: tuple[str, ...] = ()

    def __repr__(self) -> str:
        return f"<finding {self.id}>"

    def stated(self, there: bool) -> str:
        """The sentence for it being there, or for its not being there."""
        return self.says if there else self.denies or f"not: {self.says}"


@dataclass(frozen=True, slots=True, eq=False)
class Measure:
    """A quantity a person can enter with a unit; ``dimension`` names the table in ``units``.

    ``plausible`` bounds what can be real, in the dimension's SI unit: outside is an error.
    """

    id: str
    station: Station
    says: str
    asks: str
    dimension: str
    plausible: tuple[float, float]
    source: Source
    spread: float = 0.0  #: usual measuring error, one standard deviation, SI
    also: tuple[str, ...] = ()

    def __repr__(self) -> str:
        return f"<measure {self.id}>"


@dataclass(frozen=True, slots=True, eq=False)
class Limit:
    """A figure the engine maker prints; ``typical`` is used, and marked, where none is given."""

    id: str
    says: str
    dimension: str
    typical: float
    source: Source

    def __repr__(self) -> str:
        return f"<limit {self.id}>"


@dataclass(frozen=True, slots=True, eq=False)
class Condition:
    """A hidden hydraulic or damage state between causes and findings."""

    id: str
    station: Station
    says: str
    mechanism: str
    source: Source
    damage: bool = False

    def __repr__(self) -> str:
        return f"<condition {self.id}>"


@dataclass(frozen=True, slots=True, eq=False)
class Cause:
    """A root cause: what went wrong first.

    ``shifts`` are five marks for high mileage, freshly rebuilt, oil just changed, stood
    long, raced or heeled: ``++ + 0 - --``.
    """

    id: str
    station: Station
    says: str
    mechanism: str
    rate: Rate
    shifts: str
    remedy: str
    source: Source
    follows: str = ""  #: what it leads to if left
    no_fault: bool = False
    also: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        marks = self.shifts.split()
        if len(marks) != 5 or not {*MARKS, "0"}.issuperset(marks):
            raise ValueError(f"{self.id}: shifts '{self.shifts}', not five of ++ + 0 - --")

    def __repr__(self) -> str:
        return f"<cause {self.id}>"


@dataclass(frozen=True, slots=True, eq=False)
class Inspection:
    """One check: what to open, what to do, what it can show and what it spoils."""

    id: str
    station: Station
    says: str
    steps: tuple[str, ...]
    minutes: float
    access: Access
    reveals: tuple[Finding, ...]
    source: Source
    measures: tuple[Measure, ...] = ()
    tools: tuple[str, ...] = ()
    cautions: tuple[Caution, ...] = ()
    destroys: str = ""
    keep: str = ""  #: evidence to record first
    needs_running: bool = False
    waits_minutes: float = 0.0  #: waiting that is not hands-on
    also: tuple[str, ...] = ()

    def __repr__(self) -> str:
        return f"<inspection {self.id}>"


class Phase(StrEnum):
    """When in the putting together a task comes, in this order."""

    CLEANING = "cleaning"  #: what shed debris has reached
    BEARINGS = "bearings"  #: block, plugs, oilways, crank
    PUMP = "pump"  #: the pump on the bench
    RELIEF = "relief"
    DRIVE = "drive"  #: pump mounted, shaft, distributor
    TRAY = "tray"  #: windage tray and what turns
    SUMP = "sump"  #: pickup, gap, sump on
    PRIMING = "priming"
    FIRST_START = "first start"
    RUN_IN = "run-in"


class Hold(StrEnum):
    """What an open or failed task does to the job."""

    STOP = "stop"  #: nothing further until it passes, or a named person overrides with a reason
    NOTE = "note"  #: may go on with a note


@dataclass(frozen=True, slots=True)
class Band:
    """What one source accepts, SI; None is open at that end."""

    low: float | None
    high: float | None
    source: Source
    says: str = ""  #: for which engine or practice it holds


@dataclass(frozen=True, slots=True, eq=False)
class Task:
    """Something to do, to look at or to measure while the engine goes together.

    Measured where ``dimension`` is set: ``bands`` are what the sources accept, the one used
    first; several that differ are shown side by side and never averaged. The engine's own
    figure in the case, ``limits`` (low, high), goes before them.
    """

    id: str
    phase: Phase
    says: str  #: completes "checked: ..."
    how: tuple[str, ...]
    source: Source
    hold: Hold = Hold.STOP
    dimension: str = ""
    bands: tuple[Band, ...] = ()
    limits: tuple[Limit | None, Limit | None] = (None, None)
    spread: float = 0.0  #: usual measuring error of the method, one standard deviation, SI
    remedy: str = ""  #: what to do where it fails
    why: str = ""
    guards: tuple[Cause, ...] = ()
    only_with: tuple[Finding, ...] = ()  #: any of these features: else it does not apply
    not_with: tuple[Finding, ...] = ()  #: none of these features
    after: tuple[Finding, ...] = ()  #: called for where any of these was found
    covers: tuple[Task, ...] = ()  #: tasks that need not be done where this one is called for
    cautions: tuple[Caution, ...] = ()
    also: tuple[str, ...] = ()

    def __repr__(self) -> str:
        return f"<task {self.id}>"


@dataclass(frozen=True, slots=True, eq=False)
class Layout:
    """How an engine is arranged: what it has, what it lacks."""

    id: str
    says: str
    has: tuple[Finding, ...]
    lacks: tuple[Finding, ...]
    source: Source
    also: tuple[str, ...] = ()

    def __repr__(self) -> str:
        return f"<layout {self.id}>"


@dataclass(frozen=True, slots=True)
class Reading:
    """One look at a gauge, in SI: rev/min, kelvin, pascal; ``gauge`` is 'panel' or 'direct'."""

    rpm: float
    oil_temperature: float | None
    pressure: float
    gauge: str = "panel"
    tap: str = "gallery"
    error: float | None = None  #: the gauge's own error, Pa, where it is known
    when: date | None = None  #: the day it was taken, where it is known


def all_in(module: str, kind: type[T]) -> tuple[T, ...]:
    """Every word of a kind that a module itself defines, in the order written there."""
    return tuple(v for v in vars(sys.modules[module]).values() if isinstance(v, kind))
