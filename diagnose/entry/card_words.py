"""The figure of a card that a person means by everyday words."""

from __future__ import annotations

import re

from diagnose.lookup.tokens import tokens
from knowledge.book import Book
from knowledge.card import CardFigure
from knowledge.units import DIMENSIONS, unit_in

FITS = 0.6  #: share of the words that must name the figure
_NAMED = re.compile(r"(?P<words>\D*?)[\s:=]*(?P<figure>\d.*)", re.DOTALL)


def in_words(text: str, book: Book) -> tuple[CardFigure, str] | None:
    """The figure of a card that words with a value name best, and the value; None without one.

    >>> from knowledge.book import the_book
    >>> figure, value = in_words("relief opens 3.8 bar", the_book())
    >>> figure.id, value
    ('relief_setting', '3.8 bar')
    >>> in_words("relief", the_book())
    """
    found = _NAMED.fullmatch(text.strip())
    wanted = frozenset(tokens(found["words"])) if found else frozenset()
    if found is None or not wanted:
        return None
    value = found["figure"].strip()
    rated = [
        (len(wanted & said) / len(wanted), -len(said - wanted), figure)
        for figure in book.card_figures.values()
        if _can_be(value, figure)
        for said in map(frozenset, map(tokens, (figure.says, *figure.also)))
    ]
    best = max(rated, key=lambda r: r[:2], default=None)
    return (best[2], value) if best is not None and best[0] >= FITS else None


def _can_be(value: str, figure: CardFigure) -> bool:
    """Whether a value has a unit of the figure's dimension."""
    ends = value.split(" to ")[-1]
    return bool(figure.dimension and unit_in(ends, DIMENSIONS[figure.dimension]))
