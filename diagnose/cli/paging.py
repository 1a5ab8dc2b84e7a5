"""``--html``: the pages, written where the person wants them; jinja2 is loaded only then."""

from __future__ import annotations

from pathlib import Path

from diagnose.case.disk import write_plain
from diagnose.case.loading import named
from diagnose.cli import printing
from diagnose.errors import UsageError, plain

ENDINGS = (".html", ".htm")


def ready(page: Path | None, form: str = "text", option: str = "html") -> None:
    """See, before any work, that a page can be meant. Raises UsageError."""
    if page is None:
        return
    if form != "text":
        raise UsageError(f"html: a page is a form by itself; leave out --{form}")
    if page.suffix.lower() not in ENDINGS:
        raise UsageError(f"{option}: '{plain(page)}' must end in .html")


def picture_ready(path: Path, option: str) -> None:
    """See, before any work, that a picture can be meant. Raises UsageError."""
    if path.suffix.lower() != ".svg":
        raise UsageError(f"{option}: '{plain(path)}' must end in .svg")


def draw(path: Path, picture: str, case: Path) -> None:
    """The picture into its file, never over a case. Raises CannotWriteError, UsageError."""
    write_plain(path, picture, case)


def write(page: Path, text: str, case: Path) -> None:
    """The page into its file, never over a case. Raises CannotWriteError, UsageError."""
    write_plain(page, text, case)
    printing.answer(f"page written to {named(page)}")
