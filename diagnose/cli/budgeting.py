"""``budget``: what each measured finding explains of the missing pressure."""

from __future__ import annotations

from pathlib import Path

from diagnose.casefile.reading import load
from diagnose.cli import printing
from diagnose.repair.budget import budget
from diagnose.report import budget as text
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
