"""The web page writes into the same files as the commands; whoever writes, nothing is lost."""

from __future__ import annotations

import os
import threading
from collections.abc import Callable
from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.entry.closing import ClosingInput
from diagnose.entry.details import Details
from diagnose.entry.recording import Input, record
from diagnose.serve.diagnoses import Version
from diagnose.serve.saving import MeanwhileError, end, save
from knowledge.book import the_book
from tests.support.command_line import call, run
from tests.support.serving import serving, wire
from tests.support.web import Browser, Form, browser, jobs_in

WRITERS = 50
NOTE = "/job/petrel.toml/note"


@pytest.fixture
def tab(tmp_path: Path) -> Browser:
    return browser(jobs_in(tmp_path, "petrel"))


def entries(folder: Path, name: str = "petrel") -> dict[str, int]:
    """How often each thing was entered, by its id or kind."""
    found: dict[str, int] = {}
    for entry in load(folder / f"{name}.toml", the_book()).standing.values():
        what = getattr(entry, "what", type(entry).__name__)
        found[what] = found.get(what, 0) + 1
    return found


def test_what_is_saved_has_its_verdict(tab: Browser) -> None:
    """A value is answered at once with the limit it breaks, in the person's unit."""
    page = tab.send(tab.get(NOTE), "note", words="no 3 main 4.5 thou", by="Ann")
    assert page.status == 200
    assert "Saved main bearing clearance, on the diameter: 4.5 thou (main 3)" in page.words
    assert "over the limit of" in page.words
    assert 'class="verdict off"' in page.text
    page = tab.send(tab.get(NOTE), "note", words="pump cover clearance .003")
    assert 'class="verdict fits"' in page.text


def test_words_that_may_mean_several_things(tab: Browser, tmp_path: Path) -> None:
    """They are a choice; nothing is saved before one is chosen."""
    before = (tmp_path / "petrel.toml").read_bytes()
    page = tab.send(tab.get(NOTE), "note", words="backlash 12 thou")
    assert (page.status, (tmp_path / "petrel.toml").read_bytes()) == (400, before)
    assert "Which do you mean?" in page.words
    assert page.form("note").fields["words"] == ["backlash 12 thou"]
    page = tab.send(page, "note", meant="pump_backlash")
    assert page.status == 200
    assert entries(tmp_path)["pump_backlash"] == 1


@pytest.mark.parametrize("words", ["", "wibble", "main 9000 psi", "x" * 1990, "\x00\x1b[31m"])
def test_what_is_not_understood_stays_in_the_form(tab: Browser, tmp_path: Path, words: str) -> None:
    before = (tmp_path / "petrel.toml").read_bytes()
    page = tab.send(tab.get(NOTE), "note", words=words)
    assert page.status == 400
    assert (tmp_path / "petrel.toml").read_bytes() == before
    assert page.form("note").fields["words"][0].strip() == words.strip()


def test_readings_by_circumstance(tab: Browser, tmp_path: Path) -> None:
    before = len(load(tmp_path / "petrel.toml", the_book()).readings)
    fields = {"at:hot_idle": "0,5", "at:own": "2", "rpm": "1500", "heat": "185", "heat-unit": "F"}
    page = tab.get("/job/petrel.toml/readings")
    form = page.form("readings")
    answer = tab.post(form.action, {**form.fields, **fields, "unit": "bar", "gauge": "direct"})
    assert answer.status == 200
    readings = load(tmp_path / "petrel.toml", the_book()).readings[before:]
    assert [(r.entry.pressure, r.entry.rpm, r.entry.oil, r.entry.gauge) for r in readings] == [
        ("0.5 bar", "idle", "hot", "direct"),
        ("2 bar", "1500 rpm", "185 F", "direct"),
    ]


def test_an_entry_can_be_taken_back(tab: Browser, tmp_path: Path) -> None:
    page = tab.send(tab.get(NOTE), "note", words="oil level ok")
    number = max(load(tmp_path / "petrel.toml", the_book()).standing)
    form = page.form("note")
    answer = tab.post(form.action, {**form.fields, "withdraw": str(number), "once": "other"})
    assert answer.status == 200
    assert number not in load(tmp_path / "petrel.toml", the_book()).standing


def test_pressed_twice_saved_once(tab: Browser, tmp_path: Path) -> None:
    form = tab.get(NOTE).form("note")
    for _ in range(3):
        answer = tab.post(form.action, {**form.fields, "words": "9 psi at hot idle"})
        assert answer.status == 200
        assert "Saved" in answer.words
    assert "no 21" not in answer.words
    text = (tmp_path / "petrel.toml").read_text("utf-8")
    assert text.count('pressure = "9 psi"') == 1


@pytest.mark.parametrize("by_command", [False, True])
def test_the_same_thing_entered_elsewhere(tab: Browser, tmp_path: Path, by_command: bool) -> None:
    """The later one sees it, its own input still there; saved again, both stand in the file."""
    mine = tab.get(NOTE)
    if by_command:
        assert (
            call("record", tmp_path / "petrel.toml", "main 3 is 4.5 thou", "--by", "Bo").code == 0
        )
    else:
        tab.send(tab.get(NOTE), "note", words="main 3 is 4.5 thou", by="Bo")
    page = tab.send(mine, "note", words="main 3 is 3 thou")
    assert page.status == 409
    assert "4.5 thou (main 3), by Bo" in page.words
    assert page.form("note").fields["words"] == ["main 3 is 3 thou"]
    assert "3 thou" not in (tmp_path / "petrel.toml").read_text("utf-8").replace("4.5 thou", "")
    assert tab.send(page, "note").status == 200
    text = (tmp_path / "petrel.toml").read_text("utf-8")
    assert '"4.5 thou"' in text
    assert '"3 thou"' in text


def test_other_things_entered_elsewhere_do_not_stop_it(tab: Browser, tmp_path: Path) -> None:
    mine = tab.get(NOTE)
    call("record", tmp_path / "petrel.toml", "oil level ok")
    assert tab.send(mine, "note", words="no 3 main 4.5 thou").status == 200
    assert {"level_correct", "main_clearance"} <= set(entries(tmp_path))


def test_a_job_closed_elsewhere_is_noticed(tmp_path: Path) -> None:
    folder = jobs_in(tmp_path, "gannet")
    path = folder / "gannet.toml"
    case = load(path, the_book())
    assert case.closed is not None
    before = path.read_bytes()
    with pytest.raises(MeanwhileError) as error:
        save(path, [Input(facts=["oil level ok"])], Version(case.closed.entry.no - 1, "x"))
    assert error.value.closed
    assert path.read_bytes() == before


def test_a_job_is_not_closed_over_what_nobody_saw(tmp_path: Path) -> None:
    """An entry made between the form and the writing stops it, unless the person insists."""
    path = jobs_in(tmp_path, "petrel") / "petrel.toml"
    seen = Version(load(path, the_book()).last_number, "x")
    record(path, the_book(), Input(facts=["oil level ok"]))
    before = path.read_bytes()
    given = ClosingInput(causes=["relief_debris"], how="seen", reason="enough")
    with pytest.raises(MeanwhileError) as error:
        end(path, given, seen)
    assert error.value.numbers == (seen.last + 1,)
    assert path.read_bytes() == before
    end(path, given, seen, insist=True)
    assert load(path, the_book()).closed is not None


def test_a_question_answered_elsewhere(tab: Browser, tmp_path: Path) -> None:
    """The interview goes on with the next question and says so; the answer is not written twice."""
    one, two = tab.get("/job/petrel.toml/ask"), tab.get("/job/petrel.toml/ask")
    assert tab.send(one, "ask", answer="d").status == 200
    text = (tmp_path / "petrel.toml").read_text("utf-8")
    late = tab.send(two, "ask", answer="d")
    assert late.status == 409
    assert "answered in another place" in late.words
    assert (tmp_path / "petrel.toml").read_text("utf-8") == text


def test_many_writers_at_once_lose_nothing(tab: Browser, tmp_path: Path) -> None:
    """Each writes its own bearing, by two servers and as ``record`` does, from one state of it."""
    path, other = tmp_path / "petrel.toml", browser(tmp_path)
    forms = [(each, each.get(NOTE).form("note")) for each in (tab, other)]
    statuses: list[int] = []

    def write(place: int) -> None:
        if place % 3 == 2:
            record(
                path, the_book(), Input(facts=[_words(place)], details=Details(where=_at(place)))
            )
            return
        server, form = forms[place % 3]
        one = Browser(server.app, cookies=dict(server.cookies))
        statuses.append(one.post(form.action, _given(form, place), follow=False).status)

    _together(write, WRITERS)
    assert set(statuses) == {303}
    _all_there(path)


@pytest.mark.long
def test_many_processes_at_once_lose_nothing(tmp_path: Path) -> None:
    """Twenty-five commands and twenty-five browsers at two servers, each in its own process."""
    path = jobs_in(tmp_path, "petrel") / "petrel.toml"
    statuses: list[int] = []
    with serving(folder=tmp_path) as one, serving(folder=tmp_path) as two:
        tabs = [Browser(wire(int(base.rpartition(":")[2]))) for base in (one, two)]
        forms = [(each, each.get(NOTE).form("note")) for each in tabs]

        def write(place: int) -> None:
            if place % 2:
                done = run("record", path, _words(place), "--where", _at(place))
                statuses.append(303 if done.code == 0 else done.code)
                return
            server, form = forms[place % 4 // 2]
            tab = Browser(server.app, cookies=dict(server.cookies))
            statuses.append(tab.post(form.action, _given(form, place), follow=False).status)

        _together(write, WRITERS)
    assert statuses == [303] * WRITERS
    _all_there(path)


def _words(place: int) -> str:
    return f"main bearing clearance {2 + place / 10:.1f} thou"


def _at(place: int) -> str:
    return f"main {place}"


def _given(form: Form, place: int) -> dict[str, str | list[str]]:
    return {**form.fields, "words": _words(place), "where": _at(place), "once": f"n{place}"}


def _all_there(path: Path) -> None:
    """Every value stands in the file, once, under a number of its own."""
    case = load(path, the_book())
    found = [(m.entry.where, m.entry.value) for m in case.measurements if m.entry.where]
    wanted = [(_at(i), f"{2 + i / 10:.1f} thou") for i in range(WRITERS)]
    assert sorted(f for f in found if f in wanted) == sorted(wanted)


def _together(write: Callable[[int], None], count: int) -> None:
    threads = [threading.Thread(target=write, args=(i,)) for i in range(count)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()


def test_a_full_disk_is_said_and_nothing_is_lost(
    tab: Browser, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(_: int) -> None:
        raise OSError(28, "No space left on device")

    page = tab.get(NOTE)
    before = (tmp_path / "petrel.toml").read_bytes()
    monkeypatch.setattr(os, "fsync", full)
    answer = tab.send(page, "note", words="oil level ok")
    assert answer.status == 409
    assert "No space left on device" in answer.words
    assert (tmp_path / "petrel.toml").read_bytes() == before


def test_a_new_server_takes_up_where_the_old_one_stopped(tab: Browser, tmp_path: Path) -> None:
    """A form of the old one is shown again with all that was put in, and saved by one press."""
    page = tab.get(NOTE)
    asked = tab.get("/job/petrel.toml/ask")
    after = browser(tmp_path)
    after.cookies = dict(tab.cookies)
    again = after.send(page, "note", words="oil level ok", by="Ann")
    assert "not saved yet" in again.words
    assert after.send(again, "note").status == 200
    assert entries(tmp_path)["level_correct"] == 1
    again = after.send(asked, "ask", answer="d")
    assert after.send(again, "ask").status == 200
