"""Which limits hold at a gauge reading, and how the mended engine runs by its own readings."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from diagnose.case.case import Case, FindingRecord
from diagnose.case.usual import with_usual
from knowledge.engines.features import STATIONARY
from knowledge.limits import Limit
from knowledge.model import Kind, Reading, State
from knowledge.pressure.gauge import hot_share, idle_share, speed_share
from knowledge.pressure.quantities import (
    HOT_IDLE_PRESSURE,
    HOT_RUNNING_PRESSURE,
    STOP_IDLE_PRESSURE,
    STOP_RUNNING_PRESSURE,
)
from knowledge.reassembly.first_start import PRESSURE_AT_HOT_IDLE
from knowledge.stations.bearings import findings_measured, findings_shell_map, findings_shells

FAST = 2000.0  #: rpm: from here on the limit of the running engine holds
#: what they show is seen only with bearing caps off
_CAPS_OFF = (
    findings_shells.LIFT_ONE_CAP,
    findings_shell_map.MAP_ALL_SHELLS,
    findings_shell_map.COMPARE_SHELLS_AND_HOLES,
    findings_measured.MEASURE_JOURNALS_AND_SEATS,
    findings_measured.LAY_A_BAR_IN_THE_MAINS,
)
AS_SOUND = 0.9  #: share of the pressure of the sound engine that counts as the same (judgement)
LIKELY = 0.5  #: least probability that a reading in words was taken hot, at idle, at speed


@dataclass(frozen=True, slots=True)
class Mended:
    """What the mended engine shows; of each limit the last reading counts."""

    hot_idle: float | None  #: pressure at hot idle [Pa]; None: not read
    broken: tuple[Limit, ...]  #: limits that a reading breaks

    @property
    def proved(self) -> bool:
        """Whether hot idle was read, and no reading breaks a limit."""
        return self.hot_idle is not None and not self.broken


def limits_at(reading: Reading, case: Case) -> Iterator[Limit]:
    """Yield the least pressures that hold at a reading's speed and heat, the gravest first."""
    if reading.at_least:
        return  # "over 5 psi" breaks no limit and keeps none
    hot = hot_share(reading) >= LIKELY
    if hot and idle_share(reading, case.idle_speed) >= LIKELY:
        yield STOP_IDLE_PRESSURE
        yield HOT_IDLE_PRESSURE
    if (hot or reading.oil_temperature is None) and speed_share(reading, FAST) >= LIKELY:
        yield STOP_RUNNING_PRESSURE
        if HOT_RUNNING_PRESSURE in case.limits:
            yield HOT_RUNNING_PRESSURE


def mended(case: Case) -> Mended:
    """Hold the readings of the first start, and the value signed off, against the limits."""
    hot_idle, broken = None, {}
    for worked in case.task_records:
        if worked.task is PRESSURE_AT_HOT_IDLE and worked.value is not None:
            hot_idle = worked.value
            broken[HOT_IDLE_PRESSURE] = hot_idle < case.limit(HOT_IDLE_PRESSURE)
    for read in case.start_readings:
        for limit in limits_at(read.reading, case):
            broken[limit] = read.reading.pressure < case.limit(limit)
            if limit is HOT_IDLE_PRESSURE:
                hot_idle = read.reading.pressure
    return Mended(hot_idle, tuple(limit for limit, is_broken in broken.items() if is_broken))


def reads_as_when_sound(case: Case) -> bool:
    """Whether the mended engine shows what it showed when it was sound, within a tenth.

    At each speed and heat of which both are known; at least at one.
    """
    before, after = ([r.reading for r in every] for every in (case.readings, case.start_readings))
    known = with_usual([*before, *after], [b.reading for b in case.baseline])[len(before) :]
    both = [r for r in known if r.usual]
    return bool(both) and all(r.pressure >= AS_SOUND * (r.usual or 0.0) for r in both)


def _is_trouble(record: FindingRecord) -> bool:
    there = record.observation is not None and record.observation.state is State.PRESENT
    old_part = any(record.finding in check.reveals for check in _CAPS_OFF)
    return there and not old_part and record.finding.kind is not Kind.LAYOUT


def _is_set_as_when_sound(case: Case) -> bool:
    """Whether a stationary engine, which seldom idles, shows at its speed what it did when sound."""
    return case.has(STATIONARY) and reads_as_when_sound(case)


def works_again(case: Case) -> bool:
    """Whether the mended engine showed good pressure, and no trouble was reported after that.

    What was not there is no trouble, nor what was seen of the bearings: an engine that runs is not
    open, so that is of the old parts.
    """
    shows = mended(case)
    if not shows.proved and (shows.broken or not _is_set_as_when_sound(case)):
        return False
    shown = [w.entry.no for w in case.task_records if w.task is PRESSURE_AT_HOT_IDLE]
    shown += [r.entry.no for r in case.start_readings]
    end = case.closed.entry.no if case.closed else max(shown)
    later = [r.entry.no for r in case.readings]
    later += [f.entry.no for f in case.finding_records if _is_trouble(f)]
    later += [b.entry.no for b in case.behaviours]
    return all(number < end for number in later)
