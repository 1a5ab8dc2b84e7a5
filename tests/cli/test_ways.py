"""What messages tell a person to do: commands on a command line, what to tap on the page."""

from __future__ import annotations

import re
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from string import Formatter

import pytest

from diagnose.serve.wording import TAPS
from diagnose.ways import COMMANDS, Way, to, worded
from tests.support.command_line import call
from tests.support.web import Browser, browser, jobs_in

#: what only a command line has: an option, a command, a table of a file
TYPED = re.compile(
    r"(?<![\w-])--[a-z]|\bdiagnose (?:ask|record|show|lookup|budget|survey|forecast|signoff|close|card)\b|\[\["
)


def test_each_way_has_its_words_on_both() -> None:
    assert set(COMMANDS) == set(TAPS) == set(Way)
    for way in Way:
        wanted = {name for _, name, _, _ in Formatter().parse(COMMANDS[way]) if name}
        taken = {name for _, name, _, _ in Formatter().parse(TAPS[way]) if name}
        assert taken <= wanted, way
        assert not TYPED.search(TAPS[way]), way


def test_the_words_hold_as_long_as_they_are_asked_for() -> None:
    """In one context; another thread keeps its own."""
    with worded(TAPS), ThreadPoolExecutor(1) as other:
        assert to(Way.NOTE) == TAPS[Way.NOTE]
        assert other.submit(to, Way.NOTE).result() == "with --note"
    assert to(Way.NOTE) == "with --note"


def test_braces_of_a_person_stay() -> None:
    with worded(TAPS):
        assert to(Way.DIMENSION, name="x", value="{0} {way}") == (
            "enter {0} {way} under Engine’s card"
        )


@pytest.fixture(scope="module")
def tab(tmp_path_factory: pytest.TempPathFactory) -> Browser:
    folder = jobs_in(tmp_path_factory.mktemp("jobs"), "slip_tractor")
    (folder / "empty.toml").write_text("schema = 1\n", "utf-8")
    return browser(folder)


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ("wibble frobnicate", "the part, and what it looks or sounds like"),
        ("sump_washed=skipped", "give the reason in its note"),
        ("frobnicate=yes", "Say it in other words under Write down."),
        ("relief_debris=yes", "under Close the job."),
        ("=", ""),
        (",", ""),
    ],
)
def test_a_refused_note_says_what_to_tap(tab: Browser, words: str, says: str) -> None:
    page = tab.send(tab.get("/job/empty.toml/note"), "note", words=words)
    assert page.status == 400
    assert says in page.words
    assert not TYPED.search(page.words)


@pytest.mark.parametrize("screen", ["survey", "budget", "forecast", "start", "bearings", "close"])
def test_a_screen_without_figures_says_what_to_tap(tab: Browser, screen: str) -> None:
    page = tab.get(f"/job/empty.toml/{screen}")
    assert page.status == 200
    assert not TYPED.search(page.words)


def test_the_survey_sends_to_the_readings(tab: Browser) -> None:
    assert "put one in under Gauge readings" in tab.get("/job/empty.toml/survey").words


def test_the_command_still_names_commands(tab: Browser) -> None:
    """The same refusals on a command line."""
    root: Path = tab.app.site.folder.root
    done = call("survey", root / "empty.toml")
    assert "diagnose record empty.toml --reading" in done.err.replace("\n", " ")
    assert "--note" in call("record", root / "empty.toml", "sump_washed=skipped").err
