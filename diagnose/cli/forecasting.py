"""``forecast``: the pressure after a planned repair."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from diagnose.case.loading import load
from diagnose.circuit.forecast import forecast
from diagnose.cli import printing
from diagnose.entry.requests import parse_changes, parse_target
from diagnose.output.as_json import as_json
from diagnose.output.documents.forecast import forecast_document
from diagnose.output.text.forecast import forecast_text
from knowledge.book import the_book


def show_forecast(path: Path, sets: Sequence[str], target: str, json: bool) -> None:
    """Print pressures before and after the changes asked for."""
    settings = parse_changes(sets)
    book = the_book()
    case = load(path, book)
    wanted = parse_target(target, case) if target else None
    document = forecast_document(forecast(case, book, settings, wanted))
    if json:
        printing.data(as_json(document))
    else:
        printing.answer(forecast_text(document))
