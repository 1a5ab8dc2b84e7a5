"""Figures of two times that can only be pressures: "hot idle went from 25 to 8", "idle was 25, now 9"."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.text import Clause
from knowledge.lexicon.engine.features import BOOKS, LEAST
from knowledge.lexicon.values.beside_numbers import (
    ABOUT,
    COUNTS,
    I_HAVE,
    MOVES,
    NAMES,
    NOT_IN_A_ROW,
    OTHER_GAUGES,
    RECOVERS,
    VOLTS,
)
from knowledge.reports.words import Circumstance, Speed

MOST = 150.0  #: a larger number is no pressure
_WAY = frozenset(["to", "down", "up"])  #: between what was and what is
_WHEN = (Circumstance.COLD, Circumstance.HOT, Circumstance.IDLE, Circumstance.SPEED, *Speed)


def compares_pressures(line: Line) -> bool:
    """Whether a sentence without an instrument sets a pressure of now against one before."""
    if {t.word for t in line.tokens} & (OTHER_GAUGES | NOT_IN_A_ROW | VOLTS):
        return False
    places = [k for k in range(len(line.tokens)) if _may_be_one(line, k)]
    if any(beside_the_book(line, k) for k in places):
        return True
    if not any(m.value in _WHEN for m in (*line.circumstances, *line.find(line.lexicon.speed))):
        return False
    return any(
        comes_from(line, a, b) or (_was(line, a) and not _was(line, b)) for a, b in pairwise(places)
    )


def beside_the_book(line: Line, at: int) -> Clause | None:
    """The clause of what a book gives, straight before what is had: "spec is 45 at 2000, I get 28"."""
    clause = line.clause(at)
    before = [c for c in line.sentence.clauses if c.last <= clause.first][-1:]
    lead = [line.word(k) for k in range(clause.first, at) if not line.tokens[k].is_mark]
    if not before or not lead or not set(lead) <= I_HAVE | ABOUT:
        return None
    said = line.words(before[0].first, before[0].last)
    inside = range(before[0].first, before[0].last)
    figures = any(line.tokens[k].is_figure for k in inside)
    when = any("rpm" in line.tokens[k].kinds for k in inside) or any(
        m.value in _WHEN and m.first in inside
        for m in (*line.circumstances, *line.find(line.lexicon.speed))
    )
    return before[0] if figures and when and said & (BOOKS | LEAST) else None


def of_the_book(line: Line, at: int, marks: Sequence[Mark[object]]) -> list[Mark[object]]:
    """When the book's figure is of, with which one compares: "spec is 45 at 2000, I get 28"."""
    clause = beside_the_book(line, at)
    inside = range(clause.first, clause.last) if clause is not None else range(0)
    return [m for m in marks if m.first in inside]


def comes_from(line: Line, was: int, now: int) -> bool:
    """Whether the pressure went from one figure to another: "gone from 60 down to 15"."""
    between = [line.word(k) for k in range(was + 1, now)]
    if not between or between[-1] in ABOUT:
        between = between[:-1]
    if "to" not in between or not set(between) <= _WAY | ABOUT:
        return False
    at = was - 1
    while line.word(at) in ABOUT and at:
        at -= 1
    moved = line.words(at - 3, at) & MOVES
    return line.word(at) == "from" and bool(moved)


def _was(line: Line, at: int) -> bool:
    return line.usual(Mark(True, at, at + 1))


def _may_be_one(line: Line, at: int) -> bool:
    """Whether a bare figure may be a pressure."""
    token = line.tokens[at]
    if token.kinds != {"number"} or "." in token.word[:2]:
        return False
    counted = line.word(at + 1) in COUNTS or line.word(at - 1) in NAMES
    return not counted and 0.0 < float(token.value) <= MOST


def recovers_then(line: Line, mark: Mark[object]) -> bool:
    """Whether the pressure is back as soon as that is done: "back the throttle off and it recovers"."""
    clause = line.clause(mark.first)
    last = line.clause(clause.last).last if clause.last < len(line.tokens) else clause.last
    said = {line.word(k) for k in range(clause.first, last) if not mark.first <= k < mark.last}
    return bool(said & RECOVERS)
