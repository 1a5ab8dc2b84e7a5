"""Whether a text says that a pressure was read on the engine after this repair."""

from __future__ import annotations

from dataclasses import dataclass

from diagnose.understanding.reader import LONGEST, lexicon_of
from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.words.phrases import Mark, Phrases
from knowledge.book import Book
from knowledge.lexicon.work.after_repair import AFTER_REPAIR, DONE, IS_NOW, NOW

_AFTER: Phrases[bool] = Phrases({True: AFTER_REPAIR})
_DONE: Phrases[bool] = Phrases({True: DONE})
_NOW: Phrases[bool] = Phrases({True: NOW})
_IS_NOW: Phrases[bool] = Phrases({True: IS_NOW})


@dataclass(frozen=True, slots=True)
class Repaired:
    """Where the words stand that say so; ``outright``: by themselves, not by naming the work."""

    at: int
    end: int
    outright: bool


def repaired(text: str, book: Book) -> Repaired | None:
    """What a text says of it; None where it says nothing.

    >>> from knowledge.book import the_book
    >>> repaired("first start after the repair: 28 psi", the_book())
    Repaired(at=0, end=28, outright=True)
    >>> repaired("fitted the plug, now 28 psi", the_book())
    Repaired(at=0, end=20, outright=False)
    >>> repaired("28 psi at hot idle", the_book())
    """
    for line in Paragraph(text[:LONGEST], lexicon_of(book)).lines:
        outright = [m for m in line.stated(_AFTER) if not line.denied(m)]
        marks = outright[:1] or _by_work(line)
        if marks:
            at = min(line.tokens[m.first].start for m in marks)
            end = max(line.tokens[m.last - 1].end for m in marks)
            return Repaired(at, end, bool(outright))
    return None


def says_now(text: str, book: Book) -> bool:
    """Whether a text says that something is so now."""
    return any(line.stated(_IS_NOW) for line in Paragraph(text[:LONGEST], lexicon_of(book)).lines)


def _by_work(line: Line) -> list[Mark[bool]]:
    """Work that was done, with the "now" or "after" beside it; empty without either."""
    done = [m for m in line.stated(_DONE) if not line.denied(m)]
    now = line.stated(_NOW)
    return [done[0], now[0]] if done and now else []
