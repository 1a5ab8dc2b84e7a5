"""Where many alarms say the same, the gravest are shown in full, and every care."""

from __future__ import annotations

import pytest

from diagnose.output.documents.alarms import AlarmNotice
from diagnose.output.text.alarms import FEW_STOPS, alarm_lines
from knowledge.model import Severity

STOP, BAN, CARE = Severity.STOP, Severity.DO_NOT_RUN, Severity.CARE


def shown(*severities: Severity) -> list[Severity]:
    alarms = [AlarmNotice(severity=s, says=f"alarm {k}") for k, s in enumerate(severities)]
    lines = alarm_lines(alarms, stops=FEW_STOPS, more="diagnose review x.toml --full")
    return [severities[k] for k in range(len(alarms)) if any(f": alarm {k}" in x for x in lines)]


@pytest.mark.parametrize(
    ("given", "left"),
    [
        ((STOP,), [STOP]),
        ((STOP, STOP, STOP), [STOP, STOP, STOP]),
        ((STOP, STOP, STOP, STOP), [STOP, STOP]),
        ((STOP, STOP, STOP, BAN), [STOP, BAN]),
        ((BAN, BAN, BAN, STOP), [BAN, BAN]),
        ((BAN, STOP, STOP, STOP, CARE, CARE), [BAN, STOP, CARE, CARE]),
        ((CARE,) * 5, [CARE] * 5),
    ],
)
def test_a_ban_and_every_care_are_shown(given: tuple[Severity, ...], left: list[Severity]) -> None:
    """One more is no longer than the line that counts it."""
    assert shown(*given) == left


def test_without_a_limit_all_are_shown() -> None:
    alarms = [AlarmNotice(severity=STOP, says=f"alarm {k}") for k in range(6)]
    assert sum("alarm" in line for line in alarm_lines(alarms)) == len(alarms)
