"""``budget``: what each measured finding explains of the missing pressure."""

from __future__ import annotations

from pathlib import Path

from diagnose.case.loading import load
from diagnose.circuit.budget import budget
from diagnose.cli import printing
from diagnose.output.as_json import as_json
from diagnose.output.documents.budget import budget_document
from diagnose.output.text.budget import budget_text
from knowledge.book import the_book


def show_budget(path: Path, json: bool) -> None:
    """Print the budget of one case."""
    book = the_book()
    case = load(path, book)
    document = budget_document(budget(case, book), case)
    if json:
        printing.data(as_json(document))
    else:
        printing.answer(budget_text(document))
