"""A command writes the file that was named, all of it or nothing, and no other."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from diagnose.case.loading import LARGEST, load
from diagnose.case.writing import NewEntry, append, append_by, start, table_text
from diagnose.errors import CannotWriteError, UsageError
from knowledge.book import the_book
from tests.support.command_line import call
from tests.support.watching import snapshot

BOOK = the_book()
EVIL = "../../evil\x1b[31m\u202e\n[[finding]]\nno = 9\n$(touch evil) `touch evil` /etc/evil"


def test_a_case_cannot_make_a_command_write_elsewhere(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Paths, commands and tables in every field of a case, and in every word of a command."""
    inside = tmp_path / "inside"
    inside.mkdir()
    monkeypatch.chdir(inside)
    case = inside / "x.toml"
    start(case, BOOK, {"title": EVIL, "complaint": EVIL, "source": EVIL, "note": EVIL})
    entry = {"what": "bearing_knock", "state": "present", "note": EVIL, "where": EVIL, "by": EVIL}
    append(case, BOOK, [("finding", entry)])
    before = snapshot(tmp_path)
    answers = f"{EVIL}\nstop\n"
    for words in (
        ["review", case],
        ["review", case, "--json"],
        ["graph", case, "--focus", "bearing_wiped"],
        ["graph", case, "--focus", EVIL],
        ["record", case, EVIL],
        ["record", case, "--reading", EVIL],
        ["lookup", EVIL],
        ["show", EVIL],
    ):
        done = call(*words, answers=answers)
        assert done.code in (0, 2)
        assert "\x1b" not in done.out + done.err
        assert "\u202e" not in done.err
    assert snapshot(tmp_path) == before
    done = call("record", case, "needle_flickers=no", "--note", EVIL, "--where", EVIL, "--by", EVIL)
    assert done.code == 0
    after = snapshot(tmp_path)
    assert after.keys() == before.keys()
    assert after[str(case)].startswith(before[str(case)])
    assert [s.entry.note for s in load(case, BOOK).finding_records] == [EVIL, EVIL]
    done = call("ask", case, answers=answers)
    assert done.code == 0
    assert snapshot(tmp_path).keys() == before.keys()


def test_a_graph_never_overwrites_a_case(tmp_path: Path) -> None:
    case = tmp_path / "x.toml"
    start(case, BOOK, {"title": "x"})
    link = tmp_path / "x.json"
    link.symlink_to(case)
    before = case.read_bytes()
    for out in (case, link, tmp_path / "y.toml", tmp_path / "inner" / ".." / "x.toml"):
        code, _, err = call("graph", case, "--out", out)
        assert (code, len(err.splitlines())) == (2, 1)
        assert "is the name of a case" in err
    assert case.read_bytes() == before
    assert not (tmp_path / "y.toml").exists()


def test_a_graph_is_written_whole_or_not_at_all(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    case, out = tmp_path / "x.toml", tmp_path / "x.dot"
    start(case, BOOK, {"title": "x"})
    assert call("graph", case, "--format", "dot", "--out", out).code == 0
    whole = out.read_bytes()
    assert whole.startswith(b"digraph")

    def full(_: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    code, _, err = call("graph", case, "--format", "bif", "--out", out)
    assert code == 73
    assert "No space left" in err
    assert out.read_bytes() == whole
    for place, reason in (("no/x", "there is no such folder"), (".", "Is a directory")):
        code, _, err = call("graph", case, "--out", tmp_path / place)
        assert (code, reason in err, len(err.splitlines())) == (73, True, 1)


def test_nothing_or_all_of_a_command_is_recorded(tmp_path: Path) -> None:
    case = tmp_path / "x.toml"
    start(case, BOOK, {"title": "x"})
    before = case.read_bytes()
    code, out, err = call(
        "record",
        case,
        "bearing_knock=yes",
        "main_clearance=9 mm",
        "--reading",
        "700 rpm 900 psi",
    )
    assert (code, out) == (2, "")
    assert err.splitlines() == [
        "not saved: main_clearance: '9 mm' cannot be a main bearing clearance, on the diameter; "
        "expected 0 mm to 2 mm",
        "not saved: reading: pressure '900 psi' cannot be right; expected 0 psi to 300 psi",
    ]
    assert case.read_bytes() == before


def test_a_start_never_overwrites_a_case(tmp_path: Path) -> None:
    case = tmp_path / "x.toml"
    start(case, BOOK, {"title": "x"})
    with pytest.raises(CannotWriteError, match="exists already"):
        start(case, BOOK, {"title": "y"})
    assert load(case, BOOK).job.title == "x"
    with pytest.raises(UsageError, match=r"not saved: job\.title: 10,001 characters"):
        start(tmp_path / "y.toml", BOOK, {"title": "x" * 10_001})
    assert not (tmp_path / "y.toml").exists()


def test_a_case_never_grows_past_what_can_be_read(tmp_path: Path) -> None:
    case = tmp_path / "x.toml"
    start(case, BOOK, {"title": "x"})
    note = table_text("[[finding]]", {"no": 1, "what": "bearing_knock", "state": "unknown"})
    padding = "# " + "x" * (LARGEST - len(case.read_bytes()) - len(note) - 100) + "\n"
    case.write_text(case.read_text() + padding + note)
    before = case.read_bytes()
    fields = {"what": "bearing_knock", "state": "present", "note": "y" * 1000}
    with pytest.raises(CannotWriteError, match="larger than 2,000,000 bytes"):
        append(case, BOOK, [("finding", fields)])
    assert case.read_bytes() == before
    assert load(case, BOOK).last_number == 1


def test_what_goes_wrong_while_entries_are_made_writes_nothing(tmp_path: Path) -> None:
    case = tmp_path / "x.toml"
    start(case, BOOK, {"title": "x"})
    before = snapshot(tmp_path)

    def broken(_: object) -> list[NewEntry]:
        raise ZeroDivisionError

    with pytest.raises(ZeroDivisionError):
        append_by(case, BOOK, broken)
    assert snapshot(tmp_path) == before
    append(case, BOOK, [("finding", {"what": "bearing_knock", "state": "present"})])
