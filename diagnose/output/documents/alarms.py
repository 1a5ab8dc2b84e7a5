"""Alarms as every command shows them."""

from __future__ import annotations

from dataclasses import dataclass

from diagnose.diagnosis import Diagnosis
from knowledge.model import Severity


@dataclass(frozen=True, kw_only=True)
class AlarmNotice:
    """What must be done now."""

    severity: Severity
    says: str


def alarm_notices(diagnosis: Diagnosis) -> tuple[AlarmNotice, ...]:
    """The alarms of a case, most severe first."""
    return tuple(AlarmNotice(severity=a.severity, says=a.says) for a in diagnosis.alarms)


def few_alarm_notices(diagnosis: Diagnosis) -> tuple[AlarmNotice, ...]:
    """The alarms of a case without those that only repeat that the pressure is low.

    Where one names the figure that was read, those without a figure are left out; where the engine
    must be stopped, so are those that let it run with care.
    """
    every = diagnosis.alarms
    stopped = not diagnosis.may_run
    read = any(a.low and a.severity is Severity.STOP for a in every)
    return tuple(
        AlarmNotice(severity=a.severity, says=a.says)
        for a in every
        if not (read and a.low is False)
        and not (stopped and a.severity is Severity.CARE and a.low is not None)
    )
