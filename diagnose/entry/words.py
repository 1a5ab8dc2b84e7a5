"""Words of the book and of a graph as a person names them: by kind, by id; names of formats."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from diagnose.entry.facts import lookup_hint
from diagnose.errors import UsageError, nearest, plain
from diagnose.ids import normal_id
from diagnose.lookup.finder import KINDS, Word, words_of
from diagnose.lookup.tokens import tokens
from knowledge.book import Book


def parse_kind(text: str) -> str:
    """A kind of word, in the singular or plural.

    >>> parse_kind("Causes")
    'cause'

    Raises UsageError with the nearest.
    """
    wanted = text.strip().lower()
    for kind, (_, plural) in KINDS.items():
        if wanted in (kind, plural):
            return kind
    near = nearest(wanted, KINDS)
    raise UsageError(f"no kind '{plain(text)}'; one of {', '.join(KINDS)}.{near}")


def words_of_id(name: str, book: Book) -> list[Word]:
    """Every word of that id, whatever its kind. Raises UsageError with the nearest."""
    wanted = normal_id(name)
    if not wanted:
        raise UsageError("which word? for instance: diagnose show needle_flickers")
    every = [word for kind in KINDS for word in words_of(book, kind)]
    found = [word for word in every if word.id == wanted]
    if not found:
        near = nearest(wanted, dict.fromkeys(word.id for word in every))
        raise UsageError(f"no '{plain(name)}' in the book.{near}{lookup_hint(name)}")
    return found


def parse_format(text: str, formats: Sequence[str]) -> str:
    """One of the file formats. Raises UsageError with the nearest.

    >>> parse_format("DOT", ("json", "dot"))
    'dot'
    """
    wanted = text.strip().lower()
    if wanted not in formats:
        near = nearest(text, formats)
        raise UsageError(f"no format '{plain(text)}'; one of {', '.join(formats)}.{near}")
    return wanted


def parse_cause(text: str, causes: Collection[str]) -> str:
    """The id of a cause this engine can have. Raises UsageError with the nearest."""
    wanted = normal_id(text)
    if wanted not in causes:
        near = nearest(wanted, causes)
        raise UsageError(
            f"why: no cause '{plain(text)}' of this engine.{near} Try: diagnose lookup --kind cause"
        )
    return wanted


def parse_node(text: str, nodes: Collection[str]) -> str:
    """The id of a node of a cause graph. Raises UsageError with the nearest."""
    wanted = normal_id(text)
    if wanted not in nodes:
        raise UsageError(f"no '{plain(text)}' in this graph.{nearest(wanted, nodes)}")
    return wanted


def no_hits(text: str, kind: str = "") -> UsageError:
    """The error for a search that found nothing; ``kind`` is empty where all were searched."""
    if not tokens(text) and text.isascii():
        return UsageError(
            f"'{plain(text)}' alone says too little; add a word, for instance: "
            "diagnose lookup oil level"
        )
    among = f" among the {KINDS[kind][1]}" if kind else ""
    return UsageError(
        f"nothing in the book{among} sounds like '{plain(text)}'; try one plain word of it"
    )
