"""The further gauge reading that would narrow most what is asked of plausible engines.

The engines agree with every reading there is; a further one narrows what varies with it from engine
to engine.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from diagnose.case.case import Case
from diagnose.circuit.as_read import MISFIT, AsRead, as_read
from diagnose.circuit.band import Band
from diagnose.circuit.calibration import sound_points
from diagnose.circuit.deviations import deviations, sound_engines
from diagnose.circuit.engine_model import Point, shown
from diagnose.circuit.operating_points import (
    COLD_SPEED,
    COLD_START,
    CRUISE,
    fixed_speed,
    hot_of,
    latest_readings,
    points_of,
)
from diagnose.circuit.pressure_law import CANDIDATE_ERROR
from diagnose.circuit.unlisted_loss import KINDS
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.ranges import FloatArray
from knowledge.engines.features import DIESEL
from knowledge.model import State
from knowledge.pressure.gauge import state_of, states_agree
from knowledge.units import PSI

ENGINES, SEED = 48, 11
WARM = 333.15  #: K: where a further reading may be taken, beside hot and cold
PETROL_SPEEDS, DIESEL_SPEEDS = (1500.0, CRUISE, 3500.0), (1500.0, 2000.0, CRUISE)  #: rpm, and idle
LEAST_SHARE = (
    0.2  #: of the variance that a reading must take; half of it is chance with few engines
)
LEAST_GAIN = 1.0 * PSI  #: that the range must become narrower on each side


@dataclass(frozen=True, slots=True, kw_only=True)
class WorthReading:
    """A further reading, and how much it would narrow one of the pressures asked about."""

    rpm: float
    temperature: float  #: K
    sound: bool  #: what it showed when it was sound, not what it shows now
    asked: int  #: place of the pressure that it narrows most
    takes: float  #: share of that pressure's variance, 0 to 1
    half: float  #: of the range of nine engines in ten of that pressure, as known now [Pa]

    def narrowed(self, half: float) -> float:
        """Return what is left of half a range [Pa] once it is read."""
        return half * float((1.0 - self.takes) ** 0.5)


@dataclass(frozen=True, slots=True, kw_only=True)
class Further:
    """The reading worth most now, and what is worth most of when the engine was sound; or None."""

    now: WorthReading | None
    sound: WorthReading | None

    def best(self, *, may_run: bool) -> WorthReading | None:
        """What can be read goes before what must be remembered; ``may_run``: it can be read."""
        return self.now if self.now is not None and may_run else self.sound


@dataclass(frozen=True, slots=True, kw_only=True)
class WithinReach:
    """States that a gauge can be read at, and what each plausible engine shows there.

    Of now and of when the engine was sound: pressures [Pa], shape (engines, states).
    """

    now: tuple[Point, ...]
    sound: tuple[Point, ...]
    shows_now: FloatArray
    shows_sound: FloatArray

    def further(self, asked: FloatArray) -> Further:
        """Return the readings that take most of the variance of what is asked.

        ``asked``: pressures of each engine [Pa], shape (engines, pressures). All are taken as
        jointly normal.
        """
        sound = _best(self.sound, self.shows_sound, asked)
        return Further(
            now=_best(self.now, self.shows_now, asked),
            sound=replace(sound, sound=True) if sound else None,
        )


def within_reach(case: Case, state: AsRead) -> WithinReach:
    """Return the states worth a look; none where the engines do not agree with the readings.

    ``state``: engines as they are now. No state is among them that was read already, or is known
    from when the engine was sound.
    """
    now = _candidates(case, [state_of(r.reading) for r in latest_readings(case)])
    known = sound_points(case, [r.reading for r in case.readings])
    sound = _candidates(case, [(p.rpm, p.temperature) for p in known])
    if not state.fits:
        now = sound = []
    return WithinReach(
        now=tuple(now),
        sound=tuple(sound),
        shows_now=shown(state.engine(), now),
        shows_sound=shown(state.sound, sound),
    )


def engines_as_read(case: Case) -> AsRead:
    """Return plausible engines of a case as they are now. Raises UsageError without a circuit."""
    rng = np.random.default_rng(SEED)
    sound = sound_engines(case, ENGINES, rng)
    return as_read(case, sound, deviations(case, ENGINES, rng), rng)


def further_for_missing(case: Case, state: AsRead) -> Further:
    """Return the readings that would settle most how much is missing at hot idle.

    Where hot idle was not read, those that would settle what the gauge shows there.
    """
    idle = points_of(case)[0]

    def at_idle(closed: Sequence[str]) -> FloatArray:
        pressure = solve(state.engine(closed=closed), idle.rpm, idle.temperature).gallery_pressure
        return np.asarray(pressure).reshape(-1, 1)

    reach = within_reach(case, state)
    if idle.read is None or state.loss is None:
        return reach.further(at_idle(()))
    return reach.further(at_idle(tuple(KINDS)) - at_idle(()))


def _candidates(case: Case, taken: Sequence[tuple[float, float]]) -> list[Point]:
    """States that can be read: idle and three speeds, hot, warm and cold, but for those read."""
    idle, hot, fixed = case.idle_speed, hot_of(case), fixed_speed(case)
    diesel = case.known_features.get(DIESEL) is State.PRESENT
    speeds = (idle, *(n for n in (DIESEL_SPEEDS if diesel else PETROL_SPEEDS) if n > 1.2 * idle))
    if fixed is not None:
        speeds = (fixed,)
    every = [
        Point(rpm, heat, 0.0, False)
        for heat in (hot, WARM, COLD_START)
        for rpm in speeds
        if heat > COLD_START or rpm <= COLD_SPEED or fixed is not None
    ]
    return [p for p in every if not any(states_agree((p.rpm, p.temperature), one) for one in taken)]


def _best(
    points: Sequence[Point], would_show: FloatArray, asked: FloatArray
) -> WorthReading | None:
    """Return the point whose pressure takes most of the variance of ``asked``, if it is enough.

    ``would_show``: pressure of each engine at each point [Pa], shape (engines, points).
    """
    if not points:
        return None
    asked, would_show = (np.broadcast_to(a, (len(a), a.shape[1])) for a in (asked, would_show))
    both = np.hstack([would_show, asked])
    count = len(np.unique(both, axis=0))
    variance = asked.var(0)
    if count < 4 or not variance.any():
        return None
    error = np.hypot(CANDIDATE_ERROR * PSI, MISFIT * would_show.mean(0))
    off, away = would_show - would_show.mean(0), asked - asked.mean(0)
    shared = (off.T @ away / len(off)) ** 2 / (would_show.var(0) + error**2)[:, None]
    shared = np.divide(shared, variance, out=np.zeros_like(shared), where=variance > 0)
    takes = 1.0 - (1.0 - shared) * (count - 1) / (count - 2)  # so few engines agree by chance too
    at = int((takes * variance).sum(1).argmax())
    of = int((takes[at] * variance).argmax())
    share = float(takes[at, of])
    band = Band.of(asked[:, of])
    found = WorthReading(
        rpm=points[at].rpm,
        temperature=points[at].temperature,
        sound=False,
        asked=of,
        takes=share,
        half=0.5 * (band.high - band.low),
    )
    gain = found.half - found.narrowed(found.half) if share > 0 else 0.0
    return found if share >= LEAST_SHARE and gain >= LEAST_GAIN else None
