"""Commands that look into a case: questions, entries, the answer, the plan."""

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
    ClosedUpToTest,
    FirstTime,
    LittleRoom,
    OnlyMinutes,
    OnStand,
    Until,
    WithHistory,
)
from diagnose.cli.root import app


@app.command(short_help="Answer questions, one at a time.")
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
    from diagnose.cli.interviewing import ask as run_interview

    run_interview(case, questions, by)


@app.command(short_help="Write findings and readings into a case.")
def record(
    case: CaseFile,
    facts: Annotated[
        list[str] | None,
        typer.Argument(
            metavar="FINDING=VALUE",
            help="needle_flickers=yes, debris_on_relief_seat=no, sludge_on_screen=probably, "
            'main_clearance="0.0045 in"',
        ),
    ] = None,
    reading: Annotated[
        list[str] | None,
        typer.Option(
            metavar="READING",
            help='A gauge reading: "700 rpm 95 C 8 psi", add "direct" for a test gauge.',
        ),
    ] = None,
    note: Annotated[str, typer.Option(metavar="TEXT", help="A note to keep with it.")] = "",
    where: Annotated[
        str, typer.Option(metavar="PLACE", help="Where on the engine: rod 3, lower shell ...")
    ] = "",
    by: Annotated[str, typer.Option(metavar="NAME", help="Who saw it.")] = "",
    when: Annotated[
        str, typer.Option(metavar="DATE", help="Date, 2026-05-01; today if left out.")
    ] = "",
    learned: Annotated[
        str,
        typer.Option(metavar="HOW", help="told, outside or opened, where it is not the usual way."),
    ] = "",
    replaces: Annotated[
        int | None, typer.Option(metavar="NUMBER", help="Number of the entry this one corrects.")
    ] = None,
    withdraw: Annotated[
        list[int] | None,
        typer.Option(metavar="NUMBER", help="Number of an entry that no longer stands."),
    ] = None,
    sheet: Annotated[
        Path | None,
        typer.Option(
            readable=False,
            metavar="FILE",
            help="A filled-in sheet of teardown or signoff, .md or .toml.",
        ),
    ] = None,
) -> None:
    """Write findings, measurements and readings into a case; nothing is ever lost."""
    from diagnose.cli.recording import record_all
    from diagnose.entry.details import Details

    record_all(
        case,
        facts=facts or [],
        readings=reading or [],
        withdraw=withdraw or [],
        details=Details(
            note=note, where=where, by=by, when=when, learned=learned, replaces=replaces
        ),
        sheet=sheet,
    )


@app.command(short_help="Ranked root causes, reasons and the next check.")
def review(
    case: Annotated[
        Path,
        typer.Argument(
            readable=False, metavar="CASE", help="The case file, or a folder of case files."
        ),
    ],
    json: AsJson = False,
    causes: Annotated[
        int,
        typer.Option(min=1, max=200, metavar="NUMBER", help="How many causes to show of one case."),
    ] = 5,
    check: Annotated[
        bool, typer.Option("--check", help="Compare with the case's [expect]; exit 1 if it fails.")
    ] = False,
    with_history: WithHistory = None,
    jobs: Annotated[
        int,
        typer.Option(min=1, max=64, metavar="NUMBER", help="Processes to share a folder between."),
    ] = 1,
) -> None:
    """Ranked root causes with reasons, contradictions, alarms, and the next check.

    Of a folder: a line a case with the likeliest cause and the next check; --json a line each.
    """
    from diagnose.cli.reviewing import show_review

    show_review(case, json, causes, check, with_history, jobs)


@app.command(short_help="What to open and check, in what order, and when to stop.")
def teardown(
    case: CaseFile,
    until: Until = "confident=0.9",
    minutes: OnlyMinutes = None,
    on_stand: OnStand = False,
    closed_up_to_test: ClosedUpToTest = False,
    first_time: FirstTime = False,
    little_room: LittleRoom = False,
    since: Annotated[
        int | None,
        typer.Option(
            min=0, metavar="NUMBER", help="Show what the entries after this number changed."
        ),
    ] = None,
    markdown: AsMarkdown = False,
    blanks: AsBlanks = False,
    html: AsPage = None,
    with_history: WithHistory = None,
    json: AsJson = False,
) -> None:
    """What to open and check, in what order, with cautions, limits and blanks to fill in.

    Says when to stop, what each outcome means, and what must be closed before putting together.
    """
    from diagnose.cli.tearing_down import plan_wanted, show_teardown

    wishes = plan_wanted(until, minutes, on_stand, closed_up_to_test, first_time, little_room)
    form = "json" if json else "markdown" if markdown else "blanks" if blanks else "text"
    show_teardown(case, wishes, form, since, with_history, html)
