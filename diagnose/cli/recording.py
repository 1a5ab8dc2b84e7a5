"""``record``: findings, measured values and readings into the case."""

from __future__ import annotations

from pathlib import Path

from diagnose.cli import printing
from diagnose.entry.details import Details
from diagnose.entry.recording import Input, record
from diagnose.entry.sheets import read_sheet
from diagnose.output.documents.record import record_document
from diagnose.output.text.record import record_text
from knowledge.book import the_book


def record_all(
    path: Path,
    *,
    facts: list[str],
    readings: list[str],
    withdraw: list[int],
    details: Details,
    sheet: Path | None = None,
) -> None:
    """Append everything or, where anything is wrong, nothing."""
    given = Input(
        facts=facts,
        readings=readings,
        blanks=read_sheet(sheet) if sheet else (),
        withdraw=withdraw,
        details=details,
    )
    book = the_book()
    printing.answer(record_text(record_document(record(path, book, given), book, path)))
