"""Parts and consumables that a repair calls for."""

from __future__ import annotations

from collections.abc import Callable, Collection
from dataclasses import dataclass

from knowledge.access.precedence import ENDS_RUNNING
from knowledge.applying import applies
from knowledge.book import Book
from knowledge.model import Cause, Finding, State
from knowledge.work import Access, Part

OUTSIDE_IN = tuple(Access)  #: every place after those it lies behind on a typical engine


@dataclass(frozen=True, slots=True)
class Needed:
    """One part, and why."""

    part: Part
    because: tuple[str, ...]


def parts_list(
    causes: Collection[Cause],
    opened: Collection[Access],
    state: Callable[[Finding], State | None],
    book: Book,
) -> tuple[Needed, ...]:
    """List each part once: for the causes, then for closing what was open, then for every repair.

    What closes comes from outside in, by the outermost place that takes it.
    """
    for_causes, for_places, for_all = [], [], []
    for part in book.parts.values():
        if not applies(part, state):
            continue
        because_of = tuple(c.says for c in part.for_causes if c in causes)
        closes = [a for a in OUTSIDE_IN if a in part.for_places and a in opened]
        to_close = tuple(f"to close: {a.value.replace('_', ' ')}" for a in closes)
        if because_of:
            for_causes.append(Needed(part, because_of))
        elif to_close:
            for_places.append((OUTSIDE_IN.index(closes[0]), Needed(part, to_close)))
        elif part.always and set(opened) & ENDS_RUNNING:
            for_all.append(Needed(part, ("the oil side was open",)))
    for_places.sort(key=lambda placed: placed[0])  # keeps the order of the book within a place
    return (*for_causes, *(n for _, n in for_places), *for_all)
