"""Alarms as lines for a terminal."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from diagnose.output.documents.alarms import AlarmNotice
from diagnose.output.lines import wrapped
from knowledge.model import Severity

FEW_STOPS = 2  #: stops and bans on starting in full where many say the same: do not run it


def alarm_lines(
    alarms: Sequence[AlarmNotice],
    already_shown: Collection[str] = (),
    stops: int | None = None,
    more: str = "",
) -> list[str]:
    """State, limit and action of each alarm whose text was not ``already_shown``.

    ``stops``: so many stops and bans on starting in full, the gravest, the others as a number;
    every care in full. ``more``: the command that shows the others.
    """
    lines = []
    fresh = [a for a in alarms if a.says not in already_shown]
    left = _left_out(fresh, stops) if stops is not None else []
    for alarm in fresh:
        if alarm not in left:
            lines += wrapped(f"{alarm.severity.value.upper()}: {alarm.says}", 0, 2)
    if left:
        lines += wrapped(f"and {len(left)} more reasons not to run it: {more}", 2, 4, whole=[more])
    if any(a.severity is Severity.STOP for a in fresh):
        lines += wrapped("The engine maker's own stop limits come first.", 0, 2)
    return lines


def _left_out(alarms: Sequence[AlarmNotice], stops: int) -> list[AlarmNotice]:
    """The stops and bans beyond so many; a ban on starting is never hidden behind stops."""
    grave = [a for a in alarms if a.severity is not Severity.CARE]
    if len(grave) <= stops + 1:
        return []
    bans = [a for a in grave if a.severity is Severity.DO_NOT_RUN]
    first = grave[:stops]
    if bans and not any(a in first for a in bans):
        first = [*first[:-1], bans[0]]
    return [a for a in grave if a not in first]
