"""Commands for putting together, closing and remembering a job."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from diagnose.cli.options import (
    AsBlanks,
    AsJson,
    AsMarkdown,
    AsPage,
    CaseFile,
    Changes,
    WithHistory,
)
from diagnose.cli.root import app


@app.command(short_help="Fit checks in assembly order, and the watch over first start.")
def signoff(
    case: CaseFile,
    opened: Annotated[
        list[str] | None,
        typer.Option(
            metavar="PLACE",
            help="A place that was open besides what the case shows: sump_off, cap_off.",
        ),
    ] = None,
    whole_engine: Annotated[
        bool, typer.Option("--whole-engine", help="The whole engine is being built.")
    ] = False,
    open_only: Annotated[
        bool, typer.Option("--open-only", help="Only what is not settled yet.")
    ] = False,
    start: Annotated[
        bool,
        typer.Option("--start", help="First start: pressures predicted, limits, what was read."),
    ] = False,
    changes: Changes = None,
    left: Annotated[
        list[str] | None,
        typer.Option(
            metavar="FINDING",
            help="With --start: a finding that was left as it is, as budget names it.",
        ),
    ] = None,
    markdown: AsMarkdown = False,
    blanks: AsBlanks = False,
    html: AsPage = None,
    json: AsJson = False,
) -> None:
    """Every fit, gap, torque and gasket this repair calls for, with limits and their sources.

    Values recorded are judged: passed, borderline, failed. Sources that differ stand side by side.
    """
    from diagnose.cli.signing_off import show_signoff, show_start

    if start and html is None:
        show_start(case, opened or [], whole_engine, changes or [], left or [], json)
    else:
        form = "json" if json else "markdown" if markdown else "blanks" if blanks else "text"
        show_signoff(
            case, opened or [], whole_engine, open_only, form, html, changes or [], left or []
        )


@app.command(short_help="End a job: what it was, how it was confirmed, what was done.")
def close(
    case: CaseFile,
    cause: Annotated[
        list[str] | None,
        typer.Option(metavar="CAUSE", help="The confirmed cause; the likeliest if left out."),
    ] = None,
    how: Annotated[str, typer.Option(metavar="TEXT", help="How it was confirmed.")] = "",
    remedy: Annotated[
        str, typer.Option(metavar="TEXT", help="What was done; the book's remedy if left out.")
    ] = "",
    minutes: Annotated[
        str,
        typer.Option(
            metavar="TIME", help='Hands-on time until the cause was confirmed: "140 min".'
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
    from diagnose.cli.signing_off import close_job
    from diagnose.entry.closing import ClosingInput

    given = ClosingInput(
        causes=cause or [],
        how=how,
        remedy=remedy,
        minutes=minutes,
        reason=reason,
        comeback_of=comeback_of.name if comeback_of else "",
        by=by,
    )
    close_job(case, given)


@app.command(short_help="A page about the job for its owner.")
def report(
    case: CaseFile,
    out: Annotated[
        Path, typer.Option(readable=False, metavar="FILE", help="The .html file to write.")
    ],
    with_history: WithHistory = None,
) -> None:
    """The whole job as one page: evidence, answer, pictures, repair, sign-off, sources.

    One file that needs no network and no script; it may be sent to the engine's owner.
    """
    from diagnose.cli.reporting import write_report

    write_report(case, out, with_history)


@app.command(short_help="What the closed jobs of a folder were, and what they teach.")
def history(
    folder: Annotated[
        Path,
        typer.Argument(
            metavar="DIR", readable=False, help="The folder of the jobs; this one if left out."
        ),
    ] = Path(),
    planned: Annotated[
        bool,
        typer.Option(
            "--planned", help="Minutes planned beside minutes spent; a second for every three jobs."
        ),
    ] = False,
    json: AsJson = False,
) -> None:
    """Closed jobs of a folder, what was found how often beside the book, what came back.

    Shows what learning from them would change. The book stays as it is.
    """
    from diagnose.cli.with_history import show_history

    show_history(folder, planned, json)
