"""An engine whose own manual calls a few psi enough is not stopped at the rule of thumb."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book
from knowledge.model import Severity

BOOK = the_book()
READ = '[[reading]]\nno = 1\npressure = "8 psi"\nrpm = "2000 rpm"\noil = "95 C"\n'


def stops(limits: str, layout: str = "unknown") -> bool:
    text = f'schema = 1\n[engine]\nlayout = "{layout}"\n{limits}\n{READ}'
    answer = Diagnosis(BOOK, from_text(text, None, BOOK))
    return any(a.severity is Severity.STOP for a in answer.alarms)


@pytest.mark.parametrize(
    ("own", "stopped"),
    [
        ("", True),
        ('hot_running_pressure = "5 psi"', False),
        ('hot_running_pressure = "9 psi"', True),
        ('hot_running_pressure = "40 psi"', True),
        # a stop that the manual names goes before what it allows
        ('hot_running_pressure = "5 psi"\nstop_running_pressure = "10 psi"', True),
    ],
)
def test_what_the_manual_allows_is_never_stopped_at(own: str, stopped: bool) -> None:
    assert stops(f"[engine.limits]\n{own}" if own else "") is stopped


def test_a_figure_above_the_stop_of_its_kind_does_not_raise_it() -> None:
    """A side-valve engine stops at 10 psi; its book's 15 psi is what it should show."""
    text = '[engine.limits]\nhot_running_pressure = "15 psi"'
    case = from_text(f'schema = 1\n[engine]\nlayout = "side_valve"\n{text}\n', None, BOOK)
    plain = from_text('schema = 1\n[engine]\nlayout = "side_valve"\n', None, BOOK)
    stop = BOOK.limits["stop_running_pressure"]
    assert case.limit(stop) == plain.limit(stop)
