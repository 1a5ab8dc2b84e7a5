"""Print answers on stdout and remarks on stderr, whatever these are connected to; write pages."""

from __future__ import annotations

import contextlib
import os
import sys
from collections.abc import Callable, Sequence
from json import dumps
from pathlib import Path
from typing import Any, TypeVar

import typer

from diagnose.cli.colour import painted, wanted
from diagnose.cli.options import Form
from diagnose.cli.progress import working
from diagnose.errors import CannotWriteError, UsageError, clean, plain
from diagnose.output.as_json import SCHEMA, as_json
from diagnose.output.lines import wrapped

PAGE_ENDINGS = (".html", ".htm")
PICTURE_ENDING = ".svg"

Shown = TypeVar("Shown")  #: a document of ``diagnose.output.documents``


def prepare_streams() -> None:
    """Make the three streams accept any text, also where the caller closed them."""
    sys.stdin = sys.stdin or _null_stream("r")
    sys.stdout = sys.stdout or _null_stream("w")
    sys.stderr = sys.stderr or _null_stream("w")
    encoding_given = "PYTHONIOENCODING" in os.environ
    for stream, errors in (
        (sys.stdin, "replace"),
        (sys.stdout, "backslashreplace"),
        (sys.stderr, "backslashreplace"),
    ):
        change = getattr(stream, "reconfigure", None)
        if change and not encoding_given and not stream.isatty():
            change(encoding="utf-8", errors=errors)
        elif change:
            change(errors=errors)


def answer(text: str, end: str = "\n") -> None:
    """Print the answer on stdout; a reader that has gone is no error. Raises CannotWriteError."""
    working.end()
    if wanted():
        text = painted(text)
    try:
        typer.echo(text + end, nl=False)
    except BrokenPipeError:
        _discard_stdout()
    except OSError as error:
        _discard_stdout()
        raise CannotWriteError(
            f"standard output: {error.strerror or error}; the answer is incomplete"
        ) from None


def data(shown: object) -> None:
    """Print a document as JSON."""
    ascii_only = (sys.stdout.encoding or "").lower().replace("-", "") != "utf8"
    content = {"schema": SCHEMA, **as_json(shown)}
    answer(dumps(content, indent=2, ensure_ascii=ascii_only))


def document(shown: Shown, text: Callable[[Shown], str], *, json: bool) -> None:
    """Print a document as JSON, or as the text that ``text`` makes of it."""
    if json:
        data(shown)
    else:
        answer(text(shown))


def sheet(
    shown: Shown,
    form: Form,
    *,
    text: Callable[[Shown], str],
    markdown: Callable[[Shown], str],
    blanks: Callable[[Shown], str],
) -> None:
    """Print a document that can be a sheet to fill in, in the form asked for."""
    match form:
        case Form.JSON:
            data(shown)
        case Form.MARKDOWN:
            answer(markdown(shown))
        case Form.BLANKS:
            answer(blanks(shown))
        case Form.TEXT:
            answer(text(shown))


def remark_lines(*lines: str, end: str = "\n") -> None:
    """Print remarks on stderr; where it cannot be written they are lost, and nothing else."""
    working.end()
    with contextlib.suppress(OSError):
        for line in lines:
            typer.echo(clean(line) + end, err=True, nl=False)


def remark(text: str, indent: int = 0, hang: int | None = None) -> None:
    """Print a remark on stderr in lines no wider than the screen."""
    remark_lines(*wrapped(text, indent, hang))


def drawing(lines: Sequence[str]) -> None:
    """Print the lines of a drawing on stderr, a terminal, as they are, colours and all."""
    with contextlib.suppress(OSError):
        for line in lines:
            typer.echo(line, err=True, color=True)


def check_page(page: Path | None, case: Path, form: Form = Form.TEXT, option: str = "html") -> None:
    """Check before any work that a page of a case can be written there. Raises UsageError."""
    if page is None:
        return
    if form is not Form.TEXT:
        raise UsageError(f"html: a page is a form by itself; leave out --{form}")
    if page.suffix.lower() not in PAGE_ENDINGS:
        raise UsageError(f"{option}: '{plain(page)}' must end in .html")
    check_file(page, case)


def check_picture(path: Path | None, case: Path, option: str) -> None:
    """Check before any work that a picture can be written there. Raises UsageError."""
    if path is None:
        return
    if path.suffix.lower() != PICTURE_ENDING:
        raise UsageError(f"{option}: '{plain(path)}' must end in .svg")
    check_file(path, case)


def check_file(path: Path, case: Path) -> None:
    """Check before any work that the file is no case and has a folder.

    Raises CannotWriteError, UsageError.
    """
    from diagnose.case.disk import refuse_a_case, refuse_no_folder

    refuse_a_case(path, case)
    refuse_no_folder(path)


def write_file(path: Path, text: str, case: Path) -> None:
    """Write a text into its file, never over a case. Raises CannotWriteError, UsageError."""
    from diagnose.case.disk import write_plain

    write_plain(path, text, case)


def write_page(page: Path, text: str, case: Path) -> None:
    """Write a page as ``write_file``, and print where."""
    from diagnose.case.loading import named

    write_file(page, text, case)
    answer(f"page written to {named(page)}")


def _null_stream(mode: str) -> Any:
    return open(os.devnull, mode, encoding="utf-8")


def _discard_stdout() -> None:
    """Send the rest of stdout nowhere, so that closing it cannot fail."""
    with contextlib.suppress(OSError, ValueError):
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
