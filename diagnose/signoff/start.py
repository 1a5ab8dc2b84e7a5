"""First start: predicted pressures of the repaired engine, compared with those read.

The repaired engine is the sound one of the case with the values really fitted, what was
deliberately left, and the changes asked for. Loads the physics.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property, reduce

import numpy as np

from diagnose.case.case import Case, FindingRecord, GaugeReading
from diagnose.case.schema import FindingEntry
from diagnose.circuit.band import Band
from diagnose.circuit.calibration import sound_points
from diagnose.circuit.deviations import deviations, evenly_drawn, sound_engines
from diagnose.circuit.forecast import ENGINES, SEED, speeds_of
from diagnose.circuit.operating_points import COLD_START, hot_of
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS
from diagnose.circuit.settings import Setting
from diagnose.diagnosis import Diagnosis
from diagnose.errors import UsageError, nearest
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.ranges import FloatArray
from diagnose.inference.chaining import Observation
from knowledge.book import Book
from knowledge.history.findings import FRESHLY_REBUILT
from knowledge.model import Stage, State
from knowledge.pressure.gauge import RUNNING, possible, spread_of
from knowledge.pressure.quantities import (
    STOP_IDLE_PRESSURE,
    STOP_RUNNING_PRESSURE,
)
from knowledge.pressure.refuted import FAST

WARM = 318.15  #: K: on the way there
SHOWN_SPEEDS = 4
IDLING = 1.3  #: times the idle speed up to which an engine idles
#: tasks whose measured value goes into the engine as it is now
FITTED = frozenset(
    {
        "main_clearance_fitted",
        "rod_clearance_fitted",
        "cam_clearance_fitted",
        "gear_end_clearance_fitted",
        "gear_side_clearance_fitted",
    }
)


@dataclass(frozen=True, slots=True)
class Expected:
    """What the gauge should show at one speed and heat, Pa."""

    rpm: float
    temperature: float
    pressure: Band


@dataclass(frozen=True, slots=True)
class Compared:
    """A reading of the first start beside what was predicted."""

    read: GaugeReading
    predicted: Band
    below: bool
    above: bool
    stop: str  #: why the engine must be stopped; empty where it need not


@dataclass(frozen=True)
class FirstStart:
    """Prediction and comparison."""

    case: Case
    book: Book
    engine: Engine  #: plausible repaired engines
    fitted: tuple[str, ...]  #: knobs set by measured values of tasks
    left: tuple[str, ...]  #: findings that were deliberately not put right

    @property
    def sound_known(self) -> bool:
        """Whether a pressure is known that this engine showed when it was sound."""
        return bool(sound_points(self.case, [r.reading for r in self.case.readings]))

    def pressures(self, rpm: float, temperature: float) -> FloatArray:
        """Gallery pressure of each plausible engine, Pa."""
        return np.asarray(solve(self.engine, rpm, temperature).gallery_pressure).reshape(-1)

    @cached_property
    def expected(self) -> tuple[Expected, ...]:
        """Cold, warming and hot, at idle and a few speeds."""
        speeds = speeds_of(self.case)[:SHOWN_SPEEDS]
        return tuple(
            Expected(float(rpm), heat, Band.of(self.pressures(float(rpm), heat)))
            for heat in (COLD_START, WARM, hot_of(self.case))
            for rpm in speeds
        )

    @cached_property
    def compared(self) -> tuple[Compared, ...]:
        """Each reading of the first start that has a temperature or is taken as hot."""
        return tuple(self._compared(read) for read in self.case.start_readings)

    def _compared(self, read: GaugeReading) -> Compared:
        reading = read.reading
        error = spread_of(reading)
        plain = np.concatenate(
            [
                self.pressures(max(r.rpm, RUNNING), r.oil_temperature or hot_of(self.case))
                for r in possible(reading)
            ]
        )
        wide = Band.of(
            np.maximum(plain + error * evenly_drawn(len(plain), _rng()).reshape(-1), 0.0)
        )
        return Compared(
            read,
            wide,
            reading.pressure < wide.low and not reading.at_least,
            reading.pressure > wide.high and not reading.at_most,
            stopped_by(self.case, read),
        )

    @property
    def deviates(self) -> bool:
        """Whether a reading lies outside what was predicted, or below a stop limit."""
        return any(c.below or c.above or c.stop for c in self.compared)

    @cached_property
    def reopened(self) -> Diagnosis | None:
        """A new diagnosis from these readings alone.

        None where all is as predicted, or only above it: causes of too little explain no more.
        """
        if not any(c.below or c.stop for c in self.compared):
            return None
        entry = FindingEntry(no=1_000_000, what=FRESHLY_REBUILT.id, state="present")
        built = FindingRecord(entry, FRESHLY_REBUILT, Observation(State.PRESENT), Stage.KNOWN)
        case = replace(
            self.case, finding_records=(built,), measurements=(), readings=self.case.start_readings
        )
        return Diagnosis(self.book, case)


def stopped_by(case: Case, read: GaugeReading) -> str:
    """The stop limit that a reading breaks, in words; empty where it breaks none."""
    reading = read.reading
    limit = case.limit
    idling = reading.rpm <= IDLING * case.idle_speed
    if idling and reading.pressure < limit(STOP_IDLE_PRESSURE):
        return STOP_IDLE_PRESSURE.says
    if reading.rpm >= FAST and reading.pressure < limit(STOP_RUNNING_PRESSURE):
        return STOP_RUNNING_PRESSURE.says
    return ""


def _rng() -> np.random.Generator:
    return np.random.default_rng(SEED)


def predicted_start(
    case: Case, book: Book, settings: Sequence[Setting] = (), left: Sequence[str] = ()
) -> FirstStart | None:
    """The same, or None where there is no circuit; then nothing may be asked of it.

    Raises UsageError where ``settings`` or ``left`` ask for a circuit that there is not.
    """
    if case.profile is None and not (settings or left):
        return None
    return first_start(case, book, settings, left)


def first_start(
    case: Case, book: Book, settings: Sequence[Setting] = (), left: Sequence[str] = ()
) -> FirstStart:
    """The repaired engine. Raises UsageError where there is no circuit, or ``left`` names nothing."""
    rng = _rng()
    engine = sound_engines(case, ENGINES, rng)
    found = {d.id: d for d in deviations(case, ENGINES, rng)}
    for name in left:
        if name not in found:
            raise UsageError(f"--left: no finding '{name}' of this case.{nearest(name, found)}")
    engine = reduce(lambda e, name: found[name].apply(e), left, engine)
    fitted = []
    for worked in case.task_records:
        quantity = worked.task.measures if worked.task.id in FITTED else None
        if quantity is not None and worked.value is not None:
            parameter = CIRCUIT_PARAMETERS[quantity.id]
            drawn = worked.value + parameter.spread * evenly_drawn(ENGINES, rng)
            engine = parameter.apply(engine, np.clip(drawn, *parameter.plausible))
            fitted.append(parameter.id)
    engine = reduce(lambda e, s: s.applied_to(e), settings, engine)
    return FirstStart(case, book, engine, tuple(dict.fromkeys(fitted)), tuple(left))
