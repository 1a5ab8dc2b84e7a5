"""The check "ask for the history" after a story or an interview, and what a check is called then."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.case.writing import append, start
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.interview import best_guess
from diagnose.output.documents.next_checks import next_checks
from knowledge.book import the_book
from knowledge.questions.first_steps import HISTORY, LEFT_OF, OIL_RECORD
from tests.support.command_line import call

BOOK = the_book()
TRACTOR = (
    "Three cylinder diesel tractor about 6800 hours, 8 psi at hot idle, 25 psi at 1800 hot. It has "
    "been getting worse over a couple of years. There is 15w40 in it."
)


def told(path: Path, words: str) -> Diagnosis:
    assert call("tell", path, words).code == 0
    return Diagnosis(BOOK, load(path, BOOK))


def offered(answer: Diagnosis) -> dict[str, set[str]]:
    """Every check that may be done, and the findings it may show."""
    planner = answer.planner
    options = planner.chooser().options(planner.plan_state)
    return {o.inspection.id: {f.id for f in o.findings} for o in options}


def test_a_story_that_says_how_it_came_about_is_not_asked_again(tmp_path: Path) -> None:
    """Nor the record of the oil whose grade was said."""
    checks = offered(told(tmp_path / "a.toml", TRACTOR))
    assert checks
    assert not {HISTORY, OIL_RECORD} & checks.keys()


def test_a_complaint_without_a_history_still_has_it_asked(tmp_path: Path) -> None:
    """But not what presumes a rebuild nobody spoke of."""
    checks = offered(told(tmp_path / "a.toml", "the oil pressure gauge of my car reads low"))
    assert "fell_suddenly" in checks[HISTORY]
    assert "low_from_first_start" not in checks[HISTORY]
    assert OIL_RECORD in checks


def test_an_engine_that_stands_is_not_asked_for_bends(tmp_path: Path) -> None:
    words = "a standby generator, four cylinder diesel, the oil pressure reads low"
    checks = offered(told(tmp_path / "a.toml", words))
    assert "falls_in_a_manoeuvre" not in checks[HISTORY]
    car = "a family car, overhead cam four, the oil pressure reads low"
    assert "falls_in_a_manoeuvre" in offered(told(tmp_path / "b.toml", car))[HISTORY]


@pytest.mark.parametrize("level", [False, True])
def test_a_check_is_called_by_what_is_left_of_it(level: bool, tmp_path: Path) -> None:
    """The level is not to be read again once it was said; `ask` and `review` agree."""
    path = tmp_path / "a.toml"
    start(path, BOOK, {"title": "x"}, {"layout": "overhead_cam_four"})
    found = [("finding", {"what": f, "state": "present"}) for f in ("gauge_reads_low",)]
    found += [("finding", {"what": "level_correct", "state": "present"})] if level else []
    append(path, BOOK, found)
    answer = Diagnosis(BOOK, load(path, BOOK))
    stick = BOOK.inspections["read_the_stick"].says
    said = [o.says for o in next_checks(answer) if o.inspection == "read_the_stick"]
    assert said == [LEFT_OF["read_the_stick"].says if level else stick]
    assert stick not in best_guess(answer).first or not level


def test_no_check_comes_next_once_the_cause_is_seen(tmp_path: Path) -> None:
    """As the plan of `teardown` says that one may stop."""
    path = tmp_path / "a.toml"
    start(path, BOOK, {"title": "x"}, {"layout": "distributor_v8"})
    missing = {"what": "gallery_plug_found_missing", "state": "present"}
    low = {"what": "gauge_reads_low", "state": "present"}
    append(path, BOOK, [("finding", missing), ("finding", low)])
    assert "You may stop here" in call("teardown", path).out
    assert next_checks(Diagnosis(BOOK, load(path, BOOK))) == ()
