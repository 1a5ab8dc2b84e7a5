"""Nothing saved is lost: killed writers, two writers, full disks, links, other files."""

from __future__ import annotations

import errno
import os
import random
import signal
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

import pytest

from diagnose.case import disk
from diagnose.case.loading import load
from diagnose.case.writing import append, start
from knowledge.book import the_book
from tests.support.command_line import anyones, call, environment

__all__ = ["anyones"]
BOOK = the_book()
EXAMPLE = Path(__file__).parents[1] / "confirmed" / "cases" / "A14.toml"


@pytest.fixture
def case(tmp_path: Path) -> Path:
    path = tmp_path / "petrel.toml"
    start(path, BOOK, {"title": "Petrel"}, {"layout": "distributor_v8"})
    return path


def note(path: Path, text: str) -> int:
    """Record one finding with a note; its number."""
    fields = {"what": "bearing_knock", "state": "present", "where": text, "note": text}
    return append(path, BOOK, [("finding", fields)]).last_number


def notes(path: Path) -> list[str]:
    return [s.entry.note for s in load(path, BOOK).finding_records]


def leftovers(path: Path) -> list[str]:
    return sorted(p.name for p in path.parent.iterdir() if p != path)


# --------------------------------------------------------------------------- killed writers


def writer(path: Path, acknowledge: int, name: str) -> None:
    """Record for ever, telling each number once it is saved."""
    count = 0
    while True:
        note(path, f"{name}.{count}")
        os.write(acknowledge, f"{name}.{count}\n".encode())
        count += 1


def forked(work: Callable[[], None]) -> int:
    """A child process at that work."""
    child = os.fork()
    if child == 0:
        try:
            work()
            os._exit(0)
        finally:
            os._exit(1)
    return child


def killed_writer(path: Path, name: str, seconds: float) -> list[str]:
    """What a writer acknowledged before it was killed."""
    read_end, write_end = os.pipe()
    child = forked(lambda: writer(path, write_end, name))
    os.close(write_end)
    time.sleep(seconds)
    os.kill(child, signal.SIGKILL)
    os.waitpid(child, 0)
    with os.fdopen(read_end) as pipe:
        return pipe.read().split()


def kill_many(path: Path, times: int) -> None:
    """Kill so many writers; each leaves a case that opens, with all it had said was saved."""
    choose = random.Random(times)
    kept: list[str] = []
    for i in range(times):
        before = path.read_text()
        kept += killed_writer(path, str(i), choose.uniform(0.0, 0.05))
        assert path.read_text().startswith(before)
        there = notes(path)
        # the last one may have been saved and not yet acknowledged
        assert [n for n in there if n in kept] == kept
        assert len(there) - len(kept) <= i + 1
        if len(there) > 100:
            path.unlink()
            start(path, BOOK, {"title": "next"})
            kept = []
    assert len(leftovers(path)) <= 1, "a killed command's leavings are swept by the next"
    note(path, "last")
    assert leftovers(path) == []


def test_killed_writers_lose_nothing(case: Path) -> None:
    kill_many(case, 60)


@pytest.mark.long
def test_very_many_killed_writers_lose_nothing(case: Path) -> None:
    kill_many(case, 600)


@pytest.mark.parametrize("times", [4, pytest.param(100, marks=pytest.mark.long)])
def test_killed_commands_lose_nothing(case: Path, times: int) -> None:
    """The same with the command itself, killed somewhere between start and end."""
    words = [sys.executable, "-m", "diagnose", "record", str(case), "bearing_knock=yes"]
    choose = random.Random(1)
    for i in range(times):
        before = case.read_text()
        with subprocess.Popen(
            [*words, "--where", str(i)], env=environment(), stdout=subprocess.PIPE, text=True
        ) as process:
            try:
                out, _ = process.communicate(timeout=choose.uniform(0.3, 1.2))
            except subprocess.TimeoutExpired:
                process.kill()
                out, _ = process.communicate()
        assert case.read_text().startswith(before)
        places = [s.entry.where for s in load(case, BOOK).finding_records]
        assert "saved in" not in out or str(i) in places


@pytest.mark.parametrize("step", ["mkstemp", "fsync", "replace"])
def test_an_interrupt_at_any_step_leaves_the_old_case(
    case: Path, step: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    def interrupted(*_: object, **__: object) -> None:
        raise KeyboardInterrupt

    before = case.read_bytes()
    module = tempfile if step == "mkstemp" else os
    monkeypatch.setattr(module, step, interrupted)
    code, _, err = call("record", case, "bearing_knock=yes")
    assert (code, err.strip()) == (130, "stopped; what was saved is kept")
    assert case.read_bytes() == before
    assert leftovers(case) == []


# ------------------------------------------------------------------------------ two at once


def test_two_writers_at_once_lose_nothing(case: Path, tmp_path: Path) -> None:
    """One of them through a link in another folder."""
    away = tmp_path / "away"
    away.mkdir()
    link = away / "link.toml"
    link.symlink_to(case)
    each = 25

    def many(path: Path, name: str) -> None:
        for i in range(each):
            note(path, f"{name}.{i}")

    children = [
        forked(lambda: many(case, "a")),
        forked(lambda: many(link, "b")),
        forked(lambda: many(case, "c")),
    ]
    assert [os.waitpid(child, 0)[1] for child in children] == [0, 0, 0]
    there = notes(case)
    assert sorted(there) == sorted(f"{n}.{i}" for n in "abc" for i in range(each))
    for name in "abc":
        assert [n for n in there if n[0] == name] == [f"{name}.{i}" for i in range(each)]


def test_two_commands_on_one_finding_at_once(case: Path) -> None:
    """Each corrects the entry before it, whichever came first."""
    words = [sys.executable, "-m", "diagnose", "record", str(case)]
    running = [
        subprocess.Popen(
            [*words, f"bearing_knock={answer}"],
            env=environment(),
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
        )
        for answer in ("yes", "no", "yes")
    ]
    ends = [process.communicate(timeout=120) for process in running]
    assert [p.returncode for p in running] == [0, 0, 0], ends
    after = load(case, BOOK)
    assert after.last_number == 3
    assert len(after.finding_records) == 1
    numbers = {out.split()[0] for out, _ in ends}
    assert numbers == {"1", "2", "3"}


def test_a_writer_that_hangs_is_not_waited_for_for_ever(
    case: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(disk, "PATIENCE", 0.1)
    with disk.locked(case):
        code, _, err = call("record", case, "bearing_knock=yes")
    assert code == 73
    assert "another command keeps writing there" in err


def test_without_locks_a_case_is_still_saved(case: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    import fcntl

    def none_here(*_: object) -> None:
        raise OSError(errno.ENOLCK, "No locks available")

    monkeypatch.setattr(fcntl, "flock", none_here)
    assert note(case, "x") == 1


@pytest.mark.parametrize("locks", [True, False])
def test_what_another_command_may_be_writing_is_left_alone(
    case: Path, monkeypatch: pytest.MonkeyPatch, locks: bool
) -> None:
    """A half-written file is cleared away only by who holds the lock on the folder."""
    import fcntl

    def none_here(*_: object) -> None:
        raise OSError(errno.ENOLCK, "No locks available")

    if not locks:
        monkeypatch.setattr(fcntl, "flock", none_here)
    other = case.parent / ".diagnose-other.new"
    other.write_text("half a ca", "utf-8")
    assert note(case, "x") == 1
    assert other.exists() is not locks
