"""The first start of an engine of which the book has no circuit in figures."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.first_start import FirstStartDocument, first_start_document
from diagnose.output.text.first_start_brief import first_start_brief
from diagnose.planning.choosing import SURE
from diagnose.signoff.closing import obstacles
from diagnose.signoff.sheet import Signoff
from diagnose.signoff.start import predicted_start
from knowledge.book import the_book
from tests.support.command_line import call

BOOK = the_book()
BIKE = """schema = 1
[engine]
layout = "dry_sump_motorcycle"
{limits}
[[finding]]
no = 1
what = "relief_found_stuck"
state = "present"
"""
READ = """
[[reading]]
no = 2
rpm = "{rpm} rpm"
oil = "90 C"
pressure = "{psi} psi"
gauge = "direct"
at = "start"
"""


def document(more: str = "", limits: str = "") -> FirstStartDocument:
    """The first start of a motorcycle."""
    answer = Diagnosis(BOOK, from_text(BIKE.format(limits=limits) + more, None, BOOK))
    sheet = Signoff(answer, SURE)
    return first_start_document(predicted_start(answer.case, BOOK), sheet, "bike.toml")


def flat(shown: FirstStartDocument) -> str:
    """The screen, in one line."""
    return " ".join(first_start_brief(shown).split())


def test_stop_limits_watch_list_and_cautions_are_there() -> None:
    said = flat(document())
    assert "No pressure is predicted" in said
    assert "idling, below 7 psi (a general figure: enter yours)" in said
    assert "from 2000 rpm, below 20 psi (a general figure: enter yours)" in said
    assert "at most 10 s time from first fire until the gauge moves" in said
    assert "no knock, rap or growl" in said
    assert "exhaust gas kills" in said


def test_the_engines_own_limit_is_not_asked_for() -> None:
    said = flat(document(limits='[engine.limits]\nstop_idle_pressure = "4 psi"'))
    assert "idling, below 4 psi - from 2000 rpm, below 20 psi (a general figure" in said


@pytest.mark.parametrize(
    ("rpm", "psi", "says"), [(900, 5, "STOP THE ENGINE"), (3000, 35, "above the stop limits")]
)
def test_a_reading_is_compared_with_the_stop_limits(rpm: int, psi: int, says: str) -> None:
    shown = document(READ.format(rpm=rpm, psi=psi))
    assert says in flat(shown)
    answer = Diagnosis(
        BOOK, from_text(BIKE.format(limits="") + READ.format(rpm=rpm, psi=psi), None, BOOK)
    )
    short = "less than was predicted" in " ".join(obstacles(answer, SURE))
    assert short is says.startswith("STOP")


def test_the_command_answers(tmp_path: Path) -> None:
    path = tmp_path / "bike.toml"
    path.write_text(BIKE.format(limits=""), "utf-8")
    answer = call("signoff", path, "--start")
    assert (answer.code, "Shut down at once" in answer.out) == (0, True)
    assert call("signoff", path, "--start", "--all").code == 0
    assert call("signoff", path, "--start", "--json").code == 0
    assert call("signoff", path, "--start", "--change", "main_clearance=0.003 in").code == 2


def test_a_round_figure_in_psi_is_no_exact_one_in_bar() -> None:
    said = flat(document(READ.format(rpm=3000, psi=35).replace("35 psi", "2.4 bar")))
    assert "at most 5.5 bar" in said
    assert "at least 1.4 bar" in said
