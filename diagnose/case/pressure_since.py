"""Whether a trusted gauge showed enough pressure after the fall that means stop.

Entries are numbered in the order in which they were reported.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from diagnose.case.case import Case, GaugeReading
from knowledge.engines.features import DIESEL
from knowledge.model import Gauge, Reading, State
from knowledge.pressure import behaviour, course, direct_gauge, patterns, quantities
from knowledge.pressure.gauge import at_pump, at_speed, is_cold, runs, sure_above
from knowledge.pressure.refuted import speed_is_said
from knowledge.reports.words import Circumstance, Shows

#: findings after which nobody runs the engine until a trusted gauge shows pressure
FALLS = frozenset(
    {
        patterns.GAUGE_READS_ZERO,
        patterns.FELL_SUDDENLY,
        patterns.LAMP_COMES_ON,
        course.PRESSURE_LOST,
        behaviour.NONE_FROM_FIRST_START,
        direct_gauge.DIRECT_GAUGE_LOW,
        direct_gauge.DIRECT_GAUGE_ZERO,
    }
)
#: the same as behaviour
FALLEN = frozenset({Shows.NONE, Shows.LOST, Shows.FALLING, Shows.LOW, Shows.LAMP})
_FASTER_THAN_IDLE = frozenset({Circumstance.SPEED, Circumstance.OFF_IDLE, Circumstance.LOAD})
CLEARLY = 0.95  #: how surely the trusted gauge must show more than the stop limit (judgement)
FAST = 2000.0  #: rpm: from here on the stop limit for speed holds


FASTER = 1.5  #: of the speed of a fall: a faster look is of another condition (judgement)


@dataclass(frozen=True, slots=True)
class Fall:
    """A report of pressure that is low or gone: its entry, and the speed where it was said."""

    number: int
    day: date | None
    rpm: float | None = None


def shown_since(case: Case) -> bool:
    """Whether a trusted gauge, and no other reading of it, showed more than every stop limit.

    It counts only after the last report of a fall, with oil that is not known to be cold, and no
    faster than the fall was seen: at speed there is pressure that is gone at idle. One on the
    trusted gauge itself is never taken back.
    """
    if any(
        b.behaviour.gauge is Gauge.DIRECT and b.behaviour.shows in FALLEN for b in case.behaviours
    ):
        return False
    trusted = [r for r in case.readings if _is_trusted(r.reading)]
    if not all(_is_enough(r.reading, case) for r in trusted):
        return False
    reported = list(_falls(case))
    return bool(reported) and any(
        not is_cold(r.reading) and all(_came_after(r, f) and _as_slow(r, f) for f in reported)
        for r in trusted
    )


def _is_trusted(reading: Reading) -> bool:
    return reading.gauge is Gauge.DIRECT and runs(reading) and not at_pump(reading)


def _is_enough(reading: Reading, case: Case) -> bool:
    limit = case.limit(
        quantities.STOP_RUNNING_PRESSURE if reading.rpm >= FAST else quantities.STOP_IDLE_PRESSURE
    )
    if case.has(DIESEL) and at_speed(reading):
        limit = max(limit, quantities.DIESEL_AT_SPEED.value)
    return not reading.at_most and sure_above(reading, limit) >= CLEARLY


def _falls(case: Case) -> Iterator[Fall]:
    """Each report of pressure that is low or gone."""
    for seen in case.finding_records:
        there = seen.observation is not None and seen.observation.state is State.PRESENT
        if there and seen.finding in FALLS:
            yield Fall(seen.entry.no, seen.entry.when)
    for report in case.behaviours:
        if report.behaviour.shows in FALLEN:
            idle = Circumstance.IDLE in report.behaviour.during
            rpm = (
                case.idle_speed
                if idle and not report.behaviour.during & _FASTER_THAN_IDLE
                else None
            )
            yield Fall(report.entry.no, report.entry.when, rpm)
    for look in case.readings:
        if look.reading.gauge is Gauge.PANEL and not _is_enough(look.reading, case):
            rpm = look.reading.rpm if _is_said(look.reading) else None
            yield Fall(look.entry.no, look.entry.when, rpm)


def _is_said(reading: Reading) -> bool:
    """Whether a reading was taken at a speed that somebody gave."""
    return runs(reading) and speed_is_said(reading)


def _as_slow(look: GaugeReading, fall: Fall) -> bool:
    """Whether a look was not plainly at a higher speed than the fall."""
    reading = look.reading
    return fall.rpm is None or not _is_said(reading) or reading.rpm <= FASTER * fall.rpm


def _came_after(look: GaugeReading, fall: Fall) -> bool:
    own = look.entry.when
    return look.entry.no > fall.number and (own is None or fall.day is None or own >= fall.day)
