"""Which of two engines side by side is the one in question: "port 45, starboard 28"."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import zip_longest

from diagnose.understanding.words.lexicon import Lexicon
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.text import Sentence, Token
from knowledge.lexicon.stance.stance_words import (
    ENDS_FINE,
    GOOD_ONE,
    IN_TROUBLE,
    IS_FINE,
    OPPOSITE,
    SIDES,
)
from knowledge.lexicon.work.beside_results import ENOUGH
from knowledge.reports.words import Shows
from knowledge.units import PRESSURE, PSI, unit_named

_MOST_PSI = 150.0  #: a larger number is no pressure


def side_of(tokens: Sequence[Token], mark: Mark[bool]) -> str:
    """The side that a phrase names, in one word for each side."""
    words = (tokens[k].word for k in range(mark.first, mark.last))
    return next((SIDES[w] for w in words if w in SIDES), "")


def this_side(cut: Sequence[Sentence], lexicon: Lexicon) -> str:
    """Which of two engines is the one in question, "port" or "starboard"; empty where none is.

    It is the only one named, or the only one of which a trouble is said; where figures of both are
    given and nothing else tells, the one that shows less.
    """
    named: set[str] = set()
    troubled: set[str] = set()
    good: set[str] = set()
    least: dict[str, float] = {}
    for sentence in cut:
        tokens = sentence.tokens
        marks = sorted(lexicon.other_side.find(tokens), key=lambda m: m.first)
        shown = [m for m in lexicon.shows.find(tokens) if m.value is not Shows.NORMAL]
        for mark, after in zip_longest(marks, marks[1:]):
            side, last = side_of(tokens, mark), after.first if after else len(tokens)
            named.add(side)
            said = {t.word for t in tokens[mark.first : last]}
            if said & IN_TROUBLE or any(mark.first <= m.first < last for m in shown):
                troubled.add(side)
            if _is_fine(tokens, mark.last):
                good.add(side)
            for value in _pressures(tokens[mark.first : last]):
                least[side] = min(value, least.get(side, value))
    both = len(named) > 1 or any(t.word == "other" for s in cut for t in s.tokens)
    if both and len(good) == 1 and not good & troubled and not _shows_less(good, least):
        return OPPOSITE[good.pop()]
    if len(named) > 1:
        if len(troubled) == 1:
            return troubled.pop()
        if len(least) == 1 and not troubled:
            return min(least)
        return _less(least) if named <= least.keys() and not _too_high(cut, lexicon) else ""
    shows = any(m.value is not Shows.NORMAL for s in cut for m in lexicon.shows.find(s.tokens))
    shows = shows or any(v < ENOUGH for v in least.values())
    fine = shows and GOOD_ONE.isdisjoint(t.word for s in cut for t in s.tokens)
    return named.pop() if named and fine else ""


def _is_fine(tokens: Sequence[Token], at: int) -> bool:
    """Whether the words from the last of a side's name say that all is well there, with no "until"."""
    fine = next((k for k in range(at - 1, at + 2) if _word(tokens, k) in IS_FINE), None)
    if fine is None:
        return False
    ends = fine + 1 >= len(tokens) or tokens[fine + 1].is_mark
    return ends or _word(tokens, fine + 1) in ENDS_FINE


def _word(tokens: Sequence[Token], at: int) -> str:
    return tokens[at].word if at < len(tokens) else ""


def _shows_less(good: set[str], least: dict[str, float]) -> bool:
    """Whether the side that is called fine shows too little, or less than the other."""
    (side,) = good
    others = [v for s, v in least.items() if s != side]
    return side in least and (least[side] < ENOUGH or any(least[side] < v for v in others))


def _less(least: dict[str, float]) -> str:
    """The side of the least pressure; empty where two have it."""
    one, other = sorted(least, key=lambda s: least[s])[:2]
    return one if least[one] < least[other] else ""


def _too_high(cut: Sequence[Sentence], lexicon: Lexicon) -> bool:
    """Whether the trouble is said to be too much pressure."""
    return any(m.value is Shows.HIGH for s in cut for m in lexicon.shows.find(s.tokens))


def _pressures(tokens: Sequence[Token]) -> Iterator[float]:
    """The figures that may be pressures, psi; a bare one is in psi."""
    for token in tokens:
        if not token.kinds & {"pressure", "number", "range"} or "share" in token.kinds:
            continue
        unit = unit_named(token.value.rpartition(" ")[2], PRESSURE)
        factor = unit.factor / PSI if unit else 1.0
        digits = re.search(r"\d+(?:\.\d+)?", token.value)
        if digits and float(digits[0]) * factor <= _MOST_PSI:
            yield float(digits[0]) * factor
