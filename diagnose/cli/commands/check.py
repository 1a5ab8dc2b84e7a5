"""``check``: check the book itself, as a whole."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import AsJson

if TYPE_CHECKING:
    from diagnose.inference.chaining import Facts


def check(
    cases: Annotated[
        list[Path] | None,
        typer.Option(
            metavar="DIR",
            readable=False,
            help="A folder of cases, to see which rules never fire in them; repeat for more.",
        ),
    ] = None,
    all: Annotated[bool, typer.Option("--all", help="Every list whole.")] = False,
    json: AsJson = False,
) -> None:
    """Check names, sources, strengths, examples, access, and which causes are indistinguishable.

    Exit 1 where something is wrong. Every rule runs on its examples: half a minute.
    """
    from diagnose.bookcheck.everything import everything
    from diagnose.bookcheck.shapes import Whole
    from diagnose.output.documents.check import check_document
    from diagnose.output.text.check import check_text
    from knowledge.book import the_book

    facts = {str(path): facts for folder in cases or () for path, facts in _facts_of(folder)}
    document = check_document(everything(Whole(the_book()), facts))
    printing.document(document, lambda d: check_text(d, all), json=json)
    if document.faults:
        raise typer.Exit(1)


def _facts_of(folder: Path) -> Iterator[tuple[Path, Facts]]:
    """The facts of every case of a folder; files that cannot be read are left out, with a remark.

    Raises NoCaseError where there is no such folder.
    """
    from diagnose.case.loading import load
    from diagnose.errors import BadCaseError, NoCaseError, OutOfScopeError
    from diagnose.output.documents.folder import toml_files
    from knowledge.book import the_book

    for path in toml_files(folder):
        try:
            yield path, load(path, the_book()).facts()
        except (BadCaseError, NoCaseError, OutOfScopeError) as bad:
            printing.remark_lines(f"left out: {bad.lines[0]}")
