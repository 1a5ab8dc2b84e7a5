"""The command line: every command, in the order of a job."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable, Sequence
from typing import Annotated, NoReturn

import typer

from diagnose import __version__
from diagnose.cli import printing, running
from diagnose.cli.commands import (
    ask,
    bearings,
    budget,
    card,
    check,
    close,
    forecast,
    graph,
    history,
    lookup,
    record,
    report,
    review,
    serve,
    show,
    signoff,
    sizing,
    survey,
    teardown,
    tell,
)
from diagnose.errors import UsageError

COMMANDS: tuple[tuple[Callable[..., None], str], ...] = (
    (tell.tell, "Say in your own words what the trouble is."),
    (ask.ask, "Answer questions, one at a time."),
    (record.record, "Write findings and readings into a case."),
    (review.review, "Ranked root causes, reasons and the next check."),
    (teardown.teardown, "What to open and check, in what order, and when to stop."),
    (survey.survey, "What the gauge readings say about the oil circuit."),
    (budget.budget, "How many psi each measured finding explains."),
    (forecast.forecast, "The pressure after a planned repair."),
    (bearings.bearings, "Main and rod clearances, and which shells to order."),
    (sizing.sizing, "Is the pump enough; what pump, relief and oil buy and cost."),
    (signoff.signoff, "Fit checks in assembly order, and first-start monitoring."),
    (close.close, "End a job: what it was, how it was confirmed, what was done."),
    (card.card, "An engine's own figures in one file, for several jobs."),
    (report.report, "A page about the job for its owner."),
    (history.history, "What a folder's closed jobs were, and what they teach."),
    (serve.serve, "Work on the jobs of a folder in a browser."),
    (lookup.lookup, "Find what the book calls a thing; list the book."),
    (show.show, "Everything the book has on one word."),
    (check.check, "Check the book itself, as a whole."),
    (graph.graph, "The case's cause graph in an open format."),
)

app = typer.Typer(
    rich_markup_mode=None,
    pretty_exceptions_enable=False,
    context_settings={"help_option_names": ["-h", "--help"]},
    help="Find the root cause of low, lost or flickering engine oil pressure.\n\n"
    "If the gauge reads zero or the engine knocks: stop the engine first, then read on.",
)
for command, short_help in COMMANDS:
    app.command(short_help=short_help)(command)


def _version(wanted: bool) -> None:
    if wanted:
        printing.answer(f"diagnose {__version__}")
        raise typer.Exit


@app.callback(invoke_without_command=True)
def common(
    context: typer.Context,
    version: Annotated[
        bool, typer.Option("--version", callback=_version, is_eager=True, help="Show the version.")
    ] = False,
) -> None:
    """Set colour once for every command; without a command show the help."""
    context.color = sys.stdout.isatty() and "NO_COLOR" not in os.environ
    if context.invoked_subcommand is None:
        printing.remark_lines(context.get_help())
        raise typer.Exit(UsageError.code)


def main(arguments: Sequence[str] | None = None) -> NoReturn:
    """Run a command; whatever goes wrong is one line on stderr and an exit code."""
    printing.prepare_streams()
    sys.exit(running.run(app, arguments))


if __name__ == "__main__":
    main()
