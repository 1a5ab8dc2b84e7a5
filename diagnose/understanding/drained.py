"""Read how much came out against what the engine holds: "drained 4.5 qt where the book says 6"."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise

from diagnose.understanding.facts import Fact, reader
from diagnose.understanding.paragraph import Line, Paragraph
from diagnose.understanding.phrases import Mark
from diagnose.understanding.stance import Stance
from knowledge.lexicon.values import CAME_OUT, HOLDS

_LESS, _MORE = 0.85, 1.15  #: shares of what it holds that are no fault of the jug (judgement)
_NEAR = 8  #: most words from one amount to the other


@reader(
    {
        "measured 4.5 qt drained where the book says 6": ["finding drained_volume_low present"],
        "drained 3 litres, sump holds 5": ["finding drained_volume_low present"],
        "9 quarts came out, capacity is 6": ["finding drained_volume_high present"],
        "drained 5 litres, it holds 5": [],
        "poured in 3 litres, it holds 5": [],
        "should I have drained 3 litres if it holds 5?": [],
    }
)
def drained(paragraph: Paragraph) -> Iterator[Fact]:
    """Less or more oil drained than the engine holds, where both amounts are named."""
    for line in paragraph.lines:
        amounts = [k for k, t in enumerate(line.tokens) if t.kinds & {"volume", "number"}]
        for one, other in pairwise(amounts):
            if "volume" not in line.tokens[one].kinds or other - one > _NEAR:
                continue
            around = {line.word(k) for k in range(one - 3, one + 3)}
            between = {line.word(k) for k in range(one + 1, other)}
            mark = Mark(True, other, other + 1)  # the other words are of a measured value
            untrue = line.stances.at(Mark(True, one, one + 1)) & (
                Stance.SUPPOSED | Stance.ELSEWHERE
            )
            if untrue or not around & CAME_OUT or not between & HOLDS:
                continue
            share = _number(line, one) / (_number(line, other) or 1.0)
            what = "drained_volume_low" if share < _LESS else "drained_volume_high"
            if not _LESS <= share <= _MORE:
                yield Fact("finding", {"what": what, "state": "present"}, line.span([mark]))


def _number(line: Line, at: int) -> float:
    """The figure of an amount; 1 where it is a word."""
    found = re.search(r"\d+(?:\.\d+)?", line.word(at))
    return float(found[0]) if found else 1.0
