"""Every command says the same of one job: while it is open, where its answers differ, once closed."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from diagnose.case.case import Case
from diagnose.case.loading import from_text
from diagnose.case.mended import mended, works_again
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.found import disagreement
from diagnose.output.documents.job_end import ended
from diagnose.planning.choosing import SURE
from diagnose.signoff.sheet import Signoff
from knowledge.book import the_book
from tests.support.command_line import ROOT, call

BOOK = the_book()
NOT_SIGNED_OFF = "Reads 29 psi at hot idle after the work, but is not signed off: "
LOW = """schema = 1
[job]
title = "Teal"
[engine]
layout = "marine_petrol_v8"
[[reading]]
no = 1
rpm = "700 rpm"
oil = "90 C"
pressure = "4 psi"
gauge = "direct"
[[finding]]
no = 2
what = "debris_on_relief_seat"
state = "present"
"""
CLOSED = """
[[closed]]
no = 8
when = 2026-06-20
causes = ["relief_debris"]
how = "chip seen on the seat"
remedy = "seat and plunger cleaned."
"""
OPEN_STORY = """schema = 1
[job]
title = "Skiff"
[engine]
layout = "marine_petrol_v8"
[[reading]]
no = 1
rpm = "700 rpm"
oil = "90 C"
pressure = "10 psi"
gauge = "direct"
[[finding]]
no = 3
what = "main_clearance"
value = "0.0033 in"
[[finding]]
no = 6
what = "pickup_tube_rocks"
state = "present"
[[finding]]
no = 7
what = "foam_on_stick"
state = "present"
"""


def started(psi: float, no: int = 5, at: str = 'at = "start"\n') -> str:
    """A reading of the mended engine at hot idle."""
    return (
        f'\n[[reading]]\nno = {no}\nrpm = "700 rpm"\noil = "90 C"\npressure = "{psi} psi"\n'
        f'gauge = "direct"\n{at}'
    )


def case(text: str) -> Case:
    """The case of a text."""
    return from_text(text, None, BOOK)


def saved(folder: Path, text: str) -> Path:
    """The case in a file."""
    path = folder / "teal.toml"
    path.write_text(text, "utf-8")
    return path


def flat(*words: str | Path) -> str:
    """What a command prints, in one line."""
    return " ".join(call(*words).out.split())


def test_an_engine_that_works_again_has_no_alarm_of_the_old_fault(tmp_path: Path) -> None:
    assert "STOP" in flat("review", saved(tmp_path, LOW))
    path = saved(tmp_path, LOW + started(29) + CLOSED)
    for words in (
        ["review"],
        ["review", "--full"],
        ["teardown"],
        ["teardown", "--all"],
        ["signoff"],
    ):
        said = flat(words[0], path, *words[1:])
        assert "STOP" not in said, words
        assert "repaired, 29 psi at hot idle" in said, words
    assert json.loads(call("review", path, "--json").out)["alarms"] == []
    page = tmp_path / "page.html"
    assert call("report", path, "--out", page).code == 0
    assert "repaired, 29 psi at hot idle" in page.read_text("utf-8")
    assert Diagnosis(BOOK, case(LOW + started(29) + CLOSED)).may_run


def test_a_repaired_engine_has_no_alarm_though_the_job_is_open(tmp_path: Path) -> None:
    path = saved(tmp_path, LOW + started(29))
    for words in (["review"], ["review", "--full"], ["teardown"], ["signoff"], ["budget"]):
        said = flat(words[0], path, *words[1:])
        assert "STOP" not in said, words
        assert NOT_SIGNED_OFF in said, words
        assert "Repaired" not in said, words
    assert f"Next, before it runs on: diagnose signoff {path}" in flat("review", path)
    page = tmp_path / "page.html"
    assert call("report", path, "--out", page).code == 0
    shown = page.read_text("utf-8")
    assert NOT_SIGNED_OFF in shown
    assert "Repaired" not in shown
    assert "Not repaired yet" not in shown
    assert "To do:" not in shown
    for more in (started(4), started(29) + started(4, 9, "")):
        again = case(LOW + more)
        assert not Diagnosis(BOOK, again).may_run
        assert not ended(again)


def test_it_is_repaired_once_all_before_the_first_start_is_signed_off(tmp_path: Path) -> None:
    path = saved(tmp_path, LOW + started(29))
    sheet = Signoff(Diagnosis(BOOK, case(LOW + started(29))), SURE)
    waiting = sheet.before_start
    assert waiting
    tasks = "".join(
        f'\n[[work]]\nno = {no}\nwhat = "{i.task.id}"\nstate = "skipped"\nnote = "looked at"\n'
        for no, i in enumerate(waiting, 100)
    )
    path = saved(tmp_path, LOW + started(29) + tasks)
    assert sheet.asks
    assert "1 task left before the first start" in flat("review", path), "the parts in question"
    tasks += "".join(
        f'\n[[finding]]\nno = {no}\nwhat = "{part.id}"\nstate = "absent"\n'
        for no, part in enumerate(sheet.asks, 200)
    )
    path = saved(tmp_path, LOW + started(29) + tasks)
    for words in (["review"], ["signoff"]):
        assert "Repaired: 29 psi at hot idle. The job is still open." in flat(words[0], path)
    assert f"Next: diagnose close {path}" in flat("review", path)
    assert "Do not run it on" not in flat("signoff", path)


@pytest.mark.parametrize(
    ("more", "says"),
    [
        (CLOSED, "No hot idle pressure of the repaired engine is recorded."),
        (started(4) + CLOSED, "but the repaired engine breaks a limit"),
        (started(29) + CLOSED + started(4, 9, ""), "repaired, 29 psi at hot idle"),
    ],
    ids=["not read", "still low", "low again later"],
)
def test_the_alarm_stays_where_good_pressure_was_not_shown(more: str, says: str) -> None:
    known = case(LOW + more)
    assert not works_again(known)
    assert not Diagnosis(BOOK, known).may_run
    assert says in ended(known)


def test_the_last_reading_at_a_limit_counts() -> None:
    assert not mended(case(LOW + started(29) + started(4, 6))).proved
    assert mended(case(LOW + started(4) + started(29, 6))).proved
    assert mended(case(LOW + started(4) + started(29, 6))).hot_idle == pytest.approx(29 * 6894.757)


def test_the_worked_job_ends_the_same_in_every_command() -> None:
    for command in ("review", "teardown", "signoff", "budget"):
        said = flat(command, ROOT / "cases" / "gannet.toml")
        assert "Closed 2026-06-20: repaired, 36 psi at hot idle." in said, command
        assert "diagnose report" in said, command


@pytest.mark.parametrize(
    ("value", "holds"),
    [("0 psi", True), ("15 psi", False), ("1 bar", False), ("45 psi", False), (None, False)],
)
def test_cranked_without_pressure_holds_the_start(
    tmp_path: Path, value: str | None, holds: bool
) -> None:
    """It may be left out with a note, but once it has failed the engine is not started.

    A maker's prelubrication lets the starter turn from 28 kPa (4 psi), so 1 bar is no failure.
    """
    work = f'\n[[work]]\nno = 7\nwhat = "cranked_to_pressure"\nvalue = "{value}"\n' if value else ""
    sheet = Signoff(Diagnosis(BOOK, case(LOW + work)), 0.9, whole=True)
    assert ("cranked_to_pressure" in {i.task.id for i in sheet.blocking}) is holds
    if holds:
        path = saved(tmp_path, LOW + work)
        assert "FAILED: pressure by cranking" in flat("signoff", path, "--whole-engine")
        assert "DO NOT START YET" in flat("signoff", path, "--whole-engine", "--start")


def test_where_budget_and_ranking_differ_one_sentence_says_what_decides(tmp_path: Path) -> None:
    says = disagreement(Diagnosis(BOOK, case(OPEN_STORY)))
    assert "main bearing clearance 0.0033 in; the signs point to oil pickup tube" in says
    assert "To decide: " in says
    path = saved(tmp_path, OPEN_STORY)
    for command in ("review", "budget"):
        assert flat(command, path).count("Budget and ranking differ: ") == 1


@pytest.mark.parametrize("name", ["bullfinch"])
def test_they_agree_where_the_cause_leads_to_what_costs_most(name: str) -> None:
    text = (ROOT / "cases" / f"{name}.toml").read_text("utf-8")
    assert disagreement(Diagnosis(BOOK, case(text))) == ""
