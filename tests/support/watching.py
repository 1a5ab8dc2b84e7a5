"""What this process does on disk, to other programs and to the network while it is watched."""

from __future__ import annotations

import os
import sys
import sysconfig
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path

ROOT = Path(__file__).parents[2]
_WRITES = os.O_WRONLY | os.O_RDWR | os.O_CREAT | os.O_TRUNC | os.O_APPEND
_CHANGES = {
    "os.rename", "os.remove", "os.mkdir", "os.rmdir", "os.symlink", "os.link", "os.truncate",
    "os.chmod", "os.chown", "os.utime", "shutil.rmtree", "shutil.move", "tempfile.mkstemp",
}  # fmt: skip
_READS = {"os.listdir", "os.scandir"}
_OUTSIDE = {
    "subprocess.Popen", "os.system", "os.exec", "os.posix_spawn", "os.fork", "socket.connect",
    "socket.bind", "socket.getaddrinfo",
}  # fmt: skip


@dataclass
class Seen:
    """What was met: paths that were read or changed, and other events by name."""

    read: set[str] = field(default_factory=set)
    changed: set[str] = field(default_factory=set)
    other: set[str] = field(default_factory=set)

    def note(self, event: str, words: tuple[object, ...]) -> None:
        """Note one event of the interpreter."""
        if event == "open":
            flags = words[2] if isinstance(words[2], int) else 0
            self._note(self.changed if flags & _WRITES else self.read, words[0])
        elif event in _CHANGES:
            self._note(self.changed, words[0])
            if event in ("os.rename", "os.link", "os.symlink"):
                self._note(self.changed, words[1])
        elif event in _READS:
            self._note(self.read, words[0])
        elif event in _OUTSIDE:
            self.other.add(event)

    def _note(self, where: set[str], path: object) -> None:
        if isinstance(path, bytes | str | os.PathLike):
            where.add(os.path.abspath(os.fsdecode(path)))

    def outside(self, folder: Path) -> list[str]:
        """Everything done outside a folder, but for loading the program and its libraries."""
        found = [
            f"changed {p}"
            for p in self.changed
            if not _within(p, str(folder))
            and not ("/__pycache__" in p and any(_within(p, own) for own in _own()))
        ]
        found += [
            f"read {p}"
            for p in self.read
            if not _within(p, str(folder)) and not any(_within(p, own) for own in _own())
        ]
        return sorted(found + list(self.other))


_watching: list[Seen] = []


@contextmanager
def watched(seen: Seen) -> Iterator[Seen]:
    """Note in ``seen`` what this process, all of its threads, does while the block lasts."""
    _hooked()
    _watching.append(seen)
    try:
        yield seen
    finally:
        _watching.remove(seen)


@cache
def _hooked() -> None:
    """Add the hook, once; the interpreter knows no way to take it away."""

    def hook(event: str, words: tuple[object, ...]) -> None:
        for seen in _watching:
            seen.note(event, words)

    sys.addaudithook(hook)


@cache
def _own() -> tuple[str, ...]:
    """Folders of the program itself and of the libraries it may load."""
    paths = sysconfig.get_paths()
    code = [p for p in sys.path if p.endswith(".zip")]
    code += [str(ROOT / "diagnose"), str(ROOT / "knowledge")]
    return (*code, *(os.path.realpath(paths[n]) for n in ("stdlib", "purelib", "platlib")), *(
        paths[n] for n in ("stdlib", "purelib", "platlib")
    ))  # fmt: skip


def _within(path: str, folder: str) -> bool:
    return path == folder or path.startswith(folder.rstrip(os.sep) + os.sep)


def snapshot(folder: Path) -> dict[str, bytes]:
    """Every file of a folder and what is in it."""
    return {str(p): p.read_bytes() for p in folder.rglob("*") if p.is_file()}
