"""Where answers and remarks go: stdout and stderr, whatever has become of them."""

from __future__ import annotations

import contextlib
import json
import os
import sys
from collections.abc import Mapping
from typing import Any

import typer

from diagnose.cli.waiting import waiting
from diagnose.errors import CannotWriteError, clean
from diagnose.output.lines import wrapped


def prepare() -> None:
    """Make the three streams fit for any text, also where a caller closed them."""
    sys.stdin = sys.stdin or _nowhere("r")
    sys.stdout = sys.stdout or _nowhere("w")
    sys.stderr = sys.stderr or _nowhere("w")
    named = "PYTHONIOENCODING" in os.environ
    for stream, errors in (
        (sys.stdin, "replace"),
        (sys.stdout, "backslashreplace"),
        (sys.stderr, "backslashreplace"),
    ):
        change = getattr(stream, "reconfigure", None)
        if change and not named and not stream.isatty():
            change(encoding="utf-8", errors=errors)
        elif change:
            change(errors=errors)


def _nowhere(mode: str) -> Any:
    return open(os.devnull, mode, encoding="utf-8")


def answer(text: str, end: str = "\n") -> None:
    """The answer, on stdout. Raises CannotWriteError; a reader who left is no error."""
    waiting.over()
    try:
        typer.echo(text + end, nl=False)
    except BrokenPipeError:
        _let_go()
    except OSError as error:
        _let_go()
        raise CannotWriteError(
            f"standard output: {error.strerror or error}; the answer is not whole"
        ) from None


def data(content: Mapping[str, Any]) -> None:
    """The answer as JSON."""
    ascii_only = (sys.stdout.encoding or "").lower().replace("-", "") != "utf8"
    answer(json.dumps({"schema": 1, **content}, indent=2, ensure_ascii=ascii_only))


def remark_lines(*lines: str, end: str = "\n") -> None:
    """Print remarks on stderr; where it cannot be written they are lost, and nothing else."""
    waiting.over()
    with contextlib.suppress(OSError):
        for line in lines:
            typer.echo(clean(line) + end, err=True, nl=False)


def remark(text: str, indent: int = 0, hang: int | None = None) -> None:
    """Print a remark on stderr in lines no wider than the screen."""
    remark_lines(*wrapped(text, indent, hang))


say, tell = remark_lines, remark


def _let_go() -> None:
    """Let what is left of stdout go nowhere, so that closing it fails no more."""
    with contextlib.suppress(OSError, ValueError):
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
