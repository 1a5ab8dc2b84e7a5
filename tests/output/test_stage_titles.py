"""What a stage of the plan opens: nothing, or nothing more where the engine lies open."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.stages import planned_stages
from diagnose.teardown.plan import Plan
from knowledge.book import the_book

BOOK = the_book()
LOW = 'schema = 1\n[[finding]]\nno = 1\nwhat = "gauge_reads_low"\nstate = "present"\n'
SUMP_OFF = '[[finding]]\nno = 2\nwhat = "metal_in_pan"\nstate = "absent"\n'


@pytest.mark.parametrize(
    ("text", "title"), [(LOW, "nothing to open"), (LOW + SUMP_OFF, "nothing more to open")]
)
def test_the_first_stage_says_what_lies_open(text: str, title: str) -> None:
    """A look at the bottom end needs the sump off, which it is once somebody looked in it."""
    first, *_ = planned_stages(Plan(Diagnosis(BOOK, from_text(text, None, BOOK))))
    assert first.title == title
