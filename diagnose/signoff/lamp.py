"""Engines with a lamp only: what shows that the repair holds where no gauge is there."""

from __future__ import annotations

from collections.abc import Collection

from diagnose.case.case import Case
from knowledge.access.precedence_model import ENDS_RUNNING
from knowledge.engines.features import LAMP_ONLY
from knowledge.model import Cause, State, Station
from knowledge.reassembly.by_lamp import INSTEAD, OF_A_GAUGE, OF_A_LAMP, OF_ITS_CAUSE
from knowledge.reassembly.scope import SERVICED
from knowledge.work import Access, Task


def has_a_lamp_only(case: Case) -> bool:
    """Whether the engine has a warning lamp and no gauge."""
    return case.known_features.get(LAMP_ONLY) is State.PRESENT


def was_never_read(case: Case) -> bool:
    """Whether the engine has a lamp only and nobody read a pressure on another gauge."""
    return has_a_lamp_only(case) and not (case.readings or case.start_readings)


def is_by_lamp(case: Case, opened: Collection[Access] = ()) -> bool:
    """Whether the lamp is all that will show the repair: no gauge was ever read, nothing opened.

    An engine that was open further than for a service is started on a test gauge.
    """
    return was_never_read(case) and not (frozenset(opened) & (ENDS_RUNNING - SERVICED))


def is_out_of_place(
    task: Task, case: Case, opened: Collection[Access], causes: Collection[Cause]
) -> bool:
    """Whether a task is one of a gauge on an engine that goes by its lamp, or the other way round.

    So is what proves another repair. The lamp is proved wherever its own repair calls for it.
    """
    guarded = [cause for cause in causes if cause in task.guards]
    if task in OF_ITS_CAUSE:
        return not guarded
    has_lamp = has_a_lamp_only(case)
    if task in OF_A_GAUGE:
        return has_lamp
    by_lamp = is_by_lamp(case, opened)
    if task in OF_A_LAMP:
        return not (by_lamp or (has_lamp and any(c.station is Station.INSTRUMENT for c in guarded)))
    return by_lamp and task in INSTEAD and not any(w.task is task for w in case.task_records)
