"""Full disks and missing rights: one line, exit code 73, and the old file stays."""

from __future__ import annotations

import errno
import os
import subprocess
import sys
from pathlib import Path

import pytest

from diagnose.case.disk import locked, ready
from diagnose.case.loading import load
from diagnose.case.writing import start
from diagnose.errors import CannotWriteError
from tests.case.test_writing import BOOK, EXAMPLE, case, leftovers, note, notes
from tests.support.command_line import anyones, as_nobody, call, environment

__all__ = ["anyones", "case"]


@pytest.mark.parametrize("number", [errno.ENOSPC, errno.EDQUOT, errno.EIO])
def test_a_full_disk_leaves_the_old_case(
    case: Path, number: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(_: int) -> None:
        raise OSError(number, os.strerror(number))

    before = case.read_bytes()
    monkeypatch.setattr(os, "fsync", full)
    code, out, err = call("record", case, "bearing_knock=yes")
    reason = f"{case}: not saved, {os.strerror(number)}; the old file is unchanged\n"
    assert (code, out, err) == (73, "", reason)
    assert case.read_bytes() == before
    assert leftovers(case) == []


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="no /dev/full here")
def test_an_answer_to_a_full_disk() -> None:
    """On a full disk an answer half written is no answer."""
    for words in (["lookup", "needle"], ["show", "bearing_knock", "--json"]):
        with Path("/dev/full").open("w") as full:
            done = subprocess.run(
                [sys.executable, "-m", "diagnose", *words],
                stdout=full,
                stderr=subprocess.PIPE,
                env=environment(),
                text=True,
                check=False,
            )
        err = "standard output: No space left on device; the answer is incomplete\n"
        assert (done.returncode, done.stderr) == (73, err)
    code, _, err = call("graph", EXAMPLE, "--out", "/dev/full")
    assert (code, err) == (73, "/dev/full: not saved, No space left on device\n")


def test_a_folder_one_may_only_read(anyones: Path) -> None:
    path = anyones / "x.toml"
    start(path, BOOK, {"title": "x"})
    path.chmod(0o666)
    anyones.chmod(0o555)
    before = path.read_bytes()
    commands: list[list[str | Path]] = [
        ["record", path, "bearing_knock=yes"],
        ["ask", path],
        ["ask", anyones / "y.toml"],
    ]
    for words in commands:
        code, _, err = as_nobody(*words)
        assert code == 73
        assert len(err.splitlines()) == 1
        assert "not saved" in err
    assert path.read_bytes() == before


def test_a_file_one_may_only_read(anyones: Path) -> None:
    path = anyones / "x.toml"
    start(path, BOOK, {"title": "x"})
    path.chmod(0o444)
    code, _, err = as_nobody("record", path, "bearing_knock=yes")
    assert (code, "the file is read-only" in err) == (73, True)
    assert path.stat().st_mode & 0o777 == 0o444


def test_rights_are_kept_and_new_files_get_the_usual_ones(case: Path) -> None:
    case.chmod(0o640)
    note(case, "x")
    assert case.stat().st_mode & 0o777 == 0o640
    old = os.umask(0o077)
    try:
        start(case.with_name("y.toml"), BOOK, {"title": "y"})
    finally:
        os.umask(old)
    assert case.with_name("y.toml").stat().st_mode & 0o777 == 0o600


def test_a_link_stays_a_link(case: Path, tmp_path: Path) -> None:
    away = tmp_path / "away"
    away.mkdir()
    link, second = away / "link.toml", away / "second.toml"
    link.symlink_to("../petrel.toml")
    second.symlink_to(link)
    note(second, "x")
    assert link.is_symlink()
    assert second.is_symlink()
    assert notes(case) == ["x"]
    new = away / "new.toml"
    new.symlink_to(tmp_path / "made.toml")
    start(new, BOOK, {"title": "x"})
    assert new.is_symlink()
    assert load(tmp_path / "made.toml", BOOK).job.title == "x"
    loop = away / "loop.toml"
    loop.symlink_to(loop)
    with pytest.raises(CannotWriteError):
        start(loop, BOOK, {"title": "x"})
    assert sorted(p.name for p in away.iterdir()) == [
        "link.toml",
        "loop.toml",
        "new.toml",
        "second.toml",
    ]


def test_what_is_ready_to_be_written(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A file that may be written, or may be made; not one, nor a folder, without the right."""
    case, new = tmp_path / "case.toml", tmp_path / "new.toml"
    case.write_text("schema = 1\n", "utf-8")
    ready(case)
    ready(new)
    assert not new.exists()
    real = os.access
    monkeypatch.setattr(os, "access", lambda p, m: Path(p) != case and real(p, m))
    with pytest.raises(CannotWriteError, match="read-only"):
        ready(case)
    monkeypatch.setattr(os, "access", lambda p, m: Path(p) != tmp_path and real(p, m))
    with pytest.raises(CannotWriteError, match="no permission to write in that folder"):
        ready(new)


def test_a_system_that_opens_no_folders_is_written_to_without_a_lock(
    case: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Another command may be writing there, so its temporary files are left alone."""

    class System:
        name = "nt"

        def __getattr__(self, word: str) -> object:
            return getattr(os, word)

        def open(self, *_: object) -> int:
            raise PermissionError(errno.EACCES, "no folder is opened here")

    monkeypatch.setattr("diagnose.case.disk.os", System())
    with locked(case) as place:
        assert not place.alone
    monkeypatch.setattr(System, "name", "posix")
    with pytest.raises(CannotWriteError, match="no folder is opened here"), locked(case):
        pass
