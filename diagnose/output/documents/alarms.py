"""Alarms as every command shows them."""

from __future__ import annotations

from dataclasses import dataclass

from diagnose.case.case import Case
from diagnose.case.mended import works_again
from diagnose.diagnosis import Diagnosis
from diagnose.output.scale import scale_of
from diagnose.signoff.measured import below_rule
from diagnose.signoff.nothing_wrong import nothing_wrong
from knowledge.model import Gauge, Reading, Severity, State
from knowledge.pressure.direct_gauge import DIRECT_GAUGE_LOW
from knowledge.pressure.gauge import PSI_PER_1000, is_cold, runs
from knowledge.pressure.patterns import GAUGE_READS_LOW, LAMP_COMES_ON
from knowledge.pressure.quantities import (
    HOT_RUNNING_PRESSURE,
    STOP_IDLE_PRESSURE,
    STOP_RUNNING_PRESSURE,
)
from knowledge.pressure.refuted import speed_is_said
from knowledge.stations.instrument.findings import NEEDLE_STUCK_AT_ONE_VALUE

FALLEN = 2 / 3  #: of the usual pressure: less is a fall (judgement)
#: whose absence says that pressure is there
ENOUGH = (GAUGE_READS_LOW, DIRECT_GAUGE_LOW, LAMP_COMES_ON)


@dataclass(frozen=True, kw_only=True)
class AlarmNotice:
    """What must be done now."""

    severity: Severity
    says: str


def alarm_notices(diagnosis: Diagnosis) -> tuple[AlarmNotice, ...]:
    """The alarms of a case, most severe first, in the order of the diagnosis.

    Where one forbids any start, those that say how it may run are left out.
    """
    every = diagnosis.alarms
    forbidden = any(a.severity is Severity.DO_NOT_RUN for a in every)
    return tuple(
        AlarmNotice(severity=a.severity, says=a.says)
        for a in every
        if not (forbidden and a.lets_run)
    )


def few_alarm_notices(diagnosis: Diagnosis) -> tuple[AlarmNotice, ...]:
    """The alarms of a case without those that only repeat that the pressure is low.

    Where one names the figure that was read, those without a figure are left out; where the engine
    must be stopped, so are those that let it run with care.
    """
    every = diagnosis.alarms
    stopped = not diagnosis.may_run
    forbidden = any(a.severity is Severity.DO_NOT_RUN for a in every)
    read = any(a.low and a.severity is Severity.STOP for a in every)
    return tuple(
        AlarmNotice(severity=a.severity, says=a.says)
        for a in every
        if not (read and a.low is False)
        and not (forbidden and a.lets_run)
        and not (stopped and a.severity is Severity.CARE and a.low is not None)
    )


def run_verdict(diagnosis: Diagnosis) -> str:
    """Whether the engine may run, in a sentence; empty under an alarm that forbids it.

    It may only where a gauge or lamp was reported: no word of the pressure is no verdict.
    """
    if not diagnosis.may_run:
        return ""
    if any(a.lets_run or a.low is not None for a in diagnosis.alarms):
        return "Run it only as that says."  # some let it run for a reading and no more
    if diagnosis.alarms:
        return "It may run on with that care."
    if nothing_wrong(diagnosis):
        return (
            "Nothing wrong found: hot idle and every other reading are within their limits, and "
            "nothing seen is against it. It may run on; keep these readings as its normal ones."
        )
    if _something_is_worn_or_damaged(diagnosis):
        return (
            "It may run on with light load, gauge watched, while you look: what was found is not "
            "put right yet."
        )
    scale, case = scale_of(diagnosis.case), diagnosis.case
    least = scale.one(case.limit(STOP_IDLE_PRESSURE))
    if doubtful := _at_no_speed(diagnosis):
        fast = scale.one(case.limit(STOP_RUNNING_PRESSURE))
        shown = scale.one(min(r.pressure for r in doubtful))
        return (
            f"{shown} at a speed nobody gave: above the {least} that idle needs, below the {fast} "
            "of 2000 rpm. Run it only to read the gauge again with the speed."
        )
    if fallen := _fallen(diagnosis):
        usual = scale.one(fallen.usual or 0.0)
        return (
            f"{scale.one(fallen.pressure)} where {usual} is usual: run it only with light load, "
            "gauge watched, until you find the cause."
        )
    if short := _short_of_the_rule(diagnosis):
        wanted = scale.one(below_rule(short, case) or 0.0)
        return (
            f"{scale.one(short.pressure)} at {short.rpm:.0f} rpm, where {_each_thousand(case)} for each "
            f"1000 rpm asks for {wanted}: run it only with light load, gauge watched, until you know "
            "why."
        )
    if _pressure_is_known(diagnosis):
        return "It may run on while you look: nothing known is against it."
    return f"Pressure unknown: run it only to read a gauge; stop below {least} or at a knock."


def _something_is_worn_or_damaged(diagnosis: Diagnosis) -> bool:
    """Whether a fault was found that costs oil pressure, or damage, and it was not put right yet."""
    if works_again(diagnosis.case):
        return False
    return any(f.costs or f.damage for f in diagnosis.found.proved)


def _pressure_is_known(diagnosis: Diagnosis) -> bool:
    """Whether a gauge was read, or lamp or gauge reported as right."""
    facts, derived = diagnosis.inference.facts, diagnosis.inference.result.derived
    running = [r for r in facts.readings if runs(r)]
    stuck = _is_stuck(diagnosis)
    if any(not (stuck and r.gauge is Gauge.PANEL) for r in running):
        return True
    absent = {f for f, seen in facts.observations.items() if seen.state is State.ABSENT}
    if not running:  # of a needle that stands still, what follows from it says nothing
        absent |= {d.finding for d in derived if d.state is State.ABSENT}
    return not absent.isdisjoint(ENOUGH)


def _at_no_speed(diagnosis: Diagnosis) -> list[Reading]:
    """Readings, not cold, enough at idle and too little at speed, where none has its speed."""
    readings = [r for r in diagnosis.inference.facts.readings if runs(r) and not is_cold(r)]
    if _is_stuck(diagnosis) or any(speed_is_said(r) for r in readings):
        return []
    fast = diagnosis.case.limit(STOP_RUNNING_PRESSURE)
    return [r for r in readings if r.pressure < fast and not r.at_least]


def _fallen(diagnosis: Diagnosis) -> Reading | None:
    """A reading far below what the engine usually shows there; None where there is none."""
    if _is_stuck(diagnosis):
        return None
    every = [r for r in diagnosis.inference.facts.readings if runs(r) and r.usual]
    low = [r for r in every if r.pressure < FALLEN * (r.usual or 0.0)]
    return min(low, key=lambda r: r.pressure / (r.usual or 1.0), default=None)


def _short_of_the_rule(diagnosis: Diagnosis) -> Reading | None:
    """A reading at speed below what the rule of thumb wants there; None where there is none."""
    every = [r for r in diagnosis.inference.facts.readings if runs(r) and speed_is_said(r)]
    return next((r for r in every if below_rule(r, diagnosis.case) is not None), None)


def _each_thousand(case: Case) -> str:
    """What the rule of thumb asks for each 1000 rpm; less where less is normal at 2000 rpm."""
    least = min(PSI_PER_1000, case.limit(HOT_RUNNING_PRESSURE) / 2)
    return "10 psi" if least == PSI_PER_1000 else scale_of(case).one(least)


def _is_stuck(diagnosis: Diagnosis) -> bool:
    """Whether the needle of the panel's gauge stays at one value."""
    seen = diagnosis.inference.facts.observations.get(NEEDLE_STUCK_AT_ONE_VALUE)
    return seen is not None and seen.state is State.PRESENT
