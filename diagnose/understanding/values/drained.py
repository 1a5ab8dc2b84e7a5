"""Read how much came out or went in beside what it holds: "drained 4.5 qt, the book says 6"."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.sentences.stance import Stance
from diagnose.understanding.words.facts import Fact, reader
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.values.quantities import CAME_OUT, HOLDS, WENT_IN

_LESS, _MORE = 0.85, 1.15  #: shares of what it holds that are no fault of the jug (judgement)
_DRAINED = "drained_volume"  #: the amount that came out, with its value
_POURED = "too_much_poured_in"
_OF_IT = frozenset(["of", "the", "its", "my", "those"])
_LED = 4  #: words before an amount in which stands what was done with it
_NEAR = 8  #: most words from one amount to the other


@reader(
    {
        "measured 4.5 qt drained where the book says 6": ["finding drained_volume_low present"],
        "drained 3 litres, sump holds 5": ["finding drained_volume_low present"],
        "i drained it and got 2 litres where it should be 5": [
            "finding drained_volume_low present"
        ],
        "9 quarts came out, capacity is 6": ["finding drained_volume_high present"],
        "drained 5 litres, it holds 5": [],
        "pulled the plug, 2 qts of the 5 came out": ["finding drained_volume_low present"],
        "I put 6 litres in, handbook says 4.5": ["finding too_much_poured_in present"],
        "holds 5 quarts, put 7 quarts in": ["finding too_much_poured_in present"],
        "poured in 3 litres, it holds 5": [],
        "put 5 litres in, it holds 5": [],
        "put 2 litres of the 5 in": [],
        "should I have drained 3 litres if it holds 5?": [],
    }
)
def drained(paragraph: Paragraph) -> Iterator[Fact]:
    """Less or more oil than the engine holds, where both amounts are named."""
    for line in paragraph.lines:
        amounts = [k for k, t in enumerate(line.tokens) if t.kinds & {"volume", "number"}]
        for one, other in pairwise(amounts):
            if "volume" not in line.tokens[one].kinds or other - one > _NEAR:
                continue
            moved, held = (other, one) if _holds_first(line, one, other) else (one, other)
            mark = Mark(True, other, other + 1)  # the other words are of a measured value
            untrue = line.stances.at(Mark(True, moved, moved + 1)) & (
                Stance.SUPPOSED | Stance.ELSEWHERE
            )
            if untrue or not _compares(line, one, other):
                continue
            share = _number(line, moved) / (_number(line, held) or 1.0)
            what = _finding(share, _around(line, moved, other))
            mark = Mark(True, one, other + 1) if what == _POURED else mark
            if what:
                yield Fact("finding", {"what": what, "state": "present"}, line.span([mark]))


def without_what_it_holds(facts: list[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts without the amount drained where that is what it holds: "holds 5 quarts, 3 came out"."""
    return [f for f in facts if f.name != _DRAINED or not _is_held(f, paragraph)]


def _is_held(fact: Fact, paragraph: Paragraph) -> bool:
    first = fact.spans[0][0]
    for line in paragraph.lines:
        for k, token in enumerate(line.tokens):
            if token.start == first:
                return bool(line.words(k - 1, k) & HOLDS)
    return False


def _holds_first(line: Line, one: int, other: int) -> bool:
    """Whether what it holds stands before what was moved: "holds 5 quarts, put 7 in"."""
    before = line.words(one - 2, one)
    return bool(before & HOLDS) and not _between(line, one, other) & HOLDS


def _compares(line: Line, one: int, other: int) -> bool:
    """Whether words between two amounts, or before them, say that one is what it holds."""
    between = _between(line, one, other)
    of_it = "of" in between and between <= _OF_IT
    return bool(between & HOLDS) or of_it or _holds_first(line, one, other)


def _between(line: Line, one: int, other: int) -> set[str]:
    return line.words(one + 1, other)


def _around(line: Line, moved: int, other: int) -> set[str]:
    """The words beside the amount that was moved; behind "2 of the 5", those behind both."""
    last = other + 3 if moved == other or _between(line, moved, other) <= _OF_IT else moved + 3
    return line.words(moved - _LED, last)


def _finding(share: float, around: set[str]) -> str:
    """What a share of what the engine holds means where it came out or went in; empty: nothing."""
    if around & CAME_OUT:
        return "drained_volume_low" * (share < _LESS) or "drained_volume_high" * (share > _MORE)
    return _POURED * (share > _MORE and bool(around & WENT_IN))


def _number(line: Line, at: int) -> float:
    """The figure of an amount; 1 where it is a word."""
    found = re.search(r"\d+(?:\.\d+)?", line.word(at))
    return float(found[0]) if found else 1.0
