"""``ask``: answer questions, one at a time; ``cli.interviewing`` puts them."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

if TYPE_CHECKING:
    pass


def ask(
    case: Annotated[
        Path | None,
        typer.Argument(
            readable=False, metavar="CASE", help="The case file; made if it is not there yet."
        ),
    ] = None,
    questions: Annotated[
        int,
        typer.Option(
            min=0, max=60, metavar="NUMBER", help="Most questions to ask after the first ones."
        ),
    ] = 12,
    by: Annotated[str, typer.Option(metavar="NAME", help="Who is answering.")] = "",
) -> None:
    """Answer questions about a low, lost or flickering pressure, one at a time.

    Saves after every answer. Answers: y, n, d (don't know), why, back, stop.
    """
    from diagnose.cli.interviewing import run_interview

    run_interview(case, questions, by)
