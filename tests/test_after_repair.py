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
    assert "no pressure in it" in bad.err
