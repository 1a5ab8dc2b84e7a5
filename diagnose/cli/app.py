"""The command line: options and help; each command's work is imported when it runs."""

from __future__ import annotations

import os
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import Annotated, NoReturn

import typer

from diagnose import __version__
from diagnose.cli import ending, printing
from diagnose.cli.options import (
    AsBlanks,
    AsJson,
    AsMarkdown,
    AsPage,
    CaseFile,
    Changes,
    ClosedUpToTest,
    FirstTime,
    LittleRoom,
    OnlyMinutes,
    OnStand,
    Until,
    WithHistory,
)

app = typer.Typer(
    rich_markup_mode=None,
    no_args_is_help=True,
    pretty_exceptions_enable=False,
    context_settings={"help_option_names": ["-h", "--help"]},
    help="Find the root cause of low, lost or flickering engine oil pressure.\n\n"
    "If the gauge reads zero or the engine knocks: stop the engine first, read on after.",
)


def _version(wanted: bool) -> None:
    if wanted:
        printing.answer(f"diagnose {__version__}")
        raise typer.Exit


@app.callback()
def common(
    context: typer.Context,
    version: Annotated[
        bool, typer.Option("--version", callback=_version, is_eager=True, help="Show the version.")
    ] = False,
) -> None:
    """Set colour once for every command."""
    context.color = sys.stdout.isatty() and "NO_COLOR" not in os.environ


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
    from diagnose.cli.asking import interview

    interview(case, questions, by)


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
    from diagnose.cli.entries import Details
    from diagnose.cli.recording import record_all

    record_all(
        case,
        facts or [],
        reading or [],
        withdraw or [],
        Details(note, where, by, when, learned, replaces),
        sheet,
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
        int, typer.Option(min=1, max=200, metavar="NUMBER", help="How many causes to show.")
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


@app.command(short_help="What gauge readings say of the oil circuit.")
def survey(
    case: CaseFile,
    reading: Annotated[
        list[str] | None,
        typer.Option(
            metavar="READING",
            help='A reading to try, not kept: "700 rpm 95 C 8 psi", add "direct" for a test '
            'gauge, "pump" where it is tapped there, "+-1 psi" for its error; again for each.',
        ),
    ] = None,
    svg: Annotated[
        Path | None, typer.Option(metavar="FILE", help="Draw the curves into this .svg file.")
    ] = None,
    json: AsJson = False,
) -> None:
    """What the gauge readings say is wrong with the oil circuit, and how bad it is.

    Readings cold and hot at a few speeds say most; says which further reading is worth taking.
    """
    from diagnose.cli.surveying import show_survey

    show_survey(case, reading or [], svg, json)


@app.command(short_help="How many psi each measured finding explains.")
def budget(case: CaseFile, json: AsJson = False) -> None:
    """How much of the pressure missing at hot idle and at cruise each measured finding explains.

    The shares do not depend on the order of the findings; what nothing explains is shown too.
    """
    from diagnose.cli.budgeting import show_budget

    show_budget(case, json)


@app.command(short_help="The pressure after a planned repair.")
def forecast(
    case: CaseFile,
    changes: Changes = None,
    target: Annotated[
        str,
        typer.Option(
            metavar="PRESSURE", help='Pressure wanted hot: "25 psi" at idle, or "2500 rpm 40 psi".'
        ),
    ] = "",
    json: AsJson = False,
) -> None:
    """Pressure over speed, cold and hot, before and after a planned repair; what it costs.

    Warns where the repair treats a symptom, and says what single change would be enough.
    """
    from diagnose.cli.forecasting import show_forecast

    show_forecast(case, changes or [], target, json)


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

    close_job(case, cause or [], how, remedy, minutes, reason, comeback_of, by)


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
    from diagnose.cli.remembering import show_history

    show_history(folder, planned, json)


@app.command(short_help="Find what the book calls a thing; list the book.")
def lookup(
    words: Annotated[
        list[str] | None,
        typer.Argument(metavar="WORDS", help="Any words: needle dances, metal in filter."),
    ] = None,
    json: AsJson = False,
    most: Annotated[
        int | None,
        typer.Option(
            min=1, max=10_000, metavar="NUMBER", help="How many to show; usually 8, of a shelf all."
        ),
    ] = None,
    kind: Annotated[
        str,
        typer.Option(
            metavar="KIND",
            help="Only of this kind: finding, cause, inspection, measure, task, part, condition, "
            "layout, limit or rule; without words the whole shelf.",
        ),
    ] = "",
) -> None:
    """Find what the book calls something you know by another word, or list what it holds."""
    from diagnose.cli.looking import show_lookup

    show_lookup(" ".join(words or []), json, most, kind)


@app.command(short_help="Everything the book says of one word.")
def show(
    word: Annotated[
        str,
        typer.Argument(metavar="ID", help="The id of anything in the book, as lookup names it."),
    ],
    json: AsJson = False,
) -> None:
    """Everything the book says of one word: a cause, finding, inspection, task, part, rule ..."""
    from diagnose.cli.looking import show_word

    show_word(word, json)


@app.command(short_help="Check the book itself, as a whole.")
def check(
    cases: Annotated[
        list[Path] | None,
        typer.Option(
            metavar="DIR",
            readable=False,
            help="A folder of cases, to see which rules never speak in them; again for each.",
        ),
    ] = None,
    all: Annotated[bool, typer.Option("--all", help="Every list whole.")] = False,
    json: AsJson = False,
) -> None:
    """Names, sources, strengths, rules' papers, access, and which causes cannot be told apart.

    Exit 1 where something is wrong. Every rule is tried on its examples: half a minute.
    """
    from diagnose.cli.checking import show_check

    show_check(cases or [], all, json)


@app.command(short_help="The case's cause graph in an open format.")
def graph(
    case: CaseFile,
    format: Annotated[
        str, typer.Option(metavar="FORMAT", help="json, graphml, dot, bif or svg.")
    ] = "json",
    out: Annotated[
        str, typer.Option(metavar="FILE", help="File to write, never a case; - is standard output.")
    ] = "-",
    focus: Annotated[
        str, typer.Option(metavar="CAUSE", help="Only what ties this cause to the findings.")
    ] = "",
) -> None:
    """The case's cause graph in an open format that general libraries read, or as a picture.

    The picture shows the leading causes, or the one in focus, and what was found.
    """
    from diagnose.cli.graphing import show_graph

    show_graph(case, format, out, focus)


def main(arguments: Sequence[str] | None = None) -> NoReturn:
    """Run a command; whatever goes wrong is one line on stderr and an exit code."""
    printing.prepare()
    sys.exit(ending.run(app, arguments))


if __name__ == "__main__":
    main()
