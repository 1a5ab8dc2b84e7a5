"""Whether a text takes back what was said before."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from diagnose.understanding.facts import Span, Understanding
from diagnose.understanding.paragraph import Paragraph
from diagnose.understanding.phrases import Phrases
from diagnose.understanding.reader import LONGEST, lexicon_of
from knowledge.book import Book
from knowledge.lexicon.corrections import CORRECTIONS, FILLERS

_BACK: Phrases[bool] = Phrases({True: CORRECTIONS})


def corrects(text: str, book: Book) -> tuple[Span, ...]:
    """Where the words stand that take back what was said before; empty if nothing does.

    >>> from knowledge.book import the_book
    >>> corrects("i read the stick wrong, its at the full mark", the_book())
    ((0, 22),)
    >>> corrects("the wrong filter was fitted", the_book())
    ()
    """
    found = []
    for line in Paragraph(text[:LONGEST], lexicon_of(book)).lines:
        for mark in line.stated(_BACK):
            found.append((line.tokens[mark.first].start, line.tokens[mark.last - 1].end))
    return tuple(found)


def without_corrections(understanding: Understanding, book: Book) -> Understanding:
    """The same, with the words that take something back no longer left over."""
    said = corrects(understanding.text, book)
    if not said:
        return understanding
    left = [piece for span in understanding.unread for piece in _outside(span, said)]
    words = [understanding.text[a:b].lower().strip(" ,.;:-!").split() for a, b in left]
    kept = [s for s, each in zip(left, words, strict=True) if not set(each) <= FILLERS]
    return replace(understanding, unread=tuple(kept))


def _outside(span: Span, others: tuple[Span, ...]) -> Iterator[Span]:
    """The parts of a span that lie in none of the others, which are in order."""
    begin, end = span
    for first, last in others:
        if first >= end or last <= begin:
            continue
        if first > begin:
            yield begin, first
        begin = max(begin, last)
    if begin < end:
        yield begin, end
