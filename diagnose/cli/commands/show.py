"""``show``: everything the book has on one word."""

from __future__ import annotations

from typing import Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import AsJson, Whole


def show(
    word: Annotated[
        str,
        typer.Argument(metavar="ID", help="The id of anything in the book, as lookup names it."),
    ],
    json: AsJson = False,
    whole: Whole = False,
) -> None:
    """What the book says of one word: a cause, finding, inspection, task, part, rule ..."""
    from diagnose.entry.words import words_of_id
    from diagnose.output.documents.lookup import show_document
    from diagnose.output.text.lookup import show_text
    from diagnose.output.text.show_brief import show_brief
    from knowledge.book import the_book

    book = the_book()
    document = show_document(words_of_id(word, book), book)
    printing.document(document, show_text if whole else show_brief, json=json)
