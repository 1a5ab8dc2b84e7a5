"""Tasks of the first start that a saved gauge reading answers: nothing is typed twice."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from diagnose.case.case import Case, GaugeReading, TaskRecord
from diagnose.case.mended import LIKELY
from diagnose.case.schema import WorkEntry
from diagnose.signoff.one_speed import at_speed
from knowledge.model import Gauge
from knowledge.pressure.gauge import NEXT_TO_NOTHING, hot_share, idle_share
from knowledge.reassembly.first_start import (
    FIRST_PRESSURE_TIMED,
    PRESSURE_AT_HOT_IDLE,
    PRESSURE_HOT_AT_2000,
)
from knowledge.reassembly.priming import DIRECT_GAUGE_FITTED
from knowledge.work import Task


def read_already(case: Case, *, was_open: bool) -> dict[Task, TaskRecord]:
    """A record for each task that a reading answers, the last reading first.

    ``was_open``: something was open or primed, so that only readings of the first start after it
    count for the gauge too.
    """
    found = dict(_of_the_start(case))
    direct = [
        r
        for r in (*(() if was_open else case.readings), *case.start_readings)
        if r.reading.gauge is Gauge.DIRECT
    ]
    if direct:
        found[DIRECT_GAUGE_FITTED] = _done(DIRECT_GAUGE_FITTED, direct[-1])
    return found


def _of_the_start(case: Case) -> Iterator[tuple[Task, TaskRecord]]:
    """What the readings of the first start answer."""
    reads = case.start_readings
    moved = [r for r in reads if r.reading.pressure > NEXT_TO_NOTHING]
    if moved:
        yield FIRST_PRESSURE_TIMED, _done(FIRST_PRESSURE_TIMED, moved[0])
    hot = [r for r in reads if hot_share(r.reading) >= LIKELY]
    idle = [r for r in hot if idle_share(r.reading, case.idle_speed) >= LIKELY]
    fast = [r for r in hot if at_speed(r, case)]
    yield from _measured(PRESSURE_AT_HOT_IDLE, idle)
    yield from _measured(PRESSURE_HOT_AT_2000, fast)


def _measured(task: Task, reads: Sequence[GaugeReading]) -> Iterator[tuple[Task, TaskRecord]]:
    if reads:
        last = reads[-1]
        entry = _entry(task, last).model_copy(update={"value": last.entry.pressure})
        yield task, TaskRecord(entry, task, last.reading.pressure)


def _done(task: Task, read: GaugeReading) -> TaskRecord:
    return TaskRecord(_entry(task, read).model_copy(update={"state": "done"}), task)


def _entry(task: Task, read: GaugeReading) -> WorkEntry:
    """An entry that stands for the reading, with its number."""
    entry = read.entry
    return WorkEntry(no=entry.no, what=task.id, when=entry.when, by=entry.by, note=entry.note)
