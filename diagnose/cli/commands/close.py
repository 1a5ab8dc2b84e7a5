"""``close``: end a job with what it was, how it was confirmed and what was done."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import CaseFile


def close(
    case: CaseFile,
    cause: Annotated[
        list[str] | None,
        typer.Option(
            metavar="CAUSE",
            help="The confirmed cause, in words or by its id; the likeliest if left out.",
        ),
    ] = None,
    how: Annotated[str, typer.Option(metavar="TEXT", help="How it was confirmed.")] = "",
    remedy: Annotated[
        str,
        typer.Option(
            metavar="TEXT",
            help="What was done; left out: not written down, the book's remedy is named as called for.",
        ),
    ] = "",
    minutes: Annotated[
        str,
        typer.Option(
            metavar="TIME",
            help='Hands-on time until the cause was confirmed: 45 (minutes), "2.5 h".',
        ),
    ] = "",
    reason: Annotated[
        str, typer.Option(metavar="TEXT", help="Why it may be closed with something open.")
    ] = "",
    comeback_of: Annotated[
        Path | None,
        typer.Option(
            readable=False, metavar="CASE", help="The earlier job this one comes back from."
        ),
    ] = None,
    by: Annotated[str, typer.Option(metavar="NAME", help="Who closes it.")] = "",
) -> None:
    """Write the end of a job into its case; refuses while something is unexplained or open."""
    from diagnose.case.loading import named
    from diagnose.entry.closing import ClosingInput
    from diagnose.entry.closing import close as close_job
    from diagnose.errors import UsageError, plain
    from diagnose.output.documents.record import close_document
    from diagnose.output.text.record import close_text
    from knowledge.book import the_book

    if comeback_of and not case.with_name(comeback_of.name).exists():
        raise UsageError(f"comeback-of: no job '{plain(comeback_of.name)}' beside {named(case)}")
    given = ClosingInput(
        causes=cause or (),
        how=how,
        remedy=remedy,
        minutes=minutes,
        reason=reason,
        comeback_of=comeback_of.name if comeback_of else "",
        by=by,
    )
    saved = close_job(case, the_book(), given)
    printing.answer(close_text(close_document(saved.after, case, saved.before.closed)))
