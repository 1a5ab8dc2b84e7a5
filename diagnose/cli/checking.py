"""``check``: the book itself, as a whole."""

from __future__ import annotations

import os
from collections.abc import Iterator, Sequence
from pathlib import Path

import typer

from diagnose.bookcheck.everything import everything
from diagnose.bookcheck.shapes import Whole
from diagnose.case.loading import load, named
from diagnose.cli import printing
from diagnose.errors import BadCaseError, NoCaseError, OutOfScopeError
from diagnose.inference.chaining import Facts
from diagnose.output.as_json import as_json
from diagnose.output.documents.check import check_document
from diagnose.output.text.check import check
from knowledge.book import Book, the_book


def show_check(folders: Sequence[Path], whole_lists: bool, json: bool) -> None:
    """Print what was checked and what is wrong; exit 1 where something is."""
    book = the_book()
    cases = {str(p): facts for folder in folders for p, facts in _cases(folder, book)}
    document = check_document(everything(Whole(book), cases))
    if json:
        printing.data(as_json(document))
    else:
        printing.answer(check(document, whole_lists))
    if document.faults:
        raise typer.Exit(1)


def _cases(folder: Path, book: Book) -> Iterator[tuple[Path, Facts]]:
    """Every case of a folder that can be read; of others it is told. Raises NoCaseError."""
    try:
        paths = sorted(folder / name for name in os.listdir(folder) if name.endswith(".toml"))
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or "no such name"
        raise NoCaseError(named(folder), [f"no folder of cases, {reason}"]) from None
    for path in paths:
        try:
            yield path, load(path, book).facts()
        except (BadCaseError, NoCaseError, OutOfScopeError) as bad:
            printing.remark_lines(f"left out: {str(bad).splitlines()[0]}")
