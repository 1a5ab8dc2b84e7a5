"""Writing whole files: waiting for the lock, rights, what counts as a file, the messages."""

from __future__ import annotations

import errno
import fcntl
import os
import stat
import sys
from pathlib import Path

import pytest

from diagnose.case import disk
from diagnose.case.disk import Place, atomic_write, locked, ready, write_plain
from diagnose.errors import CannotWriteError, UsageError


class Clock:
    """A clock that only sleeping moves on."""

    def __init__(self) -> None:
        self.now = 1000.0
        self.sleeps: list[float] = []

    def monotonic(self) -> float:
        return self.now

    def sleep(self, seconds: float) -> None:
        self.sleeps.append(seconds)
        self.now += seconds


def held(*_: object) -> None:
    raise BlockingIOError(errno.EAGAIN, "held by another")


def place_of(path: Path, alone: bool = True) -> Place:
    return Place(path, path, alone)


# ------------------------------------------------------------------------ the lock


def test_a_lock_is_waited_for_half_a_minute(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Looked at often, given up after 30 seconds and not before."""
    clock = Clock()
    monkeypatch.setattr(disk, "time", clock)
    monkeypatch.setattr(fcntl, "flock", held)
    with pytest.raises(CannotWriteError, match="another command keeps writing there"):  # noqa: SIM117
        with locked(tmp_path / "x.toml"):
            pass
    assert sum(clock.sleeps) == pytest.approx(30.0, abs=0.1)
    assert 0.0 < max(clock.sleeps) <= 0.1


def test_a_lock_that_is_let_go_is_taken(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    clock = Clock()
    asked: list[int] = []

    def soon(_: int, how: int) -> None:
        asked.append(how)
        if clock.now < 1002.0:
            held()

    monkeypatch.setattr(disk, "time", clock)
    monkeypatch.setattr(fcntl, "flock", soon)
    with locked(tmp_path / "x.toml") as place:
        assert place.alone
    assert sum(clock.sleeps) == pytest.approx(2.0, abs=0.1)
    assert all(how & fcntl.LOCK_EX and how & fcntl.LOCK_NB for how in asked)
    assert not any(how & fcntl.LOCK_UN for how in asked)


@pytest.mark.parametrize("number", [errno.EIO, errno.EACCES])
def test_a_lock_refused_for_another_reason_stops_the_writing(
    tmp_path: Path, number: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refused(*_: object) -> None:
        raise OSError(number, "refused")

    monkeypatch.setattr(fcntl, "flock", refused)
    with pytest.raises(CannotWriteError, match="not saved, refused"):  # noqa: SIM117
        with locked(tmp_path / "x.toml"):
            pass


@pytest.mark.parametrize("number", disk.NO_LOCKS)
def test_a_file_system_without_locks_is_written_to_alone_by_nobody(
    tmp_path: Path, number: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    def none(*_: object) -> None:
        raise OSError(number, "no locks")

    monkeypatch.setattr(fcntl, "flock", none)
    with locked(tmp_path / "x.toml") as place:
        assert not place.alone


def test_a_system_without_the_lock_call_is_written_to(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Its Python has no fcntl; another command's half-written file is left alone there."""
    monkeypatch.setitem(sys.modules, "fcntl", None)
    other = tmp_path / ".diagnose-other.new"
    other.write_text("half", "utf-8")
    with locked(tmp_path / "x.toml") as place:
        assert not place.alone
        atomic_write(place, "whole")
    assert (tmp_path / "x.toml").read_text("utf-8") == "whole"
    assert other.exists()


def test_of_a_folder_that_is_not_there_and_of_a_circle(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("", "utf-8")
    (tmp_path / "loop").symlink_to(tmp_path / "loop")
    for name, says in (
        ("nowhere/x.toml", "there is no such folder"),
        ("file/in/x.toml", "there is no such folder"),
        ("loop", "its links lead in a circle"),
    ):
        with pytest.raises(CannotWriteError, match=says):  # noqa: SIM117
            with locked(tmp_path / name):
                pass


# ------------------------------------------------------------------------ rights


def test_which_rights_are_asked_for(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """To write the file; to write in its folder and to enter it."""
    path = tmp_path / "x.toml"
    path.write_text("", "utf-8")
    for denied, says in (
        ((path, os.W_OK), "the file is read-only"),
        ((tmp_path, os.W_OK), "no permission to write in that folder"),
        ((tmp_path, os.X_OK), "no permission to write in that folder"),
    ):
        monkeypatch.setattr(os, "access", lambda p, m, no=denied: (Path(p), m) != no)
        with pytest.raises(CannotWriteError, match=says):
            ready(path)
    monkeypatch.setattr(os, "access", lambda p, m: m in (os.W_OK, os.X_OK))
    ready(path)


def test_a_file_that_cannot_be_looked_at_is_not_ready(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def broken(_: object) -> None:
        raise OSError(errno.EIO, "the disk is broken")

    with monkeypatch.context() as patched:
        patched.setattr(os, "lstat", broken)
        with pytest.raises(CannotWriteError, match="the disk is broken"):
            ready(tmp_path / "x.toml")


@pytest.mark.parametrize("mask", [0o000, 0o022, 0o027, 0o077])
def test_a_new_file_may_be_read_and_written_by_whom_the_user_allows(
    tmp_path: Path, mask: int
) -> None:
    before = os.umask(mask)
    try:
        atomic_write(place_of(tmp_path / "x.toml"), "text")
        assert os.umask(mask) == mask, "and the mask is as it was"
    finally:
        os.umask(before)
    assert stat.S_IMODE((tmp_path / "x.toml").stat().st_mode) == 0o666 & ~mask


@pytest.mark.parametrize(
    ("old", "new"), [(0o640, 0o640), (0o601, 0o601), (0o755, 0o755), (0o4755, 0o755)]
)
def test_an_old_file_keeps_its_rights_and_no_special_ones(
    tmp_path: Path, old: int, new: int
) -> None:
    path = tmp_path / "x.toml"
    path.write_text("", "utf-8")
    path.chmod(old)
    atomic_write(place_of(path), "text")
    assert stat.S_IMODE(path.stat().st_mode) == new


# ------------------------------------------------------------------------ what is written where


def test_what_cannot_be_written_as_text_leaves_the_old_file(tmp_path: Path) -> None:
    path = tmp_path / "x.toml"
    with pytest.raises(CannotWriteError) as new:
        atomic_write(place_of(path), "\ud800")
    assert "the old file" not in str(new.value), "there was nothing"
    assert "surrogates not allowed" in str(new.value)
    path.write_text("old", "utf-8")
    with pytest.raises(CannotWriteError, match="the old file is unchanged"):
        atomic_write(place_of(path), "\ud800")
    assert path.read_text("utf-8") == "old"
    assert list(tmp_path.iterdir()) == [path]


@pytest.mark.parametrize("out", ["a.json", "z.json", "m.cas", "m.cases"])
def test_a_plain_file_is_written_beside_a_case(tmp_path: Path, out: str) -> None:
    case = tmp_path / "m.case"
    case.write_text("case", "utf-8")
    write_plain(tmp_path / out, "text", case)
    assert (tmp_path / out).read_text("utf-8") == "text"
    assert case.read_text("utf-8") == "case"


@pytest.mark.parametrize("out", ["m.case", "./m.case", "other.toml", "OTHER.TOML"])
def test_a_plain_file_never_takes_a_cases_name(tmp_path: Path, out: str) -> None:
    case = tmp_path / "m.case"
    case.write_text("case", "utf-8")
    with pytest.raises(UsageError, match="is the name of a case"):
        write_plain(tmp_path / out, "text", case)
    assert case.read_text("utf-8") == "case"
    assert list(tmp_path.iterdir()) == [case]


def test_a_file_is_replaced_whole_and_a_pipe_written_to(tmp_path: Path) -> None:
    """A second name of the old file keeps the old text; a pipe stays a pipe."""
    case, path, twin, pipe = (tmp_path / name for name in ("c.toml", "x.json", "twin", "pipe"))
    path.write_text("old", "utf-8")
    os.link(path, twin)
    write_plain(path, "new", case)
    assert (path.read_text("utf-8"), twin.read_text("utf-8")) == ("new", "old")
    os.mkfifo(pipe)
    end = os.open(pipe, os.O_RDWR | os.O_NONBLOCK)
    try:
        write_plain(pipe, "through", case)
        assert os.read(end, 100) == b"through"
    finally:
        os.close(end)
    assert stat.S_ISFIFO(pipe.stat().st_mode)


def test_a_folder_is_no_file_to_write(tmp_path: Path) -> None:
    with pytest.raises(CannotWriteError, match="directory"):
        write_plain(tmp_path, "text", tmp_path / "c.toml")
    assert list(tmp_path.iterdir()) == []
