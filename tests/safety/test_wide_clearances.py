"""A bearing clearance over its limit beside "It may run": never without a word on the load."""

from __future__ import annotations

import pytest

from diagnose.case.case import Case
from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.alarms import run_verdict
from knowledge.book import the_book
from knowledge.model import Severity

BOOK = the_book()
FREE = "It may run on while you look: nothing known is against it."
READ = '[[reading]]\nno = 1\nrpm = "idle"\noil = "hot"\npressure = "20 psi"\ngauge = "direct"\n'
REPAIRED = (
    '[[reading]]\nno = 9\nrpm = "idle"\noil = "hot"\npressure = "30 psi"\ngauge = "direct"\n'
    'at = "start"\n'
)


def case(*findings: tuple[str, str], more: str = "") -> Case:
    """A job with 20 psi at hot idle and these findings, each a state or a value."""
    text = 'schema = 1\n[engine]\nlayout = "skew_gear_four"\n' + READ
    for number, (what, said) in enumerate(findings, 2):
        key = "state" if said == "present" else "value"
        text += f'[[finding]]\nno = {number}\nwhat = "{what}"\n{key} = "{said}"\n'
    return from_text(text + more, None, BOOK)


@pytest.mark.parametrize(
    ("clearance", "severity"),
    [("2 thou", None), ("3.2 thou", Severity.CARE), ("6 thou", Severity.DO_NOT_RUN)],
)
@pytest.mark.parametrize("what", ["main_clearance", "rod_clearance"])
def test_a_wide_clearance_sounds_by_how_wide_it_is(
    what: str, clearance: str, severity: Severity | None
) -> None:
    wide = clearance.replace("3.2", "3.7") if what == "rod_clearance" else clearance
    answer = Diagnosis(BOOK, case((what, wide)))
    assert [a.severity for a in answer.alarms] == ([severity] if severity else [])
    assert answer.may_run is (severity is not Severity.DO_NOT_RUN)
    assert (run_verdict(answer) == FREE) is (severity is None)


def test_nothing_is_known_against_it_only_where_nothing_was_found() -> None:
    assert run_verdict(Diagnosis(BOOK, case())) == FREE
    worn = Diagnosis(BOOK, case(("pump_end_clearance", "12 thou")))
    assert worn.found_faults
    assert not worn.alarms
    assert "light load" in run_verdict(worn)
    put_right = Diagnosis(BOOK, case(("pump_end_clearance", "12 thou"), more=REPAIRED))
    assert run_verdict(put_right) == FREE
