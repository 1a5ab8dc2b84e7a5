"""``review``: the answer to one case."""

from __future__ import annotations

import os
from pathlib import Path

import typer

from diagnose.case.loading import load, named
from diagnose.cli import printing
from diagnose.cli.with_history import remembered
from diagnose.diagnosis import Diagnosis
from diagnose.errors import UsageError
from diagnose.expectations import failures
from diagnose.output.as_json import as_json
from diagnose.output.documents.review import review_document
from diagnose.output.text.review import review_text
from knowledge.book import the_book


def show_review(
    path: Path, json: bool, causes: int, check: bool, history: Path | None, jobs: int = 1
) -> None:
    """Print the answer; with ``check`` exit 1 where it is not what the case expects.

    ``history`` is a folder whose closed jobs speak as well. Where ``path`` is a folder, a line
    for each case in it, worked out by so many processes.
    """
    if os.path.isdir(path):  # blind to rights, as Path is not
        from diagnose.cli.reviewing_many import show_many

        if history:
            raise UsageError("with-history: reviews one case at a time; name a case file")
        return show_many(path, json, check, jobs)
    book = the_book()
    case = load(path, book)
    shop = remembered(history, book, path, "review")
    answer = Diagnosis(book, case, learned=shop.factors)
    document = review_document(answer, str(path), history=shop.note, for_json=json)
    if json:
        printing.data(as_json(document))
    else:
        printing.answer(review_text(document, causes))
    faults = failures(answer) if check else []
    printing.say(*(f"{named(path)}: {fault}" for fault in faults))
    if faults:
        raise typer.Exit(1)
