"""Work in words once the repair has begun: a task of its sign-off, no cause of the trouble."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import from_text, load
from diagnose.diagnosis import Diagnosis
from diagnose.entry.recording import Input, record
from diagnose.errors import UsageError
from diagnose.planning.choosing import SURE
from diagnose.signoff.sheet import Signoff
from knowledge.book import the_book
from knowledge.work import Access
from tests.support.command_line import call

BOOK = the_book()
OPENED = """schema = 1
[engine]
layout = "marine_diesel"
[[finding]]
no = 1
what = "metal_in_filter"
state = "present"
[[finding]]
no = 12
what = "shells_worn_evenly"
state = "present"
[[bearing]]
no = 2
what = "main 3"
inside = "76.08 mm"
journal = "75.93 mm"
"""
FITTED = """[[bearing]]
no = 3
what = "main 3"
strip = "0.064 mm"
at = "build"
"""
STARTED = '[[reading]]\nno = 3\nrpm = "idle"\noil = "hot"\npressure = "1.7 bar"\nat = "start"\n'


def saved(folder: Path, text: str) -> Path:
    """A job in a file."""
    path = folder / "tern.toml"
    path.write_text(text, "utf-8")
    return path


@pytest.mark.parametrize("begun", [FITTED, STARTED], ids=["fitted", "started"])
@pytest.mark.parametrize(
    ("words", "tasks"),
    [
        ("main caps torqued 110 Nm", ["caps_torqued"]),
        ("oil cooler new", ["cooler_renewed"]),
        ("sump washed", ["sump_washed"]),
        ("source of the debris: main 3 shell wiped, renewed", ["debris_source_cured"]),
        ("galleries brushed with all plugs out", ["galleries_cleared"]),
        ("sump washed, front plugs in", ["sump_washed", "front_plugs_in"]),
    ],
)
def test_work_of_the_repair_ticks_its_task(
    begun: str, words: str, tasks: list[str], tmp_path: Path
) -> None:
    path = saved(tmp_path, OPENED + begun)
    done = record(path, BOOK, Input(facts=[words]))
    after = load(path, BOOK)
    ticked = [w for w in after.task_records if w.value is None]
    assert [w.task.id for w in ticked] == tasks
    assert all(w.entry.state == "done" for w in ticked)
    notes = ", ".join(w.entry.note for w in ticked)
    assert notes == words, "what was said stays in the note, a torque too"
    assert not after.earlier
    assert len(after.finding_records) == len(done.before.finding_records)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        (OPENED, "oil cooler new"),
        (OPENED + FITTED, "oil pump renewed 2 weeks before"),
        (OPENED + FITTED, "sump was washed before it began"),
    ],
    ids=["not begun", "dated", "before it began"],
)
def test_work_before_the_trouble_stays_history(text: str, words: str, tmp_path: Path) -> None:
    path = saved(tmp_path, text)
    record(path, BOOK, Input(facts=[words]))
    after = load(path, BOOK)
    assert after.earlier
    assert all(w.value for w in after.task_records), "the clearance as fitted alone"


@pytest.mark.parametrize("words", ["sump not washed yet", "new filter fitted"])
def test_what_names_no_task_for_sure_ticks_none(words: str, tmp_path: Path) -> None:
    path = saved(tmp_path, OPENED + FITTED)
    with pytest.raises(UsageError, match="it may mean"):
        record(path, BOOK, Input(facts=[words]))
    assert path.read_text("utf-8") == OPENED + FITTED


def test_a_new_sight_and_a_reading_are_still_read(tmp_path: Path) -> None:
    path = saved(tmp_path, OPENED + FITTED)
    record(path, BOOK, Input(facts=["main 3 shell wiped"]))
    record(path, BOOK, Input(facts=["bearings renewed, 1.9 bar at hot idle"], repaired=True))
    after = load(path, BOOK)
    assert "shells_wiped" in [r.finding.id for r in after.finding_records]
    assert after.start_readings
    assert all(w.value for w in after.task_records), "the clearance as fitted alone"


def test_new_shells_fitted_call_for_the_tasks_of_an_open_bottom_end() -> None:
    """Nobody has to say that a cap was off where the clearance was measured as fitted."""
    text = 'schema = 1\n[engine]\nlayout = "marine_diesel"\n'
    without, fitted = (from_text(text + more, None, BOOK) for more in ("", FITTED))
    sheets = [Signoff(Diagnosis(BOOK, case), SURE) for case in (without, fitted)]
    assert [Access.CAP_OFF in sheet.places for sheet in sheets] == [False, True]
    assert BOOK.tasks["caps_torqued"] in [i.task for i in sheets[1].items]


def test_the_task_is_named_in_words(tmp_path: Path) -> None:
    shown = " ".join(call("record", saved(tmp_path, OPENED + FITTED), "sump washed").out.split())
    assert f"{BOOK.tasks['sump_washed'].says}: done" in shown
    assert "work before the trouble" not in shown
