"""What was done to a part, said behind its name: "the head was off", "hv pump in", "put in the pump"."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.work.part_worked import PartWorked
from knowledge.reports.words import Done

_FAR = 4  #: words between "had" and its part
#: a part was so, and what leads to that
_OFF = frozenset(["off", "out", "apart", "down"])
_HAD = frozenset(["had", "have", "having", "took", "with", "got", "since", "after"])
_OFF_FOR = frozenset(["last", "in", "over", "to", "for", "because", "again", "two", "a", "while"])
_BUILT_IN = frozenset(["fitted", "installed", "added", "welded", "replaced", "renewed"])
PUT = frozenset(["put", "stuck", "threw", "popped", "bunged", "slapped"])
COPULA = frozenset(["was", "is", "were", "are"])


class _Ends(Protocol):
    """Work that was done."""

    @property
    def last(self) -> int:
        """The token behind it."""


def taken_off(line: Line, part: Mark[PartWorked]) -> Mark[Done] | None:
    """The words that a part was off or went in: "had the head off", "the new pump went in"."""
    at = part.last
    while line.word(at) in COPULA | {"been", "came", "had"}:
        at += 1
    if line.word(at) == "went" and line.word(at + 1) in ("in", "on", "back"):
        back = line.word(at + 1) == "back"
        last = at + 2 + (back and line.word(at + 2) in ("in", "on"))
        goes_on = last < len(line.tokens) and line.word(last).endswith("ing")
        return None if goes_on else Mark(Done.REFITTED if back else Done.RENEWED, at, last)
    if line.word(at) not in _OFF:
        return None
    led = line.words(part.first - _FAR, part.first) & _HAD
    said = at > part.last or line.word(at + 1) in _OFF_FOR
    return Mark(Done.REFITTED, at, at + 1) if led or said else None


def put_in(line: Line, part: Mark[PartWorked]) -> Mark[Done] | None:
    """The words that a part was put in or on, without an article: "put hv pump in"."""
    at = part.last
    if line.word(part.first - 1) not in PUT or line.word(at) not in ("in", "on"):
        return None
    ends = at + 1 >= len(line.tokens) or line.tokens[at + 1].is_mark
    ends = ends or line.word(at + 1) in ("it", "and", "but")
    return Mark(Done.RENEWED, part.first - 1, part.first) if ends else None


def says_where_to(
    line: Line, action: Mark[Done], part: Mark[PartWorked], parts: Sequence[Mark[PartWorked]]
) -> bool:
    """Whether a part is only where another was put: "new rotors were put in the oil pump"."""
    between = line.words(action.last - 1, part.first)
    if part.first < action.first or not between & {"in", "into", "to"}:
        return False
    put = line.word(action.first) in PUT or line.word(action.first) in _BUILT_IN
    return put and any(0 <= action.first - p.last <= 2 for p in parts if p is not part)


def only_put_back(
    line: Line, whole: Mark[object], area: str | None, others: Sequence[_Ends]
) -> bool:
    """Whether only what was off for work on a part went back: "cleaned the screen, put it back together"."""
    together = area == "whole_engine" and {"back", "together"} <= line.words(
        whole.first, whole.last
    )
    return together and any(o.last <= whole.first for o in others)
