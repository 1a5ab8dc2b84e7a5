"""Run commands in a process of their own or inside this process."""

from __future__ import annotations

import io
import os
import re
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from functools import cache
from importlib import import_module
from pathlib import Path
from pkgutil import walk_packages
from typing import NamedTuple
from unittest.mock import patch

import pytest

import diagnose
from diagnose.cli import app
from diagnose.output.lines import columns

ROOT = Path(__file__).parents[2]
NOBODY = 65534


class Done(NamedTuple):
    """How a command ended."""

    code: int
    out: str
    err: str


def environment(**more: str) -> dict[str, str]:
    """Eighty columns, and this project first."""
    return {**os.environ, "PYTHONPATH": str(ROOT), "COLUMNS": "80", **more}


def run(*words: str | Path, answers: str = "", cwd: Path | None = None, **more: str) -> Done:
    """Run a command in a process of its own, its streams piped."""
    done = subprocess.run(
        [sys.executable, "-m", "diagnose", *map(str, words)],
        input=answers.encode(),
        capture_output=True,
        cwd=cwd,
        env=environment(**more),
        timeout=120,
        check=False,
    )
    return Done(done.returncode, done.stdout.decode(), done.stderr.decode())


def call(*words: str | Path, answers: str | bytes = "") -> Done:
    """Run a command in this process, without the start of an interpreter."""
    given = answers.encode() if isinstance(answers, str) else answers
    streams = [io.TextIOWrapper(io.BytesIO(b), "utf-8", newline="") for b in (given, b"", b"")]
    names = ("sys.stdin", "sys.stdout", "sys.stderr")
    with (
        patch(names[0], streams[0]),
        patch(names[1], streams[1]),
        patch(names[2], streams[2]),
        patch.dict(os.environ, {"COLUMNS": "80"}),
    ):
        try:
            app.main([str(w) for w in words])
        except SystemExit as end:
            code = end.code
    out, err = (_written(s) for s in streams[1:])
    assert isinstance(code, int)
    return Done(code, out, err)


def _written(stream: io.TextIOWrapper) -> str:
    stream.flush()
    buffer = stream.buffer
    assert isinstance(buffer, io.BytesIO)
    return buffer.getvalue().decode()


def in_eighty_columns(text: str) -> None:
    """But for addresses and paths, which stay whole."""
    for line in text.splitlines():
        assert columns(line) <= 80 or "://" in line or re.search(r"/\S+\.toml", line), line
    assert "\x1b" not in text


@pytest.fixture
def anyones() -> Iterator[Path]:
    """An empty folder that anybody may write in."""
    folder = Path(tempfile.mkdtemp())
    folder.chmod(0o777)
    yield folder
    shutil.rmtree(folder)


@cache
def _load_all() -> None:
    """Load what commands load late: somebody without rights may not be able to."""
    for module in walk_packages(diagnose.__path__, "diagnose."):
        if module.name != "diagnose.__main__":
            import_module(module.name)
    for outside in ("tomli_w", "fcntl"):
        import_module(outside)


def as_nobody(*words: str | Path, answers: str = "") -> Done:
    """``call`` by somebody without rights: a child that gives them up, where we have them."""
    _load_all()
    mine, theirs = os.pipe()
    child = os.fork()
    if child == 0:
        os.close(mine)
        try:
            if os.geteuid() == 0:
                os.setgid(NOBODY)
                os.setuid(NOBODY)
            done = call(*words, answers=answers)
            parts = [str(done.code), done.out, done.err]
        except BaseException as fault:
            parts = ["-1", "", repr(fault)]
        with os.fdopen(theirs, "wb") as file:
            file.write("\0".join(parts).encode())
        os._exit(0)
    os.close(theirs)
    with os.fdopen(mine, "rb") as file:
        code, out, err = file.read().decode().split("\0")
    os.waitpid(child, 0)
    return Done(int(code), out, err)
