"""Whether a text takes back what was said before."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from diagnose.understanding.reader import LONGEST, lexicon_of, read
from diagnose.understanding.sentences.paragraph import Paragraph
from diagnose.understanding.sentences.taken_back import taken_back
from diagnose.understanding.words.facts import Fact, Span, Understanding
from diagnose.understanding.words.phrases import Phrases
from knowledge.book import Book
from knowledge.lexicon.meant.corrections import CORRECTIONS, FILLERS, STRUCK

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
        for first, last, _ in taken_back(line.sentence):
            found.append((line.tokens[first].start, line.tokens[last - 1].end))
    return tuple(sorted(found))


def facts_taken_back(text: str, book: Book) -> tuple[Fact, ...]:
    """What a text says was wrong, as it was said at first.

    >>> from knowledge.book import the_book
    >>> [f.short for f in facts_taken_back("the 2 psi cold was wrong", the_book())]
    ['reading 2 psi cold']
    >>> facts_taken_back("the sender was wrong", the_book())
    ()
    """
    found: list[Fact] = []
    for line in Paragraph(text[:LONGEST], lexicon_of(book)).lines:
        for first, _, last in taken_back(line.sentence):
            begin = first + (line.word(first) in STRUCK)
            if begin < last:
                said = text[line.tokens[begin].start : line.tokens[last - 1].end]
                found += read(said, book).facts
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
