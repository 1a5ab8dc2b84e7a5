"""``lookup``: find what the book calls a thing, or list what it holds."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import AsJson, Whole

if TYPE_CHECKING:
    pass


USUAL_HITS = 8  #: shown where no number is asked for


def lookup(
    words: Annotated[
        list[str] | None,
        typer.Argument(metavar="WORDS", help="Any words: needle dances, metal in filter."),
    ] = None,
    json: AsJson = False,
    most: Annotated[
        int | None,
        typer.Option(
            min=1, max=10_000, metavar="NUMBER", help="How many to show; default 8; all in a list."
        ),
    ] = None,
    kind: Annotated[
        str,
        typer.Option(
            metavar="KIND",
            help="Only of this kind: finding, cause, inspection, measure, task, part, condition, "
            "layout, limit, trial, area, fault, links, inhibitors or rule; without words all.",
        ),
    ] = "",
    whole: Whole = False,
) -> None:
    """Find what the book calls something you know by another word, or list what it holds."""
    from diagnose.entry.words import parse_kind
    from diagnose.errors import UsageError
    from diagnose.lookup.finder import KINDS

    text = " ".join(words or [])
    wanted = parse_kind(kind) if kind else ""
    if text.strip():
        _print_hits(text, wanted, most or USUAL_HITS, json)
    elif wanted:
        _print_list(wanted, most, json, whole)
    else:
        raise UsageError(
            "nothing to look up; write for instance: diagnose lookup needle dances, "
            f"or to list all of a kind --kind {', '.join(KINDS)}"
        )


def _print_hits(text: str, kind: str, most: int, json: bool) -> None:
    """Print the words that fit ``text``. Raises UsageError where there are none."""
    from diagnose.entry.words import no_hits
    from diagnose.lookup.finder import KINDS, finder_of
    from diagnose.output.documents.lookup import hits_document
    from diagnose.output.text.lookup import hits_text
    from diagnose.understanding.reader import read
    from knowledge.book import the_book

    kinds = (KINDS[kind][0],) if kind else ()
    book = the_book()
    facts = [] if kind else read(text, book).facts
    document = hits_document(finder_of(book).find(text, kinds, most), facts, book)
    document = replace(document, hits=document.hits[:most])
    if json:
        printing.data(document)
    if not document.hits and not document.understood:
        raise no_hits(text, kind)
    if not json:
        printing.answer(hits_text(document))


def _print_list(kind: str, most: int | None, json: bool, whole: bool) -> None:
    """Print every word of a kind."""
    from diagnose.lookup.finder import words_of
    from diagnose.output.documents.lookup import list_document
    from diagnose.output.text.lookup import list_text
    from diagnose.output.text.show_brief import list_brief
    from knowledge.book import the_book

    document = list_document(kind, words_of(the_book(), kind)[:most])
    printing.document(document, list_text if whole or most else list_brief, json=json)
