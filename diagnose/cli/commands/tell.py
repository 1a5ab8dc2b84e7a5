"""``tell``: read what a person says, show what was understood, write it down."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import AsJson
from diagnose.errors import UsageError

if TYPE_CHECKING:
    from diagnose.entry.telling import Account
    from knowledge.book import Book


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

    Shows every fact with the words it came from, and what could not be read. On a terminal it
    asks before it writes: facts can be struck out, corrected and added.
    """
    from diagnose.diagnosis import Diagnosis
    from diagnose.entry.telling import entry_numbers, understand, write
    from diagnose.output.documents.tell import account_document, minute_document, tell_document
    from diagnose.output.text.tell import minute_lines
    from knowledge.book import the_book

    book = the_book()
    account = understand(case, " ".join(words) if words else _said(), book)
    if not json:
        if not yes and sys.stdin.isatty() and account.kept:
            account = confirm(account, book)
        else:
            show_account(account, book)
    saved = write(account, book, by)
    numbers = entry_numbers(account, saved, book)
    minute = minute_document(Diagnosis(book, saved), str(case), numbers)
    if json:
        printing.data(tell_document(account_document(account, book), minute))
    else:
        printing.answer("\n".join(minute_lines(minute)))


def confirm(account: Account, book: Book) -> Account:
    """Ask on the terminal until the facts are right. Raises UsageError where none is wanted."""
    from diagnose.entry.confirming import confirmed
    from diagnose.output.documents.tell import AccountDocument, account_document
    from diagnose.output.text.tell import account_lines, changed_lines

    shown: list[AccountDocument] = []

    def show(now: Account) -> None:
        document = account_document(now, book)
        lines = changed_lines(shown[-1], document) if shown else account_lines(document)
        printing.answer("\n".join(lines))
        shown.append(document)

    kept = confirmed(account, book, show, _say, _ask)
    if kept is None:
        raise UsageError("nothing is written")
    return kept


def show_account(account: Account, book: Book) -> None:
    """Print every fact that is kept, with its words, and what could not be read."""
    from diagnose.output.documents.tell import account_document
    from diagnose.output.text.tell import account_lines

    printing.answer("\n".join(account_lines(account_document(account, book))))


def _say(text: str) -> None:
    printing.remark(text, 2)


def _ask(prompt: str) -> str | None:
    """The person's next line; None at the end of the input."""
    from diagnose.output.lines import wrapped

    *above, last = wrapped(prompt)
    printing.remark_lines(*above)
    printing.remark_lines(f"{last} ", end="")
    return sys.stdin.readline(MOST_READ) or None


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
