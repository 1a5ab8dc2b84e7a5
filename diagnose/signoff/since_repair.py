"""Values recorded once the engine went together again: they are those of their sign-off tasks too."""

from __future__ import annotations

from diagnose.case.case import Case, TaskRecord
from diagnose.case.schema import WorkEntry
from knowledge.work import Task


def measured_since(task: Task, case: Case) -> tuple[TaskRecord, ...]:
    """What was measured of a task's quantity after the first work of the repair; the last of each place.

    A value from before is of the worn parts.
    """
    begun = min((w.entry.no for w in case.task_records), default=None)
    if task.measures is None or begun is None:
        return ()
    last = {
        m.entry.where: m
        for m in case.measurements
        if m.measure.quantity is task.measures and m.entry.no > begun
    }
    return tuple(
        TaskRecord(
            WorkEntry(
                no=m.entry.no,
                when=m.entry.when,
                by=m.entry.by,
                note=m.entry.note,
                what=task.id,
                value=m.entry.value,
                where=m.entry.where,
            ),
            task,
            m.value,
        )
        for m in last.values()
    )
