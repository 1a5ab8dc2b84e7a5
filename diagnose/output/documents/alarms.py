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
