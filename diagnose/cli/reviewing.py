"""``review``: the answer to one case."""

from __future__ import annotations

from pathlib import Path

import typer

from diagnose.casefile.reading import load, named
from diagnose.cli import printing
from diagnose.consultation import Consultation
from diagnose.expecting import failures
from diagnose.report import data
from diagnose.report import review as text
from knowledge.book import the_book


def show_review(path: Path, json: bool, causes: int, check: bool) -> None:
    """Print the answer; with ``check`` exit 1 where it is not what the case expects."""
    book = the_book()
    answer = Consultation(book, load(path, book))
    if json:
        printing.data(data.review(answer))
    else:
        printing.answer(text.review(answer, str(path), causes))
    faults = failures(answer) if check else []
    printing.say(*(f"{named(path)}: {fault}" for fault in faults))
    if faults:
        raise typer.Exit(1)
