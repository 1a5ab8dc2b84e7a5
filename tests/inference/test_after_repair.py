"""Readings of the repaired engine: no evidence of the fault, by option and by words."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.case.writing import append, start
from knowledge.book import the_book
from tests.support.command_line import call

BOOK = the_book()


@pytest.fixture
def found(tmp_path: Path) -> Path:
    """A job in which the fault was seen inside."""
    path = tmp_path / "heron.toml"
    start(path, BOOK, {"title": "Heron"}, {"layout": "distributor_v8"})
    reading = {"pressure": "8 psi", "oil": "cold", "rpm": "idle"}
    plug = {"what": "gallery_plug_found_missing", "state": "present"}
    append(path, BOOK, [("reading", reading), ("finding", plug)])
    return path


def pressures(path: Path) -> tuple[list[str | None], list[str | None]]:
    """Those of the fault, and those of the repaired engine."""
    case = load(path, BOOK)
    return (
        [r.entry.pressure for r in case.readings],
        [r.entry.pressure for r in case.start_readings],
    )


@pytest.mark.parametrize("command", ["record", "tell"])
@pytest.mark.parametrize(
    "words",
    [
        "fitted the plug, now 28 psi hot idle at 700, 60 cold, rockers oiling",
        "first start after the repair: 28 psi at hot idle, 60 cold",
        "after fitting the new plug it now shows 28 psi at hot idle and 60 cold, no knock",
        "fixed it: 28 psi hot idle, 60 psi cold",
    ],
)
def test_words_say_that_it_was_read_after_the_repair(command: str, words: str, found: Path) -> None:
    """Only the readings count, at sign-off; the screen says so, and the words are kept."""
    before = load(found, BOOK)
    done = call(command, found, words)
    assert done.code == 0, done.err
    assert pressures(found) == (["8 psi"], ["28 psi", "60 psi"])
    case = load(found, BOOK)
    assert len(case.finding_records) == len(before.finding_records)
    assert (case.behaviours, case.earlier) == (before.behaviours, before.earlier)
    assert "repair" in done.out
    assert words in found.read_text("utf-8")


@pytest.mark.parametrize(
    "words",
    [
        "fitted a new pump, still 8 psi at hot idle",
        "fitted the plug, now 4 psi at hot idle",
        "28 psi at hot idle",
        "was it repaired? 28 psi at hot idle",
    ],
)
def test_other_readings_are_of_the_fault(words: str, found: Path) -> None:
    """Work without effect, a pressure that is too low, no word of a repair, a question."""
    assert call("record", found, words).code == 0
    assert pressures(found)[1] == []


def test_work_before_anything_was_found_is_history(tmp_path: Path) -> None:
    """What somebody repaired earlier does not make its readings those of this repair."""
    path = tmp_path / "heron.toml"
    start(path, BOOK, {"title": "Heron"})
    assert call("record", path, "after the repair 28 psi at hot idle").code == 0
    assert pressures(path) == (["28 psi"], [])


def test_the_option_says_it_of_all_readings(found: Path) -> None:
    """Of words and of --reading; a pressure must be among them."""
    done = call(
        "record", found, "28 psi hot idle, no knock", "--after-repair", "--reading", "60 psi cold"
    )
    assert done.code == 0, done.err
    assert set(pressures(found)[1]) == {"28 psi", "60 psi"}
    assert "bearing_knock" not in found.read_text("utf-8")
    assert "--start" in done.out
    bad = call("record", found, "no knock", "--after-repair")
    assert bad.code == 2
    assert "no pressure, no measured value and no task" in bad.err


HOSES = "both cooler hoses renewed, now 52 psi at 1800 rpm hot"


def test_a_far_better_pressure_says_that_work_was_the_repair(tmp_path: Path) -> None:
    """The case has the low reading of the same state: the work is no cause, the words are read."""
    path = tmp_path / "heron.toml"
    start(path, BOOK, {"title": "Heron"}, {"layout": "inline_six_diesel"})
    append(path, BOOK, [("reading", {"pressure": "28 psi", "oil": "hot", "rpm": "1800 rpm"})])
    done = call("record", path, HOSES)
    assert done.code == 0, done.err
    assert pressures(path) == (["28 psi"], ["52 psi"])
    case = load(path, BOOK)
    assert case.earlier == ()
    assert {s.finding.id for s in case.finding_records} == set()
    assert "Not understood" not in done.out


@pytest.mark.parametrize("pressure", ["45 psi", "52 psi"])
def test_an_ordinary_pressure_does_not(pressure: str, tmp_path: Path) -> None:
    """Without a low reading of that state in the case the work may have come before."""
    path = tmp_path / "heron.toml"
    start(path, BOOK, {"title": "Heron"}, {"layout": "inline_six_diesel"})
    append(path, BOOK, [("reading", {"pressure": pressure, "oil": "cold", "rpm": "1800 rpm"})])
    assert call("record", path, HOSES).code == 0
    assert pressures(path) == ([pressure, "52 psi"], [])


@pytest.mark.parametrize(
    ("words", "asks"),
    [("both cooler hoses renewed", True), ("cooler hoses renewed two years ago", False)],
)
def test_work_of_unknown_age_may_be_the_repair(words: str, asks: bool, found: Path) -> None:
    """It is taken as work before the trouble, and the screen says what to do if it is not."""
    done = call("record", found, words)
    assert done.code == 0, done.err
    says = " ".join(done.out.split())
    assert ("Taken as work before the trouble" in says) is asks
    assert ("--withdraw 3" in says) is asks
