"""``close``: a job is closed only with its reasons, and what is written can be read back."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.diagnosis import Diagnosis
from diagnose.signoff.closing import obstacles
from knowledge.book import the_book
from knowledge.work import Hold
from tests.support.command_line import ROOT, call

BOOK = the_book()


@pytest.fixture
def petrel(tmp_path: Path) -> Path:
    """A job settled and confirmed, its sign-off not begun."""
    return Path(shutil.copy(ROOT / "cases" / "petrel.toml", tmp_path / "petrel.toml"))


def test_an_open_job_needs_a_reason_to_close(petrel: Path) -> None:
    before = petrel.read_bytes()
    done = call("close", petrel, "--how", "chip seen on the seat")
    assert done.code == 2
    assert "not followed" in done.err
    assert "--reason" in done.err
    assert petrel.read_bytes() == before


def test_a_reason_closes_it_and_is_kept_with_what_was_open(petrel: Path) -> None:
    done = call(
        "close", petrel, "--how", "chip seen", "--minutes", "95 min", "--reason", "laid up", "--by",
        "Nuala",
    )  # fmt: skip
    assert done.code == 0, done.err
    closed = load(petrel, BOOK).closed
    assert closed is not None
    assert [c.id for c in closed.causes] == ["relief_debris"]
    assert closed.minutes == pytest.approx(95)
    assert closed.entry.reason.startswith("laid up; ")
    assert "not followed" in closed.entry.reason
    assert closed.entry.remedy == BOOK.causes["relief_debris"].remedy


@pytest.mark.parametrize(
    ("words", "message"),
    [
        (("--how", "seen", "--cause", "relief_debri", "--reason", "x"), "relief_debris"),
        (("--reason", "x"), "--how"),
        (("--how", "seen", "--minutes", "95 psi", "--reason", "x"), "--minutes"),
    ],
)
def test_bad_words(petrel: Path, words: tuple[str, ...], message: str) -> None:
    before = petrel.read_bytes()
    done = call("close", petrel, *words)
    assert done.code == 2
    assert message in done.err
    assert "Traceback" not in done.err
    assert petrel.read_bytes() == before


def test_an_unsettled_job_needs_its_cause_named(tmp_path: Path) -> None:
    case = tmp_path / "skua.toml"
    case.write_text(
        'schema = 1\n[[finding]]\nno = 1\nwhat = "gauge_reads_low"\nstate = "present"\n', "utf-8"
    )
    done = call("close", case, "--how", "guessed", "--reason", "sold")
    assert done.code == 2
    assert "name it" in done.err
    words = (
        "close", case, "--how", "guessed", "--cause", "not_in_the_book", "--reason", "sold",
        "--comeback-of", "older.toml",
    )  # fmt: skip
    done = call(*words)
    assert done.code == 2
    assert "no job 'older.toml'" in done.err
    (tmp_path / "older.toml").write_text("schema = 1\n", "utf-8")
    done = call(*words)
    assert done.code == 0, done.err
    closed = load(case, BOOK).closed
    assert closed is not None
    assert closed.entry.comeback == "older.toml"
    assert "no cause is confirmed" in closed.entry.reason


def test_the_job_that_is_done_has_nothing_in_the_way_but_its_shortfall() -> None:
    answer = Diagnosis(BOOK, load(ROOT / "cases" / "gannet.toml", BOOK))
    (left,) = obstacles(answer, 0.9)
    assert "missing pressure" in left


def test_a_failed_check_and_a_weak_first_start_block_closing(tmp_path: Path) -> None:
    """Also where the check may wait: closing quietly is for jobs that came out right."""
    case = tmp_path / "gannet.toml"
    text = (ROOT / "cases" / "gannet.toml").read_text("utf-8")
    case.write_text(text, "utf-8")
    book_task = next(
        t for t in BOOK.tasks.values() if t.hold is not Hold.STOP and not t.dimension
        and f'what = "{t.id}"' in text
    )  # fmt: skip
    assert call("record", case, f"{book_task.id}=failed", "--note", "came loose").code == 0
    assert call("record", case, "--reading", "2000 rpm 90 C 9 psi direct start").code == 0
    found = obstacles(Diagnosis(BOOK, load(case, BOOK)), 0.9)
    assert any(f"sign-off failed: {book_task.says}" in line for line in found)
    assert any("first start read less" in line for line in found)
    shown = call("signoff", case).out
    assert f"FAILED: {book_task.says.split(',')[0]}" in " ".join(shown.split())


def test_a_closed_job_is_closed_again_only_with_a_reason(tmp_path: Path) -> None:
    case = tmp_path / "gannet.toml"
    case.write_text((ROOT / "cases" / "gannet.toml").read_text("utf-8"), "utf-8")
    before = case.read_bytes()
    done = call("close", case, "--how", "seen", "--cause", "pickup_tube_loose")
    assert (done.code, done.out) == (2, "")
    assert "already closed, entry 121" in done.err
    assert case.read_bytes() == before
    again = call(
        "close", case, "--how", "seen", "--cause", "pickup_tube_loose", "--reason", "came back"
    )
    assert again.code == 0, again.err
    closed = load(case, BOOK).closed
    assert closed is not None
    assert closed.entry.no > 121
    assert closed.entry.reason.startswith("came back")
    assert case.read_bytes().startswith(before)


@pytest.mark.parametrize(
    ("words", "cause"),
    [
        ("main bearings worn", "bearing_wear_mains"),
        ("main bearings worn, clearance too wide", "bearing_wear_mains"),
        ("debris under the relief", "relief_debris"),
        ("pickup-tube-cracked", "pickup_tube_cracked"),
    ],
)
def test_a_cause_can_be_named_in_words(words: str, cause: str, petrel: Path) -> None:
    """As the tool says it, or nearly so."""
    done = call("close", petrel, "--how", "seen", "--cause", words, "--reason", "laid up")
    assert done.code == 0, done.err
    closed = load(petrel, BOOK).closed
    assert closed is not None
    assert [c.id for c in closed.causes] == [cause]


def test_words_that_may_mean_several_causes_list_them(petrel: Path) -> None:
    """The three nearest, each with its id."""
    done = call("close", petrel, "--how", "seen", "--cause", "worn out", "--reason", "x")
    assert done.code == 2
    assert "pump_gear_wear" in done.err
    assert "bearing_wear_mains" in done.err
    assert "not_in_the_book" in done.err


def test_all_that_is_missing_is_named_at_once(tmp_path: Path) -> None:
    """The cause with those that are likeliest, how it was confirmed, what is open, the time."""
    case = tmp_path / "skua.toml"
    case.write_text(
        'schema = 1\n[[finding]]\nno = 1\nwhat = "gauge_reads_low"\nstate = "present"\n', "utf-8"
    )
    done = call("close", case, "--minutes", "soon")
    leaders = Diagnosis(BOOK, load(case, BOOK)).ranking[:3]
    assert done.code == 2
    for said in ("name it", *(r.cause.id for r in leaders), "--how", "--minutes", "still open"):
        assert said in done.err, said


def test_closing_again_names_the_end_before(petrel: Path) -> None:
    """Its number and reason are on the screen; nothing is replaced without a word."""
    first = call("close", petrel, "--how", "seen", "--reason", "laid up")
    assert "in place of" not in first.out
    closed = load(petrel, BOOK).closed
    assert closed is not None
    again = call("close", petrel, "--how", "seen", "--cause", "relief_debris", "--reason", "sold")
    assert f"in place of entry {closed.entry.no}, " in again.out
    assert "laid up" in again.out
