"""``lookup`` and ``show``: the book itself."""

from __future__ import annotations

from diagnose.cli import printing
from diagnose.errors import UsageError, nearest, plain
from diagnose.lookup.finder import KINDS, Finder, Hit, Word, words_of
from diagnose.lookup.tokens import tokens
from diagnose.output.as_json import as_json
from diagnose.output.documents.lookup import hits_document, list_document, show_document
from diagnose.output.text import lookup as render
from knowledge.book import Book, the_book

USUAL = 8  #: hits shown where no number is asked for


def show_lookup(text: str, json: bool, most: int | None, sort: str) -> None:
    """Print the words of the book that fit, or all of one kind."""
    wanted = _kind_named(sort) if sort else ""
    if text.strip():
        kinds = (KINDS[wanted][0],) if wanted else ()
        _show_hits(text, Finder(the_book()).find(text, kinds, most or USUAL), wanted, json)
    elif wanted:
        _show_list(words_of(the_book(), wanted)[:most], wanted, json)
    else:
        raise UsageError(
            "nothing to look up; write for instance: diagnose lookup needle dances, "
            f"or to list all of a kind --kind {', '.join(KINDS)}"
        )


def _kind_named(sort: str) -> str:
    """The kind a person named, also in the plural. Raises UsageError with the nearest."""
    wanted = sort.strip().lower()
    for kind, (_, plural) in KINDS.items():
        if wanted in (kind, plural):
            return kind
    near = nearest(wanted, KINDS)
    raise UsageError(f"no kind '{plain(sort)}'; one of {', '.join(KINDS)}.{near}")


def _show_hits(text: str, hits: list[Hit], wanted: str, json: bool) -> None:
    document = hits_document(hits)
    if json:
        printing.data(as_json(document))
    if not hits and not tokens(text) and text.isascii():
        raise UsageError(
            f"'{plain(text)}' alone says too little; add a word, for instance: "
            "diagnose lookup oil level"
        )
    if not hits:
        among = f" among the {KINDS[wanted][1]}" if wanted else ""
        raise UsageError(
            f"nothing in the book{among} sounds like '{plain(text)}'; try one plain word of it"
        )
    if not json:
        printing.answer(render.hits(document))


def _show_list(words: list[Word], wanted: str, json: bool) -> None:
    document = list_document(wanted, words)
    if json:
        printing.data(as_json(document))
    else:
        printing.answer(render.listed(document))


def find_word(name: str, book: Book) -> list[Word]:
    """Every word of that id, whatever its kind. Raises UsageError with the nearest."""
    wanted = name.strip().lower().replace("-", "_").replace(" ", "_")
    if not wanted:
        raise UsageError("which word? for instance: diagnose show needle_flickers")
    every = [w for kind in KINDS for w in words_of(book, kind)]
    found = [w for w in every if w.id == wanted]
    if not found:
        near = nearest(wanted, dict.fromkeys(w.id for w in every))
        raise UsageError(f"no '{plain(name)}' in the book.{near}{try_lookup(name)}")
    return found


def try_lookup(name: str) -> str:
    """' Try: diagnose lookup …', with the words in ``name``, if any."""
    words = "".join(c if c.isalnum() else " " for c in name[:60]).split()
    return f" Try: diagnose lookup {' '.join(words)}" if words else ""


def show_word(name: str, json: bool) -> None:
    """Print all that the book holds on one word."""
    book = the_book()
    words = find_word(name, book)
    document = show_document(words, book)
    if json:
        printing.data(as_json(document))
    else:
        printing.answer(render.show(document))
