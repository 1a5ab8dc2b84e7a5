"""Alarms on what people report of lamp and pressure, and on cold readings beside the usual."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book
from knowledge.model import Severity
from tests.safety.test_alarms import case_of, standing

BOOK = the_book()
STOP, CARE = Severity.STOP, Severity.CARE

#: a behaviour as it stands in a case file, the alarm it sounds
REPORTED: list[tuple[str, tuple[str, Severity] | None]] = [
    ('shows = "unsteady"\ngauge = "lamp"\nduring = ["at speed"]', ("lamp_flickers_at_speed", STOP)),
    (
        'shows = "unsteady"\ngauge = "lamp"\nduring = ["at speed", "after minutes of running"]',
        ("lamp_flickers_at_speed", STOP),
    ),
    ('shows = "unsteady"\ngauge = "lamp"\nduring = ["hot", "idle"]', ("lamp_flickers", CARE)),
    ('shows = "unsteady"\ngauge = "lamp"\nduring = ["electrical load"]', None),
    ('shows = "unsteady"\nduring = ["at speed"]', None),
    ('shows = "none"\nduring = ["bends"]', ("none_in_the_manoeuvre", STOP)),
    ('shows = "lost"\nduring = ["seaway"]', ("none_in_the_manoeuvre", STOP)),
    ('shows = "low"\nduring = ["bends"]', ("pressure_goes_in_the_manoeuvre", CARE)),
]


@pytest.mark.parametrize(("reported", "alarm"), REPORTED)
def test_what_is_reported(reported: str, alarm: tuple[str, Severity] | None) -> None:
    """The gravest alarm of one report; none where a contact moves, or a needle at speed."""
    case = from_text(f"schema = 1\n[engine]\n[[behaviour]]\nno = 1\n{reported}\n", None, BOOK)
    answer = Diagnosis(BOOK, case)
    rules = [answer.inference.result.alarms[a].rule.id for a in answer.alarms]
    gravest = (rules[0], answer.alarms[0].severity) if rules else None
    assert gravest == alarm
    assert answer.may_run is (alarm is None or alarm[1] is CARE)


def test_no_care_beside_the_stop() -> None:
    """Nothing that says how to repeat the manoeuvre stands beside the order to stop."""
    text = 'schema = 1\n[engine]\n[[behaviour]]\nno = 1\nshows = "none"\nduring = ["bends"]\n'
    assert standing(from_text(text, None, BOOK)) == {("none_in_the_manoeuvre", STOP)}


HALF, LITTLE = "half_of_the_usual_when_cold", "little_when_cold"
#: readings with cold oil, the alarms of the two rules on them
COLD: list[tuple[tuple[str, ...], set[tuple[str, Severity]]]] = [
    (("2000 rpm, 20 C, 29.9 psi, usual=60 psi",), {(HALF, STOP), (LITTLE, CARE)}),
    (("2000 rpm, 20 C, 30 psi, usual=60 psi",), {(LITTLE, CARE)}),
    (("2000 rpm, 90 C, 29.9 psi, usual=60 psi",), set()),
    (("2000 rpm, 20 C, 29.9 psi, usual=60 psi", "2000 rpm, 20 C, 45 psi, direct"), set()),
    (("700 rpm, 20 C, 19.9 psi",), {(LITTLE, CARE)}),
    (("700 rpm, 20 C, 20 psi",), set()),
    (("2000 rpm, 20 C, 38 psi",), {(LITTLE, CARE)}),
    (("2000 rpm, 20 C, 39 psi",), set()),
]


@pytest.mark.parametrize(("readings", "alarms"), COLD)
def test_what_is_read_cold(readings: tuple[str, ...], alarms: set[tuple[str, Severity]]) -> None:
    """Less than half of the usual cold means stop, less than cold oil makes means care."""
    found = standing(case_of(readings=readings))
    assert {a for a in found if a[0] in (HALF, LITTLE)} == alarms
