"""Whether only lamp, gauge, sender or wire was wrong, and a trusted gauge shows sound pressure."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.case.case import Case
from diagnose.case.mended import FAST, LIKELY, limits_at
from diagnose.planning.choosing import SURE
from diagnose.reasoning.case_inference import CaseInference, proved_in
from knowledge.model import Cause, Gauge, Reading, Station
from knowledge.pressure.gauge import cold_share, idle_share, speed_share
from knowledge.pressure.quantities import HOT_IDLE_PRESSURE, STOP_RUNNING_PRESSURE


def instrument_only(known: CaseInference) -> tuple[Cause, ...]:
    """The causes that made the instrument wrong; none where a true fault is behind it too.

    A trusted gauge must have shown enough at idle, the oil not cold, and broken no limit.
    """
    case, first = known.case, known.ranking[0]
    causes = case.closed.causes if case.closed else (first.cause,) * (first.probability >= SURE)
    if not causes or any(c.station is not Station.INSTRUMENT for c in causes):
        return ()
    if any(c.id not in known.harmless for c in causes) or not any(_at_idle(case)):
        return ()
    return () if _is_broken(case) or not all(_at_idle(case)) else causes


def lamp_is_wrong(known: CaseInference) -> bool:
    """Whether the lamp is known to be wrong: its fault was found, and the pressure is sound.

    A trusted gauge showed so at idle and at speed.
    """
    found = proved_in(known)
    if not found or any(fault.station is not Station.INSTRUMENT for fault in found):
        return False
    if not instrument_only(known):
        return False
    limit = known.case.limit(STOP_RUNNING_PRESSURE)
    return any(
        speed_share(r, FAST) >= LIKELY and r.pressure >= limit for r in sound_readings(known.case)
    )


def sound_readings(case: Case) -> tuple[Reading, ...]:
    """What a trusted gauge showed, before the repair and after it."""
    every = (r.reading for r in (*case.readings, *case.start_readings))
    return tuple(r for r in every if r.gauge is Gauge.DIRECT)


def _is_broken(case: Case) -> bool:
    return any(
        r.pressure < case.limit(limit) for r in sound_readings(case) for limit in limits_at(r, case)
    )


def _at_idle(case: Case) -> Iterator[bool]:
    """Whether each idle reading of it shows enough."""
    for one in sound_readings(case):
        if idle_share(one, case.idle_speed) >= LIKELY and cold_share(one) < LIKELY:
            yield one.pressure >= case.limit(HOT_IDLE_PRESSURE)
