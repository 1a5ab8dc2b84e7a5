"""``budget``: what each measured finding explains of the missing pressure."""

from __future__ import annotations

from pathlib import Path

from diagnose.case.loading import load
from diagnose.circuit.budget import budget
from diagnose.cli import printing
from diagnose.output import budget as text
from knowledge.book import the_book


def show_budget(path: Path, json: bool) -> None:
    """Print the budget of one case."""
    book = the_book()
    case = load(path, book)
    drawn = budget(case, book)
    if json:
        printing.data(text.data(drawn, case))
    else:
        printing.answer(text.budget(drawn, case))
