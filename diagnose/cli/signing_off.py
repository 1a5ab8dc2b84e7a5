"""``signoff`` and ``close``: putting together, first start, and the end of a job."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from diagnose.case.loading import load
from diagnose.cli import paging, printing
from diagnose.diagnosis import Diagnosis
from diagnose.entry.closing import ClosingInput, close
from diagnose.entry.requests import parse_places
from diagnose.output import signoff as text
from diagnose.output import signoff_sheet as sheets
from diagnose.output.documents.record import close_document
from diagnose.output.text.record import close_text
from diagnose.planning.choosing import SURE
from diagnose.signoff.parts import parts_list
from diagnose.signoff.sheet import Signoff
from knowledge.book import the_book


def show_signoff(
    path: Path,
    opened: Sequence[str],
    whole: bool,
    open_only: bool,
    form: str,
    page: Path | None = None,
    sets: Sequence[str] = (),
    left: Sequence[str] = (),
) -> None:
    """Print the sheet in one of the forms, or write it as a page with the first start."""
    paging.ready(page, form)
    book = the_book()
    answer = Diagnosis(book, load(path, book))
    sheet = Signoff(answer, SURE, parse_places(opened, answer.planner.tree), whole)
    needed = parts_list(sheet.causes, sheet.places, answer.case.features.get, book)
    if page is not None:
        from diagnose.circuit.settings import setting
        from diagnose.output.html.signoff_page import signoff_page

        changes = [setting(s) for s in sets]
        made = signoff_page(sheet, needed, str(path), book, changes, left, open_only=open_only)
        paging.write(page, made, path)
    elif form == "json":
        printing.data(sheets.data(sheet, needed))
    elif form == "markdown":
        printing.answer(sheets.markdown(sheet, needed, str(path)))
    elif form == "blanks":
        printing.answer(sheets.blanks(sheet))
    else:
        printing.answer(text.signoff(sheet, needed, str(path), open_only))


def show_start(
    path: Path,
    opened: Sequence[str],
    whole: bool,
    sets: Sequence[str],
    left: Sequence[str],
    json: bool,
) -> None:
    """Print what the repaired engine should show, and what it does show."""
    from diagnose.circuit.settings import setting
    from diagnose.output import start as start_text
    from diagnose.signoff.start import first_start

    book = the_book()
    case = load(path, book)
    start = first_start(case, book, [setting(s) for s in sets], left)
    if json:
        printing.data(start_text.data(start))
        return
    answer = Diagnosis(book, case)
    sheet = Signoff(answer, SURE, parse_places(opened, answer.planner.tree), whole)
    printing.answer(start_text.first_start(start, sheet, str(path)))


def close_job(path: Path, given: ClosingInput) -> None:
    """Write the end of a job into its case. Raises UsageError where something stands open."""
    printing.answer(close_text(close_document(close(path, the_book(), given).after, path)))
