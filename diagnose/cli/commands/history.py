"""``history``: what a folder's closed jobs were, and what they teach."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import AsJson, Whole


def history(
    folder: Annotated[
        Path,
        typer.Argument(
            metavar="DIR", readable=False, help="The folder of the jobs; this one if left out."
        ),
    ] = Path(),
    planned: Annotated[
        bool,
        typer.Option(
            "--planned", help="Minutes planned beside minutes spent; a second for every three jobs."
        ),
    ] = False,
    json: AsJson = False,
    whole: Whole = False,
) -> None:
    """Closed jobs of a folder, what was found how often beside the book, what came back.

    Shows what learning from them would change. The book stays as it is.
    """
    from diagnose.history.learning import learned_from
    from diagnose.history.shop import read_shop
    from diagnose.output.documents.history import history_document
    from diagnose.output.text.history import history_brief, history_text
    from knowledge.book import the_book

    book = the_book()
    shop = read_shop(folder, book, planned)
    document = history_document(shop, learned_from(shop.counted(), book), book)
    printing.document(document, history_text if whole else history_brief, json=json)
