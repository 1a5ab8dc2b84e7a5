"""Shapes of work: cautions, access, checks, tasks, parts, layouts.

Imported by all of ``knowledge`` and ``diagnose``; imports ``model`` only.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from enum import StrEnum

from knowledge.limits import Limit
from knowledge.model import Cause, Finding, Measure, Quantity, Source, Station


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
    IGNITION = "ignition"


class Access(StrEnum):
    """What must be open before a check can be done; ``knowledge.access`` holds the tree."""

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


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
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
    in_place: bool = False  #: reads the engine where it works, its oil in and its wires on
    takes_readings: bool = False  #: speed, oil temperature and pressure are read in it
    waits_minutes: float = 0.0  #: waiting that is not hands-on
    only_with: tuple[Finding, ...] = ()  #: features: made only where one is known to be there
    #: steps that come first on an engine with a feature
    steps_with: tuple[tuple[Finding, str], ...] = ()
    also: tuple[str, ...] = ()

    def steps_on(self, has: Callable[[Finding], bool]) -> tuple[str, ...]:
        """The steps on an engine; ``has``: whether it has a feature."""
        return (*(says for one, says in self.steps_with if has(one)), *self.steps)

    def __repr__(self) -> str:
        return f"<inspection {self.id}>"


class Phase(StrEnum):
    """When in the reassembly a task comes, in this order."""

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
    LATER = "later"  #: after hours of running, the job closed or not


class Hold(StrEnum):
    """What an open or failed task does to the job."""

    STOP = "stop"  #: nothing further until it passes, or a named person overrides with a reason
    NOTE = "note"  #: may go on with a note


@dataclass(frozen=True, slots=True, kw_only=True)
class SizeRange:
    """The sizes of a part, SI, for which a figure holds: above ``above``, up to ``up_to``."""

    part: Quantity
    above: float
    up_to: float

    def holds(self, sizes: Mapping[str, float]) -> bool | None:
        """Whether the part is of such a size; None where ``sizes``, by id, does not have it."""
        size = sizes.get(self.part.id)
        return None if size is None else self.above < size <= self.up_to


@dataclass(frozen=True, slots=True, kw_only=True)
class Band:
    """What one source accepts, SI; None is open at that end.

    It decides for engines with every feature of ``only_with`` and none of ``not_with``, and with
    the part of ``of_size`` of such a size or of none that is known; for others it is only shown.
    So it is for all where it was printed for another speed or use, or for one engine (``of_one``).
    """

    low: float | None
    high: float | None
    source: Source
    says: str = ""  #: for which engine or practice it holds
    only_with: tuple[Finding, ...] = ()
    not_with: tuple[Finding, ...] = ()
    shown_only: bool = False
    of_one: bool = False  #: printed for one engine, whose kind nobody knows by its features
    of_size: SizeRange | None = None

    def fits(self, has: Callable[[Finding], bool]) -> bool:
        """Whether it is for an engine of which ``has`` tells the features known to be there."""
        if self.shown_only or self.of_one or any(has(f) for f in self.not_with):
            return False
        return all(has(f) for f in self.only_with)


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class Task:
    """Something to do, look at or measure during reassembly.

    Measured where ``dimension`` is set, by ``measures`` where the quantity is known by name
    (dimension and error are then its own), else here. ``bands`` are what the sources accept, shown
    side by side and never averaged: the first for the engine's kind decides, else the first for
    no kind. The engine's own figure in the case, ``limits`` (low, high), takes precedence.
    """

    id: str
    phase: Phase
    says: str  #: completes "checked: ..."
    how: tuple[str, ...]
    source: Source
    hold: Hold = Hold.STOP
    holds_if_failed: bool = False  #: it may be left out with a note; once it has failed it stops
    measures: Quantity | None = None
    dimension: str = ""
    value: str = "a value"  #: what its figure is, where that is not plain: "a difference"
    like: tuple[str, ...] = ()  #: figures as people write them, where not those of its dimension
    bands: tuple[Band, ...] = ()
    limits: tuple[Limit | None, Limit | None] = (None, None)
    spread: float = 0.0  #: usual measuring error of the method, one standard deviation, SI
    remedy: str = ""  #: what to do where it fails
    why: str = ""
    guards: tuple[Cause, ...] = ()
    only_with: tuple[Finding, ...] = ()  #: any of these features: else it does not apply
    not_with: tuple[Finding, ...] = ()  #: none of these features
    after: tuple[Finding, ...] = ()  #: called for where any of these was found
    due: float = 0.0  #: of a later look: s of running after the first start
    reached: str = ""  #: of a cleaning task: the place debris has reached where it is called for
    opened: tuple[Access, ...] = ()  #: called for by its phase only where one of these was
    covers: tuple[Task, ...] = ()  #: tasks that need not be done where this one is called for
    cautions: tuple[Caution, ...] = ()
    also: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        if self.measures is None:
            return
        if self.dimension or self.spread:
            raise ValueError(f"{self.id}: dimension and spread are those of its quantity")
        object.__setattr__(self, "dimension", self.measures.dimension)
        object.__setattr__(self, "spread", self.measures.spread)

    def __repr__(self) -> str:
        return f"<task {self.id}>"


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
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


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class Part:
    """A part or consumable to have at hand for a repair; names no maker."""

    id: str
    says: str
    quantity: str
    source: Source
    measure_first: str = ""  #: what to measure or read before ordering
    for_causes: tuple[Cause, ...] = ()  #: renewed where one of these is the confirmed cause
    for_places: tuple[Access, ...] = ()  #: needed to close these places again
    only_with: tuple[Finding, ...] = ()
    not_with: tuple[Finding, ...] = ()
    always: bool = False  #: for every repair that opened the oil side
    note: str = ""
    also: tuple[str, ...] = ()  #: everyday words

    def __repr__(self) -> str:
        return f"<part {self.id}>"
