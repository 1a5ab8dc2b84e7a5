"""Alarms as lines for a terminal."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from diagnose.output.documents.alarms import AlarmNotice
from diagnose.output.lines import wrapped
from knowledge.model import Severity


def alarm_lines(alarms: Sequence[AlarmNotice], already_shown: Collection[str] = ()) -> list[str]:
    """State, limit and action of each alarm whose text was not ``already_shown``."""
    lines = []
    fresh = [a for a in alarms if a.says not in already_shown]
    for alarm in fresh:
        lines += wrapped(f"{alarm.severity.value.upper()}: {alarm.says}", 0, 2)
    if any(a.severity is Severity.STOP for a in fresh):
        lines += wrapped("The engine maker's own stop limits come first.", 0, 2)
    return lines
