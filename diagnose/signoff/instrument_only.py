"""Whether only lamp, gauge, sender or wire was wrong, and a trusted gauge shows sound pressure.

Imported by ``output``.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from diagnose.case.mended import LIKELY, limits_at
from diagnose.diagnosis import Diagnosis
from diagnose.planning.choosing import SURE
from knowledge.model import Cause, Gauge, Reading, Station
from knowledge.pressure.gauge import cold_share, idle_share
from knowledge.pressure.quantities import HOT_IDLE_PRESSURE


def instrument_only(diagnosis: Diagnosis) -> tuple[Cause, ...]:
    """The causes that made the instrument wrong; none where a true fault is behind it too.

    A trusted gauge must have shown enough at idle, the oil not cold, and broken no limit.
    """
    closed = diagnosis.case.closed
    first = diagnosis.ranking[0]
    causes = closed.causes if closed else (first.cause,) if first.probability >= SURE else ()
    harmless = diagnosis.inference.harmless
    if not causes or any(c.station is not Station.INSTRUMENT for c in causes):
        return ()
    if any(c.id not in harmless for c in causes) or not _is_sound(diagnosis):
        return ()
    return causes


def sound_readings(diagnosis: Diagnosis) -> tuple[Reading, ...]:
    """What a trusted gauge showed, before the repair and after it."""
    case = diagnosis.case
    every = (r.reading for r in (*case.readings, *case.start_readings))
    return tuple(r for r in every if r.gauge is Gauge.DIRECT)


def _is_sound(diagnosis: Diagnosis) -> bool:
    case, read = diagnosis.case, sound_readings(diagnosis)
    broken = any(r.pressure < case.limit(limit) for r in read for limit in limits_at(r, case))
    return not broken and any(_at_idle(read, diagnosis))


def _at_idle(read: Sequence[Reading], diagnosis: Diagnosis) -> Iterator[bool]:
    case = diagnosis.case
    for one in read:
        if idle_share(one, case.idle_speed) >= LIKELY and cold_share(one) < LIKELY:
            yield one.pressure >= case.limit(HOT_IDLE_PRESSURE)
