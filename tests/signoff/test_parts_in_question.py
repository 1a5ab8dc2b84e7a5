"""Tasks of parts that nobody said whether the engine has: one question, no open tasks."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import from_text, load
from diagnose.diagnosis import Diagnosis
from diagnose.planning.choosing import SURE
from diagnose.signoff.closing import open_points
from diagnose.signoff.sheet import Signoff
from knowledge.book import the_book
from knowledge.model import State
from tests.support.command_line import call
from tests.support.web import browser

BOOK = the_book()
DEBRIS = """schema = 1
[engine]
layout = "distributor_v8"

[[finding]]
no = 1
what = "debris_on_relief_seat"
state = "present"

[[finding]]
no = 2
what = "bright_soft_metal"
state = "present"
"""
NO = '\n[[finding]]\nno = {}\nwhat = "{}"\nstate = "absent"\n'
YES = '\n[[finding]]\nno = 3\nwhat = "turbocharged"\nstate = "present"\n'
DONE = '\n[[work]]\nno = 4\nwhat = "turbo_wetted"\nstate = "done"\n'


def sheet(*more: str) -> Signoff:
    return Signoff(Diagnosis(BOOK, from_text(DEBRIS + "".join(more), None, BOOK)), SURE)


def ids(items: object) -> set[str]:
    return {i.task.id for i in items}  # type: ignore[attr-defined]


def test_a_part_nobody_spoke_of_is_asked_for_and_no_open_task() -> None:
    unsure = sheet()
    assert "turbocharged" in {f.id for f in unsure.asks}
    assert "turbo_wetted" in ids(unsure.maybe)
    assert "turbo_wetted" not in ids(unsure.items) | ids(unsure.blocking)
    assert unsure.asked_before_start
    assert all(i.task.only_with for i in unsure.maybe)


def test_an_answer_brings_the_tasks_or_drops_them() -> None:
    assert "turbo_wetted" in ids(sheet(YES).before_start)
    without = sheet(NO.format(3, "turbocharged"))
    assert "turbo_wetted" not in ids(without.items) | ids(without.maybe)
    for answered in (sheet(YES), without):
        assert "turbocharged" not in {f.id for f in answered.asks}


def test_what_was_done_is_on_the_sheet_without_an_answer() -> None:
    assert "turbo_wetted" in ids(sheet(DONE).items)


def test_all_answered_leaves_no_question() -> None:
    asked = sheet().asks
    none = sheet(*(NO.format(10 + n, f.id) for n, f in enumerate(asked)))
    assert not none.asks
    assert not none.asked_before_start
    assert len(none.before_start) == len(sheet().before_start)


def test_the_question_prevents_a_quiet_close() -> None:
    said = [p.says for p in open_points(sheet().answer, SURE)]
    assert any(s.startswith("not said which of these the engine has: ") for s in said)
    assert not any("turbocharger" in s for s in said if not s.startswith("not said"))


@pytest.mark.parametrize("how", [(), ("--all",), ("--markdown",)])
def test_the_question_is_on_every_sheet(tmp_path: Path, how: tuple[str, ...]) -> None:
    path = tmp_path / "job.toml"
    path.write_text(DEBRIS)
    out = " ".join(call("signoff", path, *how).out.split())
    assert ("Does it have any of these?" if how else "Say which of these it has: ") in out
    assert "DO NOT START YET" in call("signoff", path, "--start").out


def test_the_page_asks_once_and_saves_every_answer(tmp_path: Path) -> None:
    """What is ticked is there, the rest is not."""
    path = tmp_path / "job.toml"
    path.write_text(DEBRIS)
    tab = browser(tmp_path)
    page = tab.get("/job/job.toml/signoff")
    assert "Does it have any of these?" in page.words
    page = tab.send(page, "signoff", has="turbocharged")
    assert "Does it have any of these?" not in page.words
    states = load(path, BOOK).known_features
    assert states[BOOK.findings["turbocharged"]] is State.PRESENT
    assert states[BOOK.findings["oil_cooler"]] is State.ABSENT


@pytest.mark.parametrize("how", [(), ("--all",), ("--markdown",)])
def test_a_single_part_is_asked_for_as_one(tmp_path: Path, how: tuple[str, ...]) -> None:
    """Once every other part is answered."""
    first, *others = sheet().asks
    path = tmp_path / "job.toml"
    path.write_text(DEBRIS + "".join(NO.format(20 + n, f.id) for n, f in enumerate(others)))
    out = " ".join(call("signoff", path, *how).out.split())
    assert "of these" not in out.partition("Phase")[0]
    asked = (
        f"Say whether it has {first.says}, yes or no" if not how else f"Does it have {first.says} ["
    )
    assert asked in out
    page = browser(tmp_path).get("/job/job.toml/signoff").words
    assert "Does it have this part?" in page
    assert "Does it have any of these?" not in page
    said = [
        p.says for p in open_points(Signoff(Diagnosis(BOOK, load(path, BOOK)), SURE).answer, SURE)
    ]
    assert f"not said whether the engine has {first.says}" in said
