"""``tell``: read what a person says, show what was understood, write it down."""

from __future__ import annotations

import sys
from collections.abc import Collection
from pathlib import Path
from typing import Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import AsJson
from diagnose.errors import UsageError

MOST_READ = 40_000  #: bytes of standard input that are looked at


def tell(
    case: Annotated[
        Path,
        typer.Argument(
            readable=False, metavar="CASE", help="The case file; made if it is not there yet."
        ),
    ],
    words: Annotated[
        list[str] | None,
        typer.Argument(
            metavar="WORDS", help="What you know, in your own words; else standard input is read."
        ),
    ] = None,
    yes: Annotated[
        bool, typer.Option("--yes", "-y", help="Write everything that is understood; do not ask.")
    ] = False,
    json: AsJson = False,
    by: Annotated[str, typer.Option(metavar="NAME", help="Who says it.")] = "",
) -> None:
    """Say in your own words what the trouble is; the facts in it are written into the case.

    Shows every fact with the words it came from, and what nothing was made of. On a terminal it
    asks before it writes.
    """
    from diagnose.diagnosis import Diagnosis
    from diagnose.entry.telling import understand, write
    from diagnose.output.as_json import as_json
    from diagnose.output.documents.tell import account_document, minute_document, tell_document
    from diagnose.output.text.tell import minute_lines, told_lines
    from knowledge.book import the_book

    book = the_book()
    account = understand(case, " ".join(words) if words else _said(), book)
    document = account_document(account, book)
    struck: Collection[int] = ()
    if not json:
        printing.answer("\n".join(told_lines(document)))
        if not yes and sys.stdin.isatty() and document.understood:
            struck = _struck_out(len(document.understood))
    saved = write(account, book, struck, by)
    minute = minute_document(Diagnosis(book, saved), str(case))
    if json:
        printing.data(as_json(tell_document(document, minute)))
    else:
        printing.answer("\n".join(minute_lines(minute)))


def _said() -> str:
    """Standard input to its end; on a terminal to the first empty line."""
    try:
        if not sys.stdin.isatty():
            return sys.stdin.read(MOST_READ)
        printing.remark("Say what you know, in your own words; an empty line ends it.")
        lines: list[str] = []
        while line := sys.stdin.readline(MOST_READ).strip():
            lines.append(line)
        return "\n".join(lines)
    except OSError:
        return ""


def _struck_out(most: int) -> Collection[int]:
    """The places, from 0, of the facts that are wrong. Raises UsageError for "q"."""
    while True:
        printing.remark_lines(
            "All right? Enter writes it; numbers strike out what is wrong; q writes nothing: ",
            end="",
        )
        line = sys.stdin.readline(MOST_READ)
        wanted = line.replace(",", " ").lower().split()
        if not line or wanted in (["q"], ["quit"], ["no"], ["n"]):
            raise UsageError("nothing is written")
        if not wanted or wanted in (["y"], ["yes"]):
            return ()
        if all(w.isdecimal() and 1 <= int(w) <= most for w in wanted):
            return {int(w) - 1 for w in wanted}
        printing.remark(f"Numbers from 1 to {most}, with blanks between.", 2)
