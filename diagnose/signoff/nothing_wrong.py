"""Whether nothing is wrong with an engine, as far as it was read and looked at."""

from __future__ import annotations

from collections.abc import Iterable

from diagnose.case.case import Case
from diagnose.diagnosis import Diagnosis
from diagnose.signoff.measured import below_rule, reading_bounds
from knowledge.engines.features import STATIONARY
from knowledge.model import Cause, State
from knowledge.pressure.course import LONG_UNCHANGED
from knowledge.pressure.gauge import (
    SAY_SO,
    is_bound,
    is_hot,
    sure_fallen,
    wanted_hot,
)
from knowledge.pressure.patterns_speed import CAPPED_LOW
from knowledge.pressure.quantities import (
    HOT_IDLE_PRESSURE,
    HOT_RUNNING_PRESSURE,
    STOP_RUNNING_PRESSURE,
)
from knowledge.stations.relief.quantities import USUAL_RELIEF_SETTING

READ = frozenset({HOT_IDLE_PRESSURE, STOP_RUNNING_PRESSURE})  #: limits that were put to the test
LEAST_OF_A_SET = 1000.0  #: rpm: slower is an idle
SUSPECT = 0.05  #: a fault as likely is looked for, however good the readings are (judgement)
SUSPECT_OF_OLD = 0.2  #: the same where it has read so for years (judgement)


def nothing_wrong(diagnosis: Diagnosis) -> bool:
    """Whether hot idle and speed were read, every reading keeps its limits, and nothing points to a fault."""
    case = diagnosis.case
    if diagnosis.alarms or diagnosis.found_faults or diagnosis.contradictions:
        return False
    if case.closed is not None or case.start_readings:
        return False
    first = diagnosis.ranking[0]
    always = any(
        r.finding is LONG_UNCHANGED and r.observation and r.observation.state is State.PRESENT
        for r in case.finding_records
    )
    suspect = SUSPECT_OF_OLD if always else SUSPECT
    return (first.cause.no_fault or first.probability < suspect) and readings_are_good(diagnosis)


def readings_are_good(diagnosis: Diagnosis) -> bool:
    """Whether hot idle and speed were read, and every reading keeps its limits and the usual."""
    case, concluded = diagnosis.case, diagnosis.inference.result.derived
    bounds = [
        b for one in case.readings for every in reading_bounds(one.reading, case) for b in every
    ]
    held = {b.limit for b in bounds}
    if any(b.broken for b in bounds):
        return False
    if not held.issuperset(READ) and not is_good_at_its_one_speed(case):
        return False
    if any(d.finding is CAPPED_LOW for d in concluded if d.state is State.PRESENT):
        return False
    return all(
        sure_fallen(one.reading) < SAY_SO and below_rule(one.reading, case) is None
        for one in case.readings
    )


def is_good_at_its_one_speed(case: Case) -> bool:
    """Whether a set that runs at one speed shows enough for that speed with hot oil."""
    if not case.has(STATIONARY):
        return False
    hot = [r for r in (one.reading for one in case.readings) if is_hot(r)]
    if not hot or any(r.rpm_spread or r.rpm < LEAST_OF_A_SET or is_bound(r) for r in hot):
        return False
    figures = [
        case.limit(x) for x in (HOT_IDLE_PRESSURE, USUAL_RELIEF_SETTING, HOT_RUNNING_PRESSURE)
    ]
    return all(r.pressure >= wanted_hot(r.rpm, *figures) for r in hot)


def of_no_fault(causes: Iterable[Cause]) -> bool:
    """Whether a job ends with nothing wrong: at least one cause, and each of them no fault."""
    each = [cause.no_fault for cause in causes]
    return bool(each) and all(each)
