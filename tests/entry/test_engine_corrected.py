"""How the engine is built, said wrong and put right: by "back", by ``tell`` and by ``record``."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.case.writing import append, start
from diagnose.entry.interview import Interview
from diagnose.entry.picking import Reply
from knowledge.book import the_book
from knowledge.engines.features import DIESEL, DRY_SUMP
from tests.support.command_line import call

BOOK = the_book()
SIX = "in-line six diesel"


@pytest.fixture
def diesel(tmp_path: Path) -> Path:
    """A case that takes a petrol car for a diesel, in its [engine] and in a finding."""
    path = tmp_path / "car.toml"
    start(path, BOOK, {"title": "hatchback"}, {"layout": "inline_six_diesel"})
    append(path, BOOK, [("finding", {"what": "diesel", "state": "present"})])
    return path


def test_back_returns_from_the_layouts_to_the_kinds(tmp_path: Path) -> None:
    """And once the layout is saved, to the kinds as well; the last answer counts."""
    path = tmp_path / "car.toml"
    interview = Interview.begin(path, BOOK)
    for line in ("4", "", "4"):
        assert interview.reply(line) is None
    layouts = interview.next_question()
    assert layouts is not None
    assert layouts.asks == "Which of these?"
    assert interview.reply("back") is Reply.BACK
    kinds = interview.next_question()
    assert kinds is not None
    assert kinds.asks == "What kind of engine is it?"
    assert interview.reply("4") is interview.reply("6") is None
    assert load(path, BOOK).has(DIESEL)
    assert interview.reply("back") is Reply.BACK
    assert interview.next_question() == kinds
    assert interview.reply("3") is interview.reply("1") is None
    assert load(path, BOOK).layout.id == "overhead_cam_four"
    assert '# layout = "inline_six_diesel"' in path.read_text("utf-8")


def test_back_replaces_a_kind_without_its_layout(tmp_path: Path) -> None:
    """The feature that goes with "diesel" alone is given up too."""
    path = tmp_path / "car.toml"
    interview = Interview.begin(path, BOOK)
    for line in ("4", "", "4", "d"):
        assert interview.reply(line) is None
    assert load(path, BOOK).has(DIESEL)
    assert interview.reply("back") is Reply.BACK
    assert interview.reply("1") is interview.reply("d") is None
    case = load(path, BOOK)
    assert [f.id for f in case.features] == ["vee_engine"]


@pytest.mark.parametrize(
    ("command", "words", "layout"),
    [
        ("tell", "it's a petrol four, overhead cam, not a diesel", "overhead_cam_four"),
        ("tell", "it is a petrol four not a diesel", "unknown"),
        ("tell", "overhead cam four", "overhead_cam_four"),
        ("record", "it is a petrol four not a diesel", "unknown"),
        ("record", "it is a petrol engine", "unknown"),
        ("record", "overhead cam four, petrol", "overhead_cam_four"),
        ("record", "flathead six", "side_valve"),
    ],
)
def test_a_layout_that_contradicts_what_is_said_gives_way(
    command: str, words: str, layout: str, diesel: Path
) -> None:
    """The screen names both engines; nothing in the case makes it a diesel any longer."""
    done = call(command, diesel, words)
    assert done.code == 0
    assert f"no longer: {SIX}" in " ".join(done.out.split())
    case = load(diesel, BOOK)
    assert case.layout.id == layout
    assert not case.has(DIESEL)


@pytest.mark.parametrize("command", ["tell", "record"])
def test_words_that_agree_leave_the_engine_as_it_is(command: str, tmp_path: Path) -> None:
    """A V8 in a boat stays one where only "V8" is said of it, and nothing is announced."""
    path = tmp_path / "boat.toml"
    start(path, BOOK, {"title": "launch"}, {"layout": "marine_petrol_v8"})
    done = call(command, path, "the V8 shows 5 psi at hot idle")
    assert done.code == 0
    assert "no longer" not in done.out
    assert load(path, BOOK).layout.id == "marine_petrol_v8"


@pytest.mark.parametrize("command", ["tell", "record"])
def test_a_side_remark_takes_no_recorded_part_from_the_engine(command: str, tmp_path: Path) -> None:
    """A ship's diesel with a dry sump is no race engine, and stays one with a dry sump."""
    path = tmp_path / "ship.toml"
    call("tell", path, "-y", "two stroke diesel, dry sump, off a coaster. 1 bar at 900 rpm")
    assert load(path, BOOK).layout.id == "unknown"
    call(
        command,
        path,
        *(["-y"] if command == "tell" else []),
        "it is a slow running marine diesel, two scavenge pumps",
    )
    case = load(path, BOOK)
    assert case.layout.id == "unknown"
    assert case.has(DRY_SUMP)
