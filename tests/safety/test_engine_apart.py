"""An engine that lies open with its bearings measured: what holds before it is started again."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.apart import is_apart
from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.entry.telling import understand, write
from diagnose.output.documents.owners_page import owners_page
from diagnose.output.documents.ranking import ranked_causes
from diagnose.output.documents.review import review_document
from diagnose.output.text.review_brief import review_brief
from diagnose.planning.choosing import SURE
from diagnose.signoff.sheet import Signoff
from diagnose.teardown.plan import Plan, PlanRequest, is_on_stand
from knowledge.book import the_book
from knowledge.model import Severity
from knowledge.work import Access

BOOK = the_book()
KNOCKS = """schema = 1
[engine]
layout = "small_diesel"

[[reading]]
no = 1
pressure = "0.3 bar"
rpm = "idle"
oil = "hot"

[[finding]]
no = 2
what = "deep_knock_under_load"
state = "present"
"""
DEBRIS = '[[finding]]\nno = 3\nwhat = "bright_soft_metal"\nstate = "present"\n'
SMELL = '[[finding]]\nno = 8\nwhat = "fuel_smell"\nstate = "present"\n'
SIZES = 'journal = "75.90 mm"\ninside = "76.06 mm"\n'
MAIN = f'[[bearing]]\nno = 4\nwhat = "main 1"\n{SIZES}'
BUILT = f'[[bearing]]\nno = 5\nwhat = "main 1"\nat = "build"\n{SIZES}'
STRIP = '[[bearing]]\nno = 4\nwhat = "rod 1"\nstrip = "0.05 mm"\n'
IN_WORDS = '[[finding]]\nno = 4\nwhat = "main_clearance"\nvalue = "0.16 mm"\n'
OUT = '[[finding]]\nno = 4\nwhat = "engine_apart"\nstate = "present"\n'
RAN = '[[reading]]\nno = 6\npressure = "0.3 bar"\nrpm = "idle"\noil = "hot"\n'


def of(*parts: str) -> Diagnosis:
    return Diagnosis(BOOK, from_text("\n".join((KNOCKS, *parts)), None, BOOK))


def said(*parts: str) -> str:
    return " ".join(a.says for a in of(*parts).alarms)


@pytest.mark.parametrize("measured", [MAIN, MAIN + BUILT, STRIP, OUT])
def test_an_engine_that_is_apart_is_not_to_be_shut_down(measured: str) -> None:
    answer = of(measured)
    assert [a.severity for a in answer.alarms] == [Severity.DO_NOT_RUN]
    assert "the engine is apart: start it again only once" in said(measured)
    assert not answer.may_run
    shown = review_brief(review_document(answer, "case.toml"))
    assert "DO NOT START OR RUN: the engine is apart" in shown
    assert "STOP THE ENGINE" not in shown
    assert not any(i.inspection.needs_running for i in [answer.next_check] if i)
    page = owners_page(answer, Signoff(answer, SURE), ranked_causes(answer))
    assert page.standing == "Not repaired yet: do not run the engine."


def test_debris_is_named_only_where_some_was_found() -> None:
    assert "debris has reached" in said(DEBRIS, MAIN)
    assert "debris has reached" not in said(MAIN)


def test_what_holds_of_a_standing_engine_stays() -> None:
    assert "oil smells of fuel: no flame" in said(MAIN, SMELL)


@pytest.mark.parametrize("parts", [(), (IN_WORDS,), (MAIN, RAN), (OUT, RAN)])
def test_an_engine_that_may_be_running_is_to_be_stopped(parts: tuple[str, ...]) -> None:
    """A clearance that someone speaks of may be of an earlier rebuild."""
    assert of(*parts).alarms[0].severity is Severity.STOP
    assert "apart" not in said(*parts)


def test_what_was_open_to_measure_is_open() -> None:
    assert Access.CRANK_OUT in of(MAIN).planner.opened
    strip = of(STRIP).planner.opened
    assert Access.CAP_OFF in strip
    assert Access.CRANK_OUT not in strip
    assert not of().planner.opened


def test_an_engine_on_a_stand_is_not_looked_at_as_in_its_place() -> None:
    """No stick is read and nothing runs; what is behind covers costs the minutes of the stand."""
    here, out = of(), of(OUT)
    assert Access.ENGINE_EASED in out.planner.opened
    minutes = [a.planner.tree.minutes(Access.SUMP_OFF) for a in (here, out)]
    assert minutes[1] < minutes[0]
    assert is_on_stand(Plan(out))
    assert not is_on_stand(Plan(here))
    for plan in (Plan(out), Plan(here, PlanRequest(on_stand=True))):
        checks = [s.choice.inspection for s in plan.line]
        assert checks
        assert not any(c.needs_running or c.in_place for c in checks)
    option = out.next_check
    assert option is not None
    assert not option.inspection.in_place


@pytest.mark.parametrize(
    ("words", "apart"),
    [
        ("the engine is out on the stand now, 0.3 bar at hot idle", True),
        ("sump off, bottom end apart", True),
        ("had the engine on the bench last winter", False),
        ("the engine is not out of the boat yet", False),
    ],
)
def test_that_it_is_apart_is_read_and_comes_behind_its_readings(
    words: str, apart: bool, tmp_path: Path
) -> None:
    case = write(understand(tmp_path / "new.toml", f"{words}, knocking at idle", BOOK), BOOK)
    assert is_apart(case) is apart
    assert Diagnosis(BOOK, case).alarms[0].says.startswith("the engine is apart") is apart
