"""The command ``bearings``: readings in, clearances and shells to order out."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import AsBlanks, AsJson, AsMarkdown, AsPage, CaseFile, Form, form_of
from diagnose.errors import PartlySavedError

if TYPE_CHECKING:
    from collections.abc import Mapping

    from diagnose.entry.details import Details
    from diagnose.fits.bearing import Kind
    from diagnose.output.documents.bearing_sheet import BearingSheet
    from knowledge.book import Book


def bearings(
    case: CaseFile,
    readings: Annotated[
        list[str] | None,
        typer.Argument(
            metavar="READINGS",
            help='What was measured: "main 3 journal 2.4482 2.4481 2.4480 2.4481 in", '
            '"rod 1 strip 2.2 thou", "mains new_shell 0.0955 in".',
        ),
    ] = None,
    sheet: Annotated[
        Path | None,
        typer.Option(
            "--from",
            "--sheet",
            readable=False,
            metavar="FILE",
            help="A filled-in sheet of this command, .md or .toml.",
        ),
    ] = None,
    fitted: Annotated[
        bool,
        typer.Option(
            "--fitted", help="Measured with the new parts in: counts for sign-off, not as found."
        ),
    ] = False,
    mains: Annotated[
        int | None, typer.Option(min=0, max=40, help="How many mains, where the case is silent.")
    ] = None,
    rods: Annotated[
        int | None, typer.Option(min=0, max=40, help="How many rods, where the case is silent.")
    ] = None,
    full: Annotated[
        bool, typer.Option("--full", "--all", help="The arithmetic line by line, and every source.")
    ] = False,
    note: Annotated[str, typer.Option(metavar="TEXT", help="A note to keep with it.")] = "",
    by: Annotated[str, typer.Option(metavar="NAME", help="Who measured.")] = "",
    when: Annotated[
        str, typer.Option(metavar="DATE", help="Date, 2026-05-01; today if left out.")
    ] = "",
    markdown: AsMarkdown = False,
    blanks: AsBlanks = False,
    html: AsPage = None,
    json: AsJson = False,
) -> None:
    """Main and rod bearings measured: clearance, taper, out of round, shells to order.

    Figures of a diameter: one; front, rear; or two ways across at front and rear (in line with the
    load first). Fields: bore, shell, inside (bore with shells), journal, strip, undersize; of all
    mains or rods: new_journal, new_bore, new_shell, wanted, sizes, use (road or hard), count.
    """
    from diagnose.bearings.table import bearings_of
    from diagnose.case.loading import load
    from diagnose.entry.details import Details
    from diagnose.fits.bearing import Kind
    from diagnose.output.documents.bearing_sheet import bearing_sheet
    from diagnose.output.documents.bearings import bearings_document
    from diagnose.output.text.bearings import bearings_text
    from knowledge.book import the_book

    form = form_of(json=json, markdown=markdown, blanks=blanks)
    printing.check_page(html, case, form)
    book = the_book()
    details = Details(note=note, by=by, when=when)
    counts = {Kind.MAIN: mains, Kind.ROD: rods}
    saved, bad = _saved(case, book, readings or [], sheet, details, counts, fitted=fitted)
    loaded = load(case, book)
    found = bearings_of(loaded, counts=counts, with_pressure=form in (Form.TEXT, Form.JSON))
    if html is not None:
        from diagnose.output.html.bearings_page import bearings_html

        document = bearings_document(found, str(case))
        printing.write_page(html, bearings_html(bearing_sheet(found, str(case)), document), case)
    elif form in (Form.MARKDOWN, Form.BLANKS):
        _print_blank_sheet(bearing_sheet(found, str(case)), form)
    else:
        document = bearings_document(found, str(case))
        printing.document(
            document, lambda d: bearings_text(d, full=full, saved=saved), json=form is Form.JSON
        )
    if bad:
        raise PartlySavedError("\n".join(bad))


def _print_blank_sheet(sheet: BearingSheet, form: Form) -> None:
    """Print the sheet to fill in."""
    from diagnose.output.markdown.bearings import bearings_blanks, bearings_markdown

    blank = bearings_blanks if form is Form.BLANKS else bearings_markdown
    printing.answer(blank(sheet))


def _saved(
    case: Path,
    book: Book,
    readings: list[str],
    sheet: Path | None,
    details: Details,
    counts: Mapping[Kind, int | None],
    *,
    fitted: bool,
) -> tuple[int, tuple[str, ...]]:
    """Save what was typed and the good lines of a sheet.

    Return how many readings were saved, and what is wrong with the others.
    """
    from diagnose.entry.bearings import BearingsInput, parse_words, read_blanks, record_bearings
    from diagnose.entry.sheets import read_sheet
    from diagnose.errors import UsageError

    given = list(parse_words(readings))
    bad: tuple[str, ...] = ()
    if sheet is not None:
        read = read_blanks(read_sheet(sheet))
        given += read.given
        bad = read.bad
        if not given:
            raise UsageError("\n".join(bad) or "no reading of a bearing in the sheet")
    if given:
        saved = record_bearings(case, book, BearingsInput(given, fitted, details, counts))
        bad += saved.refused
    return len(given), bad
