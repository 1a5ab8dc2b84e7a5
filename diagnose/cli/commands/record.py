"""``record``: write findings, measurements and readings into a case."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import CaseFile
from diagnose.errors import PartlySavedError

if TYPE_CHECKING:
    from diagnose.entry.spoken import Choice


LONGEST_ANSWER = 1000  #: characters of a line that are looked at


def record(
    case: CaseFile,
    facts: Annotated[
        list[str] | None,
        typer.Argument(
            metavar="WORDS",
            help='In words: "oil level ok" "no 3 main 4.5 thou"; or by id: needle_flickers=yes, '
            'sludge_on_screen=probably, main_clearance="0.0045 in"',
        ),
    ] = None,
    reading: Annotated[
        list[str] | None,
        typer.Option(
            metavar="READING",
            help='A gauge reading: "700 rpm 95 C 8 psi", or in words "5 psi at hot idle"; '
            'add "direct" for a test gauge.',
        ),
    ] = None,
    behaviour: Annotated[
        list[str] | None,
        typer.Option(
            metavar="BEHAVIOUR",
            help='What was seen or heard, and when: "low during hot, idle only gradual".',
        ),
    ] = None,
    earlier: Annotated[
        list[str] | None,
        typer.Option(
            metavar="WORK",
            help='What was worked on before it began: "oil pump renewed 2 weeks before".',
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
        typer.Option(
            metavar="HOW",
            help="How it was learned, if not the usual way: said, outside or opened.",
        ),
    ] = "",
    after_repair: Annotated[
        bool,
        typer.Option(
            "--after-repair",
            help="Readings and values are of the repaired engine, not of the fault.",
        ),
    ] = False,
    replaces: Annotated[
        int | None, typer.Option(metavar="NUMBER", help="Number of the entry this one corrects.")
    ] = None,
    withdraw: Annotated[
        list[int] | None,
        typer.Option(metavar="NUMBER", help="Number of an entry to withdraw."),
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
    """Write findings, measurements and readings into a case; nothing is ever lost.

    Each value is answered with the limit it keeps or breaks. On a terminal, words that may mean
    several things are put as a numbered choice.
    """
    from diagnose.entry.details import Details
    from diagnose.entry.recording import Input
    from diagnose.entry.recording import record as record_input
    from diagnose.entry.sheets import read_sheet
    from diagnose.output.documents.record import record_document
    from diagnose.output.text.record import record_text
    from knowledge.book import the_book

    given = Input(
        facts=facts or (),
        readings=reading or (),
        behaviours=behaviour or (),
        earlier=earlier or (),
        blanks=read_sheet(sheet) if sheet else (),
        withdraw=withdraw or (),
        repaired=after_repair,
        details=Details(
            note=note, where=where, by=by, when=when, learned=learned, replaces=replaces
        ),
        choose=_choose if sys.stdin.isatty() else None,
    )
    saved = record_input(case, the_book(), given)
    printing.answer(record_text(record_document(saved, the_book(), case)))
    for line in saved.left_out:
        printing.remark(line)
    if wrong := (*saved.refused, *saved.unclear):
        raise PartlySavedError("\n".join(wrong))


def _choose(choice: Choice) -> int | None:
    """Put a numbered choice to the person; None where it is none of them."""
    from diagnose.output.text.record import choice_lines

    printing.remark_lines(*choice_lines(choice))
    while True:
        printing.remark_lines("Number (Enter: none of these; it is left out): ", end="")
        line = sys.stdin.readline(LONGEST_ANSWER).strip()
        if line.isdecimal() and 1 <= int(line) <= len(choice.candidates):
            return int(line) - 1
        if not line or line.lower() in ("q", "n", "no", "none", "0"):
            return None
        printing.remark(f"A number from 1 to {len(choice.candidates)}.", 2)
